package placing

import "coursebook/calculators/calc"

// What the symbols of the truck formulas mean.
const (
	meansCycle   = calc.Text("round trip of a truck")
	meansSpacing = calc.Text("time between trucks")
	meansTrucks  = calc.Text("trucks on the job")
	meansLoads   = calc.Text("loads")
	meansTruck   = calc.Text("volume of one load")
	meansLoad    = calc.Text("loading")
	meansCheck   = calc.Text("check and rinse")
	meansHaul    = calc.Text("drive to the site")
	meansWait    = calc.Text("wait and slump check")
	meansUnload  = calc.Text("discharge")
)

var spacingOf = &calc.Formula{
	ID: "spacing", Title: calc.Text("Time between trucks"), Expr: "V/Q",
	Result: calc.Var{Symbol: "s", Meaning: meansSpacing, Unit: "h", US: "h"},
	Vars: []calc.Var{{Symbol: "V", Meaning: meansTruck, Unit: "m³", US: "yd³"},
		{Symbol: "Q", Meaning: calc.Text("pump rate, stops included"), Unit: "m³/h", US: "yd³/h"}},
	Fn: calc.Func2(Spacing), Go: "placing.Spacing", Source: "guide",
}

var cycleOf = &calc.Formula{
	ID: "cycle", Title: calc.Text("Round trip"), Expr: "t_l + t_c + t_h + t_w + t_d + t_r + t_b",
	Result: calc.Var{Symbol: "C", Meaning: meansCycle, Unit: "min", US: "min"},
	Vars: []calc.Var{{Symbol: "t_l", Meaning: meansLoad, Unit: "min", US: "min"}, {Symbol: "t_c", Meaning: meansCheck, Unit: "min", US: "min"},
		{Symbol: "t_h", Meaning: meansHaul, Unit: "min", US: "min"}, {Symbol: "t_w", Meaning: meansWait, Unit: "min", US: "min"},
		{Symbol: "t_d", Meaning: meansUnload, Unit: "min", US: "min"},
		{Symbol: "t_r", Meaning: calc.Text("washing out"), Unit: "min", US: "min"},
		{Symbol: "t_b", Meaning: calc.Text("drive back"), Unit: "min", US: "min"}},
	Fn: calc.FuncN(func(v []float64) float64 { return Cycle(v[0], v[1], v[2], v[3], v[4], v[5], v[6]) }), Go: "placing.Cycle", Source: "guide",
}

var loadCount = &calc.Formula{
	ID: "loads", Title: calc.Text("Loads"), Expr: "ceil(V_o/V)",
	Result: calc.Var{Symbol: "N", Meaning: meansLoads},
	Vars:   []calc.Var{{Symbol: "V_o", Meaning: calc.Text("order"), Unit: "m³", US: "yd³"}, {Symbol: "V", Meaning: meansTruck, Unit: "m³", US: "yd³"}},
	Fn:     calc.Func2(Loads), Go: "placing.Loads", Source: "guide",
}

var truckCount = &calc.Formula{
	ID: "trucks", Title: calc.Text("Trucks that keep the pump fed"), Expr: "min(ceil(C/s), N)",
	Result: calc.Var{Symbol: "n", Meaning: meansTrucks},
	Vars: []calc.Var{{Symbol: "C", Meaning: meansCycle, Unit: "min", US: "min"}, {Symbol: "s", Meaning: meansSpacing, Unit: "min", US: "min"},
		{Symbol: "N", Meaning: meansLoads}},
	Fn: calc.Func3(Trucks), Go: "placing.Trucks", Source: "guide",
	Limits: calc.Text("One truck pulls up as the last one leaves."),
}

var ageAtEnd = &calc.Formula{
	ID: "age", Title: calc.Text("Age of the last concrete out"), Expr: "t_l + t_c + t_h + t_w + t_d",
	Result: calc.Var{Symbol: "A", Meaning: calc.Text("age at the end of discharge"), Unit: "min", US: "min"},
	Vars: []calc.Var{{Symbol: "t_l", Meaning: meansLoad, Unit: "min", US: "min"}, {Symbol: "t_c", Meaning: meansCheck, Unit: "min", US: "min"},
		{Symbol: "t_h", Meaning: meansHaul, Unit: "min", US: "min"}, {Symbol: "t_w", Meaning: meansWait, Unit: "min", US: "min"},
		{Symbol: "t_d", Meaning: meansUnload, Unit: "min", US: "min"}},
	Fn: calc.Func5(AgeAtEnd), Go: "placing.AgeAtEnd", Source: "c94-old",
}

var pumpWait = &calc.Formula{
	ID: "pump-wait", Title: calc.Text("Pump waits for each truck"), Expr: "max(0, C/n - s)",
	Result: calc.Var{Symbol: "w_p", Meaning: calc.Text("pump stands"), Unit: "min", US: "min"},
	Vars: []calc.Var{{Symbol: "C", Meaning: meansCycle, Unit: "min", US: "min"}, {Symbol: "n", Meaning: meansTrucks},
		{Symbol: "s", Meaning: meansSpacing, Unit: "min", US: "min"}},
	Fn: calc.Func3(PumpWait), Go: "placing.PumpWait", Source: "practice",
}

var truckWait = &calc.Formula{
	ID: "truck-wait", Title: calc.Text("Truck waits on each trip"), Expr: "max(0, n*s - C)",
	Result: calc.Var{Symbol: "w_t", Meaning: calc.Text("truck stands"), Unit: "min", US: "min"},
	Vars: []calc.Var{{Symbol: "n", Meaning: meansTrucks}, {Symbol: "s", Meaning: meansSpacing, Unit: "min", US: "min"},
		{Symbol: "C", Meaning: meansCycle, Unit: "min", US: "min"}},
	Fn: calc.Func3(TruckWait), Go: "placing.TruckWait", Source: "practice",
}
