// Package consolidation holds the equations of consolidating concrete: internal
// vibrators, form vibrators and battery packs.
package consolidation

// Title and link of a source that several calculators cite.
const (
	TitleWork = "A workman's guide to vibrating concrete, Concrete Construction"
	LinkWork  = "http://www.concreteconstruction.net/products/concrete-construction-equipment-tools/" +
		"a-workmans-guide-to-vibrating-concrete_o"
)
