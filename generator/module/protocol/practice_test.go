package protocol

import (
	"math"
	"slices"
	"strconv"
	"strings"
	"testing"
)

func practice(t *testing.T, seed string, style ...string) []record {
	t.Helper()
	return askOK(t, New(catalog), "practice", []string{"calc", "tank"}, append([]string{"style"}, style...),
		[]string{"vary", "side"}, []string{"answer", "holds"}, []string{"tolerance", "2 %"},
		[]string{"set", "boxes", ""}, []string{"seed", seed})
}

// Inputs that vary come first and are marked. The entries of the case are complete.
func TestPractice(t *testing.T) {
	seen := map[string]bool{}
	for seed := range 20 {
		got := practice(t, strconv.Itoa(seed), "metric", "comma")
		given := named(got, "given")
		if len(given) != 2 || !strings.HasPrefix(given[0], "given|side|Side|") ||
			!strings.HasSuffix(given[0], " m|1|0") ||
			given[1] != "given|shape|Shape|cubic|0|1" {
			t.Fatalf("seed %d: %q", seed, given)
		}
		seen[given[0]] = true
		if want := []string{"asked|Holds|m³"}; !slices.Equal(named(got, "asked"), want) {
			t.Errorf("asked %q, want %q", named(got, "asked"), want)
		}
		if sets := named(got, "set"); len(sets) != 7 || !slices.Contains(sets, "set|boxes|") {
			t.Errorf("the case is %q", sets)
		}
	}
	if len(seen) < 5 {
		t.Errorf("only %d different numbers", len(seen))
	}
	if a, b := practice(t, "7", "us", "point"), practice(t, "7", "us", "point"); !slices.EqualFunc(a, b, slices.Equal) {
		t.Errorf("one seed gives %q and %q", a, b)
	}
}

// The right answer is the side cubed, computed here from the output of practice.
func TestJudge(t *testing.T) {
	got := practice(t, "3", "metric", "comma")
	given := named(got, "given")[0]
	text := strings.TrimSuffix(strings.TrimPrefix(given, "given|side|Side|"), " m|1|0")
	side, err := strconv.ParseFloat(strings.ReplaceAll(text, ",", "."), 64)
	if err != nil {
		t.Fatal(err)
	}
	right := math.Pow(side, 3)
	for _, c := range []struct {
		typed   string
		verdict string
	}{
		{strings.ReplaceAll(strconv.FormatFloat(right*1.015, 'f', 4, 64), ".", ","), "verdict|right|"},
		{strings.ReplaceAll(strconv.FormatFloat(right*1.05+0.02, 'f', 4, 64), ".", ","), "verdict|wrong|"},
		{"much", "verdict|unread|"},
		{"1.5", "verdict|unread|"},
	} {
		records := [][]string{
			{"calc", "tank"},
			{"style", "metric", "comma"},
			{"answer", "holds"},
			{"tolerance", "2 %"},
			{"typed", c.typed},
		}
		for _, r := range got {
			if r.at(0) == "set" {
				records = append(records, r)
			}
		}
		answer := askOK(t, New(catalog), "judge", records...)
		verdict := named(answer, "verdict")
		unread := c.verdict == "verdict|unread|"
		if len(verdict) != 1 || !strings.HasPrefix(verdict[0], c.verdict) || (verdict[0] != c.verdict) != unread {
			t.Errorf("%s: %q, want %s", c.typed, verdict, c.verdict)
		}
		want := 2 // the output and one step
		if unread {
			want = 0
		}
		if n := len(named(answer, "out")) + len(named(answer, "step")); n != want {
			t.Errorf("%s: %d records of the answer, want %d: %q", c.typed, n, want, answer)
		}
	}
}

// A malformed request gives a fault instead of a verdict.
func TestPracticeFaults(t *testing.T) {
	ok := map[string]string{
		"calc":      "calc\ttank",
		"answer":    "answer\tholds",
		"tolerance": "tolerance\t2 %",
		"seed":      "seed\t1",
		"vary":      "vary\tside",
		"typed":     "typed\t27",
	}
	for _, c := range []struct{ command, name, line, want string }{
		{"practice", "calc", "calc\tvat", "there is no calculator vat"},
		{"practice", "answer", "answer\topen", "tank has no output open that is a number"},
		{"practice", "seed", "seed\t-1", "practice needs a seed, a whole number"},
		{"practice", "tolerance", "tolerance\tnear", "the tolerance near is neither"},
		{"practice", "vary", "vary\tday", "day is nothing that varies"},
		{"practice", "vary", "vary\tside\nset\tshape\tround", "fresh values give tank no result"},
		{"judge", "calc", "calc", "there is no calculator "},
		{"judge", "answer", "answer\tleft", "tank has no output left that is a number"},
		{"judge", "tolerance", "tolerance\t", "the tolerance  is neither"},
		{"judge", "typed", "typed\t1\nset\tside\tlong", "long"},
		{"judge", "typed", "typed\t1\nset\tshape\tround", "this case of tank has no result"},
	} {
		lines := []string{"coursebook\t1\t" + c.command}
		for name, line := range ok {
			if name == c.name {
				line = c.line
			}
			lines = append(lines, line)
		}
		first := parseRecord(strings.Split(New(catalog).Answer(strings.Join(lines, "\n")), "\n")[0])
		if first.at(2) != "fault" || !strings.Contains(first.at(3), c.want) {
			t.Errorf("%s with %q: %q, want %q", c.command, c.line, first, c.want)
		}
	}
}
