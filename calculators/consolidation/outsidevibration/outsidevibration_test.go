package outsidevibration

import (
	"math"
	"testing"

	"coursebook/calculators/calc"
	"coursebook/calculators/calctest"
)

// Force, count and least values are given for stiff forms and not for foam.
func TestOutside(t *testing.T) {
	numbers := []string{"force", "vibrators", "force-each", "floor"}
	foam, hard := calctest.Run(t, Calculator), calctest.Run(t, Calculator, "form=stiff")
	for _, id := range numbers {
		if foam.Out.Has(id) || !hard.Out.Has(id) {
			t.Errorf("%s: foam %v, stiff %v", id, foam.Out.Has(id), hard.Out.Has(id))
		}
	}
	practice := []calc.Text{noteNothing, noteOnlyFoot, noteShort, noteWeb, noteBulge, noteNever}
	calctest.CheckNotesAmong(
		t,
		Calculator,
		append([]calc.Text{noteBuiltFor, noteLow}, practice...),
		[]calctest.NotesCase{
			{Inputs: nil, Want: practice},
			{Inputs: []string{"form=stiff"}, Want: []calc.Text{noteBuiltFor}},
			{
				Inputs: []string{"form=stiff", "amplitude=0.001 in", "frequency=9000 vpm"},
				Want:   []calc.Text{noteBuiltFor, noteLow},
			},
			{
				Inputs: []string{"form=stiff", "amplitude=0.04 mm", "frequency=9000 vpm"},
				Want:   []calc.Text{noteBuiltFor},
			},
		},
	)
	half, full := calctest.Run(
		t,
		Calculator,
		"frequency=3000 vpm",
	).Out, calctest.Run(
		t,
		Calculator,
		"frequency=6000 vpm",
	).Out
	if r := full.Num("acceleration") / half.Num("acceleration"); math.Abs(r-4) > 1e-12 {
		t.Errorf("twice the speed gives %v times the acceleration", r)
	}
	out := hard.Out
	if got := out.Num("force-each") * out.Num("vibrators"); math.Abs(got-out.Num("force")) > 1e-9*got {
		t.Errorf("the vibrators together give %v N of %v N", got, out.Num("force"))
	}
}
