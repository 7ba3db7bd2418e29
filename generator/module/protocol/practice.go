package protocol

import (
	"slices"
	"strconv"

	"coursebook/calculators/calc"
)

// practice samples new inputs for a number question. It writes the inputs that the
// question states, those that vary first and marked 1; the output that is asked
// for with its unit; and all inputs as entries, which are the arguments of judge.
// It returns the text of an error, or "".
func (s *Server) practice(q request, w *writer) string {
	drill, asked, why := s.drill(q)
	if why != "" {
		return why
	}
	for _, r := range q.records {
		if r.at(0) == "vary" {
			drill.Vary = append(drill.Vary, r.at(1))
		}
	}
	seed, err := strconv.ParseUint(q.first("seed").at(1), 10, 64)
	if err != nil {
		return "practice needs a seed, a whole number"
	}
	if why := drill.Problem(); why != "" {
		return why
	}
	v := s.locale(q)
	in, _, ok := drill.Sample(seed, v.Style.System)
	if !ok {
		return "fresh values give " + drill.Of.ID + " no result"
	}
	for _, g := range v.Givens(in, drill.Vary, drill.Set) {
		w.put("given", g.Path, g.Label, g.Text, yesNo(g.Varies), yesNo(g.Usual))
	}
	w.put("asked", v.Say(asked.Label), asked.Display.In(v.Style.System).Unit)
	for _, e := range v.Entries(in) {
		w.put("set", e.Path, e.Text)
	}
	return ""
}

// judge judges a typed answer to a case that practice wrote. It writes the
// verdict, the right answer and the steps. For an answer that cannot be parsed it
// writes only the verdict with the reason. It returns the text of an error, or "".
func (s *Server) judge(q request, w *writer) string {
	drill, asked, why := s.drill(q)
	if why != "" {
		return why
	}
	v := s.locale(q)
	in, refusals := calc.Read(drill.Of, q.entries(), v.Style)
	if len(refusals) > 0 {
		return v.Say(refusals[0].Text, refusals[0].Slots...)
	}
	drill.Set = nil
	if why := drill.Problem(); why != "" {
		return why
	}
	res := calc.Run(drill.Of, in)
	if res.State != calc.OK || !res.Out.Has(drill.Answer) {
		return "this case of " + drill.Of.ID + " has no result"
	}
	verdict, note := drill.Judge(res, q.first("typed").at(1), v.Style)
	if verdict == calc.Unread {
		w.put("verdict", verdict.String(), v.Say(note.Text, note.Slots...))
		return ""
	}
	w.put("verdict", verdict.String(), "")
	output(w, v, asked.ID, asked, res.Out.Value(drill.Answer))
	steps(w, v, res.Steps)
	return ""
}

// drill returns the number question of a request, without the inputs that vary,
// and the output it asks for. The text is that of an error, such as an unknown
// calculator, or "".
func (s *Server) drill(q request) (calc.Drill, calc.Field, string) {
	c := s.calculator(q)
	if c == nil {
		return calc.Drill{}, calc.Field{}, "there is no calculator " + q.first("calc").at(1)
	}
	drill := calc.Drill{Of: c, Set: q.entries(), Answer: q.first("answer").at(1), Tolerance: q.first("tolerance").at(1)}
	i := slices.IndexFunc(c.Out, func(f calc.Field) bool { return f.ID == drill.Answer && f.Kind == calc.Number })
	if i < 0 {
		return drill, calc.Field{}, c.ID + " has no output " + drill.Answer + " that is a number"
	}
	return drill, c.Out[i], ""
}
