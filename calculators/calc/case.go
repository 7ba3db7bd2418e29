package calc

// Case is a filled-in set of fields: the inputs or the outputs of one run, or
// one row of a Rows field. Its methods panic on a field that is not declared.
type Case struct{ *filled }

// filled holds the fields and values of a case. A Case is a single pointer
// because it is passed at every step of every computation, and each further
// word of an argument adds code to the module.
type filled struct {
	fields []Field
	values []Value
	row    int
}

// NewCase returns a case of the fields' usual values. It panics if one cannot
// be read; Problems reports that without a panic.
func NewCase(fields []Field) Case {
	c := Empty(fields)
	for i, f := range fields {
		c.values[i] = f.UsualValue()
	}
	return c
}

// Empty returns a case in which no field is set.
func Empty(fields []Field) Case {
	return Case{&filled{fields: fields, values: make([]Value, len(fields))}}
}

// Fields are the declarations behind the case, in order.
func (c Case) Fields() []Field { return c.fields }

// At is the value of the i-th field.
func (c Case) At(i int) Value { return c.values[i] }

// index returns the index of the field with this ID. It panics if there is none.
func (c Case) index(id string) int {
	for i := range c.fields {
		if c.fields[i].ID == id {
			return i
		}
	}
	panic("calc: no field " + id)
}

// Value returns the content of a field; the zero Value if it is unset.
func (c Case) Value(id string) Value { return c.values[c.index(id)] }

// Has reports whether a field is set.
func (c Case) Has(id string) bool { return c.Value(id).Set }

// Num returns a Number in SI units; 0 if unset.
func (c Case) Num(id string) float64 { return c.Value(id).Num }

// Choice returns the ID of the chosen option; "" if unset.
func (c Case) Choice(id string) string { return c.Value(id).Word }

// Text returns the content of a FreeText field; "" if unset.
func (c Case) Text(id string) string { return c.Value(id).Word }

// Flag returns the content of a Flag field; false if unset.
func (c Case) Flag(id string) bool { return c.Value(id).Num != 0 }

// Days returns a Day in days since 1970-01-01; 0 if unset.
func (c Case) Days(id string) int { return int(c.Value(id).Num) }

// Rows returns the rows of a Rows field, without the empty ones; nil if there are
// none.
func (c Case) Rows(id string) []Case { return c.Value(id).Rows }

// RowNumber returns the number of a row as typed, from 1; skipped empty rows
// count. It is 0 for a case that is not a row.
func (c Case) RowNumber() int { return c.row }

// With returns a copy of the case with one field set to v. The case itself does
// not change. It panics if no field has this ID.
func (c Case) With(id string, v Value) Case {
	d := Case{&filled{fields: c.fields, values: append([]Value(nil), c.values...), row: c.row}}
	d.values[d.index(id)] = v
	return d
}

// asked reports whether the field f applies in this case.
func (c Case) asked(f Field) bool { return f.When == nil || f.When(c) }

// Asked reports whether the field with this ID applies in this case.
func (c Case) Asked(id string) bool { return c.asked(c.fields[c.index(id)]) }
