package main

import (
	"fmt"
	"os"
	"strings"
)

// maxRuns is the number of times that searches held back may be asked: each look at
// their figures makes them less of a test.
const maxRuns = 5

// record is a file to which the figures of each run of judged searches are appended,
// with the commit that was measured.
type record struct{ file, commit string }

// on reports whether figures are recorded.
func (r record) on() bool { return r.file != "" }

// recordHead is the first line of a new record.
const recordHead = "# run, commit, language; asked, with their page first and among the first three, each\n" +
	"# with the 95 % interval; of those that want a page for trouble: asked, first, among three\n"

// refuses returns why nothing may be asked; "" if it may, and where nothing is
// recorded.
func (r record) refuses() string {
	if !r.on() {
		return ""
	}
	if r.commit == "" {
		return "figures are recorded with a commit; name it with -commit"
	}
	runs, err := r.runs()
	if err != nil {
		return err.Error()
	}
	if runs >= maxRuns {
		return fmt.Sprintf("these searches were asked %d times, and no more runs are allowed: %s", runs, r.file)
	}
	return ""
}

// runs returns the number of the last run in the file; 0 if there is no file.
func (r record) runs() (int, error) {
	data, err := os.ReadFile(r.file)
	if os.IsNotExist(err) {
		return 0, nil
	}
	if err != nil {
		return 0, err
	}
	last := 0
	for _, line := range strings.Split(string(data), "\n") {
		if line == "" || strings.HasPrefix(line, "#") {
			continue
		}
		var n int
		if _, err := fmt.Sscanf(line, "%d\t", &n); err != nil {
			return 0, fmt.Errorf("%s: a line without the number of its run: %s", r.file, line)
		}
		last = max(last, n)
	}
	return last, nil
}

// add appends a line for each language.
func (r record) add(tallies map[string]*tally) error {
	runs, err := r.runs()
	if err != nil {
		return err
	}
	var out strings.Builder
	if _, err := os.Stat(r.file); os.IsNotExist(err) {
		out.WriteString(recordHead)
	}
	for _, lang := range sortedLangs(tallies) {
		t := tallies[lang]
		fmt.Fprintf(&out, "%d\t%s\t%s\t%d\t%s\t%s\t%d\t%d\t%d\n", runs+1, r.commit, lang,
			t.all.asked, share(t.all.first, t.all.asked), share(t.all.top, t.all.asked),
			t.urgent.asked, t.urgent.first, t.urgent.top)
	}
	f, err := os.OpenFile(r.file, os.O_APPEND|os.O_CREATE|os.O_WRONLY, 0o644)
	if err != nil {
		return err
	}
	if _, err := f.WriteString(out.String()); err != nil {
		f.Close()
		return err
	}
	return f.Close()
}
