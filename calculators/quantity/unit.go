package quantity

import "strings"

// Unit is a unit of one dimension. A value x in the unit is
// (x + Offset) * Scale in SI.
type Unit struct {
	Symbol  string    // as it is printed: lb/ft³
	Dim     Dimension // what it measures
	Scale   float64   // SI units per unit
	Offset  float64   // added before scaling; only temperatures have one
	Aliases []string  // further ways to type it, in the form fold gives
}

// ToSI converts x in the unit to SI.
func (u Unit) ToSI(x float64) float64 { return (x + u.Offset) * u.Scale }

// FromSI converts an SI value to the unit.
func (u Unit) FromSI(si float64) float64 { return si/u.Scale - u.Offset }

// Find finds a unit by its symbol or an alias: ft³, ft^3, ft3, pcf. Where a
// symbol is short for two kinds (lb is a mass, and what a hand calls a
// force), Find gives the unit whose printed symbol it is. The empty symbol
// is the unit of a plain number.
func Find(symbol string) (Unit, bool) {
	for _, u := range units {
		if u.Symbol == symbol {
			return u, true
		}
	}
	folded := fold(symbol)
	for _, u := range units {
		if fold(u.Symbol) == folded {
			return u, true
		}
	}
	for _, u := range units {
		if u.alias(folded, same) {
			return u, true
		}
	}
	return Unit{}, false
}

// Units lists the units of a dimension in the order of the table.
func Units(d Dimension) []Unit {
	var of []Unit
	for _, u := range units {
		if u.Dim == d {
			of = append(of, u)
		}
	}
	return of
}

// lookup finds a typed unit, first among those of the wanted dimension, so
// that lb is a force where a force is asked for. Case counts only where the
// exact writing names a unit.
func lookup(typed string, want Dimension) (Unit, bool) {
	folded := fold(typed)
	if folded == "" {
		return Unit{}, false
	}
	for _, equal := range []func(a, b string) bool{same, strings.EqualFold} {
		for _, u := range units {
			if u.Dim == want && (equal(fold(u.Symbol), folded) || u.alias(folded, equal)) {
				return u, true
			}
		}
	}
	for _, equal := range []func(a, b string) bool{same, strings.EqualFold} {
		for _, u := range units {
			if equal(fold(u.Symbol), folded) || u.alias(folded, equal) {
				return u, true
			}
		}
	}
	return Unit{}, false
}

func same(a, b string) bool { return a == b }

func (u Unit) alias(folded string, equal func(a, b string) bool) bool {
	for _, a := range u.Aliases {
		if equal(a, folded) {
			return true
		}
	}
	return false
}

var folding = strings.NewReplacer("²", "2", "³", "3", "^", "", ".", "",
	"·", "", "⋅", "", "*", "", "º", "°", "˚", "°", "(", "", ")", "", "ₙ", "n", "µ", "μ")

// fold brings the ways to type one unit together: lb / ft^3, lb/ft³ and
// lb/ft3 are one, so are ft·lbf and ft lbf, cu. yd. and cu yd. A space before
// a digit stays: in 10 ft 3 the 3 is no exponent.
func fold(unit string) string {
	unit = folding.Replace(strings.TrimSpace(unit))
	if strings.IndexByte(unit, ' ') < 0 {
		return unit
	}
	var b strings.Builder
	for i := 0; i < len(unit); i++ {
		if unit[i] == ' ' && !(i+1 < len(unit) && (isDigit(unit[i+1]) || unit[i+1] == ' ')) {
			continue
		}
		b.WriteByte(unit[i])
	}
	return b.String()
}
