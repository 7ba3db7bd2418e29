// Package rateofrise computes how fast the wall rises, where the hose is and on
// average, and whether the hose is back before the lift below stiffens.
package rateofrise

import (
	"coursebook/calculators/calc"
	"coursebook/calculators/displays"
	"coursebook/calculators/placing"
	"coursebook/calculators/quantity"
	"coursebook/calculators/weather"
)

// Calculator declares inputs, outputs, formulas and sources of the calculator.
var Calculator = &calc.Calculator{
	ID:      "rate-of-rise",
	Title:   calc.Text("Rate of rise and time around"),
	Purpose: calc.Text("Shows how fast the wall rises, and if the hose is back before the lift below stiffens."),
	In:      inputs,
	Out:     outputs,
	Formulas: []*calc.Formula{
		placing.RiseFormula,
		placing.FlowFormula,
		placing.LiftTimeFormula,
		placing.AgeOnReturnFormula,
		placing.LongestLoopFormula,
		placing.LiftsFormula,
	},
	Sources: sources,
	Cautions: []calc.Caution{
		{
			Level: calc.LevelWarning,
			Text: calc.Text(
				"A form that opens buries and crushes. Stand clear of the wall below the hose. Stop at the first " +
					"bulge or crack.",
			),
		},
		{
			Level: calc.LevelWarning,
			Text: calc.Text(
				"The form maker's data, the engineer and the local code set the lift and the rise. This page does not.",
			),
		},
		{
			Level: calc.LevelNotice,
			Text: calc.Text(
				"No document gives one setting time. Heat, wind and mix change it. The vibrator test has the last " +
					"word.",
			),
		},
	},
	Tables:  tables,
	Compute: compute,
	Draw:    draw,
}

const (
	inTime  = "in-time"
	tooLate = "late"
	tooFast = "fast"
	single  = "single"
)

// IDs of the options of how the hose goes.
const (
	around       = "around"
	thereAndBack = "back"
)

// showLoop displays a length of wall, rounded down.
var showLoop = quantity.Display{
	Dim:    quantity.Length,
	US:     quantity.UnitDisplay{Unit: "ft", Step: 1, Rounding: quantity.Down},
	Metric: quantity.UnitDisplay{Unit: "m", Step: 0.5, Rounding: quantity.Down},
}

const (
	labelAge    = calc.Text("Batch to end of discharge")
	labelLoop   = calc.Text("Time for one pass")
	labelReturn = calc.Text("Age when the hose is back")
	whyWall     = calc.Text("Foam walls lie well inside. Check the unit.")
	whyWindow   = calc.Text("Concrete for walls stiffens between these times.")
	whyRise     = calc.Text("No wall is filled at this rate. Check the unit.")
)

var inputs = []calc.Field{
	{ID: "length", Decides: 1, Measure: "loop", Display: &displays.Height, Usual: "140 ft",
		Label: calc.Text("Length of one pass"),
		Help:  calc.Text("All walls the hose passes once, by the centerline."),
		Range: "1 to 2000 ft", Why: whyWall, WhyMost: displays.OneJob},
	{ID: "way", Kind: calc.Choice, Usual: around, Label: calc.Text("The hose goes"), Options: []calc.Option{
		{ID: around, Label: calc.Text("Around, in a closed loop")},
		{ID: thereAndBack, Label: calc.Text("There and back")}}},
	{ID: "core", Decides: 2, Measure: "core", Display: &displays.Part, Usual: "8 in",
		Label: calc.Text("Core thickness"),
		Help:  calc.Text("Concrete only, without the foam."),
		Range: "2 to 36 in", Why: whyWall},
	{ID: "height", Decides: 3, Measure: "height", Display: &displays.Height, Usual: "8 ft",
		Label: calc.Text("Height placed today"),
		Range: "1 to 40 ft", Why: whyWall, WhyMost: displays.Engineer, MostSource: "usbr"},
	{ID: "lift", Measure: "lift", Maker: true, Display: &displays.Height, Rule: "lift",
		Label: calc.Text("Depth of one lift"),
		Help:  calc.Text("From the form maker's guide, but no deeper than the house rule."),
		Range: "0.5 to 40 ft", Why: whyWall, WhyMost: displays.CheckUnit},
	{ID: "stop", Display: &displays.Height, Usual: "6 ft", Label: calc.Text("Length filled at one stop"),
		Help:  calc.Text("What fills while the hose stays in one place."),
		Range: "0.5 to 2000 ft", Why: displays.CheckUnit, WhyMost: displays.OneJob},
	{ID: "rate", Decides: 4, Measure: "pump-rate", Display: &displays.PumpRate, Usual: "12 yd³/h",
		Label: calc.Text("Pump rate while it runs"),
		Range: "0.2 to 200 yd³/h", Why: placing.WhyPump},
	{ID: "moving", Display: &displays.Percent, Usual: "75 %", Label: calc.Text("Time the pump runs"),
		Help:  calc.Text("The rest goes to trucks, moving the hose and repairs."),
		Range: "5 to 100 %", Why: placing.WhyStill, WhyMost: placing.WhyAll},
	{ID: "wait", Display: &displays.Minutes, Optional: true, Label: calc.Text("Wait after each pass"),
		Help:  calc.Text("Planned, with the pump stopped after every pass. Form pressure gives it."),
		Range: "0 min to 12 h", Why: displays.NotMinus, WhyMost: displays.CheckUnit},
	{ID: "age", Display: &displays.Minutes, Example: true, Usual: "60 min", Label: labelAge,
		Help:  calc.Text("From batching, oldest concrete in place. Take \"last out\" from truck spacing."),
		Range: "0 to 300 min", Why: displays.NotMinus, WhyMost: whyWindow},
	{ID: "window", Measure: "joint-window", Display: &displays.Minutes, Rule: "joint-window", HoldsRule: true,
		Label: weather.LabelWindow,
		Help:  calc.Text("The plant's, for today's mix and heat. If ours is sooner, ours counts."),
		Range: "20 to 600 min", Why: whyWindow},
	{ID: "wanted", Display: &displays.RiseTyped, Rule: "rise", Optional: true, Label: calc.Text("Rise you want"),
		Help:  calc.Text("Gives the pump rate that goes with it."),
		Range: "0.1 to 100 ft/h", Why: whyRise},
}

var outputs = []calc.Field{
	{ID: "verdict", Kind: calc.Choice, Lead: true, Label: calc.Text("The next lift"), Options: []calc.Option{
		{ID: inTime, Advice: calc.Good, Label: calc.Text("The hose is back in time")},
		{ID: tooLate, Advice: calc.Stop, Label: calc.Text("Too late: shorten the pass or plan a joint")},
		{ID: tooFast, Advice: calc.Stop, Label: calc.Text("The wall rises too fast: slow the pump")},
		{ID: single, Advice: calc.Good, Label: calc.Text("One lift only: nothing to come back to")},
	}},
	{ID: "rise-local", Display: &displays.Rise, Lead: true, Label: calc.Text("Rise at the hose")},
	{ID: "rise-average", Display: &displays.Rise, Label: calc.Text("Average rise, pump running"),
		Help: calc.Text("The house rule counts this rise with planned waits, without other pauses.")},
	{ID: "lifts", Display: &displays.Count, Exact: true, Label: calc.Text("Lifts for the height")},
	{ID: "loop-time", Display: &placing.MinutesUp, Lead: true, Label: labelLoop,
		Help: calc.Text("Once along all walls, with the pauses and the wait.")},
	{ID: "stop-time", Display: &displays.Minutes, Label: calc.Text("Time at one stop, pump on")},
	{ID: "pour-time", Display: &placing.HoursUp, Label: calc.Text("Time for the whole height")},
	{ID: "return-age", Display: &placing.MinutesUp, Label: labelReturn},
	{ID: "back-by", Display: &displays.MinutesAtMost, Label: weather.LabelBackBy,
		Help: calc.Text("For the joint, from the last pass at the same place.")},
	{ID: "spare", Display: &displays.MinutesAtMost, Label: calc.Text("Time to spare"),
		Help: calc.Text("Below zero: too late by so much.")},
	{ID: "longest", Display: &showLoop, Label: calc.Text("Longest pass in time")},
	{ID: "rate-average", Display: &displays.PumpRateAtMost, Label: calc.Text("Pump rate, all walls"),
		Help: calc.Text("For the rise you want, on average over all walls.")},
	{ID: "rate-stop", Display: &displays.PumpRateAtMost, Label: calc.Text("Pump rate, one stop"),
		Help: calc.Text("For the rise you want at the hose.")},
}

var sources = []calc.Source{
	{
		ID:      "army",
		Author:  "US Army Engineer School",
		Title:   "Design Forms for a Concrete Wall",
		Edition: "Subcourse EN5151",
		Where:   calc.Text("part C: rate of placing, plan area, whole hours"),
		Status:  calc.Confirmed,
	},
	{
		ID:      "placing",
		Author:  "US Army Engineer School",
		Title:   "Concrete Engineering",
		Edition: "EN5466, ed. A",
		Year:    "1992",
		Where:   calc.Text("placing page: 5 ft/h; step 17: time is height over rise"),
		Status:  calc.Confirmed,
	},
	{
		ID:     "navy",
		Author: "US Navy",
		Title:  "Builder 3 & 2, NAVEDTRA 10648-G",
		Year:   "1981",
		Where:  calc.Text("p. 7-37: 4 ft/h"),
		Status: calc.Confirmed,
	},
	{
		ID:      "aci",
		Author:  "ACI Committee 347",
		Title:   "Guide to Formwork for Concrete",
		Edition: "ACI 347R-14",
		Year:    "2014",
		Where:   calc.Text("sec. 4.2.2.1: full fluid head above 4.5 m/h in the SI edition, 14.7 ft/h"),
		Status:  calc.Memory,
	},
	{
		ID:      "usbr",
		Author:  "US Bureau of Reclamation",
		Title:   "Concrete Manual",
		Edition: "8th ed.",
		Year:    "1975",
		Where: calc.Text("p. 270: walls up to 40 ft in one operation; p. 352: a running vibrator shows that no " +
			"cold joint " +
			"forms"),
		Status: calc.Confirmed,
	},
	{
		ID:     "joint",
		Author: "The Concrete Producer",
		Title:  "How long before a cold joint?",
		Where:  calc.Text("no set time limit: the vibrator must still go in (ACI 309R-96)"),
		Status: calc.Confirmed,
		Link:   "http://www.theconcreteproducer.com/associations/how-long-before-a-cold-joint-.aspx",
	},
	{ID: "practice", Where: calc.Text("Clock from the ticket"), Status: calc.CommonPractice},
	{ID: "own", Where: calc.Text("Joint window from batching; a quarter of an hour to spare"), Status: calc.OwnLimit},
}

var tables = []calc.Table{
	{ID: "average", Title: calc.Text("Average rise by length and pump rate"),
		Note: calc.Text("For a core of 8 in (203 mm). At the hose the wall rises much faster."),
		Out:  "rise-average", Set: []calc.Entry{{Path: "core", Text: "8 in"}},
		Down: calc.Axis{
			Path:   "length",
			US:     []string{"60 ft", "100 ft", "140 ft", "180 ft", "220 ft"},
			Metric: []string{"20 m", "30 m", "40 m", "50 m", "60 m"},
		},
		Across: calc.Axis{
			Path:   "rate",
			US:     []string{"8", "12", "16", "20", "30"},
			Metric: []string{"6", "9", "12", "15", "20"},
		}},
	{ID: "round", Title: calc.Text("Time for one pass by length and pump rate"),
		Note: calc.Text(
			"For an 8 in (203 mm) core and a lift of 2 ft (0.61 m), with the pump running three quarters of the time.",
		),
		Out: "loop-time", Set: []calc.Entry{{Path: "core", Text: "8 in"}, {Path: "lift", Text: "2 ft"}},
		Down: calc.Axis{
			Path:   "length",
			US:     []string{"60 ft", "100 ft", "140 ft", "180 ft", "220 ft"},
			Metric: []string{"20 m", "30 m", "40 m", "50 m", "60 m"},
		},
		Across: calc.Axis{
			Path:   "rate",
			US:     []string{"8", "12", "16", "20", "30"},
			Metric: []string{"6", "9", "12", "15", "20"},
		}},
}
