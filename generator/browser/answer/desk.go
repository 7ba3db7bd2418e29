// Package answer is what the module does for the page: it answers requests of
// text records with text records. It is pure, so that the tests run the very
// code the phone runs; the module around it only moves bytes.
package answer

import (
	"strings"

	"coursebook/calculators/calc"
	"coursebook/calculators/quantity"
	"coursebook/generator/search"
)

// Desk holds what the page has loaded: translations and search indexes.
type Desk struct {
	shelf   []*calc.Calculator
	words   map[string]calc.Words
	indexes map[string]*search.Index
}

// New is a desk that answers for the given calculators.
func New(shelf []*calc.Calculator) *Desk {
	return &Desk{shelf: shelf, words: map[string]calc.Words{}, indexes: map[string]*search.Index{}}
}

// request is a parsed request: the records after the first line, by name.
type request struct{ records []record }

// one is the first record of a name; empty where there is none.
func (q request) one(name string) record {
	for _, r := range q.records {
		if r.at(0) == name {
			return r
		}
	}
	return nil
}

// Answer answers one request. It never panics on a malformed request: the
// answer is then a fault that names what is wrong.
func (d *Desk) Answer(text string) string {
	lines := strings.Split(strings.TrimSuffix(text, "\n"), "\n")
	head := parseRecord(lines[0])
	if head.at(0) != magic || head.at(1) != Version {
		return fault("this page and its module speak different versions")
	}
	q := request{}
	for _, line := range lines[1:] {
		q.records = append(q.records, parseRecord(line))
	}
	w := &writer{}
	w.put(magic, Version, "ok")
	if why := d.do(head.at(2), q, w); why != "" {
		return fault(why)
	}
	return w.b.String()
}

func fault(why string) string {
	w := &writer{}
	w.put(magic, Version, "fault", why)
	return w.b.String()
}

// do carries a command out; it returns what is wrong, or nothing.
func (d *Desk) do(command string, q request, w *writer) string {
	switch command {
	case "hello":
		w.put("fingerprint", calc.Fingerprint(d.shelf))
		return ""
	case "words":
		return d.loadWords(q)
	case "index":
		return d.loadIndex(q)
	case "run":
		return d.run(q, w)
	case "convert":
		return d.convert(q, w)
	case "practice":
		return d.practice(q, w)
	case "judge":
		return d.judge(q, w)
	case "search":
		return d.search(q, w)
	case "mark":
		return d.mark(q, w)
	}
	return "there is no command " + command
}

func (d *Desk) loadWords(q request) string {
	lang := q.one("lang").at(1)
	if lang == "" {
		return "words without a language"
	}
	words := calc.Words{}
	for _, r := range q.records {
		if r.at(0) == "word" {
			words[r.at(1)] = r.at(2)
		}
	}
	d.words[lang] = words
	return ""
}

func (d *Desk) calculator(q request) *calc.Calculator {
	for _, c := range d.shelf {
		if c.ID == q.one("calc").at(1) {
			return c
		}
	}
	return nil
}

func (d *Desk) voice(q request) calc.Voice {
	return calc.Voice{Words: d.words[q.one("lang").at(1)], Style: style(q.one("style"))}
}

func style(r record) quantity.Style {
	s := quantity.Style{System: quantity.US, Mark: quantity.Point}
	if r.at(1) == "metric" {
		s.System = quantity.Metric
	}
	if r.at(2) == "comma" {
		s.Mark = quantity.Comma
	}
	return s
}

func (q request) entries() []calc.Entry {
	var list []calc.Entry
	for _, r := range q.records {
		if r.at(0) == "set" {
			list = append(list, calc.Entry{Path: r.at(1), Text: r.at(2)})
		}
	}
	return list
}

func (d *Desk) loadIndex(q request) string {
	lang := q.one("lang").at(1)
	index, err := search.Open(q.one("data").at(1))
	if err != nil {
		return err.Error()
	}
	d.indexes[lang] = index
	return ""
}
