package geometry

import (
	"coursebook/calculators/calc"
	"coursebook/calculators/displays"
)

// RadiusWall lays out a curved wall: its arc, the lengths of its faces, the
// cuts that let a straight form bend, and the concrete of its core.
var RadiusWall = &calc.Calculator{
	ID:       "radius-wall",
	Title:    calc.Text("radius-wall.title: Curved wall"),
	Purpose:  calc.Text("radius-wall.purpose: Arc, lengths of the faces, saw cuts and concrete of a curved wall."),
	In:       curveIn,
	Out:      curveOut,
	Formulas: curveFormulas,
	Sources:  curveSources,
	Cautions: []calc.Caution{
		{Level: calc.LevelWarning, Text: calc.Text("radius-wall.caution.weak: Cut panels are weak. A curved form needs closer bracing and strapping, as the form maker says, or it can burst.")},
		{Level: calc.LevelNotice, Text: calc.Text("radius-wall.caution.maker: The form maker's least radius, cut spacing and cut side come first. Here the outside keeps its length and cuts close on the inside.")},
		{Level: calc.LevelNotice, Text: calc.Text("radius-wall.caution.running: Mark the cuts by running distance from one end, not one from the next. Small roundings add up.")},
	},
	Tables:  curveTables,
	Compute: computeCurve,
	Draw:    drawCurvedWall,
}

func radiusGiven(c calc.Case) bool  { return c.Choice("by") == "radius" }
func chordGiven(c calc.Case) bool   { return c.Choice("by") == "chord" }
func spacingGiven(c calc.Case) bool { return c.Choice("cuts-by") == "spacing" }
func countGiven(c calc.Case) bool   { return c.Choice("cuts-by") == "count" }
func gapGiven(c calc.Case) bool     { return c.Choice("cuts-by") == "gap" }

const (
	curveCircle   = calc.Text("radius-wall.why.circle: A full circle has 360°.")
	curveCore     = calc.Text("radius-wall.why.core: No core this thin can be filled and vibrated.")
	curveSpacing  = calc.Text("radius-wall.why.spacing: Cuts this close leave no panel.")
	curveSpacings = calc.Text("radius-wall.why.spacings: A form with cuts this far apart does not bend.")
	curveKerf     = calc.Text("radius-wall.why.kerf: No saw cuts this fine.")
	curveKerfs    = calc.Text("radius-wall.why.kerfs: Wider gaps need cut pieces, not kerfs.")
)

var curveIn = []calc.Field{
	{ID: "by", Label: calc.Text("radius-wall.by: Curve is given by"), Kind: calc.Choice, Usual: "radius", Options: []calc.Option{
		{ID: "radius", Label: calc.Text("radius-wall.by.radius: radius and angle")},
		{ID: "chord", Label: calc.Text("radius-wall.by.chord: chord and rise")},
	}},
	{ID: "at", Label: calc.Text("radius-wall.at: Measured at"), Kind: calc.Choice, Usual: "outside", Options: []calc.Option{
		{ID: "outside", Label: calc.Text("radius-wall.at.outside: outside face of core")},
		{ID: "centre", Label: calc.Text("radius-wall.at.centre: middle of core")},
		{ID: "inside", Label: calc.Text("radius-wall.at.inside: inside face of core")},
	}},
	{ID: "radius", Label: calc.Text("radius-wall.radius: Radius"), Display: &displays.Wall, When: radiusGiven, Usual: "15 ft",
		Min: &calc.Limit{Unit: "ft", Open: true, Why: displays.AboveZero}, Max: &calc.Limit{At: 1000, Unit: "ft", Why: displays.OneJob}},
	{ID: "angle", Label: calc.Text("radius-wall.angle: Angle of the curve"), Display: &turnAngle, When: radiusGiven, Usual: "90°",
		Help: calc.Text("radius-wall.angle.help: How far the wall turns: 90° is a quarter circle."),
		Min:  &calc.Limit{At: 1, Unit: "°", Why: displays.AboveZero}, Max: &calc.Limit{At: 360, Unit: "°", Why: curveCircle}},
	{ID: "chord", Label: calc.Text("radius-wall.chord: Chord"), Display: &displays.Wall, When: chordGiven, Usual: "12 ft",
		Help: calc.Text("radius-wall.chord.help: Straight from end to end of the curve."),
		Min:  &calc.Limit{Unit: "ft", Open: true, Why: displays.AboveZero}, Max: &calc.Limit{At: 1000, Unit: "ft", Why: displays.OneJob}},
	{ID: "rise", Label: calc.Text("radius-wall.rise: Rise"), Display: &displays.Wall, When: chordGiven, Usual: "2 ft",
		Help: calc.Text("radius-wall.rise.help: From the middle of the chord to the curve."),
		Min:  &calc.Limit{At: 0.25, Unit: "in", Why: displays.CheckUnit}, Max: &calc.Limit{At: 1000, Unit: "ft", Why: displays.OneJob}},
	{ID: "core", Label: calc.Text("radius-wall.core: Core thickness"), Display: &displays.Part, Usual: "8 in",
		Min: &calc.Limit{At: 2, Unit: "in", Why: curveCore}, Max: &calc.Limit{At: 36, Unit: "in", Why: displays.CheckUnit}},
	{ID: "foam", Label: calc.Text("radius-wall.foam: Foam of one panel"), Display: &displays.Part, Usual: "2.5 in", Optional: true,
		Help: calc.Text("radius-wall.foam.help: Thickness of the panel on one side. Leave empty for the core alone."),
		Min:  &calc.Limit{At: 0.5, Unit: "in", Why: displays.CheckUnit}, Max: &calc.Limit{At: 12, Unit: "in", Why: displays.CheckUnit}},
	{ID: "height", Label: calc.Text("radius-wall.height: Height of the wall"), Display: &displays.Height, Usual: "8 ft",
		Min: &calc.Limit{Unit: "ft", Open: true, Why: displays.AboveZero}, Max: &calc.Limit{At: 60, Unit: "ft", Why: displays.OneStorey}},
	{ID: "cuts-by", Label: calc.Text("radius-wall.cuts-by: Cuts are set by"), Kind: calc.Choice, Usual: "spacing", Options: []calc.Option{
		{ID: "spacing", Label: calc.Text("radius-wall.cuts-by.spacing: greatest spacing")},
		{ID: "count", Label: calc.Text("radius-wall.cuts-by.count: number of cuts")},
		{ID: "gap", Label: calc.Text("radius-wall.cuts-by.gap: width of one cut")},
	}},
	{ID: "spacing", Label: calc.Text("radius-wall.spacing: Greatest spacing of cuts"), Display: &displays.Part, When: spacingGiven, Usual: "8 in",
		Help: calc.Text("radius-wall.spacing.help: From the form maker, marked on the straight form."),
		Min:  &calc.Limit{At: 1, Unit: "in", Why: curveSpacing}, Max: &calc.Limit{At: 10, Unit: "ft", Why: curveSpacings}},
	{ID: "count", Label: calc.Text("radius-wall.count: Number of cuts"), Display: &displays.Count, When: countGiven, Usual: "36", Whole: true,
		Min: &calc.Limit{At: 1, Why: displays.CheckCount}, Max: &calc.Limit{At: 5000, Why: displays.CheckCount}},
	{ID: "gap", Label: calc.Text("radius-wall.gap: Width of one cut"), Display: &displays.Part, When: gapGiven, Usual: "3/4 in",
		Help: calc.Text("radius-wall.gap.help: What one cut can close, at the inside face of the form."),
		Min:  &calc.Limit{At: 1.0 / 16, Unit: "in", Why: curveKerf}, Max: &calc.Limit{At: 6, Unit: "in", Why: curveKerfs}},
}

var curveOut = []calc.Field{
	{ID: "arc", Label: calc.Text("radius-wall.out.arc: Arc at the measured line"), Display: &displays.Wall, Lead: true},
	{ID: "cuts", Label: calc.Text("radius-wall.out.cuts: Number of cuts"), Display: &displays.Count, Lead: true, Exact: true},
	{ID: "cut-gap", Label: calc.Text("radius-wall.out.cut-gap: Each cut closes"), Display: &displays.Part, Lead: true},
	{ID: "cut-spacing", Label: calc.Text("radius-wall.out.cut-spacing: Cuts apart, form straight"), Display: &displays.Part},
	{ID: "turn", Label: calc.Text("radius-wall.out.turn: Turn at each cut"), Display: &turnAngle},
	{ID: "flat", Label: calc.Text("radius-wall.out.flat: Flats stand off the curve"), Display: &displays.Part},
	{ID: "curve-radius", Label: calc.Text("radius-wall.out.curve-radius: Radius, measured line"), Display: &displays.Wall},
	{ID: "curve-angle", Label: calc.Text("radius-wall.out.curve-angle: Angle"), Display: &turnAngle},
	{ID: "curve-chord", Label: calc.Text("radius-wall.out.curve-chord: Chord, measured line"), Display: &displays.Wall},
	{ID: "curve-rise", Label: calc.Text("radius-wall.out.curve-rise: Rise, measured line"), Display: &displays.Wall},
	{ID: "form-outside", Label: calc.Text("radius-wall.out.form-outside: Form, outside face"), Display: &displays.Wall},
	{ID: "core-outside", Label: calc.Text("radius-wall.out.core-outside: Core, outside face"), Display: &displays.Wall},
	{ID: "core-middle", Label: calc.Text("radius-wall.out.core-middle: Core, middle"), Display: &displays.Wall},
	{ID: "core-inside", Label: calc.Text("radius-wall.out.core-inside: Core, inside face"), Display: &displays.Wall},
	{ID: "form-inside", Label: calc.Text("radius-wall.out.form-inside: Form, inside face"), Display: &displays.Wall},
	{ID: "radius-inside", Label: calc.Text("radius-wall.out.radius-inside: Radius, innermost face"), Display: &displays.Wall},
	{ID: "volume-yd", Label: calc.Text("radius-wall.out.volume-yd: Core volume, yd³"), Display: &displays.CubicYards},
	{ID: "volume-m", Label: calc.Text("radius-wall.out.volume-m: Core volume, m³"), Display: &displays.CubicMetres},
}

var curveSources = []calc.Source{
	{ID: "geometry", Title: "Arc, chord and rise of a circle; length of parallel arcs", Where: "handbook relations", Status: calc.Memory},
	{ID: "practice", Title: "Even cuts that close on the inside face, the first half a spacing from the end", Status: calc.CommonPractice},
}

var curveTables = []calc.Table{
	{ID: "arc", Title: calc.Text("radius-wall.table.arc: Arc by radius and angle"), Note: calc.Text("radius-wall.table.arc.note: Along the line whose radius is given."),
		Out: "arc", Set: []calc.Entry{{Path: "at", Text: "outside"}},
		Down: calc.Axis{Path: "radius", US: []string{"4 ft", "6 ft", "8 ft", "10 ft", "15 ft", "20 ft", "30 ft"},
			Metric: []string{"1.2 m", "1.8 m", "2.4 m", "3 m", "4.5 m", "6 m", "9 m"}},
		Across: calc.Axis{Path: "angle", US: []string{"30°", "45°", "60°", "90°", "180°"}}},
	{ID: "gap", Title: calc.Text("radius-wall.table.gap: What each cut closes"), Note: calc.Text("radius-wall.table.gap.note: Core 8 in. (203 mm), foam 2-1/2 in. (64 mm) a side, cuts at most 8 in. (203 mm) apart, quarter circle."),
		Out: "cut-gap",
		Down: calc.Axis{Path: "radius", US: []string{"4 ft", "6 ft", "8 ft", "10 ft", "15 ft", "20 ft", "30 ft"},
			Metric: []string{"1.2 m", "1.8 m", "2.4 m", "3 m", "4.5 m", "6 m", "9 m"}},
		Across: calc.Axis{Path: "spacing", US: []string{"4 in", "6 in", "8 in", "12 in"}, Metric: []string{"100 mm", "150 mm", "200 mm", "300 mm"}}},
}
