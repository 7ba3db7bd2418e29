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
	"regexp"
	"slices"
	"strings"
)

// weighManual builds the real manual and prints the sizes of its files after gzip.
// It returns an error if the build fails or a file cannot be read.
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
		if path.Ext(name) == ".html" {
			if first := z + firstStyles(site, name, data); first > heaviest {
				heaviest, heavy = first, name
			}
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
	fmt.Printf("%10d  heaviest first view: %s and the style sheet it waits for\n", heaviest, heavy)
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

var sheetLink = regexp.MustCompile(`<link rel="stylesheet" href="([^"]+)"`)

// firstStyles returns the size after gzip of the style sheets that the head of the
// page name links; a missing one counts 0.
func firstStyles(site fs.FS, name string, html []byte) int {
	head, _, _ := bytes.Cut(html, []byte("<body"))
	size := 0
	for _, link := range sheetLink.FindAllSubmatch(head, -1) {
		if data, err := fs.ReadFile(site, path.Join(path.Dir(name), string(link[1]))); err == nil {
			size += zipped(data)
		}
	}
	return size
}

// group returns the name of the group in which a file is counted.
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

// zipped returns the size of data after gzip. Data that is gzip already counts
// unchanged.
func zipped(data []byte) int {
	if bytes.HasPrefix(data, []byte{0x1f, 0x8b}) {
		return len(data)
	}
	var b bytes.Buffer
	z := gzip.NewWriter(&b)
	z.Write(data) // writing to a buffer cannot fail
	z.Close()
	return b.Len()
}
