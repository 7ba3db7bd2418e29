package main_test

import (
	"context"
	"math"
	"path/filepath"
	"slices"
	"strconv"
	"strings"
	"sync"
	"testing"

	"coursebook/calculators/calc"
	"coursebook/calculators/calctest"
	"coursebook/calculators/catalog"
	"coursebook/calculators/rules"
	"coursebook/generator/module/compiling"
	"coursebook/generator/module/protocol"
	"coursebook/generator/module/wasmtest"
)

// packed compiles the module as it is shipped, once for all tests.
var packed = sync.OnceValues(func() ([]byte, error) {
	m, err := compiling.Compile(filepath.Join("..", ".."))
	return m.Packed, err
})

func start(t *testing.T) *wasmtest.Instance {
	t.Helper()
	data, err := packed()
	if err != nil {
		t.Fatal(err)
	}
	m, err := wasmtest.Start(context.Background(), data)
	if err != nil {
		t.Fatal(err)
	}
	t.Cleanup(func() { m.Close(context.Background()) })
	return m
}

func ask(t *testing.T, m *wasmtest.Instance, lines ...string) []string {
	t.Helper()
	got, err := m.Ask(context.Background(), strings.Join(lines, "\n")+"\n")
	if err != nil {
		t.Fatal(err)
	}
	return strings.Split(strings.TrimSuffix(got, "\n"), "\n")
}

// startWithRules starts the module and a server of native code, both with the house
// rules of the manual.
func startWithRules(t *testing.T) (*wasmtest.Instance, *protocol.Server) {
	t.Helper()
	m, server := start(t), protocol.New(catalog.All(), rules.All()...)
	request := wasmtest.RulesRequest(calctest.Amounts())
	if got := ask(t, m, strings.TrimSuffix(request, "\n")); got[0] != "coursebook\t1\tok" {
		t.Fatalf("rules: %q", got)
	}
	server.Answer(request)
	return m, server
}

// The module imports only host functions that the script of the pages provides.
func TestModuleImportsAndSize(t *testing.T) {
	data, err := packed()
	if err != nil {
		t.Fatal(err)
	}
	names, err := wasmtest.Imports(context.Background(), data)
	if err != nil {
		t.Fatal(err)
	}
	const most = 10 // imports of a reactor without fmt; see DEVELOPERS.md
	if len(names) > most {
		t.Errorf("the module imports %d host functions, more than %d: %v", len(names), most, names)
	}
	for _, n := range names {
		if !strings.HasPrefix(n, "wasi_snapshot_preview1.") {
			t.Errorf("the module imports %s", n)
		}
	}
	t.Logf("module: %d bytes gzip, imports %v", len(data), names)
}

func TestModuleHasTheFingerprintOfTheDeclarations(t *testing.T) {
	m := start(t)
	for _, amounts := range []map[string]string{nil, calctest.Amounts(), {"lift": "18 in", "no-such-rule": "1 ft"}} {
		ask(t, m, strings.TrimSuffix(wasmtest.RulesRequest(amounts), "\n"))
		got := ask(t, m, "coursebook\t1\thello")
		want := "fingerprint\t" + calc.Fingerprint(calc.WithRules(catalog.All(), amounts, rules.All()...))
		if len(got) != 2 || got[1] != want {
			t.Errorf("%v: got %q, want %q", amounts, got, want)
		}
	}
}

// The module gives the same responses as the native code: for the default case of
// every calculator, in both systems of units.
func TestModuleAnswersLikeNativeCode(t *testing.T) {
	m, server := startWithRules(t)
	for _, c := range catalog.All() {
		for _, style := range []string{"us\tpoint", "metric\tpoint", "metric\tcomma"} {
			request := "coursebook\t1\trun\ncalc\t" + c.ID + "\nlang\ten\nstyle\t" + style + "\n"
			got, err := m.Ask(context.Background(), request)
			if err != nil {
				t.Fatal(err)
			}
			sameAnswer(t, c.ID+" "+style, server.Answer(request), got)
		}
	}
}

// The module samples and marks number questions like the native code: for the first
// output of every calculator that is a number.
func TestModulePractisesLikeNativeCode(t *testing.T) {
	m, server := startWithRules(t)
	asked := 0
	for _, c := range catalog.All() {
		i := slices.IndexFunc(c.Out, func(f calc.Field) bool { return f.Kind == calc.Number })
		k := slices.IndexFunc(c.In,
			func(f calc.Field) bool { return f.Kind == calc.Number && f.Usual != "" && f.UsualValue().Num != 0 })
		if i < 0 || k < 0 {
			continue
		}
		head := "\ncalc\t" + c.ID + "\nlang\ten\nstyle\tmetric\tcomma\nanswer\t" + c.Out[i].ID + "\ntolerance\t2 %\n"
		request := "coursebook\t1\tpractice" + head + "vary\t" + c.In[k].ID + "\nseed\t20261125\n"
		native := server.Answer(request)
		got, err := m.Ask(context.Background(), request)
		if err != nil {
			t.Fatal(err)
		}
		sameAnswer(t, c.ID, native, got)
		if !strings.HasPrefix(native, "coursebook\t1\tok") {
			continue // this output has no value in the default case
		}
		request = "coursebook\t1\tjudge" + head + "typed\t1\n"
		for _, line := range strings.Split(native, "\n") {
			if strings.HasPrefix(line, "set\t") {
				request += line + "\n"
			}
		}
		if got, err = m.Ask(context.Background(), request); err != nil {
			t.Fatal(err)
		}
		sameAnswer(t, c.ID, server.Answer(request), got)
		if !strings.Contains(got, "\nverdict\t") {
			t.Errorf("%s: no verdict in %q", c.ID, got)
		}
		asked++
	}
	if asked < 25 {
		t.Errorf("only %d calculators can ask", asked)
	}
}

// sameAnswer compares two responses: shown text exactly, raw SI numbers within 1e-12,
// because Exp and Pow differ in the last bits.
func sameAnswer(t *testing.T, what, native, module string) {
	t.Helper()
	a, b := strings.Split(native, "\n"), strings.Split(module, "\n")
	if len(a) != len(b) {
		t.Errorf("%s: %d lines natively, %d in the module", what, len(a), len(b))
		return
	}
	for i := range a {
		x, y := strings.Split(a[i], "\t"), strings.Split(b[i], "\t")
		if x[0] == "out" && len(x) == 6 && len(y) == 6 && x[5] != "" {
			p, _ := strconv.ParseFloat(x[5], 64)
			q, _ := strconv.ParseFloat(y[5], 64)
			if math.Abs(p-q) > 1e-12*math.Abs(p) {
				t.Errorf("%s: %s: %v natively, %v in the module", what, x[1], p, q)
			}
			x, y = x[:5], y[:5]
		}
		if strings.Join(x, "\t") != strings.Join(y, "\t") {
			t.Errorf("%s: natively %q, in the module %q", what, a[i], b[i])
		}
	}
}

// The shipped module computes every published value of an output of a calculator.
func TestPublishedValuesInTheModule(t *testing.T) {
	m := start(t)
	for _, c := range catalog.All() {
		t.Run(c.ID, func(t *testing.T) {
			rows, err := calctest.Published(c)
			if err != nil {
				t.Fatal(err)
			}
			checked := 0
			for _, r := range rows {
				if r.Formula() == "" {
					checkRow(t, m, c, r)
					checked++
				}
			}
			if checked == 0 {
				t.Errorf("%s: no published value checks an output", c.ID)
			}
		})
	}
}

func checkRow(t *testing.T, m *wasmtest.Instance, c *calc.Calculator, r calctest.Row) {
	t.Helper()
	lines := []string{"coursebook\t1\trun", "calc\t" + c.ID, "lang\ten", "style\tus\tpoint"}
	for _, e := range r.Inputs {
		lines = append(lines, "set\t"+e.Path+"\t"+e.Text)
	}
	for _, line := range ask(t, m, lines...) {
		f := strings.Split(line, "\t")
		if f[0] != "out" || f[1] != r.Output {
			continue
		}
		if f[5] == "" {
			label := calc.Locale{}.Write(outputField(c, r.Output), calc.ChoiceOf(r.Printed))
			if (f[3] == label) == (r.Status == "misprint") {
				t.Errorf("%s %s: %s, published %s", c.ID, r.ID, f[3], label)
			}
			return
		}
		si, err := strconv.ParseFloat(f[5], 64)
		if err != nil {
			t.Fatal(err)
		}
		if _, err := r.Compare(outputField(c, r.Output), si); err != nil {
			t.Errorf("%s %v", c.ID, err)
		}
		return
	}
	t.Errorf("%s %s: the module gave no output %s", c.ID, r.ID, r.Output)
}

// outputField returns the declaration of an output by its path. It ignores row
// numbers.
func outputField(c *calc.Calculator, output string) calc.Field {
	path := strings.Split(output, ".")
	fields := c.Out
	for _, id := range []string{path[0], path[len(path)-1]} {
		i := slices.IndexFunc(fields, func(f calc.Field) bool { return f.ID == id })
		if i < 0 {
			return calc.Field{}
		}
		if fields[i].Kind != calc.Rows {
			return fields[i]
		}
		fields = fields[i].Cols
	}
	return calc.Field{}
}

// Malformed requests get a response; they do not trap the module.
func TestModuleRefusesNonsense(t *testing.T) {
	m := start(t)
	for _, c := range []struct{ request, want string }{
		{"", "different versions"},
		{"coursebook\t2\thello", "different versions"},
		{"coursebook\t1\tdance", "no command dance"},
		{"coursebook\t1\trun\ncalc\tnone", "no calculator none"},
		{"coursebook\t1\tsearch\nlang\ten\nq\twall", "not loaded"},
		{"coursebook\t1\tindex\nlang\ten\ndata\trubbish", ""},
	} {
		got := ask(t, m, c.request)
		if !strings.HasPrefix(got[0], "coursebook\t1\tfault\t") || !strings.Contains(got[0], c.want) {
			t.Errorf("%q: %q", c.request, got)
		}
	}
	if got := ask(t, m, "coursebook\t1\thello"); got[0] != "coursebook\t1\tok" {
		t.Errorf("after nonsense the module says %q", got)
	}
}
