package pumpline

import (
	"coursebook/calculators/calc"
	"coursebook/calculators/displays"
	"coursebook/calculators/figure"
	"coursebook/calculators/placing"
)

const (
	title       = calc.Text("What line and hopper hold")
	desc        = calc.Text("Line and hose hold {line}, with the hopper {held}. The hanging hose weighs {mass} filled.")
	labelPiece  = calc.Text("{bore} × {length}")
	labelHopper = calc.Text("Hopper")
	labelBoth   = calc.Text("{yd} · {m}")
)

// draw returns the drawing of a result. A refused case gives an empty drawing.
func draw(v calc.Locale, in calc.Case, res calc.Result) figure.Drawing {
	if res.State != calc.OK {
		return figure.Drawing{}
	}
	var bars []figure.Bar
	for _, row := range in.Rows("lines") {
		size := placing.LineVolumeFormula.Value(row.Num("bore"), row.Num("length"))
		name := v.Say(
			labelPiece,
			calc.Amount("bore", row.Num("bore"), &displays.Part),
			calc.Amount("length", row.Num("length"), &displays.Height),
		)
		bars = append(bars, figure.Bar{Role: figure.Concrete, Name: name, Text: both(v, size), Size: size})
	}
	hopper := in.Num("hopper")
	bars = append(bars, figure.Bar{Role: figure.Foam, Name: v.Say(labelHopper), Text: both(v, hopper), Size: hopper})
	nodes, foot := figure.Bars(0, bars, 0)
	return figure.Drawing{Width: figure.ChartWidth, Height: foot, Title: v.Say(title), Nodes: nodes,
		Desc: v.Say(
			desc,
			calc.WordSlot("line", both(v, res.Out.Num("line-yd"))),
			calc.WordSlot("held", both(v, res.Out.Num("held-yd"))),
			calc.Amount("mass", res.Out.Num("hanging-mass"), &displays.MassUp),
		)}
}

// both returns a volume, si in m³, in cubic yards and in cubic metres.
func both(v calc.Locale, si float64) string {
	return v.Say(labelBoth, calc.Amount("yd", si, &displays.CubicYards), calc.Amount("m", si, &displays.CubicMetres))
}
