package bardata

import (
	"testing"

	"coursebook/calculators/calc"
	"coursebook/calculators/calctest"
	"coursebook/calculators/steel"
)

// BarOptions and Bars have the same bars in the same order.
func TestBarsAndOptionsAgree(t *testing.T) {
	if len(steel.Bars) != len(steel.BarOptions) {
		t.Fatalf("%d bars, %d options", len(steel.Bars), len(steel.BarOptions))
	}
	for i, b := range steel.Bars {
		if steel.BarOptions[i].ID != b.ID {
			t.Errorf("bar %d is %s, its option %s", i, b.ID, steel.BarOptions[i].ID)
		}
		// The mass is that of a round bar of the area, within the rounding of
		// the standards.
		calctest.Near(t, b.ID+" mass", b.Mass, steel.MassPerLength(steelDensity, b.Area), 0.02*b.Mass)
		calctest.Near(t, b.ID+" area", b.Area, steel.RoundArea(b.Diameter), 0.021*b.Area)
		if i > 0 && b.Canadian() == steel.Bars[i-1].Canadian() &&
			(b.Diameter <= steel.Bars[i-1].Diameter || b.Mass <= steel.Bars[i-1].Mass) {
			t.Errorf("%s is no larger than the bar before it", b.ID)
		}
	}
}

func TestNotes(t *testing.T) {
	calctest.CheckNotes(t, Calculator, []calctest.NoteCase{
		{Inputs: "bar=8; length=20 ft", Note: noteShare, At: "length", Want: true}, // 53.4 lb
		{Inputs: "bar=8; length=19 ft", Note: noteShare, Want: false},              // 50.7 lb
		{Inputs: "bar=11; length=38 ft", Note: noteShare, At: "length", Want: true},
		{Inputs: "bar=11; length=38 ft", Note: noteMachine, Want: false}, // 201.9 lb
		{Inputs: "bar=11; length=40 ft", Note: noteMachine, At: "length", Want: true},
		{Inputs: "bar=11; length=40 ft", Note: noteShare, Want: false}, // 212.5 lb
		{Inputs: "bar=15M", Note: noteCSA, Want: true},
		{Note: noteCSA, Want: false},
	})
}

// A least bend diameter is never shown smaller than it is: #9, 8 × 1.128 in.
func TestBendRoundsUp(t *testing.T) {
	res := calctest.Run(t, Calculator, "bar=9")
	field := calc.Field{Kind: calc.Number, Display: &bendUp}
	if got := (calc.Locale{}).Write(field, res.Out.Value("bend")); got != "9-1/8\"" {
		t.Errorf("the bend is shown as %s", got)
	}
}
