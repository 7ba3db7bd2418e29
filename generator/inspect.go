package main

import (
	"fmt"

	"coursebook/calculators/calc"
	"coursebook/generator/internal/build"
	"coursebook/generator/internal/fault"
	"coursebook/generator/internal/translations"
)

// runInspect runs the command inspect and returns its exit status: faulty for
// errors, and for warnings with -strict.
func runInspect(s std, args []string) int {
	flags := newManualFlags("inspect", "Lists every fault and warning of the content. Writes nothing.")
	strict := flags.Bool("strict", false, "warnings count as faults")
	questions := flags.String("questions", "", "instead, run the judged searches of `files`, separated by commas")
	least := flags.Float64("least", 95, "with -questions, the `percent` that must pass")
	recorded := flags.String("record", "", "with -questions, append only the figures to a `file`, in at most five runs")
	commit := flags.String("commit", "", "`commit` that the recorded figures belong to")
	query := flags.String("query", "", "instead, print what a search `text` becomes and why each page is found")
	searched := flags.String("lang", "en", "`language` of -query")
	lang := flags.String("words", "", "instead, list the texts that a `language` lacks, as lines for its words file")
	o, status, done := flags.open(s, args)
	if done {
		return status
	}
	if *questions != "" {
		return askQuestions(s, o, *questions, *least, record{*recorded, *commit})
	}
	if *query != "" {
		return explainQuery(s, o, *searched, *query)
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

// listMissing prints the texts that have no translation into a language, grouped
// by translation file, as lines ready to be filled in. A translation whose English
// text has changed is printed as a comment above the nearest line. It returns
// faulty if a file cannot be read.
func listMissing(s std, o build.Options, lang string) int {
	var faults fault.List
	texts, err := build.CalculatorTexts()
	if err != nil {
		return s.fail("inspect", err)
	}
	words, orphans, err := build.CalculatorWords(lang, &faults)
	if err != nil {
		return s.fail("inspect", err)
	}
	missing := texts.Missing(words)
	old := map[calc.Text][]translations.Orphan{}
	for _, o := range orphans {
		if near, ok := o.Nearest(missing); ok {
			old[near.Text] = append(old[near.Text], o)
		}
	}
	topic := ""
	for _, text := range missing {
		if text.Topic != topic {
			topic = text.Topic
			fmt.Fprintf(s.out, "# %s\n", build.WordsFile(lang, topic))
		}
		for _, o := range old[text.Text] {
			fmt.Fprintf(s.out, "# was: %s\t%s\n", o.English, o.Text)
		}
		fmt.Fprintf(s.out, "%s\t%s\n", text.Text, text.EN())
	}
	keyed, translated, err := build.ThemeWords(o.Theme, lang, &faults)
	if err != nil {
		return s.fail("inspect", err)
	}
	for i, key := range keyed.Missing(translated) {
		if i == 0 {
			fmt.Fprintf(s.out, "# %s of the theme\n", build.ThemeWordsFile(lang))
		}
		fmt.Fprintf(s.out, "%s\t%s\t%s\n", key, translations.Hash(keyed[key]), keyed[key])
	}
	fault.Print(s.err, faults.All())
	return fine
}

// readTranslations returns the calculators' translations into a language. If there
// are none, or they have a fault, it returns nil and the reason as a text, which
// is otherwise "".
func readTranslations(lang string) (calc.Translations, string) {
	var faults fault.List
	words, _, err := build.CalculatorWords(lang, &faults)
	if err == nil && faults.Errors() > 0 {
		err = faults.All()[0]
	}
	if err != nil {
		return nil, err.Error()
	}
	if words == nil {
		return nil, "there are no words in the language " + lang
	}
	return words, ""
}
