package weather

import "coursebook/calculators/calc"

// JointWindow returns the joint window in s that counts, the longest time from batching to
// the next lift on the same place: the one entered in an input of the house rule
// joint-window, or the amount of that rule where it is shorter.
func JointWindow(in calc.Case, id string) float64 {
	if house, ok := in.HouseAmount(id); ok {
		return min(in.Num(id), house)
	}
	return in.Num(id)
}

// Labels of the joint window, and of the time in which the hose must be back.
const (
	LabelWindow = calc.Text("Joint window from batching")
	LabelBackBy = calc.Text("Next pass back by")
)
