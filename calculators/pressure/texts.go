package pressure

import "coursebook/calculators/calc"

// Why the fluid head counts.
const (
	noteRapid  = calc.Text("At the hose the concrete rises at {rise}. Above {limit} the form carries the full fluid head.")
	noteWet    = calc.Text("The slump is over {limit}. No wall equation holds: the form carries the full fluid head.")
	noteCold   = calc.Text("The concrete is below {limit}. It stays fluid too long for the wall equations: the full fluid head counts.")
	noteShaken = calc.Text("Vibration keeps the concrete fluid down to {depth}. There the form carries the full fluid head.")
)

// What else the reader should know about the number.
const (
	noteHot      = calc.Text("Heat above {limit} earns no credit: the pressure is worked out for {limit}.")
	noteFloor    = calc.Text("The rise is so slow that the least design pressure of {floor} counts.")
	noteHeight   = calc.Text("The height is close to {limit}. Above it the pressure jumps to {pressure}.")
	noteRise     = calc.Text("The rise at the hose is close to {limit}. Above it the pressure jumps to {pressure}.")
	noteSlump    = calc.Text("The slump is close to {limit}. A wetter load brings the full fluid head of {pressure}.")
	noteChilly   = calc.Text("The concrete is close to {limit}. A colder load brings the full fluid head of {pressure}.")
	askRise      = calc.Text("The measured rise is below the average of the whole wall. The average is used. Measure again, while the hose stands.")
	askDisturbed = calc.Text("You chose a poker deeper than {limit}, but entered {depth}. Which is right?")
	refuseStop   = calc.Text("The hose cannot fill more than the wall: {length} at most.")
)

// The verdict and what helps.
const (
	askRating    = calc.Text("What pressure is the form rated for? Without the form maker's figure there is no verdict.")
	noteFails    = calc.Text("The form may open. It is rated for {rating} and carries {pressure}. Do not place this way.")
	noteAverage  = calc.Text("By the average rise the form seems to hold. Where the hose stands it does not.")
	noteAny      = calc.Text("The form takes the full fluid head of this height. No rise is too fast for it by pressure alone.")
	noteMethod   = calc.Text("By the equation the form would take a faster rise. The method ends at {limit}.")
	helpDepth    = calc.Text("Keep the fluid concrete to {depth}. Place no more until the form maker's guide or the engineer lets you go on.")
	helpBelow    = calc.Text("The rating is below the least design pressure of {floor}. Slowing down cannot prove this form.")
	helpSlow     = calc.Text("Slow the pump. This form takes a rise of {rise} at the hose: {flow} over one stop.")
	helpFluid    = calc.Text("Slowing down does not help: slump, cold or vibration keeps the concrete fluid. Change that first.")
	helpTall     = calc.Text("Above {limit} no rise is slow enough for this rating. Place less height in one go.")
	askGuide     = calc.Text("Does the form maker's guide give a lift and a rise? Enter both.")
	askGuideBoth = calc.Text("The guide's lift and rise go together. Enter this one too.")
)

// The form maker's guide.
const (
	noteLifts        = calc.Text("By the form maker's guide: fill to {lift}, move on, and come back no sooner than {time} later.")
	noteGuideWithin  = calc.Text("By the form maker's guide the rise at the hose is within {rate}.")
	noteGuideAverage = calc.Text("By the form maker's guide only the average rise is within {rate}. Ask the maker if lifts at this pump rate are allowed.")
	noteGuideBeyond  = calc.Text("Even the average rise is beyond the form maker's guide of {rate}. Slow the pump.")
	noteGuideLift    = calc.Text("One lift of the guide presses with {pressure} while fluid. That is more than the rating. Ask the form maker.")
)

// What the formulas of the worked example are used for.
const (
	ofLocal   = calc.Text("Where the hose stands")
	ofAverage = calc.Text("On average, whole wall")
	ofHeight  = calc.Text("Over the whole height")
	ofRating  = calc.Text("For the rating of the form")
)

// The standing cautions.
var cautions = []calc.Caution{
	{Level: calc.LevelWarning, Text: calc.Text("Forms that open bury and crush. Stand clear of the form below the hose, and stop at the first bulge or crack.")},
	{Level: calc.LevelWarning, Text: calc.Text("The form maker's data, the engineer and the local code govern. This page does not replace them.")},
	{Level: calc.LevelWarning, Text: calc.Text("A form is as strong as its weakest part. Corners, cut blocks, stacked joints and block-outs may carry less than the rating.")},
}
