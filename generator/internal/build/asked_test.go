package build

import (
	"strings"
	"testing"

	"coursebook/generator/internal/fault"
)

// TestAskedFor: the thesaurus names calculators and kinds of page that exist, and the
// search finds a calculator by the words of the thesaurus.
func TestAskedFor(t *testing.T) {
	files := content()
	files["thesaurus.tsv"] = "en:\tcalc:tank\tgulps\nen:\tcalc:tonk\tsips\n" +
		"en:\tkind:calculator\thow many\nen:\tkind:page\twhere\n"
	dir := t.TempDir()
	write(t, dir, files)
	var faults fault.List
	Inspect(optionsFor(dir), &faults)
	var got []string
	for _, f := range faults.All() {
		if strings.HasPrefix(f.Code, "unknown-") {
			got = append(got, f.Error())
		}
	}
	if len(got) != 2 || !strings.Contains(got[0], `thesaurus.tsv:2:5: error: there is no calculator "tonk"`) ||
		!strings.Contains(got[1], `thesaurus.tsv:4:5: error: there is no kind of page "page"`) {
		t.Errorf("got %q", got)
	}
	files["thesaurus.tsv"] = "en:\tcalc:tank\tgulps\n"
	dir = t.TempDir()
	write(t, dir, files)
	faults = fault.List{}
	indexes := Indexes(optionsFor(dir), &faults)
	if faults.Errors() > 0 {
		t.Fatal(faults.All())
	}
	if hits, _ := indexes["en"].Find("gulps", 3); len(hits) != 1 || hits[0].URL != "en/calc/tank.html" {
		t.Errorf("found %v", hits)
	}
}
