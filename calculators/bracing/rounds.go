package bracing

import "coursebook/calculators/calc"

// LineRounds follows the string-line correction of a whole wall over several
// rounds of reading and turning. One brace drags its neighbours, so a wall is
// brought in by rounds, and a brace turned the wrong way shows in the second.
//
// As in StringLine, lengthen or shorten is told only once the side of the
// string is answered.
var LineRounds = &calc.Calculator{
	ID:       "line-rounds",
	Title:    calc.Text("String line, round by round"),
	Purpose:  calc.Text("Whether the wall comes in, what to turn next, and whether another round is needed."),
	In:       roundsIn,
	Out:      roundsOut,
	Formulas: []*calc.Formula{deviation, movement, leftOver, braceLength, atBrace, braceChange, turnsFor},
	Sources:  roundsSources,
	Cautions: []calc.Caution{
		{Level: calc.LevelWarning, Text: calc.Text("Hold point: never turn a brace once the concrete has stiffened.")},
	},
	Tables:  roundsTables,
	Compute: computeRounds,
	Draw:    drawRounds,
}

var roundsSources = []calc.Source{
	{ID: "practice", Title: "String on equal blocks, all braces read again after each round; at most two turns in one go; done when every brace is within tolerance in the same round",
		Status: calc.CommonPractice},
	{ID: "derived", Title: "Movement of a wall that turns about its base, held by a sloping brace", Where: "derived from the triangle of wall, ground and brace",
		Status: calc.Memory},
	{ID: "army", Author: "US Army", Title: "EN5466, Concrete and masonry", Edition: "A", Year: "1992", Where: "brace design: triangle of wall, ground and brace",
		Status: calc.Confirmed, Link: "https://armyengineer.tpub.com/EN5466A/EN5466A0082.htm"},
}

var roundsTables = []calc.Table{
	{
		ID: "turns", Title: calc.Text("Turns still needed, by gap read and travel of one turn"),
		Note: calc.Text("Block 3/4 in. (19 mm), brace 6 ft (1.83 m) up, foot 5 ft (1.52 m) out, string at 8 ft (2.44 m)."),
		Out:  "turns", Set: []calc.Entry{{Path: "tolerance", Text: "1/16 in"}, {Path: "braces.1.gap-1", Text: "2 in"}},
		Down:   calc.Axis{Path: "braces.1.gap-2", US: []string{"7/8 in", "1 in", "1 1/8 in", "1 1/4 in", "1 1/2 in"}, Metric: []string{"23 mm", "26 mm", "30 mm", "32 mm", "40 mm"}},
		Across: calc.Axis{Path: "travel", US: []string{"0.1 in", "0.125 in", "0.2 in", "0.25 in", "0.4 in"}, Metric: []string{"2.5 mm", "3 mm", "5 mm", "6 mm", "10 mm"}},
	},
}

var (
	movement = &calc.Formula{
		ID: "movement", Title: calc.Text("Moved since the last round"), Expr: "g_2 - g_1",
		Result: calc.Var{Symbol: "m", Meaning: calc.Text("movement; minus is toward the string"), Unit: "mm", US: "in"},
		Vars: []calc.Var{
			{Symbol: "g_1", Meaning: calc.Text("gap in the round before"), Unit: "mm", US: "in"},
			{Symbol: "g_2", Meaning: calc.Text("gap in this round"), Unit: "mm", US: "in"}},
		Fn: calc.Func2(Movement), Go: "bracing.Movement", Source: "practice",
	}
	leftOver = &calc.Formula{
		ID: "left", Title: calc.Text("Share of the error left"), Expr: "abs(e_2)/abs(e_1)",
		Result: calc.Var{Symbol: "q", Meaning: calc.Text("share that is left")},
		Vars: []calc.Var{
			{Symbol: "e_1", Meaning: calc.Text("worst in the first round"), Unit: "mm", US: "in"},
			{Symbol: "e_2", Meaning: calc.Text("worst in the last round"), Unit: "mm", US: "in"}},
		Fn: calc.Func2(LeftOver), Go: "bracing.LeftOver", Source: "practice",
	}
)
