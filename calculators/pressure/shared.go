package pressure

import "coursebook/calculators/calc"

// The labels and help of inputs that several calculators ask.
const (
	labelHeight = calc.Text("form-pressure.height: Height placed in one go")
	helpHeight  = calc.Text("form-pressure.height.help: All that is placed today. One lift of several is not enough.")
	labelWeight = calc.Text("form-pressure.weight: Unit weight of the concrete")
	helpWeight  = calc.Text("form-pressure.weight.help: From the mix data. Leave the default if you do not know it.")
	labelTemp   = calc.Text("form-pressure.temperature: Temperature of the concrete")
	helpTemp    = calc.Text("form-pressure.temperature.help: In the concrete, by thermometer. Not the air.")
	labelCement = calc.Text("form-pressure.cement: Cement")
	helpCement  = calc.Text("form-pressure.cement.help: From the ticket. If it does not say, keep “other types and blends”.")
	labelAdmix  = calc.Text("form-pressure.admixture: Admixtures")
	helpAdmix   = calc.Text("form-pressure.admixture.help: Most water reducers slow the set and count as retarders.")
)

var cements = []calc.Option{
	{ID: string(Plain), Label: calc.Text("form-pressure.cement.plain: Type I, II or III alone")},
	{ID: string(Blend), Label: calc.Text("form-pressure.cement.blend: Other types and blends, below 70% slag or 40% fly ash")},
	{ID: string(Rich), Label: calc.Text("form-pressure.cement.rich: Blends with more slag or fly ash")},
}

var admixtures = []calc.Option{
	{ID: admixRetards, Label: calc.Text("form-pressure.admixture.retards: A retarder or water reducer, or unknown")},
	{ID: admixNone, Label: calc.Text("form-pressure.admixture.none: Nothing that slows the set")},
}
