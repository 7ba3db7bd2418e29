package catalog

import (
	"regexp"
	"slices"
	"testing"

	"coursebook/calculators/calc"
	"coursebook/calculators/calctest"
)

// rank is how far a status goes: the less, the better. A row that is derived, or that the
// calculator must not match, claims nothing of its source.
var rank = map[string]int{"confirmed": 0, "secondary": 1, "memory": 2, "common practice": 3, "our own limit": 3}

var ranks = [...]int{calc.Confirmed: 0, calc.Secondary: 1, calc.Memory: 2, calc.CommonPractice: 3, calc.OwnLimit: 3}

// secondHand matches the words of a source that was read in another document.
var secondHand = regexp.MustCompile(`(?i)as quoted|quoting|quoted by|reprint|test values? of|as held by|as reported|` +
	`as copied|as repeated|forum|adapted from|recalled|from memory`)

// A published row is never better than the source of the calculator in which it was read,
// and never confirmed where its own words say that another document repeats it.
func TestNoRowIsBetterThanItsSource(t *testing.T) {
	joined := 0
	for _, c := range All() {
		rows, err := calctest.Published(c)
		if err != nil {
			t.Fatal(err)
		}
		for _, r := range rows {
			level, claims := rank[r.Status]
			if claims && level == 0 && secondHand.MatchString(r.Source) {
				t.Errorf("%s %s: confirmed, but its source is %q", c.ID, r.ID, r.Source)
			}
			if r.Declared == "" {
				continue
			}
			i := slices.IndexFunc(c.Sources, func(s calc.Source) bool { return s.ID == r.Declared })
			if i < 0 {
				t.Errorf("%s %s: the calculator has no source %q", c.ID, r.ID, r.Declared)
				continue
			}
			joined++
			if claims && level < ranks[c.Sources[i].Status] {
				t.Errorf("%s %s: %s, but the source %s is %q", c.ID, r.ID, r.Status, r.Declared,
					c.Sources[i].Status.Text().EN())
			}
		}
	}
	if joined < 500 {
		t.Errorf("only %d rows name a declared source", joined)
	}
}

// issuers are those who issue what they are cited for. A source links to no other site.
var issuers = regexp.MustCompile(`^https?://(www\.)?(concreteconstruction\.net|theconcreteproducer\.com|osha\.gov|` +
	`nist\.gov|` +
	`nfba\.org|concretepumpers\.com|concrete\.org|concrete\.org\.uk|silicafume\.org|nordtest\.info|iasj\.net|` +
	`fhwa\.dot\.gov|iowadot\.gov|concretenz\.org\.nz|awc\.org|ascconline\.org)/`)

// Every source links to its issuer or not at all, and no row has an address.
func TestSourcesLinkToIssuers(t *testing.T) {
	address := regexp.MustCompile(`(?i)https?:|www\.|\.(com|org|net|edu|gov|info)\b`)
	for _, c := range All() {
		for _, s := range c.Sources {
			if s.Link != "" && !issuers.MatchString(s.Link) {
				t.Errorf("%s: the source %s links to %s", c.ID, s.ID, s.Link)
			}
			if words := s.Author + s.Title + s.Edition + s.Where.EN(); address.MatchString(words) {
				t.Errorf("%s: the source %s has an address in words: %s", c.ID, s.ID, words)
			}
		}
		rows, err := calctest.Published(c)
		if err != nil {
			t.Fatal(err)
		}
		for _, r := range rows {
			if address.MatchString(r.Source + " " + r.Note) {
				t.Errorf("%s %s: an address in the source: %s", c.ID, r.ID, r.Source)
			}
		}
	}
}
