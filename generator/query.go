package main

import (
	"fmt"
	"strings"

	"coursebook/generator/internal/build"
	"coursebook/generator/internal/fault"
	"coursebook/generator/search"
)

// explainedPages is the number of pages that an explanation shows.
const explainedPages = 5

// explainQuery prints what a query became in the index of a language, and why each of
// the first pages has its place.
func explainQuery(s std, o build.Options, lang, query string) int {
	var faults fault.List
	indexes := build.Indexes(o, &faults)
	if faults.Errors() > 0 {
		fault.Print(s.err, faults.All())
		return faulty
	}
	x := indexes[lang]
	if x == nil {
		fmt.Fprintf(s.err, "coursebook inspect: there is no index in the language %s\n", lang)
		return faulty
	}
	printExplanation(s, x.Explain(query, explainedPages))
	return fine
}

func printExplanation(s std, e search.Explanation) {
	for _, t := range e.Terms {
		fmt.Fprintf(s.out, "%s: weight %.2f", t.Word, t.Weight)
		if t.Share < 1 {
			fmt.Fprintf(s.out, " (share %.2f)", t.Share)
		}
		const most = 12
		for i, m := range t.Matches[:min(most, len(t.Matches))] {
			separator := ", "
			if i == 0 {
				separator = "; finds "
			}
			fmt.Fprintf(s.out, "%s%s %.2f", separator, m.Text, m.Weight)
		}
		if n := len(t.Matches) - most; n > 0 {
			fmt.Fprintf(s.out, " and %d more", n)
		}
		fmt.Fprintln(s.out)
	}
	if len(e.Kinds) > 0 {
		fmt.Fprintf(s.out, "asks for: %s\n", strings.Join(e.Kinds, ", "))
	}
	fmt.Fprintf(s.out, "%d pages\n", e.Found)
	for i, p := range e.Pages {
		fmt.Fprintf(s.out, "%d. %s (%s) %.3f = %.2f × (words %.3f + all %.3f + near %.3f", i+1, p.URL, p.Title, p.Score,
			p.Share, p.Words, p.All, p.Near)
		if p.Name != "" {
			fmt.Fprintf(s.out, " + %s “%s” %.3f", p.NameField, p.Name, p.NamePart)
		}
		fmt.Fprintln(s.out, ")")
		for _, t := range p.Terms {
			fmt.Fprintf(s.out, "   %s %.3f, match %.2f, in %s\n", t.Word, t.Score, t.Match, strings.Join(t.In, ", "))
		}
	}
}
