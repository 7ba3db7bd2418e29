// Package parts gives access to the theme, the compiled module and the starter
// manual. In a checkout they are read from its folders, and the module is compiled.
// A binary made by `make dist` embeds them and needs no Go.
package parts

import (
	"bytes"
	"errors"
	"io/fs"
	"os"
	"path/filepath"
	"strings"

	"coursebook/generator/module/compiling"
)

// Source gives access to the parts. Its methods may be called repeatedly.
type Source struct {
	root   string // of the checkout; empty in a binary that contains the parts
	packed fs.FS  // nil in a checkout
}

// CheckoutVariable is the environment variable with the path of the checkout, for
// a command that runs outside it, as in tests.
const CheckoutVariable = "COURSEBOOK_CHECKOUT"

// Open returns the embedded parts or, if there are none, those of the checkout
// named by CheckoutVariable or around the working folder. Without any it returns
// an error.
func Open() (*Source, error) {
	if packed != nil {
		return &Source{packed: packed}, nil
	}
	if root := os.Getenv(CheckoutVariable); root != "" {
		return &Source{root: root}, nil
	}
	root, err := checkout()
	if err != nil {
		return nil, err
	}
	return &Source{root: root}, nil
}

// checkout returns the nearest folder, from the working folder upwards, with the
// go.mod of this project, or an error if there is none.
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
			return "", errors.New("run coursebook inside its checkout, " +
				"or use the binary of `make dist`, which contains its theme and module")
		}
		dir = up
	}
}

// Root returns the folder of the checkout, or "" in a binary that embeds the parts.
func (s *Source) Root() string { return s.root }

// part returns the folder of a part by its slash path in the project. A path that
// is not valid is an error; in a checkout it does not check that the folder
// exists.
func (s *Source) part(name string) (fs.FS, error) {
	if s.packed != nil {
		return fs.Sub(s.packed, name)
	}
	return os.DirFS(filepath.Join(s.root, filepath.FromSlash(name))), nil
}

// Paths of the parts. The paths of the module exist only in an embedded pack.
const (
	ThemePath   = "themes/plumb"
	StarterPath = "generator/starter"
	manualPath  = "content/manual.yaml"
	modulePath  = "module.wasmz"
	notesPath   = "module-notes.txt" // one note on each line
)

// Theme returns the default theme. It returns an error as part does.
func (s *Source) Theme() (fs.FS, error) { return s.part(ThemePath) }

// Starter returns the manual that `coursebook start` writes. It returns an error
// as part does.
func (s *Source) Starter() (fs.FS, error) { return s.part(StarterPath) }

// Manual returns the manual.yaml of the project's own manual, for its house rules,
// and its path. It returns an error if the file cannot be read.
func (s *Source) Manual() (path string, data []byte, err error) {
	files := s.packed
	if files == nil {
		files = os.DirFS(s.root)
	}
	data, err = fs.ReadFile(files, manualPath)
	return manualPath, data, err
}

// Module returns the compiled module. In a checkout each call compiles it, and
// returns an error if that fails.
func (s *Source) Module() (compiling.Module, error) {
	if s.packed == nil {
		return compiling.Compile(s.root)
	}
	data, err := fs.ReadFile(s.packed, modulePath)
	if err != nil {
		return compiling.Module{}, err
	}
	notes, err := fs.ReadFile(s.packed, notesPath)
	if err != nil {
		return compiling.Module{}, err
	}
	return compiling.Module{Packed: data, Notes: strings.FieldsFunc(string(notes), newline)}, nil
}

func newline(r rune) bool { return r == '\n' }

// Pack writes the parts to the folder out, which a build with the tag dist embeds.
// It empties the folder first. It returns the notes of the module: the steps of
// the compilation that were omitted. It returns an error if a part cannot be read
// or written.
func (s *Source) Pack(out string) (notes []string, err error) {
	if err := os.RemoveAll(out); err != nil {
		return nil, err
	}
	for _, name := range []string{ThemePath, StarterPath} {
		tree, err := s.part(name)
		if err != nil {
			return nil, err
		}
		if err := os.CopyFS(filepath.Join(out, filepath.FromSlash(name)), tree); err != nil {
			return nil, err
		}
	}
	_, manual, err := s.Manual()
	if err != nil {
		return nil, err
	}
	if err := os.MkdirAll(filepath.Join(out, filepath.Dir(manualPath)), 0o755); err != nil {
		return nil, err
	}
	if err := os.WriteFile(filepath.Join(out, manualPath), manual, 0o644); err != nil {
		return nil, err
	}
	module, err := s.Module()
	if err != nil {
		return nil, err
	}
	if err := os.WriteFile(filepath.Join(out, modulePath), module.Packed, 0o644); err != nil {
		return nil, err
	}
	text := strings.Join(module.Notes, "\n")
	return module.Notes, os.WriteFile(filepath.Join(out, notesPath), []byte(text), 0o644)
}
