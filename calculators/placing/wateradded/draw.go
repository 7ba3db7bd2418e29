package wateradded

import (
	"coursebook/calculators/calc"
	"coursebook/calculators/figure"
	"coursebook/calculators/placing"
)

const (
	title = calc.Text("Water against the ticket")
	desc  = calc.Text(
		"You would add {water}. The ticket shows {withheld} withheld. Strength lost: {least} to {most}.",
	)
	labelLoss = calc.Text("Strength lost: {least} to {most}")
)

// draw returns the drawing of a result. A refused case gives an empty drawing.
func draw(v calc.Locale, in calc.Case, res calc.Result) figure.Drawing {
	if res.State != calc.OK {
		return figure.Drawing{}
	}
	added, withheld := in.Num("water"), in.Num("withheld")
	role := figure.Beyond
	if res.Out.Choice("verdict") == within {
		role = figure.Within
	}
	slots := []calc.Slot{calc.Amount("water", added, &water), calc.Amount("withheld", withheld, &water),
		calc.Amount(
			"least",
			res.Out.Num("strength-least"),
			&strengthLoss,
		), calc.Amount("most", res.Out.Num("strength-most"), &strengthLoss)}
	nodes, foot := figure.Bars(0, []figure.Bar{
		{Role: figure.Foam, Name: v.Say(labelWithheld), Text: placing.Write(v, withheld, &water), Size: withheld},
		{Role: role, Name: v.Say(labelWater), Text: placing.Write(v, added, &water), Size: added},
	}, 0)
	nodes = append(
		nodes,
		figure.Text(figure.Number, figure.Point{X: 10, Y: foot + 10}, figure.Start, v.Say(labelLoss, slots...)),
	)
	return figure.Drawing{
		Width:  figure.ChartWidth,
		Height: foot + 18,
		Title:  v.Say(title),
		Desc:   v.Say(desc, slots...),
		Nodes:  nodes,
	}
}
