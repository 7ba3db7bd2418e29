package steel

import (
	"coursebook/calculators/calc"
	"coursebook/calculators/displays"
	"coursebook/calculators/figure"
	"coursebook/calculators/quantity"
)

// BarData gives the nominal size and mass of a bar and the weight of a bundle.
var BarData = &calc.Calculator{
	ID:       "bar-data",
	Title:    calc.Text("Bar sizes and weights"),
	Purpose:  calc.Text("What a bar measures and what a bundle of bars weighs."),
	In:       dataIn,
	Out:      dataOut,
	Formulas: []*calc.Formula{barWeight, roundArea, massPerLength, hookLength},
	Sources: []calc.Source{sourceA615, sourceG30,
		{ID: "pci", Author: "PCI", Title: "Design Handbook", Edition: "7th ed.", Where: "design aid 15.4.1, bars and hooks, p. 15-34",
			Status: calc.Confirmed, Link: "https://www.scribd.com/document/485243316/ASTM-Rebar-Chart"}},
	Cautions: []calc.Caution{
		{Level: calc.LevelCaution, Text: calc.Text("Bars bend and slide when they are lifted. Weigh the bundle here before anyone picks it up.")},
		{Level: calc.LevelNotice, Text: steelNotDesign},
	},
	Tables: []calc.Table{{ID: "weight", Title: calc.Text("Weight of one bar"),
		Note: calc.Text("One straight bar, by nominal mass, rounded up."),
		Out:  "weight", Set: []calc.Entry{{Path: "count", Text: "1"}},
		Down:   calc.Axis{Path: "bar", US: []string{"3", "4", "5", "6", "10m", "15m", "20m"}},
		Across: calc.Axis{Path: "length", US: []string{"4 ft", "8 ft", "10 ft", "20 ft", "40 ft"}, Metric: []string{"1.2 m", "2.4 m", "3 m", "6 m", "12 m"}}}},
	Compute: computeData,
	Draw:    drawData,
}

var dataIn = []calc.Field{
	{ID: "bar", Kind: calc.Choice, Usual: "4", Options: barOptions, Label: calc.Text("Bar"),
		Help: calc.Text("The mark is rolled onto the bar.")},
	{ID: "length", Display: &displays.Wall, Usual: "20 ft", Label: calc.Text("Length of one bar"),
		Min: &calc.Limit{At: 0, Unit: "ft", Open: true, Why: displays.AboveZero}, Max: &calc.Limit{At: 100, Unit: "ft", Why: displays.CheckUnit}},
	{ID: "count", Display: &displays.Count, Whole: true, Usual: "50", Label: calc.Text("How many bars"),
		Min: &calc.Limit{At: 1, Why: displays.CheckCount}, Max: &calc.Limit{At: 100000, Why: displays.CheckCount}},
}

var dataOut = []calc.Field{
	{ID: "weight", Display: &displays.MassUp, Lead: true, Label: calc.Text("Weight of all bars")},
	{ID: "one", Display: &displays.MassUp, Label: calc.Text("Weight of one bar")},
	{ID: "diameter", Display: &barDiameter, Label: calc.Text("Nominal diameter"),
		Help: calc.Text("The ribs stand out further.")},
	{ID: "area", Display: &barArea, Label: calc.Text("Nominal area")},
	{ID: "mass", Display: &barMass, Label: calc.Text("Mass per length")},
	{ID: "total", Display: &runLength, Label: calc.Text("Length of all bars")},
	{ID: "bend", Display: &displays.Part, Label: calc.Text("Hook: inside bend diameter")},
	{ID: "hook", Display: &hookSize, Label: calc.Text("Hook, 90°: outside to tail")},
}

// A hook's tail is rounded up to the half inch.
var hookSize = quantity.Display{Dim: quantity.Length, US: quantity.UnitDisplay{Unit: "in", Form: quantity.Inches, Step: 0.5, Rounding: quantity.Up}, Metric: quantity.UnitDisplay{Unit: "mm", Step: 10, Rounding: quantity.Up}}

const (
	meansD    = calc.Text("diameter of the bar")
	meansMass = calc.Text("mass per length")
	meansN    = calc.Text("number of bars")
	meansArea = calc.Text("area of the bar")
)

var barWeight = &calc.Formula{ID: "weight", Title: calc.Text("Weight of bars"), Expr: "w*L*n",
	Result: calc.Var{Symbol: "W", Meaning: calc.Text("weight"), Unit: "kg", US: "lb"},
	Vars: []calc.Var{{Symbol: "w", Meaning: meansMass, Unit: "kg/m", US: "lb/ft"},
		{Symbol: "L", Meaning: calc.Text("length of one bar"), Unit: "m", US: "ft"}, {Symbol: "n", Meaning: meansN}},
	Fn: calc.Func3(BarWeight), Go: "steel.BarWeight", Source: "a615"}

var roundArea = &calc.Formula{ID: "area", Title: calc.Text("Area of a round bar"), Expr: "pi*d^2/4",
	Result: calc.Var{Symbol: "A", Meaning: meansArea, Unit: "mm²", US: "in²"},
	Vars:   []calc.Var{{Symbol: "d", Meaning: meansD, Unit: "mm", US: "in"}},
	Fn:     calc.Func1(RoundArea), Go: "steel.RoundArea", Source: "pci",
	Limits: calc.Text("The standards round it. Their nominal area counts.")}

var massPerLength = &calc.Formula{ID: "mass", Title: calc.Text("Mass per length from the area"), Expr: "rho*A",
	Result: calc.Var{Symbol: "w", Meaning: meansMass, Unit: "kg/m", US: "lb/ft"},
	Vars: []calc.Var{{Symbol: "rho", Meaning: calc.Text("density of steel"), Unit: "kg/m³", US: "lb/ft³"},
		{Symbol: "A", Meaning: meansArea, Unit: "m²", US: "ft²"}},
	Fn: calc.Func2(MassPerLength), Go: "steel.MassPerLength", Source: "g30",
	Limits: calc.Text("The result uses the standard's mass, which is within 2% of this.")}

var hookLength = &calc.Formula{ID: "hook", Title: calc.Text("Standard 90° hook"), Expr: "12*d + k*d/2 + d",
	Result: calc.Var{Symbol: "A", Meaning: calc.Text("outside of the hook to the end of its tail"), Unit: "mm", US: "in"},
	Vars:   []calc.Var{{Symbol: "d", Meaning: meansD, Unit: "mm", US: "in"}, {Symbol: "k", Meaning: calc.Text("inside bend over bar diameter")}},
	Fn:     calc.Func2(HookLength), Go: "steel.HookLength", Source: "pci",
	Limits: calc.Text("Main bars, #3 to #18. Ties and stirrups bend tighter.")}

const (
	noteHeavy = calc.Text("One bar weighs {weight}. Carry it with two or more, or lift it by machine.")
	noteCSA   = calc.Text("For hooks of metric bars, see CSA A23.1 or the drawings.")
	drawBars  = calc.Text("Weight of the bar and its neighbours")
	drawBarsD = calc.Text("{bar}: {mass}. {count} bars weigh {weight}.")
)

// heavyLift is the mass above which one bar is more than one hand should
// carry, kg: common practice, 50 lb.
const heavyLift = 50 * 0.45359237

func computeData(r *calc.Recorder, in calc.Case) {
	b, length, count := barOf(in, "bar"), in.Num("length"), in.Num("count")
	one := b.Mass * length
	r.Put("weight", r.Use(barWeight, b.Mass, length, count))
	r.Put("one", one)
	r.Put("diameter", b.Diameter)
	r.Put("area", b.Area)
	r.Put("mass", b.Mass)
	r.Put("total", length*count)
	r.Use(roundArea, b.Diameter)
	r.Use(massPerLength, steelDensity, b.Area)
	if b.Bend > 0 {
		r.Put("bend", b.Bend*b.Diameter)
		r.Put("hook", r.Use(hookLength, b.Diameter, b.Bend))
	} else {
		r.Note(calc.LevelNotice, calc.At("bar"), noteCSA)
	}
	if one > heavyLift*(1+calc.Slack) {
		r.Note(calc.LevelCaution, calc.At("length"), noteHeavy, calc.Amount("weight", one, &displays.MassUp))
	}
}

// drawData sets the bar's mass per length beside its neighbours in the list.
func drawData(v calc.Locale, in calc.Case, res calc.Result) figure.Drawing {
	if res.State != calc.OK {
		return figure.Drawing{}
	}
	at := 0
	for i, b := range Bars {
		if b.ID == in.Choice("bar") {
			at = i
		}
	}
	var bars []figure.Bar
	for i := max(at-2, 0); i < min(at+3, len(Bars)); i++ {
		if Bars[i].canadian() != Bars[at].canadian() {
			continue
		}
		role := figure.Foam
		if i == at {
			role = figure.Steel
		}
		bars = append(bars, figure.Bar{Role: role, Name: v.Say(barOptions[i].Label), Text: quantity.Format(Bars[i].Mass, barMass, v.Style), Size: Bars[i].Mass})
	}
	nodes, foot := figure.Bars(0, bars, 0)
	return figure.Drawing{Width: figure.ChartWidth, Height: foot, Title: v.Say(drawBars), Nodes: nodes,
		Desc: v.Say(drawBarsD, calc.Said("bar", barOptions[at].Label), calc.Amount("mass", Bars[at].Mass, &barMass),
			calc.Amount("count", in.Num("count"), &displays.Count), calc.Amount("weight", res.Out.Num("weight"), &displays.MassUp))}
}
