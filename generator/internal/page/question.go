package page

import (
	"hash/fnv"
	"slices"
	"strconv"
)

// Question is one practice question, of one of four kinds: a choice (with a
// picture or without), an order of steps, a number that a calculator computes, or
// an open question with its answer in words.
type Question struct {
	Ask     string
	Choices []string
	Ordered bool     // the choices have an order of their own, such as amounts, and are never shuffled
	Answer  int      // index into Choices from 0; -1 without choices
	Words   string   // the answer to an open question
	Order   []string // the steps in their right order
	Number  *Number  // a number, with new inputs each time
	Picture string   // file in content/pictures
	Alt     string   // what the picture shows
	Why     string
	See     string // slug of the page that explains; may be empty
	Line    int
	Lines   map[string]int // of each key
}

// Number is a question whose inputs and answer come from a calculator.
type Number struct {
	Calculator string
	Vary       []string // paths of the inputs that get new values each time
	Set        []Input  // fixed inputs
	Answer     string   // ID of the output asked for
	Tolerance  string   // "2 %", or an amount with its unit
}

// Mark returns a short hash of the text of the question. A reader's stored answers
// are valid while the mark is the same.
func (q Question) Mark() string {
	h := fnv.New32a()
	h.Write([]byte(q.Ask))
	return strconv.FormatUint(uint64(h.Sum32()), 36)
}

// QuestionSeed returns the seed of what is random on the printed page in question nr,
// from 1, of the page slug. It is the same in every language.
func QuestionSeed(slug string, nr int) uint64 {
	h := fnv.New64a()
	h.Write([]byte(slug + "." + strconv.Itoa(nr)))
	return h.Sum64()
}

// Arranged returns the choices in the order of the printed page, shuffled by seed
// unless they are Ordered, and the number of the right one, from 1. It returns nil
// and 0 without choices.
func (q Question) Arranged(seed uint64) (choices []string, right int) {
	choices, at := slices.Clone(q.Choices), q.Answer
	if !q.Ordered {
		seed = mixed(seed)
		for i := len(choices) - 1; i > 0; i-- {
			k := int(seed % uint64(i+1))
			seed /= uint64(i + 1)
			choices[i], choices[k] = choices[k], choices[i]
			switch at {
			case i:
				at = k
			case k:
				at = i
			}
		}
	}
	return choices, at + 1
}

// mixed spreads each bit of a seed over all bits of the result, as the generator
// SplitMix64 does (Steele, Lea and Flood, 2014). Without it the remainders of the
// seeds of one page's questions are alike.
func mixed(seed uint64) uint64 {
	seed = (seed ^ seed>>30) * 0xbf58476d1ce4e5b9
	seed = (seed ^ seed>>27) * 0x94d049bb133111eb
	return seed ^ seed>>31
}

// Questions returns all practice questions of a page, in the order of the blocks.
func (p *Page) Questions() []Question {
	var all []Question
	for _, place := range p.Places {
		all = append(all, place.Questions...)
	}
	return all
}
