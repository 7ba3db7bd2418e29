package formpressure

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

// glyph is the width of one letter of the standard size, an upper estimate.
const glyph = 8.0

func checkBox(t *testing.T, d figure.Drawing) {
	t.Helper()
	if d.Empty() || d.Width > 360 || d.Title == "" || d.Desc == "" {
		t.Fatal("no drawing, or too wide for a phone")
	}
	for _, n := range d.Nodes {
		checkNode(t, d, n)
	}
}

// checkNode checks that every coordinate of a node, and the estimated width of its
// text, is inside the drawing.
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
				t.Fatalf("%s %s=%s is outside the frame", n.Tag, a.Name, a.Value)
			}
		}
	}
	for _, limit := range []struct {
		name string
		most float64
	}{{"x", d.Width}, {"x1", d.Width}, {"x2", d.Width}, {"y", d.Height}, {"y1", d.Height}, {"y2", d.Height}} {
		if at[limit.name] > limit.most {
			t.Fatalf("%s: %s=%v is outside the frame", n.Tag, limit.name, at[limit.name])
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
			t.Fatalf("“%s” extends beyond the frame", n.Text)
		}
	}
	for _, k := range n.Kids {
		checkNode(t, d, k)
	}
}

// The drawing is well-formed, has the verdict and the values in the reader's
// units, and is empty for a refusal.
func TestDrawing(t *testing.T) {
	in, res := calctest.RunCase(t, Calculator, "how=once", "rating=900", "rating-is=working")
	for _, c := range []struct {
		system quantity.System
		want   []string
	}{
		{quantity.US, []string{"place in lifts", "1200 psf", "900 psf", `8' 0"`}},
		{quantity.Metric, []string{"place in lifts", "57.5 kPa", "43.1 kPa", "2.44 m"}},
	} {
		d := Calculator.Draw(calc.Locale{Style: quantity.Style{System: c.system}}, in, res)
		text := figure.SVG(d)
		dec := xml.NewDecoder(strings.NewReader(text))
		written := ""
		for {
			tok, err := dec.Token()
			if errors.Is(err, io.EOF) {
				break
			}
			if err != nil {
				t.Fatal(err)
			}
			if s, ok := tok.(xml.CharData); ok {
				written += string(s) + "\n"
			}
		}
		for _, w := range c.want {
			if !strings.Contains(written, w) {
				t.Errorf("the drawing does not have %s", w)
			}
		}
	}
	in, res = calctest.RunCase(t, Calculator, "how=once", "length=10 ft", "stop=12 ft")
	if !Calculator.Draw(calc.Locale{}, in, res).Empty() {
		t.Error("a refusal was drawn")
	}
}

// Without a working pressure there is neither its line nor its entry in the key: a test figure
// beside the pressure would look like room to spare.
func TestDrawingWithoutRating(t *testing.T) {
	for _, typed := range [][]string{{"rating="}, {"rating=2000"}, {"rating=2000", "rating-is=test"}} {
		in, res := calctest.RunCase(t, Calculator, typed...)
		if text := figure.SVG(Calculator.Draw(calc.Locale{}, in, res)); strings.Contains(text, "f-limit") {
			t.Errorf("%v: a rating was drawn", typed)
		}
	}
	in, res := calctest.RunCase(t, Calculator, "rating=2000", "rating-is=working")
	if text := figure.SVG(Calculator.Draw(calc.Locale{}, in, res)); !strings.Contains(text, "f-limit") {
		t.Error("a working pressure was not drawn")
	}
}
