package search

import (
	"strings"
	"testing"

	"coursebook/generator/search/stem"
)

func open(t testing.TB, lang string, entries []Entry, synonyms [][]string) *Index {
	t.Helper()
	stemmer, _ := stem.For(lang)
	x, err := Open(Build(lang, entries, synonyms, stemmer))
	if err != nil {
		t.Fatal(err)
	}
	return x
}

// texts returns one page for each text, with the addresses a.html, b.html and so on.
func texts(list ...string) []Entry {
	var entries []Entry
	for i, text := range list {
		entries = append(entries, Entry{URL: string(rune('a'+i)) + ".html", Text: text})
	}
	return entries
}

func urls(hits []Hit) string {
	var list []string
	for _, h := range hits {
		list = append(list, strings.TrimSuffix(h.URL, ".html"))
	}
	return strings.Join(list, " ")
}

func expect(t *testing.T, x *Index, query, want string) {
	t.Helper()
	if got := urls(x.Find(query, 20)); got != want {
		t.Errorf("%q: found %q, want %q", query, got, want)
	}
}

func TestTradeWords(t *testing.T) {
	x := open(t, "en", texts(`Cover is 3/8 in. at least.`, `Lap #5 bars forty diameters.`,
		`The strength f′c is read at 28 days.`, `Use 10M bars in Canada.`, `Brace with 2x6 lumber, 1½" screws.`,
		`Below 70 °F the mix is slow; w/c 0.45 holds.`, `Slump of 4 inches; 600 psf on the form.`,
		`Not fewer than 5 men.`), nil)
	for query, want := range map[string]string{
		"3/8": "a", `3/8"`: "a", "#5": "b", "No. 5": "b", "f'c": "c", "fc": "c", "f′c": "c", "10M": "d", "10m": "d",
		"2x6": "e", "2 × 6": "e", "1-1/2": "e", "1 1/2 in": "e", "70°F": "f", "70f": "f", "0.45": "f", ".45": "f",
		"w/c": "f", `4"`: "g", "4 in": "g", "600psf": "g", "600 psf": "g", "#6": "", "3/4": "", "15M": "",
	} {
		expect(t, x, query, want)
	}
	expect(t, x, "5", "h b") // a bare number also matches the bar number, with less weight
}

func TestForms(t *testing.T) {
	x := open(t, "en", texts("The pumps are ready.", "Pumping begins.", "Pump slowly.", "A trumpet.",
		"Cure it, curing, cured.", "Lifts are lifted."), nil)
	expect(t, x, "pump", "c a b")   // exact before its forms
	expect(t, x, "pumped", "a b c") // unknown; its ending occurs in two families
	x = open(t, "es",
		texts("La vibración del hormigón.", "Hay que vibrar despacio.", "Las armaduras.", "Señal de niño."), nil)
	expect(t, x, "vibracion", "a")
	expect(t, x, "VIBRACIÓN", "a")
	expect(t, x, "hormigones", "a")
	expect(t, x, "armadura", "c")
	expect(t, x, "senal", "d")
	expect(t, x, "niños", "d")
}

func TestPrefix(t *testing.T) {
	x := open(t, "en", texts("Push the button but once.", "The formwork stands.", "Form oil.", "The hose."), nil)
	expect(t, x, "but", "a") // a stop word, and a prefix
	expect(t, x, "butt", "a")
	expect(t, x, "form", "c b")   // exact before prefix
	expect(t, x, "form h", "d c") // only the last word is completed where the first is known
	expect(t, x, "formw hose", "d b c")
	expect(t, x, "x", "")
	expect(t, x, "", "")
	expect(t, x, "the", "")
}

func TestTypos(t *testing.T) {
	x := open(t, "en",
		texts("rebar", "vibrator", "wet", "#5 bars", "3/8 stone", "10M steel", "grade 60", "consolidation"), nil)
	for query, want := range map[string]string{
		"rebra": "a", "rebr": "a", "rebaar": "a", "rebat": "a", "erbar": "a", // one edit, each kind
		"rbera": "", "rexxr": "", "reb4r": "", // two edits in five letters; a digit
		"wte": "", "wat": "", // three letters
		"vibrtaor": "b", "vibarotr": "b", "vybratar": "b", "vibrxxor": "b", // eight letters: two edits
		"vibxxxor":      "",  // three edits
		"vibrtor":       "b", // seven letters: one edit
		"vybrotr":       "",  // seven letters: two edits
		"consolodatoin": "h", // one change and one exchange
		"#6":            "", "3/7": "", "11M": "", "61": "", "0.46": "", "grabe 6": "g",
		"vibrart":      "b", // last word: a mistyped prefix
		"vibrart zzzz": "",  // not last: no completion
		"grabe zzzz":   "g",
	} {
		expect(t, x, query, want)
	}
}

// TestOrder: with all else equal, the ways of matching rank in the order of their
// weights.
func TestOrder(t *testing.T) {
	x := open(t, "en", texts("poker stands", "steams stands", "steamer stands", "steam stands"),
		[][]string{{"steam", "poker"}})
	expect(t, x, "steam", "d b c a")
	x = open(t, "en", texts("sream goes", "stinger goes"), [][]string{{"streams", "stinger"}})
	expect(t, x, "stream", "b a")
	x = open(t, "en", texts("vibratxx", "vibratxr", "vibrator"), nil)
	expect(t, x, "vibratyr", "b c") // nearest only, both one edit away
	weights := []float64{
		weightExact, weightStem, weightEnding, weightPrefix, weightSynonym, weightTypo, weightTypo2, weightPrefixTypo,
	}
	for i := 1; i < len(weights); i++ {
		if weights[i] >= weights[i-1] {
			t.Errorf("weight %d is not below the one before", i)
		}
	}
}

// TestSecondary: a secondary page ranks after the page it repeats, unless only the
// secondary page matches every word.
func TestSecondary(t *testing.T) {
	list := texts("hose hose hose", "hose and much else", "hose clamp, and much else")
	list[0].Secondary, list[2].Secondary = true, true
	x := open(t, "en", list, nil)
	expect(t, x, "hose clamp", "c b a")
	list = texts("hose and much else", "hose and much else")
	list[0].Secondary = true
	expect(t, open(t, "en", list, nil), "hose", "b a")
}

func TestAllWordsFirst(t *testing.T) {
	x := open(t, "en", texts("hose hose hose hose hose hose",
		"A long text about very many other things, in which the hose and then also the clamp are named once, far down.",
		"clamp clamp clamp"), nil)
	expect(t, x, "hose clamp", "b a c")
	expect(t, x, "hose of clamp", "b a c")
	expect(t, x, "hose qqqqq", "a b")
	expect(t, x, "qqqqq hose", "a b")
}

func TestSynonyms(t *testing.T) {
	groups := [][]string{{"whip", "stinger", "internal vibrator", "poker"}, {"rebar", "bar", "steel"}}
	x := open(t, "en", texts("Lower the whip.", "The internal vibrator hums.", "An internal matter.",
		"The vibrator.", "Steel is cut."), groups)
	expect(t, x, "stinger", "a b")
	expect(t, x, "stingr", "a b") // mistyped synonym
	expect(t, x, "sting", "a b")  // prefix of a synonym
	expect(t, x, "internal vibrator", "b a d c")
	expect(t, x, "internal vibratr", "b a c d")
	expect(t, x, "rebars", "e")
	x = open(t, "en", []Entry{
		{URL: "a.html", Title: "Consolidation", Text: "Go slowly.", Words: []string{"vibrating", "shaking down"}},
		{URL: "b.html", Title: "Other", Text: "No shaking."}}, nil)
	expect(t, x, "vibrating", "a")
	expect(t, x, "vibarting", "a")
	expect(t, x, "shaking", "a b")
}

func TestSectionsPerPage(t *testing.T) {
	var entries []Entry
	for p := range 3 {
		for s := range 6 {
			url := string(rune('a'+p)) + ".html"
			if s > 0 {
				url += "#" + string(rune('0'+s))
			}
			entries = append(entries, Entry{URL: url, Title: "Hose", Section: strings.Repeat("x ", s), Text: "hose"})
		}
	}
	x := open(t, "en", entries, nil)
	if got := x.Find("hose", 20); len(got) != 6 {
		t.Errorf("%d hits of three pages, want two each: %s", len(got), urls(got))
	}
	for p := range 6 {
		entries = append(entries,
			Entry{URL: string(rune('m'+p)) + ".html", Title: "Other", Text: "hose and many other things"})
	}
	hits := open(t, "en", entries, nil).Find("hose", 100)
	if len(hits) != 24 {
		t.Errorf("%d hits, want all 24", len(hits))
	}
	pages := map[string]int{}
	for _, h := range hits[:10] {
		page, _, _ := strings.Cut(h.URL, "#")
		if pages[page]++; pages[page] > 2 {
			t.Errorf("page %s three times among the first ten", page)
		}
	}
	if n := len(open(t, "en", entries, nil).Find("hose", 3)); n != 3 {
		t.Errorf("limit 3 gives %d", n)
	}
	if n := len(open(t, "en", entries, nil).Find("hose", -1)); n != 0 {
		t.Errorf("limit -1 gives %d", n)
	}
}

func TestHit(t *testing.T) {
	x := open(t, "en", []Entry{
		{URL: "en/pour.html", Title: "Pour day", Kind: "procedure", Text: "Walk the forms first."},
		{
			URL:     "en/pour.html#before-the-pump",
			Title:   "Pour day",
			Kind:    "procedure",
			Section: "Before the pump",
			Text:    "Grease the hose.",
		},
		{
			URL:     "en/pour.html#s2",
			Title:   "Pour day",
			Kind:    "procedure",
			Section: "Lifts",
			Text:    "Lift <by> lift, with \tbig\nhoses.",
		},
	}, nil)
	hits := x.Find("hose", 5)
	want := []Hit{
		{"en/pour.html#before-the-pump", "Pour day", "Before the pump", "procedure", "Grease the \x01hose\x02.", 0},
		{"en/pour.html#s2", "Pour day", "Lifts", "procedure", "Lift <by> lift, with big \x01hoses\x02.", 0},
	}
	if len(hits) != len(want) {
		t.Fatalf("%d hits: %v", len(hits), hits)
	}
	for i, h := range hits {
		h.Score = 0
		if h != want[i] {
			t.Errorf("hit %d\n got %+v\nwant %+v", i, h, want[i])
		}
	}
	expect(t, x, "forms", "en/pour")
}

func TestExcerpt(t *testing.T) {
	filler := strings.Repeat("other words fill the line here ", 20)
	x := open(t, "en", texts(filler+"grease the hose and the clamp "+filler, "hose"),
		[][]string{{"hose", "elephant trunk"}})
	text := "The hose lies here. " + filler + "Grease the hose, then the clamp; the  elephant trunk\nhangs. " + filler
	got := x.Excerpt(text, "hose clamp")
	for _, part := range []string{"\x01hose\x02, then the \x01clamp\x02; the \x01elephant\x02 \x01trunk\x02 hangs.",
		"… ", " …"} {
		if !strings.Contains(got, part) {
			t.Errorf("%q does not hold %q", got, part)
		}
	}
	plain := strings.NewReplacer("\x01", "", "\x02", "", "… ", "", " …", "").Replace(got)
	if n := len(plain); n < 120 || n > 165 {
		t.Errorf("excerpt of %d characters: %q", n, plain)
	}
	if !strings.Contains(" "+clean(text)+" ", " "+plain+" ") {
		t.Errorf("%q is not cut at words", plain)
	}
	for _, c := range []struct{ text, query, want string }{
		{"No match at all", "hose", "No match at all"},
		{"", "hose", ""},
		{"hose\x01\x02 hose", "hose", "\x01hose\x02 \x01hose\x02"},
		{"A hose", "", "A hose"},
	} {
		if got := x.Excerpt(c.text, c.query); got != c.want {
			t.Errorf("%q in %q: %q, want %q", c.query, c.text, got, c.want)
		}
	}
}
