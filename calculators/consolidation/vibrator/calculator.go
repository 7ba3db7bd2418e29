// Package vibrator computes the insertion points, the time and the number of
// internal vibrators for one lift.
package vibrator

import (
	"coursebook/calculators/calc"
	"coursebook/calculators/consolidation"
	"coursebook/calculators/displays"
	"coursebook/calculators/quantity"
)

// Calculator declares inputs, outputs, formulas and sources of the calculator.
var Calculator = &calc.Calculator{
	ID:       "vibrator",
	Title:    calc.Text("Vibrators to keep up"),
	Purpose:  calc.Text("Where and how long to vibrate a lift, and how many vibrators keep up with the pump."),
	In:       inputs,
	Out:      outputs,
	Formulas: formulas,
	Sources:  sources,
	Cautions: []calc.Caution{
		{
			Level: calc.LevelWarning,
			Text: calc.Text(
				"Too long or too deep vibration pushes on the form like fluid. Stop at the first bulge or creak.",
			),
		},
		{
			Level: calc.LevelWarning,
			Text: calc.Text(
				"Long work with a vibrator harms hands and hearing, and wet cords can kill. Take turns, wear " +
					"protection, use a ground-fault breaker.",
			),
		},
		{
			Level: calc.LevelNotice,
			Text: calc.Text(
				"The tables leave out ties, webs and bars. These shrink the reach, and so does stiff concrete. Watch " +
					"the surface, not the clock.",
			),
		},
	},
	Tables:  tables,
	Compute: compute,
	Draw:    draw,
}

// span is a published range, low to high.
type span struct{ low, high float64 }

// middle returns the mean of the two ends.
func (s span) middle() float64 { return (s.low + s.high) / 2 }

// head is one group of internal vibrators.
type head struct {
	id        string
	diameter  span // mm
	frequency span // Hz
	radius    span // mm, radius of action
	rate      span // m³/h for one vibrator
}

// heads are the published groups in metric units. The table in inches of ACI
// 309R is the same within its rounding. The figures hold for the slump of each
// group and for concrete without ties and bars.
// Source: CCANZ, Compaction Equipment, table 1.
var heads = []head{
	{"pencil", span{20, 40}, span{150, 250}, span{80, 150}, span{0.8, 4}},
	{"thin", span{30, 60}, span{140, 210}, span{130, 250}, span{2.3, 8}},
	{"normal", span{50, 90}, span{130, 200}, span{180, 360}, span{4.6, 15}},
	{"heavy", span{80, 150}, span{120, 180}, span{300, 500}, span{11, 31}},
	{"mass", span{130, 180}, span{90, 140}, span{400, 600}, span{19, 38}},
}

// stiffFrom is the first group that is published for slump below 3 in.
const stiffFrom = 2

// findHead returns the index of a head by its ID; 0 for an unknown one.
func findHead(id string) int {
	for i, h := range heads {
		if h.id == id {
			return i
		}
	}
	return 0
}

var headOptions = []calc.Option{
	{ID: "pencil", Label: calc.Text("¾ to 1½ in. (20–40 mm), pencil")},
	{ID: "thin", Label: calc.Text("1¼ to 2½ in. (30–60 mm), thin walls")},
	{ID: "normal", Label: calc.Text("2 to 3½ in. (50–90 mm), stiffer mix")},
	{ID: "heavy", Label: calc.Text("3 to 6 in. (80–150 mm), open forms")},
	{ID: "mass", Label: calc.Text("5 to 7 in. (130–180 mm), mass concrete")},
}

// The published times at rest, in seconds. Source: US Army EN5466.
var (
	restAir   = span{5, consolidation.RestAir}
	restPlain = span{10, consolidation.RestPlain}
)

// Title and link of a source that is cited twice.
const (
	titleArmy = "Subcourse EN5466 ed. A, Concrete Engineering"
)

var (
	showRadius = quantity.Display{
		Dim:    quantity.Length,
		US:     quantity.UnitDisplay{Unit: "in", Form: quantity.Inches, Step: 1},
		Metric: quantity.UnitDisplay{Unit: "mm", Step: 10},
	}
	showApart = quantity.Display{
		Dim:    quantity.Length,
		US:     quantity.UnitDisplay{Unit: "in", Form: quantity.Inches, Step: 0.5, Rounding: quantity.Down},
		Metric: quantity.UnitDisplay{Unit: "mm", Step: 5, Rounding: quantity.Down},
	}
	showReach = quantity.Display{
		Dim:    quantity.Length,
		US:     quantity.UnitDisplay{Unit: "in", Form: quantity.Inches, Step: 0.25, Rounding: quantity.Down},
		Metric: quantity.UnitDisplay{Unit: "mm", Step: 5, Rounding: quantity.Down},
	}
	showFrequency = quantity.Display{
		Dim:    quantity.Frequency,
		US:     quantity.UnitDisplay{Unit: "vpm", Step: 500},
		Metric: quantity.UnitDisplay{Unit: "Hz", Step: 10},
	}
	showRate = quantity.Display{
		Dim:    quantity.FlowRate,
		US:     quantity.UnitDisplay{Unit: "yd³/h", Step: 1},
		Metric: quantity.UnitDisplay{Unit: "m³/h", Step: 0.1},
	}
	showSpeed = quantity.Display{
		Dim:    quantity.Speed,
		US:     quantity.UnitDisplay{Unit: "in/s", Step: 0.5},
		Metric: quantity.UnitDisplay{Unit: "mm/s", Step: 5},
	}
	showSeconds = quantity.Display{Dim: quantity.Duration, US: quantity.UnitDisplay{Unit: "s", Step: 1}}
)

const (
	whyThin  = calc.Text("No core this thin can be filled and vibrated.")
	whyPull  = calc.Text("Nobody pulls a head at this speed.")
	whyLift  = calc.Text("A lift is never this deep. Split it.")
	whyHands = calc.Text("One to three people work one vibrator.")
)

var inputs = []calc.Field{
	{ID: "head", Decides: 1, Kind: calc.Choice, Options: headOptions, Usual: "thin",
		Label: calc.Text("Size of the head")},
	{ID: "plan", Kind: calc.Choice, Usual: "middle", Label: calc.Text("Radius to plan with"),
		Help: calc.Text("How far the head works. Many ties: the low end. Measure it on the first lift."),
		Options: []calc.Option{
			{ID: "low", Label: calc.Text("Low end of the table")},
			{ID: "middle", Label: calc.Text("Middle of the table")},
			{ID: "high", Label: calc.Text("High end of the table")},
			{ID: "seen", Label: calc.Text("As seen on the job")}}},
	{ID: "seen", Display: &displays.Inches, Example: true, Usual: "6 in", Label: calc.Text("Radius seen"),
		Help:  calc.Text("From the head to where the surface no longer moves."),
		Range: "1 to 36 in", Why: displays.CheckUnit, When: asSeen},
	{ID: "most-apart", Display: &displays.Inches, Rule: "head-spacing", HoldsRule: true,
		Label: calc.Text("Places apart at most"),
		Range: "3 to 18 in", Why: displays.CheckUnit},
	{ID: "gap", Display: &displays.Inches, Example: true, Usual: "3 in", Label: calc.Text("Clear gap for the head"),
		Help:  calc.Text("The narrowest way down, between ties and bars."),
		Range: "0.5 to 36 in", Why: displays.CheckUnit},
	{ID: "concrete", Kind: calc.Choice, Usual: "air", Label: calc.Text("Concrete"),
		Options: []calc.Option{{ID: "air", Label: calc.Text("Air-entrained")},
			{ID: "plain", Label: calc.Text("Not air-entrained")}}},
	{ID: "length", Decides: 2, Measure: "loop", Display: &displays.Height, Usual: "100 ft",
		Label: calc.Text("Length of wall"),
		Range: "1 to 2000 ft", Why: displays.CheckUnit, WhyMost: displays.OneJob},
	{ID: "core", Decides: 3, Measure: "core", Display: &displays.Part, Usual: "8 in",
		Label: calc.Text("Core thickness"),
		Range: "2 to 36 in", Why: whyThin, WhyMost: displays.CheckUnit},
	{ID: "lift", Decides: 4, Measure: "lift", Display: &displays.Inches, Rule: "lift",
		Label: calc.Text("Depth of the lift"),
		Range: "2 in to 10 ft", Why: displays.CheckUnit, WhyMost: whyLift},
	{ID: "into", Display: &displays.Inches, Rule: "into-below", Label: calc.Text("Into the lift below"),
		Help:  calc.Text("At least 4 in. (100 mm). Zero only for the first lift."),
		Range: "0 to 48 in", Why: displays.NotMinus, WhyMost: displays.CheckUnit},
	{ID: "openings", Display: &displays.Count, Whole: true,
		Example: true, Usual: "3", Label: calc.Text("Openings in this lift"),
		Range: "0 to 200", Why: displays.NotMinus, WhyMost: displays.CheckCount},
	{ID: "sill", Display: &displays.Count, Whole: true,
		Example: true, Usual: "2", Label: calc.Text("More under each sill"),
		Help:  calc.Text("Through openings in the sill. Zero where the lift has no sill."),
		Range: "0 to 20", Why: displays.NotMinus, WhyMost: displays.CheckCount},
	{ID: "speed", Display: &showSpeed, Usual: "3 in/s", Label: calc.Text("Speed of pulling out"),
		Range: "0.5 to 12 in/s", Why: whyPull},
	{ID: "move", Display: &showSeconds, Usual: "5 s", Label: calc.Text("To the next place and in"),
		Range: "0 to 120 s", Why: displays.NotMinus, WhyMost: displays.CheckUnit},
	{ID: "pump", Measure: "pump-rate", Display: &displays.PumpRate,
		Example: true, Usual: "10 yd³/h", Label: calc.Text("Pump rate"),
		Range: "0.5 to 200 yd³/h", Why: displays.CheckUnit},
	{ID: "hands", Display: &displays.Count, Whole: true, Usual: "1", Label: calc.Text("People for one vibrator"),
		Help:  calc.Text("Two where one carries the motor for a long whip."),
		Range: "1 to 3", Why: whyHands},
	{ID: "height", Display: &displays.Height,
		Example: true, Usual: "9 ft", Label: calc.Text("Top of form above the foot"),
		Range: "1 to 40 ft", Why: displays.CheckUnit, WhyMost: displays.OneStorey},
	{ID: "whip", Display: &displays.Height, Example: true, Usual: "14 ft", Label: calc.Text("Whip with its head"),
		Range: "1 to 60 ft", Why: displays.CheckUnit},
	{ID: "above", Display: &displays.Height, Usual: "3 ft", Label: calc.Text("Of it above the form"),
		Help:  calc.Text("What the hand and the motor need over the top."),
		Range: "0 to 10 ft", Why: displays.NotMinus, WhyMost: displays.CheckUnit},
	{ID: "foot", Kind: calc.Choice, Optional: true, Label: calc.Text("The foot is vibrated by"), When: short,
		Options: []calc.Option{
			{ID: "longer", Label: calc.Text("A longer whip")},
			{ID: "window", Label: calc.Text("An opening in the form")},
			{ID: "outside", Label: calc.Text("From outside, at the foot")},
			{ID: "stages", Label: calc.Text("A lower form first")}}},
}

// asSeen reports whether the radius of action is as seen on the job.
func asSeen(c calc.Case) bool { return c.Choice("plan") == "seen" }

// short reports whether the head does not reach the foot of the wall.
func short(c calc.Case) bool {
	return consolidation.Unreached(c.Num("height"), c.Num("above"), c.Num("whip")) > footSlack
}

// footSlack is the least height at the foot that counts, in m.
const footSlack = 0.001

var formulas = []*calc.Formula{
	consolidation.SpacingFormula,
	consolidation.ReachFormula,
	consolidation.AlongFormula,
	consolidation.PlacesFormula,
	consolidation.EachFormula,
	consolidation.PassFormula,
	consolidation.FillFormula,
	consolidation.KeepUpFormula,
	consolidation.ByRateFormula,
	consolidation.UnreachedFormula,
}

var outputs = []calc.Field{
	{ID: "vibrators", Display: &displays.Count, Exact: true, Lead: true, Label: calc.Text("Vibrators to keep up"),
		Help: calc.Text("By the places and the longer time at each.")},
	{ID: "with-spare", Display: &displays.Count, Exact: true, Lead: true, Label: calc.Text("On site, with a spare")},
	{ID: "hands-needed", Display: &displays.Count, Exact: true, Label: calc.Text("People to run them")},
	{ID: "spacing", Display: &showApart, Lead: true, Label: calc.Text("From place to place")},
	{ID: "apart", Kind: calc.Rows, Label: calc.Text("Spacings side by side"), Cols: []calc.Field{
		{ID: "by", Kind: calc.Choice, Label: calc.Text("By"), Options: []calc.Option{
			{ID: "plan", Label: calc.Text("This plan")},
			{ID: "low", Label: calc.Text("1.5 × low end of the table")},
			{ID: "high", Label: calc.Text("1.5 × high end of the table")},
			{ID: "army", Label: calc.Text("Army manual, any head")}}},
		{ID: "spacing", Display: &showApart, Label: calc.Text("Apart")}}},
	{ID: "reach", Display: &showReach, Label: calc.Text("Reach to each side between"),
		Help: calc.Text("Half way from place to place. It must reach the form.")},
	{ID: "along", Display: &displays.Count, Exact: true, Label: calc.Text("Places along the wall")},
	{ID: "extra", Display: &displays.Count, Exact: true, Label: calc.Text("More at the openings")},
	{ID: "places", Display: &displays.Count, Exact: true, Lead: true, Label: calc.Text("Places in this lift")},
	{ID: "each-low", Display: &showSeconds, Label: calc.Text("Time for one place, from")},
	{ID: "each-high", Display: &showSeconds, Label: calc.Text("Time for one place, to")},
	{ID: "pass-low", Display: &displays.Minutes, Label: calc.Text("Pass, one vibrator, from")},
	{ID: "pass-high", Display: &displays.Minutes, Label: calc.Text("Pass, one vibrator, to")},
	{ID: "fill", Display: &displays.Minutes, Label: calc.Text("The pump fills the lift in")},
	{ID: "by-rate-low", Display: &displays.Count, Exact: true, Label: calc.Text("By published rate, from"),
		Help: calc.Text("To compare: pump rate over the rate of one vibrator.")},
	{ID: "by-rate-high", Display: &displays.Count, Exact: true, Label: calc.Text("By published rate, to")},
	{ID: "unreached", Display: &displays.Height, Label: calc.Text("Foot the head misses")},
	{ID: "frequency-low", Display: &showFrequency, Label: calc.Text("Frequency, from")},
	{ID: "frequency-high", Display: &showFrequency, Label: calc.Text("Frequency, to")},
	{ID: "radius-low", Display: &showRadius, Label: calc.Text("Radius of action, from")},
	{ID: "radius-high", Display: &showRadius, Label: calc.Text("Radius of action, to")},
	{ID: "rate-low", Display: &showRate, Label: calc.Text("Rate of one vibrator, from")},
	{ID: "rate-high", Display: &showRate, Label: calc.Text("Rate of one vibrator, to")},
}

var tables = []calc.Table{
	{
		ID: "keep-up", Title: calc.Text("Vibrators to keep up, by pump rate and core"),
		Note: calc.Text(
			"For 24 in. (600 mm) lifts of air-entrained concrete, a head of 1¼ to 2½ in. (30–60 mm), places 11 in. " +
				"(280 mm) apart, and 3 openings. Add a spare. The length of wall hardly matters.",
		),
		Out: "vibrators", Set: []calc.Entry{{Path: "lift", Text: "600 mm"}},
		Down: tablePumps, Across: tableCores,
	},
	{
		ID: "keep-up-rounds", Title: calc.Text("Vibrators to keep up in low rounds, by pump rate and core"),
		Note: calc.Text(
			"For the same job in 12 in. (300 mm) rounds: air-entrained, a head of 1¼ to 2½ in. (30–60 mm), places " +
				"11 in. (280 mm) apart, 3 openings. Every round has all its spots again. Add a spare.",
		),
		Out: "vibrators", Set: []calc.Entry{{Path: "lift", Text: "300 mm"}},
		Down: tablePumps, Across: tableCores,
	},
}

// The pump rates and cores of the tables.
var (
	tablePumps = calc.Axis{
		Path:   "pump",
		US:     []string{"4", "6", "8", "10", "12", "16"},
		Metric: []string{"3", "5", "6", "8", "10", "12"},
	}
	tableCores = calc.Axis{
		Path:   "core",
		US:     []string{"6 in", "8 in", "10 in"},
		Metric: []string{"150 mm", "200 mm", "250 mm"},
	}
)

var sources = []calc.Source{
	{
		ID:     "ccanz",
		Author: "Cement & Concrete Association of New Zealand",
		Title:  "Compaction Equipment",
		Where:  calc.Text("table 1"),
		Status: calc.Confirmed,
		Link:   "https://concretenz.org.nz/page/compaction",
	},
	{
		ID:      "aci309",
		Author:  "ACI Committee 309",
		Title:   "Guide for Consolidation of Concrete",
		Edition: "ACI 309R-05",
		Year:    "2005",
		Where: calc.Text("table 5.1 and ch. 7: spacing 1.5 times the radius, about 6 in. into the lift below, 3 " +
			"in/s"),
		Status: calc.Memory,
	},
	{
		ID:     "hurd",
		Author: "M. K. Hurd",
		Title:  "Use updated wall pressure formulas",
		Where:  calc.Text("no wall equation holds for a vibrator deeper than 4 ft"),
		Status: calc.Confirmed,
	},
	{
		ID:     "army",
		Author: "US Army",
		Title:  titleArmy,
		Year:   "1992",
		Where:  calc.Text("consolidation page: seconds by air-entrained or not, 18 in. apart"),
		Status: calc.Confirmed,
	},
	{
		ID:     "workman",
		Title:  consolidation.TitleWork,
		Where:  calc.Text("4 in. into the lift below, layers of no more than 2 ft"),
		Status: calc.Confirmed,
		Link:   consolidation.LinkWork,
	},
	{
		ID: "practice",
		Where: calc.Text("One place more at each side of an opening, the first place half a spacing from the " +
			"end, one spare"),
		Status: calc.CommonPractice,
	},
}
