// Package ciriapressure computes the pressure of fresh concrete on a form by CIRIA Report
// 108, beside ACI 347 and DIN 18218.
package ciriapressure

import (
	"coursebook/calculators/calc"
	"coursebook/calculators/displays"
	"coursebook/calculators/figure"
	"coursebook/calculators/pressure"
)

// Calculator computes the pressure of fresh concrete on a form by CIRIA Report
// 108, beside ACI 347 and DIN 18218.
var Calculator = &calc.Calculator{
	ID:    "ciria-pressure",
	Title: calc.Text("Form pressure by CIRIA 108"),
	Purpose: calc.Text(
		"Shows what fresh concrete does to the form by the British method, beside ACI 347 and DIN 18218.",
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
			ID: "form-height", Display: &displays.Height, Example: true, Usual: "10 ft",
			Label: calc.Text("Height of the form"),
			Help:  calc.Text("From its foot to its top edge, at least what is placed."),
			Range: "1 to 50 ft", Why: displays.CheckUnit, WhyMost: displays.Engineer,
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
			ID:      "temperature",
			Decides: 3,
			Measure: "concrete-temperature",
			Display: &displays.Temperature,
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
		{
			ID: "shape", Kind: calc.Choice, Usual: asWall,
			Label: calc.Text("Shape in plan"),
			Options: []calc.Option{
				{ID: asWall, Label: calc.Text("Wall: one plan size is 2 m (6.6 ft) or more")},
				{ID: asColumn, Label: calc.Text("Column: both plan sizes are under 2 m (6.6 ft)")},
			},
		},
		{ID: "way", Kind: calc.Choice, Usual: pressure.FromTop, Label: pressure.LabelWay, Options: pressure.Ways},
		{
			ID:      "class",
			Decides: 4,
			Kind:    calc.Choice,
			Usual:   "f3",
			Label:   pressure.LabelClass,
			Help:    pressure.HelpClass,
			Options: pressure.Classes,
		},
		{
			ID:      "set",
			Display: &displays.Hours,
			Example: true,
			Usual:   "7 h",
			Range:   pressure.SettingRange,
			Why:     displays.CheckUnit,
			Label:   pressure.LabelSet,
			Help:    pressure.HelpSet,
		},
	},
	Out: []calc.Field{
		{ID: "pressure", Display: &displays.Pressure, Lead: true, Label: calc.Text("Greatest pressure, CIRIA 108")},
		{ID: "rule", Kind: calc.Choice, Options: pressure.RuledBy, Lead: true, Label: pressure.LabelRule},
		{ID: "fluid-depth", Display: &displays.Height, Label: pressure.LabelDepth, Help: pressure.HelpFluidZone},
		{ID: "head", Display: &displays.Pressure, Label: pressure.LabelHead},
		{ID: "c1", Display: &displays.Factor, Label: calc.Text("Shape coefficient")},
		{ID: "c2", Display: &displays.Factor, Label: calc.Text("Mix coefficient")},
		{ID: "k", Display: &displays.Factor, Label: calc.Text("Temperature coefficient")},
		{ID: "methods", Kind: calc.Rows, Label: pressure.LabelMethods, Cols: pressure.MethodCols},
	},
	Formulas: []*calc.Formula{
		pressure.CIRIATemperatureFormula,
		pressure.CIRIAPressureFormula,
		pressure.FluidHeadFormula,
		pressure.CappedFormula,
		pressure.FluidDepthFormula,
	},
	Sources: []calc.Source{
		pressure.SourceCIRIA, sourceGroups,
		pressure.SourceACI, pressure.SourceHurd, pressure.SourceDIN, pressure.SourceDINMemory, pressure.SourceClasses,
	},
	Cautions: []calc.Caution{
		{Level: calc.LevelWarning, Text: pressure.CautionOpen},
		{Level: calc.LevelWarning, Text: pressure.CautionGovern},
	},
	Tables: []calc.Table{{
		ID: "rate", Title: calc.Text("Pressure by rise and concrete temperature"),
		Note: calc.Text(
			"For 13 ft (4 m) placed in a form of that height, blended cement and a retarder. A lower wall never " +
				"carries more than its fluid head.",
		),
		Out: "pressure", Set: []calc.Entry{{Path: "height", Text: "13 ft"}, {Path: "form-height", Text: "13 ft"}},
		Down: calc.Axis{
			Path:   "rise",
			US:     []string{"1", "2", "3", "5", "7", "10", "15"},
			Metric: []string{"0.3", "0.6", "1", "1.5", "2", "3", "5"},
		},
		Across: calc.Axis{
			Path:   "temperature",
			US:     []string{"41", "50", "60", "70", "80", "86"},
			Metric: []string{"5", "10", "15", "20", "25", "30"},
		},
	}},
	Compute: compute,
	Draw: func(v calc.Locale, in calc.Case, res calc.Result) figure.Drawing {
		if res.State != calc.OK {
			return figure.Drawing{}
		}
		return pressure.ComparisonFigure(v, pour(in))
	},
}

// The options of how the concrete is placed, and of the shape of the form.
const (
	asWall   = "wall"
	asColumn = "column"
)

// The sources that both European methods share.
var sourceGroups = calc.Source{
	ID:     "groups",
	Title:  "CIRIA Report 108",
	Where:  calc.Text("which concrete has which C_2; 5 to 30 °C; from memory"),
	Status: calc.Memory,
}
