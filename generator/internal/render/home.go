package render

import (
	"coursebook/generator/internal/page"
	"coursebook/generator/internal/site"
	"coursebook/generator/internal/theme"
)

// homeView returns the view of a home page: the stages, each with a page of its own. It
// returns an error if its body cannot be rendered.
func homeView(j *Job) (any, error) {
	p := j.page
	body, err := parts(j)
	if err != nil {
		return nil, err
	}
	v := theme.Home{Frame: frame(j), Heading: p.Header.Title, Parts: body, Courses: links(j, j.lang.Courses)}
	v.Summary = p.Header.Summary
	if len(j.Forms.In(j.lang.Code)) > 0 {
		v.Calculators = j.href(groupsAt(j, j.lang))
	}
	urgent := ""
	if e, ok := j.Site.In(j.lang, urgentSlug); ok {
		urgent = e.Page.Header.Stage
	}
	for i, st := range j.lang.Stages {
		if st.ID == urgent {
			v.Trouble = &v.Frame.Stages[i]
			continue
		}
		v.Days = append(v.Days, v.Frame.Stages[i])
	}
	return v, nil
}

// listStages lists the pages of the stages of a language.
func listStages(_ *Manual, l *site.Language) []*Job {
	var list []*Job
	for _, st := range l.Stages {
		list = append(list, &Job{slug: st.ID, title: st.Title, stage: st})
	}
	return list
}

// stageAt returns the address of the page of a stage in a language.
func stageAt(j *Job, l *site.Language) address { return stageAddress(l.Code, j.slug) }

// stageAddress returns the address of the page of a stage by its ID.
func stageAddress(lang, id string) address {
	return address{site.StagePath(lang, id), lang + ".stage." + id}
}

// stageView returns the view of a stage: all of its pages, with the number of their
// checks. The error is nil.
func stageView(j *Job) (any, error) {
	v := theme.Stage{Frame: frame(j), Hint: j.stage.Hint}
	v.Summary = j.stage.Hint
	for _, e := range j.stage.Pages {
		item := theme.StageItem{Link: link(j, e), Checks: len(e.Page.Checks)}
		if e.Page.Header.Kind == page.Procedure && e.Page.Slug == urgentSlug {
			item.Urgent = true
		}
		// The script keeps the ticks of a page under this name.
		if item.Place = e.Page.Lang + "/" + e.Page.Slug; j.form == site.OneFile {
			item.Place = e.Page.Anchor()
		}
		v.Pages = append(v.Pages, item)
	}
	return v, nil
}

// listGroups returns the page of all calculators of a language; nil if there are none.
func listGroups(m *Manual, l *site.Language) []*Job {
	if len(m.Forms.In(l.Code)) == 0 {
		return nil
	}
	return []*Job{{slug: "calculators", title: m.Themes[l.Code].Text("ui.calculators")}}
}

// groupsAt returns the address of the page of all calculators of a language.
func groupsAt(_ *Job, l *site.Language) address {
	return address{site.CalculatorsPath(l.Code), l.Code + ".calculators"}
}

// groupsView returns the view of all calculators by what they are for; the error is nil.
func groupsView(j *Job) (any, error) {
	v := theme.Calculators{Frame: frame(j)}
	byID := map[string]theme.Link{}
	for _, l := range calculatorLinks(j) {
		byID[l.Slug] = l
	}
	for _, g := range j.lang.Groups {
		group := theme.Group{Letter: g.Title}
		for _, id := range g.Calculators {
			group.Pages = append(group.Pages, byID[id])
		}
		v.Groups = append(v.Groups, group)
	}
	return v, nil
}
