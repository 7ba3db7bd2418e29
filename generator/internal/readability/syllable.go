package readability

import (
	_ "embed" // for exceptions.tsv
	"fmt"
	"strconv"
	"strings"
	"sync"
)

// syllables counts the syllables of a lower-case word, by language.
var syllables = map[string]func(string) int{"en": English, "es": Spanish}

//go:embed exceptions.tsv
var exceptionsFile string

// exceptions holds the number of syllables of English words that the rules
// miscount.
var exceptions = sync.OnceValue(func() map[string]int { return parseExceptions(exceptionsFile) })

// parseExceptions reads lines of a lower-case word, a tab and a number of
// syllables, into counts by word. Empty lines and lines that start with # are
// skipped. It panics on any other line and on a repeated word, because the file is
// part of the program.
func parseExceptions(text string) map[string]int {
	counts := map[string]int{}
	for i, line := range strings.Split(text, "\n") {
		if line == "" || line[0] == '#' {
			continue
		}
		word, digits, _ := strings.Cut(line, "\t")
		n, err := strconv.Atoi(digits)
		if err != nil || n < 1 || word != strings.ToLower(word) || counts[word] > 0 {
			panic(fmt.Sprintf("exceptions.tsv:%d: want a new lower-case word, a tab and a number of syllables: %q",
				i+1, line))
		}
		counts[word] = n
	}
	return counts
}

// English returns an estimate, at least 1, of the syllables of a lower-case word:
// the groups of vowels, less silent ones, with a list of exceptions. On running
// text the total is within a few per cent.
func English(word string) int {
	word = strings.ReplaceAll(word, "’", "'")
	if n, ok := exceptions()[word]; ok {
		return n
	}
	for _, end := range []string{"'s", "'ll", "'re", "'ve", "'d"} {
		if stem, ok := strings.CutSuffix(word, end); ok {
			return English(stem)
		}
	}
	n, vowel := 0, false
	for i := 0; i < len(word); i++ {
		v := strings.IndexByte("aeiou", word[i]) >= 0 || word[i] == 'y' && i > 0
		if v && (!vowel || breaks(word, i)) {
			n++
		}
		vowel = v
	}
	n -= silent(word)
	return max(n, 1)
}

// breaks reports whether the vowel at byte i, which follows another, begins a
// syllable: i-a in material, i-o in radio but not in -tion and -cious, y-i in
// drying.
func breaks(word string, i int) bool {
	pair, rest := word[i-1:i+1], word[i+1:]
	switch pair {
	case "ia":
		if word[max(i-2, 0)] == 'l' && rest == "n" {
			return false // civil-ian
		}
		return !strings.HasPrefix(rest, "l") || i < 2 || strings.IndexByte("ctg", word[i-2]) < 0
	case "io":
		return i < 2 || strings.IndexByte("ctsgxn", word[i-2]) < 0
	case "iu", "eo":
		return pair == "iu" ||
			rest != "n" && rest != "ns" && !strings.HasPrefix(rest, "u") && !strings.HasPrefix(rest, "ple")
	case "yi":
		return true
	case "ei", "oi", "ui":
		return pair != "oi" && rest == "ng"
	case "ie":
		return strings.HasSuffix(word, "iest") && rest == "st" || rest == "r" && len(word) > 4 || rest == "ty" ||
			rest == "nt"
	}
	return false
}

// silent returns the number of silent vowels at the end of a word, 0 or 1.
func silent(word string) int {
	switch {
	case len(word) < 3:
		return 0
	case strings.HasSuffix(word, "ely") && len(word) > 4, strings.HasSuffix(word, "eful"),
		strings.HasSuffix(word, "eless"), strings.HasSuffix(word, "ement") && len(word) > 6:
		return 1
	case strings.HasSuffix(word, "le") && isConsonant(word[len(word)-3]),
		strings.HasSuffix(word, "les") && len(word) > 3 && isConsonant(word[len(word)-4]):
		return 0 // ta-ble
	case strings.HasSuffix(word, "e") && isConsonant(word[len(word)-2]),
		strings.HasSuffix(word, "ue") && strings.HasSuffix(word, "que"):
		return 1
	case strings.HasSuffix(word, "es"):
		before := word[:len(word)-2]
		if isConsonant(before[len(before)-1]) && !sibilant(before) {
			return 1 // lines, but box-es
		}
	case strings.HasSuffix(word, "ed"):
		before := word[:len(word)-2]
		last := before[len(before)-1]
		if isConsonant(last) && last != 't' && last != 'd' &&
			!(last == 'l' && len(before) > 2 && isConsonant(before[len(before)-2]) && before[len(before)-2] != 'l') {
			return 1 // placed, but pour-ed is one, wait-ed two
		}
	}
	return 0
}

// sibilant reports whether s ends with a letter or pair after which -es is a
// syllable: s, x, z, c, g, ch, sh.
func sibilant(s string) bool {
	for _, end := range []string{"s", "x", "z", "ch", "sh", "c", "g"} {
		if strings.HasSuffix(s, end) {
			return true
		}
	}
	return false
}

// isConsonant reports whether c is one of a-z other than a, e, i, o, u and y.
func isConsonant(c byte) bool { return 'a' <= c && c <= 'z' && strings.IndexByte("aeiouy", c) < 0 }

// Spanish returns the syllables of a lower-case word, at least 1, by the rules of
// spelling: one for each vowel, but an unstressed i or u beside another vowel
// forms a diphthong with it. The u of gue, gui, que and qui is silent.
func Spanish(word string) int {
	word = silentU.Replace(word)
	n := 0
	var before rune
	for _, r := range word {
		if !strings.ContainsRune(spanishVowels, r) {
			before = 0
			if r == 'y' { // final y is a vowel: hay, muy
				before = 'y'
			}
			continue
		}
		if before == 0 || before == 'y' || !weak(before) && !weak(r) {
			n++
		}
		before = r
	}
	if strings.HasSuffix(word, "y") && n == 0 {
		n = 1 // the word y
	}
	return max(n, 1)
}

const spanishVowels = "aeiouáéíóúü"

var silentU = strings.NewReplacer("gue", "ge", "gui", "gi", "gué", "gé", "guí", "gí", "que", "qe", "qui", "qi", "qué",
	"qé", "quí", "qí")

// weak reports whether a vowel can be part of a diphthong with any other: i and u
// without an accent.
func weak(r rune) bool { return r == 'i' || r == 'u' || r == 'ü' }
