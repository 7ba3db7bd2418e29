package radiuswall

import (
	"coursebook/calculators/calc"
	"coursebook/calculators/displays"
	"coursebook/calculators/geometry"
)

const (
	curveTight = calc.Text("The wall is too thick for this curve. The radius at this line must be more than {limit}.")
	curveFlats = calc.Text(
		"Between cuts the wall is flat and stands up to {flat} off the curve. More cuts bring it closer.",
	)
	curveNoFoam = calc.Text(
		"How thick is the foam? Without it the gap is taken across the core alone, which is too little.",
	)
	curveOver = calc.Text("The rise is more than half the chord, so the curve is over a half circle. Is that right?")
)

// visibleFlat is the distance from the curve in metres, 1/4 in., above which a
// flat piece is visible on the face (common practice).
const visibleFlat = 0.25 * 0.0254

// curve is a curved wall: lengths in m, the angle in rad.
type curve struct {
	*calc.Recorder
	in               calc.Case
	radius, angle    float64 // of the measured line
	middle           float64 // radius to the middle of the core
	core, half, foam float64 // half is from the middle to the face of the form
}

// computeCurve sets the lengths, cuts and volume of a curved wall. It refuses a
// radius at which the inside face has none.
func computeCurve(r *calc.Recorder, in calc.Case) {
	c := &curve{Recorder: r, in: in, core: in.Num("core"), foam: in.Num("foam")}
	c.half = c.core/2 + c.foam
	c.arc()
	offset := c.offset()
	c.middle = r.Use(geometry.MiddleRadiusFormula, c.radius, offset)
	if !calc.Over(c.middle, c.half) {
		at := "radius"
		if chordGiven(in) {
			at = "chord"
		}
		r.Refuse(calc.At(at), curveTight, calc.Amount("limit", offset+c.half, &displays.Wall))
		return
	}
	r.Put("arc", geometry.DevelopedFormula.Value(c.angle, c.middle, offset))
	outside := c.faces()
	c.cuts(outside)
	geometry.PutVolume(
		r,
		"volume",
		r.Use(geometry.ArcVolumeFormula, geometry.DevelopedFormula.Value(c.angle, c.middle, 0), c.core,
			in.Num("height")),
	)
	if !in.Has("foam") {
		r.Note(calc.LevelAsk, calc.At("foam"), curveNoFoam)
	}
}

// arc computes radius, angle, chord and rise of the measured line from the two
// that are given.
func (c *curve) arc() {
	chord, rise := c.in.Num("chord"), c.in.Num("rise")
	if chordGiven(c.in) {
		c.radius = c.Use(geometry.ChordRadiusFormula, chord, rise)
		c.angle = c.Use(geometry.ChordAngleFormula, rise, chord)
		if calc.Over(rise, chord/2) {
			c.Note(calc.LevelAsk, calc.At("rise"), curveOver)
		}
	} else {
		c.radius, c.angle = c.in.Num("radius"), c.in.Num("angle")
		chord = c.Use(geometry.ChordLengthFormula, c.radius, c.angle)
		rise = c.Use(geometry.ArcRiseFormula, c.radius, c.angle)
	}
	c.Put("curve-radius", c.radius)
	c.Put("curve-angle", c.angle)
	c.Put("curve-chord", chord)
	c.Put("curve-rise", rise)
}

// offset returns the distance from the middle of the core out to the measured
// line, in m; below 0 for the inside.
func (c *curve) offset() float64 {
	switch c.in.Choice("at") {
	case "outside":
		return c.core / 2
	case "inside":
		return -c.core / 2
	}
	return 0
}

// faces sets the outputs for the developed (unrolled) length of each face, and
// returns that of the outermost face.
func (c *curve) faces() float64 {
	c.Put("core-outside", geometry.DevelopedFormula.Value(c.angle, c.middle, c.core/2))
	c.Put("core-middle", geometry.DevelopedFormula.Value(c.angle, c.middle, 0))
	c.Put("core-inside", geometry.DevelopedFormula.Value(c.angle, c.middle, -c.core/2))
	outside := c.Use(geometry.DevelopedFormula, c.angle, c.middle, c.half)
	if c.in.Has("foam") {
		c.Put("form-outside", outside)
		c.Put("form-inside", geometry.DevelopedFormula.Value(c.angle, c.middle, -c.half))
	}
	c.Put("radius-inside", c.middle-c.half)
	return outside
}

// cuts divides the bend among the cuts; outside is the length of the face that
// keeps its length.
func (c *curve) cuts(outside float64) {
	n := c.in.Num("count")
	switch {
	case spacingGiven(c.in):
		n = c.Use(geometry.CutsBySpacingFormula, outside, c.in.Num("spacing"))
	case gapGiven(c.in):
		n = c.Use(geometry.CutsByGapFormula, c.angle, 2*c.half, c.in.Num("gap"))
	}
	flat := geometry.FlatOffsetFormula.Value(c.middle+c.half, c.angle, n)
	c.Put("cuts", n)
	c.Put("cut-spacing", c.Use(geometry.CutSpacingFormula, outside, n))
	c.Put("cut-gap", c.Use(geometry.GapPerCutFormula, c.angle, 2*c.half, n))
	c.Put("turn", c.angle/n)
	c.Put("flat", flat)
	if calc.Over(flat, visibleFlat) {
		c.Note(calc.LevelNotice, calc.At("cuts-by"), curveFlats, calc.Amount("flat", flat, &displays.Part))
	}
}
