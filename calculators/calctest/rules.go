package calctest

import (
	"os"
	"path/filepath"
	"sync"

	"coursebook/calculators/calc"
	"coursebook/calculators/rules"

	"go.yaml.in/yaml/v3"
)

// Amounts returns the amounts of the house rules in content/manual.yaml by ID. It panics
// if the file cannot be read.
func Amounts() map[string]string { return amounts() }

var amounts = sync.OnceValue(func() map[string]string {
	root, err := projectRoot()
	if err != nil {
		panic(err)
	}
	data, err := os.ReadFile(filepath.Join(root, "content", "manual.yaml"))
	if err != nil {
		panic(err)
	}
	var manual struct {
		Rules []struct{ ID, Amount string }
	}
	if err := yaml.Unmarshal(data, &manual); err != nil {
		panic(err)
	}
	list := map[string]string{}
	for _, r := range manual.Rules {
		list[r.ID] = r.Amount
	}
	return list
})

// WithRules returns a calculator with the amounts of the manual's house rules as default
// values.
func WithRules(c *calc.Calculator) *calc.Calculator {
	return calc.WithRules([]*calc.Calculator{c}, Amounts(), rules.All()...)[0]
}
