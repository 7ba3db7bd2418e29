package consolidation

import "math"

// Acceleration is the peak acceleration in m/s² of a part that swings by an
// amplitude in mm to each side at a frequency in Hz: A (2πf)²/1000.
// Source: motion of a sine, as quoted for form vibrators.
func Acceleration(amplitude, frequency float64) float64 {
	return amplitude * math.Pow(2*math.Pi*frequency, 2) / 1000
}

// Shake is the force of all vibrators on a stiff form: a third of the weight
// of form and concrete. Any unit of force. Written for precast forms; more
// for stiff mixes. Source: The Concrete Producer, pneumatic external
// vibrators.
func Shake(form, concrete float64) float64 { return (form + concrete) / 3 }

// FormVibrators is how many stand along a form: ⌈L/s⌉, at least one. Any unit
// of length. Source: Concrete Construction, no more than 3 ft apart.
func FormVibrators(length, spacing float64) float64 { return countUp(length / spacing) }

// ForceEach is the force of each of n vibrators. Source: arithmetic.
func ForceEach(force, count float64) float64 { return force / count }
