package calc

import "testing"

// The first numbers of SplitMix64 from seed 1234567, as its authors' C code
// gives them (published with the generator: Steele, Lea and Flood, "Fast
// splittable pseudorandom number generators", OOPSLA 2014; values from memory).
func TestRandom(t *testing.T) {
	r := random(1234567)
	for _, want := range []uint64{6457827717110365317, 3203168211198807973, 9817491932198370423, 4593380528125082431,
		16408922859458223821} {
		if got := r.share(); got != float64(want>>11)/(1<<53) {
			t.Errorf("got %v, want %v", got, float64(want>>11)/(1<<53))
		}
	}
}
