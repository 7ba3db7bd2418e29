package amount

import (
	"math"
	"slices"
	"strconv"
	"strings"

	"coursebook/calculators/quantity"
)

const (
	looseness  = 0.025   // the widest tolerance, as a share
	maxFigures = 6       // no counterpart has more significant figures
	sixteenth  = 1. / 16 // in., the finest mark of a tape
	tapeSlack  = sixteenth / 2
	footSlack  = 0.5   // in.; feet and inches are read to the inch
	lengthMark = 1     // mm, the finest mark of a metric tape
	fineLength = 3     // mm; below it tenths are written
	slack      = 1e-12 // a tolerance met exactly is met
	alike      = 1e-9  // a share: what two ways of reckoning may differ by
)

// rounder writes values in one unit.
type rounder struct {
	to   quantity.Unit
	mark quantity.Mark
	up   bool
}

// rounder returns the rounder of the value v, in the unit from, to the unit to. It
// rounds up if v is one of the finder's least amounts.
func (f *Finder) rounder(from, to quantity.Unit, v value) rounder {
	x := from.ToSI(v.x)
	up := slices.ContainsFunc(f.least, func(least float64) bool { return math.Abs(x-least) <= alike*least })
	return rounder{to, f.mark, up}
}

// round returns x rounded to a whole number: to the nearest, or up for a least
// amount.
func (r rounder) round(x float64) float64 {
	if r.up {
		return math.Ceil(x * (1 - alike))
	}
	return math.Round(x)
}

// exact converts v from the unit from, and returns it with how far a rounded
// figure may be off, both in the rounder's unit. The tolerance follows from the
// last figure that the author gave.
func (r rounder) exact(from quantity.Unit, v value) (x, tolerance float64) {
	x = r.to.FromSI(from.ToSI(v.x))
	share := looseness
	if v.x != 0 {
		share = math.Min(share, v.half/math.Abs(v.x))
	}
	return x, share*math.Abs(x) + slack
}

// write returns the value v of the unit from in the rounder's unit, rounded,
// without the unit's symbol.
func (r rounder) write(from quantity.Unit, v value) string {
	x, tolerance := r.exact(from, v)
	switch {
	case r.to.Dim == quantity.Temperature:
		return r.decimal(x, v.decimals)
	case r.to.Dim == quantity.TemperatureDifference:
		tolerance = math.Max(tolerance, 0.5)
	case r.to.Symbol == "in":
		return r.inches(x, math.Max(tolerance, tapeSlack))
	case r.to.Symbol == "ft":
		feet, _ := r.wholeFeet(x, tolerance)
		return r.decimal(feet, 0)
	case r.to.Symbol == "mm" && math.Abs(x) >= fineLength:
		tolerance = math.Max(tolerance, lengthMark/2.)
	}
	return r.fewest(x, tolerance)
}

// fewest returns x with the fewest significant figures whose value is within the
// tolerance of x, at most maxFigures.
func (r rounder) fewest(x, tolerance float64) string {
	for n := 1; n <= maxFigures; n++ {
		y, places := r.figures(x, n)
		if math.Abs(y-x) <= tolerance || n == maxFigures {
			return r.decimal(y, max(places, 0))
		}
	}
	return ""
}

// figures rounds x to n significant figures; places is the decimal place of the
// last one and may be negative. 0 gives 0 and no places.
func (r rounder) figures(x float64, n int) (y float64, places int) {
	if x == 0 {
		return 0, 0
	}
	places = n - 1 - int(math.Floor(math.Log10(math.Abs(x))))
	if places >= 0 {
		unit := math.Pow10(places)
		return r.round(x*unit) / unit, places
	}
	unit := math.Pow10(-places)
	return r.round(x/unit) * unit, places
}

// decimal returns x rounded to this many decimal places, with the reader's decimal
// mark. Zeros at the end of the decimals are cut. A whole part of five or more
// digits is grouped in threes by thin spaces. Zero has no sign.
func (r rounder) decimal(x float64, places int) string {
	s := strconv.FormatFloat(math.Abs(x), 'f', places, 64)
	whole, part, _ := strings.Cut(s, ".")
	part = strings.TrimRight(part, "0")
	if len(whole) > 4 {
		for i := len(whole) - 3; i > 0; i -= 3 {
			whole = whole[:i] + "\u202F" + whole[i:]
		}
	}
	if part != "" {
		mark := "."
		if r.mark == quantity.Comma {
			mark = ","
		}
		whole += mark + part
	}
	if x < 0 && strings.Trim(s, "0.") != "" {
		return "−" + whole
	}
	return whole
}

// inches returns a length in inches with the coarsest fraction of a tape, down to
// 1/16, that is within the tolerance: 12, 6-1/2, 3/8. If none is, the nearest 1/16
// is used.
func (r rounder) inches(x, tolerance float64) string {
	for parts := 1; parts <= 16; parts *= 2 {
		n := r.round(math.Abs(x) * float64(parts))
		if n > 0 && math.Abs(n/float64(parts)-math.Abs(x)) <= tolerance || parts == 16 {
			return r.fraction(int(n), parts, x < 0)
		}
	}
	return ""
}

// fraction returns n/parts in lowest terms as a whole number and a fraction:
// 6-1/2, 3/8, 12; parts is a power of two, n is not negative. minus puts a minus
// in front; 0 has none.
func (r rounder) fraction(n, parts int, minus bool) string {
	if n == 0 {
		return "0"
	}
	for parts > 1 && n%2 == 0 {
		n, parts = n/2, parts/2
	}
	whole, upper := n/parts, n%parts
	s := ""
	switch {
	case upper == 0:
		s = r.decimal(float64(whole), 0)
	case whole == 0:
		s = strconv.Itoa(upper) + "/" + strconv.Itoa(parts)
	default:
		s = strconv.Itoa(whole) + "-" + strconv.Itoa(upper) + "/" + strconv.Itoa(parts)
	}
	if minus {
		return "−" + s
	}
	return s
}

// wholeFeet rounds x, in feet, to whole feet with the fewest significant figures
// within the tolerance. ok is false if even the nearest whole foot is beyond it.
func (r rounder) wholeFeet(x, tolerance float64) (feet float64, ok bool) {
	tolerance = math.Max(tolerance, footSlack/12)
	for n := 1; n <= maxFigures; n++ {
		y, places := r.figures(x, n)
		if places > 0 {
			break
		}
		if math.Abs(y-x) <= tolerance {
			return y, true
		}
	}
	y := r.round(x)
	return y, math.Abs(y-x) <= tolerance
}

// carries reports whether v, of the unit from, must be written in feet and inches:
// the rounder's unit is feet and whole feet are not within the tolerance.
func (r rounder) carries(from quantity.Unit, v value) bool {
	if r.to.Symbol != "ft" {
		return false
	}
	_, ok := r.wholeFeet(r.exact(from, v))
	return !ok
}

// feetInches returns v, of the unit from, as feet and whole inches with their
// units: 3 ft 3 in. Whole feet within the tolerance are written without inches.
func (r rounder) feetInches(from quantity.Unit, v value) string {
	x, tolerance := r.exact(from, v)
	if feet, ok := r.wholeFeet(x, tolerance); ok {
		return r.decimal(feet, 0) + " ft"
	}
	inches := r.round(math.Abs(x) * 12)
	feet, rest := math.Floor(inches/12), int(math.Mod(inches, 12))
	s := r.decimal(math.Copysign(feet, x), 0) + " ft"
	if rest > 0 {
		s += " " + strconv.Itoa(rest) + " in."
	}
	return s
}
