// Command pack writes to a folder what a binary of `make dist` contains: the
// theme, the starter manual and the compiled module.
package main

import (
	"flag"
	"fmt"
	"os"

	"coursebook/generator/internal/parts"
)

func main() {
	out := flag.String("out", "", "folder to fill; it is emptied first")
	flag.Parse()
	if *out == "" || flag.NArg() > 0 {
		flag.Usage()
		os.Exit(2)
	}
	if err := pack(*out); err != nil {
		fmt.Fprintln(os.Stderr, "pack:", err)
		os.Exit(1)
	}
}

// pack writes the parts to the folder out and prints the notes of the module. It
// returns an error if a part cannot be read or written.
func pack(out string) error {
	source, err := parts.Open()
	if err != nil {
		return err
	}
	notes, err := source.Pack(out)
	for _, note := range notes {
		fmt.Fprintln(os.Stderr, "warning:", note)
	}
	return err
}
