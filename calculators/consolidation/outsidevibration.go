package consolidation

import (
	"math"

	"coursebook/calculators/calc"
)

const (
	meansForce = calc.Text("force of all vibrators")
	meansForms = calc.Text("vibrators along the form")
)

// Acceleration is the peak acceleration in m/s² of harmonic motion with an
// amplitude in mm and a frequency in Hz, A (2πf)²/1000.
// Source: harmonic motion, as quoted for form vibrators.
func Acceleration(amplitude, frequency float64) float64 {
	return amplitude * math.Pow(2*math.Pi*frequency, 2) / 1000
}

// AccelerationFormula declares Acceleration.
var AccelerationFormula = &calc.Formula{
	ID: "acceleration", Title: calc.Text("Peak acceleration"), Expr: "A*(2*pi*f)^2/1000",
	Result: calc.Var{Symbol: "a", Meaning: calc.Text("peak acceleration"), Unit: "m/s²"},
	Vars: []calc.Var{{Symbol: "A", Meaning: calc.Text("swing to each side"), Unit: "mm"},
		{Symbol: "f", Meaning: calc.Text("swings a second"), Unit: "Hz"}},
	Fn: calc.Func2(Acceleration), Go: "consolidation.Acceleration", Source: "least",
	Limits: calc.Text("At the place where the swing is measured. 1 g is 9.80665 m/s²."),
}

// Shake is the total force of the vibrators on a stiff form, a third of the
// weight of form and concrete. Any unit of force. Limits: precast forms; stiff
// mixes need more. Source: The Concrete Producer, pneumatic external
// vibrators.
func Shake(form, concrete float64) float64 { return (form + concrete) / 3 }

// ShakeFormula declares Shake.
var ShakeFormula = &calc.Formula{
	ID: "force", Title: calc.Text("Force of all vibrators"), Expr: "(W_f + W_c)/3",
	Result: calc.Var{Symbol: "F", Meaning: meansForce, Unit: "kN", US: "lbf"},
	Vars: []calc.Var{{Symbol: "W_f", Meaning: calc.Text("weight of the form"), Unit: "kN", US: "lbf"},
		{Symbol: "W_c", Meaning: calc.Text("weight of the concrete"), Unit: "kN", US: "lbf"}},
	Fn: calc.Func2(Shake), Go: "consolidation.Shake", Source: "producer",
	Limits: calc.Text("A rule of thumb for stiff precast forms. Stiff mixes need more. Not for foam forms."),
}

// FormVibrators is the number of vibrators along a form, ⌈L/s⌉, at least one.
// Any unit of length. Source: Concrete Construction, no more than 3 ft apart.
func FormVibrators(length, spacing float64) float64 { return calc.Ceil(length / spacing) }

// FormVibratorsFormula declares FormVibrators.
var FormVibratorsFormula = &calc.Formula{
	ID: "count", Title: calc.Text("Vibrators along the form"), Expr: "ceil(L/s)",
	Result: calc.Var{Symbol: "n", Meaning: meansForms},
	Vars: []calc.Var{{Symbol: "L", Meaning: calc.Text("length of the form"), Unit: "m", US: "ft"},
		{Symbol: "s", Meaning: calc.Text("most they may stand apart"), Unit: "m", US: "ft"}},
	Fn: calc.Func2(FormVibrators), Go: "consolidation.FormVibrators", Source: "workman",
}

// ForceEach is the force of each of n vibrators, F/n. Source: arithmetic.
func ForceEach(force, count float64) float64 { return force / count }

// ForceEachFormula declares ForceEach.
var ForceEachFormula = &calc.Formula{
	ID: "each", Title: calc.Text("Force of each"), Expr: "F/n",
	Result: calc.Var{Symbol: "F_1", Meaning: calc.Text("force of each vibrator"), Unit: "kN", US: "lbf"},
	Vars:   []calc.Var{{Symbol: "F", Meaning: meansForce, Unit: "kN", US: "lbf"}, {Symbol: "n", Meaning: meansForms}},
	Fn:     calc.Func2(ForceEach), Go: "consolidation.ForceEach", Source: "producer",
}
