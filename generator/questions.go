package main

import (
	"fmt"
	"os"
	"slices"
	"strings"

	"coursebook/generator/internal/build"
	"coursebook/generator/internal/fault"
	"coursebook/generator/search"
)

// A judged search passes when a wanted page is among the first topResults pages.
const (
	topResults = 3
	wantedRate = 0.95 // share of a language's questions that must pass
)

// learnFiles are the judged searches that the search may be mended and its weights
// counted by, from the root of the project.
var learnFiles = []string{"testdata/questions.tsv", emergencyFile}

// emergencyFile holds the searches of somebody in trouble, whose page must be the first.
const emergencyFile = "testdata/emergencies.tsv"

// question is one judged search. A line of the file holds language, question and
// slug of the wanted page (or calc:ID), separated by tabs. Alternative slugs are
// separated by spaces.
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

// askQuestions runs the judged searches of a file and prints those that fail. It
// returns faulty after faults, and if judge does.
func askQuestions(s std, o build.Options, file string) int {
	var faults fault.List
	indexes := build.Indexes(o, &faults)
	list := readQuestions(file, &faults)
	asked, found := map[string]int{}, map[string]int{}
	for _, q := range list {
		x := indexes[q.lang]
		if x == nil {
			if faults.Errors() == 0 {
				faults.Add(fault.Fault{File: file, Line: q.line, Code: "questions",
					Text: "there is no index in the language " + q.lang, Hint: "use a language of the manual"})
			}
			continue
		}
		asked[q.lang]++
		pages := firstPages(x, q.text)
		if slices.ContainsFunc(pages, q.wants) {
			found[q.lang]++
			continue
		}
		fmt.Fprintf(s.out, "%s:%d: %s: wanted %s, found %s\n",
			file, q.line, q.text, strings.Join(q.wanted, " or "), strings.Join(pages, ", "))
	}
	if faults.Errors() > 0 {
		warning := func(f fault.Fault) bool { return f.Severity != fault.Error }
		fault.Print(s.err, slices.DeleteFunc(faults.All(), warning))
		return faulty
	}
	return judge(s, asked, found)
}

// judge prints how many of the questions asked in each language were found, and
// returns the exit status: faulty if a language has less than wantedRate, or there
// are no questions.
func judge(s std, asked, found map[string]int) int {
	status := fine
	langs := make([]string, 0, len(asked))
	for lang := range asked {
		langs = append(langs, lang)
	}
	slices.Sort(langs)
	for _, lang := range langs {
		fmt.Fprintf(s.out, "%s: %d of %d questions have their page among the first %d\n",
			lang, found[lang], asked[lang], topResults)
		if float64(found[lang]) < wantedRate*float64(asked[lang]) {
			status = faulty
		}
	}
	if len(langs) == 0 {
		fmt.Fprintln(s.err, "coursebook inspect: no questions were asked")
		status = faulty
	}
	return status
}

// firstPages returns the slugs of the first topResults different pages found; that
// of a calculator begins with calc:.
func firstPages(x *search.Index, text string) []string {
	var pages []string
	hits, _ := x.Find(text, 10)
	for _, h := range hits {
		address, _, _ := strings.Cut(h.URL, "#")
		slug := strings.TrimSuffix(address[strings.LastIndexByte(address, '/')+1:], ".html")
		if strings.Contains(address, "/calc/") {
			slug = "calc:" + slug
		}
		if !slices.Contains(pages, slug) {
			pages = append(pages, slug)
		}
	}
	return pages[:min(len(pages), topResults)]
}
