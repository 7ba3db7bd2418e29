package geometry

import (
	"coursebook/calculators/calc"
	"coursebook/calculators/displays"
)

// CourseTakeOff counts the blocks of a form course by course, for any size of
// block: the reader types it from the form maker's data.
var CourseTakeOff = &calc.Calculator{
	ID:       "course-take-off",
	Title:    calc.Text("course-take-off.title: Form take-off by courses"),
	Purpose:  calc.Text("course-take-off.purpose: How many courses, straight blocks and corner blocks the walls take."),
	In:       courseIn,
	Out:      courseOut,
	Formulas: courseFormulas,
	Sources:  courseSources,
	Cautions: []calc.Caution{
		{Level: calc.LevelNotice, Text: calc.Text("course-take-off.caution.size: The sizes here are invented. Type those of your own block, from the form maker.")},
		{Level: calc.LevelNotice, Text: calc.Text("course-take-off.caution.hand: Some corner blocks can be turned over, so left and right are one part. Then order the sum.")},
		{Level: calc.LevelNotice, Text: calc.Text("course-take-off.caution.others: Other angles, brick ledges, tapered tops and end caps are not counted.")},
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
	courseBlockWhy  = calc.Text("course-take-off.why.block: Blocks and panels of wall forms lie inside. Check the unit.")
	courseWasteWhy  = calc.Text("course-take-off.why.waste: Waste never adds a block.")
	courseWastesWhy = calc.Text("course-take-off.why.wastes: Reuse the cut pieces, or look for the reason.")
	courseSizeLen   = calc.Text("course-take-off.walls.length: Length")
	courseSizeHigh  = calc.Text("course-take-off.walls.height: Height")
	courseSizeCount = calc.Text("course-take-off.walls.count: How many")
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
	{ID: "width", Label: calc.Text("course-take-off.openings.width: Width"), Display: &displays.Wall,
		Min: &calc.Limit{Unit: "ft", Open: true, Why: displays.AboveZero}, Max: &calc.Limit{At: 200, Unit: "ft", Why: displays.OneJob}},
	{ID: "height", Label: courseSizeHigh, Display: &displays.Wall,
		Min: &calc.Limit{Unit: "ft", Open: true, Why: displays.AboveZero}, Max: &calc.Limit{At: 40, Unit: "ft", Why: displays.OneStorey}},
	{ID: "count", Label: courseSizeCount, Display: &displays.Count, Whole: true, Usual: "1",
		Min: &calc.Limit{At: 1, Why: displays.LeaveOut}, Max: &calc.Limit{At: 200, Why: displays.CheckCount}},
}

var courseIn = []calc.Field{
	{ID: "block", Label: calc.Text("course-take-off.block: Block length"), Display: &displays.Part, Usual: "48 in",
		Min: &calc.Limit{At: 12, Unit: "in", Why: courseBlockWhy}, Max: &calc.Limit{At: 20, Unit: "ft", Why: courseBlockWhy}},
	{ID: "course", Label: calc.Text("course-take-off.course: Course height"), Display: &displays.Part, Usual: "16 in",
		Min: &calc.Limit{At: 6, Unit: "in", Why: courseBlockWhy}, Max: &calc.Limit{At: 10, Unit: "ft", Why: courseBlockWhy}},
	{ID: "thickness", Label: calc.Text("course-take-off.thickness: Form thickness"), Display: &displays.Part, Usual: "13 in",
		Help: calc.Text("course-take-off.thickness.help: Foam and core together. Only inside corners need it."),
		Min:  &calc.Limit{At: 4, Unit: "in", Why: courseBlockWhy}, Max: &calc.Limit{At: 48, Unit: "in", Why: courseBlockWhy}},
	{ID: "long-leg", Label: calc.Text("course-take-off.long-leg: Corner block, long leg"), Display: &displays.Part, Usual: "44 in",
		Help: calc.Text("course-take-off.long-leg.help: Along the outside of the form, from the corner."),
		Min:  &calc.Limit{At: 4, Unit: "in", Why: courseBlockWhy}, Max: &calc.Limit{At: 10, Unit: "ft", Why: courseBlockWhy}},
	{ID: "short-leg", Label: calc.Text("course-take-off.short-leg: Corner block, short leg"), Display: &displays.Part, Usual: "20 in",
		Min: &calc.Limit{At: 4, Unit: "in", Why: courseBlockWhy}, Max: &calc.Limit{At: 10, Unit: "ft", Why: courseBlockWhy}},
	{ID: "walls", Label: calc.Text("course-take-off.walls: Walls"), Kind: calc.Rows, Cols: courseWallCols, MinRows: 1, MaxRows: 40,
		Help:  calc.Text("course-take-off.walls.help: Lengths along the outside of the form, corner to corner."),
		Usual: "41 ft | 9 ft | 2; 29 ft | 9 ft | 2"},
	{ID: "outside-corners", Label: calc.Text("course-take-off.outside-corners: Outside corners"), Display: &displays.Count, Whole: true, Usual: "4",
		Min: &calc.Limit{At: 0, Why: displays.NotMinus}, Max: &calc.Limit{At: 200, Why: displays.CheckCount}},
	{ID: "inside-corners", Label: calc.Text("course-take-off.inside-corners: Inside corners"), Display: &displays.Count, Whole: true, Usual: "0",
		Min: &calc.Limit{At: 0, Why: displays.NotMinus}, Max: &calc.Limit{At: 200, Why: displays.CheckCount}},
	{ID: "start", Label: calc.Text("course-take-off.start: Bottom course starts with"), Kind: calc.Choice, Usual: leftHand,
		Help: calc.Text("course-take-off.start.help: At outside corners. The hand is the side of the long leg, from outside."),
		Options: []calc.Option{
			{ID: leftHand, Label: calc.Text("course-take-off.start.left: left corners")},
			{ID: rightHand, Label: calc.Text("course-take-off.start.right: right corners")},
		}},
	{ID: "openings", Label: calc.Text("course-take-off.openings: Openings"), Kind: calc.Rows, Cols: courseHoleCols, MaxRows: 40,
		Help:  calc.Text("course-take-off.openings.help: Hole in the form. Only whole courses are taken off."),
		Usual: "38 in | 82 in | 1; 36 in | 24 in | 4"},
	{ID: "waste", Label: calc.Text("course-take-off.waste: Cut waste"), Display: &wasteShow, Usual: "5 %",
		Help: calc.Text("course-take-off.waste.help: On straight blocks only."),
		Min:  &calc.Limit{At: 0, Unit: "%", Why: courseWasteWhy}, Max: &calc.Limit{At: 30, Unit: "%", Why: courseWastesWhy}},
}

const (
	courseCountLabel = calc.Text("course-take-off.out.courses: Courses")
	courseTopLabel   = calc.Text("course-take-off.out.top: Height of top course")
	courseOffLabel   = calc.Text("course-take-off.out.off: Cut off the top course")
)

var courseOut = []calc.Field{
	{ID: "straights", Label: calc.Text("course-take-off.out.straights: Straight blocks"), Display: &displays.Count, Lead: true, Exact: true},
	{ID: "left", Label: calc.Text("course-take-off.out.left: Left corner blocks"), Display: &displays.Count, Lead: true, Exact: true},
	{ID: "right", Label: calc.Text("course-take-off.out.right: Right corner blocks"), Display: &displays.Count, Lead: true, Exact: true},
	{ID: "total", Label: calc.Text("course-take-off.out.total: Blocks in all"), Display: &displays.Count, Exact: true},
	{ID: "courses", Label: courseCountLabel, Display: &displays.Count, Exact: true},
	{ID: "top", Label: courseTopLabel, Display: &displays.Part},
	{ID: "off", Label: courseOffLabel, Display: &displays.Part},
	{ID: "net", Label: calc.Text("course-take-off.out.net: Straight blocks, no waste"), Display: &displays.Tenths},
	{ID: "straight-length", Label: calc.Text("course-take-off.out.straight-length: Straight length, all courses"), Display: &displays.Wall},
	{ID: "by-wall", Label: calc.Text("course-take-off.out.by-wall: Courses by wall"), Kind: calc.Rows, Cols: []calc.Field{
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
	{ID: "courses", Title: calc.Text("course-take-off.table.courses: Courses by wall height and course height"), Out: "courses",
		Set: []calc.Entry{{Path: "walls.1.length", Text: "40 ft"}, {Path: "openings", Text: ""}},
		Down: calc.Axis{Path: "walls.1.height", US: []string{"4 ft", "8 ft", "9 ft", "10 ft", "12 ft", "14 ft"},
			Metric: []string{"1.2 m", "2.4 m", "2.7 m", "3 m", "3.6 m", "4.2 m"}},
		Across: calc.Axis{Path: "course", US: []string{"12 in", "16 in", "18 in", "24 in"}, Metric: []string{"300 mm", "400 mm", "450 mm", "600 mm"}}},
	{ID: "top", Title: calc.Text("course-take-off.table.top: Height of the top course"), Out: "top",
		Note: calc.Text("course-take-off.table.top.note: Where it is the full course height, nothing is cut."),
		Set:  []calc.Entry{{Path: "walls.1.length", Text: "40 ft"}, {Path: "openings", Text: ""}},
		Down: calc.Axis{Path: "walls.1.height", US: []string{"4 ft", "8 ft", "9 ft", "10 ft", "12 ft", "14 ft"},
			Metric: []string{"1.2 m", "2.4 m", "2.7 m", "3 m", "3.6 m", "4.2 m"}},
		Across: calc.Axis{Path: "course", US: []string{"12 in", "16 in", "18 in", "24 in"}, Metric: []string{"300 mm", "400 mm", "450 mm", "600 mm"}}},
}
