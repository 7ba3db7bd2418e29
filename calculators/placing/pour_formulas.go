package placing

import "coursebook/calculators/calc"

// What the symbols of the pour's formulas mean.
const (
	meansPumping = calc.Text("pour-time.means.pumping: first to last concrete")
	meansTotal   = calc.Text("pour-time.means.total: all in")
)

var pumpingOf = &calc.Formula{
	ID: "pumping", Title: calc.Text("pour-time.f.pumping: First to last concrete"), Expr: "V/(Q*m)",
	Result: calc.Var{Symbol: "P", Meaning: meansPumping, Unit: "h", US: "h"},
	Vars: []calc.Var{{Symbol: "V", Meaning: calc.Text("pour-time.means.volume: volume"), Unit: "m³", US: "yd³"},
		{Symbol: "Q", Meaning: calc.Text("pour-time.means.rate: pump rate while it runs"), Unit: "m³/h", US: "yd³/h"},
		{Symbol: "m", Meaning: calc.Text("pour-time.means.share: share of the time the pump runs")}},
	Fn: calc.Func3(Pumping), Go: "placing.Pumping", Source: "step17",
}

var shiftOf = &calc.Formula{
	ID: "total", Title: calc.Text("pour-time.f.total: All in"), Expr: "a + P + b",
	Result: calc.Var{Symbol: "T", Meaning: meansTotal, Unit: "h", US: "h"},
	Vars: []calc.Var{{Symbol: "a", Meaning: calc.Text("pour-time.means.set-up: set-up"), Unit: "h", US: "h"}, {Symbol: "P", Meaning: meansPumping, Unit: "h", US: "h"},
		{Symbol: "b", Meaning: calc.Text("pour-time.means.clean-up: clean-up"), Unit: "h", US: "h"}},
	Fn: calc.Func3(Shift), Go: "placing.Shift", Source: "practice",
}

var wholeOf = &calc.Formula{
	ID: "booked", Title: calc.Text("pour-time.f.booked: Up to the whole hour"), Expr: "ceil(P)",
	Result: calc.Var{Symbol: "B", Meaning: calc.Text("pour-time.means.booked: hours to book"), Unit: "h", US: "h"},
	Vars:   []calc.Var{{Symbol: "P", Meaning: meansPumping, Unit: "h", US: "h"}},
	Fn:     calc.Func1(WholeHours), Go: "placing.WholeHours", Source: "en5151",
}

var crewOf = &calc.Formula{
	ID: "crew-hours", Title: calc.Text("pour-time.f.crew-hours: Crew hours"), Expr: "n*T",
	Result: calc.Var{Symbol: "H", Meaning: calc.Text("pour-time.means.crew-hours: crew hours"), Unit: "h", US: "h"},
	Vars:   []calc.Var{{Symbol: "n", Meaning: calc.Text("pour-time.means.crew: people in the crew")}, {Symbol: "T", Meaning: meansTotal, Unit: "h", US: "h"}},
	Fn:     calc.Func2(CrewHours), Go: "placing.CrewHours", Source: "practice",
}

var finishOf = &calc.Formula{
	ID: "finish", Title: calc.Text("pour-time.f.finish: End by the clock"), Expr: "S + T",
	Result: calc.Var{Symbol: "F", Meaning: calc.Text("pour-time.means.finish: end, hours of the day"), Unit: "h", US: "h"},
	Vars:   []calc.Var{{Symbol: "S", Meaning: calc.Text("pour-time.means.start: start, hours of the day"), Unit: "h", US: "h"}, {Symbol: "T", Meaning: meansTotal, Unit: "h", US: "h"}},
	Fn:     calc.Func2(Finish), Go: "placing.Finish", Source: "practice",
}

var latestOf = &calc.Formula{
	ID: "latest", Title: calc.Text("pour-time.f.latest: Latest start"), Expr: "D - T",
	Result: calc.Var{Symbol: "S", Meaning: calc.Text("pour-time.means.latest: latest start, hours of the day"), Unit: "h", US: "h"},
	Vars:   []calc.Var{{Symbol: "D", Meaning: calc.Text("pour-time.means.done-by: done by, hours of the day"), Unit: "h", US: "h"}, {Symbol: "T", Meaning: meansTotal, Unit: "h", US: "h"}},
	Fn:     calc.Func2(LatestStart), Go: "placing.LatestStart", Source: "practice",
}
