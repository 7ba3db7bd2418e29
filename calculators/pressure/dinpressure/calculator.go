// Package dinpressure computes the pressure of fresh concrete on a form by DIN 18218:2010-01,
// beside ACI 347 and CIRIA Report 108.
package dinpressure

import (
	"coursebook/calculators/calc"
	"coursebook/calculators/displays"
	"coursebook/calculators/figure"
	"coursebook/calculators/pressure"
)

// Calculator computes the pressure of fresh concrete on a form by DIN 18218:2010-01,
// beside ACI 347 and CIRIA Report 108.
var Calculator = &calc.Calculator{
	ID:    "din-pressure",
	Title: calc.Text("Form pressure by DIN 18218"),
	Purpose: calc.Text(
		"Shows what fresh concrete does to the form by the German method, beside ACI 347 and CIRIA 108.",
	),
	In: []calc.Field{
		{
			ID:      "height",
			Decides: 1,
			Measure: "height",
			Display: &displays.Height,
			Usual:   "10 ft",
			Range:   pressure.HeightRange,
			Why:     displays.CheckUnit,
			WhyMost: displays.Engineer,
			Label:   pressure.LabelHeight,
			Help:    pressure.HelpHeight,
		},
		{
			ID:      "rise",
			Decides: 2,
			Measure: "rise",
			Display: &displays.RiseTyped,
			Usual:   "4 ft/h",
			Range:   pressure.RiseRange,
			Why:     displays.CheckUnit,
			Label:   pressure.LabelRise,
			Help:    pressure.HelpRise,
		},
		{
			ID:      "class",
			Decides: 3,
			Kind:    calc.Choice,
			Usual:   "f3",
			Label:   pressure.LabelClass,
			Help:    pressure.HelpClass,
			Options: pressure.Classes,
		},
		{
			ID:      "set",
			Decides: 4,
			Display: &displays.Hours,
			Usual:   "7 h",
			Range:   pressure.SettingRange,
			Why:     displays.CheckUnit,
			Label:   pressure.LabelSet,
			Help:    pressure.HelpSet,
		},
		{
			ID: "set-at", Display: &displays.Temperature, Example: true, Usual: "60 °F",
			Label: calc.Text("Setting time holds at"),
			Help:  calc.Text("Concrete temperature at which the setting time was found."),
			Range: pressure.TemperatureRange, Why: displays.CheckUnit,
		},
		{
			ID:      "temperature",
			Measure: "concrete-temperature",
			Display: &displays.Temperature,
			Example: true,
			Usual:   "60 °F",
			Range:   pressure.TemperatureRange,
			Why:     displays.CheckUnit,
			Label:   pressure.LabelTemp,
			Help:    pressure.HelpTemp,
		},
		{
			ID:      "weight",
			Measure: "unit-weight",
			Display: &displays.UnitWeight,
			Usual:   "150 lb/ft³",
			Range:   pressure.WeightRange,
			Why:     displays.CheckUnit,
			Label:   pressure.LabelWeight,
			Help:    pressure.HelpWeight,
		},
		{ID: "way", Kind: calc.Choice, Usual: pressure.FromTop, Label: pressure.LabelWay, Options: pressure.Ways},
		{
			ID:      "cement",
			Kind:    calc.Choice,
			Usual:   string(pressure.Blend),
			Label:   pressure.LabelCement,
			Help:    pressure.HelpCement,
			Options: pressure.Cements,
		},
		{
			ID:      "admixture",
			Kind:    calc.Choice,
			Usual:   pressure.AdmixRetards,
			Label:   pressure.LabelAdmix,
			Help:    pressure.HelpAdmix,
			Options: pressure.Admixtures,
		},
	},
	Out: []calc.Field{
		{ID: "pressure", Display: &displays.Pressure, Lead: true, Label: calc.Text("Characteristic pressure")},
		{ID: "rule", Kind: calc.Choice, Options: pressure.RuledBy, Lead: true, Label: pressure.LabelRule},
		{ID: "fluid-depth", Display: &displays.Height, Label: pressure.LabelDepth, Help: pressure.HelpFluidZone},
		{ID: "head", Display: &displays.Pressure, Label: pressure.LabelHead},
		{ID: "k1", Display: &displays.Factor, Label: calc.Text("Setting time factor")},
		{ID: "cool", Display: &displays.Factor, Label: calc.Text("Temperature factor")},
		{ID: "methods", Kind: calc.Rows, Label: pressure.LabelMethods, Cols: pressure.MethodCols},
	},
	Formulas: []*calc.Formula{
		pressure.DINSetFormula,
		pressure.DINCoolFormula,
		pressure.DINStiffFormula,
		pressure.DINFlowingFormula,
		pressure.FluidHeadFormula,
		pressure.CappedFormula,
		pressure.FluidDepthFormula,
	},
	Sources: []calc.Source{
		pressure.SourceDIN, pressure.SourceDINMemory, pressure.SourceClasses, pressure.SourceACI, pressure.SourceHurd,
		pressure.SourceCIRIA,
	},
	Cautions: []calc.Caution{
		{
			Level: calc.LevelWarning,
			Text:  pressure.CautionOpen,
		}, {Level: calc.LevelWarning, Text: pressure.CautionGovern},
		{
			Level: calc.LevelCaution,
			Text: calc.Text(
				"Only the line for self-compacting concrete was read in print. Check the other classes against the " +
					"standard.",
			),
		},
	},
	Tables: []calc.Table{{
		ID: "rate", Title: calc.Text("Pressure of class F3 by rise and setting time"),
		Note: calc.Text(
			"Characteristic, for 13 ft (4 m) placed in one go. A lower wall never carries more than its fluid head.",
		),
		Out: "pressure", Set: []calc.Entry{{Path: "height", Text: "13 ft"}},
		Down: calc.Axis{
			Path:   "rise",
			US:     []string{"1", "2", "3", "5", "7", "10", "15"},
			Metric: []string{"0.3", "0.6", "1", "1.5", "2", "3", "5"},
		},
		Across: calc.Axis{Path: "set", US: []string{"5 h", "7 h", "10 h", "15 h", "20 h"}},
	}},
	Compute: compute,
	Draw: func(v calc.Locale, in calc.Case, res calc.Result) figure.Drawing {
		if res.State != calc.OK {
			return figure.Drawing{}
		}
		return pressure.ComparisonFigure(v, pour(in))
	},
}
