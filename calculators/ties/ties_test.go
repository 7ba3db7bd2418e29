package ties

import (
	"os"
	"testing"

	"coursebook/calculators/calc"
	"coursebook/calculators/calctest"
	"coursebook/calculators/figure"
	"coursebook/calculators/quantity"
)

var us = quantity.Style{System: quantity.US}

// shown is an output as a reader of US units sees it.
func shown(c *calc.Calculator, res calc.Result, id string) string {
	for i, f := range res.Out.Fields() {
		if f.ID == id {
			return calc.Locale{Style: us}.Write(f, res.Out.At(i))
		}
	}
	return ""
}

func save(t *testing.T, c *calc.Calculator, name string, typed ...string) {
	t.Helper()
	in, res := calctest.RunCase(t, c, typed...)
	d := c.Draw(calc.Locale{Style: us}, in, res)
	if d.Empty() {
		t.Errorf("%s draws nothing for %v", c.ID, typed)
	}
	if dir := os.Getenv("FIGURES"); dir != "" {
		os.WriteFile(dir+"/"+name+".svg", []byte(figure.SVG(d)), 0o600)
	}
}

func TestDrawings(t *testing.T) {
	save(t, TieLoad, "tie")
	save(t, TieLoad, "tie-many", "missing=6", "sharing=1", "up=8")
	save(t, BlockOutUplift, "block")
	save(t, BlockOutUplift, "block-covered", "side-a=4'", "side-b=3' 6\"")
	save(t, WindowSupports, "window")
	save(t, WindowSupports, "window-wide", "width=120", "height=48", "cover=3'")
}
