// Package batterypacks computes how many battery packs a pour with battery
// vibrators needs, with and without charging on site.
package batterypacks

import (
	"coursebook/calculators/calc"
	"coursebook/calculators/consolidation"
	"coursebook/calculators/displays"
	"coursebook/calculators/quantity"
)

// Calculator declares inputs, outputs, formulas and sources of the calculator.
var Calculator = &calc.Calculator{
	ID:       "battery-packs",
	Title:    calc.Text("Battery packs for a pour"),
	Purpose:  calc.Text("How many charged packs a pour takes, with chargers and without."),
	In:       inputs,
	Out:      outputs,
	Formulas: formulas,
	Sources:  sources,
	Cautions: []calc.Caution{
		{
			Level: calc.LevelNotice,
			Text: calc.Text(
				"A vibrator that stops in a lift leaves voids that nobody sees. Have a second one that runs without " +
					"packs.",
			),
		},
		{
			Level: calc.LevelWarning,
			Text: calc.Text(
				"Packs can burn. Charge them dry, off the wall, as their maker says. Never charge a frozen or " +
					"damaged one.",
			),
		},
	},
	Tables:  tables,
	Compute: compute,
	Draw:    draw,
}

var showDraw = quantity.Display{Dim: quantity.Power, US: quantity.UnitDisplay{Unit: "W", Step: 10}}

const (
	whyVolts = calc.Text("Read it off the pack again.")
	whyDuty  = calc.Text("From a little to all of the time.")
	whyCold  = calc.Text("A pack that loses more is worn out or frozen.")
)

var inputs = []calc.Field{
	{ID: "known", Decides: 1, Kind: calc.Choice, Usual: "minutes", Label: calc.Text("Known of a pack"),
		Options: []calc.Option{
			{ID: "minutes", Label: calc.Text("Minutes it runs the tool")},
			{ID: "label", Label: calc.Text("Volts and amp-hours on its label")}}},
	{ID: "minutes", Display: &displays.Minutes,
		Example: true, Usual: "25 min", Label: calc.Text("Run time of a charge"),
		Help:  calc.Text("From the maker, or by your own watch. Running, not waiting."),
		Range: "2 to 600 min", Why: displays.CheckUnit, When: byMinutes},
	{ID: "volts", Display: &displays.Tenths, Example: true, Usual: "36", Label: calc.Text("Volts"),
		Range: "3 to 120", Why: whyVolts, When: byLabel},
	{ID: "amp-hours", Display: &displays.Tenths, Example: true, Usual: "4", Label: calc.Text("Amp-hours"),
		Range: "0.5 to 100", Why: whyVolts, When: byLabel},
	{ID: "draw", Display: &showDraw, Example: true, Usual: "350 W", Label: calc.Text("Draw of the tool at work"),
		Help:  calc.Text("Off its label, with the head in concrete. The figure here is only an example."),
		Range: "20 to 5000 W", Why: displays.CheckUnit, When: byLabel},
	{ID: "cold", Display: &displays.Percent, Usual: "10%", Label: calc.Text("Run time lost to cold or age"),
		Help:  calc.Text("Your own figure. Cold packs run shorter; keep them warm."),
		Range: "0 to 80 %", Why: displays.NotMinus, WhyMost: whyCold},
	{ID: "duty", Display: &displays.Percent, Usual: "60%", Label: calc.Text("Share of the time it runs"),
		Range: "5 to 100 %", Why: whyDuty},
	{ID: "pour", Decides: 3, Display: &displays.Hours, Usual: "3 h", Label: calc.Text("Length of the pour"),
		Range: "0.25 to 24 h", Why: displays.CheckUnit, WhyMost: displays.OneJob},
	{ID: "tools", Decides: 4, Display: &displays.Count, Whole: true, Usual: "2",
		Label: calc.Text("Tools at work at once"),
		Range: "1 to 20", Why: displays.CheckCount},
	{ID: "in-tool", Display: &displays.Count, Whole: true, Usual: "1", Label: calc.Text("Packs in a tool at once"),
		Range: "1 to 4", Why: displays.CheckCount},
	{ID: "chargers", Display: &displays.Count, Whole: true,
		Example: true, Usual: "2", Label: calc.Text("Chargers with power on site"),
		Range: "0 to 40", Why: displays.NotMinus, WhyMost: displays.CheckCount},
	{ID: "charge", Display: &displays.FiveMinutes,
		Example: true, Usual: "60 min", Label: calc.Text("Time to charge a pack"),
		Help:  calc.Text("With the time a hot pack needs to cool first."),
		Range: "5 min to 24 h", Why: displays.CheckUnit, When: charges},
	{ID: "spare", Display: &displays.Count, Whole: true, Usual: "1", Label: calc.Text("Spare packs"),
		Range: "0 to 20", Why: displays.NotMinus, WhyMost: displays.CheckCount},
}

func byMinutes(c calc.Case) bool { return c.Choice("known") != "label" }

func byLabel(c calc.Case) bool { return c.Choice("known") == "label" }

func charges(c calc.Case) bool { return c.Num("chargers") > 0 }

var outputs = []calc.Field{
	{ID: "bring", Display: &displays.Count, Exact: true, Lead: true, Label: calc.Text("Charged packs to bring"),
		Help: calc.Text("With the chargers on site, and the spare.")},
	{ID: "with", Display: &displays.Count, Exact: true, Label: calc.Text("Packs with charging")},
	{ID: "without", Display: &displays.Count, Exact: true, Lead: true, Label: calc.Text("Packs without charging")},
	{ID: "bring-without", Display: &displays.Count, Exact: true, Label: calc.Text("No charging, with spare")},
	{ID: "run", Display: &displays.MinutesAtMost, Label: calc.Text("Run time of a full pack")},
	{ID: "lasts", Display: &displays.MinutesAtMost, Lead: true, Label: calc.Text("A pack lasts, by the clock")},
	{ID: "changes", Display: &displays.Count, Exact: true, Label: calc.Text("Changes at each tool")},
	{ID: "keep-up", Display: &displays.Count, Exact: true, Label: calc.Text("Chargers that keep up")},
}

var tables = []calc.Table{{
	ID: "bring", Title: calc.Text("Charged packs to bring, by run time and length of pour"),
	Note: calc.Text("For the job above: two tools, two chargers, one spare."),
	Out:  "bring", Set: []calc.Entry{{Path: "known", Text: "minutes"}},
	Down:   calc.Axis{Path: "minutes", US: []string{"15 min", "20 min", "25 min", "30 min", "40 min", "60 min"}},
	Across: calc.Axis{Path: "pour", US: []string{"1 h", "2 h", "3 h", "4 h", "6 h"}},
}}

var sources = []calc.Source{
	{
		ID:     "cfr",
		Author: "US Department of Transportation",
		Title:  "49 CFR 171.8, definitions",
		Where:  calc.Text("watt-hour: ampere-hours times volts"),
		Status: calc.Confirmed,
	},
	{
		ID: "practice",
		Where: calc.Text("Cold and worn packs run shorter, by a share the crew knows; all tools change packs " +
			"together; one spare"),
		Status: calc.CommonPractice,
	},
}

var formulas = []*calc.Formula{
	consolidation.WattHoursFormula,
	consolidation.RunTimeFormula,
	consolidation.LastsFormula,
	consolidation.UnchargedFormula,
	consolidation.ChargersFormula,
	consolidation.BoundFormula,
}
