package steel

import (
	"math/rand/v2"
	"testing"

	"coursebook/calculators/calc"
)

// Spaces between counted bars do not exceed the spacing; with one bar fewer they
// do.
func TestBarCountIsEnoughAndLeast(t *testing.T) {
	rnd := rand.New(rand.NewPCG(5, 6))
	for range 2000 {
		length, spacing := 1+20*rnd.Float64(), 0.1+rnd.Float64()
		edge := length / 2 * rnd.Float64()
		n := BarCount(length, edge, spacing)
		between := length - 2*edge
		if (n-1)*spacing < between*(1-calc.Slack) || n > 1 && (n-2)*spacing >= between*(1+calc.Slack) {
			t.Fatalf("%v bars over %v at %v", n, between, spacing)
		}
	}
}

// Lapped pieces cover the run, one fewer does not, and the steel is the run
// and its laps.
func TestPiecesCoverTheRun(t *testing.T) {
	rnd := rand.New(rand.NewPCG(7, 8))
	for range 2000 {
		length, stock := 1+60*rnd.Float64(), 3+15*rnd.Float64()
		lap := stock / 2 * rnd.Float64()
		n := Pieces(length, lap, stock)
		if reach := n*stock - (n-1)*lap; reach < length*(1-calc.Slack) {
			t.Fatalf("%v pieces of %v reach %v of %v", n, stock, reach, length)
		}
		if less := (n-1)*stock - (n-2)*lap; n > 1 && less >= length*(1+calc.Slack) {
			t.Fatalf("%v pieces of %v are one too many for %v", n, stock, length)
		}
		if steel := LappedLength(length, n, lap); steel > n*stock*(1+calc.Slack) {
			t.Fatalf("%v of steel from %v pieces of %v", steel, n, stock)
		}
	}
}
