package formpressure

import (
	"coursebook/calculators/calc"
	"coursebook/calculators/displays"
	"coursebook/calculators/pressure"
)

// The IDs of options that Compute reads.
const vibShallow = "shallow"

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
		Label: pressure.LabelHeight,
		Help:  pressure.HelpHeight,
		Range: "1 to 40 ft", Why: whySmall, WhyMost: whyHeight, MostSource: "usbr",
	},
	{
		ID: "length", Kind: calc.Number, Display: &displays.Height, Usual: "140 ft",
		Label: calc.Text("Length of wall in plan"),
		Help:  calc.Text("All walls that the hose goes round in one pass, by their centre line."),
		Range: "1 to 2000 ft", Why: whySmall, WhyMost: whyLarge,
	},
	{
		ID: "thickness", Kind: calc.Number, Display: displayCore, Usual: "8 in",
		Label: calc.Text("Core thickness"),
		Help:  calc.Text("Concrete only, without the foam."),
		Range: "2 to 36 in", Why: whyCore,
	},
	{
		ID: "pump-rate", Kind: calc.Number, Display: &displays.PumpRate, Usual: "12 yd³/h",
		Label: calc.Text("Pump rate"),
		Help:  calc.Text("What the pump gives while it runs, not the day's average."),
		Range: "0.2 to 200 yd³/h", Why: whyPump,
	},
	{
		ID: "stop", Kind: calc.Number, Display: &displays.Height, Usual: "6 ft",
		Label: calc.Text("Length filled at one stop"),
		Help:  calc.Text("The length of wall that rises while the hose stands in one place."),
		Range: "0.5 to 2000 ft", Why: whySmall, WhyMost: whyLarge,
	},
	{
		ID: "rise", Kind: calc.Number, Display: &displays.RiseTyped, Optional: true,
		Label: calc.Text("Rise measured at the hose"),
		Help:  calc.Text("By tape, while the hose stands. It replaces the rise from the stop."),
		Range: "0.1 to 3000 ft/h", Why: whyRise,
	},
	{
		ID: "weight", Kind: calc.Number, Display: &displays.UnitWeight, Usual: "150 lb/ft³",
		Label: pressure.LabelWeight,
		Help:  pressure.HelpWeight,
		Range: "85 to 200 lb/ft³", Why: whyWeight,
	},
	{
		ID: "temperature", Kind: calc.Number, Display: &displays.Temperature, Usual: "70 °F",
		Label: pressure.LabelTemp,
		Help:  pressure.HelpTemp,
		Range: "32 to 120 °F", Why: whyCold, WhyMost: whyHot,
	},
	{
		ID: "slump", Kind: calc.Number, Display: &displays.Inches, Usual: "6.5 in",
		Label: calc.Text("Slump at the hose"),
		Help:  calc.Text("Measured on site, after any water or admixture went in."),
		Range: "0 to 12 in", Why: whyNothing, WhyMost: whySlump,
	},
	{
		ID: "cement", Kind: calc.Choice, Usual: string(pressure.Blend),
		Label:   pressure.LabelCement,
		Help:    pressure.HelpCement,
		Options: pressure.Cements,
	},
	{
		ID: "admixture", Kind: calc.Choice, Usual: pressure.AdmixRetards,
		Label:   pressure.LabelAdmix,
		Help:    pressure.HelpAdmix,
		Options: pressure.Admixtures,
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
		Range: "1 to 40 ft", Why: whySmall, WhyMost: whyHeight,
		When: shaken,
	},
	{
		ID: "rating", Maker: true, Kind: calc.Number, Display: &displays.Rating, Optional: true, Usual: "900 psf",
		Label: calc.Text("Rated pressure of the form"),
		Help:  calc.Text("From the form maker's data. Empty: no verdict."),
		Range: "100 to 5000 psf", Why: whyRating,
	},
	{
		ID: "guide-lift", Maker: true, Kind: calc.Number, Display: &displays.Height, Optional: true,
		Label: calc.Text("Lift in the maker's guide"),
		Help:  calc.Text("Only if the form maker's guide gives one."),
		Range: "0.5 to 20 ft", Why: whySmall, WhyMost: whyLarge,
	},
	{
		ID: "guide-rate", Maker: true, Kind: calc.Number, Display: &displays.RiseTyped, Optional: true,
		Label: calc.Text("Rise in the maker's guide"),
		Help:  calc.Text("Only if the form maker's guide gives one."),
		Range: "0.5 to 30 ft/h", Why: whyRise,
	},
}

// shaken reports whether the vibration reaches deeper than the equations allow.
func shaken(c calc.Case) bool { return c.Choice("vibration") != vibShallow }

// The options of the verdict.
const (
	holds   = "holds"
	fails   = "fails"
	unrated = "unrated"
)

// The options of the check against the form maker's guide.
const (
	guideNone    = "none"
	guideWithin  = "within"
	guideAverage = "average"
	guideBeyond  = "beyond"
)

var rules = []calc.Option{
	{ID: string(pressure.Slow), Label: calc.Text("Slow wall equation")},
	{ID: string(pressure.Fast), Label: calc.Text("Fast wall equation")},
	{ID: string(pressure.Fluid), Label: calc.Text("Full fluid head")},
	{ID: string(pressure.Floor), Label: calc.Text("Least design pressure")},
}

var outputs = []calc.Field{
	{
		ID: "verdict", Kind: calc.Choice, Lead: true,
		Label: calc.Text("The form"),
		Options: []calc.Option{
			{ID: holds, Label: calc.Text("Holds by its rating")},
			{ID: fails, Label: calc.Text("Does not hold by its rating")},
			{ID: unrated, Label: calc.Text("No rating, no verdict")},
		},
	},
	{
		ID:      "pressure-local",
		Kind:    calc.Number,
		Display: &displays.Pressure,
		Lead:    true,
		Label:   calc.Text("Pressure at the hose"),
		Help:    calc.Text("This one decides."),
	},
	{ID: "pressure-average", Kind: calc.Number, Display: &displays.Pressure, Label: calc.Text("Pressure, average rise"),
		Help: calc.Text("To compare. No form passes on it.")},
	{
		ID:      "rise-local",
		Kind:    calc.Number,
		Display: &displays.Rise,
		Lead:    true,
		Label:   calc.Text("Rise where the hose stands"),
	},
	{ID: "rise-average", Kind: calc.Number, Display: &displays.Rise, Label: calc.Text("Average rise, whole wall")},
	{ID: "rule", Kind: calc.Choice, Options: rules, Label: calc.Text("Decided by, at the hose")},
	{ID: "rule-average", Kind: calc.Choice, Options: rules, Label: calc.Text("Decided by, on average")},
	{ID: "fluid-depth", Kind: calc.Number, Display: &displays.Height, Label: calc.Text("Depth of the fluid zone"),
		Help: calc.Text("From the top, to where the pressure stops growing.")},
	{ID: "floor", Kind: calc.Number, Display: &displays.Pressure, Label: calc.Text("Least design pressure")},
	{ID: "cw", Kind: calc.Number, Display: displayFactor, Label: calc.Text("Weight coefficient")},
	{ID: "cc", Kind: calc.Number, Display: displayFactor, Label: calc.Text("Chemistry coefficient")},
	{ID: "fluid-limit", Kind: calc.Number, Display: &displays.HeightAtMost, Label: calc.Text("Deepest fluid it takes"),
		Help: calc.Text("Rating divided by unit weight. At this depth any rise will do.")},
	{
		ID:      "highest-rise",
		Kind:    calc.Number,
		Display: &displays.RiseAtMost,
		Label:   calc.Text("Highest rise for the rating"),
	},
	{
		ID:      "highest-flow",
		Kind:    calc.Number,
		Display: &displays.PumpRateAtMost,
		Label:   calc.Text("Highest pump rate, at a stop"),
		Help:    calc.Text("With the hose standing. This one decides."),
	},
	{
		ID:      "highest-flow-average",
		Kind:    calc.Number,
		Display: &displays.PumpRateAtMost,
		Label:   calc.Text("Pump rate for the average"),
		Help:    calc.Text("Only if the whole wall rose at once. To compare."),
	},
	{
		ID: "guide", Kind: calc.Choice,
		Label: calc.Text("By the form maker's guide"),
		Options: []calc.Option{
			{ID: guideNone, Label: calc.Text("No lift and rise entered")},
			{ID: guideWithin, Label: calc.Text("Within the guide at the hose")},
			{ID: guideAverage, Label: calc.Text("Within it on average only: not passed")},
			{ID: guideBeyond, Label: calc.Text("Beyond the guide")},
		},
	},
	{
		ID:      "guide-lifts",
		Kind:    calc.Number,
		Display: &displays.Count,
		Exact:   true,
		Label:   calc.Text("Lifts, by the guide"),
	},
	{ID: "guide-time", Kind: calc.Number, Display: displayTime, Label: calc.Text("Least time per lift"),
		Help: calc.Text("From one lift to the next at any place, by the guide.")},
	{ID: "guide-flow", Kind: calc.Number, Display: &displays.PumpRateAtMost, Label: calc.Text("Pump rate by the guide"),
		Help: calc.Text("For the whole wall, lift by lift, pauses included.")},
	{
		ID: "by-depth", Kind: calc.Rows, Label: calc.Text("Pressure by depth"),
		Cols: []calc.Field{
			{ID: "depth", Kind: calc.Number, Display: &displays.Height, Label: calc.Text("Depth from the top")},
			{ID: "local", Kind: calc.Number, Display: &displays.Pressure, Label: calc.Text("At the hose")},
			{ID: "average", Kind: calc.Number, Display: &displays.Pressure, Label: calc.Text("Average rise")},
			{ID: "head", Kind: calc.Number, Display: &displays.Pressure, Label: calc.Text("Full fluid head")},
		},
	},
}
