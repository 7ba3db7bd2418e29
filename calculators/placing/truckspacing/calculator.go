// Package truckspacing computes how many trucks keep the pump fed, how far
// apart they arrive and how old the last concrete of a truck is.
package truckspacing

import (
	"coursebook/calculators/calc"
	"coursebook/calculators/displays"
	"coursebook/calculators/placing"
)

// Calculator declares inputs, outputs, formulas and sources of the calculator.
var Calculator = &calc.Calculator{
	ID:      "truck-spacing",
	Title:   calc.Text("Truck spacing"),
	Purpose: calc.Text("How many trucks keep the pump fed, how far apart they come, and how old the concrete gets."),
	In:      inputs,
	Out:     outputs,
	Formulas: []*calc.Formula{
		placing.SpacingFormula,
		placing.CycleFormula,
		placing.LoadsFormula,
		placing.TrucksFormula,
		placing.AgeAtEndFormula,
		placing.PumpWaitFormula,
		placing.TruckWaitFormula,
	},
	Sources: sources,
	Cautions: []calc.Caution{
		{
			Level: calc.LevelWarning,
			Text: calc.Text(
				"A truck that backs up crushes. One guide in the driver's mirror, nobody between truck and pump.",
			),
		},
		{
			Level: calc.LevelNotice,
			Text: calc.Text(
				"ASTM C94 once stopped discharge at 90 min or 300 drum turns. Since 2021 the purchaser or the plant " +
					"states a limit. Read the ticket.",
			),
		},
		{
			Level: calc.LevelNotice,
			Text: calc.Text(
				"The form maker and the engineer set the rise, and so the pump rate. More trucks must not push it up.",
			),
		},
	},
	Tables:  tables,
	Compute: compute,
	Draw:    draw,
}

const (
	fed     = "fed"
	starved = "starved"
	hungry  = "hungry"
	old     = "old"
)

// counted reports whether the trucks at hand are entered.
func counted(c calc.Case) bool { return c.Has("have") }

var inputs = []calc.Field{
	{ID: "order", Decides: 1, Measure: "order", Display: &displays.Volume, Usual: "27 yd³", Label: calc.Text("Order"),
		Range: "over 0 to 2000 yd³", Why: displays.AboveZero, WhyMost: displays.OneJob},
	{ID: "truck", Decides: 2, Measure: "load", Display: &displays.Volume, Usual: "9 yd³",
		Label: calc.Text("Volume of one load"),
		Help:  calc.Text("A smaller order is one load of its own size."),
		Range: "0.5 to 16 yd³", Why: placing.WhyTruck},
	{ID: "rate", Decides: 3, Measure: "pump-rate", Display: &displays.PumpRate, Usual: "12 yd³/h",
		Label: calc.Text("Pump rate, stops included"),
		Help:  calc.Text("What really leaves a truck in an hour, moving the hose included."),
		Range: "0.5 to 200 yd³/h", Why: placing.WhyPump},
	{ID: "load", Display: &displays.Minutes, Usual: "5 min", Label: calc.Text("Loading at the plant"),
		Range: "0 to 120 min", Why: displays.NotMinus, WhyMost: displays.CheckUnit},
	{ID: "check", Display: &displays.Minutes, Usual: "5 min", Label: calc.Text("Check and rinse there"),
		Range: "0 to 120 min", Why: displays.NotMinus, WhyMost: displays.CheckUnit},
	{ID: "haul", Decides: 4, Display: &displays.Minutes, Usual: "20 min",
		Label: calc.Text("Drive to the site"),
		Range: "0 to 240 min", Why: displays.NotMinus, WhyMost: displays.CheckUnit},
	{ID: "wait", Display: &displays.Minutes, Usual: "5 min", Label: calc.Text("Wait and slump check"),
		Help:  calc.Text("On site, before the first concrete is out."),
		Range: "0 to 120 min", Why: displays.NotMinus, WhyMost: displays.CheckUnit},
	{ID: "wash", Display: &displays.Minutes, Usual: "5 min", Label: calc.Text("Washing out"),
		Range: "0 to 120 min", Why: displays.NotMinus, WhyMost: displays.CheckUnit},
	{ID: "back", Display: &displays.Minutes, Optional: true, Label: calc.Text("Drive back"),
		Help:  calc.Text("Empty: as long as the drive to the site."),
		Range: "0 to 240 min", Why: displays.NotMinus, WhyMost: displays.CheckUnit},
	{ID: "have", Display: &displays.Count, Whole: true, Optional: true, Label: calc.Text("Trucks you can get"),
		Help:  calc.Text("Empty: as many as it takes."),
		Range: "1 to 100", Why: displays.CheckCount},
	{ID: "pause", Display: &displays.Minutes, Rule: "pause", HoldsRule: true, Optional: true, When: counted,
		Label: calc.Text("Longest planned pause"),
		Range: "1 min to 2 h", Why: displays.CheckUnit},
	{ID: "limit", Display: &displays.Minutes, Rule: "ticket-age", Label: calc.Text("Discharge limit"),
		Help:  calc.Text("From the ticket or the specification, counted from batching."),
		Range: "20 to 600 min", Why: displays.CheckUnit, MostSource: "c94-21"},
}

var outputs = []calc.Field{
	{ID: "feed", Kind: calc.Choice, Lead: true, Label: calc.Text("With the trucks you get"), Options: []calc.Option{
		{ID: old, Advice: calc.Stop, Label: calc.Text("Too old: no plan")},
		{ID: hungry, Advice: calc.Stop, Label: calc.Text("No plan: get more trucks")},
		{ID: fed, Advice: calc.Good, Label: calc.Text("The pump never waits")},
		{ID: starved, Advice: calc.Careful, Label: calc.Text("The pump waits for trucks")},
	}},
	{ID: "trucks", Display: &displays.Count, Exact: true, Lead: true, Label: calc.Text("Trucks that keep it fed")},
	{ID: "spacing", Display: &displays.Minutes, Lead: true, Label: calc.Text("One truck every")},
	{ID: "age-last", Display: &placing.MinutesUp, Lead: true, Label: calc.Text("Age, last out of a truck")},
	{ID: "age-first", Display: &placing.MinutesUp, Label: calc.Text("Age, first out of a truck")},
	{ID: "pump-wait", Display: &placing.MinutesUp, Label: calc.Text("Pump waits, each truck")},
	{ID: "truck-wait", Display: &placing.MinutesUp, Label: calc.Text("Truck waits, each trip"),
		Help: calc.Text("Best spent empty, at the plant.")},
	{ID: "real-rate", Display: &displays.PumpRateAtMost, Label: calc.Text("Rate the trucks allow")},
	{ID: "cycle", Display: &displays.Minutes, Label: calc.Text("Round trip of a truck")},
	{ID: "per-pump", Display: &displays.Tenths, Label: calc.Text("Trucks, before rounding up"),
		Help: calc.Text("Round trip of a truck, over the time between trucks.")},
	{ID: "loads", Display: &displays.Count, Exact: true, Label: calc.Text("Loads")},
}

var sources = []calc.Source{
	{
		ID:     "guide",
		Author: "Ready-mix producer's guide",
		Title:  "Calculating truck requirements",
		Where:  calc.Text("worked example: 65 min round trip, 7 trucks"),
		Status: calc.Confirmed,
	},
	{
		ID:      "c94-old",
		Author:  "ASTM",
		Title:   "C94, ready-mixed concrete",
		Edition: "older editions",
		Where:   calc.Text("sec. 10.7: 1.5 h or 300 drum turns, as quoted in Concrete Construction"),
		Status:  calc.Secondary,
		Link:    "http://www.concreteconstruction.net/how-to/hold-the-deliveries_o",
	},
	{
		ID:      "c94-21",
		Author:  "ASTM",
		Title:   "C94, ready-mixed concrete",
		Edition: "C94-21",
		Year:    "2021",
		Where:   calc.Text("sec. 6.1.10 and 12.9: no default limit, purchaser or plant states it on the ticket"),
		Status:  calc.Secondary,
		Link:    "https://www.concretepumpers.com/acpa-news/2022/06/21/change-astm-c94-21-time-limit",
	},
	{ID: "practice", Where: calc.Text("Waiting of pump and trucks by arithmetic"), Status: calc.CommonPractice},
	{ID: "own", Where: calc.Text("A warning within a quarter of an hour of the limit"), Status: calc.OwnLimit},
}

var tables = []calc.Table{
	{ID: "spacing", Title: calc.Text("Time between trucks by load and pump rate"), Out: "spacing",
		Down: calc.Axis{
			Path:   "truck",
			US:     []string{"6", "7", "8", "9", "10"},
			Metric: []string{"5", "6", "7", "8", "9"},
		}, Across: calc.Axis{Path: "rate", US: []string{"10", "15", "20", "30", "40"},
			Metric: []string{"8", "12", "16", "24", "30"}}},
	{ID: "trucks", Title: calc.Text("Trucks that keep the pump fed, by drive and pump rate"),
		Note: calc.Text(
			"For 9 yd³ (7 m³) loads and 20 min at plant and site beside the drive and discharge.",
		), Out: "trucks",
		Set: []calc.Entry{{Path: "order", Text: "500 yd³"}, {Path: "truck", Text: "9 yd³"}},
		Down: calc.Axis{
			Path: "haul",
			US:   []string{"10", "20", "30", "40", "50"},
		}, Across: calc.Axis{Path: "rate", US: []string{"10", "15", "20", "30", "40"},
			Metric: []string{"8", "12", "16", "24", "30"}}},
}
