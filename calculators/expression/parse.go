// Package expression parses the right-hand side of a formula for display: it is
// written as a line of text, with numbers substituted, or converted to MathML.
// Calculators compute with Go functions; a test compares each expression with
// its function by Eval.
//
// Grammar: numbers, names (R, C_w, f'c, theta), + - * / ^ with the usual
// precedence (^ binds to the right), parentheses, and the functions of
// Functions. "pi" is the constant.
package expression

import (
	"errors"
	"strconv"
)

// Op is the kind of a node.
type Op uint8

// The kinds of node.
const (
	Const Op = iota // a number as written
	Name            // a variable, or pi
	Add
	Sub
	Mul
	Div
	Pow
	Neg
	Call  // Name holds the function, Args its arguments
	Paren // parentheses in the source; Args[0]
)

// Node is one node of the tree.
type Node struct {
	Op   Op
	Text string // Const: digits as written; Name, Call: the name
	Args []*Node
}

// Functions lists the functions an expression may call, with their arity
// (-1: two or more).
var Functions = map[string]int{
	"sqrt": 1, "abs": 1, "sin": 1, "cos": 1, "tan": 1, "asin": 1, "acos": 1, "atan": 1,
	"exp": 1, "ln": 1, "min": -1, "max": -1, "ceil": 1, "floor": 1, "round": 1,
}

type parser struct {
	text string
	pos  int
}

// Parse parses all of text as an expression of numbers, names, + - * / ^,
// parentheses and Functions. Any other text, the empty one among them, gives nil
// and an error with its byte offset.
func Parse(text string) (*Node, error) {
	p := &parser{text: text}
	n, err := p.sum()
	if err != nil {
		return nil, err
	}
	if p.peek() != 0 {
		return nil, p.fail("unexpected text")
	}
	return n, nil
}

// fail returns an error at the current byte; what is its reason.
func (p *parser) fail(what string) error {
	return errors.New("expression: " + what + " at byte " + strconv.Itoa(p.pos) + " of " + strconv.Quote(p.text))
}

// peek skips spaces and returns the byte behind them, which remains unread; 0 at
// the end.
func (p *parser) peek() byte {
	for p.pos < len(p.text) && p.text[p.pos] == ' ' {
		p.pos++
	}
	if p.pos == len(p.text) {
		return 0
	}
	return p.text[p.pos]
}

// sum reads products joined by + and -, from left to right. It returns an error if
// a product cannot be read.
func (p *parser) sum() (*Node, error) {
	left, err := p.product()
	for err == nil {
		op := Add
		switch p.peek() {
		case '+':
		case '-':
			op = Sub
		default:
			return left, nil
		}
		p.pos++
		var right *Node
		right, err = p.product()
		left = &Node{Op: op, Args: []*Node{left, right}}
	}
	return nil, err
}

// product reads powers joined by * and /, from left to right. It returns an error
// if a power cannot be read.
func (p *parser) product() (*Node, error) {
	left, err := p.power()
	for err == nil {
		op := Mul
		switch p.peek() {
		case '*':
		case '/':
			op = Div
		default:
			return left, nil
		}
		p.pos++
		var right *Node
		right, err = p.power()
		left = &Node{Op: op, Args: []*Node{left, right}}
	}
	return nil, err
}

// power reads an atom with an exponent, which binds to the right, or a minus
// before a power. It returns an error if an atom cannot be read.
func (p *parser) power() (*Node, error) {
	if p.peek() == '-' {
		p.pos++
		n, err := p.power()
		return &Node{Op: Neg, Args: []*Node{n}}, err
	}
	base, err := p.atom()
	if err != nil || p.peek() != '^' {
		return base, err
	}
	p.pos++
	exp, err := p.power()
	return &Node{Op: Pow, Args: []*Node{base, exp}}, err
}

// atom reads an expression in parentheses, a number, a name or a call. Anything
// else is an error.
func (p *parser) atom() (*Node, error) {
	c := p.peek()
	switch {
	case c == '(':
		p.pos++
		n, err := p.sum()
		if err != nil {
			return nil, err
		}
		if p.peek() != ')' {
			return nil, p.fail("missing )")
		}
		p.pos++
		return &Node{Op: Paren, Args: []*Node{n}}, nil
	case isDigit(c):
		start := p.pos
		for p.pos < len(p.text) && (isDigit(p.text[p.pos]) || p.text[p.pos] == '.') {
			p.pos++
		}
		if _, err := strconv.ParseFloat(p.text[start:p.pos], 64); err != nil {
			return nil, p.fail("not a number")
		}
		return &Node{Op: Const, Text: p.text[start:p.pos]}, nil
	case isLetter(c):
		return p.word()
	}
	return nil, p.fail("expected a number, a name or (")
}

// word reads a name, which may hold digits, _ and ', or a call of one of
// Functions. A function without parentheses or with another number of arguments is
// an error.
func (p *parser) word() (*Node, error) {
	start := p.pos
	for p.pos < len(p.text) && (isLetter(p.text[p.pos]) || isDigit(p.text[p.pos]) || p.text[p.pos] == '_' ||
		p.text[p.pos] == '\'') {
		p.pos++
	}
	name := p.text[start:p.pos]
	arity, isFunc := Functions[name]
	if !isFunc {
		return &Node{Op: Name, Text: name}, nil
	}
	if p.peek() != '(' {
		return nil, p.fail("missing ( after " + name)
	}
	n := &Node{Op: Call, Text: name}
	for {
		p.pos++
		arg, err := p.sum()
		if err != nil {
			return nil, err
		}
		n.Args = append(n.Args, arg)
		if p.peek() != ',' {
			break
		}
	}
	if p.peek() != ')' {
		return nil, p.fail("missing )")
	}
	p.pos++
	if (arity >= 0 && len(n.Args) != arity) || (arity < 0 && len(n.Args) < 2) {
		return nil, p.fail("wrong number of arguments of " + name)
	}
	return n, nil
}

func isDigit(c byte) bool  { return '0' <= c && c <= '9' }
func isLetter(c byte) bool { return 'a' <= c && c <= 'z' || 'A' <= c && c <= 'Z' }
