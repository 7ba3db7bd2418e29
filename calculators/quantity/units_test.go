package quantity

import (
	"math"
	"strconv"
	"strings"
	"testing"
)

func near(a, b, relative float64) bool {
	return math.Abs(a-b) <= relative*math.Max(math.Abs(a), math.Abs(b))
}

// Find and lookup find a unit by each of its names; within a dimension names are
// unique.
func TestNames(t *testing.T) {
	symbols := map[string]bool{}
	for _, d := range Dimensions() {
		names := map[string]string{}
		for _, u := range Units(d) {
			if symbols[u.Symbol] {
				t.Errorf("two units have the symbol %q", u.Symbol)
			}
			symbols[u.Symbol] = true
			if got, ok := Find(u.Symbol); !ok || got.Symbol != u.Symbol {
				t.Errorf("Find(%q) gives %q", u.Symbol, got.Symbol)
			}
			for _, name := range append([]string{fold(u.Symbol)}, u.Aliases...) {
				if fold(name) != name {
					t.Errorf("%s: alias %q must be written %q", u.Symbol, name, fold(name))
				}
				lower := strings.ToLower(name)
				if other, twice := names[lower]; twice {
					t.Errorf("%v: %q names both %s and %s", d, name, other, u.Symbol)
				}
				names[lower] = u.Symbol
				if got, ok := lookup(name, d); name != "" && (!ok || got.Symbol != u.Symbol) {
					t.Errorf("lookup(%q, %v) gives %q, want %q", name, d, got.Symbol, u.Symbol)
				}
				if _, ok := Find(name); !ok {
					t.Errorf("Find(%q) finds no unit", name)
				}
			}
		}
		if len(Units(d)) == 0 {
			t.Errorf("%v has no unit", d)
		}
	}
}

func TestFind(t *testing.T) {
	for _, c := range []struct {
		name, want string
		dim        Dimension
	}{
		{"", "", Number},
		{"ft^2", "ft²", Area}, {"ft3", "ft³", Volume}, {"yd3", "yd³", Volume}, {"m^3", "m³", Volume},
		{"pcf", "lb/ft³", Density}, {"lb/ft3", "lb/ft³", Density}, {"lb / ft^3", "lb/ft³", Density},
		{"F", "°F", Temperature}, {"degC", "°C", Temperature}, {"deg F", "°F", Temperature}, {"ºC", "°C", Temperature},
		{"F°", "F°", TemperatureDifference}, {"C°", "C°", TemperatureDifference},
		{"deg", "°", Angle}, {"inch", "in", Length}, {"in.", "in", Length}, {`"`, "in", Length}, {"'", "ft", Length},
		{"gal", "US gal", Volume}, {"US gal", "US gal", Volume}, {"cu. yd.", "yd³", Volume}, {"yd", "yd", Length},
		{"lb", "lb", Mass}, {"lb/ft", "lb/ft", MassPerLength}, {"psf", "psf", Pressure},
		{"lb/ft²", "lb/ft²", MassPerArea},
		{"ft lbf", "ft·lbf", Moment}, {"N*m", "N·m", Moment}, {"kg/(m²·h)", "kg/m²/h", EvaporationRate},
	} {
		u, ok := Find(c.name)
		if !ok || u.Symbol != c.want || u.Dim != c.dim {
			t.Errorf("Find(%q) = %q, a unit of %v, %v; want %q of %v", c.name, u.Symbol, u.Dim, ok, c.want, c.dim)
		}
	}
	for _, name := range []string{"furlong", "ft4", " ft m", "xyz"} {
		if u, ok := Find(name); ok {
			t.Errorf("Find(%q) gives %q", name, u.Symbol)
		}
	}
}

// simple are the units that compound symbols are made of, with the exponents
// of length, mass, time and temperature.
var simple = map[string][4]int8{
	"ft": {1}, "in": {1}, "yd": {1}, "mi": {1}, "m": {1}, "cm": {1}, "mm": {1}, "km": {1},
	"lb": {0, 1}, "oz": {0, 1}, "kg": {0, 1}, "g": {0, 1}, "t": {0, 1}, "US ton": {0, 1},
	"s": {0, 0, 1}, "min": {0, 0, 1}, "h": {0, 0, 1}, "d": {0, 0, 1},
	"K": {0, 0, 0, 1}, "F°": {0, 0, 0, 1}, "C°": {0, 0, 0, 1}, "°F": {0, 0, 0, 1}, "°C": {0, 0, 0, 1},
	"lbf": {1, 1, -2}, "kip": {1, 1, -2}, "N": {1, 1, -2}, "kN": {1, 1, -2},
	"L": {3}, "mL": {3}, "US gal": {3}, "US qt": {3}, "US fl oz": {3},
	"Pa": {-1, 1, -2}, "kPa": {-1, 1, -2}, "MPa": {-1, 1, -2}, "bar": {-1, 1, -2},
	"J": {2, 1, -2}, "kJ": {2, 1, -2}, "MJ": {2, 1, -2}, "Btu": {2, 1, -2},
	"W": {2, 1, -3}, "kW": {2, 1, -3}, "hp": {2, 1, -3},
	"kn": {1, 0, -1}, "Hz": {0, 0, -1}, "gₙ": {1, 0, -2},
	"": {}, "%": {}, "°": {}, "rad": {},
}

// spelled expands the symbols that do not show their parts.
var spelled = map[string]string{
	"psf": "lbf/ft²", "psi": "lbf/in²", "ksi": "kip/in²", "ksf": "kip/ft²", "mph": "mi/h",
	"kWh": "kW·h", "vpm": "/min",
	"Pa": "N/m²", "J": "N·m", "W": "J/s", "mL": "cm³", "bar": "", "N": "kg·m/s²",
}

// parts splits a symbol into simple units and returns their exponents and the
// product of their scales.
func parts(t *testing.T, symbol string) (exp [4]int8, scale float64) {
	scale = 1
	for i, side := range strings.Split(symbol, "/") {
		for _, factor := range strings.Split(side, "·") {
			name, power := factor, int8(1)
			if cut, ok := strings.CutSuffix(factor, "²"); ok {
				name, power = cut, 2
			} else if cut, ok := strings.CutSuffix(factor, "³"); ok {
				name, power = cut, 3
			}
			if i > 0 {
				power = -power
			}
			e, ok := simple[name]
			u, found := Find(name)
			if !ok || !found {
				t.Errorf("%s: no simple unit %q", symbol, name)
			}
			for j := range exp {
				exp[j] += power * e[j]
			}
			scale *= math.Pow(u.Scale, float64(power))
		}
	}
	return exp, scale
}

// Every unit has the exponents of its dimension, and the factor of a compound unit
// is the product of its parts.
func TestHomogeneity(t *testing.T) {
	for _, u := range units {
		symbol := u.Symbol
		if long := spelled[symbol]; long != "" {
			symbol = long
		}
		exp, scale := parts(t, symbol)
		if u.Symbol == "kN/m³" { // a weight density represents the mass density under it
			exp[0], exp[2], scale = exp[0]-1, exp[2]+2, scale/9.80665
		}
		if u.Symbol == "kg/cm²" { // the kilogram stands for the force of its weight
			exp[0], exp[2], scale = exp[0]+1, exp[2]-2, scale*9.80665
		}
		if exp != u.Dim.Exponents() {
			t.Errorf("%s has exponents %v, %v has %v", u.Symbol, exp, u.Dim, u.Dim.Exponents())
		}
		if !near(scale, u.Scale, 1e-14) {
			t.Errorf("%s is %v by its parts, %v in the table", u.Symbol, scale, u.Scale)
		}
	}
}

// Each dimension has one coherent SI unit (two where °C is offered too), and
// only points on the temperature scale have an offset.
func TestCoherence(t *testing.T) {
	without := map[Dimension]bool{ // SI unit not in the table
		Ratio: true, EvaporationRate: true, TemperatureRate: true, Maturity: true, AreaPerLength: true,
	}
	for _, d := range Dimensions() {
		coherent := false
		for _, u := range Units(d) {
			coherent = coherent || u.Scale == 1
			if !(u.Scale > 0) || (u.Offset != 0 && d != Temperature) {
				t.Errorf("%s has scale %v and offset %v", u.Symbol, u.Scale, u.Offset)
			}
		}
		if coherent == without[d] {
			t.Errorf("%v: coherent unit %v", d, coherent)
		}
	}
}

// Factors as printed in NIST Special Publication 811 (2008), appendix B.8:
// quoted where another document repeats them line by line, else from memory.
// An exact factor must agree to the last bit but one, a rounded one within
// half a unit of its last digit.
func TestPrintedFactors(t *testing.T) {
	const quoted, memory = "quoted", "from memory"
	for _, c := range []struct {
		unit, printed string
		exact         bool
		status        string
	}{
		{"ft", "3.048E-01", true, quoted},
		{"in", "2.54E-02", true, quoted},
		{"yd", "9.144E-01", true, quoted},
		{"mi", "1.609344E+03", true, quoted},
		{"lb", "4.5359237E-01", true, quoted},        // footnote 22
		{"lbf", "4.4482216152605E+00", true, quoted}, // footnote 23
		{"psf", "4.788026E+01", false, quoted},
		{"psi", "6.894757E+03", false, quoted},
		{"gₙ", "9.80665E+00", true, quoted},
		{"bar", "1.0E+05", true, quoted},
		{"Btu", "1.05505585262E+03", true, quoted}, // footnote 9
		{"hp", "7.456999E+02", false, quoted},
		{"min", "6.0E+01", true, quoted},
		{"h", "3.6E+03", true, quoted},
		{"d", "8.64E+04", true, quoted},
		{"L", "1.0E-03", true, quoted},
		{"t", "1.0E+03", true, quoted},
		{"ft²", "9.290304E-02", true, quoted},
		{"in²", "6.4516E-04", true, quoted},
		{"yd²", "8.361274E-01", false, quoted},
		{"ft³", "2.831685E-02", false, quoted},
		{"in³", "1.638706E-05", false, quoted},
		{"yd³", "7.645549E-01", false, quoted},
		{"US gal", "3.785412E-03", false, quoted},
		{"US qt", "9.463529E-04", false, quoted},
		{"US fl oz", "2.957353E-05", false, quoted},
		{"oz", "2.834952E-02", false, quoted},
		{"US ton", "9.071847E+02", false, quoted},
		{"kip", "4.448222E+03", false, quoted},
		{"ksi", "6.894757E+06", false, memory},
		{"lb/ft³", "1.601846E+01", false, quoted},
		{"lb/yd³", "5.932764E-01", false, memory},
		{"ft/h", "8.466667E-05", false, memory},
		{"ft/min", "5.08E-03", true, quoted},
		{"ft/s", "3.048E-01", true, quoted},
		{"in/s", "2.54E-02", true, memory},
		{"mph", "4.4704E-01", true, quoted},
		{"kn", "5.144444E-01", false, memory},
		{"km/h", "2.777778E-01", false, quoted},
		{"ft³/min", "4.719474E-04", false, quoted},
		{"US gal/min", "6.309020E-05", false, memory},
		{"lbf/ft", "1.459390E+01", false, memory},
		{"lb/ft", "1.488164E+00", false, memory},
		{"lb/ft²", "4.882428E+00", false, memory},
		{"ft/s²", "3.048E-01", true, memory},
		{"ft·lbf", "1.355818E+00", false, memory},
		{"in·lbf", "1.129848E-01", false, memory},
		{"kWh", "3.6E+06", true, memory},
		{"Btu/h", "2.930711E-01", false, memory},
		{"°", "1.745329E-02", false, memory},
		{"F°", "5.555556E-01", false, memory},
	} {
		u, ok := Find(c.unit)
		printed, err := strconv.ParseFloat(c.printed, 64)
		if !ok || err != nil {
			t.Fatalf("%s %s: %v", c.unit, c.printed, err)
		}
		tolerance := 2e-16 * printed
		if !c.exact {
			mantissa, power, _ := strings.Cut(c.printed, "E")
			decimals := len(mantissa) - strings.IndexByte(mantissa, '.') - 1
			exponent, _ := strconv.Atoi(power)
			tolerance = 0.5 * math.Pow10(exponent-decimals)
		}
		if math.Abs(u.Scale-printed) > tolerance {
			t.Errorf("%s is %v, printed %s (%s)", c.unit, u.Scale, c.printed, c.status)
		}
	}
}

// Fixed points of the scales: NIST SP 811, appendix B.8 (°F to °C and K), and
// the point where both scales show the same number.
func TestTemperatures(t *testing.T) {
	for _, c := range []struct{ f, c float64 }{{32, 0}, {212, 100}, {-40, -40}, {50, 10}, {95, 35},
		{-459.67, -273.15}} {
		f, _ := Find("°F")
		cel, _ := Find("°C")
		if got := cel.FromSI(f.ToSI(c.f)); math.Abs(got-c.c) > 1e-12*300 {
			t.Errorf("%v °F is %v °C, want %v", c.f, got, c.c)
		}
		if got := f.FromSI(cel.ToSI(c.c)); math.Abs(got-c.f) > 1e-12*600 {
			t.Errorf("%v °C is %v °F, want %v", c.c, got, c.f)
		}
	}
	rise, _ := Find("F°")
	if rise.ToSI(18) != 10 {
		t.Errorf("a rise of 18 F° is %v K, want 10", rise.ToSI(18))
	}
}
