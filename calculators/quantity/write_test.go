package quantity

import (
	"math"
	"testing"
)

func si(x float64, unit string) float64 {
	u, ok := Find(unit)
	if !ok {
		panic("no unit " + unit)
	}
	return u.ToSI(x)
}

func TestFormat(t *testing.T) {
	usComma, metricComma := Style{US, Comma}, Style{Metric, Comma}
	fine := Display{Length, UnitDisplay{Form: FeetInches}, UnitDisplay{Unit: "mm", Step: 1}}
	up := func(step float64, rounding Rounding) Display {
		return Display{Dim: Number, US: UnitDisplay{Step: step, Rounding: rounding}}
	}
	for _, c := range []struct {
		si      float64
		display Display
		style   Style
		want    string
	}{
		{3.1666666, Display{Dim: Number}, inUS, "3.166667"},
		{3.1666666, Display{Dim: Number, US: UnitDisplay{Digits: 5}}, inUS, "3.1667"},
		{0.00179924242, Display{Dim: Number, US: UnitDisplay{Digits: 5}}, inUS, "0.0017992"},
		{123456, Display{Dim: Number, US: UnitDisplay{Digits: 5}}, inUS, "123\u202F456"},
		{si(108, "in"), height, inUS, `9' 0"`},
		{si(126.5, "in"), height, inUS, `10' 6-1/2"`},
		{si(126.53, "in"), height, inUS, `10' 6-1/2"`},
		{si(-126.5, "in"), height, inUS, `-10' 6-1/2"`},
		{si(71.99, "in"), height, inUS, `6' 0"`}, // never 5' 12"
		{si(0.75, "in"), height, inUS, `0' 0-3/4"`},
		{si(-0.01, "in"), height, inUS, `0' 0"`},
		{si(-0.25, "in"), height, inUS, `-0' 0-1/4"`},
		{0, height, inUS, `0' 0"`},
		{si(12.0625, "in"), fine, inUS, `1' 0-1/16"`},
		{si(123456, "ft"), height, inUS, "123\u202F456' 0\""},
		{si(126.5, "in"), gap, inUS, `126-1/2"`},
		{si(0.75, "in"), gap, inUS, `3/4"`},
		{si(-6.5, "in"), gap, inUS, `-6-1/2"`},
		{0, gap, inUS, `0"`},
		{si(10.6, "in"), Display{Length, UnitDisplay{Form: Inches, Step: 1, Rounding: Down}, UnitDisplay{}}, inUS,
			`10"`},
		{si(10.6, "in"), Display{Length, UnitDisplay{Form: FeetInches, Step: 6, Rounding: Up}, UnitDisplay{}}, inUS,
			`1' 0"`},
		{1e20, height, inUS, "3.28084e+20 ft"},
		{2.7512, height, inMetric, "2.75 m"},
		{2.7, height, inMetric, "2.70 m"},
		{2.7512, height, metricComma, "2,75 m"},
		{si(150, "lb/ft³"), weight, inUS, "150 lb/ft³"},
		{2403, weight, inMetric, "2400 kg/m³"},
		{si(10.1, "yd³"), concrete, inUS, "10.25 yd³"},
		{si(10.1, "yd³"), concrete, usComma, "10,25 yd³"},
		{si(604, "psf"), press, inUS, "600 psf"},
		{si(605, "psf"), press, inUS, "610 psf"},
		{si(12340, "psf"), press, inUS, "12\u202F340 psf"},
		{28750, press, inMetric, "29.0 kPa"},
		{si(70, "°F"), air, inUS, "70 °F"},
		{si(0, "°F"), air, inUS, "0 °F"},
		{si(-0.3, "°F"), air, inUS, "0 °F"},
		{si(-40, "°F"), air, inMetric, "-40.0 °C"},
		{10, drop, inUS, "18 F°"},
		{5400, wait, inMetric, "90 min"},
		{0.45, share, inUS, "45%"},
		{math.Pi / 4, lean, inUS, "45°"},
		// Without a step, as written.
		{12, count, inUS, "12"},
		{9999, count, inUS, "9999"},
		{10000, count, inUS, "10\u202F000"},
		{1234567890, count, inUS, "1\u202F234\u202F567\u202F890"},
		{0.45, count, metricComma, "0,45"},
		{1.0 / 3, count, inUS, "0.3333333"},
		{12345.678, count, inUS, "12\u202F345.68"},
		{1e-7, count, inUS, "1e-07"},
		{2.5e20, count, usComma, "2,5e+20"},
		{math.Copysign(0, -1), count, inUS, "0"},
		{math.NaN(), count, inUS, "—"},
		{math.Inf(-1), height, inUS, "—"},
		// Rounding, and rounding errors.
		{12.000000001, up(1, Up), inUS, "12"},
		{12.00001, up(1, Up), inUS, "13"},
		{11.999999999, up(1, Down), inUS, "12"},
		{11.9999, up(1, Down), inUS, "11"},
		{-12.4, up(1, Up), inUS, "-12"},
		{-12.4, up(1, Down), inUS, "-13"},
		{-0.4, up(1, Up), inUS, "0"},
		{2.5, up(1, Nearest), inUS, "3"},
		{-2.5, up(1, Nearest), inUS, "-3"},
		{1.005, up(0.01, Nearest), inUS, "1.01"}, // 1.005 is a little less in binary
		{0.1 + 0.2, up(0.1, Up), inUS, "0.3"},
		{1.1 * 1.1, up(0.01, Up), inUS, "1.21"},
		{10.3, up(0.25, Nearest), inUS, "10.25"},
		{10.4, up(0.25, Nearest), inUS, "10.50"},
		{7, up(2.5, Nearest), inUS, "7.5"},
		{1234, up(50, Up), inUS, "1250"},
	} {
		if got := Format(c.si, c.display, c.style); got != c.want {
			t.Errorf("Format(%v, %+v) = %q, want %q", c.si, c.display.In(c.style.System), got, c.want)
		}
	}
}

func TestExact(t *testing.T) {
	for _, c := range []struct {
		si      float64
		display Display
		style   Style
		want    string
	}{
		{si(126.5, "in"), height, inUS, "10.54167 ft"},
		{si(126.5, "in"), gap, inUS, "126.5 in"},
		{2.7512, height, inMetric, "2.7512 m"},
		{2.7512, height, Style{Metric, Comma}, "2,7512 m"},
		{2, height, inMetric, "2 m"},
		{1e6, press, inUS, "20\u202F885.43 psf"},
		{si(604.123456789, "psf"), press, inUS, "604.1235 psf"},
		{1234567891, count, inUS, "1\u202F234\u202F568\u202F000"}, // no more than 7 digits
		{0.1 + 0.2, count, inUS, "0.3"},
		{si(70, "°F"), air, inUS, "70 °F"},
		{si(0, "°F"), air, inUS, "0 °F"},
		{273.15, air, inMetric, "0 °C"},
		{math.NaN(), count, inUS, "—"},
		{math.Copysign(0, -1), count, inUS, "0"},
	} {
		if got := Exact(c.si, c.display, c.style); got != c.want {
			t.Errorf("Exact(%v) = %q, want %q", c.si, got, c.want)
		}
	}
}

// Conversions as printed in the worked example of NIST SP 811, appendix B.7
// (from memory): 36 ft is 10.97 m to the hundredth, 10.9728 m exactly.
func TestPrintedConversion(t *testing.T) {
	x, err := Parse("36 ft", height, inUS)
	if err != nil || Format(x, height, inMetric) != "10.97 m" || Exact(x, height, inMetric) != "10.9728 m" {
		t.Errorf("36 ft is %s, %s, %v", Format(x, height, inMetric), Exact(x, height, inMetric), err)
	}
}

func TestShow(t *testing.T) {
	if wait.In(Metric) != wait.US {
		t.Error("without a metric scale the other is used")
	}
	for _, c := range []struct {
		display Display
		want    string
	}{
		{height, ""}, {gap, ""}, {press, ""}, {count, ""}, {share, ""},
		{Display{Dim: Ratio, US: UnitDisplay{Step: 0.01}}, ""},
		{Display{Dim: Length, US: UnitDisplay{Unit: "psf"}}, "psf is no unit of length"},
		{Display{Dim: Length, US: UnitDisplay{Unit: "ell"}}, "there is no unit ell"},
		{Display{Dim: Length}, "a value of length needs a unit"},
		{Display{Dim: Length, US: UnitDisplay{Unit: "m", Step: -1}}, "a step must be 0 or more"},
		{Display{Dim: Length, US: UnitDisplay{Unit: "m", Step: math.NaN()}}, "a step must be 0 or more"},
		{Display{Dim: Length, US: UnitDisplay{Unit: "m", Step: 1.0 / 3}}, "a step must have at most 9 decimals"},
		{Display{Dim: Length, US: UnitDisplay{Unit: "m", Form: FeetInches}}, "feet and inches need the unit ft"},
		{Display{Dim: Length, US: UnitDisplay{Unit: "ft", Form: Inches}}, "inches need the unit in"},
		{Display{Dim: Length, US: UnitDisplay{Form: Inches, Step: 0.1}}, "a step of inches must be a whole number or " +
			"a fraction like 1/16"},
		{Display{Dim: Pressure, US: UnitDisplay{Form: Inches}}, " is no unit of pressure"},
		{Display{Length, UnitDisplay{Unit: "ft"}, UnitDisplay{Unit: "kPa"}}, "kPa is no unit of length"},
	} {
		if got := c.display.Check(); got != c.want {
			t.Errorf("Check(%+v) = %q, want %q", c.display, got, c.want)
		}
	}
	defer func() {
		if recover() == nil {
			t.Error("a Show with a wrong unit must not be used silently")
		}
	}()
	Format(1, Display{Dim: Length, US: UnitDisplay{Unit: "psf"}}, inUS)
}
