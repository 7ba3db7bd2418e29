package wallvolume

import (
	"coursebook/calculators/calc"
	"coursebook/calculators/displays"
	"coursebook/calculators/geometry"
	"coursebook/calculators/quantity"
)

// The formats of the sizes of a wall.
var (
	decimal = &quantity.Display{Dim: quantity.Number}

	// Volumes have the same unit for every reader. A hundredth is finer than any
	// order, but shows why 26.52 is rounded up to 27.
	inYards  = &displays.CubicYards
	inMetres = &displays.CubicMetres
)

// howMany labels every count of equal pieces.
const howMany = calc.Text("How many")

// The reasons of the limits.
var (
	no         = calc.Text("A wall without size takes no concrete.")
	oneJob     = calc.Text("Split a job of this size into parts.")
	oneStorey  = calc.Text("Work out each story by itself.")
	thinCore   = calc.Text("No core this thin can be filled and vibrated.")
	thickCore  = calc.Text("No foam form for walls is this thick. Check the unit.")
	oneAtLeast = calc.Text("Leave the row out instead.")
	manyAlike  = calc.Text("Check the count.")
	noCorner   = calc.Text("A count is never below zero.")
	noWaste    = calc.Text("Waste never makes concrete.")
	muchWaste  = calc.Text("Find the reason for so much waste, or fix the sizes.")
	noStep     = calc.Text("No plant sells in steps this small.")
	bigStep    = calc.Text("A step this big is a load, not a step.")
	noTruck    = calc.Text("No truck mixer is this small.")
	bigTruck   = calc.Text("No truck mixer carries this much. Check the unit.")
	noOrder    = calc.Text("Leave it empty if nothing is ordered yet.")
	bigOrder   = calc.Text("Check the number.")
	noCurve    = calc.Text("A curve needs a size above zero.")
	fullCircle = calc.Text("A full circle has 360°.")
)

var runCols = []calc.Field{
	{
		ID:      "length",
		Label:   calc.Text("Length"),
		Display: &displays.Wall,
		Range:   "over 0 to 2000 ft",
		Why:     no,
		WhyMost: oneJob,
	},
	{
		ID:      "height",
		Label:   calc.Text("Height"),
		Display: &displays.Wall,
		Range:   "over 0 to 60 ft",
		Why:     no,
		WhyMost: oneStorey,
	},
	{
		ID:      "count",
		Label:   howMany,
		Display: &displays.Count,
		Whole:   true,
		Range:   "1 to 200",
		Why:     oneAtLeast,
		WhyMost: manyAlike,
		Usual:   "1",
	},
	{ID: "name", Label: calc.Text("Name"), Kind: calc.FreeText, Optional: true, MaxLen: 40},
}

var openingCols = []calc.Field{
	{
		ID:      "width",
		Label:   calc.Text("Width"),
		Display: &displays.Wall,
		Range:   "over 0 to 200 ft",
		Why:     no,
		WhyMost: oneJob,
	},
	{
		ID:      "height",
		Label:   calc.Text("Height"),
		Display: &displays.Wall,
		Range:   "over 0 to 60 ft",
		Why:     no,
		WhyMost: oneStorey,
	},
	{
		ID:      "count",
		Label:   howMany,
		Display: &displays.Count,
		Whole:   true,
		Range:   "1 to 200",
		Why:     oneAtLeast,
		WhyMost: manyAlike,
		Usual:   "1",
	},
}

var blockOutCols = []calc.Field{
	{
		ID:      "width",
		Label:   calc.Text("Width"),
		Display: &displays.Wall,
		Range:   "over 0 to 200 ft",
		Why:     no,
		WhyMost: oneJob,
	},
	{
		ID:      "height",
		Label:   calc.Text("Height"),
		Display: &displays.Wall,
		Range:   "over 0 to 60 ft",
		Why:     no,
		WhyMost: oneStorey,
	},
	{
		ID:      "depth",
		Label:   calc.Text("Depth into the core"),
		Display: &displays.Part,
		Range:   "over 0 to 4 ft",
		Why:     no,
		WhyMost: oneJob,
	},
	{
		ID:      "count",
		Label:   howMany,
		Display: &displays.Count,
		Whole:   true,
		Range:   "1 to 200",
		Why:     oneAtLeast,
		WhyMost: manyAlike,
		Usual:   "1",
	},
}

func curved(c calc.Case) bool { return c.Flag("curve") }

func byRadius(c calc.Case) bool { return curved(c) && c.Choice("curve-by") == "radius" }

func byChord(c calc.Case) bool { return curved(c) && c.Choice("curve-by") == "chord" }

func onFace(c calc.Case) bool { return c.Choice("measured") != "centre" }

func hasOrder(c calc.Case) bool { return c.Has("order") }

var inputs = []calc.Field{
	{ID: "measured", Label: calc.Text("Lengths are taken along"), Kind: calc.Choice, Usual: "outside",
		Help: calc.Text("Faces of the core, not of the foam."),
		Options: []calc.Option{
			{ID: "outside", Label: calc.Text("outside face of core")},
			{ID: "centre", Label: calc.Text("centerline")},
			{ID: "inside", Label: calc.Text("inside face of core")},
		}},
	{ID: "core", Decides: 2, Measure: "core", Label: calc.Text("Core thickness"), Display: &displays.Part,
		Usual: "8 in",
		Help:  calc.Text("Concrete only, without the foam."),
		Range: "2 to 36 in", Why: thinCore, WhyMost: thickCore},
	{ID: "runs", Decides: 1, Label: calc.Text("Straight walls"), Kind: calc.Rows, Cols: runCols, MaxRows: 40,
		Help:  calc.Text("One row for each length or height."),
		Usual: "40 ft | 8 ft | 2 | Front, back; 28 ft | 8 ft | 2 | Sides"},
	{
		ID:      "outside-corners",
		Label:   calc.Text("Outside corners"),
		Help:    calc.Text("Corners that point out, in all walls together."),
		Display: &displays.Count,
		Whole:   true,
		When:    onFace,
		Usual:   "4",
		Range:   "0 to 200",
		Why:     noCorner,
		WhyMost: manyAlike,
	},
	{
		ID:      "inside-corners",
		Label:   calc.Text("Inside corners"),
		Help:    calc.Text("Corners that point in. A closed plan has four fewer of them."),
		Display: &displays.Count,
		Whole:   true,
		When:    onFace,
		Usual:   "0",
		Range:   "0 to 200",
		Why:     noCorner,
		WhyMost: manyAlike,
	},
	{ID: "openings", Decides: 3, Label: calc.Text("Openings"), Kind: calc.Rows, Cols: openingCols, MaxRows: 40,
		Help:  calc.Text("Size of the hole in the concrete: outside of the buck."),
		Usual: "38 in | 82 in | 1; 36 in | 24 in | 4"},
	{ID: "block-outs", Label: calc.Text("Block-outs"), Kind: calc.Rows, Cols: blockOutCols, MaxRows: 40,
		Help:  calc.Text("Beam pockets, ledges, sleeves: what does not go right through."),
		Usual: "8 in | 10 in | 4 in | 2"},

	// a curved wall
	{ID: "curve", Label: calc.Text("Add a curved wall"), Kind: calc.Flag, Usual: "no"},
	{ID: "curve-by", Label: calc.Text("Curve is given by"), Kind: calc.Choice, Usual: "radius", When: curved,
		Options: []calc.Option{
			{ID: "radius", Label: calc.Text("radius and angle")},
			{ID: "chord", Label: calc.Text("chord and rise")},
		}},
	{ID: "curve-at", Label: calc.Text("Curve is measured at"), Kind: calc.Choice, Usual: "outside", When: curved,
		Options: []calc.Option{
			{ID: "outside", Label: calc.Text("outside face of core")},
			{ID: "centre", Label: calc.Text("centerline")},
		}},
	{
		ID:      "curve-radius",
		Label:   calc.Text("Radius"),
		Display: &displays.Wall,
		When:    byRadius,
		Example: true,
		Usual:   "15 ft",
		Range:   "over 0 to 500 ft",
		Why:     no,
		WhyMost: oneJob,
	},
	{ID: "curve-angle", Label: calc.Text("Angle of the curve"), Display: &displays.Degrees, When: byRadius,
		Help:  calc.Text("How far the wall turns: 90° is a quarter circle."),
		Range: "over 0 to 360 °", Why: noCurve, WhyMost: fullCircle, Example: true, Usual: "90 °"},
	{
		ID:      "curve-chord",
		Label:   calc.Text("Chord"),
		Help:    calc.Text("Straight from end to end of the curve."),
		Display: &displays.Wall,
		When:    byChord,
		Example: true,
		Usual:   "12 ft",
		Range:   "over 0 to 500 ft",
		Why:     no,
		WhyMost: oneJob,
	},
	{
		ID:      "curve-rise",
		Label:   calc.Text("Rise"),
		Help:    calc.Text("From the middle of the chord to the curve."),
		Display: &displays.Wall,
		When:    byChord,
		Example: true,
		Usual:   "2 ft",
		Range:   "over 0 to 500 ft",
		Why:     no,
		WhyMost: oneJob,
	},
	{
		ID:      "curve-height",
		Label:   calc.Text("Height of the curve"),
		Display: &displays.Wall,
		When:    curved,
		Example: true,
		Usual:   "8 ft",
		Range:   "over 0 to 60 ft",
		Why:     no,
		WhyMost: oneStorey,
	},

	// the order
	{ID: "waste", Label: calc.Text("Waste and spill"), Display: &geometry.WasteDisplay, Rule: "waste",
		Help:  calc.Text("Books say 0 to 10 %. Use what your own jobs show."),
		Range: "0 to 25 %", Why: noWaste, WhyMost: muchWaste},
	{
		ID:      "sold-in",
		Label:   calc.Text("The plant sells in"),
		Kind:    calc.Choice,
		Usual:   "yd3",
		Options: geometry.VolumeUnits,
	},
	{
		ID:      "step-yd",
		Label:   calc.Text("Order step in yd³"),
		Display: inYards,
		When:    geometry.SoldInYd,
		Usual:   "0.5 yd³",
		Range:   "0.05 to 5 yd³",
		Why:     noStep,
		WhyMost: bigStep,
	},
	{
		ID:      "step-m",
		Label:   calc.Text("Order step in m³"),
		Display: inMetres,
		When:    geometry.SoldInM,
		Usual:   "0.5 m³",
		Range:   "0.05 to 5 m³",
		Why:     noStep,
		WhyMost: bigStep,
	},
	{
		ID:      "truck-yd",
		Label:   calc.Text("Truck carries, in yd³"),
		Display: inYards,
		When:    geometry.SoldInYd,
		Usual:   "9 yd³",
		Range:   "1 to 16 yd³",
		Why:     noTruck,
		WhyMost: bigTruck,
	},
	{
		ID:      "truck-m",
		Label:   calc.Text("Truck carries, in m³"),
		Display: inMetres,
		When:    geometry.SoldInM,
		Usual:   "7 m³",
		Range:   "1 to 13 m³",
		Why:     noTruck,
		WhyMost: bigTruck,
	},
	{ID: "order", Label: calc.Text("Your order, if you have one"), Display: decimal, Optional: true,
		Help:  calc.Text("The number alone, as you would say it on the phone."),
		Range: "over 0 to 5000", Why: noOrder, WhyMost: bigOrder},
	{
		ID:      "order-unit",
		Label:   calc.Text("Your order is in"),
		Kind:    calc.Choice,
		Usual:   "yd3",
		Options: geometry.VolumeUnits,
		When:    hasOrder,
	},
}
