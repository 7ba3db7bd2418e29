package readability

import (
	"math"
	"slices"
	"strings"
	"testing"
)

// The counts are those of North American dictionaries (from memory).
func TestEnglish(t *testing.T) {
	for want, words := range map[int]string{
		1: "the wall pour poured braced placed clean fire hour form forms shows lines stiff through strength pushed " +
			"edge tied guide ledge once eye gauge cause cured leaned stage whole screw seal " +
			"sealed type types he'll wall's floor lead bridge",
		2: "concrete corner window before after water ladder panel foreman table needle braces boxes edges inches " +
			"placing wider safety sideways lifted corners hammer signal nozzle handle bubbles drying being moisture " +
			"plumber quiet measure measured loosen steady even movement useful couldn't level fluid people create " +
			"bottle",
		3: "vibrator vertical direction together continue carefully radius opening however serious area idea " +
			"equipment engineer gravity created reinforce various period",
		4: "operation horizontal material temperature variation diagonal diameter necessary reinforcement interior " +
			"experience",
		5: "consolidation evaporation",
	} {
		for _, w := range strings.Fields(words) {
			if got := English(w); got != want {
				t.Errorf("%s has %d syllables, want %d", w, got, want)
			}
		}
	}
}

func TestExceptions(t *testing.T) {
	if n := len(exceptions()); n < 100 {
		t.Errorf("only %d exceptions were read", n)
	}
	for _, bad := range []string{"fire 1", "fire\t", "fire\t0", "Fire\t1", "fire\t1\nfire\t1", "fire\tone"} {
		if !panics(func() { parseExceptions(bad) }) {
			t.Errorf("%q was accepted", bad)
		}
	}
}

func panics(f func()) (did bool) {
	defer func() { did = recover() != nil }()
	f()
	return false
}

// Counts follow the rules of the Ortografía of the Real Academia Española
// (2010), chapter on diphthongs and hiatus (from memory).
func TestSpanish(t *testing.T) {
	for want, words := range map[int]string{
		1: "y hay rey muy con bien pie",
		2: "muro agua ciudad país guía huevo hielo cuando viento oyó mayo leer ahí quita",
		3: "hormigón vibración cuadrilla puntales oído esquina pingüino manguera peligro concreto",
		4: "aéreo horizontal seguridad",
	} {
		for _, w := range strings.Fields(words) {
			if got := Spanish(w); got != want {
				t.Errorf("%s has %d syllables, want %d", w, got, want)
			}
		}
	}
}

// The worked example of the encyclopedia's article on the formula (from
// memory): 13 words, 24 syllables, grade 11.3.
func TestFleschKincaid(t *testing.T) {
	const text = "The Australian platypus is seemingly a hybrid of a mammal and reptilian creature."
	syllables := 0
	for _, w := range strings.Fields(strings.ToLower(strings.Trim(text, "."))) {
		syllables += English(w)
	}
	if n := Words(text); n != 13 || syllables != 24 {
		t.Errorf("%d words and %d syllables, want 13 and 24", n, syllables)
	}
	if got := FleschKincaid(13, 24./13); math.Abs(got-11.3) > 0.05 {
		t.Errorf("grade %.2f, want 11.3", got)
	}
}

// Values computed by hand from the formula.
func TestSzigrisztPazos(t *testing.T) {
	if got := SzigrisztPazos(1, 1); math.Abs(got-143.535) > 1e-9 {
		t.Errorf("got %g", got)
	}
	if got := SzigrisztPazos(15, 2); math.Abs(got-67.235) > 1e-9 {
		t.Errorf("got %g", got)
	}
}

func TestSentences(t *testing.T) {
	for text, want := range map[string][]string{
		"One. Two! Three? Four":                     {"One.", "Two!", "Three?", "Four"},
		"Keep 0. Then go.":                          {"Keep 0.", "Then go."},
		"About 0 wide, e.g. A wall. See p. 0.":      {"About 0 wide, e.g. A wall.", "See p. 0."},
		`He says "go." Then pour. (Not now.) Wait.`: {`He says "go."`, "Then pour.", "(Not now.)", "Wait."},
		"¿Listo? Sí. ¡Vierta!":                      {"¿Listo?", "Sí.", "¡Vierta!"},
		"Version 1.2 of it. 3 more.":                {"Version 1.2 of it.", "3 more."},
		"":                                          nil,
		"...":                                       {"..."},
	} {
		if got := Sentences(text); !slices.Equal(got, want) {
			t.Errorf("%q gives %q, want %q", text, got, want)
		}
	}
}

func TestWords(t *testing.T) {
	for text, want := range map[string]int{"One two-by three – 0 4.": 5, "": 0, "– …": 0, "don't 2x4": 2} {
		if got := Words(text); got != want {
			t.Errorf("%q has %d words, want %d", text, got, want)
		}
	}
	graded := []string{"the", "wall", "of", "cement", "high", "isn't"}
	if got := gradedWords("The wall of Portland cement, 0 high, isn't 2x4."); !slices.Equal(got, graded) {
		t.Errorf("got %q", got)
	}
}

func TestMeasure(t *testing.T) {
	easy := strings.Repeat("Stop the pump. Look at the wall. Set the brace. ", 10)
	hard := strings.Repeat("Considerable operational considerations necessitate particularly attentive "+
		"consolidation of cementitious materials throughout reinforced assemblies. ", 6)
	facil := strings.Repeat("Pare la bomba. Mire el muro. Ponga el puntal. ", 10)
	dificil := strings.Repeat("Las consideraciones operacionales requieren particularmente la consolidación "+
		"cuidadosa de los materiales cementicios en construcciones reforzadas. ", 6)
	for _, c := range []struct {
		lang, text, formula string
		hard                bool
	}{
		{"en", easy, "Flesch-Kincaid grade", false}, {"en", hard, "Flesch-Kincaid grade", true},
		{"en-ca", hard, "Flesch-Kincaid grade", true},
		{"es", facil, "Szigriszt-Pazos index", false}, {"es", dificil, "Szigriszt-Pazos index", true},
		{"fr", hard, "", false}, {"en", "Too short to grade.", "", false},
	} {
		if s := Measure(c.lang, []string{c.text}); s.Formula != c.formula || s.Hard != c.hard {
			t.Errorf("%s %.30q: %+v", c.lang, c.text, s)
		}
	}
}
