// Package theme turns the model of a page into HTML with a theme's templates.
// It knows nothing of Markdown or of files to be written.
package theme

import (
	"bytes"
	"fmt"
	"html/template"
	"io/fs"
	"strings"

	"coursebook/generator/internal/translations"
)

// Theme is a theme's templates and words, ready to render.
type Theme struct {
	set   *template.Template
	texts translations.Keyed
	lang  map[string]map[string]string
	code  string // its language; empty for English

}

// Load reads templates/*.html and words.tsv (key, English text) from a theme
// folder. other holds the translations by language and key; needed names the
// templates that the theme must define.
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

// Texts reads a theme's own English texts: words.tsv, key and text.
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

// For is the theme in one language; templates show texts with {{say "key"}}.
func (t *Theme) For(lang string) (*Theme, error) {
	set, err := t.set.Clone()
	if err != nil {
		return nil, err
	}
	own := &Theme{texts: t.texts, lang: t.lang, code: lang}
	own.set = set.Funcs(own.functions(lang))
	return own, nil
}

// Render makes one page. kind is a template's name, view one of the views.
func (t *Theme) Render(kind string, view any) ([]byte, error) {
	var b bytes.Buffer
	if err := t.set.ExecuteTemplate(&b, kind, view); err != nil {
		return nil, fmt.Errorf("theme: %w", err)
	}
	return b.Bytes(), nil
}

// Text is one of the theme's own texts in the theme's language; the key
// itself where the theme has no such text.
func (t *Theme) Text(key string) string {
	if own := t.lang[t.code][key]; own != "" {
		return own
	}
	if text, ok := t.texts[key]; ok {
		return text
	}
	return key
}
