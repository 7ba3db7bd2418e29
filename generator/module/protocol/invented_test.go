package protocol

import (
	"strings"
	"testing"

	"coursebook/calculators/calc"
	"coursebook/calculators/figure"
	"coursebook/calculators/quantity"
)

// Invented calculators: a tank with every kind of field, rows and a drawing.
var (
	length = &quantity.Display{Dim: quantity.Length,
		US:     quantity.UnitDisplay{Form: quantity.FeetInches, Unit: "ft", Step: 1.0 / 16},
		Metric: quantity.UnitDisplay{Unit: "m", Step: 0.001}}
	volume = &quantity.Display{Dim: quantity.Volume,
		US:     quantity.UnitDisplay{Unit: "ft³", Step: 0.1},
		Metric: quantity.UnitDisplay{Unit: "m³", Step: 0.01}}

	why = calc.Text("tank.why: A tank is no lake.")

	boxes = []calc.Field{
		{ID: "side", Label: calc.Text("tank.box-side: Box side"), Kind: calc.Number, Display: length,
			Min: &calc.Limit{At: 0, Unit: "ft", Why: why}, Max: &calc.Limit{At: 30, Unit: "ft", Why: why}},
		{ID: "name", Label: calc.Text("tank.name: Name"), Kind: calc.FreeText, Optional: true},
	}

	cube = &calc.Formula{
		ID: "cube", Title: calc.Text("tank.cube: Volume of a cube"), Expr: "a^2*h",
		Result: calc.Var{Symbol: "V", Meaning: calc.Text("tank.v: volume"), Unit: "m³", US: "ft³"},
		Vars: []calc.Var{{Symbol: "a", Meaning: calc.Text("tank.a: side"), Unit: "m", US: "ft"},
			{Symbol: "h", Meaning: calc.Text("tank.h: depth"), Unit: "m", US: "ft"}},
		Fn: calc.FuncN(func(v []float64) float64 { return v[0] * v[0] * v[1] }), Go: "tank.Cube",
	}

	tank = &calc.Calculator{
		ID: "tank", Title: calc.Text("tank.title: Tank"), Purpose: calc.Text("tank.purpose: How much a tank holds."),
		In: []calc.Field{
			{ID: "side", Label: calc.Text("tank.side: Side"), Kind: calc.Number, Display: length, Usual: "3 ft",
				Min: &calc.Limit{At: 0, Unit: "ft", Open: true, Why: why}, Max: &calc.Limit{At: 30, Unit: "ft", Why: why}},
			{ID: "lid", Label: calc.Text("tank.lid: Lid"), Kind: calc.Flag},
			{ID: "shape", Label: calc.Text("tank.shape: Shape"), Kind: calc.Choice, Usual: "cube",
				Options: []calc.Option{{ID: "cube", Label: calc.Text("tank.cubic: cubic")}, {ID: "round", Label: calc.Text("tank.round: round")}}},
			{ID: "day", Label: calc.Text("tank.day: Day"), Kind: calc.Day, Optional: true},
			{ID: "hinges", Label: calc.Text("tank.hinges: Hinges"), Kind: calc.Number, Whole: true, Usual: "2",
				Display: &quantity.Display{Dim: quantity.Number, US: quantity.UnitDisplay{Step: 1}},
				Min:     &calc.Limit{At: 0, Why: why}, Max: &calc.Limit{At: 8, Why: why}, When: func(c calc.Case) bool { return c.Flag("lid") }},
			{ID: "boxes", Label: calc.Text("tank.boxes: Boxes"), Kind: calc.Rows, Cols: boxes, MaxRows: 3,
				Usual: "1 ft | small"},
		},
		Out: []calc.Field{
			{ID: "holds", Label: calc.Text("tank.holds: Holds"), Kind: calc.Number, Display: volume, Lead: true},
			{ID: "open", Label: calc.Text("tank.open: Open"), Kind: calc.Flag},
			{ID: "left", Label: calc.Text("tank.left: In boxes"), Kind: calc.Rows, Cols: []calc.Field{
				{ID: "box", Label: calc.Text("tank.box: Box"), Kind: calc.FreeText},
				{ID: "holds", Label: calc.Text("tank.box-holds: Holds"), Kind: calc.Number, Display: volume}}},
		},
		Formulas: []*calc.Formula{cube}, Compute: fill, Draw: draw,
	}

	plain = &calc.Calculator{ID: "plain", Title: calc.Text("plain.title: Plain"),
		Out: []calc.Field{{ID: "one", Label: calc.Text("plain.one: One"), Kind: calc.Number, Display: volume}}, Compute: func(r *calc.Recorder, _ calc.Case) { r.Put("one", 1) }}
)

func fill(r *calc.Recorder, in calc.Case) {
	if in.Choice("shape") == "round" {
		r.Refuse(calc.At("shape"), calc.Text("tank.no-round: Round tanks are not in this book."))
		return
	}
	r.Put("holds", r.UseFor(calc.Text("tank.of: the {what}"), []calc.Slot{calc.Word("what", "tank")}, cube, in.Num("side"), in.Num("side")))
	r.PutFlag("open", !in.Flag("lid"))
	var rows []calc.Case
	for _, b := range in.Rows("boxes") {
		s := b.Num("side")
		if s < calc.SI(0.5, "ft") {
			r.Note(calc.LevelCaution, calc.Cell("boxes", b.RowNumber(), "side"), calc.Text("tank.small: Box {nr} is smaller than {least}."),
				calc.Count("nr", b.RowNumber()), calc.Amount("least", calc.SI(0.5, "ft"), length))
		}
		rows = append(rows, r.NewRow("left").With("box", calc.TextOf(b.Text("name"))).With("holds", calc.Num(cube.Value(s, s))))
	}
	r.PutRows("left", rows)
}

func draw(v calc.Locale, in calc.Case, _ calc.Result) figure.Drawing {
	d := figure.Drawing{Width: 100.5, Height: 50, Title: v.Say(calc.Text("tank.title: Tank")), Desc: "A <tank> & \"its\" boxes"}
	d.Nodes = append(d.Nodes, figure.Rect(figure.Concrete, figure.Point{X: 1, Y: 2}, 30.125, 4),
		figure.Dimension(figure.Point{}, figure.Point{X: 50}, quantity.Format(in.Num("side"), *length, v.Style)))
	for _, b := range in.Rows("boxes") {
		d.Nodes = append(d.Nodes, figure.Group(figure.Group(figure.Text(figure.Label, figure.Point{X: 3, Y: 4}, figure.Middle, b.Text("name")))))
	}
	return d
}

var shelf = []*calc.Calculator{tank, plain}

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
