package source

import (
	"io/fs"
	"os"
	"path"
)

// folders is a content folder whose own folders are kept open, because a name
// is looked up sooner from there. What cannot be opened from a folder, such as a
// link to a neighbour, is opened from the top, which decides.
type folders struct {
	fs.FS
	open map[string]*os.Root
}

// openFolders opens up to mostOpen folders directly below the top. A folder that
// cannot be opened is left out, and read through the top instead. The caller
// closes the result.
func openFolders(top *os.Root) folders {
	f := folders{FS: top.FS(), open: map[string]*os.Root{}}
	entries, err := fs.ReadDir(f.FS, ".")
	if err != nil {
		return f // said when it is read
	}
	for _, e := range entries {
		if !e.IsDir() || len(f.open) == mostOpen {
			continue
		}
		if root, err := top.OpenRoot(e.Name()); err == nil {
			f.open[e.Name()] = root
		}
	}
	return f
}

// mostOpen bounds the folders kept open.
const mostOpen = 32

// close closes the open folders, not the top.
func (f folders) close() {
	for _, root := range f.open {
		root.Close()
	}
}

// ReadFile reads a whole file by its slash path below the top. It tries the open
// folder first, then the top, whose error it returns.
func (f folders) ReadFile(name string) ([]byte, error) {
	dir, base := path.Split(name)
	if root := f.open[path.Clean(dir)]; root != nil {
		if data, err := root.ReadFile(base); err == nil {
			return data, nil
		}
	}
	return fs.ReadFile(f.FS, name)
}

// Stat returns what is known of a file, and follows links as ReadFile does. It
// returns the error of the top if the file cannot be reached.
func (f folders) Stat(name string) (fs.FileInfo, error) {
	dir, base := path.Split(name)
	if root := f.open[path.Clean(dir)]; root != nil {
		if info, err := root.Stat(base); err == nil {
			return info, nil
		}
	}
	return fs.Stat(f.FS, name)
}
