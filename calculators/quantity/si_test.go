package quantity

import "testing"

// Every dimension but numbers and ratios has an SI unit. If the table of units
// has its symbol, its scale is 1.
func TestSISymbols(t *testing.T) {
	for _, d := range Dimensions() {
		symbol := d.SI()
		if (symbol == "") != (d == Number || d == Ratio) {
			t.Errorf("%s: SI unit %q", d, symbol)
		}
		for _, u := range Units(d) {
			if u.Symbol == symbol && u.ToSI(1) != 1 {
				t.Errorf("%s: 1 %s is %v SI", d, symbol, u.ToSI(1))
			}
		}
	}
}
