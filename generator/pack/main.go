// Command pack lays out what a binary of `make dist` carries in itself: the
// theme, the starter manual and the compiled module.
package main

import (
	"flag"
	"fmt"
	"io/fs"
	"os"
	"path/filepath"

	"coursebook/generator/internal/house"
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

func pack(out string) error {
	h, err := house.Open()
	if err != nil {
		return err
	}
	if err := os.RemoveAll(out); err != nil {
		return err
	}
	for name, open := range map[string]func() (fs.FS, error){house.ThemePath: h.Theme, house.StarterPath: h.Starter} {
		tree, err := open()
		if err != nil {
			return err
		}
		if err := os.CopyFS(filepath.Join(out, filepath.FromSlash(name)), tree); err != nil {
			return err
		}
	}
	module, err := h.Module()
	if err != nil {
		return err
	}
	return os.WriteFile(filepath.Join(out, house.ModulePath), module, 0o644)
}
