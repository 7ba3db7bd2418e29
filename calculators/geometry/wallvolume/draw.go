package wallvolume

import (
	"math"
	"strconv"
	"unicode/utf8"

	"coursebook/calculators/calc"
	"coursebook/calculators/displays"
	"coursebook/calculators/figure"
	"coursebook/calculators/geometry"
	"coursebook/calculators/quantity"
)

// The frame of the drawing, in user units; one unit is about one pixel on a
// phone 330 px wide.
const (
	frameWidth  = 340.0
	frameInner  = frameWidth - 2*geometry.FrameMargin
	stripTop    = 28.0
	stripTall   = 72.0 // greatest height of the strip of walls
	barTall     = 20.0
	letterWidth = 8.0 // an upper estimate for a letter of the standard size
)

// The texts of the drawing.
var (
	drawTitle = calc.Text("Walls and order")
	drawDesc  = calc.Text(
		"Walls end to end, {length} long. Net volume {net-yd} or {net-m}. Order {order-yd} or {order-m} in {loads} " +
			"loads.",
	)
	drawStrip = calc.Text("Walls end to end, to scale")
	drawWalls = calc.Text("Walls {yd} · {m}")
	drawHoles = calc.Text("Openings {yd} · {m}")
	drawNet   = calc.Text("Net {yd} · {m}")
	drawAllow = calc.Text("Waste, rounding {yd} · {m}")
	drawOrder = calc.Text("Order {yd} · {m}")
	drawTyped = calc.Text("Your order {yd} · {m}")
	drawCurve = calc.Text("curve")
)

// draw draws the walls end to end to scale, then two bars on one scale: the walls
// with the share of the openings, and the order with the share of waste and
// rounding. Every volume is written in both units. A refused case gives an empty
// drawing.
func draw(v calc.Locale, in calc.Case, res calc.Result) figure.Drawing {
	if res.State != calc.OK {
		return figure.Drawing{}
	}
	p := &plate{locale: v}
	p.strip(in, res.Out)
	p.bars(in, res.Out)
	return figure.Drawing{
		Width: frameWidth, Height: p.y, Title: v.Say(drawTitle), Nodes: p.nodes,
		Desc: v.Say(
			drawDesc,
			calc.Amount("length", res.Out.Num("length"), &displays.Wall),
			calc.Amount("net-yd", res.Out.Num("net-yd"), inYards),
			calc.Amount("net-m", res.Out.Num("net-m"), inMetres),
			calc.Amount("order-yd", res.Out.Num("order-yd"), &displays.CubicYardsUp),
			calc.Amount("order-m", res.Out.Num("order-m"), &displays.CubicMetresUp),
			calc.Count("loads", int(res.Out.Num("loads"))),
		),
	}
}

// plate collects nodes from the top down; y is the lower edge so far.
type plate struct {
	locale calc.Locale
	nodes  []figure.Node
	y      float64
}

func (p *plate) add(nodes ...figure.Node) { p.nodes = append(p.nodes, nodes...) }

// piece is one stretch of the strip.
type piece struct {
	length, height float64
	name           string
}

// pieces returns the walls end to end, the curve last, with their names.
func pieces(v calc.Locale, in calc.Case, out calc.Case) []piece {
	var list []piece
	straight := 0.0
	for i, run := range in.Rows("runs") {
		length := run.Num("length") * run.Num("count")
		name := run.Text("name")
		if name == "" {
			name = strconv.Itoa(i + 1)
		}
		list = append(list, piece{length, run.Num("height"), name})
		straight += length
	}
	if in.Flag("curve") {
		if straight > 0 {
			straight = geometry.CentreLine(straight, signedCorners(in), in.Num("core"))
		}
		list = append(list, piece{math.Max(out.Num("length")-straight, 0), in.Num("curve-height"), v.Say(drawCurve)})
	}
	return list
}

// strip draws the walls end to end to scale.
func (p *plate) strip(in, out calc.Case) {
	list := pieces(p.locale, in, out)
	total, tallest := 0.0, 0.0
	for _, w := range list {
		total += w.length
		tallest = math.Max(tallest, w.height)
	}
	scale := math.Min(frameInner/total, stripTall/tallest)
	base := stripTop + float64(tallest*scale)
	p.add(figure.Text(figure.Label, figure.Point{X: geometry.FrameMargin, Y: 16}, figure.Start,
		p.locale.Say(drawStrip)))
	x := geometry.FrameMargin
	for _, w := range list {
		wide, high := w.length*scale, w.height*scale
		p.add(figure.Rect(figure.Concrete, figure.Point{X: x, Y: base - high}, wide, high))
		if float64(utf8.RuneCountInString(w.name))*letterWidth <= wide {
			p.add(figure.Text(figure.Label, figure.Point{X: x + wide/2, Y: base + 16}, figure.Middle, w.name))
		}
		x += wide
	}
	p.add(
		figure.Segment(figure.Ground, figure.Point{X: geometry.FrameMargin, Y: base},
			figure.Point{X: frameWidth - geometry.FrameMargin, Y: base}),
	)
	p.y = base + 46
	text := quantity.Format(out.Num("length"), displays.Wall, p.locale.Style)
	// The text of a short strip does not fit inside, so it is beside the strip.
	if x-geometry.FrameMargin >= float64(utf8.RuneCountInString(text))*letterWidth {
		p.add(figure.Dimension(figure.Point{X: geometry.FrameMargin, Y: p.y}, figure.Point{X: x, Y: p.y}, text))
		return
	}
	p.add(figure.Segment(figure.Measure, figure.Point{X: geometry.FrameMargin, Y: p.y}, figure.Point{X: x, Y: p.y}),
		figure.Text(figure.Label, figure.Point{X: x + 8, Y: p.y + 5}, figure.Start, text))
}

// bars draws both bars on one scale.
func (p *plate) bars(in, out calc.Case) {
	walls, net, order := out.Num("walls-m"), out.Num("net-m"), out.Num("order-m")
	typed := 0.0
	if out.Has("difference-m") {
		typed = order + out.Num("difference-m")
	}
	scale := frameInner / math.Max(math.Max(walls, order), typed)
	p.y += 10
	p.line(figure.Label, p.text(drawWalls, walls))
	p.bar(scale, figure.Concrete, net, figure.Opening, walls-net)
	p.keyed(figure.Concrete, drawNet, net)
	p.keyed(figure.Opening, drawHoles, walls-net)
	p.y += 6
	p.line(
		figure.Number,
		p.locale.Say(drawOrder, calc.Amount("yd", order, &displays.CubicYardsUp),
			calc.Amount("m", order, &displays.CubicMetresUp)),
	)
	p.bar(scale, figure.Concrete, net, figure.Foam, order-net)
	if typed > 0 {
		x := geometry.FrameMargin + typed*scale
		p.add(figure.Segment(figure.Limit, figure.Point{X: x, Y: p.y - barTall - 4}, figure.Point{X: x, Y: p.y + 4}))
	}
	p.keyed(figure.Foam, drawAllow, order-net)
	if typed > 0 {
		p.keyed(figure.Limit, drawTyped, typed)
	}
	p.y += 10
}

// text returns the text t with a volume, si in m³, in both units.
func (p *plate) text(t calc.Text, si float64) string {
	return p.locale.Say(t, calc.Amount("yd", si, inYards), calc.Amount("m", si, inMetres))
}

// line draws a line of text below the last one.
func (p *plate) line(role figure.Role, text string) {
	p.y += geometry.LineStep
	p.add(figure.Text(role, figure.Point{X: geometry.FrameMargin, Y: p.y}, figure.Start, text))
}

// keyed draws a line of text after a sample of its role.
func (p *plate) keyed(role figure.Role, t calc.Text, si float64) {
	p.y += geometry.LineStep
	p.add(figure.Rect(role, figure.Point{X: geometry.FrameMargin, Y: p.y - 11}, 12, 12),
		figure.Text(figure.Label, figure.Point{X: geometry.FrameMargin + 20, Y: p.y}, figure.Start, p.text(t, si)))
}

// bar draws a bar of two parts, a and b in m³, below the last line. A part b that
// is not above 0 is left out.
func (p *plate) bar(scale float64, first figure.Role, a float64, second figure.Role, b float64) {
	p.y += 8
	at := figure.Point{X: geometry.FrameMargin, Y: p.y}
	p.add(figure.Rect(first, at, a*scale, barTall))
	if b > 0 {
		p.add(figure.Rect(second, figure.Point{X: at.X + float64(a*scale), Y: at.Y}, b*scale, barTall))
	}
	p.y += barTall
}
