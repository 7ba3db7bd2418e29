package source

import (
	"fmt"
	"slices"
	"strings"

	"coursebook/generator/internal/fault"

	"go.yaml.in/yaml/v3"
)

// Question is one item of a questions block: with Choices a choice, with Order
// steps to be put in order, with Calculator a number, otherwise open.
type Question struct {
	// Ask is the question.
	Ask string
	// Choices are the answers to choose from.
	Choices []string
	// Right is the number of the right choice from 1; 0 without choices.
	Right int
	// Ordered is yes if the choices have an order of their own, such as amounts
	// from small to big, and are not shuffled; else it is empty.
	Ordered string
	// Answer is the right answer in words; with Calculator the output asked for.
	Answer string
	// Order are the steps in their right order.
	Order []string
	// Calculator names the calculator that works the answer out, Vary the
	// inputs that take fresh values, Set fixed ones, Tolerance how far an
	// answer may lie off.
	Calculator string
	Vary       []string
	Set        []Setting
	Tolerance  string
	// Figure is a picture in the folder pictures, Alt what it shows.
	Figure, Alt string
	// Why explains the answer, See names the page that does; may be empty.
	Why, See string
	// Line is the file's line, Lines that of each key given.
	Line  int
	Lines map[string]int
}

// ParseQuestions parses the body of a questions block. It adds its errors to
// faults and returns false if there is one; the questions then hold what could be
// read. An empty block is an error.
func ParseQuestions(b Block, faults *fault.List) ([]Question, bool) {
	var all []Question
	r := b.reader(faults)
	n := r.document()
	switch {
	case r.bad:
	case n == nil || n.Kind == yaml.SequenceNode && len(n.Content) == 0:
		r.errorAt(n, "empty", "questions block is empty", "write - ask: … and answer: …")
	default:
		r.items(n, "questions block", func(item *yaml.Node) { all = append(all, r.question(item)) })
	}
	return all, !r.bad
}

// question reads one item of a questions block. It reports its errors; the
// question then holds what could be read.
func (r *reader) question(n *yaml.Node) Question {
	q := Question{Line: r.line + n.Line - 1}
	var answer *yaml.Node
	before := r.bad
	r.bad = false
	q.Lines = r.mapping(n, "question", []key{
		{"ask", true, r.text("ask", &q.Ask)},
		{"choices", false, func(n *yaml.Node) { q.Choices = r.different(n, "choices", "choice") }},
		{"ordered", false, r.oneOf("ordered", []string{"yes"}, &q.Ordered)},
		{"order", false, func(n *yaml.Node) { q.Order = r.different(n, "order", "step") }},
		{"calculator", false, r.id("calculator", &q.Calculator)},
		{"vary", false, r.list("vary", &q.Vary)},
		{"set", false, func(n *yaml.Node) { q.Set = r.settings(n) }},
		{"answer", false, func(n *yaml.Node) { answer = n }},
		{"tolerance", false, r.written("tolerance", &q.Tolerance)},
		{"figure", false, r.file("figure", "pictures", "", &q.Figure)},
		{"alt", false, r.text("alt", &q.Alt)},
		{"why", false, r.text("why", &q.Why)},
		{"see", false, r.id("see", &q.See)},
	})
	r.kind(n, &q, answer)
	r.bad = r.bad || before
	return q
}

// own are the keys that only one kind of question has, each with the key that
// makes the kind.
var own = []struct{ key, of string }{{"vary", "calculator"}, {"set", "calculator"}, {"tolerance", "calculator"},
	{"ordered", "choices"}, {"alt", "figure"}}

// kind checks that a question has the keys its kind needs and no others, and reads
// its answer into q. It reports each error at n or at the answer, which is nil if
// there is none. It does nothing if n is no mapping.
func (r *reader) kind(n *yaml.Node, q *Question, answer *yaml.Node) {
	if n.Kind != yaml.MappingNode {
		return
	}
	var kinds []string
	for _, name := range []string{"choices", "order", "calculator"} {
		if q.Lines[name] > 0 {
			kinds = append(kinds, name)
		}
	}
	if len(kinds) > 1 {
		r.errorAt(n, "question-kind", "question has both "+kinds[0]+" and "+kinds[1],
			"keep one of the two, or make two questions of it")
		return
	}
	for _, o := range own {
		if q.Lines[o.key] > 0 && q.Lines[o.of] == 0 {
			r.errorAt(n, "question-kind", "question has "+o.key+" but no "+o.of,
				"add the line "+o.of+": …, or remove "+o.key)
		}
	}
	if q.Lines["figure"] > 0 && q.Lines["alt"] == 0 {
		r.errorAt(n, "missing-key", "question has no alt",
			"add the line alt: what a reader who cannot see the picture must know")
	}
	if q.Lines["order"] > 0 {
		if answer != nil {
			r.errorAt(answer, "question-kind", "the order is the answer",
				"write the steps in their right order, and remove answer")
		}
		return
	}
	if q.Lines["calculator"] > 0 {
		for _, name := range []string{"vary", "tolerance"} {
			if q.Lines[name] == 0 {
				r.errorAt(n, "missing-key", "question has no "+name, "add the line "+name+": …")
			}
		}
	}
	r.answer(n, q, answer)
}

// answer reads the answer of a question into q: the number of a choice from 1 and
// its text, or the answer as written. It reports a missing answer and a number
// that is no choice; q.Right is then 0.
func (r *reader) answer(n *yaml.Node, q *Question, answer *yaml.Node) {
	switch {
	case answer == nil:
		r.errorAt(n, "missing-key", "question has no answer", "add the line answer: …")
	case q.Lines["choices"] == 0:
		r.written("answer", &q.Answer)(answer)
	case len(q.Choices) > 0:
		r.whole("answer", 1, len(q.Choices), &q.Right)(answer)
		if q.Right > 0 {
			q.Answer = q.Choices[q.Right-1]
		}
	}
}

// different reads a list of at least two texts that differ: choices, or steps to
// order. It reports shorter lists and texts that are equal regardless of case, and
// returns them all the same. It returns nil if one of the texts is bad. what names
// the list, one an item, in the faults.
func (r *reader) different(n *yaml.Node, what, one string) (texts []string) {
	ok := true
	r.items(n, what, func(item *yaml.Node) {
		var s string
		r.written("each of "+what, &s)(item)
		if s != "" && slices.ContainsFunc(texts, func(c string) bool { return strings.EqualFold(c, s) }) {
			r.errorAt(item, "repeated", fmt.Sprintf("%s %q stands twice", one, clip(s)), "remove one")
		}
		ok = ok && s != ""
		texts = append(texts, s)
	})
	if n.Kind == yaml.SequenceNode && len(texts) < 2 {
		r.errorAt(n, "too-few", "a question needs at least two "+one+"s",
			"add a "+one+", or remove "+what+" and write the answer in words")
	}
	if !ok {
		return nil
	}
	return texts
}

// ExamplePlace is the body of an example block: a calculator's steps for a
// case, or steps in words.
type ExamplePlace struct {
	// Title may be empty.
	Title string
	// Calculator names the calculator whose steps are shown, Set its inputs.
	Calculator string
	Set        []Setting
	// Steps are the steps in words.
	Steps []string
	// Hide is how many of the last steps are covered until asked for.
	Hide int
	// Lines holds the file's line of each key given.
	Lines map[string]int
}

// mostHidden bounds the steps that an example covers.
const mostHidden = 50

// ParseExample parses the body of an example block. It adds its errors to faults
// and returns false if there is one, such as both or neither of calculator and
// steps, or no step in sight.
func ParseExample(b Block, faults *fault.List) (ExamplePlace, bool) {
	var e ExamplePlace
	r := b.reader(faults)
	n := r.document()
	if r.bad {
		return e, false
	}
	e.Lines = r.mapping(n, "example block", []key{
		{"title", false, r.text("title", &e.Title)},
		{"calculator", false, r.id("calculator", &e.Calculator)},
		{"set", false, func(n *yaml.Node) { e.Set = r.settings(n) }},
		{"steps", false, r.list("steps", &e.Steps)},
		{"hide", false, r.whole("hide", 0, mostHidden, &e.Hide)},
	})
	calculator, steps := e.Lines["calculator"] > 0, e.Lines["steps"] > 0
	switch {
	case r.bad:
	case calculator == steps:
		r.errorAt(n, "example-source", "example needs either a calculator or steps",
			"write calculator: and its id, or steps: and a list")
	case steps && e.Lines["set"] > 0:
		r.errorAt(n, "example-source", "example has set but no calculator",
			"remove set, or name the calculator instead of steps")
	case steps && e.Hide >= len(e.Steps):
		r.errorAt(n, "example-hidden", fmt.Sprintf("example covers %d of %d steps", e.Hide, len(e.Steps)),
			"leave at least the first step in sight")
	}
	return e, !r.bad
}
