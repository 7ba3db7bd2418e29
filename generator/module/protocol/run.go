package protocol

import (
	"strconv"

	"coursebook/calculators/calc"
	"coursebook/calculators/figure"
)

// run runs a calculator and writes the outputs, notes, steps and figure that the
// page shows; for refused inputs the state and the refusals. It returns the text
// of an error, or "".
func (s *Server) run(q request, w *writer) string {
	c := s.calculator(q)
	if c == nil {
		return "there is no calculator " + q.first("calc").at(1)
	}
	v := s.locale(q)
	in, refusals := calc.Read(c, q.entries(), v.Style)
	for _, f := range c.In {
		if f.When != nil {
			w.put("asked", f.ID, yesNo(in.Asked(f.ID)))
		}
	}
	if len(refusals) > 0 {
		w.put("state", calc.Bad.String())
		notes(w, v, refusals)
		return ""
	}
	res := calc.Run(c, in)
	w.put("state", res.State.String())
	if h := res.Headline; h.Text != "" {
		w.put("headline", v.Say(h.Text, h.Slots...))
	}
	outputs(w, v, res.Out)
	notes(w, v, calc.ByDanger(res.Notes))
	measures(w, v, in)
	steps(w, v, res.Steps)
	if c.Draw != nil && res.State == calc.OK {
		drawing(w, c.Draw(v, in, res))
	}
	return ""
}

// yesNo returns 1 or 0 as text.
func yesNo(b bool) string {
	if b {
		return "1"
	}
	return "0"
}

// outputs writes the outputs that are set, rows cell by cell.
func outputs(w *writer, v calc.Locale, out calc.Case) {
	for i, f := range out.Fields() {
		x := out.At(i)
		if !x.Set {
			continue
		}
		if f.Kind != calc.Rows {
			output(w, v, f.ID, f, x)
			continue
		}
		for k, row := range x.Rows {
			for j, col := range row.Fields() {
				output(w, v, calc.Cell(f.ID, k+1, col.ID).String(), col, row.At(j))
			}
		}
	}
}

// output writes one value at a path: as shown, unrounded, and for a Number or a
// Clock as a bare SI number, which tests compare with the native run.
func output(w *writer, v calc.Locale, path string, f calc.Field, x calc.Value) {
	raw := ""
	if x.Set && (f.Kind == calc.Number || f.Kind == calc.Clock) {
		raw = strconv.FormatFloat(x.Num, 'g', -1, 64)
	}
	w.put("out", path, v.Say(f.Label), v.Write(f, x), v.Unrounded(f, x), raw)
	if f.Lead && f.Kind == calc.Choice {
		w.put("advice", path, f.Advice(x).String())
	}
}

// measures writes a record for each input that applies and that other calculators share:
// its path, the name of the measure and its text with the unit.
func measures(w *writer, v calc.Locale, in calc.Case) {
	for i, f := range in.Fields() {
		if f.Measure != "" && in.Asked(f.ID) && in.At(i).Set {
			w.put("measure", f.ID, f.Measure, v.InputText(f, in.At(i)))
		}
	}
}

// notes writes a record for each note.
func notes(w *writer, v calc.Locale, list []calc.Note) {
	for _, n := range list {
		w.put("note", n.Level.String(), n.At.String(), v.Say(n.Text, n.Slots...))
	}
}

// steps writes a record for each step.
func steps(w *writer, v calc.Locale, list []calc.Step) {
	for _, s := range list {
		step := v.Work(s)
		fields := []string{"step", step.Title, step.Of, step.Plain, step.Substituted, step.Result}
		w.put(append(fields, step.Where...)...)
	}
}

// drawing writes a figure as a list of nodes with depths, from which the page
// builds elements without parsing markup. An empty figure writes nothing.
func drawing(w *writer, d figure.Drawing) {
	if d.Empty() {
		return
	}
	w.put("drawing", figure.Coordinate(d.Width), figure.Coordinate(d.Height), d.Title, d.Desc)
	for _, n := range d.Nodes {
		node(w, 0, n)
	}
}

// node writes a node at a depth, from 0, and the nodes below it.
func node(w *writer, depth int, n figure.Node) {
	fields := []string{"node", strconv.Itoa(depth), n.Tag, n.Text}
	for _, a := range n.Attrs {
		fields = append(fields, a.Name, a.Value)
	}
	w.put(fields...)
	for _, k := range n.Kids {
		node(w, depth+1, k)
	}
}

// convert writes the inputs in another system of units or with another decimal
// mark. It omits inputs that are refused, which the page leaves unchanged. It
// returns the text of an error, or "".
func (s *Server) convert(q request, w *writer) string {
	c := s.calculator(q)
	if c == nil {
		return "there is no calculator " + q.first("calc").at(1)
	}
	v := s.locale(q)
	in, refusals := calc.Read(c, q.entries(), v.Style)
	refused := map[string]bool{}
	for _, n := range refusals {
		refused[n.At.String()] = true
	}
	to := calc.Locale{Words: v.Words, Style: style(q.first("to"))}
	for _, e := range to.Entries(in) {
		if !refused[e.Path] {
			w.put("set", e.Path, e.Text)
		}
	}
	return ""
}
