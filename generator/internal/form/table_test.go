package form

import (
	"reflect"
	"strings"
	"testing"

	"coursebook/calculators/calc"
	"coursebook/calculators/quantity"
)

// The cells are products: a side of 2 ft and a depth of 6 ft make
// 24 ft³, 3 m and 6 ft (1.829 m) make 16.46 m³.
func TestTable(t *testing.T) {
	table := newForm(t, nil, quantity.Point).Tables[0]
	want := Table{ID: "both", Title: "By side and depth", Note: "Cubic.", Down: "Side", Across: "Depth", Out: "Holds",
		US: Grid{Unit: "ft³", Heads: []string{`3' 0"`, `6' 0"`}, Sides: []string{`1' 0"`, `2' 0"`},
			Cells: [][]string{{"3.0 ft³", "6.0 ft³"}, {"12.0 ft³", "24.0 ft³"}}},
		Metric: Grid{Unit: "m³", Heads: []string{"0.914 m", "1.829 m"},
			Sides: []string{"1.000 m", "2.000 m", "3.000 m"},
			Cells: [][]string{{"0.91 m³", "1.83 m³"}, {"3.66 m³", "7.32 m³"}, {"8.23 m³", "16.46 m³"}}}}
	if !reflect.DeepEqual(table, want) {
		t.Errorf("got %+v\nwant %+v", table, want)
	}
}

// A cell for which the method gives no number has the text of hole.
func TestTableWithHoles(t *testing.T) {
	table := newForm(t, nil, quantity.Point).Tables[1]
	if !table.HasHoles || table.US.Heads != nil || !reflect.DeepEqual(table.US.Sides, []string{"cubic", "round"}) ||
		!reflect.DeepEqual(table.US.Cells, [][]string{{"27.0 ft³"}, {hole}}) {
		t.Errorf("got %+v", table)
	}
}

func TestTableOverACell(t *testing.T) {
	table := newForm(t, nil, quantity.Point).Tables[2]
	if table.Down != "Box side" || !reflect.DeepEqual(table.US.Sides, []string{`0' 6"`}) || table.HasHoles {
		t.Errorf("got %+v", table)
	}
}

// New panics with the calculator and the input of a wrong declaration.
func TestTablePanics(t *testing.T) {
	for name, table := range map[string]calc.Table{
		"tank: side=99 ft": {ID: "x", Out: "holds", Down: calc.Axis{Path: "side", US: []string{"99 ft"}}},
		"tank: sid=1 ft":   {ID: "x", Out: "holds", Down: calc.Axis{Path: "sid", US: []string{"1 ft"}}},
		"table x of tank: ": {ID: "x", Out: "holds", Set: []calc.Entry{{Path: "depth", Text: "deep"}},
			Down: calc.Axis{Path: "side", US: []string{"1 ft"}}},
	} {
		c := *tank
		c.Tables = []calc.Table{table}
		message := func() (message string) {
			defer func() { message, _ = recover().(string) }()
			New(&c, nil, quantity.Point, nil)
			return ""
		}()
		if !strings.Contains(message, name) {
			t.Errorf("want a panic with %q, got %q", name, message)
		}
	}
}

// A table has a unit in its caption only if every number has the same one.
func TestCommonUnit(t *testing.T) {
	for _, c := range []struct {
		want  string
		cells [][]string
	}{
		{"yd³", [][]string{{"0.49\u00a0yd³", hole}, {"1,2\u202fyd³", "3 yd³"}}},
		{"", [][]string{{"900 mm", "1.2 m"}}},
		{"", [][]string{{"1 h 20 min", "15 min"}}},
		{"", [][]string{{"does not hold"}}},
		{"", [][]string{{`4' 0"`}}},
		{"", [][]string{{hole}}},
		{"", nil},
	} {
		if got := commonUnit(c.cells); got != c.want {
			t.Errorf("%q has the unit %q, want %q", c.cells, got, c.want)
		}
	}
}
