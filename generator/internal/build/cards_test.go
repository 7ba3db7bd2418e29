package build

import (
	"slices"
	"strconv"
	"strings"
	"testing"

	"golang.org/x/net/html"

	"coursebook/generator/internal/fault"
	"coursebook/generator/internal/output"
)

// closedCards lists the calculators that a page places.
func closedCards(doc *html.Node) []*html.Node {
	var list []*html.Node
	for _, e := range elements(doc, "section") {
		if attr(e, "data-card") != "" {
			list = append(list, e)
		}
	}
	return list
}

// A placed calculator is a closed card: its purpose, the result of its example, a link to
// its page, and the preset inputs. The form is on the calculator's page only.
func TestClosedCards(t *testing.T) {
	site := buildGood(t)
	doc := parse(t, file(site, "en/fill.html"))
	if n := len(elements(doc, "form")); n != 0 {
		t.Errorf("%d forms on a procedure", n)
	}
	cards := closedCards(doc)
	if len(cards) != 2 {
		t.Fatalf("%d cards, not 2", len(cards))
	}
	for i, want := range []struct{ set, answer string }{
		{`[["side","2' 0\""]]`, "Example: Holds: 8.0 ft³0.23 m³"},
		{"", "Example: Holds: 27.0 ft³0.76 m³"},
	} {
		if got := attr(cards[i], "data-set"); got != want.set {
			t.Errorf("card %d presets %q, not %q", i, got, want.set)
		}
		answers := classed(cards[i], "answer")
		if len(answers) != 1 || text(answers[0]) != want.answer {
			t.Errorf("card %d answers %d times, not %q: %s", i, len(answers), want.answer, text(cards[i]))
		}
		if a := elements(cards[i], "a"); len(a) != 1 || attr(a[0], "href") != "calc/tank.html" {
			t.Errorf("card %d has %d links", i, len(a))
		}
		for _, part := range []string{"Tank", "How much a tank holds.", "Calculator on the phone: en/calc/tank.html"} {
			if !strings.Contains(text(cards[i]), part) {
				t.Errorf("card %d lacks %q: %s", i, part, text(cards[i]))
			}
		}
	}
	spanish := closedCards(parse(t, file(site, "es/fill.html")))
	if len(spanish) == 0 || !strings.Contains(text(spanish[0]), "Ejemplo: ") {
		t.Error("no Spanish card with its example")
	}
	inOneFile := closedCards(parse(t, site.Pocket))
	if len(inOneFile) < 3 || attr(elements(inOneFile[0], "a")[0], "href") != "#en.calc.tank" {
		t.Errorf("%d cards in the one-file edition", len(inOneFile))
	}
}

// The card shows no result if the example depends on a maker's number.
func TestNoAnswerFromMakersNumber(t *testing.T) {
	site, faults := buildSite(t, nil, func(o *Options) { o.Calculators[0].In[0].Maker = true })
	if site == nil {
		t.Fatal(faults)
	}
	cards := closedCards(parse(t, file(site, "en/fill.html")))
	if len(cards) != 2 {
		t.Fatalf("%d cards, not 2", len(cards))
	}
	for _, c := range cards {
		if len(classed(c, "answer")) > 0 || strings.Contains(text(c), "ft³") {
			t.Errorf("the card answers: %s", text(c))
		}
	}
}

// The budget of a page is that of its kind. The same body is over the budget of a
// procedure and within those of a home page and a reference page.
func TestBudgetByKind(t *testing.T) {
	words := make([]string, 1_350)
	for i := range words {
		words[i] = strconv.FormatUint(uint64(i+1)*0x9E3779B97F4A7C15>>32, 36) // gzip finds little to save
	}
	body := "\n\n" + strings.Join(words, " ") + ".\n"
	const head = "---\ntitle: Heavy\nsummary: One sentence.\nkind: "
	const table = "\n```table\ncalculator: tank\ntable: sides\n```\n"
	for _, c := range []struct {
		name, text string
		limit      int
	}{
		{"en/heavy.md", head + "procedure\nstage: filling\norder: 30\nwhen: Now\nsources: [common practice]\n---" +
			body,
			output.PageLimit},
		{"en/heavy.md", head + "reference\n---" + body, output.PageLimit},
		{"en/heavy.md", head + "reference\n---" + body + table, 0},
		{"en/index.md", strings.TrimRight(content()["en/index.md"], "\n") + body, 0},
		{"en/words.md", strings.TrimRight(content()["en/words.md"], "\n") + body, 0},
	} {
		if !strings.HasPrefix(c.text, "---") {
			t.Fatalf("%s is not a page: %.40s", c.name, c.text)
		}
		_, faults := buildSite(t, map[string]string{c.name: c.text}, nil)
		heavy := slices.IndexFunc(faults, func(f fault.Fault) bool { return f.Code == "budget" })
		if (heavy >= 0) != (c.limit > 0) {
			t.Errorf("%s %.60q: %v", c.name, c.text, faults)
		} else if heavy >= 0 && !strings.HasSuffix(faults[heavy].Text, "limit "+strconv.Itoa(c.limit)+" B") {
			t.Errorf("%s: %s", c.name, faults[heavy].Text)
		}
	}
}
