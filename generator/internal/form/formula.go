package form

import (
	"strings"

	"coursebook/calculators/calc"
	"coursebook/calculators/expression"
)

// Formula is one equation: as MathML, as one line of text, and with its symbols
// explained.
type Formula struct {
	ID, Title, Limits string
	MathML            string // a math element
	Plain             string
	Where             []Symbol
	Source            string // ID of the source
	Go                string // the function whose code the listing shows
}

// Symbol explains one symbol. Units are the units in which the equation is valid, both
// if it is valid in two sets.
type Symbol struct{ Symbol, Meaning, Units string }

// newFormula returns a formula for its pages. It panics on an expression that
// cannot be parsed.
func newFormula(v calc.Locale, f *calc.Formula) Formula {
	tree, err := expression.Parse(f.Expr)
	if err != nil {
		panic(err.Error())
	}
	out := Formula{
		ID: f.ID, Title: v.Say(f.Title), Source: f.Source, Go: f.Go,
		Plain:  expression.Spell(f.Result.Symbol) + " = " + expression.Plain(tree),
		MathML: mathML(f.Result.Symbol, tree),
	}
	if f.Limits != "" {
		out.Limits = v.Say(f.Limits)
	}
	for _, x := range append([]calc.Var{f.Result}, f.Vars...) {
		units := x.Unit
		if x.US != "" && x.US != x.Unit {
			units = x.US + " / " + x.Unit
		}
		out.Where = append(out.Where, Symbol{expression.Spell(x.Symbol), v.Say(x.Meaning), units})
	}
	return out
}

// mathML returns the equation result = n as a math element of MathML Core.
func mathML(result string, n *expression.Node) string {
	var b strings.Builder
	b.WriteString(`<math display="block"><mrow>`)
	name(&b, result)
	b.WriteString("<mo>=</mo>")
	markup(&b, n)
	b.WriteString("</mrow></math>")
	return b.String()
}

// name writes a symbol, such as C_w or theta, with its subscript and Greek letter.
func name(b *strings.Builder, s string) {
	base, sub, has := strings.Cut(s, "_")
	if g, ok := expression.Greek[base]; ok {
		base = g
	}
	if !has {
		b.WriteString("<mi>" + base + "</mi>")
		return
	}
	b.WriteString("<msub><mi>" + base + "</mi><mi>" + sub + "</mi></msub>")
}

var operators = map[expression.Op]string{expression.Add: "+", expression.Sub: "−", expression.Mul: "×"}

// markup writes an expression as elements of MathML.
func markup(b *strings.Builder, n *expression.Node) {
	switch n.Op {
	case expression.Const:
		b.WriteString("<mn>" + n.Text + "</mn>")
	case expression.Name:
		name(b, n.Text)
	case expression.Neg:
		b.WriteString("<mo>−</mo>")
		markup(b, n.Args[0])
	case expression.Paren:
		b.WriteString("<mrow><mo>(</mo>")
		markup(b, n.Args[0])
		b.WriteString("<mo>)</mo></mrow>")
	case expression.Div:
		pair(b, "mfrac", bare(n.Args[0]), bare(n.Args[1]))
	case expression.Pow:
		pair(b, "msup", n.Args[0], bare(n.Args[1]))
	case expression.Call:
		call(b, n)
	default:
		markup(b, n.Args[0])
		b.WriteString("<mo>" + operators[n.Op] + "</mo>")
		markup(b, n.Args[1])
	}
}

// bare returns n without its outer parentheses, which a fraction bar or a raised
// exponent replaces; any other n unchanged.
func bare(n *expression.Node) *expression.Node {
	if n.Op == expression.Paren {
		return n.Args[0]
	}
	return n
}

// pair writes an element with two parts, each in a row of its own.
func pair(b *strings.Builder, tag string, first, second *expression.Node) {
	b.WriteString("<" + tag + "><mrow>")
	markup(b, first)
	b.WriteString("</mrow><mrow>")
	markup(b, second)
	b.WriteString("</mrow></" + tag + ">")
}

// call writes a function with its arguments, a square root with its sign.
func call(b *strings.Builder, n *expression.Node) {
	if n.Text == "sqrt" {
		b.WriteString("<msqrt>")
		markup(b, bare(n.Args[0]))
		b.WriteString("</msqrt>")
		return
	}
	b.WriteString("<mrow><mi>" + n.Text + "</mi><mo>(</mo>")
	for i, a := range n.Args {
		if i > 0 {
			b.WriteString("<mo>,</mo>")
		}
		markup(b, a)
	}
	b.WriteString("<mo>)</mo></mrow>")
}
