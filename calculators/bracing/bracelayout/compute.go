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
	refuseOpening = calc.Text("This opening ends past the wall, which is {length} long.")
	refuseStack   = calc.Text("This line is past the wall, which is {length} long.")
	askStack      = calc.Text(
		"This line is inside an opening. No brace is set for it: brace above and below as the form maker says.",
	)
	askTwo = calc.Text(
		"Two rules ask for braces {gap} apart near {at}. One is set. Is that right with the form maker?",
	)
	askCorner = calc.Text(
		"The first brace is {corner} from the corner, more than the largest spacing. Is that right with the form " +
			"maker?",
	)
	askPier = calc.Text(
		"There is no room for a brace beside the opening, near {at}. Ask the form maker how to hold it.",
	)
	noteHeld = calc.Text(
		"This is wider than the house rule of {rule}, and {rule} was used. Wider only if the brace plan says so.",
	)
	noteWide = calc.Text(
		"{gap} across this opening is more than the largest spacing. Brace the buck and the wall above it.",
	)
	notePlankSpan = calc.Text(
		"The largest gap is more than a plank may span, {span}. Add a brace or use rated planks.",
	)
	notePlankShort = calc.Text("With this lap, a plank does not reach over the largest gap. Use longer planks.")
)

// placedBrace is the position of one brace and the rule that places it.
type placedBrace struct {
	at   float64 // m from the start
	kind string
}

// opening is an opening, from its near to its far side in m.
type opening struct {
	from, to float64
	row      calc.Case
}

// compute lays out the braces and the platform along the wall. It refuses an
// opening or a stack line that is beyond the wall.
func compute(r *calc.Recorder, in calc.Case) {
	length := in.Num("length")
	for _, id := range []string{"spacing", "corner"} {
		if house, ok := in.HouseAmount(id); ok && in.LooserThanHouse(id) && !in.Flag("on-plan") {
			r.Note(calc.LevelWarning, calc.At(id), noteHeld, calc.Amount("rule", house, &displays.Wall))
		}
	}
	openings, ok := readOpenings(r, in, length)
	if !ok {
		return
	}
	fixed, ok := fixedBraces(r, in, openings, length)
	if !ok {
		return
	}
	braces := fillBraces(r, in, merge(r, in, fixed, openings), openings)
	largest := math.Max(putBraces(r, braces), endGap(braces, length))
	r.Put("count", float64(len(braces)))
	r.Put("largest", largest)
	if in.Flag("platform") {
		putPlatform(r, in, length, largest)
	}
}

// held returns the amount of an input, or that of its house rule where the input is looser
// and the brace plan does not say so.
func held(in calc.Case, id string) float64 {
	if house, ok := in.HouseAmount(id); ok && in.LooserThanHouse(id) && !in.Flag("on-plan") {
		return house
	}
	return in.Num(id)
}

// readOpenings returns the openings of a wall of this length, in m. It refuses one
// that ends beyond the wall, and returns nil and false.
func readOpenings(r *calc.Recorder, in calc.Case, length float64) ([]opening, bool) {
	var openings []opening
	for _, row := range in.Rows("openings") {
		h := opening{row.Num("start"), row.Num("start") + row.Num("width"), row}
		if bracing.Exceeds(h.to, length) {
			r.Refuse(
				calc.Cell("openings", row.RowNumber(), "width"),
				refuseOpening,
				calc.Amount("length", length, &displays.Wall),
			)
			return nil, false
		}
		openings = append(openings, h)
	}
	return openings, true
}

// endGap returns the longer of the two ends without a brace, from the corner to
// the nearest brace, in m.
func endGap(braces []placedBrace, length float64) float64 {
	if len(braces) == 0 {
		return length
	}
	return math.Max(braces[0].at, length-braces[len(braces)-1].at)
}

// inside reports whether a position, in m from the start, is within an opening,
// edges excluded.
func inside(openings []opening, at float64) bool {
	for _, h := range openings {
		if at > h.from+calc.Slack && at < h.to-calc.Slack {
			return true
		}
	}
	return false
}

// fixedBraces returns the braces that a rule places. It asks about a side of an
// opening without room for one, and leaves it out. It refuses a stack line beyond
// the wall, and returns nil and false.
func fixedBraces(r *calc.Recorder, in calc.Case, openings []opening, length float64) ([]placedBrace, bool) {
	var braces []placedBrace
	corner := math.Min(held(in, "corner"), length/2)
	if bracing.Exceeds(held(in, "corner"), held(in, "spacing")) {
		r.Note(calc.LevelAsk, calc.At("corner"), askCorner, calc.Amount("corner", corner, &displays.Wall))
	}
	for _, at := range []float64{corner, length - corner} {
		if !inside(openings, at) {
			braces = append(braces, placedBrace{at, "corner"})
		}
	}
	side := in.Num("side")
	for _, h := range openings {
		for _, at := range []float64{h.from - side, h.to + side} {
			if at < -calc.Slack || bracing.Exceeds(at, length) || inside(openings, at) {
				r.Note(calc.LevelAsk, calc.Cell("openings", h.row.RowNumber(), "start"), askPier,
					calc.Amount("at", math.Min(math.Max(at, 0), length), &displays.Wall))
				continue
			}
			if moved := offCorner(h, at, length); !inside(openings, moved) {
				at = moved
			}
			braces = append(braces, placedBrace{math.Max(at, 0), "opening"})
		}
	}
	for _, row := range in.Rows("stacks") {
		at := row.Num("at")
		switch cell := calc.Cell("stacks", row.RowNumber(), "at"); {
		case bracing.Exceeds(at, length):
			r.Refuse(cell, refuseStack, calc.Amount("length", length, &displays.Wall))
			return nil, false
		case inside(openings, at):
			r.Note(calc.LevelAsk, cell, askStack)
		default:
			braces = append(braces, placedBrace{at, "stack"})
		}
	}
	return braces, true
}

// nearCorner is the least distance of a brace from a corner in m: 1 ft, chosen
// here.
const nearCorner = 0.3048

// offCorner returns the position at, in m, of a brace beside the opening h, moved
// off the corner, where the other wall is, but not into the opening.
func offCorner(h opening, at, length float64) float64 {
	if at > h.to {
		return math.Max(h.to, math.Min(at, length-nearCorner))
	}
	return math.Min(h.from, math.Max(at, nearCorner))
}

// rankOf returns the priority of a rule (0 corner, 1 opening, 2 stack); of two
// braces too close to each other the one with the higher priority stays. The form
// hinges at a stack line; a corner leaves most choice. Any other kind gives −1.
func rankOf(kind string) int {
	return slices.Index([]string{"corner", "opening", "stack"}, kind)
}

// merge returns the fixed braces, sorted, without one of two that are closer than
// the least spacing, unless an opening is between them. It asks about two that do
// not coincide.
func merge(r *calc.Recorder, in calc.Case, braces []placedBrace, openings []opening) []placedBrace {
	slices.SortStableFunc(braces, func(a, b placedBrace) int { return cmp.Compare(a.at, b.at) })
	var merged []placedBrace
	for _, s := range braces {
		if len(merged) == 0 {
			merged = append(merged, s)
			continue
		}
		last := &merged[len(merged)-1]
		gap := s.at - last.at
		_, over := across(openings, last.at, s.at)
		if over || gap > bracing.SamePlace && gap >= in.Num("closest")-calc.Slack {
			merged = append(merged, s)
			continue
		}
		if gap > bracing.SamePlace {
			r.Note(calc.LevelAsk, calc.At("closest"), askTwo,
				calc.Amount("gap", gap, &displays.Part), calc.Amount("at", last.at, &displays.Wall))
		}
		if rankOf(s.kind) > rankOf(last.kind) {
			*last = s
		}
	}
	return merged
}

// fillBraces returns the fixed braces with others spread evenly between those
// farther apart than the largest spacing, but not across an opening, of which it
// notes one that is too wide. It records the worked steps of the widest gap.
func fillBraces(r *calc.Recorder, in calc.Case, fixed []placedBrace, openings []opening) []placedBrace {
	spacing := held(in, "spacing")
	widest := 0.0
	var braces []placedBrace
	for i, s := range fixed {
		if i > 0 {
			from, gap := fixed[i-1].at, s.at-fixed[i-1].at
			if h, over := across(openings, from, s.at); over {
				if bracing.Exceeds(gap, spacing) {
					r.Note(
						calc.LevelCaution,
						calc.Cell("openings", h.row.RowNumber(), "width"),
						noteWide,
						calc.Amount("gap", gap, &displays.Wall),
					)
				}
			} else {
				widest = math.Max(widest, gap)
				n := bracing.FillBracesFormula.Value(gap, spacing)
				for k := 1.0; k <= n; k++ {
					braces = append(braces, placedBrace{from + float64(k*bracing.EvenGapFormula.Value(gap, n)),
						"between"})
				}
			}
		}
		braces = append(braces, s)
	}
	if widest > 0 {
		r.Use(bracing.EvenGapFormula, widest, r.Use(bracing.FillBracesFormula, widest, spacing))
	}
	return braces
}

// across returns an opening that is between two positions in m, and false if there
// is none.
func across(openings []opening, from, to float64) (opening, bool) {
	for _, h := range openings {
		if h.from >= from-calc.Slack && h.to <= to+calc.Slack {
			return h, true
		}
	}
	return opening{}, false
}

// putBraces sets the output of the braces and returns the largest gap between two,
// in m; 0 for fewer than two.
func putBraces(r *calc.Recorder, braces []placedBrace) (largest float64) {
	rows := make([]calc.Case, len(braces))
	for i, s := range braces {
		rows[i] = r.NewRow("braces").
			With("nr", calc.Num(float64(i+1))).
			With("at", calc.Num(s.at)).
			With("for", calc.ChoiceOf(s.kind))
		if i > 0 {
			gap := s.at - braces[i-1].at
			rows[i] = rows[i].With("gap", calc.Num(gap))
			largest = math.Max(largest, gap)
		}
	}
	r.PutRows("braces", rows)
	return largest
}

// putPlatform sets the outputs of a platform along a wall of this length, and
// notes planks that do not span the largest gap between braces. Both are in m.
func putPlatform(r *calc.Recorder, in calc.Case, length, largest float64) {
	plank, lap := in.Num("plank"), in.Num("lap")
	r.Put("planks", r.Use(bracing.PlankCountFormula, in.Num("abreast"), length, plank, lap))
	r.Put("platform-length", length)
	r.Put("rail", r.Use(bracing.RailLengthFormula, length, in.Num("width")))
	if bracing.Exceeds(largest, in.Num("span")) {
		r.Note(calc.LevelWarning, calc.At("span"), notePlankSpan, calc.Amount("span", in.Num("span"), &displays.Wall))
	}
	if bracing.Exceeds(largest+lap, plank) {
		r.Note(calc.LevelCaution, calc.At("plank"), notePlankShort)
	}
}
