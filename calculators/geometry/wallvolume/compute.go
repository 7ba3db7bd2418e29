package wallvolume

import (
	"math"

	"coursebook/calculators/calc"
	"coursebook/calculators/displays"
	"coursebook/calculators/geometry"
)

// The refusals and notes.
var (
	noWalls    = calc.Text("There is no wall yet. Add a row of straight walls or a curved wall.")
	cornersEat = calc.Text("The corners take off more than the walls hold. Check lengths, corners and core.")
	tallHole   = calc.Text("This is taller than the tallest wall, {limit}.")
	deepHole   = calc.Text("This is deeper than the core, {limit}. Enter it as an opening.")
	holesEat   = calc.Text("Openings and block-outs are bigger than the walls. Check sizes and counts.")
	tightCurve = calc.Text(
		"The core is thicker than this radius allows. The radius at the outside must be over {limit}.",
	)
	overHalf = calc.Text("The rise is more than half the chord, so the curve is over a half circle. Is that right?")
	openPlan = calc.Text(
		"Outside less inside corners is {corners}. A closed plan has 4. Is this wall open at the ends?",
	)
	mixedHeights = calc.Text("Heights differ. The corners were taken at {height}, so the order does not run short.")
	otherUnit    = calc.Text(
		"Your order is {typed}. The walls take that number in the other unit: {right}. Which unit did you mean?",
	)
	farOff = calc.Text(
		"Your order is {typed}, this comes to {right}. They differ by more than 10 %. Which unit did you mean?",
	)
	runsShort = calc.Text("Your order of {typed} is less than the volume with waste, {need}.")
)

// farShare is the difference between a typed and a computed order from which
// the calculator asks for the unit. A cubic yard and a cubic metre differ by
// 24 %, so a tenth distinguishes them.
const farShare = 0.10

// compute sets the volume of the walls and the order. It refuses walls without
// volume, a curve that is too tight, and openings that do not fit.
func compute(r *calc.Recorder, in calc.Case) {
	w, ok := straight(r, in)
	if !ok {
		return
	}
	if in.Flag("curve") && !w.addCurve(r, in) {
		return
	}
	if w.volume <= 0 {
		r.Refuse(calc.At("runs"), noWalls)
		return
	}
	holes, ok := w.holes(r, in)
	if !ok {
		return
	}
	net := r.Use(geometry.NetVolumeFormula, w.volume, holes)
	geometry.PutVolume(r, "walls", w.volume)
	geometry.PutVolume(r, "holes", holes)
	geometry.PutVolume(r, "net", net)
	r.Put("length", w.middle)
	computeOrder(r, in, net)
}

// walls holds the totals of the straight and curved walls.
type walls struct {
	core    float64
	volume  float64 // m³, before deductions
	middle  float64 // m along the middle of the core
	tallest float64
	longest float64
}

// signedCorners returns the number of corners to deduct, c of CentreLine.
func signedCorners(in calc.Case) float64 {
	c := in.Num("outside-corners") - in.Num("inside-corners")
	switch in.Choice("measured") {
	case "outside":
		return c
	case "inside":
		return -c
	}
	return 0
}

// straight returns the straight walls; zero ones without runs. It refuses corners
// that take up all of them, and returns false.
func straight(r *calc.Recorder, in calc.Case) (w walls, ok bool) {
	w.core = in.Num("core")
	var area, length float64
	lowest := math.Inf(1)
	for _, run := range in.Rows("runs") {
		l, h := run.Num("length"), run.Num("height")
		area += float64(l * h * run.Num("count"))
		length += float64(l * run.Num("count"))
		w.longest = math.Max(w.longest, l)
		w.tallest = math.Max(w.tallest, h)
		lowest = math.Min(lowest, h)
	}
	if length == 0 {
		return w, true
	}
	corners := signedCorners(in)
	atCorners := lowest
	if corners < 0 {
		atCorners = w.tallest
	}
	noteCorners(r, in, corners, lowest, w.tallest, atCorners)
	w.middle = r.Use(geometry.CentreLineFormula, length, corners, w.core)
	w.volume = r.Use(geometry.WallsVolumeFormula, w.core, area, corners, atCorners)
	if w.middle <= 0 || w.volume <= 0 {
		r.Refuse(calc.At("runs"), cornersEat)
		return w, false
	}
	return w, true
}

// noteCorners asks about an unusual number of corners, and notes the height used
// for the corners: the one for which the order cannot be short.
func noteCorners(r *calc.Recorder, in calc.Case, corners, lowest, tallest, at float64) {
	if corners == 0 {
		return
	}
	if diff := math.Abs(corners); diff != 4 {
		n := in.Num("outside-corners") - in.Num("inside-corners")
		r.Note(calc.LevelAsk, calc.At("outside-corners"), openPlan, calc.Count("corners", int(n)))
	}
	if lowest != tallest {
		r.Note(calc.LevelNotice, calc.At("runs"), mixedHeights, calc.Amount("height", at, &displays.Wall))
	}
}

// addCurve adds the curved wall. It refuses a radius that is too small for the
// core, and returns false.
func (w *walls) addCurve(r *calc.Recorder, in calc.Case) bool {
	radius, angle := in.Num("curve-radius"), in.Num("curve-angle")
	at := "curve-radius"
	if in.Choice("curve-by") == "chord" {
		chord, rise := in.Num("curve-chord"), in.Num("curve-rise")
		radius = r.Use(geometry.ChordRadiusFormula, chord, rise)
		angle = r.Use(geometry.ChordAngleFormula, rise, chord)
		at = "curve-chord"
		if rise > chord/2 {
			r.Note(calc.LevelAsk, calc.At("curve-rise"), overHalf)
		}
	}
	middle := radius
	if in.Choice("curve-at") == "outside" {
		middle = r.Use(geometry.CentreRadiusFormula, radius, w.core)
	}
	if middle <= w.core/2 {
		r.Refuse(calc.At(at), tightCurve, calc.Amount("limit", w.core, &displays.Wall))
		return false
	}
	arc := r.Use(geometry.ArcLengthFormula, angle, middle)
	height := in.Num("curve-height")
	w.volume += r.Use(geometry.ArcVolumeFormula, arc, w.core, height)
	w.middle += arc
	w.longest = math.Max(w.longest, arc)
	w.tallest = math.Max(w.tallest, height)
	return true
}

// holes returns the volume of all openings and block-outs, in m³. It refuses one
// that does not fit the walls, and openings that leave nothing, and returns false.
// The first opening is a step of the worked example.
func (w *walls) holes(r *calc.Recorder, in calc.Case) (volume float64, ok bool) {
	for i, o := range in.Rows("openings") {
		if !w.fits(r, "openings", o) {
			return 0, false
		}
		compute := geometry.PrismFormula.Value
		if i == 0 {
			compute = func(si ...float64) float64 { return r.UseFor(firstOpening, nil, geometry.PrismFormula, si...) }
		}
		volume += compute(o.Num("count"), o.Num("width"), o.Num("height"), w.core)
	}
	for _, b := range in.Rows("block-outs") {
		if !w.fits(r, "block-outs", b) {
			return 0, false
		}
		if calc.Over(b.Num("depth"), w.core) {
			r.Refuse(calc.Cell("block-outs", b.RowNumber(), "depth"), deepHole,
				calc.Amount("limit", w.core, &displays.Part))
			return 0, false
		}
		volume += geometry.PrismFormula.Value(b.Num("count"), b.Num("width"), b.Num("height"), b.Num("depth"))
	}
	if volume >= w.volume {
		r.Refuse(calc.At("openings"), holesEat)
		return 0, false
	}
	return volume, true
}

var firstOpening = calc.Text("First row of openings")

// fits refuses a hole of the rows field that is taller or wider than every wall,
// and returns false.
func (w *walls) fits(r *calc.Recorder, rows string, hole calc.Case) bool {
	switch {
	case calc.Over(hole.Num("height"), w.tallest):
		r.Refuse(calc.Cell(rows, hole.RowNumber(), "height"), tallHole, calc.Amount("limit", w.tallest, &displays.Wall))
	case calc.Over(hole.Num("width"), w.longest):
		r.Refuse(calc.Cell(rows, hole.RowNumber(), "width"), geometry.WideHole,
			calc.Amount("limit", w.longest, &displays.Wall))
	default:
		return true
	}
	return false
}
