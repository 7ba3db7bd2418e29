package pressure

import (
	"encoding/xml"
	"errors"
	"io"
	"strconv"
	"strings"
	"testing"
	"unicode/utf8"

	"coursebook/calculators/calc"
	"coursebook/calculators/calctest"
	"coursebook/calculators/figure"
	"coursebook/calculators/quantity"
)

// checkNode holds every coordinate of a node, and the estimated width of its
// text, inside the drawing.
func checkNode(t *testing.T, d figure.Drawing, n figure.Node) {
	t.Helper()
	at := map[string]float64{}
	for _, a := range n.Attrs {
		for _, s := range strings.FieldsFunc(a.Value, func(r rune) bool { return r == ' ' || r == ',' }) {
			x, err := strconv.ParseFloat(s, 64)
			if err != nil {
				continue
			}
			at[a.Name] = x
			if x < 0 || x > max(d.Width, d.Height) {
				t.Fatalf("%s %s=%s is out of the box", n.Tag, a.Name, a.Value)
			}
		}
	}
	for _, limit := range []struct {
		name string
		most float64
	}{{"x", d.Width}, {"x1", d.Width}, {"x2", d.Width}, {"y", d.Height}, {"y1", d.Height}, {"y2", d.Height}} {
		if at[limit.name] > limit.most {
			t.Fatalf("%s: %s=%v is out of the box", n.Tag, limit.name, at[limit.name])
		}
	}
	if n.Tag == "text" {
		wide := glyph * float64(utf8.RuneCountInString(n.Text))
		for _, a := range n.Attrs {
			if a.Name == "text-anchor" && a.Value == string(figure.Middle) {
				wide /= 2
			}
		}
		if at["x"]+wide > d.Width {
			t.Fatalf("“%s” runs out of the box", n.Text)
		}
	}
	for _, k := range n.Kids {
		checkNode(t, d, k)
	}
}

// The drawing is well-formed by the standard library's reader, shows the
// verdict and the values in the reader's units, and is left out with a
// refusal.
func TestDrawing(t *testing.T) {
	in, res := calctest.RunCase(t, FormPressure)
	for _, c := range []struct {
		system quantity.System
		want   []string
	}{
		{quantity.US, []string{"Does not hold", "1200 psf", "840 psf", "900 psf", `8' 0"`}},
		{quantity.Metric, []string{"Does not hold", "57.5 kPa", "40.0 kPa", "43.1 kPa", "2.44 m"}},
	} {
		d := FormPressure.Draw(calc.Locale{Style: quantity.Style{System: c.system}}, in, res)
		text := figure.SVG(d)
		dec := xml.NewDecoder(strings.NewReader(text))
		said := ""
		for {
			tok, err := dec.Token()
			if errors.Is(err, io.EOF) {
				break
			}
			if err != nil {
				t.Fatal(err)
			}
			if s, ok := tok.(xml.CharData); ok {
				said += string(s) + "\n"
			}
		}
		for _, w := range c.want {
			if !strings.Contains(said, w) {
				t.Errorf("the drawing does not say %s", w)
			}
		}
	}
	in, res = calctest.RunCase(t, FormPressure, "length=10 ft", "stop=12 ft")
	if !FormPressure.Draw(calc.Locale{}, in, res).Empty() {
		t.Error("a refusal was drawn")
	}
}

// Without a rating there is neither its line nor its entry in the key.
func TestDrawingWithoutRating(t *testing.T) {
	in, res := calctest.RunCase(t, FormPressure, "rating=")
	if text := figure.SVG(FormPressure.Draw(calc.Locale{}, in, res)); strings.Contains(text, "f-limit") {
		t.Error("a rating was drawn")
	}
}
