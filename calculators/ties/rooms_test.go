package ties_test

import (
	"os"
	"testing"

	"coursebook/calculators/calc"
	"coursebook/calculators/calctest"
	"coursebook/calculators/figure"
	"coursebook/calculators/ties/blockoutuplift"
	"coursebook/calculators/ties/tieload"
	"coursebook/calculators/ties/windowsupports"
)

func save(t *testing.T, c *calc.Calculator, name string, typed ...string) {
	t.Helper()
	in, res := calctest.RunCase(t, c, typed...)
	d := c.Draw(calc.Locale{}, in, res)
	if d.Empty() {
		t.Errorf("%s draws nothing for %v", c.ID, typed)
	}
	if dir := os.Getenv("FIGURES"); dir != "" {
		os.WriteFile(dir+"/"+name+".svg", []byte(figure.SVG(d)), 0o600)
	}
}

func TestDrawings(t *testing.T) {
	save(t, tieload.Calculator, "tie")
	save(t, tieload.Calculator, "tie-many", "missing=6", "sharing=1", "up=8")
	save(t, blockoutuplift.Calculator, "block")
	save(t, blockoutuplift.Calculator, "block-covered", "side-a=4'", "side-b=3' 6\"")
	save(t, windowsupports.Calculator, "window")
	save(t, windowsupports.Calculator, "window-wide", "width=120", "height=48", "cover=3'")
}
