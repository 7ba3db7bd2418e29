package barlaps

import (
	"math"

	"coursebook/calculators/calc"
	"coursebook/calculators/steel"
)

const (
	noteShort = calc.Text(
		"The drawing's lap is shorter than some rows. Ask the engineer which code and class it follows.",
	)
	noteStop = calc.Text(
		"The drawing's lap is shorter than every row. Stop: no bar is set before the engineer has answered.",
	)
	note19 = calc.Text("ACI 318-19 asks for hooks up to 1.6 times as long where bars are close. Which edition " +
		"counts?")
	noteNo    = calc.Text("No laps in bars this large: codes want couplers or welds.")
	noteIRC   = calc.Text("The IRC table knows only #4 to #6 of Grade 40 and 60. It has no row here.")
	noteGrade = calc.Text("Above Grade 60 the factor for the grade is from the 2019 code. Older editions have none.")
	noteFlat  = calc.Text("The IRC and BC rows know no factor for top bars, coating or lightweight concrete.")
	noteCap   = calc.Text("Concrete above {limit} earns no shorter lap: the codes cap its root.")
)

const (
	least318 = 12 * steel.Inch
	leastA23 = 300 * steel.Mm
	// largestBar is the diameter of the largest bar that codes lap, m: #11 or 35M.
	largestBar = 36 * steel.Mm
	// smallBar is the diameter up to which bars count as #6 or 20M and smaller, m.
	smallBar = 20 * steel.Mm
	// capA23 is the strength in MPa above which CSA caps its square root. ACI
	// does so above 10000 psi, a little more.
	capA23 = 64.0
)

// bc are the laps of the British Columbia code, m, by bar.
var bc = [...]struct {
	bar string
	lap float64
}{{"10m", 450 * steel.Mm}, {"15m", 650 * steel.Mm}}

// table collects the rows of the rules.
type table struct {
	*calc.Recorder
	in    calc.Case
	bar   steel.Bar
	rows  []calc.Case
	least float64 // of the laps, m
	most  float64
}

// compute sets the laps of one bar by each code. It refuses nothing; a bar too
// large for laps gets none.
func compute(r *calc.Recorder, in calc.Case) {
	t := &table{Recorder: r, in: in, bar: steel.BarOf(in, "bar")}
	covered, other := 20.0, 40.0/3
	if t.bar.Diameter <= smallBar {
		covered, other = 25, 50.0/3
	}
	t.code(ruleACI, t.aci(0, covered), least318)
	t.code(ruleACIOther, t.aci(1, other), least318)
	t.code(ruleCSA, t.csa(2, 0.45), leastA23)
	t.code(ruleCSAOther, t.csa(3, 0.6), leastA23)
	t.irc()
	for _, b := range bc {
		// The code names these laps for steel of 400 MPa.
		if b.bar == t.bar.ID && t.grade() == 1 {
			t.row(ruleBC, calc.Value{}, calc.Value{}, b.lap)
		}
	}
	r.PutRows("laps", t.rows)
	if t.most > 0 { // no code gives a lap of the largest bars
		r.Put("least", t.least)
		r.Put("most", t.most)
	}
	t.hook()
	t.addNotes()
}

// coat returns the factor of the coating, before any cap.
func (t *table) coat() float64 {
	switch t.in.Choice("coating") {
	case "epoxy":
		return 1.2
	case "epoxy-close":
		return 1.5
	}
	return 1
}

// place returns the factor of position and coating together, capped as in the
// codes.
func (t *table) place() float64 {
	if t.in.Flag("top") {
		return math.Min(1.3*t.coat(), 1.7)
	}
	return t.coat()
}

// lambda returns the factor λ of lightweight concrete.
func (t *table) lambda() float64 {
	if t.in.Flag("light") {
		return 0.75
	}
	return 1
}

// grade returns ψ_g of the 2019 code. A grade between its steps takes the higher.
func (t *table) grade() float64 {
	switch fy := calc.From(t.in.Num("fy"), "psi"); {
	case calc.Over(fy, 80000):
		return 1.3
	case calc.Over(fy, 60000):
		return 1.15
	}
	return 1
}

// aci returns the development length in m by ACI 318 and records it as a worked
// step. rule is the index of its rule, c the constant for cover and spacing.
func (t *table) aci(rule int, c float64) float64 {
	return t.UseFor(
		rules[rule].Label,
		nil,
		steel.Development318Formula,
		t.in.Num("fy"),
		t.place(),
		t.lambda(),
		t.in.Num("fc"),
		c,
		t.grade(),
		t.bar.Diameter,
	)
}

// csa returns the development length in m by CSA A23.3 and records it as a worked
// step. rule is the index of its rule, c the constant for cover and spacing.
func (t *table) csa(rule int, c float64) float64 {
	k, size := t.place(), 1.0
	if t.in.Flag("light") {
		k *= 1.3
	}
	if t.bar.Diameter <= smallBar {
		size = 0.8
	}
	return t.UseFor(
		rules[rule].Label,
		nil,
		steel.DevelopmentA23Formula,
		c,
		k,
		size,
		t.in.Num("fy"),
		t.in.Num("fc"),
		t.bar.Diameter,
	)
}

// code adds a row with both classes of lap for a development length, in m; a bar
// too large for laps gets the length alone. least, in m, applies to all lengths.
func (t *table) code(rule string, development, least float64) {
	a := math.Max(development, least)
	if t.bar.Diameter > largestBar {
		t.rows = append(t.rows, t.NewRow("laps").With("rule", calc.ChoiceOf(rule)).With("development", calc.Num(a)))
		return
	}
	lap := 0.0
	if rule == ruleACI {
		lap = t.Use(steel.ClassBFormula, development, least)
		t.Put("lap-aci", lap)
	} else {
		lap = steel.ClassBFormula.Value(development, least)
	}
	t.row(rule, calc.Num(a), calc.Num(a), lap)
}

// row adds a row, all lengths in m, and compares the lap of the drawing with its
// lap.
func (t *table) row(rule string, development, a calc.Value, lap float64) {
	row := t.NewRow("laps").
		With("rule", calc.ChoiceOf(rule)).
		With("development", development).
		With("lap-a", a).
		With("lap-b", calc.Num(lap))
	if t.in.Has("drawn") {
		verdict := "longer"
		if calc.Under(t.in.Num("drawn"), lap) {
			verdict = "shorter"
		}
		row = row.With("drawing", calc.ChoiceOf(verdict))
	}
	if len(t.rows) == 0 || lap < t.least {
		t.least = lap
	}
	t.most = math.Max(t.most, lap)
	t.rows = append(t.rows, row)
}

// irc adds the row of the residential code for the bars and grades in its table,
// and notes any other. The development length is truncated to the inch and the lap
// rounded, as printed.
func (t *table) irc() {
	n, fy := 60.0, calc.From(t.in.Num("fy"), "psi")
	if !calc.Over(fy, 40000) {
		n = 40
	}
	if t.bar.ID != "4" && t.bar.ID != "5" && t.bar.ID != "6" || calc.Over(fy, 60000) {
		t.Note(calc.LevelNotice, calc.At("bar"), noteIRC)
		return
	}
	lap := t.Use(steel.LapIRCFormula, n, t.bar.Diameter)
	t.row(
		ruleIRC,
		calc.Num(math.Floor(lap/1.3/steel.Inch)*steel.Inch),
		calc.Value{},
		math.Round(lap/steel.Inch)*steel.Inch,
	)
}

// hook sets the development of a standard hook.
func (t *table) hook() {
	fy, fc, d := t.in.Num("fy"), t.in.Num("fc"), t.bar.Diameter
	coat := math.Min(t.coat(), 1.2)
	t.Note(calc.LevelAsk, calc.Path{}, note19)
	t.Put("hook", t.Use(steel.Hook318Formula, fy, coat, t.lambda(), fc, d))
	if d <= largestBar {
		t.Put("hook-covered", steel.Hook318Formula.Value(fy, 0.7*coat, t.lambda(), fc, d))
	}
}

// addNotes sets the verdict on the lap of the drawing and that lap in diameters, and
// records the notes on short laps, large bars and factors.
func (t *table) addNotes() {
	if t.in.Has("drawn") && t.most > 0 {
		verdict := lapLong
		switch drawn := t.in.Num("drawn"); {
		case calc.Under(drawn, t.least):
			verdict = lapStop
			t.Note(calc.LevelWarning, calc.At("drawn"), noteStop)
		case calc.Under(drawn, t.most):
			verdict = lapAsk
			t.Note(calc.LevelAsk, calc.At("drawn"), noteShort)
		}
		t.PutChoice("verdict", verdict)
	}
	if t.bar.Diameter > largestBar {
		t.Note(calc.LevelWarning, calc.At("bar"), noteNo)
	} else if t.in.Has("drawn") {
		t.Put("diameters", t.in.Num("drawn")/t.bar.Diameter)
	}
	if t.place() > 1 || t.lambda() < 1 {
		t.Note(calc.LevelNotice, calc.At("coating"), noteFlat)
	}
	if t.grade() > 1 {
		t.Note(calc.LevelNotice, calc.At("fy"), noteGrade)
	}
	if calc.Over(t.in.Num("fc"), calc.SI(capA23, "MPa")) {
		t.Note(calc.LevelNotice, calc.At("fc"), noteCap, calc.Amount("limit", calc.SI(capA23, "MPa"), &yield))
	}
}
