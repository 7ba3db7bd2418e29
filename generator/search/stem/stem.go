// Package stem brings English and Spanish words to their stems, for building
// the search index. It runs at build time only: the index carries which words
// belong together, so the pages need no stemmer.
package stem

import (
	"strings"

	"github.com/blevesearch/snowballstem"
	"github.com/blevesearch/snowballstem/english"
	"github.com/blevesearch/snowballstem/spanish"
)

// For returns the Snowball stemmer of a language, by the first part of its
// code (en, es, es-MX). The stemmers are those of the Snowball project
// (snowballstem.org, english and spanish algorithms), compiled to Go. For a
// language without one the words stay as they are, and ok is false.
func For(lang string) (stem func(word string) string, ok bool) {
	base, _, _ := strings.Cut(lang, "-")
	switch base {
	case "en":
		return with(english.Stem), true
	case "es":
		return with(spanish.Stem), true
	}
	return func(word string) string { return word }, false
}

func with(algorithm func(*snowballstem.Env) bool) func(string) string {
	return func(word string) string {
		env := snowballstem.NewEnv(word)
		algorithm(env)
		return env.Current()
	}
}
