package build

import (
	"strings"

	"coursebook/calculators/calc"
	"coursebook/calculators/quantity"
	"coursebook/generator/internal/fault"
	"coursebook/generator/internal/form"
	"coursebook/generator/internal/page"
	"coursebook/generator/internal/site"
)

// placeKey names a form with inputs of an author's.
type placeKey struct{ lang, calculator, inputs string }

// makeForms makes every calculator's form in every language, and those that
// an author has filled in.
func (b *builder) makeForms() {
	b.forms = map[string][]*form.Form{}
	b.placed = map[placeKey]*form.Form{}
	for _, l := range b.site.Languages {
		for _, c := range b.o.Calculators {
			f, notes := form.New(c, b.words[l.Code], l.Mark, nil)
			if len(notes) > 0 {
				b.faults.Add(fault.Fault{Code: "calculator", Text: "the example case of the calculator " + c.ID + " is refused: " + say(notes[0]), Hint: "mend its declaration"})
				continue
			}
			b.forms[l.Code] = append(b.forms[l.Code], f)
		}
	}
	b.untranslated()
	for _, p := range b.site.Pages {
		for _, place := range p.Places {
			if len(place.Set) > 0 {
				b.placeForm(p.Language, place)
			}
		}
	}
}

func say(n calc.Note) string {
	return n.At.String() + ": " + calc.Locale{Style: quantity.Style{}}.Say(n.Text, n.Slots...)
}

// placeForm makes a form with an author's inputs; site has reported those
// that a form would not take.
func (b *builder) placeForm(l *site.Language, place page.Place) {
	c := b.site.Calculator(place.Calculator)
	if c == nil {
		return
	}
	if f, notes := form.New(c, b.words[l.Code], l.Mark, site.Entries(place.Set)); len(notes) == 0 {
		b.placed[keyOf(l.Code, place)] = f
	}
}

func keyOf(lang string, place page.Place) placeKey {
	var set strings.Builder
	for _, in := range place.Set {
		set.WriteString(in.Path + "=" + in.Text + "\n")
	}
	return placeKey{lang, place.Calculator, set.String()}
}

// formOf is the form that a place shows.
func (b *builder) formOf(lang string, place page.Place) *form.Form {
	if len(place.Set) > 0 {
		return b.placed[keyOf(lang, place)]
	}
	for _, f := range b.forms[lang] {
		if f.ID == place.Calculator {
			return f
		}
	}
	return nil
}
