package consolidation

import "coursebook/calculators/calc"

// WattHours is the energy of a pack from its label: V·A, in watt-hours for
// volts and ampere-hours. Source: 49 CFR 171.8.
func WattHours(volts, ampHours float64) float64 { return volts * ampHours }

// RunTime is how long a pack runs a tool at a steady draw, in minutes:
// 60 E/P, for watt-hours and watts. Source: arithmetic.
func RunTime(wattHours, watts float64) float64 { return 60 * wattHours / watts }

// Lasts is how long a pack lasts by the clock, in the unit of the run time,
// where the tool runs only a share of it and cold takes some of the charge:
// t(1 − c)/d. Shares are in percent. Source: arithmetic.
func Lasts(run, cold, duty float64) float64 { return run * (1 - cold/100) / (duty / 100) }

// Uncharged is the number of packs for a pour without a charger: each of S
// slots takes ⌈H/t⌉ packs, one after the other. Any unit of time.
// Source: arithmetic.
func Uncharged(slots, pour, lasts float64) float64 { return float64(slots * countUp(pour/lasts)) }

// Chargers is how many chargers keep up with S slots: ⌈S t_c/t⌉. Any unit of
// time. Source: arithmetic.
func Chargers(slots, charge, lasts float64) float64 { return countUp(slots * charge / lasts) }

// Bound is the number of packs that must be on site for the k-th change: the
// S(k + 1) taken by then, less the C that came off the chargers.
// Source: arithmetic.
func Bound(slots, change, charged float64) float64 { return float64(slots*(change+1)) - charged }

// Charging finds the change that asks for most packs. All slots change at the
// same times, which is the hardest case; a pack goes on the first free of the
// chargers as soon as it is out. Times are in one unit; changes is the number
// of changes in the pour.
func Charging(slots, changes, chargers int, lasts, charge float64) (change, charged int) {
	var done []float64 // when each pack is charged, in order
	free := make([]float64, chargers)
	worst := slots
	for k := 1; k <= changes; k++ {
		now := float64(k) * lasts
		ready := 0
		for ready < len(done) && done[ready] <= now*(1+calc.Slack) {
			ready++
		}
		if need := slots*(k+1) - ready; need > worst {
			worst, change, charged = need, k, ready
		}
		if chargers == 0 {
			continue
		}
		for range slots {
			next := first(free)
			free[next] = max(free[next], now) + charge
			done = append(done, free[next])
		}
	}
	return change, charged
}

// first is the charger that is free soonest.
func first(free []float64) int {
	best := 0
	for i, t := range free {
		if t < free[best] {
			best = i
		}
	}
	return best
}
