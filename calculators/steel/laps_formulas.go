package steel

import "math"

// Development318 is the length that develops a bar in tension by the simple
// form of ACI 318, in:
//
//	l_d = f_y·ψ·ψ_g/(c·λ·min(√f'c, 100))·d
//
// in US units only: f_y and f'c in psi, d in in. ψ is ψ_t·ψ_e, at most 1.7;
// ψ_g goes with the grade; c is 25 for #6 and smaller and 20 for #7 and larger
// where cover and spacing are kept, else 50/3 and 40/3. At least 12 in.
// Source: ACI 318-14, table 25.4.2.2 (ψ_g: 318-19, from memory).
func Development318(fy, psi, lambda, fc, c, grade, d float64) float64 {
	return fy * psi * grade / (c * lambda * math.Min(math.Sqrt(fc), 100)) * d
}

// DevelopmentA23 is the same length by the simple form of CSA A23.3, mm:
//
//	l_d = c·k·k_4·f_y/min(√f'c, 8)·d
//
// in metric units only: f_y and f'c in MPa, d in mm. k is k_1·k_2·k_3; k_4 is
// 0.8 up to 20M and 1 above; c is 0.45 where cover and spacing are kept, else
// 0.6. At least 300 mm. Source: CSA A23.3, 12.2.3 and table 12.1.
func DevelopmentA23(c, k, size, fy, fc, d float64) float64 {
	return c * k * size * fy / math.Min(math.Sqrt(fc), 8) * d
}

// ClassB is the Class B lap of a development length, in its unit:
// l_st = max(1.3·l_d, l_min). Source: ACI 318-14, 25.5.2.1; CSA A23.3, 12.15.
func ClassB(development, least float64) float64 { return math.Max(1.3*development, least) }

// LapIRC is the lap of the residential code's table, in its unit:
// l = n·d, with n 60 for Grade 60 and 40 for Grade 40 bars.
// Source: IRC, table R608.5.4(1); the rule is inferred from its cells.
func LapIRC(n, d float64) float64 { return n * d }

// Hook318 is the length that develops a standard hook by ACI 318-14, in:
//
//	l_dh = max(f_y·ψ_e/(50·λ·min(√f'c, 100))·d, 8·d, 6)
//
// in US units only. Side cover of 2-1/2 in. and 2 in. behind a 90° tail allow
// 0.7 of the first term. Source: ACI 318-14, 25.4.3.1.
func Hook318(fy, coating, lambda, fc, d float64) float64 {
	return math.Max(fy*coating/(50*lambda*math.Min(math.Sqrt(fc), 100))*d, math.Max(8*d, 6))
}
