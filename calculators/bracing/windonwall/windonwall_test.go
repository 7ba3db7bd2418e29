package windonwall

import (
	"math"
	"math/rand/v2"
	"testing"

	"coursebook/calculators/bracing"
	"coursebook/calculators/calc"
	"coursebook/calculators/calctest"
	"coursebook/calculators/displays"
)

// K_z as printed by ASCE 7-05 to 7-16 (table of velocity pressure exposure
// coefficients, from memory), at 15, 20, 25, 30, 40, 50, 60, 80 and 100 ft.
func TestHeightFactorTable(t *testing.T) {
	heights := []float64{15, 20, 25, 30, 40, 50, 60, 80, 100}
	for exposure, printed := range map[string][]float64{
		"b": {0.57, 0.62, 0.66, 0.70, 0.76, 0.81, 0.85, 0.93, 0.99},
		"c": {0.85, 0.90, 0.94, 0.98, 1.04, 1.09, 1.13, 1.21, 1.26},
		"d": {1.03, 1.08, 1.12, 1.16, 1.22, 1.27, 1.31, 1.38, 1.43},
	} {
		zg, alpha := terrain(exposure)
		for i, z := range heights {
			calctest.Near(
				t,
				exposure,
				bracing.HeightFactor(z, calc.From(zg, "ft"), alpha),
				printed[i],
				0.007,
			) // 1.13 is printed for 1.1366
		}
	}
}

// The forces on any brace are in equilibrium: moments about the base of the wall,
// and vertical forces at the foot. They are computed with vectors, not with the
// formulas.
func TestBraceIsInBalance(t *testing.T) {
	rng := rand.New(rand.NewPCG(13, 14))
	for range 500 {
		in := calc.NewCase(inputs).With("height", calc.Num(2+3*rng.Float64())).With("run", calc.Num(1+2*rng.Float64())).
			With("below", calc.Num(rng.Float64())).
			With("wind", calc.In(90+80*rng.Float64(), "mph")).With("spacing", calc.Num(1+2*rng.Float64())).
			With("out", calc.Num(rng.Float64()))
		in = in.With("attach", calc.Num(in.Num("height")*(0.3+0.7*rng.Float64())))
		res := calc.Run(Calculator, in)
		if res.State != calc.OK {
			t.Fatal(res.Notes)
		}
		h, s, a := in.Num("height"), in.Num("spacing"), in.Num("attach")
		overturn := res.Out.Num("line") * s * 0.55 * h
		if res.Out.Choice("governs") == "least" {
			overturn = s * math.Max(calc.SI(15, "psf")*h*h/2, calc.SI(100, "lbf/ft")*h)
		}
		// Unit vector along the brace, from its foot to the wall.
		dx, dy := in.Num("run"), a+in.Num("below")
		long := math.Hypot(dx, dy)
		// The pull of the brace on the wall at height a turns it about the base.
		calctest.Near(t, "pull", res.Out.Num("pull")*dx/long*a/overturn, 1, 1e-9)
		planks := res.Out.Num("planks") * in.Num("out")
		calctest.Near(t, "push", res.Out.Num("push")*dx/long*a/(overturn+planks), 1, 1e-9)
		calctest.Near(t, "uplift", res.Out.Num("uplift"), res.Out.Num("pull")*dy/long, 1e-6)
		calctest.Near(t, "down", res.Out.Num("down"), res.Out.Num("push")*dy/long, 1e-6)
		calctest.Near(t, "level", res.Out.Num("level"), res.Out.Num("push")*dx/long, 1e-6)
		// Wind away from the brace: upright = planks + vertical part of the pull
		// of the brace, less the push from the planks.
		leg := res.Out.Num("planks") + (res.Out.Num("pull")-(res.Out.Num("push")-res.Out.Num("pull")))*dy/long
		calctest.Near(t, "leg", res.Out.Num("leg"), math.Max(leg, 0), 1e-6)
	}
}

func TestWindScales(t *testing.T) {
	strong := "wind=120 mph; period=full; duty=none"
	base := calctest.Run(t, Calculator, calctest.Inputs(strong)...).Out
	if base.Choice("governs") != "wind" {
		t.Fatal("the wind does not govern")
	}
	for inputs, want := range map[string]float64{
		"wind=180 mph; period=full; duty=none":                   2.25, // the square of the wind
		strong + "; spacing=3 ft":                                0.5,
		strong + "; hill=2":                                      2,
		strong + "; direction=1":                                 1 / 0.85,
		"wind=200 mph; storm=weeks; calm-season=yes; duty=none":  200 * 200 * 0.5625 / (120 * 120),
		"wind=200 mph; period=full; factor=allowable; duty=none": 0.6 * 200 * 200 / (120 * 120),
		strong + "; part=own; coefficient=2.7":                   2.7 / bracing.ForceWhole(40.0/9),
	} {
		calctest.Near(
			t,
			inputs,
			calctest.Run(t, Calculator, calctest.Inputs(inputs)...).Out.Num("push")/base.Num("push"),
			want,
			1e-9,
		)
	}
	last := 0.0
	for _, exposure := range []string{"b", "c", "d"} {
		got := calctest.Run(t, Calculator, calctest.Inputs(strong+"; exposure="+exposure)...).Out.Num("q")
		if got <= last {
			t.Errorf("exposure %s: %v after %v", exposure, got, last)
		}
		last = got
	}
	if high := calctest.Run(t, Calculator, calctest.Inputs(strong+
		"; ground=5000 ft")...).Out.Num("q"); high >= base.Num(
		"q",
	) {
		t.Error("thin air does not lower the pressure")
	}
	if calctest.Run(t, Calculator, calctest.Inputs(strong+"; part=end")...).Out.Num("cf") <= base.Num("cf") {
		t.Error("an end gets no more than the middle")
	}
	if got := calctest.Run(t, Calculator, "duty=light").Out.Num("uplift"); got != calctest.Run(
		t,
		Calculator,
		"duty=heavy",
	).Out.Num(
		"uplift",
	) {
		t.Error("planks hold the anchor down")
	}
}

// At the spacing that the ratings allow the forces equal the ratings.
func TestRatings(t *testing.T) {
	open := calctest.Run(t, Calculator)
	if open.Out.Has("brace-verdict") || open.Out.Has("anchor-verdict") || open.Out.Has("spacing-limit") {
		t.Error("a verdict without a rating")
	}
	res := calctest.Run(t, Calculator, "brace-rating=3000 lbf", "anchor-rating=1000 lbf")
	if res.Out.Choice("brace-verdict") != "within" || res.Out.Choice("anchor-verdict") != "beyond" {
		t.Error(res.Out.Choice("brace-verdict"), res.Out.Choice("anchor-verdict"))
	}
	in, _ := calc.Read(Calculator, []calc.Entry{{Path: "anchor-rating", Text: "1000 lbf"}}, calc.Locale{}.Style)
	at := calc.Run(Calculator, in.With("spacing", calc.Num(res.Out.Num("spacing-limit"))))
	calctest.Near(t, "uplift", calc.From(at.Out.Num("uplift"), "lbf"), 1000, 1e-6)
	if at.Out.Choice("anchor-verdict") != "within" {
		t.Error("right on the rating is beyond it")
	}
}

func TestNotes(t *testing.T) {
	calctest.CheckNotes(t, Calculator, []calctest.NoteCase{
		{
			Inputs: "attach=9 ft 1 in",
			Note:   "The brace cannot hold above the wall, which is {height} high.",
			At:     "attach",
			Want:   true,
		},
		{
			Inputs: "attach=9 ft",
			Note:   "The brace cannot hold above the wall, which is {height} high.",
			At:     "",
			Want:   false,
		},
		{
			Inputs: "run=3 ft",
			Note: "The brace stands at {slope}. Army practice is 20° to 60°. Outside that it holds badly, and there " +
				"is no verdict. Move its foot, or ask the engineer.",
			At:   "run",
			Want: true,
		},
		{
			Inputs: "run=20 ft",
			Note: "The brace stands at {slope}. Army practice is 20° to 60°. Outside that it holds badly, and there " +
				"is no verdict. Move its foot, or ask the engineer.",
			At:   "run",
			Want: true,
		},
		{
			Inputs: "run=6 ft",
			Note: "The brace stands at {slope}. Army practice is 20° to 60°. Outside that it holds badly, and there " +
				"is no verdict. Move its foot, or ask the engineer.",
			At:   "",
			Want: false,
		},
		{
			Note: "ACI 347 asks for more than this wind gives: 15 psf (0.72 kPa), or 100 lb on each foot (1.46 kN/m) " +
				"at the top.",
			At:   "wind",
			Want: true,
		},
		{
			Inputs: "wind=150 mph",
			Note: "ACI 347 asks for more than this wind gives: 15 psf (0.72 kPa), or 100 lb on each foot (1.46 " +
				"kN/m) at the top.",
			At:   "",
			Want: false,
		},
		{
			Inputs: "wall=fresh",
			Note: "Fresh concrete adds weight but no strength. A leaning wall pulls harder on its braces. Count on " +
				"the braces alone.",
			At:   "wall",
			Want: true,
		},
		{
			Note: "Fresh concrete adds weight but no strength. A leaning wall pulls harder on its braces. Count on " +
				"the braces alone.",
			At:   "",
			Want: false,
		},
		{Inputs: "clear=36 mph", Note: "{label} must be at most {limit}. {why}", At: "clear", Want: true},
		{
			Inputs: "part=end; length=17 ft",
			Note:   "A wall shorter than two heights has no end zone. The coefficient is that of the whole wall.",
			At:     "part",
			Want:   true,
		},
		{
			Inputs: "part=end; length=18 ft",
			Note:   "A wall shorter than two heights has no end zone. The coefficient is that of the whole wall.",
			At:     "",
			Want:   false,
		},
		{
			Note: "Without ratings there is no verdict. Ask the makers of brace and anchor for safe loads.",
			At:   "brace-rating",
			Want: true,
		},
		{
			Inputs: "brace-rating=1000 lbf",
			Note:   "Without ratings there is no verdict. Ask the makers of brace and anchor for safe loads.",
			At:     "",
			Want:   false,
		},
		{
			Inputs: "brace-rating=1000 lbf",
			Note:   "This is beyond the rating. Do not put the wall up like this: set more braces or ask the engineer.",
			At:     "brace-rating",
			Want:   true,
		},
		{
			Inputs: "brace-rating=5000 lbf",
			Note:   "This is beyond the rating. Do not put the wall up like this: set more braces or ask the engineer.",
			At:     "",
			Want:   false,
		},
		{
			Inputs: "brace-rating=5000 lbf; factor=allowable",
			Note:   "With 0.6 the ratings must be safe loads, not breaking loads. Is that so?",
			At:     "factor",
			Want:   true,
		},
		{
			Note: "Leave the planks and keep {zone} clear on both sides when the wind reaches {wind}. Read it with a " +
				"wind meter at the wall.",
			At:   "clear",
			Want: true,
		},
		{
			Note: "The wind also blows the other way. The brace must be fixed to pull, at the wall and at the foot.",
			At:   "",
			Want: true,
		},
	})
	if calctest.Run(t, Calculator, "attach=9 ft 1 in").State != calc.Refused {
		t.Error("a brace above the wall is not refused")
	}
}

// Today's gust has an answer from 5 mph on. It grows with the square of the gust, judges
// no rating and says that it is no design wind.
func TestGustOfToday(t *testing.T) {
	today := func(gust string, more ...string) calc.Result {
		return calctest.Run(t, Calculator, append(more, "by=today", "gust="+gust, "duty=none")...)
	}
	for gust, crew := range map[string]string{"5 mph": "under", "19.5 mph": "under", "20 mph": "off", "40 mph": "off"} {
		res := today(gust, "clear=20 mph", "brace-rating=5000 lbf", "anchor-rating=5000 lbf")
		if res.Out.Choice("crew") != crew || calctest.Noted(res, noteOff) != (crew == "off") ||
			!calctest.Noted(res, noteToday) {
			t.Errorf("%s: %s, %v", gust, res.Out.Choice("crew"), res.Notes)
		}
		for _, id := range []string{"brace-verdict", "anchor-verdict", "spacing-limit", "design-wind", "kz"} {
			if res.Out.Has(id) {
				t.Errorf("%s: today's gust has %s", gust, id)
			}
		}
	}
	calctest.NearBy(t, "square", today("40 mph").Out.Num("pull"), 4*today("20 mph").Out.Num("pull"), 1e-9)
	// 0.00256·30² psf on 9 ft, 0.85·Cf of a wall 40 by 9 ft, by hand.
	want := 0.00256 * 900 * gustFactor * bracing.ForceWhole(40.0/9)
	calctest.NearBy(t, "pressure, psf", calc.From(today("30 mph").Out.Num("pressure"), "psf"), want, 1e-3)
	if res := calctest.Run(t, Calculator, "by=map"); calctest.Noted(res, noteToday) || res.Out.Has("crew") {
		t.Error("the wind of the map is called today's gust")
	}
	knots := today("26 kn").Out.Num("pull")
	calctest.NearBy(t, "26 knots", knots, today("29.92 mph").Out.Num("pull"), 1e-3)
	if res := calctest.Try(Calculator, "wind=30 mph"); res.State != calc.Bad {
		t.Errorf("30 mph as the wind of the map: %s", res.State)
	}
}

// In hurricane country the full wind counts, also in the forces. It is lowered only where
// the bracing is up out of season.
func TestStormCountsInFull(t *testing.T) {
	for _, c := range []struct {
		typed []string
		wind  float64
		asked bool
	}{
		{[]string{"wind=115 mph"}, 0.75 * 115, false},
		{[]string{"wind=116 mph"}, 116, false},
		{[]string{"wind=180 mph", "period=five"}, 180, false},
		{[]string{"wind=180 mph", "storm=weeks"}, 180, true},
		{[]string{"wind=180 mph", "storm=weeks", "calm-season=yes"}, 135, false},
		{[]string{"wind=100 mph", "period=full", "storm=weeks"}, 100, false},
	} {
		res := calctest.Run(t, Calculator, c.typed...)
		calctest.Near(t, c.typed[0], calc.From(res.Out.Num("design-wind"), "mph"), c.wind, 1e-6)
		if calctest.Noted(res, askStorm) != c.asked {
			t.Errorf("%v: %v", c.typed, res.Notes)
		}
	}
}

// A brace that holds below the middle of the wind and a wall too high for one row of
// braces are within no rating, and have no spacing that would do.
func TestNoVerdictForLowBracesAndTallWalls(t *testing.T) {
	rated := []string{"brace-rating=9000 lbf", "anchor-rating=9000 lbf"}
	for _, c := range []struct {
		inputs  string
		verdict string
		note    calc.Text
	}{
		{"attach=5 ft", "within", ""}, // 0.55 of 9 ft is 4.95 ft
		{"attach=4 ft 11 in", "open", noteAttach},
		{"attach=1 ft", "open", noteAttach},
		{"attach=1 ft; spacing=20 ft; run=1 ft", "beyond", noteAttach},
		{"height=12 ft; attach=7 ft", "within", ""},
		{"height=12 ft 1 in; attach=7 ft", "open", noteTall},
		{"height=30 ft; spacing=20 ft", "beyond", noteTall},
		{"height=30 ft; attach=20 ft; run=15 ft; spacing=3 ft", "open", noteTall},
	} {
		res := calctest.Run(t, Calculator, append(calctest.Inputs(c.inputs), rated...)...)
		brace, anchor := res.Out.Choice("brace-verdict"), res.Out.Choice("anchor-verdict")
		if brace != c.verdict || anchor != c.verdict || res.Out.Has("spacing-limit") != (c.note == "") {
			t.Errorf("%s: brace %s, anchor %s", c.inputs, brace, anchor)
		}
		if c.note != "" && !calctest.Noted(res, c.note) || c.note == "" && calctest.Noted(res, noteAttach) {
			t.Errorf("%s: %v", c.inputs, res.Notes)
		}
	}
}

// No limit that is typed keeps the crew on the planks at 20 mph: a higher one gives no
// answer. A lower one counts.
func TestNobodyStaysOverThePublishedWind(t *testing.T) {
	for _, wall := range []string{"empty", "fresh"} {
		for _, c := range []struct {
			clear, gust, crew string
			limit             float64 // mph
		}{
			{"20 mph", "30 mph", "off", 20},
			{"20 mph", "20.5 mph", "off", 20},
			{"20 mph", "20 mph", "off", 20},
			{"20 mph", "19.5 mph", "under", 20},
			{"15 mph", "16 mph", "off", 15},
			{"15 mph", "15 mph", "off", 15},
			{"15 mph", "14.5 mph", "under", 15},
		} {
			res := calctest.Run(t, Calculator, "by=today", "wall="+wall, "clear="+c.clear, "gust="+c.gust)
			if res.Out.Choice("crew") != c.crew || calctest.Noted(res, noteOff) != (c.crew == "off") {
				t.Errorf("%s, gust %s, limit %s: %s", wall, c.gust, c.clear, res.Out.Choice("crew"))
			}
			n, ok := calctest.NoteOf(res, noteClear)
			if !ok {
				t.Fatal("nobody is told to leave")
			}
			want := calc.Locale{}.Say("{wind}", calc.Amount("wind", calc.SI(c.limit, "mph"), &displays.Wind))
			if got := (calc.Locale{}).Say("{wind}", n.Slots...); got != want {
				t.Errorf("limit %s: the note says %s", c.clear, got)
			}
		}
	}
	for _, clear := range []string{"20.2 mph", "21 mph", "35 mph"} {
		if res := calctest.Run(t, Calculator, "clear="+clear); res.State != calc.Refused {
			t.Errorf("limit %s: %s", clear, res.State)
		}
	}
	for _, f := range inputs {
		if f.ID == "clear" && f.Rule != "planks-wind" {
			t.Errorf("clear has the rule %q", f.Rule)
		}
	}
}

// A lowered wind of hurricane country is within no rating until the bracing is said to be
// up out of season, which it can be for six weeks only.
func TestNoVerdictInTheSeason(t *testing.T) {
	for _, c := range []struct {
		typed   []string
		verdict string
		asked   bool
	}{
		{[]string{"storm=weeks"}, "open", true},
		{[]string{"storm=weeks", "calm-season=yes"}, "within", false},
		{[]string{"storm=year"}, "open", true},
		{[]string{"storm=year", "calm-season=yes"}, "open", true},
		{[]string{"storm=five", "calm-season=yes"}, "open", true},
		{[]string{"storm=full"}, "within", false},
		{[]string{"storm=weeks", "spacing=20 ft", "run=4 ft"}, "beyond", true},
	} {
		res := calctest.Run(t, Calculator, append(c.typed, "wind=180 mph", "brace-rating=9000 lbf",
			"anchor-rating=9000 lbf")...)
		brace, anchor := res.Out.Choice("brace-verdict"), res.Out.Choice("anchor-verdict")
		if brace != c.verdict || anchor != c.verdict || calctest.Noted(res, askStorm) != c.asked {
			t.Errorf("%v: brace %s, anchor %s, asked %v", c.typed, brace, anchor, calctest.Noted(res, askStorm))
		}
		if res.Out.Has("spacing-limit") == c.asked {
			t.Errorf("%v: a spacing is given: %v", c.typed, !c.asked)
		}
	}
}

// A brace flatter than 20° or steeper than 60° gets no verdict within its rating.
func TestNoVerdictOnABadSlope(t *testing.T) {
	for _, c := range []struct{ run, verdict string }{
		{"5 ft", "within"}, {"3 ft 6 in", "within"}, {"3 ft 5 in", "open"}, {"1 ft", "open"},
		{"16 ft", "within"}, {"17 ft", "open"}, {"30 ft", "open"},
	} {
		res := calctest.Run(t, Calculator, "run="+c.run, "brace-rating=50000 lbf", "anchor-rating=50000 lbf")
		if res.Out.Choice("brace-verdict") != c.verdict || res.Out.Choice("anchor-verdict") != c.verdict ||
			calctest.Noted(res, noteSlope) != (c.verdict == "open") ||
			res.Out.Has("spacing-limit") == (c.verdict == "open") {
			t.Errorf("foot %s out: %s, %v", c.run, res.Out.Choice("brace-verdict"), res.Notes)
		}
	}
}

// A spacing over the house rule gets the caution before all other notes, and a wall that the
// ratings alone would let one brace take is held against the rule.
func TestSpacingOverTheHouseRule(t *testing.T) {
	for _, c := range []struct {
		spacing, rating string
		first, house    bool
	}{
		{"6 ft", "50000 lbf", false, true},
		{"7 ft", "50000 lbf", true, true},
		{"5 ft", "50000 lbf", false, true},
		{"6 ft", "50 lbf", false, false},
	} {
		res := calctest.Run(t, Calculator, "spacing="+c.spacing, "brace-rating="+c.rating)
		first := res.Notes[0].Text == calc.NoteLooser
		if first != c.first || calctest.Noted(res, noteHouse) != c.house {
			t.Errorf("%s, %s: %v", c.spacing, c.rating, res.Notes)
		}
		if most := calc.SI(6, "ft"); calc.Over(res.Out.Num("spacing-limit"), most) ||
			calc.Under(res.Out.Num("spacing-limit"), most) == c.house {
			t.Errorf("%s, %s: %v m", c.spacing, c.rating, res.Out.Num("spacing-limit"))
		}
	}
}

// More wall on a brace than the house rule gets no verdict that it holds, unless the brace
// plan says so; a force beyond the rating is beyond it in any case.
func TestNoVerdictPastTheHouseRuleWithoutThePlan(t *testing.T) {
	for _, c := range []struct {
		typed, verdict string
		noted          bool
	}{
		{"spacing=6 ft", "within", false},
		{"spacing=6 ft 1 in", "open", true},
		{"spacing=20 ft", "open", true},
		{"spacing=20 ft; on-plan=yes", "within", false},
	} {
		rated := []string{"brace-rating=50000 lbf", "anchor-rating=50000 lbf"}
		res := calctest.Run(t, Calculator, append(rated, calctest.Inputs(c.typed)...)...)
		brace, anchor := res.Out.Choice("brace-verdict"), res.Out.Choice("anchor-verdict")
		if brace != c.verdict || anchor != c.verdict || calctest.Noted(res, notePlan) != c.noted {
			t.Errorf("%s: brace %s, anchor %s, %v", c.typed, brace, anchor, res.Notes)
		}
		planned := c.verdict == "within" && c.typed != "spacing=6 ft"
		if calctest.Noted(res, calc.NoteOnPlan) != planned || planned && calctest.Noted(res, calc.NoteLooser) {
			t.Errorf("%s: the plan is said to count: %v", c.typed, res.Notes)
		}
		if most := res.Out.Num("spacing-limit"); calc.Over(most, calc.SI(6, "ft")) != planned {
			t.Errorf("%s: most wall %v m", c.typed, most)
		}
	}
	weak := calctest.Run(t, Calculator, "spacing=20 ft", "brace-rating=100 lbf", "anchor-rating=100 lbf")
	if weak.Out.Choice("brace-verdict") != "beyond" || weak.Out.Choice("anchor-verdict") != "beyond" {
		t.Errorf("a force beyond the rating is judged %s", weak.Out.Choice("brace-verdict"))
	}
}
