package strength

import (
	"coursebook/calculators/calc"
	"coursebook/calculators/displays"
)

// StrengthGain sets two published curves of strength with age side by side.
// Neither is chosen for the reader.
var StrengthGain = &calc.Calculator{
	ID:       "strength-gain",
	Title:    calc.Text("Strength with age"),
	Purpose:  calc.Text("What share of its 28-day strength concrete of a given age may have."),
	In:       gainIn,
	Out:      gainOut,
	Formulas: gainFormulas,
	Sources:  gainSources,
	Cautions: []calc.Caution{
		{Level: calc.LevelWarning, Text: estimateOnly},
		{Level: calc.LevelWarning, Text: calc.Text("Backfill also needs the wall held at its top, by the floor or by braces. Both wait for the engineer's word.")},
		{Level: calc.LevelCaution, Text: calc.Text("Both curves are for moist concrete near 20 °C (68 °F). Cold concrete is far slower: measure it.")},
	},
	Tables:  gainTables,
	Compute: computeGain,
	Draw:    drawGain,
}

var gainSources = []calc.Source{
	{ID: "aci209", Author: "ACI", Title: "209R-92, Prediction of creep, shrinkage and temperature effects", Year: "1992",
		Where: "eq. (2-1) and table 2.2.1, read in a highway department's open library", Status: calc.Secondary, Link: "https://github.com/WSDOT/WBFL"},
	{ID: "ec2", Author: "CEN", Title: "EN 1992-1-1, Eurocode 2", Year: "2004", Where: "eq. (3.2), 3.1.2(6), read in an open library of the fib",
		Status: calc.Secondary, Link: "https://github.com/fib-international/structuralcodes"},
	{ID: "society", Author: "The Concrete Society", Title: "Strength development and cement class", Where: "classes of blends",
		Status: calc.Confirmed, Link: "https://concrete.org.uk/fingertips-nuggets.asp?cmd=display&id=1058"},
	{ID: "yeh", Author: "I-C. Yeh", Title: "Concrete compressive strength data", Year: "1998",
		Where: "232 rows of plain cement: median 0.646 at 7 days, 0.834 at 14 days", Status: calc.Confirmed},
	{ID: "backfill", Author: "Ontario", Title: "O. Reg. 332/12, foundation walls", Where: "9.15.4, lateral support", Status: calc.Confirmed,
		Link: "https://www.oncodes.ca/foundation/foundation-walls-considered-to-be-laterally-supported-at-the-bottom/"},
}

var gainTables = []calc.Table{
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
	whyShare  = calc.Text("Ask for a share between these.")
)

var gainIn = []calc.Field{
	{ID: "f28", Display: &displays.Strength, Usual: "3000 psi", Label: calc.Text("Strength at 28 days"),
		Help: calc.Text("As specified, not as hoped for."),
		Min:  &calc.Limit{At: 1500, Unit: "psi", Why: whyWeak}, Max: &calc.Limit{At: 8700, Unit: "psi", Why: whyStrong, Source: "ec2"}},
	{ID: "age", Display: &ageDays, Usual: "7 d", Label: calc.Text("Age"),
		Min: &calc.Limit{At: 1, Unit: "d", Why: whyEarly, Source: "aci209"}, Max: &calc.Limit{At: 365, Unit: "d", Why: whyOld}},
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
	{ID: "target", Display: &displays.Percent, Usual: "70 %", Label: calc.Text("Share looked for"),
		Help: calc.Text("The share itself comes from the engineer or the drawings."),
		Min:  &calc.Limit{At: 20, Unit: "%", Why: whyShare}, Max: &calc.Limit{At: 120, Unit: "%", Why: whyShare}},
	{ID: "temperature", Display: &displays.Temperature, Optional: true, Usual: "68 °F", Label: calc.Text("Concrete temperature"),
		Help: calc.Text("Its mean since placing. It changes no number here."),
		Min:  &calc.Limit{At: 0, Unit: "°F", Why: whyFrozen}, Max: &calc.Limit{At: 212, Unit: "°F", Why: whyBoiling}},
}

var gainOut = []calc.Field{
	{ID: "share-aci", Display: &displays.Percent, Lead: true, Label: calc.Text("Share by ACI 209"),
		Help: calc.Text("Estimate only.")},
	{ID: "share-ec", Display: &displays.Percent, Lead: true, Label: calc.Text("Share by Eurocode 2"),
		Help: calc.Text("Estimate only.")},
	{ID: "strength-aci", Display: &strengthAtLeast, Label: calc.Text("Strength by ACI 209")},
	{ID: "strength-ec", Display: &strengthAtLeast, Label: calc.Text("Strength by Eurocode 2")},
	{ID: "time-aci", Display: &daysAtLeast, Label: calc.Text("Time to share, ACI 209")},
	{ID: "time-ec", Display: &daysAtLeast, Label: calc.Text("Time to share, Eurocode 2")},
	{ID: "ages", Kind: calc.Rows, Label: calc.Text("By age"), Cols: []calc.Field{
		{ID: "age", Display: &displays.Days, Label: calc.Text("Age")},
		{ID: "aci", Display: &displays.Percent, Label: calc.Text("ACI 209")},
		{ID: "ec", Display: &displays.Percent, Label: calc.Text("Eurocode 2")},
	}},
}

const (
	meansAge   = calc.Text("age")
	meansShare = calc.Text("share of the 28-day strength")
	meansA     = calc.Text("constant of cement and curing, days")
	meansB     = calc.Text("constant of cement and curing")
	meansClass = calc.Text("coefficient of the cement class")
)

var share209 = &calc.Formula{ID: "share-aci", Title: calc.Text("Share by ACI 209"),
	Expr: "t/(a + b*t)", Result: calc.Var{Symbol: "p", Meaning: meansShare},
	Vars: []calc.Var{{Symbol: "t", Meaning: meansAge, Unit: "d"}, {Symbol: "a", Meaning: meansA}, {Symbol: "b", Meaning: meansB}},
	Fn:   calc.Func3(Share209), Go: "strength.Share209", Source: "aci209",
	Limits: calc.Text("From 1 day on. Type I moist: a = 4.0, b = 0.85, which gives 100.7% at 28 days. Measured plain mixes lay lower: median 65% at 7 days.")}

var age209 = &calc.Formula{ID: "time-aci", Title: calc.Text("Time to a share, ACI 209"),
	Expr: "a*p/(1 - b*p)", Result: calc.Var{Symbol: "t", Meaning: meansAge, Unit: "d"},
	Vars: []calc.Var{{Symbol: "p", Meaning: meansShare}, {Symbol: "a", Meaning: meansA}, {Symbol: "b", Meaning: meansB}},
	Fn:   calc.Func3(Age209), Go: "strength.Age209", Source: "aci209",
	Limits: calc.Text("For shares below 1/b, which the curve never reaches.")}

var shareEC = &calc.Formula{ID: "share-ec", Title: calc.Text("Share by Eurocode 2"),
	Expr: "exp(s*(1 - sqrt(28/t)))", Result: calc.Var{Symbol: "beta", Meaning: meansShare},
	Vars: []calc.Var{{Symbol: "s", Meaning: meansClass}, {Symbol: "t", Meaning: meansAge, Unit: "d"}},
	Fn:   calc.Func2(ShareEC), Go: "strength.ShareEC", Source: "ec2",
	Limits: calc.Text("Of the mean strength, at a mean of 20 °C (68 °F). It must not excuse a failed 28-day test.")}

var ageEC = &calc.Formula{ID: "time-ec", Title: calc.Text("Time to a share, Eurocode 2"),
	Expr: "28/(1 - ln(p)/s)^2", Result: calc.Var{Symbol: "t", Meaning: meansAge, Unit: "d"},
	Vars: []calc.Var{{Symbol: "p", Meaning: meansShare}, {Symbol: "s", Meaning: meansClass}},
	Fn:   calc.Func2(AgeEC), Go: "strength.AgeEC", Source: "ec2",
	Limits: calc.Text("For shares below e^s, which the curve never reaches.")}

var strengthOf = &calc.Formula{ID: "strength", Title: calc.Text("Strength from the share"),
	Expr: "p*f_28", Result: calc.Var{Symbol: "f", Meaning: calc.Text("strength at that age"), Unit: "MPa", US: "psi"},
	Vars: []calc.Var{{Symbol: "p", Meaning: meansShare}, {Symbol: "f_28", Meaning: calc.Text("strength at 28 days"), Unit: "MPa", US: "psi"}},
	Fn:   calc.Func2(Strength), Go: "strength.Strength", Source: "aci209"}

var gainFormulas = []*calc.Formula{share209, shareEC, strengthOf, age209, ageEC}
