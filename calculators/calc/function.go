package calc

// Function is the arithmetic of a formula: one of the types below. Each wraps
// a plain function as data, so that a declaration needs no code of its own.
type Function interface {
	// Of computes from the values in the order of Formula.Vars.
	Of(v []float64) float64
}

// The functions of so many values, and one of any number.
type (
	Of1   func(a float64) float64
	Of2   func(a, b float64) float64
	Of3   func(a, b, c float64) float64
	Of4   func(a, b, c, d float64) float64
	Of5   func(a, b, c, d, e float64) float64
	OfAny func(v []float64) float64
)

// Of computes from one value.
func (f Of1) Of(v []float64) float64 { return f(v[0]) }

// Of computes from two values.
func (f Of2) Of(v []float64) float64 { return f(v[0], v[1]) }

// Of computes from three values.
func (f Of3) Of(v []float64) float64 { return f(v[0], v[1], v[2]) }

// Of computes from four values.
func (f Of4) Of(v []float64) float64 { return f(v[0], v[1], v[2], v[3]) }

// Of computes from five values.
func (f Of5) Of(v []float64) float64 { return f(v[0], v[1], v[2], v[3], v[4]) }

// Of computes from all values.
func (f OfAny) Of(v []float64) float64 { return f(v) }
