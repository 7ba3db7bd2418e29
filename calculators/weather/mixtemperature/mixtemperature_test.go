package mixtemperature

import (
	"fmt"
	"math"
	"testing"

	"coursebook/calculators/calc"
	"coursebook/calculators/calctest"
	"coursebook/calculators/weather"
)

// The computed ice and water bring the mix to the wanted temperature.
func TestInverse(t *testing.T) {
	res := calctest.Run(t, Calculator, "wanted=75 °F")
	ice, left := res.Out.Num("ice-needed"), res.Out.Num("water-left")
	if res.Out.Choice("need") != needIce || !(ice > 0) {
		t.Fatalf("%v", res.Out)
	}
	in := calc.NewCase(Calculator.In).
		With("water", calc.Num(left)).
		With("ice", calc.Num(ice)).
		With("wanted", calc.In(75, "°F"))
	back := calc.Run(Calculator, in)
	calctest.Near(t, "with that ice", back.Out.Num("temperature"), calc.SI(75, "°F"), 1e-9)
	if back.Out.Choice("need") != needNothing {
		t.Errorf("need %s", back.Out.Choice("need"))
	}
	res = calctest.Run(t, Calculator, "aggregate-temp=40 °F", "cement-temp=40 °F", "water-temp=45 °F", "wanted=60 °F")
	if res.Out.Choice("need") != needWarm {
		t.Fatalf("need %s", res.Out.Choice("need"))
	}
	in = calc.NewCase(Calculator.In).
		With("aggregate-temp", calc.In(40, "°F")).
		With("cement-temp", calc.In(40, "°F")).
		With("water-temp", calc.Num(res.Out.Num("water-needed")))
	calctest.Near(t, "with that water", calc.Run(Calculator, in).Out.Num("temperature"), calc.SI(60, "°F"), 1e-9)
}

// Frozen moisture counts as 0.5·T - 128 °F and 0.5·T - 80 °C: at the melting point
// the term changes by the heat of melting.
func TestFrozenMoisture(t *testing.T) {
	for _, f := range []float64{31, 10, -20} {
		calctest.Near(t, "°F", weather.FrozenMoisture(f, 32, 144), 0.5*f-128, 1e-9)
	}
	calctest.Near(t, "°C", weather.FrozenMoisture(-12, 0, 80), 0.5*-12-80, 1e-9)
	thawed := calctest.Run(t, Calculator, "aggregate-temp=32 °F", "water-temp=140 °F", "wanted=")
	frozen := calctest.Run(t, Calculator, "aggregate-temp=31.9 °F", "water-temp=140 °F", "wanted=")
	if calctest.Noted(thawed, noteFrozen) || !calctest.Noted(frozen, noteFrozen) {
		t.Error("the note on frozen aggregate")
	}
	// 60 lb of ice take 60·144/1108.8 F° from the mix of the example.
	calctest.Near(
		t,
		"jump",
		calc.From(thawed.Out.Num("temperature")-frozen.Out.Num("temperature"), "F°"),
		60*144/1108.8,
		0.2,
	)
}

func TestLimits(t *testing.T) {
	if res := calctest.Run(t, Calculator, "ice=800 lb", "water=20 lb"); res.State != calc.Refused ||
		!calctest.Noted(res, refuseSlush) {
		t.Errorf("slush: %v", res.State)
	}
	if res := calctest.Run(t, Calculator, "ice=0", "aggregate-temp=-20 °F", "water-temp=40 °F",
		"cement-temp=20 °F"); res.State != calc.Refused || calctest.Noted(res, refuseSlush) ||
		!calctest.Noted(res, refuseFrozen) {
		t.Errorf("frozen aggregate without ice: %v, %v", res.State, res.Notes)
	}
	if res := calctest.Run(t, Calculator, "aggregate-temp=180 °F"); res.State != calc.Refused ||
		!calctest.Noted(res, refuseStiff) {
		t.Errorf("boil: %v", res.State)
	}
	for _, c := range []struct {
		typed []string
		need  string
		note  calc.Text
	}{
		{[]string{"wanted=45 °F"}, needBeyond, noteMuch},
		{[]string{"wanted=66 °F"}, needIce, noteFar},
		{[]string{"wanted=60 °F"}, needIce, noteRough},
		{[]string{"aggregate-temp=30 °F", "cement-temp=30 °F", "water-temp=100 °F", "wanted=65 °F"}, needBeyond,
			noteHeat},
		{[]string{"aggregate-temp=40 °F", "cement-temp=40 °F", "water-temp=60 °F", "wanted=70 °F"}, needWarm,
			noteScald},
		{[]string{"aggregate-temp=100 °F", "wanted="}, "", noteHot},
		{[]string{"aggregate-temp=45 °F", "cement-temp=45 °F", "water-temp=45 °F", "wanted="}, "", noteCool},
	} {
		res := calctest.Run(t, Calculator, c.typed...)
		if res.Out.Choice("need") != c.need || !calctest.Noted(res, c.note) {
			t.Errorf(
				"%v: %s, %v at %v °F",
				c.typed,
				res.Out.Choice("need"),
				res.Notes,
				calc.From(res.Out.Num("temperature"), "°F"),
			)
		}
		if res.Out.Has("ice-needed") && res.Out.Num("ice-share") > maxIce+1e-9 {
			t.Errorf("%v: ice share %v", c.typed, res.Out.Num("ice-share"))
		}
	}
}

// A mix is called hot over 90 °F, and not before.
func TestHotMix(t *testing.T) {
	for aggregate := 80; aggregate <= 110; aggregate++ {
		res := calctest.Run(t, Calculator, fmt.Sprintf("aggregate-temp=%d °F", aggregate), "wanted=")
		hot := calc.From(res.Out.Num("temperature"), "°F") > 90
		if calctest.Noted(res, noteHot) != hot {
			t.Errorf("sand and stone at %d °F: %v", aggregate, res.Notes)
		}
	}
}

// More ice gives a colder mix.
func TestIceIsMonotone(t *testing.T) {
	last := math.Inf(1)
	for _, ice := range []string{"0 lb", "20 lb", "60 lb", "120 lb"} {
		got := calctest.Run(t, Calculator, "ice="+ice, "wanted=").Out.Num("temperature")
		if got >= last {
			t.Errorf("%s: %v", ice, got)
		}
		last = got
	}
}
