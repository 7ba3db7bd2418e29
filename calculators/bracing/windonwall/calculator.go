// Package windonwall computes the wind forces on an empty or freshly placed
// wall and on its braces. It gives forces and no design: a verdict is given
// only on ratings that are entered.
package windonwall

import (
	"coursebook/calculators/bracing"
	"coursebook/calculators/calc"
	"coursebook/calculators/displays"
	"coursebook/calculators/quantity"
)

// Calculator declares inputs, outputs, formulas and sources of the calculator.
var Calculator = &calc.Calculator{
	ID:       "wind-on-wall",
	Title:    calc.Text("Wind on a braced wall"),
	Purpose:  calc.Text("What the wind and the planks put on one brace and its anchor."),
	In:       inputs,
	Out:      outputs,
	Formulas: formulas,
	Sources:  sources,
	Cautions: []calc.Caution{
		{
			Level: calc.LevelDanger,
			Text: calc.Text(
				"A wall that blows over kills. Clear the planks and the fall zone before the wind gets strong.",
			),
		},
		{
			Level: calc.LevelWarning,
			Text: calc.Text(
				"Bracing is the work of an engineer or of the form maker. These forces help you ask, they are no " +
					"design.",
			),
		},
		{
			Level: calc.LevelWarning,
			Text: calc.Text(
				"Local code, the anchor maker's data and the soil decide. An anchor in young concrete holds far less.",
			),
		},
	},
	Tables:  tables,
	Compute: compute,
	Draw:    draw,
}

var sources = []calc.Source{
	{
		ID:      "asce7",
		Author:  "ASCE",
		Title:   "Minimum Design Loads for Buildings and Other Structures, ASCE 7",
		Edition: "7-05 to 7-16",
		Where: calc.Text("velocity pressure and exposure coefficients, as used in public permit calculations of " +
			"2019"),
		Status: calc.Secondary,
	},
	{ID: "walls", Author: "ASCE", Title: "ASCE 7, solid freestanding walls", Edition: "7-10, 7-16",
		Where:  calc.Text("force coefficients for s/h = 1, cases A to C; same table in CIRSOC 102-2025, figure 4.4-1"),
		Status: calc.Secondary},
	{
		ID:     "asce716",
		Author: "ASCE",
		Title:  "ASCE 7-16",
		Year:   "2017",
		Where:  calc.Text("table 26.9-1, ground elevation factor; section 2.4.1, 0.6 W"),
		Status: calc.Memory,
	},
	{
		ID:     "asce37",
		Author: "ASCE",
		Title:  "Design Loads on Structures during Construction, ASCE 37",
		Where:  calc.Text("factors for the construction period; 0.8 as repeated in the tilt-up bracing guideline"),
		Status: calc.Memory,
		Link:   "https://www.concreteconstruction.net/business/tilt-up-concrete-association-bracing-guideline_o",
	},
	{
		ID:     "aci347",
		Author: "ACI Committee 347",
		Title:  "Guide to Formwork for Concrete",
		Where: calc.Text("least level load on wall forms, as in a textbook chapter on wall form design, section " +
			"7.2.2"),
		Status: calc.Secondary,
	},
	{
		ID:     "statics",
		Title:  "Wall form design, chapter of a textbook",
		Where:  calc.Text("moments about the base of the wall: P = H h l / (h' l') in its part on lateral bracing"),
		Status: calc.Secondary,
	},
	{
		ID:     "osha-l",
		Author: "OSHA",
		Title:  "29 CFR 1926 Subpart L, Appendix A",
		Where:  calc.Text("light, medium and heavy duty: 25, 50 and 75 psf"),
		Status: calc.Secondary,
		Link:   "https://www.osha.gov/laws-regs/regulations/standardnumber/1926/1926SubpartLAppA",
	},
	{ID: "masonry", Author: "NCMA", Title: "Bracing concrete masonry walls during construction, TEK 3-4B", Year: "2005",
		Where:  calc.Text("clear at 20 mph in the first period, 35 mph later; zone of height plus 4 ft"),
		Status: calc.Confirmed},
	{
		ID:      "army",
		Author:  "US Army",
		Title:   "EN5466, Concrete and masonry",
		Edition: "A",
		Year:    "1992",
		Where:   calc.Text("brace design: sin θ = y/L, slopes of 20° to 60°"),
		Status:  calc.Confirmed,
	},
}

var tables = []calc.Table{
	{
		ID: "force", Title: calc.Text("Force along the brace, by wall height and wind"),
		Note: calc.Text(
			"Brace every 6 ft (1.83 m), held at 7 ft (2.13 m), foot 5 ft (1.52 m) out. Exposure C, up to 6 weeks, " +
				"over 115 mph (51 m/s) the full wind, no planks. Low winds: the least load counts.",
		),
		Out: "push", Set: []calc.Entry{{Path: "duty", Text: "none"}, {Path: "attach", Text: "7 ft"}},
		Down: calc.Axis{
			Path:   "wind",
			US:     []string{"80 mph", "90 mph", "100 mph", "110 mph", "120 mph", "130 mph"},
			Metric: []string{"36 m/s", "40 m/s", "45 m/s", "50 m/s", "54 m/s", "58 m/s"},
		},
		Across: calc.Axis{
			Path:   "height",
			US:     []string{"8 ft", "9 ft", "10 ft", "12 ft"},
			Metric: []string{"2.4 m", "2.7 m", "3 m", "3.6 m"},
		},
	},
}

var formulas = []*calc.Formula{
	bracing.DesignWindFormula, bracing.HeightFactorFormula, bracing.GroundFactorFormula,
	bracing.VelocityPressureFormula, bracing.WallPressureFormula, bracing.WindLineFormula, bracing.WindMomentFormula,
	bracing.LeastMomentFormula,
	bracing.PlankLoadFormula, bracing.PlankReactionFormula, bracing.BraceReactionFormula, bracing.BraceLengthFormula,
	bracing.BraceForceFormula, bracing.AnchorUpliftFormula, bracing.MeasuredPressureFormula, bracing.ClearZoneFormula,
}

var (
	// Wind pressures are a tenth of what concrete brings.
	showPressure = quantity.Display{
		Dim:    quantity.Pressure,
		US:     quantity.UnitDisplay{Unit: "psf", Step: 0.1, Rounding: quantity.Up},
		Metric: quantity.UnitDisplay{Unit: "kPa", Step: 0.01, Rounding: quantity.Up},
	}
	showLineLoad = quantity.Display{
		Dim:    quantity.LineLoad,
		US:     quantity.UnitDisplay{Unit: "lbf/ft", Step: 1, Rounding: quantity.Up},
		Metric: quantity.UnitDisplay{Unit: "kN/m", Step: 0.01, Rounding: quantity.Up},
	}
	showGround = quantity.Display{
		Dim:    quantity.Length,
		US:     quantity.UnitDisplay{Unit: "ft", Step: 100},
		Metric: quantity.UnitDisplay{Unit: "m", Step: 50},
	}
)

// Reasons of limits.
const (
	no         = calc.Text("No map shows so little. For the gust of today, choose it first.")
	noGust     = calc.Text("No wind to speak of. Check the number and its unit.")
	stormGust  = calc.Text("In such wind nobody builds. For the wind of the map, choose it first.")
	storm      = calc.Text("No map shows so much. Check the unit.")
	lowWall    = calc.Text("So low a wall needs no sheet.")
	steepBrace = calc.Text("A brace this steep cannot hold the wall.")
	hillLeast  = calc.Text("A hill never slows the wind by the code.")
	forceLeast = calc.Text("The table of the code starts at 1.3.")
	noRating   = calc.Text("Leave it empty if you do not know it.")
)

// IDs of the options of which wind is meant.
const (
	ofMap   = "map"
	ofToday = "today"
)

func byMap(c calc.Case) bool { return c.Choice("by") != ofToday }

// stormy reports whether the map shows a wind of hurricane country: there the full wind is
// the usual choice.
func stormy(c calc.Case) bool { return byMap(c) && calc.Over(c.Num("wind"), stormWind) }

// stormWeeks reports whether the wind of hurricane country is lowered for up to 6 weeks. A
// longer time always reaches into the season.
func stormWeeks(c calc.Case) bool { return stormy(c) && c.Choice("storm") == "weeks" }

// maybeInSeason reports whether the wind of hurricane country is lowered although nobody
// says that the bracing is up out of its season only.
func maybeInSeason(c calc.Case) bool {
	return stormy(c) && c.Choice("storm") != fullWind && !(stormWeeks(c) && c.Flag("calm-season"))
}

// wide reports whether more wall hangs on one brace than the house rule has.
func wide(c calc.Case) bool { return c.LooserThanHouse("spacing") }

// unplanned reports whether it does so without the brace plan.
func unplanned(c calc.Case) bool { return wide(c) && !c.Flag("on-plan") }

func calm(c calc.Case) bool { return byMap(c) && !stormy(c) }

func byGust(c calc.Case) bool { return !byMap(c) }

func withPlanks(c calc.Case) bool { return c.Choice("duty") != "none" }

func ownDuty(c calc.Case) bool { return c.Choice("duty") == "own" }

func ownForce(c calc.Case) bool { return c.Choice("part") == "own" }

func byLength(c calc.Case) bool { return !ownForce(c) }

const (
	labelPeriod = calc.Text("The wall stands braced")
	fullWind    = "full"
)

// periods are the options of how long the wall is braced.
var periods = []calc.Option{
	{ID: "weeks", Label: calc.Text("up to 6 weeks")},
	{ID: "year", Label: calc.Text("6 weeks to 1 year")},
	{ID: "two", Label: calc.Text("1 to 2 years")},
	{ID: "five", Label: calc.Text("2 to 5 years")},
	{ID: fullWind, Label: calc.Text("take the full wind")},
}

var inputs = []calc.Field{
	{ID: "by", Decides: 1, Label: calc.Text("The wind is"), Kind: calc.Choice, Usual: ofMap,
		Help: calc.Text("The map checks the braces. Today's gust only says what pushes now."), Options: []calc.Option{
			{ID: ofMap, Label: calc.Text("that of the map, to check the braces")},
			{ID: ofToday, Label: calc.Text("today's gust")}}},
	{ID: "gust", Decides: 2, Label: calc.Text("Gust of today"), Display: &displays.Wind, Usual: "30 mph", When: byGust,
		Help:  calc.Text("By the wind meter at the wall, or from the forecast. For knots type 26 kn."),
		Range: "5 to 80 mph", Why: noGust, WhyMost: stormGust},
	{ID: "wind", Decides: 2, Label: calc.Text("Basic wind of the map"), Display: &displays.Wind, Usual: "110 mph",
		When:  byMap,
		Help:  calc.Text("3-second gust, from the local code or the engineer."),
		Range: "60 to 220 mph", Why: no, WhyMost: storm},
	{ID: "period", Label: labelPeriod, Kind: calc.Choice, Usual: "weeks", When: calm, Options: periods},
	{ID: "storm", Label: labelPeriod, Kind: calc.Choice, Usual: fullWind, When: stormy, Options: periods},
	{ID: "calm-season", Label: calc.Text("Up and down out of season"), Kind: calc.Flag, Usual: "no", When: stormWeeks,
		Help: calc.Text("Only if no day of the bracing falls into the hurricane season.")},
	{ID: "factor", Label: calc.Text("Count the wind as"), Kind: calc.Choice, Usual: "full", When: byMap,
		Help: calc.Text("0.6 only for maps since 2010 and ratings that are safe loads."), Options: []calc.Option{
			{ID: "full", Label: calc.Text("full (1.0)")},
			{ID: "allowable", Label: calc.Text("allowable (0.6)")}}},
	{ID: "exposure", Label: calc.Text("Land around"), Kind: calc.Choice, Usual: "c", When: byMap,
		Help: calc.Text("The code's letter, on the plans or from the building office. Unsure: C."),
		Options: []calc.Option{
			{ID: "b", Label: calc.Text("B: houses or woods all around")},
			{ID: "c", Label: calc.Text("C: open land")},
			{ID: "d", Label: calc.Text("D: open water or mud flats")}}},
	{ID: "hill", Label: calc.Text("Factor for a hill"), Display: &displays.Factor, Usual: "1", When: byMap,
		Help:  calc.Text("Kzt of the code: 1 on level land. On a ridge or bluff the engineer gives it."),
		Range: "1 to 3", Why: hillLeast, WhyMost: displays.Engineer, LeastSource: "asce7"},
	{ID: "direction", Label: calc.Text("Factor for direction"), Display: &displays.Factor, Usual: "0.85", When: byMap,
		Help:  calc.Text("Kd of the code: 0.85 for a solid wall. Leave it if you do not know."),
		Range: "0.85 to 1", Why: displays.Engineer, WhyMost: displays.CheckUnit, LeastSource: "asce7"},
	{ID: "ground", Label: calc.Text("Ground over sea level"), Display: &showGround, Usual: "0 ft", When: byMap,
		Range: "-1500 to 14000 ft", Why: displays.CheckUnit},
	{ID: "wall", Label: calc.Text("The wall is"), Kind: calc.Choice, Usual: "empty", Options: []calc.Option{
		{ID: "empty", Label: calc.Text("empty, form and bars only")},
		{ID: "fresh", Label: calc.Text("full of fresh concrete")}}},
	{ID: "height", Decides: 3, Label: calc.Text("Height of the wall"), Display: &displays.Height, Usual: "9 ft",
		Range: "2 to 30 ft", Why: lowWall, WhyMost: displays.OneStorey},
	{ID: "base", Label: calc.Text("Wall base over the ground"), Display: &displays.Height, Usual: "0 ft", When: byMap,
		Range: "0 to 100 ft", Why: displays.NotMinus, WhyMost: displays.Engineer},
	{ID: "part", Label: calc.Text("Part of the wall"), Kind: calc.Choice, Usual: "whole",
		Help: calc.Text("An end within one height of a free edge gets more."), Options: []calc.Option{
			{ID: "whole", Label: calc.Text("away from the ends")},
			{ID: "end", Label: calc.Text("near a free end")},
			{ID: "own", Label: calc.Text("own coefficient")}}},
	{ID: "length", Label: calc.Text("Length of the wall"), Display: &displays.Wall,
		Example: true, Usual: "40 ft", When: byLength,
		Range: "2 to 1000 ft", Why: lowWall, WhyMost: displays.OneJob},
	{
		ID:          "coefficient",
		Label:       calc.Text("Force coefficient"),
		Help:        calc.Text("Cf of the code for a free wall, from the engineer."),
		Display:     &displays.Factor,
		Usual:       "1.4",
		When:        ownForce,
		Range:       "1.3 to 4.5",
		Why:         forceLeast,
		WhyMost:     displays.CheckUnit,
		LeastSource: "walls",
	},
	{ID: "spacing", Decides: 4, Label: calc.Text("Wall on one brace"), Display: &displays.Wall, Rule: "brace-spacing",
		OnPlan: "on-plan",
		Help:   calc.Text("Half of the gap on each side, added up."),
		Range:  "1 to 20 ft", Why: displays.CheckUnit, WhyMost: displays.Engineer},
	{ID: "on-plan", Label: bracing.LabelOnPlan, Kind: calc.Flag, Usual: "no", When: wide, Help: bracing.HelpOnPlan},
	{ID: "attach", Measure: "brace-height", Label: calc.Text("Brace holds at height"), Display: &displays.Height,
		Example: true,
		Usual:   "6 ft",
		Range:   "1 to 30 ft", Why: displays.CheckUnit, WhyMost: displays.OneStorey},
	{ID: "run", Measure: "brace-foot", Label: calc.Text("Brace foot from the wall"), Display: &displays.Height,
		Example: true,
		Usual:   "5 ft",
		Range:   "1 to 30 ft", Why: steepBrace, WhyMost: displays.CheckUnit},
	{ID: "below", Measure: "foot-below", Label: calc.Text("Foot below the wall base"), Display: &displays.Height,
		Usual: "0 ft",
		Range: "0 to 6 ft", Why: displays.NotMinus, WhyMost: displays.CheckUnit},
	{ID: "duty", Label: calc.Text("Load on the planks"), Kind: calc.Choice, Usual: "light", Options: []calc.Option{
		{ID: "none", Label: calc.Text("no planks in the wind")},
		{ID: "light", Label: calc.Text("light, 25 psf (1.2 kPa)")},
		{ID: "medium", Label: calc.Text("medium, 50 psf (2.4 kPa)")},
		{ID: "heavy", Label: calc.Text("heavy, 75 psf (3.6 kPa)")},
		{ID: "own", Label: calc.Text("own load")}}},
	{ID: "load", Label: calc.Text("Own load on the planks"), Display: &displays.Rating, Usual: "25 psf", When: ownDuty,
		Range: "0 to 150 psf", Why: displays.NotMinus, WhyMost: displays.Engineer},
	{ID: "width", Label: calc.Text("Width of the platform"), Display: &displays.Part, Usual: "19 in", When: withPlanks,
		Range: "6 to 60 in", Why: displays.CheckUnit},
	{
		ID:      "out",
		Label:   calc.Text("Planks' middle from the wall"),
		Display: &displays.Part,
		Usual:   "16 in",
		When:    withPlanks,
		Range:   "0 to 60 in",
		Why:     displays.NotMinus,
		WhyMost: displays.CheckUnit,
	},
	{ID: "brace-rating", Maker: true, Label: calc.Text("Rating of the brace"), Display: &displays.Force, Optional: true,
		When:  byMap,
		Help:  calc.Text("From its maker, at this length. Empty: no verdict."),
		Range: "over 0 to 50000 lbf", Why: noRating, WhyMost: displays.AskMaker},
	{
		ID:       "anchor-rating",
		Maker:    true,
		Label:    calc.Text("Uplift rating of the anchor"),
		Display:  &displays.Force,
		Optional: true,
		When:     byMap,
		Help:     calc.Text("In this ground or slab, with the level force acting too."),
		Range:    "over 0 to 50000 lbf",
		Why:      noRating,
		WhyMost:  displays.AskMaker,
	},
	{ID: "clear", Label: calc.Text("Crew leaves the planks at"), Display: &displays.Wind, Rule: "planks-wind",
		Help:  calc.Text("The house rule. Never over 20 mph (9 m/s) here, the first-day limit of masons."),
		Range: "5 to 35 mph", Why: displays.CheckUnit, WhyMost: clearMost, MostSource: "masonry"},
}

const clearMost = calc.Text("Even masons on a braced, set wall leave at 35 mph (16 m/s).")

var verdictOptions = []calc.Option{
	{ID: "within", Label: calc.Text("within the rating entered")},
	{ID: "beyond", Label: calc.Text("beyond the rating entered")},
	{ID: "open", Label: calc.Text("not judged: see the notes")},
}

var outputs = []calc.Field{
	{ID: "push", Label: calc.Text("Push along the brace"), Display: &displays.Force, Lead: true},
	{ID: "pull", Label: calc.Text("Pull along the brace"), Display: &displays.Force, Lead: true},
	{ID: "uplift", Label: calc.Text("Uplift at the anchor"), Display: &displays.Force, Lead: true},
	{ID: "brace-verdict", Label: calc.Text("The brace is"), Kind: calc.Choice, Options: verdictOptions, Lead: true},
	{ID: "anchor-verdict", Label: calc.Text("The anchor is"), Kind: calc.Choice, Options: verdictOptions, Lead: true},
	{ID: "spacing-limit", Label: calc.Text("Most wall for these ratings"), Display: &displays.HeightAtMost,
		Help: calc.Text("No more than the house rule.")},
	{ID: "level", Label: calc.Text("Level force at the anchor"), Display: &displays.Force},
	{ID: "down", Label: calc.Text("Down on the anchor"), Display: &displays.Force},
	{ID: "leg", Label: calc.Text("Down in the upright"), Display: &displays.Force},
	{ID: "planks", Label: calc.Text("Planks on one brace"), Display: &displays.Force},
	{ID: "governs", Label: calc.Text("What counts is"), Kind: calc.Choice, Options: []calc.Option{
		{ID: "wind", Label: calc.Text("the wind")},
		{ID: "least", Label: calc.Text("the least load of ACI 347")},
		{ID: "gust", Label: calc.Text("today's gust: no design wind")}}},
	{ID: "crew", Label: calc.Text("On the planks today"), Kind: calc.Choice, Lead: true, Options: []calc.Option{
		{ID: "off", Advice: calc.Stop, Label: calc.Text("nobody: the crew's limit is reached")},
		{ID: "under", Advice: calc.Careful, Label: calc.Text("under the limit, watch the wind")}}},
	{ID: "design-wind", Label: calc.Text("Wind for this time"), Display: &displays.Wind},
	{ID: "kz", Label: calc.Text("Factor for height"), Display: &displays.Factor},
	{ID: "q", Label: calc.Text("Velocity pressure"), Display: &showPressure},
	{ID: "cf", Label: calc.Text("Force coefficient"), Display: &displays.Factor},
	{ID: "pressure", Label: calc.Text("Pressure on the wall"), Display: &showPressure},
	{ID: "line", Label: calc.Text("Wind on each length of wall"), Display: &showLineLoad},
	{ID: "slope", Label: calc.Text("Slope of the brace"), Display: &displays.Degrees},
	{ID: "zone", Label: calc.Text("Fall zone, each side"), Display: &feetUp},
	{ID: "q-clear", Label: calc.Text("Pressure when crew leaves"), Display: &showPressure},
}

var feetUp = quantity.Display{
	Dim:    quantity.Length,
	US:     quantity.UnitDisplay{Unit: "ft", Form: quantity.FeetInches, Step: 1, Rounding: quantity.Up},
	Metric: quantity.UnitDisplay{Unit: "m", Step: 0.1, Rounding: quantity.Up},
}
