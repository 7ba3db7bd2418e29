// Package house finds what the generator builds with: the theme, the module
// for the pages, the translations and the starter manual. In a checkout they
// are read and the module is compiled on the spot; a binary made by
// `make dist` carries them in itself and needs no Go.
package house

import (
	"bytes"
	"compress/gzip"
	"errors"
	"fmt"
	"io/fs"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
)

// House gives access to the parts. Each may be asked for more than once.
type House struct {
	root   string // of the checkout; empty in a binary that carries its parts
	packed fs.FS  // nil in a checkout
}

// CheckoutVariable names the checkout for a command that runs outside it, as
// the whole-program tests do.
const CheckoutVariable = "COURSEBOOK_CHECKOUT"

// Open finds the parts.
func Open() (*House, error) {
	if packed != nil {
		return &House{packed: packed}, nil
	}
	if root := os.Getenv(CheckoutVariable); root != "" {
		return &House{root: root}, nil
	}
	root, err := checkout()
	if err != nil {
		return nil, err
	}
	return &House{root: root}, nil
}

// checkout walks up from the working folder to the go.mod of this project.
func checkout() (string, error) {
	dir, err := os.Getwd()
	if err != nil {
		return "", err
	}
	for {
		data, err := os.ReadFile(filepath.Join(dir, "go.mod"))
		if err == nil && bytes.HasPrefix(data, []byte("module coursebook\n")) {
			return dir, nil
		}
		up := filepath.Dir(dir)
		if up == dir {
			return "", errors.New("run coursebook inside its checkout, or use the binary of `make dist`, which carries its theme and module in itself")
		}
		dir = up
	}
}

// Root is the folder of the checkout; empty in a binary that carries its parts.
func (h *House) Root() string { return h.root }

func (h *House) part(name string) (fs.FS, error) {
	if h.packed != nil {
		return fs.Sub(h.packed, name)
	}
	return os.DirFS(filepath.Join(h.root, filepath.FromSlash(name))), nil
}

// Where the parts lie, in the checkout (but for the module) and in the pack.
const (
	ThemePath   = "themes/plumb"
	StarterPath = "generator/starter"
	ModulePath  = "browser.wasmz"
)

// Theme is the default theme.
func (h *House) Theme() (fs.FS, error) { return h.part(ThemePath) }

// Starter is the small manual that `coursebook start` writes.
func (h *House) Starter() (fs.FS, error) { return h.part(StarterPath) }

// moduleFlags make the same bytes in every folder. Inlining (-l turns it off)
// makes the standard library both faster and smaller, since functions used
// once or twice go away; our own packages, whose small functions are used
// everywhere, it makes larger, and only those that every keystroke runs
// through are worth that. The names stay in for slim.
var moduleFlags = []string{"build", "-trimpath", "-buildvcs=false",
	"-gcflags=all=-l", "-gcflags=std=", "-gcflags=coursebook/calculators/quantity=", "-gcflags=coursebook/generator/browser/answer=",
	"-ldflags=-w -buildid=", "-buildmode=c-shared"}

// Module is the module behind the pages, gzip-compressed.
func (h *House) Module() ([]byte, error) {
	if h.packed != nil {
		return fs.ReadFile(h.packed, ModulePath)
	}
	raw, err := h.compile()
	if err != nil {
		return nil, err
	}
	if lean, err := slim(raw); err == nil {
		raw = lean // else a Go release has changed its tables: heavier, but as good
	}
	return compress(raw)
}

// compile makes the module in a folder of its own, so that builds may run side
// by side.
func (h *House) compile() ([]byte, error) {
	dir, err := os.MkdirTemp("", "coursebook-")
	if err != nil {
		return nil, err
	}
	defer os.RemoveAll(dir)
	out := filepath.Join(dir, "browser.wasm")
	cmd := exec.Command("go", append(moduleFlags, "-o", out, "./generator/browser")...)
	cmd.Dir = h.root
	cmd.Env = append(os.Environ(), "GOOS=wasip1", "GOARCH=wasm", "GOFLAGS=", "GOWASM=")
	var stderr strings.Builder
	cmd.Stderr = &stderr
	if err := cmd.Run(); err != nil {
		return nil, fmt.Errorf("the module for the pages does not compile: %w\n%s", err, stderr.String())
	}
	return os.ReadFile(out)
}

// compress is deterministic: no name and no time in the header.
func compress(raw []byte) ([]byte, error) {
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
