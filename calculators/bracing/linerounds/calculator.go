// Package linerounds follows the string-line correction of a whole wall over
// several rounds of reading and turning. A brace moves its neighbors too, so a
// wall is set in rounds, and the second round shows a brace that was turned the
// wrong way.
//
// As in package stringline, the direction of turning is given only where the
// side of the string is entered.
package linerounds

import (
	"coursebook/calculators/bracing"
	"coursebook/calculators/calc"
	"coursebook/calculators/displays"
)

// Calculator declares inputs, outputs, formulas and sources of the calculator.
var Calculator = &calc.Calculator{
	ID:      "line-rounds",
	Title:   calc.Text("String line, round by round"),
	Purpose: calc.Text("Whether the wall comes in, what to turn next, and whether another round is needed."),
	In:      inputs,
	Out:     outputs,
	Formulas: []*calc.Formula{
		bracing.DeviationFormula,
		bracing.MovementFormula,
		bracing.LeftOverFormula,
		bracing.BraceLengthFormula,
		bracing.AtBraceFormula,
		bracing.BraceChangeFormula,
		bracing.TurnsFormula,
	},
	Sources: sources,
	Cautions: []calc.Caution{
		{Level: calc.LevelWarning, Text: bracing.CautionHandsOff},
		{Level: calc.LevelWarning, Text: bracing.CautionNeverBack},
	},
	Tables:  tables,
	Compute: compute,
	Draw:    draw,
}

var sources = []calc.Source{
	{ID: "practice", Where: calc.Text("String on equal blocks, all braces read again after each round; a quarter " +
		"turn at a time; done when every brace is within tolerance in the same round"), Status: calc.CommonPractice},
	bracing.SourceOwn,
	{
		ID: "derived",
		Where: calc.Text("Movement of a wall that turns about its base, held by a sloping brace; derived from " +
			"the triangle of wall, ground and brace"),
		Status: calc.Memory,
	},
	{
		ID:      "army",
		Author:  "US Army",
		Title:   "EN5466, Concrete and masonry",
		Edition: "A",
		Year:    "1992",
		Where:   calc.Text("brace design: triangle of wall, ground and brace"),
		Status:  calc.Confirmed,
	},
}

var tables = []calc.Table{
	{
		ID: "turns", Title: calc.Text("Turns still needed, by gap read and travel of one turn"),
		Note: calc.Text(
			"Block 3/4 in. (19 mm), brace 6 ft (1.83 m) up, foot 5 ft (1.52 m) out, string at 8 ft (2.44 m).",
		),
		Out: "turns", Set: []calc.Entry{{Path: "tolerance", Text: "1/16 in"}, {Path: "braces.1.gap-1", Text: "2 in"}},
		Down: calc.Axis{
			Path:   "braces.1.gap-2",
			US:     []string{"7/8 in", "1 in", "1 1/8 in", "1 1/4 in", "1 1/2 in"},
			Metric: []string{"23 mm", "26 mm", "30 mm", "32 mm", "40 mm"},
		},
		Across: calc.Axis{
			Path:   "travel",
			US:     []string{"0.1 in", "0.125 in", "0.2 in", "0.25 in", "0.4 in"},
			Metric: []string{"2.5 mm", "3 mm", "5 mm", "6 mm", "10 mm"},
		},
	},
}

var inputs = []calc.Field{
	{
		ID:      "concrete",
		Decides: 3,
		Label:   calc.Text("The concrete is"),
		Kind:    calc.Choice,
		Options: bracing.ConcreteOptions,
		Usual:   "plastic",
	},
	{
		ID:       "string-side",
		Decides:  2,
		Label:    calc.Text("The string is on the"),
		Kind:     calc.Choice,
		Options:  bracing.SideOptions,
		Optional: true,
		Help:     calc.Text("Go and look. Until you answer, no direction is shown."),
	},
	{ID: "braces", Decides: 1, Label: calc.Text("Gaps at each brace"), Kind: calc.Rows, MinRows: 1, MaxRows: 40,
		Help:  calc.Text("In order along the wall. Leave round 3 empty until it is read."),
		Usual: "1 | 3/4 in | 3/4 in; 2 | 1-1/4 in | 1 in; 3 | 1-1/2 in | 1-1/8 in; 4 | 7/8 in | 3/4 in",
		Cols: []calc.Field{
			{ID: "name", Label: calc.Text("Brace"), Kind: calc.FreeText, Optional: true, MaxLen: 24},
			{ID: "gap-1", Label: calc.Text("Round 1"), Display: &displays.Part,
				Range: "0 to 12 in", Why: touching, WhyMost: lostLine},
			{ID: "gap-2", Label: calc.Text("Round 2"), Display: &displays.Part,
				Range: "0 to 12 in", Why: touching, WhyMost: lostLine},
			{ID: "gap-3", Label: calc.Text("Round 3"), Display: &displays.Part, Optional: true,
				Range: "0 to 12 in", Why: touching, WhyMost: lostLine},
		}},
	{ID: "block", Label: calc.Text("Block at both ends"), Display: &displays.Part, Usual: "3/4 in",
		Range: "0 to 4 in", Why: touching, WhyMost: displays.CheckUnit},
	{ID: "tolerance", Label: calc.Text("Tolerance"), Display: &displays.Part, Rule: "straightness",
		Range: "1/16 to 1/4 in", Why: bracing.TightOwn, WhyMost: bracing.LooseTolerance},
	{ID: "travel", Decides: 4, Measure: "turn-travel", Label: calc.Text("Travel of one turn"),
		Display: bracing.ThreadSize, Usual: "0.2 in",
		Help:  bracing.ScrewNotWall,
		Range: "1 to 50 mm", Why: displays.CheckUnit},
	{ID: "string-height", Measure: "string-height", Label: calc.Text("Height of the string"),
		Display: &displays.Height, Usual: "8 ft",
		Range: "2 to 30 ft", Why: displays.CheckUnit, WhyMost: displays.OneStorey},
	{ID: "attach-height", Measure: "brace-height", Label: calc.Text("Brace on the wall, height"),
		Display: &displays.Height, Usual: "6 ft",
		Range: "1 to 30 ft", Why: displays.CheckUnit, WhyMost: displays.OneStorey},
	{ID: "foot-distance", Measure: "brace-foot", Label: calc.Text("Foot of brace from the wall"),
		Display: &displays.Height, Usual: "5 ft",
		Range: "1 to 30 ft", Why: displays.CheckUnit},
	{ID: "foot-below", Measure: "foot-below", Label: calc.Text("Foot below the wall base"), Display: &displays.Height,
		Usual: "0 ft",
		Range: "0 to 6 ft", Why: displays.NotMinus, WhyMost: displays.CheckUnit},
}

// Reasons of limits.
const (
	touching = calc.Text("A gap is never negative. If the wall touches, use thicker blocks.")
	lostLine = calc.Text("So wide a gap is another line or a fallen string.")
)

// wayOptions are the verdicts on the last movement of a brace.
var wayOptions = []calc.Option{
	{ID: "good", Label: calc.Text("within tolerance")},
	{ID: "closer", Label: calc.Text("coming in")},
	{ID: "still", Label: calc.Text("did not move")},
	{ID: "past", Label: calc.Text("went too far")},
	{ID: "dragged", Label: calc.Text("dragged out by others")},
	{ID: "wrong", Label: calc.Text("wrong way")},
}

var outputs = []calc.Field{
	{ID: "next", Label: bracing.LabelNext, Kind: calc.Choice, Lead: true, Options: []calc.Option{
		{ID: "done", Advice: calc.Good, Label: calc.Text("in line, no more rounds")},
		{ID: "again", Advice: calc.Careful, Label: calc.Text("another round: turn, read all")},
		{ID: "eighths", Advice: calc.Careful, Label: calc.Text("another round: eighths, read all")},
		{ID: "coarse", Advice: calc.Stop, Label: bracing.LabelCoarse},
		{ID: "check", Advice: calc.Careful, Label: calc.Text("Hold: check side and thread")},
		{ID: "stop", Advice: calc.Stop, Label: calc.Text("Hands off: leave the braces")},
		{ID: "clear", Advice: calc.Stop, Label: bracing.LabelClear},
		{ID: "look", Advice: calc.Stop, Label: bracing.LabelLook}}},
	{ID: "worst", Label: calc.Text("Worst in the last round"), Display: &displays.Part, Lead: true},
	{ID: "to-turn", Label: calc.Text("Braces to turn"), Display: &displays.Count, Exact: true, Lead: true},
	{ID: "done", Label: calc.Text("All within tolerance"), Kind: calc.Choice, Options: []calc.Option{
		{ID: "round-1", Label: calc.Text("from round 1")},
		{ID: "round-2", Label: calc.Text("from round 2")},
		{ID: "round-3", Label: calc.Text("from round 3")},
		{ID: "not-yet", Label: calc.Text("not yet")}}},
	{ID: "lines", Label: calc.Text("Brace by brace"), Kind: calc.Rows, Cols: outCols},
	{ID: "turns", Label: calc.Text("Turns for the worst"), Display: bracing.Quarters},
	{ID: "worst-row", Label: calc.Text("Worst is in row"), Display: &displays.Count, Exact: true},
	{ID: "first-worst", Label: calc.Text("Worst in round 1"), Display: &displays.Part},
	{ID: "left", Label: calc.Text("Share of that left"), Display: &displays.Percent},
	{ID: "dragged", Label: calc.Text("Good brace dragged by"), Display: &displays.Part},
}

var outCols = []calc.Field{
	{ID: "name", Label: calc.Text("Brace"), Kind: calc.FreeText},
	{ID: "off-1", Label: calc.Text("Off, round 1"), Display: &displays.Part},
	{ID: "off-2", Label: calc.Text("Off, round 2"), Display: &displays.Part},
	{ID: "off-3", Label: calc.Text("Off, round 3"), Display: &displays.Part},
	{ID: "moved", Label: calc.Text("Moved last"), Display: &displays.Part},
	{ID: "way", Label: calc.Text("It is"), Kind: calc.Choice, Options: wayOptions},
	{ID: "move", Label: calc.Text("Wall must go"), Kind: calc.Choice, Options: bracing.MoveOptions},
	{ID: "turn", Label: calc.Text("Adjuster"), Kind: calc.Choice, Options: bracing.TurnOptions},
	{ID: "turns", Label: calc.Text("Turns"), Display: bracing.Quarters},
}
