// Package bartakeoff counts the bars of a straight wall, their weight and the
// stock bars to order.
package bartakeoff

import (
	"coursebook/calculators/calc"
	"coursebook/calculators/displays"
	"coursebook/calculators/steel"
)

// Calculator declares inputs, outputs, formulas and sources of the calculator.
var Calculator = &calc.Calculator{
	ID:      "bar-take-off",
	Title:   calc.Text("Bar take-off for a wall"),
	Purpose: calc.Text("How many bars a wall takes, what they weigh, and what stock to order."),
	In:      inputs,
	Out:     outputs,
	Formulas: []*calc.Formula{
		steel.BarCountFormula,
		steel.PiecesFormula,
		steel.LappedLengthFormula,
		steel.BarWeightFormula,
		steel.StockBarsFormula,
		steel.WithWasteFormula,
	},
	Sources: []calc.Source{steel.SourceA615, steel.SourceG30,
		{ID: "count", Where: calc.Text("Take-off by counting spaces, laps and stock lengths"),
			Status: calc.CommonPractice},
		{
			ID:     "irc",
			Author: "ICC",
			Title:  "International Residential Code",
			Where: calc.Text("table R608.5.4(1): laps of 40 bar diameters and more; bars beside openings within " +
				"12 in."),
			Status: calc.Secondary,
		},
		{
			ID:     "aci332",
			Author: "ACI",
			Title:  "332, Residential concrete",
			Where:  calc.Text("8.2.7: laps of at least 24 in., as quoted on a forum"),
			Status: calc.Secondary,
		}},
	Cautions: []calc.Caution{
		{Level: calc.LevelCaution, Text: steel.SteelNotDesign},
		{
			Level: calc.LevelNotice,
			Text: calc.Text(
				"Bars are counted as if there were no openings. What they save covers trimming; add the extra bars.",
			),
		},
		{
			Level: calc.LevelNotice,
			Text: calc.Text(
				"Off-cuts are not used again in the count of stock bars, and the waste comes on top. Ties, chairs " +
					"and wire are not in it.",
			),
		},
	},
	Tables: []calc.Table{{ID: "weight", Title: calc.Text("Weight of bars, example wall"),
		Note: calc.Text("The example's wall, by its length and the spacing of verticals. With waste."),
		Out:  "weight", Down: calc.Axis{Path: "length", US: []string{"10 ft", "20 ft", "30 ft", "40 ft", "60 ft"},
			Metric: []string{"3 m", "6 m", "9 m", "12 m", "18 m"}},
		Across: calc.Axis{
			Path:   "spacing",
			US:     []string{"8 in", "12 in", "16 in", "24 in", "32 in"},
			Metric: []string{"200 mm", "300 mm", "400 mm", "600 mm", "800 mm"},
		}}},
	Compute: compute,
	Draw:    draw,
}

const (
	whyClose   = calc.Text("Concrete does not pass bars this close.")
	whyWide    = calc.Text("Codes end at 48 in (1.2 m) between bars. Enter what the drawing says.")
	whyShort   = calc.Text("Bars are sold longer.")
	whyHauled  = calc.Text("No truck brings longer bars to a house.")
	whyLap     = calc.Text("Look it up on the drawing again.")
	whyCurtain = calc.Text("A wall has one layer or two.")
	whyWaste   = calc.Text("Find the reason for so much waste.")
)

func withDowels(c calc.Case) bool { return c.Flag("dowels") }

func withCorners(c calc.Case) bool { return c.Num("corners") > 0 }

func withExtra(c calc.Case) bool { return c.Num("extra") > 0 }

var inputs = []calc.Field{
	{ID: "length", Decides: 1, Display: &displays.Wall, Usual: "40 ft", Label: calc.Text("Length of wall"),
		Help:  calc.Text("One straight wall. Work out the others by themselves."),
		Range: "1 to 400 ft", Why: displays.CheckUnit, WhyMost: displays.OneJob},
	{ID: "height", Decides: 2, Measure: "height", Display: &displays.Wall, Usual: "9 ft",
		Label: calc.Text("Height of wall"),
		Range: "1 to 40 ft", Why: displays.CheckUnit, WhyMost: displays.OneStorey},
	{ID: "layers", Display: &displays.Count, Whole: true, Usual: "1", Label: calc.Text("Layers of bars"),
		Range: "1 to 2", Why: whyCurtain},
	{ID: "vertical", Decides: 3, Kind: calc.Choice, Usual: "5", Options: steel.BarOptions,
		Label: calc.Text("Vertical bar")},
	{ID: "spacing", Decides: 4, Display: &displays.Inches, Usual: "16 in", Label: calc.Text("Spacing of verticals"),
		Range: "2 to 96 in", Why: whyClose, WhyMost: whyWide},
	{ID: "first", Display: &displays.Inches, Example: true, Usual: "6 in", Label: calc.Text("First vertical from end"),
		Range: "0 to 96 in", Why: displays.NotMinus, WhyMost: whyWide},
	{ID: "projection", Display: &displays.Inches,
		Example: true, Usual: "24 in", Label: calc.Text("Verticals stand out above"),
		Help:  calc.Text("For the lap into the next story. 0 for none."),
		Range: "0 to 120 in", Why: displays.NotMinus, WhyMost: whyLap},
	{ID: "horizontal", Kind: calc.Choice, Usual: "4", Options: steel.BarOptions, Label: calc.Text("Horizontal bar")},
	{ID: "course", Display: &displays.Inches, Example: true, Usual: "16 in", Label: calc.Text("Spacing of horizontals"),
		Range: "2 to 96 in", Why: whyClose, WhyMost: whyWide},
	{ID: "course-first", Display: &displays.Inches,
		Example: true, Usual: "8 in", Label: calc.Text("Outer ones from foot, top"),
		Range: "0 to 96 in", Why: displays.NotMinus, WhyMost: whyWide},
	{ID: "courses", Display: &displays.Count, Whole: true, Optional: true, Label: calc.Text("Horizontals, if counted"),
		Help:  calc.Text("Rows of bars in one layer. It replaces the spacing."),
		Range: "1 to 240", Why: displays.CheckCount},
	{ID: "stock", Display: &displays.Wall, Example: true, Usual: "20 ft", Label: calc.Text("Stock length of bars"),
		Range: "10 to 60 ft", Why: whyShort, WhyMost: whyHauled},
	{ID: "lap", Display: &displays.Inches, Example: true, Usual: "24 in", Label: calc.Text("Lap length"),
		Help:  calc.Text("From the drawing."),
		Range: "6 to 108 in", Why: whyLap},
	{ID: "dowels", Kind: calc.Flag, Usual: "yes", Label: calc.Text("A dowel at each vertical")},
	{
		ID:      "dowel",
		Kind:    calc.Choice,
		Usual:   "5",
		Options: steel.BarOptions,
		When:    withDowels,
		Label:   calc.Text("Dowel bar"),
	},
	{
		ID:      "dowel-length",
		Display: &displays.Inches,
		Example: true,
		Usual:   "36 in",
		When:    withDowels,
		Label:   calc.Text("Length of a dowel"),
		Help:    calc.Text("Straight, hook and all."),
		Range:   "6 to 120 in",
		Why:     displays.CheckUnit,
	},
	{ID: "corners", Display: &displays.Count, Whole: true,
		Example: true, Usual: "2", Label: calc.Text("Corners to count here"),
		Help:  calc.Text("A bar at each horizontal. Count each corner with one wall only."),
		Range: "0 to 20", Why: displays.NotMinus, WhyMost: displays.CheckCount},
	{ID: "leg", Display: &displays.Inches,
		Example: true, Usual: "24 in", When: withCorners, Label: calc.Text("Leg of a corner bar"),
		Range: "6 to 60 in", Why: displays.CheckUnit},
	{ID: "extra", Display: &displays.Count, Whole: true,
		Example: true, Usual: "8", Label: calc.Text("Extra bars at openings"),
		Range: "0 to 1000", Why: displays.NotMinus, WhyMost: displays.CheckCount},
	{
		ID:      "extra-bar",
		Kind:    calc.Choice,
		Usual:   "5",
		Options: steel.BarOptions,
		When:    withExtra,
		Label:   calc.Text("Extra bar"),
	},
	{
		ID:      "extra-length",
		Display: &displays.Inches,
		Example: true,
		Usual:   "84 in",
		When:    withExtra,
		Label:   calc.Text("Length of an extra bar"),
		Range:   "6 to 480 in",
		Why:     displays.CheckUnit,
	},
	{ID: "waste", Display: &displays.Percent, Usual: "5 %", Label: calc.Text("Waste"),
		Range: "0 to 30 %", Why: displays.NotMinus, WhyMost: whyWaste},
}

// The parts of a wall's steel, in the order of the rows.
var parts = []calc.Option{
	{ID: "verticals", Label: calc.Text("Verticals")},
	{ID: "horizontals", Label: calc.Text("Horizontals")},
	{ID: "dowels", Label: calc.Text("Dowels")},
	{ID: "corners", Label: calc.Text("Corner bars")},
	{ID: "extra", Label: calc.Text("Extra bars")},
}

const (
	labelBar    = calc.Text("Bar")
	labelWeight = calc.Text("Weight")
	labelStock  = calc.Text("Stock bars")
	labelLength = calc.Text("Length of steel")
)

var outputs = []calc.Field{
	{ID: "weight", Display: &displays.MassUp, Lead: true, Label: calc.Text("Weight with waste")},
	{ID: "stock-bars", Display: &displays.Count, Lead: true, Exact: true, Label: calc.Text("Stock bars to order")},
	{ID: "net", Display: &displays.MassUp, Label: calc.Text("Weight in the wall")},
	{ID: "verticals", Display: &displays.Count, Exact: true, Label: calc.Text("Verticals in one layer")},
	{ID: "courses", Display: &displays.Count, Exact: true, Label: calc.Text("Horizontals in one layer")},
	{ID: "run-pieces", Display: &displays.Count, Exact: true, Label: calc.Text("Pieces per horizontal")},
	{ID: "sizes", Kind: calc.Rows, Label: calc.Text("By bar size, with waste"), Cols: []calc.Field{
		{ID: "bar", Kind: calc.Choice, Options: steel.BarOptions, Label: labelBar},
		{ID: "weight", Display: &displays.MassUp, Label: labelWeight},
		{ID: "stock", Display: &displays.Count, Exact: true, Label: labelStock},
	}},
	{ID: "parts", Kind: calc.Rows, Label: calc.Text("Part by part, without waste"), Cols: []calc.Field{
		{ID: "part", Kind: calc.Choice, Options: parts, Label: calc.Text("Part")},
		{ID: "bar", Kind: calc.Choice, Options: steel.BarOptions, Label: labelBar},
		{ID: "count", Display: &displays.Count, Exact: true, Label: calc.Text("How many|feminine")},
		{ID: "each", Display: &displays.Wall, Label: calc.Text("Length of one")},
		{ID: "length", Display: &steel.RunLength, Label: labelLength},
		{ID: "weight", Display: &displays.MassUp, Label: labelWeight},
		{ID: "stock", Display: &displays.Count, Exact: true, Label: labelStock},
	}},
}
