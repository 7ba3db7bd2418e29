package calc_test

import (
	"fmt"
	"testing"

	"coursebook/calculators/calc"
	"coursebook/calculators/quantity"
)

// Varying cells come first, one Given each; the other cells of a row follow
// together. Inputs that do not apply or are empty are left out. 3 ft are 0.9144 m (NIST SP 811).
func TestGivens(t *testing.T) {
	in, notes := calc.Read(
		tank,
		[]calc.Entry{{Path: "side", Text: "3 ft"}, {Path: "boxes.1.side", Text: "1 ft"},
			{Path: "boxes.1.name", Text: "small"}, {Path: "boxes.2.side", Text: "2 ft"}},
		quantity.Style{},
	)
	if len(notes) > 0 {
		t.Fatal(notes)
	}
	metric := calc.Locale{Style: quantity.Style{System: quantity.Metric, Mark: quantity.Comma}}
	got := fmt.Sprint(metric.Givens(in, []string{"side", "boxes.2.side"}, nil))
	for _, c := range []struct{ got, want string }{
		{got, wantMetric},
		{fmt.Sprint(calc.Locale{}.Givens(in, nil, []calc.Entry{{Path: "side", Text: "3 ft"}})), wantUS},
	} {
		if c.got != c.want {
			t.Errorf("got  %s\nwant %s", c.got, c.want)
		}
	}
}

const (
	wantMetric = `[{side Side 0,914 m true false} {boxes.2.side Boxes 2: Box side 0,610 m true false} ` +
		`{boxes.1 Boxes 1 Box side 0,305 m; Name small false false} {shape Shape cubic false true}]`
	wantUS = `[{side Side 3' 0" false false} {boxes.1 Boxes 1 Box side 1' 0"; Name small false false} ` +
		`{boxes.2 Boxes 2 Box side 2' 0" false false} {shape Shape cubic false true}]`
)
