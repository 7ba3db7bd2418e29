package pressure

import (
	"coursebook/calculators/calc"
	"coursebook/calculators/displays"
	"coursebook/calculators/figure"
)

// CiriaPressure answers what fresh concrete does to a form by CIRIA Report
// 108, beside ACI 347 and DIN 18218.
var CiriaPressure = &calc.Calculator{
	ID:      "ciria-pressure",
	Title:   calc.Text("Form pressure by CIRIA 108"),
	Purpose: calc.Text("Shows what fresh concrete does to the form by the British method, beside ACI 347 and DIN 18218."),
	In: []calc.Field{
		{ID: "height", Display: &displays.Height, Usual: "10 ft", Min: &leastHeight, Max: &mostHeight, Label: labelHeight, Help: helpHeight},
		{
			ID: "form-height", Display: &displays.Height, Usual: "10 ft",
			Label: calc.Text("Height of the form"),
			Help:  calc.Text("From its foot to its top edge, at least what is placed."),
			Min:   &calc.Limit{At: 1, Unit: "ft", Why: displays.CheckUnit}, Max: &calc.Limit{At: 50, Unit: "ft", Why: displays.Engineer},
		},
		{ID: "rise", Display: &displays.RiseTyped, Usual: "4 ft/h", Min: &leastRise, Max: &mostRise, Label: labelRise, Help: helpRise},
		{ID: "temperature", Display: &displays.Temperature, Usual: "60 °F", Min: &coldest, Max: &hottest, Label: labelTemp, Help: helpTemp},
		{ID: "weight", Display: &displays.UnitWeight, Usual: "150 lb/ft³", Min: &lightest, Max: &heaviest, Label: labelWeight, Help: helpWeight},
		{ID: "cement", Kind: calc.Choice, Usual: string(Blend), Label: labelCement, Help: helpCement, Options: cements},
		{ID: "admixture", Kind: calc.Choice, Usual: admixRetards, Label: labelAdmix, Help: helpAdmix, Options: admixtures},
		{
			ID: "shape", Kind: calc.Choice, Usual: asWall,
			Label: calc.Text("Shape in plan"),
			Options: []calc.Option{
				{ID: asWall, Label: calc.Text("Wall: one plan size is 2 m (6.6 ft) or more")},
				{ID: asColumn, Label: calc.Text("Column: both plan sizes are under 2 m (6.6 ft)")},
			},
		},
		{ID: "way", Kind: calc.Choice, Usual: fromTop, Label: labelWay, Options: ways},
		{ID: "class", Kind: calc.Choice, Usual: "f3", Label: labelClass, Help: helpClass, Options: classes},
		{ID: "set", Display: &displays.Hours, Usual: "7 h", Min: &shortestTime, Max: &longestTime, Label: labelSet, Help: helpSet},
	},
	Out: []calc.Field{
		{ID: "pressure", Display: &displays.Pressure, Lead: true, Label: calc.Text("Greatest pressure, CIRIA 108")},
		{ID: "rule", Kind: calc.Choice, Options: ruledBy, Lead: true, Label: labelRule},
		{ID: "fluid-depth", Display: &displays.Height, Label: labelDepth, Help: helpFluidZone},
		{ID: "head", Display: &displays.Pressure, Label: labelHead},
		{ID: "c1", Display: &displays.Factor, Label: calc.Text("Shape coefficient")},
		{ID: "c2", Display: &displays.Factor, Label: calc.Text("Mix coefficient")},
		{ID: "k", Display: &displays.Factor, Label: calc.Text("Temperature coefficient")},
		{ID: "methods", Kind: calc.Rows, Label: labelMethods, Cols: methodCols},
	},
	Formulas: []*calc.Formula{eqCIRIAK, eqCIRIA, eqHead, eqCapped, eqDepth},
	Sources: []calc.Source{
		sourceCIRIA, sourceGroups,
		sourceACI, sourceHurd, sourceDIN, sourceDINMemory, sourceClasses,
	},
	Cautions: []calc.Caution{{Level: calc.LevelWarning, Text: cautionOpen}, {Level: calc.LevelWarning, Text: cautionGovern}},
	Tables: []calc.Table{{
		ID: "rate", Title: calc.Text("Pressure by rise and concrete temperature"),
		Note: calc.Text("For 13 ft (4 m) placed in a form of that height, blended cement and a retarder. A lower wall never carries more than its fluid head."),
		Out:  "pressure", Set: []calc.Entry{{Path: "height", Text: "13 ft"}, {Path: "form-height", Text: "13 ft"}},
		Down:   calc.Axis{Path: "rise", US: []string{"1", "2", "3", "5", "7", "10", "15"}, Metric: []string{"0.3", "0.6", "1", "1.5", "2", "3", "5"}},
		Across: calc.Axis{Path: "temperature", US: []string{"41", "50", "60", "70", "80", "86"}, Metric: []string{"5", "10", "15", "20", "25", "30"}},
	}},
	Compute: computeCIRIA,
	Draw: func(v calc.Locale, in calc.Case, res calc.Result) figure.Drawing {
		if res.State != calc.OK {
			return figure.Drawing{}
		}
		return compareFigure(v, ciriaPour(in))
	},
}

const (
	meansK    = calc.Text("coefficient for temperature")
	meansTC   = calc.Text("temperature of the concrete at placing")
	meansHead = calc.Text("full fluid head")
)

var eqCIRIAK = &calc.Formula{
	ID: "temperature", Title: calc.Text("Temperature coefficient"),
	Expr: "(36/(T + 16))^2", Result: calc.Var{Symbol: "K", Meaning: meansK},
	Vars: []calc.Var{{Symbol: "T", Meaning: meansTC, Unit: "°C"}},
	Fn:   calc.Func1(CIRIATemperature), Go: "pressure.CIRIATemperature", Source: "ciria",
	Limits: calc.Text("For 41 to 86 °F (5 to 30 °C). Warmer concrete counts as 86 °F (30 °C)."),
}

var eqCIRIA = &calc.Formula{
	ID: "pressure", Title: calc.Text("Pressure by CIRIA 108"),
	Expr: "D*(C_1*sqrt(R) + C_2*K*sqrt(H - C_1*sqrt(R)))", Result: calc.Var{Symbol: "P", Meaning: meansP, Unit: "kPa"},
	Vars: []calc.Var{
		{Symbol: "D", Meaning: meansW, Unit: "kN/m³"},
		{Symbol: "C_1", Meaning: calc.Text("coefficient for shape in plan")},
		{Symbol: "C_2", Meaning: calc.Text("coefficient for the mix")},
		{Symbol: "K", Meaning: meansK},
		{Symbol: "H", Meaning: calc.Text("height of the form"), Unit: "m"},
		{Symbol: "R", Meaning: meansR, Unit: "m/h"},
	},
	Fn: calc.FuncN(func(v []float64) float64 { return CIRIAPressure(v[0], v[1], v[2], v[3], v[4], v[5]) }),
	Go: "pressure.CIRIAPressure", Source: "ciria",
	Limits: calc.Text("Where the first term exceeds the height of the form, the full fluid head counts."),
}

// eqCapped keeps the pressure of either European equation in bounds.
var eqCapped = &calc.Formula{
	ID: "cap", Title: calc.Text("Never above the fluid head"),
	Expr: "min(p_e, p_h)", Result: calc.Var{Symbol: "p", Meaning: meansP, Unit: "kPa", US: "psf"},
	Vars: []calc.Var{
		{Symbol: "p_e", Meaning: calc.Text("pressure by the equation"), Unit: "kPa", US: "psf"},
		{Symbol: "p_h", Meaning: meansHead, Unit: "kPa", US: "psf"},
	},
	Fn: calc.Func2(Capped), Go: "pressure.Capped", Source: "hurd",
}
