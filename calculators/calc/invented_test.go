package calc

import (
	"coursebook/calculators/quantity"
)

// An invented calculator with every kind of field, for the tests of this
// package: a tank filled in steps.
var (
	length = &quantity.Display{Dim: quantity.Length,
		US:     quantity.UnitDisplay{Form: quantity.FeetInches, Unit: "ft", Step: 1.0 / 16},
		Metric: quantity.UnitDisplay{Unit: "m", Step: 0.001}}
	volume = &quantity.Display{Dim: quantity.Volume,
		US:     quantity.UnitDisplay{Unit: "ft³", Step: 0.1},
		Metric: quantity.UnitDisplay{Unit: "m³", Step: 0.01}}
	count = &quantity.Display{Dim: quantity.Number, US: quantity.UnitDisplay{Step: 1}}

	why = Text("tank.why: A tank is no lake.")

	boxes = []Field{
		{ID: "side", Label: Text("tank.side: Side"), Kind: Number, Display: length, Min: &Limit{At: 0, Unit: "ft", Why: why}, Max: &Limit{At: 30, Unit: "ft", Why: why}},
		{ID: "name", Label: Text("tank.name: Name"), Kind: FreeText, Optional: true},
	}

	cube = &Formula{
		ID: "cube", Title: Text("tank.cube: Volume of a cube"), Expr: "a^2*h",
		Result: Var{"V", Text("tank.v: volume"), "m³", "ft³"},
		Vars:   []Var{{"a", Text("tank.a: side"), "m", "ft"}, {"h", Text("tank.h: depth"), "m", "ft"}},
		Fn:     FuncN(func(v []float64) float64 { return v[0] * v[0] * v[1] }), Go: "calc.tank", Source: "book",
	}

	tank = &Calculator{
		ID: "tank", Title: Text("tank.title: Tank"), Purpose: Text("tank.purpose: How much a tank holds."),
		In: []Field{
			{ID: "side", Label: Text("tank.side: Side"), Kind: Number, Display: length, Usual: "3 ft",
				Min: &Limit{At: 0, Unit: "ft", Open: true, Why: why}, Max: &Limit{At: 30, Unit: "ft", Why: why}},
			{ID: "depth", Label: Text("tank.depth: Depth"), Kind: Number, Display: length, Optional: true,
				Min: &Limit{At: 1, Unit: "ft", Why: why}, Max: &Limit{At: 9, Unit: "ft", Why: why}},
			{ID: "lid", Label: Text("tank.lid: Lid"), Kind: Flag},
			{ID: "shape", Label: Text("tank.shape: Shape"), Kind: Choice, Usual: "cube",
				Options: []Option{{"cube", Text("tank.cubic: cube")}, {"round", Text("tank.round: round")}}},
			{ID: "day", Label: Text("tank.day: Day"), Kind: Day, Optional: true},
			{ID: "feet", Label: Text("tank.feet: Feet"), Kind: Number, Display: count, Whole: true, Usual: "4",
				Min: &Limit{At: 0, Why: why}, Max: &Limit{At: 8, Why: why}, When: func(c Case) bool { return c.Flag("lid") }},
			{ID: "boxes", Label: Text("tank.boxes: Boxes"), Kind: Rows, Cols: boxes, MaxRows: 3,
				Usual: "1 ft | small"},
		},
		Out: []Field{
			{ID: "holds", Label: Text("tank.holds: Holds"), Kind: Number, Display: volume, Lead: true},
			{ID: "left", Label: Text("tank.left: Left"), Kind: Rows, Cols: []Field{
				{ID: "box", Label: Text("tank.box: Box"), Kind: FreeText},
				{ID: "holds", Label: Text("tank.holds: Holds"), Kind: Number, Display: volume}}},
		},
		Formulas: []*Formula{cube},
		Sources:  []Source{{ID: "book", Title: "Invented", Where: "page 1", Status: CommonPractice}},
		Compute:  fill,
	}

	tooSmall = Text("tank.too-small: Box {nr} is smaller than {least}.")
	round    = Text("tank.no-round: Round tanks are not in this book.")
)

func fill(r *Recorder, in Case) {
	if in.Choice("shape") == "round" {
		r.Refuse(At("shape"), round)
		return
	}
	side := in.Num("side")
	depth := side
	if in.Has("depth") {
		depth = in.Num("depth")
	}
	r.Put("holds", r.Use(cube, side, depth))
	var rows []Case
	for _, b := range in.Rows("boxes") {
		if b.Num("side") < SI(0.5, "ft") {
			r.Note(LevelCaution, Cell("boxes", b.RowNumber(), "side"), tooSmall, Count("nr", b.RowNumber()), Amount("least", SI(0.5, "ft"), length))
		}
		rows = append(rows, r.NewRow("left").With("box", TextOf(b.Text("name"))).With("holds", Num(cube.Value(b.Num("side"), b.Num("side")))))
	}
	r.PutRows("left", rows)
}
