package main

import (
	"bytes"
	"encoding/json"
	"strings"

	"coursebook/calculators/calc"
	"coursebook/calculators/catalog"
	"coursebook/calculators/quantity"
)

// object is a JSON object whose members are written in order.
type object []member

type member struct {
	name  string
	value any
}

// MarshalJSON returns the object with its members in order. It returns an error if
// a value cannot be JSON.
func (o object) MarshalJSON() ([]byte, error) {
	var b bytes.Buffer
	b.WriteByte('{')
	for i, m := range o {
		if i > 0 {
			b.WriteByte(',')
		}
		for j, v := range []any{m.name, m.value} {
			enc := json.NewEncoder(&b)
			enc.SetEscapeHTML(false)
			if err := enc.Encode(v); err != nil {
				return nil, err
			}
			b.Truncate(b.Len() - 1) // the encoder's line break
			if j == 0 {
				b.WriteByte(':')
			}
		}
	}
	b.WriteByte('}')
	return b.Bytes(), nil
}

// siUnit returns the SI unit of a field's dimension.
func siUnit(f calc.Field) string { return f.Display.Dim.SI() }

// valueJSON returns one input or output as a JSON value. typed selects the text of
// an input, as a user would enter it.
func valueJSON(v calc.Locale, f calc.Field, x calc.Value, typed bool) any {
	if f.Kind == calc.Rows {
		rows := make([]object, 0, len(x.Rows))
		for _, row := range x.Rows {
			rows = append(rows, caseJSON(v, row, typed))
		}
		return rows
	}
	text := v.Write(f, x)
	if typed {
		text = v.InputText(f, x)
	}
	var value any
	switch f.Kind {
	case calc.Number:
		value = x.Num
	case calc.Flag:
		value = x.Num != 0
	case calc.Day:
		value = calc.FormatDay(int(x.Num))
	case calc.Clock:
		value = calc.FormatClock(x.Num)
	default:
		value = x.Word
	}
	o := object{{"value", value}}
	if !typed && f.Kind == calc.Number {
		o = append(o, member{"unit", siUnit(f)})
	}
	return append(o, member{"text", text})
}

// caseJSON returns the values that are set, in declared order. If typed, each text
// is that of an input, as a user would enter it; otherwise it is a text to show.
func caseJSON(v calc.Locale, c calc.Case, typed bool) object {
	o := object{}
	for i, f := range c.Fields() {
		if x := c.At(i); x.Set {
			o = append(o, member{f.ID, valueJSON(v, f, x, typed)})
		}
	}
	return o
}

// resultJSON returns the inputs, outputs and cautions of one calculation.
func resultJSON(c *calc.Calculator, v calc.Locale, in calc.Case, res calc.Result) any {
	cautions := []string{}
	for _, n := range res.Notes {
		cautions = append(cautions, strings.ToUpper(n.Level.String())+": "+v.Say(n.Text, n.Slots...))
	}
	for _, n := range c.Cautions {
		cautions = append(cautions, strings.ToUpper(n.Level.String())+": "+v.Say(n.Text))
	}
	return object{
		{"calculator", c.ID},
		{"inputs", caseJSON(v, in, true)},
		{"outputs", caseJSON(v, res.Out, false)},
		{"cautions", cautions},
	}
}

// catalogJSON returns all calculators with their inputs and outputs.
func catalogJSON(v calc.Locale) any {
	list := []object{}
	for _, c := range catalog.All() {
		list = append(list, object{
			{"calculator", c.ID}, {"title", v.Say(c.Title)}, {"purpose", v.Say(c.Purpose)},
			{"inputs", fieldsJSON(v, c.In)}, {"outputs", fieldsJSON(v, c.Out)},
		})
	}
	return list
}

// fieldsJSON returns the declarations of fields by ID, with their columns.
func fieldsJSON(v calc.Locale, fields []calc.Field) object {
	o := object{}
	for _, f := range fields {
		d := object{{"label", v.Say(f.Label)}}
		if f.Kind == calc.Number {
			d = append(d, member{"unit", siUnit(f)},
				member{"us", f.Display.In(quantity.US).Unit}, member{"metric", f.Display.In(quantity.Metric).Unit})
		}
		if len(f.Cols) > 0 {
			d = append(d, member{"columns", fieldsJSON(v, f.Cols)})
		}
		o = append(o, member{f.ID, d})
	}
	return o
}
