// Package steel holds reinforcing bars and their equations: sizes and masses,
// development and lap lengths, take-off, and the aggregate that passes between
// bars.
package steel

import (
	"coursebook/calculators/calc"
	"coursebook/calculators/quantity"
)

// Units of the standards for bars, in m.
const (
	Inch = 0.0254
	Mm   = 0.001
)

// BarOptions are the options of a choice of bar, in the order of Bars.
var BarOptions = []calc.Option{
	{ID: "3", Label: calc.Text("#3 (3/8 in)")},
	{ID: "4", Label: calc.Text("#4 (1/2 in)")},
	{ID: "5", Label: calc.Text("#5 (5/8 in)")},
	{ID: "6", Label: calc.Text("#6 (3/4 in)")},
	{ID: "7", Label: calc.Text("#7 (7/8 in)")},
	{ID: "8", Label: calc.Text("#8 (1 in)")},
	{ID: "9", Label: calc.Text("#9 (1-1/8 in)")},
	{ID: "10", Label: calc.Text("#10 (1-1/4 in)")},
	{ID: "11", Label: calc.Text("#11 (1-3/8 in)")},
	{ID: "14", Label: calc.Text("#14 (1-3/4 in)")},
	{ID: "18", Label: calc.Text("#18 (2-1/4 in)")},
	{ID: "10m", Label: calc.Text("10M (11 mm)")},
	{ID: "15m", Label: calc.Text("15M (16 mm)")},
	{ID: "20m", Label: calc.Text("20M (20 mm)")},
	{ID: "25m", Label: calc.Text("25M (25 mm)")},
	{ID: "30m", Label: calc.Text("30M (30 mm)")},
	{ID: "35m", Label: calc.Text("35M (36 mm)")},
	{ID: "45m", Label: calc.Text("45M (44 mm)")},
	{ID: "55m", Label: calc.Text("55M (56 mm)")},
}

// RunLength displays the total length of bars, rounded up.
var RunLength = quantity.Display{
	Dim:    quantity.Length,
	US:     quantity.UnitDisplay{Unit: "ft", Step: 1, Rounding: quantity.Up},
	Metric: quantity.UnitDisplay{Unit: "m", Step: 0.5, Rounding: quantity.Up},
}

// Sources of the sizes of bars.
var (
	SourceA615 = calc.Source{
		ID:     "a615",
		Author: "ASTM",
		Title:  "A615/A615M, Deformed and plain carbon-steel bars",
		Where:  calc.Text("table 1, as reprinted by Concrete Construction"),
		Status: calc.Secondary,
		Link:   "http://www.concreteconstruction.net/how-to/rebar-size-and-weights_o",
	}
	SourceG30 = calc.Source{
		ID:     "g30",
		Author: "CSA",
		Title:  "G30.18, Carbon steel bars for concrete reinforcement",
		Where:  calc.Text("bar sizes, as repeated by an engineers' list; 55M mass from its area"),
		Status: calc.Secondary,
	}
)

// SteelNotDesign is a caution of every calculator of the topic.
const SteelNotDesign = calc.Text(
	"The drawings and the engineer decide size, spacing and laps. Ask before you swap or leave out a bar.",
)

const (
	meansD = calc.Text("diameter of the bar")
	meansN = calc.Text("number of bars")
)

// BarOf returns the bar chosen in a field, or the zero Bar.
func BarOf(in calc.Case, field string) Bar {
	for _, b := range Bars {
		if b.ID == in.Choice(field) {
			return b
		}
	}
	return Bar{}
}
