// Package compiling makes the WebAssembly module of the pages from the sources of a
// checkout, without the fields of declarations that only pages print. Go's linker writes
// function names that are used only for tracebacks, and very many data segments. The
// package removes both and compresses the module with gzip.
package compiling

import (
	"bytes"
	"compress/gzip"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"slices"
	"strings"
)

// Module is a module ready to be published.
type Module struct {
	// Packed is the WebAssembly binary after gzip.
	Packed []byte
	// Notes has a line for each step that makes the module smaller and that was
	// skipped, with the reason. It is usually empty.
	Notes []string
}

// flags are the arguments of go build. The output is the same in every folder, and
// has no symbol tables. -l turns inlining off in this project only: its short
// functions have many callers, so that inlining enlarges the module without a
// noticeable gain in speed. In the standard library inlining makes the module faster
// and smaller.
var flags = []string{"build", "-trimpath", "-buildvcs=false", "-gcflags=coursebook/...=-l",
	"-ldflags=-s -w -buildid=", "-buildmode=c-shared"}

// command is the package path of the module.
const command = "./generator/module"

// Compile compiles, reduces and compresses the module of the checkout at root. It
// returns an error if the module does not compile; a step that cannot make it
// smaller is a note.
func Compile(root string) (Module, error) {
	raw, err := compile(root, command)
	if err != nil {
		return Module{}, err
	}
	small, notes := reduce(raw, goVersion(root))
	packed, err := pack(small)
	return Module{packed, notes}, err
}

// goVersion returns the version that the Go command prints, such as go1.26.8. After
// an error it returns the error, on one line, which is not a tested version.
func goVersion(root string) string {
	out, err := goCommand(root, "env", "GOVERSION")
	if err != nil {
		return "unknown: " + strings.Join(strings.Fields(err.Error()), " ")
	}
	return strings.TrimSpace(out)
}

// reduce returns a module that is smaller and has the same results. It skips a
// step that is not possible, and returns a note with the reason for each; then it
// may return raw unchanged.
func reduce(raw []byte, goVersion string) (module []byte, notes []string) {
	m, err := readLinked(raw)
	if err != nil {
		return raw, []string{fmt.Sprintf("the module is published as the linker wrote it: %v", err)}
	}
	if image, err := blankedBy(goVersion, m.image); err == nil {
		m.image = image
	} else {
		notes = append(notes, fmt.Sprintf("the module keeps its function names and line numbers: %v", err))
	}
	return m.write(), notes
}

// compile returns the linker's output for a package, or an error with the
// compiler's messages. It uses a temporary folder, so that builds can run
// concurrently.
func compile(root, pkg string) ([]byte, error) {
	dir, err := os.MkdirTemp("", "coursebook-")
	if err != nil {
		return nil, err
	}
	defer os.RemoveAll(dir)
	list, err := overlay(root, dir)
	if err != nil {
		return nil, fmt.Errorf("the declarations of the calculators cannot be read: %w", err)
	}
	out := filepath.Join(dir, "module.wasm")
	args := append(slices.Clone(flags), "-overlay", list, "-o", out, pkg)
	if _, err := goCommand(root, args...); err != nil {
		return nil, fmt.Errorf("the module for the pages does not compile: %w", err)
	}
	return os.ReadFile(out)
}

// goCommand runs the Go command in the checkout, for the target of the module, and
// returns its output. If it fails, the error has its messages.
func goCommand(root string, args ...string) (string, error) {
	cmd := exec.Command("go", args...)
	cmd.Dir = root
	cmd.Env = append(os.Environ(), "GOOS=wasip1", "GOARCH=wasm", "GOFLAGS=", "GOWASM=")
	var stderr strings.Builder
	cmd.Stderr = &stderr
	out, err := cmd.Output()
	if err != nil {
		return "", fmt.Errorf("go %s: %w\n%s", args[0], err, stderr.String())
	}
	return string(out), nil
}

// pack returns data compressed with gzip. The header has no name and no time, so
// that equal modules give equal bytes. An error cannot occur in memory.
func pack(raw []byte) ([]byte, error) {
	var b bytes.Buffer
	z, err := gzip.NewWriterLevel(&b, gzip.BestCompression)
	if err != nil {
		return nil, err
	}
	if _, err := z.Write(raw); err != nil {
		return nil, err
	}
	if err := z.Close(); err != nil {
		return nil, err
	}
	return b.Bytes(), nil
}
