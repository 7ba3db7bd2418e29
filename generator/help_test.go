package main

import (
	"strings"
	"testing"
)

// Help that was asked for is printed to standard output, with status 0. After
// wrong use the usage is printed to standard error, with status 2. Neither has a
// line that ends in a blank.
func TestHelpAndMisuse(t *testing.T) {
	usage := map[string]string{
		"":        "usage: coursebook COMMAND [options]\n",
		"build":   "usage: coursebook build [options]\n",
		"preview": "usage: coursebook preview [options]\n",
		"inspect": "usage: coursebook inspect [options]\n",
		"calc":    "usage: coursebook calc ",
		"start":   "usage: coursebook start [options] DIR\n",
	}
	for _, c := range commands() {
		if usage[c.name] == "" {
			t.Errorf("no usage is expected of %s", c.name)
		}
	}
	wrong := map[string][]string{"": {}, "start": {"start"}}
	for name, want := range usage {
		for _, help := range []string{"-h", "-help", "--help"} {
			out, errs, status := runCommand(strings.Fields(name + " " + help)...)
			if status != fine || errs != "" || !strings.Contains(out, want) {
				t.Errorf("%q %s: status %d, output %q, error output %q", name, help, status, out, errs)
			}
			checkLineEnds(t, out)
		}
		calls := [][]string{wrong[name]}
		if name != "" {
			calls = [][]string{{name, "-no-such-option"}, wrong[name]}
		}
		for _, args := range calls {
			if args == nil {
				continue
			}
			out, errs, status := runCommand(args...)
			if status != misuse || out != "" || strings.Count(errs, want) != 1 {
				t.Errorf("%q: status %d, output %q, error output %q", args, status, out, errs)
			}
			checkLineEnds(t, errs)
		}
		if name != "" {
			_, errs, _ := runCommand(name, "-no-such-option")
			if first, _, _ := strings.Cut(errs, "\n"); !strings.Contains(first, "-no-such-option") {
				t.Errorf("%s: the first line is %q", name, first)
			}
		}
	}
}

func checkLineEnds(t *testing.T, text string) {
	t.Helper()
	for line := range strings.Lines(text) {
		if line = strings.TrimSuffix(line, "\n"); line != strings.TrimRight(line, " \t") {
			t.Errorf("%q ends in a blank", line)
		}
	}
}
