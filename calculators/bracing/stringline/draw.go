package stringline

import (
	"math"
	"unicode/utf8"

	"coursebook/calculators/bracing"
	"coursebook/calculators/calc"
	"coursebook/calculators/displays"
	"coursebook/calculators/figure"
)

// Layout of the drawing in user units. On a phone of 330 px one unit is about one
// pixel. The wall is drawn down the page, one step for each reading.
const (
	frameWidth  = 350.0
	nameX       = 6.0
	leftFootX   = 60.0
	stringX     = 100.0
	straightX   = stringX + 34 // face of a wall on its line
	mostOff     = 26.0         // deviation of the worst reading as drawn
	wallThick   = 16.0
	rightFootX  = 208.0
	textX       = 216.0
	firstY      = 84.0
	rowStep     = 46.0
	blockY      = 44.0
	step        = 20.0
	nameLetters = 6
)

// Texts of the drawing.
var (
	title       = calc.Text("String line from above")
	desc        = calc.Text("{count} readings, {turn} braces to turn. Worst is brace {name}, off by {worst}.")
	labelAbove  = calc.Text("From above, offsets enlarged")
	labelString = calc.Text("string")
	labelWall   = calc.Text("wall")
	labelOff    = calc.Text("{off} off")
	labelOK     = calc.Text("{off}, good")
	labelTurns  = calc.Text("{turns} turns")
	labelTurn   = calc.Text("{turn} {turns}")
	labelWithin = calc.Text("within {tolerance}")
	labelBeyond = calc.Text("beyond: go as the arrow shows")
	labelHeld   = calc.Text("beyond the limit")
	labelSide   = calc.Text("String: {side}")
	labelNoSide = calc.Text("Side not answered: no brace drawn")
)

// draw shows string, blocks and wall in plan: a round mark at readings within
// tolerance, a diamond at those beyond, an arrow in the direction in which the
// wall must move, and the braces where the side of the string is entered. A
// refused case gives an empty drawing.
func draw(v calc.Locale, in calc.Case, res calc.Result) figure.Drawing {
	if res.State != calc.OK {
		return figure.Drawing{}
	}
	p := plan{locale: v, in: in, lines: res.Out.Rows("lines")}
	worst := 0
	for i, l := range p.lines {
		if math.Abs(l.Num("off")) > math.Abs(p.lines[worst].Num("off")) {
			worst = i
		}
	}
	if most := math.Max(res.Out.Num("worst"), in.Num("tolerance")); most > 0 {
		p.scale = mostOff / most
	}
	p.ground()
	for i := range p.lines {
		p.reading(i)
	}
	height := p.legend()
	return figure.Drawing{Width: frameWidth, Height: height, Title: v.Say(title), Nodes: p.nodes,
		Desc: v.Say(desc, calc.Count("count", len(p.lines)), calc.Count("turn", int(res.Out.Num("to-turn"))),
			calc.WordSlot("name", p.lines[worst].Text("name")),
			calc.Amount("worst", res.Out.Num("worst"), &displays.Part))}
}

type plan struct {
	locale calc.Locale
	in     calc.Case
	lines  []calc.Case
	scale  float64 // user units per metre of deviation
	nodes  []figure.Node
}

func (p *plan) add(nodes ...figure.Node) { p.nodes = append(p.nodes, nodes...) }

// text adds one line of text at x, y.
func (p *plan) text(role figure.Role, x, y float64, anchor figure.Anchor, s string) {
	p.add(figure.Text(role, figure.Point{X: x, Y: y}, anchor, s))
}

// rowY returns the y of the reading with index i.
func rowY(i int) float64 { return firstY + float64(i)*rowStep }

// faceX returns the x of the wall's face at the reading with index i.
func (p *plan) faceX(i int) float64 { return straightX + p.lines[i].Num("off")*p.scale }

// braceBelow is the distance of a brace below its reading in the drawing.
const braceBelow = 14.0

// faceBelow returns the x of the wall's face at the brace of reading i.
func (p *plan) faceBelow(i int) float64 {
	next, below := straightX, p.foot()
	if i+1 < len(p.lines) {
		next, below = p.faceX(i+1), rowY(i+1)
	}
	return p.faceX(i) + float64((next-p.faceX(i))*braceBelow/(below-rowY(i)))
}

// foot returns the y of the second block, below the last reading.
func (p *plan) foot() float64 { return rowY(len(p.lines)-1) + 40 }

// ground draws the parts common to all readings: wall, string, blocks and the
// lines of tolerance.
func (p *plan) ground() {
	foot := p.foot()
	left := []figure.Point{{X: straightX, Y: blockY}}
	for i := range p.lines {
		left = append(left, figure.Point{X: p.faceX(i), Y: rowY(i)})
	}
	left = append(left, figure.Point{X: straightX, Y: foot})
	outline := append([]figure.Point(nil), left...)
	for i := len(left) - 1; i >= 0; i-- {
		outline = append(outline, figure.Point{X: left[i].X + wallThick, Y: left[i].Y})
	}
	p.text(figure.Label, nameX, 16, figure.Start, p.locale.Say(labelAbove))
	p.text(figure.Line, stringX, 36, figure.Middle, p.locale.Say(labelString))
	p.text(figure.Label, straightX+wallThick/2+6, 36, figure.Start, p.locale.Say(labelWall))
	p.add(figure.Polygon(figure.Concrete, outline...))
	for _, y := range []float64{blockY, foot - 8} {
		p.add(figure.Rect(figure.Opening, figure.Point{X: stringX, Y: y}, straightX-stringX, 8))
	}
	tolerance := p.in.Num("tolerance") * p.scale
	for _, x := range []float64{straightX - tolerance, straightX + tolerance} {
		p.add(figure.Segment(figure.Limit, figure.Point{X: x, Y: blockY + 12}, figure.Point{X: x, Y: foot - 12}))
	}
	p.add(figure.Segment(figure.Line, figure.Point{X: stringX, Y: blockY}, figure.Point{X: stringX, Y: foot}))
}

// reading draws the reading with index i.
func (p *plan) reading(i int) {
	l, x, y := p.lines[i], p.faceX(i), rowY(i)
	p.text(figure.Label, nameX, y+5, figure.Start, shortName(l.Text("name")))
	p.add(figure.Segment(figure.Thin, figure.Point{X: stringX, Y: y}, figure.Point{X: x, Y: y}))
	p.brace(p.faceBelow(i), y+braceBelow)
	off := calc.Amount("off", math.Abs(l.Num("off")), &displays.Part)
	if l.Flag("within") {
		p.add(figure.Circle(figure.Within, figure.Point{X: x, Y: y}, 6))
		p.text(figure.Label, textX, y+5, figure.Start, p.locale.Say(labelOK, off))
		return
	}
	p.add(diamond(x, y))
	if l.Has("move") {
		p.arrow(l.Choice("move"), x+wallThick, y)
	}
	p.text(figure.Number, textX, y-3, figure.Start, p.locale.Say(labelOff, off))
	if s := p.turning(l); s != "" {
		p.text(figure.Number, textX, y+15, figure.Start, s)
	}
}

// turning returns the text below a reading: the turns, and their direction if it
// is known. It is "" for a reading that needs no turn.
func (p *plan) turning(l calc.Case) string {
	if !l.Has("turns") {
		return ""
	}
	turns := calc.Amount("turns", l.Num("turns"), bracing.Quarters)
	if !l.Has("turn") {
		return p.locale.Say(labelTurns, turns)
	}
	for _, f := range outCols {
		if f.ID == "turn" {
			return p.locale.Say(labelTurn, calc.WordSlot("turn", p.locale.Write(f, l.Value("turn"))), turns)
		}
	}
	return ""
}

// brace draws a brace from the wall to its foot, on the side of the braces. It
// draws nothing while the side of the string is not entered.
func (p *plan) brace(faceX, y float64) {
	from, foot := faceX, leftFootX
	switch p.in.Choice("string-side") {
	case "":
		return
	case "other":
		from, foot = faceX+wallThick, rightFootX
	}
	p.add(figure.Segment(figure.Steel, figure.Point{X: from, Y: y}, figure.Point{X: foot, Y: y}),
		figure.Rect(figure.Ground, figure.Point{X: foot - 4, Y: y - 4}, 8, 8))
}

// diamond returns the mark of a reading beyond tolerance, with its middle at x, y.
func diamond(x, y float64) figure.Node {
	const r = 8
	return figure.Polygon(
		figure.Beyond,
		figure.Point{X: x, Y: y - r},
		figure.Point{X: x + r, Y: y},
		figure.Point{X: x, Y: y + r},
		figure.Point{X: x - r, Y: y},
	)
}

// arrow draws the direction in which the wall must move, behind the wall: left is
// toward the string.
func (p *plan) arrow(move string, backX, y float64) {
	tail, tip, head := backX+28, backX+6, 7.0
	if move == "away" {
		tail, tip, head = tip, tail, -head
	}
	p.add(
		figure.Segment(figure.Ink, figure.Point{X: tail, Y: y}, figure.Point{X: tip, Y: y}),
		figure.Polyline(
			figure.Ink,
			figure.Point{X: tip + head, Y: y - 6},
			figure.Point{X: tip, Y: y},
			figure.Point{X: tip + head, Y: y + 6},
		),
	)
}

// legend draws the key to the marks and returns the height of the drawing.
func (p *plan) legend() float64 {
	y := p.foot() + 26
	p.add(figure.Circle(figure.Within, figure.Point{X: 16, Y: y - 5}, 6))
	p.text(
		figure.Label,
		32,
		y,
		figure.Start,
		p.locale.Say(labelWithin, calc.Amount("tolerance", p.in.Num("tolerance"), &displays.Part)),
	)
	y += step
	p.add(diamond(16, y-5))
	beyond := labelBeyond
	if !p.lines[0].Has("move") {
		beyond = labelHeld
	}
	p.text(figure.Label, 32, y, figure.Start, p.locale.Say(beyond))
	y += step
	side := p.locale.Say(labelNoSide)
	for _, o := range bracing.SideOptions {
		if o.ID == p.in.Choice("string-side") {
			side = p.locale.Say(labelSide, calc.TextSlot("side", o.Label))
		}
	}
	p.text(figure.Label, nameX, y, figure.Start, side)
	return y + 10
}

// shortName returns a name, cut to nameLetters letters with an ellipsis if it is
// longer. The table of results has it in full.
func shortName(name string) string {
	if utf8.RuneCountInString(name) <= nameLetters {
		return name
	}
	return string([]rune(name)[:nameLetters-1]) + "…"
}
