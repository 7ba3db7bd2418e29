// Package mixtemperature computes the temperature of a mix from its parts, and
// the ice or the temperature of the mixing water for a wanted temperature.
package mixtemperature

import (
	"coursebook/calculators/calc"
	"coursebook/calculators/displays"
	"coursebook/calculators/weather"
)

// Calculator declares inputs, outputs, formulas and sources of the calculator.
var Calculator = &calc.Calculator{
	ID:      "mix-temperature",
	Title:   calc.Text("Temperature of fresh concrete"),
	Purpose: calc.Text("Shows how warm the mix gets from its parts, and what ice or warm water it needs."),
	In:      inputs,
	Out:     outputs,
	Formulas: []*calc.Formula{
		weather.FrozenMoistureFormula,
		weather.MixTemperatureFormula,
		weather.HeatCapacityFormula,
		weather.IceNeededFormula,
		weather.WaterNeededFormula,
		weather.LeverFormula,
	},
	Sources: sources,
	Cautions: []calc.Caution{
		{
			Level: calc.LevelNotice,
			Text: calc.Text(
				"The plant decides what goes in. Show it these figures; never change the water of a mix on site.",
			),
		},
		{
			Level: calc.LevelNotice,
			Text:  calc.Text("The sum leaves out the haul, the pump and the heat of the cement. Measure at the truck."),
		},
	},
	Tables:  tables,
	Compute: compute,
	Draw:    draw,
}

// IDs of the measures for the wanted temperature.
const (
	needNothing = "nothing"
	needIce     = "ice"
	needWarm    = "warm"
	needBeyond  = "beyond"
)

const whyBatch = calc.Text("No truck carries more.")

var inputs = []calc.Field{
	{
		ID: "cement", Kind: calc.Number, Display: &displays.Mass, Example: true, Usual: "540 lb",
		Label: calc.Text("Cement, all powders"),
		Help:  calc.Text("All masses for one and the same batch: a yard, a meter or a load."),
		Range: "over 0 to 20000 lb", Why: displays.AboveZero, WhyMost: whyBatch,
	},
	{
		ID: "cement-temp", Decides: 1, Kind: calc.Number, Display: &displays.Temperature, Usual: "120 °F",
		Label: calc.Text("Cement temperature"),
		Range: "-40 to 200 °F", Why: weather.WhyLand, WhyMost: displays.CheckUnit,
	},
	{
		ID: "aggregate", Kind: calc.Number, Display: &displays.Mass, Example: true, Usual: "3000 lb",
		Label: calc.Text("Sand and stone"),
		Help:  calc.Text("Without the free water on them."),
		Range: "over 0 to 60000 lb", Why: displays.AboveZero, WhyMost: whyBatch,
	},
	{
		ID: "aggregate-temp", Decides: 2, Kind: calc.Number, Display: &displays.Temperature, Usual: "85 °F",
		Label: calc.Text("Sand and stone temperature"),
		Range: "-40 to 180 °F", Why: weather.WhyLand, WhyMost: displays.CheckUnit,
	},
	{
		ID: "moisture", Kind: calc.Number, Display: &displays.Mass, Example: true, Usual: "60 lb",
		Label: calc.Text("Free water on them"),
		Help:  calc.Text("As warm as the sand and stone. Below freezing it is ice."),
		Range: "0 to 6000 lb", Why: displays.NotMinus, WhyMost: whyBatch,
	},
	{
		ID: "water", Kind: calc.Number, Display: &displays.Mass, Example: true, Usual: "270 lb",
		Label: calc.Text("Mixing water, without ice"),
		Range: "over 0 to 8000 lb", Why: displays.AboveZero, WhyMost: whyBatch,
	},
	{
		ID: "water-temp", Decides: 3, Kind: calc.Number, Display: &displays.Temperature, Usual: "75 °F",
		Label: calc.Text("Mixing water temperature"),
		Range: "32 to 212 °F", Why: whyThaw, WhyMost: calc.Text("It boils."),
	},
	{
		ID: "ice", Kind: calc.Number, Display: &displays.Mass, Usual: "0 lb", Label: calc.Text("Ice in the batch"),
		Range: "0 to 8000 lb", Why: displays.NotMinus, WhyMost: whyBatch,
	},
	{
		ID: "wanted", Decides: 4, Kind: calc.Number, Display: &displays.Temperature, Optional: true, Usual: "78 °F",
		Label: calc.Text("Temperature wanted"),
		Help:  calc.Text("At the mixer. Empty: no ice or warm water is worked out."),
		Range: "40 to 95 °F", Why: weather.WhyGel, WhyMost: calc.Text("Specifications end here."),
	},
}

var outputs = []calc.Field{
	{
		ID:      "temperature",
		Kind:    calc.Number,
		Display: &displays.Temperature,
		Lead:    true,
		Label:   calc.Text("Mix temperature"),
	},
	{
		ID: "need", Kind: calc.Choice, Lead: true, Label: calc.Text("For the wanted temperature"),
		Options: []calc.Option{
			{ID: needNothing, Advice: calc.Good, Label: calc.Text("Nothing to change")},
			{ID: needIce, Advice: calc.Careful, Label: calc.Text("Ice in place of water")},
			{ID: needWarm, Advice: calc.Careful, Label: calc.Text("Warmer mixing water")},
			{ID: needBeyond, Advice: calc.Stop, Label: calc.Text("Out of reach of water or ice")},
		},
	},
	{ID: "ice-needed", Kind: calc.Number, Display: &displays.MassUp, Label: calc.Text("Ice, in all")},
	{ID: "ice-share", Kind: calc.Number, Display: &displays.Percent, Label: calc.Text("Share of the batch water")},
	{ID: "water-left", Kind: calc.Number, Display: &displays.Mass, Label: calc.Text("Water beside the ice")},
	{
		ID:      "water-needed",
		Kind:    calc.Number,
		Display: &displays.TemperatureAtLeast,
		Label:   calc.Text("Mixing water, warmed to"),
	},
	{
		ID:      "lever-aggregate",
		Kind:    calc.Number,
		Display: &displays.Tenths,
		Label:   calc.Text("Sand and stone, for 1 degree"),
		Help:    calc.Text("Degrees this part must change to change the mix by one."),
	},
	{ID: "lever-water", Kind: calc.Number, Display: &displays.Tenths, Label: calc.Text("Mixing water, for 1 degree")},
	{ID: "lever-cement", Kind: calc.Number, Display: &displays.Tenths, Label: calc.Text("Cement, for 1 degree")},
}

var sources = []calc.Source{
	{
		ID:     "aci305",
		Author: "ACI Committee 305",
		Title:  "Hot Weather Concreting, ACI 305R",
		Where:  calc.Text("mix temperature with and without ice; the form read in teaching notes"),
		Status: calc.Secondary,
	},
	{
		ID:     "ufgs",
		Title:  "UFGS 03300A, Cast-in-place structural concrete",
		Where:  calc.Text("concrete of 90 °F at most, in humid air"),
		Status: calc.Secondary,
	},
	{
		ID:     "aci306",
		Author: "ACI Committee 306",
		Title:  "Cold Weather Concreting, ACI 306R-88",
		Year:   "1988",
		Where:  calc.Text("sec. 3.7: frozen moisture on aggregate"),
		Status: calc.Memory,
	},
	{
		ID:     "crd",
		Author: "US Army Corps of Engineers",
		Title:  "CRD-C 307-91, amount of ice",
		Year:   "1991",
		Where:  calc.Text("sec. 2: heat of fusion 143.5 Btu/lb"),
		Status: calc.Confirmed,
	},
	{
		ID:     "producer",
		Author: "The Concrete Producer",
		Title:  "Concrete on ice",
		Where:  calc.Text("ice up to 75 % of batch water, 20 °F of cooling at best, after ACI 305"),
		Status: calc.Secondary,
		Link:   "http://www.theconcreteproducer.com/how-to/concrete-production/concrete-on-ice_o",
	},
	{
		ID:     "wasit",
		Author: "A. M. Jabbar",
		Title:  "Estimation of fresh concrete temperature, Wasit Journal of Engineering Sciences",
		Year:   "2017",
		Where:  calc.Text("abstract: rough above 20 % ice, not to be used above 50 %"),
		Status: calc.Confirmed,
		Link:   "https://www.iasj.net/iasj/article/167318",
	},
	{
		ID:     "winter",
		Author: "Concrete Construction",
		Title:  "Some notes on cold weather concrete",
		Where:  calc.Text("water up to 180 °F on cement with aggregate, never on cement alone"),
		Status: calc.Confirmed,
		Link:   "http://www.concreteconstruction.net/how-to/materials/some-notes-on-cold-weather-concrete_o",
	},
	{
		ID:     "society",
		Author: "The Concrete Society",
		Title:  "Heating concrete using hot water",
		Where:  calc.Text("the same equation; water at most 60 to 80 °C"),
		Status: calc.Confirmed,
		Link:   "https://concrete.org.uk/fingertips-nuggets.asp?cmd=display&id=935",
	},
}

var tables = []calc.Table{{
	ID: "ice", Title: calc.Text("Mix temperature by aggregate and water"),
	Note: calc.Text("For the masses and the cement of the example, without ice."),
	Out:  "temperature",
	Down: calc.Axis{
		Path:   "aggregate-temp",
		US:     []string{"40 °F", "55 °F", "70 °F", "85 °F", "100 °F"},
		Metric: []string{"5 °C", "12 °C", "20 °C", "30 °C", "38 °C"},
	},
	Across: calc.Axis{
		Path:   "water-temp",
		US:     []string{"40 °F", "55 °F", "75 °F", "100 °F", "140 °F"},
		Metric: []string{"5 °C", "12 °C", "24 °C", "40 °C", "60 °C"},
	},
}}

// Heat of a mix, in masses of water.
const (
	solidHeat = 0.22 // specific heat of cement and aggregate over that of water
	latentC   = 80.0 // heat of melting over the specific heat of water, C°; 144 F°
	freezingC = 0.0  // °C
	maxIce    = 0.75 // largest share of the batch water that is batched as ice
)

// Reasons of limits.
const whyThaw = calc.Text("Liquid water is not colder.")
