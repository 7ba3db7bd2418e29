// Package steel holds what a crew works out about reinforcing bars: their
// data, the take-off of a wall, the laps on a drawing, and the stone that
// still passes between bars and forms.
package steel

import (
	"coursebook/calculators/calc"
	"coursebook/calculators/quantity"
)

// The units in which the bars' standards give their sizes, in SI.
const (
	inch    = 0.0254
	lbPerFt = 0.45359237 / 0.3048
	mm      = 0.001
)

// Bar is one size of deformed bar with its nominal dimensions.
type Bar struct {
	ID       string
	Diameter float64 // m
	Area     float64 // m²
	Mass     float64 // kg/m
	Bend     float64 // inside bend of a standard hook over Diameter; 0: not known here
}

// Bars are the sizes of ASTM A615, table 1, by number, and of CSA G30.18 by
// designation. A number is about the diameter in eighths of an inch, a
// designation about the diameter in mm. Bends are those of ACI 318 for the
// hooks of main bars.
var Bars = [...]Bar{
	{"3", 0.375 * inch, 0.11 * inch * inch, 0.376 * lbPerFt, 6},
	{"4", 0.500 * inch, 0.20 * inch * inch, 0.668 * lbPerFt, 6},
	{"5", 0.625 * inch, 0.31 * inch * inch, 1.043 * lbPerFt, 6},
	{"6", 0.750 * inch, 0.44 * inch * inch, 1.502 * lbPerFt, 6},
	{"7", 0.875 * inch, 0.60 * inch * inch, 2.044 * lbPerFt, 6},
	{"8", 1.000 * inch, 0.79 * inch * inch, 2.670 * lbPerFt, 6},
	{"9", 1.128 * inch, 1.00 * inch * inch, 3.400 * lbPerFt, 8},
	{"10", 1.270 * inch, 1.27 * inch * inch, 4.303 * lbPerFt, 8},
	{"11", 1.410 * inch, 1.56 * inch * inch, 5.313 * lbPerFt, 8},
	{"14", 1.693 * inch, 2.25 * inch * inch, 7.65 * lbPerFt, 10},
	{"18", 2.257 * inch, 4.00 * inch * inch, 13.60 * lbPerFt, 10},
	{"10m", 11.3 * mm, 100 * mm * mm, 0.785, 0},
	{"15m", 16.0 * mm, 200 * mm * mm, 1.570, 0},
	{"20m", 19.5 * mm, 300 * mm * mm, 2.355, 0},
	{"25m", 25.2 * mm, 500 * mm * mm, 3.925, 0},
	{"30m", 29.9 * mm, 700 * mm * mm, 5.495, 0},
	{"35m", 35.7 * mm, 1000 * mm * mm, 7.850, 0},
	{"45m", 43.7 * mm, 1500 * mm * mm, 11.775, 0},
	{"55m", 56.4 * mm, 2500 * mm * mm, 19.625, 0},
}

// barOf finds the bar chosen in a field.
func barOf(in calc.Case, field string) Bar {
	for _, b := range Bars {
		if b.ID == in.Choice(field) {
			return b
		}
	}
	return Bar{}
}

// canadian tells a bar of CSA G30.18 from one of ASTM A615.
func (b Bar) canadian() bool { return b.ID[len(b.ID)-1] == 'm' }

// barOptions offers every size, by its mark with its nominal size.
var barOptions = []calc.Option{
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

// The ways bars are written.
var (
	barDiameter = quantity.Display{Dim: quantity.Length, US: quantity.UnitDisplay{Unit: "in", Step: 0.001}, Metric: quantity.UnitDisplay{Unit: "mm", Step: 0.1}}
	barArea     = quantity.Display{Dim: quantity.Area, US: quantity.UnitDisplay{Unit: "in²", Step: 0.01}, Metric: quantity.UnitDisplay{Unit: "mm²", Step: 1}}
	barMass     = quantity.Display{Dim: quantity.MassPerLength, US: quantity.UnitDisplay{Unit: "lb/ft", Step: 0.001}, Metric: quantity.UnitDisplay{Unit: "kg/m", Step: 0.001}}
	runLength   = quantity.Display{Dim: quantity.Length, US: quantity.UnitDisplay{Unit: "ft", Step: 1, Rounding: quantity.Up}, Metric: quantity.UnitDisplay{Unit: "m", Step: 0.5, Rounding: quantity.Up}}
	// A lap is rounded up, by the inch or by 10 mm as the tables are.
	lapLength = quantity.Display{Dim: quantity.Length, US: quantity.UnitDisplay{Unit: "in", Form: quantity.Inches, Step: 1, Rounding: quantity.Up}, Metric: quantity.UnitDisplay{Unit: "mm", Step: 10, Rounding: quantity.Up}}
)

// The sources of the bars' sizes.
var (
	sourceA615 = calc.Source{ID: "a615", Author: "ASTM", Title: "A615/A615M, Deformed and plain carbon-steel bars", Where: "table 1, as reprinted by Concrete Construction",
		Status: calc.Secondary, Link: "http://www.concreteconstruction.net/how-to/rebar-size-and-weights_o"}
	sourceG30 = calc.Source{ID: "g30", Author: "CSA", Title: "G30.18, Carbon steel bars for concrete reinforcement", Where: "bar sizes, as repeated by an engineers' list; 55M mass from its area",
		Status: calc.Secondary, Link: "http://seaintarchive.org/mailarchive/2002c/msg01442.html"}
)

const steelNotDesign = calc.Text("The drawings and the engineer decide size, spacing and laps. Ask before you swap or leave out a bar.")
