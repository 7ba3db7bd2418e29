// Package settingtime estimates when concrete sets at its temperature, from a
// setting time known at another temperature.
package settingtime

import (
	"coursebook/calculators/calc"
	"coursebook/calculators/displays"
	"coursebook/calculators/quantity"
	"coursebook/calculators/weather"
)

// Calculator declares inputs, outputs, formulas and sources of the calculator.
var Calculator = &calc.Calculator{
	ID:       "setting-time",
	Title:    calc.Text("Setting time by temperature"),
	Purpose:  calc.Text("Estimates when concrete sets at its temperature, from a setting time known at another."),
	In:       inputs,
	Out:      outputs,
	Formulas: []*calc.Formula{weather.SetArrheniusFormula, weather.SetDoublingFormula},
	Sources:  sources,
	Cautions: []calc.Caution{
		{
			Level: calc.LevelNotice,
			Text: calc.Text(
				"An estimate only. Test the concrete: the running vibrator must sink by its own weight, and a finger " +
					"must leave a wet mark.",
			),
		},
		{
			Level: calc.LevelWarning,
			Text:  weather.CautionStiffened,
		},
		{
			Level: calc.LevelWarning,
			Text: calc.Text(
				"Set is not strength. Take no brace, load or backfill from these times: the engineer decides.",
			),
		},
	},
	Tables:  tables,
	Compute: compute,
	Draw:    draw,
}

// showKelvin displays the constant of the Arrhenius equation.
var showKelvin = quantity.Display{Dim: quantity.Temperature, US: quantity.UnitDisplay{Unit: "K", Step: 50}}

const whyMix = calc.Text("No wall mix is outside this. Check the number and its unit.")

var inputs = []calc.Field{
	{
		ID: "concrete", Decides: 1, Measure: "concrete-temperature", Kind: calc.Number, Display: &displays.Temperature,
		Usual: "60 °F",
		Label: calc.Text("Concrete temperature"),
		Help:  calc.Text("In the form, by thermometer. Not the air."),
		Range: "33 to 110 °F", Why: calc.Text("Freezing concrete does not set."), WhyMost: weather.WhyGel,
	},
	{
		ID: "initial", Decides: 2, Kind: calc.Number, Display: &displays.Hours, Usual: "5 h",
		Label: calc.Text("Known initial set"),
		Help:  calc.Text("From the plant's mix data (ASTM C403), admixtures included."),
		Range: "0.25 to 48 h", Why: whyMix,
	},
	{
		ID: "final", Decides: 3, Kind: calc.Number, Display: &displays.Hours, Usual: "7 h",
		Label: calc.Text("Known final set"),
		Range: "0.5 to 72 h", Why: whyMix,
	},
	{
		ID: "reference", Kind: calc.Number, Display: &displays.Temperature, Usual: "73 °F",
		Label: calc.Text("They are known at"),
		Range: "40 to 100 °F", Why: whyMix,
	},
	{
		ID: "q", Kind: calc.Number, Display: &showKelvin, Usual: "5000 K", Label: calc.Text("Sensitivity to heat, Q"),
		Help:  calc.Text("ASTM C1074 5000 K; EN 1992 4000 K. Leave it if you do not know."),
		Range: "3000 to 7500 K", Why: calc.Text("Cements lie between 3000 and 7500 K."),
	},
	{
		ID: "age", Decides: 4, Kind: calc.Number, Display: &displays.Minutes, Optional: true, Usual: "90 min",
		Label: calc.Text("Age of the last lift"),
		Help:  calc.Text("Since it was batched. Empty: no time left is shown."),
		Range: "0 min to 72 h", Why: displays.NotMinus, WhyMost: displays.CheckUnit,
	},
	{
		ID: "window", Measure: "joint-window", Kind: calc.Number, Display: &displays.Minutes, Optional: true,
		Rule:      "joint-window",
		HoldsRule: true,
		When:      aged, Label: weather.LabelWindow,
		Help:  calc.Text("The plant's, for today's mix and heat. If ours is sooner, ours counts."),
		Range: "20 to 600 min", Why: calc.Text("Concrete for walls stiffens between these times."),
	},
}

// aged reports whether the age of the last lift is entered.
func aged(c calc.Case) bool { return c.Has("age") }

var outputs = []calc.Field{
	{
		ID:      "initial-set",
		Kind:    calc.Number,
		Display: &displays.HalfHoursAtMost,
		Lead:    true,
		Label:   calc.Text("Initial set, estimate"),
	},
	{ID: "final-set", Kind: calc.Number, Display: &showLatest, Lead: true, Label: calc.Text("Final set, estimate")},
	{ID: "left", Kind: calc.Number, Display: &showQuarter, Label: calc.Text("Left to initial set")},
	{ID: "earliest", Kind: calc.Number, Display: &displays.HalfHoursAtMost, Label: calc.Text("Initial set, earliest"),
		Help: calc.Text("The earliest of the equation with Q of 4000 to 6000 K and the rule.")},
	{ID: "latest", Kind: calc.Number, Display: &showLatest, Label: calc.Text("Initial set, latest")},
	{ID: "rule-set", Kind: calc.Number, Display: &showHours, Label: calc.Text("Initial set, rule of thumb")},
	{ID: "by-table", Kind: calc.Number, Display: &showHours, Label: calc.Text("Plain mix, old site table")},
}

var sources = []calc.Source{
	{
		ID:     "c1074",
		Author: "ASTM",
		Title:  "C1074 Estimating Concrete Strength by the Maturity Method",
		Where:  calc.Text("equivalent age; Q of 5000 K"),
		Status: calc.Memory,
	},
	{
		ID:     "ec2",
		Author: "CEN",
		Title:  "EN 1992-1-1",
		Year:   "2004",
		Where:  calc.Text("equation B.10: Q of 4000 K"),
		Status: calc.Confirmed,
	},
	{
		ID:     "nordtest",
		Author: "Nordtest",
		Title:  "NT BUILD 476, initial setting time and activation energy during setting",
		Year:   "1996",
		Where: calc.Text("abstract: setting times are carried by maturity with the activation energy of the " +
			"setting period"),
		Status: calc.Confirmed,
		Link: "https://www.nordtest.info/wp/1996/11/21/" +
			"concrete-fresh-initial-setting-time-and-activation-energy-during-setting-nt-build-476/",
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
	{
		ID:     "table",
		Title:  "Approximate setting-time table for plain mixes, reprinted on secondary pages",
		Where:  calc.Text("30 and 60 to 100 °F; 40 and 50 °F from memory"),
		Status: calc.Secondary,
	},
	{
		ID:     "c403",
		Author: "ASTM",
		Title:  "C403/C403M Time of Setting by Penetration Resistance",
		Where:  calc.Text("initial set at 500 psi (3.5 MPa), final set at 4000 psi (27.6 MPa)"),
		Status: calc.Secondary,
	},
	{
		ID: "practice",
		Where: calc.Text("Vibrator and finger test; the next lift well before initial set, by the joint window " +
			"of rate of rise"),
		Status: calc.CommonPractice,
	},
}

var tables = []calc.Table{{
	ID: "initial", Title: calc.Text("Initial set by temperature and mix"),
	Note: calc.Text("Across: the initial set known at 73 °F (23 °C). Estimates only."),
	Out:  "initial-set", Set: []calc.Entry{{Path: "final", Text: "10 h"}},
	Down: calc.Axis{
		Path:   "concrete",
		US:     []string{"40 °F", "50 °F", "60 °F", "70 °F", "80 °F", "90 °F", "100 °F"},
		Metric: []string{"5 °C", "10 °C", "15 °C", "20 °C", "25 °C", "30 °C", "35 °C"},
	},
	Across: calc.Axis{Path: "initial", US: []string{"4 h", "5 h", "6 h", "8 h"}},
}}

// table holds the approximate setting time in h of a mix without admixtures at 30
// to 100 °F in steps of 10. Source: a table reprinted on secondary pages, 40 and
// 50 °F from memory.
var table = [...]float64{19, 14.67, 10.67, 8, 6, 4, 2.67, 1.67}

// byTable interpolates table linearly at t in °F. ok is false outside it.
func byTable(t float64) (hours float64, ok bool) {
	x := (t - 30) / 10
	if x < -calc.Slack || x > float64(len(table)-1)+calc.Slack {
		return 0, false
	}
	i := max(0, min(int(x), len(table)-2))
	part := x - float64(i)
	return table[i] + float64(part*(table[i+1]-table[i])), true
}

// Displays of inputs and outputs. A time that is needed is rounded up.
var (
	showLatest = quantity.Display{
		Dim: quantity.Duration,
		US:  quantity.UnitDisplay{Unit: "h", Step: 0.5, Rounding: quantity.Up},
	}
	showHours   = quantity.Display{Dim: quantity.Duration, US: quantity.UnitDisplay{Unit: "h", Step: 0.5}}
	showQuarter = quantity.Display{
		Dim: quantity.Duration,
		US:  quantity.UnitDisplay{Unit: "min", Step: 15, Rounding: quantity.Down},
	}
)
