// Package pumpsetup computes the distances of a pump's set-up: from the edge of
// a cut, from a power line and around the end hose, and the pads under its
// outriggers. The load of an outrigger is always entered.
package pumpsetup

import (
	"coursebook/calculators/calc"
	"coursebook/calculators/displays"
	"coursebook/calculators/placing"
	"coursebook/calculators/quantity"
)

// Calculator declares inputs, outputs, formulas and sources of the calculator.
var Calculator = &calc.Calculator{
	ID:      "pump-set-up",
	Title:   calc.Text("Pump set-up: distances and pads"),
	Purpose: calc.Text("How far the pump stays from a cut, a wire and people, and how big its pads are."),
	In:      inputs,
	Out:     outputs,
	Formulas: []*calc.Formula{
		placing.SetbackFormula,
		placing.PadAreaFormula,
		placing.PadSideFormula,
		placing.PadPressureFormula,
	},
	Sources: sources,
	Cautions: []calc.Caution{
		{
			Level: calc.LevelDanger,
			Text: calc.Text(
				"Power lines kill through the boom, the truck and the wet hose. A spotter with no other job watches.",
			),
		},
		{
			Level: calc.LevelDanger,
			Text: calc.Text(
				"An outrigger that sinks tips the truck. Keep pads off fresh fill, pipe trenches, tanks and thawing " +
					"ground.",
			),
		},
		{
			Level: calc.LevelWarning,
			Text: calc.Text(
				"The operator and the pump's manual come first. So do the soil report, local code and the power " +
					"company.",
			),
		},
	},
	Tables:  tables,
	Compute: compute,
	Draw:    draw,
}

// Displays. A least distance or pad is rounded up.
var (
	distance = quantity.Display{
		Dim:    quantity.Length,
		US:     quantity.UnitDisplay{Unit: "ft", Form: quantity.FeetInches, Step: 1, Rounding: quantity.Up},
		Metric: quantity.UnitDisplay{Unit: "m", Step: 0.1, Rounding: quantity.Up},
	}
	leg = quantity.Display{
		Dim:    quantity.Force,
		US:     quantity.UnitDisplay{Unit: "lbf", Step: 100},
		Metric: quantity.UnitDisplay{Unit: "kN", Step: 0.5},
	}
	soil = quantity.Display{
		Dim:    quantity.Pressure,
		US:     quantity.UnitDisplay{Unit: "psf", Step: 50},
		Metric: quantity.UnitDisplay{Unit: "kPa", Step: 1},
	}
	area = quantity.Display{
		Dim:    quantity.Area,
		US:     quantity.UnitDisplay{Unit: "ft²", Step: 0.5, Rounding: quantity.Up},
		Metric: quantity.UnitDisplay{Unit: "m²", Step: 0.05, Rounding: quantity.Up},
	}
)

const (
	clay   = "clay"
	sand   = "sand"
	gravel = "gravel"
	loose  = "loose"

	carries = "carries"
	small   = "small"
)

// Reasons of limits.
const (
	whyDeep = calc.Text("By a deeper cut the engineer sets the distance.")
	whySoil = calc.Text("No report gives ground this soft or this hard for a pad.")
	whyHose = calc.Text("Measure all that hangs free, from the last steel pipe.")
)

// wired reports whether a power line is near.
func wired(c calc.Case) bool { return c.Flag("wire") }

// hardReport reports whether the pressure of the report is over that of the tables: over
// that of clay for ground that is not known, wet, loose or filled, else over that of gravel.
func hardReport(c calc.Case) bool {
	psf, _ := carry(gravel)
	if c.Choice("ground") == loose {
		psf, _ = carry(clay)
	}
	return c.Has("report") && calc.Over(c.Num("report"), calc.SI(psf, "psf"))
}

var inputs = []calc.Field{
	{ID: "depth", Decides: 1, Display: &displays.Wall, Usual: "8 ft", Label: calc.Text("Depth of the cut"),
		Help:  calc.Text("Trench or basement next to the pump. Zero: none."),
		Range: "0 to 20 ft", Why: displays.NotMinus, WhyMost: whyDeep, MostSource: "slopes"},
	{ID: "ground", Decides: 2, Kind: calc.Choice, Usual: loose, Label: calc.Text("Ground"), Options: []calc.Option{
		{ID: loose, Label: calc.Text("not known, or wet, loose or filled")},
		{ID: clay, Label: calc.Text("clay or silt, firm and never dug")},
		{ID: sand, Label: calc.Text("sand, never dug")},
		{ID: gravel, Label: calc.Text("gravel, never dug")},
	}},
	{ID: "asked", Display: &displays.Wall, Optional: true, Label: calc.Text("More distance asked for"),
		Help:  calc.Text("By the soil report, local code or the operator. Empty: none."),
		Range: "0 to 200 ft", Why: displays.NotMinus, WhyMost: displays.CheckUnit},
	{ID: "load", Decides: 3, Maker: true, Display: &leg, Optional: true, Label: calc.Text("Load of one outrigger"),
		Help:  calc.Text("From the plate at the outrigger: the largest. Never a guess."),
		Range: "500 to 200000 lbf", Why: displays.AskMaker},
	{ID: "report", Display: &soil, Optional: true, Label: calc.Text("Soil pressure allowed"),
		Help:  calc.Text("From the soil report or the engineer. Empty: a cautious table value."),
		Range: "100 to 20000 psf", Why: whySoil},
	{ID: "this-spot", Kind: calc.Flag, Usual: "no", When: hardReport, Label: calc.Text("The report is for this spot"),
		Help: calc.Text("In writing, for the ground under the pad as it is now.")},
	{ID: "pad", Display: &displays.Part, Optional: true, Label: calc.Text("Side of the pads you have"),
		Help:  calc.Text("Square pads. Empty: none to check."),
		Range: "6 to 144 in", Why: displays.CheckUnit},
	{ID: "hose", Display: &displays.Wall, Optional: true, Label: calc.Text("Length of the end hose"),
		Help:  calc.Text("Measured: all rubber after the last steel pipe."),
		Range: "over 0 to 50 ft", Why: displays.AboveZero, WhyMost: whyHose},
	{ID: "wire", Decides: 4, Kind: calc.Flag, Usual: "yes", Label: calc.Text("A power line is near"),
		Help: calc.Text("Anywhere boom, hose or a mixer could get to.")},
	{ID: "kv", Display: &displays.Count, Optional: true, When: wired, Label: calc.Text("Voltage of the line, kV"),
		Help:  calc.Text("Ask the power company. Empty: not known."),
		Range: "over 0 to 1500", Why: displays.AboveZero, WhyMost: displays.CheckUnit},
	{ID: "wire-asked", Display: &displays.Wall, Optional: true, When: wired, Label: calc.Text("More asked at the line"),
		Help:  calc.Text("By the power company or local law. Empty: none."),
		Range: "0 to 500 ft", Why: displays.NotMinus, WhyMost: displays.CheckUnit},
}

var outputs = []calc.Field{
	{ID: "setback", Display: &distance, Lead: true, Label: calc.Text("Edge of the cut to a pad"),
		Help: calc.Text("At least, from the edge to the nearest side of a pad.")},
	{ID: "wire-distance", Display: &distance, Lead: true, Label: calc.Text("Boom to a power line"),
		Help: calc.Text("At least, for every part of boom, hose and load.")},
	{ID: "ring", Display: &distance, Lead: true, Label: calc.Text("Clear ring: farther than"),
		Help: calc.Text("From the last steel pipe, until the flow is steady.")},
	{ID: "pad-side", Display: &displays.InchesAtLeast, Lead: true, Label: calc.Text("Side of a square pad")},
	{ID: "own", Kind: calc.Choice, Label: calc.Text("The pads you have"), Options: []calc.Option{
		{ID: carries, Label: calc.Text("Big enough by these numbers: the operator decides")},
		{ID: small, Label: calc.Text("Too small")},
	}},
	{ID: "pad-pressure", Display: &displays.Pressure, Label: calc.Text("Pressure under your pads")},
	{ID: "pad-area", Display: &area, Label: calc.Text("Area of a pad")},
	{ID: "soil", Display: &soil, Label: calc.Text("Soil pressure used")},
	{ID: "crane", Display: &distance, Label: calc.Text("Crane table, to compare"),
		Help: calc.Text("It is not for pumps. Ours is never less.")},
}

var sources = []calc.Source{
	{
		ID:     "one-to-one",
		Author: "Concrete Construction",
		Title:  "Spotting boom pumps safely",
		Where:  calc.Text("1 ft back for each foot of depth; 20 ft for 20 ft"),
		Status: calc.Confirmed,
		Link: "http://www.concreteconstruction.net/products/concrete-construction-equipment-tools/" +
			"spotting-boom-pumps-safely_o",
	},
	{
		ID:     "slopes",
		Author: "OSHA",
		Title:  "29 CFR 1926 Subpart P, Appendix B",
		Where:  calc.Text("Table B-1, cuts under 20 ft: type B 1 to 1, type C (sand, gravel, wet) 1-1/2 to 1"),
		Status: calc.Secondary,
		Link:   "https://www.osha.gov/laws-regs/regulations/standardnumber/1926/1926SubpartPAppB",
	},
	{
		ID:     "bearing",
		Author: "International Code Council",
		Title:  "International Residential Code, presumptive load-bearing values",
		Where: calc.Text("Table R401.4.1, as quoted; International Building Code 2012, Table 1806.2, has the " +
			"same three"),
		Status: calc.Secondary,
	},
	{
		ID:     "acpa",
		Author: "American Concrete Pumping Association",
		Title:  "Operation of pump booms near power lines",
		Year:   "2010, 2022",
		Where:  calc.Text("20 ft up to 350 kV, 50 ft above, with a spotter; pumps are outside 29 CFR 1926 Subpart CC"),
		Status: calc.Confirmed,
		Link: "http://www.concretepumpers.com/acpa-news/2022/12/21/" +
			"operation-concrete-pump-placing-booms-when-power-lines-are-present",
	},
	{
		ID:     "table-a",
		Author: "OSHA",
		Title:  "29 CFR 1926.1408, power line safety, cranes",
		Where:  calc.Text("Table A: 10 ft up to 50 kV to 45 ft up to 1000 kV; above that the power company"),
		Status: calc.Confirmed,
		Link:   "https://www.osha.gov/laws-regs/regulations/standardnumber/1926/1926.1408",
	},
	{
		ID:     "whip",
		Author: "American Concrete Pumping Association",
		Title:  "Hose-whipping accidents, as quoted in Concrete Construction",
		Where:  calc.Text("the end-hose area has the length of the hose as its radius"),
		Status: calc.Secondary,
		Link: "http://www.concreteconstruction.net/business/management/" +
			"safety-matters-concrete-pump-safety_o",
	},
	{ID: "practice", Where: calc.Text("Load over area"), Status: calc.CommonPractice},
	{ID: "own", Where: calc.Text("50 ft where the voltage is not known; the slope of the ground as the least " +
		"setback; a " +
		"question over 1500 psf on ground that is not known, else over 3000 psf; no table value " +
		"for fill or wet ground"), Status: calc.OwnLimit},
}

var tables = []calc.Table{
	{ID: "pads", Title: calc.Text("Side of a square pad, by load and soil pressure"), Out: "pad-side",
		Set:  []calc.Entry{{Path: "this-spot", Text: "yes"}},
		Note: calc.Text("Read the load off the plate. 1500 psf (72 kPa) is the table value of clay and silt."),
		Down: calc.Axis{
			Path:   "load",
			US:     []string{"10000", "20000", "30000", "40000", "60000"},
			Metric: []string{"50", "100", "150", "200", "250"},
		},
		Across: calc.Axis{
			Path:   "report",
			US:     []string{"1000", "1500", "2000", "3000", "4000"},
			Metric: []string{"50", "72", "96", "144", "192"},
		}},
	{ID: "wires", Title: calc.Text("Boom to a power line, by voltage in kV"), Out: "wire-distance",
		Note: calc.Text("Not known: as the highest."),
		Down: calc.Axis{Path: "kv", US: []string{"50", "200", "350", "500", "750", "1000"}}},
}
