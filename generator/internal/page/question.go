package page

import (
	"hash/fnv"
	"strconv"
)

// Question is one practice question, of one of four kinds: a choice (which may
// show a picture), an order of steps, a number that a calculator works out, or
// an open question with its answer in words.
type Question struct {
	Ask     string
	Choices []string
	Answer  int      // index into Choices from 0; -1 without choices
	Words   string   // the answer to an open question
	Order   []string // the steps in their right order
	Number  *Number  // a number with fresh inputs each time
	Picture string   // file in content/pictures
	Alt     string   // what the picture shows
	Why     string
	See     string // slug of the page that explains; may be empty
	Line    int
	Lines   map[string]int // of each key
}

// Number is a question that a calculator asks and answers.
type Number struct {
	Calculator string
	Vary       []string // paths of the inputs that take fresh values
	Set        []Input  // fixed inputs
	Answer     string   // ID of the output asked for
	Tolerance  string   // "2 %", or an amount with its unit
}

// Mark names what a question asks, so that a reader's answers are kept as long
// as the question stays the same: the short hash of its text.
func (q Question) Mark() string {
	h := fnv.New32a()
	h.Write([]byte(q.Ask))
	return strconv.FormatUint(uint64(h.Sum32()), 36)
}

// Questions are all practice questions of a page, block after block.
func (p *Page) Questions() []Question {
	var all []Question
	for _, place := range p.Places {
		all = append(all, place.Questions...)
	}
	return all
}
