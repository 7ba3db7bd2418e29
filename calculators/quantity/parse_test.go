package quantity

import (
	"math"
	"strings"
	"testing"
)

var (
	inUS     = Style{US, Point}
	inMetric = Style{Metric, Point}
	height   = Display{Length, UnitDisplay{Form: FeetInches, Step: 1.0 / 16}, UnitDisplay{Unit: "m", Step: 0.01}}
	gap      = Display{Length, UnitDisplay{Form: Inches, Step: 1.0 / 16}, UnitDisplay{Unit: "mm", Step: 1}}
	press    = Display{Pressure, UnitDisplay{Unit: "psf", Step: 10}, UnitDisplay{Unit: "kPa", Step: 0.5}}
	concrete = Display{
		Volume,
		UnitDisplay{Unit: "yd³", Step: 0.25, Rounding: Up},
		UnitDisplay{Unit: "m³", Step: 0.1, Rounding: Up},
	}
	air    = Display{Temperature, UnitDisplay{Unit: "°F", Step: 1}, UnitDisplay{Unit: "°C", Step: 0.5}}
	drop   = Display{TemperatureDifference, UnitDisplay{Unit: "F°", Step: 1}, UnitDisplay{Unit: "C°", Step: 1}}
	wait   = Display{Dim: Duration, US: UnitDisplay{Unit: "min", Step: 1}}
	count  = Display{Dim: Number, US: UnitDisplay{Step: 0}}
	share  = Display{Dim: Ratio, US: UnitDisplay{Unit: "%", Step: 1}}
	weight = Display{Density, UnitDisplay{Unit: "lb/ft³", Step: 1}, UnitDisplay{Unit: "kg/m³", Step: 10}}
	tie    = Display{Force, UnitDisplay{Unit: "lbf", Step: 10}, UnitDisplay{Unit: "kN", Step: 0.1}}
	lean   = Display{Dim: Angle, US: UnitDisplay{Unit: "°", Step: 1}}
)

func TestParse(t *testing.T) {
	inches := func(x float64) float64 { return x * 0.0254 }
	for _, c := range []struct {
		text    string
		display Display
		style   Style
		want    float64
	}{
		// Feet, inches and fractions, as typed.
		{`10' 6-1/2"`, height, inUS, inches(126.5)},
		{`10' 6 1/2"`, height, inUS, inches(126.5)},
		{`10'6-1/2"`, height, inUS, inches(126.5)},
		{`10'-6 1/2"`, height, inUS, inches(126.5)},
		{`10' - 6 1/2"`, height, inUS, inches(126.5)},
		{`10' 6.5"`, height, inUS, inches(126.5)},
		{"10 ft 6 1/2 in", height, inUS, inches(126.5)},
		{"10 ft. 6-1/2 in.", height, inUS, inches(126.5)},
		{"10 feet 6 1/2 inches", height, inUS, inches(126.5)},
		{"10ft6in", height, inUS, inches(126)},
		{"10ft3in", height, inUS, inches(123)},
		{"10 ft 3", height, inUS, inches(123)},
		{"10'6", height, inUS, inches(126)},
		{"10′ 6½″", height, inUS, inches(126.5)},
		{"10’ 6 ½”", height, inUS, inches(126.5)},
		{"10‘6“", height, inUS, inches(126)},
		{"10' 6''", height, inUS, inches(126)},
		{"10' ½\"", height, inUS, inches(120.5)},
		{"10' 0-3/4\"", height, inUS, inches(120.75)},
		{"0' 6\"", height, inUS, inches(6)},
		{`6.5"`, height, inUS, inches(6.5)},
		{`6 1/2"`, height, inUS, inches(6.5)},
		{`6-1/2"`, height, inUS, inches(6.5)},
		{"6 - 1 / 2 in", height, inUS, inches(6.5)},
		{"6-½ in", height, inUS, inches(6.5)},
		{"6½", gap, inUS, inches(6.5)},
		{"6-1/2", gap, inUS, inches(6.5)},
		{"6 1/2", gap, inUS, inches(6.5)},
		{"½", gap, inUS, inches(0.5)},
		{"⅞ in", gap, inUS, inches(0.875)},
		{"3/4", gap, inUS, inches(0.75)},
		{"3/4 in", height, inUS, inches(0.75)},
		{"3⁄4 in", height, inUS, inches(0.75)},
		{"7/4 in", height, inUS, inches(1.75)},
		{"-1/4 in", height, inUS, inches(-0.25)},
		{"−1/4 in", height, inUS, inches(-0.25)},
		{"- ¼ in", height, inUS, inches(-0.25)},
		{`-10' 6"`, height, inUS, inches(-126)},
		{"+3/8 in", height, inUS, inches(0.375)},
		{"9", height, inUS, inches(108)},
		{"9.5", height, inUS, inches(114)},
		{"9", gap, inUS, inches(9)},
		{"  9 ft\t", height, inUS, inches(108)},
		{"1 1/2 ft", height, inUS, inches(18)},
		{"3/8 ft", height, inUS, inches(4.5)},
		{"3/8 in", height, inUS, inches(0.375)},
		{"9 FT", height, inUS, inches(108)},
		// Any unit of the dimension; a bare number in the reader's unit.
		{"2.75", height, inMetric, 2.75},
		{"2.75 m", height, inUS, 2.75},
		{"2750mm", height, inUS, 2.75},
		{"9'", height, inMetric, inches(108)},
		{"300", gap, inMetric, 0.3},
		{"3 yd", height, inUS, inches(108)},
		{"10 yd³", concrete, inUS, 10 * 0.764554857984},
		{"10 yd^3", concrete, inUS, 10 * 0.764554857984},
		{"10 cu yd", concrete, inUS, 10 * 0.764554857984},
		{"10 cu. yd.", concrete, inUS, 10 * 0.764554857984},
		{"10 yards", concrete, inUS, 10 * 0.764554857984},
		{"9 1/2 yd³", concrete, inUS, 9.5 * 0.764554857984},
		{"27 ft3", concrete, inUS, 0.764554857984},
		{"30 gal", concrete, inUS, 30 * 0.003785411784},
		{"30 US gal", concrete, inUS, 30 * 0.003785411784},
		{"200 L", concrete, inUS, 0.2},
		{"600", press, inUS, 600 * 47.88025898033584},
		{"600 lb/ft²", press, inUS, 600 * 47.88025898033584},
		{"600 lb / ft^2", press, inUS, 600 * 47.88025898033584},
		{"20 kN/m²", press, inUS, 20000},
		{"29 mpa", press, inUS, 29e6},
		{"150 pcf", weight, inUS, 150 * 16.018463373960142},
		{"23.5 kN/m³", weight, inUS, 23500 / 9.80665},
		{"2400", weight, inMetric, 2400},
		{"3000 lb", tie, inUS, 3000 * 4.4482216152605},
		{"70", air, inUS, 529.67 * 5 / 9},
		{"70 F", air, inUS, 529.67 * 5 / 9},
		{"70°F", air, inMetric, 529.67 * 5 / 9},
		{"70 deg F", air, inMetric, 529.67 * 5 / 9},
		{"20 ºC", air, inUS, 293.15},
		{"-5 °C", air, inUS, 268.15},
		{"18 °F", drop, inUS, 10},
		{"18 F°", drop, inMetric, 10},
		{"90", wait, inUS, 5400},
		{"1 h 30 min", wait, inUS, 5400},
		{"1h30", wait, inUS, 5400},
		{"1 d 2 h 3 min 4 s", wait, inUS, 93784},
		{"1/2 hour", wait, inUS, 1800},
		{"45%", share, inUS, 0.45},
		{"45", share, inUS, 0.45},
		{"45°", lean, inUS, math.Pi / 4},
		{"12", count, inUS, 12},
		// Numbers.
		{".5", count, inUS, 0.5},
		{"5.", count, inUS, 5},
		{"007", count, inUS, 7},
		{"1e3", count, inUS, 1000},
		{"2.5E-3", count, inUS, 0.0025},
		{"-0", count, inUS, 0},
		{"12 000", count, inUS, 12000},
		{"12\u202F000", count, inUS, 12000},
		{"1\u00A0234\u2009567.5", count, inUS, 1234567.5},
		{"12 345-1/2 in", height, inUS, inches(12345.5)},
		{"6 125/1000 in", height, inUS, inches(6.125)},
		{"1,5", count, Style{US, Comma}, 1.5},
		{"1,500", count, Style{US, Comma}, 1.5},
		{"12 000,5", count, Style{Metric, Comma}, 12000.5},
		{`10' 6,5"`, height, Style{US, Comma}, inches(126.5)},
		{",5", count, Style{US, Comma}, 0.5},
	} {
		got, err := Parse(c.text, c.display, c.style)
		if err != nil {
			t.Errorf("Parse(%q): %v", c.text, err)
		} else if !near(got, c.want, 1e-15) || math.Signbit(got) != math.Signbit(c.want) {
			t.Errorf("Parse(%q) = %v, want %v", c.text, got, c.want)
		}
	}
}

func TestParseRefuses(t *testing.T) {
	comma := Style{Metric, Comma}
	long := strings.Repeat("9", typedLimit+1)
	for _, c := range []struct {
		text    string
		display Display
		style   Style
		want    ParseError
		says    string // part of the text
	}{
		{"", height, inUS, errEmpty, `9' 6", 2900 mm`},
		{" \u00A0\t", height, inMetric, errEmpty, `2900 mm, 9' 6"`},
		{long, height, inUS, errLong, ""},
		{"NaN", height, inUS, errNoNumber, "NaN"},
		{"inf", height, inUS, errNoNumber, ""},
		{"-Infinity", height, inUS, errNoNumber, ""},
		{"∞", height, inUS, errNoNumber, ""},
		{"ft", height, inUS, errNoNumber, ""},
		{"-", height, inUS, errNoNumber, ""},
		{"--5", height, inUS, errNoNumber, ""},
		{"+-5", height, inUS, errNoNumber, ""},
		{".", height, inUS, errNoNumber, ""},
		{"x5", count, inUS, errNoNumber, ""},
		{"0x10", count, inUS, errKind(Number), ""},
		{"\xff5", count, inUS, errNoNumber, ""},
		{"1e400", height, inUS, errTooBig, ""},
		{"1e301", count, inUS, errTooBig, ""},
		{"9e299 mi", height, inUS, errTooBig, ""},
		{"-9e299 mi", height, inUS, errTooBig, ""},
		{"1.5.2", height, inUS, errTwoMarks, "1.5.2"},
		{"1..5", height, inUS, errTwoMarks, ""},
		{"1,5", height, inUS, errCommaDecimal, "1.5"},
		{"1,500", height, inUS, errComma, "1.500 or 1500"},
		{"1,234,567", height, inUS, errCommaGroups, "1234567"},
		{"1,234.5", height, inUS, errCommaGroups, "1234.5"},
		{"0,500", height, inUS, errCommaDecimal, "0.500"},
		{"12000,5", height, inUS, errCommaDecimal, "12000.5"},
		{"1.234,5", height, inUS, errTwoMarks, ""},
		{`10' 6,5"`, height, inUS, errCommaDecimal, "6.5"},
		{"1.5", height, comma, errPointDecimal, "1,5"},
		{"1.500", height, comma, errPoint, "1,500 or 1500"},
		{"1.234.567", height, comma, errPointGroups, "1234567"},
		{"1.234,5", height, comma, errPointGroups, "1234,5"},
		{"1,5,2", height, comma, errTwoMarks, ""},
		{"1/0 in", height, inUS, errZeroFraction, ""},
		{"6 1/0 in", height, inUS, errZeroFraction, ""},
		{"6 7/4 in", height, inUS, errImproper, ""},
		{"6 4/4 in", height, inUS, errImproper, ""},
		{"1.5/2 in", height, inUS, errFraction, ""},
		{"6.5 1/2 in", height, inUS, errFraction, ""},
		{"1/2/3 in", height, inUS, errFraction, ""},
		{"1/2.5 in", height, inUS, errFraction, ""},
		{"3/8", height, inUS, errBareFraction, "3/8 ft or 3/8 in."},
		{"8 3/4", height, inUS, errBareFraction, "8 3/4 ft"},
		{"8-3/4", height, inUS, errBareFraction, ""},
		{"-¾", height, inUS, errBareFraction, ""},
		{"3/8", height, inMetric, errBareFraction, "3/8 m"},
		{"3/8", gap, inMetric, errBareFraction, "3/8 mm"},
		{"10-6", height, inUS, errDash, "10-6"},
		{"10-6 1/2", height, inUS, errDash, ""},
		{"10-6\"", gap, inUS, errDash, ""},
		{"5-10 psf", press, inUS, errDash, ""},
		{"5–10 psf", press, inUS, errDash, ""},
		{"5.5-6 ft", height, inUS, errDash, ""},
		{"10 6", height, inUS, errTrailing, "“6”"},
		{"10 6 1/2", height, inUS, errTrailing, ""},
		{"12 00", count, inUS, errTrailing, ""},
		{"12 0000", count, inUS, errTrailing, ""},
		{"0 500", count, inUS, errTrailing, ""},
		{"10 ft high", height, inUS, errTrailing, "high"},
		{"10 ft, 6 in", height, inUS, errTrailing, ""},
		{`10" 6'`, height, inUS, errTrailing, ""},
		{`10' 6'`, height, inUS, errTrailing, ""},
		{`10' 6" 3"`, height, inUS, errTrailing, ""},
		{"10 m 20 cm", height, inUS, errTrailing, ""},
		{"10 ft -", height, inUS, errTrailing, ""},
		{"5 psf 3", press, inUS, errTrailing, ""},
		{`5' 12"`, height, inUS, errCarry, "After ft, the in must be less than 12"},
		{"1 h 60 min", wait, inUS, errCarry, "60"},
		{`10.5' 6"`, height, inUS, errFirstWhole, ""},
		{`10 1/2' 6"`, height, inUS, errFirstWhole, ""},
		{"9 psf", height, inUS, errKind(Length), "“psf” does not measure a length. Write a length, like"},
		{"9 ft³", height, inUS, errKind(Length), "ft³"},
		{"10ft3", height, inUS, errKind(Length), "ft³"},
		{"9 ft", press, inUS, errKind(Pressure), "600 psf, 29 kPa"},
		{`9' 6"`, press, inMetric, errKind(Pressure), "29 kPa, 600 psf"},
		{"9 kg", tie, inUS, errKind(Force), "kg"},
		{"70°", air, inUS, errKind(Temperature), "°"},
		{"18 F°", air, inUS, errKind(Temperature), "F°"},
		{"5 ft", count, inUS, errKind(Number), "12"},
		{"5 sacks", count, inUS, errKind(Number), ""},
		{"5 m", wait, inUS, errKind(Duration), ""},
		{"9 fet", height, inUS, errUnitClose, "Did you mean ft?"},
		{"9 inchs", height, inUS, errUnitClose, "Did you mean in?"},
		{"600 pfs", press, inUS, errUnitClose, "Did you mean psf?"},
		{"30 galons", concrete, inUS, errUnitClose, "Did you mean US gal?"},
		{"9 furlongs", height, inUS, errUnit, "ft, in, yd"},
		{"9 @", height, inUS, errUnit, "@"},
		{"9 " + strings.Repeat("q", 60), height, inUS, errUnit, "…"},
	} {
		got, err := Parse(c.text, c.display, c.style)
		if err == nil {
			t.Errorf("Parse(%q) = %v, want %q", c.text, got, c.want.EN)
			continue
		}
		if got != 0 || err.EN != c.want.EN || !strings.Contains(err.Error(), c.says) {
			t.Errorf("Parse(%q) = %v, %q, want %q with %q", c.text, got, err.Error(), c.want.EN, c.says)
		}
		if strings.ContainsAny(err.Error(), "{}") {
			t.Errorf("Parse(%q): a slot is not filled: %s", c.text, err.Error())
		}
		if words := len(strings.Fields(err.Error())); words > 25 {
			t.Errorf("Parse(%q): %d words: %s", c.text, words, err.Error())
		}
	}
}

// AllParseErrors lists every error of Parse once, and each text is short.
func TestAllParseErrors(t *testing.T) {
	listed := map[string]bool{}
	for _, e := range AllParseErrors() {
		if listed[e.EN] {
			t.Errorf("%q is listed twice", e.EN)
		}
		listed[e.EN] = true
		if len(e.Slots) != 0 || e.EN == "" {
			t.Errorf("%q has slots %v", e.EN, e.Slots)
		}
	}
	for _, text := range []string{"", "x", "1e999", "1,5", "1,500", "1,1,1", "1/0", "1 2/2", "1-2", "1 2", "1 qqqqq",
		"1 psf", `1' 12"`, `1.1' 1"`} {
		_, err := Parse(text, height, inUS)
		if err == nil || !listed[err.EN] {
			t.Errorf("Parse(%q): %v is not listed as such", text, err)
		}
	}
	for _, d := range Dimensions() {
		if !listed[errKind(d).EN] {
			t.Errorf("the error of a wrong unit for %s is not listed", d)
		}
	}
}

// The value of a slot is not expanded.
func TestParseErrorSlots(t *testing.T) {
	e := &ParseError{EN: "{a} and {b} and {c", Slots: []Slot{{"a", "{b}"}, {"b", "2"}}}
	if got := e.Error(); got != "{b} and 2 and {c}" {
		t.Errorf("got %q", got)
	}
}

// The examples in parse errors are accepted by Parse, in both systems.
func TestExamples(t *testing.T) {
	for _, d := range Dimensions() {
		units := Units(d)
		display := Display{Dim: d, US: UnitDisplay{Unit: units[0].Symbol}}
		for _, text := range []string{kinds[d].us, kinds[d].si} {
			for _, mark := range []Mark{Point, Comma} {
				if _, err := Parse(text, display, Style{US, mark}); err != nil {
					t.Errorf("%v: the example %q is refused: %v", d, text, err)
				}
			}
		}
	}
}

// Every name of every unit is read behind a number, with and without a space.
func TestParseEveryName(t *testing.T) {
	for _, u := range units {
		display := Display{Dim: u.Dim, US: UnitDisplay{Unit: u.Symbol}}
		for _, name := range append([]string{u.Symbol, fold(u.Symbol)}, u.Aliases...) {
			for _, text := range []string{"7" + name, "7 " + name} {
				got, err := Parse(text, display, inUS)
				if err != nil || got != u.ToSI(7) {
					t.Errorf("%v: Parse(%q) = %v, %v; want %v", u.Dim, text, got, err, u.ToSI(7))
				}
			}
		}
	}
}
