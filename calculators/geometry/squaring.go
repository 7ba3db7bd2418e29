package geometry

import (
	"coursebook/calculators/calc"
	"coursebook/calculators/displays"
)

// Squaring checks a rectangle by its diagonal, and an outline of runs and
// turns by how it closes.
var Squaring = &calc.Calculator{
	ID:       "squaring",
	Title:    calc.Text("squaring.title: Squaring a layout"),
	Purpose:  calc.Text("squaring.purpose: Is the corner square, how far to shift it, and does the outline close?"),
	In:       squareIn,
	Out:      squareOut,
	Formulas: squareFormulas,
	Sources:  squareSources,
	Cautions: []calc.Caution{
		{Level: calc.LevelNotice, Text: calc.Text("squaring.caution.both: Measure both diagonals. They must agree, and opposite sides must be equal too.")},
		{Level: calc.LevelNotice, Text: calc.Text("squaring.caution.level: Hold the tape level and pull it the same each time. On a slope a tape reads long.")},
		{Level: calc.LevelNotice, Text: calc.Text("squaring.caution.survey: Lot lines and setbacks are for a licensed surveyor.")},
	},
	Tables:  squareTables,
	Compute: computeSquare,
	Draw:    drawSquare,
}

// What can be checked.
const (
	checkRectangle = "rectangle"
	checkOutline   = "outline"
)

func squareRectangle(c calc.Case) bool { return c.Choice("check") == checkRectangle }
func squareOutline(c calc.Case) bool   { return c.Choice("check") == checkOutline }

const squareTurnWhy = calc.Text("squaring.why.turn: No turn is more than half a circle. Change left and right instead.")

var squareRunCols = []calc.Field{
	{ID: "run", Label: calc.Text("squaring.runs.run: Run"), Display: &tapeFine,
		Min: &calc.Limit{Unit: "ft", Open: true, Why: displays.AboveZero}, Max: &calc.Limit{At: 2000, Unit: "ft", Why: displays.OneJob}},
	{ID: "turn", Label: calc.Text("squaring.runs.turn: Then turn by"), Display: &fineAngle, Usual: "90°",
		Min: &calc.Limit{At: 0, Unit: "°", Why: displays.NotMinus}, Max: &calc.Limit{At: 180, Unit: "°", Why: squareTurnWhy}},
	{ID: "side", Label: calc.Text("squaring.runs.side: To the"), Kind: calc.Choice, Usual: leftHand, Options: []calc.Option{
		{ID: leftHand, Label: calc.Text("squaring.runs.side.left: left")},
		{ID: rightHand, Label: calc.Text("squaring.runs.side.right: right")},
	}},
}

var squareIn = []calc.Field{
	{ID: "check", Label: calc.Text("squaring.check: What to check"), Kind: calc.Choice, Usual: checkRectangle, Options: []calc.Option{
		{ID: checkRectangle, Label: calc.Text("squaring.check.rectangle: A rectangle by its diagonal")},
		{ID: checkOutline, Label: calc.Text("squaring.check.outline: An outline of runs and turns")},
	}},
	{ID: "side-a", Label: calc.Text("squaring.side-a: Side a, the fixed line"), Display: &tapeFine, When: squareRectangle, Usual: "40 ft",
		Min: &calc.Limit{Unit: "ft", Open: true, Why: displays.AboveZero}, Max: &calc.Limit{At: 2000, Unit: "ft", Why: displays.OneJob}},
	{ID: "side-b", Label: calc.Text("squaring.side-b: Side b, from its end"), Display: &tapeFine, When: squareRectangle, Usual: "30 ft",
		Min: &calc.Limit{Unit: "ft", Open: true, Why: displays.AboveZero}, Max: &calc.Limit{At: 2000, Unit: "ft", Why: displays.OneJob}},
	{ID: "measured", Label: calc.Text("squaring.measured: Diagonal as measured"), Display: &tapeFine, When: squareRectangle, Optional: true, Usual: "50 ft 1/2 in",
		Help: calc.Text("squaring.measured.help: Across from the far end of a to the far end of b."),
		Min:  &calc.Limit{Unit: "ft", Open: true, Why: displays.AboveZero}, Max: &calc.Limit{At: 4000, Unit: "ft", Why: displays.OneJob}},
	{ID: "runs", Label: calc.Text("squaring.runs: Runs in order"), Kind: calc.Rows, Cols: squareRunCols, MinRows: 2, MaxRows: 40, When: squareOutline,
		Help:  calc.Text("squaring.runs.help: Walk the outline once. The last turn faces you along the first run again."),
		Usual: "40 ft | 90° | left; 28 ft | 90° | left; 16 ft | 90° | left; 8 ft | 90° | right; 24 ft 1 in | 90° | left; 20 ft | 90° | left"},
}

var squareTripleCols = []calc.Field{
	{ID: "three", Label: calc.Text("squaring.triple.three: 3 side"), Display: &wholeFeet},
	{ID: "four", Label: calc.Text("squaring.triple.four: 4 side"), Display: &wholeFeet},
	{ID: "five", Label: calc.Text("squaring.triple.five: 5 across"), Display: &wholeFeet},
}

var squareTripleMetric = []calc.Field{
	{ID: "three", Label: calc.Text("squaring.triple-m.three: 3 side"), Display: &inMetre},
	{ID: "four", Label: calc.Text("squaring.triple-m.four: 4 side"), Display: &inMetre},
	{ID: "five", Label: calc.Text("squaring.triple-m.five: 5 across"), Display: &inMetre},
}

var squareOut = []calc.Field{
	{ID: "diagonal", Label: calc.Text("squaring.out.diagonal: Diagonal when square"), Display: &tapeFine, Lead: true},
	{ID: "shift", Label: calc.Text("squaring.out.shift: Shift the end of b by"), Display: &displays.Part, Lead: true},
	{ID: "way", Label: calc.Text("squaring.out.way: Shift it so that"), Kind: calc.Choice, Options: []calc.Option{
		{ID: "shorter", Label: calc.Text("squaring.out.way.shorter: the diagonal gets shorter")},
		{ID: "longer", Label: calc.Text("squaring.out.way.longer: the diagonal gets longer")},
		{ID: "none", Label: calc.Text("squaring.out.way.none: nothing moves, it is square")},
	}},
	{ID: "error", Label: calc.Text("squaring.out.error: Corner over 90°"), Display: &fineAngle},
	{ID: "off", Label: calc.Text("squaring.out.off: Diagonal too long by"), Display: &displays.Part},
	{ID: "triples", Label: calc.Text("squaring.out.triples: 3-4-5 in whole feet"), Kind: calc.Rows, Cols: squareTripleCols},
	{ID: "triples-m", Label: calc.Text("squaring.out.triples-m: 3-4-5 in metres"), Kind: calc.Rows, Cols: squareTripleMetric},
	{ID: "gap", Label: calc.Text("squaring.out.gap: Closing gap"), Display: &tapeFine, Lead: true},
	{ID: "bearing", Label: calc.Text("squaring.out.bearing: Gap, left of first run"), Display: &turnAngle},
	{ID: "along", Label: calc.Text("squaring.out.along: End past start, along run 1"), Display: &tapeFine},
	{ID: "across", Label: calc.Text("squaring.out.across: End left of start"), Display: &tapeFine},
	{ID: "perimeter", Label: calc.Text("squaring.out.perimeter: Length of the outline"), Display: &tapeFine},
	{ID: "ratio", Label: calc.Text("squaring.out.ratio: Length per unit of gap"), Display: &tenTo},
	{ID: "turned", Label: calc.Text("squaring.out.turned: Turns in all, left plus"), Display: &fineAngle},
	{ID: "turn-error", Label: calc.Text("squaring.out.turn-error: Turns off a full circle"), Display: &fineAngle},
}

var squareSources = []calc.Source{
	{ID: "pythagoras", Author: "US Army", Title: "Subcourse EN0069A, building layout", Where: "figure 1-36: diagonal from two sides, and the 3-4-5 triangle",
		Status: calc.Confirmed, Link: "http://armyengineer.tpub.com/en0069a/Figure-1-35-Headers-And-Trimmers-41.htm"},
	{ID: "cosines", Title: "Law of cosines", Where: "plane trigonometry", Status: calc.Memory},
	{ID: "traverse", Title: "Traverse computations, chapter D: closure", Where: "linear closure from the sums of latitudes and departures", Status: calc.Confirmed,
		Author: "Open Access Surveying", Link: "https://jerrymahun.com/index.php/home/open-access/17-trav-comps/43-travcomps-chap-d?start=1"},
}

var squareTables = []calc.Table{
	{ID: "diagonal", Title: calc.Text("squaring.table.diagonal: Diagonal of a square layout"), Out: "diagonal",
		Set: []calc.Entry{{Path: "measured", Text: ""}},
		Down: calc.Axis{Path: "side-a", US: []string{"12 ft", "20 ft", "24 ft", "30 ft", "40 ft", "50 ft", "60 ft"},
			Metric: []string{"3 m", "4 m", "6 m", "8 m", "10 m", "12 m", "15 m"}},
		Across: calc.Axis{Path: "side-b", US: []string{"8 ft", "16 ft", "24 ft", "28 ft", "32 ft"}, Metric: []string{"2 m", "4 m", "6 m", "8 m", "10 m"}}},
}
