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

// Formats that only this topic uses.
var (
	ExtraDisplay = quantity.Display{Dim: quantity.Ratio, US: quantity.UnitDisplay{Unit: "%", Step: 0.1}}
	WasteDisplay = quantity.Display{Dim: quantity.Ratio, US: quantity.UnitDisplay{Unit: "%", Step: 0.5}}
	TurnAngle    = quantity.Display{Dim: quantity.Angle, US: quantity.UnitDisplay{Unit: "°", Step: 0.1}}
)

// VolumeUnits are the units that a plant sells concrete in.
var VolumeUnits = []calc.Option{
	{ID: "yd3", Label: calc.Text("cubic yards (yd³)")},
	{ID: "m3", Label: calc.Text("cubic meters (m³)")},
}

// The frame of the drawings, in user units; one unit is about one pixel on a
// phone 330 px wide.
const (
	FrameMargin = 10.0
	LineStep    = 20.0 // from one line of text to the next
)

// SoldInYd reports whether the plant sells in cubic yards.
func SoldInYd(c calc.Case) bool { return c.Choice("sold-in") == "yd3" }

// SoldInM reports whether the plant sells in cubic metres.
func SoldInM(c calc.Case) bool { return c.Choice("sold-in") == "m3" }

// PutVolume sets the outputs id-yd and id-m to a volume, si in m³.
func PutVolume(r *calc.Recorder, id string, si float64) {
	r.Put(id+"-yd", si)
	r.Put(id+"-m", si)
}

// WideHole refuses an opening that is wider than every wall.
const WideHole = calc.Text("This is wider than the longest wall, {limit}.")
