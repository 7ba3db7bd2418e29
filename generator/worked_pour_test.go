package main

import (
	"fmt"
	"math"
	"testing"

	"coursebook/calculators/bracing/handsoff"
	"coursebook/calculators/calc"
	"coursebook/calculators/calctest"
	"coursebook/calculators/consolidation/vibrator"
	"coursebook/calculators/geometry/wallvolume"
	"coursebook/calculators/placing/lasttruck"
	"coursebook/calculators/placing/pourtime"
	"coursebook/calculators/placing/rateofrise"
	"coursebook/calculators/placing/truckspacing"
	"coursebook/calculators/pressure/formpressure"
)

// pourInputs are the invented figures of a worked pour.
type pourInputs struct {
	concrete, air string
	window        string  // joint window of the mix, as the plant gives it
	late          float64 // delay of the third truck, s
}

// The two days of the page pour-clock. Both have the job, the crew and the pump of jobInputs.
var (
	goodDay = pourInputs{concrete: "70 °F", air: "72 °F", window: "150 min"}
	badDay  = pourInputs{concrete: "85 °F", air: "88 °F", window: "120 min", late: 45 * minute}
)

const minute = 60.0

// The job: a loop of eight corners and one curve, placed in rounds. Three heads of nine hands do not keep
// up with this pump in rounds, so a fourth vibrator hand comes.
const (
	jobRun      = "140 ft"
	jobHeight   = "9 ft"
	jobLoad     = "7 yd3"
	crewHands   = 10
	headsHired  = 4
	pumpRate    = "14 yd3/h"
	pumpMoving  = "75 %"
	crewStart   = "6:00"
	crewSetUp   = "120 min"
	crewCleanUp = "120 min"
	plantDrive  = "10 min"
	plantLead   = "50 min" // from a call to the hopper
	jobSet      = "5 h"    // final set at 70 °F, as the plant gives it
	liftDepth   = 2        // ft
	roundDepth  = 1        // ft; each lift goes in as rounds of this depth
	wallHeight  = 9        // ft
	loadVolume  = 7        // yd³
	rateWithAll = 14 * 0.75
)

// Minutes of the morning from the crew's start, as the pages of the stage plan them.
const (
	pumpComes  = 15 * minute
	wallWalked = 50 * minute
	talkBegins = 60 * minute
	talkTime   = 10 * minute
	firstTest  = -20 * minute // from the first concrete
)

// Minutes beside the passes of the pump.
const (
	primeTime  = 15 * minute                   // the first truck is at the hopper while the line is primed
	footRead   = 5 * minute                    // from the end of lift 1 to "second lift"
	topUpTime  = 15 * minute                   // from the last concrete to "wash out": settled and topped up
	bayTime    = 2 * minute                    // two people strike off a bay
	bayLength  = 4                             // ft
	jobFeet    = 140                           // jobRun as a number
	topsTime   = jobFeet / bayLength * bayTime // from the last concrete to the last "wall full"
	leastSpare = 15 * minute                   // to the joint window, in the rounds of the plan
	gateToHose = 20 * minute                   // of a truck, as late-truck has it
)

// workedPour is a pour worked out by the calculators. Times are in s after midnight, unless
// named otherwise.
type workedPour struct {
	day pourInputs

	net, order float64 // yd³
	loads      float64

	start, first, last, done   float64
	joint                      float64 // when the pour ends at a planned joint; 0: the wall is full
	spacing, ageFirst, ageLast float64 // of the trucks, s
	thirdTruck                 float64 // when it is due

	heads, withSpare float64

	wait             float64 // after each lift, for the house rule on the rise, s
	rise             float64 // mean with the wait and no other pauses, m/s
	lift             float64 // time of the rounds of a lift with their pauses and the wait, s
	lifts            int     // for the height
	placed           int     // lifts that the day places
	returnAge        float64 // of the concrete when the hose is back, a round later, s
	window           float64 // joint window that counts, s
	verdict          string
	pressure, backBy float64 // Pa; s from pass to pass, the earlier of both calculators
	unknownMix       float64 // Pa, the pressure where the ticket does not name the mix
	set, allowed     float64 // s
	sides            []calc.Case
	callBy           float64
	callOrder        float64 // yd³
}

// workPour works out a day of the invented job.
func workPour(t *testing.T, day pourInputs) workedPour {
	t.Helper()
	w := workedPour{day: day}
	volume := []string{"runs=" + jobRun + " | " + jobHeight, "openings=36 in | 48 in | 3", "block-outs=",
		"measured=centre", "waste=10 %", "core=8 in"}
	w.net = numberOf(t, wallvolume.Calculator, "net-yd", "yd³", volume...)
	w.order = numberOf(t, wallvolume.Calculator, "order-yd", "yd³", volume...)

	clock := calctest.Run(t, pourtime.Calculator, "volume="+yards(w.net), "rate="+pumpRate, "moving="+pumpMoving,
		"start="+crewStart, "set-up="+crewSetUp, "clean-up="+crewCleanUp, fmt.Sprintf("crew=%d", crewHands), "before=")
	at := func(event string) float64 {
		for _, row := range clock.Out.Rows("clock") {
			if row.Choice("event") == event {
				return row.Num("time")
			}
		}
		t.Fatalf("pour-time has no event %s", event)
		return 0
	}
	w.start, w.first = at("start"), at("first")
	w.last, w.done = at("last"), at("finish")

	pace := []string{jobLength, "thickness=8 in", "height=" + jobHeight, "lift=2 ft", "pump-rate=" + pumpRate,
		"temperature=" + day.concrete}
	w.wait = numberOf(t, formpressure.Calculator, "wait-rise", "", pace...)
	wait := fmt.Sprintf("wait=%v min", w.wait/minute)
	passes := []string{jobLength, "core=8 in", "height=" + jobHeight, "lift=2 ft", "rate=" + pumpRate,
		"moving=" + pumpMoving, wait}
	w.lift = numberOf(t, rateofrise.Calculator, "loop-time", "", passes...)

	// The first load, the oldest with the priming, is in the wall before the first wait. Of the
	// others each has one wait at most, which is less than the priming.
	order := []string{"order=" + yards(w.order), "truck=" + jobLoad, "haul=" + plantDrive}
	trucks := append(order[:3:3], fmt.Sprintf("rate=%v yd3/h", rateWithAll))
	spaced := append(order[:3:3], fmt.Sprintf("rate=%v yd3/h", rateWithAll*w.pumped()/w.lift))
	w.loads = numberOf(t, truckspacing.Calculator, "loads", "", trucks...)
	w.spacing = numberOf(t, truckspacing.Calculator, "spacing", "", spaced...)
	w.ageFirst = numberOf(t, truckspacing.Calculator, "age-first", "", trucks...)
	w.ageLast = numberOf(t, truckspacing.Calculator, "age-last", "", trucks...)
	_, w.thirdTruck, _ = w.truck(3)

	heads := []string{jobLength, "core=8 in", "concrete=air", "pump=" + pumpRate,
		fmt.Sprintf("lift=%d ft", roundDepth)}
	w.heads = numberOf(t, vibrator.Calculator, "vibrators", "", heads...)
	w.withSpare = numberOf(t, vibrator.Calculator, "with-spare", "", heads...)

	w.lifts = int(numberOf(t, rateofrise.Calculator, "lifts", "", passes...))
	rise := calctest.Run(t, rateofrise.Calculator, jobLength, "core=8 in", "height="+jobHeight,
		fmt.Sprintf("lift=%d ft", roundDepth), "rate="+pumpRate, "moving="+pumpMoving, wait, "window="+day.window,
		fmt.Sprintf("age=%v min", (w.ageLast+primeTime+w.baseRead()+w.day.late)/minute))
	w.returnAge = rise.Out.Num("return-age")
	w.verdict = rise.Out.Choice("verdict")
	w.window = w.returnAge + rise.Out.Num("spare")

	stops := w.wait*float64(w.lifts-1) + w.baseRead()
	w.last, w.done = w.last+stops, w.done+stops

	pace = append(pace, wait)
	form := calctest.Run(t, formpressure.Calculator, append(pace, "cement=plain", "admixture=retards",
		"set="+jobSet, fmt.Sprintf("age=%v min", (w.ageLast+primeTime)/minute))...)
	w.rise = form.Out.Num("rise-local")
	w.pressure = form.Out.Num("pressure-local")
	w.backBy = math.Min(form.Out.Num("back-by"), w.window-w.ageLast-primeTime)

	w.unknownMix = numberOf(t, formpressure.Calculator, "pressure-local", "Pa", pace...)

	w.placed = w.lifts
	w.endAtJoint()
	if w.joint == 0 {
		w.callOrder, w.callBy = lastTruck(t, w)
	}
	w.set, w.allowed, w.sides = handsOff(t, w)
	return w
}

// decision returns the time by which a late truck must be at the gate: the oldest face ends less the
// way of the concrete from the gate to the hose.
func (w *workedPour) decision() float64 { return w.joint - gateToHose }

// pumped returns the time of a lift without the wait after it, in s.
func (w *workedPour) pumped() float64 { return w.lift - w.wait }

// round returns the time of a round, in s.
func (w *workedPour) round() float64 { return w.pumped() * roundDepth / liftDepth }

// lastRound returns when the last round of a lift begins, s after midnight.
func (w *workedPour) lastRound(n int) float64 { return w.liftStart(n) + w.pumped() - w.round() }

// baseRead returns what reading the base behind the first lift adds to the wait after it, in s.
func (w *workedPour) baseRead() float64 { return footRead - w.wait }

// endAtJoint ends the day at a planned joint where the third truck comes later than the
// hose must be back at the last round of the lifts that the first two trucks filled.
func (w *workedPour) endAtJoint() {
	filled := int(2 * loadVolume / (w.pumped() / 3600 * rateWithAll))
	back := w.lastRound(filled) + w.backBy
	if w.thirdTruck+w.day.late <= back {
		return
	}
	cleanUp := w.done - w.last
	w.placed, w.joint, w.last, w.done = filled, back, w.lastRound(filled)+w.round(), back+cleanUp
}

// lastTruck returns the order in yd³ and the time of the call, made when the third lift
// begins, with the third and the fourth load on the road.
func lastTruck(t *testing.T, w workedPour) (order, by float64) {
	t.Helper()
	open := wallHeight - 2*liftDepth
	r := calctest.Run(t, lasttruck.Calculator,
		fmt.Sprintf("walls=%s | 8 in | %d ft", jobRun, open), "waste=10 %",
		fmt.Sprintf("drums=%d yd3 | full; %d yd3 | full", loadVolume, loadVolume),
		"needed="+clockTime(w.first+4*w.spacing+w.baseRead()), "lead="+plantLead, "now="+clockTime(w.liftStart(3)))
	return r.Out.Num("order-yd") / calc.SI(1, "yd³"), r.Out.Num("call-by")
}

// handsOff returns initial set, the time allowed after the last concrete, and the rows of
// the four sides of the house. The last round placed fills them one after the other. The
// first load of each side is the first truck.
func handsOff(t *testing.T, w workedPour) (set, allowed float64, sides []calc.Case) {
	t.Helper()
	walls := ""
	for i := range 4 {
		if i > 0 {
			walls += "; "
		}
		walls += fmt.Sprintf("%d | %s | %s", i+1, clockTime(w.firstBatched()), clockTime(w.sideFull(i)))
	}
	r := calctest.Run(t, handsoff.Calculator, "walls="+walls, "concrete="+w.day.concrete, "air="+w.day.air)
	return r.Out.Num("set"), r.Out.Num("allowed"), r.Out.Rows("lines")
}

// sideFull returns when a side, from 0, has its last concrete.
func (w workedPour) sideFull(i int) float64 {
	begin := w.last - w.round()
	return begin + (w.last-begin)*float64(i+1)/4
}

// liftStart returns when a lift begins. The base is read before the second.
func (w workedPour) liftStart(n int) float64 {
	begin := w.first + float64(n-1)*w.lift
	if n > 1 {
		begin += w.baseRead()
	}
	return begin
}

// firstBatched returns when the first load is batched. It is at the hopper for the priming.
func (w workedPour) firstBatched() float64 {
	batched, _, _ := w.truck(1)
	return batched
}

// isPlaced returns the time of an event of a lift, 0 if the day does not place it.
func (w workedPour) isPlaced(n int, at float64) float64 {
	if n > w.placed {
		return 0
	}
	return at
}

// truck returns when a load is batched and reaches the hopper, and when its drum is empty.
func (w workedPour) truck(n int) (batched, hopper, empty float64) {
	hopper = w.first + float64(n-1)*w.spacing
	batched, empty = hopper-w.ageFirst, hopper+w.spacing
	if n == 1 {
		batched, hopper = batched-primeTime, hopper-primeTime
	} else {
		batched, hopper, empty = batched+w.baseRead(), hopper+w.baseRead(), empty+w.baseRead()
	}
	if w.last > 0 {
		empty = math.Min(empty, w.last)
	}
	return batched, hopper, empty
}
