package render

import (
	"strconv"
	"strings"

	"coursebook/generator/internal/form"
	"coursebook/generator/internal/page"
	"coursebook/generator/internal/site"
	"coursebook/generator/internal/theme"
)

// lessonView returns the view of a lesson with its courses and the next lesson of
// each. It returns an error if its body cannot be rendered.
func lessonView(j *Job) (any, error) {
	p := j.page
	base, err := procedure(j)
	if err != nil {
		return nil, err
	}
	v := theme.Lesson{Procedure: base, Reads: links(j, p.Reads)}
	for _, part := range base.Parts {
		if len(part.Questions) > 0 && v.Ask == "" {
			v.Ask = "#" + part.Questions[0].Anchor
		}
	}
	for _, e := range p.Courses {
		at := theme.LessonCourse{Course: link(j, e)}
		for i, l := range e.Page.Lessons {
			if l.Page == p && i+1 < len(e.Page.Lessons) {
				at.Next = neighbour(j, e.Page.Lessons[i+1])
			}
		}
		v.Courses = append(v.Courses, at)
	}
	return v, nil
}

// courseView returns the view of a course: its lessons and what is signed off. It
// returns an error if its body cannot be rendered.
func courseView(j *Job) (any, error) {
	base, err := procedure(j)
	if err != nil {
		return nil, err
	}
	v := theme.Course{Procedure: base, Lessons: lessonLinks(j, j.page)}
	for _, c := range j.page.Checks {
		v.Items = append(v.Items, c.Text)
	}
	return v, nil
}

// lessonLinks returns links to the lessons of a course, with the IDs of their
// questions.
func lessonLinks(j *Job, course *site.Page) []theme.LessonLink {
	var list []theme.LessonLink
	for _, e := range course.Lessons {
		list = append(list, theme.LessonLink{Link: link(j, e), IDs: j.Site.QuestionIDs(e.Page),
			Each: j.Site.Href(j.form, j.at.path, e.Page, "q-")})
	}
	return list
}

// listTraining returns the page of the courses of a language; nil if it has none.
func listTraining(m *Manual, l *site.Language) []*Job {
	if len(l.Courses) == 0 {
		return nil
	}
	return []*Job{{slug: "training", title: m.Themes[l.Code].Text("ui.train")}}
}

// trainingAt returns the address of the page of the courses of a language; zero if
// it has none.
func trainingAt(_ *Job, l *site.Language) address {
	if len(l.Courses) == 0 {
		return address{}
	}
	return address{site.TrainingPath(l.Code), l.Code + ".training"}
}

// trainingView returns the view of the list of courses of a language; the error is
// nil.
func trainingView(j *Job) (any, error) {
	v := theme.Training{Frame: frame(j)}
	for _, e := range j.lang.Courses {
		v.Courses = append(v.Courses, theme.CourseItem{Link: link(j, e), Lessons: lessonLinks(j, e.Page)})
	}
	return v, nil
}

// example returns the example of a block, with its last steps covered. Package
// site reports examples that cannot be computed.
func example(j *Job, place page.Place) *theme.Example {
	e := &theme.Example{Title: place.Title}
	if place.Calculator == "" {
		shown := len(place.Steps) - place.Hide
		e.Words, e.Hidden, e.First = place.Steps[:shown], place.Steps[shown:], shown+1
		return e
	}
	c := j.Site.Calculator(place.Calculator)
	worked, _ := form.NewExample(c, j.Words[j.lang.Code], j.lang.Mark, site.Entries(place.Set))
	shown := len(worked.Steps) - place.Hide
	e.Worked, e.Steps, e.Covered, e.First = worked, worked.Steps[:shown], worked.Steps[shown:], shown+1
	if e.Title == "" {
		e.Title = worked.Title
	}
	return e
}

// questions returns the questions of a block in order; before is the number of
// questions in earlier blocks of the page. It returns the first error of a
// question.
func questions(j *Job, list []page.Question, before int) ([]theme.Question, error) {
	var all []theme.Question
	ids := j.Site.QuestionIDs(j.page)
	for i, q := range list {
		v, err := question(j, q, ids[before+i], before+i+1)
		if err != nil {
			return nil, err
		}
		all = append(all, v)
	}
	return all, nil
}

// question returns the view of one question; nr is its number on the page, from 1.
// Only questions of lessons have the ID, by which a reader's answers are stored.
// It returns an error if the fixed inputs cannot be JSON.
func question(j *Job, q page.Question, id string, nr int) (v theme.Question, err error) {
	p := j.page
	v = theme.Question{Kind: "open", Ask: q.Ask, Ordered: q.Ordered, Order: q.Order, Words: q.Words, Why: q.Why}
	seed := page.QuestionSeed(p.Slug, nr)
	v.Choices, v.Right = q.Arranged(seed)
	if p.Header.Kind == page.Lesson {
		v.ID, v.Anchor = id, "q-"+strconv.Itoa(nr)
		if j.form == site.OneFile {
			v.Anchor = p.Anchor() + "." + v.Anchor
		}
	}
	if q.Picture != "" {
		v.Figure = &theme.Figure{Alt: q.Alt}
		picture(j, v.Figure, q.Picture)
	}
	if e := j.Site.See(p, q); e.Page != nil {
		v.See = neighbour(j, e)
	}
	switch {
	case q.Number != nil:
		v.Kind = "number"
		v.Number, err = number(j, q.Number, seed)
	case len(q.Order) > 0:
		v.Kind, v.Mixed = "order", reordered(q.Order)
	case len(q.Choices) > 0:
		v.Kind = "choice"
	}
	return v, err
}

// number returns a number question with numbers drawn by seed, or by 0 if seed
// gives none. It returns an error if the fixed inputs cannot be JSON.
func number(j *Job, n *page.Number, seed uint64) (*theme.Number, error) {
	d := j.Site.Drill(j.page, n)
	asked, ok := form.NewNumberQuestion(d, j.Words[j.lang.Code], j.lang.Mark, seed)
	if !ok { // rare; package site has checked the first seeds
		asked, _ = form.NewNumberQuestion(d, j.Words[j.lang.Code], j.lang.Mark, 0)
	}
	set, err := entryPairs(d.Set)
	if err != nil {
		return nil, err
	}
	return &theme.Number{NumberQuestion: asked, Calculator: n.Calculator, Answer: n.Answer, Tolerance: d.Tolerance,
		Vary: strings.Join(n.Vary, " "), Set: set}, nil
}

// reordered returns the steps in another order: those at odd indexes first.
func reordered(order []string) []string {
	var first, rest []string
	for i, s := range order {
		if i%2 == 1 {
			first = append(first, s)
		} else {
			rest = append(rest, s)
		}
	}
	return append(first, rest...)
}
