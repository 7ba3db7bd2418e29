package catalog

import (
	"slices"
	"strings"
	"testing"

	"coursebook/calculators/calc"
)

// usual lists, by calculator, the inputs whose default value is usual on any site: a constant,
// a value of standards, a habit of the crew or a common size. It stands as an assumption when
// the reader begins with an empty form. Every other default value that is no house rule is
// invented for the example, and the form must not keep it.
var usual = map[string]string{
	"wall-volume":      "outside-corners inside-corners step-yd step-m truck-yd truck-m",
	"house-order":      "step-yd step-m truck-yd truck-m",
	"footing-volume":   "step-yd step-m",
	"last-truck":       "step-yd step-m",
	"radius-wall":      "foam",
	"course-take-off":  "waste",
	"form-pressure":    "stop weight",
	"ciria-pressure":   "weight",
	"din-pressure":     "weight",
	"tie-load":         "missing sharing factor weight",
	"block-out-uplift": "weight",
	"window-supports":  "weight board-wide board-thick stress modulus sag",
	"rate-of-rise":     "stop moving",
	"truck-spacing":    "load check wait wash",
	"pour-time":        "moving set-up clean-up crew",
	"pump-line":        "hopper empty weight",
	"vibrator":         "speed move hands above",
	"battery-packs":    "cold duty in-tool spare",
	"brace-layout":     "side closest plank span lap abreast width",
	"wind-on-wall":     "hill direction ground base coefficient below load width out",
	"hands-off":        "reference",
	"string-line":      "block string-height attach-height foot-distance foot-below",
	"line-rounds":      "block string-height attach-height foot-distance foot-below",
	"mix-temperature":  "ice",
	"hot-weather":      "hot-from",
	"setting-time":     "reference q",
	"maturity":         "datum energy reference curve-start",
	"daylight":         "after",
	"bar-take-off":     "layers waste",
	"anchor-bolts":     "clear diameter end",
}

func TestInventedDefaultsAreDeclared(t *testing.T) {
	for c := range slices.Values(All()) {
		listed := strings.Fields(usual[c.ID])
		for _, f := range c.In {
			kept := f.Usual != "" && f.Rule == "" && !f.Invented() && f.Kind != calc.Choice && f.Kind != calc.Flag
			if i := slices.Index(listed, f.ID); i >= 0 {
				listed = slices.Delete(listed, i, i+1)
				if !kept {
					t.Errorf("%s: %s is listed as usual, but has no such default", c.ID, f.ID)
				}
			} else if kept {
				t.Errorf("%s: %s has the default %q: mark it as an example, or list it as usual", c.ID, f.ID, f.Usual)
			}
		}
		if len(listed) > 0 {
			t.Errorf("%s: no input %v", c.ID, listed)
		}
	}
}
