// Package unitconversion converts a value into the usual units of both systems
// and lists it in every unit of its kind.
package unitconversion

import (
	"coursebook/calculators/calc"
	"coursebook/calculators/conversion"
)

// Calculator declares inputs, outputs, formulas and sources of the calculator.
var Calculator = &calc.Calculator{
	ID:       "unit-conversion",
	Title:    calc.Text("Unit conversion"),
	Purpose:  calc.Text("A length, volume, pressure or temperature in the units of both systems."),
	In:       inputs,
	Out:      outputs,
	Formulas: []*calc.Formula{conversion.InUnitFormula, conversion.CelsiusFormula, conversion.FahrenheitFormula},
	Sources: []calc.Source{
		{
			ID:     "sp811",
			Author: "NIST",
			Title:  "Guide for the Use of the International System of Units, SP 811",
			Year:   "2008",
			Where:  calc.Text("appendix B, conversion factors"),
			Status: calc.Secondary,
			Link:   "https://www.nist.gov/pml/special-publication-811",
		},
	},
	Cautions: []calc.Caution{
		{
			Level: calc.LevelWarning,
			Text:  calc.Text("Convert a limit only once, from the document that sets it. Round it to the safe side."),
		},
		{
			Level: calc.LevelNotice,
			Text: calc.Text(
				"A yard of concrete is a cubic yard, three quarters of a cubic meter. Say which with every order.",
			),
		},
		{
			Level: calc.LevelNotice,
			Text: calc.Text(
				"A pound on a scale is a mass, a pound of pull is a force. Choose the kind that is meant.",
			),
		},
	},
	Tables:  tables,
	Compute: compute,
	Draw:    draw,
}

const tableNote = calc.Text("From your units on the left to the other units.")

var tables = []calc.Table{
	{ID: "length", Title: calc.Text("Lengths"), Note: tableNote, Out: "length-other",
		Down: calc.Axis{Path: "length", US: []string{"1 in", "2-1/2 in", "4 in", "6 in", "8 in", "12 in", "48 in"},
			Metric: []string{"0.025 m", "0.05 m", "0.1 m", "0.2 m", "0.3 m", "1 m", "2.4 m"}}},
	{ID: "volume", Title: calc.Text("Volumes of concrete"), Note: tableNote, Out: "volume-other",
		Set: []calc.Entry{{Path: "kind", Text: "volume"}},
		Down: calc.Axis{
			Path:   "volume",
			US:     []string{"0.5 yd³", "1 yd³", "5 yd³", "8 yd³", "10 yd³", "20 yd³", "50 yd³"},
			Metric: []string{"0.5 m³", "1 m³", "5 m³", "6 m³", "8 m³", "20 m³", "50 m³"},
		}},
	{ID: "pressure", Title: calc.Text("Pressures on a form"), Note: tableNote, Out: "pressure-other",
		Set: []calc.Entry{{Path: "kind", Text: "pressure"}},
		Down: calc.Axis{
			Path:   "pressure",
			US:     []string{"100 psf", "300 psf", "450 psf", "600 psf", "750 psf", "900 psf", "1200 psf"},
			Metric: []string{"5 kPa", "15 kPa", "20 kPa", "30 kPa", "35 kPa", "45 kPa", "60 kPa"},
		}},
	{ID: "temperature", Title: calc.Text("Temperatures"), Note: tableNote, Out: "temperature-other",
		Set: []calc.Entry{{Path: "kind", Text: "temperature"}},
		Down: calc.Axis{
			Path:   "temperature",
			US:     []string{"20 °F", "32 °F", "40 °F", "50 °F", "70 °F", "90 °F", "95 °F"},
			Metric: []string{"-5 °C", "0 °C", "5 °C", "10 °C", "20 °C", "30 °C", "35 °C"},
		}},
}
