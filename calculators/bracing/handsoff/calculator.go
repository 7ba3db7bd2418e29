// Package handsoff computes, for each wall by itself, the clock time from which
// no brace of it is turned, and how long there is to straighten it after its
// last concrete.
//
// Three of the five rules are clock times and are computed here. The other two
// are tests at the wall, and end the work sooner: a running head that no longer
// sinks in the top lift, and a wall that does not answer a quarter turn at two braces side by side.
package handsoff

import (
	"coursebook/calculators/bracing"
	"coursebook/calculators/calc"
	"coursebook/calculators/displays"
	"coursebook/calculators/weather"
)

// Calculator declares inputs, outputs, formulas and sources of the calculator.
var Calculator = &calc.Calculator{
	ID:      "hands-off",
	Title:   calc.Text("Hands off, wall by wall"),
	Purpose: calc.Text("From what time no brace is turned, and how long there is to straighten each wall."),
	In:      inputs,
	Out:     outputs,
	Formulas: []*calc.Formula{
		bracing.AfterLastFormula, bracing.AtSetFormula, bracing.LeftForStringFormula,
		weather.SetArrheniusFormula, weather.SetDoublingFormula,
	},
	Sources: sources,
	Cautions: []calc.Caution{
		{
			Level: calc.LevelWarning,
			Text: calc.Text(
				"Hands off sooner if a running head no longer sinks in the top lift. The same if foot and screws are " +
					"fast and a quarter turn at two braces side by side moves nothing. Never push the head down into " +
					"the older lifts to test.",
			),
		},
		{
			Level: calc.LevelNotice,
			Text:  weather.CautionStiffened,
		},
	},
	Tables:  tables,
	Compute: compute,
	Draw:    draw,
}

const (
	whyMix  = calc.Text("No wall mix is outside this. Check the number and its unit.")
	whyWait = calc.Text("Nobody reads a wall and turns a brace in less.")
	whyMost = calc.Text("A wall this old may have stiffened. Ask the engineer.")
	whyWarm = calc.Text("This is not a hot day. Check the unit.")
)

var inputs = []calc.Field{
	{
		ID: "walls", Decides: 1, Kind: calc.Rows, MinRows: 1, MaxRows: 16, Label: calc.Text("Walls"),
		Help:  calc.Text("Times as you plan them, or as they were. One row for each wall."),
		Usual: "1 | 7:00 | 10:10; 2 | 7:00 | 10:30; 3 | 7:20 | 10:50; 4 | 7:20 | 11:30",
		Cols: []calc.Field{
			{ID: "name", Label: calc.Text("Wall"), Kind: calc.FreeText, Optional: true, MaxLen: 24},
			{ID: "first", Label: calc.Text("First load batched"), Kind: calc.Clock,
				Help: calc.Text("The batch time on its ticket.")},
			{ID: "last", Label: calc.Text("Last concrete, no top-up"), Kind: calc.Clock},
			{ID: "given", Label: calc.Text("Engineer's or maker's time"), Kind: calc.Clock, Optional: true},
		},
	},
	{
		ID: "concrete", Decides: 2, Measure: "concrete-temperature", Display: &displays.Temperature, Usual: "70 °F",
		Label: calc.Text("Warmest load expected"),
		Help:  calc.Text("Of the whole pour and all walls. The first truck's figure is not enough."),
		Range: "33 to 110 °F", Why: calc.Text("Freezing concrete does not set."), WhyMost: weather.WhyGel,
	},
	{
		ID: "air", Decides: 3, Measure: "air-temperature", Display: &displays.Temperature, Usual: "72 °F",
		Label: calc.Text("Warmest air expected"),
		Help:  calc.Text("Of the whole pour, by the forecast."),
		Range: "-40 to 130 °F", Why: weather.WhyLand,
	},
	{
		ID: "plant-set", Decides: 4, Display: &displays.Hours, Optional: true,
		Label: calc.Text("Initial set, by the plant"),
		Help:  calc.Text("For today's mix and heat, from batching. Empty: our estimate."),
		Range: "0.25 to 48 h", Why: whyMix,
	},
	{
		ID: "plant-word", Kind: calc.Choice, Usual: wordNone, When: later,
		Label: calc.Text("The plant's later figure is"),
		Help:  calc.Text("It is later than our estimate."),
		Options: []calc.Option{
			{ID: wordNone, Label: calc.Text("not in writing, or not known")},
			{ID: wordWritten, Label: calc.Text("in writing, for today's mix at the warmest load")},
		},
	},
	{
		ID: "initial", Display: &displays.Hours, Example: true, Usual: "5 h", Label: calc.Text("Known initial set"),
		Range: "0.25 to 48 h", Why: whyMix,
	},
	{
		ID: "reference", Display: &displays.Temperature, Usual: "73 °F",
		Label: calc.Text("It is known at"),
		Range: "40 to 100 °F", Why: whyMix,
	},
	{
		ID: "wait", Display: &displays.Minutes, Rule: "hands-off", HoldsRule: true,
		Label: calc.Text("After the last concrete"),
		Range: "5 to 120 min", Why: whyWait, WhyMost: whyMost,
	},
	{
		ID: "hot-wait", Display: &displays.Minutes, Rule: "hands-off-hot", HoldsRule: true,
		Label: calc.Text("The same on a hot day"),
		Range: "5 to 120 min", Why: whyWait, WhyMost: whyMost,
	},
	{
		ID: "hot-from", Display: &displays.Temperature, Rule: "hot-day", HoldsRule: true,
		Label: calc.Text("Hot above"),
		Help:  calc.Text("Concrete or air. Our own limit."),
		Range: "60 to 100 °F", Why: whyWarm, WhyMost: weather.WhyGel,
	},
}

// later reports whether the plant's figure is entered and later than our estimate.
func later(c calc.Case) bool { return c.Has("plant-set") && calc.Over(c.Num("plant-set"), estimate(c)) }

// estimated reports whether our estimate of the set counts: the plant's figure is not entered,
// or it is later and not in writing.
func estimated(c calc.Case) bool {
	return !c.Has("plant-set") || later(c) && c.Choice("plant-word") != wordWritten
}

// IDs of what a later figure of the plant is, of the rules and of the plans.
const (
	wordNone    = "none"
	wordWritten = "written"

	ruleLast  = "last"
	ruleSet   = "set"
	ruleGiven = "given"

	planAfter   = "after"
	planEarly   = "early"
	planBetween = "between"
)

var (
	ruleOptions = []calc.Option{
		{ID: ruleLast, Label: calc.Text("time since the last concrete")},
		{ID: ruleSet, Label: calc.Text("first load reaches initial set")},
		{ID: ruleGiven, Label: calc.Text("engineer's or maker's time")},
	}
	planOptions = []calc.Option{
		{ID: planAfter, Label: calc.Text("after the last concrete")},
		{ID: planEarly, Label: calc.Text("begin between rounds")},
		{ID: planBetween, Label: calc.Text("between rounds only")},
	}
)

var outputs = []calc.Field{
	{ID: "plan", Kind: calc.Choice, Lead: true, Options: planOptions, Label: calc.Text("Straighten the tightest wall")},
	{ID: "left", Display: &displays.MinutesAtMost, Lead: true, Label: calc.Text("Left after last concrete"),
		Help: calc.Text("Minus: hands off comes before the last concrete.")},
	{ID: "off", Kind: calc.Clock, Lead: true, Label: calc.Text("Hands off at")},
	{ID: "rule", Kind: calc.Choice, Options: ruleOptions, Label: calc.Text("Decided by")},
	{ID: "tightest", Display: &displays.Count, Exact: true, Label: calc.Text("Tightest wall is in row")},
	{ID: "earliest", Kind: calc.Clock, Label: calc.Text("First hands off of all walls")},
	{ID: "lines", Kind: calc.Rows, Label: calc.Text("Wall by wall"), Cols: []calc.Field{
		{ID: "name", Label: calc.Text("Wall"), Kind: calc.FreeText},
		{ID: "off", Label: calc.Text("Hands off at"), Kind: calc.Clock},
		{ID: "rule", Label: calc.Text("Decided by"), Kind: calc.Choice, Options: ruleOptions},
		{ID: "left", Label: calc.Text("Left after last concrete"), Display: &displays.MinutesAtMost},
		{ID: "plan", Label: calc.Text("Straighten it"), Kind: calc.Choice, Options: planOptions},
	}},
	{ID: "allowed", Display: &displays.Minutes, Label: calc.Text("Allowed after last concrete")},
	{ID: "set", Display: &displays.HalfHoursAtMost, Label: calc.Text("Initial set, earliest")},
}

var sources = []calc.Source{
	{ID: "practice", Where: calc.Text("Hands off 60 min after the last concrete in the wall, 30 min above 80 °F, " +
		"and no later " +
		"than the initial set of its first load; a set under 1.5 h or over 12 h is asked about"),
		Status: calc.OwnLimit},
	{
		ID:     "aci305",
		Author: "ACI Committee 305",
		Title:  "Specification for Hot Weather Concreting, ACI 305.1-14",
		Year:   "2014",
		Where:  calc.Text("sec. 1.3: hot weather from 80 °F"),
		Status: calc.Secondary,
	},
	{
		ID:     "ufgs",
		Title:  "UFGS 03300A, Cast-in-place structural concrete",
		Where:  calc.Text("concrete of 90 °F at most, in humid air"),
		Status: calc.Secondary,
	},
	{
		ID:     "c1074",
		Author: "ASTM",
		Title:  "C1074 Estimating Concrete Strength by the Maturity Method",
		Where:  calc.Text("equivalent age"),
		Status: calc.Memory,
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
}

var tables = []calc.Table{{
	ID: "left", Title: calc.Text("Minutes left after the last concrete"),
	Note: calc.Text(
		"First load batched at 7:00, initial set of 5 h at 73 °F (23 °C). Down: last concrete in the wall. Across: " +
			"the concrete.",
	),
	Out: "left", Set: []calc.Entry{{Path: "walls.1.first", Text: "7:00"}},
	Down: calc.Axis{Path: "walls.1.last", US: []string{"8:30", "9:30", "10:30", "11:30", "12:30"}},
	Across: calc.Axis{
		Path:   "concrete",
		US:     []string{"60 °F", "70 °F", "80 °F", "90 °F"},
		Metric: []string{"15 °C", "20 °C", "25 °C", "30 °C"},
	},
}}
