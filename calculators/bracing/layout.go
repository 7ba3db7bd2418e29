package bracing

import "coursebook/calculators/calc"

// BraceLayout sets out the braces along one wall: where the rules of the form
// maker or the engineer want one, and evenly between. It holds no spacing of
// its own: the largest spacing is always the reader's.
var BraceLayout = &calc.Calculator{
	ID:       "brace-layout",
	Title:    calc.Text("Brace layout"),
	Purpose:  calc.Text("How many braces one wall takes, and where each one stands."),
	In:       layoutIn,
	Out:      layoutOut,
	Formulas: []*calc.Formula{fillBraces, evenGap, plankCount, railLength},
	Sources:  layoutSources,
	Cautions: []calc.Caution{
		{Level: calc.LevelWarning, Text: calc.Text("The largest spacing comes from the form maker or the engineer. This sheet only sets it out.")},
		{Level: calc.LevelWarning, Text: calc.Text("Planks 6 ft (1.8 m) up or more need guardrails or harnesses: that is the rule for formwork. Scaffolds have it from 10 ft (3 m).")},
	},
	Tables:  layoutTables,
	Compute: computeLayout,
	Draw:    drawLayout,
}

var layoutSources = []calc.Source{
	{ID: "rules", Title: "A brace near each corner, at each side of an opening and at each line of stacked joints, evenly between; the distances are the form maker's",
		Status: calc.CommonPractice},
	{ID: "even", Title: "Division of a length into equal parts", Where: "arithmetic", Status: calc.Memory},
	{ID: "osha451", Author: "OSHA", Title: "29 CFR 1926.451, Scaffolds, general requirements",
		Where: "(b)(2) width 18 in., (b)(3) gap to the face 14 in., (b)(7) lap 12 in., (f)(16) sag 1/60, (g)(1) falls over 10 ft; formwork over 6 ft: 1926.501(b)(5)", Status: calc.Secondary,
		Link: "https://www.osha.gov/laws-regs/regulations/standardnumber/1926/1926.451"},
	{ID: "planks", Author: "OSHA", Title: "29 CFR 1926 Subpart L, Appendix A", Where: "table of spans of 2 × 10 planks", Status: calc.Secondary,
		Link: "https://www.osha.gov/laws-regs/regulations/standardnumber/1926/1926SubpartLAppA"},
}

var layoutTables = []calc.Table{
	{
		ID: "count", Title: calc.Text("Braces, by length of wall and largest spacing"),
		Note:   calc.Text("A plain wall without openings. First and last brace 2 ft (0.6 m) from the corners."),
		Out:    "count",
		Set:    []calc.Entry{{Path: "openings", Text: ""}, {Path: "stacks", Text: ""}},
		Down:   calc.Axis{Path: "length", US: []string{"12 ft", "20 ft", "28 ft", "40 ft", "60 ft", "80 ft"}, Metric: []string{"3.6 m", "6 m", "9 m", "12 m", "18 m", "24 m"}},
		Across: calc.Axis{Path: "spacing", US: []string{"4 ft", "5 ft", "6 ft", "7 ft", "8 ft"}, Metric: []string{"1.2 m", "1.5 m", "1.8 m", "2.1 m", "2.4 m"}},
	},
}

var (
	fillBraces = &calc.Formula{
		ID: "fill", Title: calc.Text("Braces between two fixed ones"), Expr: "max(ceil(g/s - 0.000000001) - 1, 0)",
		Result: calc.Var{Symbol: "n", Meaning: sayBetween},
		Vars: []calc.Var{
			{Symbol: "g", Meaning: sayFixedGap, Unit: "m", US: "ft"},
			{Symbol: "s", Meaning: calc.Text("largest spacing"), Unit: "m", US: "ft"}},
		Fn: calc.Func2(FillBraces), Go: "bracing.FillBraces", Source: "rules",
	}
	evenGap = &calc.Formula{
		ID: "even", Title: calc.Text("Even gap"), Expr: "g/(n + 1)",
		Result: calc.Var{Symbol: "e", Meaning: calc.Text("gap from brace to brace"), Unit: "m", US: "ft"},
		Vars: []calc.Var{
			{Symbol: "g", Meaning: sayFixedGap, Unit: "m", US: "ft"},
			{Symbol: "n", Meaning: sayBetween}},
		Fn: calc.Func2(EvenGap), Go: "bracing.EvenGap", Source: "even",
	}
	plankCount = &calc.Formula{
		ID: "planks", Title: calc.Text("Planks of the platform"), Expr: "w*max(ceil((L - k)/(p - k) - 0.000000001), 1)",
		Result: calc.Var{Symbol: "N", Meaning: calc.Text("planks")},
		Vars: []calc.Var{
			{Symbol: "w", Meaning: calc.Text("planks side by side")},
			{Symbol: "L", Meaning: sayWallLength, Unit: "m", US: "ft"},
			{Symbol: "p", Meaning: calc.Text("length of a plank"), Unit: "m", US: "ft"},
			{Symbol: "k", Meaning: calc.Text("lap"), Unit: "m", US: "ft"}},
		Fn: calc.Func4(PlankCount), Go: "bracing.PlankCount", Source: "osha451",
	}
	railLength = &calc.Formula{
		ID: "rail", Title: calc.Text("Guardrail"), Expr: "L + 2*b",
		Result: calc.Var{Symbol: "R", Meaning: calc.Text("length of guardrail"), Unit: "m", US: "ft"},
		Vars: []calc.Var{
			{Symbol: "L", Meaning: sayWallLength, Unit: "m", US: "ft"},
			{Symbol: "b", Meaning: calc.Text("width of the platform"), Unit: "m", US: "ft"}},
		Fn: calc.Func2(RailLength), Go: "bracing.RailLength", Source: "osha451",
	}
)

// Texts that several formulas share.
const (
	sayBetween    = calc.Text("braces between")
	sayFixedGap   = calc.Text("from one fixed brace to the next")
	sayWallLength = calc.Text("length of the wall")
)
