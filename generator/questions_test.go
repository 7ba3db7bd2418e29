package main

import (
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
