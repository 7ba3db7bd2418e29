package steel

import (
	"math"
	"slices"

	"coursebook/calculators/calc"
)

// LeastFromEnd is the least distance of an anchor bolt from the end of a plate
// piece, 7·d. Any unit of length. Source: IRC R403.1.6.
func LeastFromEnd(diameter float64) float64 { return 7 * diameter }

// LeastFromEndFormula declares LeastFromEnd.
var LeastFromEndFormula = &calc.Formula{
	ID: "end-least", Title: calc.Text("Least distance from an end"), Expr: "7*d",
	Result: calc.Var{Symbol: "e_l", Meaning: calc.Text("least distance from an end"), Unit: "mm", US: "in"},
	Vars:   []calc.Var{{Symbol: "d", Meaning: calc.Text("bolt diameter"), Unit: "mm", US: "in"}},
	Fn:     calc.Func1(LeastFromEnd), Go: "steel.LeastFromEnd", Source: "irc",
}

// BoltsInPiece is the number of bolts in a plate piece that nothing blocks: one
// at e from each end and even gaps of at most s between, ⌈(L − 2e)/s⌉ + 1, but at
// least two. Limits: L over 2e, s above 0. Any unit of length. Source: IRC
// R403.1.6.
func BoltsInPiece(length, end, spacing float64) float64 {
	return math.Max(1, calc.Ceil((length-2*end)/spacing)) + 1
}

// BoltsInPieceFormula declares BoltsInPiece.
var BoltsInPieceFormula = &calc.Formula{
	ID: "bolts", Title: calc.Text("Bolts in a piece"), Expr: "max(1, ceil((L - 2*e)/s)) + 1",
	Result: calc.Var{Symbol: "n", Meaning: calc.Text("bolts in the piece")},
	Vars: []calc.Var{
		{Symbol: "L", Meaning: calc.Text("length of the piece"), Unit: "m", US: "ft"},
		{Symbol: "e", Meaning: calc.Text("bolt to the end of the piece"), Unit: "m", US: "ft"},
		{Symbol: "s", Meaning: calc.Text("largest spacing"), Unit: "m", US: "ft"},
	},
	Fn: calc.Func3(BoltsInPiece), Go: "steel.BoltsInPiece", Source: "irc",
	Limits: calc.Text("Where nothing is in the way."),
}

// Span is a length along a wall, in m from its start.
type Span struct{ From, To float64 }

// Bolt is the place of one anchor bolt.
type Bolt struct {
	At      float64 // m from the start of the wall
	End     bool    // one of the two bolts near an end
	Blocked bool    // no place was free: what blocks it has to move
}

// BoltRules holds the distances of a layout, in m.
type BoltRules struct {
	Spacing              float64 // largest, between bolts of a piece
	End                  float64 // wanted from the end of a piece
	EndLeast, EndLargest float64 // allowed from the end of a piece
}

// LayOutBolts places the bolts of one plate piece: one near each end, and the
// fewest between that keep the spacing, as even as the blocked spans allow. The
// piece is at least three times EndLeast long. Where a bolt that is required has
// no free place, it is placed all the same and marked Blocked.
func LayOutBolts(piece Span, rules BoltRules, blocked []Span) []Bolt {
	half := (piece.To - piece.From) / 2
	largest := math.Min(rules.EndLargest, half-rules.EndLeast/2)
	end := math.Max(rules.EndLeast, math.Min(rules.End, largest))
	first := endBolt(piece.From+end, Span{piece.From + rules.EndLeast, piece.From + largest}, blocked)
	last := endBolt(piece.To-end, Span{piece.To - largest, piece.To - rules.EndLeast}, blocked)
	farthest, blockedAt := reach(first.At, last.At, rules.Spacing, blocked)
	bolts := []Bolt{first}
	if blockedAt {
		for _, at := range farthest {
			bolts = append(bolts, Bolt{At: at, Blocked: !free(at, blocked)})
		}
		return append(bolts, last)
	}
	nearest := reachBack(first.At, last.At, rules.Spacing, blocked, len(farthest))
	before := first.At
	for i, far := range farthest {
		even := first.At + (last.At-first.At)*float64(i+1)/float64(len(farthest)+1)
		at, ok := closest(even, Span{nearest[i], math.Min(far, before+rules.Spacing)}, blocked)
		if !ok {
			at = far
		}
		bolts = append(bolts, Bolt{At: at})
		before = at
	}
	return append(bolts, last)
}

// endBolt is a bolt within a span, as close to at as what is blocked allows.
func endBolt(at float64, within Span, blocked []Span) Bolt {
	if x, ok := closest(at, within, blocked); ok {
		return Bolt{At: x, End: true}
	}
	return Bolt{At: at, End: true, Blocked: true}
}

// reach lists the bolts between first and last, each as far from the one before
// as spacing and blocked spans allow. none reports a stretch without a free place.
func reach(first, last, spacing float64, blocked []Span) (at []float64, none bool) {
	for last-first > spacing*(1+calc.Slack) {
		x, ok := closest(first+spacing, Span{first + spacing/100, first + spacing}, blocked)
		if !ok {
			x, none = first+spacing, true
		}
		at = append(at, x)
		first = x
	}
	return at, none
}

// reachBack lists n bolts between first and last, each as far from the one after
// as spacing and blocked spans allow, but not before first.
func reachBack(first, last, spacing float64, blocked []Span, n int) []float64 {
	at := make([]float64, n)
	for i := n - 1; i >= 0; i-- {
		x, ok := closest(math.Max(first, last-spacing), Span{math.Max(first, last-spacing), last}, blocked)
		if !ok {
			x = math.Max(first, last-spacing)
		}
		at[i] = x
		last = x
	}
	return at
}

// closest returns the free place within a span that is closest to at. A place
// that misses the span by a rounding error is within it.
func closest(at float64, within Span, blocked []Span) (x float64, ok bool) {
	candidates := []float64{math.Min(math.Max(at, within.From), within.To)}
	for _, b := range blocked {
		candidates = append(candidates, b.From, b.To)
	}
	for _, c := range candidates {
		if c < within.From-calc.Slack || c > within.To+calc.Slack || !free(c, blocked) {
			continue
		}
		if !ok || math.Abs(c-at) < math.Abs(x-at) {
			x, ok = c, true
		}
	}
	return x, ok
}

// free reports whether a place is outside every blocked span. An end of a span is
// free.
func free(at float64, blocked []Span) bool {
	return !slices.ContainsFunc(blocked, func(b Span) bool { return at > b.From+calc.Slack && at < b.To-calc.Slack })
}
