package consolidation

import (
	"coursebook/calculators/calc"
	"coursebook/calculators/displays"
)

var vibratorOut = []calc.Field{
	{ID: "vibrators", Display: &displays.Count, Exact: true, Lead: true, Label: calc.Text("Vibrators to keep up"),
		Help: calc.Text("By the places and the longer time at each.")},
	{ID: "with-spare", Display: &displays.Count, Exact: true, Lead: true, Label: calc.Text("On site, with a spare")},
	{ID: "hands-needed", Display: &displays.Count, Exact: true, Label: calc.Text("People to run them")},
	{ID: "spacing", Display: &showApart, Lead: true, Label: calc.Text("From place to place")},
	{ID: "spacing-least", Display: &showApart, Label: calc.Text("Spacing, low end")},
	{ID: "spacing-most", Display: &showApart, Label: calc.Text("Spacing, high end")},
	{ID: "reach", Display: &showApart, Label: calc.Text("Reach to each side between"),
		Help: calc.Text("Half way from place to place. It must reach the form.")},
	{ID: "along", Display: &displays.Count, Exact: true, Label: calc.Text("Places along the wall")},
	{ID: "extra", Display: &displays.Count, Exact: true, Label: calc.Text("More at the openings")},
	{ID: "places", Display: &displays.Count, Exact: true, Lead: true, Label: calc.Text("Places in this lift")},
	{ID: "each-low", Display: &showSeconds, Label: calc.Text("Time for one place, from")},
	{ID: "each-high", Display: &showSeconds, Label: calc.Text("Time for one place, to")},
	{ID: "pass-low", Display: &displays.Minutes, Label: calc.Text("Pass, one vibrator, from")},
	{ID: "pass-high", Display: &displays.Minutes, Label: calc.Text("Pass, one vibrator, to")},
	{ID: "fill", Display: &displays.Minutes, Label: calc.Text("The pump fills the lift in")},
	{ID: "by-rate-low", Display: &displays.Count, Exact: true, Label: calc.Text("By published rate, from"),
		Help: calc.Text("To compare: pump rate over the rate of one vibrator.")},
	{ID: "by-rate-high", Display: &displays.Count, Exact: true, Label: calc.Text("By published rate, to")},
	{ID: "unreached", Display: &displays.Height, Label: calc.Text("Foot the head misses")},
	{ID: "frequency-low", Display: &showFrequency, Label: calc.Text("Frequency, from")},
	{ID: "frequency-high", Display: &showFrequency, Label: calc.Text("Frequency, to")},
	{ID: "radius-low", Display: &showRadius, Label: calc.Text("Radius of action, from")},
	{ID: "radius-high", Display: &showRadius, Label: calc.Text("Radius of action, to")},
	{ID: "rate-low", Display: &showRate, Label: calc.Text("Rate of one vibrator, from")},
	{ID: "rate-high", Display: &showRate, Label: calc.Text("Rate of one vibrator, to")},
}

var vibratorTables = []calc.Table{{
	ID: "keep-up", Title: calc.Text("Vibrators to keep up, by pump rate and core"),
	Note: calc.Text("For the job above: 24 in. (600 mm) lifts. Add a spare. The length of wall hardly matters."),
	Out:  "vibrators", Set: []calc.Entry{{Path: "lift", Text: "600 mm"}},
	Down:   calc.Axis{Path: "pump", US: []string{"4", "6", "8", "10", "12", "16"}, Metric: []string{"3", "5", "6", "8", "10", "12"}},
	Across: calc.Axis{Path: "core", US: []string{"6 in", "8 in", "10 in"}, Metric: []string{"150 mm", "200 mm", "250 mm"}},
}}

var vibratorSources = []calc.Source{
	{ID: "ccanz", Author: "Cement & Concrete Association of New Zealand", Title: "Compaction Equipment", Where: "table 1",
		Status: calc.Confirmed, Link: "https://concretenz.org.nz/page/compaction"},
	{ID: "aci309", Author: "ACI Committee 309", Title: "Guide for Consolidation of Concrete", Edition: "ACI 309R-05", Year: "2005",
		Where: "table 5.1 and ch. 7: spacing 1.5 times the radius, about 6 in. into the lift below, 3 in/s", Status: calc.Memory},
	{ID: "army", Author: "US Army", Title: titleArmy, Year: "1992", Where: "consolidation page: seconds by air-entrained or not, 18 in. apart",
		Status: calc.Confirmed, Link: linkArmy},
	{ID: "workman", Title: titleWork, Where: "4 in. into the lift below, layers of no more than 2 ft", Status: calc.Confirmed, Link: linkWork},
	{ID: "practice", Title: "Common practice: one place more at each side of an opening, the first place half a spacing from the end, one spare",
		Status: calc.CommonPractice},
}
