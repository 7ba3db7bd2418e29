package ties

import (
	"math"

	"coursebook/calculators/calc"
	"coursebook/calculators/figure"
	"coursebook/calculators/quantity"
)

// ForceIn is the display of a force that is entered.
var ForceIn = quantity.Display{
	Dim:    quantity.Force,
	US:     quantity.UnitDisplay{Unit: "lbf", Step: 10},
	Metric: quantity.UnitDisplay{Unit: "kN", Step: 0.05},
}

const (
	meansP = calc.Text("pressure of the concrete")
	meansF = calc.Text("force")
	meansW = calc.Text("unit weight of the concrete")

	// LabelWeight is the label of the field of the unit weight.
	LabelWeight = calc.Text("Unit weight of the concrete")
	// HelpWeight is the help of that field.
	HelpWeight = calc.Text("From the mix data. Leave the default if you do not know it.")

	// CautionGovern is a caution of every calculator of the topic.
	CautionGovern = calc.Text(
		"The form maker's data, the engineer and the local code govern. This page does not replace them.",
	)
)

// Sources that several calculators cite.
var (
	SourceFlorida = calc.Source{
		ID: "florida", Author: "University of Florida", Title: "Temporary structures, lecture notes", Year: "2014",
		Where: calc.Text("Week 7, Wall Forms: tributary area, line load, span equations"), Status: calc.Secondary,
	}
	SourceStatics = calc.Source{
		ID:     "statics",
		Where:  calc.Text("Statics of fluids and beams"),
		Status: calc.CommonPractice,
	}
)

// UpTo returns x rounded up to a whole number, at least 0. An excess of at most
// calc.Slack is not rounded up.
func UpTo(x float64) float64 { return math.Max(0, calc.Ceil(x)) }

// Arrow returns the drawing of a force as an arrow from a to b, its head at b. The
// two points must differ.
func Arrow(a, b figure.Point) figure.Node {
	long := math.Hypot(b.X-a.X, b.Y-a.Y)
	ux, uy := (b.X-a.X)/long, (b.Y-a.Y)/long
	wing := func(side float64) figure.Point {
		return figure.Point{X: b.X - float64(8*ux) - float64(5*side*uy), Y: b.Y - float64(8*uy) + float64(5*side*ux)}
	}
	return figure.Group(figure.Segment(figure.Line, a, b), figure.Polyline(figure.Line, wing(1), b, wing(-1)))
}
