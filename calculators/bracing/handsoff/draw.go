package handsoff

import (
	"math"

	"coursebook/calculators/calc"
	"coursebook/calculators/displays"
	"coursebook/calculators/figure"
	"coursebook/calculators/quantity"
)

const (
	title    = calc.Text("Left after the last concrete of each wall")
	labelRow = calc.Text("{left}, hands off at {off}")
)

// draw draws the time left of each wall after its last concrete, as bars. A refused case
// gives an empty drawing.
func draw(v calc.Locale, _ calc.Case, res calc.Result) figure.Drawing {
	if res.State != calc.OK {
		return figure.Drawing{}
	}
	var bars []figure.Bar
	desc := ""
	for _, w := range res.Out.Rows("lines") {
		role := figure.Within
		if w.Choice("plan") != planAfter {
			role = figure.Beyond
		}
		text := v.Say(
			labelRow,
			calc.WordSlot("left", quantity.Format(w.Num("left"), displays.MinutesAtMost, v.Style)),
			calc.WordSlot("off", calc.FormatClock(w.Num("off"))),
		)
		bars = append(bars, figure.Bar{Role: role, Name: w.Text("name"), Text: text, Size: math.Max(0, w.Num("left"))})
		desc += w.Text("name") + ": " + text + ". "
	}
	nodes, foot := figure.Bars(0, bars, 0)
	return figure.Drawing{Width: figure.ChartWidth, Height: foot, Title: v.Say(title), Desc: desc, Nodes: nodes}
}
