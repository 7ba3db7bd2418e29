package pumpsetup

import (
	"math"
	"strconv"
	"testing"

	"coursebook/calculators/calc"
	"coursebook/calculators/calctest"
)

// Load, soil report, end hose and voltage have no usual value, and the ground opens as
// not known. So there is no pad and no ring, and no known ground or voltage gives a
// larger distance.
func TestTheMachineIsAsked(t *testing.T) {
	for _, f := range Calculator.In {
		switch f.ID {
		case "load", "report", "pad", "hose", "kv", "asked", "wire-asked":
			if f.Usual != "" {
				t.Errorf("%s has the usual value %q", f.ID, f.Usual)
			}
		}
	}
	res := calctest.RunNotes(t, Calculator, []calc.Text{noteLoose, noteKV, askHose, noteFill})
	for _, id := range []string{"pad-side", "pad-area", "ring", "own", "crane", "soil"} {
		if res.Out.Has(id) {
			t.Errorf("%s without its input", id)
		}
	}
	for _, ground := range []string{clay, sand, gravel} {
		known := calctest.Run(t, Calculator, "ground="+ground, "kv=13").Out
		if calc.Over(known.Num("setback"), res.Out.Num("setback")) ||
			calc.Over(known.Num("wire-distance"), res.Out.Num("wire-distance")) {
			t.Errorf("%s is stricter than ground and voltage that are not known", ground)
		}
	}
	calctest.NearBy(t, "unknown voltage", res.Out.Num("wire-distance"), calc.SI(unknown, "ft"), 1e-12)
}

// The distance from a power line never gets smaller with the voltage, is never
// less than the crane table or than what is asked, and never more than that of an
// unknown voltage unless more is asked.
func TestWire(t *testing.T) {
	last := 0.0
	for kV := 1; kV <= 1000; kV++ {
		typed := "kv=" + strconv.Itoa(kV)
		res := calctest.Run(t, Calculator, typed)
		d := res.Out.Num("wire-distance")
		if d < last || d < res.Out.Num("crane") || calc.Over(d, calc.SI(unknown, "ft")) {
			t.Fatalf("%s: %v m after %v m, crane %v m", typed, d, last, res.Out.Num("crane"))
		}
		last = d
	}
	calctest.NearBy(t, "asked", calctest.Run(t, Calculator, "kv=13", "wire-asked=60 ft").Out.Num("wire-distance"),
		calc.SI(60, "ft"), 1e-12)
	calctest.NearBy(t, "less asked", calctest.Run(t, Calculator, "kv=13", "wire-asked=5 ft").Out.Num("wire-distance"),
		calc.SI(20, "ft"), 1e-12)
	over := calctest.Run(t, Calculator, "kv=1100")
	if over.Out.Has("wire-distance") || !calctest.Noted(over, noteOver) {
		t.Error("a distance above the voltages of the table")
	}
	if calctest.Run(t, Calculator, "wire=no").Out.Has("wire-distance") {
		t.Error("a distance from no line")
	}
}

// The setback is never less than the cut is deep, nor than what is asked.
func TestSetback(t *testing.T) {
	for _, ground := range []string{clay, sand, gravel, loose} {
		for depth := 0; depth <= 20; depth++ {
			res := calctest.Run(t, Calculator, "ground="+ground, "depth="+strconv.Itoa(depth)+" ft")
			back := calc.From(res.Out.Num("setback"), "ft")
			if back < float64(depth)-1e-9 {
				t.Errorf("%s, %d ft deep: %v ft", ground, depth, back)
			}
			if calctest.Noted(res, noteLoose) != (ground != clay && depth > 0) {
				t.Errorf("%s, %d ft deep: %v", ground, depth, res.Notes)
			}
		}
	}
}

// A pad of the computed side carries the load, one a little smaller does not.
// More load or softer ground never makes the pad smaller.
func TestPad(t *testing.T) {
	number := func(x float64) string { return strconv.FormatFloat(x, 'g', -1, 64) }
	last := 0.0
	for load := 5000.0; load <= 100000; load += 5000 {
		for _, psf := range []float64{1000, 1500, 3000} {
			job := []string{"load=" + number(load) + " lbf", "report=" + number(psf) + " psf", "ground=" + gravel}
			side := calc.From(calctest.Run(t, Calculator, job...).Out.Num("pad-side"), "in")
			fits := calctest.Run(t, Calculator, append(job, "pad="+number(side)+" in")...)
			tight := calctest.Run(t, Calculator, append(job, "pad="+number(side*0.999)+" in")...)
			if fits.Out.Choice("own") != carries || calctest.Noted(fits, noteSmall) {
				t.Errorf("%v: a pad of %v in. is %s", job, side, fits.Out.Choice("own"))
			}
			if tight.Out.Choice("own") != small || !calctest.Noted(tight, noteSmall) {
				t.Errorf("%v: a smaller pad is %s", job, tight.Out.Choice("own"))
			}
		}
		side := calctest.Run(t, Calculator, "ground="+clay, "load="+number(load)+" lbf").Out.Num("pad-side")
		if side <= last {
			t.Errorf("%v lbf: %v m after %v m", load, side, last)
		}
		last = side
	}
	soft := calctest.Run(t, Calculator, "load=20000 lbf", "ground="+clay).Out.Num("pad-side")
	hard := calctest.Run(t, Calculator, "load=20000 lbf", "ground="+gravel).Out.Num("pad-side")
	calctest.NearBy(t, "clay and gravel", soft/hard, math.Sqrt2, 1e-12)
}

// Wet, loose and filled ground has no table value: no pad until a report gives one.
func TestFill(t *testing.T) {
	res := calctest.Run(t, Calculator, "ground=loose", "load=20000 lbf", "pad=48 in")
	if res.Out.Has("pad-side") || res.Out.Has("soil") || res.Out.Has("own") || !calctest.Noted(res, noteFill) {
		t.Error("a pad on fill without a report")
	}
	res = calctest.Run(t, Calculator, "ground=loose", "load=20000 lbf", "report=800 psf")
	if !res.Out.Has("pad-side") || calctest.Noted(res, noteFill) || calctest.Noted(res, noteTable) {
		t.Error("no pad on fill with a report")
	}
}

// A report over the pressures of the tables gives no pad and no verdict until it is said to
// be for this spot.
func TestHardReportIsAsked(t *testing.T) {
	for _, c := range []struct {
		ground, report string
		asked          bool
	}{
		{loose, "1500 psf", false}, {loose, "1550 psf", true}, {loose, "20000 psf", true},
		{clay, "3000 psf", false}, {clay, "3050 psf", true},
		{gravel, "3000 psf", false}, {gravel, "20000 psf", true},
	} {
		job := []string{"ground=" + c.ground, "report=" + c.report, "load=20000 lbf", "pad=60 in"}
		res := calctest.Run(t, Calculator, job...)
		if calctest.Noted(res, askSpot) != c.asked {
			t.Errorf("%v: asked is %v", job, !c.asked)
		}
		said := calctest.Run(t, Calculator, append(job, "this-spot=yes")...)
		if calctest.Noted(said, askSpot) {
			t.Errorf("%v: asked after the answer", job)
		}
		for _, id := range []string{"own", "pad-side", "pad-area", "soil", "pad-pressure"} {
			if res.Out.Has(id) == c.asked || !said.Out.Has(id) {
				t.Errorf("%v: %s is %v, with the answer %v", job, id, res.Out.Has(id), said.Out.Has(id))
			}
		}
	}
}

// A voltage without a power line is a contradiction: it is asked about.
func TestVoltageWithoutAWire(t *testing.T) {
	for _, c := range []struct {
		typed []string
		asked bool
	}{
		{[]string{"wire=no", "kv=13"}, true},
		{[]string{"wire=no"}, false},
		{[]string{"wire=yes", "kv=13"}, false},
	} {
		res := calctest.Run(t, Calculator, c.typed...)
		if calctest.Noted(res, askWire) != c.asked || res.Out.Has("wire-distance") != (c.typed[0] == "wire=yes") {
			t.Errorf("%v: asked is %v", c.typed, !c.asked)
		}
	}
}
