package displays

import "coursebook/calculators/calc"

// The reasons of limits that guard against a slip of the hand rather than
// against a limit of the method.
const (
	AboveZero  = calc.Text("why.above-zero: It must be more than nothing.")
	NotMinus   = calc.Text("why.not-minus: It is never below zero.")
	CheckUnit  = calc.Text("why.check-unit: Check the number and its unit.")
	CheckCount = calc.Text("why.check-count: Check the count.")
	LeaveOut   = calc.Text("why.leave-out: Leave the row out instead.")
	OneStorey  = calc.Text("why.one-storey: Work out each storey by itself.")
	OneJob     = calc.Text("why.one-job: Split a job of this size into parts.")
	AskMaker   = calc.Text("why.ask-maker: Look it up in the maker's data again.")
	Engineer   = calc.Text("why.engineer: Beyond this, ask the engineer.")
)
