package steel

import "coursebook/calculators/calc"

const meansStone = calc.Text("largest stone")

// FormShare is the largest stone between two forms, in the unit of the
// thickness: d = b/5. Source: ACI 318-19, 26.4.2.1(a)(5); IRC R608.5.1.3.
func FormShare(b float64) float64 { return b / 5 }

// FormShareFormula declares FormShare.
var FormShareFormula = &calc.Formula{ID: "forms", Title: calc.Text("A fifth between forms"), Expr: "b/5",
	Result: calc.Var{Symbol: "d", Meaning: meansStone, Unit: "mm", US: "in"},
	Vars:   []calc.Var{{Symbol: "b", Meaning: calc.Text("narrowest thickness between forms"), Unit: "mm", US: "in"}},
	Fn:     calc.Func1(FormShare), Go: "steel.FormShare", Source: "aci318",
	Limits: calc.Text("The engineer may waive it where the concrete can be placed without voids.")}

// GapShare is the largest stone past bars, in the unit of the clear gap:
// d = 3·s/4. Source: ACI 318-19, 26.4.2.1(a)(5); IRC R608.5.1.3. Between bar
// and form it is common practice.
func GapShare(s float64) float64 { return 3 * s / 4 }

// GapShareFormula declares GapShare.
var GapShareFormula = &calc.Formula{ID: "gap", Title: calc.Text("Three quarters of the clear gap"), Expr: "3*s/4",
	Result: calc.Var{Symbol: "d", Meaning: meansStone, Unit: "mm", US: "in"},
	Vars:   []calc.Var{{Symbol: "s", Meaning: calc.Text("clear gap"), Unit: "mm", US: "in"}},
	Fn:     calc.Func1(GapShare), Go: "steel.GapShare", Source: "aci318",
	Limits: calc.Text("Between bars by code; between bar and form by common practice.")}

// SlabShare is the largest stone in a slab, in the unit of its thickness:
// d = h/3. Source: ACI 318-19, 26.4.2.1(a)(5).
func SlabShare(h float64) float64 { return h / 3 }

// SlabShareFormula declares SlabShare.
var SlabShareFormula = &calc.Formula{ID: "slab", Title: calc.Text("A third of the slab"), Expr: "h/3",
	Result: calc.Var{Symbol: "d", Meaning: meansStone, Unit: "mm", US: "in"},
	Vars:   []calc.Var{{Symbol: "h", Meaning: calc.Text("thickness of the slab"), Unit: "mm", US: "in"}},
	Fn:     calc.Func1(SlabShare), Go: "steel.SlabShare", Source: "aci318"}

// HoseShare is the largest stone through a hose, in the unit of its inside
// diameter: d = k·D, with k one third for crushed stone and 0.4 for
// well-rounded gravel. Source: ACI 304.2R.
func HoseShare(k, inside float64) float64 { return k * inside }

// HoseShareFormula declares HoseShare.
var HoseShareFormula = &calc.Formula{ID: "hose", Title: calc.Text("Share of the hose"), Expr: "k*D",
	Result: calc.Var{Symbol: "d", Meaning: meansStone, Unit: "mm", US: "in"},
	Vars: []calc.Var{{Symbol: "k", Meaning: calc.Text("1/3 for crushed stone, 0.4 for well-rounded gravel")},
		{Symbol: "D", Meaning: calc.Text("smallest inside diameter of the line"), Unit: "mm", US: "in"}},
	Fn: calc.Func2(HoseShare), Go: "steel.HoseShare", Source: "aci304",
	Limits: calc.Text("A hose up to 2-1/2 in (64 mm) takes 3/8 in (10 mm) stone only.")}
