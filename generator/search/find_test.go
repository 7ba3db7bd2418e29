package search

import (
	"strings"
	"testing"

	"coursebook/generator/search/stem"
)

// testStops are words without weight in tests.
const testStops = "a also and are at be but by do for from how i if in is it las los not of on or so that the then " +
	"this to una was what with you"

// listsOf returns lists with testStops and groups of words that mean the same.
func listsOf(groups [][]string) (lists Lists) {
	for _, w := range strings.Fields(testStops) {
		lists.Small = append(lists.Small, Small{w, 0})
	}
	for _, g := range groups {
		lists.Groups = append(lists.Groups, Group{From: g})
	}
	return lists
}

func open(t testing.TB, lang string, entries []Entry, groups [][]string) *Index {
	t.Helper()
	return openWith(t, lang, entries, listsOf(groups))
}

func openWith(t testing.TB, lang string, entries []Entry, lists Lists) *Index {
	t.Helper()
	stemmer, _ := stem.For(lang)
	x, err := Open(Build(lang, entries, lists, stemmer))
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

// find returns the first hits of a query.
func find(x *Index, query string, limit int) []Hit {
	hits, _ := x.Find(query, limit)
	return hits
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
	if got := urls(find(x, query, 20)); got != want {
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
	expect(t, x, "form h", "c d") // only the last word is completed where the first is known
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

// TestSounds: a word that the index does not know finds those that sound like it before
// those that look like it.
func TestSounds(t *testing.T) {
	x := open(t, "es", texts("llover", "colar", "vibrador", "pesa", "hilo", "girando", "chorro", "volar", "quebrar",
		"chapa", "fierro", "yema"), nil)
	for query, want := range map[string]string{
		"yover": "a", "kolar": "b", "bibrador": "c", "peza": "d", "ilo": "e", "jirando": "f", "choro": "g",
		"bolar": "h", "kebrar": "i", "capa": "j", "fiero": "k", "llema": "l", // j is one edit away, the others none
		"il": "", "klo": "", // two letters; a short word with an edit
	} {
		expect(t, x, query, want)
	}
	x = open(t, "es", texts("ocho", "oco"), nil)
	expect(t, x, "oko", "b") // ch is a sound of its own
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
		weightExact, weightStem, weightEnding, weightDirected, weightSound, weightPrefix, weightSynonym, weightTypo,
		weightTypo2, weightPrefixTypo,
	}
	for i := 1; i < len(weights); i++ {
		if weights[i] >= weights[i-1] {
			t.Errorf("weight %d is not below the one before", i)
		}
	}
}

// TestKinds: a page of a kind that leads to others ranks after what it leads to,
// unless only it matches the query.
func TestKinds(t *testing.T) {
	list := texts("hose and much else", "hose and much else", "hose and much else", "hose clamp and much else")
	for i, kind := range []string{"home", "lesson", "procedure", "lesson"} {
		list[i].Kind = kind
	}
	x := open(t, "en", list, nil)
	expect(t, x, "hose", "c b d a")
	expect(t, x, "hose clamp", "d c b a")
	list[0].Urgent, list[0].Kind = true, "procedure"
	list[2].Text = "hose hose and much else"
	lists := listsOf(nil)
	lists.Asks = []Ask{{"urgent", []string{"broke"}}}
	x = openWith(t, "en", list, lists)
	expect(t, x, "hose", "c a b d")
	expect(t, x, "hose broke", "a c b d") // it says that something has happened
	if hits := find(x, "hose broke", 1); !hits[0].Urgent || hits[0].Kind != "procedure" {
		t.Errorf("got %+v", hits)
	}
}

// TestPages: pages of a kind come in their order, each once.
func TestPages(t *testing.T) {
	list := []Entry{{URL: "a.html", Title: "A", Kind: "calculator", Text: "one"}, {URL: "b.html", Title: "B"},
		{URL: "c.html", Title: "C", Kind: "calculator"},
		{URL: "c.html#s", Title: "C", Section: "S", Kind: "calculator"},
		{URL: "d.html", Title: "D", Urgent: true}}
	x := open(t, "en", list, nil)
	wanted := func(kind string, urgent bool) bool { return kind == "calculator" || urgent }
	if got := urls(x.Pages(wanted)); got != "a c d" {
		t.Errorf("got %q", got)
	}
	if got := x.Pages(func(string, bool) bool { return false }); got != nil {
		t.Errorf("got %v", got)
	}
}

// TestAsks: a phrase of the query lifts the kind of page that it asks for, also when
// it consists of words without weight.
func TestAsks(t *testing.T) {
	list := texts("brace spacing in a text", "brace spacing in a text")
	list[1].Kind = "calculator"
	lists := listsOf(nil)
	lists.Asks = []Ask{{"calculator", []string{"how do", "how far"}}}
	x := openWith(t, "en", list, lists)
	expect(t, x, "brace spacing", "a b")
	expect(t, x, "how do i brace", "b a")
	expect(t, x, "how i do brace", "a b")
	expect(t, x, "brace, how far?", "b a")
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
	expect(t, x, "internal vibratr", "b c a d")
	expect(t, x, "rebars", "e")
	x = open(t, "en", []Entry{
		{URL: "a.html", Title: "Consolidation", Text: "Go slowly.", Words: []string{"vibrating", "shaking down"}},
		{URL: "b.html", Title: "Other", Text: "No shaking."}}, nil)
	expect(t, x, "vibrating", "a")
	expect(t, x, "vibarting", "a")
	expect(t, x, "shaking", "a b")
}

// TestOnePageOnce: a page is one hit, with its best section; the number of pages that
// match is exact.
func TestOnePageOnce(t *testing.T) {
	var entries []Entry
	for p := range 15 {
		for s := range 6 {
			url := string(rune('a'+p)) + ".html"
			if s > 0 {
				url += "#" + string(rune('0'+s))
			}
			entries = append(entries, Entry{URL: url, Title: "Pump", Section: strings.Repeat("x ", s),
				Text: strings.Repeat("hose ", s%4+1)})
		}
	}
	x := open(t, "en", entries, nil)
	hits, all := x.Find("hose", 10)
	if len(hits) != 10 || all != 15 {
		t.Errorf("%d of %d hits of 15 pages", len(hits), all)
	}
	for i, h := range hits {
		if want := string(rune('a'+i)) + ".html#2"; h.URL != want {
			t.Errorf("hit %d is %s, want %s", i, h.URL, want)
		}
	}
	if hits, all := x.Find("hose", -1); len(hits) != 0 || all != 15 {
		t.Errorf("limit -1 gives %d of %d", len(hits), all)
	}
	if hits, all := x.Find("nothing", 10); len(hits) != 0 || all != 0 {
		t.Errorf("no match gives %d of %d", len(hits), all)
	}
}

// TestPlace: the page opens at the section that answers, and at its top where the title
// or a header word is the query.
func TestPlace(t *testing.T) {
	list := []Entry{
		{URL: "a.html", Title: "A truck is late", Text: "Keep the face alive."},
		{URL: "a.html#s", Title: "A truck is late", Section: "Steps",
			Text: "Call the plant about the truck. The truck is late."},
		{URL: "a.html#n", Title: "A truck is late", Section: "Oldest face", Text: "It sets. The truck is late."},
	}
	for i := range list {
		list[i].Words = []string{"waiting for concrete"}
	}
	x := open(t, "en", list, nil)
	expect(t, x, "late truck", "a")
	expect(t, x, "waiting for concrete", "a")
	for query, want := range map[string]string{
		"call the plant": "a.html#s", "oldest face": "a.html#n", "sets": "a.html#n",
	} {
		if hits := find(x, query, 5); len(hits) != 1 || hits[0].URL != want {
			t.Errorf("%q opens %v, want %s", query, hits, want)
		}
	}
}

// TestNames: a title or a header word that is the whole query leads, in any order of
// its words.
func TestNames(t *testing.T) {
	x := open(t, "en", []Entry{
		{URL: "a.html", Title: "Order", Text: "truck late truck late truck late truck late"},
		{URL: "b.html", Title: "A truck is late", Text: "Call the plant. " + strings.Repeat("other words ", 40)},
		{URL: "c.html", Title: "Waiting", Text: "Stop. " + strings.Repeat("other words ", 40),
			Words: []string{"oldest face", "plant broke down"}},
		{URL: "d.html", Title: "Plan", Text: "the oldest face of the oldest plant broke down down face"},
	}, nil)
	expect(t, x, "late truck", "b a")
	for query, want := range map[string]string{
		"face oldest": "c", "the plant broke down": "c", "what if the truck is late": "b",
	} {
		if hits := find(x, query, 1); urls(hits) != want {
			t.Errorf("%q leads to %s, want %s", query, urls(hits), want)
		}
	}
}

// TestNameOrder: of two header words with the words of the query, the one with their
// order leads.
func TestNameOrder(t *testing.T) {
	x := open(t, "en", []Entry{
		{URL: "a.html", Title: "Short", Text: "Stop.", Words: []string{"out of concrete"}},
		{URL: "b.html", Title: "Open", Text: "Stop.", Words: []string{"concrete out"}},
	}, nil)
	expect(t, x, "concrete comes out", "b a")
	expect(t, x, "out of concrete", "a b")
}

// TestExactPhrases: a phrase of which small words leave one word does not stand for that
// word, on either side.
func TestExactPhrases(t *testing.T) {
	lists := listsOf([][]string{{"strip", "take off"}})
	lists.Small = append(lists.Small, Small{"take", 0}, Small{"went", 0})
	lists.Groups = append(lists.Groups, Group{From: []string{"went off"}, To: []string{"set"}})
	x := openWith(t, "en", texts("strip it", "set hard", "off", "other"), lists)
	expect(t, x, "off", "c")
	expect(t, x, "it went off", "c b")
	expect(t, x, "take off", "c a")
	expect(t, x, "strip", "a")
}

// TestAmounts: an amount beside words narrows and never leads; alone it leads.
func TestAmounts(t *testing.T) {
	x := open(t, "en", texts("The brace of a wall.", "A wall of 40 ft with 40 ft of 40 ft.",
		"A wall of 40 ft and a brace."), nil)
	expect(t, x, "brace for 40 ft", "c a b")
	expect(t, x, "40 ft", "b c")
}

// TestSmallWords: a small word weighs little beside another, and finds its pages alone.
func TestSmallWords(t *testing.T) {
	lists := listsOf(nil)
	lists.Small = append(lists.Small, Small{"need", 1})
	x := openWith(t, "en", texts("need need need of a plan", "the hose"), lists)
	expect(t, x, "hose need", "b a")
	expect(t, x, "need", "a")
}

func TestHit(t *testing.T) {
	x := open(t, "en", []Entry{
		{URL: "en/pour.html", Title: "Pour day", Kind: "procedure", Text: "Walk the forms first, <by> \t light."},
		{
			URL:     "en/pour.html#before-the-pump",
			Title:   "Pour day",
			Kind:    "procedure",
			Section: "Before the pump",
			Text:    "Grease the hose, then grease it again.",
		},
		{
			URL:     "en/pour.html#s2",
			Title:   "Pour day",
			Kind:    "procedure",
			Section: "Lifts",
			Text:    "Lift <by> lift, with \tbig\nhoses.",
		},
	}, nil)
	hits := find(x, "grease hose form", 5)
	want := []Hit{
		{"en/pour.html#before-the-pump", "Pour day", "Before the pump", "procedure", false,
			"Walk the \x01forms\x02 first, <by> light.", 0},
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
	expect(t, x, "walk the forms", "en/pour")
}

// TestLead: the lead of a page is its excerpt, and its words are found.
func TestLead(t *testing.T) {
	lead := "Place in lifts, " + strings.Repeat("vibrate each lift, ", 8) + "keep the pace"
	x := open(t, "en", []Entry{{URL: "a.html", Title: "Pour", Lead: lead, Text: "hose"},
		{URL: "a.html#s", Title: "Pour", Section: "Steps", Text: "clamp"},
		{URL: "b.html", Title: "Other", Text: "lift"}}, nil)
	for _, query := range []string{"pace", "hose", "clamp"} {
		hits := find(x, query, 3)
		if len(hits) != 1 || !strings.HasPrefix(hits[0].Excerpt, "Place in lifts, vibrate") ||
			!strings.HasSuffix(strings.ReplaceAll(hits[0].Excerpt, "\x02", ""), "each …") {
			t.Errorf("%q finds %+v", query, hits)
		}
	}
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
	if n := len(plain); n < 80 || n > 112 {
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
