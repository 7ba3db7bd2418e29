package main

import (
	"encoding/json"
	"errors"
	"io"
	"os"
	"os/exec"
	"slices"
	"strings"
	"testing"
)

// allowed lists the packages of the project that each package may import. The
// imports have no cycles. DEVELOPERS.md has the same table, with the reasons.
var allowed = map[string][]string{
	"calculators":            {},
	"calculators/quantity":   {},
	"calculators/expression": {},
	"calculators/figure":     {},
	"calculators/calc":       {"calculators/quantity", "calculators/figure", "calculators/expression"},
	"calculators/displays":   {"calculators/calc", "calculators/quantity"},
	"calculators/calctest": {"calculators/calc", "calculators/quantity", "calculators/figure",
		"calculators/expression", "calculators/rules"},
	"calculators/rules":         {"calculators/calc", "calculators/displays", "calculators/quantity"},
	"calculators/geometry":      topic,
	"calculators/pressure":      append(slices.Clone(topic), "calculators/weather"), // SetArrhenius
	"calculators/ties":          topic,
	"calculators/placing":       append(slices.Clone(topic), "calculators/geometry"), // Loads
	"calculators/consolidation": topic,
	"calculators/bracing":       topic,
	"calculators/weather":       topic,
	"calculators/strength":      topic,
	"calculators/daylight":      topic,
	"calculators/steel":         topic,
	"calculators/conversion":    topic,
	"calculators/catalog":       {"calculators/*"}, // all rooms
	"generator/search":          {},
	"generator/search/stem":     {},
	"generator/module/protocol": {"calculators/calc", "calculators/quantity", "calculators/figure",
		"generator/search"},
	"generator/module":           {"calculators/catalog", "calculators/rules", "generator/module/protocol"},
	"generator/module/compiling": {},
	"generator/module/wasmtest":  {},
	"generator/internal/fault":   {},
	"generator/internal/page":    {"generator/internal/fault"},
	"generator/internal/source":  {"generator/internal/fault"},
	"generator/internal/markdown": {"generator/internal/fault", "generator/internal/source", "generator/internal/page",
		"generator/internal/markdown/amount", "calculators/quantity", "calculators/rules"},
	"generator/internal/markdown/amount": {"calculators/quantity"},
	"generator/internal/readability":     {},
	"generator/internal/terms":           {"generator/internal/fault"},
	"generator/internal/site": {"generator/internal/fault", "generator/internal/source", "generator/internal/page",
		"generator/internal/readability", "generator/internal/markdown", "calculators/calc", "calculators/quantity",
		"calculators/rules"},
	"generator/internal/form": {"calculators/calc", "calculators/quantity", "calculators/figure",
		"calculators/expression"},
	"generator/internal/translations": {"calculators/calc", "calculators/quantity", "generator/internal/fault"},
	"generator/internal/listing":      {},
	"generator/internal/qr":           {},
	"generator/internal/theme": {"generator/internal/page", "generator/internal/form",
		"generator/internal/translations"},
	"generator/internal/bundle":  {"generator/internal/fault"},
	"generator/internal/offline": {"generator/internal/fault", "generator/internal/output"},
	"generator/internal/release": {"generator/internal/output"},
	"generator/internal/output":  {"generator/internal/fault"},
	"generator/internal/parts":   {"generator/module/compiling"},
	"generator/internal/preview": {"generator/internal/fault"},
	"generator/internal/render": {"generator/internal/fault", "generator/internal/source", "generator/internal/page",
		"generator/internal/markdown", "generator/internal/markdown/amount", "generator/internal/readability",
		"generator/internal/site", "generator/internal/form", "generator/internal/listing", "generator/internal/qr",
		"generator/internal/theme", "generator/internal/bundle", "generator/internal/release",
		"generator/internal/output", "calculators", "calculators/calc", "calculators/quantity",
		"calculators/rules"},
	"generator/internal/pictures": {"generator/internal/fault", "generator/internal/source"},
	"generator/internal/entries": {"generator/internal/page", "generator/internal/site", "generator/internal/form",
		"generator/search"},
	// calls the other packages in order
	"generator/internal/build": {"generator/*", "calculators", "calculators/calc", "calculators/quantity",
		"calculators/rules"},
	"generator/bench": {},
	"generator/pack":  {"generator/internal/parts"},
	"generator":       {"generator/*", "calculators", "calculators/*"},
}

// topic lists what a topic of calculators may import. A topic that imports
// another topic gets a longer list in the table, without a cycle.
var topic = []string{"calculators/calc", "calculators/quantity", "calculators/figure", "calculators/displays"}

// room returns what the package of one calculator may import: what a topic may,
// and every topic, but no other room. The table has no line for a room.
func room() []string {
	list := slices.Clone(topic)
	for name := range allowed {
		if isTopic(name) {
			list = append(list, name)
		}
	}
	return list
}

// isTopic reports whether a package of the table is a topic of calculators.
func isTopic(name string) bool {
	rule := allowed[name]
	return strings.Count(name, "/") == 1 && len(rule) >= len(topic) && slices.Equal(rule[:len(topic)], topic)
}

// isRoom reports whether a package is the package of one calculator:
// calculators/TOPIC/ROOM.
func isRoom(name string) bool {
	parts := strings.Split(name, "/")
	return len(parts) == 3 && isTopic(parts[0]+"/"+parts[1])
}

// knowsCatalog lists the packages that may import the catalog of calculators.
// All others get a list of calculators as an argument, so that tests can pass
// invented ones.
var knowsCatalog = []string{"generator", "generator/module"}

const module = "coursebook/"

type listed struct {
	ImportPath string
	Standard   bool
	Module     *struct{ Main bool }
	Imports    []string
}

func goList(t *testing.T, env []string, args ...string) []listed {
	t.Helper()
	cmd := exec.Command("go", append([]string{"list", "-json=ImportPath,Standard,Module,Imports"}, args...)...)
	cmd.Dir = ".."
	cmd.Env = append(os.Environ(), env...)
	var stderr strings.Builder
	cmd.Stderr = &stderr
	out, err := cmd.Output()
	if err != nil {
		t.Fatalf("go list: %v\n%s", err, stderr.String())
	}
	var list []listed
	dec := json.NewDecoder(strings.NewReader(string(out)))
	for {
		var p listed
		if err := dec.Decode(&p); errors.Is(err, io.EOF) {
			return list
		} else if err != nil {
			t.Fatal(err)
		}
		list = append(list, p)
	}
}

func TestImportsGoOneWay(t *testing.T) {
	seen := map[string]bool{}
	rooms, ofRoom := map[string]bool{}, room()
	for _, tag := range [][]string{nil, {"GOOS=wasip1", "GOARCH=wasm"}} {
		for _, p := range goList(t, tag, "./...") {
			name := strings.TrimPrefix(p.ImportPath, module)
			seen[name] = true
			rule, ok := allowed[name]
			if isRoom(name) {
				rule, ok, rooms[name] = ofRoom, true, true
			}
			if !ok {
				t.Errorf("%s is not in the table of imports: give it a line", name)
				continue
			}
			for _, i := range p.Imports {
				imported, inProject := strings.CutPrefix(i, module)
				if inProject && !permits(rule, imported) {
					t.Errorf("%s must not import %s", name, imported)
				}
				if imported == "calculators/catalog" && !slices.Contains(knowsCatalog, name) {
					t.Errorf("%s must be given its calculators, not import the catalog", name)
				}
			}
		}
	}
	for name := range allowed {
		if !seen[name] {
			t.Errorf("the table of imports names %s, which does not exist", name)
		}
	}
	if len(rooms) < 37 {
		t.Errorf("only %d rooms of calculators are found", len(rooms))
	}
}

func permits(rule []string, name string) bool {
	return slices.ContainsFunc(rule, func(r string) bool {
		folder, all := strings.CutSuffix(r, "*")
		return r == name || all && strings.HasPrefix(name, folder)
	})
}

// light lists the packages of the standard library that the module's packages
// may import. Others, such as fmt, sort or time, make the module larger. On this
// target the runtime itself contains parts of os and reflect.
var light = []string{"cmp", "errors", "math", "runtime", "slices", "strconv", "strings", "unicode/utf8"}

// The module holds no third-party code, and its packages import nothing but
// each other and the light packages. Only its main package may use unsafe.
func TestModuleImportsAreLight(t *testing.T) {
	seen := map[string]bool{}
	for _, p := range goList(t, []string{"GOOS=wasip1", "GOARCH=wasm"}, "-deps", "./generator/module") {
		if p.Standard {
			continue
		}
		if p.Module == nil || !p.Module.Main {
			t.Errorf("third-party code in the module: %s", p.ImportPath)
			continue
		}
		name := strings.TrimPrefix(p.ImportPath, module)
		seen[name] = true
		for _, i := range p.Imports {
			inProject := strings.HasPrefix(i, module)
			host := name == "generator/module" && i == "unsafe"
			if !inProject && !host && !slices.Contains(light, i) {
				t.Errorf("%s imports %s, which is too heavy for the module; it may import %s",
					p.ImportPath, i, strings.Join(light, ", "))
			}
		}
	}
	for _, name := range []string{
		"calculators/calc", "calculators/quantity", "generator/search", "generator/module/protocol",
	} {
		if !seen[name] {
			t.Errorf("%s was not checked: the module does not import it", name)
		}
	}
}
