package main

import (
	"bytes"
	"regexp"
	"strings"
	"testing"
)

// TestQuery: an explanation gives the weight and the matches of each word, and for each
// page the parts of its score, which add up, and the fields of the matches.
func TestQuery(t *testing.T) {
	var out, errs bytes.Buffer
	args := []string{"-content", contentDir, "-query", "how many stinger for 40 ft"}
	status := runInspect(std{out: &out, err: &errs}, args)
	if status != fine || errs.Len() > 0 {
		t.Fatalf("%d: %s", status, errs.String())
	}
	text := out.String()
	for _, want := range []string{
		`(?m)^stinger: weight \d+\.\d\d; finds stinger 1\.00, .*vibrator 0\.60`,
		`(?m)^40ft: weight \d+\.\d\d \(share 0\.25\); finds 40ft 1\.00`,
		`(?m)^asks for: calculator$`,
		`(?m)^\d+ pages$`,
		`(?m)^1\. en/\S+ \(.+\) \d+\.\d{3} = \d\.\d\d × \(words \d`,
		`(?m)^   stinger \d\.\d{3}, match 1\.00, in (title, |heading, )*header words`,
	} {
		if !regexp.MustCompile(want).MatchString(text) {
			t.Errorf("%s is missing in\n%s", want, text)
		}
	}
	for lang, code := range map[string]int{"es": fine, "fr": faulty} {
		args := []string{"-content", contentDir, "-query", "puntal", "-lang", lang}
		if status := runInspect(std{out: &out, err: &errs}, args); status != code {
			t.Errorf("%s: status %d, want %d", lang, status, code)
		}
	}
	if !strings.Contains(errs.String(), "no index in the language fr") {
		t.Errorf("got %q", errs.String())
	}
}
