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
	{ID: string(Slow), Label: calc.Text("form-pressure.rule.slow: Slow wall equation")},
	{ID: string(Fast), Label: calc.Text("form-pressure.rule.fast: Fast wall equation")},
	{ID: string(Fluid), Label: calc.Text("form-pressure.rule.fluid: Full fluid head")},
	{ID: string(Floor), Label: calc.Text("form-pressure.rule.floor: Least design pressure")},
}

var outputs = []calc.Field{
	{
		ID: "verdict", Kind: calc.Choice, Lead: true,
		Label: calc.Text("form-pressure.verdict: The form"),
		Options: []calc.Option{
			{ID: holds, Label: calc.Text("form-pressure.verdict.holds: Holds by its rating")},
			{ID: fails, Label: calc.Text("form-pressure.verdict.fails: Does not hold by its rating")},
			{ID: unrated, Label: calc.Text("form-pressure.verdict.unrated: No rating, no verdict")},
		},
	},
	{ID: "pressure-local", Kind: calc.Number, Display: &displays.Pressure, Lead: true, Label: calc.Text("form-pressure.pressure-local: Pressure at the hose"),
		Help: calc.Text("form-pressure.pressure-local.help: This one decides.")},
	{ID: "pressure-average", Kind: calc.Number, Display: &displays.Pressure, Label: calc.Text("form-pressure.pressure-average: Pressure, average rise"),
		Help: calc.Text("form-pressure.pressure-average.help: To compare. No form passes on it.")},
	{ID: "rise-local", Kind: calc.Number, Display: &displays.Rise, Lead: true, Label: calc.Text("form-pressure.rise-local: Rise where the hose stands")},
	{ID: "rise-average", Kind: calc.Number, Display: &displays.Rise, Label: calc.Text("form-pressure.rise-average: Average rise, whole wall")},
	{ID: "rule", Kind: calc.Choice, Options: rules, Label: calc.Text("form-pressure.rule: Decided by, at the hose")},
	{ID: "rule-average", Kind: calc.Choice, Options: rules, Label: calc.Text("form-pressure.rule-average: Decided by, on average")},
	{ID: "fluid-depth", Kind: calc.Number, Display: &displays.Height, Label: calc.Text("form-pressure.fluid-depth: Depth of the fluid zone"),
		Help: calc.Text("form-pressure.fluid-depth.help: From the top, to where the pressure stops growing.")},
	{ID: "floor", Kind: calc.Number, Display: &displays.Pressure, Label: calc.Text("form-pressure.floor: Least design pressure")},
	{ID: "cw", Kind: calc.Number, Display: showFactor, Label: calc.Text("form-pressure.cw: Weight coefficient")},
	{ID: "cc", Kind: calc.Number, Display: showFactor, Label: calc.Text("form-pressure.cc: Chemistry coefficient")},
	{ID: "fluid-limit", Kind: calc.Number, Display: &displays.HeightAtMost, Label: calc.Text("form-pressure.fluid-limit: Deepest fluid it takes"),
		Help: calc.Text("form-pressure.fluid-limit.help: Rating divided by unit weight. At this depth any rise will do.")},
	{ID: "highest-rise", Kind: calc.Number, Display: &displays.RiseAtMost, Label: calc.Text("form-pressure.highest-rise: Highest rise for the rating")},
	{ID: "highest-flow", Kind: calc.Number, Display: &displays.PumpRateAtMost, Label: calc.Text("form-pressure.highest-flow: Highest pump rate, at a stop"),
		Help: calc.Text("form-pressure.highest-flow.help: With the hose standing. This one decides.")},
	{ID: "highest-flow-average", Kind: calc.Number, Display: &displays.PumpRateAtMost, Label: calc.Text("form-pressure.highest-flow-average: Pump rate for the average"),
		Help: calc.Text("form-pressure.highest-flow-average.help: Only if the whole wall rose at once. To compare.")},
	{
		ID: "guide", Kind: calc.Choice,
		Label: calc.Text("form-pressure.guide: By the form maker's guide"),
		Options: []calc.Option{
			{ID: guideNone, Label: calc.Text("form-pressure.guide.none: No lift and rise entered")},
			{ID: guideWithin, Label: calc.Text("form-pressure.guide.within: Within the guide at the hose")},
			{ID: guideAverage, Label: calc.Text("form-pressure.guide.average: Within it on average only: not passed")},
			{ID: guideBeyond, Label: calc.Text("form-pressure.guide.beyond: Beyond the guide")},
		},
	},
	{ID: "guide-lifts", Kind: calc.Number, Display: &displays.Count, Exact: true, Label: calc.Text("form-pressure.guide-lifts: Lifts, by the guide")},
	{ID: "guide-time", Kind: calc.Number, Display: showTime, Label: calc.Text("form-pressure.guide-time: Least time per lift"),
		Help: calc.Text("form-pressure.guide-time.help: From one lift to the next at any place, by the guide.")},
	{ID: "guide-flow", Kind: calc.Number, Display: &displays.PumpRateAtMost, Label: calc.Text("form-pressure.guide-flow: Pump rate by the guide"),
		Help: calc.Text("form-pressure.guide-flow.help: For the whole wall, lift by lift, pauses included.")},
	{
		ID: "by-depth", Kind: calc.Rows, Label: calc.Text("form-pressure.by-depth: Pressure by depth"),
		Cols: []calc.Field{
			{ID: "depth", Kind: calc.Number, Display: &displays.Height, Label: calc.Text("form-pressure.by-depth.depth: Depth from the top")},
			{ID: "local", Kind: calc.Number, Display: &displays.Pressure, Label: calc.Text("form-pressure.by-depth.local: At the hose")},
			{ID: "average", Kind: calc.Number, Display: &displays.Pressure, Label: calc.Text("form-pressure.by-depth.average: Average rise")},
			{ID: "head", Kind: calc.Number, Display: &displays.Pressure, Label: calc.Text("form-pressure.by-depth.head: Full fluid head")},
		},
	},
}
