// Package theme renders views of pages to HTML with a theme's templates. It does not
// parse Markdown or write files.
package theme

import (
	"bytes"
	"fmt"
	"html/template"
	"io/fs"
	"strings"

	"coursebook/generator/internal/translations"
)

// Theme is a theme's templates and texts in one language.
type Theme struct {
	set   *template.Template
	texts translations.Keyed
	lang  map[string]map[string]string
	code  string // of the language; empty for English
}

// Load reads templates/*.html and words.tsv (key, English text) from a theme
// folder. other is the translations by language and key; needed names the
// templates that the theme must define. A missing or bad file, and a missing
// template, are errors.
func Load(dir fs.FS, other map[string]map[string]string, needed []string) (*Theme, error) {
	t := &Theme{lang: other}
	var err error
	if t.texts, err = Texts(dir); err != nil {
		return nil, err
	}
	t.set = template.New("theme").Funcs(t.functions("en"))
	if t.set, err = t.set.ParseFS(dir, "templates/*.html"); err != nil {
		return nil, fmt.Errorf("theme: %w", err)
	}
	for _, name := range needed {
		if t.set.Lookup(name) == nil {
			return nil, fmt.Errorf("theme: there is no template named %q in templates/", name)
		}
	}
	return t, nil
}

// Texts reads the English texts of a theme by key from words.tsv: key, tab, text.
// Empty lines and lines that begin with # are skipped. A missing file, a line
// without a tab and a repeated key are errors.
func Texts(dir fs.FS) (translations.Keyed, error) {
	data, err := fs.ReadFile(dir, "words.tsv")
	if err != nil {
		return nil, fmt.Errorf("theme: %w", err)
	}
	texts := translations.Keyed{}
	for i, line := range strings.Split(strings.TrimSuffix(string(data), "\n"), "\n") {
		if line == "" || strings.HasPrefix(line, "#") {
			continue
		}
		key, text, ok := strings.Cut(line, "\t")
		if !ok || texts[key] != "" {
			return nil, fmt.Errorf("theme: words.tsv:%d: a line is a key of its own, a tab, and a text", i+1)
		}
		texts[key] = text
	}
	return texts, nil
}

// For returns the theme in a language. Templates show texts by {{uiText "key"}}.
// It returns an error if a template was rendered before.
func (t *Theme) For(lang string) (*Theme, error) {
	set, err := t.set.Clone()
	if err != nil {
		return nil, err
	}
	translated := &Theme{texts: t.texts, lang: t.lang, code: lang}
	translated.set = set.Funcs(translated.functions(lang))
	return translated, nil
}

// Render returns the HTML of one page. kind is the name of a template, view its
// view. It returns an error if there is no such template or it fails.
func (t *Theme) Render(kind string, view any) ([]byte, error) {
	var b bytes.Buffer
	if err := t.set.ExecuteTemplate(&b, kind, view); err != nil {
		return nil, fmt.Errorf("theme: %w", err)
	}
	return b.Bytes(), nil
}

// Text returns a text in the theme's language, or the key if there is no such text.
func (t *Theme) Text(key string) string {
	if translated := t.lang[t.code][key]; translated != "" {
		return translated
	}
	if text, ok := t.texts[key]; ok {
		return text
	}
	return key
}
