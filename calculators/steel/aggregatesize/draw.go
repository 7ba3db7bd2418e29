package aggregatesize

import (
	"coursebook/calculators/calc"
	"coursebook/calculators/displays"
	"coursebook/calculators/figure"
	"coursebook/calculators/quantity"
)

const (
	title = calc.Text("Largest stone by each rule")
	desc  = calc.Text("Largest stone {most}, decided by: {rule}.")
)

// draw returns the drawing of a result. A refused case gives an empty drawing.
func draw(v calc.Locale, in calc.Case, res calc.Result) figure.Drawing {
	if res.State != calc.OK {
		return figure.Drawing{}
	}
	var bars []figure.Bar
	governs := calc.Text("")
	for _, line := range res.Out.Rows("rules") {
		role := figure.Concrete
		for _, o := range rules {
			if o.ID != line.Choice("rule") {
				continue
			}
			if o.ID == res.Out.Choice("governs") {
				role, governs = figure.Steel, o.Label
			}
			bars = append(
				bars,
				figure.Bar{
					Role: role,
					Name: v.Say(o.Label),
					Size: line.Num("most"),
					Text: quantity.Format(line.Num("most"), displays.PartAtMost, v.Style),
				},
			)
		}
	}
	nodes, foot := figure.Bars(0, bars, res.Out.Num("most"))
	return figure.Drawing{Width: figure.ChartWidth, Height: foot, Title: v.Say(title), Nodes: nodes,
		Desc: v.Say(
			desc,
			calc.Amount("most", res.Out.Num("most"), &displays.PartAtMost),
			calc.TextSlot("rule", governs),
		)}
}
