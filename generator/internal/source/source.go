// Package source reads a content folder: its files, checked for everything that
// would trip a reader's machine, and their strict YAML (page headers,
// manual.yaml, the bodies of fenced blocks). Every mistake becomes a fault
// with file, line and column; nothing is guessed.
//
// Paths, also those in faults, are slash paths relative to the content folder.
package source

import (
	"crypto/sha256"
	"encoding/hex"
	"errors"
	"io/fs"
	"os"
	"path"
	"runtime"
	"slices"
	"strings"
	"sync"

	"coursebook/generator/internal/fault"
)

// Limits of a content folder. They are far above honest use and keep a mistake
// (a film among the pictures, a folder that holds itself) from eating the build.
const (
	MaxText    = 1 << 20 // bytes of a Markdown, YAML or TSV file
	MaxPicture = 8 << 20 // bytes of any other file
	MaxDepth   = 8       // folders above a file
)

// Kind is what a file's place and name make of it.
type Kind uint8

const (
	// Other is a file the manual does not use by itself.
	Other Kind = iota
	// Page is <language>/<slug>.md.
	Page
	// ManualFile is manual.yaml.
	ManualFile
	// Picture is pictures/<name>.svg, .png, .jpg or .webp.
	Picture
	// Words is a .tsv file beside manual.yaml.
	Words
)

// File is one file of the content folder.
type File struct {
	// Path is the slash path below the folder.
	Path string
	// Data is the content. Text comes without a byte order mark and with
	// line feeds only, so that a checkout on any system builds the same site.
	Data []byte
	// Kind follows from Path.
	Kind Kind
	// Sum is the SHA-256 of Data in lower-case hexadecimal.
	Sum string
}

// Language returns the language folder of a page; "" for a file of another kind.
func (f File) Language() string {
	if f.Kind != Page {
		return ""
	}
	return path.Dir(f.Path)
}

// Slug returns the file name of a page without .md, its name in URLs; "" for a
// file of another kind.
func (f File) Slug() string {
	if f.Kind != Page {
		return ""
	}
	return strings.TrimSuffix(path.Base(f.Path), ".md")
}

// Read reads the folder dir and returns its good files sorted by path. It adds a
// fault for each bad one, and returns nil with a fault if dir cannot be opened. It
// never leaves the folder: symbolic links are followed only to files within it.
// Hidden files (names that start with a dot) are ignored.
func Read(dir string, faults *fault.List) []File {
	root, err := os.OpenRoot(dir)
	if err != nil {
		faults.Add(fault.Fault{File: ".", Code: "no-folder",
			Text: "cannot open the content folder: " + reason(err),
			Hint: "name the folder that holds manual.yaml"})
		return nil
	}
	defer root.Close()
	f := openFolders(root)
	defer f.close()
	return ReadFS(f, faults)
}

// ReadFS is Read for any file system, and adds a fault for each bad file in the
// same way. The file system decides whether symbolic links can leave it; os.Root
// and fs.FS in memory do not let them.
func ReadFS(fsys fs.FS, faults *fault.List) []File {
	w := walker{fsys: fsys, faults: faults, seen: map[string]string{}}
	w.folder(".", 0)
	files := make([]File, len(w.found))
	good := make([]bool, len(w.found))
	var group sync.WaitGroup
	next := make(chan int)
	for range runtime.GOMAXPROCS(0) {
		group.Go(func() {
			for i := range next {
				files[i], good[i] = load(fsys, w.found[i], faults)
			}
		})
	}
	for i := range w.found {
		next <- i
	}
	close(next)
	group.Wait()

	kept := files[:0]
	for i, f := range files {
		if good[i] {
			kept = append(kept, f)
		}
	}
	slices.SortFunc(kept, func(a, b File) int { return strings.Compare(a.Path, b.Path) })
	return kept
}

// load reads one file. It adds a fault and returns false if the file is unreadable
// or too large, or is a text file without valid text.
func load(fsys fs.FS, name string, faults *fault.List) (File, bool) {
	f := File{Path: name, Kind: kindOf(name)}
	data, err := fs.ReadFile(fsys, name)
	if err != nil {
		faults.Add(unreadable(name, err))
		return f, false
	}
	// The size was looked at before; the file may have grown since.
	if limit := limitOf(name); len(data) > limit {
		faults.Add(oversize(name, int64(len(data)), limit))
		return f, false
	}
	if isText(name) {
		data = plainLines(data)
		if !checkText(name, data, faults) {
			return f, false
		}
	}
	f.Data = data
	sum := sha256.Sum256(data)
	f.Sum = hex.EncodeToString(sum[:])
	return f, true
}

// kindOf returns the kind of a file from its slash path below the content folder;
// Other if it is none of the known ones.
func kindOf(name string) Kind {
	dir, base := path.Split(name)
	ext := strings.ToLower(path.Ext(base))
	switch {
	case name == "manual.yaml":
		return ManualFile
	case dir == "" && ext == ".tsv":
		return Words
	case dir == "pictures/" && isPicture(ext):
		return Picture
	case path.Ext(base) == ".md" && strings.Count(name, "/") == 1 && languageCode.MatchString(path.Dir(name)):
		return Page
	}
	return Other
}

// isPicture reports whether ext, in lower case with its dot, is that of a picture:
// .svg, .png, .jpg, .webp.
func isPicture(ext string) bool {
	return ext == ".svg" || ext == ".png" || ext == ".jpg" || ext == ".webp"
}

// isText reports whether a file is checked as text: .md, .yaml, .tsv, .svg,
// regardless of case.
func isText(name string) bool {
	switch strings.ToLower(path.Ext(name)) {
	case ".md", ".yaml", ".tsv", ".svg":
		return true
	}
	return false
}

// limitOf returns the largest size of a file in bytes: MaxText for texts but .svg,
// MaxPicture for any other.
func limitOf(name string) int {
	if isText(name) && path.Ext(name) != ".svg" {
		return MaxText
	}
	return MaxPicture
}

// reason returns the text of a file error without the operation and the path,
// which the fault names already.
func reason(err error) string {
	var p *fs.PathError
	switch {
	case errors.Is(err, fs.ErrNotExist):
		return "it does not exist"
	case errors.Is(err, fs.ErrPermission):
		return "permission denied"
	case errors.As(err, &p):
		return p.Err.Error()
	}
	return err.Error()
}
