// Package strength tells how young concrete gains strength: from the
// temperature measured in it, and from its age alone. Both are estimates;
// what may be done with the wall is the engineer's to say.
package strength

import "coursebook/calculators/calc"

// Maturity sums temperature readings to a temperature-time factor and an
// equivalent age. It gives a strength only by the reader's own curve.
var Maturity = &calc.Calculator{
	ID:       "maturity",
	Title:    calc.Text("Maturity from temperature"),
	Purpose:  calc.Text("How mature the concrete is, from temperatures measured in it."),
	In:       maturityIn,
	Out:      maturityOut,
	Formulas: maturityFormulas,
	Sources:  maturitySources,
	Cautions: []calc.Caution{
		{Level: calc.LevelWarning, Text: estimateOnly},
		{Level: calc.LevelCaution, Text: calc.Text("A strength curve holds for the one mix it was made with, while the concrete stays moist.")},
		{Level: calc.LevelNotice, Text: calc.Text("Between two readings, their mean counts. The standard reads every half hour for two days; hand readings are coarser.")},
	},
	Tables:  maturityTables,
	Compute: computeMaturity,
	Draw:    drawMaturity,
}

var maturitySources = []calc.Source{
	{ID: "iowa", Author: "Iowa DOT", Title: "I.M. 383, Testing the strength of PCC using the maturity method", Edition: "October 2020",
		Where: "equation 2; datum −10 °C", Status: calc.Confirmed, Link: "https://iowadot.gov/erl/archiveoct2020/IM/content/383.htm"},
	{ID: "c1074", Author: "ASTM", Title: "C1074, Estimating concrete strength by the maturity method",
		Where: "temperature-time factor, equivalent age, appendix X1: datum 0 °C, 40 to 45 kJ/mol for Type I", Status: calc.Memory},
	{ID: "ec2", Author: "CEN", Title: "EN 1992-1-1, Eurocode 2", Year: "2004", Where: "eq. (B.10), read in an open library of the fib",
		Status: calc.Secondary, Link: "https://github.com/fib-international/structuralcodes"},
}

var maturityTables = []calc.Table{
	{
		ID:     "constant",
		Title:  calc.Text("Equivalent age at steady temperature"),
		Note:   calc.Text("By time since placing and one steady temperature. Other inputs as at first."),
		Out:    "age",
		Down:   calc.Axis{Path: "readings.1.time", US: []string{"12 h", "24 h", "48 h", "72 h", "168 h"}},
		Across: calc.Axis{Path: "readings.1.temperature", US: []string{"40 °F", "50 °F", "60 °F", "73.4 °F", "90 °F"}, Metric: []string{"5 °C", "10 °C", "15 °C", "23 °C", "30 °C"}},
	},
}
