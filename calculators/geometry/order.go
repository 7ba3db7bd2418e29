package geometry

import (
	"coursebook/calculators/calc"
	"coursebook/calculators/displays"
	"coursebook/calculators/quantity"
)

// SmallLast notes a small last load.
const SmallLast = calc.Text("The last load is small: {load}. Ask the plant, or even out the loads.")

// smallShare is the share of a truck below which plants charge extra for a last
// load or delay it.
const smallShare = 0.25

// PutOrder sets the order and the loads for a net volume in m³, of inputs with waste, with
// what the plant sells in, its step and its truck; it notes a small last load. It returns
// the order and the volume with waste, in m³.
func PutOrder(r *calc.Recorder, in calc.Case, net float64) (order, need float64) {
	need = r.Use(WithWasteFormula, net, in.Num("waste"))
	order, truck := plantOrder(r, in, need)
	loads := r.Use(LoadsFormula, order, truck)
	last := LastLoadFormula.Value(order, loads, truck)
	PutVolume(r, "with-waste", need)
	PutVolume(r, "order", order)
	PutVolume(r, "last-load", last)
	r.Put("loads", loads)
	r.Put("extra", ExtraFormula.Value(order, net))
	if loads > 1 && last < smallShare*truck {
		field := "truck-yd"
		if SoldInM(in) {
			field = "truck-m"
		}
		r.Note(calc.LevelNotice, calc.At(field), SmallLast, calc.Amount("load", last, SoldDisplay(in)))
	}
	return order, need
}

// plantOrder returns the need rounded up in the unit the plant sells in, and the
// size of a truck, in m³. It records the worked step.
func plantOrder(r *calc.Recorder, in calc.Case, need float64) (order, truck float64) {
	if SoldInM(in) {
		return r.Use(OrderMetresFormula, need, in.Num("step-m")), Truck(in)
	}
	r.Use(InCubicYardsFormula, need)
	return r.Use(OrderYardsFormula, need, in.Num("step-yd")), Truck(in)
}

// Truck returns the size of a truck in m³, of the input for the unit the plant sells in.
func Truck(in calc.Case) float64 {
	if SoldInM(in) {
		return in.Num("truck-m")
	}
	return in.Num("truck-yd")
}

// SoldDisplay returns the display of volumes in the unit the plant sells in.
func SoldDisplay(in calc.Case) *quantity.Display {
	if SoldInM(in) {
		return &displays.CubicMetres
	}
	return &displays.CubicYards
}
