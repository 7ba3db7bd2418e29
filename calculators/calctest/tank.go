package calctest

import (
	"coursebook/calculators/calc"
	"coursebook/calculators/figure"
	"coursebook/calculators/quantity"
)

// Tank returns an invented calculator, for tests of the packages that read,
// run and display calculators. It computes the volume of a tank and of the boxes
// in it. It has
// every kind of field, a formula, tables, notes and a drawing; it refuses round
// tanks. Each call returns a new one, so that a test may change it.
func Tank() *calc.Calculator {
	cube := tankFormula()
	return &calc.Calculator{
		ID: "tank", Title: calc.Text("Tank"), Purpose: calc.Text("How much a tank holds."),
		In:       tankInputs(),
		Out:      tankOutputs(),
		Formulas: []*calc.Formula{cube},
		Sources: []calc.Source{{ID: "book", Author: "N. N.", Title: "Invented", Year: "1900",
			Where:  calc.Text("page 1"),
			Status: calc.Memory, Link: "https://example.org/"}},
		Cautions: []calc.Caution{{Level: calc.LevelWarning, Text: calc.Text("Water drowns.")}},
		Tables:   tankTables(),
		Compute:  func(r *calc.Recorder, in calc.Case) { fillTank(r, in, cube) },
		Draw:     drawTank,
	}
}

// Bare returns an invented calculator with one output and nothing else.
func Bare() *calc.Calculator {
	return &calc.Calculator{
		ID: "bare", Title: calc.Text("Bare"), Purpose: calc.Text("One."),
		Out:     []calc.Field{{ID: "one", Label: calc.Text("One"), Kind: calc.Number, Display: tankVolume}},
		Compute: func(r *calc.Recorder, _ calc.Case) { r.Put("one", 1) },
	}
}

var (
	tankLength = &quantity.Display{Dim: quantity.Length,
		US:     quantity.UnitDisplay{Form: quantity.FeetInches, Unit: "ft", Step: 1.0 / 16},
		Metric: quantity.UnitDisplay{Unit: "m", Step: 0.001}}
	tankVolume = &quantity.Display{Dim: quantity.Volume,
		US:     quantity.UnitDisplay{Unit: "ft³", Step: 0.1},
		Metric: quantity.UnitDisplay{Unit: "m³", Step: 0.01}}
	tankCount = &quantity.Display{Dim: quantity.Number, US: quantity.UnitDisplay{Step: 1}}
)

const tankReason = calc.Text("A tank is no lake.")

func tankFormula() *calc.Formula {
	return &calc.Formula{
		ID: "cube", Title: calc.Text("Volume of a cube"), Expr: "a^2*h",
		Result: calc.Var{Symbol: "V_t", Meaning: calc.Text("volume"), Unit: "m³", US: "ft³"},
		Vars: []calc.Var{
			{Symbol: "a", Meaning: calc.Text("side"), Unit: "m", US: "ft"},
			{Symbol: "h", Meaning: calc.Text("depth"), Unit: "m", US: "ft"},
		},
		Fn: calc.FuncN(func(v []float64) float64 { return v[0] * v[0] * v[1] }), Go: "tank.Cube", Source: "book",
		Limits: calc.Text("Where walls are upright."),
	}
}

func tankInputs() []calc.Field {
	return []calc.Field{
		{ID: "side", Label: calc.Text("Side"), Help: calc.Text("Inside."),
			Kind: calc.Number, Display: tankLength, Usual: "3 ft",
			Range: "over 0 to 30 ft", Why: tankReason},
		{ID: "depth", Label: calc.Text("Depth"), Kind: calc.Number, Display: tankLength, Optional: true,
			Range: "1 to 9 ft", Why: tankReason},
		{ID: "lid", Label: calc.Text("Lid"), Kind: calc.Flag},
		{ID: "shape", Label: calc.Text("Shape"), Kind: calc.Choice, Usual: "cube", Options: []calc.Option{
			{ID: "cube", Label: calc.Text("cubic")}, {ID: "round", Label: calc.Text("round")}}},
		{ID: "hinges", Label: calc.Text("Hinges"), Kind: calc.Number, Display: tankCount,
			Whole: true, Usual: "2",
			Range: "0 to 8", Why: tankReason,
			When: func(c calc.Case) bool { return c.Flag("lid") }},
		{ID: "boxes", Label: calc.Text("Boxes"), Kind: calc.Rows, MaxRows: 3, Usual: "1 ft | small",
			Cols: []calc.Field{
				{ID: "side", Label: calc.Text("Box side"), Kind: calc.Number, Display: tankLength,
					Range: "0 to 30 ft", Why: tankReason},
				{ID: "name", Label: calc.Text("Name"), Kind: calc.FreeText, Optional: true},
			}},
		{ID: "day", Label: calc.Text("Day"), Kind: calc.Day, Optional: true},
	}
}

func tankOutputs() []calc.Field {
	return []calc.Field{
		{ID: "holds", Label: calc.Text("Holds"), Kind: calc.Number, Display: tankVolume, Lead: true},
		{ID: "open", Label: calc.Text("Open"), Kind: calc.Flag},
		{ID: "left", Label: calc.Text("In boxes"), Kind: calc.Rows, Cols: []calc.Field{
			{ID: "box", Label: calc.Text("Box"), Kind: calc.FreeText},
			{ID: "holds", Label: calc.Text("Holds"), Kind: calc.Number, Display: tankVolume},
		}},
	}
}

func tankTables() []calc.Table {
	return []calc.Table{
		{ID: "both", Title: calc.Text("By side and depth"), Out: "holds",
			Note:   calc.Text("Cubic."),
			Down:   calc.Axis{Path: "side", US: []string{"1 ft", "2 ft"}, Metric: []string{"1 m", "2 m", "3 m"}},
			Across: calc.Axis{Path: "depth", US: []string{"3 ft", "6 ft"}}},
		{ID: "shapes", Title: calc.Text("By shape"), Out: "holds",
			Down: calc.Axis{Path: "shape", US: []string{"cube", "round"}}},
		{ID: "boxes", Title: calc.Text("By first box"), Out: "holds",
			Down: calc.Axis{Path: "boxes.1.side", US: []string{"6 in"}}},
		{ID: "sides", Title: calc.Text("By side"), Out: "holds",
			Down: calc.Axis{Path: "side", US: []string{"1 ft", "2 ft"}}},
	}
}

// fillTank computes the tank. It refuses a round one, and notes each small box.
func fillTank(r *calc.Recorder, in calc.Case, cube *calc.Formula) {
	if in.Choice("shape") == "round" {
		r.Refuse(calc.At("shape"), calc.Text("Round tanks are not in this book."))
		return
	}
	side := in.Num("side")
	depth := side
	if in.Has("depth") {
		depth = in.Num("depth")
	}
	what := []calc.Slot{calc.WordSlot("what", "tank")}
	r.Put("holds", r.UseFor(calc.Text("the {what}"), what, cube, side, depth))
	r.PutFlag("open", !in.Flag("lid"))
	least := calc.SI(0.5, "ft")
	var rows []calc.Case
	for _, b := range in.Rows("boxes") {
		s := b.Num("side")
		if s < least {
			r.Note(calc.LevelCaution, calc.Cell("boxes", b.RowNumber(), "side"),
				calc.Text("Box {nr} is smaller than {least}."),
				calc.Count("nr", b.RowNumber()), calc.Amount("least", least, tankLength))
		}
		row := r.NewRow("left").With("box", calc.TextOf(b.Text("name")))
		rows = append(rows, row.With("holds", calc.Num(cube.Value(s, s))))
	}
	r.PutRows("left", rows)
}

// drawTank returns the drawing of a tank with characters that must be escaped.
func drawTank(v calc.Locale, in calc.Case, _ calc.Result) figure.Drawing {
	d := figure.Drawing{Width: 100.5, Height: 50,
		Title: v.Say(calc.Text("Tank")), Desc: "A <tank> & \"its\" boxes"}
	side := quantity.Format(in.Num("side"), *tankLength, v.Style)
	d.Nodes = append(d.Nodes, figure.Rect(figure.Concrete, figure.Point{X: 1, Y: 2}, 30.125, 4),
		figure.Dimension(figure.Point{X: 10, Y: 20}, figure.Point{X: 60, Y: 20}, side))
	for _, b := range in.Rows("boxes") {
		name := figure.Text(figure.Label, figure.Point{X: 3, Y: 4}, figure.Middle, b.Text("name"))
		d.Nodes = append(d.Nodes, figure.Group(figure.Group(name)))
	}
	return d
}
