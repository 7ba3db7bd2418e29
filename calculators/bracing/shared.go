package bracing

import (
	"coursebook/calculators/calc"
	"coursebook/calculators/quantity"
)

// The ways gaps, heights and turns are written.
var (
	ThreadSize = &quantity.Display{Dim: quantity.Length,
		US:     quantity.UnitDisplay{Unit: "in", Step: 0.001},
		Metric: quantity.UnitDisplay{Unit: "mm", Step: 0.1}}
	Quarters = &quantity.Display{Dim: quantity.Number, US: quantity.UnitDisplay{Step: 0.25}}
)

// Texts that several fields share.
var SayStay = calc.Text("nowhere")

// SideOptions says where the string runs, seen from the braces.
var SideOptions = []calc.Option{
	{ID: "brace", Label: calc.Text("same side as the braces")},
	{ID: "other", Label: calc.Text("other side of the wall")},
}

var ConcreteOptions = []calc.Option{
	{ID: "none", Label: calc.Text("not placed yet")},
	{ID: "plastic", Label: calc.Text("placed, still plastic")},
	{ID: "stiff", Label: calc.Text("has stiffened")},
}

// MoveOptions say where the wall must go, seen from the string.
var MoveOptions = []calc.Option{
	{ID: "toward", Label: calc.Text("toward the string")},
	{ID: "away", Label: calc.Text("away from the string")},
	{ID: "stay", Label: SayStay},
}

var TurnOptions = []calc.Option{
	{ID: "lengthen", Label: calc.Text("lengthen")},
	{ID: "shorten", Label: calc.Text("shorten")},
	{ID: "leave", Label: calc.Text("leave")},
}

// The reasons of the limits.
const TightOwn = calc.Text("A plumb line and a tape do not show less.")
