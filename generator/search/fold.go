package search

import "unicode/utf8"

// Folded forms of characters that have a meaning beside a number. They are control
// characters, which cannot occur otherwise, because folding replaces those of the
// text by spaces.
const (
	degree = '\x02' // ° and º
	times  = '\x03' // ×
	narrow = '\x04' // a no-break or thin space, which may separate groups of three digits
)

// folded is a text in the characters that the tokenizer reads: lower-case letters
// without accents, digits, ASCII punctuation and the constants above.
type folded struct {
	text []byte
	at   []int32 // offset in the original of the character of text[i]; one more entry for the end
}

// latin1 and latinA hold the base letters of U+00C0–U+00FF and U+0100–U+017F; a
// space means no letter. Æ, Œ and ß become one letter, which is enough because
// index and query are folded alike.
const (
	latin1 = "aaaaaaaceeeeiiiidnooooo ouuuuypsaaaaaaaceeeeiiiidnooooo ouuuuypy"
	latinA = "aaaaaaccccccccddddeeeeeeeeeegggggggghhhhiiiiiiiiiiiijjkkkllllllllll" +
		"nnnnnnnnnoooooooorrrrrrssssssssttttttuuuuuuuuuuuuwwyyyzzzzzzs"
)

// fold returns a text folded: in lower case, without accents, other characters as
// the tokenizer reads them.
func fold(text string) folded {
	var f folded
	f.fold(text)
	return f
}

// fold sets f to a folded text, and reuses its memory.
func (f *folded) fold(text string) {
	if cap(f.text) < len(text)+8 {
		f.text, f.at = make([]byte, 0, len(text)+8), make([]int32, 0, len(text)+8)
	}
	f.text, f.at = f.text[:0], f.at[:0]
	for i, r := range text {
		f.add(int32(i), r)
	}
	f.at = append(f.at, int32(len(text)))
}

// add folds one character, which starts at byte at of the original.
func (f *folded) add(at int32, r rune) {
	switch {
	case r >= 'A' && r <= 'Z':
		f.put(at, byte(r)+'a'-'A')
	case r < ' ' || r == '`':
		f.put(at, ' ')
	case r < 0x7f:
		f.put(at, byte(r))
	case r >= 0xc0 && r <= 0xff && r != '×' && r != '÷':
		f.put(at, latin1[r-0xc0])
	case r >= 0x100 && r <= 0x17f:
		f.put(at, latinA[r-0x100])
	case fraction(r) != "":
		f.putFraction(at, fraction(r))
	case r >= 0x300 && r <= 0x36f || r >= 0x200b && r <= 0x200d || r == 0xad || r == 0xfeff:
		// Combining accents, zero-width characters and the soft hyphen are dropped.
	default:
		f.addRare(at, r)
	}
}

// addRare folds a character that is neither ASCII, Latin nor a fraction.
func (f *folded) addRare(at int32, r rune) {
	switch r {
	case '’', '‘', '′', '´', 'ʼ', '‛':
		f.put(at, '\'')
	case '”', '“', '″', '„':
		f.put(at, '"')
	case '°', 'º':
		f.put(at, degree)
	case '×', '✕':
		f.put(at, times)
	case '\u00a0', '\u202f', '\u2009':
		f.put(at, narrow)
	case '⁄', '∕':
		f.put(at, '/')
	case '‐', '‑', '−', '–':
		f.put(at, '-')
	case '¹', '²', '³':
		f.putPower(at, r)
	case 'µ':
		f.put(at, 'u')
	default:
		f.addLetter(at, r)
	}
}

// addLetter adds a letter of another script, Greek and Cyrillic in lower case, or a
// space for any other character. Letters are recognized by their blocks, because
// the tables of package unicode would enlarge the module.
func (f *folded) addLetter(at int32, r rune) {
	switch {
	case r >= 'Α' && r <= 'Ω' || r >= 'А' && r <= 'Я':
		r += 'α' - 'Α'
	case r == '\u2126':
		r = 'ω' // ohm sign
	case r >= 0x370 && r < 0x2000 || r >= 0x3041 && r < 0xd800:
	default:
		f.put(at, ' ')
		return
	}
	var buf [utf8.UTFMax]byte
	for _, b := range buf[:utf8.EncodeRune(buf[:], r)] {
		f.put(at, b)
	}
}

// put appends a byte that belongs to the character at byte at of the original.
func (f *folded) put(at int32, b byte) {
	f.text = append(f.text, b)
	f.at = append(f.at, at)
}

// putFraction adds ½ as 1/2, and 1½ as 1-1/2. s is the fraction in ASCII.
func (f *folded) putFraction(at int32, s string) {
	if n := len(f.text); n > 0 && isDigit(f.text[n-1]) {
		f.put(at, '-')
	}
	for i := range len(s) {
		f.put(at, s[i])
	}
}

// putPower adds the superscript r after a letter as a digit: ft² as ft2. Elsewhere
// it becomes a space, because it is not part of the number.
func (f *folded) putPower(at int32, r rune) {
	n := len(f.text)
	switch {
	case n == 0 || !isLetter(f.text[n-1]):
		f.put(at, ' ')
	case r == '¹':
		f.put(at, '1')
	case r == '²':
		f.put(at, '2')
	default:
		f.put(at, '3')
	}
}

// fraction returns the ASCII form of a fraction character, such as 1/2, or "" for
// any other.
func fraction(r rune) string {
	switch r {
	case '½':
		return "1/2"
	case '¼':
		return "1/4"
	case '¾':
		return "3/4"
	case '⅓':
		return "1/3"
	case '⅔':
		return "2/3"
	case '⅛':
		return "1/8"
	case '⅜':
		return "3/8"
	case '⅝':
		return "5/8"
	case '⅞':
		return "7/8"
	case '⅕':
		return "1/5"
	case '⅖':
		return "2/5"
	case '⅗':
		return "3/5"
	case '⅘':
		return "4/5"
	case '⅙':
		return "1/6"
	case '⅚':
		return "5/6"
	}
	return ""
}

func isDigit(b byte) bool { return b >= '0' && b <= '9' }

// isLetter reports whether a byte of folded text is part of a letter. Bytes beyond
// ASCII belong to letters of other scripts.
func isLetter(b byte) bool { return b >= 'a' && b <= 'z' || b >= utf8.RuneSelf }
