// Package barlaps computes development and lap lengths by several codes side by
// side, to compare with a drawing. It does not choose one.
package barlaps

import (
	"coursebook/calculators/calc"
	"coursebook/calculators/displays"
	"coursebook/calculators/quantity"
	"coursebook/calculators/steel"
)

// Calculator declares inputs, outputs, formulas and sources of the calculator.
var Calculator = &calc.Calculator{
	ID:      "bar-laps",
	Title:   calc.Text("Laps to check a drawing by"),
	Purpose: calc.Text("What lap several codes ask for, side by side, to hold against the drawing."),
	In:      inputs,
	Out:     outputs,
	Formulas: []*calc.Formula{
		steel.Development318Formula,
		steel.DevelopmentA23Formula,
		steel.ClassBFormula,
		steel.LapIRCFormula,
		steel.Hook318Formula,
	},
	Sources: []calc.Source{
		{
			ID:     "aci318",
			Author: "ACI",
			Title:  "318-14, Building code for structural concrete",
			Year:   "2014",
			Where:  calc.Text("table 25.4.2.2, 25.4.3, 25.5.2, as explained in CRSI note ETN-D-1-15"),
			Status: calc.Secondary,
		},
		{
			ID:     "factors",
			Author: "ACI",
			Title:  "318-14 and 318-19",
			Where:  calc.Text("factors for place, coating, weight and grade; no laps above #11"),
			Status: calc.Memory,
		},
		{
			ID:     "a233",
			Author: "CSA",
			Title:  "A23.3, Design of concrete structures",
			Where:  calc.Text("12.2.3, table of development lengths in a public repository; factors from memory"),
			Status: calc.Secondary,
		},
		{
			ID:     "irc",
			Author: "ICC",
			Title:  "International Residential Code",
			Where:  calc.Text("table R608.5.4(1), as adopted in the Los Angeles Residential Code"),
			Status: calc.Secondary,
		},
		{
			ID:     "bc",
			Author: "British Columbia",
			Title:  "Building Code",
			Where:  calc.Text("9.3.1.1.(4): 450 mm for 10M, 650 mm for 15M"),
			Status: calc.Secondary,
		},
		steel.SourceA615, steel.SourceG30,
	},
	Cautions: []calc.Caution{
		{
			Level: calc.LevelWarning,
			Text: calc.Text(
				"Only to check a drawing, never to design. A short lap can bring a wall down. The drawing and the " +
					"engineer decide.",
			),
		},
		{
			Level: calc.LevelCaution,
			Text: calc.Text(
				"The rows differ because the codes differ. None is picked here: ask which code the job is under.",
			),
		},
	},
	Tables: []calc.Table{{ID: "class-b", Title: calc.Text("Class B lap by ACI 318, cover kept"),
		Note: calc.Text("Grade 60 (420 MPa), bare bars, normal weight, not top bars. To check a drawing only."),
		Out:  "lap-aci", Down: calc.Axis{Path: "bar", US: []string{"3", "4", "5", "6", "7", "10m", "15m"}},
		Across: calc.Axis{
			Path:   "fc",
			US:     []string{"2500 psi", "3000 psi", "3500 psi", "4000 psi", "5000 psi"},
			Metric: []string{"20 MPa", "25 MPa", "30 MPa", "35 MPa"},
		}}},
	Compute: compute,
	Draw:    draw,
}

// A lap is rounded up, by the inch or by 10 mm as the tables are.

var length = quantity.Display{
	Dim:    quantity.Length,
	US:     quantity.UnitDisplay{Unit: "in", Form: quantity.Inches, Step: 1, Rounding: quantity.Up},
	Metric: quantity.UnitDisplay{Unit: "mm", Step: 10, Rounding: quantity.Up},
}

const (
	whyGrade   = calc.Text("Bars are sold from Grade 40 to Grade 100.")
	whyFcLow   = calc.Text("Codes ask for at least 2500 psi (17 MPa).")
	whyFcHigh  = calc.Text("Stronger concrete is beyond these simple forms.")
	labelGrade = calc.Text("Yield strength of the bar")
)

// Yield strengths are written in round psi or MPa.
var yield = quantity.Display{
	Dim:    quantity.Pressure,
	US:     quantity.UnitDisplay{Unit: "psi", Step: 100},
	Metric: quantity.UnitDisplay{Unit: "MPa", Step: 1},
}

var inputs = []calc.Field{
	{ID: "bar", Decides: 1, Kind: calc.Choice, Usual: "4", Options: steel.BarOptions, Label: calc.Text("Bar")},
	{ID: "fy", Decides: 3, Display: &yield, Usual: "60000 psi", Label: labelGrade,
		Help:  calc.Text("Grade 60: 60 000 psi. Grade 400: 400 MPa."),
		Range: "40000 to 100000 psi", Why: whyGrade},
	{ID: "fc", Decides: 2, Display: &displays.Strength, Usual: "3000 psi",
		Label: calc.Text("Concrete strength, 28 days"),
		Range: "2450 to 15000 psi", Why: whyFcLow, WhyMost: whyFcHigh, LeastSource: "aci318"},
	{ID: "top", Decides: 4, Kind: calc.Flag, Usual: "no", Label: calc.Text("Top bar"),
		Help: calc.Text("Level bar with more than 12 in (300 mm) cast under it.")},
	{ID: "coating", Kind: calc.Choice, Usual: "none", Label: calc.Text("Coating"), Options: []calc.Option{
		{ID: "none", Label: calc.Text("bare or galvanized")},
		{ID: "epoxy", Label: calc.Text("epoxy, well covered and apart")},
		{ID: "epoxy-close", Label: calc.Text("epoxy, cover under 3 or gap under 6 diameters")},
	}},
	{ID: "light", Kind: calc.Flag, Usual: "no", Label: calc.Text("Lightweight concrete")},
	{ID: "drawn", Display: &displays.Inches, Optional: true,
		Example: true, Usual: "24 in", Label: calc.Text("Lap on the drawing"),
		Help:  calc.Text("Empty: nothing is compared."),
		Range: "1 to 400 in", Why: displays.CheckUnit},
}

// IDs of the rules, one for each row.
const (
	ruleACI      = "aci-kept"
	ruleACIOther = "aci-other"
	ruleCSA      = "csa-kept"
	ruleCSAOther = "csa-other"
	ruleIRC      = "irc"
	ruleBC       = "bc"
)

var rules = []calc.Option{
	{ID: ruleACI, Label: calc.Text("ACI 318, cover kept")},
	{ID: ruleACIOther, Label: calc.Text("ACI 318, other cases")},
	{ID: ruleCSA, Label: calc.Text("CSA A23.3, cover kept")},
	{ID: ruleCSAOther, Label: calc.Text("CSA A23.3, other cases")},
	{ID: ruleIRC, Label: calc.Text("IRC table, houses")},
	{ID: ruleBC, Label: calc.Text("BC code, small houses")},
}

var verdicts = []calc.Option{
	{ID: "shorter", Label: calc.Text("shorter than this")},
	{ID: "longer", Label: calc.Text("as long or longer")},
}

// IDs of the verdicts on the lap of the drawing.
const (
	lapStop = "stop"
	lapAsk  = "ask"
	lapLong = "long"
)

// The rows are the result; the leading outputs are their least and greatest lap, and
// the drawing's lap against them all.
var outputs = []calc.Field{
	{ID: "verdict", Kind: calc.Choice, Lead: true, Label: calc.Text("The drawing's lap is"), Options: []calc.Option{
		{ID: lapStop, Advice: calc.Stop, Label: calc.Text("Shorter than every row: stop")},
		{ID: lapAsk, Advice: calc.Careful, Label: calc.Text("Shorter than some rows: ask")},
		{ID: lapLong, Advice: calc.Good, Label: calc.Text("No shorter than any row")},
	}},
	{ID: "least", Display: &length, Lead: true, Label: calc.Text("Shortest lap of the rows")},
	{ID: "most", Display: &length, Lead: true, Label: calc.Text("Longest lap of the rows")},
	{ID: "laps", Kind: calc.Rows, Label: calc.Text("Rule by rule"), Cols: []calc.Field{
		{ID: "rule", Kind: calc.Choice, Options: rules, Label: calc.Text("Rule")},
		{ID: "development", Display: &length, Label: calc.Text("Development")},
		{ID: "lap-a", Display: &length, Label: calc.Text("Lap, Class A")},
		{ID: "lap-b", Display: &length, Label: calc.Text("Lap, Class B or table")},
		{ID: "drawing", Kind: calc.Choice, Options: verdicts, Label: calc.Text("The drawing's lap is")},
	}},
	{ID: "lap-aci", Display: &length, Label: calc.Text("Class B, ACI, cover kept")},
	{ID: "hook", Display: &length, Label: calc.Text("Hook by ACI 318-14"),
		Help: calc.Text("By ACI 318-14, from the face where it is needed.")},
	{ID: "hook-covered", Display: &length, Label: calc.Text("Hook, well covered, ACI"),
		Help: calc.Text("With 2-1/2 in at the side and 2 in behind a 90° tail.")},
	{ID: "diameters", Display: &diameters, Label: calc.Text("Drawn lap in bar diameters")},
}

var diameters = quantity.Display{Dim: quantity.Number, US: quantity.UnitDisplay{Step: 1, Rounding: quantity.Down}}
