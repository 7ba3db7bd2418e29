package weather

import "coursebook/calculators/calc"

// JointWindow is the longest time in s from batching to the next lift on the same
// place. A window from the plant counts where it is shorter. It is our own limit.
const JointWindow = 120 * 60.0

// Window returns the joint window in s that counts: the earlier of the plant's and
// JointWindow.
func Window(plant float64) float64 { return min(plant, JointWindow) }

// LabelBackBy is the label of the time in which the hose must be back.
const LabelBackBy = calc.Text("Next pass back by")
