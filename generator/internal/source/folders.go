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

// openFolders opens the folders right below the top.
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

func (f folders) close() {
	for _, root := range f.open {
		root.Close()
	}
}

// ReadFile makes folders a file system to read whole files from.
func (f folders) ReadFile(name string) ([]byte, error) {
	dir, base := path.Split(name)
	if root := f.open[path.Clean(dir)]; root != nil {
		if data, err := root.ReadFile(base); err == nil {
			return data, nil
		}
	}
	return fs.ReadFile(f.FS, name)
}

// Stat follows links as ReadFile does.
func (f folders) Stat(name string) (fs.FileInfo, error) {
	dir, base := path.Split(name)
	if root := f.open[path.Clean(dir)]; root != nil {
		if info, err := root.Stat(base); err == nil {
			return info, nil
		}
	}
	return fs.Stat(f.FS, name)
}
