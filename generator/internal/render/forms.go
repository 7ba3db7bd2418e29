package render

import (
	"strings"

	"coursebook/calculators/calc"
	"coursebook/calculators/quantity"
	"coursebook/generator/internal/fault"
	"coursebook/generator/internal/form"
	"coursebook/generator/internal/page"
	"coursebook/generator/internal/site"
)

// Forms are the calculators' forms in every language.
type Forms struct {
	byLang map[string][]*form.Form // with the inputs of the examples, in the calculators' order
	placed map[placeKey]*form.Form // with the inputs of an author
}

// placeKey identifies a form with the inputs of an author.
type placeKey struct{ lang, calculator, inputs string }

// NewForms returns the form of every calculator in every language, and the forms
// with the inputs of authors. It adds a fault for each refused example, and leaves
// its form out. It leaves out refused inputs of authors too, which package site
// reports.
func NewForms(s *site.Site, words map[string]calc.Translations, faults *fault.List) *Forms {
	forms := &Forms{map[string][]*form.Form{}, map[placeKey]*form.Form{}}
	for _, l := range s.Languages {
		for _, c := range s.Calculators {
			f, notes := form.New(c, words[l.Code], l.Mark, nil)
			if len(notes) > 0 && c.LacksRule() { // reported with the house rules
				continue
			}
			if len(notes) > 0 {
				faults.Add(fault.Fault{Code: "calculator",
					Text: "the example case of the calculator " + c.ID + " is refused: " + noteText(notes[0]),
					Hint: "mend its declaration"})
				continue
			}
			forms.byLang[l.Code] = append(forms.byLang[l.Code], f)
		}
	}
	for _, p := range s.Pages {
		l := p.Language
		for _, place := range p.Places {
			c := s.Calculator(place.Calculator)
			if len(place.Set) == 0 || c == nil {
				continue
			}
			if f, notes := form.New(c, words[l.Code], l.Mark, site.Entries(place.Set)); len(notes) == 0 {
				forms.placed[keyOf(l.Code, place)] = f
			}
		}
	}
	return forms
}

// noteText returns the path of a note and its English text.
func noteText(n calc.Note) string {
	return n.At.String() + ": " + calc.Locale{Style: quantity.Style{}}.Say(n.Text, n.Slots...)
}

// keyOf returns the key of the form of a place with inputs.
func keyOf(lang string, place page.Place) placeKey {
	var set strings.Builder
	for _, in := range place.Set {
		set.WriteString(in.Path + "=" + in.Text + "\n")
	}
	return placeKey{lang, place.Calculator, set.String()}
}

// In returns the forms of a language, in the calculators' order; nil for an
// unknown language.
func (f *Forms) In(lang string) []*form.Form { return f.byLang[lang] }

// at returns the form of a place, with the author's inputs if it has any; nil if
// there is none.
func (f *Forms) at(lang string, place page.Place) *form.Form {
	if len(place.Set) > 0 {
		return f.placed[keyOf(lang, place)]
	}
	for _, example := range f.byLang[lang] {
		if example.ID == place.Calculator {
			return example
		}
	}
	return nil
}
