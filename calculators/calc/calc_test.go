package calc_test

import (
	"hash/fnv"
	"math"
	"slices"
	"strings"
	"testing"

	"coursebook/calculators/calc"
	"coursebook/calculators/calctest"
	"coursebook/calculators/quantity"
)

var (
	tank = calctest.Tank()

	us     = quantity.Style{System: quantity.US}
	metric = quantity.Style{System: quantity.Metric, Mark: quantity.Comma}
)

func entries(pairs ...string) []calc.Entry {
	var list []calc.Entry
	for i := 0; i < len(pairs); i += 2 {
		list = append(list, calc.Entry{Path: pairs[i], Text: pairs[i+1]})
	}
	return list
}

func TestDeclarationHasNoProblems(t *testing.T) {
	for _, s := range calc.Problems(tank) {
		t.Error(s)
	}
}

// A label or a help that is too long is reported, in inputs, outputs and
// columns; letters are counted, not bytes.
func TestLongLabelsAndHelp(t *testing.T) {
	label, help := strings.Repeat("ñ", 28), strings.Repeat("ñ", 80)
	fits := calc.Field{ID: "x", Label: calc.Text(label), Help: calc.Text(help), Kind: calc.FreeText}
	long := calc.Field{ID: "x", Label: calc.Text("a" + label), Help: calc.Text("a" + help), Kind: calc.FreeText}
	for _, c := range []struct {
		in, out calc.Field
		want    []string
	}{
		{fits, fits, nil},
		{long, fits, []string{"input x: label has 29 letters, at most 28 fit",
			"input x: help has 81 letters, at most " +
				"80 fit"}},
		{fits, long, []string{"output x: label has 29 letters, at most 28 fit",
			"output x: help has 81 letters, at most " +
				"80 fit"}},
		{calc.Field{ID: "r", Label: fits.Label, Kind: calc.Rows, MaxRows: 2, Cols: []calc.Field{long}}, fits,
			[]string{"input r x: label has 29 letters, at most 28 fit", "input r x: help has 81 letters, at most 80 " +
				"fit"}},
	} {
		changed := *tank
		changed.In, changed.Out = append([]calc.Field{c.in}, tank.In...), append([]calc.Field{c.out}, tank.Out...)
		if got := calc.Problems(&changed); !slices.Equal(got, c.want) {
			t.Errorf("got %q, want %q", got, c.want)
		}
	}
}

// An output may be written a second time, in another unit of its dimension; an input
// may not, because its text is read back.
func TestSecondDisplay(t *testing.T) {
	psi := &quantity.Display{Dim: quantity.Pressure, US: quantity.UnitDisplay{Unit: "psi", Step: 10},
		Metric: quantity.UnitDisplay{Unit: "MPa", Step: 0.1}}
	also := &quantity.Display{Dim: quantity.Pressure, US: quantity.UnitDisplay{Unit: "kg/cm²", Step: 5}}
	f := calc.Field{ID: "x", Label: calc.Text("Strength"), Display: psi, Also: also}
	for sys, want := range []string{"3000 psi (210 kg/cm²)", "20.7 MPa (210 kg/cm²)"} {
		v := calc.Locale{Style: quantity.Style{System: quantity.System(sys)}}
		if got := v.Write(f, calc.In(3000, "psi")); got != want {
			t.Errorf("3000 psi is written %s, want %s", got, want)
		}
	}
	wrong := f
	wrong.Also = &quantity.Display{Dim: quantity.Force, US: quantity.UnitDisplay{Unit: "kN", Step: 1}}
	asInput := f
	asInput.Range, asInput.Why = "1 to 9000 psi", calc.Text("Check the unit.")
	for _, c := range []struct {
		in, out []calc.Field
		want    []string
	}{
		{nil, []calc.Field{f}, nil},
		{nil, []calc.Field{wrong}, []string{"output x is written in two dimensions"}},
		{[]calc.Field{asInput}, nil, []string{"input x is an input and is written in one way"}},
	} {
		changed := *tank
		changed.In, changed.Out = append(c.in, tank.In...), append(c.out, tank.Out...)
		if got := calc.Problems(&changed); !slices.Equal(got, c.want) {
			t.Errorf("got %q, want %q", got, c.want)
		}
	}
}

func TestDefaultCase(t *testing.T) {
	in, notes := calc.Read(tank, nil, us)
	if len(notes) != 0 {
		t.Fatalf("defaults refused: %v", notes)
	}
	res := calc.Run(tank, in)
	if got := (calc.Locale{Style: us}).Write(tank.Out[0], res.Out.Value("holds")); got != "27.0 ft³" {
		t.Errorf("holds %s, want 27.0 ft³", got)
	}
	if rows := res.Out.Rows("left"); len(rows) != 1 || rows[0].Text("box") != "small" ||
		math.Abs(rows[0].Num("holds")-calc.SI(1, "ft³")) > 1e-12 {
		t.Errorf("rows: %v", rows)
	}
}

// Each refusal has the path of its field and row and names what is accepted.
func TestRefusals(t *testing.T) {
	for _, c := range []struct{ path, text, at, say string }{
		{"side", "0", "side", "Side must be more than 0' 0\". A tank is no lake."},
		{"side", "31 ft", "side", "Side must be at most 30' 0\". A tank is no lake."},
		{"side", "", "side", "Side needs a value."},
		{"depth", "6 in", "depth", "Depth must be at least 1' 0\". A tank is no lake."},
		{"side", "3 lb", "side", ""},
		{"lid", "perhaps", "lid", "Lid is yes or no, not “perhaps”."},
		{"shape", "egg", "shape", "Shape has no answer “egg”. Choose one of: cube, round."},
		{"day", "2026-02-29", "day", "Day needs a date written year-month-day, like 2026-05-14."},
		{"width", "3", "width", "There is no input “width”. The inputs are: side, depth, lid, shape, hinges, boxes, " +
			"day."},
		{"boxes.1.width", "3", "boxes.1.width", ""},
		{"boxes.0.side", "3", "boxes.0.side", ""},
		{"boxes.2.side", "99 ft", "boxes.2.side", "Box side must be at most 30' 0\". A tank is no lake."},
		{"boxes", "1;2;3;4", "boxes", "Boxes takes at most 3 rows."},
		{"boxes", "1 | a | b", "boxes.1", "Row 1 of Boxes has 3 cells. The columns are: side | name."},
		{"boxes", "side|side\n1|2", "boxes", "Boxes names the column “side” twice."},
	} {
		_, notes := calc.Read(tank, entries(c.path, c.text), us)
		if len(notes) != 1 || notes[0].At.String() != c.at {
			t.Errorf("%s=%q: notes %+v, want one at %s", c.path, c.text, notes, c.at)
			continue
		}
		if got := (calc.Locale{Style: us}).Say(notes[0].Text, notes[0].Slots...); c.say != "" && got != c.say {
			t.Errorf("%s=%q: %s, want %s", c.path, c.text, got, c.say)
		}
	}
}

func TestWholeNumbersOnlyWhereAsked(t *testing.T) {
	if _, notes := calc.Read(tank, entries("hinges", "2.5"), us); len(notes) != 0 {
		t.Errorf("an input that is not asked was checked: %v", notes)
	}
	if _, notes := calc.Read(tank, entries("hinges", "2.5", "lid", "yes"), us); len(notes) != 1 {
		t.Errorf("2.5 hinges passed: %v", notes)
	}
}

func TestRowSyntax(t *testing.T) {
	for text, want := range map[string]string{
		"1 ft | a; 2 ft | b":       "a b",
		"1 ft\ta\n2 ft\tb\n":       "a b",
		"name | side; a|1; b|2":    "a b",
		"1 | a;; |  ; 2 | b":       "a b",
		"":                         "",
		"side\n1 ft\n2 ft\n":       " ",
		"name|side\r\na|1\r\nb|2 ": "a b",
	} {
		in, notes := calc.Read(tank, entries("boxes", text), us)
		if len(notes) != 0 {
			t.Errorf("%q refused: %v", text, notes)
		}
		var names []string
		for _, r := range in.Rows("boxes") {
			names = append(names, r.Text("name"))
		}
		if got := strings.Join(names, " "); got != want {
			t.Errorf("%q gives %q, want %q", text, got, want)
		}
	}
}

// Rows keep the number under which they were typed, so that a note has the
// right row even after an empty one.
func TestRowNumbersSurviveEmptyRows(t *testing.T) {
	in, _ := calc.Read(tank,
		entries("boxes.1.side", "", "boxes.1.name", "", "boxes.2.side", "1 in", "boxes.2.name", ""), us)
	res := calc.Run(tank, in)
	if len(res.Notes) != 1 || res.Notes[0].At.String() != "boxes.2.side" {
		t.Fatalf("notes %+v", res.Notes)
	}
	if got := (calc.Locale{Style: us}).Say(res.Notes[0].Text,
		res.Notes[0].Slots...); got != `Box 2 is smaller than 0' 6".` {
		t.Error(got)
	}
}

func TestGivenTwice(t *testing.T) {
	for _, e := range [][]calc.Entry{
		entries("side", "1", "side", "2"),
		entries("boxes", "1", "boxes.1.side", "2"),
		entries("boxes.1.side", "1", "boxes.1.side", "2"),
	} {
		if _, notes := calc.Read(tank, e, us); len(notes) != 1 || notes[0].Text.EN() != "{label} is given twice." {
			t.Errorf("%v: %+v", e, notes)
		}
	}
}

// Entries read back to the same case, in both systems.
func TestTypedReadsBack(t *testing.T) {
	in, _ := calc.Read(tank, entries("lid", "yes", "day", "2024-02-29", "boxes", "2 ft | x; 3 ft | y"), us)
	for _, style := range []quantity.Style{us, metric} {
		v := calc.Locale{Style: style}
		back, notes := calc.Read(tank, v.Entries(in), style)
		if len(notes) != 0 {
			t.Fatalf("%v", notes)
		}
		a, b := v.Entries(in), v.Entries(back)
		for i := range a {
			if a[i] != b[i] {
				t.Errorf("%v became %v", a[i], b[i])
			}
		}
	}
}

func TestRefusedRunHasNoNumbers(t *testing.T) {
	in, _ := calc.Read(tank, entries("shape", "round"), us)
	res := calc.Run(tank, in)
	if res.State != calc.Refused || res.Out.Has("holds") || len(res.Notes) != 1 {
		t.Errorf("%+v", res)
	}
}

func TestNotFiniteIsRefused(t *testing.T) {
	c := *tank
	c.Compute = func(r *calc.Recorder, in calc.Case) { r.Put("holds", math.Inf(1)) }
	if res := calc.Run(&c, calc.NewCase(c.In)); res.State != calc.Refused ||
		res.Notes[0].Text.Key() != calc.NoNumber.Key() {
		t.Errorf("%+v", res)
	}
}

// The same expression serves both systems: feet for one reader, metres for
// the other.
func TestWorkedStep(t *testing.T) {
	in, _ := calc.Read(tank, entries("side", "2 ft"), us)
	step := calc.Run(tank, in).Steps[0]
	w := calc.Locale{Style: us}.Work(step)
	if w.Plain != "V_t = a^2 × h" || w.Substituted != "2^2 × 2" || w.Result != "8 ft³" {
		t.Errorf("%+v", w)
	}
	w = calc.Locale{Style: metric}.Work(step)
	if w.Substituted != "0,6096^2 × 0,6096" || w.Result != "0,22653 m³" {
		t.Errorf("%+v", w)
	}
}

func TestTranslationAndSlots(t *testing.T) {
	const both, word, marked = calc.Text("{a} and {b}"), calc.Text("word"), calc.Text("word|feminine")
	words := calc.Translations{both.Key(): "{b} y {a} {z}", word.Key(): "palabra", marked.Key(): "voz"}
	v := calc.Locale{Words: words, Style: us}
	got := v.Say(both, calc.WordSlot("a", "1"), calc.TextSlot("b", word))
	if got != "palabra y 1 {z}" {
		t.Error(got)
	}
	if v.Say(marked) != "voz" || (calc.Locale{}).Say(marked) != "word" {
		t.Errorf("a marked text reads %q and %q", v.Say(marked), calc.Locale{}.Say(marked))
	}
	if got := v.Say(calc.Text("left {open")); got != "left {open" {
		t.Error(got)
	}
}

// The reference is hash/fnv of the Go standard library.
func TestKeyIsFNV1a(t *testing.T) {
	for _, text := range []calc.Text{"", "a", "How many|feminine", "Área de {n} m², “así”"} {
		h := fnv.New64a()
		h.Write([]byte(text))
		if text.Key() != h.Sum64() {
			t.Errorf("Key(%q) = %x, want %x", text, text.Key(), h.Sum64())
		}
	}
}

func TestFingerprintChangesWithTheDeclaration(t *testing.T) {
	same := calc.Fingerprint([]*calc.Calculator{tank})
	limited, computed := calctest.Tank(), calctest.Tank()
	limited.In[0].Range = "over 0 to 29 ft"
	computed.Compute = func(r *calc.Recorder, in calc.Case) { tank.Compute(r, in); r.Put("holds", 1) }
	for _, other := range []*calc.Calculator{limited, computed} {
		if calc.Fingerprint([]*calc.Calculator{other}) == same {
			t.Error("the fingerprint did not change")
		}
	}
	if calc.Fingerprint([]*calc.Calculator{calctest.Tank()}) != same {
		t.Error("the fingerprint is not stable")
	}
}

// Days are checked against Julian day numbers of the US Naval Observatory
// (from memory): 1970-01-01 is JD 2440587.5, 2000-01-01 JD 2451544.5.
func TestDays(t *testing.T) {
	for text, want := range map[string]int{"1970-01-01": 0, "2000-01-01": 10957, "2000-02-29": 11016, "1969-12-31": -1,
		"2026-11-25": 20782} {
		days, ok := calc.ParseDay(text)
		if !ok || days != want || calc.FormatDay(days) != text {
			t.Errorf("%s: %d %v %s, want %d", text, days, ok, calc.FormatDay(days), want)
		}
	}
	for d := -800000; d < 800000; d += 37 {
		if back, ok := calc.ParseDay(calc.FormatDay(d)); d > -719000 && (!ok || back != d) {
			t.Fatalf("day %d became %d", d, back)
		}
	}
	for _, text := range []string{"", "2026-13-01", "2026-00-10", "2026-02-30", "1900-02-29", "2026-1-1", "26-01-01",
		"2026-01-01x", "+026-01-01"} {
		if _, ok := calc.ParseDay(text); ok {
			t.Errorf("%q was read as a date", text)
		}
	}
}

// A range is read in US units; the unit of the upper end counts for both.
func TestLimits(t *testing.T) {
	length := &quantity.Display{Dim: quantity.Length, US: quantity.UnitDisplay{Form: quantity.FeetInches, Unit: "ft"},
		Metric: quantity.UnitDisplay{Unit: "m"}}
	for _, c := range []struct {
		text      string
		low, high float64 // ft
		open      [2]bool
	}{
		{"1 to 40 ft", 1, 40, [2]bool{}},
		{"-2 to 3 ft", -2, 3, [2]bool{}},
		{"over 0 to 30 ft", 0, 30, [2]bool{true, false}},
		{"0 to under 12 in", 0, 1, [2]bool{false, true}},
		{"1/16 to 6 in", 1.0 / 192, 0.5, [2]bool{}},
		{"6 in to 83 ft 4 in", 0.5, 83 + 1.0/3, [2]bool{}},
	} {
		f := calc.Field{ID: "x", Display: length, Range: c.text, Why: "low", WhyMost: "high", MostSource: "book"}
		least, most, ok := f.Limits()
		near := func(si, feet float64) bool { return math.Abs(si-calc.SI(feet, "ft")) < 1e-12 }
		if !ok || !near(least.SI, c.low) || !near(most.SI, c.high) || [2]bool{least.Open, most.Open} != c.open {
			t.Errorf("%s: %+v to %+v", c.text, least, most)
		}
		if least.Why != "low" || most.Why != "high" || least.Source != "" || most.Source != "book" {
			t.Errorf("%s: reasons of %+v to %+v", c.text, least, most)
		}
	}
	f := calc.Field{ID: "x", Display: length, Range: "1 to 40 ft", Why: "both"}
	if least, most, _ := f.Limits(); least.Why != "both" || most.Why != "both" {
		t.Errorf("one reason serves both ends: %+v, %+v", least, most)
	}
	if _, _, ok := (&calc.Field{}).Limits(); ok {
		t.Error("a field without a range has limits")
	}
}

func TestBadRangesAreProblems(t *testing.T) {
	for _, c := range []struct{ text, want string }{
		{"", "input side needs a range"},
		{"40 ft", "input side: the range: it is not written LOW to HIGH"},
		{"40 to 1 ft", "input side: the range: the upper limit is not above the lower one"},
		{"1 to 40 psf", "input side: the range: “psf” does not measure a length."},
		{"1 to many", "input side: the range: "},
	} {
		bad := calctest.Tank()
		bad.In[0].Range = c.text
		problems := calc.Problems(bad)
		if !slices.ContainsFunc(problems, func(p string) bool { return strings.HasPrefix(p, c.want) }) {
			t.Errorf("%q: %q", c.text, problems)
		}
	}
}

func TestParseClock(t *testing.T) {
	for text, want := range map[string]float64{ // h
		"6:30": 6.5, "06:30": 6.5, "0630": 6.5, "630": 6.5, "7": 7, "7h": 7, "7h30": 7.5, "7 h 30": 7.5, "00:00": 0,
		"23:45": 23.75, "12 am": 0, "12 pm": 12, "2:15 PM": 14.25, "2 p.m.": 14, "11:45am": 11.75, " 7:30 a.m.": 7.5,
	} {
		if got, ok := calc.ParseClock(text); !ok || got != want*3600 {
			t.Errorf("%q is %v s, %v; want %v h", text, got, ok, want)
		}
	}
	for _, text := range []string{"", "m", "am", "24:00", "7:5", "7:60", "13 pm", "0 am", "12345", "7:", ":30", "-1",
		"7xm", "1:2:3", "+7", "7:+5", "7h5", "h30", "7h3x", "7:30 am pm"} {
		if got, ok := calc.ParseClock(text); ok {
			t.Errorf("%q is accepted as %v s", text, got)
		}
	}
}

// A time of day is written so that it reads back, with the day where it is
// another one.
func TestFormatClock(t *testing.T) {
	for hours, want := range map[float64]string{0: "0:00", 7.5: "7:30", 13.0833333: "13:05", 23.99999: "0:00 (+1 d)",
		25.5: "1:30 (+1 d)", 49: "1:00 (+2 d)", -2: "22:00 (-1 d)"} {
		if got := calc.FormatClock(hours * 3600); got != want {
			t.Errorf("%v h is %q, want %q", hours, got, want)
		}
	}
	for minute := range 24 * 60 {
		text := calc.FormatClock(float64(60 * minute))
		if back, ok := calc.ParseClock(text); !ok || back != float64(60*minute) {
			t.Errorf("%s reads back as %v s", text, back)
		}
	}
}
