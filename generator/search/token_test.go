package search

import (
	"strings"
	"testing"
)

func TestTokens(t *testing.T) {
	for _, c := range []struct{ text, want string }{
		// letters
		{"Wall FORM", "wall form"},
		{"Hormigón añejo, pingüino", "hormigon anejo pinguino"},
		{"Hormigo\u0301n an\u0303ejo", "hormigon anejo"}, // accents as separate characters
		{"stay-in-place", "stay in place"},
		{"the foreman's hose; don't", "the foreman hose dont"},
		{"the crews’ boots", "the crews boots"},
		{"soft\u00adhyphen zero\u200bwidth", "softhyphen zerowidth"},
		{"ρ·g·h", "ρ g h"},
		{"", ""},
		{"— … •", ""},
		// trade marks
		{"f'c f′c f’c fc F'C", "fc fc fc fc fc"},
		{"w/c ratio, w/cm", "w/c ratio w/cm"},
		{"and/or", "and or"},
		{"#5 bars, #5s, No. 5, no.5, nº 5, n.º 5, Núm. 5", "#5 bars #5 #5 #5 #5 #5 #5"},
		{"there is no 5", "there is no 5"},
		{"10M 15M bars", "10m 15m bars"},
		{"10 m long", "10 m long"},
		{"C30/37", "c30/37"},
		{"2x6 2×6 2 x 6 2 × 6 2X6 2x6s", "2x6 2x6 2x6 2x6 2x6 2x6"},
		{"10' x 12'", "10ft 12ft"},
		{"10'x12'", "10ft 12ft"},
		// numbers
		{"3/8 1-1/2 1 1/2 1½ 1 ½ ½ 1⁄2", "3/8 1-1/2 1-1/2 1-1/2 1-1/2 1/2 1/2"},
		{"8 3/4 and 3-4 days", "8-3/4 and 3 4 days"},
		{"0.45 0,45 .45", "0.45 0.45 0.45"},
		{"1,500 1500 12,000 4\u00a0000 1,50", "1500 1500 12000 4000 1.50"},
		{"It is 8. Then 9.", "it is 8 then 9"},
		{"yd³ m2 ft²", "yd3 m2 ft2"},
		// units that stay with the number
		{`4" 4″ 4 in. 4-in 4-inch 4 inches 4in 4''`, "4in 4in 4in 4in 4in 4in 4in 4in"},
		{`10' 6-1/2"`, "10ft 6-1/2in"},
		{"10 ft, 10 feet; 3 pies", "10ft 10ft 3ft"},
		{"70°F 70 °F 70F 70 F 20 ° C 20 ºC", "70f 70f 70f 70f 20c 20c"},
		{"45° bend", "45 bend"},
		{"300 mm 300mm", "300mm 300mm"},
		{"600 psf", "600 psf"},
		{"70 feeder", "70 feeder"},
		{"the 1990's", "the 1990"},
	} {
		if got := strings.Join(wordsOf(c.text), " "); got != c.want {
			t.Errorf("%q\n got %q\nwant %q", c.text, got, c.want)
		}
	}
}

// TestTokenPlaces: the offsets of each word include its accents and marks.
func TestTokenPlaces(t *testing.T) {
	text := `Set 1½" of hormigo` + "\u0301" + `n at 70 °F on No. 5, the foreman's f′c`
	want := []string{"Set", `1½"`, "of", "hormigo\u0301n", "at", "70 °F", "on", "No. 5", "the", "foreman", "f′c"}
	tokens := Tokens(text)
	if len(tokens) != len(want) {
		t.Fatalf("%d words, want %d: %v", len(tokens), len(want), tokens)
	}
	for i, tok := range tokens {
		if got := text[tok.Start:tok.End]; got != want[i] {
			t.Errorf("word %d: %q, want %q", i, got, want[i])
		}
	}
}

func TestLatinTables(t *testing.T) {
	if len(latin1) != 64 || len(latinA) != 128 {
		t.Fatalf("tables of %d and %d letters", len(latin1), len(latinA))
	}
	for from, to := range map[string]string{"ÁÉÍÓÚÜÑ": "aeiouun", "áéíóúüñ": "aeiouun", "ŠŽąęłńśź": "szaelnsz",
		"Øøß": "oos"} {
		if got := string(fold(from).text); got != to {
			t.Errorf("%s: %s, want %s", from, got, to)
		}
	}
}
