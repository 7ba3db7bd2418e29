// Package compiling makes the WebAssembly module behind the pages from the
// sources of a checkout: compiled, made smaller, packed with gzip.
package compiling

import (
	"bytes"
	"compress/gzip"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
)

// Module is a module ready to be published.
type Module struct {
	// Packed is the WebAssembly binary after gzip.
	Packed []byte
	// Notes say, a line each, which step that makes the module smaller was
	// left out, and why. Usually there is none.
	Notes []string
}

// flags make the same bytes in every folder. Inlining (-l turns it off) makes
// the standard library faster and smaller, because functions with one or two
// callers disappear. It makes our own packages larger, whose small functions
// have many callers; it is on for the two that every keystroke runs through.
var flags = []string{"build", "-trimpath", "-buildvcs=false",
	"-gcflags=all=-l", "-gcflags=std=",
	"-gcflags=coursebook/calculators/quantity=", "-gcflags=coursebook/generator/module/protocol=",
	"-ldflags=-w -buildid=", "-buildmode=c-shared"}

// Compile makes the module of the checkout at root.
func Compile(root string) (Module, error) {
	raw, err := compile(root)
	if err != nil {
		return Module{}, err
	}
	var m Module
	if lean, err := slim(raw); err == nil {
		raw = lean
	} else {
		m.Notes = append(m.Notes, fmt.Sprintf("the tables of function names stay in the module: %v", err))
	}
	m.Packed, err = pack(raw)
	return m, err
}

// compile returns the linker's output. It works in a temporary folder, so
// that builds can run side by side.
func compile(root string) ([]byte, error) {
	dir, err := os.MkdirTemp("", "coursebook-")
	if err != nil {
		return nil, err
	}
	defer os.RemoveAll(dir)
	out := filepath.Join(dir, "module.wasm")
	if _, err := goCommand(root, append(flags, "-o", out, "./generator/module")...); err != nil {
		return nil, fmt.Errorf("the module for the pages does not compile: %w", err)
	}
	return os.ReadFile(out)
}

// goCommand runs the Go command in the checkout, for the target of the module.
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

// pack compresses with gzip. The header holds no name and no time, so that the
// same module always gives the same bytes.
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
