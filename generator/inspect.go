package main

import (
	"fmt"

	"coursebook/calculators"
	"coursebook/calculators/calc"
	"coursebook/generator/internal/build"
	"coursebook/generator/internal/fault"
	"coursebook/generator/internal/words"
)

func runInspect(s std, args []string) int {
	flags := newFlags(s, "inspect", "", "Lists every fault and warning of the content. Writes nothing.")
	content := flags.String("content", "content", "folder of the manual")
	theme := flags.String("theme", "", "folder of a theme; empty for the one that comes along")
	strict := flags.Bool("strict", false, "warnings count as faults")
	lang := flags.String("words", "", "instead, list the texts that a `language` lacks, as lines for its words file")
	if status, done := parse(flags, args); done {
		return status
	}
	if flags.NArg() > 0 {
		flags.Usage()
		return misuse
	}
	o, err := options(*content, *theme)
	if err != nil {
		return s.fail("inspect", err)
	}
	if *lang != "" {
		return listMissing(s, o, *lang)
	}
	var faults fault.List
	build.Inspect(o, &faults)
	fault.Print(s.err, faults.All())
	if faults.Errors() > 0 || *strict && faults.Warnings() > 0 {
		return faulty
	}
	if faults.Warnings() == 0 {
		fmt.Fprintln(s.out, "No faults, no warnings.")
	}
	return fine
}

// listMissing prints what a translator has still to do: key, hash and English
// text of each line that the language's file lacks or that is stale.
func listMissing(s std, o build.Options, lang string) int {
	english, err := build.English(o.Theme)
	if err != nil {
		return s.fail("inspect", err)
	}
	var faults fault.List
	own := calc.Words{}
	name := "words/" + lang + ".tsv"
	if data, err := calculators.Words.ReadFile(name); err == nil {
		own = words.Parse("calculators/"+name, data, english, &faults)
	}
	fault.Print(s.err, faults.All())
	for _, key := range words.Missing(english, own) {
		fmt.Fprintf(s.out, "%s\t%s\t%s\n", key, words.Hash(english[key]), english[key])
	}
	return fine
}

// translations reads one language's words for the command line.
func translations(lang string) (calc.Words, string) {
	var faults fault.List
	english, err := words.FromSources(calculators.Sources, &faults)
	if err != nil {
		return nil, err.Error()
	}
	data, err := calculators.Words.ReadFile("words/" + lang + ".tsv")
	if err != nil {
		return nil, "there are no words in the language " + lang
	}
	return words.Parse("calculators/words/"+lang+".tsv", data, english, &faults), ""
}
