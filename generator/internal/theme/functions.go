package theme

import (
	"fmt"
	"html/template"
	"reflect"
	"slices"
	"strconv"
	"strings"
	"unicode"
	"unicode/utf8"

	"coursebook/generator/internal/form"
)

// functions are the functions of templates in a language.
func (t *Theme) functions(lang string) template.FuncMap {
	return template.FuncMap{
		// uiText returns a text of the theme with its {slots} filled: name, value, …
		"uiText":    func(key string, slots ...string) (string, error) { return t.uiText(lang, key, slots) },
		"both":      func(b form.Both) template.HTML { return pair("q", b) },
		"either":    func(b form.Both) template.HTML { return pair("either", b) },
		"dict":      dict,
		"svg":       func(s string) template.HTML { return template.HTML(s) },
		"few":       func(o []form.Option) bool { return len(o) <= maxCards },
		"last":      func(path string) string { return path[strings.LastIndexByte(path, '.')+1:] },
		"keys":      keys,
		"signs":     func(unit form.Both) string { return keys(form.Field{Unit: unit}) },
		"alike":     func(t form.Table) bool { return reflect.DeepEqual(t.US, t.Metric) },
		"image":     image,
		"dataBlock": dataBlock,
		"ifCurrent": ifCurrent,
		"current":   current,
		"bare":      bare,
		"caption":   caption,
		"title":     title,
		"sum":       func(a, b int) string { return strconv.Itoa(a + b) },
		"rest": func(outs []form.Output) bool {
			return slices.ContainsFunc(outs, func(o form.Output) bool { return !o.Lead })
		},
	}
}

// ifCurrent returns the stages unchanged if the page belongs to one of them,
// otherwise nil.
func ifCurrent(stages []StageLink) []StageLink {
	if slices.ContainsFunc(stages, func(l StageLink) bool { return l.Current }) {
		return stages
	}
	return nil
}

// current returns the stage of the page, nil if it has none.
func current(stages []StageLink) *StageLink {
	if i := slices.IndexFunc(stages, func(l StageLink) bool { return l.Current }); i >= 0 {
		return &stages[i]
	}
	return nil
}

// longestWhole is the number of letters of a word up to which a title is not broken at its
// hyphen: a longer one would not fit beside large type on a small screen.
const longestWhole = 14

// title returns a title whose hyphenated words, such as take-off, are not broken at the end
// of a line.
func title(text string) template.HTML {
	words := strings.Split(text, " ")
	for i, word := range words {
		escaped := template.HTMLEscapeString(word)
		if strings.Contains(word, "-") && utf8.RuneCountInString(word) <= longestWhole {
			escaped = `<span class="whole">` + escaped + "</span>"
		}
		words[i] = escaped
	}
	return template.HTML(strings.Join(words, " "))
}

// caption returns the label of a table's numbers with their unit, which it may have
// already.
func caption(label, unit string) string {
	if unit == "" || strings.HasSuffix(label, ", "+unit) {
		return label
	}
	return label + ", " + unit
}

// bare returns the text of a cell without the unit of its table, which the caption has.
func bare(unit, cell string) string {
	if number, ok := strings.CutSuffix(cell, unit); ok && unit != "" {
		return strings.TrimRightFunc(number, unicode.IsSpace)
	}
	return cell
}

// maxCards is the number of options of a choice up to which they are shown as cards;
// more are a select element.
const maxCards = 4

// uiText returns a text of the theme in a language, or in English if it has no
// translation. slots are pairs of a name and the text that replaces {name}. An
// unknown key is an error.
func (t *Theme) uiText(lang, key string, slots []string) (string, error) {
	text, ok := t.texts[key]
	if !ok {
		return "", fmt.Errorf("words.tsv has no key %s", key)
	}
	if translated := t.lang[lang][key]; translated != "" {
		text = translated
	}
	for i := 0; i+1 < len(slots); i += 2 {
		text = strings.ReplaceAll(text, "{"+slots[i]+"}", slots[i+1])
	}
	return text, nil
}

// pair returns a text in the two systems of units, of which the style sheet shows the
// chosen one. Without a choice a quantity (class q) is shown as 2 ft (600 mm), a
// sentence (class either) in US units only.
func pair(class string, b form.Both) template.HTML {
	us := template.HTMLEscapeString(b.US)
	if b.Same() {
		return template.HTML(us)
	}
	return template.HTML(`<span class="` + class + `"><span class="us">` + us + `</span><span class="si">` +
		template.HTMLEscapeString(b.Metric) + `</span></span>`)
}

// dict returns a map of names and values, given in pairs, for a template with
// several arguments. An odd number of arguments, and a name that is no text, are
// errors.
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

// keys returns the characters, separated by spaces, that an input needs and a
// phone's number pad lacks: feet, inches and fractions for lengths in US units, a
// minus for degrees Fahrenheit. For other inputs it returns "".
func keys(f form.Field) string {
	switch f.Unit.US {
	case "ft", "in":
		return `' " / -`
	case "°F":
		return "-"
	}
	return ""
}

// image returns the address of a picture. The data: addresses of the one-file
// edition are marked as safe, because package html/template replaces them
// otherwise; other addresses are returned unchanged.
func image(src string) any {
	if strings.HasPrefix(src, "data:image/") {
		return template.URL(src)
	}
	return src
}

// dataBlock returns a script element with a text that a script reads. The text is not
// escaped, because the content of the element is not unescaped. A text that would end
// the element is an error.
func dataBlock(id, text string) (template.HTML, error) {
	low := strings.ToLower(text)
	if strings.Contains(low, "</script") || strings.Contains(low, "<!--") {
		return "", fmt.Errorf("the data block %s holds a tag that would end it", id)
	}
	return template.HTML(
		`<script type="text/plain" id="` + template.HTMLEscapeString(id) + `">` + text + `</script>`,
	), nil
}
