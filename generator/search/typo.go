package search

// Letters a word needs before one or two edits are forgiven.
const (
	minTypo  = 4
	minTypo2 = 8
)

// editsFor returns how many edits are forgiven in a word: one from four
// letters, two from eight, none in anything with a digit or sign. Both
// languages fold to ASCII; words of other scripts are not corrected.
func editsFor(word string) int {
	for i := range len(word) {
		if word[i] < 'a' || word[i] > 'z' {
			return 0
		}
	}
	switch {
	case len(word) >= minTypo2:
		return 2
	case len(word) >= minTypo:
		return 1
	}
	return 0
}

// addTypos finds the nearest words within the edits allowed: letters left
// out, added, changed, or two neighbours exchanged. For a last word without
// any such, words that begin nearly so.
func (x *Index) addTypos(t *term, last bool) {
	edits := editsFor(t.word)
	if edits == 0 {
		return
	}
	near, nearest := x.near(t.word, edits, false)
	weight := weightTypo
	if nearest > 1 {
		weight = weightTypo2
	}
	for _, word := range near {
		t.add(word, weight)
	}
	if len(near) > 0 || !last {
		return
	}
	near, _ = x.near(t.word, edits, true)
	for _, word := range near {
		t.add(word, weightTypoing)
	}
}

// walk is the edit-distance table of one query word against the sorted
// vocabulary. Row d represents the first d bytes of a word of the vocabulary,
// so words with a common beginning share their rows, and a row in which every
// value exceeds the limit rules out all words that begin so.
type walk struct {
	word string
	rows [][]int // rows[d][j]: edits between d bytes of the one and j of the other
	best []int   // best[d]: the least edits from the whole query word to any of the first d rows
}

// near returns the words at the least distance within limit, and it. With
// begun, a word may go on behind the part that is near.
func (x *Index) near(word string, limit int, begun bool) (ids []int32, nearest int) {
	w := walk{word: word}
	w.start()
	done, dead := 0, 0 // rows that hold for the word before; the row that ruled it out
	for i, other := range x.words {
		if dead > 0 && x.shared[i] >= dead {
			continue
		}
		dead = 0
		done = min(done, x.shared[i])
		for done < len(other) && dead == 0 {
			least := w.row(other, done)
			done++
			if least > limit && (!begun || w.best[done] > limit) {
				dead = done
			}
		}
		n := w.rows[done][len(word)]
		if begun {
			n = w.best[done]
		}
		if dead > 0 || n > limit || !stemmable(other) {
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

// start fills row 0: so many letters of the query word, so many edits.
func (w *walk) start() {
	row := make([]int, len(w.word)+1)
	for j := range row {
		row[j] = j
	}
	w.rows = append(w.rows, row)
	w.best = append(w.best, len(w.word))
}

// row fills row d+1 for the byte other[d] and returns its least value. The
// distance is that of optimal string alignment: an exchange of neighbours is
// one edit, and no part is edited twice.
func (w *walk) row(other string, d int) (least int) {
	if len(w.rows) == d+1 {
		w.rows = append(w.rows, make([]int, len(w.word)+1))
		w.best = append(w.best, 0)
	}
	above, row := w.rows[d], w.rows[d+1]
	row[0] = d + 1
	least = row[0]
	for j := 1; j < len(row); j++ {
		n := min(above[j], row[j-1]) + 1
		if w.word[j-1] == other[d] {
			n = min(n, above[j-1])
		} else {
			n = min(n, above[j-1]+1)
		}
		if d > 0 && j > 1 && w.word[j-1] == other[d-1] && w.word[j-2] == other[d] {
			n = min(n, w.rows[d-1][j-2]+1)
		}
		row[j] = n
		least = min(least, n)
	}
	w.best[d+1] = min(w.best[d], row[len(w.word)])
	return least
}
