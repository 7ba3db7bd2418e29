package placing

import "testing"

// Trucks is the least number with which the pump does not wait. Trucks and pump
// never both wait.
func TestTrucksAreTheLeast(t *testing.T) {
	for cycle := 31.0; cycle < 200; cycle += 7 {
		for spacing := 6.0; spacing < 60; spacing += 5 {
			n := Trucks(cycle, spacing, 1000)
			if PumpWait(cycle, n, spacing) > 1e-9 {
				t.Errorf("%v trucks let the pump wait at %v, %v", n, cycle, spacing)
			}
			if n > 1 && PumpWait(cycle, n-1, spacing) <= 0 {
				t.Errorf("%v trucks are one too many at %v, %v", n, cycle, spacing)
			}
			for k := 1.0; k < 9; k++ {
				if PumpWait(cycle, k, spacing) > 1e-9 && TruckWait(k, spacing, cycle) > 1e-9 {
					t.Errorf("pump and %v trucks both wait", k)
				}
			}
		}
	}
}
