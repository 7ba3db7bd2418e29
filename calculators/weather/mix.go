package weather

import "coursebook/calculators/calc"

const (
	meansMix = calc.Text("temperature of the mix")
	meansT0  = calc.Text("temperature of the mix as batched, no ice")
	meansTag = calc.Text("temperature of the aggregate")
	meansWa  = calc.Text("mass of the aggregate, dry surface")
	meansTce = calc.Text("temperature of the cement")
	meansWc  = calc.Text("mass of the cement")
	meansTw  = calc.Text("temperature of the mixing water")
	meansWw  = calc.Text("mass of the mixing water")
	meansTm  = calc.Text("temperature that the moisture counts as")
	meansWm  = calc.Text("mass of free moisture on the aggregate")
	meansTi  = calc.Text("melting point of ice")
	meansL   = calc.Text("heat of melting over water's specific heat")
	meansWi  = calc.Text("mass of the ice")
	meansC   = calc.Text("mass of water that takes the same heat")
	meansWan = calc.Text("temperature wanted")
	meansN   = calc.Text("degrees of the part for one of the mix")
	meansHc  = calc.Text("specific heat of the part against water's")
	meansWp  = calc.Text("mass of the part")
)

// MixTemperature is the temperature of a mix from its parts, in °C or °F:
// (0.22·(T_a·W_a + T_c·W_c) + T_w·W_w + T_m·W_m + (T_i - L)·W_i) /
// (0.22·(W_a + W_c) + W_w + W_m + W_i), the values in the order T_a, W_a, T_c,
// W_c, T_w, W_w, T_m, W_m, T_i, L, W_i. Masses of aggregate, cement, mixing
// water, free moisture and ice in any one unit; T_i is the melting point and L
// the heat of melting over water's specific heat: 80 C°, 144 F°. Heat of
// hydration, of mixing and of the haul are neglected. It does not hold at or below
// the melting point. Source: ACI 305R and 306R.
func MixTemperature(v []float64) float64 {
	solid := 0.22 * (float64(v[0]*v[1]) + float64(v[2]*v[3]))
	wet := float64(solid) + float64(v[4]*v[5]) + float64(v[6]*v[7])
	return (wet + float64((v[8]-v[9])*v[10])) / (float64(0.22*(v[1]+v[3])) + v[5] + v[7] + v[10])
}

// MixTemperatureFormula declares MixTemperature.
var MixTemperatureFormula = &calc.Formula{
	ID: "mix", Title: calc.Text("Temperature of the mix"),
	Expr:   "(0.22*(T_a*W_a + T_c*W_c) + T_w*W_w + T_m*W_m + (T_i - L)*W_i)/(0.22*(W_a + W_c) + W_w + W_m + W_i)",
	Result: calc.Var{Symbol: "T", Meaning: meansMix, Unit: "°C", US: "°F"},
	Vars: []calc.Var{
		{
			Symbol:  "T_a",
			Meaning: meansTag,
			Unit:    "°C",
			US:      "°F",
		}, {Symbol: "W_a", Meaning: meansWa, Unit: "kg", US: "lb"},
		{
			Symbol:  "T_c",
			Meaning: meansTce,
			Unit:    "°C",
			US:      "°F",
		}, {Symbol: "W_c", Meaning: meansWc, Unit: "kg", US: "lb"},
		{
			Symbol:  "T_w",
			Meaning: meansTw,
			Unit:    "°C",
			US:      "°F",
		}, {Symbol: "W_w", Meaning: meansWw, Unit: "kg", US: "lb"},
		{
			Symbol:  "T_m",
			Meaning: meansTm,
			Unit:    "°C",
			US:      "°F",
		}, {Symbol: "W_m", Meaning: meansWm, Unit: "kg", US: "lb"},
		{Symbol: "T_i", Meaning: meansTi, Unit: "°C", US: "°F"}, {Symbol: "L", Meaning: meansL, Unit: "C°", US: "F°"},
		{Symbol: "W_i", Meaning: meansWi, Unit: "kg", US: "lb"},
	},
	Fn: calc.FuncN(MixTemperature), Go: "weather.MixTemperature", Source: "aci305",
	Limits: calc.Text(
		"No heat of the cement, of mixing or of the haul. Only above the melting point: all ice must melt.",
	),
}

// FrozenMoisture is the equivalent temperature of free moisture on aggregate
// below freezing, T_i + 0.5·(T_a - T_i) - L, in °C or °F. In °F it is 0.5·T_a -
// 128. Source: ACI 306R-88, section 3.7.
func FrozenMoisture(aggregate, melting, latent float64) float64 {
	return melting + float64(0.5*(aggregate-melting)) - latent
}

// FrozenMoistureFormula declares FrozenMoisture.
var FrozenMoistureFormula = &calc.Formula{
	ID: "frozen", Title: calc.Text("Frozen moisture"),
	Expr: "T_i + 0.5*(T_a - T_i) - L", Result: calc.Var{Symbol: "T_m", Meaning: meansTm, Unit: "°C", US: "°F"},
	Vars: []calc.Var{
		{Symbol: "T_a", Meaning: meansTag, Unit: "°C", US: "°F"},
		{Symbol: "T_i", Meaning: meansTi, Unit: "°C", US: "°F"},
		{Symbol: "L", Meaning: meansL, Unit: "C°", US: "F°"},
	},
	Fn: calc.Func3(FrozenMoisture), Go: "weather.FrozenMoisture", Source: "aci306",
	Limits: calc.Text("For aggregate below freezing. All its free moisture is ice."),
}

// HeatCapacity is the mass of water with the heat capacity of the mix,
// 0.22·(W_a + W_c) + W_m + W_w. Source: the denominator of ACI 305R.
func HeatCapacity(aggregate, cement, moisture, water float64) float64 {
	return float64(0.22*(aggregate+cement)) + moisture + water
}

// HeatCapacityFormula declares HeatCapacity.
var HeatCapacityFormula = &calc.Formula{
	ID: "capacity", Title: calc.Text("Heat capacity of the mix"),
	Expr: "0.22*(W_a + W_c) + W_m + W_w", Result: calc.Var{Symbol: "C", Meaning: meansC, Unit: "kg", US: "lb"},
	Vars: []calc.Var{
		{Symbol: "W_a", Meaning: meansWa, Unit: "kg", US: "lb"},
		{Symbol: "W_c", Meaning: meansWc, Unit: "kg", US: "lb"},
		{
			Symbol:  "W_m",
			Meaning: meansWm,
			Unit:    "kg",
			US:      "lb",
		},
		{Symbol: "W_w", Meaning: meansWw, Unit: "kg", US: "lb"},
	},
	Fn: calc.Func4(HeatCapacity), Go: "weather.HeatCapacity", Source: "aci305",
}

// IceNeeded is the mass of ice that, in place of the same mass of water, brings a
// mix from t0 to t: C·(T_0 - T)/(T_w - T_i + L). Source: algebra on MixTemperature.
func IceNeeded(capacity, t0, t, water, melting, latent float64) float64 {
	return capacity * (t0 - t) / (water - melting + latent)
}

// IceNeededFormula declares IceNeeded.
var IceNeededFormula = &calc.Formula{
	ID: "ice", Title: calc.Text("Ice for a wanted temperature"),
	Expr: "C*(T_0 - T)/(T_w - T_i + L)", Result: calc.Var{Symbol: "W_i", Meaning: meansWi, Unit: "kg", US: "lb"},
	Vars: []calc.Var{
		{Symbol: "C", Meaning: meansC, Unit: "kg", US: "lb"},
		{Symbol: "T_0", Meaning: meansT0, Unit: "°C", US: "°F"},
		{Symbol: "T", Meaning: meansWan, Unit: "°C", US: "°F"},
		{
			Symbol:  "T_w",
			Meaning: meansTw,
			Unit:    "°C",
			US:      "°F",
		},
		{Symbol: "T_i", Meaning: meansTi, Unit: "°C", US: "°F"},
		{Symbol: "L", Meaning: meansL, Unit: "C°", US: "F°"},
	},
	Fn: calc.FuncN(
		func(v []float64) float64 { return IceNeeded(v[0], v[1], v[2], v[3], v[4], v[5]) },
	), Go: "weather.IceNeeded", Source: "aci305",
	Limits: calc.Text(
		"The ice replaces as much water. At most 75 % of the batch water, and about 20 °F (11 °C) of cooling.",
	),
}

// WaterNeeded is the temperature of the mixing water that brings a mix from
// t0 to t: T_w + C·(T - T_0)/W_w. Source: algebra on MixTemperature.
func WaterNeeded(water, capacity, t, t0, mass float64) float64 {
	return water + capacity*(t-t0)/mass
}

// WaterNeededFormula declares WaterNeeded.
var WaterNeededFormula = &calc.Formula{
	ID: "water", Title: calc.Text("Water for a wanted temperature"),
	Expr: "T_w + C*(T - T_0)/W_w", Result: calc.Var{Symbol: "T_n", Meaning: meansTw, Unit: "°C", US: "°F"},
	Vars: []calc.Var{
		{Symbol: "T_w", Meaning: meansTw, Unit: "°C", US: "°F"},
		{Symbol: "C", Meaning: meansC, Unit: "kg", US: "lb"},
		{Symbol: "T", Meaning: meansWan, Unit: "°C", US: "°F"},
		{
			Symbol:  "T_0",
			Meaning: meansT0,
			Unit:    "°C",
			US:      "°F",
		},
		{Symbol: "W_w", Meaning: meansWw, Unit: "kg", US: "lb"},
	},
	Fn: calc.Func5(WaterNeeded), Go: "weather.WaterNeeded", Source: "aci306",
}

// Lever is the change of temperature of one part for a change of the mix by one
// degree, C/(c·W), with c the specific heat of the part over that of water.
// Source: as WaterNeeded.
func Lever(capacity, heat, mass float64) float64 { return capacity / (heat * mass) }

// LeverFormula declares Lever.
var LeverFormula = &calc.Formula{
	ID: "lever", Title: calc.Text("Degrees of a part for one of the mix"),
	Expr: "C/(c*W)", Result: calc.Var{Symbol: "n", Meaning: meansN},
	Vars: []calc.Var{
		{Symbol: "C", Meaning: meansC, Unit: "kg", US: "lb"},
		{Symbol: "c", Meaning: meansHc},
		{Symbol: "W", Meaning: meansWp, Unit: "kg", US: "lb"},
	},
	Fn: calc.Func3(Lever), Go: "weather.Lever", Source: "aci305",
}
