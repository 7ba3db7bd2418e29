// Package pourtime computes how long a pour takes, when it ends, when it must
// start at the latest and its crew hours.
package pourtime

import (
	"coursebook/calculators/calc"
	"coursebook/calculators/displays"
	"coursebook/calculators/placing"
	"coursebook/calculators/quantity"
)

// Calculator declares inputs, outputs, formulas and sources of the calculator.
var Calculator = &calc.Calculator{
	ID:      "pour-time",
	Title:   calc.Text("Pour time and crew hours"),
	Purpose: calc.Text("How long the pour takes, when it ends by the clock, and how many crew hours it needs."),
	In:      inputs,
	Out:     outputs,
	Formulas: []*calc.Formula{
		placing.PumpingFormula,
		placing.ShiftFormula,
		placing.WholeHoursFormula,
		placing.CrewHoursFormula,
		placing.FinishFormula,
		placing.LatestStartFormula,
	},
	Sources: []calc.Source{
		{
			ID:      "step17",
			Author:  "US Army Engineer School",
			Title:   "Concrete Engineering",
			Edition: "EN5466, ed. A",
			Year:    "1992",
			Where:   calc.Text("step 17: time is height over rise"),
			Status:  calc.Confirmed,
		},
		{
			ID:      "en5151",
			Author:  "US Army Engineer School",
			Title:   "Design Forms for a Concrete Wall",
			Edition: "Subcourse EN5151",
			Where:   calc.Text("steps 14 to 17: placing time up to the whole hour"),
			Status:  calc.Confirmed,
		},
		{ID: "practice", Where: calc.Text("Set-up, clean-up and standing time as crews plan them"),
			Status: calc.CommonPractice},
		{ID: "own", Where: calc.Text("A warning above ten hours"), Status: calc.OwnLimit},
	},
	Cautions: []calc.Caution{
		{
			Level: calc.LevelNotice,
			Text:  calc.Text("It is a plan, not a promise. A blocked line or a late truck takes half an hour at once."),
		},
		{
			Level: calc.LevelWarning,
			Text: calc.Text(
				"Do not speed up the pump to save the clock. The form maker and the engineer set the rate, and the " +
					"end hose hurts tired people.",
			),
		},
	},
	Tables: []calc.Table{{
		ID: "pumping", Title: calc.Text("Hours from first to last concrete, by volume and pump rate"),
		Note: calc.Text("With the pump running 70% of the time. Set-up and clean-up come on top."),
		Out:  "pumping",
		Down: calc.Axis{
			Path:   "volume",
			US:     []string{"10", "20", "30", "40", "60"},
			Metric: []string{"8", "15", "25", "30", "45"},
		},
		Across: calc.Axis{
			Path:   "rate",
			US:     []string{"8", "12", "16", "20", "30"},
			Metric: []string{"6", "9", "12", "15", "20"},
		},
	}},
	Compute: compute,
	Draw:    draw,
}

// Displays of inputs, outputs and notes.
var (
	wholeHours = quantity.Display{Dim: quantity.Duration, US: quantity.UnitDisplay{Unit: "h", Step: 1}}
)

// Reasons of limits.
const (
	whyDay = calc.Text("This is longer than a working day.")
)

const (
	labelSetUp   = calc.Text("Set-up and priming")
	labelCleanUp = calc.Text("Clean-up")
	labelPumping = calc.Text("First to last concrete")
)

var inputs = []calc.Field{
	{ID: "volume", Decides: 1, Measure: "order", Display: &displays.Volume, Usual: "27 yd³",
		Label: calc.Text("Volume to place"),
		Range: "over 0 to 2000 yd³", Why: displays.AboveZero, WhyMost: displays.OneJob},
	{ID: "rate", Decides: 2, Measure: "pump-rate", Display: &displays.PumpRate, Usual: "12 yd³/h",
		Label: calc.Text("Pump rate while it runs"),
		Range: "0.5 to 200 yd³/h", Why: placing.WhyPump},
	{ID: "moving", Display: &displays.Percent, Usual: "70 %", Label: calc.Text("Time the pump runs"),
		Help:  calc.Text("The rest goes to trucks, moving the hose and repairs."),
		Range: "5 to 100 %", Why: placing.WhyStill, WhyMost: placing.WhyAll},
	{ID: "set-up", Display: &displays.Minutes, Usual: "45 min", Label: labelSetUp,
		Help:  calc.Text("From the crew's start to the first concrete in the wall."),
		Range: "0 min to 12 h", Why: displays.NotMinus, WhyMost: whyDay},
	{ID: "clean-up", Display: &displays.Minutes, Usual: "60 min", Label: labelCleanUp,
		Help:  calc.Text("Pump, tools, spills, and the last check of line and plumb."),
		Range: "0 min to 12 h", Why: displays.NotMinus, WhyMost: whyDay},
	{ID: "crew", Display: &displays.Count, Whole: true, Usual: "5", Label: calc.Text("People in the crew"),
		Range: "1 to 100", Why: displays.CheckCount},
	{ID: "start", Decides: 3, Kind: calc.Clock, Usual: "7:00", Label: calc.Text("Crew starts at")},
	{ID: "before", Decides: 4, Kind: calc.Clock, Usual: "15:00", Optional: true, Label: calc.Text("Done by"),
		Help: calc.Text("All clean by then: dark, rain, the plant closes. Before the start: next day.")},
}

var outputs = []calc.Field{
	{ID: "pumping", Display: &placing.HoursUp, Lead: true, Label: labelPumping},
	{ID: "total", Display: &placing.HoursUp, Lead: true, Label: calc.Text("All in, with clean-up")},
	{ID: "crew-hours", Display: &placing.HoursUp, Lead: true, Label: calc.Text("Crew hours")},
	{ID: "booked", Display: &wholeHours, Exact: true, Label: calc.Text("Pump hours to book"),
		Help: calc.Text("Set-up, pumping and wash-out, up to the whole hour.")},
	{ID: "standing", Display: &placing.MinutesUp, Label: calc.Text("Time the pump stands")},
	{ID: "clock", Kind: calc.Rows, Label: calc.Text("By the clock"), Cols: []calc.Field{
		{ID: "event", Kind: calc.Choice, Label: calc.Text("What"), Options: []calc.Option{
			{ID: "start", Label: calc.Text("Crew starts")},
			{ID: "first", Label: calc.Text("First concrete")},
			{ID: "last", Label: calc.Text("Last concrete")},
			{ID: "finish", Label: calc.Text("Clean and done")},
			{ID: "latest", Label: calc.Text("Latest start")},
		}},
		{ID: "time", Kind: calc.Clock, Label: calc.Text("Time")},
	}},
}
