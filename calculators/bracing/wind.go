package bracing

import "coursebook/calculators/calc"

// WindOnWall tells what the wind does to an empty or fresh wall and to its
// braces. It gives forces, not a design: a verdict comes only from ratings
// that the reader gives.
var WindOnWall = &calc.Calculator{
	ID:       "wind-on-wall",
	Title:    calc.Text("Wind on a braced wall"),
	Purpose:  calc.Text("What the wind and the planks put on one brace and its anchor."),
	In:       windIn,
	Out:      windOut,
	Formulas: windFormulas,
	Sources:  windSources,
	Cautions: []calc.Caution{
		{Level: calc.LevelDanger, Text: calc.Text("A wall that blows over kills. Clear the planks and the fall zone before the wind gets strong.")},
		{Level: calc.LevelWarning, Text: calc.Text("Bracing is the work of an engineer or of the form maker. These forces help you ask, they are no design.")},
		{Level: calc.LevelWarning, Text: calc.Text("Local code, the anchor maker's data and the soil decide. An anchor in young concrete holds far less.")},
	},
	Tables:  windTables,
	Compute: computeWind,
	Draw:    drawWind,
}

var windSources = []calc.Source{
	{ID: "asce7", Author: "ASCE", Title: "Minimum Design Loads for Buildings and Other Structures, ASCE 7", Edition: "7-05 to 7-16",
		Where: "velocity pressure and exposure coefficients, as used in City of Rexburg permit calculations 19-00780", Status: calc.Secondary,
		Link: "https://laserfiche.rexburg.org/WebLink/DocView.aspx?dbid=0&id=435445&repo=Rexburg"},
	{ID: "walls", Author: "ASCE", Title: "ASCE 7, solid freestanding walls", Edition: "7-10, 7-16",
		Where: "force coefficients for s/h = 1, cases A to C; same table in CIRSOC 102-2025, figure 4.4-1", Status: calc.Secondary},
	{ID: "asce716", Author: "ASCE", Title: "ASCE 7-16", Year: "2017", Where: "table 26.9-1, ground elevation factor; section 2.4.1, 0.6 W", Status: calc.Memory},
	{ID: "asce37", Author: "ASCE", Title: "Design Loads on Structures during Construction, ASCE 37", Where: "factors for the construction period; 0.8 as repeated in the tilt-up bracing guideline",
		Status: calc.Memory, Link: "https://www.concreteconstruction.net/business/tilt-up-concrete-association-bracing-guideline_o"},
	{ID: "aci347", Author: "ACI Committee 347", Title: "Guide to Formwork for Concrete", Where: "least level load on wall forms, as in a textbook chapter on wall form design, section 7.2.2",
		Status: calc.Secondary, Link: "http://zhclg.com/concrete-formwork/horizontal-loads.htm"},
	{ID: "statics", Title: "Moments about the base of the wall", Where: "P = H h l / (h' l') of the same chapter, Design of lateral bracing", Status: calc.Secondary,
		Link: "http://zhclg.com/concrete-formwork/design-of-lateral-bracing.htm"},
	{ID: "osha-l", Author: "OSHA", Title: "29 CFR 1926 Subpart L, Appendix A", Where: "light, medium and heavy duty: 25, 50 and 75 psf", Status: calc.Secondary,
		Link: "https://www.osha.gov/laws-regs/regulations/standardnumber/1926/1926SubpartLAppA"},
	{ID: "masonry", Author: "NCMA", Title: "Bracing concrete masonry walls during construction, TEK 3-4B", Year: "2005",
		Where: "clear at 20 mph in the first period, 35 mph later; zone of height plus 4 ft", Status: calc.Confirmed,
		Link: "https://learnwithseu.com/be-safe-around-masonry-walls-under-construction/"},
	{ID: "army", Author: "US Army", Title: "EN5466, Concrete and masonry", Edition: "A", Year: "1992", Where: "brace design: sin θ = y/L, slopes of 20° to 60°",
		Status: calc.Confirmed, Link: "https://armyengineer.tpub.com/EN5466A/EN5466A0082.htm"},
}

var windTables = []calc.Table{
	{
		ID: "force", Title: calc.Text("Force along the brace, by wall height and wind"),
		Note: calc.Text("Brace every 6 ft (1.83 m), held at 6 ft, foot 5 ft (1.52 m) out. Exposure C, up to 6 weeks, no planks. Low winds: the least load counts."),
		Out:  "push", Set: []calc.Entry{{Path: "duty", Text: "none"}},
		Down:   calc.Axis{Path: "wind", US: []string{"80 mph", "90 mph", "100 mph", "110 mph", "120 mph", "130 mph"}, Metric: []string{"36 m/s", "40 m/s", "45 m/s", "50 m/s", "54 m/s", "58 m/s"}},
		Across: calc.Axis{Path: "height", US: []string{"8 ft", "9 ft", "10 ft", "12 ft"}, Metric: []string{"2.4 m", "2.7 m", "3 m", "3.6 m"}},
	},
}
