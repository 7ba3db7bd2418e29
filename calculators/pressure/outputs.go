package pressure

import (
	"coursebook/calculators/calc"
	"coursebook/calculators/displays"
)

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
	{ID: string(Slow), Label: calc.Text("Slow wall equation")},
	{ID: string(Fast), Label: calc.Text("Fast wall equation")},
	{ID: string(Fluid), Label: calc.Text("Full fluid head")},
	{ID: string(Floor), Label: calc.Text("Least design pressure")},
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
	{ID: "pressure-local", Kind: calc.Number, Display: &displays.Pressure, Lead: true, Label: calc.Text("Pressure at the hose"),
		Help: calc.Text("This one decides.")},
	{ID: "pressure-average", Kind: calc.Number, Display: &displays.Pressure, Label: calc.Text("Pressure, average rise"),
		Help: calc.Text("To compare. No form passes on it.")},
	{ID: "rise-local", Kind: calc.Number, Display: &displays.Rise, Lead: true, Label: calc.Text("Rise where the hose stands")},
	{ID: "rise-average", Kind: calc.Number, Display: &displays.Rise, Label: calc.Text("Average rise, whole wall")},
	{ID: "rule", Kind: calc.Choice, Options: rules, Label: calc.Text("Decided by, at the hose")},
	{ID: "rule-average", Kind: calc.Choice, Options: rules, Label: calc.Text("Decided by, on average")},
	{ID: "fluid-depth", Kind: calc.Number, Display: &displays.Height, Label: calc.Text("Depth of the fluid zone"),
		Help: calc.Text("From the top, to where the pressure stops growing.")},
	{ID: "floor", Kind: calc.Number, Display: &displays.Pressure, Label: calc.Text("Least design pressure")},
	{ID: "cw", Kind: calc.Number, Display: showFactor, Label: calc.Text("Weight coefficient")},
	{ID: "cc", Kind: calc.Number, Display: showFactor, Label: calc.Text("Chemistry coefficient")},
	{ID: "fluid-limit", Kind: calc.Number, Display: &displays.HeightAtMost, Label: calc.Text("Deepest fluid it takes"),
		Help: calc.Text("Rating divided by unit weight. At this depth any rise will do.")},
	{ID: "highest-rise", Kind: calc.Number, Display: &displays.RiseAtMost, Label: calc.Text("Highest rise for the rating")},
	{ID: "highest-flow", Kind: calc.Number, Display: &displays.PumpRateAtMost, Label: calc.Text("Highest pump rate, at a stop"),
		Help: calc.Text("With the hose standing. This one decides.")},
	{ID: "highest-flow-average", Kind: calc.Number, Display: &displays.PumpRateAtMost, Label: calc.Text("Pump rate for the average"),
		Help: calc.Text("Only if the whole wall rose at once. To compare.")},
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
	{ID: "guide-lifts", Kind: calc.Number, Display: &displays.Count, Exact: true, Label: calc.Text("Lifts, by the guide")},
	{ID: "guide-time", Kind: calc.Number, Display: showTime, Label: calc.Text("Least time per lift"),
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
