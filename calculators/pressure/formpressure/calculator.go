// Package formpressure computes the pressure of the concrete on the form, in lifts
// or in one go, and what to do about it.
package formpressure

import (
	"coursebook/calculators/calc"
	"coursebook/calculators/pressure"
	"coursebook/calculators/quantity"
	"coursebook/calculators/weather"
)

// Calculator computes the pressure of the concrete on the form, in lifts or in one
// go, and what to do about it.
var Calculator = &calc.Calculator{
	ID:       "form-pressure",
	Title:    calc.Text("Form pressure and placing rate"),
	Purpose:  calc.Text("Shows how hard fresh concrete pushes on the form, and what to do: go, wait or stop."),
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
	pressure.LiftRiseFormula, pressure.LandedFormula, pressure.InLiftsFormula, pressure.StrictestFormula,
	pressure.RiseFormula,
	pressure.WallSlowFormula,
	pressure.WallFastFormula, pressure.FluidHeadFormula, pressure.LeastPressureFormula,
	pressure.CIRIAPressureFormula, pressure.DINStiffFormula, weather.SetArrheniusFormula, pressure.FluidDepthFormula,
	pressure.FlowFormula, pressure.LightWeightFormula,
	pressure.HeavyWeightFormula,
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

	displayLatest = &quantity.Display{
		Dim: quantity.Duration,
		US:  quantity.UnitDisplay{Unit: "h", Step: 1, Rounding: quantity.Down},
	}

	// An estimate of the set is rounded up.
	displayLatestSet = &quantity.Display{
		Dim: quantity.Duration,
		US:  quantity.UnitDisplay{Unit: "h", Step: 0.5, Rounding: quantity.Up},
	}

	// A wait is rounded up.
	displayWait = &quantity.Display{
		Dim: quantity.Duration,
		US:  quantity.UnitDisplay{Unit: "min", Step: 1, Rounding: quantity.Up},
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
		Where: calc.Text("Week 7, Wall Forms: both wall equations"), Status: calc.Secondary,
	},
	{
		ID: "washington", Author: "University of Washington", Title: "CM 420 Temporary Structures, wall form design " +
			"example",
		Where: calc.Text("slides 1 to 6: least pressure of 600 psf"), Status: calc.Secondary,
	},
	{
		ID: "peaks", Author: "Douglas et al.", Title: "Concrete International", Edition: "Nov. 1981",
		Where:  calc.Text("pp. 56-62, abstract: deep revibration gave peaks 40% above the wall equation"),
		Status: calc.Confirmed,
		Link:   "https://www.concrete.org/publications/internationalconcreteabstractsportal.aspx?id=15113&m=details",
	},
	{
		ID: "usbr", Author: "US Bureau of Reclamation", Title: "Concrete Manual", Edition: "8th ed.", Year: "1975",
		Where:  calc.Text("p. 270: walls up to 40 ft in one operation; p. 271: fluid beside the vibrator"),
		Status: calc.Confirmed,
	},
	{
		ID: "army", Author: "US Army Engineer School", Title: "Design Forms for a Concrete Wall",
		Edition: "Subcourse EN5151",
		Where:   calc.Text("Part C: rate of placing is the volume per hour over the plan area"), Status: calc.Confirmed,
	},
	pressure.SourceCIRIA, pressure.SourceDINMemory,
	{
		ID: "si", Author: "ACI Committee 347", Title: "Guide to Formwork for Concrete", Edition: "ACI 347R-14, SI " +
			"edition",
		Year: "2014", Where: calc.Text("least pressure of 30 kPa·C_w; limits of 4.2 m, 2.1 and 4.5 m/h"),
		Status: calc.Memory,
	},
	{
		ID: "c1074", Author: "ASTM", Title: "C1074 Estimating Concrete Strength by the Maturity Method",
		Where: calc.Text("equivalent age, Q of 5000 K"), Status: calc.Memory,
	},
	{
		ID: "c494", Author: "ASTM", Title: "C494/C494M Chemical Admixtures for Concrete",
		Where: calc.Text("types B and D set at most 3.5 h later"), Status: calc.Memory,
	},
	{ID: "own", Where: calc.Text("In no text that was read: half a lift, 5, 30 and 60 min, waits of 60 min at " +
		"most, 15 ft " +
		"at one stop, 5 yd³/h as the slowest pump, setting times of 5 to 8 h at 70 °F by cement, no " +
		"earlier than 7 h at 73 °F, the heads of nine hands, a " +
		"mix 20 °F warmer at most"), Status: calc.OwnLimit},
	{ID: "practice", Where: calc.Text("41 to 90 °F as the range of the equations, fluid head below it, no credit " +
		"above it"), Status: calc.CommonPractice},
}

// scaleUS and scaleMetric are the axis of concrete temperature in both printed tables.
var (
	scaleUS     = []string{"50", "60", "70", "80", "90"}
	scaleMetric = []string{"10", "15", "20", "25", "30"}
)

// tall are the inputs of both tables: about the tallest wall of the slow equation in both editions. The
// thick core and the low pump rate give a mean rise below every rise of the table.
var tall = []calc.Entry{
	{Path: "how", Text: around}, {Path: "height", Text: "13 ft"}, {Path: "lift", Text: "2 ft"},
	{Path: "thickness", Text: "36 in"}, {Path: "pump-rate", Text: "0.2 yd³/h"}, {Path: "cement", Text: "blend"},
	{Path: "admixture", Text: "retards"},
	{Path: "rating-is", Text: ratingWorking},
}

var tables = []calc.Table{
	{
		ID: "rate", Title: calc.Text("Pressure in lifts by mean rise and concrete temperature"),
		Note: calc.Text(
			"For 13 ft (4 m) placed in lifts of 2 ft (0.6 m), blended cement and a retarder. A lower wall never " +
				"carries more than its fluid head. Below 55 °F (13 °C) no load goes into a core under 12 in. " +
				"(305 mm). At 50 °F (10 °C) it may set later than 20 h, and the full fluid head counts.",
		),
		Out: "pressure-local", Set: tall,
		Down: calc.Axis{
			Path:   "rise",
			US:     []string{"1", "2", "3", "4"},
			Metric: []string{"0.3", "0.6", "0.9", "1.2"},
		},
		Across: calc.Axis{Path: "temperature", US: scaleUS, Metric: scaleMetric},
	},
	{
		ID: "rating", Title: calc.Text("Highest mean rise in lifts by rating and concrete temperature"),
		Note: calc.Text(
			"For 13 ft (4 m) placed in lifts of 2 ft (0.6 m), blended cement and a retarder. No rise is above the " +
				"house rule. At 0 no rise is slow enough. There is no plan under 1.6 ft/h (0.49 m/h) with loads " +
				"45 min old, and under 3 ft/h (0.91 m/h) with loads 80 min old. The hose is not back before a " +
				"joint window of 120 min ends.",
		),
		Out: "highest-rise", Set: tall,
		Down: calc.Axis{
			Path:   "rating",
			US:     []string{"700", "800", "1000", "1200", "1400", "1600"},
			Metric: []string{"35", "40", "50", "60", "70", "80"},
		},
		Across: calc.Axis{Path: "temperature", US: scaleUS, Metric: scaleMetric},
	},
}
