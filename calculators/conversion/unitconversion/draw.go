package unitconversion

import (
	"math"

	"coursebook/calculators/calc"
	"coursebook/calculators/figure"
	"coursebook/calculators/quantity"
)

const (
	title = calc.Text("Both scales side by side")
	desc  = calc.Text("{own} on the one scale stands beside {other} on the other.")
)

// Layout of the scales, in user units.
const (
	scaleLeft = 44.0
	scaleWide = 252.0
	scaleTop  = 58.0  // of the upper scale
	scaleLow  = 92.0  // of the lower scale
	scaleFoot = 152.0 // of the drawing
	tickLong  = 8.0
	warmSpan  = 25.0 // K to each side of a temperature
)

// ruler maps a range of a quantity, in SI units, to x.
type ruler struct {
	from, to float64
	style    quantity.Style
}

// x returns the x of a value, si in SI; one outside the range is at its nearer
// end.
func (r ruler) x(si float64) float64 {
	return scaleLeft + scaleWide*math.Min(1, math.Max(0, (si-r.from)/(r.to-r.from)))
}

// stretch returns the range in SI drawn for a value, si in SI: from 0 to a quarter
// beyond it, or warmSpan to each side of a temperature.
func stretch(si float64, unit quantity.Unit) (from, to float64) {
	switch {
	case unit.Offset != 0:
		return si - warmSpan, si + warmSpan
	case si == 0:
		return 0, unit.Scale
	case si < 0:
		return 1.25 * si, 0
	}
	return 0, 1.25 * si
}

// ticks returns the marks of one unit on the line at y, away from the line on the
// given side: -1 above it, 1 below it.
func (r ruler) ticks(y, side float64, unit quantity.Unit) []figure.Node {
	low, high := unit.FromSI(r.from), unit.FromSI(r.to)
	apart := round125((high - low) / 4)
	text := y + 19
	if side < 0 {
		text = y - 12
	}
	nodes := []figure.Node{
		figure.Segment(figure.Ink, figure.Point{X: scaleLeft, Y: y}, figure.Point{X: scaleLeft + scaleWide, Y: y}),
	}
	last := math.Floor(high/apart + calc.Slack)
	for k := calc.Ceil(low / apart); k <= last; k++ {
		x := r.x(unit.ToSI(k * apart))
		nodes = append(
			nodes,
			figure.Segment(figure.Ink, figure.Point{X: x, Y: y}, figure.Point{X: x, Y: y + side*tickLong}),
			figure.Text(
				figure.Label,
				figure.Point{X: x, Y: text},
				figure.Middle,
				quantity.Format(k*apart, listed, r.style),
			),
		)
	}
	return nodes
}

// round125 returns the least of 1, 2 and 5 times a power of ten that is not below
// x, which is above 0.
func round125(x float64) float64 {
	power := math.Pow(10, math.Floor(math.Log10(x)))
	for _, m := range [3]float64{1, 2, 5} {
		if !calc.Under(m*power, x) {
			return m * power
		}
	}
	return 10 * power
}

// draw shows both usual units as two scales, and the value across them. A refused
// case gives an empty drawing.
func draw(v calc.Locale, in calc.Case, res calc.Result) figure.Drawing {
	if res.State != calc.OK {
		return figure.Drawing{}
	}
	kind := in.Choice("kind")
	si := in.Num(kind)
	upper, lower := find(outputs, kind+"-own"), find(outputs, kind+"-other")
	own, other := usualUnit(upper, v.Style.System), usualUnit(lower, v.Style.System)
	from, to := stretch(si, own)
	r := ruler{from: from, to: to, style: v.Style}
	x := r.x(si)
	nodes := append(r.ticks(scaleTop, -1, own), r.ticks(scaleLow, 1, other)...)
	ownText, otherText := written(v, si, upper), written(v, si, lower)
	nodes = append(
		nodes,
		figure.Segment(
			figure.Line,
			figure.Point{X: x, Y: scaleTop - tickLong},
			figure.Point{X: x, Y: scaleLow + tickLong},
		),
		figure.Text(figure.Number, figure.Point{X: figure.ChartWidth / 2, Y: 20}, figure.Middle, ownText),
		figure.Text(figure.Number, figure.Point{X: figure.ChartWidth / 2, Y: scaleFoot - 12}, figure.Middle, otherText),
	)
	return figure.Drawing{Width: figure.ChartWidth, Height: scaleFoot, Title: v.Say(title), Nodes: nodes,
		Desc: v.Say(desc, calc.WordSlot("own", ownText), calc.WordSlot("other", otherText))}
}

// written returns a value in its usual unit: rounded, or with all its digits if it
// is too small for the rounding.
func written(v calc.Locale, si float64, f *calc.Field) string {
	if tooFine(si, f, v.Style.System) {
		return quantity.Exact(si, *f.Display, v.Style)
	}
	return quantity.Format(si, *f.Display, v.Style)
}
