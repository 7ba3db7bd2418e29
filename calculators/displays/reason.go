package displays

import "coursebook/calculators/calc"

// The reasons of limits that catch mistyped values, not limits of a method.
const (
	AboveZero  = calc.Text("It must be more than nothing.")
	NotMinus   = calc.Text("It is never below zero.")
	CheckUnit  = calc.Text("Check the number and its unit.")
	CheckCount = calc.Text("Check the count.")
	LeaveOut   = calc.Text("Leave the row out instead.")
	OneStorey  = calc.Text("Work out each story by itself.")
	OneJob     = calc.Text("Split a job of this size into parts.")
	AskMaker   = calc.Text("Look it up in the maker's data again.")
	Engineer   = calc.Text("Beyond this, ask the engineer.")
)
