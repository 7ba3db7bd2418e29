package calc

import (
	"math"
	"strings"

	"coursebook/calculators/quantity"
)

// Slack is the tolerance of comparisons, relative to the limit. It is far above
// the rounding error of a unit conversion and far below a mistyped digit, so
// that a limit typed in another unit is accepted.
const Slack = 1e-9

// Over reports whether x exceeds limit by more than Slack. limit is above 0.
func Over(x, limit float64) bool { return x > limit*(1+Slack) }

// Under reports whether x is below limit by more than Slack. limit is above 0.
func Under(x, limit float64) bool { return x < limit*(1-Slack) }

// Ceil rounds a count up to a whole number. A count that exceeds a whole number by
// no more than Slack, here absolute, is rounded down to it.
func Ceil(x float64) float64 { return math.Ceil(x - Slack) }

// UsualValue returns the value of Usual, unset if Usual is empty. It panics if
// Usual cannot be read.
func (f Field) UsualValue() Value {
	if f.Usual == "" {
		return Value{}
	}
	rd := &reader{}
	v := rd.declared(f)
	if len(rd.notes) > 0 {
		panic("calc: the usual value of " + f.ID + " cannot be read: " + f.Usual)
	}
	return v
}

// declared reads the Usual of a field of any kind. A text that cannot be read is
// refused and gives an unset value.
func (rd *reader) declared(f Field) Value {
	if f.Kind == Rows {
		return rd.cells(f, rd.split(f, f.Usual))
	}
	return rd.value(f, At(f.ID), f.Usual)
}

// value reads one typed text, without space at its ends, for a field of any kind
// but Rows. An empty text gives an unset value. A text that cannot be read, and
// any text for Rows, is refused at the path and gives an unset value. Limits are
// not checked here.
func (rd *reader) value(f Field, at Path, text string) Value {
	text = strings.TrimSpace(text)
	if f.Kind == Rows {
		rd.refuse(at, notRows, TextSlot("label", f.Label))
		return Value{}
	}
	if text == "" {
		return Value{}
	}
	switch f.Kind {
	case Choice:
		return rd.choice(f, at, text)
	case Flag:
		return rd.flag(f, at, text)
	case Day:
		days, ok := ParseDay(text)
		if !ok {
			rd.refuse(at, noDay, TextSlot("label", f.Label))
			return Value{}
		}
		return Num(float64(days))
	case Clock:
		seconds, ok := ParseClock(text)
		if !ok {
			rd.refuse(at, noClock, TextSlot("label", f.Label), WordSlot("text", text))
			return Value{}
		}
		return Num(seconds)
	case FreeText:
		max := f.MaxLen
		if max == 0 {
			max = 200
		}
		if len(text) > max {
			rd.refuse(at, tooLong, TextSlot("label", f.Label), Count("max", max))
			return Value{}
		}
		return TextOf(text)
	}
	style, other := rd.styles[at.String()]
	if !other {
		style = rd.style
	}
	si, t := quantity.Parse(text, *f.Display, style)
	if t != nil {
		why, slots := parseErrorText(t)
		rd.refuse(at, why, slots...)
		return Value{}
	}
	return Num(si)
}

// choice returns the option with the typed ID, regardless of case. Any other text
// is refused and gives an unset value.
func (rd *reader) choice(f Field, at Path, text string) Value {
	ids := make([]string, len(f.Options))
	for i, o := range f.Options {
		ids[i] = o.ID
		if strings.EqualFold(o.ID, text) {
			return ChoiceOf(o.ID)
		}
	}
	rd.refuse(at, noOption, TextSlot("label", f.Label), WordSlot("text", text),
		WordSlot("options", strings.Join(ids, ", ")))
	return Value{}
}

// flag reads yes, on, true, 1, sí or si, and no, off, false or 0, regardless of
// case. Any other text is refused and gives an unset value.
func (rd *reader) flag(f Field, at Path, text string) Value {
	switch strings.ToLower(text) {
	case "yes", "on", "true", "1", "sí", "si":
		return Bool(true)
	case "no", "off", "false", "0":
		return Bool(false)
	}
	rd.refuse(at, noFlag, TextSlot("label", f.Label), WordSlot("text", text))
	return Value{}
}

// limits refuses each input and cell that applies and is missing or outside its
// limits, and each Rows field with too few or too many rows. All must be read
// before. It gives each row without a number its number.
func (rd *reader) limits() {
	rd.check(rd.out, func(id string) Path { return At(id) })
	for i, f := range rd.out.fields {
		if f.Kind != Rows || !rd.out.asked(f) {
			continue
		}
		rows := rd.out.values[i].Rows
		if len(rows) < f.MinRows {
			rd.refuse(At(f.ID), fewRows, TextSlot("label", f.Label), Count("min", f.MinRows))
		}
		if f.MaxRows > 0 && len(rows) > f.MaxRows {
			rd.refuse(At(f.ID), manyRows, TextSlot("label", f.Label), Count("max", f.MaxRows))
		}
		for k, row := range rows {
			if row.row == 0 {
				row.row = k + 1
				rows[k] = row
			}
			rd.check(row, func(id string) Path { return Cell(f.ID, row.row, id) })
		}
	}
}

// check refuses each field of c, Rows excepted, that applies and is unset without
// being optional, and each Number outside its limits. at returns the path of a
// field by its ID.
func (rd *reader) check(c Case, at func(id string) Path) {
	for i, f := range c.fields {
		if !c.asked(f) || f.Kind == Rows {
			continue
		}
		v, path := c.values[i], at(f.ID)
		if !v.Set {
			if !f.Optional && f.Kind != Flag {
				rd.refuse(path, needsValue, TextSlot("label", f.Label))
			}
			continue
		}
		if f.Kind == Number {
			rd.bounds(f, path, v.Num)
		}
	}
}

// bounds refuses a Number, si in SI, that is not whole where f asks for that, or
// is outside the limits of f by more than their slack. At an open limit the value
// must differ by more than the slack.
func (rd *reader) bounds(f Field, at Path, si float64) {
	if f.Whole && si != math.Trunc(si) {
		rd.refuse(at, notWhole, TextSlot("label", f.Label))
		return
	}
	least, most, ok := f.Limits()
	if !ok {
		return
	}
	switch {
	case least.Open && si <= least.SI+least.slack():
		rd.outside(f, at, notAbove, least)
	case si < least.SI-least.slack():
		rd.outside(f, at, below, least)
	case most.Open && si >= most.SI-most.slack():
		rd.outside(f, at, notBelow, most)
	case si > most.SI+most.slack():
		rd.outside(f, at, above, most)
	}
}

// outside refuses a Number with the text t, the limit l and its reason.
func (rd *reader) outside(f Field, at Path, t Text, l Limit) {
	rd.refuse(at, t, TextSlot("label", f.Label), Amount("limit", l.SI, f.Display), TextSlot("why", l.Why))
}
