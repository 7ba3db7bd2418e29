package steel

import (
	"testing"

	"coursebook/calculators/calc"
	"coursebook/calculators/calctest"
)

// The list of options and the list of bars are one list.
func TestBarsAndOptionsAgree(t *testing.T) {
	if len(Bars) != len(barOptions) {
		t.Fatalf("%d bars, %d options", len(Bars), len(barOptions))
	}
	for i, b := range Bars {
		if barOptions[i].ID != b.ID {
			t.Errorf("bar %d is %s, its option %s", i, b.ID, barOptions[i].ID)
		}
		// A bar weighs what a round bar of its area weighs, within the
		// rounding of the standards.
		calctest.Near(t, b.ID+" mass", b.Mass, MassPerLength(steelDensity, b.Area), 0.02*b.Mass)
		calctest.Near(t, b.ID+" area", b.Area, RoundArea(b.Diameter), 0.021*b.Area)
		if i > 0 && b.canadian() == Bars[i-1].canadian() && (b.Diameter <= Bars[i-1].Diameter || b.Mass <= Bars[i-1].Mass) {
			t.Errorf("%s is no larger than the bar before it", b.ID)
		}
	}
}

// noteCase is a note that must or must not appear.
type noteCase struct {
	c     *calc.Calculator
	note  calc.Text
	yes   bool
	typed []string
}

func TestNotes(t *testing.T) {
	for _, c := range []noteCase{
		{BarData, noteHeavy, true, []string{"bar=8", "length=20 ft"}},
		{BarData, noteHeavy, false, []string{"bar=8", "length=18 ft"}},
		{BarData, noteCSA, true, []string{"bar=15M"}}, {BarData, noteCSA, false, nil},
		{BarTakeOff, noteLong, true, []string{"height=19 ft"}}, {BarTakeOff, noteLong, false, []string{"height=18 ft"}},
		{BarTakeOff, askLap, true, []string{"lap=19 in"}}, {BarTakeOff, askLap, false, []string{"lap=20 in"}},
		{BarTakeOff, askMixed, true, []string{"horizontal=10M"}}, {BarTakeOff, askMixed, false, nil},
		{BarTakeOff, askWide, true, []string{"spacing=49 in"}}, {BarTakeOff, askWide, false, []string{"spacing=48 in"}},
		{BarTakeOff, askWide, false, []string{"course=60 in", "courses=3"}},
		{BarLaps, noteShort, true, nil}, {BarLaps, noteShort, false, []string{"drawn=60 in"}}, {BarLaps, noteShort, false, []string{"drawn="}},
		{BarLaps, noteNoLap, true, []string{"bar=14"}}, {BarLaps, noteNoLap, false, []string{"bar=11"}}, {BarLaps, noteNoLap, false, []string{"bar=35M"}},
		{BarLaps, noteIRC, true, []string{"bar=3"}}, {BarLaps, noteIRC, true, []string{"fy=61000"}}, {BarLaps, noteIRC, false, nil},
		{BarLaps, noteFlat, true, []string{"top=yes"}}, {BarLaps, noteFlat, true, []string{"light=yes"}}, {BarLaps, noteFlat, false, nil},
		{BarLaps, noteGrade, true, []string{"fy=75000"}}, {BarLaps, noteGrade, false, nil},
		{BarLaps, noteCap, true, []string{"fc=65 MPa"}}, {BarLaps, noteCap, false, []string{"fc=64 MPa"}},
		{AggregateSize, noteTight, true, []string{"gap=0.45 in"}}, {AggregateSize, noteTight, false, []string{"gap=0.5 in"}},
		{AggregateSize, noteHose, true, []string{"hose=2.5 in"}}, {AggregateSize, noteHose, false, []string{"hose=3 in"}},
		{AggregateSize, noteLarge, true, []string{"core=8 in", "gap=2 in"}}, {AggregateSize, noteLarge, false, nil},
		{AggregateSize, askGap, true, []string{"gap="}}, {AggregateSize, askGap, false, nil},
	} {
		if res := calctest.Run(t, c.c, c.typed...); calctest.Noted(res, c.note) != c.yes {
			t.Errorf("%s %v: note %s: %v", c.c.ID, c.typed, c.note.EN(), !c.yes)
		}
	}
}

func TestRefusals(t *testing.T) {
	if res := calctest.Run(t, BarTakeOff, "length=2 ft", "first=13 in"); res.State != calc.Refused || !calctest.Noted(res, refuseFirst) {
		t.Error("a first vertical past the middle is taken")
	}
	if res := calctest.Run(t, BarTakeOff, "height=1 ft", "course-first=7 in"); res.State != calc.Refused || !calctest.Noted(res, refuseCourse) {
		t.Error("crossing horizontals are taken")
	}
	if res := calctest.Run(t, BarTakeOff, "height=1 ft", "course-first=7 in", "courses=1"); res.State != calc.OK {
		t.Error("counted horizontals need no spacing")
	}
}
