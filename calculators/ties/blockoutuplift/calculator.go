// Package blockoutuplift computes the uplift and the net sideways force on a
// block-out in fluid concrete, and the number of straps that hold it down.
package blockoutuplift

import (
	"coursebook/calculators/calc"
	"coursebook/calculators/displays"
	"coursebook/calculators/quantity"
	"coursebook/calculators/ties"
)

// Calculator declares inputs, outputs, formulas and sources of the calculator.
var Calculator = &calc.Calculator{
	ID:      "block-out-uplift",
	Title:   calc.Text("Block-out: uplift and side push"),
	Purpose: calc.Text("Shows what lifts a block-out, what pushes it sideways, and how many straps hold it down."),
	In: []calc.Field{
		{
			ID: "length", Decides: 1, Display: &displays.Inches, Usual: "24 in",
			Label: calc.Text("Length along the wall"),
			Range: "1 in to 30 ft", Why: displays.CheckUnit, WhyMost: displays.Engineer,
		},
		{
			ID: "thickness", Measure: "core", Display: &displays.Inches, Example: true, Usual: "8 in",
			Label: calc.Text("Thickness in the wall"),
			Help:  calc.Text("What is in the core. All of it if the block-out goes through."),
			Range: "1 to 60 in", Why: displays.CheckUnit,
		},
		{
			ID: "height", Decides: 2, Display: &displays.Inches, Usual: "30 in",
			Label: calc.Text("Height of the block-out"),
			Range: "1 in to 20 ft", Why: displays.CheckUnit, WhyMost: displays.Engineer,
		},
		{
			ID: "side-a", Decides: 3, Display: &displays.Height, Usual: "2' 6\"",
			Label: calc.Text("Concrete above its foot, A"),
			Help:  calc.Text("Level of fluid concrete on one side, from the underside up."),
			Range: "0 to 40 ft", Why: displays.NotMinus, WhyMost: displays.Engineer,
		},
		{
			ID: "side-b", Decides: 4, Display: &displays.Height, Usual: "1' 6\"",
			Label: calc.Text("Concrete above its foot, B"),
			Help:  calc.Text("Level on the other side at the worst moment."),
			Range: "0 to 40 ft", Why: displays.NotMinus, WhyMost: displays.Engineer,
		},
		{
			ID: "sill", Kind: calc.Choice, Usual: "open", Label: calc.Text("Block-out or sill"),
			Options: []calc.Option{
				{ID: "open", Label: calc.Text("Holes in the sill, or a block: both sides rise together")},
				{ID: closed, Label: calc.Text("Closed sill: filled from one side")},
			},
		},
		{
			ID: "lift", Measure: "lift", Display: &displays.Height, Rule: "lift", When: isClosed,
			Label: calc.Text("Depth of one lift"),
			Help:  calc.Text("So far one side of a closed sill may be above the other."),
			Range: "1 in to 4 ft", Why: displays.CheckUnit, WhyMost: displays.Engineer,
		},
		{
			ID: "apart", When: isOpen, Display: &displays.Height, Rule: "opening-sides",
			Label: calc.Text("Sides apart at most"),
			Range: "1 in to 4 ft", Why: displays.CheckUnit, WhyMost: displays.Engineer,
		},
		{
			ID: "own", Display: &displays.Mass,
			Example: true, Usual: "15 lb", Label: calc.Text("Own weight of the block-out"),
			Range: "0 to 20000 lb", Why: displays.NotMinus, WhyMost: displays.CheckUnit,
		},
		{
			ID: "weight", Measure: "unit-weight", Display: &displays.UnitWeight, Usual: "150 lb/ft³",
			Label: ties.LabelWeight,
			Help:  ties.HelpWeight,
			Range: "85 to 200 lb/ft³", Why: displays.CheckUnit,
		},
		{
			ID: "rating", Maker: true, Display: &ties.ForceIn, Optional: true,
			Label: calc.Text("Rating of one strap"),
			Help:  calc.Text("Strap with both its fastenings: the weakest of the three."),
			Range: "10 to 20000 lbf", Why: displays.CheckUnit,
		},
		{
			ID: "factor", Display: &displays.Factor, Rule: "block-out-factor", Label: calc.Text("Factor on the uplift"),
			Help:  calc.Text("On the concrete pushed aside. The own weight is taken off once, after it."),
			Range: "1 to 5", Why: displays.Engineer, WhyMost: displays.CheckUnit,
		},
	},
	Out: []calc.Field{
		{ID: "straps", Display: &displays.CountUp, Exact: true, Lead: true, Label: calc.Text("Straps to hold it down")},
		{ID: "uplift", Display: &displays.Force, Lead: true, Label: calc.Text("Uplift")},
		{ID: "hold", Display: &displays.Force, Label: calc.Text("Straps hold in all"),
			Help: calc.Text("Factor times the concrete pushed aside, less the own weight.")},
		{ID: "push", Display: &displays.Force, Lead: true, Label: calc.Text("Push to the lower side")},
		{ID: "volume", Display: &cubicFeet, Label: calc.Text("Volume in the concrete")},
		{ID: "push-a", Display: &displays.Force, Label: calc.Text("Push on side A")},
		{ID: "push-b", Display: &displays.Force, Label: calc.Text("Push on side B")},
	},
	Formulas: []*calc.Formula{ties.SubmergedFormula, ties.UpliftFormula, ties.HoldingFormula, ties.SidePushFormula,
		ties.StrapShareFormula},
	Sources: []calc.Source{
		ties.SourceStatics,
		{
			ID:     "archimedes",
			Where:  calc.Text("Principle of Archimedes; buoyancy is the weight of the fluid displaced; from memory"),
			Status: calc.Memory,
		},
		{
			ID:     "flotation",
			Author: "US Army Corps of Engineers",
			Title:  "EM 1110-2-2100, Stability Analysis of Concrete Structures",
			Where:  calc.Text("safety against flotation: weight and anchors over uplift; from memory"),
			Status: calc.Memory,
		},
		{
			ID: "strap",
			Where: calc.Text("A factor on uplift, straps rounded up, at least two; a closed sill is filled from one " +
				"side, one lift at most above the other"),
			Status: calc.CommonPractice,
		},
	},
	Cautions: []calc.Caution{
		{
			Level: calc.LevelWarning,
			Text: calc.Text(
				"Place slowly and keep both sides at one height. That is the defense against side push; straps are " +
					"not.",
			),
		},
		{
			Level: calc.LevelWarning,
			Text:  calc.Text("A strap is as strong as what it is fixed to. Do not fix it to foam alone."),
		},
		{Level: calc.LevelWarning, Text: ties.CautionGovern},
	},
	Tables: []calc.Table{{
		ID: "uplift", Title: calc.Text("Uplift by length and height of the block-out"),
		Note: calc.Text("8 in. (200 mm) thick, covered by concrete on both sides, own weight 15 lb (7 kg)."),
		Out:  "uplift", Set: []calc.Entry{{Path: "side-a", Text: "10 ft"}, {Path: "side-b", Text: "10 ft"}},
		Down: calc.Axis{
			Path:   "length",
			US:     []string{"12", "24", "36", "48", "72"},
			Metric: []string{"300", "600", "900", "1200", "1800"},
		},
		Across: calc.Axis{
			Path:   "height",
			US:     []string{"8", "12", "24", "36", "48"},
			Metric: []string{"200", "300", "600", "900", "1200"},
		},
	}},
	Compute: compute,
	Draw:    draw,
}

// closed is the sill that is filled from one side.
const closed = "closed"

func isClosed(c calc.Case) bool { return c.Choice("sill") == closed }

func isOpen(c calc.Case) bool { return !isClosed(c) }

// cubicFeet displays the volume in the concrete.
var cubicFeet = quantity.Display{
	Dim:    quantity.Volume,
	US:     quantity.UnitDisplay{Unit: "ft³", Step: 0.1},
	Metric: quantity.UnitDisplay{Unit: "m³", Step: 0.005},
}
