package bracing

import (
	"coursebook/calculators/calc"
	"coursebook/calculators/quantity"
)

// The ways gaps, heights and turns are written.
var (
	gapSize = &quantity.Show{Dim: quantity.Length,
		US:     quantity.Scale{Unit: "in", Form: quantity.Inches, Step: 1.0 / 16},
		Metric: quantity.Scale{Unit: "mm", Step: 1}}
	// A limit is rounded down, so that nobody works to more than it allows.
	limitSize = &quantity.Show{Dim: quantity.Length,
		US:     quantity.Scale{Unit: "in", Form: quantity.Inches, Step: 1.0 / 16, Way: quantity.Down},
		Metric: quantity.Scale{Unit: "mm", Step: 1, Way: quantity.Down}}
	bigSize = &quantity.Show{Dim: quantity.Length,
		US:     quantity.Scale{Unit: "ft", Form: quantity.FeetInches, Step: 1},
		Metric: quantity.Scale{Unit: "m", Step: 0.01}}
	threadSize = &quantity.Show{Dim: quantity.Length,
		US:     quantity.Scale{Unit: "in", Step: 0.001},
		Metric: quantity.Scale{Unit: "mm", Step: 0.1}}
	bowSize = &quantity.Show{Dim: quantity.Length,
		US:     quantity.Scale{Unit: "ft", Step: 100},
		Metric: quantity.Scale{Unit: "m", Step: 50}}
	quarters = &quantity.Show{Dim: quantity.Number, US: quantity.Scale{Step: 0.25}}
	whole    = &quantity.Show{Dim: quantity.Number, US: quantity.Scale{Step: 1}}
	threads  = &quantity.Show{Dim: quantity.Number, US: quantity.Scale{Step: 0.5}}
	slope    = &quantity.Show{Dim: quantity.Angle, US: quantity.Scale{Unit: "°", Step: 1}}
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

// Texts that several fields share.
var (
	aboveBase = calc.Text("string-line.heights.help: Above the base of the wall.")
	sayBrace  = calc.Text("string-line.readings.name: Brace")
	sayStay   = calc.Text("string-line.move.stay: nowhere")
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
	{ID: "name", Label: sayBrace, Kind: calc.Words_, Optional: true, MaxLen: 24},
	{ID: "gap", Label: calc.Text("string-line.readings.gap: Gap"), Show: gapSize, Min: calc.AtLeast(0, "in", noGap), Max: calc.AtMost(12, "in", fallen)},
	{ID: "along", Label: calc.Text("string-line.readings.along: Along the wall"), Show: bigSize, Optional: true,
		Min: calc.AtLeast(0, "ft", behind), Max: calc.AtMost(400, "ft", longLine)},
}

func reading(name string, gap, along float64) calc.Case {
	return calc.Row(readingCols, calc.Txt(name), calc.In(gap, "in"), calc.In(along, "ft"))
}

func lineIn() []calc.Field { return append(stringFields(), braceFields()...) }

func stringFields() []calc.Field {
	return []calc.Field{
		{ID: "string-side", Label: calc.Text("string-line.string-side: The string is on the"), Kind: calc.Choice, Options: sideOptions, Optional: true,
			Help: calc.Text("string-line.string-side.help: Go and look. The wrong side doubles the error.")},
		{ID: "concrete", Label: calc.Text("string-line.concrete: The concrete is"), Kind: calc.Choice, Options: concreteOptions, Default: calc.Pick("plastic")},
		{ID: "block", Label: calc.Text("string-line.block: Block at both ends"), Show: gapSize, Default: calc.In(0.75, "in"),
			Help: calc.Text("string-line.block.help: What holds the string off the wall. Equal at both ends."),
			Min:  calc.AtLeast(0, "in", noGap), Max: calc.AtMost(4, "in", wideBlock)},
		endGap("first-end", calc.Text("string-line.first-end: Gap at the first block")),
		endGap("second-end", calc.Text("string-line.second-end: Gap at the second block")),
		{ID: "readings", Label: calc.Text("string-line.readings: Readings"), Kind: calc.Rows, Cols: readingCols, MinRows: 1, MaxRows: 30,
			Help: calc.Text("string-line.readings.help: String to wall at each brace, in order along the wall."),
			Default: calc.List(reading("1", 3.0/4, 2), reading("2", 17.0/16, 8), reading("3", 5.0/4, 14),
				reading("4", 7.0/8, 20), reading("5", 3.0/8, 26), reading("6", 11.0/16, 32))},
		{ID: "tolerance", Label: calc.Text("string-line.tolerance: Tolerance"), Show: gapSize, Default: calc.In(0.25, "in"),
			Help: calc.Text("string-line.tolerance.help: Off by no more than this is left alone. 1/4 in. (6 mm) is usual."),
			Min:  calc.AtLeast(1.0/16, "in", tightTol), Max: calc.AtMost(1, "in", looseTol)},
	}
}

func endGap(id string, label calc.Text) calc.Field {
	return calc.Field{ID: id, Label: label, Show: gapSize, Optional: true, Default: calc.In(0.75, "in"),
		Help: calc.Text("string-line.ends.help: Slide the loose gauge block in. It proves the string."),
		Min:  calc.AtLeast(0, "in", noGap), Max: calc.AtMost(12, "in", fallen)}
}

func braceFields() []calc.Field {
	as := func(choice string) func(calc.Case) bool {
		return func(c calc.Case) bool { return c.Choice("thread-as") == choice }
	}
	return []calc.Field{
		{ID: "string-height", Label: calc.Text("string-line.string-height: Height of the string"), Show: bigSize, Default: calc.In(8, "ft"),
			Help: aboveBase,
			Min:  calc.AtLeast(1, "ft", lowString), Max: calc.AtMost(30, "ft", highString)},
		{ID: "attach-height", Label: calc.Text("string-line.attach-height: Height of the brace on it"), Show: bigSize, Default: calc.In(6, "ft"),
			Help: aboveBase,
			Min:  calc.AtLeast(1, "ft", lowString), Max: calc.AtMost(30, "ft", highString)},
		{ID: "foot-distance", Label: calc.Text("string-line.foot-distance: Brace foot from the wall"), Show: bigSize, Default: calc.In(5, "ft"),
			Help: calc.Text("string-line.foot-distance.help: Level, from the wall to the pin at the foot."),
			Min:  calc.AtLeast(1, "ft", nearFoot), Max: calc.AtMost(30, "ft", farFoot)},
		{ID: "foot-below", Label: calc.Text("string-line.foot-below: Foot below the wall base"), Show: bigSize, Default: calc.In(0, "ft"),
			Help: calc.Text("string-line.foot-below.help: 0 if level with it; minus if higher."),
			Min:  calc.AtLeast(-3, "ft", footLevel), Max: calc.AtMost(10, "ft", footLevel)},
		{ID: "thread-as", Label: calc.Text("string-line.thread-as: Adjuster is known by"), Kind: calc.Choice, Default: calc.Pick("threads"),
			Help: calc.Text("string-line.thread-as.help: Surest: measure ten turns and divide by ten."),
			Options: []calc.Option{
				{ID: "threads", Label: calc.Text("string-line.thread-as.threads: threads in one inch")},
				{ID: "pitch", Label: calc.Text("string-line.thread-as.pitch: pitch of the thread")},
				{ID: "travel", Label: calc.Text("string-line.thread-as.travel: travel of one turn")},
			}},
		{ID: "threads", Label: calc.Text("string-line.threads: Threads in one inch"), Show: threads, Default: calc.Num(5), When: as("threads"),
			Min: &calc.Limit{SI: 1, Why: fewThreads}, Max: &calc.Limit{SI: 24, Why: manyThread}},
		{ID: "pitch", Label: calc.Text("string-line.pitch: Pitch"), Show: threadSize, Default: calc.In(5, "mm"), When: as("pitch"),
			Help: calc.Text("string-line.pitch.help: From one crest to the next."),
			Min:  calc.AtLeast(1, "mm", manyThread), Max: calc.AtMost(25, "mm", fewThreads)},
		{ID: "ends", Label: calc.Text("string-line.ends: The adjuster threads at"), Kind: calc.Choice, Default: calc.Pick("one"),
			When: func(c calc.Case) bool { return c.Choice("thread-as") != "travel" },
			Options: []calc.Option{
				{ID: "one", Label: calc.Text("string-line.ends.one: one end")},
				{ID: "both", Label: calc.Text("string-line.ends.both: both ends, left and right")},
			}},
		{ID: "travel", Label: calc.Text("string-line.travel: Travel of one turn"), Show: threadSize, Default: calc.In(0.2, "in"), When: as("travel"),
			Min: calc.AtLeast(1, "mm", manyThread), Max: calc.AtMost(50, "mm", fewThreads)},
	}
}

func lineOut() []calc.Field {
	return []calc.Field{
		{ID: "to-turn", Label: calc.Text("string-line.out.to-turn: Braces to turn"), Show: whole, Exact: true, Lead: true},
		{ID: "worst", Label: calc.Text("string-line.out.worst: Worst, off the line by"), Show: gapSize, Lead: true},
		{ID: "turns", Label: calc.Text("string-line.out.turns: Turns for the worst"), Show: quarters, Lead: true},
		{ID: "worst-row", Label: calc.Text("string-line.out.worst-row: Worst is in row"), Show: whole, Exact: true},
		{ID: "lines", Label: calc.Text("string-line.out.lines: Brace by brace"), Kind: calc.Rows, Cols: outCols},
		{ID: "per-turn", Label: calc.Text("string-line.out.per-turn: One turn moves the gap by"), Show: gapSize},
		{ID: "turn-travel", Label: calc.Text("string-line.out.turn-travel: Travel of one turn"), Show: threadSize},
		{ID: "slope", Label: calc.Text("string-line.out.slope: Slope of the brace"), Show: slope},
		{ID: "plumb-limit", Label: calc.Text("string-line.out.plumb-limit: Plumb limit at the string"), Show: limitSize},
		{ID: "bow-radius", Label: calc.Text("string-line.out.bow-radius: Bow, as a radius of about"), Show: bowSize},
	}
}

// outCols is one reading answered. Move is told by the string, which is known;
// turn is told by the brace and stays empty until the side is answered.
var outCols = []calc.Field{
	{ID: "name", Label: sayBrace, Kind: calc.Words_},
	{ID: "off", Label: calc.Text("string-line.lines.off: Off the line"), Show: gapSize},
	{ID: "within", Label: calc.Text("string-line.lines.within: Within tolerance"), Kind: calc.Flag},
	{ID: "move", Label: calc.Text("string-line.lines.move: Wall must go"), Kind: calc.Choice, Options: []calc.Option{
		{ID: "toward", Label: calc.Text("string-line.move.toward: toward the string")},
		{ID: "away", Label: calc.Text("string-line.move.away: away from the string")},
		{ID: "stay", Label: sayStay}}},
	{ID: "brace-move", Label: calc.Text("string-line.lines.brace-move: Seen from the brace"), Kind: calc.Choice, Options: []calc.Option{
		{ID: "toward", Label: calc.Text("string-line.brace-move.toward: toward the brace")},
		{ID: "away", Label: calc.Text("string-line.brace-move.away: away from the brace")},
		{ID: "stay", Label: sayStay}}},
	{ID: "turn", Label: calc.Text("string-line.lines.turn: Adjuster"), Kind: calc.Choice, Options: []calc.Option{
		{ID: "lengthen", Label: calc.Text("string-line.turn.lengthen: lengthen")},
		{ID: "shorten", Label: calc.Text("string-line.turn.shorten: shorten")},
		{ID: "leave", Label: calc.Text("string-line.turn.leave: leave")}}},
	{ID: "turns", Label: calc.Text("string-line.lines.turns: Turns"), Show: quarters},
	{ID: "order", Label: calc.Text("string-line.lines.order: Turn as number"), Show: whole, Exact: true},
}
