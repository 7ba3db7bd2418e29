package quantity

import "strings"

// Unit is a unit of one dimension. A value x in the unit is
// (x + Offset) * Scale in SI.
type Unit struct {
	Symbol  string    // as printed: lb/ft³
	Dim     Dimension // what it measures
	Scale   float64   // SI units per unit
	Offset  float64   // added before scaling; only temperatures have one
	Aliases []string  // further ways to type it, in the form fold gives
}

// ToSI converts x in the unit to SI.
func (u Unit) ToSI(x float64) float64 { return (x + u.Offset) * u.Scale }

// FromSI converts an SI value to the unit.
func (u Unit) FromSI(si float64) float64 { return si/u.Scale - u.Offset }

// Find returns a unit by its symbol or an alias: ft³, ft^3, ft3, pcf. Case counts.
// If a symbol has two dimensions (lb is a mass, and in the trade a force), Find
// returns the unit whose printed symbol it is. The empty symbol is the unit of a
// number. It returns false for an unknown symbol.
func Find(symbol string) (Unit, bool) {
	for i := range units {
		if units[i].Symbol == symbol {
			return units[i], true
		}
	}
	if list := directory[fold(symbol)]; len(list) > 0 {
		return units[list[0]], true
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

// lookup returns a typed unit. A unit of the wanted dimension takes precedence, so
// that lb is a force where a force is asked for. An exact match takes precedence
// over one that ignores case. It returns false for an unknown or empty unit; the
// unit may be of another dimension than want.
func lookup(typed string, want Dimension) (Unit, bool) {
	name := fold(typed)
	if name == "" {
		return Unit{}, false
	}
	exact, loose := directory[name], directory["~"+strings.ToLower(name)]
	for _, list := range [][]int{exact, loose} {
		for _, i := range list {
			if units[i].Dim == want {
				return units[i], true
			}
		}
	}
	for _, list := range [][]int{exact, loose} {
		if len(list) > 0 {
			return units[list[0]], true
		}
	}
	return Unit{}, false
}

// directory maps each folded name to its indexes in units: the name itself and,
// prefixed with a tilde, the name in lower case.
var directory = newDirectory()

// newDirectory returns the indexes of the units by each folded symbol and alias,
// and in lower case behind "~".
func newDirectory() map[string][]int {
	places := map[string][]int{}
	add := func(name string, i int) {
		if list := places[name]; len(list) == 0 || list[len(list)-1] != i {
			places[name] = append(list, i)
		}
	}
	for i, u := range units {
		for _, name := range append([]string{fold(u.Symbol)}, u.Aliases...) {
			add(name, i)
			add("~"+strings.ToLower(name), i)
		}
	}
	return places
}

// fold returns a typed unit in the form that the directory holds: lb / ft^3,
// lb/ft³ and lb/ft3 give the same, and so do ft·lbf and ft lbf, cu. yd. and cu yd.
// A space before a digit is kept: in 10 ft 3 the 3 is not an exponent. Case is
// kept.
func fold(unit string) string {
	unit = strings.TrimSpace(unit)
	if onlyLetters(unit) {
		return unit
	}
	var b strings.Builder
	for i, r := range unit {
		switch r {
		case '²':
			r = '2'
		case '³':
			r = '3'
		case 'ₙ':
			r = 'n'
		case 'º', '˚':
			r = '°'
		case 'µ':
			r = 'μ'
		case '^', '.', '·', '⋅', '*', '(', ')':
			continue
		case ' ':
			if next := unit[i+1]; !isDigit(next) && next != ' ' {
				continue
			}
		}
		b.WriteRune(r)
	}
	return b.String()
}

// onlyLetters reports whether a unit consists of ASCII letters, so that fold would
// not change it, as for most.
func onlyLetters(unit string) bool {
	for i := 0; i < len(unit); i++ {
		if !isLetter(unit[i]) {
			return false
		}
	}
	return true
}
