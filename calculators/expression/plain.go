package expression

import "strings"

// Greek spells the Greek letters that may be a name.
var Greek = map[string]string{
	"alpha": "α", "beta": "β", "gamma": "γ", "delta": "δ", "theta": "θ", "lambda": "λ",
	"mu": "μ", "pi": "π", "rho": "ρ", "sigma": "σ", "phi": "φ", "psi": "ψ", "omega": "ω",
}

// Spell is a name for one line of plain text: Greek letters as such, the
// underscore of a subscript kept, so that C_w and Cw stay apart.
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

// Plain writes an expression on one line.
func Plain(n *Node) string { return write(n, Spell) }

// Substitute writes an expression on one line with values in place of names;
// a name that values does not know stays. Negative values are set in
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
