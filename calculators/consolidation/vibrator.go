package consolidation

import (
	"math"

	"coursebook/calculators/calc"
)

// overlap is the distance of two places over the radius of action: their fields
// overlap by a quarter of their width.
// Source: ACI 309R, from memory.
const overlap = 1.5

const (
	meansR      = calc.Text("radius of action")
	meansS      = calc.Text("from place to place")
	meansL      = calc.Text("length of wall")
	meansAlong  = calc.Text("places along the wall")
	meansPlaces = calc.Text("places in the lift")
	meansEach   = calc.Text("time for one place")
	meansPass   = calc.Text("time for all places, one vibrator")
	meansFill   = calc.Text("time the pump takes for the lift")
	meansQ      = calc.Text("pump rate")
	meansCount  = calc.Text("vibrators")
)

// Spacing is the distance between places, s = 1.5 R. Any unit of length.
// Source: ACI 309R, from memory.
func Spacing(radius float64) float64 { return overlap * radius }

// SpacingFormula declares Spacing.
var SpacingFormula = &calc.Formula{
	ID: "spacing", Title: calc.Text("From place to place"), Expr: "1.5*R",
	Result: calc.Var{Symbol: "s", Meaning: meansS, Unit: "mm", US: "in"},
	Vars:   []calc.Var{{Symbol: "R", Meaning: meansR, Unit: "mm", US: "in"}},
	Fn:     calc.Func1(Spacing), Go: "consolidation.Spacing", Source: "aci309",
	Limits: calc.Text(
		"The table's radius is for the slump of its group, without ties and bars. The 18 in. (450 mm) of older " +
			"manuals is for a head that reaches 12 in. (300 mm).",
	),
}

// Reach is the half-width that two neighbouring fields cover half way between
// them, √(R² − (s/2)²). Any unit of length. s is below 2 R.
// Source: geometry of two circles.
func Reach(radius, spacing float64) float64 {
	return math.Sqrt(math.Pow(radius, 2) - math.Pow(spacing/2, 2))
}

// ReachFormula declares Reach.
var ReachFormula = &calc.Formula{
	ID: "reach", Title: calc.Text("Reach to each side between places"), Expr: "sqrt(R^2 - (s/2)^2)",
	Result: calc.Var{Symbol: "y", Meaning: calc.Text("reach to each side"), Unit: "mm", US: "in"},
	Vars: []calc.Var{
		{Symbol: "R", Meaning: meansR, Unit: "mm", US: "in"},
		{Symbol: "s", Meaning: meansS, Unit: "mm", US: "in"},
	},
	Fn: calc.Func2(Reach), Go: "consolidation.Reach", Source: "practice",
}

// Along is the number of places along a wall, ⌈L/s⌉, with the first at half a
// spacing from the end. Any unit of length. Source: arithmetic.
func Along(length, spacing float64) float64 { return calc.Ceil(length / spacing) }

// AlongFormula declares Along.
var AlongFormula = &calc.Formula{
	ID: "along", Title: calc.Text("Places along the wall"), Expr: "ceil(L/s)",
	Result: calc.Var{Symbol: "n", Meaning: meansAlong},
	Vars: []calc.Var{
		{Symbol: "L", Meaning: meansL, Unit: "m", US: "ft"},
		{Symbol: "s", Meaning: meansS, Unit: "m", US: "ft"},
	},
	Fn: calc.Func2(Along), Go: "consolidation.Along", Source: "practice",
}

// Places is the number of places of one pass, n + N(2 + k): one more at each
// side of each of N openings and k more at its sill.
// Source: common practice, after ACI 309R and 304R, from memory.
func Places(along, openings, sill float64) float64 {
	return along + float64(openings*(2+sill))
}

// PlacesFormula declares Places.
var PlacesFormula = &calc.Formula{
	ID: "places", Title: calc.Text("Places with the openings"), Expr: "n + o*(2 + k)",
	Result: calc.Var{Symbol: "N", Meaning: meansPlaces},
	Vars: []calc.Var{{Symbol: "n", Meaning: meansAlong}, {Symbol: "o", Meaning: calc.Text("openings in the lift")},
		{Symbol: "k", Meaning: calc.Text("more under each sill")}},
	Fn: calc.Func3(Places), Go: "consolidation.Places", Source: "practice",
}

// Each is the time for one place, t + d/v + m: at rest, out through a depth d of
// lift and overlap at the speed v, and on to the next place. Coherent units.
// Source: US Army EN5466 for the time at rest; arithmetic.
func Each(rest, depth, speed, move float64) float64 { return rest + depth/speed + move }

// EachFormula declares Each.
var EachFormula = &calc.Formula{
	ID: "each", Title: calc.Text("Time for one place"), Expr: "t_v + d/v + t_m",
	Result: calc.Var{Symbol: "t_1", Meaning: meansEach, Unit: "s", US: "s"},
	Vars: []calc.Var{
		{Symbol: "t_v", Meaning: calc.Text("time at rest in the concrete"), Unit: "s", US: "s"},
		{Symbol: "d", Meaning: calc.Text("lift and overlap"), Unit: "mm", US: "in"},
		{Symbol: "v", Meaning: calc.Text("speed of pulling out"), Unit: "mm/s", US: "in/s"},
		{Symbol: "t_m", Meaning: calc.Text("to the next place and in"), Unit: "s", US: "s"},
	},
	Fn: calc.Func4(Each), Go: "consolidation.Each", Source: "army",
}

// Pass is the time that one vibrator takes for all places, N t, in minutes, with
// the time for one place in seconds.
func Pass(places, each float64) float64 { return places * each / 60 }

// PassFormula declares Pass.
var PassFormula = &calc.Formula{
	ID: "pass", Title: calc.Text("Time for all places"), Expr: "N*t_1/60",
	Result: calc.Var{Symbol: "T", Meaning: meansPass, Unit: "min"},
	Vars:   []calc.Var{{Symbol: "N", Meaning: meansPlaces}, {Symbol: "t_1", Meaning: meansEach, Unit: "s"}},
	Fn:     calc.Func2(Pass), Go: "consolidation.Pass", Source: "practice",
}

// Fill is the time that the pump takes for a lift, L b h/Q. Coherent units.
func Fill(length, core, lift, flow float64) float64 { return length * core * lift / flow }

// FillFormula declares Fill.
var FillFormula = &calc.Formula{
	ID: "fill", Title: calc.Text("Time the pump takes"), Expr: "L*b*h/Q",
	Result: calc.Var{Symbol: "t_f", Meaning: meansFill, Unit: "h", US: "h"},
	Vars: []calc.Var{
		{Symbol: "L", Meaning: meansL, Unit: "m", US: "ft"},
		{Symbol: "b", Meaning: calc.Text("core thickness"), Unit: "m", US: "ft"},
		{Symbol: "h", Meaning: calc.Text("depth of the lift"), Unit: "m", US: "ft"},
		{Symbol: "Q", Meaning: meansQ, Unit: "m³/h", US: "ft³/h"},
	},
	Fn: calc.Func4(Fill), Go: "consolidation.Fill", Source: "practice",
}

// KeepUp is the number of vibrators that finish a pass while the pump fills
// the next lift, ⌈T/t⌉. Any unit of time.
func KeepUp(pass, fill float64) float64 { return calc.Ceil(pass / fill) }

// KeepUpFormula declares KeepUp.
var KeepUpFormula = &calc.Formula{
	ID: "keep-up", Title: calc.Text("Vibrators to keep up"), Expr: "ceil(T/t_f)",
	Result: calc.Var{Symbol: "z", Meaning: meansCount},
	Vars: []calc.Var{
		{Symbol: "T", Meaning: meansPass, Unit: "min"},
		{Symbol: "t_f", Meaning: meansFill, Unit: "min"},
	},
	Fn: calc.Func2(KeepUp), Go: "consolidation.KeepUp", Source: "practice",
}

// The largest usual crew: nine hands run CrewHeads heads, with places CrewApart, in m, from
// each other. Each head is pulled out at CrewSpeed, in m/s, and is in the next place after
// CrewMove, in s. The loop is CrewLoop long, in m, with CrewOpenings window sills in each lift
// and CrewSill more places at each. The crew sheet and the rule head-spacing are the sources of
// the first two; the others are our own.
const (
	CrewHeads    = 3.0
	CrewApart    = 11 * 0.0254
	CrewSpeed    = 3 * 0.0254
	CrewMove     = 5.0
	CrewLoop     = 140 * 0.3048
	CrewOpenings = 3.0
	CrewSill     = 2.0
)

// RestAir and RestPlain are the longest times at rest of a head, in s, in air-entrained concrete
// and in concrete without air. Source: US Army EN5466.
const (
	RestAir   = 10.0
	RestPlain = 15.0
)

// CrewFlow is the highest flow in m³/s, down to a whole yd³/h, that the heads of the largest
// usual crew keep up with: z·L·b·h/(N·t_1), for a core of b and a lift of h that the heads go
// below by into, all in m, and a time at rest in s, RestAir or RestPlain.
func CrewFlow(rest, core, lift, into float64) float64 {
	places := Places(Along(CrewLoop, CrewApart), CrewOpenings, CrewSill)
	flow := CrewHeads * CrewLoop * core * lift / (places * Each(rest, lift+into, CrewSpeed, CrewMove))
	return calc.SI(math.Floor(calc.From(flow, "yd³/h")+calc.Slack), "yd³/h")
}

// ByRate is the number of vibrators for a pump rate by the published rate of
// one vibrator, ⌈Q/q⌉. Any unit of flow. Source: CCANZ table 1, column of rates.
func ByRate(flow, rate float64) float64 { return calc.Ceil(flow / rate) }

// ByRateFormula declares ByRate.
var ByRateFormula = &calc.Formula{
	ID: "by-rate", Title: calc.Text("Vibrators by published rate"), Expr: "ceil(Q/q)",
	Result: calc.Var{Symbol: "z", Meaning: meansCount},
	Vars: []calc.Var{{Symbol: "Q", Meaning: meansQ, Unit: "m³/h", US: "yd³/h"},
		{Symbol: "q", Meaning: calc.Text("rate of one vibrator"), Unit: "m³/h", US: "yd³/h"}},
	Fn: calc.Func2(ByRate), Go: "consolidation.ByRate", Source: "ccanz",
}

// Unreached is the height at the foot of the wall that the head does not reach,
// max(0, H + a − w), for a wall of height H, a whip of length w and a length a
// of it above the form. Any unit of length.
func Unreached(height, above, whip float64) float64 { return math.Max(0, height+above-whip) }

// UnreachedFormula declares Unreached.
var UnreachedFormula = &calc.Formula{
	ID: "unreached", Title: calc.Text("Foot the head misses"), Expr: "max(0, H + a - w)",
	Result: calc.Var{Symbol: "u", Meaning: calc.Text("foot the head misses"), Unit: "m", US: "ft"},
	Vars: []calc.Var{
		{Symbol: "H", Meaning: calc.Text("height of the form"), Unit: "m", US: "ft"},
		{Symbol: "a", Meaning: calc.Text("whip above the form"), Unit: "m", US: "ft"},
		{Symbol: "w", Meaning: calc.Text("whip with its head"), Unit: "m", US: "ft"},
	},
	Fn: calc.Func3(Unreached), Go: "consolidation.Unreached", Source: "practice",
}
