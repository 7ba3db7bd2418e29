package compiling

import (
	"bytes"
	"compress/gzip"
	"context"
	"encoding/binary"
	"errors"
	"io"
	"io/fs"
	"os"
	"path/filepath"
	"strings"
	"sync"
	"testing"
	"time"

	"coursebook/calculators/calc"
	"coursebook/calculators/calctest"
	"coursebook/calculators/catalog"
	"coursebook/calculators/rules"
	"coursebook/generator/module/wasmtest"
)

// The gzip header by RFC 1952, section 2.3: magic number, deflate, no flags (and thus
// no name), no time. The output decompresses to the input, and is deterministic.
func TestCompress(t *testing.T) {
	raw := bytes.Repeat([]byte("brace every eight feet "), 500)
	packed, err := pack(raw)
	if err != nil {
		t.Fatal(err)
	}
	if !bytes.HasPrefix(packed, []byte{0x1f, 0x8b, 8, 0}) || binary.LittleEndian.Uint32(packed[4:]) != 0 {
		t.Errorf("header % x", packed[:10])
	}
	if size := binary.LittleEndian.Uint32(packed[len(packed)-4:]); int(size) != len(raw) {
		t.Errorf("the size at the end is %d, not %d", size, len(raw))
	}
	if again, _ := pack(raw); !bytes.Equal(again, packed) {
		t.Error("two runs differ")
	}
	z, err := gzip.NewReader(bytes.NewReader(packed))
	if err != nil {
		t.Fatal(err)
	}
	if back, err := io.ReadAll(z); err != nil || !bytes.Equal(back, raw) {
		t.Errorf("not the same after unpacking: %v", err)
	}
}

// checkout is the root of this project.
const checkout = "../../.."

// linkerOutput is the module as the linker wrote it; compiled once.
var linkerOutput = sync.OnceValues(func() ([]byte, error) { return compile(checkout, command) })

func compiled(t *testing.T) []byte {
	t.Helper()
	raw, err := linkerOutput()
	if err != nil {
		t.Fatal(err)
	}
	return raw
}

// reduced returns the module after every step that makes it smaller.
func reduced(t *testing.T) []byte {
	t.Helper()
	small, notes := reduce(compiled(t), goVersion(checkout))
	if len(notes) > 0 {
		t.Fatalf("add the Go version to testedVersions if all other tests pass: %q", notes)
	}
	return small
}

func packedModule(t *testing.T) []byte {
	t.Helper()
	packed, err := pack(reduced(t))
	if err != nil {
		t.Fatal(err)
	}
	return packed
}

// After thousands of requests the reduced module gives the same responses as at
// first.
func TestReducedModuleKeepsAnswering(t *testing.T) {
	const rounds = 2000
	ctx := context.Background()
	m, err := wasmtest.Start(ctx, packedModule(t))
	if err != nil {
		t.Fatal(err)
	}
	defer m.Close(ctx)
	if _, err := m.Ask(ctx, wasmtest.RulesRequest(calctest.Amounts())); err != nil {
		t.Fatal(err)
	}
	requests := []string{"coursebook\t1\thello\n", "coursebook\t1\tdance\n", strings.Repeat("x", 5000)}
	for _, c := range catalog.All() {
		for _, style := range []string{"us\tpoint", "metric\tcomma"} {
			requests = append(requests, "coursebook\t1\trun\ncalc\t"+c.ID+"\nlang\ten\nstyle\t"+style+"\n")
		}
		requests = append(requests, "coursebook\t1\trun\ncalc\t"+c.ID+"\nlang\ten\nset\t"+c.In[0].ID+"\tnot a number\n")
	}
	first := make([]string, len(requests))
	for i := range rounds {
		k := i % len(requests)
		got, err := m.Ask(ctx, requests[k])
		if err != nil {
			t.Fatalf("request %d: %v", i, err)
		}
		if i < len(requests) {
			first[i] = got
			continue
		}
		if got != first[k] {
			t.Fatalf("request %d: the answer to %q has changed", i, requests[k])
		}
	}
	want := calc.Fingerprint(calc.WithRules(catalog.All(), calctest.Amounts(), rules.All()...))
	if !strings.Contains(first[0], want) ||
		!strings.Contains(first[3], "state\tok") {
		t.Errorf("the module answers nonsense: %q", first[:4])
	}
}

// The garbage collector works without the blanked tables: the requests allocate more
// memory in total than the module has at the end.
func TestGarbageIsCollected(t *testing.T) {
	ctx := context.Background()
	m, err := wasmtest.Start(ctx, packedModule(t))
	if err != nil {
		t.Fatal(err)
	}
	defer m.Close(ctx)
	const requests, records = 20, 20_000
	request := "coursebook\t1\thello\n" + strings.Repeat("set\ta\tb\n", records)
	for range requests {
		if _, err := m.Ask(ctx, request); err != nil {
			t.Fatal(err)
		}
	}
	// a record of three strings, in a list, as a line of a list of lines, as bytes
	const asked = requests * records * (3*16 + 24 + 16 + 8)
	if size := m.Memory(); size > asked/2 {
		t.Errorf("the memory grew to %d bytes while %d were asked for: no garbage is collected", size, asked)
	}
}

// A panic prints its message, with a traceback from the blanked tables, and traps.
// Further calls of the trapped instance are errors; a new instance works.
func TestTrap(t *testing.T) {
	ctx := context.Background()
	m, err := wasmtest.Start(ctx, packedModule(t))
	if err != nil {
		t.Fatal(err)
	}
	defer m.Close(ctx)
	const hello = "coursebook\t1\thello\n"
	want, err := m.Ask(ctx, hello)
	if err != nil {
		t.Fatal(err)
	}
	ended := make(chan error, 1)
	go func() {
		_, err := m.Call(ctx, "answer", 1<<30) // beyond the buffer
		ended <- err
	}()
	select {
	case err := <-ended:
		if err == nil || errors.Is(err, wasmtest.ErrTrapped) {
			t.Fatalf("a length beyond the buffer gives %v, not a trap", err)
		}
	case <-time.After(30 * time.Second):
		t.Fatal("the module did not end after a panic")
	}
	if got := m.Printed(); !strings.Contains(got, "panic: runtime error: slice bounds out of range") {
		t.Errorf("the panic prints %q", got)
	}
	if got, err := m.Ask(ctx, hello); !errors.Is(err, wasmtest.ErrTrapped) || got != "" {
		t.Errorf("a trapped instance answers %q, %v", got, err)
	}
	fresh, err := wasmtest.Start(ctx, packedModule(t))
	if err != nil {
		t.Fatal(err)
	}
	defer fresh.Close(ctx)
	if got, err := fresh.Ask(ctx, hello); err != nil || got != want {
		t.Errorf("a fresh instance answers %q, %v", got, err)
	}
}

// The same sources give the same bytes in another folder.
func TestSameBytesInAnotherFolder(t *testing.T) {
	other := filepath.Join(t.TempDir(), "another folder", "deeper")
	for _, part := range []string{"calculators", "generator"} {
		copyTree(t, filepath.Join(checkout, part), filepath.Join(other, part))
	}
	for _, name := range []string{"go.mod", "go.sum"} {
		copyFile(t, filepath.Join(checkout, name), filepath.Join(other, name))
	}
	raw, err := compile(other, command)
	if err != nil {
		t.Fatal(err)
	}
	if !bytes.Equal(raw, compiled(t)) {
		t.Error("the module differs from folder to folder")
	}
}

func copyTree(t *testing.T, from, to string) {
	t.Helper()
	err := filepath.WalkDir(from, func(name string, d fs.DirEntry, err error) error {
		if err != nil || d.IsDir() || strings.HasSuffix(name, "_test.go") {
			return err
		}
		rel, err := filepath.Rel(from, name)
		if err == nil {
			copyFile(t, name, filepath.Join(to, rel))
		}
		return err
	})
	if err != nil {
		t.Fatal(err)
	}
}

func copyFile(t *testing.T, from, to string) {
	t.Helper()
	data, err := os.ReadFile(from)
	if err != nil {
		t.Fatal(err)
	}
	if err := os.MkdirAll(filepath.Dir(to), 0o755); err != nil {
		t.Fatal(err)
	}
	if err := os.WriteFile(to, data, 0o644); err != nil {
		t.Fatal(err)
	}
}

// If the module does not compile, the error contains the output of the compiler.
func TestModuleThatDoesNotCompile(t *testing.T) {
	root := t.TempDir()
	if err := os.MkdirAll(filepath.Join(root, "generator/module"), 0o755); err != nil {
		t.Fatal(err)
	}
	for name, text := range map[string]string{"go.mod": "module coursebook\n\ngo 1.26\n",
		"generator/module/main.go": "package main\n\nfunc main() { nothing() }\n"} {
		if err := os.WriteFile(filepath.Join(root, name), []byte(text), 0o644); err != nil {
			t.Fatal(err)
		}
	}
	m, err := Compile(root)
	if err == nil || m.Packed != nil || !strings.Contains(err.Error(), "undefined: nothing") {
		t.Errorf("%v", err)
	}
	t.Setenv("PATH", t.TempDir())
	if _, err := Compile(root); err == nil {
		t.Error("the module was compiled without Go")
	}
	if got := goVersion(root); !strings.Contains(got, "unknown: go env: ") || strings.Contains(got, "\n") {
		t.Errorf("without Go its version is %q", got)
	}
}
