package geometry

import (
	"coursebook/calculators/calc"
	"coursebook/calculators/displays"
)

// CourseTakeOff counts the blocks of a form course by course, for any size of
// block: the reader types it from the form maker's data.
var CourseTakeOff = &calc.Calculator{
	ID:       "course-take-off",
	Title:    calc.Text("Form take-off by courses"),
	Purpose:  calc.Text("How many courses, straight blocks and corner blocks the walls take."),
	In:       courseIn,
	Out:      courseOut,
	Formulas: courseFormulas,
	Sources:  courseSources,
	Cautions: []calc.Caution{
		{Level: calc.LevelNotice, Text: calc.Text("The sizes here are invented. Type those of your own block, from the form maker.")},
		{Level: calc.LevelNotice, Text: calc.Text("Some corner blocks can be turned over, so left and right are one part. Then order the sum.")},
		{Level: calc.LevelNotice, Text: calc.Text("Other angles, brick ledges, tapered tops and end caps are not counted.")},
	},
	Tables:  courseTables,
	Compute: computeCourses,
	Draw:    drawCourses,
}

// The hands of a corner block, by the side of its long leg seen from outside.
const (
	leftHand  = "left"
	rightHand = "right"
)

const (
	courseBlockWhy  = calc.Text("Blocks and panels of wall forms lie inside. Check the unit.")
	courseWasteWhy  = calc.Text("Waste never adds a block.")
	courseWastesWhy = calc.Text("Reuse the cut pieces, or look for the reason.")
	courseSizeLen   = calc.Text("Length")
	courseSizeHigh  = calc.Text("Height")
	courseSizeCount = calc.Text("How many")
)

var courseWallCols = []calc.Field{
	{ID: "length", Label: courseSizeLen, Display: &displays.Wall,
		Min: &calc.Limit{Unit: "ft", Open: true, Why: displays.AboveZero}, Max: &calc.Limit{At: 2000, Unit: "ft", Why: displays.OneJob}},
	{ID: "height", Label: courseSizeHigh, Display: &displays.Wall,
		Min: &calc.Limit{Unit: "ft", Open: true, Why: displays.AboveZero}, Max: &calc.Limit{At: 40, Unit: "ft", Why: displays.OneStorey}},
	{ID: "count", Label: courseSizeCount, Display: &displays.Count, Whole: true, Usual: "1",
		Min: &calc.Limit{At: 1, Why: displays.LeaveOut}, Max: &calc.Limit{At: 200, Why: displays.CheckCount}},
}

var courseHoleCols = []calc.Field{
	{ID: "width", Label: calc.Text("Width"), Display: &displays.Wall,
		Min: &calc.Limit{Unit: "ft", Open: true, Why: displays.AboveZero}, Max: &calc.Limit{At: 200, Unit: "ft", Why: displays.OneJob}},
	{ID: "height", Label: courseSizeHigh, Display: &displays.Wall,
		Min: &calc.Limit{Unit: "ft", Open: true, Why: displays.AboveZero}, Max: &calc.Limit{At: 40, Unit: "ft", Why: displays.OneStorey}},
	{ID: "count", Label: courseSizeCount, Display: &displays.Count, Whole: true, Usual: "1",
		Min: &calc.Limit{At: 1, Why: displays.LeaveOut}, Max: &calc.Limit{At: 200, Why: displays.CheckCount}},
}

var courseIn = []calc.Field{
	{ID: "block", Label: calc.Text("Block length"), Display: &displays.Part, Usual: "48 in",
		Min: &calc.Limit{At: 12, Unit: "in", Why: courseBlockWhy}, Max: &calc.Limit{At: 20, Unit: "ft", Why: courseBlockWhy}},
	{ID: "course", Label: calc.Text("Course height"), Display: &displays.Part, Usual: "16 in",
		Min: &calc.Limit{At: 6, Unit: "in", Why: courseBlockWhy}, Max: &calc.Limit{At: 10, Unit: "ft", Why: courseBlockWhy}},
	{ID: "thickness", Label: calc.Text("Form thickness"), Display: &displays.Part, Usual: "13 in",
		Help: calc.Text("Foam and core together. Only inside corners need it."),
		Min:  &calc.Limit{At: 4, Unit: "in", Why: courseBlockWhy}, Max: &calc.Limit{At: 48, Unit: "in", Why: courseBlockWhy}},
	{ID: "long-leg", Label: calc.Text("Corner block, long leg"), Display: &displays.Part, Usual: "44 in",
		Help: calc.Text("Along the outside of the form, from the corner."),
		Min:  &calc.Limit{At: 4, Unit: "in", Why: courseBlockWhy}, Max: &calc.Limit{At: 10, Unit: "ft", Why: courseBlockWhy}},
	{ID: "short-leg", Label: calc.Text("Corner block, short leg"), Display: &displays.Part, Usual: "20 in",
		Min: &calc.Limit{At: 4, Unit: "in", Why: courseBlockWhy}, Max: &calc.Limit{At: 10, Unit: "ft", Why: courseBlockWhy}},
	{ID: "walls", Label: calc.Text("Walls"), Kind: calc.Rows, Cols: courseWallCols, MinRows: 1, MaxRows: 40,
		Help:  calc.Text("Lengths along the outside of the form, corner to corner."),
		Usual: "41 ft | 9 ft | 2; 29 ft | 9 ft | 2"},
	{ID: "outside-corners", Label: calc.Text("Outside corners"), Display: &displays.Count, Whole: true, Usual: "4",
		Min: &calc.Limit{At: 0, Why: displays.NotMinus}, Max: &calc.Limit{At: 200, Why: displays.CheckCount}},
	{ID: "inside-corners", Label: calc.Text("Inside corners"), Display: &displays.Count, Whole: true, Usual: "0",
		Min: &calc.Limit{At: 0, Why: displays.NotMinus}, Max: &calc.Limit{At: 200, Why: displays.CheckCount}},
	{ID: "start", Label: calc.Text("Bottom course starts with"), Kind: calc.Choice, Usual: leftHand,
		Help: calc.Text("At outside corners. The hand is the side of the long leg, from outside."),
		Options: []calc.Option{
			{ID: leftHand, Label: calc.Text("left corners")},
			{ID: rightHand, Label: calc.Text("right corners")},
		}},
	{ID: "openings", Label: calc.Text("Openings"), Kind: calc.Rows, Cols: courseHoleCols, MaxRows: 40,
		Help:  calc.Text("Hole in the form. Only whole courses are taken off."),
		Usual: "38 in | 82 in | 1; 36 in | 24 in | 4"},
	{ID: "waste", Label: calc.Text("Cut waste"), Display: &wasteShow, Usual: "5 %",
		Help: calc.Text("On straight blocks only."),
		Min:  &calc.Limit{At: 0, Unit: "%", Why: courseWasteWhy}, Max: &calc.Limit{At: 30, Unit: "%", Why: courseWastesWhy}},
}

const (
	courseCountLabel = calc.Text("Courses")
	courseTopLabel   = calc.Text("Height of top course")
	courseOffLabel   = calc.Text("Cut off the top course")
)

var courseOut = []calc.Field{
	{ID: "straights", Label: calc.Text("Straight blocks"), Display: &displays.Count, Lead: true, Exact: true},
	{ID: "left", Label: calc.Text("Left corner blocks"), Display: &displays.Count, Lead: true, Exact: true},
	{ID: "right", Label: calc.Text("Right corner blocks"), Display: &displays.Count, Lead: true, Exact: true},
	{ID: "total", Label: calc.Text("Blocks in all"), Display: &displays.Count, Exact: true},
	{ID: "courses", Label: courseCountLabel, Display: &displays.Count, Exact: true},
	{ID: "top", Label: courseTopLabel, Display: &displays.Part},
	{ID: "off", Label: courseOffLabel, Display: &displays.Part},
	{ID: "net", Label: calc.Text("Straight blocks, no waste"), Display: &displays.Tenths},
	{ID: "straight-length", Label: calc.Text("Straight length, all courses"), Display: &displays.Wall},
	{ID: "by-wall", Label: calc.Text("Courses by wall"), Kind: calc.Rows, Cols: []calc.Field{
		{ID: "height", Label: courseSizeHigh, Display: &displays.Wall},
		{ID: "courses", Label: courseCountLabel, Display: &displays.Count, Exact: true},
		{ID: "top", Label: courseTopLabel, Display: &displays.Part},
		{ID: "off", Label: courseOffLabel, Display: &displays.Part},
	}},
}

var courseSources = []calc.Source{
	{ID: "arithmetic", Title: "Lengths of courses less corners and openings", Where: "derived", Status: calc.Memory},
	{ID: "en5151", Author: "US Army", Title: "Subcourse EN5151", Where: "step 14: height over spacing, rounded up", Status: calc.Confirmed,
		Link: "http://armyengineer.tpub.com/EN5151/Figure-2-Double-Wales-On-An-8-Foot-Wall-Form-24.htm"},
	{ID: "practice", Title: "Corner blocks change hand with every course; openings are taken off by whole courses", Status: calc.CommonPractice},
}

var courseTables = []calc.Table{
	{ID: "courses", Title: calc.Text("Courses by wall height and course height"), Out: "courses",
		Set: []calc.Entry{{Path: "walls.1.length", Text: "40 ft"}, {Path: "openings", Text: ""}},
		Down: calc.Axis{Path: "walls.1.height", US: []string{"4 ft", "8 ft", "9 ft", "10 ft", "12 ft", "14 ft"},
			Metric: []string{"1.2 m", "2.4 m", "2.7 m", "3 m", "3.6 m", "4.2 m"}},
		Across: calc.Axis{Path: "course", US: []string{"12 in", "16 in", "18 in", "24 in"}, Metric: []string{"300 mm", "400 mm", "450 mm", "600 mm"}}},
	{ID: "top", Title: calc.Text("Height of the top course"), Out: "top",
		Note: calc.Text("Where it is the full course height, nothing is cut."),
		Set:  []calc.Entry{{Path: "walls.1.length", Text: "40 ft"}, {Path: "openings", Text: ""}},
		Down: calc.Axis{Path: "walls.1.height", US: []string{"4 ft", "8 ft", "9 ft", "10 ft", "12 ft", "14 ft"},
			Metric: []string{"1.2 m", "2.4 m", "2.7 m", "3 m", "3.6 m", "4.2 m"}},
		Across: calc.Axis{Path: "course", US: []string{"12 in", "16 in", "18 in", "24 in"}, Metric: []string{"300 mm", "400 mm", "450 mm", "600 mm"}}},
}
