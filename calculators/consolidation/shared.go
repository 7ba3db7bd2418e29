package consolidation

// sources are shared by the calculators of the package.
const (
	TitleWork = "A workman's guide to vibrating concrete, Concrete Construction"
	LinkWork  = "http://www.concreteconstruction.net/products/concrete-construction-equipment-tools/" +
		"a-workmans-guide-to-vibrating-concrete_o"
)
