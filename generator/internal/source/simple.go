package source

import (
	"strings"
	"sync"
	"unicode/utf8"

	"gopkg.in/yaml.v3"
)

// Most headers are of one shape: lines of key: value, key: [a, b], or key: with
// lines of - item below. Reading just that takes a tenth of the time that the
// YAML library needs. Whatever is not plainly of this shape goes to the
// library, faulty text above all; what is gives the nodes that the library
// gives, as a test shows.

// simple is a tree of nodes under construction, with room that one page leaves
// to the next.
type simple struct {
	nodes []yaml.Node
	lists []*yaml.Node
}

var simples = sync.Pool{New: func() any { return new(simple) }}

// read returns the mapping that the text is, or nil where it is not of the
// simple shape. The nodes hold until the next read.
func (s *simple) read(text string) *yaml.Node {
	// No line has more nodes than it has commas and two: key, list and items.
	most := 1 + 3*strings.Count(text, "\n") + strings.Count(text, ",")
	clear(s.nodes)
	clear(s.lists)
	if cap(s.nodes) < most {
		s.nodes, s.lists = make([]yaml.Node, 0, most), make([]*yaml.Node, 0, most)
	}
	s.nodes, s.lists = s.nodes[:0], s.lists[:0]

	top := s.node(yaml.MappingNode, 1, 1)
	pairs := make([]*yaml.Node, 0, 32)
	for line := 1; text != ""; line++ {
		row, rest, ended := strings.Cut(text, "\n")
		key, value, ok := strings.Cut(row, ":")
		if !ended || !ok || !isKey(key) {
			return nil
		}
		k := s.scalar(key, line, 1)
		var v *yaml.Node
		if value == "" {
			if v, rest = s.items(rest, line+1); v == nil {
				return nil
			}
			line += len(v.Content)
		} else if v = s.value(value, line, len(key)+2); v == nil {
			return nil
		}
		pairs = append(pairs, k, v)
		text = rest
	}
	top.Content = pairs
	if len(pairs) == 0 {
		return nil
	}
	return top
}

func (s *simple) node(kind yaml.Kind, line, col int) *yaml.Node {
	s.nodes = append(s.nodes, yaml.Node{Kind: kind, Line: line, Column: col})
	return &s.nodes[len(s.nodes)-1]
}

func (s *simple) scalar(text string, line, col int) *yaml.Node {
	n := s.node(yaml.ScalarNode, line, col)
	n.Value = text
	return n
}

// value reads what stands behind a colon: a space, then a plain text or a list
// in brackets. col is that of the space.
func (s *simple) value(text string, line, col int) *yaml.Node {
	text, ok := strings.CutPrefix(text, " ")
	if !ok {
		return nil
	}
	if inner, ok := strings.CutPrefix(text, "["); ok {
		inner, ok = strings.CutSuffix(inner, "]")
		if !ok {
			return nil
		}
		return s.flow(inner, line, col+1)
	}
	if !isPlain(text) {
		return nil
	}
	return s.scalar(text, line, col+1)
}

// flow reads the items of a list in brackets, whose first stands at col.
func (s *simple) flow(inner string, line, col int) *yaml.Node {
	list := s.node(yaml.SequenceNode, line, col)
	from := len(s.lists)
	col++
	for more := true; more; {
		var item string
		item, inner, more = strings.Cut(inner, ",")
		text := strings.TrimLeft(item, " ")
		if !isPlain(text) || strings.ContainsAny(text, "[]{}:?") {
			return nil
		}
		s.lists = append(s.lists, s.scalar(text, line, col+len(item)-len(text)))
		col += utf8.RuneCountInString(item) + 1
	}
	list.Content = s.lists[from:len(s.lists):len(s.lists)]
	return list
}

// items reads the lines of a list, all as far from the margin as the first,
// and returns what follows them.
func (s *simple) items(text string, line int) (list *yaml.Node, rest string) {
	indent := len(text) - len(strings.TrimLeft(text, " "))
	lead := text[:indent] + "- "
	from := len(s.lists)
	for ; ; line++ {
		row, after, ended := strings.Cut(text, "\n")
		item, ok := strings.CutPrefix(row, lead)
		if !ok {
			break
		}
		if !ended || !isPlain(item) {
			return nil, ""
		}
		if list == nil {
			list = s.node(yaml.SequenceNode, line, indent+1)
		}
		s.lists = append(s.lists, s.scalar(item, line, indent+3))
		text = after
	}
	if list != nil {
		list.Content = s.lists[from:len(s.lists):len(s.lists)]
	}
	return list, text
}

func isKey(s string) bool {
	for i := range len(s) {
		if s[i] < 'a' || s[i] > 'z' {
			return false
		}
	}
	return s != "" && len(s) <= 20
}

// isPlain tells whether a text is a scalar without quotes that ends with its
// line: it opens with a letter or digit, and holds no sign that could end it.
func isPlain(s string) bool {
	if s == "" || s[len(s)-1] == ' ' || s[len(s)-1] == ':' {
		return false
	}
	for i, r := range s {
		switch {
		case 'a' <= r && r <= 'z' || 'A' <= r && r <= 'Z' || '0' <= r && r <= '9' || r >= 0xC0 && r <= 0x24F:
		case i == 0 || r < ' ' || r == '#' || r == 0x7F:
			return false
		case r == ':' && s[i+1] == ' ':
			return false
		case r > 0x7F && !(r >= 0xA1 && r < 0x2000 || r >= 0x2010 && r <= 0x2027 || r >= 0x2030 && r <= 0x205E):
			return false
		}
	}
	return true
}
