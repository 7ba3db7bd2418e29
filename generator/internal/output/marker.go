package output

import (
	"fmt"
	"io/fs"
	"os"
	"path/filepath"
	"slices"
	"strconv"
	"strings"

	"coursebook/generator/internal/fault"
)

// markerName is the file that marks a target as written by this package. Only
// such a target, an empty folder or no folder may be replaced.
const markerName = ".coursebook"

// markerHead is the marker's first line.
const markerHead = "coursebook release 1"

// litter lists files that file managers create in any folder they show.
var litter = []string{".DS_Store", "Thumbs.db", "desktop.ini"}

// marker is the content of the marker file, and the state of the target.
type marker struct {
	// Release is the name given to Publish.
	Release string
	// Time is the modification time of the files that are new in this release,
	// in seconds since 1970; each release of a target has a later one.
	Time int64
	// Paths are the release's files, sorted.
	Paths []string

	there bool        // the target exists
	mode  fs.FileMode // the target's permissions
}

// String returns the content of the marker file.
func (m marker) String() string {
	return fmt.Sprintf("%s\n%s\n%d\n%s\n", markerHead, m.Release, m.Time, strings.Join(m.Paths, "\n"))
}

// parseMarker parses a marker file. It returns false if data is not one.
func parseMarker(data string) (marker, bool) {
	lines := strings.Split(strings.TrimSuffix(data, "\n"), "\n")
	if len(lines) < 3 || lines[0] != markerHead || lines[1] == "" {
		return marker{}, false
	}
	when, err := strconv.ParseInt(lines[2], 10, 64)
	paths := slices.DeleteFunc(lines[3:], func(p string) bool { return p == "" })
	return marker{Release: lines[1], Time: when, Paths: paths}, err == nil
}

// inspect reads the marker of the target. A missing target gives an empty marker
// without there, an empty folder one with there. A target that is no folder, or
// that contains a file which the marker does not list, is an error, because
// publishing would delete that file.
func (s *site) inspect() (marker, error) {
	refuse := func(text, hint string) (marker, error) {
		return marker{}, fault.Fault{File: filepath.ToSlash(s.target), Code: "target", Text: text, Hint: hint}
	}
	info, err := os.Lstat(s.target)
	switch {
	case os.IsNotExist(err):
		return marker{}, nil
	case err != nil:
		return marker{}, systemFault(s.target, "cannot look at the target", err)
	case info.Mode()&fs.ModeSymlink != 0:
		return refuse("target is a symbolic link", "name the folder it leads to")
	case !info.IsDir():
		return refuse("target is a file, not a folder", "name another folder, or remove the file")
	}
	entries, err := os.ReadDir(s.target)
	if err != nil {
		return marker{}, systemFault(s.target, "cannot look into the target", err)
	}
	if len(entries) == 0 {
		return marker{there: true, mode: info.Mode().Perm()}, nil
	}
	data, err := os.ReadFile(filepath.Join(s.target, markerName))
	m, ok := parseMarker(string(data))
	if err != nil || !ok {
		return refuse("target is not empty and was not written by coursebook",
			"name another folder, or empty this one yourself")
	}
	foreign, err := s.foreignFile(m)
	switch {
	case err != nil:
		return marker{}, systemFault(s.target, "cannot look into the target", err)
	case foreign != "":
		return refuse(fmt.Sprintf("target holds %q, which coursebook did not write and would delete", foreign),
			"move it out of the target")
	}
	m.there, m.mode = true, info.Mode().Perm()
	return m, nil
}

// foreignFile returns the slash path, below the target, of a file that the marker
// does not list, or "" if there is none. Litter is ignored. It returns an error if
// the target cannot be read.
func (s *site) foreignFile(m marker) (found string, err error) {
	listed := make(map[string]bool, len(m.Paths)+1)
	listed[markerName] = true
	for _, p := range m.Paths {
		listed[p] = true
	}
	err = filepath.WalkDir(s.target, func(path string, d fs.DirEntry, err error) error {
		if err != nil || d.IsDir() {
			return err
		}
		rel, err := filepath.Rel(s.target, path)
		if rel = filepath.ToSlash(rel); err == nil && !listed[rel] && !slices.Contains(litter, d.Name()) {
			found = rel
			return filepath.SkipAll
		}
		return err
	})
	return found, err
}
