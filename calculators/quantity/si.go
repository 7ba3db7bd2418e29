package quantity

// siSymbols has the SI unit of each dimension, the same as in the comments of
// the Dimension constants. Only a number and a ratio have none.
var siSymbols = [dimensionCount]string{
	Length: "m", Area: "m²", Volume: "m³", Mass: "kg", Force: "N", Pressure: "Pa", Density: "kg/m³",
	Speed: "m/s", FlowRate: "m³/s", Temperature: "K", TemperatureDifference: "K", Duration: "s", Angle: "rad",
	LineLoad: "N/m", MassPerLength: "kg/m", MassPerArea: "kg/m²", AreaPerLength: "m²/m", Frequency: "Hz",
	Acceleration: "m/s²", Moment: "N·m", Energy: "J", Power: "W", EvaporationRate: "kg/(m²·s)",
	TemperatureRate: "K/s", Maturity: "K·s",
}

// SI is the symbol of the SI unit in which values of the dimension are stored;
// empty for numbers and ratios.
func (d Dimension) SI() string { return siSymbols[d] }
