package geometry

import "coursebook/calculators/calc"

// WallVolume computes the concrete of a wall form and the order for it. Every
// volume stands in cubic yards and in cubic metres, whatever the reader's
// units: one taken for the other is the dear mistake of ordering.
var WallVolume = &calc.Calculator{
	ID:       "wall-volume",
	Title:    calc.Text("Wall volume and order"),
	Purpose:  calc.Text("How much concrete the walls take, and what to order."),
	In:       volumeIn,
	Out:      volumeOut,
	Formulas: volumeFormulas,
	Sources:  volumeSources,
	Cautions: []calc.Caution{
		{Level: calc.LevelNotice, Text: calc.Text("Say the unit with every order: yards or metres. Have the plant read it back.")},
		{Level: calc.LevelNotice, Text: calc.Text("All openings are deducted, small ones too: bucks in foam forms are exact. Bars and ties are not deducted.")},
		{Level: calc.LevelNotice, Text: calc.Text("Pump line and hopper are not in the volume. Add what the pump holds at the end, or cover it by waste.")},
	},
	Tables:  volumeTables,
	Compute: computeVolume,
	Draw:    drawVolume,
}

var volumeSources = []calc.Source{
	{ID: "navedtra", Author: "US Navy", Title: "Engineering Aid, NAVEDTRA 14070", Where: "concrete take-off of figure 5-2",
		Status: calc.Confirmed, Link: "https://engineeringtraining.tpub.com/14070/css/14070_103.htm"},
	{ID: "lejeune", Author: "E. G. Le Jeune", Title: "Estimating Concrete Work II: foundation walls, Concrete Construction", Year: "1967",
		Where: "lines A, B and basement", Status: calc.Confirmed, Link: "https://it.scribd.com/document/366969248/"},
	{ID: "griffith", Author: "I. S. Griffith", Title: "Carpentry", Where: "concrete estimating", Status: calc.Confirmed,
		Link: "https://chestofbooks.com/home-improvement/woodworking/Ira-S-Griffith/Carpentry/Concrete.html"},
	{ID: "waste", Author: "Concrete Construction", Title: "Yield problems and waste allowance",
		Where: "allowances by kind of work; textbooks run from 0 to 10 %", Status: calc.Confirmed,
		Link: "https://www.concreteconstruction.net/how-to/yield-problems-and-waste-allowance_o"},
	{ID: "loads", Author: "Ready-mix producer's guide", Title: "Calculating truck requirements", Where: "number of loads",
		Status: calc.Confirmed, Link: "http://www.lafarge-na.com/wps/portal/na/en/3_A_11_1-Calculating_Truck_Requirements"},
	{ID: "sp811", Author: "NIST", Title: "Guide for the Use of the International System of Units, SP 811", Year: "2008",
		Where: "appendix B, units of volume", Status: calc.Memory, Link: "https://www.nist.gov/pml/special-publication-811"},
	{ID: "geometry", Author: "", Title: "Corner rule for right angles, chord and rise of an arc", Where: "derived; handbook relations from memory",
		Status: calc.Memory},
	{ID: "practice", Title: "Order steps, truck sizes, deducting every opening in foam forms", Status: calc.CommonPractice},
}

var volumeTables = []calc.Table{
	{
		ID:    "yards",
		Title: calc.Text("Cubic yards in 10 ft (3.05 m) of wall"),
		Note:  tableNote,
		Out:   "net-yd", Set: tableSet("10 ft"), Down: tableCore, Across: tableHeight,
	},
	{
		ID:    "metres",
		Title: calc.Text("Cubic metres in 10 m (32' 10\") of wall"),
		Note:  tableNote,
		Out:   "net-m", Set: tableSet("10 m"), Down: tableCore, Across: tableHeight,
	},
}

var (
	tableNote   = calc.Text("Net, along the centre line, by core thickness and height. No waste, no openings.")
	tableCore   = calc.Axis{Path: "core", US: []string{"4 in", "6 in", "8 in", "10 in", "12 in"}, Metric: []string{"100 mm", "150 mm", "200 mm", "250 mm", "300 mm"}}
	tableHeight = calc.Axis{Path: "runs.1.height", US: []string{"4 ft", "8 ft", "9 ft", "10 ft", "12 ft"}, Metric: []string{"1.2 m", "2.4 m", "2.7 m", "3 m", "3.6 m"}}
)

// tableSet is a bare piece of wall, measured along its middle.
func tableSet(length string) []calc.Entry {
	return []calc.Entry{{Path: "measured", Text: "centre"}, {Path: "runs.1.length", Text: length}, {Path: "openings", Text: ""}, {Path: "block-outs", Text: ""}}
}
