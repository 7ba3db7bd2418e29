package calc

import (
	"math"
	"strings"

	"coursebook/calculators/quantity"
)

// Limit is one end of a field's Range.
type Limit struct {
	SI     float64
	Open   bool // the limit itself is excluded
	Why    Text
	Source string // ID of one of the calculator's sources; empty if the reason cites no source
}

// Limits returns the two ends of a Number's Range in SI; ok is false if it has
// none. It panics on a range that cannot be read, which Problems reports.
func (f *Field) Limits() (least, most Limit, ok bool) {
	if f.Range == "" {
		return Limit{}, Limit{}, false
	}
	least, most, problem := f.limits()
	if problem != "" {
		panic("calc: the range of " + f.ID + ": " + problem)
	}
	return least, most, true
}

// limits reads the Range, LOW to HIGH. problem is the reason if it cannot be read
// or its ends are not in order, otherwise ""; the limits are then not to be used.
func (f *Field) limits() (least, most Limit, problem string) {
	low, high, ok := strings.Cut(f.Range, " to ")
	if !ok {
		return least, most, "it is not written LOW to HIGH"
	}
	least = Limit{Why: f.Why, Source: f.LeastSource}
	most = Limit{Why: f.WhyMost, Source: f.MostSource}
	if most.Why == "" {
		most.Why = f.Why
	}
	low, least.Open = strings.CutPrefix(low, "over ")
	high, most.Open = strings.CutPrefix(high, "under ")
	if i := unitAt(low); i < 0 {
		if i = unitAt(high); i >= 0 {
			low += " " + high[i:] // both ends are in the unit of the upper one
		}
	}
	var err *quantity.ParseError
	if least.SI, err = quantity.Parse(low, *f.Display, quantity.Style{}); err != nil {
		return least, most, err.Error()
	}
	if most.SI, err = quantity.Parse(high, *f.Display, quantity.Style{}); err != nil {
		return least, most, err.Error()
	}
	if !(least.SI < most.SI) {
		return least, most, "the upper limit is not above the lower one"
	}
	return least, most, ""
}

// unitAt returns the byte at which the unit of a quantity starts; -1 if there is
// no unit.
func unitAt(text string) int {
	return strings.IndexFunc(text, func(r rune) bool { return !strings.ContainsRune("0123456789.+-/ ", r) })
}

// slack returns how far a value may exceed the limit because of rounding, in SI.
func (l Limit) slack() float64 { return Slack * math.Abs(l.SI) }
