package form

import (
	"coursebook/calculators/calc"
	"coursebook/calculators/quantity"
)

// Given is one input of an example or a question.
type Given struct {
	Label  string
	Text   Both
	Varies bool // drawn anew for each try
	Usual  bool // the usual value: neither drawn nor set by the author
}

// Step is one step of the arithmetic in both systems.
type Step struct {
	Title              string
	Of                 Both // the purpose; may be empty
	Plain, Substituted Both
	Result             Both
	Where              []Both
}

// Example is a calculator computed for a case.
type Example struct {
	Title   string
	Given   []Given
	Steps   []Step
	Outputs []Output // the main results
}

// NumberQuestion is a question of a calculator with one draw of its numbers.
type NumberQuestion struct {
	Given []Given
	Asked Output // the asked result, with its value
	Unit  Both   // of an answer without a unit
	Steps []Step
}

// NewExample returns a calculator computed for typed inputs, in US units. words
// are the translations, nil for English; mark is the decimal mark. If an input is
// refused, it returns nil and the refusals.
func NewExample(c *calc.Calculator, words calc.Translations, mark quantity.Mark,
	typed []calc.Entry) (*Example, []calc.Note) {

	w := newWriter(words, mark)
	in, refusals := calc.Read(c, typed, w.us.Style)
	if len(refusals) > 0 {
		return nil, refusals
	}
	res := calc.Run(c, in)
	e := &Example{Title: w.us.Say(c.Title), Given: w.given(in, nil, typed), Steps: w.steps(res.Steps)}
	outputs, _ := w.outputs(res.Out)
	for _, o := range outputs {
		if o.Lead && o.Shown.US != "" {
			e.Outputs = append(e.Outputs, o)
		}
	}
	return e, nil
}

// NewNumberQuestion returns a question with numbers drawn by a seed, the same for
// the same seed. It returns nil and false if the seed gives no valid numbers.
func NewNumberQuestion(d calc.Drill, words calc.Translations, mark quantity.Mark,
	seed uint64) (*NumberQuestion, bool) {

	w := newWriter(words, mark)
	in, res, ok := d.Sample(seed, quantity.US)
	if !ok {
		return nil, false
	}
	a := &NumberQuestion{Given: w.given(in, d.Vary, d.Set), Steps: w.steps(res.Steps)}
	for i, f := range d.Of.Out {
		if f.ID == d.Answer {
			a.Asked = Output{Path: f.ID, Label: w.us.Say(f.Label), Shown: w.both(f, res.Out.At(i))}
			a.Unit = Both{f.Display.In(quantity.US).Unit, f.Display.In(quantity.Metric).Unit}
		}
	}
	return a, true
}

// newWriter returns a writer with these translations, nil for English, and this
// decimal mark.
func newWriter(words calc.Translations, mark quantity.Mark) writer {
	return writer{
		us:     calc.Locale{Words: words, Style: quantity.Style{System: quantity.US, Mark: mark}},
		metric: calc.Locale{Words: words, Style: quantity.Style{System: quantity.Metric, Mark: mark}},
	}
}

// given returns the inputs of a case: those of vary first, those of set next, the
// usual ones last.
func (w writer) given(in calc.Case, vary []string, set []calc.Entry) []Given {
	var list []Given
	metric := w.metric.Givens(in, vary, set)
	for i, us := range w.us.Givens(in, vary, set) {
		list = append(list, Given{us.Label, Both{us.Text, metric[i].Text}, us.Varies, us.Usual})
	}
	return list
}

// steps returns steps of a worked example in both systems of units.
func (w writer) steps(list []calc.Step) []Step {
	steps := make([]Step, len(list))
	for i, s := range list {
		us, metric := w.us.Work(s), w.metric.Work(s)
		steps[i] = Step{Title: us.Title, Of: Both{us.Of, metric.Of}, Plain: Both{us.Plain, metric.Plain},
			Substituted: Both{us.Substituted, metric.Substituted}, Result: Both{us.Result, metric.Result}}
		for k := range us.Where {
			steps[i].Where = append(steps[i].Where, Both{us.Where[k], metric.Where[k]})
		}
	}
	return steps
}
