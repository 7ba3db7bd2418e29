package calc

import (
	"math"
	"slices"
	"strings"

	"coursebook/calculators/quantity"
)

// Drill is a practice question with random numbers: a calculator, its fixed
// inputs, the inputs that vary, and the output to answer.
type Drill struct {
	Of        *Calculator
	Set       []Entry  // fixed inputs, as a reader of US units types them
	Vary      []string // paths of inputs: fields, or field.row.column
	Answer    string   // ID of an output Number
	Tolerance string   // "2 %" of the right value, or an amount: "1/16 in"
}

// drillTries is how many random cases Sample tries before it gives up.
const drillTries = 50

// Sample returns a random case of the drill and its result. Each varying input is
// between 0.5 and 1.5 times its usual value, within its limits, and a round number
// in the units of sys; a choice or flag is any of its values. The same seed gives
// the same case. ok is false if the fixed inputs are refused, or the calculator
// refuses every one of drillTries cases.
func (d Drill) Sample(seed uint64, sys quantity.System) (in Case, res Result, ok bool) {
	base, notes := Read(d.Of, d.Set, quantity.Style{})
	if len(notes) > 0 {
		return Case{}, Result{}, false
	}
	r := random(seed)
	for range drillTries {
		in = base
		for _, path := range d.Vary {
			in = varied(in, path, &r, sys)
		}
		if !within(d.Of, in) {
			continue
		}
		if res = Run(d.Of, in); res.State == OK && res.Out.Has(d.Answer) {
			return in, res, true
		}
	}
	return Case{}, Result{}, false
}

// Problem returns the first mistake in the declaration of a drill, or "": an
// answer that is no output Number, a bad tolerance, a refused input, or a varying
// input that does not exist, has no usual value or cannot vary.
func (d Drill) Problem() string {
	i := fieldOf(d.Of.Out, d.Answer)
	if i < 0 || d.Of.Out[i].Kind != Number {
		return d.Of.ID + " has no output " + d.Answer + " that is a number"
	}
	if _, t := d.slack(d.Of.Out[i], 1); t != nil {
		return "the tolerance " + d.Tolerance + " is neither a share (2 %) nor an amount of the answer (1/16 in.)"
	}
	base, notes := Read(d.Of, d.Set, quantity.Style{})
	if len(notes) > 0 {
		return notes[0].At.String() + ": " + Locale{}.Say(notes[0].Text, notes[0].Slots...)
	}
	for _, path := range d.Vary {
		c, id := base.cell(path)
		if c.filled == nil {
			return d.Of.ID + " has no input " + path
		}
		f := c.fields[c.index(id)]
		if f.Kind == Number && c.Num(id) == 0 {
			return path + " has no usual value to vary"
		}
		if f.Kind != Number && f.Kind != Choice && f.Kind != Flag {
			return path + " is nothing that varies"
		}
	}
	return ""
}

// Verdict is the result of judging a typed answer.
type Verdict uint8

// The verdicts.
const (
	Right Verdict = iota
	Wrong
	Unread // the answer cannot be read; the note has the reason
)

var verdictNames = [...]string{"right", "wrong", "unread"}

// String is the verdict's name in lower case.
func (v Verdict) String() string { return verdictNames[v] }

// Judge judges a typed answer against the result of a case. It is Right if it
// differs from the exact result by no more than the tolerance, or than the result
// rounded for display does, whichever is wider; otherwise Wrong. An answer that
// cannot be read is Unread, with a note that states the reason; the note is
// otherwise empty.
func (d Drill) Judge(res Result, typed string, style quantity.Style) (Verdict, Note) {
	f := d.Of.Out[fieldOf(d.Of.Out, d.Answer)]
	x, t := quantity.Parse(strings.TrimSpace(typed), *f.Display, style)
	if t != nil {
		text, slots := parseErrorText(t)
		return Unread, Note{Level: LevelRefusal, At: At(d.Answer), Text: text, Slots: slots}
	}
	right := res.Out.Num(d.Answer)
	slack, _ := d.slack(f, right)
	slack = math.Max(slack, math.Abs(quantity.Round(right, *f.Display, style.System)-right))
	if !Over(math.Abs(x-right), slack) {
		return Right, Note{}
	}
	return Wrong, Note{}
}

// slack returns how far an answer in the field f may be from the exact result
// right, both in SI. It returns the error of a tolerance that cannot be read.
func (d Drill) slack(f Field, right float64) (float64, *quantity.ParseError) {
	share := quantity.Display{Dim: quantity.Ratio, US: quantity.UnitDisplay{Unit: "%"}}
	if strings.HasSuffix(d.Tolerance, "%") && f.Display.Dim != quantity.Ratio {
		s, t := quantity.Parse(d.Tolerance, share, quantity.Style{})
		return s * math.Abs(right), t
	}
	return quantity.Parse(d.Tolerance, *f.Display, quantity.Style{})
}

// varied returns the case with the input at path replaced by a random value, drawn
// from r. It returns the case unchanged if the path does not exist or its kind
// cannot vary.
func varied(in Case, path string, r *random, sys quantity.System) Case {
	c, id := in.cell(path)
	if c.filled == nil {
		return in
	}
	f := c.fields[c.index(id)]
	switch f.Kind {
	case Number:
		c = c.With(id, Num(sample(f, c.Num(id), r, sys)))
	case Choice:
		c = c.With(id, ChoiceOf(f.Options[int(r.share()*float64(len(f.Options)))].ID))
	case Flag:
		c = c.With(id, Bool(r.share() < 0.5))
	}
	if c.row == 0 {
		return c
	}
	field, _, _ := strings.Cut(path, ".")
	rows := append([]Case(nil), in.Rows(field)...)
	for i, row := range rows {
		if row.row == c.row {
			rows[i] = c
		}
	}
	return in.With(field, RowsOf(rows...))
}

// cell resolves a path. It returns the case that holds the field, which is c
// itself or one of its rows, and the field's ID. If the path or the row does not
// exist, it returns the zero Case and "".
func (c Case) cell(path string) (Case, string) {
	i, nr, col, ok := (&reader{fields: c.fields}).locate(path)
	switch {
	case !ok:
		return Case{}, ""
	case nr == 0:
		return c, path
	}
	for _, row := range c.values[i].Rows {
		if row.row == nr {
			return row, col
		}
	}
	return Case{}, ""
}

// sample returns a random round value from 0.5 to 1.5 times the usual one, within
// the limits of f, both in SI. It is round in the unit of sys.
func sample(f Field, usual float64, r *random, sys quantity.System) float64 {
	low, high := usual/2, usual*1.5
	if least, most, ok := f.Limits(); ok {
		low, high = math.Max(low, least.SI), math.Min(high, most.SI)
	}
	sc := f.Display.In(sys)
	unit, sizes := sc.Unit, []float64{1, 2, 5}
	if sc.Form != quantity.Decimal {
		unit, sizes = "in", []float64{0.25, 0.5, 1, 3, 6, 12}
	}
	least, most := From(low, unit), From(high, unit)
	step := 1.0
	if !f.Whole {
		step = easy((most-least)/10, sizes, sc.Form == quantity.Decimal)
	}
	first, last := math.Ceil(least/step), math.Floor(most/step)
	x := math.Min(last, math.Max(first, math.Round((least+float64(r.share()*(most-least)))/step))) * step
	return quantity.Round(SI(x, unit), *f.Display, sys)
}

// easy returns the largest of the sizes, in rising order, that does not exceed
// wanted, or the smallest size. If tens is set, the sizes are scaled by the power
// of ten of wanted.
func easy(wanted float64, sizes []float64, tens bool) float64 {
	scale := 1.0
	if tens && wanted > 0 {
		scale = math.Pow(10, math.Floor(math.Log10(wanted)))
	}
	best := sizes[0] * scale
	for _, s := range sizes {
		if s*scale <= wanted {
			best = s * scale
		}
	}
	return best
}

// within reports whether all inputs of a case are within their limits.
func within(c *Calculator, in Case) bool {
	rd := &reader{fields: c.In, out: in}
	rd.limits()
	return len(rd.notes) == 0
}

// random is the generator SplitMix64 (Steele, Lea, Flood, 2014): it gives
// the same numbers on every machine. It is not for secrets.
type random uint64

// share returns the next number from 0 to under 1.
func (r *random) share() float64 {
	*r += 0x9e3779b97f4a7c15
	z := uint64(*r)
	z = (z ^ z>>30) * 0xbf58476d1ce4e5b9
	z = (z ^ z>>27) * 0x94d049bb133111eb
	z ^= z >> 31
	return float64(z>>11) / (1 << 53)
}

// fieldOf returns the index of the field with this ID, or -1.
func fieldOf(fields []Field, id string) int {
	return slices.IndexFunc(fields, func(f Field) bool { return f.ID == id })
}
