package shelf

import (
	"fmt"
	"math"
	"math/rand/v2"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"coursebook/calculators/calc"
	"coursebook/calculators/expression"
	"coursebook/calculators/published"
	"coursebook/calculators/quantity"
)

var us = quantity.Style{System: quantity.US}

const publishedDir = "../../testdata/published"

func TestDeclarations(t *testing.T) {
	seen := map[string]bool{}
	for _, c := range All() {
		if seen[c.ID] {
			t.Errorf("two calculators have the id %s", c.ID)
		}
		seen[c.ID] = true
		for _, s := range calc.Slips(c) {
			t.Errorf("%s: %s", c.ID, s)
		}
	}
}

// The default case of every calculator is a believable job: it runs, and what
// its form holds reads back to the same result, in both systems of units.
func TestDefaultCases(t *testing.T) {
	for _, c := range All() {
		for _, style := range []quantity.Style{us, {System: quantity.Metric}, {System: quantity.Metric, Mark: quantity.Comma}} {
			v := calc.Voice{Style: style}
			res := calc.Execute(c, calc.NewCase(c.In))
			if res.State != calc.OK {
				t.Errorf("%s: the default case is %s: %v", c.ID, res.State, res.Notes)
				continue
			}
			in, notes := calc.Read(c, v.Typed(calc.NewCase(c.In)), style)
			for _, n := range notes {
				t.Errorf("%s: typed default: %s: %s", c.ID, n.At, v.Say(n.Text, n.Slots...))
			}
			again := calc.Execute(c, in)
			if again.State != calc.OK {
				t.Errorf("%s: the typed default is %s", c.ID, again.State)
			}
			if style == us {
				sameShown(t, c.ID, v, res.Out, again.Out)
			}
			if c.Draw != nil && c.Draw(v, in, res).Empty() {
				t.Errorf("%s: the default case draws nothing", c.ID)
			}
			for _, s := range res.Steps {
				v.Work(s)
			}
		}
	}
}

// sameShown holds what a reader sees of two results against each other: the
// example on the page must not change when the reader types what it shows.
func sameShown(t *testing.T, what string, v calc.Voice, a, b calc.Case) {
	t.Helper()
	for i, f := range a.Fields() {
		if v.Write(f, a.At(i)) != v.Write(f, b.At(i)) {
			t.Errorf("%s: %s is %q as declared and %q as typed", what, f.ID, v.Write(f, a.At(i)), v.Write(f, b.At(i)))
			continue
		}
		for k, row := range a.At(i).Rows {
			sameShown(t, what+" "+f.ID, v, row, b.At(i).Rows[k])
		}
	}
}

// Each expression shown to the reader is the function that computes, at
// random points of the size that its variables have in the default case.
func TestExpressionsAreTheirFunctions(t *testing.T) {
	rnd := rand.New(rand.NewPCG(1, 2))
	for _, c := range All() {
		for _, f := range c.Formulas {
			tree, err := expression.Parse(f.Expr)
			if err != nil {
				t.Fatal(err)
			}
			compared := 0
			for range 500 {
				v, vars := point(rnd, f)
				want, err := expression.Eval(tree, vars)
				if err != nil {
					t.Fatal(err)
				}
				got := f.Fn(v)
				if math.IsNaN(want) || math.IsInf(want, 0) {
					continue
				}
				compared++
				if math.Abs(got-want) > 1e-12*math.Max(math.Abs(want), 1e-9) {
					t.Errorf("%s %s at %v: function %v, expression %v", c.ID, f.ID, vars, got, want)
					break
				}
				coherent(t, c, f, tree, v, got)
			}
			if compared < 100 {
				t.Errorf("%s %s: only %d points could be compared", c.ID, f.ID, compared)
			}
		}
	}
}

func point(rnd *rand.Rand, f *calc.Formula) ([]float64, map[string]float64) {
	v := make([]float64, len(f.Vars))
	vars := map[string]float64{}
	for i, x := range f.Vars {
		v[i] = math.Exp(rnd.Float64()*6 - 2) // 0.14 to 55
		if x.Unit == "°" {
			v[i] = 5 + 80*rnd.Float64()
		}
		vars[x.Symbol] = v[i]
		if x.Unit == "°" {
			vars[x.Symbol] = v[i]
		}
	}
	return v, vars
}

// coherent holds the expression in US units against the function in SI units
// for formulas that are shown to each reader in his own.
func coherent(t *testing.T, c *calc.Calculator, f *calc.Formula, tree *expression.Node, v []float64, got float64) {
	if f.Result.US == "" {
		return
	}
	vars := map[string]float64{}
	for i, x := range f.Vars {
		vars[x.Symbol] = v[i]
		if x.US != "" {
			vars[x.Symbol] = calc.From(calc.SI(v[i], x.Unit), x.US)
		}
	}
	us, err := expression.Eval(tree, vars)
	if err != nil {
		t.Fatal(err)
	}
	want := calc.From(calc.SI(got, f.Result.Unit), f.Result.US)
	if math.Abs(us-want) > 1e-9*math.Max(math.Abs(want), 1e-6) {
		t.Errorf("%s %s does not hold in US units: %v, want %v", c.ID, f.ID, us, want)
	}
}

// Every calculator owns a file of published values, and every file has a
// calculator. The table is printed for whoever reads the test's output.
func TestPublishedValues(t *testing.T) {
	files, err := filepath.Glob(filepath.Join(publishedDir, "*.tsv"))
	if err != nil {
		t.Fatal(err)
	}
	owned := map[string]bool{}
	fmt.Printf("%-16s %9s %9s %6s %9s %8s %9s\n", "calculator", "confirmed", "secondary", "memory", "misprints", "derived", "largest")
	for _, c := range All() {
		name := filepath.Join(publishedDir, c.ID+".tsv")
		owned[name] = true
		data, err := os.ReadFile(name)
		if err != nil {
			t.Errorf("%s has no file of published values: %v", c.ID, err)
			continue
		}
		rows, err := published.Parse(name, string(data))
		if err != nil {
			t.Error(err)
			continue
		}
		count := map[string]int{}
		largest := 0.0
		for _, r := range rows {
			count[r.Status]++
			largest = math.Max(largest, check(t, c, r))
		}
		fmt.Printf("%-16s %9d %9d %6d %9d %8d %8.2f×\n", c.ID, count["confirmed"], count["secondary"],
			count["memory"]+count["common practice"], count["misprint"], count["derived"], largest)
	}
	for _, f := range files {
		if !owned[f] {
			t.Errorf("%s belongs to no calculator", f)
		}
	}
}

// check runs one row; it returns the deviation in units of its tolerance.
func check(t *testing.T, c *calc.Calculator, r published.Row) float64 {
	t.Helper()
	if id := r.Formula(); id != "" {
		return checkFormula(t, c, r, id)
	}
	in, notes := calc.Read(c, r.Inputs, us)
	for _, n := range notes {
		t.Errorf("%s %s: %s: %s", c.ID, r.ID, n.At, calc.Voice{Style: us}.Say(n.Text, n.Slots...))
	}
	if len(notes) > 0 {
		return 0
	}
	res := calc.Execute(c, in)
	if res.State != calc.OK {
		t.Errorf("%s %s: %s: %v", c.ID, r.ID, res.State, res.Notes)
		return 0
	}
	f, v := find(res.Out, r.Output)
	if f.ID == "" || !v.Set {
		t.Errorf("%s %s: there is no output %s", c.ID, r.ID, r.Output)
		return 0
	}
	if f.Kind == calc.Choice {
		if (v.Word == r.Printed) == (r.Status == "misprint") {
			t.Errorf("%s %s: %s, published %s", c.ID, r.ID, v.Word, r.Printed)
		}
		return 0
	}
	return compare(t, c, r, v.Num)
}

func checkFormula(t *testing.T, c *calc.Calculator, r published.Row, id string) float64 {
	f := c.Formula(id)
	if f == nil {
		t.Errorf("%s %s: there is no formula %s", c.ID, r.ID, id)
		return 0
	}
	values := make([]float64, len(f.Vars))
	for i, x := range f.Vars {
		k := slices.IndexFunc(r.Inputs, func(e calc.Entry) bool { return e.Path == x.Symbol })
		if k < 0 {
			t.Errorf("%s %s: no value for %s", c.ID, r.ID, x.Symbol)
			return 0
		}
		show := quantity.Show{Dim: quantity.Number}
		if u, ok := quantity.Find(x.Unit); ok && x.Unit != "" {
			show = quantity.Show{Dim: u.Dim, US: quantity.Scale{Unit: x.Unit}}
		}
		si, trouble := quantity.Parse(r.Inputs[k].Text, show, us)
		if trouble != nil {
			t.Errorf("%s %s: %s: %v", c.ID, r.ID, x.Symbol, trouble)
			return 0
		}
		values[i] = si
	}
	return compare(t, c, r, f.Value(values...))
}

func compare(t *testing.T, c *calc.Calculator, r published.Row, si float64) float64 {
	deviation, ok, err := r.Compare(si)
	if err != nil {
		t.Error(err)
	} else if !ok {
		t.Errorf("%s %s: %v SI does not agree with %s %s (tolerance %v, %s): %s", c.ID, r.ID, si, r.Printed, r.Unit, r.Tol, r.Status, r.Source)
	}
	return deviation
}

func find(out calc.Case, path string) (calc.Field, calc.Value) {
	parts := strings.Split(path, ".")
	for i, f := range out.Fields() {
		if f.ID != parts[0] {
			continue
		}
		if len(parts) == 1 {
			return f, out.At(i)
		}
		for k, row := range out.At(i).Rows {
			for j, col := range row.Fields() {
				if calc.Cell(f.ID, k+1, col.ID).String() == path {
					return col, row.At(j)
				}
			}
		}
	}
	return calc.Field{}, calc.Value{}
}
