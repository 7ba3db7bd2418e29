package source

import (
	"fmt"
	"slices"
	"strconv"
	"strings"
	"time"
	"unicode/utf8"

	"coursebook/generator/internal/fault"

	"go.yaml.in/yaml/v3"
)

// text returns a function that sets *into to a text; line breaks and runs of
// spaces in it become single spaces. A value that is no text is reported on the
// reader and *into is unchanged. what names the key in the faults.
func (r *reader) text(what string, into *string) func(*yaml.Node) {
	return func(n *yaml.Node) {
		if s, ok := r.textValue(n, what); ok {
			*into = s
		}
	}
}

// textValue returns the text of n, its white space as single spaces. It reports a
// value of another type, an empty one and one with characters that no text may
// hold, and returns "" and false. what names the value in the fault.
func (r *reader) textValue(n *yaml.Node, what string) (string, bool) {
	hint := "write " + what + ": some text"
	if n.Kind == yaml.ScalarNode && n.ShortTag() != "!!str" {
		hint = fmt.Sprintf("put it in quotes: %q", clip(n.Value))
		if n.ShortTag() == "!!null" {
			hint = "write the text, or remove the line"
		}
	}
	if n.Kind != yaml.ScalarNode || n.ShortTag() != "!!str" {
		r.wrongType(n, what, "text", hint)
		return "", false
	}
	return r.cleaned(n, what)
}

// written returns a function that sets *into to any single value as it was
// written: 8, 8 ft and "8 ft" alike. A list, a mapping and an empty value are
// reported and *into is unchanged.
func (r *reader) written(what string, into *string) func(*yaml.Node) {
	return func(n *yaml.Node) {
		if n.Kind != yaml.ScalarNode || n.ShortTag() == "!!null" {
			r.wrongType(n, what, "a single value", "write "+what+": some value")
			return
		}
		if s, ok := r.cleaned(n, what); ok {
			*into = s
		}
	}
}

// cleaned returns the value of n with each run of white space as one space and
// none at its ends. It reports an empty value, and one with characters that no
// text may hold, which escapes in quotes can add after the check of the file; it
// then returns "" and false.
func (r *reader) cleaned(n *yaml.Node, what string) (string, bool) {
	s := strings.Join(strings.Fields(n.Value), " ")
	if s == "" {
		r.errorAt(n, "empty", what+" is empty", "write the text, or remove the line")
		return "", false
	}
	for i, c := range s {
		_, size := utf8.DecodeRuneInString(s[i:])
		if code, text, _ := badRune(c, size, s[i]); code != "" {
			line, col := r.escape(n, c)
			r.report(fault.Error, line, col, code, what+" holds the "+text, "delete the character")
			return "", false
		}
	}
	return s, true
}

// list returns a function that appends the texts of a list to *into. A value that
// is no list, an item that is no text and a repeated item are reported and not
// appended.
func (r *reader) list(what string, into *[]string) func(*yaml.Node) {
	return func(n *yaml.Node) {
		r.items(n, what, func(item *yaml.Node) {
			s, ok := r.textValue(item, "each of "+what)
			if ok && slices.Contains(*into, s) {
				r.errorAt(item, "repeated", fmt.Sprintf("%q stands twice in %s", clip(s), what), "remove one")
			} else if ok {
				*into = append(*into, s)
			}
		})
	}
}

// items calls each for every item of a list in order. A value that is no list is
// reported and each is not called.
func (r *reader) items(n *yaml.Node, what string, each func(*yaml.Node)) {
	if n.Kind != yaml.SequenceNode {
		hint := "write each on its own line after a hyphen: - …"
		if n.Kind == yaml.ScalarNode && n.Value != "" {
			hint = fmt.Sprintf("write %s: [%s]", what, clip(n.Value))
		}
		r.wrongType(n, what, "a list", hint)
		return
	}
	for _, item := range n.Content {
		each(item)
	}
}

// yes returns a function that sets *into to true for the value true, which is the only
// one. Any other value is reported and *into is unchanged.
func (r *reader) yes(what string, into *bool) func(*yaml.Node) {
	return func(n *yaml.Node) {
		if n.Kind != yaml.ScalarNode || n.ShortTag() != "!!bool" || n.Value != "true" {
			r.wrongType(n, what, "true", "write "+what+": true, or remove the line")
			return
		}
		*into = true
	}
}

// whole returns a function that sets *into to a whole number from low to high,
// both included. Any other value is reported and *into is unchanged.
func (r *reader) whole(what string, low, high int, into *int) func(*yaml.Node) {
	return func(n *yaml.Node) {
		v, err := strconv.Atoi(n.Value)
		if n.Kind != yaml.ScalarNode || n.ShortTag() != "!!int" || err != nil {
			r.wrongType(n, what, "a whole number", "write "+what+": "+strconv.Itoa(max(low, 1)))
			return
		}
		if v < low || v > high {
			r.errorAt(n, "out-of-range", fmt.Sprintf("%s is %d, outside %d to %d", what, v, low, high),
				"choose a number in that range")
			return
		}
		*into = v
	}
}

// date returns a function that sets *into to a day of the calendar from the year
// 1900 on, as written: YYYY-MM-DD (ISO 8601). Any other value is reported and
// *into is unchanged.
func (r *reader) date(what string, into *string) func(*yaml.Node) {
	const form = "2006-01-02"
	return func(n *yaml.Node) {
		if n.Kind != yaml.ScalarNode {
			r.wrongType(n, what, "a date", "write "+what+": 2026-03-31")
			return
		}
		day, err := time.Parse(form, n.Value)
		switch {
		case err != nil && looksLikeDate(n.Value):
			r.errorAt(n, "bad-date", fmt.Sprintf("%s: there is no day %s", what, n.Value),
				"check month and day: the order is year, month, day")
		case err != nil:
			r.errorAt(n, "bad-date", fmt.Sprintf("%s: %q is not a date", what, clip(n.Value)),
				"write year, month and day with hyphens: 2026-03-31")
		case day.Year() < 1900:
			r.errorAt(n, "bad-date", fmt.Sprintf("%s: the year %d is too long ago", what, day.Year()),
				"write the year with four digits")
		default:
			*into = n.Value
		}
	}
}

// looksLikeDate reports whether s has the form 0000-00-00 with any digits, such as
// month 13.
func looksLikeDate(s string) bool {
	if len(s) != len("2006-01-02") {
		return false
	}
	for i := range len(s) {
		if hyphen := i == 4 || i == 7; hyphen != (s[i] == '-') || !hyphen && (s[i] < '0' || s[i] > '9') {
			return false
		}
	}
	return true
}

// oneOf returns a function that sets *into to a text that is one of words. Any
// other value is reported and *into is unchanged.
func (r *reader) oneOf(what string, words []string, into *string) func(*yaml.Node) {
	return func(n *yaml.Node) {
		s, ok := r.textValue(n, what)
		if !ok {
			return
		}
		if !slices.Contains(words, s) {
			hint := "use one of: " + strings.Join(words, ", ")
			if near, ok := fault.Nearest(s, words); ok {
				hint = fmt.Sprintf("did you mean %q?", near)
			}
			r.errorAt(n, "unknown-word", fmt.Sprintf("%s cannot be %q", what, clip(s)), hint)
			return
		}
		*into = s
	}
}

// id returns a function that sets *into to a name for addresses: a-z, 0-9 and
// single hyphens. A text of another form is reported on the reader and *into is
// unchanged; a value that is no text is reported and empties *into.
func (r *reader) id(what string, into *string) func(*yaml.Node) {
	return func(n *yaml.Node) {
		s, ok := r.textValue(n, what)
		if ok && !slugForm.MatchString(s) {
			r.errorAt(n, "bad-id", fmt.Sprintf("%s %q is not a plain name", what, clip(s)),
				"use a-z, 0-9 and single hyphens: "+suggest(clip(s)))
			return
		}
		*into = s
	}
}
