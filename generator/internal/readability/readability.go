// Package readability grades how hard a text is to read, from the words per
// sentence and the syllables per word, with the formula of its language.
package readability

import "strings"

// Limits of a page.
const (
	// MaxGrade is the highest US school grade of an English page. A third of the
	// 103 safety documents that Sinyai (2018) scored exceed it.
	MaxGrade = 8
	// MinPerspicuity is the lowest index of a Spanish page: the edge between
	// "normal" and "somewhat hard" on the scale of Barrio-Cantalejo (2008).
	MinPerspicuity = 55
	// MaxWords is the longest sentence, in words (GOV.UK content guide).
	MaxWords = 25
	// minWords is the shortest text that is graded, in words.
	minWords = 60
)

// Score holds the counts of a text and its grade.
type Score struct {
	Sentences, Words, Syllables int
	// Formula is the name of the formula of Value. It is empty where the language
	// has no formula here, or the text is too short.
	Formula string
	// Value is a school grade (higher is harder) or an index (lower is harder),
	// depending on the formula.
	Value float64
	// Hard reports whether the text is harder than Limit.
	Hard  bool
	Limit float64
}

// Measure scores blocks of running text in a language. It does not count numbers
// and names, which are capitalized words within a sentence. Formula is "", and
// Value, Limit and Hard are zero, for a text of fewer than minWords words or in a
// language without a formula.
func Measure(lang string, blocks []string) Score {
	base, _, _ := strings.Cut(lang, "-")
	count := syllables[base]
	var s Score
	for _, b := range blocks {
		for _, sentence := range Sentences(b) {
			words := 0
			for _, w := range gradedWords(sentence) {
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
	if s.Words < minWords {
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

// FleschKincaid returns the US school grade of an English text: 0.39 words a
// sentence + 11.8 syllables a word - 15.59 (Kincaid, Fishburne, Rogers and
// Chissom, Research Branch Report 8-75, 1975).
func FleschKincaid(wordsPerSentence, syllablesPerWord float64) float64 {
	return float64(0.39*wordsPerSentence) + float64(11.8*syllablesPerWord) - 15.59
}

// SzigrisztPazos returns the perspicuity of a Spanish text: 206.835 - 62.3
// syllables a word - words a sentence (Szigriszt Pazos, doctoral thesis,
// Universidad Complutense de Madrid, 1993). On the scale of Barrio-Cantalejo
// et al. (2008) 55 to 65 is normal, 65 to 80 fairly easy.
func SzigrisztPazos(wordsPerSentence, syllablesPerWord float64) float64 {
	return 206.835 - float64(62.3*syllablesPerWord) - wordsPerSentence
}
