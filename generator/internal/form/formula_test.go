package form

import (
	"encoding/xml"
	"fmt"
	"io"
	"maps"
	"math"
	"math/rand/v2"
	"slices"
	"strings"
	"testing"

	"coursebook/calculators/calc"
	"coursebook/calculators/expression"
	"coursebook/calculators/quantity"
)

// children lists the elements of MathML Core (W3C, "MathML Core", chapter 3)
// that an equation may use, with the number of children of each; -1 means any
// number, 0 text only.
var children = map[string]int{
	"math":  -1,
	"mrow":  -1,
	"mi":    0,
	"mn":    0,
	"mo":    0,
	"mfrac": 2,
	"msup":  2,
	"msub":  2,
	"msqrt": -1,
}

// element is one element of an equation, parsed by the standard library.
type element struct {
	name, text string
	kids       []*element
}

func readXML(t *testing.T, text string) *element {
	t.Helper()
	dec := xml.NewDecoder(strings.NewReader(text))
	top := &element{}
	open := []*element{top}
	for {
		tok, err := dec.Token()
		if err == io.EOF {
			break
		}
		if err != nil {
			t.Fatalf("%v in %s", err, text)
		}
		last := open[len(open)-1]
		switch x := tok.(type) {
		case xml.StartElement:
			e := &element{name: x.Name.Local}
			last.kids = append(last.kids, e)
			open = append(open, e)
		case xml.EndElement:
			open = open[:len(open)-1]
		case xml.CharData:
			last.text += string(x)
		}
	}
	if len(top.kids) != 1 {
		t.Fatalf("%d elements at the top of %s", len(top.kids), text)
	}
	return top.kids[0]
}

func (e *element) check(t *testing.T) {
	t.Helper()
	want, ok := children[e.name]
	switch {
	case !ok:
		t.Errorf("MathML Core has no use for an element %s here", e.name)
	case want >= 0 && len(e.kids) != want:
		t.Errorf("%s has %d children, not %d", e.name, len(e.kids), want)
	case want == 0 && e.text == "", want != 0 && e.text != "":
		t.Errorf("%s holds the text %q", e.name, e.text)
	}
	for _, k := range e.kids {
		k.check(t)
	}
}

// line converts an element to an expression on one line, with each group of the
// typesetting in parentheses.
func (e *element) line() string {
	var parts []string
	for _, k := range e.kids {
		parts = append(parts, k.line())
	}
	switch e.name {
	case "mfrac":
		return "((" + parts[0] + ")/(" + parts[1] + "))"
	case "msup":
		return "((" + parts[0] + ")^(" + parts[1] + "))"
	case "msub":
		return parts[0] + "_" + parts[1]
	case "msqrt":
		return "sqrt(" + strings.Join(parts, "") + ")"
	case "mo":
		return map[string]string{"−": "-", "×": "*"}[e.text] + strings.Trim(e.text, "−×")
	case "mi", "mn":
		for name, sign := range expression.Greek {
			if sign == e.text {
				return name
			}
		}
		return e.text
	}
	return strings.Join(parts, "")
}

// names are the variables of random expressions and their values.
var names = map[string]float64{"R": 1.7, "C_w": 1.2, "theta": 0.4, "T_1": 3.1, "f'c": 2.5}

// random returns a random expression. Exponents are small, so that values are finite
// and can be compared.
func random(r *rand.Rand, depth int) string {
	if depth == 0 || r.IntN(6) == 0 {
		if r.IntN(3) == 0 {
			return fmt.Sprint(1 + r.IntN(9))
		}
		return slices.Sorted(maps.Keys(names))[r.IntN(len(names))]
	}
	a, b := random(r, depth-1), random(r, depth-1)
	switch r.IntN(9) {
	case 0:
		return a + " + " + b
	case 1:
		return a + " - " + b
	case 2:
		return a + "*" + b
	case 3:
		return a + "/" + b
	case 4:
		return "(" + a + ")^" + fmt.Sprint(r.IntN(3))
	case 5:
		return "-" + a
	case 6:
		return "(" + a + ")"
	case 7:
		return "sqrt(abs(" + a + "))"
	}
	return "max(" + a + ", " + b + ", 1)"
}

// An expression parsed from the MathML of an expression has the same value.
func TestMathMLHasTheSameValue(t *testing.T) {
	r := rand.New(rand.NewPCG(11, 3))
	texts := []string{
		"-R^2",
		"2^R^2",
		"-(R + 1)^2",
		"8 - (3 - 2)",
		"8/(4/2)",
		"8/4/2",
		"(R/2)^2",
		"R^-2",
		"3*-2",
		"-R/2",
		"(R + 1)/(R - 1)",
		"pi*R",
		"2*(R)",
		"sqrt((R + 1)*2)",
	}
	for range 400 {
		texts = append(texts, random(r, 4))
	}
	compared := 0
	for _, text := range texts {
		tree, err := expression.Parse(text)
		if err != nil {
			t.Fatalf("%s: %v", text, err)
		}
		math := readXML(t, mathML("y", tree))
		math.check(t)
		right, found := strings.CutPrefix(math.line(), "y=")
		if !found {
			t.Fatalf("%s became %s", text, math.line())
		}
		back, err := expression.Parse(right)
		if err != nil {
			t.Fatalf("%s became %s: %v", text, right, err)
		}
		if same(t, tree, back, text, right) {
			compared++
		}
	}
	if compared < 300 {
		t.Errorf("only %d expressions had a finite value to compare", compared)
	}
}

func same(t *testing.T, a, b *expression.Node, text, right string) bool {
	t.Helper()
	x, err := expression.Eval(a, names)
	if err != nil {
		t.Fatal(err)
	}
	y, err := expression.Eval(b, names)
	if err != nil {
		t.Fatal(err)
	}
	if math.IsNaN(x) || math.IsInf(x, 0) {
		return false
	}
	if math.Abs(x-y) > 1e-9*math.Max(1, math.Abs(x)) {
		t.Errorf("%s = %v is typeset as %s = %v", text, x, right, y)
	}
	return true
}

// Every function of expressions has MathML.
func TestMathMLOfEveryFunction(t *testing.T) {
	for name, arity := range expression.Functions {
		args := "R"
		if arity < 0 {
			args = "R, T_1"
		}
		tree, err := expression.Parse(name + "(" + args + ")")
		if err != nil {
			t.Fatal(err)
		}
		readXML(t, mathML("theta_1", tree)).check(t)
	}
}

func TestFormula(t *testing.T) {
	f := newFormula(calc.Locale{Style: quantity.Style{}}, tank.Formulas[0])
	if f.Plain != "V_t = a^2 × h" || f.Title != "Volume of a cube" || f.Limits != "Where walls are upright." ||
		f.Go != "tank.Cube" ||
		f.Source != "book" {
		t.Errorf("got %+v", f)
	}
	want := []Symbol{{"V_t", "volume", "ft³ / m³"}, {"a", "side", "ft / m"}, {"h", "depth", "m"}}
	if !slices.Equal(f.Where, want) {
		t.Errorf("symbols: %+v, want %+v", f.Where, want)
	}
	math := `<math display="block"><mrow><msub><mi>V</mi><mi>t</mi></msub><mo>=</mo>` +
		`<msup><mrow><mi>a</mi></mrow><mrow><mn>2</mn></mrow></msup><mo>×</mo><mi>h</mi></mrow></math>`
	if f.MathML != math {
		t.Errorf("got  %s\nwant %s", f.MathML, math)
	}
}
