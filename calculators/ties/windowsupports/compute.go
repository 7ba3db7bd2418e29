package windowsupports

import (
	"math"

	"coursebook/calculators/calc"
	"coursebook/calculators/displays"
	"coursebook/calculators/pressure"
	"coursebook/calculators/ties"
)

// IDs of what governs a spacing.
const (
	byBend    = "bend"
	bySag     = "sag"
	bySupport = "support"
)

const (
	refuseLow = calc.Text(
		"It is never under {least} here. Take it from the form pressure calculator, or leave it empty.",
	)

	noteShort = calc.Text("Fewer than three spans fit on some side. There the board counts as a simple beam.")
	noteFluid = calc.Text("No form pressure is entered: the full fluid head counts, down to {pressure} at the sill.")
	noteWord  = calc.Text(
		"Only the engineer allows less than the full fluid head. It counts here, down to {pressure} at the sill.",
	)
	noteCapped = calc.Text(
		"By the engineer's word the form pressure caps jambs and sill. The head carries the whole weight above it.",
	)
	noteNone  = calc.Text("By the numbers one way needs no support inside. Set one in the middle all the same.")
	askRating = calc.Text("What may one support carry? Now only the board counts.")
	noteTight = calc.Text("Supports closer than {limit} leave no room to work. Use a thicker board or place slower.")
	askNarrow = calc.Text("The board is {wide} wide and the concrete {core}. What closes and supports the rest?")
	askBoard  = calc.Text("The stress or modulus is above that of common wet lumber. Which grade or table gives it?")
	noteEven  = calc.Text("Keep supports the same distance apart, and the first no farther from the corner.")

	tightest = 8 * 0.0254 // m, closest useful spacing; common practice
)

// The stress and modulus of wet construction lumber, in Pa; common practice.
var (
	wetStress  = calc.SI(800, "psi")
	wetModulus = calc.SI(1200000, "psi")
)

// beam holds the coefficients of a board: moment q·L²/n, deflection
// q·L⁴/(m·E·I), load on a support k·q·L.
type beam struct{ n, m, k float64 }

var (
	simpleBeam  = beam{8, 76.8, 1}
	throughBeam = beam{10, 145, 1.25}
	twoSpanBeam = beam{8, 76.8, 1.25} // continuous over fewer than three spans
)

// side is one side of the frame with its loads and supports.
type side struct {
	id             string
	span           float64 // m, length of the side
	pressure, load float64
	spacing        float64
	supports       float64
	governs        string
	by             beam // the coefficients used
}

// leastPressure returns the least design pressure in Pa of concrete of a unit weight, by
// the stricter edition as in the calculator of form pressure, unless its full fluid head is
// less.
func leastPressure(weight, head float64) float64 {
	cw := pressure.WeightCoefficient(pressure.PCF(calc.From(weight, "lb/ft³")))
	return math.Min(head, pressure.SI(pressure.LeastPressureSI(cw)))
}

// compute sets the supports of head, jambs and sill. It refuses a form pressure under
// the least design pressure.
func compute(r *calc.Recorder, in calc.Case) {
	w, cover := in.Num("weight"), in.Num("cover")
	head := ties.HeadFormula.Value(w, cover)
	sill := r.UseFor(nameSill, nil, ties.HeadFormula, w, cover+in.Num("height"))
	if in.Has("form-pressure") {
		if least := leastPressure(w, sill); calc.Under(in.Num("form-pressure"), least) {
			r.Refuse(calc.At("form-pressure"), refuseLow, calc.Amount("least", least, &displays.Pressure))
			return
		}
	}
	switch {
	case in.Has("form-pressure") && in.Flag("engineer"):
		sill = r.Use(ties.LowerFormula, sill, in.Num("form-pressure"))
		r.Note(calc.LevelNotice, calc.At("form-pressure"), noteCapped)
	case in.Has("form-pressure"):
		r.Note(calc.LevelWarning, calc.At("engineer"), noteWord, calc.Amount("pressure", sill, &displays.Pressure))
	default:
		r.Note(calc.LevelNotice, calc.At("form-pressure"), noteFluid, calc.Amount("pressure", sill, &displays.Pressure))
	}
	sides := []side{
		{id: "head", span: in.Num("width"), pressure: head},
		{id: "jamb", span: in.Num("height"), pressure: sill},
		{id: "sill", span: in.Num("width"), pressure: sill},
	}
	short := false
	for i := range sides {
		s := &sides[i]
		s.load = ties.LineLoadFormula.Value(s.pressure, in.Num("core"))
		short = s.support(in) || short
	}
	showSteps(r, in, sides[2])
	put(r, sides)
	if short {
		r.Note(calc.LevelNotice, calc.At("beam"), noteShort)
	}
	if !in.Has("rating") {
		r.Note(calc.LevelAsk, calc.At("rating"), askRating)
	}
	if calc.Over(in.Num("stress"), wetStress) || calc.Over(in.Num("modulus"), wetModulus) {
		r.Note(calc.LevelAsk, calc.At("stress"), askBoard)
	}
	if wide, core := in.Num("board-wide"), in.Num("core"); calc.Under(wide, core) {
		r.Note(calc.LevelAsk, calc.At("board-wide"), askNarrow, calc.Amount("wide", wide, &displays.Inches),
			calc.Amount("core", core, &displays.Inches))
	}
	r.Note(calc.LevelNotice, calc.Path{}, noteEven)
}

// support sets spacing and number of supports of a side. It returns true if a
// continuous board has fewer than three spans.
func (s *side) support(in calc.Case) (short bool) {
	if s.load <= 0 { // no concrete above the head
		s.spacing, s.governs = s.span, byBend
		return false
	}
	if in.Choice("beam") == spanSimple {
		s.fit(in, simpleBeam)
		return false
	}
	s.fit(in, throughBeam)
	if s.supports >= 2 {
		return false
	}
	s.fit(in, twoSpanBeam)
	return s.supports < 2
}

// fit sets the spacing to the least that stress, bending and the rating of a
// support allow.
func (s *side) fit(in calc.Case, b beam) {
	s.by = b
	wide, thick := in.Num("board-wide"), in.Num("board-thick")
	s.spacing, s.governs = ties.BendSpanFormula.Value(b.n, in.Num("stress"), wide, thick, s.load), byBend
	if sag := ties.SagSpanFormula.Value(b.m, in.Num("modulus"), wide, thick, s.load, in.Num("sag")); sag < s.spacing {
		s.spacing, s.governs = sag, bySag
	}
	if in.Has("rating") {
		if by := ties.SupportSpanFormula.Value(in.Num("rating"), b.k, s.load); by < s.spacing {
			s.spacing, s.governs = by, bySupport
		}
	}
	s.supports = math.Max(0, ties.UpTo(s.span/s.spacing)-1)
}

// showSteps records the worked steps of the sill with the coefficients used.
func showSteps(r *calc.Recorder, in calc.Case, s side) {
	wide, thick := in.Num("board-wide"), in.Num("board-thick")
	r.UseFor(nameSill, nil, ties.LineLoadFormula, s.pressure, in.Num("core"))
	r.UseFor(nameSill, nil, ties.BendSpanFormula, s.by.n, in.Num("stress"), wide, thick, s.load)
	r.UseFor(nameSill, nil, ties.SagSpanFormula, s.by.m, in.Num("modulus"), wide, thick, s.load, in.Num("sag"))
	if in.Has("rating") {
		r.UseFor(nameSill, nil, ties.SupportSpanFormula, in.Num("rating"), s.by.k, s.load)
	}
}

// put sets the outputs for the sides head, jamb and sill, and notes supports that
// are closer than a crew can place.
func put(r *calc.Recorder, sides []side) {
	closest, posts := math.Inf(1), math.Max(sides[0].supports, sides[2].supports)
	var rows []calc.Case
	for _, s := range sides {
		closest = math.Min(closest, s.spacing)
		rows = append(rows, r.NewRow("sides").
			With("side", calc.ChoiceOf(s.id)).With("pressure", calc.Num(s.pressure)).With("load", calc.Num(s.load)).
			With("spacing", calc.Num(s.spacing)).
			With("supports", calc.Num(s.supports)).With("governs", calc.ChoiceOf(s.governs)))
	}
	r.Put("spacing", closest)
	r.Put("posts", posts)
	r.Put("spreaders", sides[1].supports)
	r.Put("sill", sides[2].pressure)
	r.PutRows("sides", rows)
	if posts == 0 || sides[1].supports == 0 {
		r.Note(calc.LevelNotice, calc.Path{}, noteNone)
	}
	if closest < tightest {
		r.Note(calc.LevelWarning, calc.At("board-thick"), noteTight, calc.Amount("limit", tightest, &displays.Inches))
	}
}
