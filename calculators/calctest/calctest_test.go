package calctest

import (
	"math"
	"os"
	"slices"
	"strings"
	"testing"

	"coursebook/calculators/calc"
	"coursebook/calculators/quantity"
)

var heading = strings.Join(header, "\t") + "\n"

func TestParsePublished(t *testing.T) {
	text := "# a comment\n" + heading +
		"a\tside=2 ft; boxes=1 ft | x; 2 ft | y; lid=yes\tholds\t8\tft³\t0.05\tconfirmed\tBook, p. 1\r\n" +
		"b\ta=1 m; h=1 m\tformula:cube\t1\tm³\t\tderived\tBook\ta note\n"
	rows, err := ParsePublished("x.tsv", text)
	if err != nil || len(rows) != 2 {
		t.Fatalf("%d rows, %v", len(rows), err)
	}
	want := []calc.Entry{
		{Path: "side", Text: "2 ft"}, {Path: "boxes", Text: "1 ft | x; 2 ft | y"}, {Path: "lid", Text: "yes"}}
	if r := rows[0]; !slices.Equal(r.Inputs, want) || r.Tol != 0.05 || r.Source != "Book, p. 1" || r.Formula() != "" {
		t.Errorf("%+v", r)
	}
	if rows[1].Formula() != "cube" || rows[1].Tol != 0 || rows[1].Note != "a note" {
		t.Errorf("%+v", rows[1])
	}
}

func TestParsePublishedNamesTheLine(t *testing.T) {
	for row, want := range map[string]string{
		"a\t\tholds\t8\tft³\t0.05\tseen\tBook":               "x.tsv:2: status must be one of confirmed",
		"a\tside\tholds\t8\tft³\t0.05\tconfirmed\tBook":      "x.tsv:2: an input is name=value: side",
		"a\t\tholds\t8\tft³\t-1\tconfirmed\tBook":            "x.tsv:2: tol must be a number, 0 or more",
		"a\t\tholds\t8\tft³\t0.05\tconfirmed":                "x.tsv:2: id, output, printed and source",
		"a\t\tholds\t8\tft³\t0\tconfirmed\tBook\tn\tb\tmore": "x.tsv:2: too many cells",
		"": "x.tsv: no rows",
	} {
		if _, err := ParsePublished("x.tsv", heading+row); err == nil || !strings.HasPrefix(err.Error(), want) {
			t.Errorf("%q: %v, want %s", row, err, want)
		}
	}
	const want = "x.tsv:1: the header row must be id, inputs"
	if _, err := ParsePublished("x.tsv", "id\tinputs\n"); err == nil || !strings.HasPrefix(err.Error(), want) {
		t.Errorf("%v, want %s", err, want)
	}
}

// A value at its tolerance passes and one beyond it fails; a misprint must not
// match.
func TestCompare(t *testing.T) {
	row := Row{ID: "a", Output: "holds", Printed: "0.33", Unit: "yd³", Tol: 0.01, Status: "confirmed", Source: "Book"}
	show := &quantity.Display{Dim: quantity.Volume,
		US: quantity.UnitDisplay{Unit: "yd³", Step: 0.01}, Metric: quantity.UnitDisplay{Unit: "m³", Step: 0.01}}
	f := calc.Field{ID: "holds", Kind: calc.Number, Display: show}
	if d, err := row.Compare(f, calc.SI(0.34, "yd³")); err != nil || math.Abs(d-1) > 1e-6 {
		t.Errorf("at the edge: %v, %v", d, err)
	}
	_, err := row.Compare(f, calc.SI(0.3232, "yd³")+0.02)
	if err == nil {
		t.Fatal("a value beyond its tolerance is accepted")
	}
	for _, part := range []string{"a: holds 0.349", " yd³ (displayed as 0.35 yd³, 0.267",
		" SI) is not the published 0.33 yd³ ± 0.01 (confirmed: Book)"} {
		if !strings.Contains(err.Error(), part) {
			t.Errorf("%q lacks %q", err, part)
		}
	}
	row.Status = "misprint"
	_, err = row.Compare(f, calc.SI(0.33, "yd³"))
	if err == nil || !strings.Contains(err.Error(), "matches the misprint 0.33 yd³") {
		t.Errorf("a matched misprint: %v", err)
	}
	if d, err := row.Compare(f, calc.SI(0.5, "yd³")); err != nil || d != 0 {
		t.Errorf("a misprint that does not match: %v, %v", d, err)
	}
	exact := Row{ID: "b", Printed: "4", Status: "derived"}
	if _, err := exact.Compare(calc.Field{}, 4+1e-8); err == nil {
		t.Error("without a tolerance a wrong number is accepted")
	}
	exact.Unit = "furlong"
	if _, err := exact.Compare(calc.Field{}, 4); err == nil || err.Error() != "b: unknown unit furlong" {
		t.Error(err)
	}
}

func TestMissingFileNamesThePath(t *testing.T) {
	const want = "hose-content has no published values: create testdata/published/hose-content.tsv;"
	_, err := Published(&calc.Calculator{ID: "hose-content"})
	if err == nil || !strings.HasPrefix(err.Error(), want) {
		t.Error(err)
	}
}

// DEVELOPERS.md lists the columns of the files in their order.
func TestColumnsAreDescribed(t *testing.T) {
	text, err := os.ReadFile("../../DEVELOPERS.md")
	if err != nil {
		t.Fatal(err)
	}
	_, table, ok := strings.Cut(string(text), "| column | holds |\n|---|---|\n")
	if !ok {
		t.Fatal("DEVELOPERS.md has no table of columns")
	}
	for i, line := range strings.Split(table, "\n")[:len(header)] {
		if !strings.HasPrefix(line, "| "+header[i]+" | ") {
			t.Errorf("row %d of the table is %q, want column %s", i+1, line, header[i])
		}
	}
	for _, status := range Statuses {
		if !strings.Contains(table, "`"+status+"`") {
			t.Errorf("DEVELOPERS.md does not describe the status %s", status)
		}
	}
}

func TestInputs(t *testing.T) {
	for text, want := range map[string][]string{
		"":                        nil,
		"a=1":                     {"a=1"},
		"a=1; b=2":                {"a=1", "b=2"},
		"rows=1 | x; 2 | y; b=no": {"rows=1 | x; 2 | y", "b=no"},
	} {
		if got := Inputs(text); !slices.Equal(got, want) {
			t.Errorf("%q gives %q, want %q", text, got, want)
		}
	}
}

// The tank passes the checks of a calculator, and each call returns a new one.
func TestTank(t *testing.T) {
	tank := Tank()
	for _, p := range calc.Problems(tank) {
		t.Error(p)
	}
	if out := Run(t, tank).Out; math.Abs(out.Num("holds")-calc.SI(27, "ft³")) > 1e-12 || len(out.Rows("left")) != 1 {
		t.Errorf("the default case gives %v", out)
	}
	tank.In[0].Range = "0 to 1 ft"
	tank.Formulas[0].Vars[0].Symbol = "b"
	if other := Tank(); other.In[0].Range != "over 0 to 30 ft" || other.Formulas[0].Vars[0].Symbol != "a" {
		t.Error("a change to one tank changes the next")
	}
	expressions(t, Tank())
	anywhere(t, Tank())
}
