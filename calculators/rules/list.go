package rules

import (
	"coursebook/calculators/calc"
	"coursebook/calculators/displays"
)

// The documents of more than one limit.
var (
	hurd = calc.Source{
		ID: "hurd", Author: "M. K. Hurd", Title: "Concrete Construction, Use updated wall pressure formulas",
		Edition: "letter on ACI 347-04 sec. 2.2.2", Status: calc.Confirmed,
	}
	aci117 = calc.Source{ID: "aci-117", Title: "ACI 117-10", Year: "2010", Status: calc.Memory}
)

// at returns a source with the place in its document.
func at(s calc.Source, where calc.Text) calc.Source {
	s.Where = where
	return s
}

// All returns every house rule, in the order of the work. IDs are unique.
func All() []*Rule {
	return []*Rule{
		// ordering
		{ID: "waste", Display: &displays.Percent, Direction: AtLeast},
		{ID: "slump-ordered", Display: &displays.Inches, Limit: "7 in",
			Source: at(hurd, calc.Text("no wall equation holds for a slump over 7 in."))},
		{ID: "ticket-age", Display: &displays.Minutes, Limit: "90 min",
			Source: calc.Source{ID: "c94", Title: "ASTM C94/C94M", Where: calc.Text("sec. 10.7 of older editions, " +
				"as quoted in " +
				"Hold the deliveries, Concrete Construction"), Status: calc.Secondary}},
		{ID: "hot-load", Display: &displays.Temperature, Limit: "95 °F",
			Source: calc.Source{ID: "aci-305", Title: "ACI 305.1-14", Where: calc.Text("sec. 3.3"),
				Status: calc.Secondary}},
		// before
		{ID: "brace-spacing", Display: &displays.Wall},
		{ID: "brace-corner", Display: &displays.Wall},
		{ID: "block-out-factor", Display: &displays.Factor, Direction: AtLeast, Limit: "2",
			Source: calc.Source{ID: "aci-347", Title: "ACI 347R-14", Where: calc.Text("safety factor of form ties " +
				"and anchors"),
				Status: calc.Memory}},
		// placing
		{ID: "lift", Display: &displays.Height, Limit: "2 ft",
			Source: calc.Source{ID: "ufgs-placing", Title: "UFGS 03301A", Where: calc.Text("layers of 2 ft at most"),
				Status: calc.Secondary}},
		{ID: "rise", Display: &displays.Rise, Limit: "4 ft/h",
			Source: calc.Source{ID: "navy", Title: "US Navy NAVEDTRA 10648-G", Year: "1981",
				Where:  calc.Text("p. 7-37"),
				Status: calc.Confirmed}},
		{ID: "drop", Display: &displays.Height, Limit: "5 ft",
			Source: calc.Source{ID: "ufgs", Title: "UFGS 03301A", Where: calc.Text("free fall of concrete"),
				Status: calc.Secondary}},
		{ID: "curve-lift", Display: &displays.Height},
		{ID: "opening-sides", Display: &displays.Height, Firm: true},
		{ID: "into-below", Display: &displays.Inches},
		{ID: "head-spacing", Display: &displays.Inches, Limit: "15 in",
			Source: calc.Source{ID: "aci-309", Title: "ACI 309R-05", Where: calc.Text("reach of heads up to 2-1/2 " +
				"in., times 1.5"),
				Status: calc.Memory}},
		{ID: "joint-window", Display: &displays.Minutes},
		{ID: "pause", Display: &displays.Minutes},
		// the hour
		{ID: "hands-off", Display: &displays.Minutes},
		{ID: "hands-off-hot", Display: &displays.Minutes},
		{ID: "hot-day", Display: &displays.Temperature},
		{ID: "straightness", Display: &displays.Part, Limit: "1/4 in",
			Source: calc.Source{ID: "ufgs-forms", Title: "UFGS 03700, table of ACI 117 values",
				Where: calc.Text("class B surface, gap under a straightedge of 5 ft"), Status: calc.Confirmed}},
		{ID: "plumb", Display: &displays.Part, Limit: "1/4 in",
			Source: at(aci117, calc.Text("0.3% of the height, for a wall of 8 ft"))},
		// safety
		{ID: "clear-the-wall", Display: &displays.Part},
		{ID: "planks-wind", Display: &displays.Wind, Limit: "20 mph",
			Source: calc.Source{ID: "ncma", Title: "NCMA TEK 3-4B", Year: "2005",
				Where: calc.Text("wind at which masons leave a wall on its first day"), Status: calc.Secondary}},
		{ID: "rinse", Display: &displays.Minutes, Direction: AtLeast, Limit: "15 min",
			Source: calc.Source{ID: "z358", Title: "ANSI/ISEA Z358.1", Where: calc.Text("15 minutes of flow"),
				Status: calc.Secondary}},
	}
}
