package render

import (
	"strconv"
	"testing"

	"coursebook/generator/internal/theme"
)

// A row has two narrow cards or a wide one; no card is lost, and at most one row has a
// single narrow card.
func TestRows(t *testing.T) {
	for kinds := range 1 << 9 {
		var cards []theme.Card
		for i := range 9 {
			cards = append(cards, theme.Card{Title: strconv.Itoa(i), Wide: kinds>>i&1 == 1})
		}
		found := map[string]bool{}
		halves := 0
		for _, row := range inRows(cards) {
			for _, c := range row {
				found[c.Title] = true
				if c.Wide && len(row) > 1 {
					t.Errorf("%b: a wide card shares its row", kinds)
				}
			}
			if len(row) > 2 {
				t.Errorf("%b: a row of %d", kinds, len(row))
			}
			if len(row) == 1 && !row[0].Wide {
				halves++
			}
		}
		if len(found) != 9 || halves > 1 {
			t.Errorf("%b: %d cards of 9, %d half rows", kinds, len(found), halves)
		}
	}
}
