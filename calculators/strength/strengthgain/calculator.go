// Package strengthgain computes strength with age by two published curves, side
// by side. It does not choose one.
package strengthgain

import (
	"coursebook/calculators/calc"
	"coursebook/calculators/displays"
	"coursebook/calculators/quantity"
	"coursebook/calculators/strength"
)

// Calculator declares inputs, outputs, formulas and sources of the calculator.
var Calculator = &calc.Calculator{
	ID:       "strength-gain",
	Title:    calc.Text("Strength with age"),
	Purpose:  calc.Text("What share of its 28-day strength concrete of a given age may have."),
	In:       inputs,
	Out:      outputs,
	Formulas: formulas,
	Sources:  sources,
	Cautions: []calc.Caution{
		{Level: calc.LevelWarning, Text: strength.EstimateOnly},
		{
			Level: calc.LevelWarning,
			Text: calc.Text(
				"Backfill also needs the wall held at its top, by the floor or by braces. Both wait for the " +
					"engineer's word.",
			),
		},
		{
			Level: calc.LevelCaution,
			Text: calc.Text(
				"Both curves are for moist concrete near 20 °C (68 °F). Cold concrete is far slower: measure it.",
			),
		},
	},
	Tables:  tables,
	Compute: compute,
	Draw:    draw,
}

var sources = []calc.Source{
	{
		ID:     "aci209",
		Author: "ACI",
		Title:  "209R-92, Prediction of creep, shrinkage and temperature effects",
		Year:   "1992",
		Where:  calc.Text("eq. (2-1) and table 2.2.1, read in a highway department's open library"),
		Status: calc.Secondary,
	},
	{
		ID:     "ec2",
		Author: "CEN",
		Title:  "EN 1992-1-1, Eurocode 2",
		Year:   "2004",
		Where:  calc.Text("eq. (3.2), 3.1.2(6), read in an open library of the fib"),
		Status: calc.Secondary,
	},
	{
		ID:     "society",
		Author: "The Concrete Society",
		Title:  "Strength development and cement class",
		Where:  calc.Text("classes of blends"),
		Status: calc.Confirmed,
		Link:   "https://concrete.org.uk/fingertips-nuggets.asp?cmd=display&id=1058",
	},
	{ID: "yeh", Author: "I-C. Yeh", Title: "Concrete compressive strength data", Year: "1998",
		Where: calc.Text("232 rows of plain cement: median 0.646 at 7 days, 0.834 at 14 days"), Status: calc.Confirmed},
	{ID: "own", Where: calc.Text("No share under 59 °F (15 °C)"), Status: calc.OwnLimit},
	{
		ID:     "backfill",
		Author: "Ontario",
		Title:  "O. Reg. 332/12, foundation walls",
		Where:  calc.Text("9.15.4, lateral support"),
		Status: calc.Secondary,
	},
}

var tables = []calc.Table{
	{ID: "aci", Title: calc.Text("Share of 28-day strength, ACI 209"), Out: "share-aci",
		Note: tableNote, Down: tableAges,
		Across: calc.Axis{Path: "cement", US: []string{"moist-1", "moist-3", "steam-1", "steam-3"}}},
	{ID: "ec", Title: calc.Text("Share of 28-day strength, Eurocode 2"), Out: "share-ec",
		Note: tableNote, Down: tableAges,
		Across: calc.Axis{Path: "class", US: []string{"r", "n", "s"}}},
}

const tableNote = calc.Text("Estimate only, moist, near 20 °C (68 °F).")

var tableAges = calc.Axis{Path: "age", US: []string{"1 d", "3 d", "7 d", "14 d", "28 d", "56 d", "90 d"}}

const (
	whyEarly  = calc.Text("Below one day neither curve holds. Use maturity or a test.")
	whyOld    = calc.Text("Past a year, ask for cores.")
	whyWeak   = calc.Text("Concrete for walls is stronger. Check the unit.")
	whyStrong = calc.Text("Stronger concrete gains in its own way.")
	whyCold   = calc.Text("Both curves are for about 68 °F (20 °C). Use maturity or a test.")
	whyShare  = calc.Text("Ask for a share between these.")
)

var inputs = []calc.Field{
	{ID: "f28", Example: true, Display: &displays.Strength, Usual: "3000 psi", Label: calc.Text("Strength at 28 days"),
		Help:  calc.Text("As specified, not as hoped for. In kg/cm² too: 210 kg/cm²."),
		Range: "1500 to 8700 psi", Why: whyWeak, WhyMost: whyStrong, MostSource: "ec2"},
	{ID: "age", Example: true, Display: &ageDays, Usual: "7 d", Label: calc.Text("Age"),
		Range: "1 to 365 d", Why: whyEarly, WhyMost: whyOld, LeastSource: "aci209"},
	{ID: "cement", Kind: calc.Choice, Usual: "moist-1", Label: calc.Text("Cement and curing, ACI 209"),
		Help: calc.Text("Blends with slag or fly ash are slower than Type I."),
		Options: []calc.Option{
			{ID: "moist-1", Label: calc.Text("Type I, moist")},
			{ID: "moist-3", Label: calc.Text("Type III, moist")},
			{ID: "steam-1", Label: calc.Text("Type I, steam")},
			{ID: "steam-3", Label: calc.Text("Type III, steam")},
		}},
	{ID: "class", Kind: calc.Choice, Usual: "n", Label: calc.Text("Cement class, Eurocode 2"),
		Help: calc.Text("Much slag (35 to 65 %) or fly ash (20 to 35 %): N. More: S."),
		Options: []calc.Option{
			{ID: "r", Label: calc.Text("R, rapid (s = 0.20)")},
			{ID: "n", Label: calc.Text("N, normal (s = 0.25)")},
			{ID: "s", Label: calc.Text("S, slow (s = 0.38)")},
		}},
	{ID: "target", Example: true, Display: &displays.Percent, Usual: "70 %", Label: calc.Text("Share looked for"),
		Help:  calc.Text("The share itself comes from the engineer or the drawings."),
		Range: "20 to 120 %", Why: whyShare},
	{
		ID:       "temperature",
		Example:  true,
		Display:  &displays.Temperature,
		Optional: true,
		Usual:    "68 °F",
		Label:    calc.Text("Concrete temperature"),
		Help:     calc.Text("Its mean since placing. It changes no number here."),
		Range:    "59 to 212 °F",
		Why:      whyCold,
		WhyMost:  strength.WhyBoiling,
	},
}

var outputs = []calc.Field{
	{ID: "share-aci", Display: &shareAtMost, Lead: true, Label: calc.Text("Share by ACI 209"),
		Help: calc.Text("Estimate only.")},
	{ID: "share-ec", Display: &shareAtMost, Lead: true, Label: calc.Text("Share by Eurocode 2"),
		Help: calc.Text("Estimate only.")},
	{ID: "strength-aci", Display: &strength.StrengthAtLeast, Also: &strength.InKilograms,
		Label: calc.Text("Strength by ACI 209")},
	{ID: "strength-ec", Display: &strength.StrengthAtLeast, Also: &strength.InKilograms,
		Label: calc.Text("Strength by Eurocode 2")},
	{ID: "time-aci", Display: &daysAtLeast, Label: calc.Text("Time to share, ACI 209")},
	{ID: "time-ec", Display: &daysAtLeast, Label: calc.Text("Time to share, Eurocode 2")},
	{ID: "ages", Kind: calc.Rows, Label: calc.Text("By age"), Cols: []calc.Field{
		{ID: "age", Display: &displays.Days, Label: calc.Text("Age")},
		{ID: "aci", Display: &shareAtMost, Label: calc.Text("ACI 209")},
		{ID: "ec", Display: &shareAtMost, Label: calc.Text("Eurocode 2")},
	}},
}

var formulas = []*calc.Formula{
	strength.Share209Formula,
	strength.ShareECFormula,
	strength.StrengthFormula,
	strength.Age209Formula,
	strength.AgeECFormula,
}

// constants209 holds a in days and b of Share209.
type constants209 struct {
	id   string
	a, b float64
}

// gain209 are the constants of ACI 209R-92, table 2.2.1.
var gain209 = [...]constants209{
	{"moist-1", 4.0, 0.85}, {"moist-3", 2.3, 0.92}, {"steam-1", 1.0, 0.95}, {"steam-3", 0.70, 0.98},
}

// classEC holds s of ShareEC.
type classEC struct {
	id string
	s  float64
}

// gainEC are the cement classes of EN 1992-1-1, 3.1.2(6).
var gainEC = [...]classEC{{"r", 0.20}, {"n", 0.25}, {"s", 0.38}}

// Displays of ages and shares. An age at which a strength is reached is rounded up, a
// share that is reached down.
var (
	daysAtLeast = quantity.Display{
		Dim: quantity.Duration,
		US:  quantity.UnitDisplay{Unit: "d", Step: 0.5, Rounding: quantity.Up},
	}
	shareAtMost = quantity.Display{
		Dim: quantity.Ratio,
		US:  quantity.UnitDisplay{Unit: "%", Step: 1, Rounding: quantity.Down},
	}
	ageDays = quantity.Display{Dim: quantity.Duration, US: quantity.UnitDisplay{Unit: "d", Step: 0.5}}
)
