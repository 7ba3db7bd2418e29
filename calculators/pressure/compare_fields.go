package pressure

import (
	"coursebook/calculators/calc"
	"coursebook/calculators/displays"
)

// The words of the inputs that the calculators of both European methods ask.
const (
	labelRise  = calc.Text("Rise where the hose stands")
	helpRise   = calc.Text("By tape at the hose. The average of the wall is too low.")
	labelClass = calc.Text("Consistency, flow class")
	helpClass  = calc.Text("Slumps are near values. On the border take the wetter class.")
	labelSet   = calc.Text("Setting time")
	helpSet    = calc.Text("From adding water to the end of setting. Ask the plant.")
	labelWay   = calc.Text("Placing")

	labelHead     = calc.Text("Full fluid head at the foot")
	labelDepth    = calc.Text("Depth of the fluid zone")
	helpFluidZone = calc.Text("From the top, to where the pressure stops growing.")
	labelMethods  = calc.Text("Side by side")
	labelRule     = calc.Text("Decided by")
)

// Their limits, which guard against slips; those of a method make notes.
var (
	leastHeight  = calc.Limit{At: 1, Unit: "ft", Why: displays.CheckUnit}
	mostHeight   = calc.Limit{At: 40, Unit: "ft", Why: displays.Engineer}
	leastRise    = calc.Limit{At: 0.1, Unit: "ft/h", Why: displays.CheckUnit}
	mostRise     = calc.Limit{At: 300, Unit: "ft/h", Why: displays.CheckUnit}
	coldest      = calc.Limit{At: 32, Unit: "°F", Why: displays.CheckUnit}
	hottest      = calc.Limit{At: 120, Unit: "°F", Why: displays.CheckUnit}
	lightest     = calc.Limit{At: 85, Unit: "lb/ft³", Why: displays.CheckUnit}
	heaviest     = calc.Limit{At: 200, Unit: "lb/ft³", Why: displays.CheckUnit}
	shortestTime = calc.Limit{At: 1, Unit: "h", Why: displays.CheckUnit}
	longestTime  = calc.Limit{At: 72, Unit: "h", Why: displays.CheckUnit}
)

var classes = []calc.Option{
	{ID: "f1", Label: calc.Text("F1, stiff: flow up to 340 mm, slump to 1-1/2 in. (40 mm)")},
	{ID: "f2", Label: calc.Text("F2, plastic: flow 350 to 410 mm, slump 2 to 4 in. (50 to 90 mm)")},
	{ID: "f3", Label: calc.Text("F3, soft: flow 420 to 480 mm, slump 4 to 6 in. (100 to 150 mm)")},
	{ID: "f4", Label: calc.Text("F4, very soft: flow 490 to 550 mm, slump 6 to 8 in. (160 to 210 mm)")},
	{ID: "f5", Label: calc.Text("F5, flowing: flow 560 to 620 mm")},
	{ID: "f6", Label: calc.Text("F6, very flowing: flow 630 to 700 mm")},
	{ID: selfLevels, Label: calc.Text("Self-compacting, no vibration")},
}

var ways = []calc.Option{
	{ID: fromTop, Label: calc.Text("From the top, poker inside or no vibration")},
	{ID: "below", Label: calc.Text("Pumped in from below")},
	{ID: "outside", Label: calc.Text("Vibrated on the form, or deep down")},
}

var ruledBy = []calc.Option{
	{ID: byEquation, Label: calc.Text("Its equation")},
	{ID: byLeast, Label: calc.Text("Its least pressure")},
	{ID: byFluid, Label: calc.Text("Full fluid head")},
	{ID: byOutside, Label: calc.Text("Fluid head, beyond its limits")},
}

var methodCols = []calc.Field{
	{ID: "method", Kind: calc.Choice, Label: calc.Text("Method"), Options: []calc.Option{
		{ID: "aci", Label: nameACI}, {ID: "ciria", Label: nameCIRIA}, {ID: "din", Label: nameDIN},
	}},
	{ID: "pressure", Display: &displays.Pressure, Label: calc.Text("Greatest pressure")},
	{ID: "depth", Display: &displays.Height, Label: calc.Text("Fluid down to")},
	{ID: "rule", Kind: calc.Choice, Label: labelRule, Options: ruledBy},
}

// The sources that both European methods share.
var (
	sourceCIRIA = calc.Source{
		ID: "ciria", Author: "C. A. Clear and T. A. Harrison", Title: "Concrete pressure on formwork", Edition: "CIRIA Report 108", Year: "1985",
		Where: "pressure equation, K, C_1, and never above the fluid head, as other works apply it", Status: calc.Secondary,
	}
	sourceGroups = calc.Source{ID: "groups", Title: "CIRIA Report 108", Where: "which concrete has which C_2; 5 to 30 °C; from memory", Status: calc.Memory}
	sourceDIN    = calc.Source{
		ID: "din", Author: "Concrete International", Title: "DIN Standard on Formwork Pressures Updated", Edition: "vol. 32 no. 6", Year: "2010",
		Where: "Eq. (1): self-compacting concrete", Status: calc.Confirmed, Link: "https://www.scribd.com/document/340295831/",
	}
	sourceDINMemory = calc.Source{
		ID: "din-memory", Title: "DIN 18218", Edition: "2010-01", Year: "2010",
		Where: "classes F1 to F6, K_1, limits, 3% for each degree, partial factor; from memory", Status: calc.Memory,
	}
	sourceClasses = calc.Source{
		ID: "classes", Title: "Consistency of concrete, encyclopedia article", Where: "flow classes F1 to F6; the slumps beside them are common practice", Status: calc.Secondary,
	}
)

// The standing cautions of both.
const (
	cautionOpen   = calc.Text("Forms that open bury and crush. Stand clear of the form below the hose, and stop at the first bulge or crack.")
	cautionGovern = calc.Text("The form maker's data, the engineer and the local code say which method counts. Foreign methods are here to compare.")
)
