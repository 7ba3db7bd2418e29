package weather

import "math"

// UnoUS is the rate in lb/ft²/h at which free water leaves a level surface:
// (T_c^2.5 - r·T_a^2.5)·(1 + 0.4·V)/10⁶. Temperatures of concrete and air in
// °F, at least 0; r is relative humidity from 0 to 1; V is wind in mph 20 in.
// above the surface. It is below 0 where dew falls.
// Source: P. J. Uno, ACI Materials Journal 95-M34, 1998.
func UnoUS(concrete, air, r, wind float64) float64 {
	return (math.Pow(concrete, 2.5) - float64(r*math.Pow(air, 2.5))) * (1 + float64(0.4*wind)) / 1000000
}

// UnoSI is the same author's rate in kg/m²/h with rounded constants:
// 5·((T_c + 18)^2.5 - r·(T_a + 18)^2.5)·(V + 4)/10⁶. Temperatures in °C, wind
// in km/h. It reads about 4 % below UnoUS: the exact change of units gives
// 5.276, 17.78 and 4.02. Source: CCAA data sheet of November 2004, p. 1.
func UnoSI(concrete, air, r, wind float64) float64 {
	return 5 * (math.Pow(concrete+18, 2.5) - float64(r*math.Pow(air+18, 2.5))) * (wind + 4) / 1000000
}

// MenzelUS is the rate in lb/ft²/h from vapour pressures in psi:
// 0.44·(e_0 - r·e_a)·(0.253 + 0.096·V), wind in mph. With pressures in inches
// of mercury it would read twice too high. Source: C. A. Menzel, 1954.
func MenzelUS(surface, air, r, wind float64) float64 {
	return 0.44 * (surface - float64(r*air)) * (0.253 + float64(0.096*wind))
}

// MenzelSI is the rate in kg/m²/h from vapour pressures in kPa and wind in
// km/h: 0.315·(e_0 - r·e_a)·(0.253 + 0.06·V). Source: C. A. Menzel, 1954.
func MenzelSI(surface, air, r, wind float64) float64 {
	return 0.315 * (surface - float64(r*air)) * (0.253 + float64(0.06*wind))
}

// VapourPressure is the pressure in kPa of saturated vapour over water at t
// in °C, 0 to 50: 0.6108·exp(17.27·T/(T + 237.3)).
// Source: FAO Irrigation and Drainage Paper 56, equation 11.
func VapourPressure(t float64) float64 { return 0.6108 * math.Exp(17.27*t/(t+237.3)) }

// WindAt carries a wind u read z m above open short grass to the height h:
// u·ln(67.8·h - 5.42)/ln(67.8·z - 5.42). Both heights are above 0.1 m.
// Source: the wind profile behind FAO paper 56, equation 47, where h is 2 m.
func WindAt(u, h, z float64) float64 {
	return u * math.Log(float64(67.8*h)-5.42) / math.Log(float64(67.8*z)-5.42)
}
