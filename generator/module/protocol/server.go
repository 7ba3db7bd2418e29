// Package protocol is the text protocol between a page and the module. A request is a
// command with records; a response is records or a fault. The package does no I/O, so
// that tests run the same code as the module.
package protocol

import (
	"strconv"
	"strings"

	"coursebook/calculators/calc"
	"coursebook/calculators/quantity"
	"coursebook/generator/search"
)

// Server handles requests about its calculators. It stores the amounts of the house
// rules, the translations and the search indexes that the page has sent. It is not safe for concurrent use.
type Server struct {
	declared    []*calc.Calculator
	rules       []*calc.Rule                 // the declared house rules
	calculators []*calc.Calculator           // with the amounts of the house rules
	words       map[string]calc.Translations // by language
	indexes     map[string]*search.Index     // by language
}

// New returns a server for calculators; rules are the declared house rules.
func New(calculators []*calc.Calculator, rules ...*calc.Rule) *Server {
	return &Server{declared: calculators, rules: rules, calculators: calculators,
		words: map[string]calc.Translations{}, indexes: map[string]*search.Index{}}
}

// request holds the records of a request after the first line.
type request struct{ records []record }

// first returns the first record with a name; nil if there is none.
func (q request) first(name string) record {
	for _, r := range q.records {
		if r.at(0) == name {
			return r
		}
	}
	return nil
}

// Answer returns the response to one request. The response to a malformed request is a
// fault with the error. Answer does not panic.
func (s *Server) Answer(text string) string {
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
	if why := s.do(head.at(2), q, w); why != "" {
		return fault(why)
	}
	return w.b.String()
}

// fault returns the response to a request that failed.
func fault(why string) string {
	w := &writer{}
	w.put(magic, Version, "fault", why)
	return w.b.String()
}

// do executes a command and writes the records of the response to w. It returns the
// text of an error, or "".
func (s *Server) do(command string, q request, w *writer) string {
	switch command {
	case "hello":
		w.put("fingerprint", calc.Fingerprint(s.calculators))
		return ""
	case "rules":
		s.setRules(q)
		return ""
	case "words":
		return s.loadWords(q)
	case "index":
		return s.loadIndex(q)
	case "run":
		return s.run(q, w)
	case "convert":
		return s.convert(q, w)
	case "practice":
		return s.practice(q, w)
	case "judge":
		return s.judge(q, w)
	case "search":
		return s.search(q, w)
	case "pages":
		return s.pages(q, w)
	case "mark":
		return s.mark(q, w)
	}
	return "there is no command " + command
}

// setRules replaces the amounts of the house rules by those of the request. A rule that
// is not in the request has no amount.
func (s *Server) setRules(q request) {
	amounts := map[string]string{}
	for _, r := range q.records {
		if r.at(0) == "rule" {
			amounts[r.at(1)] = r.at(2)
		}
	}
	s.calculators = calc.WithRules(s.declared, amounts, s.rules...)
}

// loadWords stores the translations of a language, in place of earlier ones. For a
// missing language and a bad key it returns the text of an error and stores
// nothing; otherwise "".
func (s *Server) loadWords(q request) string {
	lang := q.first("lang").at(1)
	if lang == "" {
		return "words without a language"
	}
	words := calc.Translations{}
	for _, r := range q.records {
		if r.at(0) != "word" {
			continue
		}
		key, err := strconv.ParseUint(r.at(1), 16, 64)
		if err != nil {
			return "a word's key is not hexadecimal: " + r.at(1)
		}
		words[key] = r.at(2)
	}
	s.words[lang] = words
	return ""
}

// calculator returns the calculator that a request names, or nil.
func (s *Server) calculator(q request) *calc.Calculator {
	for _, c := range s.calculators {
		if c.ID == q.first("calc").at(1) {
			return c
		}
	}
	return nil
}

// locale returns the language, units and decimal mark of a request. A language
// without stored translations is English.
func (s *Server) locale(q request) calc.Locale {
	return calc.Locale{Words: s.words[q.first("lang").at(1)], Style: style(q.first("style"))}
}

// style returns the units and decimal mark of a record: US and point unless it has
// metric and comma.
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

// entries returns the inputs of a request in order; nil if there are none. An input that
// was typed in other units names them behind its text.
func (q request) entries() []calc.Entry {
	var list []calc.Entry
	for _, r := range q.records {
		if r.at(0) != "set" {
			continue
		}
		e := calc.Entry{Path: r.at(1), Text: r.at(2)}
		if r.at(3) != "" {
			typed := style(r[2:])
			e.Style = &typed
		}
		list = append(list, e)
	}
	return list
}

// loadIndex stores the search index of a language, in place of an earlier one. For
// an index that cannot be opened it returns the text of an error and stores
// nothing; otherwise "".
func (s *Server) loadIndex(q request) string {
	lang := q.first("lang").at(1)
	index, err := search.Open(q.first("data").at(1))
	if err != nil {
		return err.Error()
	}
	s.indexes[lang] = index
	return ""
}
