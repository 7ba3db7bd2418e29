package bracing

import (
	"coursebook/calculators/calc"
	"coursebook/calculators/displays"
	"coursebook/calculators/quantity"
)

var (
	// Wind pressures are a tenth of what concrete brings.
	windPressureShow = quantity.Display{Dim: quantity.Pressure, US: quantity.UnitDisplay{Unit: "psf", Step: 0.1, Rounding: quantity.Up}, Metric: quantity.UnitDisplay{Unit: "kPa", Step: 0.01, Rounding: quantity.Up}}
	lineLoadShow     = quantity.Display{Dim: quantity.LineLoad, US: quantity.UnitDisplay{Unit: "lbf/ft", Step: 1, Rounding: quantity.Up}, Metric: quantity.UnitDisplay{Unit: "kN/m", Step: 0.01, Rounding: quantity.Up}}
	groundShow       = quantity.Display{Dim: quantity.Length, US: quantity.UnitDisplay{Unit: "ft", Step: 100}, Metric: quantity.UnitDisplay{Unit: "m", Step: 50}}
)

// The reasons of the limits.
const (
	noWind     = calc.Text("No map shows so little. Use the map of the local code.")
	stormWind  = calc.Text("No map shows so much. Check the unit.")
	lowWall    = calc.Text("So low a wall needs no sheet.")
	steepBrace = calc.Text("A brace this steep cannot hold the wall.")
	hillLeast  = calc.Text("A hill never slows the wind by the code.")
	forceLeast = calc.Text("The table of the code starts at 1.3.")
	noRating   = calc.Text("Leave it empty if you do not know it.")
)

func withPlanks(c calc.Case) bool { return c.Choice("duty") != "none" }
func ownDuty(c calc.Case) bool    { return c.Choice("duty") == "own" }
func ownForce(c calc.Case) bool   { return c.Choice("part") == "own" }
func byLength(c calc.Case) bool   { return !ownForce(c) }

var windIn = []calc.Field{
	{ID: "wind", Label: calc.Text("Basic wind of the map"), Display: &displays.Wind, Usual: "110 mph",
		Help: calc.Text("3-second gust, from the local code or the engineer."),
		Min:  &calc.Limit{At: 60, Unit: "mph", Why: noWind}, Max: &calc.Limit{At: 220, Unit: "mph", Why: stormWind}},
	{ID: "period", Label: calc.Text("The wall stands braced"), Kind: calc.Choice, Usual: "weeks", Options: []calc.Option{
		{ID: "weeks", Label: calc.Text("up to 6 weeks")},
		{ID: "year", Label: calc.Text("6 weeks to 1 year")},
		{ID: "two", Label: calc.Text("1 to 2 years")},
		{ID: "five", Label: calc.Text("2 to 5 years")},
		{ID: "full", Label: calc.Text("take the full wind")}}},
	{ID: "factor", Label: calc.Text("Count the wind as"), Kind: calc.Choice, Usual: "full",
		Help: calc.Text("0.6 only for maps since 2010 and ratings that are safe loads."), Options: []calc.Option{
			{ID: "full", Label: calc.Text("full (1.0)")},
			{ID: "allowable", Label: calc.Text("allowable (0.6)")}}},
	{ID: "exposure", Label: calc.Text("Land around"), Kind: calc.Choice, Usual: "c", Options: []calc.Option{
		{ID: "b", Label: calc.Text("B: houses or woods all around")},
		{ID: "c", Label: calc.Text("C: open land")},
		{ID: "d", Label: calc.Text("D: open water or mud flats")}}},
	{ID: "hill", Label: calc.Text("Factor for a hill, Kzt"), Display: &displays.Factor, Usual: "1",
		Help: calc.Text("1 on level land. On a ridge or bluff ask the engineer."),
		Min:  &calc.Limit{At: 1, Why: hillLeast, Source: "asce7"}, Max: &calc.Limit{At: 3, Why: displays.Engineer}},
	{ID: "direction", Label: calc.Text("Factor for direction, Kd"), Display: &displays.Factor, Usual: "0.85",
		Help: calc.Text("0.85 for a solid wall; 1 leaves it out."),
		Min:  &calc.Limit{At: 0.85, Why: displays.Engineer, Source: "asce7"}, Max: &calc.Limit{At: 1, Why: displays.CheckUnit}},
	{ID: "ground", Label: calc.Text("Ground over sea level"), Display: &groundShow, Usual: "0 ft",
		Min: &calc.Limit{At: -1500, Unit: "ft", Why: displays.CheckUnit}, Max: &calc.Limit{At: 14000, Unit: "ft", Why: displays.CheckUnit}},
	{ID: "wall", Label: calc.Text("The wall is"), Kind: calc.Choice, Usual: "empty", Options: []calc.Option{
		{ID: "empty", Label: calc.Text("empty, form and bars only")},
		{ID: "fresh", Label: calc.Text("full of fresh concrete")}}},
	{ID: "height", Label: calc.Text("Height of the wall"), Display: &displays.Height, Usual: "9 ft",
		Min: &calc.Limit{At: 2, Unit: "ft", Why: lowWall}, Max: &calc.Limit{At: 30, Unit: "ft", Why: displays.OneStorey}},
	{ID: "base", Label: calc.Text("Wall base over the ground"), Display: &displays.Height, Usual: "0 ft",
		Min: &calc.Limit{Unit: "ft", Why: displays.NotMinus}, Max: &calc.Limit{At: 100, Unit: "ft", Why: displays.Engineer}},
	{ID: "part", Label: calc.Text("Part of the wall"), Kind: calc.Choice, Usual: "whole",
		Help: calc.Text("An end within one height of a free edge gets more."), Options: []calc.Option{
			{ID: "whole", Label: calc.Text("away from the ends")},
			{ID: "end", Label: calc.Text("near a free end")},
			{ID: "own", Label: calc.Text("own coefficient")}}},
	{ID: "length", Label: calc.Text("Length of the wall"), Display: &displays.Wall, Usual: "40 ft", When: byLength,
		Min: &calc.Limit{At: 2, Unit: "ft", Why: lowWall}, Max: &calc.Limit{At: 1000, Unit: "ft", Why: displays.OneJob}},
	{ID: "coefficient", Label: calc.Text("Force coefficient, Cf"), Display: &displays.Factor, Usual: "1.4", When: ownForce,
		Min: &calc.Limit{At: 1.3, Why: forceLeast, Source: "walls"}, Max: &calc.Limit{At: 4.5, Why: displays.CheckUnit}},
	{ID: "spacing", Label: calc.Text("Wall on one brace"), Display: &displays.Wall, Usual: "6 ft",
		Help: calc.Text("Half of the gap on each side, added up."),
		Min:  &calc.Limit{At: 1, Unit: "ft", Why: displays.CheckUnit}, Max: &calc.Limit{At: 20, Unit: "ft", Why: displays.Engineer}},
	{ID: "attach", Label: calc.Text("Brace holds at height"), Display: &displays.Height, Usual: "6 ft",
		Min: &calc.Limit{At: 1, Unit: "ft", Why: displays.CheckUnit}, Max: &calc.Limit{At: 30, Unit: "ft", Why: displays.OneStorey}},
	{ID: "run", Label: calc.Text("Brace foot from the wall"), Display: &displays.Height, Usual: "5 ft",
		Min: &calc.Limit{At: 1, Unit: "ft", Why: steepBrace}, Max: &calc.Limit{At: 30, Unit: "ft", Why: displays.CheckUnit}},
	{ID: "below", Label: calc.Text("Foot below the wall base"), Display: &displays.Height, Usual: "0 ft",
		Min: &calc.Limit{Unit: "ft", Why: displays.NotMinus}, Max: &calc.Limit{At: 6, Unit: "ft", Why: displays.CheckUnit}},
	{ID: "duty", Label: calc.Text("Load on the planks"), Kind: calc.Choice, Usual: "light", Options: []calc.Option{
		{ID: "none", Label: calc.Text("no planks in the wind")},
		{ID: "light", Label: calc.Text("light, 25 psf (1.2 kPa)")},
		{ID: "medium", Label: calc.Text("medium, 50 psf (2.4 kPa)")},
		{ID: "heavy", Label: calc.Text("heavy, 75 psf (3.6 kPa)")},
		{ID: "own", Label: calc.Text("own load")}}},
	{ID: "load", Label: calc.Text("Own load on the planks"), Display: &displays.Rating, Usual: "25 psf", When: ownDuty,
		Min: &calc.Limit{Unit: "psf", Why: displays.NotMinus}, Max: &calc.Limit{At: 150, Unit: "psf", Why: displays.Engineer}},
	{ID: "width", Label: calc.Text("Width of the platform"), Display: &displays.Part, Usual: "19 in", When: withPlanks,
		Min: &calc.Limit{At: 6, Unit: "in", Why: displays.CheckUnit}, Max: &calc.Limit{At: 60, Unit: "in", Why: displays.CheckUnit}},
	{ID: "out", Label: calc.Text("Planks' middle from the wall"), Display: &displays.Part, Usual: "16 in", When: withPlanks,
		Min: &calc.Limit{Unit: "in", Why: displays.NotMinus}, Max: &calc.Limit{At: 60, Unit: "in", Why: displays.CheckUnit}},
	{ID: "brace-rating", Label: calc.Text("Rating of the brace"), Display: &displays.Force, Optional: true,
		Help: calc.Text("From its maker, at this length. Empty: no verdict."),
		Min:  &calc.Limit{Unit: "lbf", Open: true, Why: noRating}, Max: &calc.Limit{At: 50000, Unit: "lbf", Why: displays.AskMaker}},
	{ID: "anchor-rating", Label: calc.Text("Uplift rating of the anchor"), Display: &displays.Force, Optional: true,
		Help: calc.Text("In this ground or slab, with the level force acting too."),
		Min:  &calc.Limit{Unit: "lbf", Open: true, Why: noRating}, Max: &calc.Limit{At: 50000, Unit: "lbf", Why: displays.AskMaker}},
	{ID: "clear", Label: calc.Text("Crew leaves the planks at"), Display: &displays.Wind, Usual: "20 mph",
		Help: calc.Text("Site rule. Masons: 20 mph (9 m/s) the first day, 35 mph (16 m/s) later."),
		Min:  &calc.Limit{At: 5, Unit: "mph", Why: displays.CheckUnit}, Max: &calc.Limit{At: 35, Unit: "mph", Why: clearMost, Source: "masonry"}},
}

const clearMost = calc.Text("Even masons on a braced, set wall leave at 35 mph (16 m/s).")

var verdictOptions = []calc.Option{
	{ID: "within", Label: calc.Text("within its rating")},
	{ID: "beyond", Label: calc.Text("BEYOND its rating")},
}

var windOut = []calc.Field{
	{ID: "push", Label: calc.Text("Push along the brace"), Display: &displays.Force, Lead: true},
	{ID: "pull", Label: calc.Text("Pull along the brace"), Display: &displays.Force, Lead: true},
	{ID: "uplift", Label: calc.Text("Uplift at the anchor"), Display: &displays.Force, Lead: true},
	{ID: "brace-verdict", Label: calc.Text("The brace is"), Kind: calc.Choice, Options: verdictOptions, Lead: true},
	{ID: "anchor-verdict", Label: calc.Text("The anchor is"), Kind: calc.Choice, Options: verdictOptions, Lead: true},
	{ID: "spacing-limit", Label: calc.Text("Most wall for these ratings"), Display: &displays.HeightAtMost},
	{ID: "level", Label: calc.Text("Level force at the anchor"), Display: &displays.Force},
	{ID: "down", Label: calc.Text("Down on the anchor"), Display: &displays.Force},
	{ID: "leg", Label: calc.Text("Down in the upright"), Display: &displays.Force},
	{ID: "planks", Label: calc.Text("Planks on one brace"), Display: &displays.Force},
	{ID: "governs", Label: calc.Text("What counts is"), Kind: calc.Choice, Options: []calc.Option{
		{ID: "wind", Label: calc.Text("the wind")},
		{ID: "least", Label: calc.Text("the least load of ACI 347")}}},
	{ID: "design-wind", Label: calc.Text("Wind for this time"), Display: &displays.Wind},
	{ID: "kz", Label: calc.Text("Height factor, Kz"), Display: &displays.Factor},
	{ID: "q", Label: calc.Text("Velocity pressure"), Display: &windPressureShow},
	{ID: "cf", Label: calc.Text("Force coefficient, Cf"), Display: &displays.Factor},
	{ID: "pressure", Label: calc.Text("Pressure on the wall"), Display: &windPressureShow},
	{ID: "line", Label: calc.Text("Wind on each length of wall"), Display: &lineLoadShow},
	{ID: "slope", Label: calc.Text("Slope of the brace"), Display: &displays.Degrees},
	{ID: "zone", Label: calc.Text("Fall zone, each side"), Display: &zoneShow},
	{ID: "q-clear", Label: calc.Text("Pressure when crew leaves"), Display: &windPressureShow},
}

var (
	zoneShow = quantity.Display{Dim: quantity.Length, US: quantity.UnitDisplay{Unit: "ft", Form: quantity.FeetInches, Step: 1, Rounding: quantity.Up}, Metric: quantity.UnitDisplay{Unit: "m", Step: 0.1, Rounding: quantity.Up}}
)
