package build

import (
	"fmt"
	"image"
	"image/draw"
	"slices"
	"strings"
	"testing"

	"github.com/makiuchi-d/gozxing"
	"github.com/makiuchi-d/gozxing/qrcode"
	"golang.org/x/net/html"

	"coursebook/generator/internal/fault"
)

// classed lists the elements with a class in order.
func classed(doc *html.Node, class string) []*html.Node {
	var list []*html.Node
	for _, e := range elements(doc, "") {
		if slices.Contains(strings.Fields(attr(e, "class")), class) {
			list = append(list, e)
		}
	}
	return list
}

// titles are the headings of the elements with a class.
func titles(doc *html.Node, class string) []string {
	var list []string
	for _, e := range classed(doc, class) {
		list = append(list, text(elements(e, "h2")[0]))
	}
	return list
}

// checkPage is a procedure with n checks.
func checkPage(title string, order, n int) string {
	return fmt.Sprintf(
		"---\ntitle: %s\nsummary: One.\nstage: filling\norder: %d\nwhen: At 2 ft\nsources: [common "+
			"practice]\nrevised: 2026-02-03\n---\n\n"+
			"> **DANGER** Deep & cold.\n\n## Check\n\n",
		title,
		order,
	) + strings.Repeat(
		"- [ ] **Rim.** Is it dry?\n",
		n,
	)
}

func TestCards(t *testing.T) {
	site, faults := buildSite(
		t,
		map[string]string{"en/crew-talk.md": checkPage("Talk", 90, 7), "en/long.md": checkPage("Long", 95, 11)},
		nil,
	)
	if site == nil {
		t.Fatal(faults)
	}
	doc := parse(t, file(site, "en/cards.html"))
	if got, want := titles(doc, "pocket"), []string{"Talk", "Fill the tank", "Long 1 of 2",
		"Long 2 of 2"}; !slices.Equal(
		got,
		want,
	) {
		t.Errorf("cards %q, not %q", got, want)
	}
	cards := classed(doc, "pocket")
	for i, checks := range []int{7, 1, 5, 6} {
		if n := len(elements(cards[i], "li")); n != checks {
			t.Errorf("card %d has %d checks, not %d", i, n, checks)
		}
	}
	for _, part := range []string{"At 2 ft600 mm", "DANGER", "Deep & cold.", "Rim. Is it dry?", "2026-02-03",
		"en/crew-talk.html"} {
		if !strings.Contains(text(cards[0]), part) {
			t.Errorf("the first card lacks %q: %s", part, text(cards[0]))
		}
	}
	if !strings.Contains(text(cards[1]), "Water drowns & <b>wets</b>.") {
		t.Errorf("the second card has no caution: %s", text(cards[1]))
	}
	spanish := classed(parse(t, file(site, "es/cards.html")), "pocket")
	if len(spanish) != 3 || attr(spanish[0], "lang") != "en" || !strings.Contains(text(spanish[0]), "DANGER") {
		t.Errorf("%d Spanish cards; the first must be the English talk", len(spanish))
	}
}

func inspected(t *testing.T, changes map[string]string) []fault.Fault {
	t.Helper()
	files := content()
	for name, text := range changes {
		files[name] = text
	}
	dir := t.TempDir()
	write(t, dir, files)
	var faults fault.List
	Inspect(optionsFor(dir), &faults)
	return faults.All()
}

func TestPaperWarnings(t *testing.T) {
	tedious := checkPage("Tedious", 95, 0) + strings.Repeat("- [ ] "+strings.Repeat("Is it dry? ", 30)+"\n", 9)
	faults := inspected(t, map[string]string{
		"en/long.md": checkPage("Long", 95, 11), "en/tedious.md": tedious,
		"manual.yaml": manualYAML +
			"address: https://a-long-host-name.example.org/and-a-long-folder/for-the-crews/of/\n" +
			"posters:\n- fill\n",
	})
	for _, want := range []struct {
		code, file string
		line       int
		source     string
	}{
		{"card-many", "en/long.md", 24, "- [ ] **Rim.** Is it dry?"},
		{"card-full", "en/tedious.md", 15, "- [ ] Is it dry?"},
		{"poster-dense", "manual.yaml", 15, "- fill"},
	} {
		found := slices.ContainsFunc(faults, func(f fault.Fault) bool {
			return f.Code == want.code && f.Severity == fault.Warning && strings.HasSuffix(f.File, want.file) &&
				f.Line == want.line &&
				strings.HasPrefix(f.Source, want.source)
		})
		if !found {
			t.Errorf("no warning %s at %s:%d: %v", want.code, want.file, want.line, faults)
		}
	}
	if faults := inspected(t, map[string]string{"en/nine.md": checkPage("Nine", 95, 9),
		"manual.yaml": manualYAML +
			"address: https://example.org\nposters: " +
			"[fill]\n"}); slices.ContainsFunc(
		faults,
		func(f fault.Fault) bool {
			return strings.HasPrefix(f.Code, "card-") || strings.HasPrefix(f.Code, "poster-")
		},
	) {
		t.Errorf("warnings without a reason: %v", faults)
	}
}

func TestPosterFaults(t *testing.T) {
	_, faults := buildSite(t, map[string]string{"manual.yaml": manualYAML + "posters: [fil, sizes]\n"}, nil)
	var got []string
	for _, f := range faults {
		if f.Severity == fault.Error {
			got = append(got, fmt.Sprintf("%s:%d:%d %s %s | %s", f.File, f.Line, f.Col, f.Code, f.Text, f.Hint))
		}
	}
	want := []string{
		`manual.yaml:13:11 poster-unknown no page "fil" for a poster | did you mean fill?`,
		`manual.yaml:13:16 poster-empty the page "sizes" has no steps for a poster | ` +
			`name a page with steps, or remove it`,
	}
	if !slices.Equal(got, want) {
		t.Errorf("got %q\nwant %q", got, want)
	}
}

// Without an address a poster gives the way to the page in words.
func TestPosterWithoutAddress(t *testing.T) {
	steps := "1. **Open the lid,** then turn the valve.\n2. **Hold point** The foreman looks. Nobody goes in before. " +
		strings.Repeat(
			"It is a long, long wait for all of us and for the truck and the pump at the gate. ",
			2,
		) +
		"\n3. **Level.** Look.\n"
	for n := 4; n <= 21; n++ {
		steps += fmt.Sprintf("%d. **Step %d.**\n", n, n)
	}
	pages := map[string]string{"manual.yaml": manualYAML + "posters: [fill, blow-out]\n",
		"en/fill.md": strings.Replace(
			fillPage,
			"1. **Open.** Turn the valve.\n2. **Hold point: level.** Look at it.\n",
			steps,
			1,
		)}
	site, faults := buildSite(t, pages, nil)
	if site == nil {
		t.Fatal(faults)
	}
	doc := parse(t, file(site, "en/posters.html"))
	if got := titles(doc, "poster"); !slices.Equal(got, []string{"Fill the tank", "When a tank opens"}) {
		t.Errorf("posters %q", got)
	}
	posters := classed(doc, "poster")
	for _, part := range []string{"WARNING", "Water drowns & <b>wets</b>.", "Open the lid.", "Level.",
		"Hold point. The foreman looks. Nobody goes in before.", "Step 20.", "One more step",
		"open “Tank book” on the phone and search for “Fill the tank”"} {
		if !strings.Contains(text(posters[0]), part) {
			t.Errorf("the first poster lacks %q: %s", part, text(posters[0]))
		}
	}
	for _, part := range []string{"Turn the valve", "long, long", "Step 21"} {
		if strings.Contains(text(posters[0]), part) {
			t.Errorf("the first poster has %q", part)
		}
	}
	if n := len(classed(doc, "held")); n != 1 {
		t.Errorf("%d hold points, not 1", n)
	}
	if !strings.Contains(text(posters[1]), "Stand back from the rim.") {
		t.Errorf("a step without a lead is not on the poster: %s", text(posters[1]))
	}
	if n := len(classed(doc, "qr")); n != 0 {
		t.Errorf("%d codes without an address", n)
	}
}

// Another QR decoder reads the code of a poster as the address of its page, which is
// printed below it. The modules of the code are at least 1 mm wide.
func TestPosterCode(t *testing.T) {
	site, faults := buildSite(
		t,
		map[string]string{"manual.yaml": manualYAML + "posters: [fill]\naddress: https://example.org/tanks\n"},
		nil,
	)
	if site == nil {
		t.Fatal(faults)
	}
	for page, want := range map[string]string{"en/posters.html": "https://example.org/tanks/en/fill.html",
		"es/posters.html": "https://example.org/tanks/es/fill.html"} {
		doc := parse(t, file(site, page))
		codes := classed(doc, "qr")
		if len(codes) != 1 {
			t.Errorf("%s: %d codes", page, len(codes))
			continue
		}
		if got, err := scan(codes[0]); err != nil || got != want {
			t.Errorf("%s: the code is read as %q, not %q: %v", page, got, want, err)
		}
		if got := text(classed(doc, "address")[0]); got != want {
			t.Errorf("%s: the address below it is %q", page, got)
		}
		var side, other, width int
		fmt.Sscanf(attr(codes[0], "viewbox")+attr(codes[0], "viewBox"), "0 0 %d %d", &side, &other)
		if fmt.Sscanf(attr(codes[0], "width"), "%dmm", &width); side < 29 || side != other || width < side {
			t.Errorf("%s: %d by %d modules on %d mm", page, side, other, width)
		}
	}
}

// scan decodes the drawing of a code: a light square, and dark bars as high as one
// module.
func scan(svg *html.Node) (string, error) {
	const dots = 5
	paths := elements(svg, "path")
	var side int
	if _, err := fmt.Sscanf(attr(paths[0], "d"), "M0 0h%d", &side); err != nil {
		return "", err
	}
	img := image.NewGray(image.Rect(0, 0, side*dots, side*dots))
	draw.Draw(img, img.Bounds(), image.White, image.Point{}, draw.Src)
	for _, bar := range strings.SplitAfter(attr(paths[1], "d"), "z") {
		var x, y, length int
		if _, err := fmt.Sscanf(bar, "M%d %dh%dv1", &x, &y, &length); err != nil && bar != "" {
			return "", fmt.Errorf("bar %q: %w", bar, err)
		}
		draw.Draw(img, image.Rect(x*dots, y*dots, (x+length)*dots, (y+1)*dots), image.Black, image.Point{}, draw.Src)
	}
	bits, err := gozxing.NewBinaryBitmapFromImage(img)
	if err != nil {
		return "", err
	}
	r, err := qrcode.NewQRCodeReader().Decode(bits, nil)
	if err != nil {
		return "", err
	}
	return r.GetText(), nil
}

// The list of all pages links to the pages for paper, if there are any.
func TestPaperLinks(t *testing.T) {
	site, faults := buildSite(t, map[string]string{"manual.yaml": manualYAML + "posters: [fill]\n"}, nil)
	if site == nil {
		t.Fatal(faults)
	}
	var leads []string
	for _, a := range elements(parse(t, file(site, "es/all.html")), "a") {
		if at := attr(a, "href"); at == "cards.html" || at == "posters.html" {
			leads = append(leads, at+" "+text(a))
		}
	}
	if want := []string{"cards.html Tarjetas de bolsillo", "posters.html Carteles"}; !slices.Equal(leads, want) {
		t.Errorf("es/all.html links to %q, not %q", leads, want)
	}
	plain := buildGood(t)
	if file(plain, "en/posters.html") != nil || strings.Contains(string(file(plain, "en/all.html")), "posters.html") {
		t.Error("a manual without posters has a page of them")
	}
}
