// Package radiuswall lays out a curved wall: its arc, the lengths of its faces, the
// cuts that let a straight form bend, and the concrete of its core.
package radiuswall

import (
	"coursebook/calculators/calc"
	"coursebook/calculators/displays"
	"coursebook/calculators/geometry"
	"coursebook/calculators/quantity"
)

// Calculator lays out a curved wall: its arc, the lengths of its faces, the
// cuts that let a straight form bend, and the concrete of its core.
var Calculator = &calc.Calculator{
	ID:       "radius-wall",
	Title:    calc.Text("Curved wall"),
	Purpose:  calc.Text("Arc, lengths of the faces, saw cuts and concrete of a curved wall."),
	In:       curveIn,
	Out:      curveOut,
	Formulas: curveFormulas,
	Sources:  curveSources,
	Cautions: []calc.Caution{
		{
			Level: calc.LevelWarning,
			Text: calc.Text(
				"Cut panels are weak. A curved form needs closer bracing and strapping, as the form maker says, or " +
					"it can burst.",
			),
		},
		{
			Level: calc.LevelNotice,
			Text: calc.Text(
				"The form maker's least radius, cut spacing and cut side come first. Here the outside keeps its " +
					"length and cuts close on the inside.",
			),
		},
		{
			Level: calc.LevelNotice,
			Text: calc.Text(
				"Mark the cuts by running distance from one end, not one from the next. Small roundings add up.",
			),
		},
	},
	Tables:  curveTables,
	Compute: computeCurve,
	Draw:    drawCurvedWall,
}

func given(c calc.Case) bool { return c.Choice("by") == "radius" }

func chordGiven(c calc.Case) bool { return c.Choice("by") == "chord" }

func spacingGiven(c calc.Case) bool { return c.Choice("cuts-by") == "spacing" }

func countGiven(c calc.Case) bool { return c.Choice("cuts-by") == "count" }

func gapGiven(c calc.Case) bool { return c.Choice("cuts-by") == "gap" }

const (
	curveCircle   = calc.Text("A full circle has 360°.")
	curveCore     = calc.Text("No core this thin can be filled and vibrated.")
	curveSpacing  = calc.Text("Cuts this close leave no panel.")
	curveSpacings = calc.Text("A form with cuts this far apart does not bend.")
	curveKerf     = calc.Text("No saw cuts this fine.")
	curveKerfs    = calc.Text("Wider gaps need cut pieces, not kerfs.")
)

var curveIn = []calc.Field{
	{ID: "by", Decides: 1, Label: calc.Text("Curve is given by"), Kind: calc.Choice, Usual: "radius",
		Options: []calc.Option{
			{ID: "radius", Label: calc.Text("radius and angle")},
			{ID: "chord", Label: calc.Text("chord and rise")},
		}},
	{ID: "at", Label: calc.Text("Measured at"), Kind: calc.Choice, Usual: "outside", Options: []calc.Option{
		{ID: "outside", Label: calc.Text("outside face of core")},
		{ID: "centre", Label: calc.Text("middle of core")},
		{ID: "inside", Label: calc.Text("inside face of core")},
	}},
	{ID: "radius", Decides: 2, Label: calc.Text("Radius"), Display: &displays.Wall, When: given, Usual: "15 ft",
		Range: "over 0 to 1000 ft", Why: displays.AboveZero, WhyMost: displays.OneJob},
	{ID: "angle", Decides: 3, Label: calc.Text("Angle of the curve"), Display: &geometry.TurnAngle, When: given,
		Usual: "90°",
		Help:  calc.Text("How far the wall turns: 90° is a quarter circle."),
		Range: "1 to 360 °", Why: displays.AboveZero, WhyMost: curveCircle},
	{ID: "chord", Decides: 2, Label: calc.Text("Chord"), Display: &displays.Wall, When: chordGiven, Usual: "12 ft",
		Help:  calc.Text("Straight from end to end of the curve."),
		Range: "over 0 to 1000 ft", Why: displays.AboveZero, WhyMost: displays.OneJob},
	{ID: "rise", Decides: 3, Label: calc.Text("Rise"), Display: &displays.Wall, When: chordGiven, Usual: "2 ft",
		Help:  calc.Text("From the middle of the chord to the curve."),
		Range: "0.25 in to 1000 ft", Why: displays.CheckUnit, WhyMost: displays.OneJob},
	{ID: "core", Decides: 4, Measure: "core", Label: calc.Text("Core thickness"), Display: &displays.Part,
		Usual: "8 in",
		Range: "2 to 36 in", Why: curveCore, WhyMost: displays.CheckUnit},
	{ID: "foam", Label: calc.Text("Foam of one panel"), Display: &displays.Part, Usual: "2.5 in", Optional: true,
		Help:  calc.Text("Thickness of the panel on one side. Leave empty for the core alone."),
		Range: "0.5 to 12 in", Why: displays.CheckUnit},
	{ID: "height", Measure: "height", Label: calc.Text("Height of the wall"), Display: &displays.Height,
		Example: true, Usual: "8 ft",
		Range: "over 0 to 60 ft", Why: displays.AboveZero, WhyMost: displays.OneStorey},
	{ID: "cuts-by", Label: calc.Text("Cuts are set by"), Kind: calc.Choice, Usual: "spacing", Options: []calc.Option{
		{ID: "spacing", Label: calc.Text("greatest spacing")},
		{ID: "count", Label: calc.Text("number of cuts")},
		{ID: "gap", Label: calc.Text("width of one cut")},
	}},
	{
		ID:      "spacing",
		Maker:   true,
		Label:   calc.Text("Greatest spacing of cuts"),
		Display: &displays.Part,
		When:    spacingGiven,
		Usual:   "8 in",
		Help:    calc.Text("From the form maker, marked on the straight form."),
		Range:   "1 in to 10 ft",
		Why:     curveSpacing,
		WhyMost: curveSpacings,
	},
	{
		ID:      "count",
		Label:   calc.Text("Number of cuts"),
		Display: &displays.Count,
		When:    countGiven,
		Example: true,
		Usual:   "36",
		Whole:   true,
		Range:   "1 to 5000",
		Why:     displays.CheckCount,
	},
	{ID: "gap", Label: calc.Text("Width of one cut"), Display: &displays.Part, When: gapGiven,
		Example: true, Usual: "3/4 in",
		Help:  calc.Text("What one cut can close, at the inside face of the form."),
		Range: "1/16 to 6 in", Why: curveKerf, WhyMost: curveKerfs},
}

// Displays of the cuts: a saw in foam holds an eighth of an inch, a mark far from the
// last one a quarter.
var (
	eighths = quantity.Display{
		Dim:    quantity.Length,
		US:     quantity.UnitDisplay{Unit: "in", Form: quantity.Inches, Step: 1.0 / 8},
		Metric: quantity.UnitDisplay{Unit: "mm", Step: 1},
	}
	apart = quantity.Display{
		Dim:    quantity.Length,
		US:     quantity.UnitDisplay{Unit: "in", Form: quantity.Inches, Step: 1.0 / 4, Rounding: quantity.Down},
		Metric: quantity.UnitDisplay{Unit: "mm", Step: 5, Rounding: quantity.Down},
	}
)

var curveOut = []calc.Field{
	{ID: "arc", Label: calc.Text("Arc at the measured line"), Display: &displays.Wall, Lead: true},
	{ID: "cuts", Label: calc.Text("Number of cuts"), Display: &displays.Count, Lead: true, Exact: true},
	{ID: "cut-gap", Label: calc.Text("Each cut closes"), Display: &eighths, Lead: true},
	{ID: "cut-spacing", Label: calc.Text("Cuts apart, form straight"), Display: &apart},
	{ID: "turn", Label: calc.Text("Turn at each cut"), Display: &geometry.TurnAngle},
	{ID: "flat", Label: calc.Text("Flats stand off the curve"), Display: &displays.Part},
	{ID: "curve-radius", Label: calc.Text("Radius, measured line"), Display: &displays.Wall},
	{ID: "curve-angle", Label: calc.Text("Angle"), Display: &geometry.TurnAngle},
	{ID: "curve-chord", Label: calc.Text("Chord, measured line"), Display: &displays.Wall},
	{ID: "curve-rise", Label: calc.Text("Rise, measured line"), Display: &displays.Wall},
	{ID: "form-outside", Label: calc.Text("Form, outside face"), Display: &displays.Wall},
	{ID: "core-outside", Label: calc.Text("Core, outside face"), Display: &displays.Wall},
	{ID: "core-middle", Label: calc.Text("Core, middle"), Display: &displays.Wall},
	{ID: "core-inside", Label: calc.Text("Core, inside face"), Display: &displays.Wall},
	{ID: "form-inside", Label: calc.Text("Form, inside face"), Display: &displays.Wall},
	{ID: "radius-inside", Label: calc.Text("Radius, innermost face"), Display: &displays.Wall},
	{ID: "volume-yd", Label: calc.Text("Core volume, yd³"), Display: &displays.CubicYards},
	{ID: "volume-m", Label: calc.Text("Core volume, m³"), Display: &displays.CubicMetres},
}

var curveSources = []calc.Source{
	{
		ID:     "geometry",
		Where:  calc.Text("Arc, chord and rise of a circle; length of parallel arcs; handbook relations"),
		Status: calc.Memory,
	},
	{
		ID:     "practice",
		Where:  calc.Text("Even cuts that close on the inside face, the first half a spacing from the end"),
		Status: calc.CommonPractice,
	},
}

var curveTables = []calc.Table{
	{ID: "arc", Title: calc.Text("Arc by radius and angle"), Note: calc.Text("Along the line whose radius is given."),
		Out: "arc", Set: []calc.Entry{{Path: "at", Text: "outside"}},
		Down: calc.Axis{Path: "radius", US: []string{"4 ft", "6 ft", "8 ft", "10 ft", "15 ft", "20 ft", "30 ft"},
			Metric: []string{"1.2 m", "1.8 m", "2.4 m", "3 m", "4.5 m", "6 m", "9 m"}},
		Across: calc.Axis{Path: "angle", US: []string{"30°", "45°", "60°", "90°", "180°"}}},
	{
		ID:    "gap",
		Title: calc.Text("What each cut closes"),
		Note: calc.Text(
			"Core 8 in. (203 mm), foam 2-1/2 in. (64 mm) a side, cuts at most 8 in. (203 mm) apart, quarter circle.",
		),
		Out: "cut-gap",
		Down: calc.Axis{Path: "radius", US: []string{"4 ft", "6 ft", "8 ft", "10 ft", "15 ft", "20 ft", "30 ft"},
			Metric: []string{"1.2 m", "1.8 m", "2.4 m", "3 m", "4.5 m", "6 m", "9 m"}},
		Across: calc.Axis{
			Path:   "spacing",
			US:     []string{"4 in", "6 in", "8 in", "12 in"},
			Metric: []string{"100 mm", "150 mm", "200 mm", "300 mm"},
		},
	},
}

var curveFormulas = []*calc.Formula{
	geometry.ChordRadiusFormula,
	geometry.ChordAngleFormula,
	geometry.ChordLengthFormula,
	geometry.ArcRiseFormula,
	geometry.MiddleRadiusFormula,
	geometry.DevelopedFormula,
	geometry.CutsBySpacingFormula,
	geometry.CutsByGapFormula,
	geometry.CutSpacingFormula,
	geometry.GapPerCutFormula,
	geometry.FlatOffsetFormula,
	geometry.ArcVolumeFormula,
}
