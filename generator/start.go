package main

import (
	"errors"
	"flag"
	"fmt"
	"io"
	"io/fs"
	"os"
	"path/filepath"

	"coursebook/generator/internal/parts"
)

// runStart runs the command start and returns its exit status: misuse unless there
// is one folder, faulty if it cannot be filled.
func runStart(s std, args []string) int {
	flags := newFlags("start", "DIR", "Writes a small working manual of your own into DIR.")
	if status, done := parse(s, flags, args); done {
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

// start copies the starter manual to dir, which it creates if needed. A folder
// that is not empty is an error, and nothing is written to it.
func start(dir string) error {
	entries, err := os.ReadDir(dir)
	switch {
	case errors.Is(err, fs.ErrNotExist):
	case err != nil:
		return err
	case len(entries) > 0:
		return fmt.Errorf("%s is not empty; name a new folder", dir)
	}
	source, err := parts.Open()
	if err != nil {
		return err
	}
	starter, err := source.Starter()
	if err != nil {
		return err
	}
	if err := os.MkdirAll(dir, 0o755); err != nil {
		return err
	}
	return os.CopyFS(filepath.Clean(dir), starter)
}

// newFlags returns the options of the command name. Its usage text is the
// synopsis, with the operands if any, then the sentence what, then the options.
func newFlags(name, operands, what string) *flag.FlagSet {
	synopsis := "coursebook " + name + " [options]"
	if operands != "" {
		synopsis += " " + operands
	}
	flags := flag.NewFlagSet(name, flag.ContinueOnError)
	flags.Usage = func() {
		fmt.Fprintf(flags.Output(), "usage: %s\n%s\n", synopsis, what)
		flags.PrintDefaults()
	}
	return flags
}

// parse parses the options. If done is true, the command ends with the status:
// after -h the usage is on standard output; after a wrong option the error and the
// usage are on standard error. Later output of flags goes to standard error.
func parse(s std, flags *flag.FlagSet, args []string) (status int, done bool) {
	flags.SetOutput(io.Discard) // Parse prints before its error shows which stream is right
	err := flags.Parse(args)
	flags.SetOutput(s.err)
	switch {
	case errors.Is(err, flag.ErrHelp):
		flags.SetOutput(s.out)
		flags.Usage()
		return fine, true
	case err != nil:
		fmt.Fprintln(s.err, err)
		flags.Usage()
		return misuse, true
	}
	return fine, false
}
