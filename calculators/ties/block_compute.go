package ties

import (
	"math"

	"coursebook/calculators/calc"
	"coursebook/calculators/displays"
)

const (
	blockFloats = calc.Text("It floats. Strap it down before placing, to something that holds {force}.")
	blockStays  = calc.Text("Its own weight holds it down by the numbers. Strap it all the same: the poker shakes it loose.")
	blockUneven = calc.Text("The levels differ by {gap}. Brace against the push, or even them out as you place.")
	blockEven   = calc.Text("Both sides stand at one height. Keep it so while placing.")
	blockSlow   = calc.Text("All concrete counts as fluid. Placing slowly lets the lower part stiffen; no credit is taken for it.")
)

var eqVolume = &calc.Formula{
	ID: "volume", Title: calc.Text("Volume in the concrete"),
	Expr: "l*b*min(a, h)", Result: calc.Var{Symbol: "V", Meaning: meansVolume, Unit: "m³", US: "ft³"},
	Vars: []calc.Var{
		{Symbol: "l", Meaning: calc.Text("length along the wall"), Unit: "m", US: "ft"},
		{Symbol: "b", Meaning: meansThick, Unit: "m", US: "ft"}, {Symbol: "h", Meaning: meansTall, Unit: "m", US: "ft"}, {Symbol: "a", Meaning: meansLevel, Unit: "m", US: "ft"},
	},
	Fn: calc.Func4(Submerged), Go: "ties.Submerged", Source: "statics",
}

var eqUplift = &calc.Formula{
	ID: "uplift", Title: calc.Text("Uplift"),
	Expr: "w*V - G", Result: calc.Var{Symbol: "U", Meaning: meansUplift, Unit: "kN", US: "lbf"},
	Vars: []calc.Var{
		{Symbol: "w", Meaning: meansW, Unit: "kN/m³", US: "lb/ft³"},
		{Symbol: "V", Meaning: meansVolume, Unit: "m³", US: "ft³"},
		{Symbol: "G", Meaning: calc.Text("own weight, as a force"), Unit: "kN", US: "lbf"},
	},
	Fn: calc.Func3(Uplift), Go: "ties.Uplift", Source: "archimedes",
	Limits: calc.Text("Fresh concrete reaches its underside and is fluid all round."),
}

var eqSide = &calc.Formula{
	ID: "side", Title: calc.Text("Push on one side"),
	Expr: "w*b*min(a, h)*(a - min(a, h)/2)", Result: calc.Var{Symbol: "F", Meaning: meansF, Unit: "kN", US: "lbf"},
	Vars: []calc.Var{
		{Symbol: "w", Meaning: meansW, Unit: "kN/m³", US: "lb/ft³"}, {Symbol: "b", Meaning: meansThick, Unit: "m", US: "ft"},
		{Symbol: "h", Meaning: meansTall, Unit: "m", US: "ft"}, {Symbol: "a", Meaning: meansLevel, Unit: "m", US: "ft"},
	},
	Fn: calc.Func4(SidePush), Go: "ties.SidePush", Source: "statics",
	Limits: calc.Text("All concrete counts as fluid. What pushes the block is the difference of both sides."),
}

var eqStraps = &calc.Formula{
	ID: "straps", Title: calc.Text("Straps, before rounding up"),
	Expr: "k*U/S", Result: calc.Var{Symbol: "n", Meaning: calc.Text("straps, to be rounded up")},
	Vars: []calc.Var{
		{Symbol: "k", Meaning: calc.Text("factor on the uplift")},
		{Symbol: "U", Meaning: meansUplift, Unit: "kN", US: "lbf"},
		{Symbol: "S", Meaning: calc.Text("rating of one strap"), Unit: "kN", US: "lbf"},
	},
	Fn: calc.Func3(StrapShare), Go: "ties.StrapShare", Source: "strap",
}

const (
	meansVolume = calc.Text("volume in the concrete")
	meansUplift = calc.Text("uplift")
	meansThick  = calc.Text("thickness in the wall")
	meansTall   = calc.Text("height of the block-out")
	meansLevel  = calc.Text("level of the concrete above its underside")

	ofA = calc.Text("Side A")
	ofB = calc.Text("Side B")

	gravity = 9.80665 // m/s², standard
)

// computeBlock takes the higher side for the volume: the concrete runs under
// the block-out and lifts all of it.
func computeBlock(r *calc.Recorder, in calc.Case) {
	w, b, h, a, low := in.Num("weight"), in.Num("thickness"), in.Num("height"), in.Num("side-a"), in.Num("side-b")
	volume := r.Use(eqVolume, in.Num("length"), b, h, math.Max(a, low))
	uplift := r.Use(eqUplift, w, volume, in.Num("own")*gravity)
	pushA := r.UseFor(ofA, nil, eqSide, w, b, h, a)
	pushB := r.UseFor(ofB, nil, eqSide, w, b, h, low)
	r.Put("volume", volume)
	r.Put("push-a", pushA)
	r.Put("push-b", pushB)
	r.Put("push", math.Abs(pushA-pushB))
	r.Put("uplift", math.Max(0, uplift))
	r.Put("straps", 0)
	if uplift > 0 {
		// one strap lets a block-out turn: never fewer than two
		r.Put("straps", math.Max(2, upTo(r.Use(eqStraps, in.Num("factor"), uplift, in.Num("rating")))))
		r.Note(calc.LevelWarning, calc.At("rating"), blockFloats, calc.Amount("force", uplift*in.Num("factor"), &displays.Force))
	} else {
		r.Note(calc.LevelNotice, calc.At("own"), blockStays)
	}
	if gap := math.Abs(a - low); gap > calc.Slack {
		r.Note(calc.LevelWarning, calc.At("side-b"), blockUneven, calc.Amount("gap", gap, &displays.Height))
	} else {
		r.Note(calc.LevelNotice, calc.At("side-b"), blockEven)
	}
	r.Note(calc.LevelNotice, calc.Path{}, blockSlow)
}
