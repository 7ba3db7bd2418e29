package theme

import "coursebook/generator/internal/form"

// Lesson shows a page of the training.
type Lesson struct {
	Procedure
	Reads   []Link
	Courses []Belongs
}

// Belongs is a course with the lesson, and the lesson after it in that course.
type Belongs struct {
	Course Link
	Then   *Link
}

// Course shows a course: its lessons, and the sheet to be signed.
type Course struct {
	Procedure
	Lessons []LessonLink
	Items   []string // what the hand shows on the wall
}

// LessonLink is a lesson as courses list it.
type LessonLink struct {
	Link
	IDs  []string // of its questions
	Each string   // the address of a question, without its number
}

// Training lists the courses, with what the reader has done of them.
type Training struct {
	Frame
	Courses []CourseItem
}

// CourseItem is one course of the list.
type CourseItem struct {
	Link
	Lessons []LessonLink
}

// Example shows how something is worked out, step by step; the last steps may
// be covered. It is a calculator's, or in words.
type Example struct {
	Title   string
	Worked  *form.Example
	Steps   []form.Step // in sight
	Covered []form.Step
	Words   []string // in sight
	Hidden  []string // covered
	First   int      // number of the first covered step
}

// Question shows one practice question.
type Question struct {
	ID      string // what the reader's answers are kept by; empty off lessons
	Anchor  string // id on the page
	Kind    string // choice, order, number or open
	Ask     string
	Figure  *Figure
	Choices []string
	Right   int      // number of the right choice, from 1
	Order   []string // the steps in their right order
	Mixed   []string // the same steps out of it
	Words   string   // the answer in words
	Number  *Number
	Why     string
	See     *Link
}

// Number is a question with fresh numbers, with those it is printed with.
type Number struct {
	*form.Ask
	Calculator, Answer, Tolerance string
	Vary                          string // paths, parted by spaces
	Set                           string // fixed inputs: a JSON list of pairs, path and text
}
