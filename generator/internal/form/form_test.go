package form

import (
	"reflect"
	"strings"
	"testing"

	"coursebook/calculators/calc"
	"coursebook/calculators/calctest"
	"coursebook/calculators/quantity"
)

// tank is the invented calculator with special cases of forms: an input without a
// range, a symbol with one unit, two rows and a least number of rows.
var tank = func() *calc.Calculator {
	c := calctest.Tank()
	c.In[1].Range = ""
	c.In[5].MinRows, c.In[5].Usual = 1, "1 ft | small; 2 ft"
	c.Formulas[0].Vars[1].US = "m"
	return c
}()

func newForm(t *testing.T, words calc.Translations, mark quantity.Mark, typed ...calc.Entry) *Form {
	t.Helper()
	f, notes := New(tank, words, mark, typed)
	if len(notes) > 0 {
		t.Fatalf("refused: %+v", notes)
	}
	return f
}

// The lengths are GNU units 2.22: 30 ft = 9.144 m, 3 ft = 0.9144 m, 6 in =
// 0.1524 m; the volumes 27 ft³ = 0.76455486 m³, 8 ft³ = 0.22653477 m³.
func TestFieldsAndOutputsInBothSystems(t *testing.T) {
	f := newForm(t, nil, quantity.Point)
	small := newForm(t, nil, quantity.Point, calc.Entry{Path: "boxes.1.side", Text: "3 in"})
	for _, c := range []struct {
		what      string
		got, want any
	}{
		{"id, title, purpose", []string{f.ID, f.Title, f.Purpose}, []string{"tank", "Tank", "How much a tank holds."}},
		{"text", f.Fields[0].Text, Both{`3' 0"`, "0.914 m"}},
		{"bare unit", f.Fields[0].Unit, Both{"ft", "m"}},
		{"range", f.Fields[0].Range, Both{`0' 0" to 30' 0"`, "0.000 m to 9.144 m"}},
		{"help", f.Fields[0].Help, "Inside."},
		{"no range with one limit", f.Fields[1].Range, Both{}},
		{"empty optional", []any{f.Fields[1].Text, f.Fields[1].Optional}, []any{Both{}, true}},
		{"unset flag", f.Fields[2].Text, Both{}},
		{"choice", f.Fields[3].Options, []Option{{"cube", "cubic", true}, {"round", "round", false}}},
		{"choice as typed", f.Fields[3].Text, Both{"cube", "cube"}},
		{"hidden field", f.Fields[4].Asked, false},
		{"rows", []int{len(f.Fields[5].Rows), f.Fields[5].MinRows, f.Fields[5].MaxRows}, []int{2, 1, 3}},
		{"cell path", f.Fields[5].Rows[1][0].Path, "boxes.2.side"},
		{"cell text", f.Fields[5].Rows[1][0].Text, Both{`2' 0"`, "0.610 m"}},
		{"empty cell's column", []any{f.Fields[5].Cols[0].Path, f.Fields[5].Cols[0].Text}, []any{"side", Both{}}},
		{"lead output", f.Outputs, []Output{{"holds", "Holds", Both{"27.0 ft³", "0.76 m³"},
			Both{"27 ft³", "0.7645549 m³"}, true, ""},
			{"open", "Open", Both{"yes", "yes"}, Both{}, false, ""}}},
		{"list", f.Lists, []List{{"left", "In boxes", []string{"Box", "Holds"}, []string{"box", "holds"},
			[]bool{false, true},
			[][]Both{{{"small", "small"}, {"1.0 ft³", "0.03 m³"}}, {{}, {"8.0 ft³", "0.23 m³"}}}}}},
		{"note", small.Notes, []Note{{"caution", "boxes.1.side",
			Both{`Box 1 is smaller than 0' 6".`, "Box 1 is smaller than 0.152 m."}}}},
		{"caution", f.Cautions, []Note{{"warning", "", Both{"Water drowns.", "Water drowns."}}}},
		{"source", f.Sources, []Source{{"book", "N. N., Invented, 1900", "page 1", "from memory",
			"https://example.org/"}}},
	} {
		if !reflect.DeepEqual(c.got, c.want) {
			t.Errorf("%s: %#v, want %#v", c.what, c.got, c.want)
		}
	}
	if !strings.Contains(f.Figure, "<title>Tank</title>") ||
		!strings.Contains(f.Figure, `3&#39; 0`) && !strings.Contains(f.Figure, `3' 0`) {
		t.Errorf("figure: %s", f.Figure)
	}
	if !f.Cautions[0].Text.Same() || small.Notes[0].Text.Same() {
		t.Error("Same is wrong")
	}
}

// Every kind of field has the type of an input.
func TestTypes(t *testing.T) {
	f := newForm(t, nil, quantity.Point)
	want := []string{"number", "number", "flag", "choice", "number", "rows", "day"}
	for i, field := range f.Fields {
		if field.Type != want[i] {
			t.Errorf("%s: %s, want %s", field.Path, field.Type, want[i])
		}
	}
	for k := calc.Number; k <= calc.Rows; k++ {
		if typeNames[k] == "" {
			t.Errorf("kind %d has no name", k)
		}
	}
}

// The texts of the form are parsed to the same case.
func TestTypedTextIsReadBack(t *testing.T) {
	for _, mark := range []quantity.Mark{quantity.Point, quantity.Comma} {
		f := newForm(t, nil, mark, calc.Entry{Path: "lid", Text: "yes"}, calc.Entry{Path: "depth", Text: "4 ft"})
		for _, system := range []quantity.System{quantity.US, quantity.Metric} {
			in, notes := calc.Read(tank, typedOf(f, system), quantity.Style{System: system, Mark: mark})
			if len(notes) > 0 {
				t.Errorf("mark %d, system %d: refused %+v", mark, system, notes)
				continue
			}
			if got := in.Num("depth"); got < 1.2190 || got > 1.2194 || !in.Flag("lid") || len(in.Rows("boxes")) != 2 {
				t.Errorf("mark %d, system %d: depth %v, lid %v, boxes %d",
					mark, system, got, in.Flag("lid"), len(in.Rows("boxes")))
			}
		}
	}
}

func typedOf(f *Form, system quantity.System) []calc.Entry {
	var list []calc.Entry
	for _, field := range f.Fields {
		cells := []Field{field}
		if field.Type == "rows" {
			cells = nil
			for _, row := range field.Rows {
				cells = append(cells, row...)
			}
		}
		for _, c := range cells {
			text := c.Text.US
			if system == quantity.Metric {
				text = c.Text.Metric
			}
			list = append(list, calc.Entry{Path: c.Path, Text: text})
		}
	}
	return list
}

func TestAuthorsInputs(t *testing.T) {
	f := newForm(t, nil, quantity.Point, calc.Entry{Path: "side", Text: "2 ft"}, calc.Entry{Path: "lid", Text: "yes"})
	if f.Outputs[0].Shown.US != "8.0 ft³" || f.Fields[0].Text.US != `2' 0"` || !f.Fields[4].Asked {
		t.Errorf("the author's inputs are not shown: %+v, %+v", f.Outputs, f.Fields[0])
	}
	f = newForm(t, nil, quantity.Point, calc.Entry{Path: "shape", Text: "round"})
	if !f.Refused || f.Figure != "" || f.Outputs[0].Shown != (Both{}) || len(f.Steps) != 0 ||
		f.Notes[0].Level != "refusal" {
		t.Errorf("a refused case shows a result: %+v", f)
	}
	for _, e := range []calc.Entry{{Path: "side", Text: "31 ft"}, {Path: "sid", Text: "1"},
		{Path: "side", Text: "1,5"}} {
		if f, notes := New(tank, nil, quantity.Point, []calc.Entry{e}); f != nil || len(notes) == 0 {
			t.Errorf("%v is accepted", e)
		}
	}
}

func TestOtherLanguageAndMark(t *testing.T) {
	f := newForm(t, calc.Translations{
		calc.Text("Tank").Key(): "Tanque", calc.Between.Key(): "de {low} a {high}",
		calc.Text("cubic").Key(): "cúbico", calc.Text("from memory").Key(): "de memoria"}, quantity.Comma)
	if f.Title != "Tanque" || f.Fields[3].Options[0].Label != "cúbico" || f.Sources[0].Status != "de memoria" {
		t.Errorf("not translated: %s, %+v, %+v", f.Title, f.Fields[3].Options, f.Sources)
	}
	if got := f.Fields[0].Range.Metric; got != "de 0,000 m a 9,144 m" {
		t.Errorf("range: %s", got)
	}
	if got := f.Outputs[0].Shown; got != (Both{"27,0 ft³", "0,76 m³"}) {
		t.Errorf("output: %+v", got)
	}
}

// A sentence states a flag in the language of the page; the input keeps what is typed.
func TestFlagIsStatedInTheLanguage(t *testing.T) {
	words := calc.Translations{calc.YesText.Key(): "sí", calc.NoText.Key(): "que no"}
	for typed, want := range map[string]string{"yes": "sí", "no": "que no"} {
		field := newForm(t, words, quantity.Point, calc.Entry{Path: "lid", Text: typed}).Fields[2]
		if field.Shown() != (Both{want, want}) || field.Text != (Both{typed, typed}) {
			t.Errorf("%s: stated as %+v, typed as %+v", typed, field.Shown(), field.Text)
		}
	}
	if got := newForm(t, nil, quantity.Point).Fields[2].Shown(); got != (Both{}) {
		t.Errorf("a flag that is not set is stated as %+v", got)
	}
}

func TestSteps(t *testing.T) {
	f := newForm(t, nil, quantity.Point)
	if len(f.Steps) != 1 || f.Steps[0].Title != "Volume of a cube" || f.Steps[0].Plain != "V_t = a^2 × h" {
		t.Errorf("steps: %+v", f.Steps)
	}
}
