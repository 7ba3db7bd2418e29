package search

import "unicode/utf8"

// Marks that folding leaves in place of characters with a meaning beside a
// number. They are control characters, which folding removes from the text
// itself, so they cannot be mistaken.
const (
	degree = '\x02' // ° and º
	times  = '\x03' // ×
	narrow = '\x04' // a space that does not break: between groups of three digits
)

// folded is a text in the few characters the analyser reads: lower-case
// letters without accents, digits, ASCII punctuation, the marks above.
type folded struct {
	text []byte
	at   []int32 // at[i]: where in the original the character behind text[i] begins; one more entry for the end
}

// latin1 and latinA give the plain letters of U+00C0–U+00FF and
// U+0100–U+017F; a space means: no letter. Æ, Œ and ß are written with one
// letter, which is enough for words that both sides fold alike.
const (
	latin1 = "aaaaaaaceeeeiiiidnooooo ouuuuypsaaaaaaaceeeeiiiidnooooo ouuuuypy"
	latinA = "aaaaaaccccccccddddeeeeeeeeeegggggggghhhhiiiiiiiiiiiijjkkkllllllllll" +
		"nnnnnnnnnoooooooorrrrrrssssssssttttttuuuuuuuuuuuuwwyyyzzzzzzs"
)

// fold rewrites a text.
func fold(text string) folded {
	var f folded
	f.fold(text)
	return f
}

// fold rewrites a text in place of the last one, remembering where each piece
// came from.
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
		// Combining accents, invisible joiners, the soft hyphen: nothing.
	default:
		f.addRare(at, r)
	}
}

// addRare folds what is neither ASCII, Latin nor a fraction.
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

// addLetter keeps letters of other scripts, Greek and Cyrillic in lower case.
// It knows them by their blocks, which is exact enough for a word to be found
// again, and spares the module the tables of package unicode.
func (f *folded) addLetter(at int32, r rune) {
	switch {
	case r >= 'Α' && r <= 'Ω' || r >= 'А' && r <= 'Я':
		r += 'α' - 'Α'
	case r == '\u2126':
		r = 'ω' // the sign for ohm
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

func (f *folded) put(at int32, b byte) {
	f.text = append(f.text, b)
	f.at = append(f.at, at)
}

// putFraction writes ½ as 1/2, and 1½ as 1-1/2.
func (f *folded) putFraction(at int32, s string) {
	if n := len(f.text); n > 0 && isDigit(f.text[n-1]) {
		f.put(at, '-')
	}
	for i := range len(s) {
		f.put(at, s[i])
	}
}

// putPower writes ft² as ft2; behind a digit a raised figure is no part of
// the number.
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

// fraction gives the figures of a fraction character, or nothing.
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

// isLetter reports whether a byte of folded text is part of a letter; bytes beyond ASCII belong to letters
// of other scripts.
func isLetter(b byte) bool { return b >= 'a' && b <= 'z' || b >= utf8.RuneSelf }
