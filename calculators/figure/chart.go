package figure

import "math"

// The frame of a chart in user units. On a phone one unit is about a pixel.
const (
	ChartWidth  = 340.0
	chartMargin = 10.0
	chartLine   = 20.0 // from one line of text to the next
	barTall     = 18.0
	plotLeft    = 52.0
	plotTop     = 30.0
	plotTall    = 190.0
)

// Bar is one quantity of a bar chart.
type Bar struct {
	Role Role
	Name string
	Text string  // the quantity as text
	Size float64 // in any unit, the same for all bars; at least 0
}

// Bars returns bars below each other on one scale, from y downward, each with its
// name and text above it, and the y of the lower edge. A limit above 0, in the
// unit of the sizes, is a dashed line across each bar.
func Bars(y float64, bars []Bar, limit float64) (nodes []Node, foot float64) {
	most := limit
	for _, b := range bars {
		most = math.Max(most, b.Size)
	}
	if !(most > 0) {
		most = 1
	}
	const wide = ChartWidth - 2*chartMargin
	for _, b := range bars {
		y += chartLine
		nodes = append(nodes,
			Text(Label, Point{chartMargin, y - 6}, Start, b.Name),
			Text(Number, Point{ChartWidth - chartMargin, y - 6}, End, b.Text),
			Rect(b.Role, Point{chartMargin, y}, wide*math.Max(b.Size, 0)/most, barTall))
		if limit > 0 {
			x := chartMargin + wide*limit/most
			nodes = append(nodes, Segment(Limit, Point{x, y - 3}, Point{x, y + barTall + 3}))
		}
		y += barTall
	}
	return nodes, y + chartMargin
}

// Mark is a labelled position on an axis.
type Mark struct {
	At   float64
	Text string
}

// Axis is one side of a plot: its title, its ends and the marks between.
type Axis struct {
	Title    string
	From, To float64
	Marks    []Mark
}

// share returns the position of x on the axis from 0 to 1. An x beyond an end is
// at that end; on an axis without length every x is at 0.
func (a Axis) share(x float64) float64 {
	if a.To == a.From {
		return 0
	}
	return math.Min(1, math.Max(0, (x-a.From)/(a.To-a.From)))
}

// Curve is one line of a plot, in the units of the axes. Name is in the
// key below the plot.
type Curve struct {
	Role   Role
	Name   string
	Points []Point
}

// Marker is a marked point of a plot with its text.
type Marker struct {
	Role Role
	At   Point
	Text string
}

// Plot returns curves over two axes, x to the right and y upward, with markers on
// them, and the y of the lower edge of the plot and its key. Points outside the
// axes are moved to the edge. A curve without a name is not in the key.
func Plot(x, y Axis, curves []Curve, markers []Marker) (nodes []Node, foot float64) {
	const right, bottom = ChartWidth - chartMargin, plotTop + plotTall
	place := func(p Point) Point {
		return Point{plotLeft + (right-plotLeft)*x.share(p.X), bottom - plotTall*y.share(p.Y)}
	}
	nodes = append(nodes, Text(Label, Point{chartMargin, chartLine - 4}, Start, y.Title))
	for _, m := range y.Marks {
		at := place(Point{x.From, m.At})
		nodes = append(nodes, Segment(Thin, at, Point{right, at.Y}),
			Text(Label, Point{plotLeft - 6, at.Y + 5}, End, m.Text))
	}
	for _, m := range x.Marks {
		at := place(Point{m.At, y.From})
		nodes = append(nodes, Segment(Thin, at, Point{at.X, plotTop}),
			Text(Label, Point{at.X, bottom + 16}, Middle, m.Text))
	}
	nodes = append(nodes, Polyline(Ink, Point{plotLeft, plotTop}, Point{plotLeft, bottom}, Point{right, bottom}),
		Text(Label, Point{right, bottom + 34}, End, x.Title))
	foot = bottom + 40
	for _, c := range curves {
		points := make([]Point, len(c.Points))
		for i, p := range c.Points {
			points[i] = place(p)
		}
		nodes = append(nodes, Polyline(c.Role, points...))
		if c.Name == "" {
			continue
		}
		foot += chartLine
		nodes = append(nodes, Segment(c.Role, Point{chartMargin, foot - 12}, Point{chartMargin + 24, foot - 12}),
			Text(Label, Point{chartMargin + 32, foot - 7}, Start, c.Name))
	}
	for _, s := range markers {
		at := place(s.At)
		nodes = append(nodes, Circle(s.Role, at, 5))
		anchor, side := Start, 9.0
		if at.X > (plotLeft+right)/2 {
			anchor, side = End, -9
		}
		nodes = append(nodes, Text(Number, Point{at.X + side, math.Max(at.Y-7, chartLine)}, anchor, s.Text))
	}
	return nodes, foot + chartMargin/2
}
