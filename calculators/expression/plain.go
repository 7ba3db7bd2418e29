package expression

import "strings"

// Greek maps the spelled names of Greek letters to the letters.
var Greek = map[string]string{
	"alpha": "α", "beta": "β", "gamma": "γ", "delta": "δ", "theta": "θ", "lambda": "λ",
	"mu": "μ", "pi": "π", "rho": "ρ", "sigma": "σ", "phi": "φ", "psi": "ψ", "omega": "ω",
}

// Spell returns a name for one line of text, with a Greek letter as a character.
// The underscore of a subscript is kept, so that C_w and Cw differ.
func Spell(name string) string {
	base, sub, has := strings.Cut(name, "_")
	if g, ok := Greek[base]; ok {
		base = g
	}
	if has {
		return base + "_" + sub
	}
	return base
}

// Plain returns an expression on one line, with the names as Spell returns them.
func Plain(n *Node) string { return write(n, Spell) }

// Substitute returns an expression on one line with values in place of names; a
// name without a value remains as Spell returns it. Negative values are set in
// parentheses.
func Substitute(n *Node, values map[string]string) string {
	return write(n, func(name string) string {
		v, ok := values[name]
		switch {
		case !ok:
			return Spell(name)
		case strings.HasPrefix(v, "-") || strings.HasPrefix(v, "−"):
			return "(" + v + ")"
		}
		return v
	})
}

var between = map[Op]string{Add: " + ", Sub: " − ", Mul: " × ", Div: " / "}

// write returns an expression on one line, each name as the function name returns
// it.
func write(n *Node, name func(string) string) string {
	switch n.Op {
	case Const:
		return n.Text
	case Name:
		return name(n.Text)
	case Neg:
		return "−" + write(n.Args[0], name)
	case Paren:
		return "(" + write(n.Args[0], name) + ")"
	case Pow:
		return write(n.Args[0], name) + "^" + write(n.Args[1], name)
	case Call:
		parts := make([]string, len(n.Args))
		for i, a := range n.Args {
			parts[i] = write(a, name)
		}
		if n.Text == "sqrt" {
			return "√(" + parts[0] + ")"
		}
		return n.Text + "(" + strings.Join(parts, ", ") + ")"
	}
	return write(n.Args[0], name) + between[n.Op] + write(n.Args[1], name)
}
