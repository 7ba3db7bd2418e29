package weather

import (
	"os"
	"regexp"
	"strings"
	"testing"

	"coursebook/calculators/calc"
)

var shelf = []*calc.Calculator{Evaporation, MixTemp, ColdWeather, HotWeather, SettingTime}

// Sentences are short enough for gloved hands, and no key says two things.
func TestSentencesFit(t *testing.T) {
	texts := regexp.MustCompile(`calc\.Text\("([^"]+)"\)`)
	said := map[string]string{}
	files, err := os.ReadDir(".")
	if err != nil {
		t.Fatal(err)
	}
	for _, f := range files {
		if strings.HasSuffix(f.Name(), "_test.go") {
			continue
		}
		data, err := os.ReadFile(f.Name())
		if err != nil {
			t.Fatal(err)
		}
		for _, m := range texts.FindAllStringSubmatch(string(data), -1) {
			text := calc.Text(m[1])
			if other, ok := said[text.EN()]; ok && other != text.EN() {
				t.Errorf("%s says two things", text.EN())
			}
			said[text.EN()] = text.EN()
			for _, sentence := range strings.Split(text.EN(), ". ") {
				if n := len(strings.Fields(sentence)); n > 25 {
					t.Errorf("%s: sentence of %d words", text.EN(), n)
				}
			}
			if regexp.MustCompile(`\b(DANGER|WARNING|CAUTION|NOTICE)\b`).MatchString(text.EN()) {
				t.Errorf("%s holds a signal word", text.EN())
			}
		}
	}
	if len(said) < 100 {
		t.Errorf("only %d texts were found", len(said))
	}
}
