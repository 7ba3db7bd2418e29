package windowsupports

import (
	"testing"

	"coursebook/calculators/calc"
	"coursebook/calculators/calctest"
)

func row(res calc.Result, side int) calc.Case { return res.Out.Rows("sides")[side] }

func TestFormPressureCapsJambsAndSillOnly(t *testing.T) {
	free := calctest.Run(t, Calculator, "cover=10'", "height=48")
	capped := calctest.Run(t, Calculator, "cover=10'", "height=48", "form-pressure=700", "engineer=yes")
	if got := calc.From(free.Out.Num("sill"), "psf"); !calctest.Equal(got, 2100) {
		t.Errorf("fluid head at the sill %v", got)
	}
	if got := calc.From(capped.Out.Num("sill"), "psf"); !calctest.Equal(got, 700) {
		t.Errorf("capped at %v", got)
	}
	if head := calc.From(row(capped, 0).Num("pressure"), "psf"); !calctest.Equal(head, 1500) {
		t.Errorf("the head carries %v", head)
	}
	if !calctest.Noted(capped, noteCapped) || calctest.Noted(capped, noteFluid) || !calctest.Noted(free, noteFluid) ||
		calctest.Noted(free, noteCapped) {
		t.Error("wrong notes on the form pressure")
	}
}

// A form pressure that no design takes is refused: under 600·C_w psf and under the fluid
// head at the sill.
func TestLowFormPressureIsRefused(t *testing.T) {
	for _, c := range []struct {
		typed []string
		want  calc.State
	}{
		{[]string{"form-pressure=100", "rating=500"}, calc.Refused},
		{[]string{"form-pressure=150", "height=120", "cover=8'"}, calc.Refused},
		{[]string{"form-pressure=626"}, calc.Refused}, // fluid head 5.33 ft by 150 lb/ft³: 800 psf
		{[]string{"form-pressure=627"}, calc.OK},
		{[]string{"form-pressure=449", "height=24", "cover=1'"}, calc.Refused},
		{[]string{"form-pressure=450", "height=24", "cover=1'"}, calc.OK}, // 3 ft by 150 lb/ft³
		// 160 lb/ft³: C_w = 160/145, so 662.07 psf
		{[]string{"form-pressure=691", "weight=160"}, calc.Refused},
		{[]string{"form-pressure=692", "weight=160"}, calc.OK},
		{nil, calc.OK},
	} {
		res := calctest.Run(t, Calculator, c.typed...)
		if res.State != c.want || calctest.Noted(res, refuseLow) != (c.want == calc.Refused) {
			t.Errorf("%v: %s, %v", c.typed, res.State, res.Notes)
		}
	}
}

// n supports make n + 1 spans, none wider than the spacing; n − 1 supports make
// wider ones.
func TestSupportsAreEnoughAndNoMore(t *testing.T) {
	for _, beam := range []string{spanSimple, spanThrough} {
		for _, width := range []string{"12", "36", "72", "120", "200"} {
			in, res := calctest.RunCase(t, Calculator, "width="+width, "beam="+beam)
			for i, span := range []float64{in.Num("width"), in.Num("height"), in.Num("width")} {
				n, l := row(res, i).Num("supports"), row(res, i).Num("spacing")
				if span/(n+1) > l*(1+1e-9) || n > 0 && span/n <= l*(1-1e-9) {
					t.Errorf("%s %s side %d: %v supports at %v over %v m", beam, width, i, n, l, span)
				}
			}
		}
	}
}

// A continuous board spans farther only over three spans or more.
func TestContinuousBoard(t *testing.T) {
	simple := calctest.Run(t, Calculator, "width=150", "rating=")
	through := calctest.Run(t, Calculator, "width=150", "rating=", "beam=through")
	if !(row(through, 2).Num("spacing") > row(simple, 2).Num("spacing")) {
		t.Error("a board over many spans gains nothing")
	}
	short := calctest.Run(t, Calculator, "width=30", "rating=", "beam=through")
	alike := calctest.Run(t, Calculator, "width=30", "rating=")
	if row(short, 2).Num("spacing") != row(alike, 2).Num("spacing") || !calctest.Noted(short, noteShort) {
		t.Error("a board over two spans counts as more")
	}
	if calctest.Noted(alike, noteShort) {
		t.Error("a simple beam has the note on short spans")
	}
}

func TestNotes(t *testing.T) {
	for _, c := range []struct {
		typed []string
		note  calc.Text
		want  bool
	}{
		{[]string{"rating=1500"}, askRating, false},
		{nil, askRating, true},
		{nil, noteNone, false},
		{[]string{"width=10"}, noteNone, true},
		{[]string{"height=12", "width=60"}, noteNone, true},
		{[]string{"cover=4'", "width=100", "height=80"}, noteNone, false},
		{[]string{"rating=100"}, noteTight, true},
		{[]string{"board-wide=9-1/4", "core=12"}, askNarrow, true},
		{[]string{"board-wide=1", "core=8"}, askNarrow, true},
		{[]string{"board-wide=7-15/16", "core=8"}, askNarrow, true},
		{[]string{"board-wide=8", "core=8"}, askNarrow, false},
		{[]string{"board-wide=9-1/4", "core=8"}, askNarrow, false},
		{nil, noteTight, false},
	} {
		res := calctest.Run(t, Calculator, c.typed...)
		if calctest.Noted(res, c.note) != c.want {
			t.Errorf("%v: %s is %v", c.typed, c.note.EN(), calctest.Noted(res, c.note))
		}
	}
}

// A weak support governs, at a closer spacing.
func TestSupportDecides(t *testing.T) {
	res := calctest.Run(t, Calculator, "rating=500")
	if row(res, 2).Choice("governs") != bySupport {
		t.Errorf("decided by %s", row(res, 2).Choice("governs"))
	}
	want := 500 / (calc.From(row(res, 2).Num("load"), "lbf/ft"))
	if got := calc.From(row(res, 2).Num("spacing"), "ft"); !calctest.Equal(got, want) {
		t.Errorf("%v ft, want %v", got, want)
	}
}

// Board values above the defaults are asked about, each for itself; the defaults and lower
// values are not.
func TestBoardValuesAreAsked(t *testing.T) {
	for typed, want := range map[string]bool{
		"stress=800 psi": false, "stress=600 psi": false, "modulus=1000000 psi": false,
		"stress=801 psi": true, "stress=5000 psi": true, "modulus=1210000 psi": true, "modulus=5000000 psi": true,
	} {
		if res := calctest.Run(t, Calculator, typed, "rating=50000"); calctest.Noted(res, askBoard) != want {
			t.Errorf("%s: asked is %v", typed, !want)
		}
	}
	in, _ := calctest.RunCase(t, Calculator)
	calctest.NearBy(t, "usual stress", in.Num("stress"), wetStress, 1e-9)
	calctest.NearBy(t, "usual modulus", in.Num("modulus"), wetModulus, 1e-9)
}

// A form pressure counts only where the engineer gave it: without that every support is
// that of the full fluid head.
func TestOnlyTheEngineerLowersTheHead(t *testing.T) {
	frame := []string{"cover=4'", "height=60", "rating=3000"}
	full := calctest.Run(t, Calculator, frame...)
	word := calctest.Run(t, Calculator, append(frame, "form-pressure=630", "engineer=yes")...)
	typed := calctest.Run(t, Calculator, append(frame, "form-pressure=630")...)
	for _, id := range []string{"posts", "spreaders", "sill", "spacing"} {
		if typed.Out.Num(id) != full.Out.Num(id) {
			t.Errorf("%s: %v without the engineer, %v at full head", id, typed.Out.Num(id), full.Out.Num(id))
		}
	}
	if word.Out.Num("sill") >= full.Out.Num("sill") || word.Out.Num("spreaders") > full.Out.Num("spreaders") {
		t.Errorf("the engineer's pressure does not count: %v Pa", word.Out.Num("sill"))
	}
	if !calctest.Noted(typed, noteWord) || calctest.Noted(typed, noteCapped) || calctest.Noted(word, noteWord) {
		t.Errorf("%v, %v", typed.Notes, word.Notes)
	}
}
