package geometry

import (
	"math"

	"coursebook/calculators/calc"
	"coursebook/calculators/quantity"
)

// computeOrder turns the net volume into an order, loads, and a check of the
// order the reader has in hand.
func computeOrder(r *calc.Recorder, in calc.Case, net float64) {
	need := r.Use(withWaste, net, in.Num("waste"))
	order, truck := plantOrder(r, in, need)
	loads := r.Use(truckLoads, order, truck)
	last := lastLoad.Value(order, loads, truck)
	putVolume(r, "with-waste", need)
	putVolume(r, "order", order)
	putVolume(r, "last-load", last)
	r.Put("loads", loads)
	r.Put("extra", extraOver.Value(order, net))
	if loads > 1 && last < smallShare*truck {
		r.Note(calc.LevelNotice, calc.At(truckField(in)), smallLast, calc.Amount("load", last, showOf(in.Choice("sold-in"))))
	}
	if in.Has("order") {
		checkOrder(r, in, order, need)
	}
}

// plantOrder rounds up in the unit the plant sells in. Both volumes are SI.
func plantOrder(r *calc.Recorder, in calc.Case, need float64) (order, truck float64) {
	if in.Choice("sold-in") == "m3" {
		return r.Use(orderMetres, need, in.Num("step-m")), in.Num("truck-m")
	}
	r.Use(cubicYards, need)
	return r.Use(orderYards, need, in.Num("step-yd")), in.Num("truck-yd")
}

func truckField(in calc.Case) string {
	if in.Choice("sold-in") == "m3" {
		return "truck-m"
	}
	return "truck-yd"
}

func showOf(unit string) *quantity.Display {
	if unit == "m3" {
		return inMetres
	}
	return inYards
}

// checkOrder compares the typed order with the computed one. A number that
// fits in the other unit is said plainly to do so.
func checkOrder(r *calc.Recorder, in calc.Case, order, need float64) {
	unit, other := in.Choice("order-unit"), "m3"
	if unit == "m3" {
		other = "yd3"
	}
	own, swapped := showOf(unit), showOf(other)
	typed := calc.SI(in.Num("order"), own.US.Unit)
	putVolume(r, "difference", typed-order)
	mistaken := calc.SI(in.Num("order"), swapped.US.Unit)
	switch {
	case !far(typed, order) && calc.Over(need, typed):
		r.Note(calc.LevelNotice, calc.At("order"), runsShort, calc.Amount("typed", typed, own), calc.Amount("need", need, own))
	case !far(typed, order):
	case !far(mistaken, order):
		r.Note(calc.LevelAsk, calc.At("order-unit"), otherUnit, calc.Amount("typed", typed, own), calc.Amount("right", order, swapped))
	default:
		r.Note(calc.LevelAsk, calc.At("order"), farOff, calc.Amount("typed", typed, own), calc.Amount("right", order, own))
	}
}

// far tells whether two volumes differ by more than farShare of the computed.
func far(typed, computed float64) bool {
	return math.Abs(typed-computed) > farShare*computed*(1+1e-9)
}
