package theme

import (
	"html/template"
	"io/fs"
	"maps"
	"os"
	"slices"
	"testing"

	"coursebook/calculators/calc"
	"coursebook/generator/internal/form"
)

// hostile is a text that no template may write as markup.
const hostile = `<script>alert(1)</script>"'><img src=x onerror=alert(2)>`

func plumb() fs.FS { return os.DirFS("../../../themes/plumb") }

func load(t *testing.T, other map[string]map[string]string) *Theme {
	t.Helper()
	th, err := Load(plumb(), other, slices.Collect(maps.Keys(samples())))
	if err != nil {
		t.Fatal(err)
	}
	return th
}

func sampleFrame(kind string) Frame {
	return Frame{
		Emergency: "911", Settings: "settings.html",
		Lang: "en", Name: "Invented manual " + hostile, Revised: "2026-05-14", Kind: kind, Root: "../",
		Home: "../index.html", All: "all.html", Blowout: "blow-out.html",
		Cautions: "cautions.html", Crew: []Role{{"foreman", "Foreman"}}, Policy: "default-src 'none'",
		PageID: "0123456789abcdef",
		Assets: Assets{
			Style:       "a.css",
			Lists:       "l.css",
			Deferred:    "b.css",
			Script:      "a.js",
			Icon:        "i.svg",
			AppManifest: "app.webmanifest",
		},
		Title: "Title " + hostile, Summary: hostile, Slug: "sample", Self: "en/sample.html",
		Languages: []Language{
			{Code: "en", Name: "English", Current: true},
			{Code: "es", Name: "Español", Href: "../es/index.html"},
		},
		Stages: []StageLink{
			{"before", "Before", hostile, "stage/before.html", true},
			{"after", "After", "", "stage/after.html", false},
		},
	}
}

func sampleForm() *form.Form {
	number := form.Field{Path: "height", Label: "Height", Help: hostile, Type: "number", Asked: true,
		Text: form.Both{
			US:     `8' 0"`,
			Metric: "2.438 m",
		}, Unit: form.Both{US: "ft", Metric: "m"}, Range: form.Both{US: "1 ft to 9 ft", Metric: "0.3 m to 2.7 m"}}
	choice := form.Field{
		Path:    "kind",
		Label:   "Kind",
		Type:    "choice",
		Asked:   true,
		Options: []form.Option{{ID: "a", Label: "A", Chosen: true}, {ID: "b", Label: "B"}},
	}
	long := choice
	long.Path, long.Options = "many", append(
		append(choice.Options, choice.Options...),
		form.Option{ID: "c", Label: "C"},
	)
	rows := form.Field{
		Path:    "walls",
		Label:   "Walls",
		Type:    "rows",
		Asked:   true,
		MaxRows: 9,
		Cols:    []form.Field{number, choice},
	}
	cell := number
	cell.Path = "walls.1.height"
	rows.Rows = [][]form.Field{{cell}}
	return &form.Form{
		ID: "sample", Title: "Sample", Purpose: hostile,
		Fields: []form.Field{number, choice, long, rows,
			{Path: "flag", Label: "Flag", Type: "flag", Asked: true, Text: form.Both{US: "yes", Metric: "yes"}},
			{
				Path:     "day",
				Label:    "Day",
				Type:     "day",
				Optional: true,
			}, {Path: "words", Label: "Name", Type: "words", Asked: true}},
		Outputs: []form.Output{
			{Path: "volume", Label: "Volume", Shown: form.Both{US: "1 yd³", Metric: "0.8 m³"}, Lead: true},
			{Path: "rest", Label: "Rest"},
		},
		Lists: []form.List{
			{
				Path:  "list",
				Label: "List",
				Heads: []string{"H"},
				Cols:  []string{"h"}, Numbers: []bool{true},
				Rows: [][]form.Both{{{US: "1", Metric: "1"}}},
			},
		},
		Notes: []form.Note{
			{Level: "ask", Text: form.Both{US: hostile, Metric: hostile}},
			{Level: "warning", Text: form.Both{US: "us", Metric: "si"}},
		},
		Cautions: []form.Note{
			{Level: "danger", Text: form.Both{US: "us", Metric: "us"}},
			{Level: "notice", Text: form.Both{US: "us", Metric: "us"}},
		},
		Tables: []form.Table{{ID: "t", Title: "T", Down: "D", Across: "A", Out: "O", HasHoles: true, Note: "N",
			US: form.Grid{
				Heads: []string{"1"},
				Sides: []string{"2"},
				Cells: [][]string{{"3"}},
			}, Metric: form.Grid{Sides: []string{"4"}, Cells: [][]string{{"5"}}}}},
		Steps: []calc.Worked{
			{Title: "S", Of: "O", Plain: "a = b", Substituted: "1", Result: "1", Where: []string{"b = 1"}},
		},
		Formulas: []form.Formula{
			{
				ID:     "f",
				Title:  "F",
				MathML: "<math><mi>a</mi></math>",
				Plain:  "a = b",
				Limits: hostile,
				Where:  []form.Symbol{{Symbol: "a", Meaning: hostile, Units: "ft"}},
			},
		},
		Sources: []form.Source{{ID: "s", Work: hostile, Where: hostile,
			Status: "from memory", Link: "https://example.org/"}},
	}
}

func sampleParts() []Part {
	return []Part{
		{HTML: template.HTML("<p>Text</p>")},
		{
			Closed: &Closed{
				ID:      "sample",
				Title:   hostile,
				Purpose: hostile,
				Href:    "calc/sample.html",
				Address: hostile,
				Answer:  &sampleForm().Outputs[0],
				Set:     hostile,
			},
			Key: "p1",
		},
		{
			Closed: &Closed{
				ID:      "sample",
				Title:   "T",
				Purpose: "P",
				Href:    "calc/sample.html",
				Address: "en/calc/sample.html",
			},
			Key: "p8",
		},
		{Table: &sampleForm().Tables[0], FormHref: "calc/sample.html", Key: "p2"},
		{Figure: &Figure{Src: "a.svg", Width: 3, Height: 2, Alt: hostile, Caption: hostile}, Key: "p3"},
		{
			Questions: []Question{
				{Ask: hostile, Choices: []string{"A", "B"}, Right: 2, Why: "W"},
				{Ask: "Q", Words: "text"},
			},
			Key: "p4",
		},
		{Questions: []Question{
			{
				ID:      hostile,
				Anchor:  "q-1",
				Kind:    "choice",
				Ask:     hostile,
				Choices: []string{hostile, "B"},
				Right:   1,
				Words:   hostile,
				Why:     hostile,
				See:     &Link{Title: hostile, Href: "x.html"},
				Figure:  &Figure{Src: "a.svg", Alt: hostile},
			},
			{
				ID:     "a.2.b",
				Anchor: "q-2",
				Kind:   "order",
				Ask:    "Q",
				Order:  []string{hostile, "B"},
				Mixed:  []string{"B", hostile},
			},
			{
				ID:     "a.3.b",
				Anchor: "q-3",
				Kind:   "number",
				Ask:    "Q",
				Number: &Number{
					Calculator: "sample",
					Answer:     "volume",
					Tolerance:  hostile,
					Vary:       "height",
					Set:        hostile,
					NumberQuestion: &form.NumberQuestion{
						Given: sampleGiven(),
						Asked: form.Output{Label: hostile, Shown: form.Both{US: "1 yd³", Metric: "0.8 m³"}},
						Unit:  form.Both{US: "ft", Metric: "m"},
						Steps: sampleSteps(),
					},
				},
			}}, Key: "p5"},
		{Example: &Example{Title: hostile, Words: []string{hostile}, Hidden: []string{hostile}, First: 2}, Key: "p6"},
		{
			Example: &Example{
				Title:   "T",
				Worked:  &form.Example{Given: sampleGiven()},
				Steps:   sampleSteps(),
				Covered: sampleSteps(),
				First:   2,
			},
			Key: "p7",
		},
	}
}

func sampleGiven() []form.Given {
	return []form.Given{{Label: hostile, Text: form.Both{US: hostile, Metric: "1 m"}, Varies: true}}
}

func sampleSteps() []form.Step {
	both := form.Both{US: hostile, Metric: hostile}
	return []form.Step{
		{Title: hostile, Of: both, Plain: both, Substituted: both, Result: both, Where: []form.Both{both}},
	}
}

// samples is one view for every template that makes a page or an article.
func samples() map[string]any {
	link := Link{Title: hostile, Summary: hostile, Href: "x.html", Time: "1 h", Roles: []string{"foreman"}, Lang: "es"}
	return map[string]any{
		"procedure": Procedure{
			Frame: sampleFrame("procedure"),
			Marks: []Mark{{"#steps", hostile}},
			Roles: []string{hostile},
			When:  hostile,
			Time:  "1 h",
			Gear: []string{
				hostile,
			},
			Sources: []string{hostile},
			Parts:   sampleParts(),
			Next:    []Link{link},
			Before:  &link,
			After:   &link,
		},
		"home": Home{Frame: sampleFrame("home"), Heading: hostile, Parts: sampleParts(), Courses: []Link{link},
			Calculators: "calc/index.html", Trouble: &StageLink{Title: hostile, Href: "stage/after.html"},
			Days: []StageLink{{Title: hostile, Href: "stage/before.html"}}},
		"stage": Stage{Frame: sampleFrame("stage"), Hint: hostile,
			Pages: []StageItem{{Link: link, Urgent: true, Checks: 3, Place: "en/sample"}, {Link: link}}},
		"calculators": Calculators{Frame: sampleFrame("calculators"),
			Groups: []Group{{hostile, []Link{link}}, {"", []Link{link}}}},
		"settings": Settings{sampleFrame("settings")},
		"calculator": Calculator{
			Frame:   sampleFrame("calculator"),
			Form:    sampleForm(),
			Listing: "s.html",
			UsedIn:  []Link{link},
		},
		"listing": Listing{
			Frame: sampleFrame("listing"),
			Form:  sampleForm(),
			Back:  link,
			Items: []ListingItem{{"F", "a.go", 3, "<pre>x</pre>"}},
		},
		"all": All{
			Frame:       sampleFrame("all"),
			Groups:      []Group{{"A", []Link{link}}},
			Calculators: []Link{link},
			Paper:       []Link{link},
		},
		"paper": Paper{Frame: sampleFrame("book"),
			Sheets: []Sheet{{Rows: [][]Card{{
				{
					Title:   hostile,
					Lang:    "es",
					Part:    1,
					Of:      2,
					Wide:    true,
					When:    "Now",
					Caution: &Signal{"danger", hostile, "Text"},
					Checks:  []template.HTML{"<strong>One.</strong> Two"},
					Revised: hostile,
					Address: hostile,
				},
				{Title: hostile, Checks: []template.HTML{"One"}, Address: "en/sample.html"}}}}},
			Posters: []Poster{
				{
					Title:   hostile,
					Lang:    "es",
					Caution: &Signal{"notice", hostile, "Text"},
					Steps:   []PosterStep{{"One", false}, {"Two", true}},
					More:    2,
					Revised: hostile,
					Address: hostile,
					Code:    Code{Side: 41, Width: 62, Path: "M4 4h7v1h-7z"},
				},
				{Title: hostile, Steps: []PosterStep{{"One", false}}}}},
		"lesson": Lesson{
			Procedure: Procedure{Frame: sampleFrame("lesson"), Parts: sampleParts(), Sources: []string{hostile}},
			Reads:     []Link{link},
			Courses:   []LessonCourse{{Course: link, Next: &link}, {Course: link}},
		},
		"course": Course{
			Procedure: Procedure{Frame: sampleFrame("course"), Parts: sampleParts()},
			Items:     []string{hostile},
			Lessons:   []LessonLink{{Link: link, IDs: []string{hostile, "b"}, Each: "x.html#q-"}},
		},
		"training": Training{
			Frame:   sampleFrame("training"),
			Courses: []CourseItem{{link, []LessonLink{{Link: link, IDs: []string{"a"}, Each: "x.html#q-"}}}},
		},
		"missing":  Missing{Frame: sampleFrame("missing")},
		"all-body": All{Frame: pocketFrame(), Groups: []Group{{"A", []Link{link}}}},
		"pocket": Pocket{
			Frame:    pocketFrame(),
			Articles: []Article{{ID: "en.a", Lang: "en", Title: hostile, Body: "<p>x</p>"}},
			Style:    "p{margin:0}",
			Script:   "let a=1",
			Data:     []Data{{"module", "QUJD+/="}},
		},
	}
}

func pocketFrame() Frame {
	f := sampleFrame("all")
	f.Pocket = true
	f.Assets.Icon = "data:image/svg+xml;base64,AAAA"
	return f
}
