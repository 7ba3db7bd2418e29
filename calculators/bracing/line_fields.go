package bracing

import (
	"coursebook/calculators/calc"
	"coursebook/calculators/displays"
	"coursebook/calculators/quantity"
)

// The ways gaps, heights and turns are written.
var (
	threadSize = &quantity.Display{Dim: quantity.Length,
		US:     quantity.UnitDisplay{Unit: "in", Step: 0.001},
		Metric: quantity.UnitDisplay{Unit: "mm", Step: 0.1}}
	bowSize = &quantity.Display{Dim: quantity.Length,
		US:     quantity.UnitDisplay{Unit: "ft", Step: 100},
		Metric: quantity.UnitDisplay{Unit: "m", Step: 50}}
	quarters = &quantity.Display{Dim: quantity.Number, US: quantity.UnitDisplay{Step: 0.25}}
	threads  = &quantity.Display{Dim: quantity.Number, US: quantity.UnitDisplay{Step: 0.5}}
)

// The reasons of the limits.
var (
	noGap      = calc.Text("string-line.why.no-gap: A gap is never negative. If the wall touches the string, use thicker blocks.")
	fallen     = calc.Text("string-line.why.fallen: So wide a gap is another line or a fallen string.")
	wideBlock  = calc.Text("string-line.why.wide-block: Blocks this thick tip over. Check the unit.")
	tightTol   = calc.Text("string-line.why.tight: A string and a tape do not show less.")
	looseTol   = calc.Text("string-line.why.loose: No finish hides more than this.")
	lowString  = calc.Text("string-line.why.low: Too near the base to show a lean.")
	highString = calc.Text("string-line.why.high: Work out each storey by itself.")
	nearFoot   = calc.Text("string-line.why.near: A brace this steep cannot hold the wall.")
	farFoot    = calc.Text("string-line.why.far: No brace reaches this far. Check the unit.")
	footLevel  = calc.Text("string-line.why.level: Check where the foot stands, and the unit.")
	fewThreads = calc.Text("string-line.why.few: No adjuster has so coarse a thread.")
	manyThread = calc.Text("string-line.why.many: No adjuster has so fine a thread.")
	behind     = calc.Text("string-line.why.behind: Measure from one end of the string.")
	longLine   = calc.Text("string-line.why.long: A string this long sags. Split the wall.")
)

func byThreads(c calc.Case) bool { return c.Choice("thread-as") == "threads" }
func byPitch(c calc.Case) bool   { return c.Choice("thread-as") == "pitch" }
func byTravel(c calc.Case) bool  { return c.Choice("thread-as") == "travel" }
func byThread(c calc.Case) bool  { return !byTravel(c) }

// Texts that several fields share.
var (
	aboveBase   = calc.Text("string-line.heights.help: Above the base of the wall.")
	proveString = calc.Text("string-line.ends.help: Slide the loose gauge block in. It proves the string.")
	sayBrace    = calc.Text("string-line.readings.name: Brace")
	sayStay     = calc.Text("string-line.move.stay: nowhere")
)

// sideOptions says where the string runs, seen from the braces.
var sideOptions = []calc.Option{
	{ID: "brace", Label: calc.Text("string-line.side.brace: same side as the braces")},
	{ID: "other", Label: calc.Text("string-line.side.other: other side of the wall")},
}

var concreteOptions = []calc.Option{
	{ID: "none", Label: calc.Text("string-line.concrete.none: not placed yet")},
	{ID: "plastic", Label: calc.Text("string-line.concrete.plastic: placed, still plastic")},
	{ID: "stiff", Label: calc.Text("string-line.concrete.stiff: has stiffened")},
}

var readingCols = []calc.Field{
	{ID: "name", Label: sayBrace, Kind: calc.FreeText, Optional: true, MaxLen: 24},
	{ID: "gap", Label: calc.Text("string-line.readings.gap: Gap"), Display: &displays.Part, Min: &calc.Limit{At: 0, Unit: "in", Why: noGap}, Max: &calc.Limit{At: 12, Unit: "in", Why: fallen}},
	{ID: "along", Label: calc.Text("string-line.readings.along: Along the wall"), Display: &displays.Height, Optional: true,
		Min: &calc.Limit{At: 0, Unit: "ft", Why: behind}, Max: &calc.Limit{At: 400, Unit: "ft", Why: longLine}},
}

var lineIn = []calc.Field{
	{ID: "string-side", Label: calc.Text("string-line.string-side: The string is on the"), Kind: calc.Choice, Options: sideOptions, Optional: true,
		Help: calc.Text("string-line.string-side.help: Go and look. The wrong side doubles the error.")},
	{ID: "concrete", Label: calc.Text("string-line.concrete: The concrete is"), Kind: calc.Choice, Options: concreteOptions, Usual: "plastic"},
	{ID: "block", Label: calc.Text("string-line.block: Block at both ends"), Display: &displays.Part, Usual: "0.75 in",
		Help: calc.Text("string-line.block.help: What holds the string off the wall. Equal at both ends."),
		Min:  &calc.Limit{At: 0, Unit: "in", Why: noGap}, Max: &calc.Limit{At: 4, Unit: "in", Why: wideBlock}},
	{ID: "first-end", Label: calc.Text("string-line.first-end: Gap at the first block"), Display: &displays.Part, Optional: true, Usual: "3/4 in", Help: proveString,
		Min: &calc.Limit{Unit: "in", Why: noGap}, Max: &calc.Limit{At: 12, Unit: "in", Why: fallen}},
	{ID: "second-end", Label: calc.Text("string-line.second-end: Gap at the second block"), Display: &displays.Part, Optional: true, Usual: "3/4 in", Help: proveString,
		Min: &calc.Limit{Unit: "in", Why: noGap}, Max: &calc.Limit{At: 12, Unit: "in", Why: fallen}},
	{ID: "readings", Label: calc.Text("string-line.readings: Readings"), Kind: calc.Rows, Cols: readingCols, MinRows: 1, MaxRows: 30,
		Help:  calc.Text("string-line.readings.help: String to wall at each brace, in order along the wall."),
		Usual: "1 | 3/4 in | 2 ft; 2 | 1-1/16 in | 8 ft; 3 | 1-1/4 in | 14 ft; 4 | 7/8 in | 20 ft; 5 | 3/8 in | 26 ft; 6 | 11/16 in | 32 ft"},
	{ID: "tolerance", Label: calc.Text("string-line.tolerance: Tolerance"), Display: &displays.Part, Usual: "0.25 in",
		Help: calc.Text("string-line.tolerance.help: Off by no more than this is left alone. 1/4 in. (6 mm) is usual."),
		Min:  &calc.Limit{At: 1.0 / 16, Unit: "in", Why: tightTol}, Max: &calc.Limit{At: 1, Unit: "in", Why: looseTol}},
	{ID: "string-height", Label: calc.Text("string-line.string-height: Height of the string"), Display: &displays.Height, Usual: "8 ft",
		Help: aboveBase,
		Min:  &calc.Limit{At: 1, Unit: "ft", Why: lowString}, Max: &calc.Limit{At: 30, Unit: "ft", Why: highString}},
	{ID: "attach-height", Label: calc.Text("string-line.attach-height: Height of the brace on it"), Display: &displays.Height, Usual: "6 ft",
		Help: aboveBase,
		Min:  &calc.Limit{At: 1, Unit: "ft", Why: lowString}, Max: &calc.Limit{At: 30, Unit: "ft", Why: highString}},
	{ID: "foot-distance", Label: calc.Text("string-line.foot-distance: Brace foot from the wall"), Display: &displays.Height, Usual: "5 ft",
		Help: calc.Text("string-line.foot-distance.help: Level, from the wall to the pin at the foot."),
		Min:  &calc.Limit{At: 1, Unit: "ft", Why: nearFoot}, Max: &calc.Limit{At: 30, Unit: "ft", Why: farFoot}},
	{ID: "foot-below", Label: calc.Text("string-line.foot-below: Foot below the wall base"), Display: &displays.Height, Usual: "0 ft",
		Help: calc.Text("string-line.foot-below.help: 0 if level with it; minus if higher."),
		Min:  &calc.Limit{At: -3, Unit: "ft", Why: footLevel}, Max: &calc.Limit{At: 10, Unit: "ft", Why: footLevel}},
	{ID: "thread-as", Label: calc.Text("string-line.thread-as: Adjuster is known by"), Kind: calc.Choice, Usual: "threads",
		Help: calc.Text("string-line.thread-as.help: Surest: measure ten turns and divide by ten."),
		Options: []calc.Option{
			{ID: "threads", Label: calc.Text("string-line.thread-as.threads: threads in one inch")},
			{ID: "pitch", Label: calc.Text("string-line.thread-as.pitch: pitch of the thread")},
			{ID: "travel", Label: calc.Text("string-line.thread-as.travel: travel of one turn")},
		}},
	{ID: "threads", Label: calc.Text("string-line.threads: Threads in one inch"), Display: threads, Usual: "5", When: byThreads,
		Min: &calc.Limit{At: 1, Why: fewThreads}, Max: &calc.Limit{At: 24, Why: manyThread}},
	{ID: "pitch", Label: calc.Text("string-line.pitch: Pitch"), Display: threadSize, Usual: "5 mm", When: byPitch,
		Help: calc.Text("string-line.pitch.help: From one crest to the next."),
		Min:  &calc.Limit{At: 1, Unit: "mm", Why: manyThread}, Max: &calc.Limit{At: 25, Unit: "mm", Why: fewThreads}},
	{ID: "ends", Label: calc.Text("string-line.ends: The adjuster threads at"), Kind: calc.Choice, Usual: "one",
		When: byThread,
		Options: []calc.Option{
			{ID: "one", Label: calc.Text("string-line.ends.one: one end")},
			{ID: "both", Label: calc.Text("string-line.ends.both: both ends, left and right")},
		}},
	{ID: "travel", Label: calc.Text("string-line.travel: Travel of one turn"), Display: threadSize, Usual: "0.2 in", When: byTravel,
		Min: &calc.Limit{At: 1, Unit: "mm", Why: manyThread}, Max: &calc.Limit{At: 50, Unit: "mm", Why: fewThreads}},
}

var lineOut = []calc.Field{
	{ID: "to-turn", Label: calc.Text("string-line.out.to-turn: Braces to turn"), Display: &displays.Count, Exact: true, Lead: true},
	{ID: "worst", Label: calc.Text("string-line.out.worst: Worst, off the line by"), Display: &displays.Part, Lead: true},
	{ID: "turns", Label: calc.Text("string-line.out.turns: Turns for the worst"), Display: quarters, Lead: true},
	{ID: "worst-row", Label: calc.Text("string-line.out.worst-row: Worst is in row"), Display: &displays.Count, Exact: true},
	{ID: "lines", Label: calc.Text("string-line.out.lines: Brace by brace"), Kind: calc.Rows, Cols: outCols},
	{ID: "per-turn", Label: calc.Text("string-line.out.per-turn: One turn moves the gap by"), Display: &displays.Part},
	{ID: "turn-travel", Label: calc.Text("string-line.out.turn-travel: Travel of one turn"), Display: threadSize},
	{ID: "slope", Label: calc.Text("string-line.out.slope: Slope of the brace"), Display: &displays.WholeDegrees},
	{ID: "plumb-limit", Label: calc.Text("string-line.out.plumb-limit: Plumb limit at the string"), Display: &displays.PartAtMost},
	{ID: "bow-radius", Label: calc.Text("string-line.out.bow-radius: Bow, as a radius of about"), Display: bowSize},
}

// moveOptions tell where the wall must go, seen from the string.
var moveOptions = []calc.Option{
	{ID: "toward", Label: calc.Text("string-line.move.toward: toward the string")},
	{ID: "away", Label: calc.Text("string-line.move.away: away from the string")},
	{ID: "stay", Label: sayStay},
}

var turnOptions = []calc.Option{
	{ID: "lengthen", Label: calc.Text("string-line.turn.lengthen: lengthen")},
	{ID: "shorten", Label: calc.Text("string-line.turn.shorten: shorten")},
	{ID: "leave", Label: calc.Text("string-line.turn.leave: leave")},
}

// outCols is one reading answered. Move is told by the string, which is known;
// turn is told by the brace and stays empty until the side is answered.
var outCols = []calc.Field{
	{ID: "name", Label: sayBrace, Kind: calc.FreeText},
	{ID: "off", Label: calc.Text("string-line.lines.off: Off the line"), Display: &displays.Part},
	{ID: "within", Label: calc.Text("string-line.lines.within: Within tolerance"), Kind: calc.Flag},
	{ID: "move", Label: calc.Text("string-line.lines.move: Wall must go"), Kind: calc.Choice, Options: moveOptions},
	{ID: "brace-move", Label: calc.Text("string-line.lines.brace-move: Seen from the brace"), Kind: calc.Choice, Options: []calc.Option{
		{ID: "toward", Label: calc.Text("string-line.brace-move.toward: toward the brace")},
		{ID: "away", Label: calc.Text("string-line.brace-move.away: away from the brace")},
		{ID: "stay", Label: sayStay}}},
	{ID: "turn", Label: calc.Text("string-line.lines.turn: Adjuster"), Kind: calc.Choice, Options: turnOptions},
	{ID: "turns", Label: calc.Text("string-line.lines.turns: Turns"), Display: quarters},
	{ID: "order", Label: calc.Text("string-line.lines.order: Turn as number"), Display: &displays.Count, Exact: true},
}
