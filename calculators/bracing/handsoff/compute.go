package handsoff

import (
	"math"
	"strconv"

	"coursebook/calculators/bracing"
	"coursebook/calculators/calc"
	"coursebook/calculators/displays"
	"coursebook/calculators/weather"
)

const (
	noteBetween = calc.Text(
		"Wall {name}: hands off at {off} comes before its last concrete. Straighten it between rounds, and write " +
			"that in the plan.",
	)
	noteEarly = calc.Text(
		"Wall {name}: only {left} are left after its last concrete. Begin to straighten it between rounds.",
	)
	noteHot     = calc.Text("Over {limit} the wall has {allowed} after its last concrete.")
	noteHotLoad = calc.Text(
		"A load over {limit} is refused. If one is in this wall, tell the engineer. Check every load in Hot weather.",
	)
	askPlant = calc.Text(
		"This rests on our estimate, for concrete without accelerator. With an accelerator, ask the plant. Ask it " +
			"for today's mix anyway.",
	)
	askWritten = calc.Text(
		"Is the plant's figure in writing, for today's mix at the warmest load? Until then our estimate counts, " +
			"{estimate}.",
	)
	noteWritten = calc.Text(
		"The plant's figure is later than our estimate of {estimate}. It counts only for today's mix at the warmest " +
			"load. Keep the paper with the brace sheet.",
	)
	askSet = calc.Text(
		"Few wall mixes set so early or so late. Ask the plant: is it initial set, from batching, of today's mix?",
	)
	noteSooner = calc.Text(
		"The plan must say these times before the first truck. Read them again when the pour runs late.",
	)
	refuseSame = calc.Text("The last concrete is not later than the batch time of the first load. Check both times.")
	refuseLong = calc.Text("From the first load to the last concrete is over {most}. Check both times.")
	refusePast = calc.Text("This time is before the first load was batched.")
)

const (
	day = 24 * 3600.0
	// longest is the longest time in s from the first load of a wall to its last
	// concrete. A longer one is a clock time typed wrong.
	longest = 12 * 3600.0
	// enough is the time in s in which a wall can be straightened after its
	// last concrete. Our own limit, the time allowed on a hot day.
	enough = 30 * 60.0
	// leastSet and mostSet bound the initial set in s that is not asked about. Our
	// own limits.
	leastSet = 1.5 * 3600
	mostSet  = 12 * 3600.0
)

// wall is a row with its results. Times are in s after midnight of the day on
// which its first load was batched.
type wall struct {
	row              calc.Case
	nr               int
	first, last, off float64
	rule, plan       string
	left             float64
}

// name returns the name of the wall, or the number of its row if it has none.
func (w wall) name() string {
	if name := w.row.Text("name"); name != "" {
		return name
	}
	return strconv.Itoa(w.nr)
}

// compute sets hands off and the time left for each wall, and the worked steps of
// the tightest. It refuses a row whose times readWall refuses.
func compute(r *calc.Recorder, in calc.Case) {
	allowed, limit, hot := allowedAfter(in)
	set := earliestSet(in)
	var walls []wall
	tight := 0
	for i, row := range in.Rows("walls") {
		w, ok := readWall(r, row, i)
		if !ok {
			return
		}
		w.decide(allowed, set)
		walls = append(walls, w)
		if w.left < walls[tight].left {
			tight = i
		}
	}
	work(r, in, walls[tight], allowed, set)
	first := math.Inf(1)
	rows := make([]calc.Case, len(walls))
	for i, w := range walls {
		first = math.Min(first, w.off)
		rows[i] = r.NewRow("lines").
			With("name", calc.TextOf(w.name())).
			With("off", calc.Num(w.off)).
			With("rule", calc.ChoiceOf(w.rule)).
			With("left", calc.Num(w.left)).
			With("plan", calc.ChoiceOf(w.plan))
		noteWall(r, w)
	}
	t := walls[tight]
	r.PutChoice("plan", t.plan)
	r.Put("left", t.left)
	r.Put("off", t.off)
	r.PutChoice("rule", t.rule)
	r.Put("tightest", float64(t.nr))
	r.Put("earliest", first)
	r.PutRows("lines", rows)
	r.Put("allowed", allowed)
	r.Put("set", set)
	if hot {
		r.Note(
			calc.LevelNotice,
			calc.At("hot-from"),
			noteHot,
			calc.Amount("limit", limit, &displays.Temperature),
			calc.Amount("allowed", allowed, &displays.MinutesAtMost),
		)
	}
	if calc.Over(in.Num("concrete"), weather.HotLoad) {
		r.Note(calc.LevelWarning, calc.At("concrete"), noteHotLoad,
			calc.Amount("limit", weather.HotLoad, &displays.Temperature))
	}
	id := "plant-set"
	ours := calc.Amount("estimate", estimate(in), &displays.HalfHoursAtMost)
	switch {
	case !in.Has(id):
		r.Note(calc.LevelAsk, calc.At(id), askPlant)
		id = "initial"
	case estimated(in):
		r.Note(calc.LevelAsk, calc.At("plant-word"), askWritten, ours)
	case later(in):
		r.Note(calc.LevelCaution, calc.At("plant-word"), noteWritten, ours)
	}
	if typed := in.Num(id); calc.Under(typed, leastSet) || calc.Over(typed, mostSet) {
		r.Note(calc.LevelAsk, calc.At(id), askSet)
	}
	r.Note(calc.LevelNotice, calc.Path{}, noteSooner)
}

// stricter returns an input, or the amount of its house rule if that is less.
func stricter(in calc.Case, id string) float64 {
	if house, ok := in.HouseAmount(id); ok {
		return math.Min(in.Num(id), house)
	}
	return in.Num(id)
}

// allowedAfter returns the time allowed after the last concrete in s and the limit of a
// hot day; hot reports whether concrete or air is over it. A house rule that is stricter
// than the input counts.
func allowedAfter(in calc.Case) (allowed, limit float64, hot bool) {
	allowed, limit = stricter(in, "wait"), stricter(in, "hot-from")
	if calc.Over(in.Num("concrete"), limit) || calc.Over(in.Num("air"), limit) {
		return math.Min(allowed, stricter(in, "hot-wait")), limit, true
	}
	return allowed, limit, false
}

// earliestSet returns the initial set in s from batching: the earlier of the plant's figure and
// our estimate, or a later figure of the plant that is in writing.
func earliestSet(in calc.Case) float64 {
	if estimated(in) {
		return estimate(in)
	}
	return in.Num("plant-set")
}

// estimate returns the earliest of the estimates of the initial set in s from batching, rounded
// down to half an hour as the calculator of setting times shows it.
func estimate(in calc.Case) float64 {
	set, _, _ := weather.EarliestSet(in.Num("initial"), in.Num("concrete"), in.Num("reference"))
	const half = 1800
	return half * math.Floor(set/half+calc.Slack)
}

// readWall reads the row with index i. Times past midnight are on the next day. It
// refuses a last load at the time of the first or too long after it, and a given
// time before the first; ok is then false.
func readWall(r *calc.Recorder, row calc.Case, i int) (w wall, ok bool) {
	nr := row.RowNumber()
	if nr == 0 { // a default row
		nr = i + 1
	}
	w = wall{row: row, nr: nr, first: row.Num("first"), last: row.Num("last")}
	overnight := w.last < w.first
	if overnight {
		w.last += day
	}
	switch {
	case w.last == w.first:
		r.Refuse(calc.Cell("walls", nr, "last"), refuseSame)
		return w, false
	case calc.Over(w.last-w.first, longest):
		r.Refuse(calc.Cell("walls", nr, "last"), refuseLong, calc.Amount("most", longest, &displays.Hours))
		return w, false
	case row.Has("given") && row.Num("given") < w.first && !overnight:
		r.Refuse(calc.Cell("walls", nr, "given"), refusePast)
		return w, false
	}
	return w, true
}

// decide sets hands off: the earliest of the clock rules, the house rule first of
// equals. The result is in whole minutes, rounded down.
func (w *wall) decide(allowed, set float64) {
	w.off, w.rule = bracing.AfterLastFormula.Value(w.last, allowed), ruleLast
	if at := bracing.AtSetFormula.Value(w.first, set); at < w.off {
		w.off, w.rule = at, ruleSet
	}
	if w.row.Has("given") {
		at := w.row.Num("given")
		if at < w.first {
			at += day
		}
		if at < w.off {
			w.off, w.rule = at, ruleGiven
		}
	}
	w.off = 60 * math.Floor(w.off/60+calc.Slack)
	w.left = bracing.LeftForStringFormula.Value(w.off, w.last)
	switch {
	case w.left <= 0:
		w.plan = planBetween
	case w.left < enough:
		w.plan = planEarly
	default:
		w.plan = planAfter
	}
}

// work records the worked steps of the tightest wall.
func work(r *calc.Recorder, in calc.Case, w wall, allowed, set float64) {
	if estimated(in) {
		initial, t, ref := in.Num("initial"), in.Num("concrete"), in.Num("reference")
		if _, governs, q := weather.EarliestSet(initial, t, ref); governs == weather.SetArrheniusFormula {
			r.Use(governs, initial, q, t, ref)
		} else {
			r.Use(governs, initial, t, ref)
		}
	}
	r.Use(bracing.AtSetFormula, w.first, set)
	r.Use(bracing.AfterLastFormula, w.last, allowed)
	r.Use(bracing.LeftForStringFormula, w.off, w.last)
}

// noteWall notes a wall that is left alone before its last concrete or soon after.
func noteWall(r *calc.Recorder, w wall) {
	at, name := calc.Cell("walls", w.nr, "last"), calc.WordSlot("name", w.name())
	switch w.plan {
	case planBetween:
		r.Note(calc.LevelWarning, at, noteBetween, name, calc.WordSlot("off", calc.FormatClock(w.off)))
	case planEarly:
		r.Note(calc.LevelCaution, at, noteEarly, name, calc.Amount("left", w.left, &displays.MinutesAtMost))
	}
}
