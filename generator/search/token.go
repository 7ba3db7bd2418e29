package search

// Token is one word of a text.
type Token struct {
	Word       string // normalized as in the index: folded, units in their short form
	Start, End int    // byte offsets in the text
}

// Tokens splits a text into words. The same rules apply to the index and the query:
//
//   - letters are lower-case and without accents; everything that is neither
//     letter nor digit separates words; an apostrophe inside a word is dropped
//     (f'c, f′c and fc are one word), and so is a final 's;
//   - decimals (0.45; 0,45 and .45 are the same), fractions (3/8), mixed numbers
//     (1-1/2, also 1 1/2 and 1½) and sizes (2x6, also 2 × 6) are one word;
//     thousands separators are dropped (1,500 is 1500);
//   - inch, foot, millimetre, centimetre and degree are part of their number, in
//     one form (4", 4 in. and 4-inch are 4in; 70 °F is 70f);
//   - letters and digits without a space are one word (10M is 10m, C30/37 is
//     c30/37);
//   - a bar number includes its mark (#5, also No. 5), a ratio of letters its slash
//     (w/c).
func Tokens(text string) []Token {
	var s scanner
	s.read(text)
	var tokens []Token
	for s.next() {
		tokens = append(tokens, Token{string(s.word), s.from, s.to})
	}
	return tokens
}

// scanner splits texts into words, one text after another.
type scanner struct {
	folded
	pos      int
	word     []byte // the current word, normalized
	from, to int    // its byte offsets in the original text
	skip     int    // folded characters after the word that belong to no word
}

// read sets the text.
func (s *scanner) read(text string) {
	s.fold(text)
	s.pos, s.skip = 0, 0
}

// next reads the next word, and reports whether there is one. word is valid until
// the next call.
func (s *scanner) next() bool {
	s.pos += s.skip
	s.skip = 0
	for s.pos < len(s.text) {
		if s.step() {
			return true
		}
	}
	return false
}

// peek returns the folded byte n places ahead, or a space beyond the end.
func (s *scanner) peek(n int) byte {
	if s.pos+n < len(s.text) {
		return s.text[s.pos+n]
	}
	return ' '
}

// step reads one word and returns true, or skips one byte and returns false.
func (s *scanner) step() bool {
	start := s.pos
	s.word = s.word[:0]
	c := s.peek(0)
	switch {
	case c == '#' && isDigit(s.peek(1)):
		s.pos++
		s.bar()
	case isDigit(c):
		s.number()
	case c == '.' && isDigit(s.peek(1)):
		s.word = append(s.word, '0')
		s.decimals()
		s.unit()
	case isLetter(c):
		s.letters()
	default:
		s.pos++
		return false
	}
	s.from, s.to = int(s.at[start]), int(s.end())
	return true
}

// end returns the byte of the original at which the last character read ends.
func (s *scanner) end() int32 {
	last := s.at[s.pos-1]
	for i := s.pos; ; i++ {
		if i == len(s.at)-1 || s.at[i] != last {
			return s.at[i]
		}
	}
}

// digits reads a run of digits, which may be empty, and returns its length.
func (s *scanner) digits() int {
	start := s.pos
	for isDigit(s.peek(0)) {
		s.word = append(s.word, s.text[s.pos])
		s.pos++
	}
	return s.pos - start
}

// bar reads the size of a bar after # or No.
func (s *scanner) bar() {
	s.word = append(s.word, '#')
	s.digits()
	s.plural()
}

// plural skips the s of 2x6s and #5s.
func (s *scanner) plural() {
	if s.peek(0) == 's' && !s.alnumAt(1) {
		s.pos++
	}
}

// alnumAt reports whether a letter or digit is n places ahead.
func (s *scanner) alnumAt(n int) bool { return isLetter(s.peek(n)) || isDigit(s.peek(n)) }

// number reads 12, 1,500, 0.45, 3/8, 1-1/2 or 2x6, and the unit after it.
func (s *scanner) number() {
	s.figure()
	for n := s.by(); n > 0; n = s.by() {
		s.pos += n
		s.word = append(s.word, 'x')
		s.figure()
	}
	s.unit()
	s.skip = s.by() // 10' x 12' is two words without the x
}

// figure reads one number without a unit.
func (s *scanner) figure() {
	leadingZero := s.peek(0) == '0'
	n := s.digits()
	whole := n <= 3 && !leadingZero
	for whole && (s.peek(0) == ',' || s.peek(0) == narrow) && s.threeDigits(1) {
		s.pos++
		s.digits()
	}
	switch c := s.peek(0); {
	case (c == '.' || c == ',') && isDigit(s.peek(1)):
		s.decimals()
	case c == '/' && isDigit(s.peek(1)):
		s.slashes()
	case (c == '-' || c == ' ' || c == narrow) && s.fractionAt(1):
		s.word = append(s.word, '-')
		s.pos++
		s.digits()
		s.slashes()
	}
}

// threeDigits reports whether exactly three digits are n places ahead.
func (s *scanner) threeDigits(n int) bool {
	return isDigit(s.peek(n)) && isDigit(s.peek(n+1)) && isDigit(s.peek(n+2)) && !isDigit(s.peek(n+3))
}

// fractionAt reports whether a fraction is n places ahead, with a numerator of one or
// two digits.
func (s *scanner) fractionAt(n int) bool {
	start := n
	for isDigit(s.peek(n)) {
		n++
	}
	return n > start && n <= start+2 && s.peek(n) == '/' && isDigit(s.peek(n+1))
}

// decimals reads a decimal mark as a point, and the digits after it.
func (s *scanner) decimals() {
	s.word = append(s.word, '.')
	s.pos++
	s.digits()
}

// slashes reads slashes that digits follow, and those digits.
func (s *scanner) slashes() {
	for s.peek(0) == '/' && isDigit(s.peek(1)) {
		s.word = append(s.word, '/')
		s.pos++
		s.digits()
	}
}

// by returns the number of bytes from here to the second number of a size written
// 2x6, 2 x 6 or 2 × 6, spaces included. It returns 0 if none follows, and does not
// advance the scanner.
func (s *scanner) by() int {
	n := s.skipBlank(0)
	if c := s.peek(n); c != 'x' && c != times {
		return 0
	}
	n = s.skipBlank(n + 1)
	if !isDigit(s.peek(n)) {
		return 0
	}
	return n
}

// skipBlank returns n, or n+1 if a space is n places ahead.
func (s *scanner) skipBlank(n int) int {
	if c := s.peek(n); (c == ' ' || c == narrow) && s.pos+n < len(s.text) {
		return n + 1
	}
	return n
}

// unit reads the unit of the number before it, or the letters attached to it. It
// reads nothing if there are none.
func (s *scanner) unit() {
	switch c := s.peek(0); {
	case c == '"':
		s.take(1, "in")
	case c == '\'' && s.peek(1) == '\'':
		s.take(2, "in")
	case c == '\'' && s.peek(1) == 's' && !s.alnumAt(2):
		s.pos += 2 // the 1990's
	case c == '\'':
		s.take(1, "ft")
	case isLetter(c):
		s.attachedUnit()
	default:
		s.separateUnit()
	}
}

// take advances n bytes and adds the short form of a unit to the word.
func (s *scanner) take(n int, unit string) {
	s.pos += n
	s.word = append(s.word, unit...)
}

// attachedUnit reads letters attached to the number: 4in, 10M, 2x6s.
func (s *scanner) attachedUnit() {
	if n, unit := s.unitAt(0); unit != "" {
		s.take(n, unit)
		return
	}
	s.plural()
	s.alnum()
}

// separateUnit reads a unit after a space, hyphen or degree sign: 4 in., 4-inch,
// 70 °F, 70 F. It reads nothing if there is none.
func (s *scanner) separateUnit() {
	n := s.skipBlank(0)
	if n == 0 && s.peek(0) == '-' {
		n = 1
	}
	if s.peek(n) == degree {
		n = s.skipBlank(n + 1)
	}
	if n == 0 {
		return
	}
	if size, unit := s.unitAt(n); unit != "" {
		s.take(n+size, unit)
	}
}

// unitAt returns the short form of the unit that is the whole word n places ahead,
// with the length of that word in bytes; unit is "" if it is none.
func (s *scanner) unitAt(n int) (size int, unit string) {
	for s.alnumAt(n + size) {
		size++
	}
	from := min(s.pos+n, len(s.text))
	return size, unitOf(string(s.text[from : from+size]))
}

// unitOf returns the short form of a unit that is part of its number, or "" for
// any other word. Units that readers search without a number (psi) are separate
// words.
func unitOf(word string) string {
	switch word {
	case "in", "inch", "inches", "pulg", "pulgada", "pulgadas":
		return "in"
	case "ft", "foot", "feet", "pie", "pies":
		return "ft"
	case "f", "c", "mm", "cm":
		return word
	}
	return ""
}

// letters reads a word that begins with a letter, a bar number or a ratio.
func (s *scanner) letters() {
	start := s.pos
	s.alnum()
	single := s.pos-start == 1
	switch {
	case s.barAhead(start):
		s.word = s.word[:0]
		s.bar()
	case single && s.peek(0) == '/' && s.ratioAhead():
		s.word = append(s.word, '/')
		s.pos++
		s.alnum()
	default:
		s.apostrophes()
	}
}

// alnum reads letters and digits, and slashes and points between digits.
func (s *scanner) alnum() {
	for ; ; s.pos++ {
		c := s.peek(0)
		inner := (c == '/' || c == '.') && isDigit(s.peek(1)) &&
			len(s.word) > 0 && isDigit(s.word[len(s.word)-1])
		if !isLetter(c) && !isDigit(c) && !inner {
			return
		}
		s.word = append(s.word, c)
	}
}

// barAhead reports whether the word read from start is the "no" of "No. 5" or "nº
// 5". If so it advances to the digit; otherwise it does not advance.
func (s *scanner) barAhead(start int) bool {
	n := 0
	switch string(s.text[start:s.pos]) {
	case "no", "num":
		if s.peek(0) != '.' {
			return false
		}
		n = 1
	case "n":
		if s.peek(0) == '.' {
			n = 1
		}
		if s.peek(n) != degree {
			return false
		}
		n++
	default:
		return false
	}
	n = s.skipBlank(n)
	if !isDigit(s.peek(n)) {
		return false
	}
	s.pos += n
	return true
}

// ratioAhead reports whether one or two letters follow the slash: w/c, w/cm.
func (s *scanner) ratioAhead() bool {
	return isLetter(s.peek(1)) && (!s.alnumAt(2) || isLetter(s.peek(2)) && !s.alnumAt(3))
}

// apostrophes reads the rest of f'c and don't without the apostrophe, and skips the
// 's of foreman's.
func (s *scanner) apostrophes() {
	for s.peek(0) == '\'' && isLetter(s.peek(1)) {
		if s.peek(1) == 's' && !s.alnumAt(2) {
			s.skip = 2
			return
		}
		s.pos++
		s.alnum()
	}
}
