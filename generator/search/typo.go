package search

import "slices"

// Least number of letters of a word in which no, one or two edits are allowed.
const (
	minSound = 3 // no edit, but another spelling that sounds alike
	minTypo  = 4
	minTypo2 = 8
	// minFreeStart is the number of letters from which the first may be another.
	minFreeStart = 6
)

// alike holds for each letter those by which crews write the same sound, in either
// language. The exchange of two of them is no edit. The list is our own (from memory).
var alike = [26]uint32{
	'b' - 'a': 1 << ('v' - 'a'),
	'c' - 'a': 1<<('k'-'a') | 1<<('q'-'a') | 1<<('s'-'a') | 1<<('z'-'a'),
	'g' - 'a': 1 << ('j' - 'a'),
	'i' - 'a': 1 << ('y' - 'a'),
	'j' - 'a': 1<<('g'-'a') | 1<<('x'-'a'),
	'k' - 'a': 1<<('c'-'a') | 1<<('q'-'a'),
	'l' - 'a': 1 << ('y' - 'a'),
	'q' - 'a': 1<<('c'-'a') | 1<<('k'-'a'),
	's' - 'a': 1<<('c'-'a') | 1<<('x'-'a') | 1<<('z'-'a'),
	'v' - 'a': 1 << ('b' - 'a'),
	'x' - 'a': 1<<('j'-'a') | 1<<('s'-'a'),
	'y' - 'a': 1<<('i'-'a') | 1<<('l'-'a'),
	'z' - 'a': 1<<('c'-'a') | 1<<('s'-'a'),
}

// change returns 0 if two bytes are the same letter or sound alike, else 1.
func change(a, b byte) int {
	if a == b || a >= 'a' && b >= 'a' && alike[a-'a']>>(b-'a')&1 != 0 {
		return 0
	}
	return 1
}

// omission returns 0 if the letter at i of a word makes no sound of its own there, so
// that it may be left out, else 1: an h that is not part of ch, ph or sh, the u of qu,
// the second letter of a doubled consonant.
func omission(word string, i int) int {
	before := byte(0)
	if i > 0 {
		before = word[i-1]
	}
	switch word[i] {
	case 'h':
		if before != 'c' && before != 'p' && before != 's' {
			return 0
		}
	case 'u':
		if before == 'q' {
			return 0
		}
	case 'd', 'f', 'g', 'l', 'm', 'n', 'p', 'r', 's', 't':
		if before == word[i] {
			return 0
		}
	}
	return 1
}

// editsFor returns the number of edits allowed in a word: one from four letters, two
// from eight, none in a shorter one, and -1 for a word that is too short for any other
// spelling or has any other character than a to z. English and
// Spanish are folded to these; words of other scripts are not corrected.
func editsFor(word string) int {
	for i := range len(word) {
		if word[i] < 'a' || word[i] > 'z' {
			return -1
		}
	}
	switch {
	case len(word) >= minTypo2:
		return 2
	case len(word) >= minTypo:
		return 1
	case len(word) >= minSound:
		return 0
	}
	return -1
}

// addTypos adds the nearest words within the edits allowed to t. An edit is a
// letter omitted, added or changed, or two adjacent letters exchanged; what sounds alike
// is no edit. For the
// last word of a query, if there is none, it adds words with a prefix within the
// edits.
func (x *Index) addTypos(t *term, last bool) {
	edits := editsFor(t.word)
	if edits < 0 {
		return
	}
	near, nearest := x.near(t.word, edits, false)
	if nearest > 0 && len(t.word) < minFreeStart {
		near = slices.DeleteFunc(near, func(id int32) bool { return !sameStart(t.word, x.words[id]) })
	}
	weight := [3]float64{weightSound, weightTypo, weightTypo2}[nearest]
	for _, word := range near {
		t.add(word, weight)
	}
	if len(near) > 0 || !last || edits == 0 {
		return
	}
	near, _ = x.near(t.word, edits, true)
	for _, word := range near {
		t.add(word, weightPrefixTypo)
	}
}

// sameStart reports whether two words begin with the same letter, or with the same two
// exchanged. In a short word the first letter is seldom the mistyped one.
func sameStart(a, b string) bool {
	return a[0] == b[0] || len(b) > 1 && a[0] == b[1] && a[1] == b[0]
}

// editTable is the table of edit distances between a query word and the prefixes of
// a word of the vocabulary. Row d belongs to the prefix of d bytes. Words with a
// common prefix share its rows. Where every value of a row exceeds the limit, no
// word with that prefix matches.
type editTable struct {
	word string
	rows [][]int // rows[d][j]: distance of the prefix of d bytes and the first j bytes of word
	best []int   // best[d]: least distance of word and any prefix of up to d bytes
}

// near returns the words at the least distance from word, if that is at most
// limit, and that distance; nil and 0 if there are none. With prefix, the distance
// is that of the nearest prefix of each word.
func (x *Index) near(word string, limit int, prefix bool) (ids []int32, nearest int) {
	w := editTable{word: word}
	w.start()
	// valid is the number of rows that are valid for the current word. pruned is the
	// row in which every value exceeds the limit, or 0.
	valid, pruned := 0, 0
	for i, other := range x.words {
		if pruned > 0 && x.shared[i] >= pruned {
			continue
		}
		pruned = 0
		valid = min(valid, x.shared[i])
		for valid < len(other) && pruned == 0 {
			least := w.row(other, valid)
			valid++
			if least > limit && (!prefix || w.best[valid] > limit) {
				pruned = valid
			}
		}
		n := w.rows[valid][len(word)]
		if prefix {
			n = w.best[valid]
		}
		if pruned > 0 || n > limit || !stemmable(other) {
			continue
		}
		limit = n
		if n < nearest || len(ids) == 0 {
			ids = ids[:0]
		}
		ids, nearest = append(ids, int32(i)), n
	}
	return ids, nearest
}

// start fills row 0, the distances of the empty prefix.
func (w *editTable) start() {
	row := make([]int, len(w.word)+1)
	for j := range row {
		if j > 0 {
			row[j] = row[j-1] + omission(w.word, j-1)
		}
	}
	w.rows = append(w.rows, row)
	w.best = append(w.best, row[len(w.word)])
}

// row sets row d+1 for the byte other[d] and returns its least value. Row d must
// be valid. The distance is that of optimal string alignment: the exchange of two
// adjacent letters is one edit, and no letter is edited twice.
func (w *editTable) row(other string, d int) (least int) {
	if len(w.rows) == d+1 {
		w.rows = append(w.rows, make([]int, len(w.word)+1))
		w.best = append(w.best, 0)
	}
	above, row := w.rows[d], w.rows[d+1]
	left := omission(other, d)
	row[0] = above[0] + left
	least = row[0]
	for j := 1; j < len(row); j++ {
		n := min(above[j]+left, row[j-1]+omission(w.word, j-1), above[j-1]+change(w.word[j-1], other[d]))
		if d > 0 && j > 1 && w.word[j-1] == other[d-1] && w.word[j-2] == other[d] {
			n = min(n, w.rows[d-1][j-2]+1)
		}
		row[j] = n
		least = min(least, n)
	}
	w.best[d+1] = min(w.best[d], row[len(w.word)])
	return least
}
