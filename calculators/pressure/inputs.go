package pressure

import (
	"coursebook/calculators/calc"
	"coursebook/calculators/displays"
)

// The IDs of options that the computation asks for.
const (
	admixRetards = "retards"
	admixNone    = "none"
	vibShallow   = "shallow"
)

const (
	whyHeight  = calc.Text("A taller placement needs an engineer's design.")
	whySmall   = calc.Text("Less is no wall placement. Check the unit.")
	whyLarge   = calc.Text("More is no wall placement. Check the unit.")
	whyCore    = calc.Text("Foam forms for walls lie well inside. Check the unit.")
	whyPump    = calc.Text("No pump fills a wall at this rate. Check the unit.")
	whyRise    = calc.Text("Check the reading and its unit.")
	whyWeight  = calc.Text("Concrete for walls lies well inside. Check the ticket and the unit.")
	whyCold    = calc.Text("Concrete this cold must not be placed.")
	whyHot     = calc.Text("Concrete this hot must not be placed.")
	whySlump   = calc.Text("The slump cone has no more.")
	whyNothing = calc.Text("There is nothing less.")
	whyRating  = calc.Text("Form makers' ratings lie inside. Check the unit.")
)

var inputs = []calc.Field{
	{
		ID: "height", Kind: calc.Number, Display: &displays.Height, Usual: "8 ft",
		Label: labelHeight,
		Help:  helpHeight,
		Min:   &calc.Limit{At: 1, Unit: "ft", Why: whySmall}, Max: &calc.Limit{At: 40, Unit: "ft", Why: whyHeight, Source: "usbr"},
	},
	{
		ID: "length", Kind: calc.Number, Display: &displays.Height, Usual: "140 ft",
		Label: calc.Text("Length of wall in plan"),
		Help:  calc.Text("All walls that the hose goes round in one pass, by their centre line."),
		Min:   &calc.Limit{At: 1, Unit: "ft", Why: whySmall}, Max: &calc.Limit{At: 2000, Unit: "ft", Why: whyLarge},
	},
	{
		ID: "thickness", Kind: calc.Number, Display: showCore, Usual: "8 in",
		Label: calc.Text("Core thickness"),
		Help:  calc.Text("Concrete only, without the foam."),
		Min:   &calc.Limit{At: 2, Unit: "in", Why: whyCore}, Max: &calc.Limit{At: 36, Unit: "in", Why: whyCore},
	},
	{
		ID: "pump-rate", Kind: calc.Number, Display: &displays.PumpRate, Usual: "12 yd³/h",
		Label: calc.Text("Pump rate"),
		Help:  calc.Text("What the pump gives while it runs, not the day's average."),
		Min:   &calc.Limit{At: 0.2, Unit: "yd³/h", Why: whyPump}, Max: &calc.Limit{At: 200, Unit: "yd³/h", Why: whyPump},
	},
	{
		ID: "stop", Kind: calc.Number, Display: &displays.Height, Usual: "6 ft",
		Label: calc.Text("Length filled at one stop"),
		Help:  calc.Text("The length of wall that rises while the hose stands in one place."),
		Min:   &calc.Limit{At: 0.5, Unit: "ft", Why: whySmall}, Max: &calc.Limit{At: 2000, Unit: "ft", Why: whyLarge},
	},
	{
		ID: "rise", Kind: calc.Number, Display: &displays.RiseTyped, Optional: true,
		Label: calc.Text("Rise measured at the hose"),
		Help:  calc.Text("By tape, while the hose stands. It replaces the rise from the stop."),
		Min:   &calc.Limit{At: 0.1, Unit: "ft/h", Why: whyRise}, Max: &calc.Limit{At: 3000, Unit: "ft/h", Why: whyRise},
	},
	{
		ID: "weight", Kind: calc.Number, Display: &displays.UnitWeight, Usual: "150 lb/ft³",
		Label: labelWeight,
		Help:  helpWeight,
		Min:   &calc.Limit{At: 85, Unit: "lb/ft³", Why: whyWeight}, Max: &calc.Limit{At: 200, Unit: "lb/ft³", Why: whyWeight},
	},
	{
		ID: "temperature", Kind: calc.Number, Display: &displays.Temperature, Usual: "70 °F",
		Label: labelTemp,
		Help:  helpTemp,
		Min:   &calc.Limit{At: 32, Unit: "°F", Why: whyCold}, Max: &calc.Limit{At: 120, Unit: "°F", Why: whyHot},
	},
	{
		ID: "slump", Kind: calc.Number, Display: &displays.Inches, Usual: "6.5 in",
		Label: calc.Text("Slump at the hose"),
		Help:  calc.Text("Measured on site, after any water or admixture went in."),
		Min:   &calc.Limit{At: 0, Unit: "in", Why: whyNothing}, Max: &calc.Limit{At: 12, Unit: "in", Why: whySlump},
	},
	{
		ID: "cement", Kind: calc.Choice, Usual: string(Blend),
		Label:   labelCement,
		Help:    helpCement,
		Options: cements,
	},
	{
		ID: "admixture", Kind: calc.Choice, Usual: admixRetards,
		Label:   labelAdmix,
		Help:    helpAdmix,
		Options: admixtures,
	},
	{
		ID: "vibration", Kind: calc.Choice, Usual: vibShallow,
		Label: calc.Text("Vibration"),
		Help:  calc.Text("How deep below the top the poker goes, or what else shakes the form."),
		Options: []calc.Option{
			{ID: vibShallow, Label: calc.Text("Poker, no deeper than 4 ft (1.2 m)")},
			{ID: "deep", Label: calc.Text("Poker, deeper than 4 ft (1.2 m)")},
			{ID: "again", Label: calc.Text("Deep revibration")},
			{ID: "outside", Label: calc.Text("From outside, on the form")},
		},
	},
	{
		ID: "disturbed", Kind: calc.Number, Display: &displays.Height, Optional: true,
		Label: calc.Text("Depth shaken, from the top"),
		Help:  calc.Text("Leave empty if not sure: then it is the whole height."),
		Min:   &calc.Limit{At: 1, Unit: "ft", Why: whySmall}, Max: &calc.Limit{At: 40, Unit: "ft", Why: whyHeight},
		When: shaken,
	},
	{
		ID: "rating", Kind: calc.Number, Display: &displays.Rating, Optional: true, Usual: "900 psf",
		Label: calc.Text("Rated pressure of the form"),
		Help:  calc.Text("From the form maker's data. Empty: no verdict."),
		Min:   &calc.Limit{At: 100, Unit: "psf", Why: whyRating}, Max: &calc.Limit{At: 5000, Unit: "psf", Why: whyRating},
	},
	{
		ID: "guide-lift", Kind: calc.Number, Display: &displays.Height, Optional: true,
		Label: calc.Text("Lift in the maker's guide"),
		Help:  calc.Text("Only if the form maker's guide gives one."),
		Min:   &calc.Limit{At: 0.5, Unit: "ft", Why: whySmall}, Max: &calc.Limit{At: 20, Unit: "ft", Why: whyLarge},
	},
	{
		ID: "guide-rate", Kind: calc.Number, Display: &displays.RiseTyped, Optional: true,
		Label: calc.Text("Rise in the maker's guide"),
		Help:  calc.Text("Only if the form maker's guide gives one."),
		Min:   &calc.Limit{At: 0.5, Unit: "ft/h", Why: whyRise}, Max: &calc.Limit{At: 30, Unit: "ft/h", Why: whyRise},
	},
}

// shaken tells that the vibration reaches deeper than the equations allow.
func shaken(c calc.Case) bool { return c.Choice("vibration") != vibShallow }
