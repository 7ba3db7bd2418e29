package consolidation

import (
	"coursebook/calculators/calc"
	"coursebook/calculators/displays"
	"coursebook/calculators/quantity"
)

// BatteryPacks counts the packs for a pour with battery vibrators.
var BatteryPacks = &calc.Calculator{
	ID:       "battery-packs",
	Title:    calc.Text("battery-packs.title: Battery packs for a pour"),
	Purpose:  calc.Text("battery-packs.purpose: How many charged packs a pour takes, with chargers and without."),
	In:       batteryIn,
	Out:      batteryOut,
	Formulas: batteryFormulas,
	Sources:  batterySources,
	Cautions: []calc.Caution{
		{Level: calc.LevelNotice, Text: calc.Text("battery-packs.caution.stop: A vibrator that stops in a lift leaves voids that nobody sees. Have a second one that runs without packs.")},
		{Level: calc.LevelWarning, Text: calc.Text("battery-packs.caution.charge: Packs can burn. Charge them dry, off the wall, as their maker says. Never charge a frozen or damaged one.")},
	},
	Tables:  batteryTables,
	Compute: computeBattery,
	Draw:    drawBattery,
}

var (
	showDraw = quantity.Display{Dim: quantity.Power, US: quantity.UnitDisplay{Unit: "W", Step: 10}}
)

const (
	whyVolts = calc.Text("battery-packs.why.volts: Read it off the pack again.")
	whyDuty  = calc.Text("battery-packs.why.duty: From a little to all of the time.")
	whyCold  = calc.Text("battery-packs.why.cold: A pack that loses more is worn out or frozen.")
)

var batteryIn = []calc.Field{
	{ID: "known", Kind: calc.Choice, Usual: "minutes", Label: calc.Text("battery-packs.known: Known of a pack"), Options: []calc.Option{
		{ID: "minutes", Label: calc.Text("battery-packs.known.minutes: Minutes it runs the tool")},
		{ID: "label", Label: calc.Text("battery-packs.known.label: Volts and amp-hours on its label")}}},
	{ID: "minutes", Display: &displays.Minutes, Usual: "25 min", Label: calc.Text("battery-packs.minutes: Run time of a charge"),
		Help: calc.Text("battery-packs.minutes.help: From the maker, or by your own watch. Running, not waiting."),
		Min:  &calc.Limit{At: 2, Unit: "min", Why: displays.CheckUnit}, Max: &calc.Limit{At: 600, Unit: "min", Why: displays.CheckUnit}, When: byMinutes},
	{ID: "volts", Display: &displays.Tenths, Usual: "18", Label: calc.Text("battery-packs.volts: Volts"),
		Min: &calc.Limit{At: 3, Why: whyVolts}, Max: &calc.Limit{At: 120, Why: whyVolts}, When: byLabel},
	{ID: "amp-hours", Display: &displays.Tenths, Usual: "8", Label: calc.Text("battery-packs.amp-hours: Amp-hours"),
		Min: &calc.Limit{At: 0.5, Why: whyVolts}, Max: &calc.Limit{At: 100, Why: whyVolts}, When: byLabel},
	{ID: "draw", Display: &showDraw, Usual: "350 W", Label: calc.Text("battery-packs.draw: Draw of the tool at work"),
		Help: calc.Text("battery-packs.draw.help: With the head in concrete. In air it is less."),
		Min:  &calc.Limit{At: 20, Unit: "W", Why: displays.CheckUnit}, Max: &calc.Limit{At: 5000, Unit: "W", Why: displays.CheckUnit}, When: byLabel},
	{ID: "cold", Display: &displays.Percent, Usual: "10%", Label: calc.Text("battery-packs.cold: Run time lost to cold or age"),
		Help: calc.Text("battery-packs.cold.help: Your own figure. Cold packs run shorter; keep them warm."),
		Min:  &calc.Limit{At: 0, Unit: "%", Why: displays.NotMinus}, Max: &calc.Limit{At: 80, Unit: "%", Why: whyCold}},
	{ID: "duty", Display: &displays.Percent, Usual: "60%", Label: calc.Text("battery-packs.duty: Share of the time it runs"),
		Min: &calc.Limit{At: 5, Unit: "%", Why: whyDuty}, Max: &calc.Limit{At: 100, Unit: "%", Why: whyDuty}},
	{ID: "pour", Display: &displays.Hours, Usual: "3 h", Label: calc.Text("battery-packs.pour: Length of the pour"),
		Min: &calc.Limit{At: 0.25, Unit: "h", Why: displays.CheckUnit}, Max: &calc.Limit{At: 24, Unit: "h", Why: displays.OneJob}},
	{ID: "tools", Display: &displays.Count, Whole: true, Usual: "2", Label: calc.Text("battery-packs.tools: Tools at work at once"),
		Min: &calc.Limit{At: 1, Why: displays.CheckCount}, Max: &calc.Limit{At: 20, Why: displays.CheckCount}},
	{ID: "in-tool", Display: &displays.Count, Whole: true, Usual: "1", Label: calc.Text("battery-packs.in-tool: Packs in a tool at once"),
		Min: &calc.Limit{At: 1, Why: displays.CheckCount}, Max: &calc.Limit{At: 4, Why: displays.CheckCount}},
	{ID: "chargers", Display: &displays.Count, Whole: true, Usual: "2", Label: calc.Text("battery-packs.chargers: Chargers with power on site"),
		Min: &calc.Limit{At: 0, Why: displays.NotMinus}, Max: &calc.Limit{At: 40, Why: displays.CheckCount}},
	{ID: "charge", Display: &displays.FiveMinutes, Usual: "60 min", Label: calc.Text("battery-packs.charge: Time to charge a pack"),
		Help: calc.Text("battery-packs.charge.help: With the time a hot pack needs to cool first."),
		Min:  &calc.Limit{At: 5, Unit: "min", Why: displays.CheckUnit}, Max: &calc.Limit{At: 24, Unit: "h", Why: displays.CheckUnit}, When: charges},
	{ID: "spare", Display: &displays.Count, Whole: true, Usual: "1", Label: calc.Text("battery-packs.spare: Spare packs"),
		Min: &calc.Limit{At: 0, Why: displays.NotMinus}, Max: &calc.Limit{At: 20, Why: displays.CheckCount}},
}

func byMinutes(c calc.Case) bool { return c.Choice("known") != "label" }
func byLabel(c calc.Case) bool   { return c.Choice("known") == "label" }
func charges(c calc.Case) bool   { return c.Num("chargers") > 0 }

var batteryOut = []calc.Field{
	{ID: "bring", Display: &displays.Count, Exact: true, Lead: true, Label: calc.Text("battery-packs.bring: Charged packs to bring"),
		Help: calc.Text("battery-packs.bring.help: With the chargers on site, and the spare.")},
	{ID: "with", Display: &displays.Count, Exact: true, Label: calc.Text("battery-packs.with: Packs with charging")},
	{ID: "without", Display: &displays.Count, Exact: true, Lead: true, Label: calc.Text("battery-packs.without: Packs without charging")},
	{ID: "bring-without", Display: &displays.Count, Exact: true, Label: calc.Text("battery-packs.bring-without: No charging, with spare")},
	{ID: "run", Display: &displays.Minutes, Label: calc.Text("battery-packs.run: Run time of a full pack")},
	{ID: "lasts", Display: &displays.Minutes, Lead: true, Label: calc.Text("battery-packs.lasts: A pack lasts, by the clock")},
	{ID: "changes", Display: &displays.Count, Exact: true, Label: calc.Text("battery-packs.changes: Changes at each tool")},
	{ID: "keep-up", Display: &displays.Count, Exact: true, Label: calc.Text("battery-packs.keep-up: Chargers that keep up")},
}

var batteryTables = []calc.Table{{
	ID: "bring", Title: calc.Text("battery-packs.table.bring: Charged packs to bring, by run time and length of pour"),
	Note: calc.Text("battery-packs.table.bring.note: For the job above: two tools, two chargers, one spare."),
	Out:  "bring", Set: []calc.Entry{{Path: "known", Text: "minutes"}},
	Down:   calc.Axis{Path: "minutes", US: []string{"15 min", "20 min", "25 min", "30 min", "40 min", "60 min"}},
	Across: calc.Axis{Path: "pour", US: []string{"1 h", "2 h", "3 h", "4 h", "6 h"}},
}}

var batterySources = []calc.Source{
	{ID: "cfr", Author: "US Department of Transportation", Title: "49 CFR 171.8, definitions", Where: "watt-hour: ampere-hours times volts",
		Status: calc.Confirmed, Link: "https://www.law.cornell.edu/cfr/text/49/171.8"},
	{ID: "practice", Title: "Common practice: cold and worn packs run shorter, by a share the crew knows; all tools change packs together; one spare",
		Status: calc.CommonPractice},
}

const (
	meansRun   = calc.Text("battery-packs.means.run: run time of a full pack")
	meansLasts = calc.Text("battery-packs.means.lasts: time a pack lasts by the clock")
	meansSlots = calc.Text("battery-packs.means.slots: packs at work at once")
	meansWh    = calc.Text("battery-packs.means.wh: energy of a pack, watt-hours")
)

var batteryFormulas = []*calc.Formula{eqWattHours, eqRunTime, eqLasts, eqUncharged, eqChargers, eqBound}

var eqWattHours = &calc.Formula{
	ID: "watt-hours", Title: calc.Text("battery-packs.eq.watt-hours: Energy of a pack"), Expr: "V*A",
	Result: calc.Var{Symbol: "E", Meaning: meansWh},
	Vars: []calc.Var{{Symbol: "V", Meaning: calc.Text("battery-packs.means.v: volts")},
		{Symbol: "A", Meaning: calc.Text("battery-packs.means.a: amp-hours")}},
	Fn: calc.Func2(WattHours), Go: "consolidation.WattHours", Source: "cfr",
}

var eqRunTime = &calc.Formula{
	ID: "run-time", Title: calc.Text("battery-packs.eq.run-time: Run time of a pack"), Expr: "60*E/P",
	Result: calc.Var{Symbol: "t_r", Meaning: meansRun, Unit: "min"},
	Vars: []calc.Var{{Symbol: "E", Meaning: meansWh},
		{Symbol: "P", Meaning: calc.Text("battery-packs.means.p: draw of the tool"), Unit: "W"}},
	Fn: calc.Func2(RunTime), Go: "consolidation.RunTime", Source: "practice",
	Limits: calc.Text("battery-packs.eq.run-time.limits: Packs give less than their label at a high draw. A watch on the job is better."),
}

var eqLasts = &calc.Formula{
	ID: "lasts", Title: calc.Text("battery-packs.eq.lasts: Time by the clock"), Expr: "t_r*(1 - c/100)/(d/100)",
	Result: calc.Var{Symbol: "t", Meaning: meansLasts, Unit: "min"},
	Vars: []calc.Var{{Symbol: "t_r", Meaning: meansRun, Unit: "min"},
		{Symbol: "c", Meaning: calc.Text("battery-packs.means.c: lost to cold or age"), Unit: "%"},
		{Symbol: "d", Meaning: calc.Text("battery-packs.means.d: share of the time it runs"), Unit: "%"}},
	Fn: calc.Func3(Lasts), Go: "consolidation.Lasts", Source: "practice",
}

var eqUncharged = &calc.Formula{
	ID: "without", Title: calc.Text("battery-packs.eq.without: Packs without charging"), Expr: "S*ceil(H/t)",
	Result: calc.Var{Symbol: "N_0", Meaning: calc.Text("battery-packs.means.n0: packs without charging")},
	Vars: []calc.Var{{Symbol: "S", Meaning: meansSlots},
		{Symbol: "H", Meaning: calc.Text("battery-packs.means.h: length of the pour"), Unit: "min"},
		{Symbol: "t", Meaning: meansLasts, Unit: "min"}},
	Fn: calc.Func3(Uncharged), Go: "consolidation.Uncharged", Source: "practice",
}

var eqChargers = &calc.Formula{
	ID: "chargers", Title: calc.Text("battery-packs.eq.chargers: Chargers that keep up"), Expr: "ceil(S*t_c/t)",
	Result: calc.Var{Symbol: "k", Meaning: calc.Text("battery-packs.means.chargers: chargers that keep up")},
	Vars: []calc.Var{{Symbol: "S", Meaning: meansSlots},
		{Symbol: "t_c", Meaning: calc.Text("battery-packs.means.charge: time to charge a pack"), Unit: "min"},
		{Symbol: "t", Meaning: meansLasts, Unit: "min"}},
	Fn: calc.Func3(Chargers), Go: "consolidation.Chargers", Source: "practice",
}

var eqBound = &calc.Formula{
	ID: "with", Title: calc.Text("battery-packs.eq.with: Packs for the change that asks for most"), Expr: "S*(k + 1) - C",
	Result: calc.Var{Symbol: "N", Meaning: calc.Text("battery-packs.means.n: packs with charging")},
	Vars: []calc.Var{{Symbol: "S", Meaning: meansSlots},
		{Symbol: "k", Meaning: calc.Text("battery-packs.means.k: number of the change")},
		{Symbol: "C", Meaning: calc.Text("battery-packs.means.charged: packs charged by then")}},
	Fn: calc.Func3(Bound), Go: "consolidation.Bound", Source: "practice",
	Limits: calc.Text("battery-packs.eq.with.limits: Found by going through all changes of the pour. All tools change together; each pack goes on the first free charger."),
}
