package ties

import (
	"coursebook/calculators/calc"
	"coursebook/calculators/quantity"
)

// A share used is rounded up and so is a load per length.
var (
	usedShare = quantity.Display{Dim: quantity.Ratio, US: quantity.UnitDisplay{Unit: "%", Step: 1, Rounding: quantity.Up}}
	lineLoad  = quantity.Display{Dim: quantity.LineLoad, US: quantity.UnitDisplay{Unit: "lbf/ft", Step: 5, Rounding: quantity.Up}, Metric: quantity.UnitDisplay{Unit: "kN/m", Step: 0.1, Rounding: quantity.Up}}
	modulus   = quantity.Display{Dim: quantity.Pressure, US: quantity.UnitDisplay{Unit: "psi", Step: 10000}, Metric: quantity.UnitDisplay{Unit: "MPa", Step: 100}}
	cubicFeet = quantity.Display{Dim: quantity.Volume, US: quantity.UnitDisplay{Unit: "ft³", Step: 0.1}, Metric: quantity.UnitDisplay{Unit: "m³", Step: 0.005}}
	forceIn   = quantity.Display{Dim: quantity.Force, US: quantity.UnitDisplay{Unit: "lbf", Step: 10}, Metric: quantity.UnitDisplay{Unit: "kN", Step: 0.05}}
)

const (
	meansP = calc.Text("pressure of the concrete")
	meansF = calc.Text("force")
	meansW = calc.Text("unit weight of the concrete")

	labelWeight = calc.Text("Unit weight of the concrete")
	helpWeight  = calc.Text("From the mix data. Leave the default if you do not know it.")

	cautionGovern = calc.Text("The form maker's data, the engineer and the local code govern. This page does not replace them.")
)

// Sources that several calculators name.
var (
	sourceFlorida = calc.Source{
		ID: "florida", Author: "University of Florida", Title: "Temporary structures, lecture notes", Year: "2014",
		Where: "Week 7, Wall Forms: tributary area, line load, span equations", Status: calc.Secondary,
	}
	sourceStatics = calc.Source{ID: "statics", Title: "Common practice: statics of fluids and beams", Status: calc.CommonPractice}
)
