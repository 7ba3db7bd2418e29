package bracing

import (
	"coursebook/calculators/calc"
	"coursebook/calculators/displays"
)

var roundsIn = []calc.Field{
	{ID: "concrete", Label: calc.Text("line-rounds.concrete: The concrete is"), Kind: calc.Choice, Options: concreteOptions, Usual: "plastic"},
	{ID: "string-side", Label: calc.Text("line-rounds.string-side: The string is on the"), Kind: calc.Choice, Options: sideOptions, Optional: true,
		Help: calc.Text("line-rounds.string-side.help: Go and look. Until answered, no way to turn is told.")},
	{ID: "braces", Label: calc.Text("line-rounds.braces: Gaps at each brace"), Kind: calc.Rows, MinRows: 1, MaxRows: 40,
		Help:  calc.Text("line-rounds.braces.help: In order along the wall. Leave round 3 empty until it is read."),
		Usual: "1 | 3/4 in | 3/4 in; 2 | 1-1/4 in | 1 in; 3 | 1-1/2 in | 1-1/8 in; 4 | 7/8 in | 3/4 in", Cols: []calc.Field{
			{ID: "name", Label: calc.Text("line-rounds.braces.name: Brace"), Kind: calc.FreeText, Optional: true, MaxLen: 24},
			{ID: "gap-1", Label: calc.Text("line-rounds.braces.gap-1: Round 1"), Display: &displays.Part,
				Min: &calc.Limit{Unit: "in", Why: touching}, Max: &calc.Limit{At: 12, Unit: "in", Why: lostLine}},
			{ID: "gap-2", Label: calc.Text("line-rounds.braces.gap-2: Round 2"), Display: &displays.Part,
				Min: &calc.Limit{Unit: "in", Why: touching}, Max: &calc.Limit{At: 12, Unit: "in", Why: lostLine}},
			{ID: "gap-3", Label: calc.Text("line-rounds.braces.gap-3: Round 3"), Display: &displays.Part, Optional: true,
				Min: &calc.Limit{Unit: "in", Why: touching}, Max: &calc.Limit{At: 12, Unit: "in", Why: lostLine}},
		}},
	{ID: "block", Label: calc.Text("line-rounds.block: Block at both ends"), Display: &displays.Part, Usual: "3/4 in",
		Min: &calc.Limit{Unit: "in", Why: touching}, Max: &calc.Limit{At: 4, Unit: "in", Why: displays.CheckUnit}},
	{ID: "tolerance", Label: calc.Text("line-rounds.tolerance: Tolerance"), Display: &displays.Part, Usual: "1/4 in",
		Min: &calc.Limit{At: 1.0 / 16, Unit: "in", Why: tightOwn}, Max: &calc.Limit{At: 1, Unit: "in", Why: displays.CheckUnit}},
	{ID: "travel", Label: calc.Text("line-rounds.travel: Travel of one turn"), Display: threadSize, Usual: "0.2 in",
		Help: calc.Text("line-rounds.travel.help: Measure ten turns and divide by ten."),
		Min:  &calc.Limit{At: 1, Unit: "mm", Why: displays.CheckUnit}, Max: &calc.Limit{At: 50, Unit: "mm", Why: displays.CheckUnit}},
	{ID: "string-height", Label: calc.Text("line-rounds.string-height: Height of the string"), Display: &displays.Height, Usual: "8 ft",
		Min: &calc.Limit{At: 2, Unit: "ft", Why: displays.CheckUnit}, Max: &calc.Limit{At: 30, Unit: "ft", Why: displays.OneStorey}},
	{ID: "attach-height", Label: calc.Text("line-rounds.attach-height: Brace on the wall, height"), Display: &displays.Height, Usual: "6 ft",
		Min: &calc.Limit{At: 1, Unit: "ft", Why: displays.CheckUnit}, Max: &calc.Limit{At: 30, Unit: "ft", Why: displays.OneStorey}},
	{ID: "foot-distance", Label: calc.Text("line-rounds.foot-distance: Foot of brace from the wall"), Display: &displays.Height, Usual: "5 ft",
		Min: &calc.Limit{At: 1, Unit: "ft", Why: displays.CheckUnit}, Max: &calc.Limit{At: 30, Unit: "ft", Why: displays.CheckUnit}},
	{ID: "foot-below", Label: calc.Text("line-rounds.foot-below: Foot below the wall base"), Display: &displays.Height, Usual: "0 ft",
		Min: &calc.Limit{Unit: "ft", Why: displays.NotMinus}, Max: &calc.Limit{At: 6, Unit: "ft", Why: displays.CheckUnit}},
}

// The reasons of the limits.
const (
	touching = calc.Text("line-rounds.why.touching: A gap is never negative. If the wall touches, use thicker blocks.")
	lostLine = calc.Text("line-rounds.why.lost: So wide a gap is another line or a fallen string.")
)

// wayOptions say how a brace is coming along.
var wayOptions = []calc.Option{
	{ID: "good", Label: calc.Text("line-rounds.way.good: within tolerance")},
	{ID: "closer", Label: calc.Text("line-rounds.way.closer: coming in")},
	{ID: "still", Label: calc.Text("line-rounds.way.still: did not move")},
	{ID: "past", Label: calc.Text("line-rounds.way.past: went too far")},
	{ID: "dragged", Label: calc.Text("line-rounds.way.dragged: dragged out by others")},
	{ID: "wrong", Label: calc.Text("line-rounds.way.wrong: WRONG WAY")},
}

var roundsOut = []calc.Field{
	{ID: "next", Label: calc.Text("line-rounds.out.next: What next"), Kind: calc.Choice, Lead: true, Options: []calc.Option{
		{ID: "done", Label: calc.Text("line-rounds.next.done: in line, no more rounds")},
		{ID: "again", Label: calc.Text("line-rounds.next.again: another round: turn, read all")},
		{ID: "check", Label: calc.Text("line-rounds.next.check: STOP: check side and thread")},
		{ID: "stop", Label: calc.Text("line-rounds.next.stop: STOP: leave the braces")}}},
	{ID: "worst", Label: calc.Text("line-rounds.out.worst: Worst in the last round"), Display: &displays.Part, Lead: true},
	{ID: "to-turn", Label: calc.Text("line-rounds.out.to-turn: Braces to turn"), Display: &displays.Count, Exact: true, Lead: true},
	{ID: "done", Label: calc.Text("line-rounds.out.done: All within tolerance"), Kind: calc.Choice, Options: []calc.Option{
		{ID: "round-1", Label: calc.Text("line-rounds.done.one: from round 1")},
		{ID: "round-2", Label: calc.Text("line-rounds.done.two: from round 2")},
		{ID: "round-3", Label: calc.Text("line-rounds.done.three: from round 3")},
		{ID: "not-yet", Label: calc.Text("line-rounds.done.not-yet: not yet")}}},
	{ID: "lines", Label: calc.Text("line-rounds.out.lines: Brace by brace"), Kind: calc.Rows, Cols: roundCols},
	{ID: "turns", Label: calc.Text("line-rounds.out.turns: Turns for the worst"), Display: quarters},
	{ID: "worst-row", Label: calc.Text("line-rounds.out.worst-row: Worst is in row"), Display: &displays.Count, Exact: true},
	{ID: "first-worst", Label: calc.Text("line-rounds.out.first-worst: Worst in round 1"), Display: &displays.Part},
	{ID: "left", Label: calc.Text("line-rounds.out.left: Share of that left"), Display: &displays.Percent},
	{ID: "dragged", Label: calc.Text("line-rounds.out.dragged: Good brace dragged by"), Display: &displays.Part},
}

var roundCols = []calc.Field{
	{ID: "name", Label: calc.Text("line-rounds.lines.name: Brace"), Kind: calc.FreeText},
	{ID: "off-1", Label: calc.Text("line-rounds.lines.off-1: Off, round 1"), Display: &displays.Part},
	{ID: "off-2", Label: calc.Text("line-rounds.lines.off-2: Off, round 2"), Display: &displays.Part},
	{ID: "off-3", Label: calc.Text("line-rounds.lines.off-3: Off, round 3"), Display: &displays.Part},
	{ID: "moved", Label: calc.Text("line-rounds.lines.moved: Moved last"), Display: &displays.Part},
	{ID: "way", Label: calc.Text("line-rounds.lines.way: It is"), Kind: calc.Choice, Options: wayOptions},
	{ID: "move", Label: calc.Text("line-rounds.lines.move: Wall must go"), Kind: calc.Choice, Options: moveOptions},
	{ID: "turn", Label: calc.Text("line-rounds.lines.turn: Adjuster"), Kind: calc.Choice, Options: turnOptions},
	{ID: "turns", Label: calc.Text("line-rounds.lines.turns: Turns"), Display: quarters},
}
