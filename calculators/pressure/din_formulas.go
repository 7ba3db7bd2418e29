package pressure

import "math"

// The limits of DIN 18218:2010-01. Beyond them the full fluid head counts.
const (
	DINRise    = 7.0  // m/h, fastest rise
	DINHeight  = 10.0 // m, tallest placement
	DINSetLow  = 5.0  // h; a shorter setting time earns no credit
	DINSetHigh = 20.0 // h, longest setting time
	DINFactor  = 1.5  // partial factor of limit state design; not in the pressure
)

// flowClass is what the standard gives for one class of consistency. The
// stiff classes F1 to F4 go by (slope·v + base)·K_1, the flowing ones by
// γ·(1 + reach·v·t_E).
type flowClass struct {
	id          string
	slope, base float64 // kPa per m/h, kPa; stiff classes
	set         float64 // 1/h, growth of K_1 with the setting time; stiff classes
	reach       float64 // flowing classes, 0 for the stiff
}

// flowClasses stand in the order of the standard. The flowing ones are given
// there as 25 + 30·v·K_1 and 25 + 38·v·K_1 with K_1 = t_E/5 at 25 kN/m³.
var flowClasses = [...]flowClass{
	{id: "f1", slope: 5, base: 21, set: 0.03},
	{id: "f2", slope: 10, base: 19, set: 0.053},
	{id: "f3", slope: 14, base: 18, set: 0.077},
	{id: "f4", slope: 17, base: 17, set: 0.14},
	{id: "f5", reach: 0.24},
	{id: "f6", reach: 0.304},
	{id: "scc", reach: 0.26},
}

// classOf finds a class; one it does not know counts as F6, the worst.
func classOf(id string) flowClass {
	for _, c := range flowClasses {
		if c.id == id {
			return c
		}
	}
	return classOf("f6")
}

func (c flowClass) flows() bool { return c.reach > 0 }

// DINSet is the factor K_1 of the classes F1 to F4 for a setting time in
// hours: 1 + k·(t_E − 5). Source: DIN 18218:2010-01.
func DINSet(k, set float64) float64 { return 1 + float64(k*(set-5)) }

// DINCool is the factor for concrete placed cooler, at t °C, than the
// temperature ref °C that its setting time holds for: 3 % more for each
// degree. Warmer concrete earns no credit here. Source: DIN 18218:2010-01.
func DINCool(ref, t float64) float64 { return math.Max(1, 1+float64(0.03*(ref-t))) }

// DINStiff is the characteristic pressure in kPa of the classes F1 to F4:
// (a·v + b)·K_1·f_T·γ/25, at least 25 kPa; v in m/h, γ in kN/m³.
// Source: DIN 18218:2010-01.
func DINStiff(a, b, v, k1, cool, gamma float64) float64 {
	return math.Max(25, (float64(a*v)+b)*k1*cool*gamma/25)
}

// DINFlowing is the characteristic pressure in kPa of the classes F5 and F6
// and of self-compacting concrete: (1 + c·v·t_E)·γ·f_T, at least 30 kPa; v in
// m/h, t_E in h, γ in kN/m³. Source: DIN 18218:2010-01, Eq. (1) for
// self-compacting concrete.
func DINFlowing(c, v, set, cool, gamma float64) float64 {
	return math.Max(30, (1+float64(c*v*set))*gamma*cool)
}
