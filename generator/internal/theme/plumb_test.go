package theme

import (
	"io/fs"
	"maps"
	"math"
	"os"
	"path/filepath"
	"regexp"
	"strconv"
	"strings"
	"testing"
)

// files concatenates the theme's files of a pattern.
func files(t *testing.T, pattern string) string {
	t.Helper()
	names, err := fs.Glob(plumb(), pattern)
	if err != nil || len(names) == 0 {
		t.Fatalf("%s: no files, error %v", pattern, err)
	}
	var all strings.Builder
	for _, name := range names {
		data, err := fs.ReadFile(plumb(), name)
		if err != nil {
			t.Fatal(err)
		}
		all.Write(data)
	}
	return all.String()
}

var key = regexp.MustCompile(`"(ui\.[a-z.-]+)"`)

func keysIn(text string) map[string]bool {
	set := map[string]bool{}
	for _, m := range key.FindAllStringSubmatch(text, -1) {
		set[m[1]] = true
	}
	return set
}

// inGenerator are texts that the generator uses, not the templates: in titles, and as
// the list of the first jump marks.
var inGenerator = map[string]bool{"ui.listing.title": true, "ui.marks.first": true}

// Every text is used and every used text exists. The texts that a script shows are
// written into the page.
func TestWords(t *testing.T) {
	texts, err := Texts(plumb())
	if err != nil {
		t.Fatal(err)
	}
	templates := keysIn(files(t, "templates/*.html"))
	for k := range templates {
		if k != "ui.signal." && texts[k] == "" {
			t.Errorf("words.tsv lacks %s", k)
		}
	}
	for k := range texts {
		if !templates[k] && !inGenerator[k] {
			t.Errorf("no template uses %s", k)
		}
	}
	inPage := keysIn(strings.ReplaceAll(files(t, "templates/words.html"), `{{template "w" `, ""))
	for k := range keysIn(files(t, "ts/*.ts")) {
		if !strings.HasSuffix(k, ".") && !inPage[k] {
			t.Errorf("a script uses %s, which is not in the page", k)
		}
	}
}

// Scripts contain no text of the interface and do not parse text as markup.
func TestScripts(t *testing.T) {
	scripts := files(t, "ts/*.ts") + files(t, "worker/*.ts")
	for _, sink := range []string{"innerHTML", "outerHTML", "insertAdjacentHTML", "document.write", "eval(",
		"new Function", "DOMParser", ".cssText", `setAttribute("style"`} {
		if strings.Contains(scripts, sink) {
			t.Errorf("scripts use %s", sink)
		}
	}
	bare := regexp.MustCompile(`(?m)^\s*(//|\*|/\*).*$`).ReplaceAllString(scripts, "")
	sentence := regexp.MustCompile(`"[A-Z][a-z]+ [a-z]+ [^"]*"`)
	if s := sentence.FindString(bare); s != "" {
		t.Errorf("a script contains the text %s", s)
	}
}

// figure.ts allows every tag and attribute of drawings, and none that runs or loads
// something.
func TestFigureList(t *testing.T) {
	script := files(t, "ts/figure.ts")
	source, err := os.ReadFile(filepath.FromSlash("../../../calculators/figure/node.go"))
	if err != nil {
		t.Fatal(err)
	}
	listed := map[string]bool{}
	for _, m := range regexp.MustCompile(`new Set\("([^"]+)"`).FindAllStringSubmatch(script, -1) {
		for _, name := range strings.Fields(m[1]) {
			listed[name] = true
		}
	}
	names := regexp.MustCompile(`(?:shape\(|num\(|Attr\{|Tag: )"([a-z0-9-]+)"`)
	for _, m := range names.FindAllStringSubmatch(string(source), -1) {
		if !listed[m[1]] {
			t.Errorf("figure.ts does not draw %s", m[1])
		}
	}
	for _, bad := range []string{"script", "a", "image", "use", "foreignObject", "href", "style", "onload"} {
		if listed[bad] {
			t.Errorf("figure.ts allows %s", bad)
		}
	}
	styles := files(t, "css/figure.css")
	for _, m := range regexp.MustCompile(`Role = "([a-z]+)"`).FindAllStringSubmatch(string(source), -1) {
		switch m[1] {
		case "ink", "opening", "within", "label":
			continue // drawn in the common colours
		}
		if !strings.Contains(styles, ".f-"+m[1]) {
			t.Errorf("figure.css has no colour for the role %s", m[1])
		}
	}
}

// Colours are numbers in tokens.css and print.css only; elsewhere they have names.
func TestColoursInTokens(t *testing.T) {
	colour := regexp.MustCompile(`#[0-9a-f]{3,8}\b`)
	names, _ := fs.Glob(plumb(), "css/*.css")
	for _, name := range names {
		data, _ := fs.ReadFile(plumb(), name)
		for _, c := range colour.FindAllString(string(data), -1) {
			exempt := strings.HasSuffix(name, "tokens.css") || strings.HasSuffix(name, "print.css")
			if !exempt && c != "#fff" && c != "#000" && c != "#0004" {
				t.Errorf("%s contains the colour %s", name, c)
			}
		}
	}
}

// luminance and contrast are those of the Web Content Accessibility
// Guidelines 2.2, definitions of relative luminance and contrast ratio.
func luminance(hex string) float64 {
	part := func(i int) float64 {
		n, _ := strconv.ParseUint(hex[i:i+2], 16, 8)
		c := float64(n) / 255
		if c <= 0.04045 {
			return c / 12.92
		}
		return math.Pow((c+0.055)/1.055, 2.4)
	}
	return 0.2126*part(1) + 0.7152*part(3) + 0.0722*part(5)
}

func contrast(a, b string) float64 {
	x, y := luminance(a), luminance(b)
	return (math.Max(x, y) + 0.05) / (math.Min(x, y) + 0.05)
}

// The formula against pairs whose ratio is widely published (from memory):
// black on white 21; #767676 the lightest grey that reaches 4.5 on white.
func TestContrastFormula(t *testing.T) {
	for _, c := range []struct {
		a, b string
		want float64
	}{{"#000000", "#ffffff", 21}, {"#767676", "#ffffff", 4.54}, {"#777777", "#ffffff", 4.48}} {
		if got := contrast(c.a, c.b); math.Abs(got-c.want) > 0.005 {
			t.Errorf("%s on %s: %.3f, want %.2f", c.a, c.b, got, c.want)
		}
	}
}

// Text reaches 7 : 1, body text 15 : 1, borders of controls 3 : 1, in light,
// dark and full sun, on paper and on wash.
func TestContrast(t *testing.T) {
	blocks := regexp.MustCompile(`(?s)\{([^{}]*--paper[^{}]*)\}`).FindAllStringSubmatch(files(t, "css/tokens.css"), -1)
	if len(blocks) != 4 {
		t.Fatalf("%d sets of colours, want light, dark, dark by choice and full sun", len(blocks))
	}
	var sets []map[string]string
	for _, b := range blocks {
		set := map[string]string{"white": "#ffffff", "black": "#000000"}
		for _, m := range regexp.MustCompile(`--([a-z]+): (#[0-9a-f]{6})`).FindAllStringSubmatch(b[1], -1) {
			set[m[1]] = m[2]
		}
		sets = append(sets, set)
	}
	sun := maps.Clone(sets[0]) // it overrides the light set
	maps.Copy(sun, sets[3])
	sets[3] = sun
	for name, hex := range sets[1] {
		if sets[2][name] != hex {
			t.Errorf("the two dark sets differ in %s", name)
		}
	}
	rules := []struct {
		text, ground string
		least        float64
	}{
		{"ink", "paper", 15}, {"ink", "wash", 15}, {"soft", "paper", 7}, {"soft", "wash", 7},
		{"chalk", "paper", 7}, {"chalk", "wash", 7},
		{"limit", "paper", 7}, {"edge", "paper", 3}, {"ink", "bright", 7}, {"ink", "concrete", 7}, {"ink", "foam", 4.5},
	}
	for i, set := range sets {
		for _, r := range rules {
			if got := contrast(set[r.text], set[r.ground]); got < r.least {
				t.Errorf("set %d: %s on %s is %.2f, want %g", i, r.text, r.ground, got, r.least)
			}
		}
	}
	for signal, text := range map[string]string{"danger": "white", "warning": "black", "caution": "black",
		"notice": "white"} {
		if got := contrast(sets[0][signal], sets[0][text]); got < 7 {
			t.Errorf("signal word %s on %s is %.2f, want 7", text, signal, got)
		}
	}
}
