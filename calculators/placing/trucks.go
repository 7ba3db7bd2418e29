package placing

import (
	"math"

	"coursebook/calculators/calc"
	"coursebook/calculators/geometry"
)

// Meanings of the symbols.
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

// Spacing is the time from one truck to the next that keeps the pump fed,
// s = V/Q: the time the pump takes to empty one. Any coherent units.
// Source: ready-mix producer's guide "Calculating truck requirements".
func Spacing(truck, flow float64) float64 { return truck / flow }

// SpacingFormula declares Spacing.
var SpacingFormula = &calc.Formula{
	ID: "spacing", Title: calc.Text("Time between trucks"), Expr: "V/Q",
	Result: calc.Var{Symbol: "s", Meaning: meansSpacing, Unit: "h", US: "h"},
	Vars: []calc.Var{{Symbol: "V", Meaning: meansTruck, Unit: "m³", US: "yd³"},
		{Symbol: "Q", Meaning: calc.Text("pump rate, stops included"), Unit: "m³/h", US: "yd³/h"}},
	Fn: calc.Func2(Spacing), Go: "placing.Spacing", Source: "guide",
}

// Cycle is a truck's round trip: load + check + haul + wait + discharge +
// wash + return, all in one unit of time. Source: as Spacing.
func Cycle(load, check, haul, wait, discharge, wash, back float64) float64 {
	return load + check + haul + wait + discharge + wash + back
}

// CycleFormula declares Cycle.
var CycleFormula = &calc.Formula{
	ID: "cycle", Title: calc.Text("Round trip"), Expr: "t_l + t_c + t_h + t_w + t_d + t_r + t_b",
	Result: calc.Var{Symbol: "C", Meaning: meansCycle, Unit: "min", US: "min"},
	Vars: []calc.Var{
		{Symbol: "t_l", Meaning: meansLoad, Unit: "min", US: "min"},
		{Symbol: "t_c", Meaning: meansCheck, Unit: "min", US: "min"},
		{
			Symbol:  "t_h",
			Meaning: meansHaul,
			Unit:    "min",
			US:      "min",
		},
		{Symbol: "t_w", Meaning: meansWait, Unit: "min", US: "min"},
		{Symbol: "t_d", Meaning: meansUnload, Unit: "min", US: "min"},
		{Symbol: "t_r", Meaning: calc.Text("washing out"), Unit: "min", US: "min"},
		{Symbol: "t_b", Meaning: calc.Text("drive back"), Unit: "min", US: "min"},
	},
	Fn: calc.FuncN(
		func(v []float64) float64 { return Cycle(v[0], v[1], v[2], v[3], v[4], v[5], v[6]) },
	), Go: "placing.Cycle", Source: "guide",
}

// Trucks is the number of trucks that keeps the pump fed, n = min(⌈C/s⌉, loads).
// Cycle and spacing in one unit of time, spacing above 0. Source: as Spacing.
func Trucks(cycle, spacing, loads float64) float64 {
	return math.Min(calc.Ceil(cycle/spacing), loads)
}

// TrucksFormula declares Trucks.
var TrucksFormula = &calc.Formula{
	ID: "trucks", Title: calc.Text("Trucks that keep the pump fed"), Expr: "min(ceil(C/s), N)",
	Result: calc.Var{Symbol: "n", Meaning: meansTrucks},
	Vars: []calc.Var{
		{Symbol: "C", Meaning: meansCycle, Unit: "min", US: "min"},
		{Symbol: "s", Meaning: meansSpacing, Unit: "min", US: "min"},
		{Symbol: "N", Meaning: meansLoads},
	},
	Fn: calc.Func3(Trucks), Go: "placing.Trucks", Source: "guide",
	Limits: calc.Text("One truck pulls up as the last one leaves."),
}

// LoadsFormula declares Loads.
var LoadsFormula = &calc.Formula{
	ID: "loads", Title: calc.Text("Loads"), Expr: "ceil(V_o/V)",
	Result: calc.Var{Symbol: "N", Meaning: meansLoads},
	Vars: []calc.Var{
		{Symbol: "V_o", Meaning: calc.Text("order"), Unit: "m³", US: "yd³"},
		{Symbol: "V", Meaning: meansTruck, Unit: "m³", US: "yd³"},
	},
	Fn: calc.Func2(geometry.Loads), Go: "geometry.Loads", Source: "guide",
}

// AgeAtEnd is the age of the last concrete out of a truck: load + check +
// haul + wait + discharge, all in one unit of time. ASTM C94 counts
// from the contact of water and cement, so from loading.
func AgeAtEnd(load, check, haul, wait, discharge float64) float64 {
	return load + check + haul + wait + discharge
}

// AgeAtEndFormula declares AgeAtEnd.
var AgeAtEndFormula = &calc.Formula{
	ID: "age", Title: calc.Text("Age of the last concrete out"), Expr: "t_l + t_c + t_h + t_w + t_d",
	Result: calc.Var{Symbol: "A", Meaning: calc.Text("age at the end of discharge"), Unit: "min", US: "min"},
	Vars: []calc.Var{
		{Symbol: "t_l", Meaning: meansLoad, Unit: "min", US: "min"},
		{Symbol: "t_c", Meaning: meansCheck, Unit: "min", US: "min"},
		{
			Symbol:  "t_h",
			Meaning: meansHaul,
			Unit:    "min",
			US:      "min",
		},
		{Symbol: "t_w", Meaning: meansWait, Unit: "min", US: "min"},
		{Symbol: "t_d", Meaning: meansUnload, Unit: "min", US: "min"},
	},
	Fn: calc.Func5(AgeAtEnd), Go: "placing.AgeAtEnd", Source: "c94-old",
}

// PumpWait is the time that the pump waits for each of n trucks,
// max(0, C/n − s). Any unit of time, n above 0. Source: arithmetic.
func PumpWait(cycle, trucks, spacing float64) float64 {
	return math.Max(0, cycle/trucks-spacing)
}

// PumpWaitFormula declares PumpWait.
var PumpWaitFormula = &calc.Formula{
	ID: "pump-wait", Title: calc.Text("Pump waits for each truck"), Expr: "max(0, C/n - s)",
	Result: calc.Var{Symbol: "w_p", Meaning: calc.Text("pump stands"), Unit: "min", US: "min"},
	Vars: []calc.Var{{Symbol: "C", Meaning: meansCycle, Unit: "min", US: "min"}, {Symbol: "n", Meaning: meansTrucks},
		{Symbol: "s", Meaning: meansSpacing, Unit: "min", US: "min"}},
	Fn: calc.Func3(PumpWait), Go: "placing.PumpWait", Source: "practice",
}

// TruckWait is the time that each of n trucks waits in a round trip,
// max(0, n·s − C). Any unit of time. Source: arithmetic.
func TruckWait(trucks, spacing, cycle float64) float64 {
	return math.Max(0, float64(trucks*spacing)-cycle)
}

// TruckWaitFormula declares TruckWait.
var TruckWaitFormula = &calc.Formula{
	ID: "truck-wait", Title: calc.Text("Truck waits on each trip"), Expr: "max(0, n*s - C)",
	Result: calc.Var{Symbol: "w_t", Meaning: calc.Text("truck stands"), Unit: "min", US: "min"},
	Vars: []calc.Var{{Symbol: "n", Meaning: meansTrucks}, {Symbol: "s", Meaning: meansSpacing, Unit: "min", US: "min"},
		{Symbol: "C", Meaning: meansCycle, Unit: "min", US: "min"}},
	Fn: calc.Func3(TruckWait), Go: "placing.TruckWait", Source: "practice",
}
