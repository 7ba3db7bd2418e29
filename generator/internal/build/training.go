package build

import (
	"encoding/json"
	"hash/fnv"
	"strconv"
	"strings"

	"coursebook/generator/internal/form"
	"coursebook/generator/internal/page"
	"coursebook/generator/internal/site"
	"coursebook/generator/internal/theme"
)

func (b *builder) lessonView(s spot, p *site.Page) any {
	v := theme.Lesson{Procedure: b.procedureView(s, p), Reads: b.links(s, p.Reads)}
	for _, e := range p.Courses {
		at := theme.Belongs{Course: b.link(s, e)}
		for i, l := range e.Page.Lessons {
			if l.Page == p && i+1 < len(e.Page.Lessons) {
				at.Then = b.neighbour(s, e.Page.Lessons[i+1])
			}
		}
		v.Courses = append(v.Courses, at)
	}
	return v
}

func (b *builder) courseView(s spot, p *site.Page) any {
	v := theme.Course{Procedure: b.procedureView(s, p), Lessons: b.lessonLinks(s, p)}
	for _, c := range p.Checks {
		v.Items = append(v.Items, c.Text)
	}
	return v
}

func (b *builder) lessonLinks(s spot, course *site.Page) []theme.LessonLink {
	var list []theme.LessonLink
	for _, e := range course.Lessons {
		list = append(list, theme.LessonLink{Link: b.link(s, e), IDs: b.site.QuestionIDs(e.Page),
			Each: b.site.Href(s.form, s.path, e.Page, "q-")})
	}
	return list
}

// trainingLeaf lists a language's courses.
func (b *builder) trainingLeaf(f site.Form, l *site.Language) leaf {
	s := spot{lang: l, form: f, path: site.TrainingPath(l.Code), kind: "training", slug: "training"}
	s.twin = func(l *site.Language) string {
		if len(l.Courses) == 0 {
			return ""
		}
		return b.href(s, site.TrainingPath(l.Code), trainingAnchor(l))
	}
	s.title = b.themes[l.Code].Text("ui.train")
	return leaf{spot: s, kind: "training", light: true, view: func() any {
		v := theme.Training{Frame: b.frame(s)}
		for _, e := range l.Courses {
			v.Courses = append(v.Courses, theme.CourseItem{Link: b.link(s, e), Lessons: b.lessonLinks(s, e.Page)})
		}
		return v
	}}
}

// example is a block's example; site has reported one that cannot be worked.
func (b *builder) example(s spot, place page.Place) *theme.Example {
	e := &theme.Example{Title: place.Title}
	if place.Calculator == "" {
		shown := len(place.Steps) - place.Hide
		e.Words, e.Hidden, e.First = place.Steps[:shown], place.Steps[shown:], shown+1
		return e
	}
	worked, _ := form.NewExample(b.site.Calculator(place.Calculator), b.words[s.lang.Code], s.lang.Mark, site.Entries(place.Set))
	shown := len(worked.Steps) - place.Hide
	e.Worked, e.Steps, e.Covered, e.First = worked, worked.Steps[:shown], worked.Steps[shown:], shown+1
	if e.Title == "" {
		e.Title = worked.Title
	}
	return e
}

// questions are a block's questions, of which so many stand before on the page.
func (b *builder) questions(s spot, p *site.Page, list []page.Question, before int) []theme.Question {
	var all []theme.Question
	ids := b.site.QuestionIDs(p)
	for i, q := range list {
		all = append(all, b.ask(s, p, q, ids[before+i], before+i+1))
	}
	return all
}

// ask is one question; its answers are kept where it stands in a lesson.
func (b *builder) ask(s spot, p *site.Page, q page.Question, id string, nr int) theme.Question {
	v := theme.Question{Kind: "open", Ask: q.Ask, Choices: q.Choices, Right: q.Answer + 1, Order: q.Order, Words: q.Words, Why: q.Why}
	if p.Header.Kind == page.Lesson {
		v.ID, v.Anchor = id, "q-"+strconv.Itoa(nr)
		if s.form == site.OneFile {
			v.Anchor = p.Anchor() + "." + v.Anchor
		}
	}
	if q.Picture != "" {
		v.Figure = &theme.Figure{Alt: q.Alt}
		b.picture(s, v.Figure, q.Picture)
	}
	if e := b.site.See(p, q); e.Page != nil {
		v.See = b.neighbour(s, e)
	}
	switch {
	case q.Number != nil:
		v.Kind, v.Number = "number", b.number(s, p, q.Number, seedOf(p.Slug, nr))
	case len(q.Order) > 0:
		v.Kind, v.Mixed = "order", mixed(q.Order)
	case len(q.Choices) > 0:
		v.Kind = "choice"
	}
	return v
}

// seedOf fixes the numbers that a question is printed with.
func seedOf(slug string, nr int) uint64 {
	h := fnv.New64a()
	h.Write([]byte(slug + "." + strconv.Itoa(nr)))
	return h.Sum64()
}

func (b *builder) number(s spot, p *site.Page, n *page.Number, seed uint64) *theme.Number {
	d := b.site.Drill(p, n)
	ask, ok := form.NewAsk(d, b.words[s.lang.Code], s.lang.Mark, seed)
	if !ok { // a rare miss; site has tried the first seeds
		ask, _ = form.NewAsk(d, b.words[s.lang.Code], s.lang.Mark, 0)
	}
	pairs := make([][2]string, len(d.Set))
	for i, e := range d.Set {
		pairs[i] = [2]string{e.Path, e.Text}
	}
	set, err := json.Marshal(pairs)
	if err != nil {
		b.fail(err)
	}
	return &theme.Number{Ask: ask, Calculator: n.Calculator, Answer: n.Answer, Tolerance: d.Tolerance,
		Vary: strings.Join(n.Vary, " "), Set: string(set)}
}

// mixed are steps out of their order: every other one, from the second on.
func mixed(order []string) []string {
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
