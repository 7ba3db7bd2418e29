package main

import (
	"errors"
	"flag"
	"fmt"
	"io/fs"
	"os"
	"path/filepath"

	"coursebook/generator/internal/parts"
)

func runStart(s std, args []string) int {
	flags := newFlags(s, "start", "DIR", "Writes a small working manual of your own into DIR.")
	if status, done := parse(flags, args); done {
		return status
	}
	if flags.NArg() != 1 {
		flags.Usage()
		return misuse
	}
	if err := start(flags.Arg(0)); err != nil {
		fmt.Fprintf(s.err, "coursebook start: %v\n", err)
		return faulty
	}
	fmt.Fprintf(s.out, "A small manual is in %s. Now run: coursebook preview -content %s\n", flags.Arg(0), flags.Arg(0))
	return fine
}

// start copies the starter manual; a folder that holds anything is left alone.
func start(dir string) error {
	entries, err := os.ReadDir(dir)
	switch {
	case errors.Is(err, fs.ErrNotExist):
	case err != nil:
		return err
	case len(entries) > 0:
		return fmt.Errorf("%s is not empty; name a new folder", dir)
	}
	h, err := parts.Open()
	if err != nil {
		return err
	}
	starter, err := h.Starter()
	if err != nil {
		return err
	}
	if err := os.MkdirAll(dir, 0o755); err != nil {
		return err
	}
	return os.CopyFS(filepath.Clean(dir), starter)
}

// newFlags is the options of one command, with a usage text that begins with
// what the command does.
func newFlags(s std, name, operands, what string) *flag.FlagSet {
	flags := flag.NewFlagSet(name, flag.ContinueOnError)
	flags.SetOutput(s.err)
	flags.Usage = func() {
		fmt.Fprintf(flags.Output(), "usage: coursebook %s [options] %s\n%s\n", name, operands, what)
		flags.PrintDefaults()
	}
	return flags
}

// parse reads options; done reports whether the command is over, with its status.
func parse(flags *flag.FlagSet, args []string) (status int, done bool) {
	switch err := flags.Parse(args); {
	case errors.Is(err, flag.ErrHelp):
		return fine, true
	case err != nil:
		return misuse, true
	}
	return fine, false
}
