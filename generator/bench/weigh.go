//go:build unix

package main

import (
	"bytes"
	"compress/gzip"
	"fmt"
	"io/fs"
	"os"
	"path"
	"path/filepath"
	"slices"
	"strings"
)

// weighManual builds the real manual and prints what it sends to a phone.
func weighManual(dir, binary string) error {
	out := filepath.Join(dir, "manual")
	pocket := filepath.Join(dir, "pocket.html")
	if _, err := spend(binary, "build", "-out", out, "-pocket", pocket); err != nil {
		return err
	}
	site := os.DirFS(out)
	var whole, packed, heaviest int
	var heavy string
	groups := map[string]int{}
	styles := 0
	err := fs.WalkDir(site, ".", func(name string, d fs.DirEntry, err error) error {
		if err != nil || d.IsDir() || strings.HasPrefix(d.Name(), ".") {
			return err
		}
		data, err := fs.ReadFile(site, name)
		if err != nil {
			return err
		}
		z := zipped(data)
		whole += len(data)
		packed += z
		groups[group(name)] += z
		if path.Ext(name) == ".css" {
			styles += z
		}
		if path.Ext(name) == ".html" && z > heaviest {
			heaviest, heavy = z, name
		}
		return nil
	})
	if err != nil {
		return err
	}
	one, err := os.Stat(pocket)
	if err != nil {
		return err
	}
	fmt.Println("the manual, bytes after gzip")
	fmt.Printf("%10d  heaviest first view: %s and the style sheet\n", heaviest+styles, heavy)
	names := make([]string, 0, len(groups))
	for name := range groups {
		names = append(names, name)
	}
	slices.Sort(names)
	for _, name := range names {
		fmt.Printf("%10d  %s\n", groups[name], name)
	}
	fmt.Printf("%10d  whole offline package (%d before gzip)\n", packed, whole)
	fmt.Printf("%10d  one-file edition, as it lies on the disk\n", one.Size())
	return nil
}

// group sorts a file of the site into what a reader would ask for.
func group(name string) string {
	base := path.Base(name)
	switch path.Ext(name) {
	case ".html":
		return "pages"
	case ".css":
		return "style"
	case ".js":
		if base == "sw.js" {
			return "worker"
		}
		return "script"
	case ".wasmz":
		return "module"
	case ".svg", ".png", ".jpg", ".webp", ".ico":
		return "pictures"
	}
	name, _, _ = strings.Cut(base, "-")
	return name
}

// zipped is the size after gzip, or as it is where it is gzip already.
func zipped(data []byte) int {
	if bytes.HasPrefix(data, []byte{0x1f, 0x8b}) {
		return len(data)
	}
	var b bytes.Buffer
	z := gzip.NewWriter(&b)
	z.Write(data) // a buffer takes everything
	z.Close()
	return b.Len()
}
