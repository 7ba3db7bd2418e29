package main

import (
	"fmt"

	"coursebook/calculators/calc"
	"coursebook/generator/internal/build"
	"coursebook/generator/internal/fault"
	"coursebook/generator/internal/parts"
	"coursebook/generator/internal/translations"
)

func runInspect(s std, args []string) int {
	flags := newManualFlags(s, "inspect", "Lists every fault and warning of the content. Writes nothing.")
	strict := flags.Bool("strict", false, "warnings count as faults")
	questions := flags.String("questions", "", "instead, run the judged searches of a `file`")
	lang := flags.String("words", "", "instead, list the texts that a `language` lacks, as lines for its words file")
	o, status, done := flags.open(s, args)
	if done {
		return status
	}
	if *questions != "" {
		return askQuestions(s, o, *questions)
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

// listMissing prints what a translator has still to do: for each file, the
// lines it lacks or that are stale, with key, hash and English text.
func listMissing(s std, o build.Options, lang string) int {
	lists, err := build.WordLists(o.Theme)
	if err != nil {
		return s.fail("inspect", err)
	}
	var faults fault.List
	for _, l := range lists {
		missing := translations.Missing(l.English, l.Read(lang, &faults))
		if len(missing) > 0 {
			fmt.Fprintf(s.out, "# %s\n", l.File(lang))
		}
		for _, key := range missing {
			fmt.Fprintf(s.out, "%s\t%s\t%s\n", key, translations.Hash(l.English[key]), l.English[key])
		}
	}
	fault.Print(s.err, faults.All())
	return fine
}

// readTranslations reads one language's words for the command line.
func readTranslations(lang string) (calc.Translations, string) {
	h, err := parts.Open()
	if err != nil {
		return nil, err.Error()
	}
	dir, err := h.Theme()
	if err != nil {
		return nil, err.Error()
	}
	lists, err := build.WordLists(dir)
	if err != nil {
		return nil, err.Error()
	}
	var faults fault.List
	own := lists[0].Read(lang, &faults)
	if own == nil {
		return nil, "there are no words in the language " + lang
	}
	return own, ""
}
