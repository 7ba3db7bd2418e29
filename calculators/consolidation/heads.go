package consolidation

import "coursebook/calculators/calc"

// span is a published range.
type span struct{ low, high float64 }

func (s span) middle() float64 { return (s.low + s.high) / 2 }

// head is one group of internal vibrators.
type head struct {
	id        string
	diameter  span // mm
	frequency span // Hz
	radius    span // mm, radius of action
	rate      span // m³/h for one vibrator
}

// heads are the published groups in metric units. The table in inches of ACI
// 309R is the same to its rounding. Figures hold for the slump of each group
// and for open concrete: ties and bars are not in them.
// Source: CCANZ, Compaction Equipment, table 1.
var heads = []head{
	{"pencil", span{20, 40}, span{150, 250}, span{80, 150}, span{0.8, 4}},
	{"thin", span{30, 60}, span{140, 210}, span{130, 250}, span{2.3, 8}},
	{"normal", span{50, 90}, span{130, 200}, span{180, 360}, span{4.6, 15}},
	{"heavy", span{80, 150}, span{120, 180}, span{300, 500}, span{11, 31}},
	{"mass", span{130, 180}, span{90, 140}, span{400, 600}, span{19, 38}},
}

// stiffFrom is the first group that is published for slump below 3 in.
const stiffFrom = 2

func findHead(id string) int {
	for i, h := range heads {
		if h.id == id {
			return i
		}
	}
	return 0
}

var headOptions = []calc.Option{
	{ID: "pencil", Label: calc.Text("¾ to 1½ in. (20–40 mm), pencil")},
	{ID: "thin", Label: calc.Text("1¼ to 2½ in. (30–60 mm), thin walls")},
	{ID: "normal", Label: calc.Text("2 to 3½ in. (50–90 mm), stiffer mix")},
	{ID: "heavy", Label: calc.Text("3 to 6 in. (80–150 mm), open forms")},
	{ID: "mass", Label: calc.Text("5 to 7 in. (130–180 mm), mass concrete")},
}

// The published times at rest, in seconds. Source: US Army EN5466.
var (
	restAir   = span{5, 10}
	restPlain = span{10, 15}
)

// sources are shared by the calculators of the package.
const (
	titleArmy = "Subcourse EN5466 ed. A, Concrete Engineering"
	linkArmy  = "https://armyengineer.tpub.com/EN5466A/EN5466A0120.htm"
	titleWork = "A workman's guide to vibrating concrete, Concrete Construction"
	linkWork  = "http://www.concreteconstruction.net/products/concrete-construction-equipment-tools/a-workmans-guide-to-vibrating-concrete_o"
)
