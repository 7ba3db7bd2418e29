package ties

import (
	"coursebook/calculators/calc"
	"coursebook/calculators/quantity"
)

// A share used is rounded up and so is a load per length.
var (
	usedShare = quantity.Show{Dim: quantity.Ratio, US: quantity.Scale{Unit: "%", Step: 1, Way: quantity.Up}}
	lineLoad  = quantity.Show{Dim: quantity.LineLoad, US: quantity.Scale{Unit: "lbf/ft", Step: 5, Way: quantity.Up}, Metric: quantity.Scale{Unit: "kN/m", Step: 0.1, Way: quantity.Up}}
	modulus   = quantity.Show{Dim: quantity.Pressure, US: quantity.Scale{Unit: "psi", Step: 10000}, Metric: quantity.Scale{Unit: "MPa", Step: 100}}
	cubicFeet = quantity.Show{Dim: quantity.Volume, US: quantity.Scale{Unit: "ft³", Step: 0.1}, Metric: quantity.Scale{Unit: "m³", Step: 0.005}}
	forceIn   = quantity.Show{Dim: quantity.Force, US: quantity.Scale{Unit: "lbf", Step: 10}, Metric: quantity.Scale{Unit: "kN", Step: 0.05}}
)

const (
	meansP = calc.Text("ties.means.p: pressure of the concrete")
	meansF = calc.Text("ties.means.f: force")
	meansW = calc.Text("ties.means.w: unit weight of the concrete")

	labelWeight = calc.Text("ties.weight: Unit weight of the concrete")
	helpWeight  = calc.Text("ties.weight.help: From the mix data. Leave the default if you do not know it.")

	cautionGovern = calc.Text("ties.caution.govern: The form maker's data, the engineer and the local code govern. This page does not replace them.")
)

// Sources that several calculators name.
var (
	sourceFlorida = calc.Source{
		ID: "florida", Author: "University of Florida", Title: "Temporary structures, lecture notes", Year: "2014",
		Where: "Week 7, Wall Forms: tributary area, line load, span equations", Status: calc.Secondary,
	}
	sourceStatics = calc.Source{ID: "statics", Title: "Common practice: statics of fluids and beams", Status: calc.CommonPractice}
)
