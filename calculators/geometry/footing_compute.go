package geometry

import (
	"coursebook/calculators/calc"
	"coursebook/calculators/displays"
	"coursebook/calculators/figure"
)

const (
	footingCornersEat = calc.Text("The corners take off more than this length holds. Check length, width and corners.")
	footingThin       = calc.Text("This is under {limit} deep. Few codes allow so thin a footing. Is the depth right?")
	footingSwapped    = calc.Text("This is deeper than it is wide. Are width and depth swapped?")
	footingThick      = calc.Text("This stem wall is thicker than it is high. Are width and height swapped?")
)

// footingSteps is how many rows the worked example shows.
const footingSteps = 3

// leastFooting is the least thickness of a footing in metres, 6 in.
// (International Residential Code, R403.1.1).
const leastFooting = 6 * 0.0254

func computeFootings(r *calc.Recorder, in calc.Case) {
	var net float64
	byKind := make([]float64, len(footingKinds))
	for i, p := range in.Rows("parts") {
		volume := footingRun.Value
		if i < footingSteps {
			volume = func(si ...float64) float64 { return r.Use(footingRun, si...) }
		}
		length, width, corners := p.Num("length"), p.Num("width"), p.Num("corners")
		if CentreLine(length, corners, width) <= 0 {
			r.Refuse(calc.Cell("parts", p.RowNumber(), "corners"), footingCornersEat)
			return
		}
		v := volume(p.Num("count"), length, corners, width, p.Num("depth"))
		net += v
		byKind[kindAt(p.Choice("kind"))] += v
		askFooting(r, p)
	}
	putFootings(r, in, net, byKind)
}

func kindAt(id string) int {
	for i := range footingKinds {
		if footingKinds[i].ID == id {
			return i
		}
	}
	return 0
}

// askFooting asks where a size looks like a slip of the hand.
func askFooting(r *calc.Recorder, p calc.Case) {
	width, depth := p.Num("width"), p.Num("depth")
	at := calc.Cell("parts", p.RowNumber(), "depth")
	switch kind := p.Choice("kind"); {
	case kind == stemWallKind:
		if calc.Over(width, depth) {
			r.Note(calc.LevelAsk, at, footingThick)
		}
	case kind == gradeBeamKind:
	case calc.Over(depth, width):
		r.Note(calc.LevelAsk, at, footingSwapped)
	case calc.Over(leastFooting, depth):
		r.Note(calc.LevelAsk, at, footingThin, calc.Amount("limit", leastFooting, &displays.Part))
	}
}

func putFootings(r *calc.Recorder, in calc.Case, net float64, byKind []float64) {
	need := r.Use(withWaste, net, in.Num("waste"))
	var order float64
	if in.Choice("sold-in") == "m3" {
		order = r.Use(orderMetres, need, in.Num("step-m"))
	} else {
		r.Use(cubicYards, need)
		order = r.Use(orderYards, need, in.Num("step-yd"))
	}
	putVolume(r, "net", net)
	putVolume(r, "with-waste", need)
	putVolume(r, "order", order)
	r.Put("extra", r.Use(extraOver, order, net))
	var rows []calc.Case
	for i, v := range byKind {
		if v > 0 {
			rows = append(rows, r.NewRow("by-kind").With("kind", calc.ChoiceOf(footingKinds[i].ID)).With("yd", calc.Num(v)).With("m", calc.Num(v)))
		}
	}
	r.PutRows("by-kind", rows)
}

const (
	footingDrawTitle = calc.Text("Volume by kind, and the order")
	footingDrawDesc  = calc.Text("Net volume {net-yd} or {net-m}. Order with waste, rounded up: {order-yd} or {order-m}.")
	footingDrawOrder = calc.Text("Order")
	footingDrawPair  = calc.Text("{yd} · {m}")
)

// drawFootings shows each kind and the order as bars on one scale.
func drawFootings(v calc.Locale, in calc.Case, res calc.Result) figure.Drawing {
	if res.State != calc.OK {
		return figure.Drawing{}
	}
	var bars []figure.Bar
	for _, row := range res.Out.Rows("by-kind") {
		bars = append(bars, figure.Bar{Role: figure.Concrete, Name: v.Write(row.Fields()[0], row.Value("kind")), Size: row.Num("m"),
			Text: v.Say(footingDrawPair, calc.Amount("yd", row.Num("yd"), &displays.CubicYards), calc.Amount("m", row.Num("m"), &displays.CubicMetres))})
	}
	order := res.Out.Num("order-m")
	bars = append(bars, figure.Bar{Role: figure.Foam, Name: v.Say(footingDrawOrder), Size: order,
		Text: v.Say(footingDrawPair, calc.Amount("yd", order, &displays.CubicYardsUp), calc.Amount("m", order, &displays.CubicMetresUp))})
	nodes, foot := figure.Bars(0, bars, 0)
	net := res.Out.Num("net-m")
	return figure.Drawing{Width: figure.ChartWidth, Height: foot, Title: v.Say(footingDrawTitle), Nodes: nodes,
		Desc: v.Say(footingDrawDesc, calc.Amount("net-yd", net, &displays.CubicYards), calc.Amount("net-m", net, &displays.CubicMetres),
			calc.Amount("order-yd", order, &displays.CubicYardsUp), calc.Amount("order-m", order, &displays.CubicMetresUp))}
}
