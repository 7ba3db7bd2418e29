package site

import (
	"cmp"
	"fmt"
	"slices"

	"coursebook/generator/internal/fault"
	"coursebook/generator/internal/page"
)

// Recommended sizes of courses and lessons. Others are warnings.
const (
	fewLessons, manyLessons     = 3, 10
	fewQuestions, manyQuestions = 3, 5
	manyReads                   = 2
	manySignOff                 = 12
)

// training resolves the lessons and pages that courses and lessons name, and adds
// a fault for each mistake in them, such as a lesson that no course has.
func (a *assembler) training() {
	for _, p := range a.site.Pages {
		switch p.Header.Kind {
		case page.Course:
			a.course(p)
		case page.Lesson:
			p.Reads = a.named(p, "reads", p.Header.Reads)
			a.lesson(p)
		}
		a.misplaced(p)
	}
	for i, l := range a.site.Languages {
		a.coursesOf(l, i == 0)
	}
	for _, p := range a.site.Pages {
		if p.Header.Kind == page.Lesson && len(p.Courses) == 0 {
			a.atKey(fault.Warning, p, "kind", "lesson-lost", "name it among the lessons of a course",
				"no course has this lesson")
		}
	}
}

// coursesOf sets the courses of a language, in the order of the roles; isDefault
// means that l is the default language.
func (a *assembler) coursesOf(l *Language, isDefault bool) {
	roles := a.roleIDs()
	rank := func(e Entry) int { return slices.Index(roles, role(e.Page)) }
	for _, e := range a.entries(l, isDefault) {
		if e.Page.Header.Kind == page.Course {
			l.Courses = append(l.Courses, e)
		}
	}
	slices.SortStableFunc(l.Courses, func(x, y Entry) int {
		return cmp.Or(cmp.Compare(rank(x), rank(y)), cmp.Compare(x.Page.Header.Order, y.Page.Header.Order),
			cmp.Compare(x.Page.Slug, y.Page.Slug))
	})
}

// role returns the first role of a course; "" if its header has none, which is a
// fault.
func role(p *Page) string {
	if len(p.Header.Roles) == 0 {
		return ""
	}
	return p.Header.Roles[0]
}

// named returns the pages that the key name of the header lists as slugs. It adds
// an error for each that does not exist, is the page itself or, for lessons, is no
// lesson, and leaves it out.
func (a *assembler) named(p *Page, name string, slugs []string) (list []Entry) {
	for _, slug := range slugs {
		e, ok := a.site.In(p.Language, slug)
		switch {
		case !ok:
			a.atKey(fault.Error, p, name, name+"-unknown",
				a.guess(slug, func() []string { return a.slugs(p.Language) }, "name a page's file without .md"),
				"no page %q", slug)
		case e.Page == p:
			a.atKey(fault.Error, p, name, name+"-self", "remove it", "page names itself")
		case name == "lessons" && e.Page.Header.Kind != page.Lesson:
			a.atKey(fault.Error, p, name, "lessons-kind", "give it kind: lesson, or name another page",
				"%s is no lesson but a %s page", e.Page.File, e.Page.Header.Kind)
		default:
			list = append(list, e)
		}
	}
	return list
}

// course sets the lessons of a course and adds a fault for a wrong number of
// roles, lessons or checks to sign off.
func (a *assembler) course(p *Page) {
	if len(p.Header.Roles) != 1 {
		a.atKey(fault.Error, p, "roles", "course-role", "name the one role whose course it is: roles: [id]",
			"course is for %d roles, not one", len(p.Header.Roles))
	}
	p.Lessons = a.named(p, "lessons", p.Header.Lessons)
	for _, e := range p.Lessons {
		if !e.Fallback {
			e.Page.Courses = append(e.Page.Courses, Entry{Page: p})
		}
	}
	if n := len(p.Header.Lessons); n < fewLessons || n > manyLessons {
		a.atKey(fault.Warning, p, "lessons", "course-length",
			fmt.Sprintf("name %d to %d lessons", fewLessons, manyLessons),
			"lessons in the course: %d, outside %d to %d", n, fewLessons, manyLessons)
	}
	switch n := len(p.Checks); {
	case n == 0:
		a.atKey(fault.Error, p, "title", "course-sign-off",
			"list under ## Sign-off what the hand shows on the wall: - [ ] …", "course has no list to sign off")
	case n > manySignOff:
		a.at(fault.Warning, p.File, p.Checks[manySignOff].Line, 0, "course-sign-off",
			"keep what matters most, so that the sheet fits one page", "course has %d lines to sign off, more than %d",
			n, manySignOff)
	}
}

// lesson adds a warning for a wrong number of pages to read or questions, and for
// a missing worked or half-worked example.
func (a *assembler) lesson(p *Page) {
	if n := len(p.Header.Reads); n < 1 || n > manyReads {
		a.atKey(fault.Warning, p, "reads", "lesson-reads", "name one or two pages to read first: reads: [slug]",
			"pages to read first: %d, outside 1 to %d", n, manyReads)
	}
	if n := len(p.Questions()); n < fewQuestions || n > manyQuestions {
		a.at(fault.Warning, p.File, lineOf(p, page.Questions), 0, "lesson-questions", "ask three to five questions",
			"questions in the lesson: %d, outside %d to %d", n, fewQuestions, manyQuestions)
	}
	worked, half := false, false
	for _, pl := range p.Places {
		worked = worked || pl.Kind == page.Example && pl.Hide == 0
		half = half || pl.Kind == page.Example && pl.Hide > 0
	}
	if !worked {
		a.at(fault.Warning, p.File, lineOf(p, page.Example), 0, "lesson-worked", "add a block example without hide",
			"lesson has no worked example")
	}
	if !half {
		a.at(fault.Warning, p.File, lineOf(p, page.Example), 0, "lesson-half", "add a block example with hide: 2",
			"lesson has no half-worked example")
	}
}

// lineOf returns the line of a page's first block of a kind; 0 if it has none.
func lineOf(p *Page, kind page.PlaceKind) int {
	for _, pl := range p.Places {
		if pl.Kind == kind {
			return pl.Line
		}
	}
	return 0
}

// misplaced adds an error for each header key that the kind of page must not have.
func (a *assembler) misplaced(p *Page) {
	kind := p.Header.Kind
	for _, k := range []struct {
		name string
		of   page.Kind
	}{{"lessons", page.Course}, {"reads", page.Lesson}} {
		if p.Header.Lines[k.name] > 0 && kind != k.of {
			a.atKey(fault.Error, p, k.name, "key-kind", "remove it, or write kind: "+string(k.of),
				"a %s page has no %s", kind, k.name)
		}
	}
	if p.Header.Stage != "" && (kind == page.Course || kind == page.Lesson) {
		a.atKey(fault.Error, p, "stage", "key-kind", "remove it: the page of the training lists it",
			"a %s stands on no stage", kind)
	}
}
