package calc

import (
	"strconv"
	"strings"

	"coursebook/calculators/quantity"
)

// Text is one sentence or label, written as its English text. {Slots} in
// braces are filled when the text is shown. Translations are found by the hash
// of the whole literal. Where one English text needs two translations, a mark
// after | distinguishes the two and is not shown: "How many|feminine".
//
// It is a string, and written as a conversion of a literal, so that the
// hundreds of texts are data in the module and not code. The list for
// translators is generated from the same literals.
type Text string

// Key returns the hash by which a text is found in the translations: FNV-1a, 64
// bits, of the whole literal with its mark. Package hash/fnv computes the same; it
// is not used here to keep the WebAssembly module small.
func (t Text) Key() uint64 {
	h := uint64(14695981039346656037)
	for i := 0; i < len(t); i++ {
		h = (h ^ uint64(t[i])) * 1099511628211
	}
	return h
}

// EN is the English text, without the mark.
func (t Text) EN() string {
	en, _, _ := strings.Cut(string(t), "|")
	return en
}

// Translations holds the translated texts of one language by Key; nil means
// English.
type Translations map[uint64]string

// Locale is a reader's language, units and decimal mark.
type Locale struct {
	Words Translations
	Style quantity.Style
}

// Slot fills one {name} of a text. A quantity is in SI and is
// written in the reader's units.
type Slot struct{ *filling }

// filling is the content of a slot: exactly one of text, translated and display is
// set. It is behind a pointer because slots are passed in hundreds of places,
// and each further word of an argument adds code to the module.
type filling struct {
	name       string
	text       string            // unchanged
	translated Text              // translated
	si         float64           // with display
	display    *quantity.Display // how si is written
}

// WordSlot fills a slot with text unchanged.
func WordSlot(name, text string) Slot { return Slot{&filling{name: name, text: text}} }

// TextSlot fills a slot with another text, translated.
func TextSlot(name string, t Text) Slot { return Slot{&filling{name: name, translated: t}} }

// Amount fills a slot with a quantity, si in SI units.
func Amount(name string, si float64, display *quantity.Display) Slot {
	return Slot{&filling{name: name, si: si, display: display}}
}

// SI is the quantity an Amount fills in, for tests; 0 for other slots.
func (s Slot) SI() float64 { return s.si }

// Count fills a slot with a whole number.
func Count(name string, n int) Slot { return WordSlot(name, strconv.Itoa(n)) }

// Say returns t translated, with its slots filled in the reader's units and
// decimal mark. A text without a translation is in English. A slot that the text
// does not name is ignored. A name without a slot remains in its braces.
func (v Locale) Say(t Text, slots ...Slot) string {
	text := t.EN()
	if v.Words != nil {
		if w := v.Words[t.Key()]; w != "" {
			text = w
		}
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

// fill returns the text of the slot with this name, or the name in braces if there
// is none.
func (v Locale) fill(name string, slots []Slot) string {
	for _, s := range slots {
		if s.name != name {
			continue
		}
		switch {
		case s.display != nil:
			return quantity.Format(s.si, *s.display, v.Style)
		case s.translated != "":
			return v.Say(s.translated)
		}
		return s.text
	}
	return "{" + name + "}"
}

// parseErrorText converts a parse error to a text with its slots.
func parseErrorText(t *quantity.ParseError) (Text, []Slot) {
	slots := make([]Slot, len(t.Slots))
	for i, s := range t.Slots {
		slots[i] = WordSlot(s.Name, s.Value)
	}
	return Text(t.EN), slots
}
