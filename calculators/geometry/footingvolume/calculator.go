// Package footingvolume computes the concrete of footings, grade beams, stem walls
// and pads, and the order. Every volume is given in both units.
package footingvolume

import (
	"coursebook/calculators/calc"
	"coursebook/calculators/displays"
	"coursebook/calculators/geometry"
)

// Calculator computes the concrete of footings, grade beams, stem walls
// and pads, and the order. Every volume is given in both units.
var Calculator = &calc.Calculator{
	ID:       "footing-volume",
	Title:    calc.Text("Footing volume and order"),
	Purpose:  calc.Text("How much concrete the footings, grade beams, stem walls and pads take."),
	In:       inputs,
	Out:      outputs,
	Formulas: formulas,
	Sources:  sources,
	Cautions: []calc.Caution{
		{
			Level: calc.LevelWarning,
			Text: calc.Text(
				"The sides of a trench can cave in with no sign. Slope, shore or shield them as local rules ask " +
					"before anyone steps in.",
			),
		},
		{
			Level: calc.LevelNotice,
			Text:  calc.Text("Say the unit with every order: yards or meters. Have the plant read it back."),
		},
		{
			Level: calc.LevelNotice,
			Text: calc.Text(
				"Measure the trench as it is dug. Earth sides are wider and deeper than the drawing, and concrete " +
					"fills it all.",
			),
		},
	},
	Tables:  tables,
	Compute: computeFootings,
	Draw:    drawFootings,
}

// The kinds of part.
const (
	kind          = "footing"
	gradeBeamKind = "grade-beam"
	stemWallKind  = "stem-wall"
	padKind       = "pad"
)

var kinds = []calc.Option{
	{ID: kind, Label: calc.Text("Footing")},
	{ID: gradeBeamKind, Label: calc.Text("Grade beam")},
	{ID: stemWallKind, Label: calc.Text("Stem wall")},
	{ID: padKind, Label: calc.Text("Pad")},
}

const kindLabel = calc.Text("Kind")

var cols = []calc.Field{
	{ID: "kind", Label: kindLabel, Kind: calc.Choice, Options: kinds, Usual: kind},
	{ID: "length", Label: calc.Text("Length"), Display: &displays.Wall,
		Range: "over 0 to 2000 ft", Why: displays.AboveZero, WhyMost: displays.OneJob},
	{ID: "width", Label: calc.Text("Width or thickness"), Display: &displays.Part,
		Range: "2 in to 60 ft", Why: displays.CheckUnit},
	{ID: "depth", Label: calc.Text("Depth or height"), Display: &displays.Part,
		Range: "2 in to 20 ft", Why: displays.CheckUnit},
	{ID: "corners", Label: calc.Text("Corners to take off"), Display: &displays.Count, Whole: true, Usual: "0",
		Help:  calc.Text("0 along the middle. Along the outside: outside less inside corners."),
		Range: "-200 to 200", Why: displays.CheckCount},
	{ID: "count", Label: calc.Text("How many"), Display: &displays.Count, Whole: true, Usual: "1",
		Range: "1 to 500", Why: displays.LeaveOut, WhyMost: displays.CheckCount},
}

const (
	noWaste   = calc.Text("Waste never makes concrete.")
	muchWaste = calc.Text("Measure the trench again instead.")
	stepWhy   = calc.Text("Ask the plant for the step it sells in.")
)

var inputs = []calc.Field{
	{ID: "parts", Label: calc.Text("Footings and other parts"), Kind: calc.Rows, Cols: cols, MinRows: 1, MaxRows: 40,
		Help: calc.Text("One row for each size. A pad has a length, a width and a depth."),
		Usual: "footing | 138 ft 8 in | 16 in | 8 in | 4 | 1; stem-wall | 22 ft | 8 in | 24 in | 0 | 1; pad | 30 in " +
			"| 30 in | 12 in | 0 | 3"},
	{ID: "waste", Label: calc.Text("Waste and spill"), Display: &geometry.WasteDisplay, Rule: "waste",
		Help:  calc.Text("Earth sides and a rough bottom need more than forms."),
		Range: "0 to 40 %", Why: noWaste, WhyMost: muchWaste},
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
		Display: &displays.CubicYards,
		When:    geometry.SoldInYd,
		Usual:   "0.5 yd³",
		Range:   "0.05 to 5 yd³",
		Why:     stepWhy,
	},
	{
		ID:      "step-m",
		Label:   calc.Text("Order step in m³"),
		Display: &displays.CubicMetres,
		When:    geometry.SoldInM,
		Usual:   "0.5 m³",
		Range:   "0.05 to 5 m³",
		Why:     stepWhy,
	},
}

var outputs = []calc.Field{
	{ID: "order-yd", Label: calc.Text("Order in cubic yards"), Display: &displays.CubicYardsUp, Lead: true},
	{ID: "order-m", Label: calc.Text("Order in cubic meters"), Display: &displays.CubicMetresUp, Lead: true},
	{ID: "net-yd", Label: calc.Text("Net volume, yd³"), Display: &displays.CubicYards},
	{ID: "net-m", Label: calc.Text("Net volume, m³"), Display: &displays.CubicMetres},
	{ID: "with-waste-yd", Label: calc.Text("With waste, yd³"), Display: &displays.CubicYards},
	{ID: "with-waste-m", Label: calc.Text("With waste, m³"), Display: &displays.CubicMetres},
	{ID: "extra", Label: calc.Text("Order over net volume"), Display: &geometry.ExtraDisplay},
	{ID: "by-kind", Label: calc.Text("Net volume by kind"), Kind: calc.Rows, Cols: []calc.Field{
		{ID: "kind", Label: kindLabel, Kind: calc.Choice, Options: kinds},
		{ID: "yd", Label: calc.Text("yd³"), Display: &displays.CubicYards},
		{ID: "m", Label: calc.Text("m³"), Display: &displays.CubicMetres},
	}},
}

var sources = []calc.Source{
	{
		ID:     "navedtra",
		Author: "US Navy",
		Title:  "Engineering Aid, NAVEDTRA 14070",
		Where:  calc.Text("concrete take-off of figure 5-2"),
		Status: calc.Confirmed,
	},
	{ID: "waste", Author: "Concrete Construction", Title: "Yield problems and waste allowance",
		Where: calc.Text("allowances by kind of work: 5 % for foundations, 3 % on the ground"), Status: calc.Confirmed,
		Link: "https://www.concreteconstruction.net/how-to/yield-problems-and-waste-allowance_o"},
	{ID: "sp811", Author: "NIST", Title: "Guide for the Use of the International System of Units, SP 811", Year: "2008",
		Where: calc.Text("appendix B, units of volume"), Status: calc.Memory,
		Link: "https://www.nist.gov/pml/special-publication-811"},
	{
		ID:     "irc",
		Author: "ICC",
		Title:  "International Residential Code",
		Where:  calc.Text("R403.1.1: spread footings at least 6 in. thick"),
		Status: calc.Secondary,
	},
	{ID: "practice", Where: calc.Text("Order steps, corner rule for strips"), Status: calc.CommonPractice},
}

const tableNote = calc.Text("Net, along the middle, by width and depth. No waste.")

var tables = []calc.Table{
	{ID: "yards", Title: calc.Text("Cubic yards in 10 ft (3.05 m) of footing"), Note: tableNote,
		Out: "net-yd", Set: []calc.Entry{{Path: "parts.1.length", Text: "10 ft"}},
		Down: calc.Axis{
			Path:   "parts.1.width",
			US:     []string{"12 in", "16 in", "18 in", "20 in", "24 in", "30 in", "36 in"},
			Metric: []string{"300 mm", "400 mm", "450 mm", "500 mm", "600 mm", "750 mm", "900 mm"},
		},
		Across: calc.Axis{Path: "parts.1.depth", US: []string{"6 in", "8 in", "10 in", "12 in", "16 in"},
			Metric: []string{"150 mm", "200 mm", "250 mm", "300 mm", "400 mm"}}},
	{ID: "metres", Title: calc.Text("Cubic meters in 10 m (32' 10\") of footing"), Note: tableNote,
		Out: "net-m", Set: []calc.Entry{{Path: "parts.1.length", Text: "10 m"}},
		Down: calc.Axis{
			Path:   "parts.1.width",
			US:     []string{"12 in", "16 in", "18 in", "20 in", "24 in", "30 in", "36 in"},
			Metric: []string{"300 mm", "400 mm", "450 mm", "500 mm", "600 mm", "750 mm", "900 mm"},
		},
		Across: calc.Axis{Path: "parts.1.depth", US: []string{"6 in", "8 in", "10 in", "12 in", "16 in"},
			Metric: []string{"150 mm", "200 mm", "250 mm", "300 mm", "400 mm"}}},
}

var formulas = []*calc.Formula{
	geometry.RunVolumeFormula,
	geometry.WithWasteFormula,
	geometry.InCubicYardsFormula,
	geometry.OrderYardsFormula,
	geometry.OrderMetresFormula,
	geometry.ExtraFormula,
}
