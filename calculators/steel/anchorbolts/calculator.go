// Package anchorbolts computes where the anchor bolts of a wall's plates go: near
// both ends of every piece, no farther apart than the drawing or the code allows,
// clear of cleats and of gaps in the top of the wall.
package anchorbolts

import (
	"coursebook/calculators/calc"
	"coursebook/calculators/displays"
	"coursebook/calculators/steel"
)

// Calculator declares inputs, outputs, formulas and sources of the calculator.
var Calculator = &calc.Calculator{
	ID:      "anchor-bolts",
	Title:   calc.Text("Anchor-bolt layout"),
	Purpose: calc.Text("Where each anchor bolt of the plates goes, and how many there are."),
	In:      inputs,
	Out:     outputs,
	Formulas: []*calc.Formula{
		steel.LeastFromEndFormula,
		steel.BoltsInPieceFormula,
	},
	Sources: sources,
	Cautions: []calc.Caution{
		{
			Level: calc.LevelWarning,
			Text: calc.Text(
				"The drawing and the engineer come before this sheet. High wind and earthquake country ask for more.",
			),
		},
		{
			Level: calc.LevelNotice,
			Text: calc.Text(
				"By the home code a bolt goes 7 in. (178 mm) or more into the concrete. Foam does not count.",
			),
		},
	},
	Tables:  tables,
	Compute: compute,
	Draw:    draw,
}

const (
	low  = "low"
	tall = "tall"

	byDrawing = "drawing"
	byCode    = "code"

	atEnd   = "end"
	between = "between"
	moves   = "move"
)

// Reasons of limits.
const (
	whyThin  = calc.Text("By the home code no bolt is thinner than 1/2 in. (13 mm).")
	whyThick = calc.Text("A bolt this thick is on a drawing.")
	whyPiece = calc.Text("Two bolts do not fit in a piece this short.")
	whyLong  = calc.Text("No plate comes in pieces this long.")
	whyEnd   = calc.Text("By the home code a bolt is within 12 in. (305 mm) of each end.")
	whyClose = calc.Text("Bolts this close split the plate.")
	whyWide  = calc.Text("No code lets bolts be this far apart.")
)

var inputs = []calc.Field{
	{ID: "pieces", Decides: 1, Kind: calc.Rows, Usual: "16 ft; 12 ft", MinRows: 1, MaxRows: 12,
		Label: calc.Text("Plates, piece by piece"), Help: calc.Text("In order along one wall, from its start."),
		Cols: []calc.Field{{ID: "length", Display: &displays.Wall, Label: calc.Text("Length"),
			Range: "1 to 24 ft", Why: whyPiece, WhyMost: whyLong}}},
	{ID: "gaps", Decides: 2, Kind: calc.Rows, MaxRows: 12, Usual: "19 ft | 3 ft",
		Label: calc.Text("Gaps in the top of the wall"),
		Help:  calc.Text("Doors and pockets: no concrete under the plates there."),
		Cols: []calc.Field{
			{ID: "start", Display: &displays.Wall, Label: calc.Text("Near side, from start"),
				Range: "0 to 288 ft", Why: displays.NotMinus, WhyMost: displays.OneJob},
			{ID: "width", Display: &displays.Wall, Label: calc.Text("Width"),
				Range: "over 0 to 60 ft", Why: displays.LeaveOut, WhyMost: displays.CheckUnit},
		}},
	{ID: "cleats", Decides: 3, Kind: calc.Rows, MaxRows: 40, Usual: "4 ft; 8 ft; 12 ft; 24 ft",
		Label: calc.Text("Cleats across the top"), Help: calc.Text("The middle of each one."),
		Cols: []calc.Field{{ID: "at", Display: &displays.Wall, Label: calc.Text("From start"),
			Range: "0 to 288 ft", Why: displays.NotMinus, WhyMost: displays.OneJob}}},
	{ID: "clear", Display: &displays.Part, Usual: "4 in", Label: calc.Text("Bolt to middle of a cleat"),
		Help:  calc.Text("At least. Half the cleat, the washer and room for the template."),
		Range: "0 to 12 in", Why: displays.NotMinus, WhyMost: displays.CheckUnit},
	{ID: "stories", Decides: 4, Kind: calc.Choice, Usual: low, Label: calc.Text("The building"), Options: []calc.Option{
		{ID: low, Label: calc.Text("one or two stories")},
		{ID: tall, Label: calc.Text("more than two stories")},
	}},
	{ID: "drawing", Display: &displays.Wall, Optional: true, Label: calc.Text("Spacing on the drawing"),
		Help:  calc.Text("It comes before the code. Empty only for plates that have no drawing."),
		Range: "0.5 to 8 ft", Why: whyClose, WhyMost: whyWide},
	{ID: "diameter", Display: &displays.Part, Usual: "1/2 in", Label: calc.Text("Bolt diameter"),
		Range: "1/2 to 1 1/2 in", Why: whyThin, WhyMost: whyThick, LeastSource: "irc"},
	{ID: "end", Display: &displays.Part, Usual: "8 in", Label: calc.Text("Bolt to the end of a piece"),
		Help:  calc.Text("The same at both ends. Not under seven bolt diameters."),
		Range: "3 to 12 in", Why: whyEnd, MostSource: "irc"},
}

var outputs = []calc.Field{
	{ID: "by", Kind: calc.Choice, Lead: true, Label: calc.Text("This layout is for"), Options: []calc.Option{
		{ID: byDrawing, Label: calc.Text("the spacing of your drawing")},
		{ID: byCode, Label: calc.Text("plates without a drawing: the code's greatest spacing")},
	}},
	{ID: "count", Display: &displays.Count, Exact: true, Lead: true, Label: calc.Text("Anchor bolts")},
	{ID: "largest", Display: &displays.Wall, Lead: true, Label: calc.Text("Largest spacing in a piece")},
	{ID: "bolts", Kind: calc.Rows, Label: calc.Text("Bolt by bolt"), Cols: []calc.Field{
		{ID: "nr", Display: &displays.Count, Exact: true, Label: calc.Text("Bolt")},
		{ID: "at", Display: &displays.Wall, Label: calc.Text("Tape from start")},
		{ID: "gap", Display: &displays.Wall, Label: calc.Text("From the last one")},
		{ID: "for", Kind: calc.Choice, Label: calc.Text("Place"), Options: []calc.Option{
			{ID: atEnd, Label: calc.Text("near an end")},
			{ID: between, Label: calc.Text("between")},
			{ID: moves, Label: calc.Text("move the cleat")},
		}},
	}},
	{ID: "spacing", Display: &displays.Wall, Label: calc.Text("Largest spacing allowed")},
	{ID: "end-least", Display: &displays.Part, Label: calc.Text("To an end, at least")},
	{ID: "end-most", Display: &displays.Part, Label: calc.Text("To an end, at most")},
	{ID: "pieces", Display: &displays.Count, Exact: true, Label: calc.Text("Pieces, split at gaps")},
	{ID: "length", Display: &displays.Wall, Label: calc.Text("Length of the plates")},
}

var sources = []calc.Source{
	{
		ID:     "irc",
		Author: "International Code Council",
		Title:  "International Residential Code, as quoted by the American Wood Council",
		Where: calc.Text("R403.1.6: 1/2 in. bolts, 7 in. deep, 6 ft apart, two in each plate, within 12 in. and " +
			"not under " +
			"seven diameters of its ends"),
		Status: calc.Secondary,
		Link: "https://awc.org/faqs/codes-standards/irc/" +
			"what-are-the-requirements-for-anchorage-of-wood-sill-plates-and-wood-wall-sole-plates-in-the-irc",
	},
	{
		ID:     "irc-list",
		Author: "International Code Council",
		Title:  "International Residential Code",
		Where:  calc.Text("R403.1.6: 6 ft apart, 4 ft over two stories, within 12 in. of plate ends"),
		Status: calc.Secondary,
	},
	{
		ID:     "ontario",
		Author: "Ontario",
		Title:  "O. Reg. 332/12, 9.20.17, flat insulated walls",
		Where:  calc.Text("12.7 mm bolts, 1.2 m apart, 100 mm deep"),
		Status: calc.Secondary,
	},
	{ID: "practice", Where: calc.Text("Even gaps between the end bolts; a gap in the top of the wall splits a " +
		"piece"), Status: calc.CommonPractice},
	{ID: "own", Where: calc.Text("8 in. from an end, 4 in. from the middle of a cleat"), Status: calc.OwnLimit},
}

var tables = []calc.Table{{
	ID: "count", Title: calc.Text("Bolts in one piece, by its length and the spacing"), Out: "count",
	Note: calc.Text("Bolts 8 in. (203 mm) from both ends, nothing in the way."),
	Set: []calc.Entry{
		{Path: "pieces.2.length", Text: ""},
		{Path: "gaps", Text: ""},
		{Path: "cleats", Text: ""},
	},
	Down: calc.Axis{
		Path:   "pieces.1.length",
		US:     []string{"4 ft", "8 ft", "10 ft", "12 ft", "14 ft", "16 ft", "20 ft"},
		Metric: []string{"1.2 m", "2.4 m", "3 m", "3.6 m", "4.2 m", "4.8 m", "6 m"},
	},
	Across: calc.Axis{
		Path:   "drawing",
		US:     []string{"2 ft", "3 ft", "4 ft", "6 ft"},
		Metric: []string{"0.6 m", "0.9 m", "1.2 m", "1.8 m"},
	},
}}
