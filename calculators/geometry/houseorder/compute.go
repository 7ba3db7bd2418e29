package houseorder

import (
	"coursebook/calculators/calc"
	"coursebook/calculators/geometry"
)

// corners is the number of corners to deduct at the outside face of a rectangle.
const corners = 4

const (
	tooThick = calc.Text("The core is thicker than this house allows. Check length, width and core.")
	headline = calc.Text("Order {order} in {loads} loads")
)

// compute sets the volume of the four walls and the order. It refuses a house whose walls
// leave no room inside.
func compute(r *calc.Recorder, in calc.Case) {
	length, width, height, core := in.Num("length"), in.Num("width"), in.Num("height"), in.Num("core")
	around := 2 * (length + width)
	if !calc.Over(outside(in, length), 2*core) || !calc.Over(outside(in, width), 2*core) {
		r.Refuse(calc.At("core"), tooThick)
		return
	}
	c := signed(in)
	r.Put("middle", r.Use(geometry.CentreLineFormula, around, c, core))
	net := r.Use(geometry.WallsVolumeFormula, core, float64(around*height), c, height)
	geometry.PutVolume(r, "net", net)
	order, _ := geometry.PutOrder(r, in, net)
	r.Headline(headline, calc.Amount("order", order, geometry.SoldDisplay(in)),
		calc.Count("loads", int(geometry.LoadsFormula.Value(order, geometry.Truck(in)))))
}

// signed returns the number of corners to deduct for the line that was measured.
func signed(in calc.Case) float64 {
	switch in.Choice("measured") {
	case atOutside:
		return corners
	case atInside:
		return -corners
	}
	return 0
}

// outside returns a length along the outside face, of one as measured, in m.
func outside(in calc.Case, length float64) float64 {
	switch in.Choice("measured") {
	case atOutside:
		return length
	case atInside:
		return length + 2*in.Num("core")
	}
	return length + in.Num("core")
}
