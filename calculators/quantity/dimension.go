// Package quantity holds the units of the trade. It parses typed quantities to
// SI, and writes SI values rounded for the field.
//
// All values inside the program are in SI: metre, kilogram, second, kelvin and
// units derived from them. Only Parse, Format, Exact and Round use the reader's
// units. The package is compiled into the WebAssembly module and imports only
// strconv, math, strings, errors and unicode/utf8.
package quantity

// Dimension is the kind of a quantity. Two dimensions may have the same
// exponents (a moment and an energy, a temperature and a temperature
// difference); a unit of one is still an error for the other.
type Dimension uint8

// The dimensions, with the SI unit in which their values are stored.
const (
	Number                Dimension = iota // a number or count; 1
	Length                                 // m
	Area                                   // m²
	Volume                                 // m³
	Mass                                   // kg
	Force                                  // N
	Pressure                               // Pa
	Density                                // kg/m³
	Speed                                  // m/s
	FlowRate                               // m³/s
	Temperature                            // K, a point on the scale
	TemperatureDifference                  // K, a rise or a fall
	Duration                               // s
	Angle                                  // rad
	Ratio                                  // 1, usually written in %
	LineLoad                               // N/m
	MassPerLength                          // kg/m
	MassPerArea                            // kg/m²
	AreaPerLength                          // m²/m, steel per run of wall
	Frequency                              // Hz
	Acceleration                           // m/s²
	Moment                                 // N·m
	Energy                                 // J
	Power                                  // W
	EvaporationRate                        // kg/(m²·s)
	TemperatureRate                        // K/s
	Maturity                               // K·s, temperature above a datum summed over time
	dimensionCount
)

// kind describes a dimension.
type kind struct {
	name string  // stable, lower-case, part of a ParseError's key
	noun string  // with its article, for refusals
	exp  [4]int8 // length, mass, time, temperature
	us   string  // an example in US units
	si   string  // an example in metric units
}

// Examples are whole numbers, so that they suit either decimal mark.
var kinds = [dimensionCount]kind{
	Number:      {"number", "a plain number", [4]int8{}, "12", "12"},
	Length:      {"length", "a length", [4]int8{1, 0, 0, 0}, `9' 6"`, "2900 mm"},
	Area:        {"area", "an area", [4]int8{2, 0, 0, 0}, "320 ft²", "30 m²"},
	Volume:      {"volume", "a volume", [4]int8{3, 0, 0, 0}, "10 yd³", "8 m³"},
	Mass:        {"mass", "a mass", [4]int8{0, 1, 0, 0}, "94 lb", "42 kg"},
	Force:       {"force", "a force", [4]int8{1, 1, -2, 0}, "3000 lbf", "13 kN"},
	Pressure:    {"pressure", "a pressure", [4]int8{-1, 1, -2, 0}, "600 psf", "29 kPa"},
	Density:     {"density", "a density", [4]int8{-3, 1, 0, 0}, "150 lb/ft³", "2400 kg/m³"},
	Speed:       {"speed", "a speed", [4]int8{1, 0, -1, 0}, "4 ft/h", "2 m/h"},
	FlowRate:    {"flow", "a flow", [4]int8{3, 0, -1, 0}, "30 yd³/h", "25 m³/h"},
	Temperature: {"temperature", "a temperature", [4]int8{0, 0, 0, 1}, "70 °F", "20 °C"},
	TemperatureDifference: {
		"temperature-difference",
		"a temperature difference",
		[4]int8{0, 0, 0, 1},
		"20 F°",
		"10 C°",
	},
	Duration:        {"duration", "a length of time", [4]int8{0, 0, 1, 0}, "90 min", "90 min"},
	Angle:           {"angle", "an angle", [4]int8{}, "45°", "45°"},
	Ratio:           {"ratio", "a share", [4]int8{}, "50%", "50%"},
	LineLoad:        {"line-load", "a load per length", [4]int8{0, 1, -2, 0}, "400 lbf/ft", "6 kN/m"},
	MassPerLength:   {"mass-per-length", "a mass per length", [4]int8{-1, 1, 0, 0}, "2 lb/ft", "3 kg/m"},
	MassPerArea:     {"mass-per-area", "a mass per area", [4]int8{-2, 1, 0, 0}, "75 lb/ft²", "360 kg/m²"},
	AreaPerLength:   {"area-per-length", "a steel area per length", [4]int8{1, 0, 0, 0}, "1 in²/ft", "500 mm²/m"},
	Frequency:       {"frequency", "a frequency", [4]int8{0, 0, -1, 0}, "12000 vpm", "200 Hz"},
	Acceleration:    {"acceleration", "an acceleration", [4]int8{1, 0, -2, 0}, "32 ft/s²", "10 m/s²"},
	Moment:          {"moment", "a moment", [4]int8{2, 1, -2, 0}, "500 ft·lbf", "700 N·m"},
	Energy:          {"energy", "an energy", [4]int8{2, 1, -2, 0}, "200 Btu", "200 kJ"},
	Power:           {"power", "a power", [4]int8{2, 1, -3, 0}, "3 hp", "2 kW"},
	EvaporationRate: {"evaporation", "an evaporation rate", [4]int8{-2, 1, -1, 0}, "1 lb/ft²/h", "1 kg/m²/h"},
	TemperatureRate: {
		"temperature-rate",
		"a rate of temperature change",
		[4]int8{0, 0, -1, 1},
		"5 F°/h",
		"3 C°/h",
	},
	Maturity: {
		"maturity",
		"a temperature summed over time",
		[4]int8{0, 0, 1, 1},
		"3000 F°·h",
		"1600 C°·h",
	},
}

// Dimensions lists every dimension in order.
func Dimensions() []Dimension {
	all := make([]Dimension, dimensionCount)
	for i := range all {
		all[i] = Dimension(i)
	}
	return all
}

// String returns the dimension's stable name: length, mass-per-length.
func (d Dimension) String() string { return kinds[d].name }

// Exponents returns the powers of length, mass, time and temperature in the
// dimension's SI unit. Angles and ratios have zeros.
func (d Dimension) Exponents() [4]int8 { return kinds[d].exp }
