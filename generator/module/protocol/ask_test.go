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

// ask sends a request of unescaped records and returns the records of the response.
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

// askOK is ask for a request that must not fail. It omits the first line of the
// response.
func askOK(t *testing.T, s *Server, command string, records ...[]string) []record {
	t.Helper()
	list := ask(t, s, command, records...)
	if got := strings.Join(list[0], " "); got != "coursebook 1 ok" {
		t.Fatalf("%s: %s", command, got)
	}
	return list[1:]
}

// named returns the records of a name, with fields joined by | for comparison.
func named(list []record, name string) []string {
	var out []string
	for _, r := range list {
		if r.at(0) == name {
			out = append(out, strings.Join(r, "|"))
		}
	}
	return out
}
