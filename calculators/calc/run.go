package calc

import (
	"math"
	"slices"
)

// State is the outcome of a run.
type State uint8

// The states of a result.
const (
	OK      State = iota
	Refused       // the method does not allow a result; a note has the reason
	Bad           // an input could not be read; a note has its path
)

var stateNames = [...]string{"ok", "refused", "bad"}

// String is the state's name in lower case.
func (s State) String() string { return stateNames[s] }

// Result is the result of a run. Out is empty unless State is OK.
type Result struct {
	State State
	Out   Case
	Notes []Note
	Steps []Step
	// Headline says the deed in one line, in place of the leading outputs, where there
	// is room for one line only. Its Text is empty if the leading outputs say enough.
	Headline Note
}

// Step is one use of a formula in the worked example.
type Step struct {
	Formula *Formula
	Of      Text      // the purpose; may be empty
	Slots   []Slot    // the slots of Of
	In      []float64 // SI, in the order of Formula.Vars
	Out     float64   // SI
}

// Recorder collects the outputs, notes and steps of one computation.
type Recorder struct {
	calculator *Calculator
	result     Result
}

var (
	// NoNumber refuses a result that is not a finite number.
	NoNumber = Text("These inputs give no sensible number. Check each input and its unit.")
)

// Run runs a calculator on inputs that Read has checked. If an input passes the limit of
// its house rule, the calculator refuses, or a result is not finite, the state is Refused,
// a note states the reason, and the outputs are unset. A note that an input is looser than
// its house rule is left out where the calculator warns of the same input.
func Run(c *Calculator, in Case) Result {
	r := &Recorder{calculator: c}
	r.result.Out = Empty(c.Out)
	looser, refused := held(in, At)
	if len(refused) > 0 {
		r.result.State, r.result.Notes = Refused, refused
		return r.result
	}
	c.Compute(r, in)
	if r.result.State == OK && !finite(r.result.Out) {
		r.Refuse(Path{}, NoNumber)
	}
	if r.result.State != OK {
		r.result.Out, r.result.Headline = Empty(c.Out), Note{}
		return r.result
	}
	looser = slices.DeleteFunc(looser, func(n Note) bool { return warned(r.result.Notes, n.At) })
	r.result.Notes = append(looser, r.result.Notes...)
	return r.result
}

// warned reports whether a note at a path is a warning or graver.
func warned(notes []Note, at Path) bool {
	return slices.ContainsFunc(notes, func(n Note) bool { return n.At == at && n.Level <= LevelWarning })
}

// finite reports whether no number of the case and its rows is NaN or infinite.
func finite(c Case) bool {
	for _, v := range c.values {
		if math.IsNaN(v.Num) || math.IsInf(v.Num, 0) {
			return false
		}
		for _, row := range v.Rows {
			if !finite(row) {
				return false
			}
		}
	}
	return true
}

// Put sets an output Number, si in SI units.
func (r *Recorder) Put(id string, si float64) { r.set(id, Num(si)) }

// PutChoice sets an output Choice.
func (r *Recorder) PutChoice(id, option string) { r.set(id, ChoiceOf(option)) }

// PutFlag sets an output Flag.
func (r *Recorder) PutFlag(id string, on bool) { r.set(id, Bool(on)) }

// PutRows sets an output Rows; make the rows with NewRow.
func (r *Recorder) PutRows(id string, rows []Case) { r.set(id, Value{Set: true, Rows: rows}) }

// NewRow returns an empty row of the output Rows field id; fill it with With.
func (r *Recorder) NewRow(id string) Case {
	return Empty(r.result.Out.fields[r.result.Out.index(id)].Cols)
}

// set sets the output id. It panics on an output that is not declared.
func (r *Recorder) set(id string, v Value) { r.result.Out.values[r.result.Out.index(id)] = v }

// Note adds a note of the level to the result, at an input or output, or at the
// whole calculator for the zero Path.
func (r *Recorder) Note(level Level, at Path, text Text, slots ...Slot) {
	r.result.Notes = append(r.result.Notes, Note{Level: level, At: at, Text: text, Slots: slots})
}

// Headline sets the line that says the deed.
func (r *Recorder) Headline(text Text, slots ...Slot) {
	r.result.Headline = Note{Text: text, Slots: slots}
}

// Refuse sets the state Refused and adds a refusal that states why there is no
// result. Compute must return at once.
func (r *Recorder) Refuse(at Path, text Text, slots ...Slot) {
	r.Note(LevelRefusal, at, text, slots...)
	r.result.State = Refused
}

// Use returns the value of a formula and records it as a step of the worked
// example. Values, in the order of f.Vars, and result are in SI. It panics on
// another number of values.
func (r *Recorder) Use(f *Formula, si ...float64) float64 { return r.UseFor("", nil, f, si...) }

// UseFor is Use with a line that states the purpose of the step.
func (r *Recorder) UseFor(of Text, slots []Slot, f *Formula, si ...float64) float64 {
	out := f.Value(si...)
	r.result.Steps = append(r.result.Steps,
		Step{Formula: f, Of: of, Slots: slots, In: append([]float64(nil), si...), Out: out})
	return out
}

// Value returns the value of a formula without recording a step. Values, in the
// order of f.Vars, and result are in SI. It panics on another number of values.
func (f *Formula) Value(si ...float64) float64 {
	if len(si) != len(f.Vars) {
		panic("calc: formula " + f.ID + " takes another number of values")
	}
	v := make([]float64, len(si))
	for i, x := range si {
		v[i] = x
		if u := f.Vars[i].Unit; u != "" {
			v[i] = From(x, u)
		}
	}
	out := f.Fn.Call(v)
	if f.Result.Unit != "" {
		out = SI(out, f.Result.Unit)
	}
	return out
}
