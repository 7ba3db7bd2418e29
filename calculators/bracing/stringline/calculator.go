// Package stringline computes the turns of the braces' adjusters from gaps read
// between a string and the wall.
//
// The side of the wall on which the string is has no default. The number of
// turns does not depend on it, but the direction of turning does, and the wrong
// direction doubles the error. The default case therefore gives every direction
// as seen from the string and withholds the direction of turning until the side
// is entered. A note then repeats the side.
package stringline

import (
	"coursebook/calculators/bracing"
	"coursebook/calculators/calc"
	"coursebook/calculators/displays"
	"coursebook/calculators/quantity"
)

// Calculator declares inputs, outputs, formulas and sources of the calculator.
var Calculator = &calc.Calculator{
	ID:       "string-line",
	Title:    calc.Text("String-line correction"),
	Purpose:  calc.Text("Which brace to turn, which way and how far, from the gaps at the string."),
	In:       inputs,
	Out:      outputs,
	Formulas: formulas,
	Sources:  sources,
	Cautions: []calc.Caution{
		{Level: calc.LevelWarning, Text: bracing.CautionHandsOff},
		{Level: calc.LevelWarning, Text: bracing.CautionNeverBack},
	},
	Tables:  tables,
	Compute: compute,
	Draw:    draw,
}

var sources = []calc.Source{
	{ID: "practice", Where: calc.Text("String on equal blocks at both ends, read at each brace, set before the " +
		"concrete stiffens; a quarter turn at a time, all read again after one turn"), Status: calc.CommonPractice},
	bracing.SourceOwn,
	{
		ID: "derived",
		Where: calc.Text("Movement of a wall that turns about its base, held by a sloping brace; derived from " +
			"the triangle of wall, ground and brace; the derivation is in the listing of BraceChange"),
		Status: calc.Memory,
	},
	{
		ID:      "army",
		Author:  "US Army",
		Title:   "EN5466, Concrete and masonry",
		Edition: "A",
		Year:    "1992",
		Where:   calc.Text("brace design: sin θ = y/L, slopes of 20° to 60°"),
		Status:  calc.Confirmed,
	},
	{
		ID:     "thread",
		Author: "ASME",
		Title:  "Unified inch screw threads B1.1, Acme screw threads B1.5",
		Where:  calc.Text("pitch and threads per inch"),
		Status: calc.Memory,
	},
	{
		ID:      "aci117",
		Author:  "ACI Committee 117",
		Title:   "Specification for Tolerances for Concrete Construction, ACI 117",
		Edition: "10",
		Year:    "2010",
		Where:   calc.Text("section 4.1.1; the 1990 edition allowed 1 in."),
		Status:  calc.Secondary,
	},
	{ID: "chord", Where: calc.Text("Chord and rise of an arc; handbook relation for shallow arcs"),
		Status: calc.Memory},
}

var tables = []calc.Table{
	{
		ID: "foot", Title: calc.Text("Turns, by how far off and distance of the brace foot"),
		Note: calc.Text("Brace 6 ft (1.83 m) up, string at 8 ft (2.44 m), 5 threads per inch, one threaded end."),
		Out:  "turns", Set: noBlocks(), Down: tableOff,
		Across: calc.Axis{
			Path:   "foot-distance",
			US:     []string{"4 ft", "5 ft", "6 ft", "7 ft", "8 ft"},
			Metric: []string{"1.2 m", "1.5 m", "1.8 m", "2.1 m", "2.4 m"},
		},
	},
	{
		ID: "travel", Title: calc.Text("Turns, by how far off and travel of one turn"),
		Note: calc.Text("Brace 6 ft (1.83 m) up, its foot 5 ft (1.52 m) out, string at 8 ft (2.44 m)."),
		Out:  "turns", Set: noBlocks(calc.Entry{Path: "thread-as", Text: "travel"}), Down: tableOff,
		Across: calc.Axis{
			Path:   "travel",
			US:     []string{"0.1 in", "0.125 in", "0.2 in", "0.25 in", "0.4 in"},
			Metric: []string{"2.5 mm", "3 mm", "5 mm", "6 mm", "10 mm"},
		},
	},
}

// tableOff is the axis of deviations, entered as gaps without end blocks.
var tableOff = calc.Axis{Path: "readings.1.gap", US: []string{"1/8 in", "1/4 in", "3/8 in", "1/2 in", "3/4 in", "1 in"},
	Metric: []string{"3 mm", "6 mm", "10 mm", "12 mm", "20 mm", "25 mm"}}

// noBlocks returns the inputs of a string without blocks, and more.
func noBlocks(more ...calc.Entry) []calc.Entry {
	return append(
		[]calc.Entry{
			{Path: "block", Text: "0 in"},
			{Path: "first-end", Text: ""},
			{Path: "second-end", Text: ""},
			{Path: "tolerance", Text: "1/16 in"},
		},
		more...)
}

var formulas = []*calc.Formula{
	bracing.DeviationFormula, bracing.BraceLengthFormula, bracing.BraceAngleFormula, bracing.TravelByThreadsFormula,
	bracing.TravelByPitchFormula, bracing.AtBraceFormula, bracing.BraceChangeFormula, bracing.TurnsFormula,
	bracing.PerTurnFormula, bracing.PlumbLimitFormula, bracing.BowRadiusFormula,
}

// Displays of inputs and outputs.
var (
	bowSize = &quantity.Display{Dim: quantity.Length,
		US:     quantity.UnitDisplay{Unit: "ft", Step: 100},
		Metric: quantity.UnitDisplay{Unit: "m", Step: 50}}
	threads = &quantity.Display{Dim: quantity.Number, US: quantity.UnitDisplay{Step: 0.5}}
)

// Reasons of limits.
var (
	noGap      = calc.Text("A gap is never negative. If the wall touches the string, use thicker blocks.")
	fallen     = calc.Text("So wide a gap is another line or a fallen string.")
	wideBlock  = calc.Text("Blocks this thick tip over. Check the unit.")
	tightTol   = calc.Text("A string and a tape do not show less.")
	lowString  = calc.Text("Too near the base to show a lean.")
	highString = calc.Text("Work out each story by itself.")
	nearFoot   = calc.Text("A brace this steep cannot hold the wall.")
	farFoot    = calc.Text("No brace reaches this far. Check the unit.")
	footLevel  = calc.Text("Check where the foot stands, and the unit.")
	fewThreads = calc.Text("No adjuster has so coarse a thread.")
	manyThread = calc.Text("No adjuster has so fine a thread.")
	behind     = calc.Text("Measure from one end of the string.")
	long       = calc.Text("A string this long sags. Split the wall.")
)

func byThreads(c calc.Case) bool { return c.Choice("thread-as") == "threads" }

func byPitch(c calc.Case) bool { return c.Choice("thread-as") == "pitch" }

func byTravel(c calc.Case) bool { return c.Choice("thread-as") == "travel" }

func byWall(c calc.Case) bool { return c.Choice("thread-as") == "wall" }

func byThread(c calc.Case) bool { return byThreads(c) || byPitch(c) }

// Texts that several fields share.
var (
	aboveBase   = calc.Text("Above the base of the wall.")
	proveString = calc.Text("Slide the loose gauge block in. It proves the string.")
	labelBrace  = calc.Text("Brace")
)

var readingCols = []calc.Field{
	{ID: "name", Label: labelBrace, Kind: calc.FreeText, Optional: true, MaxLen: 24},
	{ID: "gap", Decides: 1, Label: calc.Text("Gap"), Display: &displays.Part, Range: "0 to 12 in", Why: noGap,
		WhyMost: fallen},
	{ID: "along", Label: calc.Text("Along the wall"), Display: &displays.Height, Optional: true,
		Range: "0 to 400 ft", Why: behind, WhyMost: long},
}

var inputs = []calc.Field{
	{
		ID:       "string-side",
		Decides:  2,
		Label:    calc.Text("The string is on the"),
		Kind:     calc.Choice,
		Options:  bracing.SideOptions,
		Optional: true,
		Help:     calc.Text("Go and look. The wrong side doubles the error."),
	},
	{
		ID:      "concrete",
		Label:   calc.Text("The concrete is"),
		Kind:    calc.Choice,
		Options: bracing.ConcreteOptions,
		Usual:   "plastic",
	},
	{ID: "block", Label: calc.Text("Block at both ends"), Display: &displays.Part, Usual: "0.75 in",
		Help:  calc.Text("What holds the string off the wall. Equal at both ends."),
		Range: "0 to 4 in", Why: noGap, WhyMost: wideBlock},
	{
		ID:       "first-end",
		Example:  true,
		Label:    calc.Text("Gap at the first block"),
		Display:  &displays.Part,
		Optional: true,
		Usual:    "3/4 in",
		Help:     proveString,
		Range:    "0 to 12 in",
		Why:      noGap,
		WhyMost:  fallen,
	},
	{
		ID:       "second-end",
		Example:  true,
		Label:    calc.Text("Gap at the second block"),
		Display:  &displays.Part,
		Optional: true,
		Usual:    "3/4 in",
		Help:     proveString,
		Range:    "0 to 12 in",
		Why:      noGap,
		WhyMost:  fallen,
	},
	{ID: "readings", Decides: 1, Label: calc.Text("Readings"), Kind: calc.Rows, Cols: readingCols, MinRows: 1,
		MaxRows: 30,
		Help:    calc.Text("String to wall at each brace, in order along the wall."),
		Usual: "1 | 3/4 in | 2 ft; 2 | 1-1/16 in | 8 ft; 3 | 1-1/4 in | 14 ft; 4 | 7/8 in | 20 ft; 5 | 3/8 in | 26 " +
			"ft; 6 | 11/16 in | 32 ft"},
	{ID: "tolerance", Label: calc.Text("Tolerance"), Display: &displays.Part, Rule: "straightness",
		Help:  calc.Text("Off by no more than this is left alone."),
		Range: "1/16 to 1/4 in", Why: tightTol, WhyMost: bracing.LooseTolerance},
	{ID: "string-height", Measure: "string-height", Label: calc.Text("Height of the string"),
		Display: &displays.Height, Usual: "8 ft",
		Help:  aboveBase,
		Range: "1 to 30 ft", Why: lowString, WhyMost: highString},
	{ID: "attach-height", Measure: "brace-height", Label: calc.Text("Height of the brace on it"),
		Display: &displays.Height, Usual: "6 ft",
		Help:  aboveBase,
		Range: "1 to 30 ft", Why: lowString, WhyMost: highString},
	{ID: "foot-distance", Measure: "brace-foot", Label: calc.Text("Brace foot from the wall"),
		Display: &displays.Height, Usual: "5 ft",
		Help:  calc.Text("Level, from the wall to the pin at the foot."),
		Range: "1 to 30 ft", Why: nearFoot, WhyMost: farFoot},
	{ID: "foot-below", Measure: "foot-below", Label: calc.Text("Foot below the wall base"), Display: &displays.Height,
		Usual: "0 ft",
		Help:  calc.Text("0 if level with it; minus if higher."),
		Range: "-3 to 10 ft", Why: footLevel},
	{ID: "thread-as", Label: calc.Text("Adjuster is known by"), Kind: calc.Choice, Usual: "threads",
		Help: calc.Text("Surest: what one turn moves the empty wall, read at the string."),
		Options: []calc.Option{
			{ID: "threads", Label: calc.Text("threads in one inch")},
			{ID: "pitch", Label: calc.Text("pitch of the thread")},
			{ID: "travel", Label: calc.Text("travel of one turn")},
			{ID: "wall", Label: calc.Text("what one turn moves the wall")},
		}},
	{ID: "threads", Label: calc.Text("Threads in one inch"), Display: threads,
		Example: true, Usual: "5", When: byThreads,
		Range: "1 to 24", Why: fewThreads, WhyMost: manyThread},
	{ID: "pitch", Label: calc.Text("Pitch"), Display: bracing.ThreadSize, Example: true, Usual: "5 mm", When: byPitch,
		Help:  calc.Text("From one crest to the next."),
		Range: "1 to 25 mm", Why: manyThread, WhyMost: fewThreads},
	{ID: "ends", Label: calc.Text("The adjuster threads at"), Kind: calc.Choice, Usual: "one",
		When: byThread,
		Options: []calc.Option{
			{ID: "one", Label: calc.Text("one end")},
			{ID: "both", Label: calc.Text("both ends, left and right")},
		}},
	{ID: "travel", Measure: "turn-travel", Label: calc.Text("Travel of one turn"), Display: bracing.ThreadSize,
		Example: true,
		Usual:   "0.2 in", When: byTravel,
		Help:  bracing.ScrewNotWall,
		Range: "1 to 50 mm", Why: manyThread, WhyMost: fewThreads},
	{ID: "wall-travel", Label: calc.Text("One turn moves the wall by"), Display: &displays.Part,
		Example: true,
		Usual:   "7/16 in", When: byWall,
		Help:  calc.Text("At the string: two turns on the empty wall, read, turn back, divide by two."),
		Range: "1/32 to 6 in", Why: manyThread, WhyMost: fewThreads},
}

var outputs = []calc.Field{
	{ID: "next", Label: bracing.LabelNext, Kind: calc.Choice, Lead: true, Options: []calc.Option{
		{ID: nextTurn, Advice: calc.Careful, Label: calc.Text("Quarter turns, then read all")},
		{ID: nextEighths, Advice: calc.Careful, Label: calc.Text("Eighths, then read all")},
		{ID: nextCoarse, Advice: calc.Stop, Label: bracing.LabelCoarse},
		{ID: nextGood, Advice: calc.Good, Label: calc.Text("Within tolerance: turn nothing")},
		{ID: nextProve, Advice: calc.Careful, Label: calc.Text("Turn nothing: prove the string")},
		{ID: nextStop, Advice: calc.Stop, Label: calc.Text("Hands off: leave the braces")},
		{ID: nextClear, Advice: calc.Stop, Label: bracing.LabelClear},
		{ID: nextLook, Advice: calc.Stop, Label: bracing.LabelLook}}},
	{ID: "to-turn", Label: calc.Text("Braces to turn"), Display: &displays.Count, Exact: true},
	{ID: "worst", Label: calc.Text("Worst, off the line by"), Display: &displays.Part, Lead: true},
	{ID: "turns", Label: calc.Text("Turns for the worst"), Display: bracing.Quarters, Lead: true},
	{ID: "worst-row", Label: calc.Text("Worst is in row"), Display: &displays.Count, Exact: true},
	{ID: "lines", Label: calc.Text("Brace by brace"), Kind: calc.Rows, Cols: outCols},
	{ID: "per-turn", Label: calc.Text("One turn moves the gap by"), Display: &displays.Part},
	{ID: "turn-travel", Label: calc.Text("Travel of one turn"), Display: bracing.ThreadSize},
	{ID: "slope", Label: calc.Text("Slope of the brace"), Display: &displays.WholeDegrees},
	{ID: "plumb-limit", Label: calc.Text("Plumb limit at the string"), Display: &displays.PartAtMost},
	{ID: "bow-radius", Label: calc.Text("Bow, as a radius of about"), Display: bowSize},
}

// IDs of what to do next.
const (
	nextTurn    = "turn"
	nextEighths = "eighths"
	nextCoarse  = "coarse"
	nextGood    = "good"
	nextProve   = "prove"
	nextStop    = "stop"
	nextClear   = "clear"
	nextLook    = "look"
)

// outCols are the results of one reading. move is the direction seen from the
// string; turn depends on the side of the string and is empty until it is entered.
// All three are empty where no brace is turned.
var outCols = []calc.Field{
	{ID: "name", Label: labelBrace, Kind: calc.FreeText},
	{ID: "off", Label: calc.Text("Off the line"), Display: &displays.Part},
	{ID: "within", Label: calc.Text("Within tolerance"), Kind: calc.Flag},
	{ID: "move", Label: calc.Text("Wall must go"), Kind: calc.Choice, Options: bracing.MoveOptions},
	{ID: "brace-move", Label: calc.Text("Seen from the brace"), Kind: calc.Choice, Options: []calc.Option{
		{ID: "toward", Label: calc.Text("toward the brace")},
		{ID: "away", Label: calc.Text("away from the brace")},
		{ID: "stay", Label: bracing.LabelStay}}},
	{ID: "turn", Label: calc.Text("Adjuster"), Kind: calc.Choice, Options: bracing.TurnOptions},
	{ID: "turns", Label: calc.Text("Turns"), Display: bracing.Quarters},
	{ID: "order", Label: calc.Text("Turn as number"), Display: &displays.Count, Exact: true},
}
