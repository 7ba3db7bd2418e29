package build

import (
	"io/fs"
	"path"
	"slices"
	"strings"
	"sync"

	"coursebook/calculators"
	"coursebook/calculators/calc"
	"coursebook/generator/internal/fault"
	"coursebook/generator/internal/theme"
	"coursebook/generator/internal/translations"
)

// WordList is a set of English texts and where their translations lie: one
// for the calculators, and one that a theme brings along.
type WordList struct {
	English translations.Texts
	dir     fs.FS
	name    string // pattern of a language's files, with {lang}
	shown   string // folder, for messages
}

// WordLists are the two lists of a build.
func WordLists(dir fs.FS) ([]WordList, error) {
	texts, err := translated()
	if err != nil {
		return nil, err
	}
	own, err := theme.Texts(dir)
	if err != nil {
		return nil, err
	}
	return []WordList{
		{English: texts, dir: calculators.Words, name: "words/{lang}/*.tsv", shown: "calculators"},
		{English: own, dir: dir, name: "words.{lang}.tsv", shown: "theme"},
	}, nil
}

// translated are the English texts of the calculators, read off their sources
// once: they do not change while the program runs.
var translated = sync.OnceValues(func() (translations.Texts, error) {
	var faults fault.List
	texts, err := translations.FromSources(calculators.Sources, &faults)
	if err == nil && faults.Errors() > 0 {
		err = faults.All()[0]
	}
	return texts, err
})

// File is the path of a language's files, as messages show it.
func (l WordList) File(lang string) string {
	return path.Join(l.shown, strings.ReplaceAll(l.name, "{lang}", lang))
}

// Read reads a language's translations. A language nobody has translated yet
// has none, and shows English texts.
func (l WordList) Read(lang string, faults *fault.List) calc.Translations {
	names, _ := fs.Glob(l.dir, strings.ReplaceAll(l.name, "{lang}", lang)) // the patterns above are sound
	var all calc.Translations
	for _, name := range names {
		data, err := fs.ReadFile(l.dir, name)
		if err != nil {
			faults.Add(fault.Fault{File: path.Join(l.shown, name), Code: "word-file", Text: err.Error()})
			continue
		}
		if all == nil {
			all = calc.Translations{}
		}
		translations.Parse(path.Join(l.shown, name), data, l.English, all, faults)
	}
	return all
}

// wordsFile lists the translations of the calculators' texts by key, sorted:
// key, tab, text, a line each. It is what the module is told.
func wordsFile(own calc.Translations, texts translations.Texts) []byte {
	var keys []string
	for key := range own {
		if _, ok := texts[key]; ok {
			keys = append(keys, key)
		}
	}
	slices.Sort(keys)
	var out strings.Builder
	for _, key := range keys {
		out.WriteString(key + "\t" + own[key] + "\n")
	}
	return []byte(out.String())
}
