package search

import (
	"math"
	"math/rand/v2"
	"strings"
	"testing"
)

// wordsScore returns BM25F of a page for a query, without the other parts of a score.
func wordsScore(x *Index, query string, page int) float64 {
	return x.collect(x.parse(query)).words[page]
}

// TestWorkedExample: three pages with text only, of 2, 1 and 3 words. For
// gamma: length 3 against 2 on average, so tf = 3/(0.25 + 0.75·3/2) = 2.181818;
// idf = ln(1 + 2.5/1.5) = 0.980829; score = idf·tf/(1.6 + tf) = 0.565863.
// Computed by hand from Robertson and Zaragoza (2009), BM25F.
func TestWorkedExample(t *testing.T) {
	x := open(t, "", texts("alpha beta", "alpha", "gamma gamma gamma"), nil)
	if got := wordsScore(x, "gamma", 2); math.Abs(got-0.565863) > 5e-7 {
		t.Errorf("got %g, want 0.565863", got)
	}
}

// textbook returns the scores of BM25F as Robertson and Zaragoza (2009) define it:
// for each term, the frequency in each field divided by (1−b)+b·l/avl, summed with
// the field weights, then saturated by k1; idf is log((N−n+0.5)/(n+0.5)), here with
// 1 added inside the logarithm. It shares no code and no constants with the package.
func textbook(docs [][4]string, query string) []float64 {
	v := [4]float64{5, 2, 3, 1}
	b := [4]float64{0.3, 0.3, 0, 0.75}
	var average [4]float64
	for _, d := range docs {
		for f := range d {
			average[f] += float64(len(strings.Fields(d[f]))) / float64(len(docs))
		}
	}
	count := func(text, word string) (n float64) {
		for _, w := range strings.Fields(text) {
			if w == word {
				n++
			}
		}
		return n
	}
	scores := make([]float64, len(docs))
	for _, word := range strings.Fields(query) {
		n := 0.0
		for _, d := range docs {
			if count(strings.Join(d[:], " "), word) > 0 {
				n++
			}
		}
		for i, d := range docs {
			tf := 0.0
			for f := range d {
				if c := count(d[f], word); c > 0 {
					l := float64(len(strings.Fields(d[f])))
					tf += v[f] * c / ((1 - b[f]) + b[f]*l/average[f])
				}
			}
			scores[i] += math.Log(1+(float64(len(docs))-n+0.5)/(n+0.5)) * tf / (1.6 + tf)
		}
	}
	return scores
}

// inventedWords returns words of the same length, so that none is a prefix of
// another.
func inventedWords(r *rand.Rand, n int) []string {
	seen := map[string]bool{}
	var words []string
	for len(words) < n {
		var b strings.Builder
		for range 3 {
			b.WriteByte("bdfgklmnprstv"[r.IntN(13)])
			b.WriteByte("aeiou"[r.IntN(5)])
		}
		if w := b.String(); !seen[w] {
			seen[w] = true
			words = append(words, w)
		}
	}
	return words
}

// sample draws n words, none more than three times, because the index does not store
// greater counts exactly.
func sample(r *rand.Rand, words []string, n int) string {
	deck := append(append(append([]string{}, words...), words...), words...)
	r.Shuffle(len(deck), func(i, j int) { deck[i], deck[j] = deck[j], deck[i] })
	return strings.Join(deck[:n], " ")
}

func TestScoresAgainstTextbook(t *testing.T) {
	r := rand.New(rand.NewPCG(1, 2))
	words := inventedWords(r, 60)
	var docs [][4]string
	var entries []Entry
	for i := range 40 {
		d := [4]string{
			sample(r, words, 1+r.IntN(4)),
			sample(r, words, r.IntN(5)),
			sample(r, words, r.IntN(4)),
			sample(r, words, r.IntN(80)),
		}
		docs = append(docs, d)
		entries = append(entries,
			Entry{URL: pageName(i), Title: d[0], Section: d[1], Words: strings.Fields(d[2]), Text: d[3]})
	}
	x := open(t, "", entries, nil)
	checked := 0
	for range 200 {
		query := sample(r, words, 1+r.IntN(4))
		want := textbook(docs, query)
		for i := range docs {
			got := wordsScore(x, query, i)
			if want[i] > 0 {
				checked++
			}
			if math.Abs(got-want[i]) > 1e-12*want[i] {
				t.Errorf("%q, page %d: %.15g, textbook %.15g", query, i, got, want[i])
			}
		}
	}
	if checked < 1000 {
		t.Errorf("only %d scores compared", checked)
	}
}

func pageName(i int) string { return "p" + string(rune('a'+i/26)) + string(rune('a'+i%26)) + ".html" }

// alignment returns the optimal string alignment distance (Damerau 1964; Levenshtein
// 1966), by its recursive definition.
func alignment(a, b string) int {
	switch {
	case a == "" || b == "":
		return len(a) + len(b)
	case a[len(a)-1] == b[len(b)-1]:
		return alignment(a[:len(a)-1], b[:len(b)-1])
	}
	n := 1 + min(alignment(a[1:], b), alignment(a, b[1:]), alignment(a[1:], b[1:]))
	if len(a) > 1 && len(b) > 1 && a[0] == b[1] && a[1] == b[0] {
		n = min(n, 1+alignment(a[2:], b[2:]))
	}
	if a[0] == b[0] {
		n = min(n, alignment(a[1:], b[1:]))
	}
	return n
}

// TestNearAgainstDefinition compares near, which shares table rows between words,
// with the recursive definition for each word.
func TestNearAgainstDefinition(t *testing.T) {
	r := rand.New(rand.NewPCG(3, 4))
	letters := func(n int) string {
		b := make([]byte, n)
		for i := range b {
			b[i] = "abc"[r.IntN(3)]
		}
		return string(b)
	}
	var list []string
	for range 300 {
		list = append(list, letters(1+r.IntN(6)))
	}
	x := open(t, "", texts(strings.Join(list, " ")), nil)
	for range 60 {
		word, limit := letters(3+r.IntN(4)), 1+r.IntN(2)
		nearest, want := limit+1, map[string]bool{}
		for _, other := range x.words {
			n := alignment(word, other)
			if n < nearest {
				nearest, want = n, map[string]bool{}
			}
			if n == nearest && n <= limit {
				want[other] = true
			}
		}
		ids, n := x.near(word, limit, false)
		if len(ids) != len(want) || len(ids) > 0 && n != nearest {
			t.Errorf("%s within %d: %d words at %d, want %d at %d", word, limit, len(ids), n, len(want), nearest)
		}
		for _, id := range ids {
			if !want[x.words[id]] {
				t.Errorf("%s within %d: %s is not among the nearest", word, limit, x.words[id])
			}
		}
	}
}
