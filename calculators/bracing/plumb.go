package bracing

import "coursebook/calculators/calc"

// PlumbCheck holds readings of a wall against the plumb limits of several
// documents side by side. The editions differ by more than three times for a
// basement wall, so the verdict names the edition in every line.
var PlumbCheck = &calc.Calculator{
	ID:       "plumb-check",
	Title:    calc.Text("Plumb and plane check"),
	Purpose:  calc.Text("Whether a wall is plumb and plane enough, by each edition of the book."),
	In:       plumbIn,
	Out:      plumbOut,
	Formulas: []*calc.Formula{plumbLimit, edgeLimit, homeLimit, leanBetween, slopeLimit, outOfStraight},
	Sources:  plumbSources,
	Cautions: []calc.Caution{
		{Level: calc.LevelNotice, Text: calc.Text("The project papers say which edition counts. They may be tighter than all of these.")},
		{Level: calc.LevelWarning, Text: calc.Text("Never pull a wall straight once the concrete has stiffened. Tell the foreman instead.")},
	},
	Tables:  plumbTables,
	Compute: computePlumb,
	Draw:    drawPlumb,
}

var plumbSources = []calc.Source{
	{ID: "aci117", Author: "ACI Committee 117", Title: "Specification for Tolerances for Concrete Construction, ACI 117", Edition: "06, 10", Year: "2010",
		Where: "section 4.1.1: 0.3 % of the height, at most 1 in., up to 83 ft 4 in.", Status: calc.Secondary, Link: "https://www.eng-tips.com/viewthread.cfm?qid=372892"},
	{ID: "aci117-edge", Author: "ACI Committee 117", Title: "ACI 117", Edition: "10", Year: "2010", Where: "section 4.1.2, exposed corner columns and grooves: 0.2 %, at most 1/2 in.", Status: calc.Memory},
	{ID: "aci117-90", Author: "ACI Committee 117", Title: "ACI 117", Edition: "90", Year: "1990",
		Where: "vertical alignment up to 100 ft: 1 in.; exposed corner column or joint groove 1/2 in.; as printed in UFGS 03700, page 26", Status: calc.Confirmed,
		Link: "https://ufgscriteriadocreport.tpub.com/03700/037000026.htm"},
	{ID: "ufgs21", Author: "US Army, Navy, Air Force", Title: "UFGS 03700, Concrete", Where: "page 21: abrupt and gradual irregularities by class, other deviation 10 mm in 3 m", Status: calc.Confirmed,
		Link: "https://ufgscriteriadocreport.tpub.com/03700/037000021.htm"},
	{ID: "nahb", Author: "NAHB", Title: "Residential Construction Performance Guidelines", Where: "guideline 2-13: 1-1/2 in. in 8 ft", Status: calc.Secondary},
	{ID: "straight", Title: "Straight line through two points", Where: "geometry", Status: calc.Memory},
}

var plumbTables = []calc.Table{
	{
		ID: "limit", Title: calc.Text("Plumb limit of ACI 117-06 and -10 at the top"),
		Note: calc.Text("Lines and surfaces, rounded down. The 1990 edition allows 1 in. (25 mm) at each of these heights."),
		Out:  "limit-top", Set: []calc.Entry{{Path: "readings", Text: "1 ft | 0 in"}},
		Down: calc.Axis{Path: "height", US: []string{"4 ft", "8 ft", "9 ft", "10 ft", "12 ft", "20 ft", "28 ft"}, Metric: []string{"1.2 m", "2.4 m", "2.7 m", "3 m", "3.6 m", "6 m", "8.5 m"}},
	},
}

var (
	edgeLimit = &calc.Formula{
		ID: "edge-limit", Title: calc.Text("Limit for an exposed edge"), Expr: "min(0.002*h, 0.5)",
		Result: calc.Var{Symbol: "u", Meaning: calc.Text("most lean at this height"), Unit: "in"},
		Vars:   []calc.Var{{Symbol: "h", Meaning: sayReadHigh, Unit: "in"}},
		Fn:     calc.FuncN(func(v []float64) float64 { return float64(EdgeLimit(Inches(v[0]))) }), Go: "bracing.EdgeLimit", Source: "aci117-edge",
	}
	homeLimit = &calc.Formula{
		ID: "home-limit", Title: calc.Text("Limit of the home-builder guideline"), Expr: "1.5*h/96",
		Result: calc.Var{Symbol: "u_n", Meaning: calc.Text("most lean at this height"), Unit: "in"},
		Vars:   []calc.Var{{Symbol: "h", Meaning: sayReadHigh, Unit: "in"}},
		Fn:     calc.FuncN(func(v []float64) float64 { return float64(HomeLimit(Inches(v[0]))) }), Go: "bracing.HomeLimit", Source: "nahb",
	}
	leanBetween = &calc.Formula{
		ID: "lean", Title: calc.Text("Lean from reading to reading"), Expr: "abs(e_2 - e_1)",
		Result: calc.Var{Symbol: "x", Meaning: calc.Text("lean between the two"), Unit: "mm", US: "in"},
		Vars: []calc.Var{
			{Symbol: "e_1", Meaning: sayLower, Unit: "mm", US: "in"},
			{Symbol: "e_2", Meaning: sayUpper, Unit: "mm", US: "in"}},
		Fn: calc.Func2(Lean), Go: "bracing.Lean", Source: "straight",
	}
	slopeLimit = &calc.Formula{
		ID: "slope-limit", Title: calc.Text("Limit from reading to reading"), Expr: "max(10, z/300)",
		Result: calc.Var{Symbol: "u_s", Meaning: calc.Text("most lean between the two"), Unit: "mm"},
		Vars:   []calc.Var{{Symbol: "z", Meaning: calc.Text("height between the two"), Unit: "mm"}},
		Fn:     calc.Func1(SlopeLimit), Go: "bracing.SlopeLimit", Source: "ufgs21",
	}
	outOfStraight = &calc.Formula{
		ID: "bow", Title: calc.Text("Bow between base and top"), Expr: "abs(e - e_1 - (e_2 - e_1)*(z - z_1)/(z_2 - z_1))",
		Result: calc.Var{Symbol: "s", Meaning: calc.Text("off the straight line"), Unit: "mm", US: "in"},
		Vars: []calc.Var{
			{Symbol: "e", Meaning: calc.Text("reading between"), Unit: "mm", US: "in"},
			{Symbol: "z", Meaning: calc.Text("height of it"), Unit: "mm", US: "in"},
			{Symbol: "e_1", Meaning: sayLower, Unit: "mm", US: "in"},
			{Symbol: "z_1", Meaning: calc.Text("height of the lower"), Unit: "mm", US: "in"},
			{Symbol: "e_2", Meaning: sayUpper, Unit: "mm", US: "in"},
			{Symbol: "z_2", Meaning: calc.Text("height of the upper"), Unit: "mm", US: "in"}},
		Fn: calc.FuncN(func(v []float64) float64 { return OutOfStraight(v[0], v[1], v[2], v[3], v[4], v[5]) }), Go: "bracing.OutOfStraight", Source: "straight",
	}
)

// Texts that several formulas share.
const (
	sayReadHigh = calc.Text("height of the reading")
	sayLower    = calc.Text("lower reading")
	sayUpper    = calc.Text("upper reading")
)
