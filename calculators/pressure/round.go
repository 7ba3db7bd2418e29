package pressure

import "math"

// MostWait is the longest wait after a round, in minutes, that a plan may ask
// for. It is our own limit: the crew and the trucks do not hold longer.
const MostWait = 60

// Round is a wall that is placed in equal lifts, one a round, with the schedule
// of its worst place.
type Round struct {
	Lifts            // Passes and Average are set by Pressure
	Lift   Feet      // depth of one lift
	Hours  float64   // h, pumping time of one round: once around, or one way
	Wait   float64   // h, pump stopped after each round
	Back   bool      // the wall is walked there and back
	Typed  FtPerHour // measured rise; 0 if there is none
	Pumped float64   // h, one round by pump rate and plan area; at least Hours
}

// At returns the round with another wait, in minutes.
func (r *Round) At(minutes float64) *Round {
	other := *r
	other.Wait = minutes / 60
	return &other
}

// Between is the longest time in hours between passes at one place. At the ends
// of a wall walked there and back it is two rounds.
func (r *Round) Between() float64 {
	if r.Back {
		return 2 * (r.Hours + r.Wait)
	}
	return r.Hours + r.Wait
}

// Pressure is the pressure at the worst place of the wall.
func (r *Round) Pressure() LiftPressure {
	l := r.Lifts
	l.Passes = r.passes()
	l.Average = max(r.Typed, FtPerHour(float64(r.Lift)/(r.Pumped+r.Wait)))
	return l.Pressure()
}

// passes are the passes over the worst place. At the end of a wall walked there
// and back two lifts land at once every second round.
func (r *Round) passes() []Pass {
	n := int(math.Ceil(float64(r.Height/r.Lift) - 1e-9))
	passes := make([]Pass, max(n, 1))
	left := r.Height
	for i := range passes {
		k := i
		if r.Back {
			k = i / 2 * 2
		}
		passes[i] = Pass{At: float64(k) * (r.Hours + r.Wait), Depth: min(r.Lift, left)}
		left -= passes[i].Depth
	}
	return passes
}

// HighestRise is the fastest mean rise of an even schedule of the same lifts whose
// pressure passes a test, at most a limit. It is 0 if no rise passes.
func (r *Round) HighestRise(most FtPerHour, passes func(LiftPressure) bool) FtPerHour {
	even := func(rise FtPerHour) LiftPressure {
		other := *r
		other.Hours = float64(r.Lift) / float64(rise)
		other.Pumped, other.Wait, other.Typed = other.Hours, 0, 0
		return other.Pressure()
	}
	if passes(even(most)) {
		return most
	}
	low, high := FtPerHour(0), most
	for range 50 { // the pressure never falls with the rise
		if middle := (low + high) / 2; passes(even(middle)) {
			low = middle
		} else {
			high = middle
		}
	}
	return low
}

// LeastWait is the shortest wait in whole minutes, at most MostWait, with which
// the pressure passes a test. The pressure never rises with the wait, so the
// range is halved. found is false if MostWait does not pass.
func (r *Round) LeastWait(passes func(LiftPressure) bool) (minutes float64, found bool) {
	if !passes(r.At(MostWait).Pressure()) {
		return 0, false
	}
	low, high := -1, MostWait
	for high-low > 1 {
		middle := (low + high) / 2
		if passes(r.At(float64(middle)).Pressure()) {
			high = middle
		} else {
			low = middle
		}
	}
	return float64(high), true
}
