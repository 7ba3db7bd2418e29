package figure

import (
	"encoding/xml"
	"io"
	"strings"
	"testing"
)

func sample() Drawing {
	return Drawing{Width: 100, Height: 50, Title: `A "wall" & <more>`, Desc: "d", Nodes: []Node{
		Rect(Concrete, Point{1, 2}, 30.123, 4),
		Dimension(Point{0, 10}, Point{50, 10}, `9' 0"`),
		Dimension(Point{60, 0}, Point{60, 40}, "x"),
		Polygon(Foam, Point{0, 0}, Point{1.005, -0.001}, Point{2, 2}),
		Text(Label, Point{1, 1}, Middle, "<script>"),
	}}
}

// Both forms are well-formed XML, and text with markup is escaped.
func TestWellFormed(t *testing.T) {
	for _, text := range []string{SVG(sample()), File(sample())} {
		dec := xml.NewDecoder(strings.NewReader(text))
		scripts := 0
		for {
			tok, err := dec.Token()
			if err == io.EOF {
				break
			}
			if err != nil {
				t.Fatalf("%v in %s", err, text)
			}
			if s, ok := tok.(xml.StartElement); ok && s.Name.Local == "script" {
				scripts++
			}
		}
		if scripts != 0 {
			t.Error("text became an element")
		}
	}
}

func TestCoordinate(t *testing.T) {
	for in, want := range map[float64]string{1: "1", 1.5: "1.5", 1.239: "1.24", -0.001: "0", 100: "100",
		-2.10: "-2.1"} {
		if got := Coordinate(in); got != want {
			t.Errorf("Coordinate(%v) = %s, want %s", in, got, want)
		}
	}
}
