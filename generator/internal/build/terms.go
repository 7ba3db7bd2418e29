package build

import (
	"io/fs"
	"path"
	"strings"

	"coursebook/calculators"
	"coursebook/generator/internal/fault"
	"coursebook/generator/internal/source"
	"coursebook/generator/internal/terms"
)

// checkTerms adds a warning for each word that the manual's list of terms has another
// word for: in pages, in the manual's file, in labels of pictures, in texts of
// calculators and in words of the theme. Without a list it adds nothing.
func (b *builder) checkTerms() {
	if len(b.terms) == 0 {
		return
	}
	languages := b.Site.Manual.Languages
	for i, l := range languages {
		var content fault.List
		b.terms.Check(l.Code, b.contentTexts(l.Code, i == 0), &content)
		b.faults.Add(fault.Under(b.o.Content, content.All())...)
		b.terms.Check(l.Code, b.programTexts(l.Code), b.faults)
	}
}

// contentTexts returns the texts of pages and pictures in a language. A picture whose name
// ends in no language's code is in the first one.
func (b *builder) contentTexts(lang string, first bool) (texts []terms.Text) {
	for _, f := range b.Sources {
		switch {
		case f.Language() == lang:
			texts = append(texts, terms.Text{File: f.Path, Line: 1, Col: 1, Page: f.Slug(),
				Text: terms.PageText(string(f.Data))})
		case f.Kind == source.ManualFile:
			texts = append(texts, terms.Text{File: f.Path, Line: 1, Col: 1,
				Text: terms.ManualText(string(f.Data), lang)})
		case f.Kind == source.Picture && path.Ext(f.Path) == ".svg" && b.pictureIn(f.Path, lang, first):
			texts = append(texts, terms.Labels(f.Path, f.Data)...)
		}
	}
	return texts
}

// pictureIn reports whether the labels of a picture are in a language.
func (b *builder) pictureIn(file, lang string, first bool) bool {
	stem := strings.TrimSuffix(file, path.Ext(file))
	for _, l := range b.Site.Manual.Languages {
		if strings.HasSuffix(stem, "-"+l.Code) {
			return l.Code == lang
		}
	}
	return first
}

// programTexts returns what calculators and theme say in a language: English from their
// sources, another language from its words files.
func (b *builder) programTexts(lang string) (texts []terms.Text) {
	if lang == "en" {
		all, err := CalculatorTexts()
		if err != nil {
			b.fail(err)
		}
		for _, t := range all {
			texts = append(texts, terms.Text{File: t.File, Line: max(t.Line, 1), Col: 1, Text: t.EN()})
		}
		return append(texts, wordRows(b.o.Theme, "words.tsv", "theme/words.tsv", 1)...)
	}
	names, err := fs.Glob(calculators.Words, path.Join("words", lang, "*.tsv"))
	if err != nil {
		b.fail(err)
	}
	for _, name := range names {
		texts = append(texts, wordRows(calculators.Words, name, path.Join("calculators", name), 1)...)
	}
	name := ThemeWordsFile(lang)
	return append(texts, wordRows(b.o.Theme, name, path.Join("theme", name), 2)...)
}

// wordRows returns the texts in a column of a file of words; none without the file, which
// is reported where the words are read. shown is the file's name in faults.
func wordRows(dir fs.FS, name, shown string, column int) (texts []terms.Text) {
	data, err := fs.ReadFile(dir, name)
	if err != nil {
		return nil
	}
	for i, line := range strings.Split(string(data), "\n") {
		cells := strings.Split(line, "\t")
		if strings.HasPrefix(line, "#") || len(cells) <= column {
			continue
		}
		before := strings.Join(cells[:column], "\t") + "\t"
		texts = append(texts, terms.Text{File: shown, Line: i + 1, Col: len([]rune(before)) + 1, Text: cells[column]})
	}
	return texts
}
