package placing

import (
	"math"

	"coursebook/calculators/calc"
)

// Meanings of the symbols.
const (
	meansOpen    = calc.Text("open wall")
	meansUsable  = calc.Text("counted from the drums")
	meansMissing = calc.Text("still missing")
	meansCallBy  = calc.Text("call by, hours of the day")
)

// OpenWall is the volume of a stretch of wall that is still open, L·t·h, with t
// the core and h the height still open. Any unit of length. Source: geometry.
func OpenWall(length, core, height float64) float64 { return length * core * height }

// OpenWallFormula declares OpenWall.
var OpenWallFormula = &calc.Formula{
	ID: "open", Title: calc.Text("Open wall, one stretch"), Expr: "L*t*h",
	Result: calc.Var{Symbol: "V", Meaning: meansOpen, Unit: "m³", US: "ft³"},
	Vars: []calc.Var{
		{Symbol: "L", Meaning: calc.Text("length of the stretch"), Unit: "m", US: "ft"},
		{Symbol: "t", Meaning: calc.Text("core thickness"), Unit: "m", US: "ft"},
		{Symbol: "h", Meaning: calc.Text("height still open"), Unit: "m", US: "ft"},
	},
	Fn: calc.Func3(OpenWall), Go: "placing.OpenWall", Source: "practice",
}

// Usable is the volume counted from drums, F + G/2: loads that are still full
// count whole, what is guessed to be left in a drum counts half. Any unit of
// volume. Source: common practice.
func Usable(full, guessed float64) float64 { return full + guessed/2 }

// UsableFormula declares Usable.
var UsableFormula = &calc.Formula{
	ID: "usable", Title: calc.Text("Counted from the drums"), Expr: "F + G/2",
	Result: calc.Var{Symbol: "U", Meaning: meansUsable, Unit: "m³", US: "yd³"},
	Vars: []calc.Var{
		{Symbol: "F", Meaning: calc.Text("full loads, by the ticket"), Unit: "m³", US: "yd³"},
		{Symbol: "G", Meaning: calc.Text("guessed to be left in drums"), Unit: "m³", US: "yd³"},
	},
	Fn: calc.Func2(Usable), Go: "placing.Usable", Source: "practice",
}

// Missing is the volume that no drum on site or on the road covers,
// max(0, V_w + P − U − H). Line and hopper are full at the time of the call and
// stay full to the end, so P counts only what they still have to take on. Any
// unit of volume. Source: arithmetic.
func Missing(withWaste, line, usable, hopper float64) float64 {
	return math.Max(0, withWaste+line-usable-hopper)
}

// MissingFormula declares Missing.
var MissingFormula = &calc.Formula{
	ID: "missing", Title: calc.Text("Still missing"), Expr: "max(0, V_w + P - U - H)",
	Result: calc.Var{Symbol: "M", Meaning: meansMissing, Unit: "m³", US: "yd³"},
	Vars: []calc.Var{
		{Symbol: "V_w", Meaning: calc.Text("volume with waste"), Unit: "m³", US: "yd³"},
		{Symbol: "P", Meaning: calc.Text("line and hopper still have to take on"), Unit: "m³", US: "yd³"},
		{Symbol: "U", Meaning: meansUsable, Unit: "m³", US: "yd³"},
		{Symbol: "H", Meaning: calc.Text("in the hopper above its lowest level"), Unit: "m³", US: "yd³"},
	},
	Fn: calc.Func4(Missing), Go: "placing.Missing", Source: "practice",
}

// LastOrder is the last order, the smallest whole number of steps that covers
// both what is missing and the plant's least load, ⌈max(M, l)/s⌉·s. Limits: a
// step above 0; an M above 0, since without one nothing is ordered. Any unit of
// volume. Source: common practice.
func LastOrder(missing, least, step float64) float64 {
	return calc.Ceil(math.Max(missing, least)/step) * step
}

// LastOrderYardsFormula declares LastOrder for a plant that sells in cubic yards.
var LastOrderYardsFormula = lastOrderIn("order-yd", calc.Text("Last order, in cubic yards"), "yd³")

// LastOrderMetersFormula declares LastOrder for a plant that sells in cubic meters.
var LastOrderMetersFormula = lastOrderIn("order-m", calc.Text("Last order, in cubic meters"), "m³")

// lastOrderIn returns the formula of the last order in unit, the one that the
// plant sells in.
func lastOrderIn(id string, title calc.Text, unit string) *calc.Formula {
	return &calc.Formula{
		ID: id, Title: title, Expr: "ceil(max(M, l)/s)*s",
		Result: calc.Var{Symbol: "V_o", Meaning: calc.Text("last order"), Unit: unit},
		Vars: []calc.Var{
			{Symbol: "M", Meaning: meansMissing, Unit: unit},
			{Symbol: "l", Meaning: calc.Text("the plant's least load"), Unit: unit},
			{Symbol: "s", Meaning: calc.Text("step the plant sells in|last order"), Unit: unit},
		},
		Fn: calc.Func3(LastOrder), Go: "placing.LastOrder", Source: "practice",
	}
}

// CallBy is the latest time to call, D − T, in hours of the day. Below 0 it is
// on the day before. Source: arithmetic.
func CallBy(needed, lead float64) float64 { return needed - lead }

// CallByFormula declares CallBy.
var CallByFormula = &calc.Formula{
	ID: "call-by", Title: calc.Text("Call by"), Expr: "D - T",
	Result: calc.Var{Symbol: "C", Meaning: meansCallBy, Unit: "h", US: "h"},
	Vars: []calc.Var{
		{Symbol: "D", Meaning: calc.Text("must be in the hopper, hours of the day"), Unit: "h", US: "h"},
		{Symbol: "T", Meaning: calc.Text("from the call to the hopper"), Unit: "h", US: "h"},
	},
	Fn: calc.Func2(CallBy), Go: "placing.CallBy", Source: "practice",
}
