package amount

import (
	"strings"
	"unicode/utf8"

	"coursebook/calculators/quantity"
)

// spellings are the ways units are written in running text, beside their
// symbols. Letters that are words or numbers of something else (a, in, t, C)
// are left out, as are yards and meters in full: both are a length or, of
// concrete, a volume. Write yd³, m³, ft or m.
var spellings = map[string]string{
	"feet": "ft", "foot": "ft", "'": "ft", "′": "ft", "’": "ft", "pies": "ft", "pie": "ft",
	"in.": "in", "inch": "in", "inches": "in", `"`: "in", "″": "in", "”": "in", "pulgadas": "in", "pulgada": "in",
	"pulg.": "in",
	"sq ft": "ft²", "sq. ft": "ft²", "square feet": "ft²", "square foot": "ft²", "ft2": "ft²", "ft^2": "ft²",
	"sq in.": "in²", "sq. in.": "in²", "square inches": "in²", "in.²": "in²", "in2": "in²",
	"m2": "m²", "m^2": "m²", "square meters": "m²", "square metres": "m²",
	"cu yd": "yd³", "cu. yd": "yd³", "cubic yards": "yd³", "cubic yard": "yd³", "yd3": "yd³", "yd^3": "yd³",
	"yardas cúbicas": "yd³",
	"cu ft":          "ft³", "cu. ft": "ft³", "cubic feet": "ft³", "cubic foot": "ft³", "ft3": "ft³", "ft^3": "ft³",
	"m3": "m³", "m^3": "m³", "cubic meters": "m³", "cubic metres": "m³", "metros cúbicos": "m³",
	"gal": "US gal", "gallons": "US gal", "gallon": "US gal", "galones": "US gal", "liters": "L", "litres": "L",
	"liter": "L", "litros": "L",
	"lbs": "lb", "pounds": "lb", "pound": "lb", "libras": "lb", "ounces": "oz",
	"lb/in²": "psi", "lb/ft2": "psf", "lb per square foot": "psf", "pounds per square foot": "psf",
	"pcf": "lb/ft³", "lb/ft3": "lb/ft³", "lb/yd3": "lb/yd³", "kg/m3": "kg/m³", "plf": "plf",
	"degrees F": "°F", "degrees C": "°C", "° F": "°F", "° C": "°C", "ºF": "°F", "ºC": "°C",
	"minutes": "min", "minute": "min", "minutos": "min", "hours": "h", "hour": "h", "hr": "h", "hrs": "h",
	"horas": "h", "hora": "h",
	"seconds": "s", "second": "s", "sec": "s", "segundos": "s", "days": "d", "day": "d", "días": "d", "día": "d",
	"percent": "%", "por ciento": "%", "degrees": "°",
	"fpm": "ft/min", "cfm": "ft³/min", "gpm": "US gal/min", "in./s": "in/s", "in./h": "in/h",
}

// wordsAlone are symbols that would also be read in words: a number before
// them proves nothing.
var wordsAlone = map[string]bool{
	"in":  true,
	"g":   true,
	"t":   true,
	"d":   true,
	"s":   true,
	"K":   true,
	"yd":  true,
	"mi":  true,
	"bar": true,
	"W":   true,
	"J":   true,
	"N":   true,
}

// written leads from the first byte of a unit to its writings, longest first.
var written = index()

type writing struct {
	text string
	unit unit
}

// index returns the spellings of all units by their first byte, longer ones first.
// It panics on a spelling of a unit that does not exist.
func index() map[byte][]writing {
	list := map[byte][]writing{}
	add := func(text, symbol string) {
		u, ok := quantity.Find(symbol)
		if !ok {
			panic("amount: unknown unit " + symbol)
		}
		w := writing{text, unit{u, sideOf(u.Symbol)}}
		row := list[text[0]]
		at := 0
		for at < len(row) && len(row[at].text) >= len(text) {
			at++
		}
		list[text[0]] = append(row[:at:at], append([]writing{w}, row[at:]...)...)
	}
	for text, symbol := range spellings {
		add(text, symbol)
	}
	for _, d := range quantity.Dimensions() {
		for _, u := range quantity.Units(d) {
			if u.Symbol != "" && !wordsAlone[u.Symbol] {
				add(u.Symbol, u.Symbol)
			}
		}
	}
	return list
}

// unitAt reads the longest unit at the start of s that ends there as a word does.
// It returns its length in bytes, and false if there is none.
func unitAt(s string) (unit, int, bool) {
	if s == "" {
		return unit{}, 0, false
	}
	for _, w := range written[s[0]] {
		if hasPrefix(s, w.text) && endsWord(s, len(w.text)) {
			return w.unit, len(w.text), true
		}
	}
	return unit{}, 0, false
}

// hasPrefix reports whether s begins with prefix, except that a line feed in s
// passes for a space of prefix.
func hasPrefix(s, prefix string) bool {
	if strings.IndexByte(prefix, ' ') < 0 {
		return strings.HasPrefix(s, prefix)
	}
	if len(s) < len(prefix) {
		return false
	}
	return strings.ReplaceAll(s[:len(prefix)], "\n", " ") == prefix
}

// endsWord reports whether a unit of the first size bytes of s ends there: no
// letter, digit, exponent, middle dot or underscore follows.
func endsWord(s string, size int) bool {
	if size == len(s) {
		return true
	}
	r, _ := utf8.DecodeRuneInString(s[size:])
	return !isLetter(r) && !('0' <= r && r <= '9') && !strings.ContainsRune("²³^·_", r)
}

// perUnits are the units below the stroke of a rate that change with the
// system: a rate over one of them is only converted whole.
var perUnits = []string{
	"ft",
	"foot",
	"in.",
	"inch",
	"yd",
	"m",
	"mm",
	"ft²",
	"ft2",
	"ft³",
	"ft3",
	"yd³",
	"yd3",
	"m²",
	"m2",
	"m³",
	"m3",
	"square foot",
	"cubic foot",
	"cubic yard",
	"square meter",
	"cubic meter",
	"lb",
	"kg",
	"gal",
	"L",
	"pie",
	"metro",
}

// rate reads "/h" or "per hour" at the start of s, behind the unit u. It returns
// the unit of the rate and the length in bytes of what it read, or u and 0 if no
// rate follows. ok is false if a rate follows that is not known, over one of
// perUnits: half of it must not be converted alone.
func rate(u unit, s string) (whole unit, size int, ok bool) {
	for _, per := range []string{"/", " / ", " per ", " por "} {
		if !hasPrefix(s, per) {
			continue
		}
		rest := s[len(per):]
		if below, n, found := unitAt(rest); found {
			if both, known := quantity.Find(u.Symbol + "/" + below.Symbol); known {
				return unit{both, sideOf(both.Symbol)}, len(per) + n, true
			}
		}
		for _, name := range perUnits {
			if hasPrefix(rest, name) && endsWord(rest, len(name)) {
				return u, 0, false
			}
		}
	}
	return u, 0, true
}
