package geometry

import "coursebook/calculators/calc"

// Symbols that several formulas share.
var (
	varThickness = calc.Var{Symbol: "t", Meaning: calc.Text("core thickness"), Unit: "m", US: "ft"}
	varHeight    = calc.Var{Symbol: "h", Meaning: calc.Text("height"), Unit: "m", US: "ft"}
	varCorners   = calc.Var{Symbol: "c", Meaning: calc.Text("corners to take off: outside less inside; minus for inside faces")}
	varAngle     = calc.Var{Symbol: "theta", Meaning: calc.Text("angle the curve turns through"), Unit: "°", US: "°"}
	varRise      = calc.Var{Symbol: "s", Meaning: calc.Text("rise|of a curve"), Unit: "m", US: "ft"}
	varChord     = calc.Var{Symbol: "c", Meaning: calc.Text("chord"), Unit: "m", US: "ft"}
	rightAngles  = calc.Text("Right-angled corners only.")
)

func cubic(symbol string, meaning calc.Text) calc.Var {
	return calc.Var{Symbol: symbol, Meaning: meaning, Unit: "m³", US: "ft³"}
}

func long(symbol string, meaning calc.Text) calc.Var {
	return calc.Var{Symbol: symbol, Meaning: meaning, Unit: "m", US: "ft"}
}

// Meanings that several formulas share.
var (
	sayNet       = calc.Text("net volume")
	sayOrder     = calc.Text("order")
	sayTruck     = calc.Text("what a truck carries")
	sayLoads     = calc.Text("loads")
	sayWithWaste = calc.Text("volume with waste")
)

// delivered is a volume in yards for a reader of US units.
func delivered(symbol string, meaning calc.Text) calc.Var {
	return calc.Var{Symbol: symbol, Meaning: meaning, Unit: "m³", US: "yd³"}
}

var (
	prism = &calc.Formula{
		ID: "prism", Title: calc.Text("Volume of equal boxes"), Expr: "n*w*h*d",
		Result: cubic("V", calc.Text("volume")),
		Vars: []calc.Var{{Symbol: "n", Meaning: calc.Text("how many")}, long("w", calc.Text("length or width")),
			varHeight, long("d", calc.Text("depth; the core for openings"))},
		Fn: calc.Func4(Prism), Go: "geometry.Prism", Source: "navedtra",
	}
	centreLine = &calc.Formula{
		ID: "centre-line", Title: calc.Text("Length along the middle of the core"), Expr: "L - c*t",
		Result: long("L_c", calc.Text("length along the middle")),
		Vars:   []calc.Var{long("L", calc.Text("length as measured")), varCorners, varThickness},
		Fn:     calc.Func3(CentreLine), Go: "geometry.CentreLine", Source: "geometry", Limits: rightAngles,
	}
	wallsVolume = &calc.Formula{
		ID: "walls", Title: calc.Text("Volume of the straight walls"), Expr: "t*(A - c*t*h_c)",
		Result: cubic("V", calc.Text("volume before deductions")),
		Vars: []calc.Var{varThickness, {Symbol: "A", Meaning: calc.Text("sum of length × height, as measured"), Unit: "m²", US: "ft²"},
			varCorners, long("h_c", calc.Text("height at the corners"))},
		Fn: calc.Func4(WallsVolume), Go: "geometry.WallsVolume", Source: "geometry", Limits: rightAngles,
	}
	chordRadius = &calc.Formula{
		ID: "chord-radius", Title: calc.Text("Radius from chord and rise"), Expr: "(c^2/4 + s^2)/(2*s)",
		Result: long("R", calc.Text("radius")), Vars: []calc.Var{varChord, varRise},
		Fn: calc.Func2(ChordRadius), Go: "geometry.ChordRadius", Source: "geometry",
	}
	chordAngle = &calc.Formula{
		ID: "chord-angle", Title: calc.Text("Angle from chord and rise"), Expr: "4*atan(2*s/c)*180/pi",
		Result: varAngle, Vars: []calc.Var{varRise, varChord},
		Fn: calc.FuncN(func(v []float64) float64 { return ChordAngle(v[1], v[0]) }), Go: "geometry.ChordAngle", Source: "geometry",
	}
	centreRadius = &calc.Formula{
		ID: "centre-radius", Title: calc.Text("Radius to the middle of the core"), Expr: "R - t/2",
		Result: long("R_c", calc.Text("radius to the middle")),
		Vars:   []calc.Var{long("R", calc.Text("radius to the outside face")), varThickness},
		Fn:     calc.Func2(CentreRadius), Go: "geometry.CentreRadius", Source: "geometry",
	}
	arcLength = &calc.Formula{
		ID: "arc-length", Title: calc.Text("Length of the curve"), Expr: "pi*theta/180*R",
		Result: long("b", calc.Text("length of the curve")), Vars: []calc.Var{varAngle, long("R", calc.Text("radius to the middle"))},
		Fn: calc.Func2(ArcLength), Go: "geometry.ArcLength", Source: "geometry",
	}
	arcVolume = &calc.Formula{
		ID: "arc-volume", Title: calc.Text("Volume of the curved wall"), Expr: "b*t*h",
		Result: cubic("V", calc.Text("volume of the curve")),
		Vars:   []calc.Var{long("b", calc.Text("length along the middle")), varThickness, varHeight},
		Fn:     calc.Func3(ArcVolume), Go: "geometry.ArcVolume", Source: "geometry",
	}
)

var (
	netVolume = &calc.Formula{
		ID: "net", Title: calc.Text("Net volume"), Expr: "V_g - V_h",
		Result: cubic("V", sayNet),
		Vars:   []calc.Var{cubic("V_g", calc.Text("walls without holes")), cubic("V_h", calc.Text("openings and block-outs"))},
		Fn:     calc.Func2(NetVolume), Go: "geometry.NetVolume", Source: "lejeune",
	}
	withWaste = &calc.Formula{
		ID: "with-waste", Title: calc.Text("Volume with waste"), Expr: "V*(1 + w/100)",
		Result: cubic("V_w", sayWithWaste),
		Vars:   []calc.Var{cubic("V", sayNet), {Symbol: "w", Meaning: calc.Text("waste"), Unit: "%", US: "%"}},
		Fn:     calc.Func2(WithWaste), Go: "geometry.WithWaste", Source: "navedtra",
	}
	cubicYards = &calc.Formula{
		ID: "cubic-yards", Title: calc.Text("Cubic feet to cubic yards"), Expr: "V/27",
		Result: calc.Var{Symbol: "V_y", Meaning: calc.Text("volume in cubic yards"), Unit: "yd³"},
		Vars:   []calc.Var{{Symbol: "V", Meaning: calc.Text("volume in cubic feet"), Unit: "ft³"}},
		Fn:     calc.FuncN(func(v []float64) float64 { return float64(InCubicYards(CubicFeet(v[0]))) }), Go: "geometry.InCubicYards", Source: "sp811",
	}
	orderYards  = orderIn("order-yd", calc.Text("Order, rounded up, in cubic yards"), "yd³")
	orderMetres = orderIn("order-m", calc.Text("Order, rounded up, in cubic metres"), "m³")
	truckLoads  = &calc.Formula{
		ID: "loads", Title: calc.Text("Number of loads"), Expr: "ceil(V_o/T)",
		Result: calc.Var{Symbol: "N", Meaning: sayLoads},
		Vars:   []calc.Var{delivered("V_o", sayOrder), delivered("T", sayTruck)},
		Fn:     calc.Func2(Loads), Go: "geometry.Loads", Source: "loads",
	}
	lastLoad = &calc.Formula{
		ID: "last-load", Title: calc.Text("Last load"), Expr: "V_o - (N - 1)*T",
		Result: delivered("V_l", calc.Text("last load")),
		Vars: []calc.Var{delivered("V_o", sayOrder), {Symbol: "N", Meaning: sayLoads},
			delivered("T", sayTruck)},
		Fn: calc.Func3(LastLoad), Go: "geometry.LastLoad", Source: "practice",
	}
	extraOver = &calc.Formula{
		ID: "extra", Title: calc.Text("Order over net volume"), Expr: "100*(V_o - V)/V",
		Result: calc.Var{Symbol: "p", Meaning: calc.Text("waste and rounding together"), Unit: "%", US: "%"},
		Vars:   []calc.Var{delivered("V_o", sayOrder), delivered("V", sayNet)},
		Fn:     calc.Func2(Extra), Go: "geometry.Extra", Source: "waste",
	}
)

// orderIn is the order in the unit the plant sells in, whoever reads it.
func orderIn(id string, title calc.Text, unit string) *calc.Formula {
	return &calc.Formula{
		ID: id, Title: title, Expr: "ceil(V/s)*s",
		Result: calc.Var{Symbol: "V_o", Meaning: sayOrder, Unit: unit},
		Vars: []calc.Var{{Symbol: "V", Meaning: sayWithWaste, Unit: unit},
			{Symbol: "s", Meaning: calc.Text("step the plant sells in"), Unit: unit}},
		Fn: calc.Func2(RoundUp), Go: "geometry.RoundUp", Source: "navedtra",
	}
}

var volumeFormulas = []*calc.Formula{
	centreLine, wallsVolume, prism, chordRadius, chordAngle, centreRadius, arcLength, arcVolume,
	netVolume, withWaste, cubicYards, orderYards, orderMetres, truckLoads, lastLoad, extraOver,
}
