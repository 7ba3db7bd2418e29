package pressure

import "coursebook/calculators/calc"

// The labels and help of inputs that several calculators ask.
const (
	labelHeight = calc.Text("Height placed in one go")
	helpHeight  = calc.Text("All that is placed today. One lift of several is not enough.")
	labelWeight = calc.Text("Unit weight of the concrete")
	helpWeight  = calc.Text("From the mix data. Leave the default if you do not know it.")
	labelTemp   = calc.Text("Temperature of the concrete")
	helpTemp    = calc.Text("In the concrete, by thermometer. Not the air.")
	labelCement = calc.Text("Cement")
	helpCement  = calc.Text("From the ticket. If it does not say, keep “other types and blends”.")
	labelAdmix  = calc.Text("Admixtures")
	helpAdmix   = calc.Text("Most water reducers slow the set and count as retarders.")
)

var cements = []calc.Option{
	{ID: string(Plain), Label: calc.Text("Type I, II or III alone")},
	{ID: string(Blend), Label: calc.Text("Other types and blends, below 70% slag or 40% fly ash")},
	{ID: string(Rich), Label: calc.Text("Blends with more slag or fly ash")},
}

var admixtures = []calc.Option{
	{ID: admixRetards, Label: calc.Text("A retarder or water reducer, or unknown")},
	{ID: admixNone, Label: calc.Text("Nothing that slows the set")},
}
