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

// WordsFile returns the path of the translations of a topic, for messages.
func WordsFile(lang, topic string) string {
	return path.Join("calculators/words", lang, topic+".tsv")
}

// ThemeWordsFile returns the name of a theme's file of translations.
func ThemeWordsFile(lang string) string { return "words." + lang + ".tsv" }

// CalculatorTexts returns the texts of the calculators, parsed from their embedded
// sources at the first call.
var CalculatorTexts = sync.OnceValues(func() (translations.Texts, error) {
	var faults fault.List
	texts, err := translations.FromSources(calculators.Sources, &faults)
	if err == nil && faults.Errors() > 0 {
		err = faults.All()[0]
	}
	return texts, err
})

// CalculatorWords reads the translations of the calculators' texts into a
// language, by key. It also returns the translations whose English text does not
// exist any more. Bad lines are added to faults and left out where they have no
// text. A language without files gives nil. It returns an error if a file cannot
// be read.
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

// ThemeWords reads a theme's English texts and their translations into a language,
// both by key. Bad lines of the translations are added to faults. A language
// without a file gives no translations; it returns an error if the English texts
// cannot be read.
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

// wordsFile returns the file of translations for the module: a line each, sorted by key,
// of the key as 16 hexadecimal digits, a tab and the text. What sources say is left out,
// because only pages show it.
func wordsFile(words calc.Translations, texts translations.Texts) []byte {
	keys := make([]uint64, 0, len(words))
	for key := range words {
		if texts[key].Topic != translations.Cited {
			keys = append(keys, key)
		}
	}
	slices.Sort(keys)
	var out strings.Builder
	for _, key := range keys {
		digits := strconv.FormatUint(key, 16)
		out.WriteString(strings.Repeat("0", 16-len(digits)) + digits + "\t" + words[key] + "\n")
	}
	return []byte(out.String())
}
