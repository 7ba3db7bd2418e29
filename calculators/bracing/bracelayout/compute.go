package bracelayout

import (
	"cmp"
	"math"
	"slices"

	"coursebook/calculators/bracing"
	"coursebook/calculators/calc"
	"coursebook/calculators/displays"
)

const (
	openBeyond  = calc.Text("This opening ends past the wall, which is {length} long.")
	stackBeyond = calc.Text("This line is past the wall, which is {length} long.")
	stackInOpen = calc.Text(
		"This line is inside an opening. No brace is set for it: brace above and below as the form maker says.",
	)
	oneForTwo = calc.Text(
		"Two rules ask for braces {gap} apart near {at}. One is set. Is that right with the form maker?",
	)
	cornerFar = calc.Text(
		"The first brace is {corner} from the corner, more than the largest spacing. Is that right with the form " +
			"maker?",
	)
	noPier = calc.Text(
		"There is no room for a brace beside the opening, near {at}. Ask the form maker how to hold it.",
	)
	openWide = calc.Text(
		"{gap} across this opening is more than the largest spacing. Brace the buck and the wall above it.",
	)
	plankSpan  = calc.Text("The largest gap is more than a plank may span, {span}. Add a brace or use rated planks.")
	plankShort = calc.Text("With this lap, a plank does not reach over the largest gap. Use longer planks.")
)

// placedBrace is one brace on its way to its row.
type placedBrace struct {
	at   float64 // m from the start
	kind string
}

// hole is one opening, from its near to its far side in m.
type hole struct {
	from, to float64
	row      calc.Case
}

func compute(r *calc.Recorder, in calc.Case) {
	length := in.Num("length")
	holes, ok := readHoles(r, in, length)
	if !ok {
		return
	}
	fixed, ok := fixedBraces(r, in, holes, length)
	if !ok {
		return
	}
	spots := fillBraces(r, in, merge(r, in, fixed, holes), holes)
	largest := math.Max(putBraces(r, spots), endGap(spots, length))
	r.Put("count", float64(len(spots)))
	r.Put("largest", largest)
	if in.Flag("platform") {
		putPlatform(r, in, length, largest)
	}
}

func readHoles(r *calc.Recorder, in calc.Case, length float64) ([]hole, bool) {
	var holes []hole
	for _, row := range in.Rows("openings") {
		h := hole{row.Num("start"), row.Num("start") + row.Num("width"), row}
		if bracing.Exceeds(h.to, length) {
			r.Refuse(
				calc.Cell("openings", row.RowNumber(), "width"),
				openBeyond,
				calc.Amount("length", length, &displays.Wall),
			)
			return nil, false
		}
		holes = append(holes, h)
	}
	return holes, true
}

// endGap is the longer of the two ends without a brace, from the corner to the
// nearest brace.
func endGap(spots []placedBrace, length float64) float64 {
	if len(spots) == 0 {
		return length
	}
	return math.Max(spots[0].at, length-spots[len(spots)-1].at)
}

// inside reports whether a place is within an opening, its edges left out.
func inside(holes []hole, at float64) bool {
	for _, h := range holes {
		if at > h.from+calc.Slack && at < h.to-calc.Slack {
			return true
		}
	}
	return false
}

// fixedBraces are the braces that a rule puts at a place.
func fixedBraces(r *calc.Recorder, in calc.Case, holes []hole, length float64) ([]placedBrace, bool) {
	var spots []placedBrace
	corner := math.Min(in.Num("corner"), length/2)
	if bracing.Exceeds(in.Num("corner"), in.Num("spacing")) {
		r.Note(calc.LevelAsk, calc.At("corner"), cornerFar, calc.Amount("corner", corner, &displays.Wall))
	}
	for _, at := range []float64{corner, length - corner} {
		if !inside(holes, at) {
			spots = append(spots, placedBrace{at, "corner"})
		}
	}
	side := in.Num("side")
	for _, h := range holes {
		for _, at := range []float64{h.from - side, h.to + side} {
			if at < -calc.Slack || bracing.Exceeds(at, length) || inside(holes, at) {
				r.Note(calc.LevelAsk, calc.Cell("openings", h.row.RowNumber(), "start"), noPier,
					calc.Amount("at", math.Min(math.Max(at, 0), length), &displays.Wall))
				continue
			}
			if moved := offCorner(h, at, length); !inside(holes, moved) {
				at = moved
			}
			spots = append(spots, placedBrace{math.Max(at, 0), "opening"})
		}
	}
	for _, row := range in.Rows("stacks") {
		at := row.Num("at")
		switch cell := calc.Cell("stacks", row.RowNumber(), "at"); {
		case bracing.Exceeds(at, length):
			r.Refuse(cell, stackBeyond, calc.Amount("length", length, &displays.Wall))
			return nil, false
		case inside(holes, at):
			r.Note(calc.LevelAsk, cell, stackInOpen)
		default:
			spots = append(spots, placedBrace{at, "stack"})
		}
	}
	return spots, true
}

// nearCorner is how close to a corner a brace can be set, in m: 1 ft. Our own
// limit.
const nearCorner = 0.3048

// offCorner moves a brace beside an opening off the corner, where the other wall
// is, but not into the opening.
func offCorner(h hole, at, length float64) float64 {
	if at > h.to {
		return math.Max(h.to, math.Min(at, length-nearCorner))
	}
	return math.Min(h.from, math.Max(at, nearCorner))
}

// rankOf says which of two braces too close to each other stays: a stack line
// hinges where it is, an opening is held at its side, a corner has some play.
func rankOf(kind string) int {
	return slices.Index([]string{"corner", "opening", "stack"}, kind)
}

// merge sorts the fixed braces and keeps one of two that stand closer than
// the hand can set them, never of two with an opening between. It asks about
// those that do not coincide.
func merge(r *calc.Recorder, in calc.Case, spots []placedBrace, holes []hole) []placedBrace {
	slices.SortStableFunc(spots, func(a, b placedBrace) int { return cmp.Compare(a.at, b.at) })
	var kept []placedBrace
	for _, s := range spots {
		if len(kept) == 0 {
			kept = append(kept, s)
			continue
		}
		last := &kept[len(kept)-1]
		gap := s.at - last.at
		_, over := across(holes, last.at, s.at)
		if over || gap > bracing.SamePlace && gap >= in.Num("closest")-calc.Slack {
			kept = append(kept, s)
			continue
		}
		if gap > bracing.SamePlace {
			r.Note(calc.LevelAsk, calc.At("closest"), oneForTwo,
				calc.Amount("gap", gap, &displays.Part), calc.Amount("at", last.at, &displays.Wall))
		}
		if rankOf(s.kind) > rankOf(last.kind) {
			*last = s
		}
	}
	return kept
}

// fillBraces spreads braces evenly where two fixed ones stand farther apart
// than the largest spacing. Across an opening there is no wall to brace. The
// widest filled gap is worked out step by step.
func fillBraces(r *calc.Recorder, in calc.Case, fixed []placedBrace, holes []hole) []placedBrace {
	spacing := in.Num("spacing")
	widest := 0.0
	var spots []placedBrace
	for i, s := range fixed {
		if i > 0 {
			from, gap := fixed[i-1].at, s.at-fixed[i-1].at
			if h, over := across(holes, from, s.at); over {
				if bracing.Exceeds(gap, spacing) {
					r.Note(
						calc.LevelCaution,
						calc.Cell("openings", h.row.RowNumber(), "width"),
						openWide,
						calc.Amount("gap", gap, &displays.Wall),
					)
				}
			} else {
				widest = math.Max(widest, gap)
				n := bracing.FillBracesFormula.Value(gap, spacing)
				for k := 1.0; k <= n; k++ {
					spots = append(spots, placedBrace{from + float64(k*bracing.EvenGapFormula.Value(gap, n)),
						"between"})
				}
			}
		}
		spots = append(spots, s)
	}
	if widest > 0 {
		r.Use(bracing.EvenGapFormula, widest, r.Use(bracing.FillBracesFormula, widest, spacing))
	}
	return spots
}

// across finds an opening between two places.
func across(holes []hole, from, to float64) (hole, bool) {
	for _, h := range holes {
		if h.from >= from-calc.Slack && h.to <= to+calc.Slack {
			return h, true
		}
	}
	return hole{}, false
}

// putBraces writes the rows and returns the largest gap.
func putBraces(r *calc.Recorder, spots []placedBrace) (largest float64) {
	rows := make([]calc.Case, len(spots))
	for i, s := range spots {
		rows[i] = r.NewRow("braces").
			With("nr", calc.Num(float64(i+1))).
			With("at", calc.Num(s.at)).
			With("for", calc.ChoiceOf(s.kind))
		if i > 0 {
			gap := s.at - spots[i-1].at
			rows[i] = rows[i].With("gap", calc.Num(gap))
			largest = math.Max(largest, gap)
		}
	}
	r.PutRows("braces", rows)
	return largest
}

func putPlatform(r *calc.Recorder, in calc.Case, length, largest float64) {
	plank, lap := in.Num("plank"), in.Num("lap")
	r.Put("planks", r.Use(bracing.PlankCountFormula, in.Num("abreast"), length, plank, lap))
	r.Put("platform-length", length)
	r.Put("rail", r.Use(bracing.RailLengthFormula, length, in.Num("width")))
	if bracing.Exceeds(largest, in.Num("span")) {
		r.Note(calc.LevelWarning, calc.At("span"), plankSpan, calc.Amount("span", in.Num("span"), &displays.Wall))
	}
	if bracing.Exceeds(largest+lap, plank) {
		r.Note(calc.LevelCaution, calc.At("plank"), plankShort)
	}
}
