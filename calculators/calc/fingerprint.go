package calc

import (
	"strconv"

	"coursebook/calculators/quantity"
)

// Fingerprint returns a hash in hexadecimal over the declarations and the results
// of their default cases, and so over the amounts of the house rules that they use.
// The page and the module both have it; where they differ,
// the module is from another build and the page keeps its printed figures.
func Fingerprint(list []*Calculator) string {
	h := hash(fnvOffset)
	for _, c := range list {
		h.declaration(c)
		if c.LacksRule() {
			continue
		}
		in := NewCase(c.In)
		res := Run(c, in)
		h.text(res.State.String())
		for _, style := range []quantity.Style{{System: quantity.US}, {System: quantity.Metric}} {
			v := Locale{Style: style}
			h.values(v, in)
			h.values(v, res.Out)
		}
		for _, n := range res.Notes {
			h.text(n.At.String(), string(n.Text))
		}
	}
	return strconv.FormatUint(uint64(h), 16)
}

// hash is FNV-1a, 64 bits (Fowler, Noll and Vo).
type hash uint64

const (
	fnvOffset = 14695981039346656037
	fnvPrime  = 1099511628211
)

// text adds strings to the hash h, each with an end byte.
func (h *hash) text(parts ...string) {
	for _, s := range parts {
		for i := 0; i < len(s); i++ {
			*h = (*h ^ hash(s[i])) * fnvPrime
		}
		*h = (*h ^ 0xff) * fnvPrime // a byte that UTF-8 never holds ends each part
	}
}

// declaration adds the texts, fields and formulas of a calculator to the hash h.
func (h *hash) declaration(c *Calculator) {
	h.text(c.ID, string(c.Title))
	h.fields(c.In)
	h.fields(c.Out)
	for _, f := range c.Formulas {
		h.text(f.ID, f.Expr, f.Result.Symbol)
		for _, v := range f.Vars {
			h.text(v.Symbol, v.Unit, v.US)
		}
	}
}

// fields adds the declarations of fields, and of the columns of their rows, to the
// hash h.
func (h *hash) fields(fields []Field) {
	for _, f := range fields {
		h.text(f.ID, string(f.Label), strconv.Itoa(int(f.Kind)), strconv.Itoa(f.MaxRows))
		for _, sys := range []quantity.System{quantity.US, quantity.Metric} {
			if f.Display == nil {
				continue
			}
			h.text(f.Display.In(sys).Unit, strconv.FormatFloat(f.Display.In(sys).Step, 'g', -1, 64))
		}
		h.text(f.Range, f.Rule)
		for _, o := range f.Options {
			h.text(o.ID)
		}
		h.fields(f.Cols)
	}
}

// values adds each field's ID and its value as displayed in the locale v, rows
// included, to the hash h: what a reader sees, which is the same on every machine.
func (h *hash) values(v Locale, c Case) {
	for i, f := range c.fields {
		h.text(f.ID, v.Write(f, c.values[i]))
		for _, row := range c.values[i].Rows {
			h.values(v, row)
		}
	}
}
