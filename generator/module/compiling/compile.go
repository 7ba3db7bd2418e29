// Package compiling makes the WebAssembly module behind the pages from the
// sources of a checkout. Go's linker writes it with function names that are
// used only for tracebacks and in very many data segments. The package removes
// both and packs the module with gzip.
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

// flags make the same bytes in every folder, without symbol tables. Inlining
// (-l turns it off) makes the standard library faster and smaller, because
// functions with one or two callers disappear. It makes our own packages
// larger, whose small functions have many callers, and no keystroke faster.
var flags = []string{"build", "-trimpath", "-buildvcs=false", "-gcflags=coursebook/...=-l",
	"-ldflags=-s -w -buildid=", "-buildmode=c-shared"}

// command is the package of the module.
const command = "./generator/module"

// Compile makes the module of the checkout at root.
func Compile(root string) (Module, error) {
	raw, err := compile(root, command)
	if err != nil {
		return Module{}, err
	}
	small, notes := reduce(raw, goVersion(root))
	packed, err := pack(small)
	return Module{packed, notes}, err
}

// goVersion is the version of the Go command as it names it, such as go1.26.8.
// Where it cannot be had, the result is the reason, on one line; it is no tested
// version.
func goVersion(root string) string {
	out, err := goCommand(root, "env", "GOVERSION")
	if err != nil {
		return "unknown: " + strings.Join(strings.Fields(err.Error()), " ")
	}
	return strings.TrimSpace(out)
}

// reduce makes a module smaller without changing what it computes. A step that
// is not possible is left out, and a note gives the reason.
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

// compile returns the linker's output for a package. It works in a temporary
// folder, so that builds can run side by side.
func compile(root, pkg string) ([]byte, error) {
	dir, err := os.MkdirTemp("", "coursebook-")
	if err != nil {
		return nil, err
	}
	defer os.RemoveAll(dir)
	out := filepath.Join(dir, "module.wasm")
	if _, err := goCommand(root, append(flags, "-o", out, pkg)...); err != nil {
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
