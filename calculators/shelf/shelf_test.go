package shelf

import (
	"fmt"
	"path/filepath"
	"testing"

	"coursebook/calculators/proof"
)

const publishedDir = "../../testdata/published"

// Every calculator holds against its own declaration and against published
// values, has an ID of its own, and every file of values has a calculator.
// The table is printed for whoever reads the test's output.
func TestShelf(t *testing.T) {
	owned := map[string]bool{}
	fmt.Printf("%-18s %9s %9s %6s %9s %7s %10s %8s\n", "calculator", "confirmed", "secondary", "memory", "misprints", "derived", "identities", "largest")
	for _, c := range All() {
		file := proof.File(publishedDir, c)
		if owned[file] {
			t.Errorf("two calculators have the id %s", c.ID)
		}
		owned[file] = true
		t.Run(c.ID, func(t *testing.T) {
			k := proof.Calculator(t, c, publishedDir)
			n := k.ByStatus
			fmt.Printf("%-18s %9d %9d %6d %9d %7d %10d %7.2f×\n", c.ID, n["confirmed"], n["secondary"],
				n["memory"]+n["common practice"], n["misprint"], n["derived"], k.Identities, k.Largest)
		})
	}
	files, err := filepath.Glob(filepath.Join(publishedDir, "*.tsv"))
	if err != nil {
		t.Fatal(err)
	}
	for _, f := range files {
		if !owned[f] {
			t.Errorf("%s belongs to no calculator", f)
		}
	}
}
