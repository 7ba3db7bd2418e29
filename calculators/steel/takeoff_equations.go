package steel

import "coursebook/calculators/calc"

const (
	meansRun    = calc.Text("bar-take-off.means.run: length to cover")
	meansLap    = calc.Text("bar-take-off.means.lap: lap length")
	meansStock  = calc.Text("bar-take-off.means.stock: stock length")
	meansPieces = calc.Text("bar-take-off.means.pieces: number of pieces")
)

var barCount = &calc.Formula{ID: "count", Title: calc.Text("bar-take-off.eq.count: Bars along a length"), Expr: "ceil((L - 2*e)/s) + 1",
	Result: calc.Var{Symbol: "n", Meaning: meansN},
	Vars: []calc.Var{{Symbol: "L", Meaning: meansRun, Unit: "m", US: "ft"},
		{Symbol: "e", Meaning: calc.Text("bar-take-off.means.edge: first bar from the end"), Unit: "m", US: "ft"},
		{Symbol: "s", Meaning: calc.Text("bar-take-off.means.spacing: greatest spacing"), Unit: "m", US: "ft"}},
	Fn: calc.Func3(BarCount), Go: "steel.BarCount", Source: "count",
	Limits: calc.Text("bar-take-off.limits.count: Rounded up: no space is larger than the spacing, the last may be smaller.")}

var pieces = &calc.Formula{ID: "pieces", Title: calc.Text("bar-take-off.eq.pieces: Lapped pieces for a run"), Expr: "max(1, ceil((L - l)/(S - l)))",
	Result: calc.Var{Symbol: "n", Meaning: meansPieces},
	Vars: []calc.Var{{Symbol: "L", Meaning: meansRun, Unit: "m", US: "ft"}, {Symbol: "l", Meaning: meansLap, Unit: "m", US: "ft"},
		{Symbol: "S", Meaning: meansStock, Unit: "m", US: "ft"}},
	Fn: calc.Func3(Pieces), Go: "steel.Pieces", Source: "count"}

var lappedLength = &calc.Formula{ID: "lapped", Title: calc.Text("bar-take-off.eq.lapped: Steel in a lapped run"), Expr: "L + (n - 1)*l",
	Result: calc.Var{Symbol: "L_s", Meaning: calc.Text("bar-take-off.means.steel: length of steel"), Unit: "m", US: "ft"},
	Vars:   []calc.Var{{Symbol: "L", Meaning: meansRun, Unit: "m", US: "ft"}, {Symbol: "n", Meaning: meansPieces}, {Symbol: "l", Meaning: meansLap, Unit: "m", US: "ft"}},
	Fn:     calc.Func3(LappedLength), Go: "steel.LappedLength", Source: "count"}

var stockBars = &calc.Formula{ID: "stock", Title: calc.Text("bar-take-off.eq.stock: Stock bars for cut pieces"), Expr: "ceil(n/floor(S/L))",
	Result: calc.Var{Symbol: "N", Meaning: calc.Text("bar-take-off.means.stock-bars: stock bars")},
	Vars: []calc.Var{{Symbol: "n", Meaning: meansPieces}, {Symbol: "S", Meaning: meansStock, Unit: "m", US: "ft"},
		{Symbol: "L", Meaning: calc.Text("bar-take-off.means.piece: length of a piece"), Unit: "m", US: "ft"}},
	Fn: calc.Func3(StockBars), Go: "steel.StockBars", Source: "count",
	Limits: calc.Text("bar-take-off.limits.stock: For pieces no longer than the stock. Off-cuts are not used again.")}

var withWaste = &calc.Formula{ID: "waste", Title: calc.Text("bar-take-off.eq.waste: With waste"), Expr: "W_0*(1 + w)",
	Result: calc.Var{Symbol: "W", Meaning: calc.Text("bar-take-off.means.with-waste: weight with waste"), Unit: "kg", US: "lb"},
	Vars: []calc.Var{{Symbol: "W_0", Meaning: calc.Text("bar-take-off.means.net: weight in the wall"), Unit: "kg", US: "lb"},
		{Symbol: "w", Meaning: calc.Text("bar-take-off.means.waste: share of waste")}},
	Fn: calc.Func2(WithWaste), Go: "steel.WithWaste", Source: "count"}
