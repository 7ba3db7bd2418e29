package protocol

import (
	"slices"
	"strings"
	"testing"

	"coursebook/generator/search"
)

// A record is parsed to the fields that were put, without carriage returns.
func TestRecords(t *testing.T) {
	for _, fields := range [][]string{
		{""}, {"", ""}, {"a", "", "b"}, {"tab\there", "line\nhere", "back\\slash"}, {`\t`, `\n`, `\\`, `\`},
		{"\\\t\\\n\\"},
		{"<script>alert(1)</script>", "\x00\x01\x02\xff", "‮ ñ 𝄞"}, {"\\\\t", "ends in \\"},
	} {
		w := &writer{}
		w.put(fields...)
		line, ended := strings.CutSuffix(w.b.String(), "\n")
		if !ended || strings.Contains(line, "\n") || strings.Count(line, "\t") != len(fields)-1 {
			t.Errorf("%q is written as %q", fields, line)
		}
		if got := parseRecord(line); !slices.Equal(got, record(fields)) {
			t.Errorf("%q is read back as %q", fields, got)
		}
	}
	w := &writer{}
	w.put("a\r\nb\r")
	if got := parseRecord(strings.TrimSuffix(w.b.String(), "\n")); got[0] != "a\nb" {
		t.Errorf("carriage returns: %q", got)
	}
}

func TestUnescape(t *testing.T) {
	for in, want := range map[string]string{`\x`: "x", `\`: `\`, `a\`: `a\`, `\\`: `\`, `\\n`: `\n`, `\t\n`: "\t\n",
		"": ""} {
		if got := unescape(in); got != want {
			t.Errorf("%q becomes %q, want %q", in, got, want)
		}
	}
	if r := (record{"a"}); r.at(0) != "a" || r.at(1) != "" {
		t.Error("a short record")
	}
}

// FuzzRecord: a record with any bytes is parsed to the fields that were put.
func FuzzRecord(f *testing.F) {
	f.Add("a", "b\tc")
	f.Add("\\", "\n\\n\\")
	f.Fuzz(func(t *testing.T, a, b string) {
		w := &writer{}
		w.put(a, b)
		got := parseRecord(strings.TrimSuffix(w.b.String(), "\n"))
		clean := func(s string) string { return strings.ReplaceAll(s, "\r", "") }
		if !slices.Equal(got, record{clean(a), clean(b)}) {
			t.Errorf("%q, %q came back as %q", a, b, got)
		}
	})
}

// FuzzAnswer: no request makes the server panic. Every response begins with ok or
// fault and consists of known records.
func FuzzAnswer(f *testing.F) {
	index := search.Build("en",
		[]search.Entry{{URL: "en/a.html", Title: "Brace", Text: "Set a brace at every corner.", Kind: "procedure"}},
		search.Lists{}, func(w string) string { return w })
	w := &writer{}
	w.put(magic, Version, "index")
	w.put("lang", "en")
	w.put("data", index)
	load := w.b.String()
	for _, request := range []string{
		"", load, "coursebook\t1\thello\n", "coursebook\t1\twords\nlang\tes\nword\t8f2b\tTanque {x\n",
		"coursebook\t1\trun\ncalc\ttank\nlang\tes\nstyle\tmetric\tcomma\n" +
			"set\tside\t2,5 m\nset\tboxes.2.side\t1/2\nset\tboxes.3.name\t\\\\\\t\n",
		"coursebook\t1\trun\ncalc\ttank\nset\tboxes\t\nset\tboxes.0.side\t1\nset\tboxes.1.\t1\nset\t.\t1\n",
		"coursebook\t1\tconvert\ncalc\ttank\nstyle\tus\tpoint\n" +
			"to\tmetric\tcomma\nset\tday\t2026-02-30\nset\tlid\tyes\n",
		"coursebook\t1\tsearch\nlang\ten\nq\tbrcae corner\n",
		"coursebook\t1\tpages\nlang\ten\nkind\tprocedure\n",
		"coursebook\t1\tmark\nlang\ten\nq\tbrace\ntext\ta brace\\nhere\n",
	} {
		f.Add(request)
	}
	known := []string{
		"fingerprint", "asked", "state", "out", "note", "step", "drawing", "node", "set", "hit", "found", "excerpt",
	}
	f.Fuzz(func(t *testing.T, request string) {
		s := New(catalog)
		s.Answer(load)
		answer := s.Answer(request)
		lines := strings.Split(strings.TrimSuffix(answer, "\n"), "\n")
		head := parseRecord(lines[0])
		if head.at(0) != magic || head.at(1) != Version || head.at(2) != "ok" && head.at(2) != "fault" {
			t.Errorf("the answer begins with %q", lines[0])
		}
		if head.at(2) == "fault" && (len(lines) != 1 || head.at(3) == "") {
			t.Errorf("a fault of %d lines: %q", len(lines), answer)
		}
		for _, line := range lines[1:] {
			if name := parseRecord(line).at(0); !slices.Contains(known, name) {
				t.Errorf("a record %q", line)
			}
		}
	})
}
