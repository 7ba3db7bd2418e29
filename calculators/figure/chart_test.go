package figure

import (
	"encoding/xml"
	"math"
	"strconv"
	"strings"
	"testing"
)

// inside checks that all coordinates of a drawing are inside its frame.
func inside(t *testing.T, nodes []Node, width, height float64) {
	t.Helper()
	for _, n := range nodes {
		for _, a := range n.Attrs {
			var limit float64
			switch a.Name {
			case "x", "x1", "x2", "cx":
				limit = width
			case "y", "y1", "y2", "cy":
				limit = height
			default:
				continue
			}
			v, err := strconv.ParseFloat(a.Value, 64)
			if err != nil || math.IsNaN(v) || v < 0 || v > limit {
				t.Errorf("%s of a %s is %s, outside 0 to %v", a.Name, n.Tag, a.Value, limit)
			}
		}
		inside(t, n.Kids, width, height)
	}
}

func attr(n Node, name string) string {
	for _, a := range n.Attrs {
		if a.Name == name {
			return a.Value
		}
	}
	return ""
}

// Bars are as long as their sizes are to each other; the limit is where a
// bar of its size would end.
func TestBars(t *testing.T) {
	nodes, foot := Bars(0, []Bar{{Concrete, "one", "1 m", 1}, {Foam, "four", "4 m", 4}, {Foam, "none", "0", 0}}, 2)
	inside(t, nodes, ChartWidth, foot)
	var wide []float64
	for _, n := range nodes {
		if n.Tag == "rect" {
			w, _ := strconv.ParseFloat(attr(n, "width"), 64)
			wide = append(wide, w)
		}
	}
	if len(wide) != 3 || wide[1] != 4*wide[0] || wide[2] != 0 {
		t.Errorf("widths %v, want 1 to 4 to 0", wide)
	}
	if x := attr(nodes[len(nodes)-1], "x1"); nodes[len(nodes)-1].Tag != "line" ||
		x != Coordinate(chartMargin+wide[1]/2) {
		t.Errorf("the limit stands at %s", x)
	}
	nodes, foot = Bars(0, []Bar{{Concrete, "none", "0", 0}}, 0)
	inside(t, nodes, ChartWidth, foot)
}

// Points land by proportion, y upward; what lies outside stays on the edge.
func TestPlot(t *testing.T) {
	x := Axis{"Hours", 0, 10, []Mark{{0, "0"}, {5, "5"}, {10, "10"}}}
	y := Axis{"psi", 0, 100, []Mark{{0, "0"}, {50, "50"}, {100, "100"}}}
	nodes, foot := Plot(x, y, []Curve{{Concrete, "strength", []Point{{0, 0}, {5, 50}, {10, 100}, {20, 300}}}},
		[]Marker{{Line, Point{5, 50}, "now"}, {Line, Point{10, 100}, "end"}})
	inside(t, nodes, ChartWidth, foot)
	const right, bottom = ChartWidth - chartMargin, plotTop + plotTall
	want := Coordinate(plotLeft) + "," + Coordinate(bottom) + " " +
		Coordinate((plotLeft+right)/2) + "," + Coordinate(plotTop+plotTall/2) + " " +
		Coordinate(right) + "," + Coordinate(plotTop) + " " + Coordinate(right) + "," + Coordinate(plotTop)
	found := false
	for _, n := range nodes {
		found = found || attr(n, "points") == want
	}
	if !found {
		t.Errorf("no curve through %s", want)
	}
	text := SVG(Drawing{Width: ChartWidth, Height: foot, Nodes: nodes})
	if err := xml.Unmarshal([]byte(text), new(struct{})); err != nil || !strings.Contains(text, "strength") {
		t.Errorf("%v in %s", err, text)
	}
	nodes, foot = Plot(Axis{}, Axis{}, []Curve{{Concrete, "", []Point{{1, 1}}}}, nil)
	inside(t, nodes, ChartWidth, foot)
}
