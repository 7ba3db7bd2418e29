// Package lasttruck computes the last order of a pour and the time to call it.
// Every volume is given in cubic yards and in cubic meters, regardless of the
// reader's units. The plant's times and least load have no usual value.
package lasttruck

import (
	"coursebook/calculators/calc"
	"coursebook/calculators/displays"
	"coursebook/calculators/geometry"
	"coursebook/calculators/placing"
)

// Calculator declares inputs, outputs, formulas and sources of the calculator.
var Calculator = &calc.Calculator{
	ID:      "last-truck",
	Title:   calc.Text("Last truck"),
	Purpose: calc.Text("How much concrete to call for the last load, and by what time to call."),
	In:      inputs,
	Out:     outputs,
	Formulas: []*calc.Formula{
		placing.OpenWallFormula,
		geometry.WithWasteFormula,
		placing.UsableFormula,
		placing.MissingFormula,
		placing.LastOrderYardsFormula,
		placing.LastOrderMetersFormula,
		placing.CallByFormula,
	},
	Sources: sources,
	Cautions: []calc.Caution{
		{
			Level: calc.LevelCaution,
			Text: calc.Text(
				"Measure from the walkway, behind the guardrail. Keep hands out of the core while the hose moves.",
			),
		},
		{
			Level: calc.LevelNotice,
			Text: calc.Text(
				"Say the number with its unit: cubic yards or cubic meters. Have dispatch say it back.",
			),
		},
		{
			Level: calc.LevelNotice,
			Text: calc.Text(
				"Line and hopper are full now and stay full to the end. The first truck paid for them: do not order " +
					"them twice.",
			),
		},
	},
	Tables:  tables,
	Compute: compute,
	Draw:    draw,
}

const (
	byRows   = "rows"
	byVolume = "volume"
	asNow    = "as-now"
	more     = "more"
	full     = "full"
	guess    = "guess"

	nothing = "nothing"
	call    = "call"
	ask     = "ask"
	late    = "late"
	measure = "measure"
)

// Reasons of limits.
const (
	whyWall = calc.Text("A wall without size takes no concrete.")
	whyCore = calc.Text("No core this thin can be filled and vibrated.")
	whyBig  = calc.Text("No foam form for walls is this thick. Check the unit.")
	whyStep = calc.Text("No plant sells in steps this small.")
	whyLoad = calc.Text("A step this big is a load, not a step.")
	whySpil = calc.Text("Waste never makes concrete.")
	whyMuch = calc.Text("Find the reason for so much waste, or measure again.")
	whyFar  = calc.Text("A plant this far off is ordered the day before.")
)

const labelOpen = calc.Text("Open wall")

func measured(c calc.Case) bool { return c.Choice("by") == byRows }

func typed(c calc.Case) bool { return c.Choice("by") == byVolume }

func takesMore(c calc.Case) bool { return c.Choice("line") == more }

var inputs = []calc.Field{
	{ID: "by", Decides: 1, Kind: calc.Choice, Usual: byRows, Label: calc.Text("Open wall is given by"),
		Options: []calc.Option{
			{ID: byRows, Label: calc.Text("length, core and open height")},
			{ID: byVolume, Label: calc.Text("its volume")},
		}},
	{ID: "walls", Decides: 2, Kind: calc.Rows, Usual: "110 ft | 8 in | 2 ft", MinRows: 1, MaxRows: 20, When: measured,
		Label: labelOpen, Help: calc.Text("From the concrete to the top mark, walls level. Openings left out."),
		Cols: []calc.Field{
			{ID: "length", Display: &displays.Wall, Label: calc.Text("Length"),
				Range: "over 0 to 2000 ft", Why: whyWall, WhyMost: displays.OneJob},
			{ID: "core", Display: &displays.Part, Label: calc.Text("Core thickness"),
				Range: "2 to 36 in", Why: whyCore, WhyMost: whyBig},
			{ID: "height", Display: &displays.Wall, Label: calc.Text("Height still open"),
				Range: "0 to 60 ft", Why: displays.NotMinus, WhyMost: displays.CheckUnit},
		}},
	{ID: "open", Decides: 2, Display: &displays.Volume, When: typed, Label: calc.Text("Volume still open"),
		Range: "0 to 500 yd³", Why: displays.NotMinus, WhyMost: displays.OneJob},
	{ID: "waste", Display: &geometry.WasteDisplay, Rule: "waste", Label: calc.Text("Waste and spill"),
		Help:  calc.Text("On the open wall alone."),
		Range: "0 to 25 %", Why: whySpil, WhyMost: whyMuch},
	{ID: "drums", Decides: 3, Kind: calc.Rows, MaxRows: 12, Label: calc.Text("Drums here and on the road"),
		Help: calc.Text("Only what is still good by its ticket when it reaches the wall."),
		Cols: []calc.Field{
			{ID: "volume", Display: &displays.Volume, Label: calc.Text("Concrete in it"),
				Range: "0 to 16 yd³", Why: displays.NotMinus, WhyMost: placing.WhyTruck},
			{ID: "how", Kind: calc.Choice, Usual: guess, Label: calc.Text("Known by"), Options: []calc.Option{
				{ID: guess, Label: calc.Text("a guess: half counts")},
				{ID: full, Label: calc.Text("a full load, by its ticket")},
			}},
		}},
	{ID: "hopper", Display: &displays.Volume, Optional: true, Label: calc.Text("Over-full in the hopper"),
		Help:  calc.Text("Above the level the hopper must keep. Ask the operator. Empty: none."),
		Range: "0 to 3 yd³", Why: displays.NotMinus, WhyMost: displays.CheckUnit},
	{ID: "line", Kind: calc.Choice, Usual: asNow, Label: calc.Text("Line and hopper at the end"),
		Options: []calc.Option{
			{ID: asNow, Label: calc.Text("full now, and no longer later")},
			{ID: more, Label: calc.Text("empty now, or longer later")},
		}},
	{ID: "take-on", Display: &displays.Volume, When: takesMore, Label: calc.Text("They still take on"),
		Help:  calc.Text("The operator knows. Pump line works it out."),
		Range: "0 to 10 yd³", Why: displays.NotMinus, WhyMost: displays.CheckUnit},
	{ID: "sold-in", Kind: calc.Choice, Usual: "yd3", Label: calc.Text("The plant sells in"),
		Options: geometry.VolumeUnits},
	{ID: "step-yd", Display: &displays.CubicYards, Usual: "0.5 yd³", When: geometry.SoldInYd,
		Label: calc.Text("Order step in yd³"),
		Range: "0.05 to 5 yd³", Why: whyStep, WhyMost: whyLoad},
	{ID: "step-m", Display: &displays.CubicMetres, Usual: "0.5 m³", When: geometry.SoldInM,
		Label: calc.Text("Order step in m³"),
		Range: "0.05 to 5 m³", Why: whyStep, WhyMost: whyLoad},
	{ID: "least-yd", Display: &displays.CubicYards, Optional: true, When: geometry.SoldInYd,
		Label: calc.Text("Least load in yd³"), Help: calc.Text("Ask the plant. Empty: not asked yet."),
		Range: "0 to 16 yd³", Why: displays.NotMinus, WhyMost: placing.WhyTruck},
	{ID: "least-m", Display: &displays.CubicMetres, Optional: true, When: geometry.SoldInM,
		Label: calc.Text("Least load in m³"), Help: calc.Text("Ask the plant. Empty: not asked yet."),
		Range: "0 to 13 m³", Why: displays.NotMinus, WhyMost: placing.WhyTruck},
	{ID: "needed", Kind: calc.Clock, Optional: true, Label: calc.Text("In the hopper by"),
		Help: calc.Text("When the drums you have run out, or an open face gets too old.")},
	{ID: "lead", Display: &displays.Minutes, Optional: true, Label: calc.Text("From your call to the hopper"),
		Help:  calc.Text("Ask dispatch: wait, load, drive. Add your own test at the truck."),
		Range: "0 to 360 min", Why: displays.NotMinus, WhyMost: whyFar},
	{ID: "cut-off", Kind: calc.Clock, Optional: true, Label: calc.Text("Plant takes no call after"),
		Help: calc.Text("Ask dispatch when the plant closes its orders.")},
	{ID: "now", Decides: 4, Kind: calc.Clock, Optional: true, Label: calc.Text("Time now")},
}

// The IDs of a volume in both units end in -yd and -m.
var outputs = []calc.Field{
	{ID: "verdict", Kind: calc.Choice, Lead: true, Label: calc.Text("The call"), Options: []calc.Option{
		{ID: nothing, Advice: calc.Good, Label: calc.Text("Nothing to call")},
		{ID: call, Advice: calc.Careful, Label: calc.Text("Call this much")},
		{ID: ask, Advice: calc.Careful, Label: calc.Text("Call this much, once the plant's times are known")},
		{ID: late, Advice: calc.Stop, Label: calc.Text("Too late by the clock: call at once")},
		{ID: measure, Advice: calc.Careful, Label: calc.Text("Measure: only a guess covers the wall")},
	}},
	{ID: "order-yd", Display: &displays.CubicYardsUp, Lead: true, Label: calc.Text("Call, in cubic yards")},
	{ID: "order-m", Display: &displays.CubicMetresUp, Lead: true, Label: calc.Text("Call, in cubic meters")},
	{ID: "call-by", Kind: calc.Clock, Lead: true, Label: calc.Text("Call by")},
	{ID: "open-yd", Display: &displays.CubicYards, Label: calc.Text("Open wall, yd³")},
	{ID: "open-m", Display: &displays.CubicMetres, Label: calc.Text("Open wall, m³")},
	{ID: "with-waste-yd", Display: &displays.CubicYards, Label: calc.Text("With waste, yd³")},
	{ID: "with-waste-m", Display: &displays.CubicMetres, Label: calc.Text("With waste, m³")},
	{ID: "usable-yd", Display: &displays.CubicYards, Label: calc.Text("Counted from drums, yd³")},
	{ID: "usable-m", Display: &displays.CubicMetres, Label: calc.Text("Counted from drums, m³")},
	{ID: "missing-yd", Display: &displays.CubicYardsUp, Label: calc.Text("Still missing, yd³")},
	{ID: "missing-m", Display: &displays.CubicMetresUp, Label: calc.Text("Still missing, m³")},
	{ID: "over-yd", Display: &displays.CubicYardsUp, Label: calc.Text("May be left over, yd³"),
		Help: calc.Text("If no waste is used and every guess is right.")},
	{ID: "over-m", Display: &displays.CubicMetresUp, Label: calc.Text("May be left over, m³")},
}

var sources = []calc.Source{
	{ID: "practice", Where: calc.Text("A full load counts by its ticket; line and hopper stay full to the end; " +
		"orders go up to " +
		"the plant's step"), Status: calc.CommonPractice},
	{ID: "own", Where: calc.Text("A guess of what a drum still holds counts half; a truck carries 10 yd³ (7.6 m³) " +
		"at most"), Status: calc.OwnLimit},
	{
		ID:     "navedtra",
		Author: "US Navy",
		Title:  "Engineering Aid, NAVEDTRA 14070",
		Where:  calc.Text("concrete take-off of figure 5-2: waste 10 %"),
		Status: calc.Confirmed,
	},
	{
		ID:     "waste",
		Author: "Concrete Construction",
		Title:  "Yield problems and waste allowance",
		Where:  calc.Text("0 % in forms, 5 % in foundations"),
		Status: calc.Confirmed,
		Link:   "https://www.concreteconstruction.net/how-to/yield-problems-and-waste-allowance_o",
	},
	{
		ID:     "guide",
		Author: "Ready-mix producer's guide",
		Title:  "Calculating truck requirements",
		Where:  calc.Text("loading 5 min, check 5 min, drive 20 min"),
		Status: calc.Confirmed,
	},
}

var tables = []calc.Table{{
	ID: "open", Title: calc.Text("Cubic yards still open in 100 ft (30.5 m) of wall"),
	Note: calc.Text("By core thickness and height still open. No waste, nothing in the drums."),
	Out:  "open-yd", Set: []calc.Entry{{Path: "walls.1.length", Text: "100 ft"}},
	Down: calc.Axis{
		Path:   "walls.1.core",
		US:     []string{"4 in", "6 in", "8 in", "10 in", "12 in"},
		Metric: []string{"100 mm", "150 mm", "200 mm", "250 mm", "300 mm"},
	},
	Across: calc.Axis{
		Path:   "walls.1.height",
		US:     []string{"6 in", "1 ft", "2 ft", "3 ft", "4 ft"},
		Metric: []string{"0.15 m", "0.3 m", "0.6 m", "0.9 m", "1.2 m"},
	},
}}
