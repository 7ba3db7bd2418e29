package aggregatesize

import (
	"math"

	"coursebook/calculators/calc"
	"coursebook/calculators/displays"
	"coursebook/calculators/steel"
)

const (
	noteTight = calc.Text("No usual stone is this small. Widen the gap, or ask for a mix made for it.")
	noteHose  = calc.Text("Through a hose of {limit} or less goes 3/8 in. (10 mm) stone only, whatever its share.")
	noteLarge = calc.Text(
		"Larger than {limit}: British Columbia names that for walls in insulated forms. Ask the form maker.",
	)
	askGap = calc.Text("Bars decide as often as forms. What is the clear gap between them?")
)

// Sieve sizes by which aggregate is sold, m.
var (
	inchSizes = [...]float64{
		0.375 * steel.Inch,
		0.5 * steel.Inch,
		0.75 * steel.Inch,
		1 * steel.Inch,
		1.5 * steel.Inch,
	}
	metricSizes = [...]float64{10 * steel.Mm, 14 * steel.Mm, 20 * steel.Mm, 25 * steel.Mm, 40 * steel.Mm}
)

const (
	// smallHose is the largest inside diameter that takes only smallStone, m:
	// 3/8 in., sold as 10 mm by metric sieves.
	smallHose, smallStone = 2.5 * steel.Inch, 10 * steel.Mm
	// namedStone is the stone of the British Columbia code, m; 3/4 in. and
	// 20 mm, which is metricNamed, are the sieve sizes that go by its name.
	namedStone, metricNamed = 19 * steel.Mm, 20 * steel.Mm
	// The shares of the hose by the shape of the stone.
	crushedShare, roundedShare = 1.0 / 3, 0.4
)

// sieve returns the largest of the sizes, in rising order, that is not above most,
// all in m; 0 if there is none.
func sieve(sizes []float64, most float64) float64 {
	best := 0.0
	for _, s := range sizes {
		if !calc.Over(s, most) {
			best = s
		}
	}
	return best
}

// stones collects the limits of the rules and the smallest of them.
type stones struct {
	*calc.Recorder
	in    calc.Case
	most  float64
	rule  string
	lines []calc.Case
}

// limit adds the row of a rule: the largest stone most by the dimension of, both
// in m. It governs if it is below all before.
func (s *stones) limit(rule string, of, most float64) {
	if calc.Under(most, s.most) {
		s.most, s.rule = most, rule
	}
	s.lines = append(
		s.lines,
		s.NewRow("rules").With("rule", calc.ChoiceOf(rule)).With("of", calc.Num(of)).With("most", calc.Num(most)),
	)
}

// compute sets the largest stone that all rules allow. It refuses nothing.
func compute(r *calc.Recorder, in calc.Case) {
	s := &stones{Recorder: r, in: in, most: math.Inf(1)}
	s.limit(byForms, in.Num("core"), r.Use(steel.FormShareFormula, in.Num("core")))
	if in.Has("gap") {
		s.limit(byGap, in.Num("gap"), r.UseFor(rules[1].Label, nil, steel.GapShareFormula, in.Num("gap")))
	}
	if in.Has("cover") {
		s.limit(byCover, in.Num("cover"), r.UseFor(rules[2].Label, nil, steel.GapShareFormula, in.Num("cover")))
	}
	if in.Has("slab") {
		s.limit(bySlab, in.Num("slab"), r.Use(steel.SlabShareFormula, in.Num("slab")))
	}
	if d := in.Num("hose"); in.Has("hose") {
		share := crushedShare
		if in.Choice("stone") == rounded {
			share = roundedShare
		}
		s.limit(byHose, d, r.Use(steel.HoseShareFormula, share, d))
		if !calc.Over(d, smallHose) {
			s.limit(bySmall, d, smallStone)
			r.Note(calc.LevelNotice, calc.At("hose"), noteHose, calc.Amount("limit", smallHose, &displays.Part))
		}
	}
	s.put()
}

// put sets the outputs and notes stones that are too small or too large to be
// named.
func (s *stones) put() {
	s.Put("most", s.most)
	s.PutChoice("governs", s.rule)
	s.PutRows("rules", s.lines)
	inches, metric := sieve(inchSizes[:], s.most), sieve(metricSizes[:], s.most)
	if inches > 0 {
		s.Put("size-in", inches)
	}
	if metric > 0 {
		s.Put("size-mm", metric)
	}
	switch {
	case inches == 0 && metric == 0:
		s.Note(calc.LevelWarning, calc.Path{}, noteTight)
	case calc.Over(max(inches, metric), metricNamed):
		s.Note(calc.LevelNotice, calc.Path{}, noteLarge, calc.Amount("limit", namedStone, &displays.Part))
	}
	if !s.in.Has("gap") {
		s.Note(calc.LevelAsk, calc.At("gap"), askGap)
	}
}
