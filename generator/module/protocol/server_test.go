package protocol

import (
	"slices"
	"strconv"
	"strings"
	"testing"

	"coursebook/calculators/calc"
	"coursebook/calculators/calctest"
	"coursebook/calculators/figure"
	"coursebook/calculators/quantity"
	"coursebook/generator/search"
)

func TestFirstLine(t *testing.T) {
	s := New(catalog)
	for request, want := range map[string]string{
		"":                               "fault|this page and its module speak different versions",
		"coursebook":                     "fault|this page and its module speak different versions",
		"coursebook\t2\thello":           "fault|this page and its module speak different versions",
		"Coursebook\t1\thello":           "fault|this page and its module speak different versions",
		"coursebook\t1":                  "fault|there is no command ",
		"coursebook\t1\tda\\tnce":        "fault|there is no command da\tnce",
		"coursebook\t1\thello":           "ok",
		"coursebook\t1\thello\n":         "ok",
		"coursebook\t1\thello\tmore\n\n": "ok",
		"coursebook\t1\trun":             "fault|there is no calculator ",
		"coursebook\t1\trun\ncalc\tvat":  "fault|there is no calculator vat",
		"coursebook\t1\tconvert":         "fault|there is no calculator ",
		"coursebook\t1\twords":           "fault|words without a language",
		"coursebook\t1\twords\nlang\tes\nword\tholds\tx": "fault|a word's key is not hexadecimal: holds",
		"coursebook\t1\tsearch\nlang\ten":                "fault|the index of this language is not loaded",
		"coursebook\t1\tmark\nlang\ten":                  "fault|the index of this language is not loaded",
	} {
		line, _, _ := strings.Cut(s.Answer(request), "\n")
		if got := strings.Join(parseRecord(line)[2:], "|"); got != want {
			t.Errorf("%q: %q, want %q", request, got, want)
		}
	}
	if got := askOK(t, s, "hello"); len(got) != 1 || got[0].at(1) != calc.Fingerprint(catalog) {
		t.Errorf("hello: %q", got)
	}
}

// 3 ft cubed is 27 ft³, 0.76455486 m³ (GNU units 2.22).
func TestRun(t *testing.T) {
	s := New(catalog)
	got := askOK(t, s, "run", []string{"calc", "tank"}, []string{"lang", "en"}, []string{"style", "us", "point"},
		[]string{"set", "boxes.1.name", "left\tof\nthe \\door"}, []string{"set", "boxes.1.side", "3 in"})
	for name, want := range map[string][]string{
		"state": {"state|ok"},
		"asked": {"asked|hinges|0"},
		"note":  {`note|caution|boxes.1.side|Box 1 is smaller than 0' 6".`},
		"step":  {"step|Volume of a cube|the tank|V_t = a^2 × h|3^2 × 3|27 ft³|a = 3 ft: side|h = 3 ft: depth"},
	} {
		if have := named(got, name); !slices.Equal(have, want) {
			t.Errorf("%s: %q, want %q", name, have, want)
		}
	}
	outs := named(got, "out")
	for i, want := range []string{"out|holds|Holds|27.0 ft³|27 ft³|0.764554857", "out|open|Open|yes||",
		"out|left.1.box|Box|left\tof\nthe \\door||", "out|left.1.holds|Holds|0.0 ft³|0.015625 ft³|0.00044"} {
		if i >= len(outs) || !strings.HasPrefix(outs[i], want) {
			t.Errorf("outputs %q, want %q", outs, want)
		}
	}
	if len(outs) != 4 {
		t.Errorf("%d outputs", len(outs))
	}
}

// The records of asked fields come first, so that the page shows a field even while
// another cannot be parsed.
func TestAsked(t *testing.T) {
	s := New(catalog)
	for lid, want := range map[string]string{"yes": "asked|hinges|1", "no": "asked|hinges|0", "": "asked|hinges|0"} {
		for _, side := range []string{"2 ft", "no number"} {
			got := askOK(t, s, "run", []string{"calc", "tank"}, []string{"set", "lid", lid},
				[]string{"set", "side", side})
			if strings.Join(got[0], "|") != want {
				t.Errorf("lid %q, side %q: %q first, want %s", lid, side, got[0], want)
			}
		}
	}
	if got := named(askOK(t, s, "run", []string{"calc", "bare"}), "asked"); got != nil {
		t.Errorf("a calculator without hidden fields: %q", got)
	}
}

func TestStates(t *testing.T) {
	s := New(catalog)
	for name, c := range map[string]struct {
		set         []string
		state, note string
	}{
		"refused": {[]string{"set", "shape", "round"}, "refused",
			"note|refusal|shape|Round tanks are not in this book."},
		"out of range": {[]string{"set", "side", "31 ft"}, "bad", "note|refusal|side|"},
		"no number":    {[]string{"set", "side", "<b>\t\n"}, "bad", "note|refusal|side|"},
		"comma":        {[]string{"set", "side", "1,5"}, "bad", "Write a point, not a comma"},
		"cell":         {[]string{"set", "boxes.2.side", "deep"}, "bad", "note|refusal|boxes.2.side|"},
		"no such path": {[]string{"set", "sides", "1"}, "bad", "There is no input “sides”"},
		"no such row":  {[]string{"set", "boxes.999999999999999999999.side", "1"}, "bad", "note|refusal|"},
		"row below 1":  {[]string{"set", "boxes.-1.side", "1"}, "bad", "note|refusal|"},
		"short record": {[]string{"set"}, "bad", "note|refusal|"},
	} {
		got := askOK(t, s, "run", []string{"calc", "tank"}, c.set)
		if s := named(got, "state"); len(s) != 1 || s[0] != "state|"+c.state {
			t.Errorf("%s: %q", name, s)
		}
		if notes := strings.Join(named(got, "note"), "\n"); !strings.Contains(notes, c.note) {
			t.Errorf("%s: notes %q, want %q", name, notes, c.note)
		}
		if n := len(named(got, "out")) + len(named(got, "drawing")) + len(named(got, "node")); n > 0 {
			t.Errorf("%s: %d records of a result", name, n)
		}
	}
}

func TestStyles(t *testing.T) {
	s := New(catalog)
	for style, want := range map[string]string{"us|point": "27.0 ft³", "us|comma": "27,0 ft³",
		"metric|point": "0.76 m³", "metric|comma": "0,76 m³", "": "27.0 ft³"} {
		got := askOK(t, s, "run", []string{"calc", "tank"}, append([]string{"style"}, strings.Split(style, "|")...))
		if out := named(got, "out"); !strings.Contains(out[0], "|"+want+"|") {
			t.Errorf("%s: %s", style, out[0])
		}
	}
}

func TestWords(t *testing.T) {
	s := New(catalog)
	key := func(text calc.Text) string { return strconv.FormatUint(text.Key(), 16) }
	spanish := [][]string{
		{"lang", "es"},
		{"word", key("Holds"), "Capacidad\t{x} \\ y"},
		{"word", key("yes"), "sí"},
		{"else", "x"},
	}
	askOK(t, s, "words", spanish...)
	run := func(lang string) []string {
		return named(askOK(t, s, "run", []string{"calc", "tank"}, []string{"lang", lang}), "out")
	}
	if got := run("es"); !strings.HasPrefix(got[0], "out|holds|Capacidad\t{x} \\ y|") ||
		!strings.Contains(got[1], "|sí|") {
		t.Errorf("in Spanish: %q", got)
	}
	for _, lang := range []string{"en", "fr", ""} {
		if got := run(lang); !strings.HasPrefix(got[0], "out|holds|Holds|") {
			t.Errorf("%q: %q", lang, got)
		}
	}
	askOK(t, s, "words", []string{"lang", "es"}) // new words replace the old ones
	if got := run("es"); !strings.HasPrefix(got[0], "out|holds|Holds|") {
		t.Errorf("after new words: %q", got)
	}
}

// sets returns the set records of a response, for use in a request.
func sets(list []record) [][]string {
	var out [][]string
	for _, r := range list {
		if r.at(0) == "set" {
			out = append(out, r)
		}
	}
	return out
}

// Inputs converted to metric units and back are as before; 3 ft are 0.914 m.
func TestConvert(t *testing.T) {
	s := New(catalog)
	head := func(from, to []string, more ...[]string) [][]string {
		styles := [][]string{append([]string{"style"}, from...), append([]string{"to"}, to...)}
		return slices.Concat([][]string{{"calc", "tank"}}, styles, more)
	}
	us, metric := []string{"us", "point"}, []string{"metric", "comma"}
	typed := [][]string{
		{"set", "side", "3"},
		{"set", "lid", "yes"},
		{"set", "day", "2026-11-25"},
		{"set", "boxes.1.side", "1 1/2 ft"},
		{"set", "boxes.1.name", "a\\b\tc"},
	}
	there := sets(askOK(t, s, "convert", head(us, metric, typed...)...))
	want := map[string]string{
		"side":         "0,914 m",
		"lid":          "yes",
		"shape":        "cube",
		"day":          "2026-11-25",
		"hinges":       "2",
		"boxes.1.side": "0,457 m",
		"boxes.1.name": "a\\b\tc",
	}
	for _, s := range there {
		if want[s[1]] != s[2] {
			t.Errorf("%s became %q, want %q", s[1], s[2], want[s[1]])
		}
		delete(want, s[1])
	}
	if len(want) > 0 {
		t.Errorf("not converted: %v", want)
	}
	back := sets(askOK(t, s, "convert", head(metric, us, there...)...))
	for _, s := range back {
		if s[1] == "side" && s[2] != `3' 0"` || s[1] == "boxes.1.side" && s[2] != `1' 6"` {
			t.Errorf("back again %s is %q", s[1], s[2])
		}
	}
	for _, s := range sets(askOK(t, s, "convert", head(us, metric, []string{"set", "side", "three"},
		[]string{"set", "lid", "no"})...)) {
		if s[1] == "side" {
			t.Errorf("an input that cannot be read became %q", s[2])
		}
	}
}

// element builds nodes from their records, as the page does.
func element(list []record, depth int) (nodes []figure.Node) {
	for i := 0; i < len(list); i++ {
		r := list[i]
		if r.at(1) != strconv.Itoa(depth) {
			continue
		}
		end := i + 1
		for end < len(list) && list[end].at(1) != r.at(1) {
			end++
		}
		n := figure.Node{Tag: r.at(2), Text: r.at(3), Kids: element(list[i+1:end], depth+1)}
		for k := 4; k+1 < len(r); k += 2 {
			n.Attrs = append(n.Attrs, figure.Attr{Name: r[k], Value: r[k+1]})
		}
		nodes, i = append(nodes, n), end-1
	}
	return nodes
}

// The nodes of a response give the same SVG as in the built page.
func TestDrawing(t *testing.T) {
	s := New(catalog)
	hostile := "<script>alert(\"x\")</script>\t&amp;\\n"
	got := askOK(t, s, "run", []string{"calc", "tank"}, []string{"set", "boxes.1.side", "1"},
		[]string{"set", "boxes.1.name", hostile})
	var heads, nodes []record
	for _, r := range got {
		switch r.at(0) {
		case "drawing":
			heads = append(heads, r)
		case "node":
			nodes = append(nodes, r)
		}
	}
	if len(heads) != 1 || len(nodes) != 9 {
		t.Fatalf("%d drawings, %d nodes", len(heads), len(nodes))
	}
	width, _ := strconv.ParseFloat(heads[0].at(1), 64)
	height, _ := strconv.ParseFloat(heads[0].at(2), 64)
	rebuilt := figure.SVG(figure.Drawing{Width: width, Height: height,
		Title: heads[0].at(3), Desc: heads[0].at(4), Nodes: element(nodes, 0)})
	in, _ := calc.Read(tank, []calc.Entry{{Path: "boxes.1.side", Text: "1"}, {Path: "boxes.1.name", Text: hostile}},
		quantity.Style{})
	if want := figure.SVG(tank.Draw(calc.Locale{}, in, calc.Result{})); rebuilt != want {
		t.Errorf("rebuilt %s\nwant    %s", rebuilt, want)
	}
	if got := askOK(t, s, "run", []string{"calc", "bare"}); named(got, "drawing") != nil {
		t.Error("a calculator without a figure draws")
	}
}

func TestSearchAndMark(t *testing.T) {
	s := New(catalog)
	same := func(w string) string { return w }
	data := search.Build("en", []search.Entry{
		{
			URL:     "en/pour.html#lifts",
			Title:   "Pour",
			Section: "Lifts",
			Text:    "Place concrete in level lifts\\and\tcome round.",
			Kind:    "procedure",
		},
		{URL: "en/brace.html", Title: "Brace", Text: "Set a brace at every corner.", Kind: "procedure",
			Urgent: true},
	}, search.Lists{}, same)
	askOK(t, s, "index", []string{"lang", "en"}, []string{"data", data})
	got := askOK(t, s, "search", []string{"lang", "en"}, []string{"q", "corner"})
	if len(got) != 2 || strings.Join(got[0][:4], "|") != "hit|en/brace.html|Brace|" ||
		!strings.Contains(got[0].at(4), "\x01") || got[0].at(5) != "urgent" || got[1].at(1) != "1" {
		t.Errorf("got %q", got)
	}
	if got := askOK(t, s, "search", []string{"lang", "en"}, []string{"q", "level lifts"}); len(got) == 0 ||
		got[0].at(1) != "en/pour.html#lifts" ||
		got[0].at(3) != "Lifts" {
		t.Errorf("got %q", got)
	}
	for _, q := range []string{"", "zzzz", "\t\n\\", "\x01\x02"} {
		got := askOK(t, s, "search", []string{"lang", "en"}, []string{"q", q})
		if len(got) != 1 || got[0].at(1) != "0" {
			t.Errorf("%q finds %q", q, got)
		}
	}
	text := "First a line.\nThen set the brace\tat the corner."
	marked := askOK(t, s, "mark", []string{"lang", "en"}, []string{"q", "corner"}, []string{"text", text})
	if len(marked) != 1 || !strings.Contains(marked[0].at(1), "\x01corner\x02") {
		t.Errorf("marked %q", marked)
	}
	if got := ask(t, s, "search", []string{"lang", "es"}, []string{"q", "x"}); got[0].at(2) != "fault" {
		t.Errorf("without an index: %q", got)
	}
	if got := ask(t, s, "index", []string{"lang", "en"}, []string{"data", "rubbish"}); got[0].at(2) != "fault" {
		t.Errorf("a broken index: %q", got)
	}
	if got := askOK(t, s, "pages", []string{"lang", "en"}, []string{"kind", "urgent"}); len(got) != 2 ||
		got[0].at(1) != "en/brace.html" || got[1].at(1) != "1" {
		t.Errorf("urgent pages: %q", got)
	}
	if got := ask(t, s, "pages", []string{"lang", "es"}, []string{"kind", "urgent"}); got[0].at(2) != "fault" {
		t.Errorf("pages without an index: %q", got)
	}
	if got := askOK(t, s, "search", []string{"lang", "en"}, []string{"q", "corner"}); len(got) != 2 {
		t.Error("a broken index took the place of the good one")
	}
}

// The amounts of the house rules are the default values until they are replaced. A
// request without them, or with an amount that a field cannot read, leaves it unset.
func TestRules(t *testing.T) {
	tank := calctest.Tank()
	tank.In[0].Usual, tank.In[0].Rule = "", "side"
	s := New([]*calc.Calculator{tank})
	for _, c := range []struct{ amount, state string }{
		{"", "bad"}, {"2 ft", "ok"}, {"1 m", "ok"}, {"2 psf", "bad"}, {"90 ft", "bad"}, {"", "bad"},
	} {
		askOK(t, s, "rules", []string{"rule", "side", c.amount}, []string{"rule", "other", "1 ft"}, []string{"rule"})
		got := askOK(t, s, "run", []string{"calc", "tank"}, []string{"style", "us", "point"})
		if want := []string{"state|" + c.state}; !slices.Equal(named(got, "state"), want) {
			t.Errorf("%q: %v, want %v", c.amount, named(got, "state"), want)
		}
		hello := named(askOK(t, s, "hello"), "fingerprint")
		want := calc.Fingerprint(calc.WithRules([]*calc.Calculator{tank}, map[string]string{"side": c.amount}))
		if !slices.Equal(hello, []string{"fingerprint|" + want}) {
			t.Errorf("%q: %v, want %s", c.amount, hello, want)
		}
	}
	if tank.In[0].Usual != "" {
		t.Error("the declaration has changed")
	}
}
