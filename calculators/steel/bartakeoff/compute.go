package bartakeoff

import (
	"coursebook/calculators/calc"
	"coursebook/calculators/displays"
	"coursebook/calculators/steel"
)

const (
	refuseFirst  = calc.Text("The first vertical is past the middle of the wall.")
	refuseCourse = calc.Text("The outer horizontals cross: foot and top distances exceed the height.")
	noteLong     = calc.Text(
		"{part} are longer than the stock. They are counted with laps; the drawing must show where.",
	)
	askLap   = calc.Text("This lap is under {limit} of the horizontal bar. Is it what the drawing says?")
	askMixed = calc.Text("Marks of both systems stand together. Does the drawing really mix them?")
	askWide  = calc.Text("Codes for such walls end at {limit} between bars. Does the drawing say more?")
)

const (
	// leastLap is the shortest lap of the residential code in bar diameters.
	leastLap = 40
	// widest is the greatest spacing of the residential code, m.
	widest = 48 * steel.Inch
)

// order holds the amounts of one bar size: weight in kg and stock bars.
type order struct {
	bar           steel.Bar
	weight, stock float64
}

// takeOff is the take-off of one wall.
type takeOff struct {
	*calc.Recorder
	in     calc.Case
	net    float64 // kg
	rows   []calc.Case
	orders []order
}

// compute counts and weighs the bars of a wall. It refuses first bars whose
// distances from both ends exceed the wall.
func compute(r *calc.Recorder, in calc.Case) {
	t := &takeOff{Recorder: r, in: in}
	if calc.Over(2*in.Num("first"), in.Num("length")) {
		r.Refuse(calc.At("first"), refuseFirst)
		return
	}
	courses := in.Num("courses")
	if !in.Has("courses") {
		if calc.Over(2*in.Num("course-first"), in.Num("height")) {
			r.Refuse(calc.At("course-first"), refuseCourse)
			return
		}
		courses = t.UseFor(
			parts[1].Label,
			nil,
			steel.BarCountFormula,
			in.Num("height"),
			in.Num("course-first"),
			in.Num("course"),
		)
	}
	t.count(courses)
	t.put()
	t.addNotes()
}

// count adds the parts of the wall.
func (t *takeOff) count(courses float64) {
	in, layers := t.in, t.in.Num("layers")
	verticals := t.UseFor(
		parts[0].Label,
		nil,
		steel.BarCountFormula,
		in.Num("length"),
		in.Num("first"),
		in.Num("spacing"),
	)
	t.Put("verticals", verticals)
	t.Put("courses", courses)
	t.part(0, "vertical", verticals*layers, in.Num("height")+in.Num("projection"))
	t.part(1, "horizontal", courses*layers, in.Num("length"))
	if withDowels(in) {
		t.part(2, "dowel", verticals*layers, in.Num("dowel-length"))
	}
	if withCorners(in) {
		t.part(3, "horizontal", in.Num("corners")*courses*layers, 2*in.Num("leg"))
	}
	if withExtra(in) {
		t.part(4, "extra-bar", in.Num("extra"), in.Num("extra-length"))
	}
}

// part adds count bars of one length each, in m. kind is the index of the part,
// field the input of the bar size. A bar longer than the stock is lapped, which is
// noted.
func (t *takeOff) part(kind int, field string, count, each float64) {
	b, stock, lap := steel.BarOf(t.in, field), t.in.Num("stock"), t.in.Num("lap")
	use := func(f *calc.Formula, si ...float64) float64 { return f.Value(si...) }
	if parts[kind].ID == "horizontals" {
		use = t.Use
	}
	length, bars := each, 0.0
	if calc.Over(each, stock) || parts[kind].ID == "horizontals" {
		n := use(steel.PiecesFormula, each, lap, stock)
		length = use(steel.LappedLengthFormula, each, n, lap)
		bars = n * count
		if parts[kind].ID == "horizontals" {
			t.Put("run-pieces", n)
		} else {
			t.Note(calc.LevelNotice, calc.At("stock"), noteLong, calc.TextSlot("part", parts[kind].Label))
		}
	}
	if !calc.Over(each, stock) {
		bars = steel.StockBarsFormula.Value(count, stock, each)
	}
	weight := use(steel.BarWeightFormula, b.Mass, length, count)
	t.net += weight
	t.order(b, weight, bars)
	t.rows = append(
		t.rows,
		t.NewRow("parts").With("part", calc.ChoiceOf(parts[kind].ID)).With("bar", calc.ChoiceOf(b.ID)).
			With("count", calc.Num(count)).With("each", calc.Num(length)).With("length", calc.Num(length*count)).
			With("weight", calc.Num(weight)).With("stock", calc.Num(bars)),
	)
}

// order adds a weight, in kg, and a number of stock bars to the amounts of a bar
// size.
func (t *takeOff) order(b steel.Bar, weight, stock float64) {
	for i := range t.orders {
		if t.orders[i].bar.ID == b.ID {
			t.orders[i].weight += weight
			t.orders[i].stock += stock
			return
		}
	}
	t.orders = append(t.orders, order{b, weight, stock})
}

// put sets the outputs, with waste added.
func (t *takeOff) put() {
	waste, total := t.in.Num("waste"), 0.0
	var rows []calc.Case
	for _, o := range t.orders {
		// Stock is bought whole, so waste is rounded up size by size.
		bars := calc.Ceil(float64(o.stock * (1 + waste)))
		total += bars
		rows = append(rows, t.NewRow("sizes").With("bar", calc.ChoiceOf(o.bar.ID)).
			With("weight", calc.Num(steel.WithWasteFormula.Value(o.weight, waste))).With("stock", calc.Num(bars)))
	}
	t.Put("net", t.net)
	t.Put("weight", t.Use(steel.WithWasteFormula, t.net, waste))
	t.Put("stock-bars", total)
	t.PutRows("sizes", rows)
	t.PutRows("parts", t.rows)
}

// addNotes asks about a short lap, bars of two standards and a wide spacing.
func (t *takeOff) addNotes() {
	horizontal := steel.BarOf(t.in, "horizontal")
	if least := leastLap * horizontal.Diameter; calc.Under(t.in.Num("lap"), least) {
		t.Note(calc.LevelAsk, calc.At("lap"), askLap, calc.Amount("limit", least, &displays.InchesAtLeast))
	}
	for _, o := range t.orders[1:] {
		if o.bar.Canadian() != t.orders[0].bar.Canadian() {
			t.Note(calc.LevelAsk, calc.At("horizontal"), askMixed)
			break
		}
	}
	for _, id := range [...]string{"spacing", "course"} {
		if calc.Over(t.in.Num(id), widest) && !(id == "course" && t.in.Has("courses")) {
			t.Note(calc.LevelAsk, calc.At(id), askWide, calc.Amount("limit", widest, &displays.Inches))
		}
	}
}
