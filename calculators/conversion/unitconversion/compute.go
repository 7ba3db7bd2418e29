package unitconversion

import (
	"math"

	"coursebook/calculators/calc"
	"coursebook/calculators/conversion"
	"coursebook/calculators/quantity"
)

const (
	tooSmall  = calc.Text("This is too small for {unit}. The list has it in smaller units.")
	inUnitFor = calc.Text("In {unit}")
)

// leastSteps is how many steps of rounding a value must have to be shown in a
// usual unit: with fewer, rounding would change it by more than a twentieth.
const leastSteps = 10

func compute(r *calc.Recorder, in calc.Case) {
	kind := in.Choice("kind")
	si := in.Num(kind)
	for _, id := range [2]string{kind + "-own", kind + "-other"} {
		tell(r, kind, si, find(outputs, id))
	}
	units := quantity.Units(find(inputs, kind).Display.Dim)
	rows := make([]calc.Case, len(units))
	for i, u := range units {
		rows[i] = r.NewRow("units").With("value", calc.Num(u.FromSI(si))).With("unit", calc.TextOf(u.Symbol))
	}
	r.PutRows("units", rows)
}

// find is the field with an ID; every kind has its input and its pair.
func find(fields []calc.Field, id string) *calc.Field {
	for i := range fields {
		if fields[i].ID == id {
			return &fields[i]
		}
	}
	panic("conversion: no field " + id)
}

// tell puts a value in one usual unit and works it as a step. Since the two
// readers' pairs are the same two units, a value too small for either unit is
// shown to neither reader.
func tell(r *calc.Recorder, kind string, si float64, f *calc.Field) {
	unit := usual(f, quantity.US)
	switch {
	case unit.Symbol == "°C":
		r.Use(conversion.CelsiusFormula, si)
	case unit.Symbol == "°F":
		r.Use(conversion.FahrenheitFormula, si)
	default:
		r.UseFor(inUnitFor, []calc.Slot{calc.WordSlot("unit", unit.Symbol)}, conversion.InUnitFormula, si, unit.Scale)
	}
	if small(si, f, quantity.US) {
		r.Note(calc.LevelNotice, calc.At(kind), tooSmall, calc.WordSlot("unit", unit.Symbol))
	} else if !small(si, f, quantity.Metric) {
		r.Put(f.ID, si)
	}
}

// usual is the unit that an output is shown in.
func usual(f *calc.Field, sys quantity.System) quantity.Unit {
	u, _ := quantity.Find(f.Display.In(sys).Unit)
	return u
}

// small reports whether rounding would spoil a value shown in a usual unit. The
// step of a tape is in inches. A temperature is never small: its zero is no
// nothing.
func small(si float64, f *calc.Field, sys quantity.System) bool {
	scale, unit := f.Display.In(sys), usual(f, sys)
	if scale.Form != quantity.Decimal {
		unit, _ = quantity.Find("in")
	}
	return unit.Offset == 0 && si != 0 && math.Abs(si) < leastSteps*scale.Step*unit.Scale
}
