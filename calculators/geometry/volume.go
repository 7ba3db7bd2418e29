package geometry

import (
	"math"

	"coursebook/calculators/calc"
)

// Symbols that several formulas share.
var (
	varThickness = calc.Var{Symbol: "t", Meaning: calc.Text("core thickness"), Unit: "m", US: "ft"}
	varHeight    = calc.Var{Symbol: "h", Meaning: calc.Text("height"), Unit: "m", US: "ft"}
	varCorners   = calc.Var{
		Symbol:  "c",
		Meaning: calc.Text("corners to take off: outside less inside; minus for inside faces"),
	}
	varAngle    = calc.Var{Symbol: "theta", Meaning: calc.Text("angle the curve turns through"), Unit: "°", US: "°"}
	varRise     = calc.Var{Symbol: "s", Meaning: calc.Text("rise|of a curve"), Unit: "m", US: "ft"}
	varChord    = calc.Var{Symbol: "c", Meaning: calc.Text("chord"), Unit: "m", US: "ft"}
	rightAngles = calc.Text("Right-angled corners only.")
)

// Meanings that several formulas share.
var (
	meansNet       = calc.Text("net volume")
	meansOrder     = calc.Text("order")
	meansTruck     = calc.Text("what a truck carries")
	meansLoads     = calc.Text("loads")
	meansWithWaste = calc.Text("volume with waste")
)

// CubicFeet and CubicYards are the units of the published US take-offs.
type (
	CubicFeet  float64
	CubicYards float64
)

// Prism is the volume of count equal boxes, V = n w h d: straight walls, openings
// through a wall or block-outs in one.
//
// Units: m, m³ (any coherent set). Limits: none; exact for square-cut boxes.
// Source: NAVEDTRA 14070, take-off of figure 5-2.
func Prism(count, width, height, depth float64) float64 {
	return count * width * height * depth
}

// PrismFormula declares Prism.
var PrismFormula = &calc.Formula{
	ID: "prism", Title: calc.Text("Volume of equal boxes"), Expr: "n*w*h*d",
	Result: cubic("V", calc.Text("volume")),
	Vars: []calc.Var{{Symbol: "n", Meaning: calc.Text("how many")}, long("w", calc.Text("length or width")),
		varHeight, long("d", calc.Text("depth; the core for openings"))},
	Fn: calc.Func4(Prism), Go: "geometry.Prism", Source: "navedtra",
}

// CentreLine is the length along the middle of a wall whose length was
// measured along a face, L_c = L − c t.
//
// At a right-angled corner the line through the middle is shorter than the
// line along the outer face by half a thickness on each leg, so by t. c
// counts outside corners less inside corners for lengths on the outside face,
// the negative of that on the inside face, and is 0 on the centre line. In a
// closed plan with right angles only, outside corners exceed inside corners
// by four, hence the trade's rule "outside less four thicknesses".
//
// Units: m. Limits: right angles only. Source: derived; reproduces the sum of
// NAVEDTRA 14070, figure 5-2.
func CentreLine(length, corners, thickness float64) float64 {
	return length - float64(corners*thickness)
}

// CentreLineFormula declares CentreLine.
var CentreLineFormula = &calc.Formula{
	ID: "centre-line", Title: calc.Text("Length along the middle of the core"), Expr: "L - c*t",
	Result: long("L_c", calc.Text("length along the middle")),
	Vars:   []calc.Var{long("L", calc.Text("length as measured")), varCorners, varThickness},
	Fn:     calc.Func3(CentreLine), Go: "geometry.CentreLine", Source: "geometry", Limits: rightAngles,
}

// WallsVolume is the volume of straight walls before deductions,
// V = t (A − c t h_c), with A the sum of length × height along the measured
// line and c as in CentreLine.
//
// With a single height it equals t × h × CentreLine and is exact. If heights
// differ, h_c represents the heights at the corners, which are not inputs.
//
// Units: m, m², m³. Limits: right angles only. Source: derived.
func WallsVolume(thickness, area, corners, cornerHeight float64) float64 {
	return thickness * (area - float64(corners*thickness*cornerHeight))
}

// WallsVolumeFormula declares WallsVolume.
var WallsVolumeFormula = &calc.Formula{
	ID: "walls", Title: calc.Text("Volume of the straight walls"), Expr: "t*(A - c*t*h_c)",
	Result: cubic("V", calc.Text("volume before deductions")),
	Vars: []calc.Var{
		varThickness,
		{Symbol: "A", Meaning: calc.Text("sum of length × height, as measured"), Unit: "m²", US: "ft²"},
		varCorners,
		long("h_c", calc.Text("height at the corners")),
	},
	Fn: calc.Func4(WallsVolume), Go: "geometry.WallsVolume", Source: "geometry", Limits: rightAngles,
}

// ChordRadius is the radius of an arc from its chord and its rise over the
// chord, R = (c²/4 + s²) / (2 s).
//
// Units: m. Limits: s > 0. Source: chord and rise relation of the handbooks.
func ChordRadius(chord, rise float64) float64 {
	return (float64(chord*chord)/4 + float64(rise*rise)) / (2 * rise)
}

// ChordRadiusFormula declares ChordRadius.
var ChordRadiusFormula = &calc.Formula{
	ID: "chord-radius", Title: calc.Text("Radius from chord and rise"), Expr: "(c^2/4 + s^2)/(2*s)",
	Result: long("R", calc.Text("radius")), Vars: []calc.Var{varChord, varRise},
	Fn: calc.Func2(ChordRadius), Go: "geometry.ChordRadius", Source: "geometry",
}

// ChordAngle is the angle of an arc, θ = 4 atan(2 s / c), also beyond the half
// circle.
//
// Units: m, degrees. Limits: c > 0. Source: half-angle form of ChordRadius.
func ChordAngle(chord, rise float64) float64 {
	return 4 * math.Atan(2*rise/chord) * 180 / math.Pi
}

// ChordAngleFormula declares ChordAngle.
var ChordAngleFormula = &calc.Formula{
	ID: "chord-angle", Title: calc.Text("Angle from chord and rise"), Expr: "4*atan(2*s/c)*180/pi",
	Result: varAngle, Vars: []calc.Var{varRise, varChord},
	Fn: calc.FuncN(
		func(v []float64) float64 { return ChordAngle(v[1], v[0]) }), Go: "geometry.ChordAngle", Source: "geometry",
}

// CentreRadius is the radius of the middle of a curved wall from that of its
// outside face, R_c = R − t/2.
//
// Units: m. Limits: R > t. Source: geometry.
func CentreRadius(radius, thickness float64) float64 {
	return radius - thickness/2
}

// CentreRadiusFormula declares CentreRadius.
var CentreRadiusFormula = &calc.Formula{
	ID: "centre-radius", Title: calc.Text("Radius to the middle of the core"), Expr: "R - t/2",
	Result: long("R_c", calc.Text("radius to the middle")),
	Vars:   []calc.Var{long("R", calc.Text("radius to the outside face")), varThickness},
	Fn:     calc.Func2(CentreRadius), Go: "geometry.CentreRadius", Source: "geometry",
}

// ArcLength is the length of an arc, b = π θ R / 180.
//
// Units: degrees, m. Limits: 0 to 360°. Source: geometry.
func ArcLength(degrees, radius float64) float64 {
	return math.Pi * degrees / 180 * radius
}

// ArcLengthFormula declares ArcLength.
var ArcLengthFormula = &calc.Formula{
	ID: "arc-length", Title: calc.Text("Length of the curve"), Expr: "pi*theta/180*R",
	Result: long("b",
		calc.Text("length of the curve")), Vars: []calc.Var{varAngle, long("R", calc.Text("radius to the middle"))},
	Fn: calc.Func2(ArcLength), Go: "geometry.ArcLength", Source: "geometry",
}

// ArcVolume is the volume of a curved wall, V = b t h, with b along the
// middle of the core. It is exact by Pappus' theorem.
//
// Units: m, m³. Limits: inside radius above 0. Source: geometry.
func ArcVolume(length, thickness, height float64) float64 {
	return length * thickness * height
}

// ArcVolumeFormula declares ArcVolume.
var ArcVolumeFormula = &calc.Formula{
	ID: "arc-volume", Title: calc.Text("Volume of the curved wall"), Expr: "b*t*h",
	Result: cubic("V", calc.Text("volume of the curve")),
	Vars:   []calc.Var{long("b", calc.Text("length along the middle")), varThickness, varHeight},
	Fn:     calc.Func3(ArcVolume), Go: "geometry.ArcVolume", Source: "geometry",
}

// NetVolume is the volume of the walls without their openings, V = V_g − V_h.
//
// Units: m³. Limits: V_h < V_g. Source: Le Jeune, foundation walls.
func NetVolume(walls, holes float64) float64 { return walls - holes }

// NetVolumeFormula declares NetVolume.
var NetVolumeFormula = &calc.Formula{
	ID: "net", Title: calc.Text("Net volume"), Expr: "V_g - V_h",
	Result: cubic("V", meansNet),
	Vars: []calc.Var{
		cubic("V_g", calc.Text("walls without holes")),
		cubic("V_h", calc.Text("openings and block-outs")),
	},
	Fn: calc.Func2(NetVolume), Go: "geometry.NetVolume", Source: "lejeune",
}

// WithWaste adds an allowance in percent, V_w = V (1 + w/100).
//
// Units: m³ and %. Limits: w ≥ 0. Source: NAVEDTRA 14070, figure 5-2.
func WithWaste(volume, percent float64) float64 {
	return volume * (1 + percent/100)
}

// WithWasteFormula declares WithWaste.
var WithWasteFormula = &calc.Formula{
	ID: "with-waste", Title: calc.Text("Volume with waste"), Expr: "V*(1 + w/100)",
	Result: cubic("V_w", meansWithWaste),
	Vars:   []calc.Var{cubic("V", meansNet), {Symbol: "w", Meaning: calc.Text("waste"), Unit: "%", US: "%"}},
	Fn:     calc.Func2(WithWaste), Go: "geometry.WithWaste", Source: "navedtra",
}

// InCubicYards divides by the 27 ft³ of a cubic yard.
//
// Limits: none, exact. Source: NIST SP 811, table of units.
func InCubicYards(v CubicFeet) CubicYards { return CubicYards(v / 27) }

// InCubicYardsFormula declares InCubicYards.
var InCubicYardsFormula = &calc.Formula{
	ID: "cubic-yards", Title: calc.Text("Cubic feet to cubic yards"), Expr: "V/27",
	Result: calc.Var{Symbol: "V_y", Meaning: calc.Text("volume in cubic yards"), Unit: "yd³"},
	Vars:   []calc.Var{{Symbol: "V", Meaning: calc.Text("volume in cubic feet"), Unit: "ft³"}},
	Fn:     calc.FuncN(func(v []float64) float64 { return float64(InCubicYards(CubicFeet(v[0]))) }),
	Go:     "geometry.InCubicYards", Source: "sp811",
}

// RoundUp is the order: the smallest whole number of steps that covers the
// volume, V_o = ⌈V / s⌉ s.
//
// Units: any, the same for both. Limits: s > 0. Source: an order rounded down
// is short, as the printed 21 yd³ of NAVEDTRA 14070.
func RoundUp(volume, step float64) float64 {
	return calc.Ceil(volume/step) * step
}

// Loads is the number of truckloads of an order, N = ⌈V_o / T⌉.
//
// Units: any, the same for both. Limits: T > 0. Source: ready-mix producer's
// guide "Calculating truck requirements".
func Loads(order, truck float64) float64 {
	return calc.Ceil(order / truck)
}

// LoadsFormula declares Loads.
var LoadsFormula = &calc.Formula{
	ID: "loads", Title: calc.Text("Number of loads"), Expr: "ceil(V_o/T)",
	Result: calc.Var{Symbol: "N", Meaning: meansLoads},
	Vars:   []calc.Var{delivered("V_o", meansOrder), delivered("T", meansTruck)},
	Fn:     calc.Func2(Loads), Go: "geometry.Loads", Source: "loads",
}

// LastLoad is what is left for the last truck, V_l = V_o − (N − 1) T.
//
// Units: any, the same throughout. Limits: N = Loads. Source: arithmetic.
func LastLoad(order, loads, truck float64) float64 {
	return order - float64((loads-1)*truck)
}

// LastLoadFormula declares LastLoad.
var LastLoadFormula = &calc.Formula{
	ID: "last-load", Title: calc.Text("Last load"), Expr: "V_o - (N - 1)*T",
	Result: delivered("V_l", calc.Text("last load")),
	Vars: []calc.Var{delivered("V_o", meansOrder), {Symbol: "N", Meaning: meansLoads},
		delivered("T", meansTruck)},
	Fn: calc.Func3(LastLoad), Go: "geometry.LastLoad", Source: "practice",
}

// Extra is the excess of an order over the net volume, in percent of the net
// volume, p = 100 (V_o − V) / V.
//
// Units: m³, %. Limits: V > 0. Source: Concrete Construction, "Yield problems
// and waste allowance".
func Extra(order, net float64) float64 {
	return 100 * (order - net) / net
}

// ExtraFormula declares Extra.
var ExtraFormula = &calc.Formula{
	ID: "extra", Title: calc.Text("Order over net volume"), Expr: "100*(V_o - V)/V",
	Result: calc.Var{Symbol: "p", Meaning: calc.Text("waste and rounding together"), Unit: "%", US: "%"},
	Vars:   []calc.Var{delivered("V_o", meansOrder), delivered("V", meansNet)},
	Fn:     calc.Func2(Extra), Go: "geometry.Extra", Source: "waste",
}

// cubic returns a variable of a formula that is a volume in m³ or ft³.
func cubic(symbol string, meaning calc.Text) calc.Var {
	return calc.Var{Symbol: symbol, Meaning: meaning, Unit: "m³", US: "ft³"}
}

// long returns a variable of a formula that is a length in m or ft.
func long(symbol string, meaning calc.Text) calc.Var {
	return calc.Var{Symbol: symbol, Meaning: meaning, Unit: "m", US: "ft"}
}

// delivered returns a variable of a formula that is a volume in m³ or yd³.
func delivered(symbol string, meaning calc.Text) calc.Var {
	return calc.Var{Symbol: symbol, Meaning: meaning, Unit: "m³", US: "yd³"}
}

var OrderYardsFormula = orderIn("order-yd", calc.Text("Order, rounded up, in cubic yards"), "yd³")

var OrderMetresFormula = orderIn("order-m", calc.Text("Order, rounded up, in cubic meters"), "m³")

// orderIn returns the formula of the order in unit, the one that the plant sells
// in.
func orderIn(id string, title calc.Text, unit string) *calc.Formula {
	return &calc.Formula{
		ID: id, Title: title, Expr: "ceil(V/s)*s",
		Result: calc.Var{Symbol: "V_o", Meaning: meansOrder, Unit: unit},
		Vars: []calc.Var{{Symbol: "V", Meaning: meansWithWaste, Unit: unit},
			{Symbol: "s", Meaning: calc.Text("step the plant sells in"), Unit: unit}},
		Fn: calc.Func2(RoundUp), Go: "geometry.RoundUp", Source: "navedtra",
	}
}
