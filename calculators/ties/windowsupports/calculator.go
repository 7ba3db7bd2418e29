// Package windowsupports computes the pressure on the frame of an opening in a
// wall and the largest spacing of the supports inside it.
package windowsupports

import (
	"coursebook/calculators/calc"
	"coursebook/calculators/displays"
	"coursebook/calculators/pressure"
	"coursebook/calculators/quantity"
	"coursebook/calculators/ties"
)

// Calculator declares inputs, outputs, formulas and sources of the calculator.
var Calculator = &calc.Calculator{
	ID:    "window-supports",
	Title: calc.Text("Supports inside a window frame"),
	Purpose: calc.Text(
		"Shows what fresh concrete does to a window or door frame, and how far apart its supports may stand.",
	),
	In: []calc.Field{
		{
			ID: "width", Decides: 1, Display: &displays.Inches, Usual: "36 in",
			Label: calc.Text("Width of the opening"),
			Range: "6 in to 20 ft", Why: displays.CheckUnit, WhyMost: displays.Engineer,
		},
		{
			ID: "height", Decides: 2, Display: &displays.Inches, Usual: "48 in",
			Label: calc.Text("Height of the opening"),
			Range: "6 in to 16 ft", Why: displays.CheckUnit, WhyMost: displays.Engineer,
		},
		{
			ID: "cover", Decides: 3, Display: &displays.Height, Usual: "1' 4\"",
			Label: calc.Text("Concrete above the head"),
			Help:  calc.Text("All that is placed in one go above the opening."),
			Range: "0 to 30 ft", Why: displays.NotMinus, WhyMost: displays.Engineer,
		},
		{
			ID: "core", Measure: "core", Display: &displays.Inches,
			Example: true, Usual: "8 in", Label: calc.Text("Core thickness"),
			Help:  calc.Text("Width of concrete that bears on the frame."),
			Range: "2 to 36 in", Why: displays.CheckUnit,
		},
		{
			ID: "weight", Measure: "unit-weight", Display: &displays.UnitWeight, Usual: "150 lb/ft³",
			Label: ties.LabelWeight,
			Help:  ties.HelpWeight,
			Range: "85 to 200 lb/ft³", Why: displays.CheckUnit,
		},
		{
			ID: "form-pressure", Display: &displays.Rating, Optional: true, Label: calc.Text("Form pressure, if known"),
			Help:  calc.Text("At the hose. Counts only by the engineer's word. Empty: full fluid head."),
			Range: "100 to 5000 psf", Why: displays.CheckUnit,
		},
		{
			ID: "engineer", Kind: calc.Flag, Usual: "no", When: capped,
			Label: calc.Text("The engineer gave it"),
			Help:  calc.Text("In writing, for this very frame."),
		},
		{
			ID: "rating", Decides: 4, Maker: true, Display: &ties.ForceIn, Optional: true,
			Label: calc.Text("Rating of one support"),
			Help:  calc.Text("Post or spreader as you set it. Empty: only the board counts."),
			Range: "50 to 50000 lbf", Why: displays.CheckUnit,
		},
		{
			ID: "beam", Kind: calc.Choice, Usual: spanSimple, Label: calc.Text("The board spans as"),
			Options: []calc.Option{
				{ID: spanSimple, Label: calc.Text("Simple beam, from support to support (safe side)")},
				{ID: spanThrough, Label: calc.Text("One board over three or more spans")},
			},
		},
		{
			ID: "board-wide", Display: &displays.Inches, Usual: "9.25 in", Label: calc.Text("Width of the board"),
			Help:  calc.Text("Across the wall. Real size, not the name of the lumber."),
			Range: "1 to 36 in", Why: displays.CheckUnit,
		},
		{
			ID: "board-thick", Display: &displays.Part, Usual: "1.5 in", Label: calc.Text("Thickness of the board"),
			Help:  calc.Text("The way it bends, laid flat."),
			Range: "0.25 to 8 in", Why: displays.CheckUnit,
		},
		{
			ID: "stress", Display: &displays.Strength, Usual: "800 psi", Label: calc.Text("Allowed bending stress"),
			Help:  calc.Text("Default is common practice for wet lumber. Use your grade's."),
			Range: "100 to 5000 psi", Why: displays.CheckUnit,
		},
		{
			ID: "modulus", Display: &modulus, Usual: "1200000 psi", Label: calc.Text("Modulus of elasticity"),
			Help:  calc.Text("Default is common practice for wet lumber. Use your grade's."),
			Range: "100000 to 5000000 psi", Why: displays.CheckUnit,
		},
		{
			ID: "sag", Display: &displays.Count, Usual: "360", Label: calc.Text("Bends by one part in"),
			Help:  calc.Text("Of the span. Common practice: 360."),
			Range: "120 to 1000", Why: displays.CheckUnit,
		},
	},
	Out: []calc.Field{
		{ID: "spacing", Display: &displays.InchesAtMost, Lead: true, Label: calc.Text("Closest spacing needed")},
		{ID: "posts", Display: &displays.Count, Exact: true, Lead: true, Label: calc.Text("Posts, sill to head")},
		{
			ID:      "spreaders",
			Display: &displays.Count,
			Exact:   true,
			Lead:    true,
			Label:   calc.Text("Spreaders, jamb to jamb"),
		},
		{ID: "sill", Display: &displays.Pressure, Label: calc.Text("Pressure under the sill")},
		{
			ID: "sides", Kind: calc.Rows, Label: calc.Text("Side by side of the frame"),
			Cols: []calc.Field{
				{ID: "side", Kind: calc.Choice, Label: calc.Text("Side"), Options: []calc.Option{
					{ID: "head", Label: nameHead}, {ID: "jamb", Label: nameJamb}, {ID: "sill", Label: nameSill},
				}},
				{ID: "pressure", Display: &displays.Pressure, Label: calc.Text("Pressure")},
				{ID: "load", Display: &lineLoad, Label: calc.Text("Load per length")},
				{ID: "spacing", Display: &displays.InchesAtMost, Label: calc.Text("Supports apart at most")},
				{ID: "supports", Display: &displays.Count, Exact: true, Label: calc.Text("Supports inside")},
				{ID: "governs", Kind: calc.Choice, Label: calc.Text("Decided by"), Options: []calc.Option{
					{ID: byBend, Label: calc.Text("Stress in the board")},
					{ID: bySag, Label: calc.Text("Bending of the board")},
					{ID: bySupport, Label: calc.Text("Rating of the support")},
				}},
			},
		},
	},
	Formulas: []*calc.Formula{
		ties.HeadFormula,
		ties.LowerFormula,
		ties.LineLoadFormula,
		ties.BendSpanFormula,
		ties.SagSpanFormula,
		ties.SupportSpanFormula,
	},
	Sources: []calc.Source{
		ties.SourceFlorida, ties.SourceStatics, pressure.SourceACI,
		{
			ID:      "hurd",
			Author:  "M. K. Hurd",
			Title:   "Use updated wall pressure formulas",
			Edition: "letter on ACI 347-04, Concrete Construction",
			Where:   calc.Text("fluid head takes no coefficient"),
			Status:  calc.Confirmed,
			Link:    "https://www.concreteconstruction.net/how-to/use-updated-wall-pressure-formulas_o",
		},
		{ID: "lumber", Where: calc.Text("800 psi and 1 200 000 psi for wet construction lumber, a bend of 1/360 " +
			"of the span"), Status: calc.Memory},
	},
	Cautions: []calc.Caution{
		{
			Level: calc.LevelWarning,
			Text: calc.Text(
				"Place both sides of the opening at one height. A frame pushed from one side racks, however well it " +
					"is propped.",
			),
		},
		{
			Level: calc.LevelWarning,
			Text:  calc.Text("Shear, bearing and nails of the frame are not checked here. Nor is the form around it."),
		},
		{Level: calc.LevelWarning, Text: ties.CautionGovern},
	},
	Tables: []calc.Table{{
		ID: "posts", Title: calc.Text("Closest spacing by height of the opening and concrete above it"),
		Note: calc.Text(
			"Core 8 in. (200 mm), board 1-1/2 by 9-1/4 in. (38 by 235 mm) as a simple beam. All other inputs as " +
				"first shown.",
		),
		Out: "spacing",
		Down: calc.Axis{
			Path:   "height",
			US:     []string{"24", "36", "48", "60", "72", "84"},
			Metric: []string{"600", "900", "1200", "1500", "1800", "2100"},
		},
		Across: calc.Axis{
			Path:   "cover",
			US:     []string{"0", "1", "2", "4", "6"},
			Metric: []string{"0", "0.3", "0.6", "1.2", "1.8"},
		},
	}},
	Compute: compute,
	Draw:    draw,
}

// capped reports whether a form pressure is entered.
func capped(c calc.Case) bool { return c.Has("form-pressure") }

// Displays of the outputs. A load per length is rounded up.
var (
	lineLoad = quantity.Display{
		Dim:    quantity.LineLoad,
		US:     quantity.UnitDisplay{Unit: "lbf/ft", Step: 5, Rounding: quantity.Up},
		Metric: quantity.UnitDisplay{Unit: "kN/m", Step: 0.1, Rounding: quantity.Up},
	}
	modulus = quantity.Display{
		Dim:    quantity.Pressure,
		US:     quantity.UnitDisplay{Unit: "psi", Step: 10000},
		Metric: quantity.UnitDisplay{Unit: "MPa", Step: 100},
	}
)

// IDs of the options of how the board of the frame spans.
const (
	spanSimple  = "simple"
	spanThrough = "through"
)

const (
	nameHead = calc.Text("Head, pressed down")
	nameJamb = calc.Text("Jamb, pressed in")
	nameSill = calc.Text("Sill, pressed up")
)
