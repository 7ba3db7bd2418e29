// Package evaporation computes the rate of evaporation from fresh concrete by
// several published equations and compares the governing rate with a limit.
package evaporation

import (
	"coursebook/calculators/calc"
	"coursebook/calculators/displays"
	"coursebook/calculators/quantity"
	"coursebook/calculators/weather"
)

// Calculator declares inputs, outputs, formulas and sources of the calculator.
var Calculator = &calc.Calculator{
	ID:      "evaporation",
	Title:   calc.Text("Drying of the fresh surface"),
	Purpose: calc.Text("Shows how fast water leaves fresh concrete, and when to act against cracks."),
	In:      inputs,
	Out:     outputs,
	Formulas: []*calc.Formula{
		weather.UnoUSFormula,
		weather.UnoSIFormula,
		weather.VapourPressureFormula,
		weather.MenzelUSFormula,
		weather.MenzelSIFormula,
		weather.WindAtFormula,
	},
	Sources: sources,
	Cautions: []calc.Caution{
		{
			Level: calc.LevelNotice,
			Text: calc.Text(
				"The estimate is good to about 40 % either way. Watch the surface: when the sheen goes early, act.",
			),
		},
		{
			Level: calc.LevelNotice,
			Text: calc.Text(
				"In a foam form only the open top dries. The rate also counts for any slab placed that day.",
			),
		},
	},
	Tables:  tables,
	Compute: compute,
	Draw:    draw,
}

// The mixes, by how little they bleed.
const (
	mixPlain  = "plain"
	mixBlend  = "blend"
	mixSilica = "silica"
)

// The verdicts on a rate.
const (
	rateLow  = "low"
	rateDew  = "dew"
	rateCare = "care"
	rateAct  = "act"
)

var inputs = []calc.Field{
	{
		ID: "concrete", Example: true, Measure: "concrete-temperature", Kind: calc.Number,
		Display: &displays.Temperature, Usual: "85 °F",
		Label: calc.Text("Concrete temperature"),
		Range: "32 to 110 °F", Why: weather.WhyGel,
	},
	{
		ID: "air", Example: true, Measure: "air-temperature", Kind: calc.Number, Display: &displays.Temperature,
		Usual: "88 °F",
		Label: calc.Text("Air temperature"),
		Help:  calc.Text("In the shade, upwind, 4 to 6 ft (1.2 to 1.8 m) up."),
		Range: "32 to 122 °F", Why: calc.Text("Below freezing the equations do not hold."), WhyMost: weather.WhyLand,
		MostSource: "fao",
	},
	{
		ID: "humidity", Example: true, Kind: calc.Number, Display: &displays.Percent, Usual: "40%",
		Label: calc.Text("Relative humidity"),
		Range: "0 to 100 %", Why: displays.NotMinus, WhyMost: calc.Text("Air holds no more."),
	},
	{
		ID: "wind", Example: true, Kind: calc.Number, Display: &showWind, Usual: "12 mph", Label: calc.Text("Wind"),
		Help:  calc.Text("Best 20 in. (0.5 m) above the concrete. A forecast is the safe side."),
		Range: "0 to 60 mph", Why: displays.NotMinus, WhyMost: calc.Text("Nobody places concrete in more."),
	},
	{
		ID: "wind-height", Kind: calc.Number, Display: &showHeight, Optional: true,
		Label: calc.Text("Height of the wind reading"),
		Help:  calc.Text("Forecasts mean 33 ft (10 m). Empty: no reduction is shown."),
		Range: "0.5 to 15 m", Why: calc.Text("The equations want the wind at this height."),
		WhyMost: displays.CheckUnit,
	},
	{
		ID: "mix", Kind: calc.Choice, Usual: mixPlain, Label: calc.Text("Mix"),
		Options: []calc.Option{
			{ID: mixPlain, Label: calc.Text("Plain cement")},
			{ID: mixBlend, Label: calc.Text("Slag or fly ash blend")},
			{ID: mixSilica, Label: calc.Text("Silica fume, or hardly bleeds")},
		},
	},
}

var outputs = []calc.Field{
	{
		ID: "verdict", Kind: calc.Choice, Lead: true, Label: calc.Text("Drying"),
		Options: []calc.Option{
			{ID: rateLow, Advice: calc.Good, Label: calc.Text("Slow: usual care")},
			{ID: rateDew, Advice: calc.Careful, Label: calc.Text("Dew falls: cover the top")},
			{ID: rateCare, Advice: calc.Careful, Label: calc.Text("Careful: have protection ready")},
			{ID: rateAct, Advice: calc.Stop, Label: calc.Text("Too fast: act now")},
		},
	},
	{
		ID: "worst", Kind: calc.Number, Display: &showRate, Lead: true, Label: calc.Text("Evaporation"),
		Help: calc.Text("The faster one of two equations."),
	},
	{ID: "rate", Kind: calc.Number, Display: &showRate, Label: calc.Text("By Uno")},
	{ID: "limit", Kind: calc.Number, Display: &showRate, Label: calc.Text("Act from")},
	{ID: "careful", Kind: calc.Number, Display: &showRate, Label: calc.Text("Careful from")},
	{ID: "menzel", Kind: calc.Number, Display: &showRate, Label: calc.Text("By Menzel")},
	{ID: "uno-si", Kind: calc.Number, Display: &showRate, Label: calc.Text("By Uno's rounded SI form")},
	{ID: "wind-low", Kind: calc.Number, Display: &showWind, Label: calc.Text("Wind at 20 in. (0.5 m)")},
	{ID: "rate-low", Kind: calc.Number, Display: &showRate, Label: calc.Text("Evaporation in that wind")},
}

var sources = []calc.Source{
	{
		ID:      "uno",
		Author:  "P. J. Uno",
		Title:   "Plastic Shrinkage Cracking and Evaporation Formulas, ACI Materials Journal",
		Edition: "95-M34",
		Year:    "1998",
		Where:   calc.Text("US form of the equation"),
		Status:  calc.Memory,
	},
	{
		ID:     "ccaa",
		Author: "Cement Concrete & Aggregates Australia",
		Title:  "Data sheet: Hot-Weather Concreting",
		Year:   "2004",
		Where:  calc.Text("p. 1, SI form of the equation"),
		Status: calc.Confirmed,
	},
	{
		ID:     "menzel",
		Author: "C. A. Menzel",
		Title:  "Causes and prevention of crack development in plastic concrete",
		Year:   "1954",
		Where:  calc.Text("evaporation equation, as in ACI 305R"),
		Status: calc.Memory,
	},
	{
		ID:     "fao",
		Author: "FAO",
		Title:  "Irrigation and Drainage Paper 56",
		Year:   "1998",
		Where:  calc.Text("equations 11 and 47"),
		Status: calc.Confirmed,
	},
	{
		ID:      "fhwa",
		Author:  "FHWA",
		Title:   "Guide for Curing of Portland Cement Concrete Pavements II",
		Edition: "HRT-05-038",
		Year:    "2006",
		Where:   calc.Text("chapter 5: act above 1.0, careful above 0.5 kg/m²/h"),
		Status:  calc.Confirmed,
		Link:    "https://www.fhwa.dot.gov/publications/research/infrastructure/pavements/pccp/05038/005.cfm",
	},
	{
		ID:     "silica",
		Author: "Silica Fume Association",
		Title:  "Silica fume user's course",
		Where:  calc.Text("chapter 4: 0.2 lb/ft²/h, about half with silica fume"),
		Status: calc.Confirmed,
		Link:   "http://www.silicafume.org/slideshow.cgi?p=41&c=4&l=54",
	},
	{
		ID:      "hover",
		Author:  "K. C. Hover",
		Title:   "After Two Hundred Years of Estimating Evaporation, It Is Still a Mystery",
		Edition: "ACI SP-338",
		Year:    "2020",
		Where:   calc.Text("abstract: 40 % either way"),
		Status:  calc.Confirmed,
		Link:    "https://concrete.org/publications/internationalconcreteabstractsportal.aspx?id=51724723&m=details",
	},
	{ID: "own", Where: calc.Text("Three quarters of the limit for slag and fly ash blends; careful from half of " +
		"each limit"), Status: calc.OwnLimit},
}

var tables = []calc.Table{{
	ID: "rate", Title: calc.Text("Evaporation by humidity and wind"),
	Note: calc.Text("Concrete at 85 °F (29 °C), air at 88 °F (31 °C). Plain mixes: act from 0.2 lb/ft²/h (1 kg/m²/h)."),
	Out:  "worst", Down: calc.Axis{Path: "humidity", US: []string{"10%", "20%", "40%", "60%", "80%"}},
	Across: calc.Axis{
		Path:   "wind",
		US:     []string{"0 mph", "5 mph", "10 mph", "15 mph", "20 mph", "25 mph"},
		Metric: []string{"0 km/h", "8 km/h", "16 km/h", "24 km/h", "32 km/h", "40 km/h"},
	},
}}

// Displays of inputs and outputs.
var (
	showRate = quantity.Display{
		Dim:    quantity.EvaporationRate,
		US:     quantity.UnitDisplay{Unit: "lb/ft²/h", Step: 0.001},
		Metric: quantity.UnitDisplay{Unit: "kg/m²/h", Step: 0.01},
	}
	showWind = quantity.Display{
		Dim:    quantity.Speed,
		US:     quantity.UnitDisplay{Unit: "mph", Step: 1},
		Metric: quantity.UnitDisplay{Unit: "km/h", Step: 1},
	}
	showHeight = quantity.Display{
		Dim:    quantity.Length,
		US:     quantity.UnitDisplay{Unit: "ft", Form: quantity.FeetInches, Step: 1},
		Metric: quantity.UnitDisplay{Unit: "m", Step: 0.1},
	}
)
