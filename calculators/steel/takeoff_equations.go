package steel

import "coursebook/calculators/calc"

const (
	meansRun    = calc.Text("length to cover")
	meansLap    = calc.Text("lap length")
	meansStock  = calc.Text("stock length")
	meansPieces = calc.Text("number of pieces")
)

var barCount = &calc.Formula{ID: "count", Title: calc.Text("Bars along a length"), Expr: "ceil((L - 2*e)/s) + 1",
	Result: calc.Var{Symbol: "n", Meaning: meansN},
	Vars: []calc.Var{{Symbol: "L", Meaning: meansRun, Unit: "m", US: "ft"},
		{Symbol: "e", Meaning: calc.Text("first bar from the end"), Unit: "m", US: "ft"},
		{Symbol: "s", Meaning: calc.Text("greatest spacing"), Unit: "m", US: "ft"}},
	Fn: calc.Func3(BarCount), Go: "steel.BarCount", Source: "count",
	Limits: calc.Text("Rounded up: no space is larger than the spacing, the last may be smaller.")}

var pieces = &calc.Formula{ID: "pieces", Title: calc.Text("Lapped pieces for a run"), Expr: "max(1, ceil((L - l)/(S - l)))",
	Result: calc.Var{Symbol: "n", Meaning: meansPieces},
	Vars: []calc.Var{{Symbol: "L", Meaning: meansRun, Unit: "m", US: "ft"}, {Symbol: "l", Meaning: meansLap, Unit: "m", US: "ft"},
		{Symbol: "S", Meaning: meansStock, Unit: "m", US: "ft"}},
	Fn: calc.Func3(Pieces), Go: "steel.Pieces", Source: "count"}

var lappedLength = &calc.Formula{ID: "lapped", Title: calc.Text("Steel in a lapped run"), Expr: "L + (n - 1)*l",
	Result: calc.Var{Symbol: "L_s", Meaning: calc.Text("length of steel"), Unit: "m", US: "ft"},
	Vars:   []calc.Var{{Symbol: "L", Meaning: meansRun, Unit: "m", US: "ft"}, {Symbol: "n", Meaning: meansPieces}, {Symbol: "l", Meaning: meansLap, Unit: "m", US: "ft"}},
	Fn:     calc.Func3(LappedLength), Go: "steel.LappedLength", Source: "count"}

var stockBars = &calc.Formula{ID: "stock", Title: calc.Text("Stock bars for cut pieces"), Expr: "ceil(n/floor(S/L))",
	Result: calc.Var{Symbol: "N", Meaning: calc.Text("stock bars")},
	Vars: []calc.Var{{Symbol: "n", Meaning: meansPieces}, {Symbol: "S", Meaning: meansStock, Unit: "m", US: "ft"},
		{Symbol: "L", Meaning: calc.Text("length of a piece"), Unit: "m", US: "ft"}},
	Fn: calc.Func3(StockBars), Go: "steel.StockBars", Source: "count",
	Limits: calc.Text("For pieces no longer than the stock. Off-cuts are not used again.")}

var withWaste = &calc.Formula{ID: "waste", Title: calc.Text("With waste"), Expr: "W_0*(1 + w)",
	Result: calc.Var{Symbol: "W", Meaning: calc.Text("weight with waste"), Unit: "kg", US: "lb"},
	Vars: []calc.Var{{Symbol: "W_0", Meaning: calc.Text("weight in the wall"), Unit: "kg", US: "lb"},
		{Symbol: "w", Meaning: calc.Text("share of waste")}},
	Fn: calc.Func2(WithWaste), Go: "steel.WithWaste", Source: "count"}
