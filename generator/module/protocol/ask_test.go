package protocol

import (
	"strings"
	"testing"

	"coursebook/calculators/calc"
	"coursebook/calculators/calctest"
)

var (
	tank    = calctest.Tank()
	catalog = []*calc.Calculator{tank, calctest.Bare()}
)

// ask sends records, each of fields yet unescaped, and returns the answer's.
func ask(t *testing.T, s *Server, command string, records ...[]string) []record {
	t.Helper()
	w := &writer{}
	w.put(magic, Version, command)
	for _, r := range records {
		w.put(r...)
	}
	answer := s.Answer(w.b.String())
	if !strings.HasSuffix(answer, "\n") {
		t.Fatalf("the answer does not end its line: %q", answer)
	}
	var list []record
	for _, line := range strings.Split(strings.TrimSuffix(answer, "\n"), "\n") {
		list = append(list, parseRecord(line))
	}
	return list
}

// good is ask, and the answer must be no fault; its first line is left out.
func good(t *testing.T, s *Server, command string, records ...[]string) []record {
	t.Helper()
	list := ask(t, s, command, records...)
	if got := strings.Join(list[0], " "); got != "coursebook 1 ok" {
		t.Fatalf("%s: %s", command, got)
	}
	return list[1:]
}

// of are the records of one name, joined for comparison.
func of(list []record, name string) []string {
	var out []string
	for _, r := range list {
		if r.at(0) == name {
			out = append(out, strings.Join(r, "|"))
		}
	}
	return out
}
