package main

import (
	"strconv"
	"strings"
	"testing"

	"coursebook/calculators/pressure"
)

// The page of tables lists every case in which the full fluid head counts, with the limits
// that form pressure has.
func TestFullHeadOnThePage(t *testing.T) {
	figure := func(v float64, unit string) string { return strconv.FormatFloat(v, 'f', -1, 64) + unit }
	tenths := func(v float64, unit string) string { return figure(float64(int(v*10))/10, unit) }
	cases := []string{
		figure(float64(pressure.MethodSlump), " in."),
		figure(pressure.CIRIAColdest*9/5+32, " °F"),
		figure(pressure.DINSetHigh, " h"),
		figure(float64(pressure.VibrationDepth), " ft."),
		tenths(float64(pressure.MethodRiseSI), " ft/h"),
		figure(pressure.WholeHour*60, " min"),
		tenths(pressure.DINHeight/0.3048, " ft"),
	}
	always := map[string]struct{ heading, word string }{
		"en": {"## When the full head counts", "| Always |"},
		"es": {"## Cuándo cuenta la presión líquida completa", "| Siempre |"},
	}
	for lang, x := range always {
		_, section, found := strings.Cut(manualPage(t, lang, "tables"), x.heading)
		if !found {
			t.Fatalf("%s: no heading %q", lang, x.heading)
		}
		section, _, _ = strings.Cut(section, "\n## ")
		for _, c := range cases {
			if !strings.Contains(section, c) {
				t.Errorf("%s: the table does not name %s", lang, c)
			}
		}
		// Self-levelling concrete, a buried hose end and old lifts vibrated again have no limit.
		if n := strings.Count(section, x.word); n != 3 {
			t.Errorf("%s: %d cases that always count, want 3", lang, n)
		}
		if rows := strings.Count(section, "\n| "); rows != 1+len(cases)+3+1 { // head, limits, always, outside tool
			t.Errorf("%s: %d rows", lang, rows)
		}
	}
}
