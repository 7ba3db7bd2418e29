// Package translations reads the translations of the texts of calculators and
// themes.
//
// The texts of the calculators are extracted from their Go sources. The English
// text is the key of a translation, so that a translation whose English text has
// changed is reported. The texts of a theme have separate keys; each translation
// contains the hash of the English text it was made from.
package translations

import (
	"slices"
	"strings"

	"coursebook/generator/internal/fault"
)

// line is one line of a file of translations, split at its tabs.
type line struct {
	parts []string
	add   func(code, text, hint string) // reports a fault of this line
}

// lines returns the lines of a file that are not empty and no comments, split at
// their tabs. A comment begins with # and a space; a text may begin with # alone,
// such as “#4 bar”. The add of each line adds a fault of it to faults.
func lines(path string, data []byte, faults *fault.List) []line {
	var list []line
	for i, text := range strings.Split(strings.TrimSuffix(string(data), "\n"), "\n") {
		text = strings.TrimSuffix(text, "\r")
		if text == "" || text == "#" || strings.HasPrefix(text, "# ") {
			continue
		}
		list = append(list, line{strings.Split(text, "\t"), func(code, message, hint string) {
			faults.Add(fault.Fault{File: path, Line: i + 1, Col: 1, Source: text,
				Code: code, Text: message, Hint: hint})
		}})
	}
	return list
}

// checkSlots adds a fault to the line if the slots of its translation differ from
// those of the English text.
func (l line) checkSlots(english, text string) {
	if want := slotsOf(english); !slices.Equal(want, slotsOf(text)) {
		l.add("word-slots", "the slots differ from the English text", "use exactly these: "+strings.Join(want, " "))
	}
}

// slotsOf returns the {slots} of a text with their braces, sorted, without
// duplicates; nil if there are none.
func slotsOf(text string) []string {
	var slots []string
	for {
		open := strings.IndexByte(text, '{')
		if open < 0 {
			break
		}
		end := strings.IndexByte(text[open:], '}')
		if end < 0 {
			break
		}
		slots = append(slots, text[open:open+end+1])
		text = text[open+end+1:]
	}
	slices.Sort(slots)
	return slices.Compact(slots)
}
