package render

import (
	"slices"
	"testing"
)

// A heading has its short name behind a colon, or its own.
func TestNamedMarks(t *testing.T) {
	got := namedMarks("Steps, What goes wrong: Goes wrong")
	want := []namedMark{{"Steps", "Steps"}, {"What goes wrong", "Goes wrong"}}
	if !slices.Equal(got, want) {
		t.Errorf("%v, want %v", got, want)
	}
}
