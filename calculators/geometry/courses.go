package geometry

import (
	"math"

	"coursebook/calculators/calc"
)

// Symbols that several formulas of the take-off share.
const (
	courseNumber = calc.Text("number of courses")
	courseHigh   = calc.Text("course height")
	courseWall   = calc.Text("wall height")
	courseRun    = calc.Text("length left for straight blocks")
	courseLegs   = calc.Text("length the corners take in one course")
)

var (
	courseN = calc.Var{Symbol: "N", Meaning: courseNumber}
	courseH = calc.Var{Symbol: "H", Meaning: courseWall, Unit: "mm", US: "in"}
	courseh = calc.Var{Symbol: "h", Meaning: courseHigh, Unit: "mm", US: "in"}
	courseS = calc.Var{Symbol: "S", Meaning: courseRun, Unit: "m", US: "ft"}
	coursek = calc.Var{Symbol: "k", Meaning: courseLegs, Unit: "m", US: "ft"}
)

// Courses is the number of courses of a wall, N = ⌈H / h⌉.
//
// Units: any, the same for both. Limits: h > 0. Source: rounding up, as for
// the rows of wales in US Army EN5151, step 14.
func Courses(height, course float64) float64 { return calc.Ceil(height / course) }

// CoursesFormula declares Courses.
var CoursesFormula = &calc.Formula{
	ID: "courses", Title: calc.Text("Courses of a wall"), Expr: "ceil(H/h)",
	Result: courseN, Vars: []calc.Var{courseH, courseh}, Fn: calc.Func2(Courses), Go: "geometry.Courses",
	Source: "en5151",
}

// TopCourse is the height of the last course once cut, u = H − (N − 1) h.
// It is h if the height is a whole number of courses.
//
// Units: any, the same for both. Limits: N as Courses. Source: arithmetic.
func TopCourse(height, courses, course float64) float64 {
	return height - float64((courses-1)*course)
}

// TopCourseFormula declares TopCourse.
var TopCourseFormula = &calc.Formula{
	ID: "top-course", Title: calc.Text("Height of the top course"), Expr: "H - (N - 1)*h",
	Result: calc.Var{Symbol: "u", Meaning: calc.Text("height of the top course"), Unit: "mm", US: "in"},
	Vars: []calc.Var{
		courseH,
		courseN,
		courseh,
	}, Fn: calc.Func3(TopCourse), Go: "geometry.TopCourse", Source: "arithmetic",
}

// CornerRun is the length of the corner blocks of one course along the outside
// of the form, k = c_o (a + b) + c_i (a + b − 2 T).
//
// At an inside corner the outside of the building is the short side of the
// block: each leg is shorter there by the thickness T of the form.
//
// Units: m. Limits: right angles; legs measured on the long side of the block.
// Source: derived.
func CornerRun(outside, inside, long, short, thickness float64) float64 {
	legs := long + short
	return float64(outside*legs) + float64(inside*(legs-2*thickness))
}

// CornerRunFormula declares CornerRun.
var CornerRunFormula = &calc.Formula{
	ID: "corner-run", Title: calc.Text("What corners take in one course"), Expr: "c_o*(a + b) + c_i*(a + b - 2*T)",
	Result: coursek,
	Vars: []calc.Var{
		{Symbol: "c_o", Meaning: calc.Text("outside corners")},
		{Symbol: "c_i", Meaning: calc.Text("inside corners")},
		{Symbol: "a", Meaning: calc.Text("long leg"), Unit: "m", US: "ft"},
		{Symbol: "b", Meaning: calc.Text("short leg"), Unit: "m", US: "ft"},
		{Symbol: "T", Meaning: calc.Text("thickness of the form"), Unit: "m", US: "ft"},
	},
	Fn: calc.Func5(CornerRun), Go: "geometry.CornerRun", Source: "arithmetic",
	Limits: calc.Text("Right-angled corners, lengths along the outside of the form."),
}

// StraightRun is the length left for straight blocks in all courses,
// S = L − N k − O, with L the sum of wall length × courses and O the sum of
// opening width × whole courses.
//
// Units: m. Limits: S ≥ 0. Source: arithmetic.
func StraightRun(laid, courses, corners, openings float64) float64 {
	return laid - float64(courses*corners) - openings
}

// StraightRunFormula declares StraightRun.
var StraightRunFormula = &calc.Formula{
	ID: "straight-run", Title: calc.Text("Length left for straight blocks"), Expr: "L - N*k - O",
	Result: courseS,
	Vars: []calc.Var{
		{Symbol: "L", Meaning: calc.Text("sum of wall length × courses"), Unit: "m", US: "ft"}, courseN, coursek,
		{Symbol: "O", Meaning: calc.Text("sum of opening width × whole courses"), Unit: "m", US: "ft"},
	},
	Fn: calc.Func4(StraightRun), Go: "geometry.StraightRun", Source: "arithmetic",
}

// StraightBlocks is the number of straight blocks to bring, n = ⌈S (1 + w/100) / l⌉.
//
// Units: m, %. Limits: l > 0, w ≥ 0. Source: arithmetic.
func StraightBlocks(run, percent, block float64) float64 {
	return calc.Ceil(WithWaste(run, percent) / block)
}

// StraightBlocksFormula declares StraightBlocks.
var StraightBlocksFormula = &calc.Formula{
	ID: "straights", Title: calc.Text("Straight blocks with waste"), Expr: "ceil(S*(1 + w/100)/l)",
	Result: calc.Var{Symbol: "n", Meaning: calc.Text("straight blocks")},
	Vars: []calc.Var{courseS, {Symbol: "w", Meaning: calc.Text("cut waste"), Unit: "%", US: "%"},
		{Symbol: "l", Meaning: calc.Text("block length"), Unit: "m", US: "ft"}},
	Fn: calc.Func3(StraightBlocks), Go: "geometry.StraightBlocks", Source: "arithmetic",
}

// CornerBlocks is the number of corner blocks of one hand in N courses,
// n = c_1 ⌈N/2⌉ + c_2 ⌊N/2⌋. c_1 counts the corners that have this hand in the
// bottom course, c_2 those that have it in the second.
//
// The long leg changes side with every course, so that the joints are staggered.
// An inside corner is the mirror of an outside corner: it has the other hand in
// the same course.
//
// Units: counts. Limits: N whole. Source: common practice.
func CornerBlocks(first, courses, second float64) float64 {
	return float64(first*math.Ceil(courses/2)) + float64(second*math.Floor(courses/2))
}

// CornerBlocksFormula declares CornerBlocks.
var CornerBlocksFormula = &calc.Formula{
	ID: "corner-blocks", Title: calc.Text("Corner blocks of one hand"), Expr: "c_1*ceil(N/2) + c_2*floor(N/2)",
	Result: calc.Var{Symbol: "n_c", Meaning: calc.Text("corner blocks of this hand")},
	Vars: []calc.Var{{Symbol: "c_1", Meaning: calc.Text("corners with this hand in the bottom course")}, courseN,
		{Symbol: "c_2", Meaning: calc.Text("corners with this hand in the second course")}},
	Fn: calc.Func3(CornerBlocks), Go: "geometry.CornerBlocks", Source: "practice",
}
