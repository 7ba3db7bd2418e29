package main

import (
	"flag"
	"fmt"
	"io/fs"
	"os"
	"path/filepath"

	"coursebook/calculators/catalog"
	"coursebook/calculators/rules"
	"coursebook/generator/internal/build"
	"coursebook/generator/internal/parts"
)

// manualFlags are the options of the commands that read a manual.
type manualFlags struct {
	*flag.FlagSet
	content, theme *string
}

// newManualFlags returns the options of the command name; what is the sentence of
// its usage text.
func newManualFlags(name, what string) manualFlags {
	flags := newFlags(name, "", what)
	return manualFlags{flags,
		flags.String("content", "content", "folder of the manual"),
		flags.String("theme", "", "folder of a theme; empty for the one that comes along")}
}

// open parses the arguments and finds the theme and the module. If done is true,
// the command ends with the status: after -h, or after an error that is printed.
func (f manualFlags) open(s std, args []string) (o build.Options, status int, done bool) {
	if status, done := parse(s, f.FlagSet, args); done {
		return o, status, true
	}
	if f.NArg() > 0 {
		f.Usage()
		return o, misuse, true
	}
	o, err := f.options()
	if err != nil {
		return o, s.fail(f.Name(), err), true
	}
	return o, fine, false
}

// options returns the options of a build from the parsed flags. A missing theme
// folder, and a program without its parts, are errors.
func (f manualFlags) options() (build.Options, error) {
	o := build.Options{Content: *f.content, Calculators: catalog.All(), Rules: rules.All()}
	source, err := parts.Open()
	if err != nil {
		return o, err
	}
	o.Module = source.Module
	if *f.theme != "" {
		o.Theme = os.DirFS(*f.theme)
		if _, err := fs.Stat(o.Theme, "."); err != nil {
			return o, fmt.Errorf("there is no theme folder %s", *f.theme)
		}
		return o, nil
	}
	o.Theme, err = source.Theme()
	return o, err
}

// folders returns the folders to watch for changes. A theme embedded in the binary
// is not among them, since it cannot change.
func (f manualFlags) folders() []string {
	folders := []string{*f.content}
	if *f.theme != "" {
		return append(folders, *f.theme)
	}
	if source, err := parts.Open(); err == nil && source.Root() != "" {
		folders = append(folders, filepath.Join(source.Root(), filepath.FromSlash(parts.ThemePath)))
	}
	return folders
}
