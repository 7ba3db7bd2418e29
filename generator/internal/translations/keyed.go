package translations

import (
	"crypto/sha256"
	"encoding/hex"
	"slices"

	"coursebook/generator/internal/fault"
)

// Keyed holds the English texts of a theme by key.
type Keyed map[string]string

// Hash returns a short hash of an English text. A translation of a theme's text
// contains the hash of the English text it was made from.
func Hash(english string) string {
	sum := sha256.Sum256([]byte(english))
	return hex.EncodeToString(sum[:4])
}

// Parse reads a theme's translations of one language into w, by key. A line holds
// key, hash and text, separated by tabs. An unknown key, a key given twice, a hash
// of another English text, and slots that differ from the English are added to
// faults. A line of another form and an unknown key are left out of w; the others
// are in it all the same.
func (k Keyed) Parse(path string, data []byte, w map[string]string, faults *fault.List) {
	for _, l := range lines(path, data, faults) {
		if len(l.parts) != 3 || l.parts[0] == "" || l.parts[2] == "" {
			l.add("word-line", "a line needs three parts: key, hash, text", "separate them with tabs")
			continue
		}
		key, hash, text := l.parts[0], l.parts[1], l.parts[2]
		english, known := k[key]
		if !known {
			l.add("word-key", "no text has the key "+key, "remove the line, or look for a renamed key")
			continue
		}
		if _, twice := w[key]; twice {
			l.add("word-twice", "the key "+key+" is given twice", "keep one of the lines")
		} else if want := Hash(english); hash != want {
			l.add("word-stale", "the English text of "+key+" has changed",
				"look at “"+english+"”, correct the text and write the hash "+want)
		} else {
			l.checkSlots(english, text)
		}
		w[key] = text
	}
}

// Missing returns the keys without a translation, sorted.
func (k Keyed) Missing(w map[string]string) []string {
	var keys []string
	for key := range k {
		if _, ok := w[key]; !ok {
			keys = append(keys, key)
		}
	}
	slices.Sort(keys)
	return keys
}
