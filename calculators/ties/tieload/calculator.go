// Package tieload computes the load on one form tie, with all its neighbours or
// with some missing, and compares it with the working load of the tie. Only
// ties are checked: a weakened face gets the verdict "back it" unless its
// capacity is known.
package tieload

import (
	"coursebook/calculators/calc"
	"coursebook/calculators/displays"
	"coursebook/calculators/quantity"
	"coursebook/calculators/ties"
)

// Calculator declares inputs, outputs, formulas and sources of the calculator.
var Calculator = &calc.Calculator{
	ID:      "tie-load",
	Title:   calc.Text("Load on a form tie"),
	Purpose: calc.Text("Shows what one tie carries, also beside missing or cut ties, and if the face must be backed."),
	In: []calc.Field{
		{
			ID: "pressure", Decides: 1, Display: &displays.Rating, Usual: "630 psf",
			Label: calc.Text("Pressure at the tie"),
			Help:  calc.Text("At the depth of the tie, for the rise where the hose stands."),
			Range: "10 to 5000 psf", Why: displays.CheckUnit,
		},
		{
			ID: "across", Decides: 2, Display: &displays.Inches, Usual: "8 in",
			Label: calc.Text("Ties apart along the wall"),
			Range: "1 to 96 in", Why: displays.CheckUnit,
		},
		{
			ID: "up", Decides: 3, Display: &displays.Inches, Usual: "16 in", Label: calc.Text("Ties apart up the wall"),
			Range: "1 to 96 in", Why: displays.CheckUnit,
		},
		{
			ID: "missing", Display: &displays.Count, Whole: true, Usual: "1", Label: calc.Text("Ties missing or cut"),
			Help:  calc.Text("Next to one another, in one place."),
			Range: "0 to 6", Why: displays.NotMinus, WhyMost: displays.Engineer,
		},
		{
			ID: "sharing", Display: &displays.Count, Whole: true, Usual: "2",
			Label: calc.Text("Whole ties that take over"),
			Help:  calc.Text("Keep 2: one at each end of the gap. More only if the engineer says so."),
			Range: "1 to 8", Why: displays.AboveZero, WhyMost: displays.CheckCount,
		},
		{
			ID: "given", Kind: calc.Choice, Usual: asBreaking, Label: calc.Text("The tie is known by"),
			Options: []calc.Option{
				{ID: asBreaking, Label: calc.Text("its breaking strength")},
				{ID: asWorking, Label: calc.Text("a working load, at a factor of 2 or more")},
			},
		},
		{
			ID: "strength", Decides: 4, Maker: true, Display: &ties.ForceIn, Optional: true,
			Label: calc.Text("Strength or load of one tie"),
			Help:  calc.Text("From the form maker, tie in its foam. Empty: no verdict."),
			Range: "50 to 100000 lbf", Why: displays.CheckUnit,
		},
		{
			ID: "factor", Display: &displays.Factor, Usual: "2", Label: calc.Text("Factor on breaking"),
			Help: calc.Text("Breaking strength over working load."), When: byBreaking,
			Range: "2 to 10", Why: whyFactor, WhyMost: displays.CheckUnit, LeastSource: "factor",
		},
		{
			ID: "face", Kind: calc.Choice, Usual: faceWhole, Label: calc.Text("Face of the form there"),
			Options: []calc.Option{
				{ID: faceWhole, Label: calc.Text("As the maker ships it")},
				{ID: faceWeak, Label: calc.Text("Cut, patched, cracked or a joint on a joint")},
			},
		},
		{
			ID: "capacity", Maker: true, Display: &displays.Rating, Optional: true,
			Label: calc.Text("Capacity of the weak face"),
			Help:  calc.Text("Only from the form maker or the engineer, for this very state."),
			Range: "10 to 5000 psf", Why: displays.AskMaker,
		},
		{
			ID: "weight", Measure: "unit-weight", Display: &displays.UnitWeight, Usual: "150 lb/ft³",
			Label: ties.LabelWeight,
			Help:  ties.HelpWeight,
			Range: "85 to 200 lb/ft³", Why: displays.CheckUnit,
		},
	},
	Out: []calc.Field{
		{ID: "verdict", Kind: calc.Choice, Lead: true, Label: calc.Text("The ties alone"), Options: []calc.Option{
			{ID: holds, Advice: calc.Good, Label: calc.Text("Within the working load entered")},
			{ID: fails, Advice: calc.Stop, Label: calc.Text("Beyond the working load entered")},
			{ID: unrated, Advice: calc.Careful, Label: calc.Text("No strength, no verdict")},
			{ID: doubt, Advice: calc.Careful, Label: calc.Text("No verdict: ask the engineer")},
		}},
		{ID: "load", Display: &displays.Force, Lead: true, Label: calc.Text("Load on the busiest tie")},
		{ID: "backing", Kind: calc.Choice, Lead: true, Label: calc.Text("The face"), Options: []calc.Option{
			{ID: faceSound, Advice: calc.Good, Label: calc.Text("Not weakened")},
			{ID: faceBack, Advice: calc.Stop, Label: calc.Text("Back it before placing")},
			{ID: faceWithin, Advice: calc.Good, Label: calc.Text("Within the capacity entered")},
		}},
		{ID: "area", Display: &displays.Area, Label: calc.Text("Face that one tie holds")},
		{ID: "working", Display: &displays.ForceAtMost, Label: calc.Text("Working load of a tie")},
		{ID: "used", Display: &usedShare, Label: calc.Text("Share of working load used")},
		{ID: "widest", Display: &displays.InchesAtMost, Label: calc.Text("Widest spacing, along wall")},
		{ID: "face-height", Display: &displays.HeightAtMost, Label: calc.Text("Fluid height, weak face"),
			Help: calc.Text("Fluid concrete above the weak place, by the capacity entered.")},
	},
	Formulas: []*calc.Formula{
		ties.TieAreaFormula,
		ties.TieForceFormula,
		ties.WorkingLoadFormula,
		ties.TieSpacingFormula,
		ties.FaceHeightFormula,
	},
	Sources: []calc.Source{
		ties.SourceFlorida,
		{
			ID:     "factor",
			Author: "Concrete Construction",
			Title:  "Safety factor for form ties",
			Where:  calc.Text("factor of 1.5 by custom, at least 2 by ACI 347; 4500 lb over 1.5 is 3000 lb"),
			Status: calc.Confirmed,
			Link:   "https://www.concreteconstruction.net/how-to/safety-factor-for-form-ties_o",
		},
		{
			ID:      "army",
			Author:  "US Army Engineer School",
			Title:   "Design Forms for a Concrete Wall",
			Edition: "Subcourse EN5151",
			Where:   calc.Text("Part C: tie spacing rounded down, from breaking strength with no factor"),
			Status:  calc.Confirmed,
		},
		{
			ID:     "sharing",
			Where:  calc.Text("The ties at both ends of a gap take over its load"),
			Status: calc.CommonPractice,
		},
		ties.SourceStatics,
	},
	Cautions: []calc.Caution{
		{
			Level: calc.LevelWarning,
			Text:  calc.Text("This checks ties only. How the foam bends and how the tie grips it is not in it."),
		},
		{Level: calc.LevelWarning, Text: ties.CautionGovern},
	},
	Tables: []calc.Table{{
		ID: "load", Title: calc.Text("Load on one tie by pressure and spacing along the wall"),
		Note: calc.Text("Ties 16 in. (405 mm) apart up the wall, none missing."),
		Out:  "load", Set: []calc.Entry{{Path: "missing", Text: "0"}},
		Down: calc.Axis{
			Path:   "pressure",
			US:     []string{"300", "450", "600", "750", "900", "1200"},
			Metric: []string{"15", "20", "30", "35", "45", "60"},
		},
		Across: calc.Axis{
			Path:   "across",
			US:     []string{"6", "8", "12", "16", "24"},
			Metric: []string{"150", "200", "300", "400", "600"},
		},
	}},
	Compute: compute,
	Draw:    draw,
}

const whyFactor = calc.Text("ACI 347 asks for at least 2 on form ties.")

func byBreaking(c calc.Case) bool { return c.Choice("given") != asWorking }

// usedShare displays the share of the working load that is used, rounded up.
var usedShare = quantity.Display{
	Dim: quantity.Ratio,
	US:  quantity.UnitDisplay{Unit: "%", Step: 1, Rounding: quantity.Up},
}

// IDs of the options of the face and of the verdicts.
const (
	faceWhole = "whole"
	faceWeak  = "weak"

	asBreaking = "breaking"
	asWorking  = "working"

	holds   = "holds"
	fails   = "fails"
	unrated = "unrated"
	doubt   = "doubt"

	faceSound  = "sound"
	faceBack   = "back"
	faceWithin = "within"
)
