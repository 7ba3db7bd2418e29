package bracing

import "coursebook/calculators/calc"

// StringLine turns gaps read between a string and the wall into turns of the
// braces' adjusters.
//
// Which side of the wall the string is on has no default. The number of turns
// does not depend on it, but lengthen or shorten does, and the wrong one
// doubles the error. So the default case is worked in full, with every
// direction told by the string, and the direction of turning is withheld
// until the question is answered. Once answered, a note repeats the answer.
var StringLine = &calc.Calculator{
	ID:       "string-line",
	Title:    calc.Text("String-line correction"),
	Purpose:  calc.Text("Which brace to turn, which way and how far, from the gaps at the string."),
	In:       lineIn,
	Out:      lineOut,
	Formulas: lineFormulas,
	Sources:  lineSources,
	Cautions: []calc.Caution{
		{Level: calc.LevelWarning, Text: calc.Text("Hold point: never turn a brace once the concrete has stiffened.")},
	},
	Tables:  lineTables,
	Compute: computeLine,
	Draw:    drawLine,
}

var lineSources = []calc.Source{
	{ID: "practice", Title: "String on equal blocks at both ends, read at each brace, set before the concrete stiffens; 1/4 in. as working tolerance; at most two turns in one go",
		Status: calc.CommonPractice},
	{ID: "derived", Title: "Movement of a wall that turns about its base, held by a sloping brace", Where: "derived from the triangle of wall, ground and brace; the derivation stands in the listing of BraceChange",
		Status: calc.Memory},
	{ID: "army", Author: "US Army", Title: "EN5466, Concrete and masonry", Edition: "A", Year: "1992", Where: "brace design: sin θ = y/L, slopes of 20° to 60°",
		Status: calc.Confirmed, Link: "https://armyengineer.tpub.com/EN5466A/EN5466A0082.htm"},
	{ID: "thread", Author: "ASME", Title: "Unified inch screw threads B1.1, Acme screw threads B1.5", Where: "pitch and threads per inch", Status: calc.Memory},
	{ID: "aci117", Author: "ACI Committee 117", Title: "Specification for Tolerances for Concrete Construction, ACI 117", Edition: "10", Year: "2010",
		Where: "section 4.1.1; the 1990 edition allowed 1 in.", Status: calc.Secondary, Link: "https://www.eng-tips.com/viewthread.cfm?qid=372892"},
	{ID: "chord", Title: "Chord and rise of an arc", Where: "handbook relation for shallow arcs", Status: calc.Memory},
}

var lineTables = []calc.Table{
	{
		ID: "foot", Title: calc.Text("Turns, by how far off and distance of the brace foot"),
		Note: calc.Text("Brace 6 ft (1.83 m) up, string at 8 ft (2.44 m), 5 threads per inch, one threaded end."),
		Out:  "turns", Set: noBlocks(), Down: tableOff,
		Across: calc.Axis{Path: "foot-distance", US: []string{"4 ft", "5 ft", "6 ft", "7 ft", "8 ft"}, Metric: []string{"1.2 m", "1.5 m", "1.8 m", "2.1 m", "2.4 m"}},
	},
	{
		ID: "travel", Title: calc.Text("Turns, by how far off and travel of one turn"),
		Note: calc.Text("Brace 6 ft (1.83 m) up, its foot 5 ft (1.52 m) out, string at 8 ft (2.44 m)."),
		Out:  "turns", Set: noBlocks(calc.Entry{Path: "thread-as", Text: "travel"}), Down: tableOff,
		Across: calc.Axis{Path: "travel", US: []string{"0.1 in", "0.125 in", "0.2 in", "0.25 in", "0.4 in"}, Metric: []string{"2.5 mm", "3 mm", "5 mm", "6 mm", "10 mm"}},
	},
}

// tableOff types how far off the wall is as a gap without end blocks.
var tableOff = calc.Axis{Path: "readings.1.gap", US: []string{"1/8 in", "1/4 in", "3/8 in", "1/2 in", "3/4 in", "1 in"},
	Metric: []string{"3 mm", "6 mm", "10 mm", "12 mm", "20 mm", "25 mm"}}

func noBlocks(more ...calc.Entry) []calc.Entry {
	return append([]calc.Entry{{Path: "block", Text: "0 in"}, {Path: "first-end", Text: ""}, {Path: "second-end", Text: ""}, {Path: "tolerance", Text: "1/16 in"}}, more...)
}
