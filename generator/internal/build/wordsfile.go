package build

import (
	"slices"
	"strings"

	"coursebook/calculators/calc"
	"coursebook/generator/internal/words"
)

// wordsFile lists the translations of the calculators' texts by key, sorted:
// key, tab, text, a line each.
func wordsFile(own calc.Words, texts words.Texts) []byte {
	var keys []string
	for key := range own {
		if _, ok := texts[key]; ok {
			keys = append(keys, key)
		}
	}
	slices.Sort(keys)
	var out strings.Builder
	for _, key := range keys {
		out.WriteString(key + "\t" + own[key] + "\n")
	}
	return []byte(out.String())
}
