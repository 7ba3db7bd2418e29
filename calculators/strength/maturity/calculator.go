// Package maturity computes the temperature-time factor and the equivalent age
// from temperature readings. It gives a strength only by a calibration curve
// that is entered.
package maturity

import (
	"coursebook/calculators/calc"
	"coursebook/calculators/displays"
	"coursebook/calculators/quantity"
	"coursebook/calculators/strength"
)

// Calculator declares inputs, outputs, formulas and sources of the calculator.
var Calculator = &calc.Calculator{
	ID:       "maturity",
	Title:    calc.Text("Maturity from temperature"),
	Purpose:  calc.Text("How mature the concrete is, from temperatures measured in it."),
	In:       inputs,
	Out:      outputs,
	Formulas: formulas,
	Sources:  sources,
	Cautions: []calc.Caution{
		{Level: calc.LevelWarning, Text: strength.EstimateOnly},
		{
			Level: calc.LevelCaution,
			Text: calc.Text(
				"A strength curve holds for the one mix it was made with, while the concrete stays moist.",
			),
		},
		{
			Level: calc.LevelNotice,
			Text: calc.Text(
				"Between two readings, their mean counts. The standard reads every half hour for two days; hand " +
					"readings are coarser.",
			),
		},
	},
	Tables:  tables,
	Compute: compute,
	Draw:    draw,
}

var sources = []calc.Source{
	{
		ID:      "iowa",
		Author:  "Iowa DOT",
		Title:   "I.M. 383, Testing the strength of PCC using the maturity method",
		Edition: "October 2020",
		Where:   calc.Text("equation 2; datum −10 °C"),
		Status:  calc.Confirmed,
		Link:    "https://iowadot.gov/erl/archiveoct2020/IM/content/383.htm",
	},
	{ID: "c1074", Author: "ASTM", Title: "C1074, Estimating concrete strength by the maturity method",
		Where: calc.Text("temperature-time factor, equivalent age, appendix X1: datum 0 °C, 40 to 45 kJ/mol for " +
			"Type I"),
		Status: calc.Memory},
	{
		ID:     "ec2",
		Author: "CEN",
		Title:  "EN 1992-1-1, Eurocode 2",
		Year:   "2004",
		Where:  calc.Text("eq. (B.10), read in an open library of the fib"),
		Status: calc.Secondary,
	},
	{ID: "own", Where: calc.Text("No age or strength from concrete under its datum or frozen; no strength where " +
		"readings " +
		"are more than 24 h apart"), Status: calc.OwnLimit},
}

var tables = []calc.Table{
	{
		ID:    "constant",
		Title: calc.Text("Equivalent age at steady temperature"),
		Note:  calc.Text("By time since placing and one steady temperature. Other inputs as at first."),
		Out:   "age",
		Down:  calc.Axis{Path: "readings.1.time", US: []string{"12 h", "24 h", "48 h", "72 h", "168 h"}},
		Across: calc.Axis{
			Path:   "readings.1.temperature",
			US:     []string{"40 °F", "50 °F", "60 °F", "73.4 °F", "90 °F"},
			Metric: []string{"5 °C", "10 °C", "15 °C", "23 °C", "30 °C"},
		},
	},
}

var formulas = []*calc.Formula{
	strength.TimeFactorFormula,
	strength.ActivationRatioFormula,
	strength.EquivalentAgeFormula,
	strength.EurocodeAgeFormula,
	strength.LogStrengthFormula,
	strength.HyperbolicStrengthFormula,
}

// IDs of the calibration curves.
const (
	curveNone  = "none"
	curveLog   = "log"
	curveHyper = "hyperbolic"
)

// Displays of inputs and outputs. Calibration curves are in °C·h, so their figures
// have one unit in both systems.
var (
	celsiusHours = quantity.Display{Dim: quantity.Maturity, US: quantity.UnitDisplay{Unit: "C°·h", Step: 1}}
	factorSize   = quantity.Display{
		Dim: quantity.Maturity,
		US:  quantity.UnitDisplay{Unit: "C°·h", Step: 10, Rounding: quantity.Down},
	}
	fahrenheitHours = quantity.Display{
		Dim: quantity.Maturity,
		US:  quantity.UnitDisplay{Unit: "F°·h", Step: 10, Rounding: quantity.Down},
	}
	perDegreeHour = quantity.Display{Dim: quantity.Number, US: quantity.UnitDisplay{Step: 0.0001}}
	curveStrength = quantity.Display{
		Dim:    quantity.Pressure,
		US:     quantity.UnitDisplay{Unit: "psi", Step: 1},
		Metric: quantity.UnitDisplay{Unit: "MPa", Step: 0.01},
	}
	hoursAtMost = quantity.Display{
		Dim: quantity.Duration,
		US:  quantity.UnitDisplay{Unit: "h", Step: 1, Rounding: quantity.Down},
	}
	tenthHours = quantity.Display{Dim: quantity.Duration, US: quantity.UnitDisplay{Unit: "h", Step: 0.1}}
	reading    = quantity.Display{
		Dim:    quantity.Temperature,
		US:     quantity.UnitDisplay{Unit: "°F", Step: 0.5},
		Metric: quantity.UnitDisplay{Unit: "°C", Step: 0.5},
	}
	referenceAt = quantity.Display{
		Dim:    quantity.Temperature,
		US:     quantity.UnitDisplay{Unit: "°F", Step: 0.1},
		Metric: quantity.UnitDisplay{Unit: "°C", Step: 0.1},
	}
)

const (
	whyFrozen = calc.Text("Frozen concrete gains nothing. Check the reading.")
	whyHot    = calc.Text("The equations end here, and no wall gets this hot. Check the reading.")
	whyLong   = calc.Text("Maturity is for young concrete.")
	whyDatum  = calc.Text("Published datum temperatures lie between −11 °C and 10 °C.")
	whyEnergy = calc.Text("Cements lie between 25 and 70 kJ/mol.")
	whyRefer  = calc.Text("Reference temperatures in use are 20 °C and 23 °C.")
	whyCurve  = calc.Text("Take the figures from the report of the curve.")
)

func hasCurve(c calc.Case) bool { return c.Choice("curve") != curveNone }

func isLog(c calc.Case) bool { return c.Choice("curve") == curveLog }

func isHyper(c calc.Case) bool { return c.Choice("curve") == curveHyper }

var inputs = []calc.Field{
	{
		ID: "readings", Decides: 1, Kind: calc.Rows, MinRows: 1, MaxRows: 60,
		Label: calc.Text("Readings"),
		Help:  calc.Text("In order, at least daily. One row alone means that temperature since placing."),
		Usual: "0 h | 68 °F; 6 h | 75 °F; 12 h | 92 °F; 24 h | 88 °F; 48 h | 72 °F; 72 h | 66 °F",
		Cols: []calc.Field{
			{ID: "time", Display: &tenthHours, Label: calc.Text("Time since placing"),
				Range: "0 h to 60 d", Why: displays.NotMinus, WhyMost: whyLong},
			{ID: "temperature", Display: &reading, Label: calc.Text("Concrete temperature"),
				Range: "0 to 176 °F", Why: whyFrozen, WhyMost: whyHot, MostSource: "ec2"},
		},
	},
	{
		ID: "datum", Display: &reading, Usual: "32 °F",
		Label: calc.Text("Datum temperature"),
		Help:  calc.Text("0 °C for plain Type I by ASTM; highway manuals use −10 °C."),
		Range: "-12 to 10 °C", Why: whyDatum, LeastSource: "c1074", MostSource: "c1074",
	},
	{
		ID: "energy", Display: &displays.Tenths, Usual: "41.5",
		Label: calc.Text("Activation energy, kJ/mol"),
		Help:  calc.Text("40 to 45 for plain Type I. Other mixes need a test."),
		Range: "25 to 70", Why: whyEnergy,
	},
	{
		ID: "reference", Display: &referenceAt, Usual: "73.4 °F",
		Label: calc.Text("Reference temperature"),
		Help:  calc.Text("23 °C, or 20 °C where the curve was made so."),
		Range: "15 to 30 °C", Why: whyRefer,
	},
	{
		ID: "curve", Decides: 2, Kind: calc.Choice, Usual: curveNone,
		Label: calc.Text("Strength curve of this mix"),
		Help:  calc.Text("From the lab's report, over the factor in °C·h."),
		Options: []calc.Option{
			{ID: curveNone, Label: calc.Text("none|feminine")},
			{ID: curveLog, Label: calc.Text("a + b × log of the factor")},
			{ID: curveHyper, Label: calc.Text("hyperbolic: limit, rate, start")},
		},
	},
	{
		ID: "curve-a", Display: &curveStrength, Optional: true, When: isLog, Label: calc.Text("a of the curve"),
		Range: "-50000 to 10000 psi", Why: whyCurve,
	},
	{
		ID: "curve-b", Display: &curveStrength, Optional: true, When: isLog, Label: calc.Text("b of the curve"),
		Help:  calc.Text("Gain for each tenfold factor: the log is to base 10."),
		Range: "over 0 to 20000 psi", Why: whyCurve,
	},
	{
		ID: "curve-limit", Display: &curveStrength, Optional: true, When: isHyper,
		Label: calc.Text("Limiting strength"),
		Range: "over 0 to 20000 psi", Why: whyCurve,
	},
	{
		ID: "curve-rate", Display: &perDegreeHour, Optional: true, When: isHyper, Label: calc.Text("Rate, per °C·h"),
		Range: "over 0 to 1", Why: whyCurve,
	},
	{
		ID: "curve-start", Display: &celsiusHours, Optional: true, When: isHyper, Usual: "0 C°·h",
		Label: calc.Text("Factor where it starts"),
		Range: "0 to 5000 C°·h", Why: whyCurve,
	},
	{
		ID: "curve-to", Display: &celsiusHours, Optional: true, When: hasCurve,
		Label: calc.Text("Largest factor tested"),
		Help:  calc.Text("Past the last cylinder broken, the curve is a guess."),
		Range: "over 0 to 100000 C°·h", Why: whyCurve,
	},
}

var outputs = []calc.Field{
	{ID: "factor", Display: &factorSize, Lead: true, Label: calc.Text("Temperature-time, °C·h")},
	{ID: "factor-f", Display: &fahrenheitHours, Label: calc.Text("The same in °F·h")},
	{ID: "age", Display: &hoursAtMost, Lead: true, Label: calc.Text("Equivalent age"),
		Help: calc.Text("Hours at the reference temperature that give the same.")},
	{ID: "age-ec", Display: &hoursAtMost, Label: calc.Text("Age by Eurocode 2, 20 °C")},
	{ID: "elapsed", Display: &tenthHours, Label: calc.Text("Time covered by readings")},
	{ID: "mean", Display: &reading, Label: calc.Text("Mean temperature")},
	{ID: "strength", Display: &strength.StrengthAtLeast, Also: &strength.InKilograms, Lead: true,
		Label: calc.Text("Strength by your curve"),
		Help:  calc.Text("Estimate only.")},
	{
		ID: "intervals", Kind: calc.Rows, Label: calc.Text("Interval by interval"),
		Cols: []calc.Field{
			{ID: "to", Display: &tenthHours, Label: calc.Text("Until")},
			{ID: "mean", Display: &reading, Label: calc.Text("Mean")},
			{ID: "factor", Display: &factorSize, Label: calc.Text("Factor so far")},
			{ID: "age", Display: &hoursAtMost, Label: calc.Text("Age so far")},
		},
	},
}
