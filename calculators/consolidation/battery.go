package consolidation

import (
	"math"

	"coursebook/calculators/calc"
)

const (
	meansRun   = calc.Text("run time of a full pack")
	meansLasts = calc.Text("time a pack lasts by the clock")
	meansSlots = calc.Text("packs at work at once")
	meansWh    = calc.Text("energy of a pack, watt-hours")
)

// WattHours is the energy of a pack from its label: V·A, in watt-hours for
// volts and ampere-hours. Source: 49 CFR 171.8.
func WattHours(volts, ampHours float64) float64 { return volts * ampHours }

// WattHoursFormula declares WattHours.
var WattHoursFormula = &calc.Formula{
	ID: "watt-hours", Title: calc.Text("Energy of a pack"), Expr: "V*A",
	Result: calc.Var{Symbol: "E", Meaning: meansWh},
	Vars: []calc.Var{{Symbol: "V", Meaning: calc.Text("volts")},
		{Symbol: "A", Meaning: calc.Text("amp-hours")}},
	Fn: calc.Func2(WattHours), Go: "consolidation.WattHours", Source: "cfr",
}

// RunTime is how long a pack runs a tool at a steady draw, 60 E/P in minutes, for
// watt-hours and watts. Source: arithmetic.
func RunTime(wattHours, watts float64) float64 { return 60 * wattHours / watts }

// RunTimeFormula declares RunTime.
var RunTimeFormula = &calc.Formula{
	ID: "run-time", Title: calc.Text("Run time of a pack"), Expr: "60*E/P",
	Result: calc.Var{Symbol: "t_r", Meaning: meansRun, Unit: "min"},
	Vars: []calc.Var{{Symbol: "E", Meaning: meansWh},
		{Symbol: "P", Meaning: calc.Text("draw of the tool"), Unit: "W"}},
	Fn: calc.Func2(RunTime), Go: "consolidation.RunTime", Source: "practice",
	Limits: calc.Text("Packs give less than their label at a high draw. A watch on the job is better."),
}

// Lasts is the time between changes of a pack, t(1 − c)/d, in the unit of the run
// time: the tool runs for d percent of the time and cold costs c percent of the
// charge. Source: arithmetic.
func Lasts(run, cold, duty float64) float64 { return run * (1 - cold/100) / (duty / 100) }

// LastsFormula declares Lasts.
var LastsFormula = &calc.Formula{
	ID: "lasts", Title: calc.Text("Time by the clock"), Expr: "t_r*(1 - c/100)/(d/100)",
	Result: calc.Var{Symbol: "t", Meaning: meansLasts, Unit: "min"},
	Vars: []calc.Var{{Symbol: "t_r", Meaning: meansRun, Unit: "min"},
		{Symbol: "c", Meaning: calc.Text("lost to cold or age"), Unit: "%"},
		{Symbol: "d", Meaning: calc.Text("share of the time it runs"), Unit: "%"}},
	Fn: calc.Func3(Lasts), Go: "consolidation.Lasts", Source: "practice",
}

// Uncharged is the number of packs for a pour without a charger: each of S
// slots takes ⌈H/t⌉ packs in turn. Any unit of time.
// Source: arithmetic.
func Uncharged(slots, pour, lasts float64) float64 { return float64(slots * calc.Ceil(pour/lasts)) }

// UnchargedFormula declares Uncharged.
var UnchargedFormula = &calc.Formula{
	ID: "without", Title: calc.Text("Packs without charging"), Expr: "S*ceil(H/t)",
	Result: calc.Var{Symbol: "N_0", Meaning: calc.Text("packs without charging")},
	Vars: []calc.Var{{Symbol: "S", Meaning: meansSlots},
		{Symbol: "H", Meaning: calc.Text("length of the pour"), Unit: "min"},
		{Symbol: "t", Meaning: meansLasts, Unit: "min"}},
	Fn: calc.Func3(Uncharged), Go: "consolidation.Uncharged", Source: "practice",
}

// Chargers is the number of chargers that keep up with S slots, ⌈S t_c/t⌉, and no more
// than one for each pack that is changed, N₀ − S. Any unit of time. Source: arithmetic.
func Chargers(slots, charge, lasts, without float64) float64 {
	return math.Min(calc.Ceil(slots*charge/lasts), without-slots)
}

// ChargersFormula declares Chargers.
var ChargersFormula = &calc.Formula{
	ID: "chargers", Title: calc.Text("Chargers that keep up"), Expr: "min(ceil(S*t_c/t), N_0 - S)",
	Result: calc.Var{Symbol: "k", Meaning: calc.Text("chargers that keep up")},
	Vars: []calc.Var{{Symbol: "S", Meaning: meansSlots},
		{Symbol: "t_c", Meaning: calc.Text("time to charge a pack"), Unit: "min"},
		{Symbol: "t", Meaning: meansLasts, Unit: "min"},
		{Symbol: "N_0", Meaning: calc.Text("packs without charging")}},
	Fn: calc.Func4(Chargers), Go: "consolidation.Chargers", Source: "practice",
}

// Bound is the number of packs that must be on site for the k-th change,
// S(k + 1) − C: those inserted by then less the C charged by then.
// Source: arithmetic.
func Bound(slots, change, charged float64) float64 { return float64(slots*(change+1)) - charged }

// BoundFormula declares Bound.
var BoundFormula = &calc.Formula{
	ID: "with", Title: calc.Text("Packs for the change that asks for most"), Expr: "S*(k + 1) - C",
	Result: calc.Var{Symbol: "N", Meaning: calc.Text("packs with charging")},
	Vars: []calc.Var{{Symbol: "S", Meaning: meansSlots},
		{Symbol: "k", Meaning: calc.Text("number of the change")},
		{Symbol: "C", Meaning: calc.Text("packs charged by then")}},
	Fn: calc.Func3(Bound), Go: "consolidation.Bound", Source: "practice",
	Limits: calc.Text(
		"Found by going through all changes of the pour. All tools change together; each pack goes on the first free " +
			"charger.",
	),
}

// Charging returns the change, from 1, that needs the most packs, and how many
// packs are charged by then; both are 0 if the packs in the slots suffice. All
// slots change at the same times, which is the worst case; an empty pack goes on
// the first free charger. lasts and charge, the times that a pack runs and
// charges, are in one unit; changes is the number of changes in the pour.
func Charging(slots, changes, chargers int, lasts, charge float64) (change, charged int) {
	var done []float64 // when each pack is charged, in order
	free := make([]float64, chargers)
	worst := slots
	for k := 1; k <= changes; k++ {
		now := float64(k) * lasts
		ready := 0
		for ready < len(done) && !calc.Over(done[ready], now) {
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

// first returns the index of the charger that is free first, from the times at
// which they are free.
func first(free []float64) int {
	best := 0
	for i, t := range free {
		if t < free[best] {
			best = i
		}
	}
	return best
}
