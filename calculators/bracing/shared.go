// Package bracing holds the equations of wall bracing: string-line and plumb
// readings, the layout of braces and the wind on a braced wall.
package bracing

import (
	"coursebook/calculators/calc"
	"coursebook/calculators/displays"
	"coursebook/calculators/quantity"
)

// Displays of threads and of turns.
var (
	ThreadSize = &quantity.Display{Dim: quantity.Length,
		US:     quantity.UnitDisplay{Unit: "in", Step: 0.001},
		Metric: quantity.UnitDisplay{Unit: "mm", Step: 0.1}}
	Quarters = &quantity.Display{Dim: quantity.Number, US: quantity.UnitDisplay{Step: 0.25}}
)

// LabelStay is the label of the option "stay" of MoveOptions.
var LabelStay = calc.Text("nowhere")

// ScrewNotWall says where the travel of one turn is measured: what is read at the string is
// the movement of the wall, which the lever of wall and brace makes greater.
const ScrewNotWall = calc.Text("Of the screw, not of the wall: how much longer one turn makes the brace.")

// SideOptions are the sides of the wall on which the string can be.
var SideOptions = []calc.Option{
	{ID: "brace", Label: calc.Text("same side as the braces")},
	{ID: "other", Label: calc.Text("other side of the wall")},
}

// ConcreteOptions are the states of the concrete.
var ConcreteOptions = []calc.Option{
	{ID: "none", Label: calc.Text("not placed yet")},
	{ID: "plastic", Label: calc.Text("placed, still plastic")},
	{ID: "stiff", Label: calc.Text("has stiffened")},
}

// MoveOptions are the directions in which the wall must move, seen from the string
// or from the brace.
var MoveOptions = []calc.Option{
	{ID: "toward", Label: calc.Text("toward the string")},
	{ID: "away", Label: calc.Text("away from the string")},
	{ID: "stay", Label: LabelStay},
}

// TurnOptions are the directions of turning.
var TurnOptions = []calc.Option{
	{ID: "lengthen", Label: calc.Text("lengthen")},
	{ID: "shorten", Label: calc.Text("shorten")},
	{ID: "leave", Label: calc.Text("leave")},
}

// SourceOwn is the source of the limits that the calculators of the string line share.
var SourceOwn = calc.Source{
	ID: "own", Where: calc.Text("1/8 in. as working tolerance; the wall is cleared beyond 1 in."),
	Status: calc.OwnLimit,
}

// Texts that the calculators of the string line share.
const (
	CautionHandsOff = calc.Text(
		"Hold point: hands off. No brace is turned after the time set for this wall, or once a quarter turn at two " +
			"braces side by side moves nothing.",
	)
	CautionNeverBack = calc.Text(
		"Never back a brace off to let the wall fall over. If one brace does not answer, two push or pull together.",
	)
	AskSide = calc.Text("Which side is the string on? Answer, and it shows whether to lengthen or shorten.")
	// NoteFarOff is the warning of a reading beyond MostOff.
	NoteFarOff = calc.Text(
		"Stop. Clear both sides. Turn nothing. The foreman and the engineer look. The wall is {off} off, over " +
			"{limit}: it may be failing.",
	)
	// NoteFarEmpty is the same for a wall without concrete.
	NoteFarEmpty = calc.Text(
		"Stop. Clear both sides. Turn nothing. The foreman looks at feet and pins. The empty wall is {off} off, over " +
			"{limit}.",
	)
	LabelNext  = calc.Text("What next")
	LabelLook  = calc.Text("Clear both sides, turn nothing; the foreman looks at feet and pins")
	LabelClear = calc.Text("Clear both sides, turn nothing: engineer")
	// NoteTry is how the turns that a brace needs are given, and NoteTryEighth the same where a
	// quarter turn is too much.
	NoteTry = calc.Text(
		"First take up the slack: count from where the brace bites. Then a quarter turn, wait, and read it and both " +
			"neighbors. Threads run either way.",
	)
	NoteTryEighth = calc.Text(
		"First take up the slack: count from where the brace bites. Then an eighth of a turn, wait, and read it and " +
			"both neighbors. Threads run either way.",
	)
	NoteMoreRounds = calc.Text(
		"Brace {name} needs {turns} turns. Go by quarter turns, and read the whole wall again after one turn.",
	)
)

// TightOwn is the reason of the least tolerance.
const TightOwn = calc.Text("A plumb line and a tape do not show less.")

// SamePlace is the distance in m below which two positions count as the same: far
// below what a tape shows and far above rounding in binary.
const SamePlace = 1e-6

// Thresholds of common practice.
var (
	RoundTurns = 1.0                   // most turns in one round
	TapeSlack  = calc.SI(1.0/32, "in") // half of the smallest division of a tape
)

// MostOff is the greatest distance of a wall from its line, in m, at which people
// may work on it. It is our own limit, 1 in.
const MostOff = 0.0254

// LooseTolerance is the reason of the greatest tolerance of a string line.
const LooseTolerance = calc.Text("The published limit of straightness. A wall beyond it is never good.")

// NoteOff records the warning of a wall that is off by more than MostOff, and
// reports whether it is.
func NoteOff(r *calc.Recorder, at calc.Path, off float64) bool {
	far := Exceeds(off, MostOff)
	if far {
		noteFar(r, at, NoteFarOff, off)
	}
	return far
}

// NoteOffEmpty records the same warning of a wall without concrete.
func NoteOffEmpty(r *calc.Recorder, at calc.Path, off float64) {
	if Exceeds(off, MostOff) {
		noteFar(r, at, NoteFarEmpty, off)
	}
}

// noteFar records a warning with the distance from the line and its limit.
func noteFar(r *calc.Recorder, at calc.Path, text calc.Text, off float64) {
	r.Note(calc.LevelWarning, at, text, calc.Amount("off", off, &displays.Part),
		calc.Amount("limit", MostOff, &displays.Part))
}

// Empty reports whether the form has no concrete in it.
func Empty(in calc.Case) bool { return in.Choice("concrete") == "none" }

// Least and greatest angle of braces in the Army's method, in degrees.
const (
	LeastSlope = 20
	MostSlope  = 60
)

// BadSlope reports whether a brace at an angle with the ground, in rad, is flatter than
// LeastSlope or steeper than MostSlope.
func BadSlope(angle float64) bool {
	a := calc.From(angle, "°")
	return a < LeastSlope-calc.Slack || a > MostSlope+calc.Slack
}

// Exceeds reports whether x exceeds a limit, in the same unit, by more than
// rounding. A reading equal to the tolerance is within it.
func Exceeds(x, limit float64) bool { return x > limit+calc.Slack }
