package geometry

import "coursebook/calculators/calc"

// RunVolume is the volume of count equal footings, grade beams, stem walls or
// pads, V = n (L − c w) w h.
//
// A strip with right-angled corners is shorter along its middle than along its
// outside by one width at each outside corner. c counts outside less inside
// corners; it is 0 for a length measured along the middle and for a pad. See
// CentreLine.
//
// Units: m, m³ (any coherent set). Limits: right angles; L > c w.
// Source: NAVEDTRA 14070, take-off of figure 5-2; corner rule derived.
func RunVolume(count, length, corners, width, height float64) float64 {
	return count * CentreLine(length, corners, width) * width * height
}

// RunVolumeFormula declares RunVolume.
var RunVolumeFormula = &calc.Formula{
	ID: "part", Title: calc.Text("Volume of one row"), Expr: "n*(L - c*w)*w*h",
	Result: calc.Var{Symbol: "V", Meaning: calc.Text("volume of the row"), Unit: "m³", US: "ft³"},
	Vars: []calc.Var{
		{Symbol: "n", Meaning: calc.Text("how many")},
		{Symbol: "L", Meaning: calc.Text("length"), Unit: "m", US: "ft"},
		{Symbol: "c", Meaning: calc.Text("corners to take off")},
		{Symbol: "w", Meaning: calc.Text("width or thickness"), Unit: "m", US: "ft"},
		{Symbol: "h", Meaning: calc.Text("depth or height"), Unit: "m", US: "ft"},
	},
	Fn: calc.Func5(RunVolume), Go: "geometry.RunVolume", Source: "navedtra",
	Limits: calc.Text("Right-angled corners only."),
}
