package steel

import "math"

// BarCount is how many bars stand along a length, first and last at the same
// distance from its ends:
//
//	n = ⌈(L − 2·e)/s⌉ + 1
//
// with the length L, the distance e and the greatest spacing s in one unit.
// The last space may be smaller. Source: arithmetic of take-off.
func BarCount(length, edge, spacing float64) float64 {
	return math.Ceil((length-float64(2*edge))/spacing) + 1
}

// Pieces is how many stock bars lapped end to end cover a length:
//
//	n = max(1, ⌈(L − l)/(S − l)⌉)
//
// with the length L, the lap l and the stock length S in one unit, l below S.
// Source: arithmetic of take-off: n bars and n − 1 laps.
func Pieces(length, lap, stock float64) float64 {
	return math.Max(1, math.Ceil((length-lap)/(stock-lap)))
}

// LappedLength is the steel in a run of n lapped pieces: L + (n − 1)·l, in
// the unit of the lengths. Source: arithmetic of take-off.
func LappedLength(length, pieces, lap float64) float64 { return length + float64((pieces-1)*lap) }

// StockBars is how many stock bars n pieces of one length are cut from:
//
//	N = ⌈n/⌊S/L⌋⌉
//
// with the stock length S and the piece L, no longer than S, in one unit.
// What is left of a bar is not used again. Source: arithmetic of take-off.
func StockBars(pieces, stock, length float64) float64 {
	return math.Ceil(pieces / math.Floor(stock/length))
}

// WithWaste adds a share of waste: W = W_0·(1 + w). Source: arithmetic.
func WithWaste(weight, waste float64) float64 { return weight * (1 + waste) }
