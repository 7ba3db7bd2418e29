package search

import (
	"math"
	"testing"
)

// TestExplain: the parts of a page's score add up to its score, and each page is named
// with what matches.
func TestExplain(t *testing.T) {
	lists := listsOf([][]string{{"whip", "internal vibrator"}})
	lists.Asks = []Ask{{"calculator", []string{"how far"}}}
	x := openWith(t, "en", []Entry{
		{URL: "a.html", Title: "Internal vibrator", Text: "Lower it.", Words: []string{"spacing"}},
		{URL: "b.html", Title: "Spacing", Kind: "calculator", Text: "How far apart."},
		{URL: "b.html#s", Title: "Spacing", Kind: "calculator", Section: "Vibrator spacing"},
	}, lists)
	e := x.Explain("how far whip spacing", 5)
	if len(e.Terms) != 3 || e.Found != 2 || len(e.Pages) != 2 || len(e.Kinds) != 1 {
		t.Fatalf("got %+v", e)
	}
	for _, p := range e.Pages {
		sum := p.Share * (p.Words + p.All + p.Near + p.NamePart)
		if math.Abs(sum-p.Score) > 1e-9 {
			t.Errorf("%s: the parts give %g, the score is %g", p.URL, sum, p.Score)
		}
		words := 0.0
		for _, term := range p.Terms {
			words += term.Score
			if len(term.In) == 0 || term.Match <= 0 {
				t.Errorf("%s: %+v", p.URL, term)
			}
		}
		if math.Abs(words-p.Words) > 1e-9 {
			t.Errorf("%s: the words give %g of %g", p.URL, words, p.Words)
		}
	}
	if m := e.Terms[1].Matches; len(m) != 2 || m[1].Text != "internal vibrator" || m[1].Weight != weightSynonym {
		t.Errorf("whip matches %+v", m)
	}
	if empty := x.Explain("", 5); len(empty.Terms) != 0 || len(empty.Pages) != 0 {
		t.Errorf("got %+v", empty)
	}
}
