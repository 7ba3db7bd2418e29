package form

import (
	"slices"
	"testing"

	"coursebook/calculators/calc"
	"coursebook/calculators/quantity"
)

// Answer returns the first main result of the example, and none if the example
// depends on a maker's number or is refused.
func TestAnswer(t *testing.T) {
	if out, ok := newForm(t, nil, quantity.Point).Answer(); !ok || out.Label != "Holds" || out.Shown.US != "27.0 ft³" {
		t.Errorf("the answer is %v, %v", out, ok)
	}
	if out, ok := newForm(t, nil, quantity.Point, calc.Entry{Path: "shape", Text: "round"}).Answer(); ok {
		t.Errorf("a refused example has the answer %v", out)
	}
	rated := *tank
	rated.In = slices.Clone(tank.In)
	for i := range rated.In {
		rated.In[i].Maker = rated.In[i].ID == "depth" || rated.In[i].ID == "hinges"
	}
	for _, c := range []struct {
		typed   []calc.Entry
		answers bool
	}{
		{nil, true}, // the depth is empty; hinges are not asked for
		{[]calc.Entry{{Path: "depth", Text: "2 ft"}}, false},
		{[]calc.Entry{{Path: "lid", Text: "yes"}}, false},
	} {
		f, notes := New(&rated, nil, quantity.Point, c.typed)
		if len(notes) > 0 {
			t.Fatal(notes)
		}
		if _, ok := f.Answer(); ok != c.answers || f.Maker == c.answers {
			t.Errorf("%v: answer %v, maker %v", c.typed, ok, f.Maker)
		}
	}
}

// The entries of a field are the texts of the form, with every row.
func TestEntries(t *testing.T) {
	f := newForm(t, nil, quantity.Point, calc.Entry{Path: "side", Text: "2 ft"})
	want := []calc.Entry{{Path: "side", Text: `2' 0"`}, {Path: "depth"}, {Path: "shape", Text: "cube"},
		{Path: "boxes.1.side", Text: `1' 0"`}, {Path: "boxes.1.name", Text: "small"},
		{Path: "boxes.2.side", Text: `2' 0"`}, {Path: "boxes.2.name"}}
	if got := f.Entries([]string{"boxes", "side", "shape", "depth"}); !slices.Equal(got, want) {
		t.Errorf("%v\nnot %v", got, want)
	}
	for i := range f.Fields {
		if f.Fields[i].Type == "rows" {
			f.Fields[i].Rows = nil
		}
	}
	if got := f.Entries([]string{"boxes"}); !slices.Equal(got, []calc.Entry{{Path: "boxes"}}) {
		t.Errorf("no rows: %v", got)
	}
}
