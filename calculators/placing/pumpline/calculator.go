// Package pumpline computes the volume held by pump line, hose and hopper, the
// mass of the hanging hose, the volume of the prime and the extra volume to
// order. Volumes are given in cubic yards and in cubic metres.
package pumpline

import (
	"coursebook/calculators/calc"
	"coursebook/calculators/displays"
	"coursebook/calculators/placing"
	"coursebook/calculators/quantity"
)

// Calculator declares inputs, outputs, formulas and sources of the calculator.
var Calculator = &calc.Calculator{
	ID:      "pump-line",
	Title:   calc.Text("Pump line, hose and prime"),
	Purpose: calc.Text("What line and hopper hold, what the hose weighs, the prime, and what to order on top."),
	In:      inputs,
	Out:     outputs,
	Formulas: []*calc.Formula{
		placing.LineVolumeFormula,
		placing.PrimeVolumeFormula,
		placing.HoseWeightFormula,
		placing.HangingFormula,
	},
	Sources: sources,
	Cautions: []calc.Caution{
		{
			Level: calc.LevelWarning,
			Text: calc.Text(
				"Air or a plug in the line makes the end hose whip. Stand beyond its reach at priming, at each " +
					"restart and after a blockage.",
			),
		},
		{
			Level: calc.LevelWarning,
			Text: calc.Text(
				"Never open a coupling under pressure. The pump maker and the operator say how it is done.",
			),
		},
		{
			Level: calc.LevelNotice,
			Text: calc.Text(
				"Prime and the first watery concrete never go into the wall. Catch them in a box or on a sheet.",
			),
		},
	},
	Tables:  tables,
	Compute: compute,
	Draw:    draw,
}

const whyBore = calc.Text("Concrete lines measure 1.5 to 8 in (40 to 200 mm).")

var inputs = []calc.Field{
	{
		ID:      "lines",
		Decides: 1,
		Kind:    calc.Rows,
		MinRows: 1,
		MaxRows: 8,
		Usual:   "5 in | 100 ft; 4 in | 25 ft; 3 in | 12 ft",
		Label:   calc.Text("Pipes and hoses"),
		Help:    calc.Text("One row for each size, from the pump to the end hose."),
		Cols: []calc.Field{
			{ID: "bore", Display: &displays.Part, Label: calc.Text("Inside diameter"),
				Range: "1.5 to 8 in", Why: whyBore},
			{ID: "length", Display: &displays.Height, Label: calc.Text("Length"),
				Range: "over 0 to 2000 ft", Why: displays.LeaveOut, WhyMost: displays.CheckUnit},
		},
	},
	{ID: "hopper", Display: &smallVolume, Usual: "0.5 yd³", Label: calc.Text("Concrete left in the hopper"),
		Help:  calc.Text("The pump must not suck air. Ask the operator."),
		Range: "0 to 2 yd³", Why: displays.NotMinus, WhyMost: displays.CheckUnit},
	{
		ID:    "at-end",
		Kind:  calc.Choice,
		Usual: "waste",
		Label: calc.Text("What is in the line at last"),
		Options: []calc.Option{
			{ID: "waste", Label: calc.Text("Is washed out as waste")},
			{ID: "placed", Label: calc.Text("Is pushed out into the wall")},
		},
	},
	{ID: "hose", Decides: 2, Display: &displays.Part, Usual: "3 in", Label: calc.Text("End hose, inside diameter"),
		Range: "1.5 to 8 in", Why: whyBore},
	{ID: "hanging", Decides: 3, Display: &displays.Height, Usual: "12 ft",
		Label: calc.Text("Length of hose that hangs"),
		Range: "over 0 to 100 ft", Why: displays.AboveZero, WhyMost: displays.CheckUnit},
	{ID: "empty", Display: &perLength, Usual: "4 lb/ft", Label: calc.Text("Weight of the empty hose"),
		Help:  calc.Text("From the hose maker. Zero: concrete alone."),
		Range: "0 to 30 lb/ft", Why: displays.NotMinus, WhyMost: displays.CheckUnit},
	{ID: "weight", Display: &displays.UnitWeight, Usual: "150 lb/ft³", Label: calc.Text("Unit weight of concrete"),
		Range: "85 to 200 lb/ft³", Why: displays.CheckUnit},
	{ID: "stone", Decides: 4, Display: &displays.Part, Usual: "3/8 in", Label: calc.Text("Largest stone in the mix"),
		Range: "0.125 to 2 in", Why: displays.CheckUnit},
}

// Displays of what is ordered and lifted, rounded up: neither is known more finely.
var (
	tenthYards = quantity.Display{
		Dim: quantity.Volume,
		US:  quantity.UnitDisplay{Unit: "yd³", Step: 0.1, Rounding: quantity.Up},
	}
	tenthMetres = quantity.Display{
		Dim: quantity.Volume,
		US:  quantity.UnitDisplay{Unit: "m³", Step: 0.1, Rounding: quantity.Up},
	}
	hoseMass = quantity.Display{
		Dim:    quantity.Mass,
		US:     quantity.UnitDisplay{Unit: "lb", Step: 5, Rounding: quantity.Up},
		Metric: quantity.UnitDisplay{Unit: "kg", Step: 2, Rounding: quantity.Up},
	}
)

var outputs = []calc.Field{
	{ID: "extra-yd", Display: &tenthYards, Lead: true, Label: calc.Text("Order on top, yd³")},
	{ID: "extra-m", Display: &tenthMetres, Lead: true, Label: calc.Text("Order on top, m³")},
	{ID: "hanging-mass", Display: &hoseMass, Lead: true, Label: calc.Text("The hanging hose, filled")},
	{ID: "hose-mass", Display: &perLength, Label: calc.Text("Filled hose, by length")},
	{ID: "line-yd", Display: &displays.CubicYards, Label: calc.Text("In line and hose, yd³")},
	{ID: "line-m", Display: &displays.CubicMetres, Label: calc.Text("In line and hose, m³")},
	{ID: "held-yd", Display: &displays.CubicYards, Label: calc.Text("With the hopper, yd³")},
	{ID: "held-m", Display: &displays.CubicMetres, Label: calc.Text("With the hopper, m³")},
	{ID: "prime-least-yd", Display: &displays.CubicYardsUp, Label: calc.Text("Grout to prime, least, yd³")},
	{ID: "prime-least-m", Display: &displays.CubicMetresUp, Label: calc.Text("Grout to prime, least, m³")},
	{ID: "prime-most-yd", Display: &displays.CubicYardsUp, Label: calc.Text("Grout to prime, most, yd³")},
	{ID: "prime-most-m", Display: &displays.CubicMetresUp, Label: calc.Text("Grout to prime, most, m³")},
}

var sources = []calc.Source{
	{
		ID:     "hose",
		Author: "Concrete Construction",
		Title:  "Concrete pumping",
		Where:  calc.Text("10 ft of 2-1/2 in hose hold about 50 lb; hoses to 2-1/2 in: 3/8 in stone only"),
		Status: calc.Confirmed,
	},
	{
		ID:     "whip",
		Author: "American Concrete Pumping Association",
		Title:  "Hose whipping bulletin",
		Where:  calc.Text("as quoted in Concrete Construction, pump safety: stand beyond the hose's length"),
		Status: calc.Secondary,
		Link:   "http://www.concreteconstruction.net/business/management/safety-matters-concrete-pump-safety_o",
	},
	{
		ID: "prime",
		Where: calc.Text("A film of 1/4 to 1/2 in (6 to 13 mm) of grout; 1 yd³ for 1000 ft of 5 in line as in " +
			"ACI 304.2R; start of pumping, not read"),
		Status: calc.Memory,
	},
	{
		ID:     "third",
		Author: "ACI Committee 304",
		Title:  "Placing Concrete by Pumping Methods, ACI 304.2R",
		Where:  calc.Text("largest stone: a third of the smallest diameter"),
		Status: calc.Memory,
	},
	{
		ID:     "niosh",
		Author: "NIOSH",
		Title:  "Revised lifting equation",
		Year:   "1994",
		Where:  calc.Text("load constant 51 lb (23 kg)"),
		Status: calc.Memory,
	},
	{ID: "geometry", Where: calc.Text("Volume of a pipe"), Status: calc.CommonPractice},
}

var tables = []calc.Table{
	{
		ID:    "volume",
		Title: calc.Text("Cubic yards in a line, by inside diameter and length"),
		Out:   "line-yd",
		Down: calc.Axis{
			Path:   "lines.1.bore",
			US:     []string{"2 in", "2.5 in", "3 in", "4 in", "5 in"},
			Metric: []string{"50 mm", "65 mm", "80 mm", "100 mm", "125 mm"},
		},
		Across: calc.Axis{
			Path:   "lines.1.length",
			US:     []string{"25 ft", "50 ft", "100 ft", "150 ft", "200 ft"},
			Metric: []string{"10 m", "20 m", "30 m", "40 m", "60 m"},
		},
	},
	{ID: "mass", Title: calc.Text("Concrete in the hanging hose, by inside diameter and length"),
		Note: calc.Text(
			"Concrete alone, at 150 lb/ft³ (2400 kg/m³). The hose itself comes on top.",
		), Out: "hanging-mass",
		Set: []calc.Entry{{Path: "empty", Text: "0"}},
		Down: calc.Axis{
			Path:   "hose",
			US:     []string{"2 in", "2.5 in", "3 in", "4 in", "5 in"},
			Metric: []string{"50 mm", "65 mm", "80 mm", "100 mm", "125 mm"},
		},
		Across: calc.Axis{
			Path:   "hanging",
			US:     []string{"6 ft", "10 ft", "12 ft", "16 ft", "20 ft"},
			Metric: []string{"2 m", "3 m", "4 m", "5 m", "6 m"},
		}},
}

// Displays of inputs and outputs. A limit is rounded down.
var (
	smallVolume = quantity.Display{
		Dim:    quantity.Volume,
		US:     quantity.UnitDisplay{Unit: "yd³", Step: 0.05},
		Metric: quantity.UnitDisplay{Unit: "m³", Step: 0.05},
	}
	perLength = quantity.Display{
		Dim:    quantity.MassPerLength,
		US:     quantity.UnitDisplay{Unit: "lb/ft", Step: 0.1},
		Metric: quantity.UnitDisplay{Unit: "kg/m", Step: 0.1},
	}
	massDown = quantity.Display{
		Dim:    quantity.Mass,
		US:     quantity.UnitDisplay{Unit: "lb", Step: 1, Rounding: quantity.Down},
		Metric: quantity.UnitDisplay{Unit: "kg", Step: 1, Rounding: quantity.Down},
	}
	partDown = quantity.Display{
		Dim:    quantity.Length,
		US:     quantity.UnitDisplay{Unit: "in", Form: quantity.Inches, Step: 1.0 / 8, Rounding: quantity.Down},
		Metric: quantity.UnitDisplay{Unit: "mm", Step: 1, Rounding: quantity.Down},
	}
)

// putBoth sets the outputs id-yd and id-m to a volume, si in m³.
func putBoth(r *calc.Recorder, id string, si float64) {
	r.Put(id+"-yd", si)
	r.Put(id+"-m", si)
}
