package calc

import (
	"strconv"
	"strings"

	"coursebook/calculators/quantity"
)

// Text is one sentence or label: the English stands in the code, other
// languages in words/*.tsv under the same key. {Slots} in braces are filled
// when the text is said. Make every Text with T, so that the translators'
// list can be read off the sources.
type Text struct{ Key, EN string }

// T declares a text. Keys are dotted, lower-case, unique in the project.
func T(key, en string) Text { return Text{Key: key, EN: en} }

// Words holds the translations of one language by key; nil means English.
type Words map[string]string

// Voice is how one reader is spoken to: language, units and decimal mark.
type Voice struct {
	Words Words
	Style quantity.Style
}

// Slot fills one {name} of a text. Exactly one of Text, Said, Show or Count
// is used; quantities are kept in SI until the reader's units are known.
type Slot struct {
	Name string
	Text string         // as it stands
	Said Text           // translated
	SI   float64        // with Show
	Show *quantity.Show // how SI is written
}

// Word fills a slot with text as it stands.
func Word(name, text string) Slot { return Slot{Name: name, Text: text} }

// Said fills a slot with another text, translated.
func Said(name string, t Text) Slot { return Slot{Name: name, Said: t} }

// Amount fills a slot with a quantity, si in SI units.
func Amount(name string, si float64, show quantity.Show) Slot {
	return Slot{Name: name, SI: si, Show: &show}
}

// Count fills a slot with a whole number.
func Count(name string, n int) Slot { return Slot{Name: name, Text: strconv.Itoa(n)} }

// Say fills the slots of t in the reader's language, units and decimal mark.
// A slot that the text does not name is ignored; a name without a slot stays
// visible in its braces, so that a slip is seen rather than hidden.
func (v Voice) Say(t Text, slots ...Slot) string {
	text := t.EN
	if w, ok := v.Words[t.Key]; ok && w != "" {
		text = w
	}
	if len(slots) == 0 || !strings.Contains(text, "{") {
		return text
	}
	var b strings.Builder
	for {
		open := strings.IndexByte(text, '{')
		if open < 0 {
			break
		}
		end := strings.IndexByte(text[open:], '}')
		if end < 0 {
			break
		}
		b.WriteString(text[:open])
		name := text[open+1 : open+end]
		b.WriteString(v.fill(name, slots))
		text = text[open+end+1:]
	}
	b.WriteString(text)
	return b.String()
}

func (v Voice) fill(name string, slots []Slot) string {
	for _, s := range slots {
		if s.Name != name {
			continue
		}
		switch {
		case s.Show != nil:
			return quantity.Format(s.SI, *s.Show, v.Style)
		case s.Said.Key != "":
			return v.Say(s.Said)
		}
		return s.Text
	}
	return "{" + name + "}"
}

// Trouble turns a quantity's refusal into a text with slots.
func trouble(t *quantity.Trouble) (Text, []Slot) {
	slots := make([]Slot, len(t.Slots))
	for i, s := range t.Slots {
		slots[i] = Word(s.Name, s.Value)
	}
	return Text{Key: t.Key, EN: t.EN}, slots
}
