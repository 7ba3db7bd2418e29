package consolidation

import (
	"coursebook/calculators/calc"
	"coursebook/calculators/displays"
	"coursebook/calculators/quantity"
)

// InternalVibrator plans the places, the time and the vibrators for one lift.
var InternalVibrator = &calc.Calculator{
	ID:       "vibrator",
	Title:    calc.Text("Vibrators to keep up"),
	Purpose:  calc.Text("Where and how long to vibrate a lift, and how many vibrators keep up with the pump."),
	In:       vibratorIn,
	Out:      vibratorOut,
	Formulas: vibratorFormulas,
	Sources:  vibratorSources,
	Cautions: []calc.Caution{
		{Level: calc.LevelWarning, Text: calc.Text("Too long or too deep vibration pushes on the form like fluid. Stop at the first bulge or creak.")},
		{Level: calc.LevelWarning, Text: calc.Text("Long work with a vibrator harms hands and hearing, and wet cords can kill. Take turns, wear protection, use a ground-fault breaker.")},
		{Level: calc.LevelNotice, Text: calc.Text("The tables leave out ties, webs and bars. These shrink the reach, and so does stiff concrete. Watch the surface, not the clock.")},
	},
	Tables:  vibratorTables,
	Compute: computeVibrator,
	Draw:    drawVibrator,
}

var (
	showRadius    = quantity.Display{Dim: quantity.Length, US: quantity.UnitDisplay{Unit: "in", Form: quantity.Inches, Step: 1}, Metric: quantity.UnitDisplay{Unit: "mm", Step: 10}}
	showApart     = quantity.Display{Dim: quantity.Length, US: quantity.UnitDisplay{Unit: "in", Form: quantity.Inches, Step: 0.5, Rounding: quantity.Down}, Metric: quantity.UnitDisplay{Unit: "mm", Step: 5, Rounding: quantity.Down}}
	showFrequency = quantity.Display{Dim: quantity.Frequency, US: quantity.UnitDisplay{Unit: "vpm", Step: 500}, Metric: quantity.UnitDisplay{Unit: "Hz", Step: 10}}
	showRate      = quantity.Display{Dim: quantity.FlowRate, US: quantity.UnitDisplay{Unit: "yd³/h", Step: 1}, Metric: quantity.UnitDisplay{Unit: "m³/h", Step: 0.1}}
	showSpeed     = quantity.Display{Dim: quantity.Speed, US: quantity.UnitDisplay{Unit: "in/s", Step: 0.5}, Metric: quantity.UnitDisplay{Unit: "mm/s", Step: 5}}
	showSeconds   = quantity.Display{Dim: quantity.Duration, US: quantity.UnitDisplay{Unit: "s", Step: 1}}
)

const (
	whyThin  = calc.Text("No core this thin can be filled and vibrated.")
	whyPull  = calc.Text("Nobody pulls a head at this speed.")
	whyLift  = calc.Text("A lift is never this deep. Split it.")
	whyHands = calc.Text("One to three people work one vibrator.")
)

var vibratorIn = []calc.Field{
	{ID: "head", Kind: calc.Choice, Options: headOptions, Usual: "thin", Label: calc.Text("Size of the head")},
	{ID: "plan", Kind: calc.Choice, Usual: "middle", Label: calc.Text("Radius to plan with"),
		Help: calc.Text("Many ties or bars: the low end. Measure it on the first lift."),
		Options: []calc.Option{
			{ID: "low", Label: calc.Text("Low end of the table")},
			{ID: "middle", Label: calc.Text("Middle of the table")},
			{ID: "high", Label: calc.Text("High end of the table")},
			{ID: "seen", Label: calc.Text("As seen on the job")}}},
	{ID: "seen", Display: &displays.Inches, Usual: "6 in", Label: calc.Text("Radius seen"),
		Help: calc.Text("From the head to where the surface no longer moves."),
		Min:  &calc.Limit{At: 1, Unit: "in", Why: displays.CheckUnit}, Max: &calc.Limit{At: 36, Unit: "in", Why: displays.CheckUnit}, When: asSeen},
	{ID: "gap", Display: &displays.Inches, Usual: "3 in", Label: calc.Text("Clear gap for the head"),
		Help: calc.Text("The narrowest way down, between ties and bars."),
		Min:  &calc.Limit{At: 0.5, Unit: "in", Why: displays.CheckUnit}, Max: &calc.Limit{At: 36, Unit: "in", Why: displays.CheckUnit}},
	{ID: "concrete", Kind: calc.Choice, Usual: "air", Label: calc.Text("Concrete"),
		Options: []calc.Option{{ID: "air", Label: calc.Text("Air-entrained")},
			{ID: "plain", Label: calc.Text("Not air-entrained")}}},
	{ID: "length", Display: &displays.Height, Usual: "100 ft", Label: calc.Text("Length of wall"),
		Min: &calc.Limit{At: 1, Unit: "ft", Why: displays.CheckUnit}, Max: &calc.Limit{At: 2000, Unit: "ft", Why: displays.OneJob}},
	{ID: "core", Display: &displays.Part, Usual: "8 in", Label: calc.Text("Core thickness"),
		Min: &calc.Limit{At: 2, Unit: "in", Why: whyThin}, Max: &calc.Limit{At: 36, Unit: "in", Why: displays.CheckUnit}},
	{ID: "lift", Display: &displays.Inches, Usual: "24 in", Label: calc.Text("Depth of the lift"),
		Min: &calc.Limit{At: 2, Unit: "in", Why: displays.CheckUnit}, Max: &calc.Limit{At: 10, Unit: "ft", Why: whyLift}},
	{ID: "into", Display: &displays.Inches, Usual: "6 in", Label: calc.Text("Into the lift below"),
		Help: calc.Text("At least 4 in. (100 mm). Zero only for the first lift."),
		Min:  &calc.Limit{At: 0, Unit: "in", Why: displays.NotMinus}, Max: &calc.Limit{At: 48, Unit: "in", Why: displays.CheckUnit}},
	{ID: "openings", Display: &displays.Count, Whole: true, Usual: "3", Label: calc.Text("Openings in this lift"),
		Min: &calc.Limit{At: 0, Why: displays.NotMinus}, Max: &calc.Limit{At: 200, Why: displays.CheckCount}},
	{ID: "sill", Display: &displays.Count, Whole: true, Usual: "2", Label: calc.Text("More under each sill"),
		Help: calc.Text("Through openings in the sill. Zero where the lift has no sill."),
		Min:  &calc.Limit{At: 0, Why: displays.NotMinus}, Max: &calc.Limit{At: 20, Why: displays.CheckCount}},
	{ID: "speed", Display: &showSpeed, Usual: "3 in/s", Label: calc.Text("Speed of pulling out"),
		Min: &calc.Limit{At: 0.5, Unit: "in/s", Why: whyPull}, Max: &calc.Limit{At: 12, Unit: "in/s", Why: whyPull}},
	{ID: "move", Display: &showSeconds, Usual: "5 s", Label: calc.Text("To the next place and in"),
		Min: &calc.Limit{At: 0, Unit: "s", Why: displays.NotMinus}, Max: &calc.Limit{At: 120, Unit: "s", Why: displays.CheckUnit}},
	{ID: "pump", Display: &displays.PumpRate, Usual: "10 yd³/h", Label: calc.Text("Pump rate"),
		Min: &calc.Limit{At: 0.5, Unit: "yd³/h", Why: displays.CheckUnit}, Max: &calc.Limit{At: 200, Unit: "yd³/h", Why: displays.CheckUnit}},
	{ID: "hands", Display: &displays.Count, Whole: true, Usual: "1", Label: calc.Text("People for one vibrator"),
		Help: calc.Text("Two where one carries the motor for a long whip."),
		Min:  &calc.Limit{At: 1, Why: whyHands}, Max: &calc.Limit{At: 3, Why: whyHands}},
	{ID: "height", Display: &displays.Height, Usual: "9 ft", Label: calc.Text("Top of form above the foot"),
		Min: &calc.Limit{At: 1, Unit: "ft", Why: displays.CheckUnit}, Max: &calc.Limit{At: 40, Unit: "ft", Why: displays.OneStorey}},
	{ID: "whip", Display: &displays.Height, Usual: "14 ft", Label: calc.Text("Whip with its head"),
		Min: &calc.Limit{At: 1, Unit: "ft", Why: displays.CheckUnit}, Max: &calc.Limit{At: 60, Unit: "ft", Why: displays.CheckUnit}},
	{ID: "above", Display: &displays.Height, Usual: "3 ft", Label: calc.Text("Of it above the form"),
		Help: calc.Text("What the hand and the motor need over the top."),
		Min:  &calc.Limit{At: 0, Unit: "ft", Why: displays.NotMinus}, Max: &calc.Limit{At: 10, Unit: "ft", Why: displays.CheckUnit}},
	{ID: "foot", Kind: calc.Choice, Optional: true, Label: calc.Text("The foot is vibrated by"), When: short,
		Options: []calc.Option{
			{ID: "longer", Label: calc.Text("A longer whip")},
			{ID: "window", Label: calc.Text("An opening in the form")},
			{ID: "outside", Label: calc.Text("From outside, at the foot")},
			{ID: "stages", Label: calc.Text("A lower form first")}}},
}

func asSeen(c calc.Case) bool { return c.Choice("plan") == "seen" }

// short tells that the head does not reach the foot of the wall.
func short(c calc.Case) bool {
	return Unreached(c.Num("height"), c.Num("above"), c.Num("whip")) > footSlack
}

// footSlack is less than anyone measures down a wall, in m.
const footSlack = 0.001
