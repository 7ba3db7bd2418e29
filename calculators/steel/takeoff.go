package steel

import (
	"math"

	"coursebook/calculators/calc"
)

const (
	meansRun    = calc.Text("length to cover")
	meansLap    = calc.Text("lap length")
	meansStock  = calc.Text("stock length")
	meansPieces = calc.Text("number of pieces")
)

// BarCount is the number of bars along a length, first and last at the same
// distance from its ends:
//
//	n = ⌈(L − 2·e)/s⌉ + 1
//
// with the length L, the distance e and the greatest spacing s in one unit.
// The last space may be smaller. Source: arithmetic of take-off.
func BarCount(length, edge, spacing float64) float64 {
	return calc.Ceil((length-float64(2*edge))/spacing) + 1
}

// BarCountFormula declares BarCount.
var BarCountFormula = &calc.Formula{ID: "count", Title: calc.Text("Bars along a length"), Expr: "ceil((L - 2*e)/s) + 1",
	Result: calc.Var{Symbol: "n", Meaning: meansN},
	Vars: []calc.Var{{Symbol: "L", Meaning: meansRun, Unit: "m", US: "ft"},
		{Symbol: "e", Meaning: calc.Text("first bar from the end"), Unit: "m", US: "ft"},
		{Symbol: "s", Meaning: calc.Text("greatest spacing"), Unit: "m", US: "ft"}},
	Fn: calc.Func3(BarCount), Go: "steel.BarCount", Source: "count",
	Limits: calc.Text("Rounded up: no space is larger than the spacing, the last may be smaller.")}

// Pieces is the number of stock bars, lapped end to end, that cover a length:
//
//	n = max(1, ⌈(L − l)/(S − l)⌉)
//
// with the length L, the lap l and the stock length S in one unit, l below S.
// Source: arithmetic of take-off: n bars and n − 1 laps.
func Pieces(length, lap, stock float64) float64 {
	return math.Max(1, calc.Ceil((length-lap)/(stock-lap)))
}

// PiecesFormula declares Pieces.
var PiecesFormula = &calc.Formula{
	ID:     "pieces",
	Title:  calc.Text("Lapped pieces for a run"),
	Expr:   "max(1, ceil((L - l)/(S - l)))",
	Result: calc.Var{Symbol: "n", Meaning: meansPieces},
	Vars: []calc.Var{
		{Symbol: "L", Meaning: meansRun, Unit: "m", US: "ft"},
		{Symbol: "l", Meaning: meansLap, Unit: "m", US: "ft"},
		{Symbol: "S", Meaning: meansStock, Unit: "m", US: "ft"},
	},
	Fn:     calc.Func3(Pieces),
	Go:     "steel.Pieces",
	Source: "count",
}

// LappedLength is the steel in a run of n lapped pieces: L + (n − 1)·l, in
// the unit of the lengths. Source: arithmetic of take-off.
func LappedLength(length, pieces, lap float64) float64 { return length + float64((pieces-1)*lap) }

// LappedLengthFormula declares LappedLength.
var LappedLengthFormula = &calc.Formula{ID: "lapped", Title: calc.Text("Steel in a lapped run"), Expr: "L + (n - 1)*l",
	Result: calc.Var{Symbol: "L_s", Meaning: calc.Text("length of steel"), Unit: "m", US: "ft"},
	Vars: []calc.Var{
		{Symbol: "L", Meaning: meansRun, Unit: "m", US: "ft"},
		{Symbol: "n", Meaning: meansPieces},
		{Symbol: "l", Meaning: meansLap, Unit: "m", US: "ft"},
	},
	Fn: calc.Func3(LappedLength), Go: "steel.LappedLength", Source: "count"}

// StockBars is the number of stock bars from which n pieces of one length are cut:
//
//	N = ⌈n/⌊S/L⌋⌉
//
// with the stock length S and the piece L, no longer than S, in one unit.
// Offcuts are not used. Source: arithmetic of take-off.
func StockBars(pieces, stock, length float64) float64 {
	return calc.Ceil(pieces / math.Floor(stock/length+calc.Slack))
}

// StockBarsFormula declares StockBars.
var StockBarsFormula = &calc.Formula{
	ID:     "stock",
	Title:  calc.Text("Stock bars for cut pieces"),
	Expr:   "ceil(n/floor(S/L))",
	Result: calc.Var{Symbol: "N", Meaning: calc.Text("stock bars")},
	Vars: []calc.Var{{Symbol: "n", Meaning: meansPieces}, {Symbol: "S", Meaning: meansStock, Unit: "m", US: "ft"},
		{Symbol: "L", Meaning: calc.Text("length of a piece"), Unit: "m", US: "ft"}},
	Fn:     calc.Func3(StockBars),
	Go:     "steel.StockBars",
	Source: "count",
	Limits: calc.Text("For pieces no longer than the stock. Off-cuts are not used again."),
}

// WithWaste is an amount with a fraction of waste added, W = W_0·(1 + w).
// Source: arithmetic.
func WithWaste(weight, waste float64) float64 { return weight * (1 + waste) }

// WithWasteFormula declares WithWaste.
var WithWasteFormula = &calc.Formula{ID: "waste", Title: calc.Text("With waste"), Expr: "W_0*(1 + w)",
	Result: calc.Var{Symbol: "W", Meaning: calc.Text("weight with waste"), Unit: "kg", US: "lb"},
	Vars: []calc.Var{{Symbol: "W_0", Meaning: calc.Text("weight in the wall"), Unit: "kg", US: "lb"},
		{Symbol: "w", Meaning: calc.Text("share of waste")}},
	Fn: calc.Func2(WithWaste), Go: "steel.WithWaste", Source: "count"}
