package build

import (
	"io/fs"
	"path"
	"slices"
	"strconv"
	"strings"
	"sync"

	"coursebook/calculators"
	"coursebook/calculators/calc"
	"coursebook/generator/internal/fault"
	"coursebook/generator/internal/theme"
	"coursebook/generator/internal/translations"
)

// WordsFile is the file of translations of a topic, as messages show it.
func WordsFile(lang, topic string) string {
	return path.Join("calculators/words", lang, topic+".tsv")
}

// ThemeWordsFile is a theme's file of translations.
func ThemeWordsFile(lang string) string { return "words." + lang + ".tsv" }

// CalculatorTexts are the texts of the calculators, read from their sources
// once: they do not change while the program runs.
var CalculatorTexts = sync.OnceValues(func() (translations.Texts, error) {
	var faults fault.List
	texts, err := translations.FromSources(calculators.Sources, &faults)
	if err == nil && faults.Errors() > 0 {
		err = faults.All()[0]
	}
	return texts, err
})

// CalculatorWords reads the translations of the calculators' texts into a
// language, and returns those whose English text is gone. A language without
// a file has none, and shows English texts.
func CalculatorWords(lang string, faults *fault.List) (calc.Translations, []translations.Orphan, error) {
	texts, err := CalculatorTexts()
	if err != nil {
		return nil, nil, err
	}
	names, err := fs.Glob(calculators.Words, path.Join("words", lang, "*.tsv"))
	if err != nil || len(names) == 0 {
		return nil, nil, err
	}
	words := calc.Translations{}
	var orphans []translations.Orphan
	for _, name := range names {
		data, err := fs.ReadFile(calculators.Words, name)
		if err != nil {
			return nil, nil, err
		}
		orphans = append(orphans, texts.Parse(path.Join("calculators", name), data, words, faults)...)
	}
	texts.Report(orphans, words)
	return words, orphans, nil
}

// ThemeWords reads a theme's texts, and their translations into a language.
func ThemeWords(dir fs.FS, lang string, faults *fault.List) (translations.Keyed, map[string]string, error) {
	texts, err := theme.Texts(dir)
	if err != nil {
		return nil, nil, err
	}
	words := map[string]string{}
	if data, err := fs.ReadFile(dir, ThemeWordsFile(lang)); err == nil {
		texts.Parse(path.Join("theme", ThemeWordsFile(lang)), data, words, faults)
	}
	return texts, words, nil
}

// wordsFile lists translations for the module: key as 16 hexadecimal digits,
// tab, text, a line each, sorted by key.
func wordsFile(words calc.Translations) []byte {
	keys := make([]uint64, 0, len(words))
	for key := range words {
		keys = append(keys, key)
	}
	slices.Sort(keys)
	var out strings.Builder
	for _, key := range keys {
		digits := strconv.FormatUint(key, 16)
		out.WriteString(strings.Repeat("0", 16-len(digits)) + digits + "\t" + words[key] + "\n")
	}
	return []byte(out.String())
}
