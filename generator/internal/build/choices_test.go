package build

import (
	"math/rand/v2"
	"os"
	"regexp"
	"strings"
	"testing"
	"unicode/utf8"

	"coursebook/generator/internal/fault"
	"coursebook/generator/internal/markdown"
	"coursebook/generator/internal/page"
)

// What a hand who knows nothing may learn from the shape of a question. With three choices
// chance alone gives a third.
const (
	leastInPlace, mostInPlace = 28, 38 // % of the right choices at each place
	mostByLength              = 40     // % in which the right choice is the one longest or shortest
	showings                  = 1000
)

// choiceQuestion is a question of the manual with choices.
type choiceQuestion struct {
	page.Question
	path string
	seed uint64
	twin *page.Question // the same question in the first language
}

// choiceQuestions returns all questions with choices of each language, by its code.
func choiceQuestions(t *testing.T) map[string][]choiceQuestion {
	t.Helper()
	options := Options{Content: "../../../content", Theme: os.DirFS("../../../themes/plumb")}
	b := read(options, markdown.Parse, &fault.List{})
	if b.Site == nil {
		t.Fatal("the manual was not read")
	}
	all := map[string][]choiceQuestion{}
	for _, p := range b.Site.Pages {
		twins := b.Site.Page(b.Site.Languages[0].Code, p.Slug).Questions()
		for i, q := range p.Questions() {
			if len(q.Choices) > 0 {
				all[p.Language.Code] = append(all[p.Language.Code],
					choiceQuestion{q, p.File, page.QuestionSeed(p.Slug, i+1), &twins[i]})
			}
		}
	}
	if len(all) < 2 {
		t.Fatalf("%d languages with questions", len(all))
	}
	return all
}

// evasive are the first words of a choice that is not a decision.
var evasive = regexp.MustCompile(`^(Yes|No|Sí)(,|$)|^(Yes|Sí) `)

// TestChoicesAreDecisions checks that each question has three choices, none of them yes or no,
// and that the languages agree on the right one.
func TestChoicesAreDecisions(t *testing.T) {
	for _, list := range choiceQuestions(t) {
		for _, q := range list {
			if len(q.Choices) != 3 {
				t.Errorf("%s:%d: %d choices, want 3", q.path, q.Line, len(q.Choices))
			}
			for _, c := range q.Choices {
				if evasive.MatchString(c) {
					t.Errorf("%s:%d: %q: write what the reader does", q.path, q.Line, c)
				}
			}
			if q.Answer != q.twin.Answer || q.Ordered != q.twin.Ordered {
				t.Errorf("%s:%d: the number of the right choice, or ordered, is not that of the twin", q.path, q.Line)
			}
		}
	}
}

// TestRightChoiceHasNoShape checks that neither the length nor the place of a choice shows that
// it is the right one: on the printed pages, and in showings drawn as the script does.
func TestRightChoiceHasNoShape(t *testing.T) {
	for lang, list := range choiceQuestions(t) {
		longest, shortest := 0, 0
		printed, shown := make([]int, 3), make([]int, 3)
		for _, q := range list {
			more, less := compareLengths(q.Choices, q.Answer)
			if more == len(q.Choices)-1 {
				longest++
			}
			if less == len(q.Choices)-1 {
				shortest++
			}
			if _, right := q.Arranged(q.seed); right <= len(printed) {
				printed[right-1]++
			}
		}
		random := rand.New(rand.NewPCG(1, 2))
		for range showings {
			q := list[random.IntN(len(list))]
			at := q.Answer
			if !q.Ordered {
				at = random.Perm(len(q.Choices))[at]
			}
			if at < len(shown) {
				shown[at]++
			}
		}
		for what, n := range map[string]int{"longest": longest, "shortest": shortest} {
			if share := 100 * float64(n) / float64(len(list)); share > mostByLength {
				t.Errorf("%s: the right choice is the %s in %.1f %% of %d questions", lang, what, share, len(list))
			}
		}
		t.Logf("%s: %d questions with choices, the right one longest in %d, shortest in %d; by place "+
			"printed %v, in %d showings %v", lang, len(list), longest, shortest, printed, showings, shown)
		for i := range printed {
			inPlace(t, lang, "on the printed pages", i+1, printed[i], len(list))
			inPlace(t, lang, "in the showings", i+1, shown[i], showings)
		}
	}
}

// inPlace reports a place that has too many or too few of the right choices.
func inPlace(t *testing.T, lang, where string, place, n, all int) {
	t.Helper()
	if share := 100 * float64(n) / float64(all); share < leastInPlace || share > mostInPlace {
		t.Errorf("%s: %s the right choice is at place %d in %.1f %%", lang, where, place, share)
	}
}

// compareLengths returns how many of the other choices are shorter, and how many longer.
func compareLengths(choices []string, answer int) (shorter, longer int) {
	n := utf8.RuneCountInString(strings.TrimSpace(choices[answer]))
	for i, c := range choices {
		switch m := utf8.RuneCountInString(strings.TrimSpace(c)); {
		case i == answer:
		case m < n:
			shorter++
		case m > n:
			longer++
		}
	}
	return shorter, longer
}
