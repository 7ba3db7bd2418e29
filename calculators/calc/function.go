package calc

// Function is the arithmetic of a formula: one of the types below. Each adapts
// a Go function, so that a declaration needs no adapter code.
type Function interface {
	// Call computes from the values in the order of Formula.Vars.
	Call(v []float64) float64
}

// Functions of one to five values, and of any number.
type (
	Func1 func(a float64) float64
	Func2 func(a, b float64) float64
	Func3 func(a, b, c float64) float64
	Func4 func(a, b, c, d float64) float64
	Func5 func(a, b, c, d, e float64) float64
	FuncN func(v []float64) float64
)

// Call computes from one value.
func (f Func1) Call(v []float64) float64 { return f(v[0]) }

// Call computes from two values.
func (f Func2) Call(v []float64) float64 { return f(v[0], v[1]) }

// Call computes from three values.
func (f Func3) Call(v []float64) float64 { return f(v[0], v[1], v[2]) }

// Call computes from four values.
func (f Func4) Call(v []float64) float64 { return f(v[0], v[1], v[2], v[3]) }

// Call computes from five values.
func (f Func5) Call(v []float64) float64 { return f(v[0], v[1], v[2], v[3], v[4]) }

// Call computes from all values.
func (f FuncN) Call(v []float64) float64 { return f(v) }
