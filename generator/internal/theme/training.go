package theme

import "coursebook/generator/internal/form"

// Lesson is the view of a lesson.
type Lesson struct {
	Procedure
	Reads   []Link
	Courses []LessonCourse
	Ask     string // address of the first question on the page
}

// LessonCourse is a course with the lesson, and the next lesson of that course.
type LessonCourse struct {
	Course Link
	Next   *Link // nil for the last lesson
}

// Course is the view of a course: its lessons and the sign-off sheet.
type Course struct {
	Procedure
	Lessons []LessonLink
	Items   []string // of the sign-off sheet: skills that the learner shows
}

// LessonLink is a lesson in the list of a course.
type LessonLink struct {
	Link
	IDs  []string // of its questions
	Each string   // the address of a question, without its number
}

// Training is the view of the list of courses.
type Training struct {
	Frame
	Courses []CourseItem
}

// CourseItem is one course of the list.
type CourseItem struct {
	Link
	Lessons []LessonLink
}

// Example is a worked example, step by step, of a calculator or in words. The last
// steps may be folded.
type Example struct {
	Title   string
	Worked  *form.Example
	Steps   []form.Step // visible
	Covered []form.Step // folded
	Words   []string    // visible
	Hidden  []string    // folded
	First   int         // number of the first folded step
}

// Question is one practice question.
type Question struct {
	ID      string // key of the reader's answers; empty outside lessons
	Anchor  string // id on the page
	Kind    string // choice, order, number or open
	Ask     string
	Figure  *Figure
	Choices []string // in the order of the printed page
	Ordered bool     // the choices keep that order on the screen
	Right   int      // number of the right choice, from 1
	Order   []string // the steps in their right order
	Mixed   []string // the same steps in another order
	Words   string   // the answer in words
	Number  *Number
	Why     string
	See     *Link
}

// Number is a question of a calculator, with the numbers of the printed page.
type Number struct {
	*form.NumberQuestion
	Calculator, Answer, Tolerance string
	Vary                          string // paths, separated by spaces
	Set                           string // fixed inputs: a JSON list of pairs, path and text
}
