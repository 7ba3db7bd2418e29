// Package formpressure computes the pressure of the concrete on the form and how
// fast it may rise. The verdict uses the rise at the hose, never the average.
package formpressure

import (
	"coursebook/calculators/calc"
	"coursebook/calculators/pressure"
	"coursebook/calculators/quantity"
)

// Calculator computes the pressure of the concrete on the form and how fast it
// may rise. The verdict uses the rise at the hose, never the average.
var Calculator = &calc.Calculator{
	ID:       "form-pressure",
	Title:    calc.Text("Form pressure and placing rate"),
	Purpose:  calc.Text("Shows what fresh concrete does to the form, and how fast it may rise where the hose stands."),
	In:       inputs,
	Out:      outputs,
	Formulas: equations,
	Sources:  sources,
	Cautions: cautions,
	Tables:   tables,
	Compute:  compute,
	Draw:     draw,
}

var equations = []*calc.Formula{
	pressure.RiseFormula, pressure.WallSlowFormula, pressure.WallFastFormula, pressure.FluidHeadFormula,
	pressure.LeastPressureFormula, pressure.BoundedFormula, pressure.FluidDepthFormula, pressure.RiseSlowFormula,
	pressure.RiseFastFormula, pressure.FlowFormula, pressure.LightWeightFormula, pressure.HeavyWeightFormula,
}

// Formats that only this calculator uses.
var (
	displayCore = &quantity.Display{
		Dim:    quantity.Length,
		US:     quantity.UnitDisplay{Unit: "in", Form: quantity.Inches, Step: 0.25},
		Metric: quantity.UnitDisplay{Unit: "mm", Step: 1},
	}
	displayFactor = &quantity.Display{Dim: quantity.Number, US: quantity.UnitDisplay{Step: 0.001}}
	displayTime   = &quantity.Display{
		Dim: quantity.Duration,
		US:  quantity.UnitDisplay{Unit: "min", Step: 5, Rounding: quantity.Up},
	}

	// A converted limit of the method is rounded to the strict side.
	displayWettest = &quantity.Display{
		Dim:    quantity.Length,
		US:     quantity.UnitDisplay{Unit: "in", Form: quantity.Inches, Step: 0.25},
		Metric: quantity.UnitDisplay{Unit: "mm", Step: 5, Rounding: quantity.Down},
	}
)

var sources = []calc.Source{
	pressure.SourceACI, pressure.SourceHurd,
	{
		ID: "florida", Author: "University of Florida", Title: "Temporary structures, lecture notes", Year: "2014",
		Where: "Week 7, Wall Forms: both wall equations", Status: calc.Secondary,
	},
	{
		ID: "washington", Author: "University of Washington", Title: "CM 420 Temporary Structures, wall form design " +
			"example",
		Where: "slides 1 to 6: least pressure of 600 psf", Status: calc.Secondary,
	},
	{
		ID: "peaks", Author: "Douglas et al.", Title: "Concrete International", Edition: "Nov. 1981", Year: "1981",
		Where: "pp. 56-62, abstract: deep revibration gave peaks 40% above the wall equation", Status: calc.Confirmed,
		Link: "https://www.concrete.org/publications/internationalconcreteabstractsportal.aspx?id=15113&m=details",
	},
	{
		ID: "usbr", Author: "US Bureau of Reclamation", Title: "Concrete Manual", Edition: "8th ed.", Year: "1975",
		Where: "p. 270: walls up to 40 ft in one operation; p. 271: fluid beside the vibrator", Status: calc.Confirmed,
	},
	{
		ID: "army", Author: "US Army Engineer School", Title: "Design Forms for a Concrete Wall",
		Edition: "Subcourse EN5151",
		Where:   "Part C: rate of placing is the volume per hour over the plan area", Status: calc.Confirmed,
	},
	{
		ID: "practice", Title: "Common practice: 40 to 90 °F as the range of the equations, fluid head below it, no " +
			"credit above it; a warning within one twentieth of a jump",
		Status: calc.CommonPractice,
	},
}

// scaleUS and scaleMetric are the axis of concrete temperature in both printed tables.
var (
	scaleUS     = []string{"40", "50", "60", "70", "80", "90"}
	scaleMetric = []string{"5", "10", "15", "20", "25", "30"}
)

// The tables are for the tallest wall of the slow equation. The long wall
// and the low pump rate give an average below every rise of the table.
var tables = []calc.Table{
	{
		ID: "rate", Title: calc.Text("Pressure by rise at the hose and concrete temperature"),
		Note: calc.Text(
			"For 14 ft (4.3 m) placed in one go, blended cement and a retarder. A lower wall never carries more than " +
				"its fluid head.",
		),
		Out: "pressure-local", Set: []calc.Entry{{Path: "height", Text: "14 ft"}, {Path: "length", Text: "2000 ft"},
			{Path: "pump-rate", Text: "1 yd³/h"}},
		Down: calc.Axis{
			Path:   "rise",
			US:     []string{"1", "2", "3", "4", "6", "10", "15"},
			Metric: []string{"0.3", "0.6", "0.9", "1.2", "1.8", "3", "4.5"},
		},
		Across: calc.Axis{Path: "temperature", US: scaleUS, Metric: scaleMetric},
	},
	{
		ID: "rating", Title: calc.Text("Highest rise by rating and concrete temperature"),
		Note: calc.Text(
			"For 14 ft (4.3 m) placed in one go, blended cement and a retarder. The rise is the one at the hose.",
		),
		Out: "highest-rise", Set: []calc.Entry{{Path: "height", Text: "14 ft"}},
		Down: calc.Axis{
			Path:   "rating",
			US:     []string{"600", "700", "800", "900", "1000", "1200"},
			Metric: []string{"30", "35", "40", "45", "50", "60"},
		},
		Across: calc.Axis{Path: "temperature", US: scaleUS, Metric: scaleMetric},
	},
}
