package page

import (
	"fmt"
	"strings"
	"testing"
)

// found lists the terms that a vocabulary finds in a text, as WORDS=ID.
func found(v *Vocabulary, text string) string {
	var all []string
	for at := 0; ; {
		start, end, term := v.Next(text, at)
		if start < 0 {
			return strings.Join(all, ", ")
		}
		all = append(all, fmt.Sprintf("%s=%s", text[start:end], v.Terms()[term].ID))
		at = end
	}
}

func TestVocabulary(t *testing.T) {
	v := NewVocabulary([]Term{
		{ID: "lift", Name: "Lift"},
		{ID: "cold-joint", Name: "Cold joint", Also: []string{"dry-joint", ""}},
		{ID: "cold", Name: "cold"},
		{ID: "union", Name: "Unión fría", Also: []string{"lift"}},
		{ID: "slump", Name: "slump test"},
		{ID: "slump-flow", Name: "slump test flow"},
		{ID: "nothing", Name: "–"},
	})
	for text, want := range map[string]string{
		"A lift, LIFTS and uplift":            "lift=lift, LIFTS=lift",
		"cold joint, cold-joint, cold joints": "cold joint=cold-joint, cold-joint=cold-joint, cold joints=cold-joint",
		"a cold\njoint":                       "cold\njoint=cold-joint",
		"cold, joint; cold  joint":            "cold=cold, cold=cold",
		"dry joint":                           "dry joint=cold-joint",
		"unión fría y UNIÓN FRÍA":             "unión fría=union, UNIÓN FRÍA=union",
		"slump test flow, slump testes":       "slump test flow=slump-flow, slump testes=slump",
		"slump tests flow":                    "slump tests=slump",
		"lift2 2lift lift":                    "lift=lift",
		"":                                    "",
		"cold":                                "cold=cold",
	} {
		if got := found(v, text); got != want {
			t.Errorf("%q: found %q, want %q", text, got, want)
		}
	}
}

func FuzzVocabulary(f *testing.F) {
	f.Add("Cold joint", "a cold joint, cold\xffjoint")
	f.Fuzz(func(t *testing.T, term, text string) {
		v := NewVocabulary([]Term{{ID: "x", Name: term}})
		for at := 0; ; {
			start, end, n := v.Next(text, at)
			if start < 0 {
				return
			}
			if start < at || end <= start || end > len(text) || n != 0 {
				t.Fatalf("%q in %q after %d: %d, %d, %d", term, text, at, start, end, n)
			}
			at = end
		}
	})
}
