package geometry

import (
	"coursebook/calculators/calc"
	"coursebook/calculators/quantity"
)

// The ways a wall's size is written.
var (
	wallLength = &quantity.Show{Dim: quantity.Length,
		US:     quantity.Scale{Unit: "ft", Form: quantity.FeetInches, Step: 1.0 / 4},
		Metric: quantity.Scale{Unit: "m", Step: 0.001}}
	coreSize = &quantity.Show{Dim: quantity.Length,
		US:     quantity.Scale{Unit: "in", Form: quantity.Inches, Step: 1.0 / 16},
		Metric: quantity.Scale{Unit: "mm", Step: 1}}
	number  = &quantity.Show{Dim: quantity.Number, US: quantity.Scale{Step: 1}, Metric: quantity.Scale{Step: 1}}
	decimal = &quantity.Show{Dim: quantity.Number}
	percent = &quantity.Show{Dim: quantity.Ratio, US: quantity.Scale{Unit: "%", Step: 0.5}, Metric: quantity.Scale{Unit: "%", Step: 0.5}}
	degrees = &quantity.Show{Dim: quantity.Angle, US: quantity.Scale{Unit: "°", Step: 0.5}, Metric: quantity.Scale{Unit: "°", Step: 0.5}}

	// Volumes keep their unit for every reader. A hundredth is finer than any
	// order, but lets a hand see why 26.52 was rounded up to 27.
	inYards  = fixedVolume("yd³")
	inMetres = fixedVolume("m³")
)

func fixedVolume(unit string) *quantity.Show {
	s := quantity.Scale{Unit: unit, Step: 0.01}
	return &quantity.Show{Dim: quantity.Volume, US: s, Metric: s}
}

// The reasons of the limits.
var (
	noWall     = calc.Text("wall-volume.why.no-wall: A wall without size takes no concrete.")
	oneJob     = calc.Text("wall-volume.why.one-job: Split a job of this size into parts.")
	oneStorey  = calc.Text("wall-volume.why.one-storey: Work out each storey by itself.")
	thinCore   = calc.Text("wall-volume.why.thin-core: No core this thin can be filled and vibrated.")
	thickCore  = calc.Text("wall-volume.why.thick-core: No foam form for walls is this thick. Check the unit.")
	oneAtLeast = calc.Text("wall-volume.why.one: Leave the row out instead.")
	manyAlike  = calc.Text("wall-volume.why.many: Check the count.")
	noCorner   = calc.Text("wall-volume.why.no-corner: A count is never below zero.")
	noWaste    = calc.Text("wall-volume.why.no-waste: Waste never makes concrete.")
	muchWaste  = calc.Text("wall-volume.why.much-waste: Find the reason for so much waste, or fix the sizes.")
	noStep     = calc.Text("wall-volume.why.no-step: No plant sells in steps this small.")
	bigStep    = calc.Text("wall-volume.why.big-step: A step this big is a load, not a step.")
	noTruck    = calc.Text("wall-volume.why.no-truck: No truck mixer is this small.")
	bigTruck   = calc.Text("wall-volume.why.big-truck: No truck mixer carries this much. Check the unit.")
	noOrder    = calc.Text("wall-volume.why.no-order: Leave it empty if nothing is ordered yet.")
	bigOrder   = calc.Text("wall-volume.why.big-order: Check the number.")
	noCurve    = calc.Text("wall-volume.why.no-curve: A curve needs a size above zero.")
	fullCircle = calc.Text("wall-volume.why.full-circle: A full circle has 360°.")
)

// length is a size above zero and at most so many feet.
func length(id string, label, help calc.Text, show *quantity.Show, most float64, why calc.Text) calc.Field {
	return calc.Field{ID: id, Label: label, Help: help, Show: show,
		Min: &calc.Limit{Unit: "ft", Open: true, Why: noWall}, Max: &calc.Limit{At: most, Unit: "ft", Why: why}}
}

func count(help calc.Text) calc.Field {
	return calc.Field{ID: "count", Label: calc.Text("wall-volume.count: How many"), Help: help, Show: number, Whole: true,
		Min: &calc.Limit{At: 1, Why: oneAtLeast}, Max: &calc.Limit{At: 200, Why: manyAlike}, Usual: "1"}
}

var none calc.Text

var runCols = []calc.Field{
	length("length", calc.Text("wall-volume.runs.length: Length"), none, wallLength, 2000, oneJob),
	length("height", calc.Text("wall-volume.runs.height: Height"), none, wallLength, 60, oneStorey),
	count(none),
	{ID: "name", Label: calc.Text("wall-volume.runs.name: Name"), Kind: calc.Words_, Optional: true, MaxLen: 40},
}

var openingCols = []calc.Field{
	length("width", calc.Text("wall-volume.openings.width: Width"), none, wallLength, 200, oneJob),
	length("height", calc.Text("wall-volume.openings.height: Height"), none, wallLength, 60, oneStorey),
	count(none),
}

var blockOutCols = []calc.Field{
	length("width", calc.Text("wall-volume.block-outs.width: Width"), none, wallLength, 200, oneJob),
	length("height", calc.Text("wall-volume.block-outs.height: Height"), none, wallLength, 60, oneStorey),
	length("depth", calc.Text("wall-volume.block-outs.depth: Depth into the core"), none, coreSize, 4, oneJob),
	count(none),
}

func curved(c calc.Case) bool   { return c.Flag("curve") }
func byRadius(c calc.Case) bool { return curved(c) && c.Choice("curve-by") == "radius" }
func byChord(c calc.Case) bool  { return curved(c) && c.Choice("curve-by") == "chord" }
func onFace(c calc.Case) bool   { return c.Choice("measured") != "centre" }
func soldInYd(c calc.Case) bool { return c.Choice("sold-in") == "yd3" }
func soldInM(c calc.Case) bool  { return c.Choice("sold-in") == "m3" }
func hasOrder(c calc.Case) bool { return c.Has("order") }

var volumeUnits = []calc.Option{
	{ID: "yd3", Label: calc.Text("wall-volume.unit.yd3: cubic yards (yd³)")},
	{ID: "m3", Label: calc.Text("wall-volume.unit.m3: cubic metres (m³)")},
}

func volumeIn() []calc.Field {
	return append(append(wallFields(), curveFields()...), orderFields()...)
}

func corners(id string, label, help calc.Text, usual string) calc.Field {
	return calc.Field{ID: id, Label: label, Help: help, Show: number, Whole: true, When: onFace, Usual: usual,
		Min: &calc.Limit{At: 0, Why: noCorner}, Max: &calc.Limit{At: 200, Why: manyAlike}}
}

func wallFields() []calc.Field {
	return []calc.Field{
		{ID: "measured", Label: calc.Text("wall-volume.measured: Lengths are taken along"), Kind: calc.Choice, Usual: "outside",
			Help: calc.Text("wall-volume.measured.help: Faces of the core, not of the foam."),
			Options: []calc.Option{
				{ID: "outside", Label: calc.Text("wall-volume.measured.outside: outside face of core")},
				{ID: "centre", Label: calc.Text("wall-volume.measured.centre: centre line")},
				{ID: "inside", Label: calc.Text("wall-volume.measured.inside: inside face of core")},
			}},
		{ID: "core", Label: calc.Text("wall-volume.core: Core thickness"), Show: coreSize, Usual: "8 in",
			Help: calc.Text("wall-volume.core.help: Concrete only, without the foam."),
			Min:  &calc.Limit{At: 2, Unit: "in", Why: thinCore}, Max: &calc.Limit{At: 36, Unit: "in", Why: thickCore}},
		{ID: "runs", Label: calc.Text("wall-volume.runs: Straight walls"), Kind: calc.Rows, Cols: runCols, MaxRows: 40,
			Help:  calc.Text("wall-volume.runs.help: One row for each length or height."),
			Usual: "40 ft | 8 ft | 2 | Front, back; 28 ft | 8 ft | 2 | Sides"},
		corners("outside-corners", calc.Text("wall-volume.outside-corners: Outside corners"),
			calc.Text("wall-volume.outside-corners.help: Corners that point out, in all walls together."), "4"),
		corners("inside-corners", calc.Text("wall-volume.inside-corners: Inside corners"),
			calc.Text("wall-volume.inside-corners.help: Corners that point in. A closed plan has four fewer of them."), "0"),
		{ID: "openings", Label: calc.Text("wall-volume.openings: Openings"), Kind: calc.Rows, Cols: openingCols, MaxRows: 40,
			Help:  calc.Text("wall-volume.openings.help: Size of the hole in the concrete: outside of the buck."),
			Usual: "38 in | 82 in | 1; 36 in | 24 in | 4"},
		{ID: "block-outs", Label: calc.Text("wall-volume.block-outs: Block-outs"), Kind: calc.Rows, Cols: blockOutCols, MaxRows: 40,
			Help:  calc.Text("wall-volume.block-outs.help: Beam pockets, ledges, sleeves: what does not go right through."),
			Usual: "8 in | 10 in | 4 in | 2"},
	}
}

func curveFields() []calc.Field {
	return []calc.Field{
		{ID: "curve", Label: calc.Text("wall-volume.curve: Add a curved wall"), Kind: calc.Flag, Usual: "no"},
		{ID: "curve-by", Label: calc.Text("wall-volume.curve-by: Curve is given by"), Kind: calc.Choice, Usual: "radius", When: curved,
			Options: []calc.Option{
				{ID: "radius", Label: calc.Text("wall-volume.curve-by.radius: radius and angle")},
				{ID: "chord", Label: calc.Text("wall-volume.curve-by.chord: chord and rise")},
			}},
		{ID: "curve-at", Label: calc.Text("wall-volume.curve-at: Curve is measured at"), Kind: calc.Choice, Usual: "outside", When: curved,
			Options: []calc.Option{
				{ID: "outside", Label: calc.Text("wall-volume.curve-at.outside: outside face of core")},
				{ID: "centre", Label: calc.Text("wall-volume.curve-at.centre: centre line")},
			}},
		curveSize("curve-radius", calc.Text("wall-volume.curve-radius: Radius"), none, 500, oneJob, "15 ft", byRadius),
		{ID: "curve-angle", Label: calc.Text("wall-volume.curve-angle: Angle of the curve"), Show: degrees, When: byRadius,
			Help: calc.Text("wall-volume.curve-angle.help: How far the wall turns: 90° is a quarter circle."),
			Min:  &calc.Limit{At: 0, Unit: "°", Open: true, Why: noCurve}, Max: &calc.Limit{At: 360, Unit: "°", Why: fullCircle}, Usual: "90 °"},
		curveSize("curve-chord", calc.Text("wall-volume.curve-chord: Chord"),
			calc.Text("wall-volume.curve-chord.help: Straight from end to end of the curve."), 500, oneJob, "12 ft", byChord),
		curveSize("curve-rise", calc.Text("wall-volume.curve-rise: Rise"),
			calc.Text("wall-volume.curve-rise.help: From the middle of the chord to the curve."), 500, oneJob, "2 ft", byChord),
		curveSize("curve-height", calc.Text("wall-volume.curve-height: Height of the curve"), none, 60, oneStorey, "8 ft", curved),
	}
}

func curveSize(id string, label, help calc.Text, most float64, why calc.Text, usual string, asked func(calc.Case) bool) calc.Field {
	f := length(id, label, help, wallLength, most, why)
	f.When, f.Usual = asked, usual
	return f
}

func orderFields() []calc.Field {
	return []calc.Field{
		{ID: "waste", Label: calc.Text("wall-volume.waste: Waste and spill"), Show: percent, Usual: "5 %",
			Help: calc.Text("wall-volume.waste.help: Books say 0 to 10 %. Use what your own jobs show."),
			Min:  &calc.Limit{At: 0, Unit: "%", Why: noWaste}, Max: &calc.Limit{At: 25, Unit: "%", Why: muchWaste}},
		{ID: "sold-in", Label: calc.Text("wall-volume.sold-in: The plant sells in"), Kind: calc.Choice, Usual: "yd3", Options: volumeUnits},
		plantSize("step-yd", calc.Text("wall-volume.step-yd: Order step in yd³"), inYards, "yd³", 0.05, 5, "0.5 yd³", noStep, bigStep, soldInYd),
		plantSize("step-m", calc.Text("wall-volume.step-m: Order step in m³"), inMetres, "m³", 0.05, 5, "0.5 m³", noStep, bigStep, soldInM),
		plantSize("truck-yd", calc.Text("wall-volume.truck-yd: Truck carries, in yd³"), inYards, "yd³", 1, 16, "10 yd³", noTruck, bigTruck, soldInYd),
		plantSize("truck-m", calc.Text("wall-volume.truck-m: Truck carries, in m³"), inMetres, "m³", 1, 13, "8 m³", noTruck, bigTruck, soldInM),
		{ID: "order", Label: calc.Text("wall-volume.order: Your order, if you have one"), Show: decimal, Optional: true,
			Help: calc.Text("wall-volume.order.help: The number alone, as you would say it on the phone."),
			Min:  &calc.Limit{At: 0, Open: true, Why: noOrder}, Max: &calc.Limit{At: 5000, Why: bigOrder}},
		{ID: "order-unit", Label: calc.Text("wall-volume.order-unit: Your order is in"), Kind: calc.Choice, Usual: "yd3", Options: volumeUnits, When: hasOrder},
	}
}

func plantSize(id string, label calc.Text, show *quantity.Show, unit string, least, most float64, usual string, low, high calc.Text, asked func(calc.Case) bool) calc.Field {
	return calc.Field{ID: id, Label: label, Show: show, When: asked, Usual: usual,
		Min: &calc.Limit{At: least, Unit: unit, Why: low}, Max: &calc.Limit{At: most, Unit: unit, Why: high}}
}
