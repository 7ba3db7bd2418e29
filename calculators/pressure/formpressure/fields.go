package formpressure

import (
	"coursebook/calculators/calc"
	"coursebook/calculators/displays"
	"coursebook/calculators/pressure"
	"coursebook/calculators/weather"
)

// The IDs of options that Compute reads.
const (
	around = "around" // in lifts, a closed loop
	back   = "back"   // in lifts, a wall with two ends
	once   = "once"   // in one go

	fromTop = "top"

	marked   = "marked"
	unmarked = "unmarked"
	deep     = "deep"
	again    = "again"

	ratingWorking = "working"
	ratingTest    = "test"
	ratingUnknown = "unknown"

	guideUnread = "unread"
	guideSilent = "silent"

	outsideNone  = "none"
	outsideFirst = "first"
	outsideAbove = "above"
)

const (
	whyHeight  = calc.Text("A taller placement needs an engineer's design.")
	whySmall   = calc.Text("Less is no wall placement. Check the unit.")
	whyLarge   = calc.Text("More is no wall placement. Check the unit.")
	whyCore    = calc.Text("Foam forms for walls lie well inside. Check the unit.")
	whyPump    = calc.Text("No pump fills a wall at this rate. Check the unit.")
	whyRise    = calc.Text("Check the reading and its unit.")
	whyTime    = calc.Text("Check the time and its unit.")
	whyWeight  = calc.Text("Concrete for walls lies well inside. Check the ticket and the unit.")
	whyCold    = calc.Text("Concrete this cold must not be placed.")
	whyHot     = calc.Text("Concrete this hot must not be placed.")
	whyTooCold = calc.Text("No rule for hot loads begins this low. Check the unit.")
	whySlump   = calc.Text("The slump cone has no more.")
	whyNone    = calc.Text("There is nothing less.")
	whyStop    = calc.Text("At one stop the hose fills no more. If it moves on, type the length of one stop.")
	whyRating  = calc.Text("Form makers' ratings lie inside. Check the unit.")
)

// inLifts reports whether the wall is placed in lifts.
func inLifts(c calc.Case) bool { return c.Choice("how") != once }

func inOneGo(c calc.Case) bool { return !inLifts(c) }

func hasRating(c calc.Case) bool { return c.Has("rating") }

// hasNoGuide reports whether no figure of the form maker's guide is typed.
func hasNoGuide(c calc.Case) bool { return !c.Has("guide-lift") && !c.Has("guide-rate") }

var inputs = []calc.Field{
	{
		ID: "how", Kind: calc.Choice, Usual: around,
		Label: calc.Text("How do you place?"),
		Help:  calc.Text("There and back is a wall with two ends: two lifts land there at once."),
		Options: []calc.Option{
			{ID: around, Label: calc.Text("In lifts, going around")},
			{ID: back, Label: calc.Text("In lifts, there and back")},
			{ID: once, Label: calc.Text("In one go, to full height")},
		},
	},
	{
		ID: "height", Decides: 2, Measure: "height", Kind: calc.Number, Display: &displays.Height, Usual: "8 ft",
		Label: calc.Text("Height placed today"),
		Help:  calc.Text("All that is placed today, all lifts together."),
		Range: "1 to 40 ft", Why: whySmall, WhyMost: whyHeight, MostSource: "usbr",
	},
	{
		ID: "form-height", Kind: calc.Number, Display: &displays.Height, Optional: true,
		Label: calc.Text("Height of the form"),
		Help:  calc.Text("If it is taller than what you place today. Empty: the same height."),
		Range: "1 to 60 ft", Why: whySmall, WhyMost: whyHeight,
	},
	{
		ID: "lift", Measure: "lift", Kind: calc.Number, Display: &displays.Height, Rule: "lift",
		Label: calc.Text("Depth of one lift"),
		Range: "0.5 to 10 ft", Why: whySmall, WhyMost: whyLarge,
		When: inLifts,
	},
	{
		ID: "rating", Maker: true, Kind: calc.Number, Display: &displays.Rating, Optional: true,
		Label: calc.Text("Rated pressure of the form"),
		Help:  calc.Text("The maker's allowed working pressure, safety included. Not a test figure."),
		Range: "100 to 5000 psf", Why: whyRating,
	},
	{
		ID: "rating-is", Kind: calc.Choice, Usual: ratingUnknown, When: hasRating,
		Label: calc.Text("This pressure is"),
		Options: []calc.Option{
			{ID: ratingUnknown, Label: calc.Text("Not known")},
			{ID: ratingWorking, Label: calc.Text("Working pressure, from the maker's data")},
			{ID: ratingTest, Label: calc.Text("A test or breaking figure")},
		},
	},
	{
		ID: "length", Decides: 1, Measure: "loop", Kind: calc.Number, Display: &displays.Height, Usual: "140 ft",
		Label: calc.Text("Length of wall in plan"),
		Help:  calc.Text("All walls that the hose fills in one pass, by their centerline."),
		Range: "1 to 2000 ft", Why: whySmall, WhyMost: whyLarge,
	},
	{
		ID: "thickness", Decides: 3, Measure: "core", Kind: calc.Number, Display: displayCore, Usual: "8 in",
		Label: calc.Text("Core thickness"),
		Help:  calc.Text("Concrete only, without the foam."),
		Range: "2 to 36 in", Why: whyCore,
	},
	{
		ID: "pump-rate", Decides: 4, Measure: "pump-rate", Kind: calc.Number, Display: &displays.PumpRate,
		Usual: "12 yd³/h",
		Label: calc.Text("Pump rate"),
		Help:  calc.Text("What the pump gives while it runs, not the day's average."),
		Range: "0.2 to 200 yd³/h", Why: whyPump,
	},
	{
		ID: "round", Kind: calc.Number, Display: &displays.Minutes, Optional: true,
		Label: calc.Text("Time of one pass, by clock"),
		Help:  calc.Text("Once around, or one way. Empty: from pump rate, length and lift."),
		Range: "1 min to 24 h", Why: whyTime,
		When: inLifts,
	},
	{
		ID: "wait", Kind: calc.Number, Display: &displays.Minutes, Optional: true,
		Label: calc.Text("Wait after each pass"),
		Help:  calc.Text("Pump stopped on purpose after every pass."),
		Range: "0 min to 12 h", Why: whyNone, WhyMost: whyTime,
		When: inLifts,
	},
	{
		ID: "stop", Kind: calc.Number, Display: &displays.Height, Usual: "6 ft",
		Label: calc.Text("Length filled at one stop"),
		Help:  calc.Text("The length of wall that rises while the hose is in one place."),
		Range: "0.5 to 15 ft", Why: whySmall, WhyMost: whyStop, MostSource: "own",
		When: inOneGo,
	},
	{
		ID: "temperature", Example: true, Optional: true, Measure: "concrete-temperature", Kind: calc.Number,
		Display: &displays.Temperature,
		Usual:   "70 °F",
		Label:   calc.Text("Concrete, coldest load"),
		Help:    pressure.HelpTemp,
		Range:   "32 to 120 °F", Why: whyCold, WhyMost: whyHot,
	},
	{
		ID: "slump", Example: true, Optional: true, Measure: "slump", Kind: calc.Number, Display: &displays.Inches,
		Usual: "6.5 in",
		Label: calc.Text("Slump at the hose"),
		Help:  calc.Text("Measured on site, after any water or admixture went in."),
		Range: "0 to 12 in", Why: whyNone, WhyMost: whySlump,
	},
	{
		ID: "cement", Kind: calc.Choice, Usual: pressure.Unknown,
		Label:   pressure.LabelCement,
		Help:    calc.Text("From the ticket, or ask the plant."),
		Options: pressure.CementsAsked,
	},
	{
		ID: "admixture", Kind: calc.Choice, Usual: pressure.Unknown,
		Label:   pressure.LabelAdmix,
		Help:    pressure.HelpAdmix,
		Options: pressure.AdmixturesAsked,
	},
	{
		ID: "set", Kind: calc.Number, Display: &displays.Hours, Optional: true,
		Label: calc.Text("Final set, from the plant"),
		Help:  calc.Text("In writing, at 70 °F (21 °C). Empty: our estimate."),
		Range: "1 to 48 h", Why: whyTime,
	},
	{
		ID: "age", Example: true, Optional: true, Kind: calc.Number, Display: &displays.Minutes, Usual: "60 min",
		Label: calc.Text("Age of the oldest load"),
		Help:  calc.Text("When it lands, from batching. Take \"last out\" from truck spacing."),
		Range: "0 min to 8 h", Why: whyNone, WhyMost: whyTime,
	},
	{
		ID: "hose", Kind: calc.Choice, Usual: fromTop,
		Label: calc.Text("End of the hose"),
		Options: []calc.Option{
			{ID: fromTop, Label: calc.Text("Above the concrete")},
			{ID: "below", Label: calc.Text("Buried, or pumped in from below")},
		},
	},
	{
		ID: "vibration", Example: true, Optional: true, Kind: calc.Choice, Usual: marked,
		Label: calc.Text("Vibrator"),
		Options: []calc.Option{
			{ID: marked, Label: calc.Text("Mark on the whip: 6 in. into the old lift, 4 ft down at most")},
			{ID: unmarked, Label: calc.Text("No mark on the whip")},
			{ID: deep, Label: calc.Text("Head goes deeper than that")},
			{ID: again, Label: calc.Text("Old lifts are vibrated again")},
		},
	},
	{
		ID: "reach", Kind: calc.Number, Display: &displays.Height, Optional: true,
		Label: calc.Text("Depth the head can reach"),
		Help:  calc.Text("From the top of the new lift. Empty: the whole height counts."),
		Range: "0.5 to 40 ft", Why: whySmall, WhyMost: whyLarge,
		When: asksReach,
	},
	{
		ID: "outside", Kind: calc.Choice, Usual: outsideNone,
		Label: calc.Text("Tool on the outside"),
		Options: []calc.Option{
			{ID: outsideNone, Label: calc.Text("None")},
			{ID: outsideFirst, Label: calc.Text("In the first lift only")},
			{ID: outsideAbove, Label: calc.Text("Above the first lift too")},
		},
	},
	{
		ID: "weight", Measure: "unit-weight", Kind: calc.Number, Display: &displays.UnitWeight, Usual: "150 lb/ft³",
		Label: pressure.LabelWeight,
		Help:  pressure.HelpWeight,
		Range: "85 to 200 lb/ft³", Why: whyWeight,
	},
	{
		ID: "rise", Kind: calc.Number, Display: &displays.RiseTyped, Optional: true,
		Label: calc.Text("Rise measured by tape"),
		Help:  calc.Text("It can raise the answer, never lower it."),
		Range: "0.1 to 3000 ft/h", Why: whyRise,
	},
	{
		ID: "age-most", Kind: calc.Number, Display: &displays.Minutes, Rule: "ticket-age", HoldsRule: true,
		Label: calc.Text("Oldest load allowed"), Help: calc.Text("House rule, or the ticket's if less."),
		Range: "0 min to 8 h", Why: whyNone, WhyMost: whyTime,
	},
	{
		ID: "joint-most", Measure: "joint-window", Kind: calc.Number, Display: &displays.Minutes, Rule: "joint-window",
		HoldsRule: true,
		When:      inLifts, Optional: true,
		Label: weather.LabelWindow, Help: calc.Text("House rule, or the plant's if less."),
		Range: "20 min to 10 h", Why: whyTime,
	},
	{
		ID: "pause-most", Kind: calc.Number, Display: &displays.Minutes, Rule: "pause", HoldsRule: true,
		When: inLifts, Optional: true, Label: calc.Text("Longest planned pause"),
		Range: "1 min to 2 h", Why: whyTime,
	},
	{
		ID: "hottest", Kind: calc.Number, Display: &displays.Temperature, Rule: "hot-load", HoldsRule: true,
		Label: calc.Text("Hottest load allowed"),
		Help:  calc.Text("House rule, or the specification's if less."),
		Range: "50 to 120 °F", Why: whyTooCold, WhyMost: whyHot,
	},
	{
		ID: "rise-house", Kind: calc.Number, Display: &displays.RiseTyped, Rule: "rise",
		Label: calc.Text("Greatest rise, house rule"),
		Help:  calc.Text("Mean over an hour with planned waits. The lower of this and the guide's counts."),
		Range: "0.5 to 15 ft/h", Why: whyRise,
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
	{
		ID: "guide-gives", Kind: calc.Choice, Usual: guideUnread, When: hasNoGuide,
		Label: calc.Text("Guide on lift and rise"),
		Options: []calc.Option{
			{ID: guideUnread, Label: calc.Text("Not entered")},
			{ID: guideSilent, Label: calc.Text("It gives none")},
		},
	},
}

// asksReach reports whether the depth that the head can reach counts.
func asksReach(c calc.Case) bool { return inLifts(c) && c.Choice("vibration") == unmarked }
