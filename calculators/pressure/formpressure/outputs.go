package formpressure

import (
	"coursebook/calculators/calc"
	"coursebook/calculators/displays"
	"coursebook/calculators/pressure"
)

// The options of what to do.
const (
	doGo       = "go"
	doUnguided = "unguided"
	doWait     = "wait"
	doWritten  = "written"
	doLess     = "less"
	doMix      = "mix"
	doSlow     = "slow"
	doLifts    = "lifts"
	doStop     = "stop"
	doShorten  = "shorten"
	doGuide    = "guide"
	doAsk      = "ask"
	doRefuse   = "refuse"
	doTooOld   = "old"
	doTooHot   = "hot"
	doTooCold  = "cold"
	doTooStiff = "stiff"
	doHouse    = "house"
	unchecked  = "unchecked"
)

// The options of another mix.
const (
	mixFree = "free" // nothing that slows the set
	mixWarm = "warm" // by mostWarmer, to pressure.SetAt at most
	mixBoth = "both"
)

// The options of the check against the form maker's guide.
const (
	guideNone   = "none"
	guideWithin = "within"
	guideBeyond = "beyond"
)

// The options of what the setting time is taken from.
const (
	setTyped = "plant"
	setMix   = "mix"
	setUsual = "usual"
)

// The options of a final set that is typed and earlier than our estimate.
const (
	setEarly   = "early"
	setDecides = "decides"
)

// The options of what sets the pressure in lifts.
const (
	byACI    = "aci"
	byCIRIA  = "ciria"
	byDIN    = "din"
	byLanded = "landed"
)

var rules = []calc.Option{
	{ID: string(pressure.Fluid), Label: calc.Text("Full fluid head")},
	{ID: byACI, Label: calc.Text("ACI 347")},
	{ID: byCIRIA, Label: calc.Text("CIRIA 108")},
	{ID: byDIN, Label: calc.Text("DIN 18218, class F4")},
	{ID: byLanded, Label: calc.Text("What just landed")},
}

var wallEquations = []calc.Option{
	{ID: string(pressure.Slow), Label: calc.Text("Slow wall equation")},
	{ID: string(pressure.Fast), Label: calc.Text("Fast wall equation")},
	{ID: string(pressure.Fluid), Label: calc.Text("Full fluid head")},
	{ID: string(pressure.Floor), Label: calc.Text("Least design pressure")},
}

var outputs = []calc.Field{
	{
		ID: "deed", Kind: calc.Choice, Lead: true,
		Label: calc.Text("What to do"),
		Options: []calc.Option{
			{ID: doGo, Advice: calc.Good, Label: calc.Text("Within the rating. The foreman decides.")},
			{ID: doUnguided, Advice: calc.Careful, Label: calc.Text("Within the rating: guide not entered")},
			{ID: doWritten, Advice: calc.Careful, Label: calc.Text("Only with the plant's set in writing")},
			{ID: doWait, Advice: calc.Careful, Label: calc.Text("Wait after each pass")},
			{ID: doLess, Advice: calc.Careful, Label: calc.Text("Your wait is too long: shorten it")},
			{ID: doMix, Advice: calc.Stop, Label: calc.Text("No plan with this mix: change it")},
			{ID: doSlow, Advice: calc.Stop, Label: calc.Text("Slow the pump")},
			{ID: doLifts, Advice: calc.Stop, Label: calc.Text("Not in one go: place in lifts")},
			{ID: doStop, Advice: calc.Stop, Label: calc.Text("End today's pour lower")},
			{ID: doShorten, Advice: calc.Stop, Label: calc.Text("No lift plan: the pass is too long")},
			{ID: doGuide, Advice: calc.Careful, Label: calc.Text("Keep to the form maker's guide")},
			{ID: doAsk, Advice: calc.Careful, Label: calc.Text("Ask the maker or engineer first")},
			{ID: doRefuse, Advice: calc.Stop, Label: calc.Text("Too wet: this load is refused")},
			{ID: doTooOld, Advice: calc.Stop, Label: calc.Text("Too old: this load is refused")},
			{ID: doTooHot, Advice: calc.Stop, Label: calc.Text("Too hot: this load is refused")},
			{ID: doTooCold, Advice: calc.Stop, Label: calc.Text("Too cold: this load is refused")},
			{ID: doTooStiff, Advice: calc.Stop, Label: calc.Text("Too stiff: this load is refused")},
			{ID: doHouse, Advice: calc.Careful, Label: calc.Text("Over the house rule: ask first")},
			{ID: unchecked, Advice: calc.Careful, Label: calc.Text("Form not checked: no rating")},
		},
	},
	{
		ID: "wait", Kind: calc.Number, Display: displayWait, Lead: true,
		Label: calc.Text("Wait at this pump rate"),
	},
	{
		ID: "fluid-limit", Kind: calc.Number, Display: &displays.HeightAtMost, Lead: true,
		Label: calc.Text("By the rating alone, up to"),
		Help:  calc.Text("Rating divided by unit weight. Less at weak faces. The rise counts too."),
	},
	{
		ID: "pressure-local", Kind: calc.Number, Display: &displays.Pressure, Lead: true,
		Label: calc.Text("Pressure as planned"),
	},
	{
		ID: "set-typed", Kind: calc.Choice, Lead: true, Label: calc.Text("The final set you typed"),
		Options: []calc.Option{
			{ID: setEarly, Label: calc.Text("Get it from the plant in writing")},
			{ID: setDecides, Label: calc.Text("Plan holds only with it: get it in writing")},
		},
	},
	{
		ID: "pressure-estimate", Kind: calc.Number, Display: &displays.Pressure,
		Label: calc.Text("Our estimate, as planned"),
	},
	{
		ID: "estimate-wait", Kind: calc.Number, Display: &displays.Pressure,
		Label: calc.Text("Our estimate, with the wait"),
	},
	{
		ID: "not-before", Kind: calc.Number, Display: displayWait,
		Label: calc.Text("Next pass not before"),
		Help:  calc.Text("For form and rise, from the last pass at the same place."),
	},
	{ID: "wait-form", Kind: calc.Number, Display: displayWait, Label: calc.Text("Wait by the rating alone")},
	{ID: "wait-rise", Kind: calc.Number, Display: displayWait, Label: calc.Text("Wait by greatest rise alone")},
	{
		ID: "back-by", Kind: calc.Number, Display: &displays.MinutesAtMost,
		Label: calc.Text("Next pass back by"),
		Help:  calc.Text("For the joint, from the last pass there. The pump runs 75% of the time."),
	},
	{
		ID: "mix", Kind: calc.Choice,
		Label: calc.Text("Another mix"),
		Options: []calc.Option{
			{ID: mixFree, Label: calc.Text("Nothing that slows the set")},
			{ID: mixWarm, Label: calc.Text("Warmer")},
			{ID: mixBoth, Label: calc.Text("Warmer, nothing that slows the set")},
		},
	},
	{ID: "mix-temperature", Kind: calc.Number, Display: &displays.Temperature,
		Label: calc.Text("Temperature of the other mix")},
	{ID: "rise-local", Kind: calc.Number, Display: &displays.Rise, Label: calc.Text("Rise that counts"),
		Help: calc.Text("In lifts: mean at one place. In one go: at the hose.")},
	{
		ID: "methods", Kind: calc.Rows, Label: pressure.LabelMethods,
		Cols: []calc.Field{
			{ID: "method", Kind: calc.Choice, Label: calc.Text("Method"), Options: []calc.Option{
				{ID: byACI, Label: calc.Text("ACI 347")}, {ID: byCIRIA, Label: calc.Text("CIRIA 108")},
				{ID: byDIN, Label: calc.Text("DIN 18218, class F4")},
			}},
			{ID: "pressure", Kind: calc.Number, Display: &displays.Pressure, Label: calc.Text("At this rise")},
			{ID: "lift", Kind: calc.Number, Display: &displays.Pressure, Label: calc.Text("With half a lift")},
		},
	},
	{ID: "landed", Kind: calc.Number, Display: &displays.Pressure, Label: calc.Text("What just landed"),
		Help: calc.Text("Fluid head of what lands within 30 min and of what the head reaches.")},
	{ID: "set-used", Kind: calc.Number, Display: &displays.Hours, Label: calc.Text("Setting time that counts"),
		Help: calc.Text("Final set at the coldest load.")},
	{
		ID: "set-by", Kind: calc.Choice, Label: calc.Text("It is from"),
		Options: []calc.Option{
			{ID: setTyped, Label: calc.Text("The plant's figure, as typed")},
			{ID: setMix, Label: calc.Text("Our estimate for this mix")},
			{ID: setUsual, Label: calc.Text("Our usual 7 h at 73 °F (23 °C)")},
		},
	},
	{ID: "pressure-us", Kind: calc.Number, Display: &displays.Pressure, Label: calc.Text("By ACI 347, US edition"),
		Help: calc.Text("To compare. No form passes on it.")},
	{ID: "equation", Kind: calc.Choice, Options: wallEquations, Label: calc.Text("Its equation")},
	{ID: "rise-average", Kind: calc.Number, Display: &displays.Rise, Label: calc.Text("Average rise, whole wall")},
	{ID: "rule", Kind: calc.Choice, Options: rules, Label: calc.Text("Decided by")},
	{ID: "fluid-depth", Kind: calc.Number, Display: &displays.Height, Label: pressure.LabelDepth,
		Help: pressure.HelpFluidZone},
	{ID: "floor", Kind: calc.Number, Display: &displays.Pressure, Label: calc.Text("Least pressure, US edition"),
		Help: calc.Text("600 psf times the weight coefficient. To compare.")},
	{ID: "floor-si", Kind: calc.Number, Display: &displays.Pressure, Label: calc.Text("Least, SI edition: governs"),
		Help: calc.Text("30 kPa times the weight coefficient. It is larger than that of the US edition.")},
	{ID: "cw", Kind: calc.Number, Display: displayFactor, Label: calc.Text("Weight coefficient")},
	{ID: "cc", Kind: calc.Number, Display: displayFactor, Label: calc.Text("Chemistry coefficient")},
	{
		ID: "highest-rise", Kind: calc.Number, Display: &displays.RiseAtMost,
		Label: calc.Text("Highest rise for the rating"),
		Help:  calc.Text("No higher than the house rule and the guide allow."),
	},
	{
		ID: "highest-flow", Kind: calc.Number, Display: &displays.PumpRateAtMost,
		Label: calc.Text("Highest pump rate, at a stop"),
	},
	{
		ID: "guide", Kind: calc.Choice, Lead: true,
		Label: calc.Text("By the form maker's guide"),
		Options: []calc.Option{
			{ID: guideNone, Label: calc.Text("Not entered")},
			{ID: guideSilent, Label: calc.Text("It gives none")},
			{ID: guideWithin, Label: calc.Text("Within the guide")},
			{ID: guideBeyond, Label: calc.Text("Beyond the guide")},
		},
	},
	{ID: "guide-time", Kind: calc.Number, Display: displayTime, Label: calc.Text("Least time per lift"),
		Help: calc.Text("From one lift to the next at any place, by the stricter of guide and house rule.")},
	{
		ID: "by-depth", Kind: calc.Rows, Label: calc.Text("Pressure by depth"),
		Cols: []calc.Field{
			{ID: "depth", Kind: calc.Number, Display: &displays.Height, Label: calc.Text("Depth from the top")},
			{ID: "local", Kind: calc.Number, Display: &displays.Pressure, Label: calc.Text("As planned")},
			{ID: "head", Kind: calc.Number, Display: &displays.Pressure, Label: calc.Text("Full fluid head")},
		},
	},
}
