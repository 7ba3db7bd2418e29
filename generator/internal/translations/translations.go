// Package translations reads the translations of what the code shows.
//
// The texts of the calculators are found in their Go sources; a translation is
// found by its English text, so that an edit of the English is noticed. The
// texts of a theme have keys of their own; their translations carry the hash of
// the English text they were made from.
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

// lines splits a file into its lines, without empty ones and comments, which
// begin with # and a space: a text may begin with #, as “#4 bar” does.
func lines(path string, data []byte, faults *fault.List) []line {
	var list []line
	for i, text := range strings.Split(strings.TrimSuffix(string(data), "\n"), "\n") {
		text = strings.TrimSuffix(text, "\r")
		if text == "" || text == "#" || strings.HasPrefix(text, "# ") {
			continue
		}
		list = append(list, line{strings.Split(text, "\t"), func(code, message, hint string) {
			faults.Add(
				fault.Fault{File: path, Line: i + 1, Col: 1, Source: text, Code: code, Text: message, Hint: hint},
			)
		}})
	}
	return list
}

// checkSlots reports a translation whose slots differ from those of its
// English text.
func (l line) checkSlots(english, text string) {
	if want := slotsOf(english); !slices.Equal(want, slotsOf(text)) {
		l.add("word-slots", "the slots differ from the English text", "use exactly these: "+strings.Join(want, " "))
	}
}

// slotsOf lists the {slots} of a text, sorted, each once.
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
