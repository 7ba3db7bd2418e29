package main

import (
	"fmt"
	"math"
	"os"
	"slices"
	"strings"

	"coursebook/generator/internal/build"
	"coursebook/generator/internal/fault"
	"coursebook/generator/search"
)

// A judged search passes when a wanted page is among the first topResults pages.
const topResults = 3

// learnFiles are the judged searches that the search may be mended and its weights
// counted by, from the root of the project.
var learnFiles = []string{"testdata/questions.tsv", emergencyFile,
	"testdata/judged/learn-en.tsv", "testdata/judged/learn-es.tsv",
	"testdata/judged/heard-en.tsv", "testdata/judged/heard-es.tsv"}

// emergencyFile holds the searches of somebody in trouble, whose page must be the first.
const emergencyFile = "testdata/emergencies.tsv"

// noPage is the wanted page of a search for what the manual does not hold.
const noPage = "-"

// question is one judged search. A line of the file holds language, question and
// slug of the wanted page (or calc:ID), separated by tabs. Alternative slugs are
// separated by spaces. A question that no page answers wants noPage; it is counted
// apart, because the search has no way to tell.
type question struct {
	line       int
	lang, text string
	wanted     []string
}

// wants reports whether a page is one that the question wants.
func (q question) wants(page string) bool { return slices.Contains(q.wanted, page) }

// readQuestions reads the judged searches of a file. It adds a fault for each line
// without three parts, which it leaves out, and for a file that it cannot read.
// Empty lines and lines that begin with # are skipped.
func readQuestions(name string, faults *fault.List) []question {
	data, err := os.ReadFile(name)
	if err != nil {
		faults.Add(fault.Fault{File: name, Code: "questions", Text: err.Error(),
			Hint: "name a file of judged searches"})
		return nil
	}
	var list []question
	for i, line := range strings.Split(string(data), "\n") {
		line = strings.TrimSuffix(line, "\r")
		if line == "" || strings.HasPrefix(line, "#") {
			continue
		}
		parts := strings.Split(line, "\t")
		if len(parts) != 3 || parts[1] == "" || parts[2] == "" {
			faults.Add(fault.Fault{File: name, Line: i + 1, Col: 1, Source: line, Code: "questions",
				Text: "a line needs three parts: language, question, wanted page", Hint: "separate them with tabs"})
			continue
		}
		list = append(list, question{i + 1, parts[0], parts[1], strings.Fields(parts[2])})
	}
	return list
}

// tally counts the questions of one language.
type tally struct {
	all    hits
	urgent hits // of the questions that want an urgent page
	none   int  // questions that want no page
}

// hits counts questions by the place of their page.
type hits struct{ asked, first, top int }

// add counts a question whose page is at a place, from 0; -1 if it was not found.
func (h *hits) add(place int) {
	h.asked++
	if place == 0 {
		h.first++
	}
	if place >= 0 && place < topResults {
		h.top++
	}
}

// askQuestions runs the judged searches of files, whose names are separated by commas,
// and prints those that fail. With a record it prints and records only the figures.
// It returns faulty after faults, and if judge does with least.
func askQuestions(s std, o build.Options, names string, least float64, r record) int {
	if why := r.refuses(); why != "" {
		fmt.Fprintln(s.err, "coursebook inspect: "+why)
		return faulty
	}
	var faults fault.List
	indexes := build.Indexes(o, &faults)
	tallies := map[string]*tally{}
	for _, file := range strings.Split(names, ",") {
		for _, q := range readQuestions(file, &faults) {
			x := indexes[q.lang]
			if x == nil {
				if faults.Errors() == 0 {
					faults.Add(fault.Fault{File: file, Line: q.line, Code: "questions",
						Text: "there is no index in the language " + q.lang, Hint: "use a language of the manual"})
				}
				continue
			}
			if tallies[q.lang] == nil {
				tallies[q.lang] = &tally{}
			}
			if failed := tallies[q.lang].ask(x, q); failed != "" && !r.on() {
				fmt.Fprintf(s.out, "%s:%d: %s: %s\n", file, q.line, q.text, failed)
			}
		}
	}
	if faults.Errors() > 0 {
		warning := func(f fault.Fault) bool { return f.Severity != fault.Error }
		fault.Print(s.err, slices.DeleteFunc(faults.All(), warning))
		return faulty
	}
	status := judge(s, tallies, least)
	if r.on() {
		if err := r.add(tallies); err != nil {
			return s.fail("inspect", err)
		}
	}
	return status
}

// ask runs a question and counts it. It returns what is wrong if no wanted page is
// among the first.
func (t *tally) ask(x *search.Index, q question) (failed string) {
	if q.wants(noPage) {
		t.none++
		return ""
	}
	pages := firstPages(x, q.text)
	place := slices.IndexFunc(pages, q.wants)
	t.all.add(place)
	if isUrgent(x, q.wanted[0]) {
		t.urgent.add(place)
	}
	if place >= 0 {
		return ""
	}
	return fmt.Sprintf("wanted %s, found %s", strings.Join(q.wanted, " or "), strings.Join(pages, ", "))
}

// isUrgent reports whether a page is an urgent one of the index.
func isUrgent(x *search.Index, slug string) bool {
	urgent := x.Pages(func(_ string, urgent bool) bool { return urgent })
	return slices.ContainsFunc(urgent, func(h search.Hit) bool { return slugOf(h.URL) == slug })
}

// judge prints the figures of each language, and returns the exit status: faulty if
// a language has less than least percent among the first, or there are no questions.
func judge(s std, tallies map[string]*tally, least float64) int {
	status := fine
	for _, lang := range sortedLangs(tallies) {
		t := tallies[lang]
		fmt.Fprintf(s.out, "%s: %s have their page among the first %d, %s have it first\n",
			lang, share(t.all.top, t.all.asked), topResults, share(t.all.first, t.all.asked))
		if t.urgent.asked > 0 {
			fmt.Fprintf(s.out, "%s: of %d that want a page for trouble, %d have it among the first %d, %d first\n",
				lang, t.urgent.asked, t.urgent.top, topResults, t.urgent.first)
		}
		if t.none > 0 {
			fmt.Fprintf(s.out, "%s: %d want a page that the manual does not have\n", lang, t.none)
		}
		if percent(t.all.top, t.all.asked) < least {
			status = faulty
		}
	}
	if len(tallies) == 0 {
		fmt.Fprintln(s.err, "coursebook inspect: no questions were asked")
		status = faulty
	}
	return status
}

func sortedLangs(tallies map[string]*tally) []string {
	langs := make([]string, 0, len(tallies))
	for lang := range tallies {
		langs = append(langs, lang)
	}
	slices.Sort(langs)
	return langs
}

// share writes n of all with the percentage and its interval.
func share(n, all int) string {
	low, high := wilson(n, all)
	return fmt.Sprintf("%d of %d (%.1f %%, 95 %% interval %.1f to %.1f)", n, all, percent(n, all), 100*low, 100*high)
}

func percent(n, all int) float64 { return 100 * float64(n) / float64(max(all, 1)) }

// wilson returns the 95 % interval of a share of n in all, by Wilson's score (1927): for
// p = n/all and z = 1.96
//
//	(p + z²/2all ± z·√(p(1−p)/all + z²/4all²)) / (1 + z²/all)
func wilson(n, all int) (low, high float64) {
	if all == 0 {
		return 0, 1
	}
	const z = 1.959964
	count := float64(all)
	p := float64(n) / count
	middle := p + z*z/(2*count)
	half := z * math.Sqrt(p*(1-p)/count+z*z/(4*count*count))
	scale := 1 + z*z/count
	return max(0, (middle-half)/scale), min(1, (middle+half)/scale)
}

// firstPages returns the slugs of the first topResults pages found; that of a
// calculator begins with calc:.
func firstPages(x *search.Index, text string) []string {
	var pages []string
	hits, _ := x.Find(text, topResults)
	for _, h := range hits {
		pages = append(pages, slugOf(h.URL))
	}
	return pages
}

// slugOf returns the slug of a page by its address; calc: and the ID for a calculator.
func slugOf(url string) string {
	address, _, _ := strings.Cut(url, "#")
	slug := strings.TrimSuffix(address[strings.LastIndexByte(address, '/')+1:], ".html")
	if strings.Contains(address, "/calc/") {
		slug = "calc:" + slug
	}
	return slug
}
