// Package slumpcheck decides from slump tests whether a load goes in the wall,
// is adjusted, tested again or refused. The chute shows what was bought, the
// hose what the form feels.
package slumpcheck

import (
	"coursebook/calculators/calc"
	"coursebook/calculators/displays"
	"coursebook/calculators/placing"
	"coursebook/calculators/quantity"
)

// Calculator declares inputs, outputs, formulas and sources of the calculator.
var Calculator = &calc.Calculator{
	ID:      "slump-check",
	Title:   calc.Text("Does this slump go in?"),
	Purpose: calc.Text("Whether a load goes in the wall, is adjusted, tested again or refused."),
	In:      inputs,
	Out:     outputs,
	Formulas: []*calc.Formula{
		placing.LeastByOrderFormula,
		placing.MostByOrderFormula,
		placing.WaterToAimFormula,
		placing.PumpLossFormula,
	},
	Sources: sources,
	Cautions: []calc.Caution{
		{
			Level: calc.LevelWarning,
			Text: calc.Text(
				"Over 7 in. (175 mm) of slump the form may carry the full push of a liquid. That load does not go in " +
					"the wall.",
			),
		},
		{
			Level: calc.LevelNotice,
			Text: calc.Text(
				"The engineer and the form guide come before this sheet. The foreman signs for water and reducer on " +
					"the ticket.",
			),
		},
		{
			Level: calc.LevelNotice,
			Text:  calc.Text("Two careful testers of one sample may read about 3/4 in. (20 mm) apart."),
		},
	},
	Tables:  tables,
	Compute: compute,
	Draw:    draw,
}

// Displays. A greatest slump is rounded down, a least one up.
var (
	reading = quantity.Display{
		Dim:    quantity.Length,
		US:     quantity.UnitDisplay{Unit: "in", Form: quantity.Inches, Step: 0.25},
		Metric: quantity.UnitDisplay{Unit: "mm", Step: 1},
	}
	slump = quantity.Display{
		Dim:    quantity.Length,
		US:     quantity.UnitDisplay{Unit: "in", Form: quantity.Inches, Step: 0.25},
		Metric: quantity.UnitDisplay{Unit: "mm", Step: 5, Rounding: quantity.Down},
	}
	slumpUp = quantity.Display{
		Dim:    quantity.Length,
		US:     quantity.UnitDisplay{Unit: "in", Form: quantity.Inches, Step: 0.25, Rounding: quantity.Up},
		Metric: quantity.UnitDisplay{Unit: "mm", Step: 5, Rounding: quantity.Up},
	}
	difference = quantity.Display{
		Dim:    quantity.Length,
		US:     quantity.UnitDisplay{Unit: "in", Form: quantity.Inches, Step: 0.25},
		Metric: quantity.UnitDisplay{Unit: "mm", Step: 5},
	}
	water = quantity.Display{
		Dim:    quantity.Volume,
		US:     quantity.UnitDisplay{Unit: "US gal", Step: 0.5, Rounding: quantity.Down},
		Metric: quantity.UnitDisplay{Unit: "L", Step: 1, Rounding: quantity.Down},
	}
)

const (
	nominal = "nominal"
	maximum = "maximum"

	came     = "came"
	adjusted = "adjusted"
	out      = "out"

	goesIn   = "in"
	reducer  = "reducer"
	withheld = "water"
	again    = "again"
	plant    = "plant"
	refuse   = "refuse"
)

// Reasons of limits.
const (
	whyDry  = calc.Text("Wall concrete this stiff cannot be pumped.")
	whyCone = calc.Text("The cone is 12 in. (305 mm) tall. Check the reading.")
)

var inputs = []calc.Field{
	{ID: "ordered", Decides: 1, Display: &reading, Rule: "slump-ordered",
		Label: calc.Text("Slump ordered"),
		Help:  calc.Text("At the chute. Read it off the order or the ticket."),
		Range: "1 to 10 in", Why: whyDry, WhyMost: whyCone},
	{ID: "ordered-as", Kind: calc.Choice, Usual: maximum, Label: calc.Text("Ordered as"), Options: []calc.Option{
		{ID: maximum, Label: calc.Text("maximum, not to exceed")},
		{ID: nominal, Label: calc.Text("nominal: just the number")},
	}},
	{ID: "chute", Decides: 2, Display: &reading, Usual: "5 1/2 in", Label: calc.Text("Slump at the chute"),
		Range: "0 to 11 in", Why: displays.NotMinus, WhyMost: whyCone},
	{ID: "chute-2", Display: &reading, Optional: true, Label: calc.Text("Second test at the chute"),
		Help:  calc.Text("Another portion of the same sample, at once. Empty: not tested."),
		Range: "0 to 11 in", Why: displays.NotMinus, WhyMost: whyCone},
	{ID: "chute-3", Display: &reading, Optional: true, Label: calc.Text("Third test at the chute"),
		Help: calc.Text("Where one of two is over and one is not. Empty: not tested."), When: tested,
		Range: "0 to 11 in", Why: displays.NotMinus, WhyMost: whyCone},
	{ID: "hose", Decides: 3, Measure: "slump", Display: &reading, Optional: true, Label: calc.Text("Slump at the hose"),
		Help:  calc.Text("What the form feels. Empty: not tested."),
		Range: "0 to 11 in", Why: displays.NotMinus, WhyMost: whyCone},
	{ID: "state", Decides: 4, Kind: calc.Choice, Usual: came, Label: calc.Text("The load now"), Options: []calc.Option{
		{ID: came, Label: calc.Text("as it came from the plant")},
		{ID: adjusted, Label: calc.Text("water or reducer added here")},
		{ID: out, Label: calc.Text("already going out")},
	}},
	{ID: "reducer", Kind: calc.Flag, Usual: "yes", Label: calc.Text("Water reducer on the truck")},
	{ID: "withheld", Display: &water, Optional: true, Label: calc.Text("Water withheld, on ticket"),
		Help:  calc.Text("Empty or zero: none may go in."),
		Range: "0 to 200 US gal", Why: displays.NotMinus, WhyMost: displays.CheckUnit},
	{ID: "load", Measure: "load", Display: &displays.Volume,
		Example: true, Usual: "9 yd³", Label: calc.Text("Concrete in the drum"),
		Range: "0.5 to 16 yd³", Why: placing.WhyTruck},
}

// tested reports whether a second test at the chute is entered.
func tested(c calc.Case) bool { return c.Has("chute-2") }

var outputs = []calc.Field{
	{ID: "verdict", Kind: calc.Choice, Lead: true, Label: calc.Text("This load"), Options: []calc.Option{
		{ID: goesIn, Advice: calc.Good, Label: calc.Text("Within the limit. The foreman decides and releases.")},
		{ID: reducer, Advice: calc.Careful, Label: calc.Text("Adjust with water reducer, then test again")},
		{ID: withheld, Advice: calc.Careful, Label: calc.Text("Adjust with withheld water, then test again")},
		{ID: again, Advice: calc.Careful, Label: calc.Text("Test again now; nothing goes in yet")},
		{ID: plant, Advice: calc.Stop, Label: calc.Text("Nothing goes in yet: call the plant")},
		{ID: refuse, Advice: calc.Stop, Label: calc.Text("Refuse it: not in the wall")},
	}},
	{ID: "goes-by", Display: &reading, Lead: true, Label: calc.Text("Slump that counts"),
		Help: calc.Text("The higher of two tests: careful testers may read 3/4 in. (20 mm) apart.")},
	{ID: "water", Display: &water, Lead: true, Label: calc.Text("Water that may go in"),
		Help: calc.Text("Once, signed by the foreman, then 30 turns of the drum.")},
	{ID: "least", Display: &slumpUp, Label: calc.Text("By the order, at least")},
	{ID: "most", Display: &slump, Label: calc.Text("By the order, at most")},
	{ID: "wall-most", Display: &slump, Lead: true, Label: calc.Text("In the wall, at most")},
	{ID: "pump-loss", Display: &difference, Label: calc.Text("Slump lost in the pump")},
}

var sources = []calc.Source{
	{
		ID:     "c94",
		Author: "ASTM",
		Title:  "C94, ready-mixed concrete",
		Where:  calc.Text("tolerances in slump; water once, none when the load is going out"),
		Status: calc.Memory,
	},
	{
		ID:      "c94-98",
		Author:  "ASTM",
		Title:   "C94, ready-mixed concrete, as quoted in The Concrete Producer",
		Edition: "C94-98",
		Where:   calc.Text("sec. 16.6: a load fails by a second test of the same sample"),
		Status:  calc.Secondary,
	},
	{
		ID:      "c143",
		Author:  "ASTM",
		Title:   "C143, slump of concrete, as quoted in The Concrete Producer",
		Edition: "C143-98",
		Where:   calc.Text("precision: two results of two testers within 0.83 in., found on stiff concrete"),
		Status:  calc.Secondary,
	},
	{
		ID:      "irc",
		Author:  "International Code Council",
		Title:   "International Residential Code",
		Edition: "2018",
		Where:   calc.Text("R608.5.1.4: more than 6 in. in forms that stay in place"),
		Status:  calc.Secondary,
	},
	{
		ID:     "hurd",
		Author: "M. K. Hurd",
		Title:  "Use updated wall pressure formulas",
		Where:  calc.Text("slump above 7 in.: full fluid head"),
		Status: calc.Confirmed,
		Link:   "https://www.concreteconstruction.net/how-to/use-updated-wall-pressure-formulas_o",
	},
	{
		ID:     "slump",
		Author: "Concrete Construction",
		Title:  "Adjusting slump in the field",
		Where: calc.Text("1 gal/yd³ gives about 1 in.; 1-1/4 in. by metric rules of thumb, used here so as not " +
			"to pass the aim"),
		Status: calc.Confirmed,
		Link:   "http://www.concreteconstruction.net/how-to/materials/adjusting-slump-in-the-field_o",
	},
	{ID: "own", Where: calc.Text("6 to 7 in. goes in, water aims at 6-1/2 in.; reducer before water; a stiff load is " +
		"adjusted once, not refused for it; under 4-1/2 in. at the hose nothing goes in"), Status: calc.OwnLimit},
}

var tables = []calc.Table{
	{ID: "least", Title: calc.Text("Least slump the plant may send"), Out: "least",
		Note: calc.Text("By the slump ordered, as a maximum and as a nominal number."),
		Down: orderAxis, Across: asAxis},
	{ID: "most", Title: calc.Text("Greatest slump the plant may send"), Out: "most",
		Note: calc.Text("By the slump ordered, as a maximum and as a nominal number."),
		Down: orderAxis, Across: asAxis},
}

var (
	orderAxis = calc.Axis{
		Path:   "ordered",
		US:     []string{"3", "4", "5", "6", "6 1/2", "7"},
		Metric: []string{"75", "100", "125", "150", "165", "175"},
	}
	asAxis = calc.Axis{Path: "ordered-as", US: []string{maximum, nominal}}
)
