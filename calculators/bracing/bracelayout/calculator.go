// Package bracelayout computes the positions of the braces along one wall:
// where the rules of the form maker or the engineer require one, and evenly
// between. It assumes no spacing: the largest spacing is always entered.
package bracelayout

import (
	"coursebook/calculators/bracing"
	"coursebook/calculators/calc"
	"coursebook/calculators/displays"
)

// Calculator declares inputs, outputs, formulas and sources of the calculator.
var Calculator = &calc.Calculator{
	ID:      "brace-layout",
	Title:   calc.Text("Brace layout"),
	Purpose: calc.Text("How many braces one wall takes, and where each one stands."),
	In:      inputs,
	Out:     outputs,
	Formulas: []*calc.Formula{
		bracing.FillBracesFormula,
		bracing.EvenGapFormula,
		bracing.PlankCountFormula,
		bracing.RailLengthFormula,
	},
	Sources: sources,
	Cautions: []calc.Caution{
		{
			Level: calc.LevelWarning,
			Text: calc.Text(
				"The largest spacing comes from the form maker or the engineer. This sheet only sets it out.",
			),
		},
		{
			Level: calc.LevelWarning,
			Text: calc.Text(
				"Planks 6 ft (1.8 m) up or more need guardrails or harnesses: that is the rule for formwork. " +
					"Scaffolds have it from 10 ft (3 m).",
			),
		},
	},
	Tables:  tables,
	Compute: compute,
	Draw:    draw,
}

var sources = []calc.Source{
	{
		ID: "rules",
		Where: calc.Text("A brace near each corner, at each side of an opening and at each line of stacked " +
			"joints, evenly " +
			"between; the distances are the form maker's"),
		Status: calc.CommonPractice,
	},
	{ID: "even", Where: calc.Text("Division of a length into equal parts; arithmetic"), Status: calc.Memory},
	{ID: "osha451", Author: "OSHA", Title: "29 CFR 1926.451, Scaffolds, general requirements",
		Where: calc.Text("(b)(2) width 18 in., (b)(3) gap to the face 14 in., (b)(7) lap 12 in., (f)(16) sag " +
			"1/60, (g)(1) " +
			"falls over 10 ft; formwork over 6 ft: 1926.501(b)(5)"), Status: calc.Secondary,
		Link: "https://www.osha.gov/laws-regs/regulations/standardnumber/1926/1926.451"},
	{
		ID:     "planks",
		Author: "OSHA",
		Title:  "29 CFR 1926 Subpart L, Appendix A",
		Where:  calc.Text("table of spans of 2 × 10 planks"),
		Status: calc.Secondary,
		Link:   "https://www.osha.gov/laws-regs/regulations/standardnumber/1926/1926SubpartLAppA",
	},
}

var tables = []calc.Table{
	{
		ID: "count", Title: calc.Text("Braces, by length of wall and largest spacing"),
		Note: calc.Text("A plain wall without openings. First and last brace 2 ft (0.6 m) from the corners."),
		Out:  "count",
		Set:  []calc.Entry{{Path: "openings", Text: ""}, {Path: "stacks", Text: ""}},
		Down: calc.Axis{
			Path:   "length",
			US:     []string{"12 ft", "20 ft", "28 ft", "40 ft", "60 ft", "80 ft"},
			Metric: []string{"3.6 m", "6 m", "9 m", "12 m", "18 m", "24 m"},
		},
		Across: calc.Axis{
			Path:   "spacing",
			US:     []string{"3 ft", "4 ft", "5 ft", "6 ft"},
			Metric: []string{"0.9 m", "1.2 m", "1.5 m", "1.8 m"},
		},
	},
}

// Reasons of limits.
const (
	shortWall   = calc.Text("A wall this short is held by its corners.")
	tightBraces = calc.Text("Braces this close stand in each other's way.")
	wideBraces  = calc.Text("No form maker lets braces stand this far apart.")
	farCorner   = calc.Text("A corner needs a brace nearer than this.")
	farSide     = calc.Text("So far off, the brace does not hold the opening.")
	shortPlank  = calc.Text("A plank this short spans no bay.")
	leastLap    = calc.Text("Planks lap 12 in. (305 mm) at least, unless nailed or tied.")
	leastWide   = calc.Text("A platform is at least 18 in. (457 mm) wide.")
)

// withPlatform reports whether a platform is planned.
func withPlatform(c calc.Case) bool { return c.Flag("platform") }

// looser reports whether braces are farther apart, or the first one farther from its corner,
// than the house rules have.
func looser(c calc.Case) bool { return c.LooserThanHouse("spacing") || c.LooserThanHouse("corner") }

var openingCols = []calc.Field{
	{ID: "start", Label: calc.Text("Near side, from start"), Display: &displays.Wall,
		Range: "0 to 400 ft", Why: displays.NotMinus, WhyMost: displays.OneJob},
	{ID: "width", Label: calc.Text("Width"), Display: &displays.Wall,
		Range: "over 0 to 60 ft", Why: displays.LeaveOut, WhyMost: displays.CheckUnit},
}

var stackCols = []calc.Field{
	{ID: "at", Label: calc.Text("From start"), Display: &displays.Wall,
		Range: "0 to 400 ft", Why: displays.NotMinus, WhyMost: displays.OneJob},
}

var inputs = []calc.Field{
	{ID: "length", Decides: 1, Label: calc.Text("Length of the wall"), Display: &displays.Wall, Usual: "40 ft",
		Help:  calc.Text("The tape starts at the left end, seen from the braces."),
		Range: "4 to 400 ft", Why: shortWall, WhyMost: displays.OneJob},
	{ID: "spacing", Decides: 2, Maker: true, Label: calc.Text("Largest spacing"), Display: &displays.Wall,
		Rule: "brace-spacing", OnPlan: "on-plan",
		Help:  calc.Text("From the form maker or the engineer. Ours only where they give none."),
		Range: "2 to 12 ft", Why: tightBraces, WhyMost: wideBraces, MostSource: "rules"},
	{ID: "corner", Decides: 4, Label: calc.Text("First brace from a corner"), Display: &displays.Wall,
		Rule: "brace-corner", OnPlan: "on-plan",
		Range: "0 to 6 ft", Why: displays.NotMinus, WhyMost: farCorner, MostSource: "rules"},
	{ID: "on-plan", Label: bracing.LabelOnPlan, Kind: calc.Flag, Usual: "no", When: looser, Help: bracing.HelpOnPlan},
	{ID: "side", Label: calc.Text("Brace from an opening's edge"), Display: &displays.Part, Usual: "12 in",
		Range: "0 to 36 in", Why: displays.NotMinus, WhyMost: farSide, MostSource: "rules"},
	{ID: "closest", Label: calc.Text("Closest two braces may stand"), Display: &displays.Part, Usual: "12 in",
		Help:  calc.Text("Where two rules ask for more, one brace serves both."),
		Range: "0 to 24 in", Why: displays.NotMinus, WhyMost: displays.CheckUnit},
	{
		ID:      "openings",
		Decides: 3,
		Label:   calc.Text("Openings"),
		Kind:    calc.Rows,
		Cols:    openingCols,
		MaxRows: 20,
		Usual:   "8 ft | 3 ft; 24 ft | 6 ft",
	},
	{
		ID:      "stacks",
		Label:   calc.Text("Lines of stacked joints"),
		Kind:    calc.Rows,
		Cols:    stackCols,
		MaxRows: 20,
		Usual:   "20 ft",
		Help:    calc.Text("Where joints stand above each other and the form can hinge."),
	},
	{ID: "platform", Label: calc.Text("Planks on the braces"), Kind: calc.Flag, Usual: "yes"},
	{ID: "plank", Label: calc.Text("Length of a plank"), Display: &displays.Wall, Usual: "16 ft", When: withPlatform,
		Range: "6 to 32 ft", Why: shortPlank, WhyMost: displays.CheckUnit},
	{
		ID:      "span",
		Label:   calc.Text("Longest span of a plank"),
		Display: &displays.Wall,
		Usual:   "8 ft",
		When:    withPlatform,
		Help:    calc.Text("For the load on it. A 2 × 10 under light duty: 8 ft (2.4 m)."),
		Range:   "3 to 16 ft",
		Why:     shortPlank,
		WhyMost: displays.CheckUnit,
	},
	{ID: "lap", Label: calc.Text("Lap of two planks"), Display: &displays.Part, Usual: "12 in", When: withPlatform,
		Range: "12 to 48 in", Why: leastLap, WhyMost: displays.CheckUnit, LeastSource: "osha451"},
	{
		ID:      "abreast",
		Label:   calc.Text("Planks side by side"),
		Display: &displays.Count,
		Whole:   true,
		Usual:   "2",
		When:    withPlatform,
		Range:   "1 to 6",
		Why:     displays.CheckCount,
	},
	{
		ID:          "width",
		Label:       calc.Text("Width of the platform"),
		Display:     &displays.Part,
		Usual:       "19 in",
		When:        withPlatform,
		Range:       "18 to 60 in",
		Why:         leastWide,
		WhyMost:     displays.CheckUnit,
		LeastSource: "osha451",
	},
}

// kindOptions are the rules that place a brace.
var kindOptions = []calc.Option{
	{ID: "corner", Label: calc.Text("corner")},
	{ID: "opening", Label: calc.Text("opening")},
	{ID: "stack", Label: calc.Text("stacked joints")},
	{ID: "between", Label: calc.Text("between")},
}

var outputs = []calc.Field{
	{ID: "count", Label: calc.Text("Braces"), Display: &displays.Count, Exact: true, Lead: true},
	{ID: "largest", Label: calc.Text("Largest gap"), Display: &displays.Wall, Lead: true},
	{ID: "braces", Label: calc.Text("Brace by brace"), Kind: calc.Rows, Cols: []calc.Field{
		{ID: "nr", Label: calc.Text("Brace"), Display: &displays.Count, Exact: true},
		{ID: "at", Label: calc.Text("Tape from start"), Display: &displays.Wall},
		{ID: "gap", Label: calc.Text("From the last one"), Display: &displays.Wall},
		{ID: "for", Label: calc.Text("Stands for"), Kind: calc.Choice, Options: kindOptions},
	}},
	{ID: "planks", Label: calc.Text("Planks"), Display: &displays.Count, Exact: true},
	{ID: "platform-length", Label: calc.Text("Length of platform"), Display: &displays.Wall},
	{ID: "rail", Label: calc.Text("Guardrail, side and ends"), Display: &displays.Wall},
}
