package site_test

import (
	"coursebook/calculators/calc"
	"coursebook/calculators/calctest"
)

var calculators = []*calc.Calculator{calctest.Tank(), calctest.Bare()}
