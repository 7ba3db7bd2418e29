package page

import (
	"slices"
	"strconv"
	"testing"
)

// The right choice keeps its text, and no choice is lost, for any seed and number of choices.
func TestArrangedKeepsTheRightChoice(t *testing.T) {
	all := []string{"one", "two", "three", "four"}
	for n := 2; n <= len(all); n++ {
		for answer := range n {
			q := Question{Choices: slices.Clone(all[:n]), Answer: answer}
			for seed := range uint64(100) {
				got, right := q.Arranged(seed)
				if right < 1 || right > n || got[right-1] != all[answer] {
					t.Fatalf("%d choices, answer %d, seed %d: %v, right %d", n, answer, seed, got, right)
				}
				slices.Sort(got)
				if want := slices.Sorted(slices.Values(all[:n])); !slices.Equal(got, want) {
					t.Fatalf("seed %d: %v, want %v in some order", seed, got, want)
				}
			}
			if !slices.Equal(q.Choices, all[:n]) {
				t.Fatalf("the choices of the question are changed to %v", q.Choices)
			}
		}
	}
}

func TestArrangedWithoutShuffle(t *testing.T) {
	q := Question{Choices: []string{"4 ft", "8 ft", "12 ft"}, Ordered: true, Answer: 2}
	for seed := range uint64(20) {
		if got, right := q.Arranged(seed); !slices.Equal(got, q.Choices) || right != 3 {
			t.Errorf("seed %d: %v, right %d", seed, got, right)
		}
	}
	if got, right := (Question{Answer: -1, Words: "12 ft"}).Arranged(7); len(got) > 0 || right != 0 {
		t.Errorf("without choices: %v, right %d", got, right)
	}
}

// The seeds of the questions of a manual spread the right choice evenly over the places.
func TestArrangedSpreads(t *testing.T) {
	q := Question{Choices: []string{"one", "two", "three"}, Answer: 1}
	places := map[int]int{}
	orders := map[string]int{}
	const pages, each = 200, 5
	for i := range pages {
		for nr := 1; nr <= each; nr++ {
			choices, right := q.Arranged(QuestionSeed("lesson-"+strconv.Itoa(i), nr))
			places[right]++
			orders[choices[0]+choices[1]]++
		}
	}
	for right := 1; right <= 3; right++ {
		if share := 100 * places[right] / (pages * each); share < 28 || share > 38 {
			t.Errorf("place %d has %d %% of the right choices", right, share)
		}
	}
	for order, n := range orders {
		if share := 100 * n / (pages * each); share < 12 || share > 22 {
			t.Errorf("the order that begins with %s has %d %%, want about a sixth", order, share)
		}
	}
	if len(orders) != 6 {
		t.Errorf("%d orders of three choices, want 6", len(orders))
	}
}
