// Package coursetakeoff counts the blocks of a form course by course, for any size of
// block; the reader types the size from the form maker's data.
package coursetakeoff

import (
	"coursebook/calculators/calc"
	"coursebook/calculators/displays"
	"coursebook/calculators/geometry"
)

// Calculator counts the blocks of a form course by course, for any size of
// block; the reader types the size from the form maker's data.
var Calculator = &calc.Calculator{
	ID:       "course-take-off",
	Title:    calc.Text("Form take-off by courses"),
	Purpose:  calc.Text("How many courses, straight blocks and corner blocks the walls take."),
	In:       inputs,
	Out:      outputs,
	Formulas: formulas,
	Sources:  sources,
	Cautions: []calc.Caution{
		{
			Level: calc.LevelNotice,
			Text:  calc.Text("The sizes here are invented. Type those of your own block, from the form maker."),
		},
		{
			Level: calc.LevelNotice,
			Text: calc.Text(
				"Some corner blocks can be turned over, so left and right are one part. Then order the sum.",
			),
		},
		{
			Level: calc.LevelNotice,
			Text:  calc.Text("Other angles, brick ledges, tapered tops and end caps are not counted."),
		},
	},
	Tables:  tables,
	Compute: computeCourses,
	Draw:    drawCourses,
}

const (
	blockWhy  = calc.Text("Blocks and panels of wall forms lie inside. Check the unit.")
	wasteWhy  = calc.Text("Waste never adds a block.")
	wastesWhy = calc.Text("Reuse the cut pieces, or look for the reason.")
	sizeLen   = calc.Text("Length")
	sizeHigh  = calc.Text("Height")
	sizeCount = calc.Text("How many")
)

var wallCols = []calc.Field{
	{ID: "length", Label: sizeLen, Display: &displays.Wall,
		Range: "over 0 to 2000 ft", Why: displays.AboveZero, WhyMost: displays.OneJob},
	{ID: "height", Label: sizeHigh, Display: &displays.Wall,
		Range: "over 0 to 40 ft", Why: displays.AboveZero, WhyMost: displays.OneStorey},
	{ID: "count", Label: sizeCount, Display: &displays.Count, Whole: true, Usual: "1",
		Range: "1 to 200", Why: displays.LeaveOut, WhyMost: displays.CheckCount},
}

var holeCols = []calc.Field{
	{ID: "width", Label: calc.Text("Width"), Display: &displays.Wall,
		Range: "over 0 to 200 ft", Why: displays.AboveZero, WhyMost: displays.OneJob},
	{ID: "height", Label: sizeHigh, Display: &displays.Wall,
		Range: "over 0 to 40 ft", Why: displays.AboveZero, WhyMost: displays.OneStorey},
	{ID: "count", Label: sizeCount, Display: &displays.Count, Whole: true, Usual: "1",
		Range: "1 to 200", Why: displays.LeaveOut, WhyMost: displays.CheckCount},
}

var inputs = []calc.Field{
	{ID: "block", Decides: 3, Label: calc.Text("Block length"), Display: &displays.Part, Usual: "48 in",
		Range: "12 in to 20 ft", Why: blockWhy},
	{ID: "course", Decides: 2, Label: calc.Text("Course height"), Display: &displays.Part, Usual: "16 in",
		Range: "6 in to 10 ft", Why: blockWhy},
	{ID: "thickness", Label: calc.Text("Form thickness"), Display: &displays.Part, Example: true, Usual: "13 in",
		Help:  calc.Text("Foam and core together. Only inside corners need it."),
		Range: "4 to 48 in", Why: blockWhy},
	{ID: "long-leg", Label: calc.Text("Corner block, long leg"), Display: &displays.Part, Example: true, Usual: "44 in",
		Help:  calc.Text("Along the outside of the form, from the corner."),
		Range: "4 in to 10 ft", Why: blockWhy},
	{ID: "short-leg", Label: calc.Text("Corner block, short leg"), Display: &displays.Part,
		Example: true, Usual: "20 in",
		Range: "4 in to 10 ft", Why: blockWhy},
	{ID: "walls", Decides: 1, Label: calc.Text("Walls"), Kind: calc.Rows, Cols: wallCols, MinRows: 1, MaxRows: 40,
		Help:  calc.Text("Lengths along the outside of the form, corner to corner."),
		Usual: "41 ft | 9 ft | 2; 29 ft | 9 ft | 2"},
	{ID: "outside-corners", Label: calc.Text("Outside corners"), Display: &displays.Count, Whole: true,
		Example: true, Usual: "4",
		Range: "0 to 200", Why: displays.NotMinus, WhyMost: displays.CheckCount},
	{ID: "inside-corners", Label: calc.Text("Inside corners"), Display: &displays.Count, Whole: true,
		Example: true, Usual: "0",
		Range: "0 to 200", Why: displays.NotMinus, WhyMost: displays.CheckCount},
	{ID: "start", Label: calc.Text("Bottom course starts with"), Kind: calc.Choice, Usual: geometry.LeftHand,
		Help: calc.Text("At outside corners. The hand is the side of the long leg, from outside."),
		Options: []calc.Option{
			{ID: geometry.LeftHand, Label: calc.Text("left corners")},
			{ID: geometry.RightHand, Label: calc.Text("right corners")},
		}},
	{ID: "openings", Decides: 4, Label: calc.Text("Openings"), Kind: calc.Rows, Cols: holeCols, MaxRows: 40,
		Help:  calc.Text("Hole in the form. Only whole courses are taken off."),
		Usual: "38 in | 82 in | 1; 36 in | 24 in | 4"},
	{ID: "waste", Label: calc.Text("Cut waste"), Display: &geometry.WasteDisplay, Usual: "5 %",
		Help:  calc.Text("On straight blocks only."),
		Range: "0 to 30 %", Why: wasteWhy, WhyMost: wastesWhy},
}

const (
	countLabel = calc.Text("Courses")
	topLabel   = calc.Text("Height of top course")
	offLabel   = calc.Text("Cut off the top course")
)

var outputs = []calc.Field{
	{ID: "straights", Label: calc.Text("Straight blocks"), Display: &displays.Count, Lead: true, Exact: true},
	{ID: "left", Label: calc.Text("Left corner blocks"), Display: &displays.Count, Lead: true, Exact: true},
	{ID: "right", Label: calc.Text("Right corner blocks"), Display: &displays.Count, Lead: true, Exact: true},
	{ID: "total", Label: calc.Text("Blocks in all"), Display: &displays.Count, Exact: true},
	{ID: "courses", Label: countLabel, Display: &displays.Count, Exact: true},
	{ID: "top", Label: topLabel, Display: &displays.Part},
	{ID: "off", Label: offLabel, Display: &displays.Part},
	{ID: "net", Label: calc.Text("Straight blocks, no waste"), Display: &displays.Tenths},
	{ID: "straight-length", Label: calc.Text("Straight length, all courses"), Display: &displays.Wall},
	{ID: "by-wall", Label: calc.Text("Courses by wall"), Kind: calc.Rows, Cols: []calc.Field{
		{ID: "height", Label: sizeHigh, Display: &displays.Wall},
		{ID: "courses", Label: countLabel, Display: &displays.Count, Exact: true},
		{ID: "top", Label: topLabel, Display: &displays.Part},
		{ID: "off", Label: offLabel, Display: &displays.Part},
	}},
}

var sources = []calc.Source{
	{ID: "arithmetic", Where: calc.Text("Lengths of courses less corners and openings; derived"), Status: calc.Memory},
	{
		ID:     "en5151",
		Author: "US Army",
		Title:  "Subcourse EN5151",
		Where:  calc.Text("step 14: height over spacing, rounded up"),
		Status: calc.Confirmed,
	},
	{
		ID:     "practice",
		Where:  calc.Text("Corner blocks change hand with every course; openings are taken off by whole courses"),
		Status: calc.CommonPractice,
	},
}

var tables = []calc.Table{
	{ID: "courses", Title: calc.Text("Courses by wall height and course height"), Out: "courses",
		Set: []calc.Entry{{Path: "walls.1.length", Text: "40 ft"}, {Path: "openings", Text: ""}},
		Down: calc.Axis{Path: "walls.1.height", US: []string{"4 ft", "8 ft", "9 ft", "10 ft", "12 ft", "14 ft"},
			Metric: []string{"1.2 m", "2.4 m", "2.7 m", "3 m", "3.6 m", "4.2 m"}},
		Across: calc.Axis{
			Path:   "course",
			US:     []string{"12 in", "16 in", "18 in", "24 in"},
			Metric: []string{"300 mm", "400 mm", "450 mm", "600 mm"},
		}},
	{ID: "top", Title: calc.Text("Height of the top course"), Out: "top",
		Note: calc.Text("Where it is the full course height, nothing is cut."),
		Set:  []calc.Entry{{Path: "walls.1.length", Text: "40 ft"}, {Path: "openings", Text: ""}},
		Down: calc.Axis{Path: "walls.1.height", US: []string{"4 ft", "8 ft", "9 ft", "10 ft", "12 ft", "14 ft"},
			Metric: []string{"1.2 m", "2.4 m", "2.7 m", "3 m", "3.6 m", "4.2 m"}},
		Across: calc.Axis{
			Path:   "course",
			US:     []string{"12 in", "16 in", "18 in", "24 in"},
			Metric: []string{"300 mm", "400 mm", "450 mm", "600 mm"},
		}},
}

var formulas = []*calc.Formula{
	geometry.CoursesFormula,
	geometry.TopCourseFormula,
	geometry.CornerRunFormula,
	geometry.StraightRunFormula,
	geometry.StraightBlocksFormula,
	geometry.CornerBlocksFormula,
}
