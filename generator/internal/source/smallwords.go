package source

import (
	"fmt"
	"strings"

	"coursebook/generator/internal/fault"
)

// SmallWord is a word that says little about what a reader wants, with its weight in
// tenths of that of other words, 0 to 9.
type SmallWord struct {
	Word  string
	Tenth int
}

// ParseSmallWords parses a list of small words, by language. Each line has the code
// of a language and a colon, a weight in tenths, and words with spaces between them;
// the three are separated by tabs. Empty lines and lines that start with # are
// ignored. A bad line and a repeated word add a fault.
func ParseSmallWords(path string, data []byte, faults *fault.List) map[string][]SmallWord {
	p := wordsParser{path: path, faults: faults, seen: map[string]seenWord{}}
	all := map[string][]SmallWord{}
	for i, line := range strings.Split(string(data), "\n") {
		p.number, p.line = i+1, line
		if t := strings.TrimSpace(line); t == "" || strings.HasPrefix(t, "#") {
			continue
		}
		lang, cells, ok := p.cells()
		if !ok {
			continue
		}
		if len(cells) != 2 || len(cells[0].text) != 1 || cells[0].text[0] < '0' || cells[0].text[0] > '9' {
			p.add(fault.Error, 1, "small-words", "a line needs a language, a weight from 0 to 9 and words",
				"separate the three by tabs and the words by spaces")
			continue
		}
		for _, w := range strings.Fields(cells[1].text) {
			id := lang + "\t" + w
			if first, ok := p.seen[id]; ok {
				p.add(fault.Error, cells[1].col, "repeated",
					fmt.Sprintf("%q stands on line %d too", clip(w), first.line), "remove one")
				continue
			}
			p.seen[id] = seenWord{line: p.number}
			all[lang] = append(all[lang], SmallWord{w, int(cells[0].text[0] - '0')})
		}
	}
	return all
}
