package fault

import "strings"

// Nearest returns the known word with the least edit distance to word, for "did
// you mean" hints. It counts inserted, lost, changed and swapped letters, ignoring
// case. It returns false where the distance of the best word exceeds a third of
// its length. Of equally near words the first is returned.
func Nearest(word string, known []string) (string, bool) {
	best, least := "", 0
	w := []rune(strings.ToLower(word))
	for _, k := range known {
		r := []rune(strings.ToLower(k))
		limit := max(1, len(r)/3)
		if len(w) > len(r)+limit {
			continue // too far apart; also bounds the cost of a very long word
		}
		if d := distance(w, r); d <= limit && (best == "" || d < least) {
			best, least = k, d
		}
	}
	return best, best != ""
}

// Closest returns the index of the known text with the least edit distance to
// text, without a limit; -1 where known is empty. Of equally close texts it
// returns the first.
func Closest(text string, known []string) int {
	best, least := -1, 0
	t := []rune(strings.ToLower(text))
	for i, k := range known {
		if d := distance(t, []rune(strings.ToLower(k))); best < 0 || d < least {
			best, least = i, d
		}
	}
	return best
}

// distance returns the optimal string alignment distance: the number of edits that
// turn a into b when no letter is edited twice.
func distance(a, b []rune) int {
	var before []int
	last := make([]int, len(b)+1)
	for j := range last {
		last[j] = j
	}
	for i := range a {
		row := make([]int, len(b)+1)
		row[0] = i + 1
		for j := range b {
			change := last[j]
			if a[i] != b[j] {
				change++
			}
			row[j+1] = min(change, last[j+1]+1, row[j]+1)
			if i > 0 && j > 0 && a[i] == b[j-1] && a[i-1] == b[j] {
				row[j+1] = min(row[j+1], before[j-1]+1)
			}
		}
		before, last = last, row
	}
	return last[len(b)]
}
