package pressure

import (
	"math"

	"coursebook/calculators/calc"
)

// Our own limits for a wall placed in lifts, in hours. No text that was read
// defines them.
const (
	BackToBack = 5.0 / 60 // lifts that land within it count as one lift
	StillFluid = 0.5      // what lands within it counts as fluid
	WholeHour  = 1.0      // shortest stretch of passes that gives a mean rise
)

// MarkedReach is how deep a head goes into the lift below, if the whip is marked.
const MarkedReach Feet = 0.5

// The causes of full fluid head over the whole height. A slower round removes
// only FillsInAnHour and RisesTooFast.
const (
	NoCause       Cause = ""
	FromBelow     Cause = "below"   // placed from below, or the hose end is buried
	Revibrated    Cause = "again"   // lifts are vibrated again
	OutsideTool   Cause = "outside" // the form is shaken from outside above the first lift
	HeadTooDeep   Cause = "deep"    // the head goes deeper than VibrationDepth
	TooWet        Cause = "wet"     // slump above MethodSlump
	TooCold       Cause = "cold"    // concrete below ColdBelow
	SetsTooLate   Cause = "late"    // setting time above DINSetHigh
	FillsInAnHour Cause = "hour"    // the whole height lands within WholeHour
	RisesTooFast  Cause = "rise"    // rise above MethodRiseSI
	BeyondMethod  Cause = "beyond"  // outside the limits of CIRIA Report 108 or DIN 18218
)

// Cause is why no equation applies.
type Cause string

// ByPace reports whether a slower round removes the cause, or there is none.
func (c Cause) ByPace() bool { return c == NoCause || c == FillsInAnHour || c == RisesTooFast }

// Pass is one pass of the hose over one place of the wall.
type Pass struct {
	At    float64 // h after the first pass
	Depth Feet    // of the lift
}

// The symbols that two formulas share.
const (
	meansLanded = calc.Text("fluid head of what just landed")
	meansLift   = calc.Text("depth of one lift")
)

// Lifts is one place of a wall that is placed in lifts.
type Lifts struct {
	Pour               // Temp is that of the coldest load
	Cement   Cement    // unknown counts as the worst
	Retarded bool      // true also where it is not known
	Set      float64   // h, final setting time at Temp
	Passes   []Pass    // over the whole height, in order of time
	Average  FtPerHour // pump rate over plan area with pauses, or a measured rise if that is larger
	Reach    Feet      // how deep the head goes into the lift below
	Form     Feet      // height of the form, for CIRIA Report 108; not below Height, 0 for Height
	Cause    Cause     // FromBelow, Revibrated, OutsideTool or HeadTooDeep, as seen on site
}

// LiftPressure is the pressure on the form at one place, and its parts.
type LiftPressure struct {
	Pressure         PSF
	Rise             FtPerHour
	ACI, CIRIA, DIN  PSF   // by each method at Rise, without half a lift
	HalfLift, Landed PSF   // fluid head of half a lift; of all that is still fluid
	Passed           Feet  // lands within StillFluid by the schedule
	Cause            Cause // NoCause: one of the parts above sets the pressure
}

// Strictest is the largest of the three methods.
func (l LiftPressure) Strictest() PSF { return max(l.ACI, l.CIRIA, l.DIN) }

// Pressure is the pressure at one place of a wall placed in lifts. It is the
// larger of two values, and at most the fluid head of the whole height:
//
//   - the strictest of ACI 347 (the stricter edition), CIRIA Report 108 and
//     DIN 18218 (class F4) at the mean rise, plus the fluid head of half a lift;
//   - the fluid head of all that lands within StillFluid, plus what the vibrator
//     reaches below it.
//
// The mean rise is that of the worst stretch of whole passes that lasts WholeHour
// or more, at least Average. Where Fluid returns a cause, the pressure is the
// fluid head of the whole height. The setting of the lower concrete never lowers
// the pressure. The rule is our own; its methods are published.
func (w *Lifts) Pressure() LiftPressure {
	out, beyond := w.byMethods(max(w.meanRise(), w.Average))
	out.HalfLift = FluidHead(w.Weight, w.landsWithin(BackToBack, out.Rise)/2)
	out.Passed = w.scheduled(StillFluid)
	out.Landed = Landed(w.Weight, w.Height, out.Passed, w.thickest(), out.Rise, StillFluid, w.Reach)
	out.Cause = w.fluid(out.Rise)
	if out.Cause == NoCause && beyond {
		out.Cause = BeyondMethod
	}
	if out.Cause != NoCause {
		out.Pressure = w.Head()
		return out
	}
	out.Pressure = InLifts(out.Strictest(), out.HalfLift, out.Landed, w.Head())
	return out
}

// byMethods is the pressure by each method at a rise, and the strictest of them.
// beyond is true outside the limits of CIRIA Report 108 or DIN 18218.
func (w *Lifts) byMethods(rise FtPerHour) (out LiftPressure, beyond bool) {
	shared := w.shared(rise)
	ciria, din := shared.CIRIA(), shared.DIN()
	aci, _ := w.Stricter(rise)
	out = LiftPressure{Rise: rise, ACI: aci, CIRIA: psf(ciria.Pressure), DIN: psf(din.Pressure)}
	out.Pressure = min(out.Strictest(), w.Head())
	return out, ciria.rule == SetByOutside || din.rule == SetByOutside
}

// InLifts is the pressure from its parts: min(p_h, max(p_m + p_l/2, p_f)). half
// is p_l/2.
func InLifts(strictest, half, landed, head PSF) PSF { return min(head, max(strictest+half, landed)) }

// FluidCases names every case in which no equation counts, in lifts and in one go.
const FluidCases = calc.Text(
	"The full fluid head counts over the whole height, at any pace, for slump over 7 in. (175 mm), for " +
		"concrete that levels itself, for concrete below 41 °F (5 °C) and for a final set later than 20 h. It " +
		"counts where the concrete comes from below, the hose end is buried or old lifts are vibrated again. " +
		"It counts where the head may go deeper than 4 ft (1.2 m). It counts where a tool shakes the form " +
		"above the first lift, or anywhere in one go. It counts where the rise is over 14.7 ft/h (4.48 m/h) or " +
		"more than 32.8 ft (10 m) are placed today. In lifts it counts where the whole height lands within 60 " +
		"min.",
)

// InLiftsFormula declares InLifts.
var InLiftsFormula = &calc.Formula{
	ID: "lifts", Title: calc.Text("Pressure in lifts, our own rule"),
	Expr: "min(p_h, max(p_m + p_l, p_f))", Result: calc.Var{Symbol: "p", Meaning: meansP, Unit: "kPa", US: "psf"},
	Vars: []calc.Var{
		{Symbol: "p_m", Meaning: calc.Text("strictest of three methods"), Unit: "kPa", US: "psf"},
		{Symbol: "p_l", Meaning: calc.Text("fluid head of half a lift"), Unit: "kPa", US: "psf"},
		{Symbol: "p_f", Meaning: meansLanded, Unit: "kPa", US: "psf"},
		{Symbol: "p_h", Meaning: meansHead, Unit: "kPa", US: "psf"},
	},
	Fn: calc.FuncN(func(v []float64) float64 { return float64(InLifts(PSF(v[0]), PSF(v[1]), PSF(v[2]), PSF(v[3]))) }),
	Go: "pressure.InLifts", Source: "own",
	Limits: FluidCases,
}

// LiftRise is the mean rise of a wall placed in lifts: the depth of a lift over
// the time from pass to pass at one place.
func LiftRise(lift, hours float64) float64 { return lift / hours }

// LiftRiseFormula declares LiftRise.
var LiftRiseFormula = &calc.Formula{
	ID: "lift-rise", Title: calc.Text("Rise in lifts"),
	Expr: "d/t", Result: bothR,
	Vars: []calc.Var{
		{Symbol: "d", Meaning: meansLift, Unit: "m", US: "ft"},
		{Symbol: "t", Meaning: calc.Text("time from pass to pass at one place"), Unit: "h", US: "h"},
	},
	Fn: calc.Func2(LiftRise), Go: "pressure.LiftRise", Source: "own",
}

// fluid is why no equation applies at a rise, or NoCause.
func (w *Lifts) fluid(rise FtPerHour) Cause {
	switch {
	case w.Cause != NoCause:
		return w.Cause
	case calc.Over(float64(min(w.thickest()+w.Reach, w.Height)), float64(VibrationDepth)):
		return HeadTooDeep
	case w.Wet():
		return TooWet
	case w.Cold():
		return TooCold
	case calc.Over(w.Set, DINSetHigh):
		return SetsTooLate
	case calc.Over(float64(rise), float64(MethodRiseSI)):
		return RisesTooFast
	case !calc.Over(float64(w.Height), float64(rise)*WholeHour):
		return FillsInAnHour
	}
	return NoCause
}

// shared is the place in the units of the European methods.
func (w *Lifts) shared(rise FtPerHour) SharedCase {
	height := calc.SI(float64(w.Height), "ft")
	temp := calc.From(calc.SI(float64(w.Temp), "°F"), "°C")
	return SharedCase{
		Height: height, Form: max(height, calc.SI(float64(w.Form), "ft")),
		Rise:   calc.From(calc.SI(float64(rise), "ft/h"), "m/h"),
		Weight: calc.From(calc.SI(float64(w.Weight), "lb/ft³"), "kN/m³"),
		Temp:   temp, Ref: temp, Set: w.Set,
		Cement: w.Cement, Retarded: w.Retarded,
		Class: "f4", Way: FromTop,
	}
}

// psf converts kPa.
func psf(kPa float64) PSF { return PSF(calc.From(KPa(kPa), "psf")) }

// thickest is the depth of the thickest single lift.
func (w *Lifts) thickest() Feet {
	var most Feet
	for _, p := range w.Passes {
		most = max(most, p.Depth)
	}
	return most
}

// lands is the depth that lands from pass i on, within a time in hours, both
// ends included; after is the first pass beyond.
func (w *Lifts) lands(i int, within float64) (depth Feet, after int) {
	for after = i; after < len(w.Passes) && !calc.Over(w.Passes[after].At-w.Passes[i].At, within); after++ {
		depth += w.Passes[after].Depth
	}
	return depth, after
}

// landsWithin is the most that lands in any span of that many hours. It is at
// least what an even schedule of the same rise lands at most, whatever its lifts:
// otherwise a thicker lift at the same pump rate could count as less.
func (w *Lifts) landsWithin(hours float64, rise FtPerHour) Feet {
	return min(max(w.scheduled(hours), evenly(w.thickest(), rise, hours)), w.Height)
}

// scheduled is the most that lands in any span of that many hours by the passes.
func (w *Lifts) scheduled(hours float64) (most Feet) {
	for i := range w.Passes {
		depth, _ := w.lands(i, hours)
		most = max(most, depth)
	}
	return most
}

// evenly is the most that an even schedule lands in a span of that many hours.
func evenly(lift Feet, rise FtPerHour, hours float64) Feet {
	even := Feet(float64(rise) * hours)
	return even + min(even, lift)
}

// Landed is the fluid head of what lands within a time in hours and of the reach of the
// vibrator below it, at most that of the whole height:
// w·min(h, max(d_s, min(d + R·t, 2·R·t)) + d_v). passed is what lands by the schedule.
func Landed(w PCF, height, passed, lift Feet, rise FtPerHour, hours float64, reach Feet) PSF {
	return FluidHead(w, min(height, max(passed, evenly(lift, rise, hours))+reach))
}

// LandedFormula declares Landed.
var LandedFormula = &calc.Formula{
	ID: "landed", Title: calc.Text("What just landed"),
	Expr:   "w*min(h, max(d_s, min(d + R*t, 2*R*t)) + d_v)",
	Result: calc.Var{Symbol: "p_f", Meaning: meansLanded, Unit: "kPa", US: "psf"},
	Vars: []calc.Var{
		bothW,
		{Symbol: "h", Meaning: calc.Text("height placed today"), Unit: "m", US: "ft"},
		{Symbol: "d_s", Meaning: calc.Text("depth that lands within that time by the passes"), Unit: "m", US: "ft"},
		{Symbol: "d", Meaning: meansLift, Unit: "m", US: "ft"},
		bothR,
		{Symbol: "t", Meaning: calc.Text("time in which it counts as fluid"), Unit: "h", US: "h"},
		{Symbol: "d_v", Meaning: calc.Text("reach of the head into the old lift"), Unit: "m", US: "ft"},
	},
	Fn: calc.FuncN(func(v []float64) float64 {
		return float64(Landed(PCF(v[0]), Feet(v[1]), Feet(v[2]), Feet(v[3]), FtPerHour(v[4]), v[5], Feet(v[6])))
	}),
	Go: "pressure.Landed", Source: "own",
	Limits: calc.Text(
		"What lands within 30 min counts as fluid. Lifts that land within 5 min count as one. The rise is a mean " +
			"over 60 min or more. All three are our own limits.",
	),
}

// meanRise is the worst mean rise over whole passes that last WholeHour or more
// together. If no stretch is that long, it is the mean over all passes. The last
// lift counts with a round of its own. If all lands at once, it is the whole
// height in WholeHour.
func (w *Lifts) meanRise() FtPerHour {
	lifts := w.merged()
	last := len(lifts) - 1
	if last < 1 {
		return FtPerHour(float64(w.Height) / WholeHour)
	}
	worst := 0.0
	for i := range lifts {
		sum := lifts[i].Depth
		for j := i + 1; j <= last; j++ {
			long := lifts[j].At - lifts[i].At
			if !calc.Under(long, WholeHour) || i == 0 && j == last {
				before, after := sum, sum-lifts[i].Depth+lifts[j].Depth
				worst = math.Max(worst, float64(max(before, after))/long)
			}
			sum += lifts[j].Depth
		}
	}
	return FtPerHour(worst)
}

// merged joins passes that land within BackToBack to one lift.
func (w *Lifts) merged() []Pass {
	var lifts []Pass
	for i := 0; i < len(w.Passes); {
		depth, after := w.lands(i, BackToBack)
		lifts = append(lifts, Pass{At: w.Passes[i].At, Depth: depth})
		i = after
	}
	return lifts
}
