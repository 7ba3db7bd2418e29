// Package wallvolume computes the concrete of a wall form and the order for it. Every
// volume is given in cubic yards and in cubic metres, regardless of the reader's
// units, because mistaking one for the other is a costly error.
package wallvolume

import (
	"math"

	"coursebook/calculators/calc"
	"coursebook/calculators/displays"
	"coursebook/calculators/geometry"
	"coursebook/calculators/quantity"
)

// Calculator computes the concrete of a wall form and the order for it. Every
// volume is given in cubic yards and in cubic metres, regardless of the reader's
// units, because mistaking one for the other is a costly error.
var Calculator = &calc.Calculator{
	ID:       "wall-volume",
	Title:    calc.Text("Wall volume and order"),
	Purpose:  calc.Text("How much concrete the walls take, and what to order."),
	In:       inputs,
	Out:      outputs,
	Formulas: formulas,
	Sources:  sources,
	Cautions: []calc.Caution{
		{
			Level: calc.LevelNotice,
			Text:  calc.Text("Say the unit with every order: yards or meters. Have the plant read it back."),
		},
		{
			Level: calc.LevelNotice,
			Text: calc.Text(
				"All openings are deducted, small ones too: bucks in foam forms are exact. Bars and ties are not " +
					"deducted.",
			),
		},
		{
			Level: calc.LevelNotice,
			Text: calc.Text(
				"Pump line and hopper are not in the volume. Add what the pump holds at the end, or cover it by waste.",
			),
		},
	},
	Tables:  tables,
	Compute: compute,
	Draw:    draw,
}

var sources = []calc.Source{
	{
		ID:     "navedtra",
		Author: "US Navy",
		Title:  "Engineering Aid, NAVEDTRA 14070",
		Where:  calc.Text("concrete take-off of figure 5-2"),
		Status: calc.Confirmed,
	},
	{
		ID:     "lejeune",
		Author: "E. G. Le Jeune",
		Title:  "Estimating Concrete Work II: foundation walls, Concrete Construction",
		Year:   "1967",
		Where:  calc.Text("lines A, B and basement"),
		Status: calc.Confirmed,
	},
	{ID: "griffith", Author: "I. S. Griffith", Title: "Carpentry", Where: calc.Text("concrete estimating"),
		Status: calc.Confirmed},
	{ID: "waste", Author: "Concrete Construction", Title: "Yield problems and waste allowance",
		Where: calc.Text("allowances by kind of work; textbooks run from 0 to 10 %"), Status: calc.Confirmed,
		Link: "https://www.concreteconstruction.net/how-to/yield-problems-and-waste-allowance_o"},
	{
		ID:     "loads",
		Author: "Ready-mix producer's guide",
		Title:  "Calculating truck requirements",
		Where:  calc.Text("number of loads"),
		Status: calc.Confirmed,
	},
	{ID: "sp811", Author: "NIST", Title: "Guide for the Use of the International System of Units, SP 811", Year: "2008",
		Where: calc.Text("appendix B, units of volume"), Status: calc.Memory,
		Link: "https://www.nist.gov/pml/special-publication-811"},
	{
		ID:     "geometry",
		Author: "",
		Title:  "Corner rule for right angles, chord and rise of an arc",
		Where:  calc.Text("derived; handbook relations from memory"),
		Status: calc.Memory,
	},
	{
		ID:     "practice",
		Where:  calc.Text("Order steps, truck sizes, deducting every opening in foam forms"),
		Status: calc.CommonPractice,
	},
}

var tables = []calc.Table{
	{
		ID:    "yards",
		Title: calc.Text("Cubic yards in 10 ft (3.05 m) of wall"),
		Note:  tableNote,
		Out:   "net-yd", Set: tableSet("10 ft"), Down: tableCore, Across: tableHeight,
	},
	{
		ID:    "metres",
		Title: calc.Text("Cubic meters in 10 m (32' 10\") of wall"),
		Note:  tableNote,
		Out:   "net-m", Set: tableSet("10 m"), Down: tableCore, Across: tableHeight,
	},
}

var (
	tableNote = calc.Text("Net, along the centerline, by core thickness and height. No waste, no openings.")
	tableCore = calc.Axis{
		Path:   "core",
		US:     []string{"4 in", "6 in", "8 in", "10 in", "12 in"},
		Metric: []string{"100 mm", "150 mm", "200 mm", "250 mm", "300 mm"},
	}
	tableHeight = calc.Axis{
		Path:   "runs.1.height",
		US:     []string{"4 ft", "8 ft", "9 ft", "10 ft", "12 ft"},
		Metric: []string{"1.2 m", "2.4 m", "2.7 m", "3 m", "3.6 m"},
	}
)

// tableSet returns the inputs of a piece of wall of this length without openings,
// measured along its middle.
func tableSet(length string) []calc.Entry {
	return []calc.Entry{
		{Path: "measured", Text: "centre"},
		{Path: "runs.1.length", Text: length},
		{Path: "openings", Text: ""},
		{Path: "block-outs", Text: ""},
	}
}

var formulas = []*calc.Formula{
	geometry.CentreLineFormula, geometry.WallsVolumeFormula, geometry.PrismFormula, geometry.ChordRadiusFormula,
	geometry.ChordAngleFormula, geometry.CentreRadiusFormula, geometry.ArcLengthFormula, geometry.ArcVolumeFormula,
	geometry.NetVolumeFormula, geometry.WithWasteFormula, geometry.InCubicYardsFormula, geometry.OrderYardsFormula,
	geometry.OrderMetresFormula, geometry.LoadsFormula, geometry.LastLoadFormula, geometry.ExtraFormula,
}

// computeOrder sets the order and the loads for a net volume, in m³, and notes an order
// typed by the reader that does not match.
func computeOrder(r *calc.Recorder, in calc.Case, net float64) {
	order, need := geometry.PutOrder(r, in, net)
	if in.Has("order") {
		checkOrder(r, in, order, need)
	}
}

// displayOf returns the display of volumes for a unit, m3 or yd3.
func displayOf(unit string) *quantity.Display {
	if unit == "m3" {
		return inMetres
	}
	return inYards
}

// checkOrder sets the difference between the typed order and the computed one, in
// m³, and notes one that does not match. A number that matches in the other unit
// gets a note of its own.
func checkOrder(r *calc.Recorder, in calc.Case, order, need float64) {
	unit, other := in.Choice("order-unit"), "m3"
	if unit == "m3" {
		other = "yd3"
	}
	used, swapped := displayOf(unit), displayOf(other)
	typed := calc.SI(in.Num("order"), used.US.Unit)
	geometry.PutVolume(r, "difference", typed-order)
	mistaken := calc.SI(in.Num("order"), swapped.US.Unit)
	switch {
	case !far(typed, order) && calc.Over(need, typed):
		r.Note(calc.LevelNotice, calc.At("order"), runsShort, calc.Amount("typed", typed, used),
			calc.Amount("need", need, used))
	case !far(typed, order):
	case !far(mistaken, order):
		r.Note(calc.LevelAsk, calc.At("order-unit"), otherUnit, calc.Amount("typed", typed, used),
			calc.Amount("right", order, swapped))
	default:
		r.Note(calc.LevelAsk, calc.At("order"), farOff, calc.Amount("typed", typed, used),
			calc.Amount("right", order, used))
	}
}

// far reports whether two volumes differ by more than farShare of the computed.
func far(typed, computed float64) bool {
	return calc.Over(math.Abs(typed-computed), farShare*computed)
}

// The IDs of a volume in both units end in -yd and -m.
var outputs = []calc.Field{
	{ID: "order-yd", Label: calc.Text("Order in cubic yards"), Display: &displays.CubicYardsUp, Lead: true},
	{ID: "order-m", Label: calc.Text("Order in cubic meters"), Display: &displays.CubicMetresUp, Lead: true},
	{ID: "loads", Label: calc.Text("Truck loads"), Display: &displays.Count, Exact: true, Lead: true},
	{ID: "last-load-yd", Label: calc.Text("Last load, yd³"), Display: inYards},
	{ID: "last-load-m", Label: calc.Text("Last load, m³"), Display: inMetres},
	{ID: "walls-yd", Label: calc.Text("Walls without holes, yd³"), Display: inYards},
	{ID: "walls-m", Label: calc.Text("Walls without holes, m³"), Display: inMetres},
	{ID: "holes-yd", Label: calc.Text("Openings deducted, yd³"), Display: inYards},
	{ID: "holes-m", Label: calc.Text("Openings deducted, m³"), Display: inMetres},
	{ID: "net-yd", Label: calc.Text("Net volume, yd³"), Display: inYards},
	{ID: "net-m", Label: calc.Text("Net volume, m³"), Display: inMetres},
	{ID: "with-waste-yd", Label: calc.Text("With waste, yd³"), Display: inYards},
	{ID: "with-waste-m", Label: calc.Text("With waste, m³"), Display: inMetres},
	{ID: "extra", Label: calc.Text("Order over net volume"), Display: &geometry.ExtraDisplay},
	{ID: "length", Label: calc.Text("Length along the middle"), Display: &displays.Wall},
	{ID: "difference-yd", Label: calc.Text("Your order less this, yd³"), Display: inYards},
	{ID: "difference-m", Label: calc.Text("Your order less this, m³"), Display: inMetres},
}
