package quantity

import "strings"

// pairs are the units that may follow each other in one value.
var pairs = []struct {
	big, small string
	ratio      float64 // small units per big one
}{
	{"ft", "in", 12},
	{"d", "h", 24},
	{"h", "min", 60},
	{"min", "s", 60},
}

// compound reads the smaller units in tail, which follows a number x in the unit
// big: 6-1/2" after 10', 30 min after 1 h. A dash may join the two (10'-6"); the
// small unit may be left out. whole reports whether x is a whole number. The value
// returned is in the unit returned, the smallest one, so that 10' 6-1/2" is
// exactly 126.5 in. It returns an error, and 0, if tail has another unit or other
// text, if x is not whole, or if the small number reaches one of the big unit.
func (p *parser) compound(x float64, whole bool, big Unit, tail string) (float64, Unit, *ParseError) {
	joined, _ := strings.CutPrefix(tail, "-")
	joined = skip(joined)
	for _, pair := range pairs {
		if pair.big != big.Symbol || !startsNumber(joined) {
			continue
		}
		y, wholeY, rest, err := p.number(joined)
		if err != nil {
			return 0, big, err
		}
		small, _ := Find(pair.small)
		left := ""
		if rest != "" {
			var u Unit
			if u, left, err = p.unit(rest); err != nil {
				return 0, big, err
			}
			if u.Symbol != small.Symbol {
				return 0, big, p.trailing(tail)
			}
		}
		switch {
		case !whole:
			return 0, big, errFirstWhole.with("big", big.Symbol, "small", small.Symbol)
		case y >= pair.ratio:
			return 0, big, errCarry.with("big", big.Symbol, "small", small.Symbol, "limit",
				written(pair.ratio, 0, p.style.Mark))
		}
		total := float64(x*pair.ratio) + y
		if left == "" {
			return total, small, nil
		}
		return p.compound(total, wholeY, small, left)
	}
	return 0, big, p.trailing(tail)
}

// startsNumber reports whether s starts with a digit, or with a decimal mark and
// a digit.
func startsNumber(s string) bool {
	if s != "" && isMark(s[0]) {
		s = s[1:]
	}
	return digitsIn(s) > 0
}
