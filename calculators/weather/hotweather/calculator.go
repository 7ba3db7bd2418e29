// Package hotweather computes whether a load may be discharged: its
// temperature, its age, the time it takes to empty and the turns of its drum against the
// limits.
package hotweather

import (
	"coursebook/calculators/calc"
	"coursebook/calculators/displays"
	"coursebook/calculators/placing"
	"coursebook/calculators/quantity"
	"coursebook/calculators/weather"
)

// Calculator declares inputs, outputs, formulas and sources of the calculator.
var Calculator = &calc.Calculator{
	ID:      "hot-weather",
	Title:   calc.Text("Hot weather and discharge time"),
	Purpose: calc.Text("Whether this load is too hot or too old, and how much of it can be placed in time."),
	In:      inputs,
	Out:     outputs,
	Formulas: []*calc.Formula{weather.TimeLeftFormula, weather.EmptyTimeFormula, weather.InTimeFormula,
		weather.SpeedFormula},
	Sources: sources,
	Cautions: []calc.Caution{
		{
			Level: calc.LevelWarning,
			Text: calc.Text(
				"Heat makes people ill before it spoils concrete. Water, shade and rest for the crew; watch each " +
					"other.",
			),
		},
		{
			Level: calc.LevelNotice,
			Text:  calc.Text("The specification and the ticket come first. Water added to win time costs strength."),
		},
	},
	Tables:  tables,
	Compute: compute,
	Draw:    draw,
}

// IDs of the rules of discharge.
const (
	ruleOld = "c94"
	ruleNew = "c94-new"
	ruleOwn = "own"
)

// IDs of the humidity of hot air.
const (
	humidUnknown = "unknown"
	humidHigh    = "humid"
	humidMiddle  = "middle"
	humidLow     = "dry"
)

// IDs of the verdicts on a load.
const (
	loadGood  = "good"
	loadHurry = "hurry"
	loadPart  = "part"
	loadLate  = "late"
	loadHot   = "hot"
	loadHouse = "house"
)

var inputs = []calc.Field{
	{
		ID: "age", Decides: 1, Kind: calc.Number, Display: &displays.Minutes, Usual: "35 min",
		Label: calc.Text("Age of the load now"),
		Help:  calc.Text("Since water met cement: the batch time on the ticket."),
		Range: "0 to 600 min", Why: displays.NotMinus, WhyMost: displays.CheckUnit,
	},
	{
		ID:       "batched",
		Kind:     calc.Clock,
		Optional: true,
		Example:  true,
		Usual:    "7:40",
		Label:    calc.Text("Batch time on the ticket"),
		Help:     calc.Text("Gives the clock time to be empty by."),
	},
	{
		ID: "load", Measure: "load", Kind: calc.Number, Display: &displays.Volume, Example: true, Usual: "9 yd³",
		Label: calc.Text("Concrete in the drum"),
		Range: "0.5 to 16 yd³", Why: placing.WhyTruck,
	},
	{
		ID: "rate", Decides: 4, Measure: "pump-rate", Kind: calc.Number, Display: &displays.PumpRate, Usual: "12 yd³/h",
		Label: calc.Text("Pump rate, stops included"),
		Help:  calc.Text("What really leaves a truck in an hour, moving the hose included."),
		Range: "0.5 to 200 yd³/h", Why: placing.WhyPump,
	},
	{
		ID: "concrete", Decides: 2, Measure: "concrete-temperature", Kind: calc.Number, Display: &displays.Temperature,
		Usual: "84 °F",
		Label: calc.Text("Concrete temperature"),
		Range: "32 to 120 °F", Why: weather.WhyGel,
	},
	{
		ID: "air", Decides: 3, Measure: "air-temperature", Kind: calc.Number, Display: &displays.Temperature,
		Usual: "80 °F",
		Label: calc.Text("Air at the truck"),
		Help:  calc.Text("In the shade. Over 85 °F (29 °C) the load must be cooler as the air gets drier."),
		Range: "-20 to 130 °F", Why: displays.CheckUnit,
	},
	{
		ID: "humidity", Kind: calc.Choice, Usual: humidUnknown, When: hotAir, Label: calc.Text("Humidity of the air"),
		Options: []calc.Option{
			{ID: humidUnknown, Label: calc.Text("not known: counts as dry")},
			{ID: humidHigh, Label: calc.Text("above 60 %")},
			{ID: humidMiddle, Label: calc.Text("40 to 60 %")},
			{ID: humidLow, Label: calc.Text("below 40 %")},
		},
	},
	{
		ID: "limit-temp", Kind: calc.Number, Display: &displays.Temperature, Rule: "hot-load", HoldsRule: true,
		Label: calc.Text("Hottest allowed at discharge"),
		Help:  calc.Text("ACI 301 and 305.1: 95 °F (35 °C). Many specifications: 90 °F (32 °C)."),
		Range: "70 to 95 °F", Why: calc.Text("No specification for walls asks for less."),
		WhyMost: calc.Text("ACI 305.1 ends here. No load over it goes in."), MostSource: "aci305",
	},
	{
		ID: "rule", Kind: calc.Choice, Usual: ruleOld, Label: calc.Text("Rule of discharge"),
		Options: []calc.Option{
			{ID: ruleOld, Label: calc.Text("ASTM C94, older: 90 min or 300 turns")},
			{ID: ruleNew, Label: calc.Text("ASTM C94, newer: 90 min, turns as agreed")},
			{ID: ruleOwn, Label: calc.Text("The project's specification")},
		},
	},
	{
		ID: "own-time", Kind: calc.Number, Display: &displays.Minutes, Rule: "ticket-age", When: ownRule,
		Label: calc.Text("Time by specification"),
		Help:  calc.Text("90 min is of older editions of ASTM C94. More does not count here."),
		Range: "10 to 90 min", Why: displays.CheckUnit,
		WhyMost: calc.Text("Over 90 min a load is refused, whatever the specification says."),
	},
	{
		ID: "own-turns", Kind: calc.Number, Display: &displays.Count, Whole: true, Optional: true, When: notOldRule,
		Label: calc.Text("Turns of the drum allowed"),
		Range: "50 to 2000", Why: displays.CheckCount,
	},
	{
		ID: "turns", Kind: calc.Number, Display: &displays.Count, Whole: true, Optional: true,
		Label: calc.Text("Turns on the counter"),
		Range: "0 to 5000", Why: displays.NotMinus, WhyMost: displays.CheckCount,
	},
	{
		ID: "hot-from", Kind: calc.Number, Display: &displays.Temperature, Usual: "86 °F",
		Label: calc.Text("Heat limit counts from"),
		Help:  calc.Text("Temperature of the concrete. Specifications say 85 to 90 °F (30 to 32 °C)."),
		Range: "70 to 105 °F", Why: displays.CheckUnit,
	},
	{
		ID: "hot-time", Kind: calc.Number, Display: &displays.Minutes, Optional: true,
		Label: calc.Text("Time allowed in that heat"),
		Help:  calc.Text("From the job specification. Empty: no earlier limit."),
		Range: "10 to 300 min", Why: displays.CheckUnit,
	},
}

// hotAir reports whether the air is so hot that the limit of the load depends on humidity.
func hotAir(c calc.Case) bool { return calc.Over(c.Num("air"), weather.HotAir) }

func ownRule(c calc.Case) bool { return c.Choice("rule") == ruleOwn }

func notOldRule(c calc.Case) bool { return c.Choice("rule") != ruleOld }

var outputs = []calc.Field{
	{
		ID: "verdict", Kind: calc.Choice, Lead: true, Label: calc.Text("This load"),
		Options: []calc.Option{
			{ID: loadGood, Advice: calc.Good, Label: calc.Text("Within the limits. The foreman decides and releases.")},
			{ID: loadHurry, Advice: calc.Careful, Label: calc.Text("Within the limits: empty it next")},
			{ID: loadPart, Advice: calc.Careful, Label: calc.Text("Only part of it fits: the rest is refused")},
			{ID: loadLate, Advice: calc.Stop, Label: calc.Text("Refuse it: past its limit")},
			{ID: loadHot, Advice: calc.Stop, Label: calc.Text("Refuse it: too hot")},
			{ID: loadHouse, Advice: calc.Stop, Label: calc.Text("Over the house rule: refused")},
		},
	},
	{ID: "left", Kind: calc.Number, Display: &displays.MinutesAtMost, Lead: true, Label: calc.Text("Time left")},
	{ID: "empty-time", Kind: calc.Number, Display: &placing.MinutesUp, Lead: true,
		Label: calc.Text("Time to empty the load")},
	{ID: "part", Kind: calc.Number, Display: &volumeAtMost, Lead: true, Label: calc.Text("Can be placed in time")},
	{ID: "by", Kind: calc.Clock, Label: calc.Text("Last concrete out by")},
	{ID: "limit", Kind: calc.Number, Display: &displays.Minutes, Label: calc.Text("Limit that counts")},
	{ID: "turns-limit", Kind: calc.Number, Display: &displays.Count, Exact: true, Label: calc.Text("Turns allowed")},
	{ID: "turns-left", Kind: calc.Number, Display: &displays.Count, Exact: true, Label: calc.Text("Turns left")},
	{ID: "speed", Kind: calc.Number, Display: &displays.Tenths, Label: calc.Text("Speed of set, 1 at 70 °F"),
		Help: calc.Text("Rule of thumb. 2: it sets in half the time it takes at 70 °F (21 °C).")},
	{ID: "spare", Kind: calc.Number, Display: &weather.ShowDrop, Label: calc.Text("Below the hottest allowed by")},
}

var sources = []calc.Source{
	{
		ID:     "hold",
		Author: "Concrete Construction",
		Title:  "Hold the deliveries: ASTM C94 sec. 10.7",
		Where:  calc.Text("1½ h or 300 turns; the purchaser may waive it, or set less in heat"),
		Status: calc.Confirmed,
		Link:   "http://www.concreteconstruction.net/how-to/hold-the-deliveries_o",
	},
	{
		ID:     "ascc",
		Author: "American Society of Concrete Contractors",
		Title:  "Position statement 32: Concrete discharge time requirements",
		Where:  calc.Text("1½ h in ASTM C94 and ACI 301; waived where it places without water"),
		Status: calc.Confirmed,
		Link: "https://ascconline.org/concrete-technical-resources/position-statements/" +
			"concrete-discharge-time-requirements",
	},
	{
		ID:     "c94-17",
		Author: "ASTM",
		Title:  "C94/C94M-17a Ready-Mixed Concrete",
		Year:   "2017",
		Where:  calc.Text("sec. 6.1.9: the purchaser, else the maker, states the turns"),
		Status: calc.Secondary,
	},
	{
		ID:     "c94-late",
		Author: "ASTM",
		Title:  "C94/C94M Ready-Mixed Concrete, recent editions",
		Where:  calc.Text("the purchaser may set the time of discharge"),
		Status: calc.Memory,
	},
	{
		ID:     "aci305",
		Author: "ACI Committee 305",
		Title:  "Specification for Hot Weather Concreting, ACI 305.1-14",
		Year:   "2014",
		Where:  calc.Text("sec. 1.3 and 3.3: hot weather from 80 °F; 95 °F at discharge"),
		Status: calc.Secondary,
	},
	{
		ID:     "ufgs",
		Title:  "UFGS 03300A, Cast-in-place structural concrete",
		Where:  calc.Text("air above 85 °F: 90, 85 or 80 °F at most as humidity falls"),
		Status: calc.Secondary,
	},
	{
		ID:     "county",
		Author: "A county in California",
		Title:  "Special provisions, delivery of concrete",
		Where:  calc.Text("1½ h or 250 turns; less from 30 °C; 2 h or 300 turns with a retarder"),
		Status: calc.Confirmed,
	},
	{
		ID:     "nfba",
		Author: "National Frame Building Association",
		Title:  "Frame Building News",
		Year:   "2020",
		Where:  calc.Text("October, p. 17: 20 °F doubles or halves the time"),
		Status: calc.Confirmed,
		Link:   "https://www.nfba.org/resources/newsletters/magazines/2020-10/inc/html/17.html",
	},
	{ID: "practice", Where: calc.Text("Load over pump rate; arithmetic"), Status: calc.CommonPractice},
	{ID: "own", Where: calc.Text("Haste in the last 15 min; a load is placed in part until its time, and the rest " +
		"is refused"),
		Status: calc.OwnLimit},
}

var tables = []calc.Table{{
	ID: "part", Title: calc.Text("Concrete that can be placed in time, by age and pump rate"),
	Note: calc.Text("A load of 9 yd³ (7 m³) that must be out 90 min after batching. What is over is refused."),
	Out:  "part", Set: []calc.Entry{{Path: "batched", Text: ""}},
	Down: calc.Axis{Path: "age", US: []string{"15 min", "30 min", "45 min", "60 min", "75 min", "90 min"}},
	Across: calc.Axis{
		Path:   "rate",
		US:     []string{"6", "9", "12", "15", "20"},
		Metric: []string{"5", "7", "9", "12", "15"},
	},
}}

// volumeAtMost displays a volume that fits into the time left.
var volumeAtMost = quantity.Display{
	Dim:    quantity.Volume,
	US:     quantity.UnitDisplay{Unit: "yd³", Step: 0.1, Rounding: quantity.Down},
	Metric: quantity.UnitDisplay{Unit: "m³", Step: 0.1, Rounding: quantity.Down},
}
