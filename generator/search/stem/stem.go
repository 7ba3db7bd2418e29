// Package stem returns the stems of English and Spanish words, for building the
// search index. Only the generator uses it: the index stores which words have the
// same stem, so that the pages need no stemmer.
package stem

import (
	"strings"

	"github.com/blevesearch/snowballstem"
	"github.com/blevesearch/snowballstem/english"
	"github.com/blevesearch/snowballstem/spanish"
)

// For returns the Snowball stemmer of a language, by the first part of its code (en,
// es, es-MX). The stemmers are the English and Spanish algorithms of the Snowball
// project (snowballstem.org), compiled to Go. For any other language stem returns
// its argument, and ok is false.
func For(lang string) (stem func(word string) string, ok bool) {
	base, _, _ := strings.Cut(lang, "-")
	switch base {
	case "en":
		return with(english.Stem), true
	case "es":
		return keptApart(with(spanish.Stem)), true
	}
	return func(word string) string { return word }, false
}

// apart holds Spanish nouns of the trade that the algorithm joins with another word, such
// as pared (wall) with parar (to stop), hilada (course of blocks) with hilo (string line),
// and their stems here. The list is our own.
var apart = map[string]string{
	"pared": "pared", "paredes": "pared", "hilada": "hilada", "hiladas": "hilada", "marco": "marco", "marcos": "marco",
	"bota": "bota", "botas": "bota", "caso": "caso", "casos": "caso", "lente": "lente", "lentes": "lente",
	"hombro": "hombro", "hombros": "hombro", "libra": "libra", "libras": "libra", "libro": "libro", "libros": "libro",
	"pulgar": "pulgar", "pulgares": "pulgar", "rayo": "rayo", "rayos": "rayo", "corto": "corto", "cortos": "corto",
	"murió": "murió", "vigía": "vigía", "vigías": "vigía", "viga": "viga", "vigas": "viga", "rate": "rate",
	"plomería": "plomería", "pálido": "pálido", "sol": "sol", "junta": "junta", "juntas": "junta",
}

// keptApart returns a stemmer that knows the words of apart.
func keptApart(stem func(string) string) func(string) string {
	return func(word string) string {
		if s, ok := apart[word]; ok {
			return s
		}
		return stem(word)
	}
}

// with returns a stemmer that runs a Snowball algorithm on each word.
func with(algorithm func(*snowballstem.Env) bool) func(string) string {
	return func(word string) string {
		env := snowballstem.NewEnv(word)
		algorithm(env)
		return env.Current()
	}
}
