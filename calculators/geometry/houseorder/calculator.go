// Package houseorder computes the order for the walls of a plain house: four walls of one
// height, without openings deducted.
package houseorder

import (
	"coursebook/calculators/calc"
	"coursebook/calculators/displays"
	"coursebook/calculators/geometry"
)

// Calculator computes the order for the walls of a plain house: four walls of one
// height, without openings deducted.
var Calculator = &calc.Calculator{
	ID:       "house-order",
	Title:    calc.Text("Order for a plain house"),
	Purpose:  calc.Text("What to order for four walls of one height, from length, width, height and core."),
	In:       inputs,
	Out:      outputs,
	Formulas: formulas,
	Sources:  sources,
	Cautions: []calc.Caution{
		{
			Level: calc.LevelNotice,
			Text: calc.Text(
				"No opening is deducted. Doors and windows take concrete off: type them in “Wall volume and order”.",
			),
		},
		{
			Level: calc.LevelNotice,
			Text:  calc.Text("Say the unit with every order: yards or meters. Have the plant read it back."),
		},
		{
			Level: calc.LevelNotice,
			Text: calc.Text(
				"Pump line and hopper are not in the volume. Add what the pump holds at the end, or cover it by waste.",
			),
		},
	},
	Tables:  tables,
	Compute: compute,
	Draw:    draw,
}

var formulas = []*calc.Formula{
	geometry.CentreLineFormula, geometry.WallsVolumeFormula, geometry.WithWasteFormula, geometry.InCubicYardsFormula,
	geometry.OrderYardsFormula, geometry.OrderMetresFormula, geometry.LoadsFormula, geometry.LastLoadFormula,
	geometry.ExtraFormula,
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
		Where: calc.Text("allowances by kind of work; textbooks run from 0 to 10 %"), Status: calc.Confirmed,
		Link: "https://www.concreteconstruction.net/how-to/yield-problems-and-waste-allowance_o"},
	{
		ID:     "loads",
		Author: "Ready-mix producer's guide",
		Title:  "Calculating truck requirements",
		Where:  calc.Text("number of loads"),
		Status: calc.Confirmed,
	},
	{ID: "sp811", Author: "NIST", Title: "Guide for the Use of the International System of Units, SP 811", Year: "2008",
		Where: calc.Text("appendix B, units of volume"), Status: calc.Memory,
		Link: "https://www.nist.gov/pml/special-publication-811"},
	{
		ID:     "geometry",
		Title:  "Corner rule for right angles, chord and rise of an arc",
		Where:  calc.Text("derived; handbook relations from memory"),
		Status: calc.Memory,
	},
	{ID: "practice", Where: calc.Text("Order steps and truck sizes"), Status: calc.CommonPractice},
}

var tables = []calc.Table{
	{
		ID:    "net",
		Title: calc.Text("Cubic yards in the walls of a house of 40 × 28 ft (12.2 × 8.5 m)"),
		Note:  calc.Text("Net, from sizes at the outside face of the core. No waste, no openings."),
		Out:   "net-yd",
		Set:   []calc.Entry{{Path: "length", Text: "40 ft"}, {Path: "width", Text: "28 ft"}},
		Down: calc.Axis{
			Path:   "core",
			US:     []string{"4 in", "6 in", "8 in", "10 in", "12 in"},
			Metric: []string{"100 mm", "150 mm", "200 mm", "250 mm", "300 mm"},
		},
		Across: calc.Axis{
			Path:   "height",
			US:     []string{"4 ft", "8 ft", "9 ft", "10 ft", "12 ft"},
			Metric: []string{"1.2 m", "2.4 m", "2.7 m", "3 m", "3.6 m"},
		},
	},
}

// The reasons of the limits.
const (
	noWall    = calc.Text("A wall without size takes no concrete.")
	oneHouse  = calc.Text("Split a job of this size into parts.")
	oneStory  = calc.Text("Work out each story by itself.")
	thinCore  = calc.Text("No core this thin can be filled and vibrated.")
	thickCore = calc.Text("No foam form for walls is this thick. Check the unit.")
	noWaste   = calc.Text("Waste never makes concrete.")
	muchWaste = calc.Text("Find the reason for so much waste, or fix the sizes.")
	noStep    = calc.Text("No plant sells in steps this small.")
	bigStep   = calc.Text("A step this big is a load, not a step.")
	noTruck   = calc.Text("No truck mixer is this small.")
	bigTruck  = calc.Text("No truck mixer carries this much. Check the unit.")
)

var inputs = []calc.Field{
	{ID: "length", Decides: 1, Label: calc.Text("Length of the house"), Display: &displays.Wall, Usual: "40 ft",
		Range: "over 0 to 500 ft", Why: noWall, WhyMost: oneHouse},
	{ID: "width", Decides: 2, Label: calc.Text("Width of the house"), Display: &displays.Wall, Usual: "28 ft",
		Range: "over 0 to 500 ft", Why: noWall, WhyMost: oneHouse},
	{ID: "height", Decides: 3, Measure: "height", Label: calc.Text("Height of the walls"), Display: &displays.Wall,
		Usual: "8 ft", Range: "over 0 to 60 ft", Why: noWall, WhyMost: oneStory},
	{ID: "core", Decides: 4, Measure: "core", Label: calc.Text("Core thickness"), Display: &displays.Part,
		Usual: "8 in",
		Help:  calc.Text("Concrete only, without the foam."),
		Range: "2 to 36 in", Why: thinCore, WhyMost: thickCore},
	{ID: "measured", Label: calc.Text("Lengths are taken along"), Kind: calc.Choice, Usual: atOutside,
		Help: calc.Text("Faces of the core, not of the foam."),
		Options: []calc.Option{
			{ID: atOutside, Label: calc.Text("outside face of core")},
			{ID: "centre", Label: calc.Text("centerline")},
			{ID: atInside, Label: calc.Text("inside face of core")},
		}},
	{ID: "waste", Label: calc.Text("Waste and spill"), Display: &geometry.WasteDisplay, Rule: "waste",
		Help:  calc.Text("Books say 0 to 10 %. Use what your own jobs show."),
		Range: "0 to 25 %", Why: noWaste, WhyMost: muchWaste},
	{ID: "sold-in", Label: calc.Text("The plant sells in"), Kind: calc.Choice, Usual: "yd3",
		Options: geometry.VolumeUnits},
	{ID: "step-yd", Label: calc.Text("Order step in yd³"), Display: &displays.CubicYards, When: geometry.SoldInYd,
		Usual: "0.5 yd³", Range: "0.05 to 5 yd³", Why: noStep, WhyMost: bigStep},
	{ID: "step-m", Label: calc.Text("Order step in m³"), Display: &displays.CubicMetres, When: geometry.SoldInM,
		Usual: "0.5 m³", Range: "0.05 to 5 m³", Why: noStep, WhyMost: bigStep},
	{ID: "truck-yd", Label: calc.Text("Truck carries, in yd³"), Display: &displays.CubicYards, When: geometry.SoldInYd,
		Usual: "9 yd³", Range: "1 to 16 yd³", Why: noTruck, WhyMost: bigTruck},
	{ID: "truck-m", Label: calc.Text("Truck carries, in m³"), Display: &displays.CubicMetres, When: geometry.SoldInM,
		Usual: "7 m³", Range: "1 to 12 m³", Why: noTruck, WhyMost: bigTruck},
}

// The faces that lengths are taken along; the third is the centerline.
const (
	atOutside = "outside"
	atInside  = "inside"
)

// The IDs of a volume in both units end in -yd and -m.
var outputs = []calc.Field{
	{ID: "order-yd", Label: calc.Text("Order in cubic yards"), Display: &displays.CubicYardsUp, Lead: true},
	{ID: "order-m", Label: calc.Text("Order in cubic meters"), Display: &displays.CubicMetresUp, Lead: true},
	{ID: "loads", Label: calc.Text("Truck loads"), Display: &displays.Count, Exact: true, Lead: true},
	{ID: "last-load-yd", Label: calc.Text("Last load, yd³"), Display: &displays.CubicYards},
	{ID: "last-load-m", Label: calc.Text("Last load, m³"), Display: &displays.CubicMetres},
	{ID: "net-yd", Label: calc.Text("Net volume, yd³"), Display: &displays.CubicYards},
	{ID: "net-m", Label: calc.Text("Net volume, m³"), Display: &displays.CubicMetres},
	{ID: "with-waste-yd", Label: calc.Text("With waste, yd³"), Display: &displays.CubicYards},
	{ID: "with-waste-m", Label: calc.Text("With waste, m³"), Display: &displays.CubicMetres},
	{ID: "extra", Label: calc.Text("Order over net volume"), Display: &geometry.ExtraDisplay},
	{ID: "middle", Label: calc.Text("Length along the middle"), Display: &displays.Wall},
}
