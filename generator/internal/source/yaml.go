package source

import (
	"bytes"
	"errors"
	"fmt"
	"io"
	"slices"
	"strings"
	"unicode/utf8"

	"coursebook/generator/internal/fault"

	"go.yaml.in/yaml/v3"
)

// reader reads one YAML text strictly: one document, no anchors, aliases,
// merges or tags, no key twice, no key that is not asked for, no value of
// another type. Every departure is a located fault.
type reader struct {
	path   string
	src    []byte
	line   int // the file's line on which src begins
	indent int // columns that src was moved to the left
	faults *fault.List
	bad    bool // an error was found
	count  int  // faults reported
}

// maxFaults bounds the faults of one YAML text; with more, the
// text is something else.
const maxFaults = 50

// key is one key a mapping may have, and what is done with its value.
type key struct {
	name string
	must bool
	read func(*yaml.Node)
}

// document parses the text and returns the value at its top. It returns nil for an
// empty text. For one that is not YAML as package source accepts it, it reports an
// error and returns nil.
func (r *reader) document() *yaml.Node {
	var doc, second yaml.Node
	err := guard(func() error { return decodeTwo(r.src, &doc, &second) })
	switch {
	case err == nil:
		r.errorAt(&second, "yaml-documents", "a second YAML document starts here",
			"keep one document: remove the line ---")
		return nil
	case !errors.Is(err, io.EOF):
		r.syntax(err)
		return nil
	case doc.Kind == 0 || len(doc.Content) == 0:
		return nil
	}
	top := doc.Content[0]
	if !r.plain(top) {
		return nil
	}
	return top
}

// decodeTwo decodes the first two documents of src. It returns io.EOF if there are
// fewer, nil if there are two or more, and otherwise the library's error.
func decodeTwo(src []byte, first, second *yaml.Node) error {
	d := yaml.NewDecoder(bytes.NewReader(src))
	if err := d.Decode(first); err != nil {
		return err
	}
	return d.Decode(second)
}

// guard calls parse and returns its error. A panic in parse becomes an error,
// because the YAML library can panic on a bad file.
func guard(parse func() error) (err error) {
	defer func() {
		if p := recover(); p != nil {
			err = fmt.Errorf("yaml: %v", p)
		}
	}()
	return parse()
}

// plain reports each part of n by which a line means something written elsewhere:
// an alias, an anchor, a tag, a merge key. It returns false if there is one.
func (r *reader) plain(n *yaml.Node) bool {
	switch {
	case n.Kind == yaml.AliasNode:
		r.errorAt(n, "yaml-alias", "alias *"+n.Value+" is not allowed", "write the value out")
		return false
	case n.Anchor != "":
		r.errorAt(n, "yaml-anchor", "anchor &"+n.Anchor+" is not allowed",
			"remove it; write the value out where it is needed")
		return false
	case n.Style&yaml.TaggedStyle != 0:
		r.errorAt(n, "yaml-tag", "tag "+n.Tag+" is not allowed", "remove it")
		return false
	}
	ok := true
	for i, c := range n.Content {
		if n.Kind == yaml.MappingNode && i%2 == 0 && c.ShortTag() == "!!merge" {
			r.errorAt(c, "yaml-merge", "merge key << is not allowed", "write the keys out")
			ok = false
			continue
		}
		ok = r.plain(c) && ok
	}
	return ok
}

// mapping reads the values of n with the functions of keys, and returns the line
// of each key that is present. It reports an n that is no mapping, each unknown or
// repeated key and each required key that is missing. A misspelt key counts as
// present. A nil n has no keys. what names n in the messages.
func (r *reader) mapping(n *yaml.Node, what string, keys []key) map[string]int {
	lines := map[string]int{}
	if n != nil && n.Kind != yaml.MappingNode {
		r.wrongType(n, what, "keys with values", "write "+keys[0].name+": …")
		return lines
	}
	if n != nil {
		r.pairs(n, func(k, v *yaml.Node) {
			i := slices.IndexFunc(keys, func(c key) bool { return c.name == k.Value })
			if i < 0 {
				if near := r.unknownKey(k, what, keys); near != "" && lines[near] == 0 {
					lines[near] = r.line + k.Line - 1 // so that it is not called missing too
				}
				return
			}
			lines[k.Value] = r.line + k.Line - 1
			keys[i].read(v)
		})
	}
	for _, k := range keys {
		if _, there := lines[k.name]; k.must && !there {
			r.errorAt(n, "missing-key", fmt.Sprintf("%s has no %s", what, k.name), "add the line "+k.name+": …")
		}
	}
	return lines
}

// pairs calls each for every key of a mapping, in order. It reports a key that is
// empty or no single value, and a repeated one; each is not called for those.
func (r *reader) pairs(n *yaml.Node, each func(k, v *yaml.Node)) {
	seen := map[string]int{}
	for i := 0; i+1 < len(n.Content); i += 2 {
		k, v := n.Content[i], n.Content[i+1]
		if k.Kind != yaml.ScalarNode || k.Value == "" {
			r.errorAt(k, "odd-key", "key is not a plain word", "write a word, a colon and a value")
			continue
		}
		if first := seen[k.Value]; first > 0 {
			r.errorAt(k, "duplicate-key", fmt.Sprintf("key %q stands twice, first on line %d", k.Value, first),
				"keep one of the two")
			continue
		}
		seen[k.Value] = r.line + k.Line - 1
		each(k, v)
	}
}

// unknownKey reports a key that is none of keys, and returns the name of the one
// that was probably meant, or "".
func (r *reader) unknownKey(k *yaml.Node, what string, keys []key) string {
	names := make([]string, len(keys))
	for i, c := range keys {
		names[i] = c.name
	}
	hint := "use one of: " + strings.Join(names, ", ")
	near, ok := fault.Nearest(k.Value, names)
	if ok {
		hint = fmt.Sprintf("did you mean %q?", near)
	}
	r.errorAt(k, "unknown-key", fmt.Sprintf("unknown key %q in %s", clip(k.Value), what), hint)
	return near
}

// errorAt reports an error at the node, or at the first line if n is nil.
func (r *reader) errorAt(n *yaml.Node, code, text, hint string) {
	line, col := 1, 1
	if n != nil && n.Line > 0 {
		line, col = n.Line, n.Column
	}
	r.report(fault.Error, line, col, code, text, hint)
}

// warnAt reports a warning at the node.
func (r *reader) warnAt(n *yaml.Node, code, text, hint string) {
	r.report(fault.Warning, n.Line, n.Column, code, text, hint)
}

// report adds a fault at line and col of the text, both from 1, with its position
// in the file. An error sets r.bad. After maxFaults faults no more are added.
func (r *reader) report(s fault.Severity, line, col int, code, text, hint string) {
	r.bad = r.bad || s == fault.Error
	if r.count++; r.count > maxFaults {
		return
	}
	r.faults.Add(fault.Fault{Severity: s, File: r.path, Line: r.line + line - 1, Col: r.indent + col, Code: code,
		Text: text, Hint: hint, Source: strings.Repeat(" ", r.indent) + fault.Line(r.src, line)})
}

// wrongType reports that what must be want, such as "a list", but is what n is.
func (r *reader) wrongType(n *yaml.Node, what, want, hint string) {
	r.errorAt(n, "wrong-type", fmt.Sprintf("%s must be %s, not %s", what, want, nature(n)), hint)
}

// nature returns a name of what a value is, for an author who does not know YAML:
// "a list", "the number 8".
func nature(n *yaml.Node) string {
	switch n.Kind {
	case yaml.SequenceNode:
		return "a list"
	case yaml.MappingNode:
		return "keys with values"
	}
	switch n.ShortTag() {
	case "!!null":
		return "empty"
	case "!!bool":
		return "true or false"
	case "!!int", "!!float":
		return "the number " + clip(n.Value)
	case "!!timestamp":
		return "a date"
	}
	return "text"
}

// clip returns s, cut to 60 runes and an ellipsis if it is longer, so that a
// hostile, endless word does not fill the message.
func clip(s string) string {
	const most = 60
	if utf8.RuneCountInString(s) <= most {
		return s
	}
	return string([]rune(s)[:most]) + "…"
}
