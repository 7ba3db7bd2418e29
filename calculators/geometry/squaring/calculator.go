// Package squaring checks a rectangle by its diagonal, and an outline of runs and
// turns by how it closes.
package squaring

import (
	"coursebook/calculators/calc"
	"coursebook/calculators/displays"
	"coursebook/calculators/geometry"
	"coursebook/calculators/quantity"
)

// Calculator checks a rectangle by its diagonal, and an outline of runs and
// turns by how it closes.
var Calculator = &calc.Calculator{
	ID:       "squaring",
	Title:    calc.Text("Squaring a layout"),
	Purpose:  calc.Text("Is the corner square, how far to shift it, and does the outline close?"),
	In:       inputs,
	Out:      outputs,
	Formulas: formulas,
	Sources:  sources,
	Cautions: []calc.Caution{
		{
			Level: calc.LevelNotice,
			Text:  calc.Text("Measure both diagonals. They must agree, and opposite sides must be equal too."),
		},
		{
			Level: calc.LevelNotice,
			Text:  calc.Text("Hold the tape level and pull it the same each time. On a slope a tape reads long."),
		},
		{Level: calc.LevelNotice, Text: calc.Text("Lot lines and setbacks are for a licensed surveyor.")},
	},
	Tables:  tables,
	Compute: compute,
	Draw:    draw,
}

// Formats that only this calculator uses. A triple laid out in feet or in metres
// has the same unit for every reader.
var (
	fineAngle = quantity.Display{Dim: quantity.Angle, US: quantity.UnitDisplay{Unit: "°", Step: 0.01}}
	tapeFine  = quantity.Display{
		Dim:    quantity.Length,
		US:     quantity.UnitDisplay{Unit: "ft", Form: quantity.FeetInches, Step: 1.0 / 16},
		Metric: quantity.UnitDisplay{Unit: "m", Step: 0.001},
	}
	wholeFeet = quantity.Display{Dim: quantity.Length, US: quantity.UnitDisplay{Unit: "ft", Step: 1}}
	inMetre   = quantity.Display{Dim: quantity.Length, US: quantity.UnitDisplay{Unit: "m", Step: 0.1}}
	tenTo     = quantity.Display{Dim: quantity.Number, US: quantity.UnitDisplay{Step: 10, Rounding: quantity.Down}}
)

// What can be checked.
const (
	checkRectangle = "rectangle"
	checkOutline   = "outline"
)

func rectangle(c calc.Case) bool { return c.Choice("check") == checkRectangle }

func outline(c calc.Case) bool { return c.Choice("check") == checkOutline }

const turnWhy = calc.Text("No turn is more than half a circle. Change left and right instead.")

var runCols = []calc.Field{
	{ID: "run", Label: calc.Text("Run"), Display: &tapeFine,
		Range: "over 0 to 2000 ft", Why: displays.AboveZero, WhyMost: displays.OneJob},
	{ID: "turn", Label: calc.Text("Then turn by"), Display: &fineAngle, Usual: "90°",
		Range: "0 to 180 °", Why: displays.NotMinus, WhyMost: turnWhy},
	{ID: "side", Label: calc.Text("To the"), Kind: calc.Choice, Usual: geometry.LeftHand, Options: []calc.Option{
		{ID: geometry.LeftHand, Label: calc.Text("left")},
		{ID: geometry.RightHand, Label: calc.Text("right")},
	}},
}

var inputs = []calc.Field{
	{ID: "check", Label: calc.Text("What to check"), Kind: calc.Choice, Usual: checkRectangle, Options: []calc.Option{
		{ID: checkRectangle, Label: calc.Text("A rectangle by its diagonal")},
		{ID: checkOutline, Label: calc.Text("An outline of runs and turns")},
	}},
	{ID: "side-a", Example: true, Label: calc.Text("Side a, the fixed line"), Display: &tapeFine, When: rectangle,
		Usual: "40 ft",
		Range: "over 0 to 2000 ft", Why: displays.AboveZero, WhyMost: displays.OneJob},
	{ID: "side-b", Example: true, Label: calc.Text("Side b, from its end"), Display: &tapeFine, When: rectangle,
		Usual: "30 ft",
		Range: "over 0 to 2000 ft", Why: displays.AboveZero, WhyMost: displays.OneJob},
	{
		ID:       "measured",
		Example:  true,
		Label:    calc.Text("Diagonal as measured"),
		Display:  &tapeFine,
		When:     rectangle,
		Optional: true,
		Usual:    "50 ft 1/2 in",
		Help:     calc.Text("Across from the far end of a to the far end of b."),
		Range:    "over 0 to 4000 ft",
		Why:      displays.AboveZero,
		WhyMost:  displays.OneJob,
	},
	{
		ID:      "runs",
		Label:   calc.Text("Runs in order"),
		Kind:    calc.Rows,
		Cols:    runCols,
		MinRows: 2,
		MaxRows: 40,
		When:    outline,
		Help:    calc.Text("Walk the outline once. The last turn faces you along the first run again."),
		Usual: "40 ft | 90° | left; 28 ft | 90° | left; 16 ft | 90° | left; 8 ft | 90° | right; 24 ft 1 in | 90° | " +
			"left; 20 ft | 90° | left",
	},
}

var tripleCols = []calc.Field{
	{ID: "three", Label: calc.Text("3 side"), Display: &wholeFeet},
	{ID: "four", Label: calc.Text("4 side"), Display: &wholeFeet},
	{ID: "five", Label: calc.Text("5 across"), Display: &wholeFeet},
}

var tripleMetric = []calc.Field{
	{ID: "three", Label: calc.Text("3 side"), Display: &inMetre},
	{ID: "four", Label: calc.Text("4 side"), Display: &inMetre},
	{ID: "five", Label: calc.Text("5 across"), Display: &inMetre},
}

var outputs = []calc.Field{
	{ID: "diagonal", Label: calc.Text("Diagonal when square"), Display: &tapeFine, Lead: true},
	{ID: "shift", Label: calc.Text("Shift the end of b by"), Display: &displays.Part, Lead: true},
	{ID: "way", Label: calc.Text("Shift it so that"), Kind: calc.Choice, Options: []calc.Option{
		{ID: "shorter", Label: calc.Text("the diagonal gets shorter")},
		{ID: "longer", Label: calc.Text("the diagonal gets longer")},
		{ID: "none", Label: calc.Text("nothing moves, it is square")},
	}},
	{ID: "error", Label: calc.Text("Corner over 90°"), Display: &fineAngle},
	{ID: "off", Label: calc.Text("Diagonal too long by"), Display: &displays.Part},
	{ID: "triples", Label: calc.Text("3-4-5 in whole feet"), Kind: calc.Rows, Cols: tripleCols},
	{ID: "triples-m", Label: calc.Text("3-4-5 in meters"), Kind: calc.Rows, Cols: tripleMetric},
	{ID: "gap", Label: calc.Text("Closing gap"), Display: &tapeFine, Lead: true},
	{ID: "bearing", Label: calc.Text("Gap, left of first run"), Display: &geometry.TurnAngle},
	{ID: "along", Label: calc.Text("End past start, along run 1"), Display: &tapeFine},
	{ID: "across", Label: calc.Text("End left of start"), Display: &tapeFine},
	{ID: "perimeter", Label: calc.Text("Length of the outline"), Display: &tapeFine},
	{ID: "ratio", Label: calc.Text("Length per unit of gap"), Display: &tenTo},
	{ID: "turned", Label: calc.Text("Turns in all, left plus"), Display: &fineAngle},
	{ID: "turn-error", Label: calc.Text("Turns off a full circle"), Display: &fineAngle},
}

var sources = []calc.Source{
	{
		ID:     "pythagoras",
		Author: "US Army",
		Title:  "Subcourse EN0069A, building layout",
		Where:  calc.Text("figure 1-36: diagonal from two sides, and the 3-4-5 triangle"),
		Status: calc.Confirmed,
	},
	{ID: "cosines", Where: calc.Text("Law of cosines; plane trigonometry"), Status: calc.Memory},
	{
		ID:     "traverse",
		Title:  "Traverse computations, chapter D: closure",
		Where:  calc.Text("linear closure from the totals of latitudes and departures"),
		Status: calc.Confirmed,
		Author: "Open Access Surveying",
	},
}

var tables = []calc.Table{
	{ID: "diagonal", Title: calc.Text("Diagonal of a square layout"), Out: "diagonal",
		Set: []calc.Entry{{Path: "measured", Text: ""}},
		Down: calc.Axis{Path: "side-a", US: []string{"12 ft", "20 ft", "24 ft", "30 ft", "40 ft", "50 ft", "60 ft"},
			Metric: []string{"3 m", "4 m", "6 m", "8 m", "10 m", "12 m", "15 m"}},
		Across: calc.Axis{
			Path:   "side-b",
			US:     []string{"8 ft", "16 ft", "24 ft", "28 ft", "32 ft"},
			Metric: []string{"2 m", "4 m", "6 m", "8 m", "10 m"},
		}},
}

var formulas = []*calc.Formula{
	geometry.DiagonalOfFormula,
	geometry.CornerShiftFormula,
	geometry.CornerErrorFormula,
	geometry.RunAlongFormula,
	geometry.RunAcrossFormula,
	geometry.ClosingGapFormula,
	geometry.ClosingBearingFormula,
	geometry.ClosingRatioFormula,
}
