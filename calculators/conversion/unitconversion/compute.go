package unitconversion

import (
	"math"

	"coursebook/calculators/calc"
	"coursebook/calculators/conversion"
	"coursebook/calculators/quantity"
)

const (
	tooSmall  = calc.Text("This is too small for {unit}. The list has it in smaller units.")
	labelUnit = calc.Text("In {unit}")
)

// leastSteps is the least value shown in a usual unit, in steps of its rounding:
// below it rounding would change the value by more than a twentieth.
const leastSteps = 10

// compute sets the value in its usual units and in all units. It refuses nothing.
func compute(r *calc.Recorder, in calc.Case) {
	kind := in.Choice("kind")
	si := in.Num(kind)
	for _, id := range [2]string{kind + "-own", kind + "-other"} {
		putIn(r, kind, si, find(outputs, id))
	}
	units := quantity.Units(find(inputs, kind).Display.Dim)
	rows := make([]calc.Case, len(units))
	for i, u := range units {
		rows[i] = r.NewRow("units").With("value", calc.Num(u.FromSI(si))).With("unit", calc.TextOf(u.Symbol))
	}
	r.PutRows("units", rows)
}

// find returns the field with an ID. It panics if there is none.
func find(fields []calc.Field, id string) *calc.Field {
	for i := range fields {
		if fields[i].ID == id {
			return &fields[i]
		}
	}
	panic("conversion: no field " + id)
}

// putIn sets the output f to a value, si in SI, in one usual unit, and records the
// step. A value too small for the unit of the output in either system is not set:
// both systems have the same pair of units. It is noted if it is too small for the
// US unit.
func putIn(r *calc.Recorder, kind string, si float64, f *calc.Field) {
	unit := usualUnit(f, quantity.US)
	switch {
	case unit.Symbol == "°C":
		r.Use(conversion.CelsiusFormula, si)
	case unit.Symbol == "°F":
		r.Use(conversion.FahrenheitFormula, si)
	default:
		r.UseFor(labelUnit, []calc.Slot{calc.WordSlot("unit", unit.Symbol)}, conversion.InUnitFormula, si, unit.Scale)
	}
	if tooFine(si, f, quantity.US) {
		r.Note(calc.LevelNotice, calc.At(kind), tooSmall, calc.WordSlot("unit", unit.Symbol))
	} else if !tooFine(si, f, quantity.Metric) {
		r.Put(f.ID, si)
	}
}

// usualUnit returns the unit of an output in a system.
func usualUnit(f *calc.Field, sys quantity.System) quantity.Unit {
	u, _ := quantity.Find(f.Display.In(sys).Unit)
	return u
}

// tooFine reports whether a value is too small for the rounding of its usual unit.
// The step of a length in feet and inches is in inches. A temperature is never too
// small: its zero is a point on a scale.
func tooFine(si float64, f *calc.Field, sys quantity.System) bool {
	scale, unit := f.Display.In(sys), usualUnit(f, sys)
	if scale.Form != quantity.Decimal {
		unit, _ = quantity.Find("in")
	}
	return unit.Offset == 0 && si != 0 && math.Abs(si) < leastSteps*scale.Step*unit.Scale
}
