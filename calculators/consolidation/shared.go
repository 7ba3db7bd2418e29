package consolidation

import (
	"math"

	"coursebook/calculators/calc"
)

// sources are shared by the calculators of the package.
const (
	TitleWork = "A workman's guide to vibrating concrete, Concrete Construction"
	LinkWork  = "http://www.concreteconstruction.net/products/concrete-construction-equipment-tools/" +
		"a-workmans-guide-to-vibrating-concrete_o"
)

// countUp rounds a count up.
func countUp(x float64) float64 { return math.Ceil(x * (1 - calc.Slack)) }
