// Package aggregatesize computes the largest aggregate that passes between
// forms and bars and through the hose, and the sieve size below it.
package aggregatesize

import (
	"coursebook/calculators/calc"
	"coursebook/calculators/displays"
	"coursebook/calculators/quantity"
	"coursebook/calculators/steel"
)

// Calculator declares inputs, outputs, formulas and sources of the calculator.
var Calculator = &calc.Calculator{
	ID:      "aggregate-size",
	Title:   calc.Text("Largest stone in the mix"),
	Purpose: calc.Text("What stone still passes between the forms, past the bars and through the hose."),
	In:      inputs,
	Out:     outputs,
	Formulas: []*calc.Formula{
		steel.FormShareFormula,
		steel.GapShareFormula,
		steel.SlabShareFormula,
		steel.HoseShareFormula,
	},
	Sources: []calc.Source{
		{ID: "aci318", Author: "ACI", Title: "318-19, Building code for structural concrete", Year: "2019",
			Where: calc.Text("26.4.2.1(a)(5), as quoted in the institute's answer 754"), Status: calc.Confirmed,
			Link: "https://www.concrete.org/tools/frequentlyaskedquestions.aspx?faqid=754"},
		{
			ID:      "irc",
			Author:  "ICC",
			Title:   "International Residential Code",
			Edition: "2018",
			Where:   calc.Text("R608.5.1.3"),
			Status:  calc.Secondary,
		},
		{
			ID:     "bc",
			Author: "British Columbia",
			Title:  "Building Code",
			Where:  calc.Text("9.3.1.1.(4), walls in flat insulated forms: 19 mm"),
			Status: calc.Secondary,
		},
		{
			ID:     "aci304",
			Author: "ACI",
			Title:  "304.2R, Placing concrete by pumping methods",
			Where:  calc.Text("aggregate for pumping: a third, 40 % if rounded; as repeated elsewhere"),
			Status: calc.Secondary,
		},
		{
			ID:     "hoses",
			Author: "Concrete Construction",
			Title:  "Concrete pumping",
			Where:  calc.Text("2 to 2-1/2 in. hose: 3/8 in. stone only"),
			Status: calc.Confirmed,
		},
		{ID: "practice", Where: calc.Text("Three quarters of the clear gap between bar and form"),
			Status: calc.CommonPractice},
	},
	Cautions: []calc.Caution{
		{
			Level: calc.LevelNotice,
			Text: calc.Text(
				"The form maker's data and the mix design come first. Foam forms mostly take 3/8 or 1/2 in. stone.",
			),
		},
		{
			Level: calc.LevelCaution,
			Text:  calc.Text("Webs of the form, laps and boxes narrow the way too. Measure the tightest gap."),
		},
	},
	Tables: []calc.Table{{ID: "core", Title: calc.Text("Largest stone by core and bar gap"),
		Note: calc.Text("Without slab and hose. Before rounding down to a sieve size."),
		Out:  "most", Set: []calc.Entry{{Path: "cover", Text: ""}, {Path: "slab", Text: ""}, {Path: "hose", Text: ""}},
		Down: calc.Axis{
			Path:   "core",
			US:     []string{"4 in", "5.5 in", "6 in", "7.5 in", "8 in", "10 in"},
			Metric: []string{"100 mm", "140 mm", "150 mm", "190 mm", "200 mm", "250 mm"},
		},
		Across: calc.Axis{
			Path:   "gap",
			US:     []string{"0.75 in", "1 in", "1.5 in", "2 in", "3 in"},
			Metric: []string{"20 mm", "25 mm", "40 mm", "50 mm", "75 mm"},
		}}},
	Compute: compute,
	Draw:    draw,
}

const (
	rounded  = "rounded"
	byForms  = "forms"
	byGap    = "gap"
	byCover  = "cover"
	bySlab   = "slab"
	byHose   = "hose"
	bySmall  = "small-hose"
	whyThin  = calc.Text("No core this thin can be filled and vibrated.")
	whyClear = calc.Text("Too tight for any stone. Check the bars.")
)

// Displays of sieve sizes. Each has one unit in both systems.
var (
	sieveInches = quantity.Display{
		Dim: quantity.Length,
		US:  quantity.UnitDisplay{Unit: "in", Form: quantity.Inches, Step: 0.125},
	}
	sieveMetric = quantity.Display{Dim: quantity.Length, US: quantity.UnitDisplay{Unit: "mm", Step: 1}}
)

var inputs = []calc.Field{
	{ID: "core", Example: true, Measure: "core", Display: &displays.Part, Usual: "6 in",
		Label: calc.Text("Core thickness"),
		Help:  calc.Text("Narrowest concrete between the forms, without foam."),
		Range: "2 to 36 in", Why: whyThin, WhyMost: displays.CheckUnit},
	{ID: "gap", Example: true, Display: &displays.Part, Optional: true, Usual: "1.25 in",
		Label: calc.Text("Clear gap between bars"),
		Help:  calc.Text("The tightest place: at laps, corners, sills."),
		Range: "0.25 to 48 in", Why: whyClear, WhyMost: displays.CheckUnit},
	{ID: "cover", Example: true, Display: &displays.Part, Optional: true, Usual: "1.5 in",
		Label: calc.Text("Clear gap, bar to form"),
		Help:  calc.Text("Where stone must pass outside a bar."),
		Range: "0.25 to 36 in", Why: whyClear, WhyMost: displays.CheckUnit},
	{ID: "slab", Display: &displays.Part, Optional: true, Label: calc.Text("Slab placed with it"),
		Help:  calc.Text("Thickness, if the same mix goes into a slab."),
		Range: "1 to 36 in", Why: displays.CheckUnit},
	{ID: "hose", Example: true, Display: &displays.Part, Optional: true, Usual: "3 in",
		Label: calc.Text("Hose inside diameter"),
		Help:  calc.Text("The smallest in the line, reducer too."),
		Range: "1 to 8 in", Why: displays.CheckUnit},
	{ID: "stone", Kind: calc.Choice, Usual: "crushed", Label: calc.Text("Stone"),
		Options: []calc.Option{
			{ID: "crushed", Label: calc.Text("crushed or mixed")},
			{ID: rounded, Label: calc.Text("well-rounded gravel")},
		}},
}

var rules = []calc.Option{
	{ID: byForms, Label: calc.Text("1/5 between forms")},
	{ID: byGap, Label: calc.Text("3/4 of gap between bars")},
	{ID: byCover, Label: calc.Text("3/4 of gap, bar to form")},
	{ID: bySlab, Label: calc.Text("1/3 of slab")},
	{ID: byHose, Label: calc.Text("Share of hose diameter")},
	{ID: bySmall, Label: calc.Text("Small hose")},
}

var outputs = []calc.Field{
	{ID: "size-in", Display: &sieveInches, Lead: true, Label: calc.Text("Sieve size, inches")},
	{ID: "size-mm", Display: &sieveMetric, Lead: true, Label: calc.Text("Sieve size, mm")},
	{ID: "most", Display: &displays.PartAtMost, Label: calc.Text("Largest stone by the rules")},
	{ID: "governs", Kind: calc.Choice, Options: rules, Label: calc.Text("Decided by")},
	{ID: "rules", Kind: calc.Rows, Label: calc.Text("Rule by rule"), Cols: []calc.Field{
		{ID: "rule", Kind: calc.Choice, Options: rules, Label: calc.Text("Rule")},
		{ID: "of", Display: &displays.Part, Label: calc.Text("Measured")},
		{ID: "most", Display: &displays.PartAtMost, Label: calc.Text("Largest stone")},
	}},
}
