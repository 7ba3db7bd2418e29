package pressure

import (
	"math"
	"slices"

	"coursebook/calculators/calc"
	"coursebook/calculators/displays"
	"coursebook/calculators/figure"
	"coursebook/calculators/quantity"
)

// The names of the three methods in the comparison.
const (
	nameACI   = calc.Text("ACI 347")
	nameCIRIA = calc.Text("CIRIA 108")
	nameDIN   = calc.Text("DIN 18218")

	capACI = calc.Text(
		"ACI 347 uses United States cement types, each with a coefficient. The slump must be 7 in. (175 mm) or less.",
	)
	capCIRIA = calc.Text(
		"CIRIA 108 uses groups of concrete and the height of the form. Admixtures count by what they do to the set.",
	)
	capDIN = calc.Text(
		"DIN 18218 uses flow class and setting time. Its value is characteristic: no partial factor is in it yet.",
	)
	capOutside = calc.Text("This pour is beyond the limits of {method}. Its line is the full fluid head.")
	capLowest  = calc.Text("Do not pick the lowest of the three. Ask which method the form maker's rating goes with.")

	figCompare = calc.Text("Pressure by depth, three methods")
	figSays    = calc.Text(
		"For {height} of concrete, the greatest pressure is {aci} by ACI 347, {ciria} by CIRIA 108 and {din} by DIN " +
			"18218. Full fluid head at the foot: {head}.",
	)
	figX    = calc.Text("Pressure")
	figY    = calc.Text("Depth from the top")
	figLine = calc.Text("{method}: {pressure}")
)

// methodResult is the result of one method with its name, ID and role.
type methodResult struct {
	id   string
	name calc.Text
	role figure.Role
	Greatest
}

func (p SharedCase) methods() [3]methodResult {
	return [3]methodResult{
		{"aci", nameACI, figure.Line, p.aci()},
		{"ciria", nameCIRIA, figure.Measure, p.CIRIA()},
		{"din", nameDIN, figure.Ink, p.DIN()},
	}
}

// PourOf reads a pour in the units of the European methods. The form is as high
// as the placement, and the setting time is for the temperature of the concrete;
// a calculator that asks for these replaces them.
func PourOf(in calc.Case) SharedCase {
	p := SharedCase{
		Height: in.Num("height"), Form: in.Num("height"),
		Rise:   calc.From(in.Num("rise"), "m/h"),
		Weight: calc.From(in.Num("weight"), "kN/m³"),
		Temp:   calc.From(in.Num("temperature"), "°C"),
		Set:    calc.From(in.Num("set"), "h"),
		Cement: Cement(in.Choice("cement")), Retarded: in.Choice("admixture") != AdmixNone,
		Class: in.Choice("class"), Way: in.Choice("way"),
	}
	p.Ref = p.Temp
	return p
}

// KPa converts x kPa to SI, Pa.
func KPa(x float64) float64 { return calc.SI(x, "kPa") }

// PutComparison sets the outputs that both calculators share; result is that of
// the calculator's method. It records the depth of the fluid zone as a step.
func PutComparison(r *calc.Recorder, in calc.Case, p SharedCase, result Greatest) {
	r.Put("pressure", KPa(result.Pressure))
	r.PutChoice("rule", result.rule)
	r.Put("head", KPa(p.head()))
	r.Put("fluid-depth", r.Use(FluidDepthFormula, KPa(result.Pressure), in.Num("weight")))
	var rows []calc.Case
	for _, m := range p.methods() {
		rows = append(rows, r.NewRow("methods").
			With("method", calc.ChoiceOf(m.id)).With("pressure", calc.Num(KPa(m.Pressure))).
			With("depth", calc.Num(m.Pressure/p.Weight)).With("rule", calc.ChoiceOf(m.rule)))
		if m.rule == SetByOutside {
			r.Note(calc.LevelNotice, calc.Path{}, capOutside, calc.TextSlot("method", m.name))
		}
	}
	r.PutRows("methods", rows)
	for _, text := range []calc.Text{capACI, capCIRIA, capDIN} {
		r.Note(calc.LevelNotice, calc.Path{}, text)
	}
	r.Note(calc.LevelCaution, calc.Path{}, capLowest)
}

// marks returns the depths in m of the names of the lines. The line with the
// lowest pressure is named topmost, each name is below the fluid part of its
// line, and the names do not overlap.
func (p SharedCase) marks() (at [3]float64) {
	const apart = 0.11
	methods := p.methods()
	order := []int{0, 1, 2}
	slices.SortStableFunc(order, func(a, b int) int {
		if methods[a].Pressure > methods[b].Pressure {
			return -1
		}
		return 1
	})
	below := 1 + apart
	for i, k := range order {
		bend := methods[k].Pressure / p.head()
		share := math.Min(below-apart, math.Max(0.95-float64(apart*float64(i)), bend))
		at[k], below = share*p.Height, share
	}
	return at
}

// ComparisonFigure plots the three methods by depth. The lines are named, so that
// they are not distinguished by colour alone.
func ComparisonFigure(v calc.Locale, p SharedCase) figure.Drawing {
	top := p.head()
	text := func(kpa float64) string { return quantity.Format(KPa(kpa), displays.Pressure, v.Style) }
	depth := func(m float64) string { return quantity.Format(m, displays.Height, v.Style) }
	x := figure.Axis{
		Title: v.Say(figX),
		To:    top,
		Marks: []figure.Mark{{At: top / 2, Text: text(top / 2)}, {At: top, Text: ""}},
	}
	y := figure.Axis{Title: v.Say(figY), From: -p.Height, Marks: []figure.Mark{
		{At: 0, Text: "0"}, {At: -p.Height / 2, Text: depth(p.Height / 2)}, {At: -p.Height, Text: depth(p.Height)}}}
	curves := []figure.Curve{
		{Role: figure.Limit, Name: v.Say(figLine, calc.TextSlot("method", headTitle),
			calc.WordSlot("pressure", text(top))),
			Points: []figure.Point{{}, {X: top, Y: -p.Height}}},
	}
	var markers []figure.Marker
	var slots []calc.Slot
	marks := p.marks()
	for i, m := range p.methods() {
		curves = append(
			curves,
			figure.Curve{
				Role:   m.role,
				Name:   v.Say(figLine, calc.TextSlot("method", m.name), calc.WordSlot("pressure", text(m.Pressure))),
				Points: []figure.Point{{}, {X: m.Pressure, Y: -m.Pressure / p.Weight}, {X: m.Pressure, Y: -p.Height}},
			},
		)
		at := figure.Point{X: math.Min(m.Pressure, p.Weight*marks[i]), Y: -marks[i]}
		markers = append(markers, figure.Marker{Role: m.role, At: at, Text: v.Say(m.name)})
		slots = append(slots, calc.WordSlot(m.id, text(m.Pressure)))
	}
	nodes, foot := figure.Plot(x, y, curves, markers)
	slots = append(slots, calc.WordSlot("height", depth(p.Height)), calc.WordSlot("head", text(top)))
	return figure.Drawing{
		Width:  figure.ChartWidth,
		Height: foot,
		Title:  v.Say(figCompare),
		Desc:   v.Say(figSays, slots...),
		Nodes:  nodes,
	}
}
