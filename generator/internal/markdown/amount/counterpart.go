package amount

import (
	"math"
	"strings"

	"coursebook/calculators/quantity"
)

// side is the system a unit belongs to.
type side uint8

const (
	noSide side = iota // both systems share it, or it has no counterpart
	us
	metric
)

// choice is a unit of the other system, taken from the size least on (in SI;
// the last choice of a unit takes the rest).
type choice struct {
	symbol string
	least  float64
}

// Below a metre a tape is read in millimetres, below three feet in inches.
// What rounds up to the limit counts as on it.
const (
	oneMetre  = 1 - 0.02
	threeFeet = 0.9144 - 0.02
)

var (
	toMetres = []choice{{"m", oneMetre}, {"mm", 0}}
	toFeet   = []choice{{"ft", threeFeet}, {"in", 0}}
	toMPa    = []choice{{"MPa", 1e6}, {"kPa", 0}}
	toPsf    = []choice{{"psi", 1e5}, {"psf", 0}}
	toLitres = []choice{{"m³", 0.1}, {"L", 0}}
	toNewton = []choice{{"kN", 1000}, {"N", 0}}
	toLineKN = []choice{{"kN/m", 1000}, {"N/m", 0}}
	toMoment = []choice{{"kN·m", 1000}, {"N·m", 0}}
)

// counterparts say how the units of each system are written in the other.
var counterparts = map[side]map[string][]choice{
	us: {
		"ft": toMetres, "in": toMetres, "ft²": {{"m²", 0}}, "yd²": {{"m²", 0}}, "in²": {{"mm²", 0}},
		"yd³": {
			{"m³", 0},
		}, "ft³": toLitres, "in³": {{"mL", 0}}, "US gal": {{"L", 0}}, "US qt": {{"L", 0}}, "US fl oz": {{"mL", 0}},
		"lb": {{"kg", 0}}, "oz": {{"g", 0}}, "US ton": {{"t", 0}},
		"lbf": toNewton, "kip": {{"kN", 0}},
		"psf": {{"kPa", 0}}, "psi": toMPa, "ksi": {{"MPa", 0}}, "ksf": {{"kPa", 0}},
		"lb/ft³": {{"kg/m³", 0}}, "lb/yd³": {{"kg/m³", 0}},
		"ft/h": {
			{"m/h", 0},
		}, "in/h": {{"m/h", 0}}, "ft/min": {{"m/h", 0}}, "ft/s": {{"m/s", 0}}, "in/s": {{"mm/s", 0}},
		"mph":   {{"km/h", 0}},
		"yd³/h": {{"m³/h", 0}}, "ft³/h": {{"m³/h", 0}}, "ft³/min": {{"L/s", 0}}, "US gal/min": {{"L/min", 0}},
		"°F": {{"°C", 0}}, "F°": {{"C°", 0}}, "F°/h": {{"C°/h", 0}}, "F°·h": {{"C°·h", 0}},
		"lbf/ft": toLineKN, "kip/ft": {{"kN/m", 0}}, "lb/ft": {{"kg/m", 0}}, "lb/ft²": {{"kg/m²", 0}},
		"in²/ft": {{"mm²/m", 0}},
		"vpm":    {{"Hz", 0}}, "hp": {{"kW", 0}}, "ft·lbf": toMoment, "in·lbf": toMoment, "kip·ft": {{"kN·m", 0}},
		"lb/ft²/h": {{"kg/m²/h", 0}},
	},
	metric: {
		"m": toFeet, "cm": toFeet, "mm": toFeet, "m²": {{"ft²", 0}}, "cm²": {{"in²", 0}}, "mm²": {{"in²", 0}},
		"m³": {{"yd³", 0}}, "L": {{"US gal", 0}}, "mL": {{"US fl oz", 0}},
		"kg": {{"lb", 0}}, "g": {{"oz", 0}},
		"N": {{"lbf", 0}}, "kN": {{"lbf", 0}},
		"kPa": toPsf, "MPa": {{"psi", 0}}, "bar": {{"psi", 0}},
		"kg/m³": {{"lb/ft³", 1000}, {"lb/yd³", 0}}, "kN/m³": {{"lb/ft³", 0}},
		"m/h": {{"ft/h", 0}}, "m/s": {{"ft/s", 0}}, "mm/s": {{"in/s", 0}}, "km/h": {{"mph", 0}},
		"m³/h": {{"yd³/h", 0}}, "L/min": {{"US gal/min", 0}}, "L/s": {{"US gal/min", 0}},
		"°C": {{"°F", 0}}, "C°": {{"F°", 0}}, "C°/h": {{"F°/h", 0}}, "C°·h": {{"F°·h", 0}},
		"N/m": {
			{"lbf/ft", 0},
		}, "kN/m": {{"lbf/ft", 0}}, "kg/m": {{"lb/ft", 0}}, "kg/m²": {{"lb/ft²", 0}}, "mm²/m": {{"in²/ft", 0}},
		"cm²/m": {{"in²/ft", 0}},
		"Hz":    {{"vpm", 0}}, "kW": {{"hp", 0}}, "N·m": {{"ft·lbf", 0}}, "kN·m": {{"ft·lbf", 0}},
		"kg/m²/h": {{"lb/ft²/h", 0}},
	},
}

// sideOf returns the system of a unit by its symbol; noSide for a unit without a
// counterpart.
func sideOf(symbol string) side {
	for _, s := range []side{us, metric} {
		if _, ok := counterparts[s][symbol]; ok {
			return s
		}
	}
	return noSide
}

// convert returns the amount in the other system with its unit. With point, a full
// stop follows in the text and serves the abbreviation, so that the result ends
// without one. ok is always true; a.unit must have a counterpart.
func (f *Finder) convert(a one, point bool) (string, bool) {
	most := math.Abs(a.si())
	var to quantity.Unit
	for _, c := range counterparts[a.unit.side][a.unit.Symbol] {
		to, _ = quantity.Find(c.symbol)
		if most >= c.least {
			break
		}
	}
	var b strings.Builder
	carries := false // each value bears its own unit
	for _, v := range a.values {
		carries = carries || f.rounder(a.unit.Unit, to, v).carries(a.unit.Unit, v)
	}
	name := symbolInText(to.Symbol)
	gap := " "
	if strings.HasPrefix(a.gap, "-") || a.gap == "\u2011" {
		gap = "-"
	}
	for i, v := range a.values {
		if i > 0 {
			b.WriteString(oneLine(a.joins[i-1]))
		}
		rounder := f.rounder(a.unit.Unit, to, v)
		if carries {
			b.WriteString(rounder.feetInches(a.unit.Unit, v))
			continue
		}
		b.WriteString(rounder.write(a.unit.Unit, v))
	}
	if carries {
		return strings.TrimSuffix(b.String(), pointIf(point)), true
	}
	b.WriteString(gap)
	b.WriteString(strings.TrimSuffix(name, pointIf(point)))
	return b.String(), true
}

// pointIf returns "." if a full stop follows in the text, otherwise "".
func pointIf(follows bool) string {
	if follows {
		return "."
	}
	return ""
}

// symbolInText returns how a unit's symbol is written in a sentence: inches with a
// point, as the trade does, and degrees of difference as °C and °F. Other symbols
// are returned unchanged.
func symbolInText(symbol string) string {
	switch symbol {
	case "in":
		return "in."
	case "in/s", "in/h":
		return "in./" + symbol[3:]
	case "C°":
		return "°C"
	case "F°":
		return "°F"
	}
	return symbol
}
