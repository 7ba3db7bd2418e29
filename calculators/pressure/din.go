package pressure

import (
	"coursebook/calculators/calc"
	"coursebook/calculators/displays"
	"coursebook/calculators/figure"
)

// DINPressure answers what fresh concrete does to a form by DIN 18218:2010-01,
// beside ACI 347 and CIRIA Report 108.
var DINPressure = &calc.Calculator{
	ID:      "din-pressure",
	Title:   calc.Text("Form pressure by DIN 18218"),
	Purpose: calc.Text("Shows what fresh concrete does to the form by the German method, beside ACI 347 and CIRIA 108."),
	In: []calc.Field{
		{ID: "height", Display: &displays.Height, Usual: "10 ft", Min: &leastHeight, Max: &mostHeight, Label: labelHeight, Help: helpHeight},
		{ID: "rise", Display: &displays.RiseTyped, Usual: "4 ft/h", Min: &leastRise, Max: &mostRise, Label: labelRise, Help: helpRise},
		{ID: "class", Kind: calc.Choice, Usual: "f3", Label: labelClass, Help: helpClass, Options: classes},
		{ID: "set", Display: &displays.Hours, Usual: "7 h", Min: &shortestTime, Max: &longestTime, Label: labelSet, Help: helpSet},
		{
			ID: "set-at", Display: &displays.Temperature, Usual: "60 °F",
			Label: calc.Text("Setting time holds at"),
			Help:  calc.Text("Concrete temperature at which the setting time was found."),
			Min:   &coldest, Max: &hottest,
		},
		{ID: "temperature", Display: &displays.Temperature, Usual: "60 °F", Min: &coldest, Max: &hottest, Label: labelTemp, Help: helpTemp},
		{ID: "weight", Display: &displays.UnitWeight, Usual: "150 lb/ft³", Min: &lightest, Max: &heaviest, Label: labelWeight, Help: helpWeight},
		{ID: "way", Kind: calc.Choice, Usual: fromTop, Label: labelWay, Options: ways},
		{ID: "cement", Kind: calc.Choice, Usual: string(Blend), Label: labelCement, Help: helpCement, Options: cements},
		{ID: "admixture", Kind: calc.Choice, Usual: admixRetards, Label: labelAdmix, Help: helpAdmix, Options: admixtures},
	},
	Out: []calc.Field{
		{ID: "pressure", Display: &displays.Pressure, Lead: true, Label: calc.Text("Characteristic pressure")},
		{ID: "rule", Kind: calc.Choice, Options: ruledBy, Lead: true, Label: labelRule},
		{ID: "fluid-depth", Display: &displays.Height, Label: labelDepth, Help: helpFluidZone},
		{ID: "head", Display: &displays.Pressure, Label: labelHead},
		{ID: "k1", Display: &displays.Factor, Label: calc.Text("Setting time factor")},
		{ID: "cool", Display: &displays.Factor, Label: calc.Text("Temperature factor")},
		{ID: "methods", Kind: calc.Rows, Label: labelMethods, Cols: methodCols},
	},
	Formulas: []*calc.Formula{eqDINSet, eqDINCool, eqDINStiff, eqDINFlowing, eqHead, eqCapped, eqDepth},
	Sources: []calc.Source{
		sourceDIN, sourceDINMemory, sourceClasses, sourceACI, sourceHurd, sourceCIRIA,
	},
	Cautions: []calc.Caution{
		{Level: calc.LevelWarning, Text: cautionOpen}, {Level: calc.LevelWarning, Text: cautionGovern},
		{Level: calc.LevelCaution, Text: calc.Text("Only the line for self-compacting concrete was read in print. Check the other classes against the standard.")},
	},
	Tables: []calc.Table{{
		ID: "rate", Title: calc.Text("Pressure of class F3 by rise and setting time"),
		Note: calc.Text("Characteristic, for 13 ft (4 m) placed in one go. A lower wall never carries more than its fluid head."),
		Out:  "pressure", Set: []calc.Entry{{Path: "height", Text: "13 ft"}},
		Down:   calc.Axis{Path: "rise", US: []string{"1", "2", "3", "5", "7", "10", "15"}, Metric: []string{"0.3", "0.6", "1", "1.5", "2", "3", "5"}},
		Across: calc.Axis{Path: "set", US: []string{"5 h", "7 h", "10 h", "15 h", "20 h"}},
	}},
	Compute: computeDIN,
	Draw: func(v calc.Locale, in calc.Case, res calc.Result) figure.Drawing {
		if res.State != calc.OK {
			return figure.Drawing{}
		}
		return compareFigure(v, dinPour(in))
	},
}

const (
	meansK1   = calc.Text("factor for the setting time")
	meansCool = calc.Text("factor for cool concrete")
	meansSet  = calc.Text("setting time, at least 5 h")
)

var eqDINSet = &calc.Formula{
	ID: "set", Title: calc.Text("Setting time factor, F1 to F4"),
	Expr: "1 + k*(t_E - 5)", Result: calc.Var{Symbol: "K_1", Meaning: meansK1},
	Vars: []calc.Var{{Symbol: "k", Meaning: calc.Text("growth per hour, by class")}, {Symbol: "t_E", Meaning: meansSet, Unit: "h"}},
	Fn:   calc.Func2(DINSet), Go: "pressure.DINSet", Source: "din-memory",
	Limits: calc.Text("For 5 to 20 h. The growth is 0.03 for F1, 0.053 for F2, 0.077 for F3 and 0.14 for F4."),
}

var eqDINCool = &calc.Formula{
	ID: "cool", Title: calc.Text("Temperature factor"),
	Expr: "max(1, 1 + 0.03*(T_r - T))", Result: calc.Var{Symbol: "f_T", Meaning: meansCool},
	Vars: []calc.Var{
		{Symbol: "T_r", Meaning: calc.Text("temperature the setting time holds for"), Unit: "°C"},
		{Symbol: "T", Meaning: meansTC, Unit: "°C"},
	},
	Fn: calc.Func2(DINCool), Go: "pressure.DINCool", Source: "din-memory",
	Limits: calc.Text("Warmer concrete earns no credit."),
}

var eqDINStiff = &calc.Formula{
	ID: "stiff", Title: calc.Text("Pressure of F1 to F4"),
	Expr: "max(25, (a*v + b)*K_1*f_T*gamma/25)", Result: calc.Var{Symbol: "sigma", Meaning: meansP, Unit: "kPa"},
	Vars: []calc.Var{
		{Symbol: "a", Meaning: calc.Text("growth with the rise, by class")},
		{Symbol: "b", Meaning: calc.Text("pressure at rest, by class"), Unit: "kPa"},
		{Symbol: "v", Meaning: meansR, Unit: "m/h"}, {Symbol: "K_1", Meaning: meansK1}, {Symbol: "f_T", Meaning: meansCool},
		{Symbol: "gamma", Meaning: meansW, Unit: "kN/m³"},
	},
	Fn: calc.FuncN(func(v []float64) float64 { return DINStiff(v[0], v[1], v[2], v[3], v[4], v[5]) }),
	Go: "pressure.DINStiff", Source: "din-memory",
	Limits: calc.Text("Rise to 7 m/h, height to 10 m, placed from the top, poker inside. By class: 5v + 21, 10v + 19, 14v + 18, 17v + 17."),
}

var eqDINFlowing = &calc.Formula{
	ID: "flowing", Title: calc.Text("Pressure of F5, F6 and SCC"),
	Expr: "max(30, (1 + c*v*t_E)*gamma*f_T)", Result: calc.Var{Symbol: "sigma", Meaning: meansP, Unit: "kPa"},
	Vars: []calc.Var{
		{Symbol: "c", Meaning: calc.Text("share of the rise that stays fluid, by class")},
		{Symbol: "v", Meaning: meansR, Unit: "m/h"}, {Symbol: "t_E", Meaning: meansSet, Unit: "h"},
		{Symbol: "f_T", Meaning: meansCool}, {Symbol: "gamma", Meaning: meansW, Unit: "kN/m³"},
	},
	Fn: calc.Func5(DINFlowing), Go: "pressure.DINFlowing", Source: "din",
	Limits: calc.Text("Rise to 7 m/h, height to 10 m, placed from the top. The share is 0.24 for F5, 0.304 for F6 and 0.26 for SCC."),
}
