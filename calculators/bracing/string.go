package bracing

import (
	"math"
	"strconv"

	"coursebook/calculators/calc"
)

// Texts that several formulas share.
var sayOneTurn = calc.Text("travel of one turn")

// Symbols that several formulas share.
var (
	varOff    = small("e", calc.Text("off the line; minus is too near the string"))
	varRun    = large("d", calc.Text("foot of the brace from the wall"))
	varAttach = large("a", calc.Text("height of the brace on the wall"))
	varBelow  = large("f", calc.Text("foot below the wall base"))
	varLong   = large("L", calc.Text("length of the brace"))
	varString = large("h_s", calc.Text("height of the string"))
	varTravel = small("p", sayOneTurn)
	varChange = small("b", calc.Text("change of the brace's length"))
	varAt     = small("x", calc.Text("movement of the wall at the brace"))
	varEnds   = calc.Var{Symbol: "m", Meaning: calc.Text("threaded ends")}
	smallMove = calc.Text("Small movements; the base of the wall stays put.")
)

// SamePlace is far below what a tape shows and far above binary calc.Slack, in m.
const SamePlace = 1e-6

// Thresholds of common practice.
var (
	RoundTurns = 2.0                   // most turns in one go
	TapeSlack  = calc.SI(1.0/32, "in") // half of what a tape shows
)

// The slopes of braces in the Army's method, in degrees.
const (
	LeastSlope = 20
	MostSlope  = 60
)

func small(symbol string, meaning calc.Text) calc.Var {
	return calc.Var{Symbol: symbol, Meaning: meaning, Unit: "mm", US: "in"}
}

func large(symbol string, meaning calc.Text) calc.Var {
	return calc.Var{Symbol: symbol, Meaning: meaning, Unit: "m", US: "ft"}
}

// Inches is the unit of the published plumb tolerance.
type Inches float64

// Deviation is how far the wall is off the string, e = g − k: the gap read at
// a brace less the thickness of the end blocks. Above zero the wall stands
// too far from the string, below zero too near.
//
// Units: any, the same for both. Limits: the string runs free from block to
// block. Source: common practice.
func Deviation(gap, block float64) float64 { return gap - block }

var DeviationFormula = &calc.Formula{
	ID: "deviation", Title: calc.Text("Off the line"), Expr: "g - k", Result: varOff,
	Vars: []calc.Var{small("g", calc.Text("gap read")), small("k", calc.Text("end block"))},
	Fn:   calc.Func2(Deviation), Go: "bracing.Deviation", Source: "practice",
}

// AtBrace is how far the wall must move where the brace holds it so that it
// moves by e at the string, x = e a / h_s. The wall turns about its base, so
// movements grow with height.
//
// Units: m. Limits: the part of the wall at the brace stays straight and its
// base stays put. Source: derived.
func AtBrace(deviation, attach, stringHeight float64) float64 {
	return deviation * attach / stringHeight
}

var AtBraceFormula = &calc.Formula{
	ID: "at-brace", Title: calc.Text("Movement where the brace holds"), Expr: "e*a/h_s", Result: varAt,
	Vars: []calc.Var{varOff, varAttach, varString},
	Fn:   calc.Func3(AtBrace), Go: "bracing.AtBrace", Source: "derived", Limits: smallMove,
}

// BraceChange is the change of a brace's length that moves the wall by x
// level with the ground, b = x d / L = x cos θ.
//
// Derivation: with the base of the wall as origin, the brace's head at height
// a swings to (x, √(a² − x²)); the foot stands at (−d, −f). Then
//
//	L(x)² = (d + x)² + (f + √(a² − x²))²
//	      = L² + 2 d x + 2 f (√(a² − x²) − a)
//
// and so dL/dx = d/L = cos θ at x = 0. The next term is at most about
// x²/(2 L) (1 + |f|/a): for a wall off by 1 in. on an 8 ft brace under 1/100
// in., far below a quarter turn. A longer brace pushes the wall away.
//
// Units: m. Limits: x small beside a and L. Source: derived.
func BraceChange(x, run, length float64) float64 { return x * run / length }

var BraceChangeFormula = &calc.Formula{
	ID: "brace-change", Title: calc.Text("Change of the brace's length"), Expr: "x*d/L", Result: varChange,
	Vars: []calc.Var{varAt, varRun, varLong},
	Fn:   calc.Func3(BraceChange), Go: "bracing.BraceChange", Source: "derived", Limits: smallMove,
}

// TravelByThreads is the travel of one turn from the threads in an inch,
// p = m / N, with m the number of threaded ends: left and right threads of a
// turnbuckle both count.
//
// Units: inches, threads per inch. Limits: single-start threads. Source:
// definition of the thread, ASME B1.1 and B1.5.
func TravelByThreads(ends, perInch float64) Inches { return Inches(ends / perInch) }

var TravelByThreadsFormula = &calc.Formula{
	ID: "travel-by-threads", Title: calc.Text("Travel of one turn, by threads"), Expr: "m/N",
	Result: calc.Var{Symbol: "p", Meaning: sayOneTurn, Unit: "in"},
	Vars:   []calc.Var{varEnds, {Symbol: "N", Meaning: calc.Text("threads in one inch")}},
	Fn: calc.FuncN(
		func(v []float64) float64 { return float64(TravelByThreads(v[0], v[1])) },
	), Go: "bracing.TravelByThreads", Source: "thread",
}

// TravelByPitch is the travel of one turn from the pitch, p = m P.
//
// Units: any length. Limits: single-start threads. Source: as TravelByThreads.
func TravelByPitch(ends, pitch float64) float64 { return ends * pitch }

var TravelByPitchFormula = &calc.Formula{
	ID: "travel-by-pitch", Title: calc.Text("Travel of one turn, by pitch"), Expr: "m*P", Result: varTravel,
	Vars: []calc.Var{varEnds, small("P", calc.Text("pitch of the thread"))},
	Fn:   calc.Func2(TravelByPitch), Go: "bracing.TravelByPitch", Source: "thread",
}

// Turns is the number of turns for a change of length, n = |b| / p. Which way
// to turn is a separate output, in words.
//
// Units: any length, the same for both. Limits: p > 0. Source: definition.
func Turns(change, travel float64) float64 { return math.Abs(change) / travel }

var TurnsFormula = &calc.Formula{
	ID: "turns", Title: calc.Text("Turns of the adjuster"), Expr: "abs(b)/p",
	Result: calc.Var{Symbol: "n", Meaning: calc.Text("turns")}, Vars: []calc.Var{varChange, varTravel},
	Fn: calc.Func2(Turns), Go: "bracing.Turns", Source: "derived",
}

// PerTurn is how far one turn moves the wall at the string,
// y = p (L / d) (h_s / a): AtBrace and BraceChange backwards.
//
// Units: m. Limits: as for those. Source: derived.
func PerTurn(travel, length, run, stringHeight, attach float64) float64 {
	return travel * length / run * stringHeight / attach
}

var PerTurnFormula = &calc.Formula{
	ID: "per-turn", Title: calc.Text("One turn at the string"), Expr: "p*L/d*h_s/a",
	Result: small(
		"y",
		calc.Text("movement at the string"),
	), Vars: []calc.Var{varTravel, varLong, varRun, varString, varAttach},
	Fn: calc.Func5(PerTurn), Go: "bracing.PerTurn", Source: "derived", Limits: smallMove,
}

// PlumbLimit is how far a wall may lean at height h, min(0.003 h, 1 in.).
//
// Units: inches. Limits: heights up to 83 ft 4 in. Source: ACI 117-10,
// section 4.1.1. The 1990 edition allowed 1 in. at any height.
func PlumbLimit(height Inches) Inches { return Inches(math.Min(0.003*float64(height), 1)) }

var PlumbLimitFormula = &calc.Formula{
	ID: "plumb-limit", Title: calc.Text("Plumb limit at the string"), Expr: "min(0.003*h, 1)",
	Result: calc.Var{Symbol: "u", Meaning: calc.Text("most lean at this height"), Unit: "in"},
	Vars:   []calc.Var{{Symbol: "h", Meaning: calc.Text("height of the string"), Unit: "in"}},
	Fn: calc.FuncN(
		func(v []float64) float64 { return float64(PlumbLimit(Inches(v[0]))) },
	), Go: "bracing.PlumbLimit", Source: "aci117",
	Limits: calc.Text("Heights up to 83 ft 4 in. (25.4 m)."),
}

// BowRadius is the radius of a shallow bow, R = L² / (8 s), with L from end
// to end and s the offset in the middle.
//
// Units: m. Limits: s far below L; exact is (L²/4 + s²) / (2 s). Source: chord
// and rise relation.
func BowRadius(length, offset float64) float64 { return length * length / (8 * offset) }

var BowRadiusFormula = &calc.Formula{
	ID: "bow-radius", Title: calc.Text("Radius of a shallow bow"), Expr: "L^2/(8*s)",
	Result: large("R", calc.Text("radius")),
	Vars:   []calc.Var{large("L", calc.Text("length from end to end")), large("s", calc.Text("offset in the middle"))},
	Fn:     calc.Func2(BowRadius), Go: "bracing.BowRadius", Source: "chord",
}

// Line is one reading on its way to an answer.
type Line struct {
	Row    calc.Case
	Nr     int     // of the row as typed, from 1
	Off    float64 // m; above 0 the wall is too far from the string
	Within bool    // of the tolerance
	End    bool    // nearest an end of the string
	Turns  float64
	ToTurn bool
	Order  int // from 1 among the braces to turn
}

func Stiff(in calc.Case) bool { return in.Choice("concrete") == "stiff" }

// Exceeds reports whether x is over a limit by more than the noise of units: a
// reading right on the tolerance is within it.
func Exceeds(x, limit float64) bool { return x > limit+calc.Slack }

// Name is what the brace is called, or the number of its row.
func (l Line) Name() string {
	if name := l.Row.Text("name"); name != "" {
		return name
	}
	return strconv.Itoa(l.Nr)
}

// MoveOf is where the wall must go, seen from the string.
func MoveOf(l Line) string {
	switch {
	case l.Within:
		return "stay"
	case l.Off > 0:
		return "toward"
	}
	return "away"
}

// AtTheBrace converts a movement seen from the string to one seen from the
// brace, and how the adjuster does it. On the brace side the two agree; on the
// other side of the wall they are opposite. A shorter brace pulls the wall
// toward itself.
func AtTheBrace(move, side string) (seen, turn string) {
	if move == "stay" {
		return "stay", "leave"
	}
	if (move == "toward") == (side == "brace") {
		return "toward", "shorten"
	}
	return "away", "lengthen"
}
