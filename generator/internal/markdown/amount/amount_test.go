package amount

import (
	"strings"
	"testing"

	"coursebook/calculators/quantity"
)

// mark puts the two writings of every amount into the text: [us|metric], the
// author's own with a star.
func marked(f *Finder, text string) string {
	var b strings.Builder
	at := 0
	for {
		a, ok := f.Next(text, at, true)
		if !ok {
			return b.String() + text[at:]
		}
		b.WriteString(text[at:a.Start])
		switch a.Own {
		case Neither:
			b.WriteString("[" + text[a.Start:a.End] + "]")
		case US:
			b.WriteString("[*" + a.US + "|" + a.Metric + "]")
		case Metric:
			b.WriteString("[" + a.US + "|*" + a.Metric + "]")
		case Both:
			b.WriteString("[*" + a.US + "|*" + a.Metric + "]")
		}
		at = a.End
	}
}

// The exact conversions behind these are those of NIST SP 811 (2008),
// appendix B; the rounding is this package's rule.
func TestConvert(t *testing.T) {
	f := New("en", quantity.Point)
	for own, want := range map[string]string{
		"2 ft": "600 mm", "8 in.": "200 mm", "1/2 in.": "13 mm", "10 ft": "3 m", "6 ft": "1.8 m", "300 mm": "12 in.",
		"70 °F": "21 °C", "4 ft/h": "1.2 m/h", "600 psf": "29 kPa", "10 yd³": "7.6 m³", "150 lb/ft³": "2400 kg/m³",
		"3/4 inch": "19 mm", "1/4 in.": "6 mm", "1/8 in.": "3 mm", "1/16 in.": "1.6 mm", "3/8 in.": "10 mm",
		"6-1/2 in.": "165 mm",
		"6½ in.":    "165 mm", "8.4 in.": "213 mm", "72 in.": "1.83 m", "39 in.": "1 m", "1 in.": "25 mm",
		"16 in.": "400 mm", "4 ft": "1.2 m",
		"3000 psi": "21 MPa", "3,500 psi": "24 MPa", "40 psi": "280 kPa", "94 lb": "42.6 kg", "200 lb": "90 kg",
		"5 gal": "19 L",
		"32 °F": "0 °C", "-10 °F": "−23 °C", "98.6 °F": "37 °C", "35 degrees F": "2 °C", "20 mph": "32 km/h",
		"12000 vpm":  "200 Hz",
		`10' 6-1/2"`: "3.21 m", "10 ft 6 in.": "3.2 m", "5′ 4″": "1.63 m", "0.2 lb/ft²/h": "1 kg/m²/h",
		"2 ft per hour": "0.6 m/h",
		"400 plf":       "5.8 kN/m", "2.5 m": "8 ft 2 in.", "1.2 m": "4 ft", "3 m": "10 ft", "25 mm": "1 in.",
		"13 mm": "1/2 in.", "75 mm": "3 in.",
		"5 mm": "3/16 in.", "21 °C": "70 °F", "2400 kg/m³": "150 lb/ft³", "25 MPa": "3600 psi", "30 kPa": "630 psf",
		"10 m³": "13 yd³",
		"20 L":  "5.3 US gal", "30 m³/h": "40 yd³/h", "15 C°": "27 °F", "10 F°": "6 °C", "0 ft": "0 mm",
		"2 cubic yards": "1.5 m³",
		"27 ft³":        "0.76 m³", "1 ft³": "28 L", "100,000 lb": "45\u202F000 kg", "320 ft²": "30 m²",
		"8-in.":     "200-mm",
		"6-inch":    "150-mm",
		"2 to 3 ft": "600 to 900 mm", "2 to 4 ft": "0.6 to 1.2 m", "8–10 in.": "200–250 mm",
		"4 or 6 in.": "100 or 150 mm",
		"1 to 3 m":   "3 ft 3 in. to 10 ft", "40 to 90 °F": "4 to 32 °C", "4 × 8 ft": "1.2 × 2.4 m",
		"4 by 8 ft": "1.2 by 2.4 m", "2-3 ft": "600-900 mm",
		"5 °F/h": "2.8 C°/h",
	} {
		a, ok := f.Next(own, 0, false)
		got := a.Metric
		if a.Own == Metric {
			got = a.US
		}
		if !ok || a.Start != 0 || a.End != len(own) || got != want {
			t.Errorf("%s gives %+v, want %s", own, a, want)
		}
	}
}

// A least distance never gets smaller on the way, and stays as near as other
// amounts do: 1 ft is 0.3048 m (NIST SP 811).
func TestLeast(t *testing.T) {
	all := []string{"10 ft", "20 ft", "35 ft", "50 ft", "2 ft", "18 in.", "6.1 m", "600 mm"}
	f := New("en", quantity.Point, all...)
	for _, least := range all {
		if !f.Whole(least) {
			t.Errorf("%s was refused", least)
		}
	}
	for text, want := range map[string]string{
		"Stay 20 ft off.":      "Stay [*20 ft|6.1 m] off.",
		"50 ft":                "[*50 ft|15.3 m]",
		"35 ft":                "[*35 ft|10.7 m]",
		"10 ft to 20 ft":       "[*10 ft|3.1 m] to [*20 ft|6.1 m]",
		"2 ft":                 "[*2 ft|610 mm]",
		"18 in.":               "[*18 in.|460 mm]",
		"6.1 m":                "[20 ft 1 in.|*6.1 m]",
		"600 mm":               "[24 in.|*600 mm]",
		"5 ft":                 "[*5 ft|1.5 m]",
		"the 20 ft (6 m) rule": "the [*20 ft|*6 m] rule", // the author's own word counts
	} {
		if got := marked(f, text); got != want {
			t.Errorf("%s: %s, want %s", text, got, want)
		}
	}
	for _, text := range []string{"", "20", "ft", "20 ft off", "about 20 ft", "90 min", "20 ft (6 m)",
		"20 ft and 3 ft"} {
		if f.Whole(text) {
			t.Errorf("%q was taken", text)
		}
	}
}

func TestInText(t *testing.T) {
	f := New("en", quantity.Point)
	for text, want := range map[string]string{
		"stay 2 ft back":                       "stay [*2 ft|600 mm] back",
		"back 2\nft now":                       "back [*2 ft|600 mm] now",
		"lifts of 2 ft (600 mm), no more":      "lifts of [*2 ft|*600 mm], no more",
		"lifts of 600 mm (about 2 ft)":         "lifts of [*about 2 ft|*600 mm]",
		"between 2 and 3 ft":                   "between [*2 and 3 ft|600 and 900 mm]",
		"2 and 3 ft":                           "2 and [*3 ft|900 mm]",
		"2x4 boards, #5 bars, 29 CFR 1926.502": "2x4 boards, #5 bars, 29 CFR 1926.502",
		"R404.1.3.3.5 and 608.5.1.4 m":         "R404.1.3.3.5 and 608.5.1.4 m",
		"in 90 min, at 45°, 3 % more":          "in [90 min], at [45°], [3 %] more",
		"put 2 in the wall, 4 in a row":        "put 2 in the wall, 4 in a row",
		"1/2 in thick":                         "[*1/2 in|13 mm] thick",
		"within 10 °F of the mix":              "within [*10 °F|6 °C] of the mix",
		"the mix is 10 °F warmer":              "the mix is [*10 °F|6 °C] warmer",
		"±5 °F":                                "±[*5 °F|3 °C]",
		"no more than 50 °F in 24 hours":       "no more than [*50 °F|28 °C] in [24 hours]",
		"at 70 °F per the maker":               "at [70 °F] per the maker",
		"slope 1/4 in. per foot":               "slope [1/4 in.] per foot",
		"2 ft per lift":                        "[*2 ft|600 mm] per lift",
		"Stop at 8 in. Then go.":               "Stop at [*8 in|200 mm]. Then go.",
		"an 8 in. wall":                        "an [*8 in.|200 mm] wall",
		"Fill. Stop at 8 in.":                  "Fill. Stop at [*8 in|200 mm].",
		"1/8 in.":                              "[*1/8 in.|3 mm]",
		"the gap is 300 mm.":                   "the gap is [12 in|*300 mm].",
		`a 6" pipe, a 6' board`:                `a [*6"|150 mm] pipe, a [*6'|1.8 m] board`,
		`he said "stop at 6" and left`:         `he said "stop at 6" and left`,
		"the 1990's and 8's":                   "the 1990's and 8's",
		"1,5 m and 1.2.3 m and 2026-11-25":     "1,5 m and 1.2.3 m and 2026-11-25",
		"$5 m, v2 ft":                          "$5 m, v2 ft",
		"5 mixers, 3 fts, 2 ft²x":              "5 mixers, 3 fts, 2 ft²x",
		"12 in. by 12 in.":                     "[*12 in.|300 mm] by [*12 in.|300 mm]",
		"10-6 ft":                              "10-6 ft",
		"2 ft (see above)":                     "[*2 ft|600 mm] (see above)",
		"2 ft (1 m)":                           "[*2 ft|*1 m]",
		"½–¾ in.":                              "[*½–¾ in.|13–19 mm]",
		"":                                     "",
		"7":                                    "7",
		"- 5 ft":                               "- [*5 ft|1.5 m]",
		"30 yards, 30 meters":                  "30 yards, 30 meters",
		"a -5 °C night":                        "a [23 °F|*-5 °C] night",
	} {
		if got := marked(f, text); got != want {
			t.Errorf("%q gives\n%s, want\n%s", text, got, want)
		}
	}
}

func TestSpanish(t *testing.T) {
	f := New("es", quantity.Comma)
	for text, want := range map[string]string{
		"capas de 2 pies":      "capas de [*2 pies|600 mm]",
		"de 2 a 3 pies":        "de [*2 a 3 pies|600 a 900 mm]",
		"entre 2 y 3 m":        "entre [6 ft 7 in. y 10 ft|*2 y 3 m]",
		"unos 1,5 m":           "unos [5 ft|*1,5 m]",
		"1.5 m":                "1.5 m",
		"1.500 psi":            "[*1.500 psi|10,3 MPa]",
		"6 pulg. de ancho":     "[*6 pulg.|150 mm] de ancho",
		"72 pulgadas":          "[*72 pulgadas|1,83 m]",
		"2 pies (unos 600 mm)": "[*2 pies|*unos 600 mm]",
	} {
		if got := marked(f, text); got != want {
			t.Errorf("%q gives\n%s, want\n%s", text, got, want)
		}
	}
}

func TestApart(t *testing.T) {
	a, _ := New("en", quantity.Point).Next("2 ft (900 mm)", 0, false)
	if a.Apart < 0.32 || a.Apart > 0.33 {
		t.Errorf("apart %g, want about 0.32", a.Apart)
	}
}

// Every unit that belongs to a system has a counterpart of its own dimension
// in the other, and the way back leads to the same system.
func TestCounterparts(t *testing.T) {
	for s, list := range counterparts {
		for symbol, choices := range list {
			u, ok := quantity.Find(symbol)
			if !ok || u.Symbol != symbol {
				t.Errorf("%s is no unit", symbol)
			}
			if choices[len(choices)-1].least != 0 {
				t.Errorf("%s: the last choice leaves small values without a unit", symbol)
			}
			for _, c := range choices {
				to, ok := quantity.Find(c.symbol)
				if !ok || to.Dim != u.Dim {
					t.Errorf("%s becomes %s of another dimension", symbol, c.symbol)
				}
				if sideOf(c.symbol) == s && c.symbol != "g" && c.symbol != "t" {
					t.Errorf("%s becomes %s of its own system", symbol, c.symbol)
				}
			}
		}
	}
}

// A counterpart is never further from the exact value than the widest
// tolerance allows, regardless of the figure.
func TestTolerance(t *testing.T) {
	f := New("en", quantity.Point)
	for n := 1; n <= 3000; n++ {
		for _, name := range []string{"psf", "yd³", "lb", "ft/h", "m³", "kg/m³", "mph"} {
			u, _ := quantity.Find(name)
			v, _, _ := f.number(itoa(n))
			a := one{values: []value{v}, unit: unit{u, sideOf(name)}, gap: " "}
			text, ok := f.convert(a, false)
			b, found := f.read(text, 0, false)
			if !ok || !found {
				t.Fatalf("%d %s gives %q, which is no amount", n, name, text)
			}
			if d := apart(a.si(), b.si()); d > looseness/(1-looseness)+1e-9 {
				t.Errorf("%d %s gives %s, which is %.1f %% off", n, name, text, 100*d)
			}
		}
	}
}

func itoa(n int) string {
	s := ""
	for ; n > 0; n /= 10 {
		s = string(rune('0'+n%10)) + s
	}
	return s
}

func FuzzNext(f *testing.F) {
	for _, seed := range []string{"2 ft (600 mm)", `10' 6-1/2"`, "½–¾ in. per ft", "-1,000.5 °F/h", "1/0 in",
		"9999999999999999999999 lb/ft²/h"} {
		f.Add(seed)
	}
	en, es := New("en", quantity.Point), New("es", quantity.Comma)
	f.Fuzz(func(t *testing.T, text string) {
		for _, finder := range []*Finder{en, es} {
			for at := 0; ; {
				a, ok := finder.Next(text, at, true)
				if !ok {
					break
				}
				if a.Start < at || a.End <= a.Start || a.End > len(text) {
					t.Fatalf("%q: found %+v after byte %d", text, a, at)
				}
				if strings.Contains(a.US+a.Metric, "NaN") || strings.Contains(a.US+a.Metric, "Inf") {
					t.Fatalf("%q: %+v", text, a)
				}
				at = a.End
			}
		}
	})
}
