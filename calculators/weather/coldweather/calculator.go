// Package coldweather computes the least temperature of concrete in cold
// weather, the days of protection and the least time for uncovering.
package coldweather

import (
	"coursebook/calculators/calc"
	"coursebook/calculators/displays"
	"coursebook/calculators/quantity"
	"coursebook/calculators/weather"
)

// Calculator declares inputs, outputs, formulas and sources of the calculator.
var Calculator = &calc.Calculator{
	ID:    "cold-weather",
	Title: calc.Text("Cold weather placing and protection"),
	Purpose: calc.Text(
		"Shows how warm concrete must be in the cold, how long to protect it, and how slowly to cool it.",
	),
	In:       inputs,
	Out:      outputs,
	Formulas: []*calc.Formula{weather.CoolingTimeFormula},
	Sources:  sources,
	Cautions: []calc.Caution{
		{
			Level: calc.LevelDanger,
			Text: calc.Text(
				"Vent every fuel heater to the outside. Its fumes kill in a closed space, and they soften the fresh " +
					"surface.",
			),
		},
		{
			Level: calc.LevelNotice,
			Text: calc.Text(
				"The foam keeps the faces warm, not the top. Cover the top at once, and the openings, ends and " +
					"starter bars (common practice).",
			),
		},
		{
			Level: calc.LevelNotice,
			Text: calc.Text(
				"Never place on frozen ground or in forms with snow or ice. The project's specification and the " +
					"engineer come first.",
			),
		},
	},
	Tables:  tables,
	Compute: compute,
	Draw:    draw,
}

const (
	isCold   = "cold"
	isMild   = "mild"
	warmOK   = "ok"
	warmNot  = "too-cold"
	warmNone = "unread"
	warmHot  = "too-hot"
	early    = "early"
)

var inputs = []calc.Field{
	{
		ID: "section", Example: true, Kind: calc.Number, Display: &displays.Inches, Usual: "8 in",
		Label: calc.Text("Least dimension"),
		Help:  calc.Text("For a wall, the thickness of its core."),
		Range: "2 to 240 in", Why: displays.CheckUnit,
	},
	{
		ID: "air", Example: true, Measure: "air-temperature", Kind: calc.Number, Display: &displays.Temperature,
		Usual: "25 °F",
		Label: calc.Text("Coldest air expected"),
		Help:  calc.Text("From placing to the end of protection, nights too."),
		Range: "-40 to 100 °F", Why: weather.WhyLand,
	},
	{
		ID: "concrete", Example: true, Measure: "concrete-temperature", Kind: calc.Number,
		Display: &displays.Temperature, Optional: true, Usual: "62 °F",
		Label: calc.Text("Concrete, as it is placed"),
		Range: "20 to 110 °F", Why: weather.WhyGel,
	},
	{
		ID: "service", Kind: calc.Choice, Usual: serviceExposed, Label: calc.Text("The wall, while young"),
		Options: []calc.Option{
			{ID: serviceSheltered, Label: calc.Text("No load, no frost later (buried)")},
			{ID: serviceExposed, Label: calc.Text("No load, open to the weather")},
			{ID: servicePartly, Label: calc.Text("Part of its load, open to the weather")},
			{ID: serviceLoaded, Label: calc.Text("Its full load")},
		},
	},
	{
		ID: "cement", Kind: calc.Choice, Usual: "usual", Label: calc.Text("Mix"),
		Options: []calc.Option{
			{ID: "usual", Label: calc.Text("Type I or II cement, nothing added")},
			{ID: early, Label: calc.Text("Type III, accelerator, or 100 lb/yd³ (60 kg/m³) more cement")},
		},
	},
	{
		ID: "surface", Example: true, Kind: calc.Number, Display: &displays.Temperature, Optional: true, Usual: "60 °F",
		Label: calc.Text("Concrete under its cover"),
		Help:  calc.Text("When protection ends, on the surface. Empty: no cooling time."),
		Range: "20 to 180 °F", Why: weather.WhyGel, WhyMost: displays.CheckUnit,
	},
}

var outputs = []calc.Field{
	{
		ID: "weather", Kind: calc.Choice, Label: calc.Text("By the definition, this is"),
		Options: []calc.Option{
			{ID: isCold, Label: calc.Text("Cold weather: protect")},
			{ID: isMild, Label: calc.Text("No cold weather")},
		},
	},
	{
		ID: "verdict", Kind: calc.Choice, Lead: true, Label: calc.Text("The concrete is"),
		Options: []calc.Option{
			{ID: warmOK, Advice: calc.Good, Label: calc.Text("Warm enough. The foreman decides and releases.")},
			{ID: warmNot, Advice: calc.Stop, Label: calc.Text("Too cold: it does not go in")},
			{ID: warmHot, Advice: calc.Stop, Label: calc.Text("Too hot: refuse it")},
			{ID: warmNone, Advice: calc.Careful, Label: calc.Text("Not measured yet")},
		},
	},
	{
		ID:      "placed",
		Kind:    calc.Number,
		Display: &displays.TemperatureAtLeast,
		Lead:    true,
		Label:   calc.Text("Least, placed and kept"),
	},
	{ID: "mixed", Kind: calc.Number, Display: &displays.TemperatureAtLeast, Label: calc.Text("Least, as mixed")},
	{ID: "frost", Kind: calc.Number, Display: &displays.Days, Exact: true, Label: calc.Text("Protect against frost")},
	{ID: "strength", Kind: calc.Number, Display: &displays.Days, Exact: true, Label: calc.Text("Protect for strength")},
	{
		ID:      "specified",
		Kind:    calc.Number,
		Display: &displays.Days,
		Exact:   true,
		Label:   calc.Text("Where ACI 306.1 is specified"),
	},
	{ID: "drop", Kind: calc.Number, Display: &weather.ShowDrop, Label: calc.Text("Greatest fall in 24 h after")},
	{ID: "uncover", Kind: calc.Number, Display: &showHoursUp, Label: calc.Text("Take, to uncover, at least")},
}

var sources = []calc.Source{
	{
		ID:     "aci306",
		Author: "ACI Committee 306",
		Title:  "Cold Weather Concreting, ACI 306R-88",
		Year:   "1988",
		Where: calc.Text("Table 3.1; sections above 36 in. and fully loaded members; placed no more than 20 F° " +
			"over the " +
			"least"),
		Status: calc.Memory,
	},
	{
		ID:     "book",
		Author: "McGraw-Hill",
		Title:  "Masonry and Concrete",
		Year:   "2004",
		Where:  calc.Text("Figs. 3-37 and 3-38, adapted from ACI 306R"),
		Status: calc.Secondary,
	},
	{
		ID:     "spec",
		Author: "Concrete Construction",
		Title:  "Length of protection period in cold weather",
		Where:  calc.Text("ACI 306.1-90: 3 days or 2; 50 °F in 24 h; within 20 °F of the air"),
		Status: calc.Confirmed,
		Link:   "http://www.concreteconstruction.net/how-to/length-of-protection-period-in-cold-weather_o",
	},
	{
		ID:     "topic",
		Author: "American Concrete Institute",
		Title:  "Topics in concrete: cold weather concrete",
		Where:  calc.Text("definition of ACI 306R-16: air at or expected below 40 °F"),
		Status: calc.Confirmed,
		Link: "https://concrete.org/topicsinconcrete/topicdetail/" +
			"cold%20weather%20concrete?search=Cold+Weather+Concrete",
	},
	{
		ID:     "pca",
		Author: "Portland Cement Association",
		Title:  "Design and Control of Concrete Mixtures, chapter 14",
		Where:  calc.Text("older definition; frost risk ends at 500 psi (3.5 MPa)"),
		Status: calc.Confirmed,
	},
	{
		ID:     "astm",
		Author: "ASTM",
		Title:  "C94/C94M-15a Ready-Mixed Concrete",
		Year:   "2015",
		Where:  calc.Text("sec. 12.11: heated concrete at most 90 °F"),
		Status: calc.Secondary,
	},
	{
		ID:     "practice",
		Where:  calc.Text("Foam faces insulate and the top does not; cover the top first"),
		Status: calc.CommonPractice,
	},
}

var tables = []calc.Table{{
	ID: "mixed", Title: calc.Text("Least temperature as mixed"),
	Note: calc.Text("By least dimension and coldest air."),
	Out:  "mixed",
	Down: calc.Axis{
		Path:   "section",
		US:     []string{"8 in", "12 in", "48 in", "80 in"},
		Metric: []string{"200 mm", "350 mm", "1200 mm", "2000 mm"},
	},
	Across: calc.Axis{
		Path:   "air",
		US:     []string{"35 °F", "20 °F", "-10 °F"},
		Metric: []string{"2 °C", "-7 °C", "-23 °C"},
	},
}}

// airRange returns the index into weather.ColdLimits.Mixed for an air temperature in °F: 0 above
// 30, 1 from 0 to 30, 2 below.
func airRange(air float64) int {
	switch {
	case air > 30+calc.Slack:
		return 0
	case air >= -calc.Slack:
		return 1
	}
	return 2
}

// protection holds days of protection, for usual cement and for early strength.
type protection struct{ frost, strength [2]float64 }

// IDs of the options of load and exposure while the wall is young.
const (
	serviceSheltered = "sheltered"
	serviceExposed   = "exposed"
	servicePartly    = "partly"
	serviceLoaded    = "loaded"
)

// protectionDays returns the days of protection. A fully loaded member has no days
// for strength: its strength must be measured in place. Source: ACI 306R, as quoted
// in Masonry and Concrete, Fig. 3-38.
func protectionDays(service string) protection {
	switch service {
	case serviceSheltered:
		return protection{[2]float64{2, 1}, [2]float64{2, 1}}
	case servicePartly:
		return protection{[2]float64{3, 2}, [2]float64{6, 4}}
	case serviceLoaded:
		return protection{frost: [2]float64{3, 2}}
	}
	return protection{[2]float64{3, 2}, [2]float64{3, 2}}
}

// Displays of inputs and outputs. A time that is needed is rounded up.
var showHoursUp = quantity.Display{
	Dim: quantity.Duration,
	US:  quantity.UnitDisplay{Unit: "h", Step: 1, Rounding: quantity.Up},
}
