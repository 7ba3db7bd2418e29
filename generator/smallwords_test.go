package main

import (
	"fmt"
	"math"
	"os"
	"slices"
	"strconv"
	"strings"
	"testing"

	"coursebook/generator/internal/build"
	"coursebook/generator/internal/fault"
	"coursebook/generator/internal/source"
	"coursebook/generator/search"
)

// smallWordsFile is the list of small words of the manual, from this package.
const smallWordsFile = contentDir + "/small-words.tsv"

// heaviestSmall is the weight, in tenths, of a listed word that no learned search and
// no page has.
const heaviestSmall = 5

// TestSmallWords compares the weights of the listed small words with those counted over
// the learned searches and the pages. A weight may be one tenth off, so that a page can
// be edited without counting again. With -update the weights are written as counted.
// Which words are listed is set by hand.
func TestSmallWords(t *testing.T) {
	data, err := os.ReadFile(smallWordsFile)
	if err != nil {
		t.Fatal(err)
	}
	var faults fault.List
	listed := source.ParseSmallWords(smallWordsFile, data, &faults)
	flags := newManualFlags("inspect", "")
	if err := flags.Parse([]string{"-content", contentDir}); err != nil {
		t.Fatal(err)
	}
	o, err := flags.options()
	if err != nil {
		t.Fatal(err)
	}
	entries := build.SearchEntries(o, &faults)
	if faults.Errors() > 0 {
		t.Fatal(faults.All())
	}
	var out strings.Builder
	for _, line := range strings.SplitAfter(string(data), "\n") {
		if strings.HasPrefix(line, "#") {
			out.WriteString(line)
		}
	}
	langs := make([]string, 0, len(listed))
	for lang := range listed {
		langs = append(langs, lang)
	}
	slices.Sort(langs)
	for _, lang := range langs {
		searches := countTexts(learnedSearches(t, lang))
		pages := countTexts(pageTexts(entries[lang]))
		words := map[int][]string{}
		for _, w := range listed[lang] {
			n := searches.rarity(w.Word) * pages.rarity(w.Word)
			tenth := int(math.Round(heaviestSmall * n))
			words[tenth] = append(words[tenth], w.Word)
			if off := tenth - w.Tenth; !*update && (off < -1 || off > 1) {
				t.Errorf("%s: %s has weight %d, counted %d; run make golden and look at it",
					lang, w.Word, w.Tenth, tenth)
			}
		}
		for tenth := 0; tenth <= heaviestSmall; tenth++ {
			if list := words[tenth]; len(list) > 0 {
				slices.Sort(list)
				fmt.Fprintf(&out, "%s:\t%d\t%s\n", lang, tenth, strings.Join(list, " "))
			}
		}
	}
	if !*update {
		return
	}
	if err := os.WriteFile(smallWordsFile, []byte(out.String()), 0o644); err != nil {
		t.Fatal(err)
	}
}

// wordCounts holds the number of texts that have a word.
type wordCounts struct {
	texts int
	with  map[string]int
}

// countTexts counts in how many texts each word is.
func countTexts(texts []string) wordCounts {
	c := wordCounts{len(texts), map[string]int{}}
	for _, text := range texts {
		seen := map[string]bool{}
		for _, token := range search.Tokens(text) {
			if !seen[token.Word] {
				seen[token.Word] = true
				c.with[token.Word]++
			}
		}
	}
	return c
}

// rarity returns 1 for a word that no text has, and 0 for one that all have; between
// them it falls with the logarithm of the number of texts.
func (c wordCounts) rarity(word string) float64 {
	return math.Log(float64(c.texts+1)/float64(c.with[word]+1)) / math.Log(float64(c.texts+1))
}

// learnedSearches returns the searches of a language from which weights may be
// counted. Those that only measure are not among them.
func learnedSearches(t *testing.T, lang string) (texts []string) {
	t.Helper()
	for _, name := range learnFiles {
		var faults fault.List
		for _, q := range readQuestions("../"+name, &faults) {
			if q.lang == lang {
				texts = append(texts, q.text)
			}
		}
		if faults.Errors() > 0 {
			t.Fatal(faults.All())
		}
	}
	if len(texts) < 200 {
		t.Fatalf("%d searches in %s are too few to count", len(texts), lang)
	}
	return texts
}

// pageTexts returns the text of each page.
func pageTexts(entries []search.Entry) (texts []string) {
	last := ""
	for _, e := range entries {
		address, _, _ := strings.Cut(e.URL, "#")
		text := e.Title + " " + e.Section + " " + e.Text
		if address == last {
			texts[len(texts)-1] += " " + text
		} else {
			texts = append(texts, text)
		}
		last = address
	}
	return texts
}

// TestSmallWordsAreFolded: a word is listed as the search reads it, so that it can
// match.
func TestSmallWordsAreFolded(t *testing.T) {
	data, err := os.ReadFile(smallWordsFile)
	if err != nil {
		t.Fatal(err)
	}
	var faults fault.List
	for lang, list := range source.ParseSmallWords(smallWordsFile, data, &faults) {
		for _, w := range list {
			if tokens := search.Tokens(w.Word); len(tokens) != 1 || tokens[0].Word != w.Word {
				t.Errorf("%s: %s is read as %s", lang, strconv.Quote(w.Word), fmt.Sprint(tokens))
			}
		}
	}
}
