package formpressure

import (
	"math"

	"coursebook/calculators/calc"
	"coursebook/calculators/displays"
	"coursebook/calculators/figure"
	"coursebook/calculators/pressure"
)

// The layout of the drawing in user units: the wall in section on the left, the
// pressure on the right, the key below.
const (
	figWidth   = 348.0
	figTop     = 40.0  // top of the placement
	figBottom  = 240.0 // its lower edge
	figFoam    = 16.0  // drawn thickness of one foam side
	figCore    = 48.0  // drawn thickness of the core
	figWall    = 12.0  // left face of the wall
	figTape    = 106.0 // the height's dimension line
	figZero    = 176.0 // no pressure
	figFull    = 150.0 // width of the greatest pressure
	figKey     = 274.0 // first base line of the key
	figKeyStep = 22.0
	figKeyText = 44.0
	figKeyMark = 26.0 // width of a sample in the key
)

const (
	figTitle = calc.Text("Pressure on the form by depth")
	figDesc  = calc.Text(
		"Left: the wall in section, {height} high. Right: pressure grows from the top down to {depth}, then stays at " +
			"{pressure}. Full fluid head at the foot: {head}.",
	)
	figEntry = calc.Text("{what}: {value}")
	figHead  = calc.Text("Full fluid head")
)

// plot scales one result to the drawing.
type plot struct {
	v            calc.Locale
	in, out      calc.Case
	height, head float64 // m, Pa
	local        float64 // Pa
	rating, most float64 // Pa; rating 0 if no working pressure is given
}

func newPlot(v calc.Locale, in, out calc.Case) plot {
	p := plot{v: v, in: in, out: out, height: in.Num("height"), local: out.Num("pressure-local")}
	if in.Choice("rating-is") == ratingWorking {
		p.rating = in.Num("rating")
	}
	p.head = pressure.FluidHeadFormula.Value(in.Num("weight"), p.height)
	p.most = math.Max(p.head, p.rating)
	return p
}

func (p plot) x(pressure float64) float64 { return figZero + float64(figFull*pressure/p.most) }

func (p plot) y(depth float64) float64 {
	return figTop + float64((figBottom-figTop)*depth/p.height)
}

// bend is the depth in m at which the fluid head reaches a pressure.
func (p plot) bend(pressure float64) float64 { return p.height * pressure / p.head }

// draw draws the wall in section and the pressure by depth.
func draw(v calc.Locale, in calc.Case, res calc.Result) figure.Drawing {
	if res.State != calc.OK || !res.Out.Has("pressure-local") {
		return figure.Drawing{}
	}
	p := newPlot(v, in, res.Out)
	nodes := append(p.wall(), p.diagram()...)
	key, bottom := p.key()
	return figure.Drawing{
		Width: figWidth, Height: bottom,
		Title: v.Say(figTitle),
		Desc: v.Say(
			figDesc,
			calc.Amount("height", p.height, &displays.Height),
			calc.Amount("depth", res.Out.Num("fluid-depth"), &displays.Height),
			calc.Amount("pressure", p.local, &displays.Pressure),
			calc.Amount("head", p.head, &displays.Pressure),
		),
		Nodes: append(nodes, key...),
	}
}

// wall draws foam, concrete and foam on a footing, with the fluid zone marked.
func (p plot) wall() []figure.Node {
	tall := figBottom - figTop
	core := figWall + figFoam
	bend := p.y(p.bend(p.local))
	return []figure.Node{
		figure.Rect(figure.Ground, figure.Point{X: figWall - 8, Y: figBottom}, figCore+2*figFoam+16, 12),
		figure.Rect(figure.Foam, figure.Point{X: figWall, Y: figTop}, figFoam, tall),
		figure.Rect(figure.Concrete, figure.Point{X: core, Y: figTop}, figCore, tall),
		figure.Rect(figure.Foam, figure.Point{X: core + figCore, Y: figTop}, figFoam, tall),
		figure.Segment(figure.Measure, figure.Point{X: core, Y: bend}, figure.Point{X: p.x(p.local), Y: bend}),
		figure.Dimension(figure.Point{X: figTape, Y: figTop}, figure.Point{X: figTape, Y: figBottom},
			p.v.Write(inputField("height"), p.in.Value("height"))),
	}
}

func inputField(id string) calc.Field { return fieldOf(inputs, id) }

func outputField(id string) calc.Field { return fieldOf(outputs, id) }

func fieldOf(list []calc.Field, id string) calc.Field {
	for _, f := range list {
		if f.ID == id {
			return f
		}
	}
	panic("pressure: no field " + id)
}

// diagram draws the pressure by depth: filled as planned, dashed the fluid head,
// upright the rating.
func (p plot) diagram() []figure.Node {
	foot := figure.Point{X: figZero, Y: figBottom}
	top := figure.Point{X: figZero, Y: figTop}
	nodes := []figure.Node{
		figure.Polygon(figure.Concrete, append([]figure.Point{foot}, p.envelope(p.local)...)...),
		dashes(top, figure.Point{X: p.x(p.head), Y: figBottom}),
		figure.Segment(figure.Ink, top, foot),
		figure.Segment(figure.Ink, foot, figure.Point{X: figZero + figFull, Y: figBottom}),
	}
	if p.rating > 0 {
		x := p.x(p.rating)
		nodes = append(nodes,
			figure.Segment(figure.Limit, figure.Point{X: x, Y: figTop - 10}, figure.Point{X: x, Y: figBottom}))
	}
	return nodes
}

// envelope is the line from the top to the bend of a pressure and to the base.
func (p plot) envelope(pressure float64) []figure.Point {
	x := p.x(pressure)
	return []figure.Point{{X: figZero, Y: figTop}, {X: x, Y: p.y(p.bend(pressure))}, {X: x, Y: figBottom}}
}

// dashes is a line drawn as an odd number of equal pieces of about dash
// units, every other one left out. The only dashed role is that of limits.
func dashes(a, b figure.Point) figure.Node {
	const dash = 6.0
	pieces := 2*int(math.Hypot(b.X-a.X, b.Y-a.Y)/(2*dash)) + 1
	at := func(i int) figure.Point {
		share := float64(i) / float64(pieces)
		return figure.Point{X: a.X + float64((b.X-a.X)*share), Y: a.Y + float64((b.Y-a.Y)*share)}
	}
	var nodes []figure.Node
	for i := 0; i < pieces; i += 2 {
		nodes = append(nodes, figure.Segment(figure.Measure, at(i), at(i+1)))
	}
	return figure.Group(nodes...)
}

// key draws what to do above the drawing and the meaning of each line with its
// value below; bottom is its lower edge.
func (p plot) key() (nodes []figure.Node, bottom float64) {
	y := figKey
	add := func(role figure.Role, mark func(a, b figure.Point) figure.Node, what calc.Text, value string) {
		a := figure.Point{X: figWall, Y: y - 5}
		b := figure.Point{X: figWall + figKeyMark, Y: y - 5}
		nodes = append(nodes, mark(a, b), figure.Text(role, figure.Point{X: figKeyText, Y: y}, figure.Start,
			p.v.Say(figEntry, calc.TextSlot("what", what), calc.WordSlot("value", value))))
		y += figKeyStep
	}
	shown := func(id string) (calc.Text, string) {
		f := outputField(id)
		return f.Label, p.v.Write(f, p.out.Value(id))
	}
	nodes = append(nodes, figure.Text(figure.Number, figure.Point{X: figWidth / 2, Y: 20}, figure.Middle,
		p.v.Write(outputField("deed"), p.out.Value("deed"))))
	what, value := shown("pressure-local")
	add(figure.Number, swatch, what, value)
	add(figure.Label, dashes, figHead, p.v.Write(outputField("pressure-local"), calc.Num(p.head)))
	if p.rating > 0 {
		rating := inputField("rating")
		add(figure.Label, line(figure.Limit), rating.Label, p.v.Write(rating, p.in.Value("rating")))
	}
	what, value = shown("fluid-depth")
	add(figure.Label, line(figure.Measure), what, value)
	return nodes, y - figKeyStep + 10
}

func swatch(a, b figure.Point) figure.Node {
	return figure.Rect(figure.Concrete, figure.Point{X: a.X, Y: a.Y - 6}, b.X-a.X, 12)
}

func line(role figure.Role) func(a, b figure.Point) figure.Node {
	return func(a, b figure.Point) figure.Node { return figure.Segment(role, a, b) }
}
