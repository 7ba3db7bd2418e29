// Package readability grades how hard a text is to read: words a sentence and
// syllables a word, put into the formula that its language has.
package readability

import "strings"

// Limits of a page that a crew reads in gloves and glare.
const (
	// MaxGrade is the highest US school grade of an English page. Of 103
	// safety documents scored by Sinyai (2018) a third lay above it.
	MaxGrade = 8
	// MinPerspicuity is the lowest index of a Spanish page: the edge between
	// "normal" and "somewhat hard" on the scale of Barrio-Cantalejo (2008).
	MinPerspicuity = 55
	// MaxWords is the longest sentence in words, as GOV.UK's guide has it.
	MaxWords = 25
	// enough words that a grade means something.
	enough = 60
)

// Score is the count of a text and its grade.
type Score struct {
	Sentences, Words, Syllables int
	// Formula names what Value is; empty when the language has no formula
	// here or the text is too short for one.
	Formula string
	// Value is a school grade (higher is harder) or an index (lower is
	// harder), by the formula.
	Value float64
	// Hard is whether Value is past Limit.
	Hard  bool
	Limit float64
}

// Measure scores blocks of running text in a language. Numbers and names
// (capitals within a sentence) are left out of the count.
func Measure(lang string, blocks []string) Score {
	base, _, _ := strings.Cut(lang, "-")
	count := syllables[base]
	var s Score
	for _, b := range blocks {
		for _, sentence := range Sentences(b) {
			words := 0
			for _, w := range plainWords(sentence) {
				words++
				if count != nil {
					s.Syllables += count(w)
				}
			}
			if words > 0 {
				s.Sentences++
				s.Words += words
			}
		}
	}
	if s.Words < enough {
		return s
	}
	perSentence := float64(s.Words) / float64(s.Sentences)
	perWord := float64(s.Syllables) / float64(s.Words)
	switch base {
	case "en":
		s.Formula, s.Value, s.Limit = "Flesch-Kincaid grade", FleschKincaid(perSentence, perWord), MaxGrade
		s.Hard = s.Value > s.Limit
	case "es":
		s.Formula, s.Value, s.Limit = "Szigriszt-Pazos index", SzigrisztPazos(perSentence, perWord), MinPerspicuity
		s.Hard = s.Value < s.Limit
	}
	return s
}

// FleschKincaid is the US school grade of an English text: 0.39 words a
// sentence + 11.8 syllables a word - 15.59 (Kincaid, Fishburne, Rogers and
// Chissom, Research Branch Report 8-75, 1975).
func FleschKincaid(wordsPerSentence, syllablesPerWord float64) float64 {
	return float64(0.39*wordsPerSentence) + float64(11.8*syllablesPerWord) - 15.59
}

// SzigrisztPazos is the perspicuity of a Spanish text: 206.835 - 62.3
// syllables a word - words a sentence (Szigriszt Pazos, doctoral thesis,
// Universidad Complutense de Madrid, 1993). On the scale of Barrio-Cantalejo
// et al. (2008) 55 to 65 is normal, 65 to 80 fairly easy.
func SzigrisztPazos(wordsPerSentence, syllablesPerWord float64) float64 {
	return 206.835 - float64(62.3*syllablesPerWord) - wordsPerSentence
}
