package expression

import (
	"errors"
	"math"
	"slices"
	"strconv"
)

// Eval computes an expression with the given variables. Angles are in radians; pi
// is known unless a variable has its name. A name without a value is an error, and
// the value is then 0. A division by zero gives an infinity or NaN, not an error.
func Eval(n *Node, vars map[string]float64) (float64, error) {
	switch n.Op {
	case Const:
		return strconv.ParseFloat(n.Text, 64)
	case Name:
		if x, ok := vars[n.Text]; ok {
			return x, nil
		}
		if n.Text == "pi" {
			return math.Pi, nil
		}
		return 0, errors.New("expression: no value for " + n.Text)
	}
	args := make([]float64, len(n.Args))
	for i, a := range n.Args {
		x, err := Eval(a, vars)
		if err != nil {
			return 0, err
		}
		args[i] = x
	}
	return apply(n, args), nil
}

// apply computes the operation of a node from the values of its arguments.
func apply(n *Node, a []float64) float64 {
	switch n.Op {
	case Add:
		return a[0] + a[1]
	case Sub:
		return a[0] - a[1]
	case Mul:
		return a[0] * a[1]
	case Div:
		return a[0] / a[1]
	case Pow:
		return math.Pow(a[0], a[1])
	case Neg:
		return -a[0]
	case Paren:
		return a[0]
	}
	return call(n.Text, a)
}

// call computes a function by its name, one of Functions; any name that is not
// known is the largest of a.
func call(name string, a []float64) float64 {
	switch name {
	case "sqrt":
		return math.Sqrt(a[0])
	case "abs":
		return math.Abs(a[0])
	case "sin":
		return math.Sin(a[0])
	case "cos":
		return math.Cos(a[0])
	case "tan":
		return math.Tan(a[0])
	case "asin":
		return math.Asin(a[0])
	case "acos":
		return math.Acos(a[0])
	case "atan":
		return math.Atan(a[0])
	case "exp":
		return math.Exp(a[0])
	case "ln":
		return math.Log(a[0])
	case "ceil":
		return math.Ceil(a[0])
	case "floor":
		return math.Floor(a[0])
	case "round":
		return math.Round(a[0])
	}
	best := a[0]
	for _, x := range a[1:] {
		if name == "min" {
			best = math.Min(best, x)
		} else {
			best = math.Max(best, x)
		}
	}
	return best
}

// Names returns the variables of an expression once each, in order of appearance,
// without pi; nil if there are none.
func Names(n *Node) []string {
	var names []string
	collect(n, &names)
	return names
}

// collect appends the variables below n that are not in names yet.
func collect(n *Node, names *[]string) {
	if n.Op == Name && n.Text != "pi" && !slices.Contains(*names, n.Text) {
		*names = append(*names, n.Text)
	}
	for _, a := range n.Args {
		collect(a, names)
	}
}
