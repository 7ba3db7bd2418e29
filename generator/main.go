// Command coursebook turns a folder of Markdown procedures into a searchable
// field manual with calculators that works offline.
//
// Exit status: 0 success, 1 faults in the content or a refused calculation, 2
// wrong use. Faults and errors go to standard error. Help that was asked for
// goes to standard output; the usage text after wrong use, to standard error.
package main

import (
	"fmt"
	"io"
	"os"
)

// command is one subcommand.
type command struct {
	name, line string
	run        func(std, []string) int
}

// std holds the standard output and error of a command.
type std struct {
	out, err io.Writer
}

// Exit statuses.
const (
	fine   = 0
	faulty = 1
	misuse = 2
)

// commands returns the subcommands in the order of the usage text.
func commands() []command {
	return []command{
		{"build", "write the whole site", runBuild},
		{"preview", "build, serve on this machine, rebuild on change", runPreview},
		{"inspect", "list faults and warnings of the content; write nothing", runInspect},
		{"calc", "run one calculator", runCalc},
		{"start", "begin a manual of your own", runStart},
	}
}

func main() { os.Exit(run(std{os.Stdout, os.Stderr}, os.Args[1:])) }

// run runs the command that args begin with and returns its exit status; misuse
// for an unknown or missing command.
func run(s std, args []string) int {
	if len(args) == 0 || args[0] == "-h" || args[0] == "-help" || args[0] == "--help" || args[0] == "help" {
		out, status := s.err, misuse
		if len(args) > 0 {
			out, status = s.out, fine
		}
		fmt.Fprintln(out, "coursebook turns a folder of procedures into a crew's field manual.")
		fmt.Fprintln(out, "\nusage: coursebook COMMAND [options]")
		fmt.Fprintln(out)
		for _, c := range commands() {
			fmt.Fprintf(out, "  %-8s %s\n", c.name, c.line)
		}
		fmt.Fprintln(out, "\ncoursebook COMMAND -h shows its options.")
		return status
	}
	for _, c := range commands() {
		if c.name == args[0] {
			return c.run(s, args[1:])
		}
	}
	fmt.Fprintf(s.err, "coursebook: there is no command %q; coursebook -h lists them\n", args[0])
	return misuse
}
