package main

import (
	"bytes"
	"math"
	"os"
	"path/filepath"
	"strconv"
	"strings"
	"testing"

	"coursebook/generator/internal/build"
	"coursebook/generator/internal/fault"
	"coursebook/generator/search"
)

// manualIndexes returns the indexes of the manual.
func manualIndexes(t *testing.T) map[string]*search.Index {
	t.Helper()
	flags := newManualFlags("inspect", "")
	if err := flags.Parse([]string{"-content", contentDir}); err != nil {
		t.Fatal(err)
	}
	o, err := flags.options()
	if err != nil {
		t.Fatal(err)
	}
	var faults fault.List
	indexes := build.Indexes(o, &faults)
	if faults.Errors() > 0 {
		t.Fatal(faults.All())
	}
	return indexes
}

// TestEmergencySearches: whatever words somebody in trouble types, the page that helps
// is the first.
func TestEmergencySearches(t *testing.T) {
	indexes := manualIndexes(t)
	var faults fault.List
	list := readQuestions("../"+emergencyFile, &faults)
	if faults.Errors() > 0 || len(list) < 200 {
		t.Fatalf("%d searches, faults %v", len(list), faults.All())
	}
	for _, q := range list {
		pages := firstPages(indexes[q.lang], q.text)
		if len(pages) == 0 || !q.wants(pages[0]) {
			t.Errorf("%s:%d: %s: wanted %s first, found %s",
				emergencyFile, q.line, q.text, strings.Join(q.wanted, " or "), strings.Join(pages, ", "))
		}
	}
}

// TestWilson: intervals as published by Newcombe (1998) for the score method, from
// memory.
func TestWilson(t *testing.T) {
	for _, c := range []struct {
		n, all    int
		low, high float64
	}{{81, 263, 0.2553, 0.3662}, {15, 148, 0.0624, 0.1605}, {0, 20, 0, 0.1611}, {1, 29, 0.0061, 0.1718}, {0, 0, 0, 1}} {
		low, high := wilson(c.n, c.all)
		if math.Abs(low-c.low) > 5e-5 || math.Abs(high-c.high) > 5e-5 {
			t.Errorf("%d of %d: %.4f to %.4f, want %.4f to %.4f", c.n, c.all, low, high, c.low, c.high)
		}
	}
}

// TestTally: a question is counted by the place of its page, apart if it wants none.
func TestTally(t *testing.T) {
	x, err := search.Open(search.Build("en", []search.Entry{
		{URL: "en/a.html", Title: "Pump", Urgent: true}, {URL: "en/calc/b.html", Title: "Pump line"},
		{URL: "en/c.html", Title: "Other", Text: "pump"},
		{URL: "en/d.html", Title: "Last", Text: "the pump, and much more"},
	}, search.Lists{}, nil))
	if err != nil {
		t.Fatal(err)
	}
	var got tally
	for _, q := range []question{
		{text: "pump", wanted: []string{"a"}}, {text: "pump", wanted: []string{"x", "calc:b"}},
		{text: "pump", wanted: []string{"d"}}, {text: "pump", wanted: []string{noPage}},
	} {
		failed := got.ask(x, q)
		if want := q.wants("d"); (failed != "") != want {
			t.Errorf("%v: %q", q, failed)
		}
	}
	if want := (tally{all: hits{3, 1, 2}, urgent: hits{1, 1, 1}, none: 1}); got != want {
		t.Errorf("got %+v, want %+v", got, want)
	}
}

// TestRecord: figures are appended with their commit, a sixth run is refused, and no
// failing search is printed.
func TestRecord(t *testing.T) {
	dir := t.TempDir()
	questions := filepath.Join(dir, "q.tsv")
	if err := os.WriteFile(questions, []byte("en\tblow-out\tblow-out\nen\tblow-out\twind\n"), 0o644); err != nil {
		t.Fatal(err)
	}
	file := filepath.Join(dir, "runs.tsv")
	run := func(more ...string) (status int, out, errs string) {
		var stdout, stderr bytes.Buffer
		args := append([]string{"-content", contentDir, "-questions", questions, "-record", file}, more...)
		status = runInspect(std{out: &stdout, err: &stderr}, args)
		return status, stdout.String(), stderr.String()
	}
	if status, _, errs := run(); status != faulty || !strings.Contains(errs, "commit") {
		t.Errorf("without a commit: %d, %s", status, errs)
	}
	for i := range maxRuns {
		if _, out, errs := run("-commit", "c"+strconv.Itoa(i)); errs != "" || strings.Contains(out, "wanted") ||
			!strings.Contains(out, "1 of 2") {
			t.Fatalf("run %d: %s%s", i, out, errs)
		}
	}
	data, err := os.ReadFile(file)
	if err != nil {
		t.Fatal(err)
	}
	lines := strings.Split(strings.TrimSuffix(string(data), "\n"), "\n")
	last := lines[len(lines)-1]
	if len(lines) != 2+maxRuns || !strings.HasPrefix(last, "5\tc4\ten\t2\t1 of 2 (50.0 %") {
		t.Errorf("%d lines, the last %q", len(lines), last)
	}
	if status, _, errs := run("-commit", "c6"); status != faulty || !strings.Contains(errs, "no more runs") {
		t.Errorf("run 6: %d, %s", status, errs)
	}
	if again, err := os.ReadFile(file); err != nil || string(again) != string(data) {
		t.Errorf("run 6 was recorded: %s, %v", again, err)
	}
}

// TestHeldBackSearches: the searches held back are asked by one target of the Makefile,
// which no other calls, and by nothing else.
func TestHeldBackSearches(t *testing.T) {
	data, err := os.ReadFile("../Makefile")
	if err != nil {
		t.Fatal(err)
	}
	target, named := "", 0
	for _, line := range strings.Split(string(data), "\n") {
		if !strings.HasPrefix(line, "\t") {
			target, _, _ = strings.Cut(line, ":")
			if strings.Contains(line, "judged") && target != "judged" && !strings.HasPrefix(line, ".PHONY") {
				t.Errorf("a target depends on judged: %s", line)
			}
			continue
		}
		if strings.Contains(line, heldBack) {
			named++
			if target != "judged" {
				t.Errorf("target %s asks the searches held back", target)
			}
		}
		if strings.Contains(line, "judged") && strings.Contains(line, "MAKE") || strings.Contains(line, "test.sh") &&
			strings.Contains(line, "judged") {
			t.Errorf("target %s calls judged", target)
		}
	}
	if named == 0 {
		t.Error("no target asks the searches held back")
	}
	for _, file := range learnFiles {
		if strings.Contains(file, heldBack) {
			t.Errorf("%s is learned from", file)
		}
	}
}

// heldBack is the beginning of the names of files with searches that only measure.
const heldBack = "testdata/judged/test-"
