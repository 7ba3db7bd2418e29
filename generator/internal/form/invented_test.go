package form

import (
	"coursebook/calculators/calc"
	"coursebook/calculators/figure"
	"coursebook/calculators/quantity"
)

// An invented calculator with every kind of field: a tank.
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
		Result: calc.Var{Symbol: "V_t", Meaning: calc.Text("tank.v: volume"), Unit: "m³", US: "ft³"},
		Vars: []calc.Var{{Symbol: "a", Meaning: calc.Text("tank.a: side"), Unit: "m", US: "ft"},
			{Symbol: "h", Meaning: calc.Text("tank.h: depth"), Unit: "m", US: "m"}},
		Fn: calc.FuncN(func(v []float64) float64 { return v[0] * v[0] * v[1] }), Go: "tank.Cube", Source: "book",
		Limits: calc.Text("tank.limits: Where walls are upright."),
	}

	tank = &calc.Calculator{
		ID: "tank", Title: calc.Text("tank.title: Tank"), Purpose: calc.Text("tank.purpose: How much a tank holds."),
		In: []calc.Field{
			{ID: "side", Label: calc.Text("tank.side: Side"), Help: calc.Text("tank.side-help: Inside."), Kind: calc.Number,
				Display: length, Usual: "3 ft", Min: &calc.Limit{At: 0, Unit: "ft", Open: true, Why: why}, Max: &calc.Limit{At: 30, Unit: "ft", Why: why}},
			{ID: "depth", Label: calc.Text("tank.depth: Depth"), Kind: calc.Number, Display: length, Optional: true, Min: &calc.Limit{At: 1, Unit: "ft", Why: why}},
			{ID: "lid", Label: calc.Text("tank.lid: Lid"), Kind: calc.Flag},
			{ID: "shape", Label: calc.Text("tank.shape: Shape"), Kind: calc.Choice, Usual: "cube",
				Options: []calc.Option{{ID: "cube", Label: calc.Text("tank.cubic: cubic")}, {ID: "round", Label: calc.Text("tank.round: round")}}},
			{ID: "hinges", Label: calc.Text("tank.hinges: Hinges"), Kind: calc.Number, Whole: true, Usual: "2",
				Display: &quantity.Display{Dim: quantity.Number, US: quantity.UnitDisplay{Step: 1}},
				Min:     &calc.Limit{At: 0, Why: why}, Max: &calc.Limit{At: 8, Why: why}, When: func(c calc.Case) bool { return c.Flag("lid") }},
			{ID: "boxes", Label: calc.Text("tank.boxes: Boxes"), Kind: calc.Rows, Cols: boxes, MinRows: 1, MaxRows: 3,
				Usual: "1 ft | small; 2 ft"},
		},
		Out: []calc.Field{
			{ID: "holds", Label: calc.Text("tank.holds: Holds"), Kind: calc.Number, Display: volume, Lead: true},
			{ID: "left", Label: calc.Text("tank.left: In boxes"), Kind: calc.Rows, Cols: []calc.Field{
				{ID: "box", Label: calc.Text("tank.box: Box"), Kind: calc.FreeText},
				{ID: "holds", Label: calc.Text("tank.holds: Holds"), Kind: calc.Number, Display: volume}}},
		},
		Formulas: []*calc.Formula{cube},
		Sources:  []calc.Source{{ID: "book", Author: "N. N.", Title: "Invented", Year: "1900", Where: "page 1", Status: calc.Memory, Link: "https://example.org/"}},
		Cautions: []calc.Caution{{Level: calc.LevelWarning, Text: calc.Text("tank.deep: Water drowns.")}},
		Tables: []calc.Table{
			{ID: "both", Title: calc.Text("tank.by: By side and depth"), Note: calc.Text("tank.by-note: Cubic."), Out: "holds",
				Down:   calc.Axis{Path: "side", US: []string{"1 ft", "2 ft"}, Metric: []string{"1 m", "2 m", "3 m"}},
				Across: calc.Axis{Path: "depth", US: []string{"3 ft", "6 ft"}}},
			{ID: "shapes", Title: calc.Text("tank.shapes: By shape"), Out: "holds",
				Down: calc.Axis{Path: "shape", US: []string{"cube", "round"}}},
			{ID: "boxes", Title: calc.Text("tank.box-table: By first box"), Out: "holds", Down: calc.Axis{Path: "boxes.1.side", US: []string{"6 in"}}},
		},
		Compute: fill, Draw: draw,
	}
)

func fill(r *calc.Recorder, in calc.Case) {
	if in.Choice("shape") == "round" {
		r.Refuse(calc.At("shape"), calc.Text("tank.no-round: Round tanks are not in this book."))
		return
	}
	depth := in.Num("side")
	if in.Has("depth") {
		depth = in.Num("depth")
	}
	r.Put("holds", r.Use(cube, in.Num("side"), depth))
	r.Note(calc.LevelCaution, calc.At("side"), calc.Text("tank.least: At least {least}."), calc.Amount("least", calc.SI(6, "in"), length))
	var rows []calc.Case
	for _, b := range in.Rows("boxes") {
		s := b.Num("side")
		rows = append(rows, r.NewRow("left").With("box", calc.TextOf(b.Text("name"))).With("holds", calc.Num(cube.Value(s, s))))
	}
	r.PutRows("left", rows)
}

func draw(v calc.Locale, in calc.Case, _ calc.Result) figure.Drawing {
	return figure.Drawing{Width: 10, Height: 10, Title: v.Say(calc.Text("tank.title: Tank")),
		Nodes: []figure.Node{figure.Text(figure.Label, figure.Point{}, figure.Start, quantity.Format(in.Num("side"), *length, v.Style))}}
}
