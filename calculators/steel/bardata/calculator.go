// Package bardata gives the nominal size and mass of a bar and computes the
// weight of a number of bars.
package bardata

import (
	"coursebook/calculators/calc"
	"coursebook/calculators/displays"
	"coursebook/calculators/quantity"
	"coursebook/calculators/steel"
)

// Calculator declares inputs, outputs, formulas and sources of the calculator.
var Calculator = &calc.Calculator{
	ID:      "bar-data",
	Title:   calc.Text("Bar sizes and weights"),
	Purpose: calc.Text("What a bar measures and what a bundle of bars weighs."),
	In:      inputs,
	Out:     outputs,
	Formulas: []*calc.Formula{
		steel.BarWeightFormula,
		steel.RoundAreaFormula,
		steel.MassPerLengthFormula,
		steel.HookLengthFormula,
	},
	Sources: []calc.Source{steel.SourceA615, steel.SourceG30,
		{
			ID:      "pci",
			Author:  "PCI",
			Title:   "Design Handbook",
			Edition: "7th ed.",
			Where:   calc.Text("design aid 15.4.1, bars and hooks, p. 15-34"),
			Status:  calc.Confirmed,
		},
		{
			ID:     "niosh",
			Author: "NIOSH",
			Title:  "Revised lifting equation",
			Year:   "1994",
			Where:  calc.Text("load constant 51 lb (23 kg)"),
			Status: calc.Memory,
		},
		{ID: "own", Where: calc.Text("No more than 4 people on one bar"), Status: calc.OwnLimit}},
	Cautions: []calc.Caution{
		{
			Level: calc.LevelCaution,
			Text: calc.Text(
				"Bars bend and slide when they are lifted. Weigh the bundle here before anyone picks it up.",
			),
		},
		{Level: calc.LevelNotice, Text: steel.SteelNotDesign},
	},
	Tables: []calc.Table{{ID: "weight", Title: calc.Text("Weight of one bar"),
		Note: calc.Text("One straight bar, by nominal mass, rounded up."),
		Out:  "weight", Set: []calc.Entry{{Path: "count", Text: "1"}},
		Down: calc.Axis{Path: "bar", US: []string{"3", "4", "5", "6", "10m", "15m", "20m"}},
		Across: calc.Axis{
			Path:   "length",
			US:     []string{"4 ft", "8 ft", "10 ft", "20 ft", "40 ft"},
			Metric: []string{"1.2 m", "2.4 m", "3 m", "6 m", "12 m"},
		}}},
	Compute: compute,
	Draw:    draw,
}

// Displays of the data of a bar.
var (
	barDiameter = quantity.Display{
		Dim:    quantity.Length,
		US:     quantity.UnitDisplay{Unit: "in", Step: 0.001},
		Metric: quantity.UnitDisplay{Unit: "mm", Step: 0.1},
	}
	barArea = quantity.Display{
		Dim:    quantity.Area,
		US:     quantity.UnitDisplay{Unit: "in²", Step: 0.01},
		Metric: quantity.UnitDisplay{Unit: "mm²", Step: 1},
	}
	barMass = quantity.Display{
		Dim:    quantity.MassPerLength,
		US:     quantity.UnitDisplay{Unit: "lb/ft", Step: 0.001},
		Metric: quantity.UnitDisplay{Unit: "kg/m", Step: 0.001},
	}
)

var inputs = []calc.Field{
	{ID: "bar", Kind: calc.Choice, Usual: "4", Options: steel.BarOptions, Label: calc.Text("Bar"),
		Help: calc.Text("The mark is rolled onto the bar.")},
	{ID: "length", Example: true, Display: &displays.Wall, Usual: "20 ft", Label: calc.Text("Length of one bar"),
		Range: "over 0 to 100 ft", Why: displays.AboveZero, WhyMost: displays.CheckUnit},
	{ID: "count", Example: true, Display: &displays.Count, Whole: true, Usual: "50", Label: calc.Text("How many bars"),
		Range: "1 to 100000", Why: displays.CheckCount},
}

var outputs = []calc.Field{
	{ID: "weight", Display: &displays.MassUp, Lead: true, Label: calc.Text("Weight of all bars")},
	{ID: "one", Display: &displays.MassUp, Label: calc.Text("Weight of one bar")},
	{ID: "diameter", Display: &barDiameter, Label: calc.Text("Nominal diameter"),
		Help: calc.Text("The ribs stand out further.")},
	{ID: "area", Display: &barArea, Label: calc.Text("Nominal area")},
	{ID: "mass", Display: &barMass, Label: calc.Text("Mass per length")},
	{ID: "total", Display: &steel.RunLength, Label: calc.Text("Length of all bars")},
	{ID: "bend", Display: &bendUp, Label: calc.Text("Hook: inside bend diameter"),
		Help: calc.Text("The least, rounded up to 1/8 in. (5 mm).")},
	{ID: "hook", Display: &hookSize, Label: calc.Text("Hook, 90°: outside to tail"),
		Help: calc.Text("Rounded up to 1/2 in. (10 mm). Printed tables may show up to 1/2 in. less.")},
}

// bendUp displays a least bend diameter, rounded up to the eighth of an inch.
var bendUp = quantity.Display{
	Dim:    quantity.Length,
	US:     quantity.UnitDisplay{Unit: "in", Form: quantity.Inches, Step: 0.125, Rounding: quantity.Up},
	Metric: quantity.UnitDisplay{Unit: "mm", Step: 5, Rounding: quantity.Up},
}

// hookSize displays the length of a hook, rounded up to the half inch.
var hookSize = quantity.Display{
	Dim:    quantity.Length,
	US:     quantity.UnitDisplay{Unit: "in", Form: quantity.Inches, Step: 0.5, Rounding: quantity.Up},
	Metric: quantity.UnitDisplay{Unit: "mm", Step: 10, Rounding: quantity.Up},
}
