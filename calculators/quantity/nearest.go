package quantity

import "strings"

// offeredUnits is how many units a parse error lists.
const offeredUnits = 8

// offered returns the symbols of the first offeredUnits units of a dimension,
// separated by commas.
func offered(d Dimension) string {
	var names []string
	for _, u := range Units(d) {
		if len(names) < offeredUnits {
			names = append(names, u.Symbol)
		}
	}
	return strings.Join(names, ", ")
}

// nearest returns the unit of a dimension with the least edit distance to the
// typed one: at most 1, or 2 for a typed unit of five letters or more. Case is
// ignored. ok is false if there is none; a unit that shares no letter with the
// typed one is not a match.
func nearest(typed string, d Dimension) (best Unit, ok bool) {
	word := []rune(strings.ToLower(fold(typed)))
	least := 2
	if len(word) > 4 {
		least = 3
	}
	for _, u := range Units(d) {
		for _, name := range append([]string{fold(u.Symbol)}, u.Aliases...) {
			letters := []rune(strings.ToLower(name))
			n := edits(word, letters)
			if n < least && n < len(letters) && n < len(word) {
				best, least, ok = u, n, true
			}
		}
	}
	return best, ok
}

// edits counts the letters inserted, deleted, replaced or swapped with their
// neighbour between two words (optimal string alignment distance).
func edits(a, b []rune) int {
	var before, last []int // two rows above and one row above
	row := make([]int, len(b)+1)
	for j := range row {
		row[j] = j
	}
	for i := range a {
		before, last, row = last, row, make([]int, len(b)+1)
		row[0] = i + 1
		for j := range b {
			cost := 1
			if a[i] == b[j] {
				cost = 0
			}
			row[j+1] = min(last[j]+cost, last[j+1]+1, row[j]+1)
			if i > 0 && j > 0 && a[i] == b[j-1] && a[i-1] == b[j] {
				row[j+1] = min(row[j+1], before[j-1]+1)
			}
		}
	}
	return row[len(b)]
}
