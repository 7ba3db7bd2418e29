// Package outsidevibration computes what is published for vibration of a form
// from outside: force and number of vibrators for stiff forms. For foam nothing
// is published and no number is given.
package outsidevibration

import (
	"coursebook/calculators/calc"
	"coursebook/calculators/consolidation"
	"coursebook/calculators/displays"
	"coursebook/calculators/quantity"
)

// Calculator declares inputs, outputs, formulas and sources of the calculator.
var Calculator = &calc.Calculator{
	ID:      "outside-vibration",
	Title:   calc.Text("Shaking from outside"),
	Purpose: calc.Text("What is known about vibrating a form from outside, and what is only practice."),
	In:      inputs,
	Out:     outputs,
	Formulas: []*calc.Formula{
		consolidation.AccelerationFormula,
		consolidation.ShakeFormula,
		consolidation.FormVibratorsFormula,
		consolidation.ForceEachFormula,
	},
	Sources: sources,
	Cautions: []calc.Caution{
		{
			Level: calc.LevelWarning,
			Text: calc.Text(
				"Shaking the form makes concrete fluid again. The form then takes the full fluid head, and can burst.",
			),
		},
		{
			Level: calc.LevelNotice,
			Text: calc.Text(
				"Codes ask for a vibrator inside for forms that stay. Shaking from outside does not replace it. The " +
					"form maker has the last word.",
			),
		},
	},
	Tables:  tables,
	Compute: compute,
	Draw:    draw,
}

var (
	showSwing = quantity.Display{
		Dim:    quantity.Length,
		US:     quantity.UnitDisplay{Unit: "in", Step: 0.001},
		Metric: quantity.UnitDisplay{Unit: "mm", Step: 0.01},
	}
	showShake = quantity.Display{Dim: quantity.Frequency, US: quantity.UnitDisplay{Unit: "vpm", Step: 100}}
	showThird = quantity.Display{
		Dim:    quantity.Force,
		US:     quantity.UnitDisplay{Unit: "lbf", Step: 10},
		Metric: quantity.UnitDisplay{Unit: "kN", Step: 0.1},
	}
)

const (
	whySwing = calc.Text("No form vibrator or drill swings like that. Check the unit.")
	whyFast  = calc.Text("No such tool runs at this speed. Check the unit.")
)

const foamForm = "foam"

var inputs = []calc.Field{
	{ID: "form", Kind: calc.Choice, Usual: foamForm, Label: calc.Text("Form and tool"), Options: []calc.Option{
		{ID: foamForm, Label: calc.Text("Foam form, drill-driven tool")},
		{ID: "stiff", Label: calc.Text("Stiff steel or precast form, form vibrators")}}},
	{ID: "frequency", Maker: true, Display: &showShake, Usual: "2000 vpm", Label: calc.Text("Speed of the tool"),
		Help:  calc.Text("Turns or strokes a minute, from its plate."),
		Range: "300 to 20000 vpm", Why: whyFast},
	{ID: "amplitude", Display: &showSwing, Example: true, Usual: "0.02 in", Label: calc.Text("Swing to each side"),
		Help:  calc.Text("Half of the whole travel, at the tool or on the form."),
		Range: "0.0005 to 0.25 in", Why: whySwing},
	{ID: "form-mass", Display: &displays.Mass, Example: true, Usual: "3000 lb", Label: calc.Text("Form weighs"),
		Range: "10 to 200000 lb", Why: displays.CheckUnit, When: stiff},
	{ID: "concrete-mass", Display: &displays.Mass,
		Example: true, Usual: "12000 lb", Label: calc.Text("Concrete in it weighs"),
		Range: "10 to 1000000 lb", Why: displays.CheckUnit, When: stiff},
	{ID: "length", Display: &displays.Height, Example: true, Usual: "20 ft", Label: calc.Text("Length of the form"),
		Range: "1 to 500 ft", Why: displays.CheckUnit, When: stiff},
}

// stiff reports whether the form is stiff: any but a foam form.
func stiff(c calc.Case) bool { return c.Choice("form") != foamForm }

var outputs = []calc.Field{
	{ID: "known", Kind: calc.Choice, Lead: true, Label: calc.Text("Published for this"), Options: []calc.Option{
		{ID: "nothing", Label: calc.Text("Nothing: practice only, no force, no time")},
		{ID: "rule", Label: calc.Text("A rule of thumb for stiff forms")}}},
	{ID: "acceleration", Display: &displays.Tenths, Lead: true, Label: calc.Text("Peak shake, times gravity"),
		Help: calc.Text("Where it is measured. Behind foam it is less, by how much is not known.")},
	{ID: "hertz", Display: &displays.Count, Label: calc.Text("Swings a second")},
	{ID: "floor", Kind: calc.Choice, Label: calc.Text("Against the least quoted"), Options: []calc.Option{
		{ID: "both", Label: calc.Text("Enough swing and acceleration")},
		{ID: "swing", Label: calc.Text("Too little swing")},
		{ID: "acceleration", Label: calc.Text("Too little acceleration")},
		{ID: "neither", Label: calc.Text("Too little of both")}}},
	{ID: "force", Display: &showThird, Label: calc.Text("Force of all vibrators")},
	{ID: "vibrators", Display: &displays.Count, Exact: true, Label: calc.Text("Vibrators along the form")},
	{ID: "force-each", Display: &showThird, Label: calc.Text("Force of each")},
}

var tables = []calc.Table{{
	ID: "acceleration", Title: calc.Text("Peak shake, times gravity, by speed and swing"),
	Note: calc.Text("At the tool or on the form itself. Half the speed gives a quarter."),
	Out:  "acceleration",
	Down: calc.Axis{
		Path: "frequency",
		US:   []string{"1000 vpm", "2000 vpm", "3000 vpm", "6000 vpm", "9000 vpm", "12000 vpm"},
	},
	Across: calc.Axis{Path: "amplitude", US: []string{"0.002 in", "0.005 in", "0.01 in", "0.02 in", "0.04 in"},
		Metric: []string{"0.04 mm", "0.1 mm", "0.25 mm", "0.5 mm", "1 mm"}},
}}

var sources = []calc.Source{
	{
		ID:     "producer",
		Author: "The Concrete Producer",
		Title:  "Pneumatic external vibrators",
		Where:  calc.Text("force is a third of form and concrete; precast forms"),
		Status: calc.Confirmed,
		Link:   "http://www.theconcreteproducer.com/air-entrainment/pneumatic-external-vibrators.aspx",
	},
	{
		ID:     "workman",
		Title:  consolidation.TitleWork,
		Where:  calc.Text("form vibrators no more than 3 ft apart"),
		Status: calc.Confirmed,
		Link:   consolidation.LinkWork,
	},
	{
		ID:     "least",
		Author: "Civil Engineering World",
		Title:  "Minimum vibration parameters for concrete compaction",
		Year:   "2016",
		Where:  calc.Text("peak acceleration; at least 40 µm and 1.5 g"),
		Status: calc.Secondary,
	},
	{ID: "irc", Author: "International Code Council", Title: "International Residential Code", Edition: "2018",
		Where: calc.Text("R404.1.3.3.5: vibration inside for forms that stay in place"), Status: calc.Secondary},
	{
		ID: "practice",
		Where: calc.Text("Shaking foam forms at the foot only, briefly, from the bottom up. No document " +
			"gives a figure through foam"),
		Status: calc.CommonPractice,
	},
}
