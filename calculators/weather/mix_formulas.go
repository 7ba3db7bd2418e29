package weather

// The heat of a mix, counted in masses of water.
const (
	solidHeat = 0.22 // specific heat of cement and aggregate against water's
	latentC   = 80.0 // heat of melting against water's specific heat, C°; 144 F°
	freezingC = 0.0  // °C
	maxIce    = 0.75 // largest share of the batch water that is batched as ice
)

// MixTemperature is the temperature of a mix from its parts, in °C or °F:
// (0.22·(T_a·W_a + T_c·W_c) + T_w·W_w + T_m·W_m + (T_i - L)·W_i) /
// (0.22·(W_a + W_c) + W_w + W_m + W_i), the values in the order T_a, W_a, T_c,
// W_c, T_w, W_w, T_m, W_m, T_i, L, W_i. Masses of aggregate, cement, mixing
// water, free moisture and ice in any one unit; T_i is the melting point and L
// the heat of melting over water's specific heat: 80 C°, 144 F°. Heat of
// hydration, mixing and haul are left out. It does not hold at or below the
// melting point. Source: ACI 305R and 306R.
func MixTemperature(v []float64) float64 {
	solid := 0.22 * (float64(v[0]*v[1]) + float64(v[2]*v[3]))
	wet := float64(solid) + float64(v[4]*v[5]) + float64(v[6]*v[7])
	return (wet + float64((v[8]-v[9])*v[10])) / (float64(0.22*(v[1]+v[3])) + v[5] + v[7] + v[10])
}

// FrozenMoisture is what free moisture on aggregate below freezing counts as,
// in place of its temperature: T_i + 0.5·(T_a - T_i) - L, in °C or °F. In °F
// that is 0.5·T_a - 128. Source: ACI 306R-88, section 3.7.
func FrozenMoisture(aggregate, melting, latent float64) float64 {
	return melting + float64(0.5*(aggregate-melting)) - latent
}

// HeatCapacity is the mass of water that takes as much heat as the mix:
// 0.22·(W_a + W_c) + W_m + W_w. Source: the denominator of ACI 305R.
func HeatCapacity(aggregate, cement, moisture, water float64) float64 {
	return float64(0.22*(aggregate+cement)) + moisture + water
}

// IceNeeded is the mass of ice that, in place of as much water, brings a mix
// from t0 to t: C·(T_0 - T)/(T_w - T_i + L). Source: algebra on MixTemperature.
func IceNeeded(capacity, t0, t, water, melting, latent float64) float64 {
	return capacity * (t0 - t) / (water - melting + latent)
}

// WaterNeeded is the temperature of the mixing water that brings a mix from
// t0 to t: T_w + C·(T - T_0)/W_w. Source: algebra on MixTemperature.
func WaterNeeded(water, capacity, t, t0, mass float64) float64 {
	return water + capacity*(t-t0)/mass
}

// Lever is by how many degrees one part must change to change the mix by one:
// C/(c·W), c the part's specific heat against water's. Source: as above.
func Lever(capacity, heat, mass float64) float64 { return capacity / (heat * mass) }
