package catalog

import (
	"fmt"
	"path/filepath"
	"strings"
	"testing"

	"coursebook/calculators/calctest"
)

// Every calculator passes the checks of package calctest and has a unique ID.
// The test logs what each was compared with.
func TestCatalog(t *testing.T) {
	seen := map[string]bool{}
	fmt.Printf("%-18s %9s %9s %6s %9s %7s %10s %8s\n", "calculator",
		"confirmed", "secondary", "memory", "misprints", "derived", "identities", "largest")
	for _, c := range All() {
		if seen[c.ID] {
			t.Errorf("two calculators have the id %s", c.ID)
		}
		seen[c.ID] = true
		t.Run(c.ID, func(t *testing.T) {
			k := calctest.Check(t, c)
			n := k.ByStatus
			fmt.Printf("%-18s %9d %9d %6d %9d %7d %10d %7.2f×\n", c.ID, n["confirmed"], n["secondary"],
				n["memory"]+n["common practice"], n["misprint"], n["derived"], k.Identities, k.Largest)
		})
	}
}

// Every file of published values belongs to a calculator.
func TestPublishedFilesAreUsed(t *testing.T) {
	ids := map[string]bool{}
	for _, c := range All() {
		ids[c.ID] = true
	}
	dir, err := calctest.PublishedDir()
	if err != nil {
		t.Fatal(err)
	}
	files, err := filepath.Glob(filepath.Join(dir, "*.tsv"))
	if err != nil || len(files) == 0 {
		t.Fatalf("%d files in %s: %v", len(files), dir, err)
	}
	for _, f := range files {
		if id := strings.TrimSuffix(filepath.Base(f), ".tsv"); !ids[id] {
			t.Errorf("testdata/published/%s.tsv belongs to no calculator", id)
		}
	}
}
