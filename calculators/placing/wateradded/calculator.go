// Package wateradded computes the effect of water added at the truck, as ranges
// of published rules of thumb, and whether the ticket allows it.
package wateradded

import (
	"coursebook/calculators/calc"
	"coursebook/calculators/displays"
	"coursebook/calculators/placing"
	"coursebook/calculators/quantity"
)

// Calculator declares inputs, outputs, formulas and sources of the calculator.
var Calculator = &calc.Calculator{
	ID:      "water-added",
	Title:   calc.Text("Water added at the truck"),
	Purpose: calc.Text("What water does to slump and strength, and whether the ticket lets it go in."),
	In:      inputs,
	Out:     outputs,
	Formulas: []*calc.Formula{
		placing.PerYardFormula,
		placing.SlumpGainFormula,
		placing.StrengthLossFormula,
		placing.WaterCementFormula,
		placing.CementLostFormula,
	},
	Sources: sources,
	Cautions: []calc.Caution{
		{
			Level: calc.LevelCaution,
			Text: calc.Text(
				"Only the water the ticket shows as withheld may go in. More makes the wall weaker for good. Refuse " +
					"the load instead.",
			),
		},
		{
			Level: calc.LevelNotice,
			Text: calc.Text(
				"It goes in on arrival, before the discharge, then 30 drum turns at mixing speed. Write it on the " +
					"ticket, signed.",
			),
		},
		{
			Level: calc.LevelNotice,
			Text: calc.Text(
				"Order the slump, do not hose it in: a water reducer costs no strength. Plant, engineer and local " +
					"code decide.",
			),
		},
	},
	Tables:  tables,
	Compute: compute,
	Draw:    draw,
}

// Displays of inputs and outputs. Water that may be added is rounded down.
var (
	water = quantity.Display{
		Dim:    quantity.Volume,
		US:     quantity.UnitDisplay{Unit: "US gal", Step: 0.5},
		Metric: quantity.UnitDisplay{Unit: "L", Step: 1},
	}
	waterDown = quantity.Display{
		Dim:    quantity.Volume,
		US:     quantity.UnitDisplay{Unit: "US gal", Step: 0.5, Rounding: quantity.Down},
		Metric: quantity.UnitDisplay{Unit: "L", Step: 1, Rounding: quantity.Down},
	}
	slumpLimit = quantity.Display{
		Dim:    quantity.Length,
		US:     quantity.UnitDisplay{Unit: "in", Form: quantity.Inches, Step: 0.25},
		Metric: quantity.UnitDisplay{Unit: "mm", Step: 1},
	}
	gallons      = quantity.Display{Dim: quantity.Volume, US: quantity.UnitDisplay{Unit: "US gal", Step: 0.1}}
	litres       = quantity.Display{Dim: quantity.Volume, US: quantity.UnitDisplay{Unit: "L", Step: 0.5}}
	strengthLoss = quantity.Display{
		Dim:    quantity.Pressure,
		US:     quantity.UnitDisplay{Unit: "psi", Step: 50},
		Metric: quantity.UnitDisplay{Unit: "MPa", Step: 0.5},
	}
	lossInKilograms = quantity.Display{Dim: quantity.Pressure, US: quantity.UnitDisplay{Unit: "kg/cm²", Step: 1}}
	cement          = quantity.Display{
		Dim:    quantity.Density,
		US:     quantity.UnitDisplay{Unit: "lb/yd³", Step: 1},
		Metric: quantity.UnitDisplay{Unit: "kg/m³", Step: 1},
	}
)

const (
	within = "within"
	wet    = "wet"
	beyond = "beyond"
	none   = "none"
)

// Reasons of limits.
const (
	whyDry  = calc.Text("Wall concrete this stiff cannot be pumped.")
	whyCone = calc.Text("The cone is 12 in. (305 mm) tall. Check the reading.")
)

const (
	labelWater    = calc.Text("Water you would add")
	labelWithheld = calc.Text("Water withheld, on ticket")
)

var inputs = []calc.Field{
	{ID: "load", Decides: 1, Measure: "load", Display: &displays.Volume, Usual: "9 yd³",
		Label: calc.Text("Concrete in the drum"),
		Help:  calc.Text("What is in it now. After discharge has begun, add nothing."),
		Range: "0.5 to 16 yd³", Why: placing.WhyTruck},
	{ID: "water", Decides: 2, Display: &water, Usual: "18 US gal", Label: labelWater,
		Range: "over 0 to 200 US gal", Why: displays.AboveZero, WhyMost: displays.CheckUnit},
	{ID: "withheld", Decides: 4, Display: &water, Usual: "9 US gal", Optional: true, Label: labelWithheld,
		Help:  calc.Text("Also called trim water. Empty or zero: none may go in."),
		Range: "0 to 200 US gal", Why: displays.NotMinus, WhyMost: displays.CheckUnit},
	{ID: "slump", Decides: 3, Display: &displays.Inches, Usual: "4 in", Label: calc.Text("Slump as it came"),
		Range: "0 to 10 in", Why: displays.NotMinus, WhyMost: calc.Text("A load this wet needs no water.")},
	{ID: "limit", Display: &slumpLimit, Rule: "slump-ordered", Label: calc.Text("Slump the wall takes"),
		Range: "1 to 10 in", Why: whyDry, WhyMost: whyCone},
	{ID: "air", Kind: calc.Choice, Usual: "unknown", Label: calc.Text("Entrained air"),
		Help: calc.Text("Water also raises the air, which costs more strength."), Options: []calc.Option{
			{ID: "no", Label: calc.Text("No air entrained")},
			{ID: "yes", Label: calc.Text("Air entrained")},
			{ID: "unknown", Label: calc.Text("Not known")},
		}},
	{ID: "cement", Display: &cement,
		Example: true, Usual: "564 lb/yd³", Optional: true, Label: calc.Text("Cement in the mix"),
		Help:  calc.Text("All of it, fly ash and slag too. From the mix design."),
		Range: "250 to 1200 lb/yd³", Why: displays.CheckUnit},
	{ID: "ratio", Display: &displays.Factor,
		Example: true, Usual: "0.50", Optional: true, Label: calc.Text("Water-cement ratio"),
		Help:  calc.Text("Of the mix design, the withheld water counted."),
		Range: "0.25 to 1", Why: displays.CheckUnit},
}

var outputs = []calc.Field{
	{ID: "verdict", Kind: calc.Choice, Lead: true, Label: calc.Text("By the ticket"), Options: []calc.Option{
		{ID: within, Advice: calc.Good, Label: calc.Text("Within the water withheld: the foreman signs for it")},
		{ID: wet, Advice: calc.Stop, Label: calc.Text("Leave it out: the slump may pass the limit")},
		{ID: beyond, Advice: calc.Stop, Label: calc.Text("More than was withheld: leave it out")},
		{ID: none, Advice: calc.Stop, Label: calc.Text("None was withheld: add none")},
	}},
	{ID: "strength-least", Display: &strengthLoss, Also: &lossInKilograms, Lead: true,
		Label: calc.Text("Strength lost, at least"),
		Help:  calc.Text("Against the load as it came.")},
	{ID: "strength-most", Display: &strengthLoss, Also: &lossInKilograms, Lead: true,
		Label: calc.Text("Strength lost, at most")},
	{ID: "may-add", Display: &waterDown, Label: calc.Text("Water that may go in")},
	{ID: "too-much", Display: &water, Label: calc.Text("Water too much")},
	{ID: "gal-per-yd", Display: &gallons, Label: calc.Text("Water in each yd³, US gal")},
	{ID: "litres-per-m", Display: &litres, Label: calc.Text("Water in each m³, L")},
	{ID: "slump-least", Display: &displays.Inches, Label: calc.Text("Slump after, at least")},
	{ID: "slump-most", Display: &displays.Inches, Label: calc.Text("Slump after, at most")},
	{ID: "ratio-after", Display: &ratioUp, Label: calc.Text("Water-cement ratio after")},
	{ID: "cement-lost", Display: &displays.Mass, Label: calc.Text("Cement wasted"),
		Help: calc.Text("About as if so much cement had been left out.")},
}

var sources = []calc.Source{
	{
		ID:     "slump",
		Author: "Concrete Construction",
		Title:  "Adjusting slump in the field",
		Where:  calc.Text("1 gal/yd³: 1 in of slump, 150 to 200 psi, a quarter bag of cement, 10% more shrinkage"),
		Status: calc.Confirmed,
		Link:   "http://www.concreteconstruction.net/how-to/materials/adjusting-slump-in-the-field_o",
	},
	{
		ID:     "air",
		Author: "Concrete Construction",
		Title:  "Adding water",
		Where:  calc.Text("1 gal/yd³: 200 to 400 psi with the air it brings"),
		Status: calc.Confirmed,
		Link:   "http://www.concreteconstruction.net/how-to/adding-water_o",
	},
	{
		ID:     "cip26",
		Author: "NRMCA",
		Title:  "Jobsite addition of water, CIP 26",
		Where:  calc.Text("figure 1: 0 to 3 gal/yd³; withheld or trim water"),
		Status: calc.Confirmed,
	},
	{
		ID:     "notes",
		Title:  "Mix rules of thumb, civil engineering notes",
		Where:  calc.Text("4 L/m³: 25 mm of slump, 1.5 to 2 MPa"),
		Status: calc.Confirmed,
	},
	{
		ID:      "c94",
		Author:  "ASTM",
		Title:   "C94, ready-mixed concrete",
		Edition: "C94-90",
		Where:   calc.Text("sec. 11.7: within the water-cement limit, on arrival, 30 turns"),
		Status:  calc.Secondary,
		Link:    "http://www.concreteconstruction.net/how-to/adding-water-to-concrete-at-the-jobsite_o",
	},
	{
		ID:     "hurd",
		Author: "M. K. Hurd",
		Title:  "Use updated wall pressure formulas",
		Where:  calc.Text("slump above 7 in: full fluid head"),
		Status: calc.Confirmed,
		Link:   "https://www.concreteconstruction.net/how-to/use-updated-wall-pressure-formulas_o",
	},
	{ID: "weight", Where: calc.Text("A US gallon of water weighs 8.34 lb; handbook value at 60 °F"),
		Status: calc.Memory},
}

var tables = []calc.Table{
	{ID: "strength", Title: calc.Text("Strength lost at most, by water and load"),
		Note: calc.Text("With air not known. A rule of thumb, not a forecast."), Out: "strength-most",
		Down: calc.Axis{
			Path:   "water",
			US:     []string{"2", "5", "10", "15", "20"},
			Metric: []string{"10", "20", "40", "60", "80"},
		},
		Across: calc.Axis{
			Path:   "load",
			US:     []string{"6", "7", "8", "9", "10"},
			Metric: []string{"5", "6", "7", "8", "9"},
		}},
	{ID: "per-yard", Title: calc.Text("US gallons in each cubic yard, by water and load"), Out: "gal-per-yd",
		Down: calc.Axis{
			Path:   "water",
			US:     []string{"2", "5", "10", "15", "20"},
			Metric: []string{"10", "20", "40", "60", "80"},
		},
		Across: calc.Axis{
			Path:   "load",
			US:     []string{"6", "7", "8", "9", "10"},
			Metric: []string{"5", "6", "7", "8", "9"},
		}},
}
