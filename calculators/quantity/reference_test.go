package quantity

import (
	"math"
	"os/exec"
	"strconv"
	"strings"
	"testing"
)

// gnu maps each unit to its name in GNU units, a general-purpose converter with
// an independent table of definitions.
var gnu = map[string]string{
	"":   "1",
	"ft": "foot", "in": "inch", "yd": "yard", "mi": "mile", "m": "m", "cm": "cm", "mm": "mm", "km": "km",
	"ft²": "foot^2", "in²": "inch^2", "yd²": "yard^2", "m²": "m^2", "cm²": "cm^2", "mm²": "mm^2",
	"yd³": "yard^3", "ft³": "foot^3", "in³": "inch^3", "US gal": "usgallon", "US qt": "usquart",
	"US fl oz": "usfluidounce", "m³": "m^3", "L": "liter", "mL": "milliliter",
	"lb": "pound", "oz": "ounce", "US ton": "shortton", "kg": "kg", "g": "gram", "t": "tonne",
	"lbf": "lbf", "kip": "kip", "N": "newton", "kN": "kilonewton",
	"psf": "lbf/foot^2", "psi": "psi", "ksi": "ksi", "ksf": "kip/foot^2", "kPa": "kilopascal", "MPa": "megapascal",
	"Pa": "pascal", "bar": "bar", "kg/cm²": "kgf/cm^2",
	"lb/ft³": "pound/foot^3", "lb/yd³": "pound/yard^3", "kg/m³": "kg/m^3", "kN/m³": "kilonewton/m^3/gravity",
	"ft/h": "foot/hour", "in/h": "inch/hour", "ft/min": "foot/minute",
	"ft/s": "foot/s", "in/s": "inch/s", "mph": "mph", "kn": "knot",
	"m/h": "m/hour", "m/s": "m/s", "mm/s": "mm/s", "km/h": "km/hour",
	"yd³/h": "yard^3/hour", "ft³/h": "foot^3/hour", "ft³/min": "cfm", "US gal/min": "usgallon/minute",
	"m³/h": "m^3/hour", "m³/s": "m^3/s", "L/min": "liter/minute", "L/s": "liter/s",
	"°F": "tempF", "°C": "tempC", "K": "K", "F°": "degF", "C°": "degC",
	"min": "minute", "h": "hour", "d": "day", "s": "s",
	"°": "degree", "rad": "radian", "%": "percent",
	"lbf/ft": "lbf/foot", "kip/ft": "kip/foot", "N/m": "newton/m", "kN/m": "kilonewton/m",
	"lb/ft": "pound/foot", "kg/m": "kg/m", "lb/ft²": "pound/foot^2", "kg/m²": "kg/m^2",
	"in²/ft": "inch^2/foot", "mm²/m": "mm^2/m", "cm²/m": "cm^2/m",
	"vpm": "1/minute", "Hz": "hertz",
	"ft/s²": "foot/s^2", "m/s²": "m/s^2", "gₙ": "gravity",
	"ft·lbf": "foot lbf", "in·lbf": "inch lbf", "kip·ft": "kip foot", "N·m": "newton m", "kN·m": "kilonewton m",
	"Btu": "btu", "J": "joule", "kJ": "kilojoule", "MJ": "megajoule", "kWh": "kilowatt hour",
	"hp": "horsepower", "Btu/h": "btu/hour", "W": "watt", "kW": "kilowatt",
	"lb/ft²/h": "pound/foot^2/hour", "kg/m²/h": "kg/m^2/hour",
	"F°/h": "degF/hour", "C°/h": "degC/hour", "F°·h": "degF hour", "C°·h": "degC hour", "C°·d": "degC day",
}

// TestAgainstGNUUnits converts values between every two units of a dimension
// and compares with GNU units (Debian package units) to 1e-9 relative.
func TestAgainstGNUUnits(t *testing.T) {
	program, err := exec.LookPath("units")
	if err != nil {
		t.Fatal("this test needs the program GNU units: apt-get install units (macOS: brew install gnu-units)")
	}
	type question struct {
		from, to Unit
		x        float64
	}
	var asked []question
	var lines strings.Builder
	for _, d := range Dimensions() {
		for _, from := range Units(d) {
			for _, to := range Units(d) {
				for _, x := range []float64{1, 73.25, 12345.678} {
					asked = append(asked, question{from, to, x})
					lines.WriteString(gnuValue(x, from) + "\n" + gnu[to.Symbol] + "\n")
				}
			}
		}
	}
	cmd := exec.Command(program, "--quiet", "--terse", "--output-format", "%.17g")
	cmd.Env = append(cmd.Environ(), "LC_ALL=C.UTF-8")
	cmd.Stdin = strings.NewReader(lines.String())
	out, err := cmd.CombinedOutput()
	if err != nil {
		t.Fatalf("%v: %s", err, out)
	}
	answers := strings.Fields(string(out))
	if len(answers) != len(asked) {
		t.Fatalf("asked %d questions of GNU units, got %d answers", len(asked), len(answers))
	}
	for i, q := range asked {
		want, err := strconv.ParseFloat(answers[i], 64)
		got := q.to.FromSI(q.from.ToSI(q.x))
		// Points on a temperature scale are compared relative to their
		// distance from absolute zero.
		if err != nil || math.Abs(got-want) > 1e-9*(math.Abs(want)+q.to.Offset) {
			t.Errorf("%v %s is %v %s, GNU units gives %s", q.x, q.from.Symbol, got, q.to.Symbol, answers[i])
		}
	}
	t.Logf("%d conversions", len(asked))
}

func gnuValue(x float64, u Unit) string {
	digits := strconv.FormatFloat(x, 'f', -1, 64)
	if u.Offset != 0 {
		return gnu[u.Symbol] + "(" + digits + ")"
	}
	return digits + " " + gnu[u.Symbol]
}
