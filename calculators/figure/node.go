// Package figure defines the drawings of the calculators: nodes that are written
// as the same SVG on the page, in print and on the command line.
//
// A node has a role, never a colour: the theme sets the colours of roles for
// light, dark, high contrast and print. The page creates an element for each
// node, and only the tags and attributes of this package are used.
package figure

import "strconv"

// Role is what a shape represents.
type Role string

// The roles that a theme sets colours for.
const (
	Ink      Role = "ink"      // outlines and leaders
	Thin     Role = "thin"     // grid and helper lines
	Concrete Role = "concrete" // concrete, hardened or not
	Foam     Role = "foam"     // the form
	Steel    Role = "steel"    // bars, ties, braces
	Ground   Role = "ground"   // soil, footing
	Opening  Role = "opening"  // openings, block-outs
	Line     Role = "line"     // the string line
	Measure  Role = "measure"  // dimension lines
	Limit    Role = "limit"    // a limit, dashed
	Within   Role = "within"   // a reading within tolerance
	Beyond   Role = "beyond"   // a reading beyond tolerance; never by colour alone
	Label    Role = "label"    // text
	Number   Role = "number"   // text of results
)

// Node is one shape, text or group.
type Node struct {
	Tag   string // g, line, rect, circle, polyline, polygon, path, text
	Attrs []Attr
	Text  string
	Kids  []Node
}

// Attr is one attribute.
type Attr struct{ Name, Value string }

// Drawing is a picture with its size in user units and its text alternative.
type Drawing struct {
	Width, Height float64
	Title, Desc   string
	Nodes         []Node
}

// Empty reports whether a drawing has no nodes.
func (d Drawing) Empty() bool { return len(d.Nodes) == 0 }

// Point is a position in user units, x to the right and y down.
type Point struct{ X, Y float64 }

// Coordinate returns a coordinate with at most two decimals, the resolution of a
// screen or printer at this size, without zeros at the end.
func Coordinate(x float64) string {
	s := strconv.FormatFloat(x, 'f', 2, 64)
	for s[len(s)-1] == '0' {
		s = s[:len(s)-1]
	}
	if s[len(s)-1] == '.' {
		s = s[:len(s)-1]
	}
	if s == "-0" {
		return "0"
	}
	return s
}

// shape returns a node with the class of a role and then attrs.
func shape(tag string, role Role, attrs ...Attr) Node {
	return Node{Tag: tag, Attrs: append([]Attr{{"class", "f-" + string(role)}}, attrs...)}
}

// num returns an attribute with the coordinate x.
func num(name string, x float64) Attr { return Attr{name, Coordinate(x)} }

// Segment is a straight line.
func Segment(role Role, a, b Point) Node {
	return shape("line", role, num("x1", a.X), num("y1", a.Y), num("x2", b.X), num("y2", b.Y))
}

// Rect is a rectangle by its top left corner and size.
func Rect(role Role, at Point, width, height float64) Node {
	return shape("rect", role, num("x", at.X), num("y", at.Y), num("width", width), num("height", height))
}

// Circle is a circle by centre and radius.
func Circle(role Role, at Point, r float64) Node {
	return shape("circle", role, num("cx", at.X), num("cy", at.Y), num("r", r))
}

// Polyline is an open line through points.
func Polyline(role Role, points ...Point) Node {
	return shape("polyline", role, Attr{"points", list(points)})
}

// Polygon is a closed area through points.
func Polygon(role Role, points ...Point) Node {
	return shape("polygon", role, Attr{"points", list(points)})
}

// list returns points as the value of a points attribute; "" for none.
func list(points []Point) string {
	s := ""
	for i, p := range points {
		if i > 0 {
			s += " "
		}
		s += Coordinate(p.X) + "," + Coordinate(p.Y)
	}
	return s
}

// Anchor is the part of a text that is placed at its point.
type Anchor string

// The anchors of SVG text.
const (
	Start  Anchor = "start"
	Middle Anchor = "middle"
	End    Anchor = "end"
)

// Text is one line of text of the standard size, its baseline at a point.
func Text(role Role, at Point, anchor Anchor, text string) Node {
	n := shape("text", role, num("x", at.X), num("y", at.Y), Attr{"text-anchor", string(anchor)})
	n.Text = text
	return n
}

// Group holds nodes together.
func Group(nodes ...Node) Node { return Node{Tag: "g", Kids: nodes} }

// Dimension is a measured length with ticks at both ends and its text in the
// middle, above a level line or beside an upright one.
func Dimension(a, b Point, text string) Node {
	const tick = 4
	mid := Point{(a.X + b.X) / 2, (a.Y + b.Y) / 2}
	if a.X == b.X {
		return Group(
			Segment(Measure, a, b),
			Segment(Measure, Point{a.X - tick, a.Y}, Point{a.X + tick, a.Y}),
			Segment(Measure, Point{b.X - tick, b.Y}, Point{b.X + tick, b.Y}),
			Text(Label, Point{a.X + 7, mid.Y + 5}, Start, text))
	}
	return Group(
		Segment(Measure, a, b),
		Segment(Measure, Point{a.X, a.Y - tick}, Point{a.X, a.Y + tick}),
		Segment(Measure, Point{b.X, b.Y - tick}, Point{b.X, b.Y + tick}),
		Text(Label, Point{mid.X, mid.Y - 6}, Middle, text))
}
