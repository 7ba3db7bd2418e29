package weather

import (
	"coursebook/calculators/calc"
	"coursebook/calculators/displays"
)

// ColdWeather answers how warm concrete must be in the cold, how long it is
// protected and how slowly it may cool afterwards.
var ColdWeather = &calc.Calculator{
	ID:       "cold-weather",
	Title:    calc.Text("Cold weather placing and protection"),
	Purpose:  calc.Text("Shows how warm concrete must be in the cold, how long to protect it, and how slowly to cool it."),
	In:       coldIn,
	Out:      coldOut,
	Formulas: []*calc.Formula{eqCooling},
	Sources:  coldSources,
	Cautions: []calc.Caution{
		{Level: calc.LevelDanger, Text: calc.Text("Vent every fuel heater to the outside. Its fumes kill in a closed space, and they soften the fresh surface.")},
		{Level: calc.LevelNotice, Text: calc.Text("The foam keeps the faces warm, not the top. Cover the top at once, and the openings, ends and starter bars (common practice).")},
		{Level: calc.LevelNotice, Text: calc.Text("Never place on frozen ground or in forms with snow or ice. The project's specification and the engineer come first.")},
	},
	Tables:  coldTables,
	Compute: computeCold,
	Draw:    drawCold,
}

const (
	coldYes  = "cold"
	coldNo   = "mild"
	warmOK   = "ok"
	warmNot  = "too-cold"
	warmNone = "unread"
	early    = "early"
)

var coldIn = []calc.Field{
	{
		ID: "section", Kind: calc.Number, Display: &displays.Inches, Usual: "8 in", Label: calc.Text("Least dimension"),
		Help: calc.Text("For a wall, the thickness of its core."),
		Min:  &calc.Limit{At: 2, Unit: "in", Why: displays.CheckUnit}, Max: &calc.Limit{At: 240, Unit: "in", Why: displays.CheckUnit},
	},
	{
		ID: "air", Kind: calc.Number, Display: &displays.Temperature, Usual: "25 °F", Label: calc.Text("Coldest air expected"),
		Help: calc.Text("From placing to the end of protection, nights too."),
		Min:  &calc.Limit{At: -40, Unit: "°F", Why: whyLand}, Max: &calc.Limit{At: 100, Unit: "°F", Why: whyLand},
	},
	{
		ID: "concrete", Kind: calc.Number, Display: &displays.Temperature, Optional: true, Usual: "62 °F", Label: calc.Text("Concrete, as it is placed"),
		Min: &calc.Limit{At: 20, Unit: "°F", Why: whyGel}, Max: &calc.Limit{At: 110, Unit: "°F", Why: whyGel},
	},
	{
		ID: "service", Kind: calc.Choice, Usual: serviceExposed, Label: calc.Text("The wall, while young"),
		Options: []calc.Option{
			{ID: serviceSheltered, Label: calc.Text("No load, no frost later (buried)")},
			{ID: serviceExposed, Label: calc.Text("No load, open to the weather")},
			{ID: servicePartly, Label: calc.Text("Part of its load, open to the weather")},
			{ID: serviceLoaded, Label: calc.Text("Its full load")},
		},
	},
	{
		ID: "cement", Kind: calc.Choice, Usual: "usual", Label: calc.Text("Mix"),
		Options: []calc.Option{
			{ID: "usual", Label: calc.Text("Type I or II cement, nothing added")},
			{ID: early, Label: calc.Text("Type III, accelerator, or 100 lb/yd³ (60 kg/m³) more cement")},
		},
	},
	{
		ID: "surface", Kind: calc.Number, Display: &displays.Temperature, Optional: true, Usual: "60 °F", Label: calc.Text("Concrete under its cover"),
		Help: calc.Text("When protection ends, on the surface. Empty: no cooling time."),
		Min:  &calc.Limit{At: 20, Unit: "°F", Why: whyGel}, Max: &calc.Limit{At: 180, Unit: "°F", Why: displays.CheckUnit},
	},
}

var coldOut = []calc.Field{
	{
		ID: "weather", Kind: calc.Choice, Label: calc.Text("By the definition, this is"),
		Options: []calc.Option{
			{ID: coldYes, Label: calc.Text("Cold weather: protect")},
			{ID: coldNo, Label: calc.Text("No cold weather")},
		},
	},
	{
		ID: "verdict", Kind: calc.Choice, Lead: true, Label: calc.Text("The concrete is"),
		Options: []calc.Option{
			{ID: warmOK, Label: calc.Text("Warm enough to place")},
			{ID: warmNot, Label: calc.Text("Too cold to place")},
			{ID: warmNone, Label: calc.Text("Not measured yet")},
		},
	},
	{ID: "placed", Kind: calc.Number, Display: &displays.TemperatureAtLeast, Lead: true, Label: calc.Text("Least, placed and kept")},
	{ID: "mixed", Kind: calc.Number, Display: &displays.TemperatureAtLeast, Label: calc.Text("Least, as mixed")},
	{ID: "frost", Kind: calc.Number, Display: &displays.Days, Exact: true, Label: calc.Text("Protect against frost")},
	{ID: "strength", Kind: calc.Number, Display: &displays.Days, Exact: true, Label: calc.Text("Protect for strength")},
	{ID: "specified", Kind: calc.Number, Display: &displays.Days, Exact: true, Label: calc.Text("Where ACI 306.1 is specified")},
	{ID: "drop", Kind: calc.Number, Display: &showDrop, Label: calc.Text("Greatest fall in 24 h after")},
	{ID: "uncover", Kind: calc.Number, Display: &showHoursUp, Label: calc.Text("Take, to uncover, at least")},
}

var eqCooling = &calc.Formula{
	ID: "cooling", Title: calc.Text("Least time for uncovering"),
	Expr: "24*(T_c - T_a)/D", Result: calc.Var{Symbol: "t", Meaning: calc.Text("time from covered to open"), Unit: "h", US: "h"},
	Vars: []calc.Var{{Symbol: "T_c", Meaning: calc.Text("temperature of the concrete under its cover"), Unit: "°C", US: "°F"}, {Symbol: "T_a", Meaning: meansTa, Unit: "°C", US: "°F"},
		{Symbol: "D", Meaning: calc.Text("greatest fall in 24 h"), Unit: "C°", US: "F°"}},
	Fn: calc.Func3(CoolingTime), Go: "weather.CoolingTime", Source: "book",
	Limits: calc.Text("An even fall. The limit is for the first 24 h after protection ends."),
}

var coldSources = []calc.Source{
	{ID: "aci306", Author: "ACI Committee 306", Title: "Cold Weather Concreting, ACI 306R-88", Year: "1988", Where: "Table 3.1; sections above 36 in. and fully loaded members", Status: calc.Memory},
	{ID: "book", Author: "McGraw-Hill", Title: "Masonry and Concrete", Year: "2004", Where: "Figs. 3-37 and 3-38, adapted from ACI 306R", Status: calc.Secondary,
		Link: "https://digilib.universitaspertamina.ac.id/ebook/Masonry%20and%20Concrete/"},
	{ID: "spec", Author: "Concrete Construction", Title: "Length of protection period in cold weather", Where: "ACI 306.1-90: 3 days or 2; 50 °F in 24 h; within 20 °F of the air", Status: calc.Confirmed,
		Link: "http://www.concreteconstruction.net/how-to/length-of-protection-period-in-cold-weather_o"},
	{ID: "topic", Author: "American Concrete Institute", Title: "Topics in concrete: cold weather concrete", Where: "definition of ACI 306R-16: air at or expected below 40 °F", Status: calc.Confirmed,
		Link: "https://concrete.org/topicsinconcrete/topicdetail/cold%20weather%20concrete?search=Cold+Weather+Concrete"},
	{ID: "pca", Author: "Portland Cement Association", Title: "Design and Control of Concrete Mixtures, chapter 14", Where: "older definition; frost risk ends at 500 psi (3.5 MPa)", Status: calc.Confirmed,
		Link: "https://www.scribd.com/doc/218695401/PCA-Cold-Weather-Concreting-pdf"},
	{ID: "astm", Author: "ASTM", Title: "C94/C94M-15a Ready-Mixed Concrete", Year: "2015", Where: "sec. 12.11: heated concrete at most 90 °F", Status: calc.Confirmed,
		Link: "https://www.scribd.com/document/469447287/Maximum-Fresh-Concrete-Temperature-requirements-MMSP-Project"},
	{ID: "practice", Title: "Foam faces insulate and the top does not; cover the top first", Status: calc.CommonPractice},
}

var coldTables = []calc.Table{{
	ID: "mixed", Title: calc.Text("Least temperature as mixed"),
	Note:   calc.Text("By least dimension and coldest air."),
	Out:    "mixed",
	Down:   calc.Axis{Path: "section", US: []string{"8 in", "12 in", "48 in", "80 in"}, Metric: []string{"200 mm", "350 mm", "1200 mm", "2000 mm"}},
	Across: calc.Axis{Path: "air", US: []string{"35 °F", "20 °F", "-10 °F"}, Metric: []string{"2 °C", "-7 °C", "-23 °C"}},
}}
