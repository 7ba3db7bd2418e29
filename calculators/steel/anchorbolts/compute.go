package anchorbolts

import (
	"math"
	"slices"

	"coursebook/calculators/calc"
	"coursebook/calculators/displays"
	"coursebook/calculators/steel"
)

const (
	refuseGap = calc.Text("This gap goes past the end of the plates, {length} from the start.")
	refuseBit = calc.Text(
		"A piece or the rest beside a gap is {piece} long: two bolts do not fit. Join it to a longer one, or ask the " +
			"engineer.",
	)
	refuseAll = calc.Text("The gaps leave no plate.")

	noteWider = calc.Text(
		"The drawing's spacing is more than the {limit} of the home code. Is it an engineer's drawing?",
	)
	noteEnd  = calc.Text("With this bolt it is {least} at least from an end: seven diameters.")
	noteMove = calc.Text("Move the cleat at {place}: the bolt has to be there.")
	noteCode = calc.Text(
		"Only for plates that nobody drew, once the engineer or the inspector agrees. Is there a drawing? Type its " +
			"spacing.",
	)
)

// The limits of the home code.
var (
	spacingLow  = calc.SI(6, "ft")
	spacingTall = calc.SI(4, "ft")
	endMost     = calc.SI(12, "in")
)

func compute(r *calc.Recorder, in calc.Case) {
	rules := boltRules(r, in)
	pieces, length, ok := split(r, in, rules)
	if !ok {
		return
	}
	var blocked []steel.Span
	for _, c := range in.Rows("cleats") {
		blocked = append(blocked, steel.Span{From: c.Num("at") - in.Num("clear"), To: c.Num("at") + in.Num("clear")})
	}
	first := pieces[0]
	r.Use(steel.BoltsInPieceFormula, first.To-first.From, math.Min(rules.End, (first.To-first.From)/3), rules.Spacing)
	var rows []calc.Case
	largest, before := 0.0, 0.0
	for _, piece := range pieces {
		bolts := steel.LayOutBolts(piece, rules, blocked)
		for i, b := range bolts {
			gap := b.At - before
			if i > 0 {
				largest = math.Max(largest, gap)
			}
			rows = append(rows, r.NewRow("bolts").With("nr", calc.Num(float64(len(rows)+1))).
				With("at", calc.Num(b.At)).With("gap", calc.Num(gap)).With("for", calc.ChoiceOf(reason(b))))
			if b.Blocked {
				r.Note(calc.LevelAsk, calc.At("cleats"), noteMove, calc.Amount("place", b.At, &displays.Wall))
			}
			before = b.At
		}
	}
	r.PutRows("bolts", rows)
	r.Put("count", float64(len(rows)))
	r.Put("largest", largest)
	r.Put("pieces", float64(len(pieces)))
	r.Put("length", length)
}

// reason is the option that says why a bolt has its place.
func reason(b steel.Bolt) string {
	switch {
	case b.Blocked:
		return moves
	case b.End:
		return atEnd
	}
	return between
}

// boltRules puts and returns the distances of the layout. The drawing's spacing
// comes before the code's.
func boltRules(r *calc.Recorder, in calc.Case) steel.BoltRules {
	code := spacingLow
	if in.Choice("stories") == tall {
		code = spacingTall
	}
	rules := steel.BoltRules{Spacing: code, End: in.Num("end"), EndLargest: endMost}
	rules.EndLeast = r.Use(steel.LeastFromEndFormula, in.Num("diameter"))
	r.PutChoice("by", byDrawing)
	switch {
	case !in.Has("drawing"):
		r.PutChoice("by", byCode)
		r.Note(calc.LevelWarning, calc.At("drawing"), noteCode)
	case calc.Over(in.Num("drawing"), code):
		r.Note(calc.LevelAsk, calc.At("drawing"), noteWider, calc.Amount("limit", code, &displays.Wall))
		fallthrough
	default:
		rules.Spacing = in.Num("drawing")
	}
	if calc.Under(rules.End, rules.EndLeast) {
		rules.End = rules.EndLeast
		r.Note(calc.LevelNotice, calc.At("end"), noteEnd, calc.Amount("least", rules.EndLeast, &displays.Part))
	}
	r.Put("spacing", rules.Spacing)
	r.Put("end-least", rules.EndLeast)
	r.Put("end-most", rules.EndLargest)
	return rules
}

// split returns the pieces of plate in order, split at the gaps in the top of the
// wall, and the length without gaps; false if it is refused.
func split(r *calc.Recorder, in calc.Case, rules steel.BoltRules) (pieces []steel.Span, length float64, ok bool) {
	end := 0.0
	for _, p := range in.Rows("pieces") {
		pieces = append(pieces, steel.Span{From: end, To: end + p.Num("length")})
		end += p.Num("length")
	}
	gaps := slices.Clone(in.Rows("gaps"))
	for _, g := range gaps {
		from, to := g.Num("start"), g.Num("start")+g.Num("width")
		if calc.Over(to, end) {
			r.Refuse(calc.Cell("gaps", g.RowNumber(), "start"), refuseGap, calc.Amount("length", end, &displays.Wall))
			return nil, 0, false
		}
		pieces = without(pieces, from, to)
	}
	if len(pieces) == 0 {
		r.Refuse(calc.At("gaps"), refuseAll)
		return nil, 0, false
	}
	for _, p := range pieces {
		if calc.Under(p.To-p.From, 3*rules.EndLeast) {
			r.Refuse(calc.At("pieces"), refuseBit, calc.Amount("piece", p.To-p.From, &displays.Wall))
			return nil, 0, false
		}
		length += p.To - p.From
	}
	return pieces, length, true
}

// without cuts the span between from and to out of the pieces. A rest under a
// thousandth of a millimeter is no piece.
func without(pieces []steel.Span, from, to float64) (rest []steel.Span) {
	const nothing = 1e-6
	for _, p := range pieces {
		left := steel.Span{From: p.From, To: math.Min(p.To, from)}
		right := steel.Span{From: math.Max(p.From, to), To: p.To}
		for _, s := range []steel.Span{left, right} {
			if s.To-s.From > nothing {
				rest = append(rest, s)
			}
		}
	}
	return rest
}
