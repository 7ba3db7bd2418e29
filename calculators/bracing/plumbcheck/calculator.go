// Package plumbcheck compares plumb readings of a wall with the limits of
// several documents side by side. For a basement wall the limits of two
// editions differ by more than a factor of three, so every line of the result
// names its edition.
package plumbcheck

import (
	"coursebook/calculators/bracing"
	"coursebook/calculators/calc"
	"coursebook/calculators/displays"
)

// Calculator declares inputs, outputs, formulas and sources of the calculator.
var Calculator = &calc.Calculator{
	ID:      "plumb-check",
	Title:   calc.Text("Plumb and plane check"),
	Purpose: calc.Text("Whether a wall is plumb and plane enough, by each edition of the book."),
	In:      inputs,
	Out:     outputs,
	Formulas: []*calc.Formula{
		bracing.PlumbLimitFormula,
		bracing.EdgeLimitFormula,
		bracing.HomeLimitFormula,
		bracing.LeanFormula,
		bracing.SlopeLimitFormula,
		bracing.OutOfStraightFormula,
	},
	Sources: sources,
	Cautions: []calc.Caution{
		{
			Level: calc.LevelNotice,
			Text:  calc.Text("The project papers say which edition counts. They may be tighter than all of these."),
		},
		{
			Level: calc.LevelWarning,
			Text:  calc.Text("Never pull a wall straight once the concrete has stiffened. Tell the foreman instead."),
		},
	},
	Tables:  tables,
	Compute: compute,
	Draw:    draw,
}

var sources = []calc.Source{
	{
		ID:      "aci117",
		Author:  "ACI Committee 117",
		Title:   "Specification for Tolerances for Concrete Construction, ACI 117",
		Edition: "06, 10",
		Year:    "2010",
		Where:   calc.Text("section 4.1.1: 0.3 % of the height, at most 1 in., up to 83 ft 4 in."),
		Status:  calc.Secondary,
	},
	{
		ID:      "aci117-edge",
		Author:  "ACI Committee 117",
		Title:   "ACI 117",
		Edition: "10",
		Year:    "2010",
		Where:   calc.Text("section 4.1.2, exposed corner columns and grooves: 0.2 %, at most 1/2 in."),
		Status:  calc.Memory,
	},
	{ID: "aci117-90", Author: "ACI Committee 117", Title: "ACI 117", Edition: "90", Year: "1990",
		Where: calc.Text("vertical alignment up to 100 ft: 1 in.; exposed corner column or joint groove 1/2 in.; " +
			"as printed in " +
			"UFGS 03700, page 26"), Status: calc.Confirmed},
	{
		ID:     "ufgs21",
		Author: "US Army, Navy, Air Force",
		Title:  "UFGS 03700, Concrete",
		Where:  calc.Text("page 21: abrupt and gradual irregularities by class, other deviation 10 mm in 3 m"),
		Status: calc.Confirmed,
	},
	{
		ID:     "nahb",
		Author: "NAHB",
		Title:  "Residential Construction Performance Guidelines",
		Where:  calc.Text("guideline 2-13: 1-1/2 in. in 8 ft"),
		Status: calc.Secondary,
	},
	{ID: "own", Where: calc.Text("The wall is cleared beyond 1 in."), Status: calc.OwnLimit},
	{ID: "straight", Where: calc.Text("Straight line through two points; geometry"), Status: calc.Memory},
}

var tables = []calc.Table{
	{
		ID: "limit", Title: calc.Text("Plumb limit of ACI 117-06 and -10 at the top"),
		Note: calc.Text(
			"Lines and surfaces, rounded down. The 1990 edition allows 1 in. (25 mm) at each of these heights.",
		),
		Out: "limit-top", Set: []calc.Entry{{Path: "readings", Text: "1 ft | 0 in"}},
		Down: calc.Axis{
			Path:   "height",
			US:     []string{"4 ft", "8 ft", "9 ft", "10 ft", "12 ft", "20 ft", "28 ft"},
			Metric: []string{"1.2 m", "2.4 m", "2.7 m", "3 m", "3.6 m", "6 m", "8.5 m"},
		},
	},
}

// Reasons of limits.
const (
	bookHeight = calc.Text("The limit of this book ends here.")
	leanMost   = calc.Text("A wall this far out is falling. Check the unit.")
)

var inputs = []calc.Field{
	{ID: "height", Decides: 2, Label: calc.Text("Height of the wall"), Display: &displays.Height, Usual: "9 ft",
		Range: "1 ft to 83 ft 4 in", Why: displays.CheckUnit, WhyMost: bookHeight, MostSource: "aci117"},
	{ID: "readings", Decides: 1, Label: calc.Text("Readings up the wall"), Kind: calc.Rows, MinRows: 1, MaxRows: 20,
		Help:  calc.Text("Out of plumb against the base. Minus is toward the braces."),
		Usual: "3 ft | 1/8 in; 6 ft | 1/4 in; 9 ft | 3/8 in", Cols: []calc.Field{
			{ID: "up", Label: calc.Text("Height above the base"), Display: &displays.Height,
				Range: "over 0 ft to 83 ft 4 in", Why: displays.LeaveOut, WhyMost: bookHeight, MostSource: "aci117"},
			{ID: "off", Label: calc.Text("Out of plumb"), Display: &displays.Part,
				Range: "-12 to 12 in", Why: leanMost},
		}},
	{ID: "what", Label: calc.Text("Read at"), Kind: calc.Choice, Usual: "surface", Options: []calc.Option{
		{ID: "surface", Label: calc.Text("wall face or edge")},
		{ID: "edge", Label: calc.Text("exposed column corner or groove")}}},
	{ID: "class", Label: calc.Text("Class of surface"), Kind: calc.Choice, Usual: "c",
		Help: calc.Text("From the project papers. Foam hides the face: C or D is usual."), Options: []calc.Option{
			{ID: "a", Label: calc.Text("A: prominent, shows")},
			{ID: "b", Label: calc.Text("B: coarse finish over it")},
			{ID: "c", Label: calc.Text("C: general, shows")},
			{ID: "d", Label: calc.Text("D: hidden for good")}}},
	{
		ID:       "gap",
		Label:    calc.Text("Gap under the straightedge"),
		Display:  &displays.Part,
		Optional: true,
		Example:  true,
		Usual:    "1/4 in",
		Help:     calc.Text("5 ft (1.5 m) straightedge, set anywhere on the face."),
		Range:    "0 to 6 in",
		Why:      displays.NotMinus,
		WhyMost:  displays.CheckUnit,
	},
	{ID: "step", Label: calc.Text("Step at a form joint"), Display: &displays.Part, Optional: true,
		Range: "0 to 6 in", Why: displays.NotMinus, WhyMost: displays.CheckUnit},
	{ID: "own", Label: calc.Text("Tolerance of your project"), Display: &displays.Part, Optional: true,
		Help:  calc.Text("Out of plumb at any height, if the papers name one."),
		Range: "1/16 to 6 in", Why: bracing.TightOwn, WhyMost: displays.CheckUnit},
	{ID: "crew", Label: calc.Text("Rule of this crew"), Display: &displays.Part, Rule: "plumb",
		Help:  calc.Text("Out of plumb at any height, while the concrete is plastic."),
		Range: "1/16 to 6 in", Why: bracing.TightOwn, WhyMost: displays.CheckUnit},
	{
		ID:    "stories",
		Label: calc.Text("Stories still to come on top"),
		Kind:  calc.Choice,
		Usual: "none",
		Options: []calc.Option{
			{ID: "none", Label: calc.Text("none")},
			{ID: "one", Label: calc.Text("one or more")}},
	},
}

// bookOptions are the documents, the lines of the result.
var bookOptions = []calc.Option{
	{ID: "new", Label: calc.Text("ACI 117-06, -10: plumb")},
	{ID: "old", Label: calc.Text("ACI 117-90: plumb")},
	{ID: "slope", Label: calc.Text("ACI 117-90, UFGS: 10 mm in 3 m")},
	{ID: "home", Label: calc.Text("Home-builder guideline: plumb")},
	{ID: "own", Label: calc.Text("Your project: plumb")},
	{ID: "plane", Label: calc.Text("UFGS, by class: straightedge")},
	{ID: "step", Label: calc.Text("UFGS, by class: step")},
	{ID: "crew", Label: calc.Text("Rule of this crew: plumb")},
}

// What to do next, IDs of the output next.
const (
	nextClear = "clear"
	nextSet   = "set"
	nextWrite = "write"
)

var outputs = []calc.Field{
	{ID: "next", Label: bracing.LabelNext, Kind: calc.Choice, Lead: true,
		Options: []calc.Option{
			{ID: nextClear, Advice: calc.Stop, Label: bracing.LabelClear},
			{ID: nextSet, Advice: calc.Careful,
				Label: calc.Text("Set the braces before hands off; after it, tell the foreman")},
			{ID: nextWrite, Advice: calc.Good, Label: calc.Text("Within: turn nothing, write it down")}}},
	{ID: "worst", Label: calc.Text("Worst, out of plumb by"), Display: &displays.Part, Lead: true},
	{ID: "house", Label: calc.Text("By the rule of this crew"), Kind: calc.Choice, Options: withinOptions, Lead: true},
	{ID: "new", Label: calc.Text("By ACI 117-06 and -10"), Kind: calc.Choice, Options: withinOptions, Lead: true},
	{ID: "old", Label: calc.Text("By ACI 117-90"), Kind: calc.Choice, Options: withinOptions, Lead: true},
	{ID: "checks", Label: calc.Text("Edition by edition"), Kind: calc.Rows, Cols: []calc.Field{
		{ID: "book", Label: calc.Text("By"), Kind: calc.Choice, Options: bookOptions},
		{ID: "up", Label: calc.Text("At height"), Display: &displays.Height},
		{ID: "limit", Label: calc.Text("Limit"), Display: &displays.PartAtMost},
		{ID: "measured", Label: calc.Text("Measured"), Display: &displays.Part},
		{ID: "within", Label: calc.Text("Within"), Kind: calc.Flag},
	}},
	{ID: "limit-top", Label: calc.Text("Limit at the top, 117-10"), Display: &displays.PartAtMost},
	{ID: "bow", Label: calc.Text("Bow, base to top reading"), Display: &displays.Part},
}

var withinOptions = []calc.Option{
	{ID: "within", Label: calc.Text("within")},
	{ID: "beyond", Label: calc.Text("beyond the limit")},
}
