package page

import (
	"hash/fnv"
	"strconv"
)

// Question is one practice question, of one of four kinds: a choice (with a
// picture or without), an order of steps, a number that a calculator computes, or
// an open question with its answer in words.
type Question struct {
	Ask     string
	Choices []string
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

// Questions returns all practice questions of a page, in the order of the blocks.
func (p *Page) Questions() []Question {
	var all []Question
	for _, place := range p.Places {
		all = append(all, place.Questions...)
	}
	return all
}
