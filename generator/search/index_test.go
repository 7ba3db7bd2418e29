package search

import (
	"bytes"
	"compress/gzip"
	"math/rand/v2"
	"strconv"
	"strings"
	"testing"
	"unicode/utf8"

	"coursebook/generator/search/stem"
)

// invented returns a reproducible manual. Each page has a subject. The frequencies of
// words follow Zipf's law, with inflections, numbers and sizes.
func invented(sections, wordsEach int) []Entry {
	r := rand.New(rand.NewPCG(11, 7))
	words := inventedWords(r, 3000)
	zipf := rand.NewZipf(r, 1.1, 6, uint64(len(words)-1))
	endings := []string{"", "", "", "s", "ed", "ing"}
	stops := strings.Fields(testStops)
	var entries []Entry
	var subject []string
	for i := range sections {
		url := "en/page-" + strconv.Itoa(i/5) + ".html"
		if i%5 == 0 {
			subject = subject[:0]
			for range 40 {
				subject = append(subject, words[r.IntN(len(words))])
			}
		}
		var text []string
		for range wordsEach {
			switch n := r.IntN(100); {
			case n < 42:
				text = append(text, stops[r.IntN(len(stops))])
			case n < 44:
				text = append(text, strconv.Itoa(1+r.IntN(40)), "in.")
			case n < 70:
				text = append(text, subject[r.IntN(len(subject))]+endings[r.IntN(len(endings))])
			default:
				text = append(text, words[zipf.Uint64()]+endings[r.IntN(len(endings))])
			}
		}
		heading := strings.Join(subject[2:5], " ")
		if i%5 != 0 {
			url += "#" + slug(heading)
		}
		entries = append(entries, Entry{URL: url, Title: subject[0] + " " + subject[1], Section: heading,
			Text: strings.Join(text, " "), Words: subject[5:7], Kind: "procedure"})
	}
	return entries
}

var inventedGroups = [][]string{{"whip", "stinger", "internal vibrator", "poker"}, {"rebar", "bar", "steel"}}

// TestBudget: the index after gzip has at most a quarter of the size of its text.
func TestBudget(t *testing.T) {
	entries := invented(300, 100)
	stemmer, _ := stem.For("en")
	var packed bytes.Buffer
	w, _ := gzip.NewWriterLevel(&packed, gzip.BestCompression)
	w.Write([]byte(Build("en", entries, listsOf(inventedGroups), stemmer)))
	w.Close()
	share := 100 * float64(packed.Len()) / float64(Covered(entries))
	t.Logf("%d bytes of text, index %.1f %%", Covered(entries), share)
	if share > 25 {
		t.Errorf("the index takes %.1f %% of the text, limit 25 %%", share)
	}
}

func TestDeterministic(t *testing.T) {
	stemmer, _ := stem.For("en")
	first := Build("en", invented(60, 80), listsOf(inventedGroups), stemmer)
	for range 5 {
		if Build("en", invented(60, 80), listsOf(inventedGroups), stemmer) != first {
			t.Fatal("two builds differ")
		}
	}
	if !utf8.ValidString(first) {
		t.Error("not valid UTF-8")
	}
	x, _ := Open(first)
	hits := find(x, "whip stinger po", 50)
	for range 5 {
		y, _ := Open(first)
		for i, h := range find(y, "whip stinger po", 50) {
			if h != hits[i] {
				t.Fatal("two searches differ")
			}
		}
	}
}

// TestHostileEntries: entries with any bytes can be indexed and found.
func TestHostileEntries(t *testing.T) {
	x := open(t, "es", []Entry{
		{
			URL:     "a\tb\n.html#x\ty",
			Title:   "P\tQ\nR",
			Section: "\xff\x00S",
			Text:    "uno\x01dos\xfftres \u2028 ñandú ñoño",
			Words:   []string{"a\tb", ""},
			Kind:    "\n",
		},
		{URL: "b.html", Text: strings.Repeat("sinespacios", 50)},
		{},
	}, [][]string{{"", "de"}, {"solo"}, nil, {"x\ty", "Ñandú"}})
	hits := find(x, "nandu", 5)
	if len(hits) != 1 || hits[0].URL != "a b .html#x y" || !strings.Contains(hits[0].Excerpt, "\x01ñandú\x02") {
		t.Errorf("got %+v", hits)
	}
	if x, err := Open(Build("en", nil, Lists{}, nil)); err != nil || len(find(x, "a", 5)) != 0 {
		t.Errorf("empty index: %v", err)
	}
}

func TestOpenRefuses(t *testing.T) {
	good := Build("en", invented(5, 30), listsOf(inventedGroups), nil)
	for _, text := range []string{"", "x", magic, magic + "\n", strings.Replace(good, magic, "coursebook-index 1", 1)} {
		if _, err := Open(text); err == nil {
			t.Errorf("%.30q was accepted", text)
		}
	}
	for i := range good {
		if _, err := Open(good[:i]); err == nil {
			t.Errorf("the first %d bytes were accepted", i)
		}
		if changed := good[:i] + string(good[i]^1) + good[i+1:]; i > len(magic)+4 {
			if _, err := Open(changed); err == nil {
				t.Errorf("byte %d changed, and accepted", i)
			}
		}
	}
}

func TestPack(t *testing.T) {
	var b strings.Builder
	numbers := []int{0, 1, 63, 64, 65, 1983, 1984, 2000, 57664, 1 << 20, maxNumber}
	for _, n := range numbers {
		writeNumber(&b, n)
	}
	p := numberReader{text: b.String()}
	for _, n := range numbers {
		if got := p.next(); got != n {
			t.Errorf("%d came back as %d", n, got)
		}
	}
	if !p.done() {
		t.Error("not read to the end")
	}
	if p.next(); p.done() {
		t.Error("reading beyond the end was no fault")
	}
	words := []string{"#5", "1/2", "a", strings.Repeat("a", 40), strings.Repeat("a", 40) + "b", "niño", "niρ", "niσ"}
	b.Reset()
	encodeWords(&b, words)
	if got, ok := decodeWords(b.String()); !ok || strings.Join(got, "|") != strings.Join(words, "|") {
		t.Errorf("%q came back as %q", words, got)
	}
}

// FuzzOpen adds the right checksum, so that a malformed body reaches the parser.
func FuzzOpen(f *testing.F) {
	good := Build("en", invented(6, 30), listsOf(inventedGroups), nil)
	_, body, _ := strings.Cut(good, "\n")
	f.Add(body)
	f.Add("Pa\tb\tc\td\te\nS\te\tf\nVAaBb\nF??\nN@?\nD?\nT?\n")
	f.Add("VAa\nF!!!!!?\n")
	f.Fuzz(func(t *testing.T, body string) {
		x, err := Open(magic + " en " + checksum(body) + "\n" + body)
		if err != nil {
			return
		}
		x.Find("whip vibrtaor ste", 20)
		x.Excerpt(body, "whip vibrtaor ste")
	})
}

func FuzzFind(f *testing.F) {
	stemmer, _ := stem.For("en")
	entries := append(invented(30, 60), texts(`4" f'c #5 3/8 señal ρ`)...)
	x, err := Open(Build("en", entries, listsOf(inventedGroups), stemmer))
	if err != nil {
		f.Fatal(err)
	}
	for _, q := range []string{"whip", `4"`, "f′c", "1½", "10' x 12'", "no. 5", "á\u0301", "\xff", "w/", "70 °"} {
		f.Add(q, q+" "+q)
	}
	f.Fuzz(func(t *testing.T, query, text string) {
		for _, h := range find(x, query, 20) {
			if !(h.Score > 0) || !utf8.ValidString(h.Excerpt) {
				t.Errorf("%q: %+v", query, h)
			}
		}
		excerpt := x.Excerpt(text, query)
		if !utf8.ValidString(excerpt) || strings.Count(excerpt, "\x01") != strings.Count(excerpt, "\x02") {
			t.Errorf("%q in %q: %q", query, text, excerpt)
		}
		for _, tok := range Tokens(text) {
			if tok.Start >= tok.End || tok.End > len(text) || tok.Word == "" {
				t.Errorf("%q: %+v", text, tok)
			}
		}
	})
}

func BenchmarkFind(b *testing.B) {
	x := open(b, "en", invented(300, 100), inventedGroups)
	b.Logf("%d words", len(x.words))
	for _, query := range []string{
		"b", "internal vibrator", "badabodx kugixisu", "mistypedd longwords alltogether unfindable",
		"a b c d e f g h i j k l m n o p",
	} {
		b.Run(query, func(b *testing.B) {
			for b.Loop() {
				x.Find(query, 20)
			}
		})
	}
}

func BenchmarkOpen(b *testing.B) {
	text := Build("en", invented(300, 100), listsOf(inventedGroups), nil)
	for b.Loop() {
		Open(text)
	}
}
