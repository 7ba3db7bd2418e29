// Package shelf is the list of calculators, in the order of the pour.
package shelf

import (
	"coursebook/calculators/bracing"
	"coursebook/calculators/calc"
	"coursebook/calculators/geometry"
	"coursebook/calculators/pressure"
)

// All lists every calculator once. A test finds two with one ID.
func All() []*calc.Calculator {
	return []*calc.Calculator{
		geometry.WallVolume,
		pressure.FormPressure,
		bracing.StringLine,
	}
}
