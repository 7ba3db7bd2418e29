package slumpcheck

import (
	"math"

	"coursebook/calculators/calc"
	"coursebook/calculators/placing"
)

// The limits in in.: what goes in the wall, what water aims at, what two testers
// of one sample may differ by, and the slump gained by a gallon in each yard by
// the fastest rule.
const (
	wallLeast = 6.0
	wallMost  = 7.0
	waterAim  = 6.5
	apart     = 0.83
	fastest   = 1.25
)

const (
	noteAgain = calc.Text(
		"{slump} is over {most}. Take another portion of the same sample now. Nothing goes to the hopper.",
	)
	noteRefuse = calc.Text("Both tests are over {most}. It does not go in, not in thin lifts either. Call the plant.")
	noteYours  = calc.Text(
		"By the order the plant may send up to {most}, so you may pay for this load. Order {limit} maximum.",
	)
	noteWater = calc.Text("It is wetter than you ordered. Water that nobody ordered makes the wall weak for good.")
	noteStiff = calc.Text(
		"It is stiffer than the order lets the plant send. It may be old: read the batch time. Call before you " +
			"adjust it.",
	)
	noteBack = calc.Text(
		"It was adjusted once and is still stiffer than the order lets the plant send. It goes back. Add nothing more.",
	)
	noteSecond = calc.Text(
		"It was adjusted once. Add nothing more and call the plant. If it came stiffer than the order lets the plant " +
			"send, it goes back.",
	)
	noteNone  = calc.Text("There is no reducer on the truck and no water that may go in. Ask the plant for reducer.")
	noteOnce  = calc.Text("Water goes in one time only, and never once the load is going out. Use reducer.")
	noteDose  = calc.Text("The plant gives the amount of reducer. Write it on the ticket, mix, and test again.")
	noteApart = calc.Text("The tests are {apart} apart. Two careful testers differ less. Take a fresh sample.")
	noteSplit = calc.Text(
		"One test is outside the order and one inside. By ASTM C94 the load is not refused. The higher one counts.",
	)
	noteOver = calc.Text(
		"One test is over {limit}: the higher one counts. Test a third portion at the chute. Over {limit} again, " +
			"the load is refused.",
	)
	noteThird = calc.Text("Two of three tests are within {limit}, and the higher of the two counts.")
	noteCode  = calc.Text("The home code asks for more than {limit} in forms that stay in place.")
	noteHose  = calc.Text("The form feels {hose} at the hose. Stop the pump. Test chute and hose again.")
	noteSet   = calc.Text(
		"At the hose it has stiffened to {hose}. That is too stiff to flow around bars and frames. Stop the pump and " +
			"call the plant. No water.",
	)
	noteLoss = calc.Text("The pump takes {loss}. Slump lost in the pump gets no water.")
	noteWet  = calc.Text(
		"By this order the plant may send up to {most}. The wall takes {limit}. Order {limit} maximum.",
	)
	noteDry = calc.Text(
		"By this order every load comes under {limit} and has to be raised here. Order 7 in. (175 mm) maximum.",
	)
)

// readTo is a length in m, finer than any slump is read. Slumps that differ by less
// are equal, so that one on a limit is still on it in other units.
const readTo = 0.001

// leastWater is the least amount of water in m³ that is measured in: the half gallon that
// the answer is written in.
var leastWater = calc.SI(0.5, "US gal")

// over reports whether a slump is more than another, both in m.
func over(s, limit float64) bool { return s > limit+readTo }

// limits holds the limits of one load in m: by the order, the greatest that the wall
// takes, and the greatest that goes in the wall as it came.
type limits struct{ least, most, wall, goes float64 }

// wallLimit returns the greatest slump in m that goes in the wall: 7 in., or the house
// rule where it is stricter.
func wallLimit(in calc.Case) float64 {
	limit := calc.SI(wallMost, "in")
	if house, ok := in.HouseAmount("ordered"); ok {
		limit = math.Min(limit, house)
	}
	return limit
}

// compute sets the verdict on a load by its slump, and the water that may go in.
// It refuses no input; the verdict may be to refuse the load.
func compute(r *calc.Recorder, in calc.Case) {
	lim := orderLimits(r, in)
	verdict, counts := decide(r, in, lim)
	if verdict == "" {
		verdict = adjust(r, in, counts)
	} else {
		r.Put("water", 0)
	}
	if in.Has("hose") {
		verdict = checkHose(r, in, verdict, counts)
	}
	r.PutChoice("verdict", verdict)
	r.Put("goes-by", counts)
}

// orderLimits sets the limits by the order, returns them, and notes an order that
// does not fit the wall. A load that was adjusted here is no longer held to the
// greatest slump of the order.
func orderLimits(r *calc.Recorder, in calc.Case) limits {
	ordered := in.Num("ordered")
	down, up := placing.SlumpTolerance(calc.From(ordered, "in")*(1-calc.Slack), in.Choice("ordered-as") == maximum)
	lim := limits{
		least: r.Use(placing.LeastByOrderFormula, ordered, calc.SI(down, "in")),
		most:  r.Use(placing.MostByOrderFormula, ordered, calc.SI(up, "in")),
		wall:  wallLimit(in),
	}
	lim.goes = lim.wall
	least, most := calc.SI(wallLeast, "in"), lim.wall
	r.Put("least", lim.least)
	r.Put("most", lim.most)
	r.Put("wall-most", most)
	switch {
	case over(lim.most, most):
		r.Note(calc.LevelNotice, calc.At("ordered"), noteWet,
			calc.Amount("most", lim.most, &slump), calc.Amount("limit", most, &slump))
	case over(least, lim.most):
		r.Note(calc.LevelNotice, calc.At("ordered"), noteDry, calc.Amount("limit", least, &slumpUp))
	}
	if in.Choice("state") == came {
		lim.goes = math.Min(lim.goes, lim.most)
	}
	return lim
}

// high reports whether a slump, in m, is over what goes in.
func (l limits) high(s float64) bool { return over(s, l.goes) }

// low reports whether a slump, in m, is outside the order and too stiff for the
// wall.
func (l limits) low(s float64) bool {
	return over(math.Min(l.least, calc.SI(wallLeast, "in")), s)
}

// decide returns the verdict of the tests at the chute, an ID of the output
// verdict, and the slump that counts, in m: the higher of two tests. The verdict is "" for a load that goes
// in or is adjusted. It records a note with the reason of any other.
func decide(r *calc.Recorder, in calc.Case, lim limits) (verdict string, counts float64) {
	a, b := in.Num("chute"), in.Num("chute")
	two := in.Has("chute-2")
	if two {
		b = in.Num("chute-2")
	}
	outside := func(s float64) bool { return lim.high(s) || lim.low(s) }
	higher := math.Max(a, b)
	switch {
	case !two && lim.high(a):
		r.Note(calc.LevelCaution, calc.At("chute"), noteAgain, calc.Amount("slump", a, &reading),
			calc.Amount("most", lim.goes, &slump))
		return again, a
	case lim.high(a) && lim.high(b):
		noteRefusal(r, lim, math.Min(a, b))
		return refuse, higher
	case lim.low(a) && lim.low(b) && in.Choice("state") == adjusted:
		r.Note(calc.LevelWarning, calc.At("chute"), noteBack)
		return refuse, higher
	case lim.low(a) && lim.low(b):
		r.Note(calc.LevelCaution, calc.At("chute"), noteStiff)
		return plant, higher
	case two && lim.high(a) != lim.high(b) && in.Has("chute-3"):
		return third(r, lim, in.Num("chute-3"), a, b)
	case over(math.Abs(a-b), calc.SI(apart, "in")):
		r.Note(calc.LevelCaution, calc.At("chute-2"), noteApart, calc.Amount("apart", math.Abs(a-b), &difference))
		return again, higher
	case over(higher, lim.wall):
		if in.Has("hose") {
			return "", higher
		}
		r.Note(calc.LevelCaution, calc.At("hose"), noteOver, calc.Amount("limit", lim.wall, &slump))
		return again, higher
	case outside(a):
		r.Note(calc.LevelNotice, calc.At("chute"), noteSplit)
	case outside(b):
		r.Note(calc.LevelNotice, calc.At("chute-2"), noteSplit)
	}
	return "", higher
}

// third returns the verdict by a third test, of slump s, where one of two, a and b, is over what
// goes in: two tests over it refuse the load, and two within it count. All are in m.
func third(r *calc.Recorder, lim limits, s, a, b float64) (verdict string, counts float64) {
	lower, higher := math.Min(a, b), math.Max(a, b)
	if lim.high(s) {
		noteRefusal(r, lim, math.Min(s, higher))
		return refuse, math.Max(s, higher)
	}
	r.Note(calc.LevelNotice, calc.At("chute-3"), noteThird, calc.Amount("limit", lim.goes, &slump))
	return "", math.Max(s, lower)
}

// noteRefusal notes the reason of a refusal; s, in m, is the lower of two tests.
func noteRefusal(r *calc.Recorder, lim limits, s float64) {
	wall := lim.wall
	r.Note(calc.LevelWarning, calc.At("chute"), noteRefuse, calc.Amount("most", lim.goes, &slump))
	switch {
	case !over(s, wall):
		r.Note(calc.LevelNotice, calc.At("ordered"), noteWater)
	case !over(s, lim.most):
		r.Note(calc.LevelNotice, calc.At("ordered"), noteYours,
			calc.Amount("most", lim.most, &slump), calc.Amount("limit", wall, &slump))
	}
}

// adjust returns the verdict of a load within the limits, of slump s in m, and
// sets the water that may go in. A load is adjusted once only.
func adjust(r *calc.Recorder, in calc.Case, s float64) string {
	least := calc.SI(wallLeast, "in")
	if !over(least, s) {
		r.Put("water", 0)
		if !over(s, least) {
			r.Note(calc.LevelNotice, calc.At("chute"), noteCode, calc.Amount("limit", least, &slumpUp))
		}
		return goesIn
	}
	may := 0.0
	if in.Choice("state") == adjusted {
		r.Put("water", may)
		r.Note(calc.LevelCaution, calc.At("state"), noteSecond)
		return plant
	}
	if in.Choice("state") == came {
		may = r.Use(placing.WaterToAimFormula, in.Num("withheld"), calc.SI(waterAim, "in"), s,
			calc.SI(fastest, "in"), in.Num("load"))
	} else if in.Num("withheld") > 0 {
		r.Note(calc.LevelCaution, calc.At("state"), noteOnce)
	}
	if calc.Under(may, leastWater) {
		may = 0
	}
	r.Put("water", may)
	switch {
	case in.Flag("reducer"):
		r.Note(calc.LevelNotice, calc.At("reducer"), noteDose)
		return reducer
	case may > 0:
		return withheld
	}
	r.Note(calc.LevelCaution, calc.At("reducer"), noteNone)
	return plant
}

// checkHose compares the slump at the hose with what goes in the wall, and sets
// the loss from that at the chute, in m. It returns the verdict given, "test
// again" where the form would feel too much, or "call the plant" where the concrete is too
// stiff at the hose.
func checkHose(r *calc.Recorder, in calc.Case, verdict string, chute float64) string {
	hose := in.Num("hose")
	loss := r.Use(placing.PumpLossFormula, chute, hose)
	r.Put("pump-loss", loss)
	if over(hose, wallLimit(in)) && verdict != refuse {
		r.Put("water", 0)
		r.Note(calc.LevelWarning, calc.At("hose"), noteHose, calc.Amount("hose", hose, &reading))
		return again
	}
	least := calc.SI(wallLeast, "in")
	if verdict != goesIn || !over(least, hose) {
		return verdict
	}
	if over(calc.SI(placing.HoseLeast, "in"), hose) {
		r.Note(calc.LevelWarning, calc.At("hose"), noteSet, calc.Amount("hose", hose, &reading))
		return plant
	}
	r.Note(calc.LevelNotice, calc.At("hose"), noteCode, calc.Amount("limit", least, &slumpUp))
	if loss > 0 {
		r.Note(calc.LevelNotice, calc.At("hose"), noteLoss, calc.Amount("loss", loss, &difference))
	}
	return verdict
}
