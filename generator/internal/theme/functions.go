package theme

import (
	"fmt"
	"html/template"
	"reflect"
	"slices"
	"strconv"
	"strings"

	"coursebook/generator/internal/form"
)

// functions are what templates may call besides the fields of their view.
func (t *Theme) functions(lang string) template.FuncMap {
	return template.FuncMap{
		// say is a text of the theme with its {slots} filled: name, value, …
		"say":    func(key string, slots ...string) (string, error) { return t.say(lang, key, slots) },
		"both":   func(b form.Both) template.HTML { return pair("q", b) },
		"either": func(b form.Both) template.HTML { return pair("either", b) },
		"dict":   dict,
		"svg":    func(s string) template.HTML { return template.HTML(s) },
		"few":    func(o []form.Option) bool { return len(o) <= mostCards },
		"last":   func(path string) string { return path[strings.LastIndexByte(path, '.')+1:] },
		"keys":   keys,
		"signs":  func(unit form.Both) string { return keys(form.Field{Unit: unit}) },
		"alike":  func(t form.Table) bool { return reflect.DeepEqual(t.US, t.Metric) },
		"image":  image,
		"carry":  carry,
		"placed": placed,
		"sum":    func(a, b int) string { return strconv.Itoa(a + b) },
		"rest": func(outs []form.Output) bool {
			return slices.ContainsFunc(outs, func(o form.Output) bool { return !o.Lead })
		},
	}
}

// placed are the stages where the page belongs to one of them.
func placed(stages []StageLink) []StageLink {
	if slices.ContainsFunc(stages, func(l StageLink) bool { return l.Current }) {
		return stages
	}
	return nil
}

// mostCards is how many answers of a choice are set as cards to touch; more
// become a list to open.
const mostCards = 4

func (t *Theme) say(lang, key string, slots []string) (string, error) {
	text, ok := t.texts[key]
	if !ok {
		return "", fmt.Errorf("words.tsv has no key %s", key)
	}
	if own := t.lang[lang][key]; own != "" {
		text = own
	}
	for i := 0; i+1 < len(slots); i += 2 {
		text = strings.ReplaceAll(text, "{"+slots[i]+"}", slots[i+1])
	}
	return text, nil
}

// pair sets a text in the two systems of units; the style sheet shows the
// reader's own. Where none was chosen, a quantity (class q) shows as 2 ft
// (600 mm), a sentence (class either) in US units only.
func pair(class string, b form.Both) template.HTML {
	us := template.HTMLEscapeString(b.US)
	if b.Same() {
		return template.HTML(us)
	}
	return template.HTML(`<span class="` + class + `"><span class="us">` + us + `</span><span class="si">` +
		template.HTMLEscapeString(b.Metric) + `</span></span>`)
}

// dict passes several values to a template by name.
func dict(pairs ...any) (map[string]any, error) {
	if len(pairs)%2 != 0 {
		return nil, fmt.Errorf("dict needs pairs")
	}
	m := map[string]any{}
	for i := 0; i < len(pairs); i += 2 {
		key, ok := pairs[i].(string)
		if !ok {
			return nil, fmt.Errorf("dict: a name must be text")
		}
		m[key] = pairs[i+1]
	}
	return m, nil
}

// keys are the signs that a phone's number pad lacks and an input needs:
// feet, inches and fractions for lengths in US units, a minus for degrees.
func keys(f form.Field) string {
	switch f.Unit.US {
	case "ft", "in":
		return `' " / -`
	case "°F":
		return "-"
	}
	return ""
}

// image is the address of a picture: a file of the site, or the picture
// itself as data in the one-file edition, which templates would refuse.
func image(src string) any {
	if strings.HasPrefix(src, "data:image/") {
		return template.URL(src)
	}
	return src
}

// carry sets a block of text that a script reads unchanged. What such an
// element may not hold is refused rather than escaped, because nothing
// unescapes it.
func carry(id, text string) (template.HTML, error) {
	low := strings.ToLower(text)
	if strings.Contains(low, "</script") || strings.Contains(low, "<!--") {
		return "", fmt.Errorf("the data block %s holds a tag that would end it", id)
	}
	return template.HTML(
		`<script type="text/plain" id="` + template.HTMLEscapeString(id) + `">` + text + `</script>`,
	), nil
}
