package weather

import (
	"math"
	"math/rand/v2"
	"testing"

	"coursebook/calculators/calc"
	"coursebook/calculators/calctest"
)

// Parts of one temperature mix to it, whatever their masses; and the
// temperature of a mix lies between those of its parts.
func TestMixOfEqualParts(t *testing.T) {
	rnd := rand.New(rand.NewPCG(3, 3))
	w := func() float64 { return 1 + 3000*rnd.Float64() }
	for range 300 {
		x := 90 * rnd.Float64()
		calctest.Near(t, "equal parts", MixTemperature([]float64{x, w(), x, w(), x, w(), x, w(), 0, 80, 0}), x, 1e-9)
		got := MixTemperature([]float64{x, w(), x + 20, w(), x + 5, w(), x, w(), 0, 80, 0})
		if got < x || got > x+20 {
			t.Fatalf("%v outside %v to %v", got, x, x+20)
		}
	}
}

// Energy balance with the specific heats of a textbook, 0.92 and 4.184
// kJ/kg/K and 335 kJ/kg for melting: within a fifth of a degree.
func TestMixAgainstHeats(t *testing.T) {
	rnd := rand.New(rand.NewPCG(4, 4))
	for range 300 {
		ta, tc, tw := 20+20*rnd.Float64(), 30+40*rnd.Float64(), 5+25*rnd.Float64()
		ice := 60 * rnd.Float64()
		want := (0.92*(1800*ta+360*tc) + 4.184*120*tw - 335*ice) / (0.92*2160 + 4.184*(120+ice))
		calctest.Near(t, "heats", MixTemperature([]float64{ta, 1800, tc, 360, tw, 120, ta, 0, 0, 80, ice}), want, 0.2)
	}
}

// The ice and the water that are told bring the mix to the wanted temperature.
func TestMixInverse(t *testing.T) {
	res := calctest.Run(t, MixTemp, "wanted=75 °F")
	ice, left := res.Out.Num("ice-needed"), res.Out.Num("water-left")
	if res.Out.Choice("need") != needIce || !(ice > 0) {
		t.Fatalf("%v", res.Out)
	}
	in := calc.NewCase(MixTemp.In).With("water", calc.Num(left)).With("ice", calc.Num(ice)).With("wanted", calc.In(75, "°F"))
	back := calc.Run(MixTemp, in)
	calctest.Near(t, "with that ice", back.Out.Num("temperature"), calc.SI(75, "°F"), 1e-9)
	if back.Out.Choice("need") != needNothing {
		t.Errorf("need %s", back.Out.Choice("need"))
	}
	res = calctest.Run(t, MixTemp, "aggregate-temp=40 °F", "cement-temp=40 °F", "water-temp=45 °F", "wanted=60 °F")
	if res.Out.Choice("need") != needWarm {
		t.Fatalf("need %s", res.Out.Choice("need"))
	}
	in = calc.NewCase(MixTemp.In).With("aggregate-temp", calc.In(40, "°F")).With("cement-temp", calc.In(40, "°F")).With("water-temp", calc.Num(res.Out.Num("water-needed")))
	calctest.Near(t, "with that water", calc.Run(MixTemp, in).Out.Num("temperature"), calc.SI(60, "°F"), 1e-9)
}

// Frozen moisture counts as 0.5·T - 128 °F and 0.5·T - 80 °C; at the melting
// point itself the term jumps by the heat of melting.
func TestFrozenMoisture(t *testing.T) {
	for _, f := range []float64{31, 10, -20} {
		calctest.Near(t, "°F", FrozenMoisture(f, 32, 144), 0.5*f-128, 1e-9)
	}
	calctest.Near(t, "°C", FrozenMoisture(-12, 0, 80), 0.5*-12-80, 1e-9)
	thawed := calctest.Run(t, MixTemp, "aggregate-temp=32 °F", "water-temp=140 °F", "wanted=")
	frozen := calctest.Run(t, MixTemp, "aggregate-temp=31.9 °F", "water-temp=140 °F", "wanted=")
	if calctest.Noted(thawed, noteFrozen) || !calctest.Noted(frozen, noteFrozen) {
		t.Error("the note on frozen aggregate")
	}
	// 60 lb of ice take 60·144/1108.8 F° from the mix of the example.
	calctest.Near(t, "jump", calc.From(thawed.Out.Num("temperature")-frozen.Out.Num("temperature"), "F°"), 60*144/1108.8, 0.2)
}

func TestMixLimits(t *testing.T) {
	if res := calctest.Run(t, MixTemp, "ice=800 lb", "water=20 lb"); res.State != calc.Refused || !calctest.Noted(res, refuseSlush) {
		t.Errorf("slush: %v", res.State)
	}
	if res := calctest.Run(t, MixTemp, "aggregate-temp=180 °F"); res.State != calc.Refused || !calctest.Noted(res, refuseStiff) {
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
		{[]string{"aggregate-temp=30 °F", "cement-temp=30 °F", "water-temp=100 °F", "wanted=65 °F"}, needBeyond, noteHeat},
		{[]string{"aggregate-temp=40 °F", "cement-temp=40 °F", "water-temp=60 °F", "wanted=70 °F"}, needWarm, noteScald},
		{[]string{"aggregate-temp=100 °F", "wanted="}, "", noteHotMix},
		{[]string{"aggregate-temp=45 °F", "cement-temp=45 °F", "water-temp=45 °F", "wanted="}, "", noteCool},
	} {
		res := calctest.Run(t, MixTemp, c.typed...)
		if res.Out.Choice("need") != c.need || !calctest.Noted(res, c.note) {
			t.Errorf("%v: %s, %v at %v °F", c.typed, res.Out.Choice("need"), res.Notes, calc.From(res.Out.Num("temperature"), "°F"))
		}
		if res.Out.Has("ice-needed") && res.Out.Num("ice-share") > maxIce+1e-9 {
			t.Errorf("%v: ice share %v", c.typed, res.Out.Num("ice-share"))
		}
	}
}

// More ice, a colder mix; never more ice than batch water.
func TestIceRunsTheRightWay(t *testing.T) {
	last := math.Inf(1)
	for _, ice := range []string{"0 lb", "20 lb", "60 lb", "120 lb"} {
		got := calctest.Run(t, MixTemp, "ice="+ice, "wanted=").Out.Num("temperature")
		if got >= last {
			t.Errorf("%s: %v", ice, got)
		}
		last = got
	}
}
