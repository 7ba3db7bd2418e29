package pressure

import (
	"coursebook/calculators/calc"
	"coursebook/calculators/displays"
)

const (
	meansTC   = calc.Text("temperature of the concrete at placing")
	meansHead = calc.Text("full fluid head")
)

// The symbols of the equations.
const (
	meansP  = calc.Text("pressure on the form")
	meansCw = calc.Text("coefficient for unit weight")
	meansR  = calc.Text("rise of the concrete")
	meansW  = calc.Text("unit weight of the concrete")
)

// varCw is the unit weight coefficient in several equations.
var varCw = calc.Var{Symbol: "C_w", Meaning: meansCw}

// The labels and help of inputs that several calculators have.
const (
	LabelHeight = calc.Text("Height placed in one go")
	HelpHeight  = calc.Text("All that is placed today. One lift of several is not enough.")
	LabelWeight = calc.Text("Unit weight of the concrete")
	HelpWeight  = calc.Text("From the mix data. Leave the default if you do not know it.")
	LabelTemp   = calc.Text("Temperature of the concrete")
	HelpTemp    = calc.Text("In the concrete, by thermometer. Not the air.")
	LabelCement = calc.Text("Cement")
	HelpCement  = calc.Text("From the ticket. If it does not say, keep “other types and blends”.")
	LabelAdmix  = calc.Text("Admixtures")
	HelpAdmix   = calc.Text("Most water reducers slow the set and count as retarders.")
)

const (
	cementPlain = calc.Text("Type I, II or III alone")
	cementBlend = calc.Text("Other types and blends, below 70% slag or 40% fly ash")
	cementRich  = calc.Text("Blends with more slag or fly ash")
	admixNone   = calc.Text("Nothing that slows the set")
)

// Cements are the options of the cement.
var Cements = []calc.Option{
	{ID: string(Plain), Label: cementPlain},
	{ID: string(Blend), Label: cementBlend},
	{ID: string(Rich), Label: cementRich},
}

// CementsAsked are the options of the cement where it may be unknown.
var CementsAsked = []calc.Option{
	{ID: Unknown, Label: calc.Text("Not known: counts as the worst")},
	{ID: string(Plain), Label: cementPlain},
	{ID: string(Blend), Label: cementBlend},
	{ID: string(Rich), Label: cementRich},
}

// Admixtures are the options of the admixture.
var Admixtures = []calc.Option{
	{ID: AdmixRetards, Label: calc.Text("A retarder or water reducer, or unknown")},
	{ID: AdmixNone, Label: admixNone},
}

// AdmixturesAsked are the options of the admixture where it may be unknown.
var AdmixturesAsked = []calc.Option{
	{ID: Unknown, Label: calc.Text("Not known: counts as a retarder")},
	{ID: AdmixNone, Label: admixNone},
	{ID: AdmixRetards, Label: calc.Text("A retarder or water reducer")},
}

var SourceACI = calc.Source{
	ID: "aci", Author: "ACI Committee 347", Title: "Guide to Formwork for Concrete", Edition: "ACI 347R-14",
	Year: "2014",
	Where: calc.Text("sec. 4.2.2.1: wall equations, coefficients and 600·C_w floor; fluid head above 15 ft/h, " +
		"and more from below or by outside vibration"),
	Status: calc.Memory,
}

var SourceHurd = calc.Source{
	ID: "hurd", Author: "M. K. Hurd", Title: "Use updated wall pressure formulas",
	Edition: "letter on ACI 347-04 sec. 2.2.2, " +
		"Concrete Construction",
	Where:  calc.Text("heights, rates and slump of each wall equation; fluid head takes no coefficient"),
	Status: calc.Confirmed,
	Link:   "https://www.concreteconstruction.net/how-to/use-updated-wall-pressure-formulas_o",
}

// The labels and help of inputs that both European methods have.
const (
	LabelRise  = calc.Text("Rise at the hose")
	HelpRise   = calc.Text("By tape at the hose. The average of the wall is too low.")
	LabelClass = calc.Text("Consistency, flow class")
	HelpClass  = calc.Text("Slumps are near values. On the border take the wetter class.")
	LabelSet   = calc.Text("Setting time")
	HelpSet    = calc.Text("From adding water to the end of setting. Ask the plant.")
	LabelWay   = calc.Text("Placing")

	LabelHead     = calc.Text("Full fluid head at the foot")
	LabelDepth    = calc.Text("Depth of the fluid zone")
	HelpFluidZone = calc.Text("From the top, to where the pressure stops growing.")
	LabelMethods  = calc.Text("Side by side")
	LabelRule     = calc.Text("Decided by")
)

// Their ranges, which catch mistyped values. The limits of a method are notes.
const (
	HeightRange      = "1 to 40 ft"
	RiseRange        = "0.1 to 300 ft/h"
	TemperatureRange = "32 to 120 °F"
	WeightRange      = "85 to 200 lb/ft³"
	SettingRange     = "1 to 72 h"
)

// Classes are the options of the consistency.
var Classes = []calc.Option{
	{ID: "f1", Label: calc.Text("F1, stiff: flow up to 340 mm, slump to 1-1/2 in. (40 mm)")},
	{ID: "f2", Label: calc.Text("F2, plastic: flow 350 to 410 mm, slump 2 to 4 in. (50 to 90 mm)")},
	{ID: "f3", Label: calc.Text("F3, soft: flow 420 to 480 mm, slump 4 to 6 in. (100 to 150 mm)")},
	{ID: "f4", Label: calc.Text("F4, very soft: flow 490 to 550 mm, slump 6 to 8 in. (160 to 210 mm)")},
	{ID: "f5", Label: calc.Text("F5, flowing: flow 560 to 620 mm")},
	{ID: "f6", Label: calc.Text("F6, very flowing: flow 630 to 700 mm")},
	{ID: SelfLevels, Label: calc.Text("Self-compacting, no vibration")},
}

// Ways are the options of placing.
var Ways = []calc.Option{
	{ID: FromTop, Label: calc.Text("From the top, vibrator inside or no vibration")},
	{ID: "below", Label: calc.Text("Pumped in from below")},
	{ID: "outside", Label: calc.Text("Vibrated on the form, or deep down")},
}

// RuledBy are the options of what sets the pressure.
var RuledBy = []calc.Option{
	{ID: SetByEquation, Label: calc.Text("Its equation")},
	{ID: SetByLeast, Label: calc.Text("Its least pressure")},
	{ID: SetByFluid, Label: calc.Text("Full fluid head")},
	{ID: SetByOutside, Label: calc.Text("Fluid head, beyond its limits")},
}

// MethodCols are the columns of the comparison of methods.
var MethodCols = []calc.Field{
	{ID: "method", Kind: calc.Choice, Label: calc.Text("Method"), Options: []calc.Option{
		{ID: "aci", Label: nameACI}, {ID: "ciria", Label: nameCIRIA}, {ID: "din", Label: nameDIN},
	}},
	{ID: "pressure", Display: &displays.Pressure, Label: calc.Text("Greatest pressure")},
	{ID: "depth", Display: &displays.Height, Label: calc.Text("Fluid down to")},
	{ID: "rule", Kind: calc.Choice, Label: LabelRule, Options: RuledBy},
}

// The sources that both European methods share.
var (
	SourceCIRIA = calc.Source{
		ID: "ciria", Author: "C. A. Clear and T. A. Harrison", Title: "Concrete pressure on formwork",
		Edition: "CIRIA Report 108", Year: "1985",
		Where:  calc.Text("pressure equation, K, C_1, and never above the fluid head, as other works apply it"),
		Status: calc.Secondary,
	}
	SourceDIN = calc.Source{
		ID: "din", Author: "Concrete International", Title: "DIN Standard on Formwork Pressures Updated",
		Edition: "vol. 32 no. 6", Year: "2010",
		Where: calc.Text("Eq. (1): self-compacting concrete"), Status: calc.Confirmed,
	}
	SourceDINMemory = calc.Source{
		ID: "din-memory", Title: "DIN 18218", Edition: "2010-01", Year: "2010",
		Where:  calc.Text("classes F1 to F6, K_1, limits, 3% for each degree, partial factor"),
		Status: calc.Memory,
	}
	SourceClasses = calc.Source{
		ID: "classes", Title: "Consistency of concrete, encyclopedia article",
		Where: calc.Text("flow classes F1 to F6; the slumps " +
			"beside them are common practice"), Status: calc.Secondary,
	}
)

// The cautions of both.
const (
	CautionOpen = calc.Text(
		"Forms that open bury and crush. Stand clear of the form below the hose, and stop at the first bulge or crack.",
	)
	CautionGovern = calc.Text(
		"The form maker's data, the engineer and the local code say which method counts. Foreign methods are here to " +
			"compare.",
	)
)

// The IDs of options that Compute reads. Unknown is a cement or an admixture
// that the ticket does not name.
const (
	Unknown      = "unknown"
	AdmixRetards = "retards"
	AdmixNone    = "none"
)

// What the formulas of the worked example are used for.
const OfHeight = calc.Text("Over the whole height")

// SI converts a pressure to SI, Pa.
func SI(p PSF) float64 { return calc.SI(float64(p), "psf") }
