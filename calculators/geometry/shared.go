package geometry

import (
	"coursebook/calculators/calc"
	"coursebook/calculators/quantity"
)

// The hands of a corner block, by the side of its long leg seen from outside.
const (
	LeftHand  = "left"
	RightHand = "right"
)

// Ways to write that only this package needs. An order is rounded up in both
// units, so that it is never short in the other one. A triple laid out in
// feet or in metres keeps its unit for every reader.
var (
	ExtraShow = quantity.Display{Dim: quantity.Ratio, US: quantity.UnitDisplay{Unit: "%", Step: 0.1}}
	WasteShow = quantity.Display{Dim: quantity.Ratio, US: quantity.UnitDisplay{Unit: "%", Step: 0.5}}
	TurnAngle = quantity.Display{Dim: quantity.Angle, US: quantity.UnitDisplay{Unit: "°", Step: 0.1}}
)

var VolumeUnits = []calc.Option{
	{ID: "yd3", Label: calc.Text("cubic yards (yd³)")},
	{ID: "m3", Label: calc.Text("cubic metres (m³)")},
}

// The frame of the drawing, in user units. At 330 px of a phone one unit is
// about one pixel.
const (
	FrameMargin = 10.0
	LineStep    = 20.0 // from one line of text to the next
)

func SoldInYd(c calc.Case) bool { return c.Choice("sold-in") == "yd3" }

func SoldInM(c calc.Case) bool { return c.Choice("sold-in") == "m3" }

// PutVolume fills both units of a pair.
func PutVolume(r *calc.Recorder, id string, si float64) {
	r.Put(id+"-yd", si)
	r.Put(id+"-m", si)
}
