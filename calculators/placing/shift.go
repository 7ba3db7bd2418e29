package placing

import "coursebook/calculators/calc"

// Meanings of the symbols.
const (
	meansPumping = calc.Text("first to last concrete")
	meansTotal   = calc.Text("all in")
)

// Pumping is the time from first to last concrete, T = V/(Q·m), with m the
// fraction of that time in which the pump runs. Any coherent units.
// Source: US Army EN5466, step 17.
func Pumping(volume, flow, share float64) float64 { return volume / (flow * share) }

// PumpingFormula declares Pumping.
var PumpingFormula = &calc.Formula{
	ID: "pumping", Title: calc.Text("First to last concrete"), Expr: "V/(Q*m)",
	Result: calc.Var{Symbol: "P", Meaning: meansPumping, Unit: "h", US: "h"},
	Vars: []calc.Var{{Symbol: "V", Meaning: calc.Text("volume"), Unit: "m³", US: "yd³"},
		{Symbol: "Q", Meaning: calc.Text("pump rate while it runs"), Unit: "m³/h", US: "yd³/h"},
		{Symbol: "m", Meaning: calc.Text("share of the time the pump runs")}},
	Fn: calc.Func3(Pumping), Go: "placing.Pumping", Source: "step17",
}

// Shift is set-up, pumping and clean-up together, in one unit of time.
// Source: arithmetic.
func Shift(setUp, pumping, cleanUp float64) float64 { return setUp + pumping + cleanUp }

// ShiftFormula declares Shift.
var ShiftFormula = &calc.Formula{
	ID: "total", Title: calc.Text("All in"), Expr: "a + P + b",
	Result: calc.Var{Symbol: "T", Meaning: meansTotal, Unit: "h", US: "h"},
	Vars: []calc.Var{
		{Symbol: "a", Meaning: calc.Text("set-up"), Unit: "h", US: "h"},
		{Symbol: "P", Meaning: meansPumping, Unit: "h", US: "h"},
		{Symbol: "b", Meaning: calc.Text("clean-up"), Unit: "h", US: "h"},
	},
	Fn: calc.Func3(Shift), Go: "placing.Shift", Source: "practice",
}

// WholeHours is a time rounded up to whole hours, for booking, in h.
// Source: US Army EN5151, steps 14 to 17.
func WholeHours(hours float64) float64 { return calc.Ceil(hours) }

// WholeHoursFormula declares WholeHours.
var WholeHoursFormula = &calc.Formula{
	ID: "booked", Title: calc.Text("Up to the whole hour"), Expr: "ceil(T)",
	Result: calc.Var{Symbol: "B", Meaning: calc.Text("hours to book"), Unit: "h", US: "h"},
	Vars:   []calc.Var{{Symbol: "T", Meaning: meansTotal, Unit: "h", US: "h"}},
	Fn:     calc.Func1(WholeHours), Go: "placing.WholeHours", Source: "en5151",
}

// CrewHours is paid time, n people for T hours. Source: arithmetic.
func CrewHours(people, hours float64) float64 { return people * hours }

// CrewHoursFormula declares CrewHours.
var CrewHoursFormula = &calc.Formula{
	ID: "crew-hours", Title: calc.Text("Crew hours"), Expr: "n*T",
	Result: calc.Var{Symbol: "H", Meaning: calc.Text("crew hours"), Unit: "h", US: "h"},
	Vars: []calc.Var{
		{Symbol: "n", Meaning: calc.Text("people in the crew")},
		{Symbol: "T", Meaning: meansTotal, Unit: "h", US: "h"},
	},
	Fn: calc.Func2(CrewHours), Go: "placing.CrewHours", Source: "practice",
}

// Finish is the end of a shift in hours of the day, S + T; above 24 it is on the
// next day. Source: arithmetic.
func Finish(start, total float64) float64 { return start + total }

// FinishFormula declares Finish.
var FinishFormula = &calc.Formula{
	ID: "finish", Title: calc.Text("End by the clock"), Expr: "S + T",
	Result: calc.Var{Symbol: "F", Meaning: calc.Text("end, hours of the day"), Unit: "h", US: "h"},
	Vars: []calc.Var{
		{Symbol: "S", Meaning: calc.Text("start, hours of the day"), Unit: "h", US: "h"},
		{Symbol: "T", Meaning: meansTotal, Unit: "h", US: "h"},
	},
	Fn: calc.Func2(Finish), Go: "placing.Finish", Source: "practice",
}

// LatestStart is the latest start of a shift that ends by an hour of the day,
// D − T; below 0 it is on the day before. Source: arithmetic.
func LatestStart(done, total float64) float64 { return done - total }

// LatestStartFormula declares LatestStart.
var LatestStartFormula = &calc.Formula{
	ID: "latest", Title: calc.Text("Latest start"), Expr: "D - T",
	Result: calc.Var{Symbol: "S", Meaning: calc.Text("latest start, hours of the day"), Unit: "h", US: "h"},
	Vars: []calc.Var{
		{Symbol: "D", Meaning: calc.Text("done by, hours of the day"), Unit: "h", US: "h"},
		{Symbol: "T", Meaning: meansTotal, Unit: "h", US: "h"},
	},
	Fn: calc.Func2(LatestStart), Go: "placing.LatestStart", Source: "practice",
}
