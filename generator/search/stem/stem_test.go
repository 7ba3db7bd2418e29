package stem

import "testing"

// TestSample: words of the sample vocabularies that the Snowball project publishes
// with its English and Spanish algorithms (snowballstem.org); from memory.
func TestSample(t *testing.T) {
	samples := map[string]map[string]string{
		"en": {
			"consign": "consign", "consigned": "consign", "consigning": "consign", "consignment": "consign",
			"consist": "consist", "consistency": "consist", "consistently": "consist", "consolation": "consol",
			"consolatory": "consolatori", "console": "consol", "consolingly": "consol", "conspicuous": "conspicu",
			"conspiracy": "conspiraci", "knack": "knack", "knees": "knee", "knightly": "knight",
			"knitting": "knit", "knives": "knive", "knocked": "knock", "knots": "knot", "knowledge": "knowledg",
		},
		"es": {
			"cheque": "chequ", "chica": "chic", "chicos": "chic", "chihuahua": "chihuahu", "chillar": "chill",
			"chimenea": "chimene", "chocolate": "chocolat", "torneado": "torn", "toreado": "tor",
			"torear": "tor", "torero": "torer", "tornillo": "tornill", "tortuga": "tortug", "tómbola": "tombol",
			"tonta": "tont",
		},
	}
	for lang, words := range samples {
		stem, ok := For(lang)
		if !ok {
			t.Fatalf("no stemmer for %s", lang)
		}
		for word, want := range words {
			if got := stem(word); got != want {
				t.Errorf("%s %s: %s, want %s", lang, word, got, want)
			}
		}
	}
}

// TestTrade: the forms of a trade word have the same stem.
func TestTrade(t *testing.T) {
	groups := map[string][][]string{
		"en": {
			{"pour", "pours", "poured", "pouring"},
			{"vibrate", "vibrated", "vibrating"},
			{"form", "forms"},
			{"brace", "bracing", "braces"},
		},
		"es": {
			{"hormigón", "hormigones"},
			{"vibrar", "vibrando", "vibrado"},
			{"armadura", "armaduras"},
			{"muro", "muros"},
		},
	}
	for lang, list := range groups {
		stem, _ := For(lang + "-US")
		for _, words := range list {
			for _, w := range words[1:] {
				if stem(w) != stem(words[0]) {
					t.Errorf("%s: %s gives %s, %s gives %s", lang, words[0], stem(words[0]), w, stem(w))
				}
			}
		}
	}
}

func TestUnknown(t *testing.T) {
	for _, lang := range []string{"", "fr", "eng"} {
		if stem, ok := For(lang); ok || stem("walls") != "walls" {
			t.Errorf("%q has a stemmer", lang)
		}
	}
}

// TestKeptApart: a noun of the trade has one stem in singular and plural, which is not
// that of the verb or noun that it looks like.
func TestKeptApart(t *testing.T) {
	stem, _ := For("es")
	for noun, other := range map[string]string{"pared": "parar", "paredes": "paramos", "hilada": "hilo",
		"hiladas": "hilos", "marco": "marca", "bota": "botar", "lentes": "lento", "pulgar": "pulgada", "rayo": "raya",
		"viga":  "vigilar",
		"vigía": "viga", "murió": "muro", "hombro": "hombre", "corto": "cortar", "junta": "junto"} {
		if stem(noun) == stem(other) {
			t.Errorf("%s and %s have the stem %s", noun, other, stem(noun))
		}
	}
	for _, pair := range [][2]string{{"pared", "paredes"}, {"hilada", "hiladas"}, {"viga", "vigas"}} {
		if stem(pair[0]) != stem(pair[1]) {
			t.Errorf("%s and %s have two stems", pair[0], pair[1])
		}
	}
}
