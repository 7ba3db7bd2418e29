package output

import (
	"errors"
	"fmt"
	"io"
	"io/fs"
	"os"
	"path/filepath"

	"coursebook/generator/internal/fault"
)

// oneFileMark begins every one-file edition. A file without it is not replaced.
const oneFileMark = "<!-- coursebook one-file edition; the next build replaces this file -->\n"

// OneFile locates the one-file edition of a manual.
type OneFile struct {
	// Path is the file to write.
	Path string
	// Content and Site are the folders of the manual and of the site. Path must
	// be outside of both.
	Content, Site string
}

// Check returns an error if Path must not be written: inside Content or Site, a
// symbolic link, a folder, a device, or a file that is not an earlier one-file
// edition. A path that does not exist is good. It writes nothing. Errors are
// fault.Fault values with a hint.
func (o OneFile) Check() error {
	refuse := func(format string, args ...any) error {
		return fault.Fault{File: filepath.ToSlash(o.Path), Code: "pocket", Text: fmt.Sprintf(format, args...),
			Hint: "name another file, such as ../manual.html"}
	}
	if o.Path == "" || os.IsPathSeparator(o.Path[len(o.Path)-1]) {
		return refuse("%q names no file", o.Path)
	}
	name := filepath.Clean(o.Path)
	full, err := resolve(name)
	if err != nil {
		return systemFault(o.Path, "cannot find the file's folder", err)
	}
	for _, folder := range []struct{ path, flag string }{{o.Content, "-content"}, {o.Site, "-out"}} {
		top, err := resolve(folder.path)
		if err != nil {
			return systemFault(folder.path, "cannot find the folder of "+folder.flag, err)
		}
		if within(full, top) {
			return refuse("lies inside %s, the folder of %s", filepath.ToSlash(folder.path), folder.flag)
		}
		if within(top, full) {
			return refuse("is a folder that %s, the folder of %s, lies in", filepath.ToSlash(folder.path), folder.flag)
		}
	}
	info, err := os.Lstat(name)
	switch {
	case errors.Is(err, fs.ErrNotExist):
		return nil
	case err != nil:
		return systemFault(o.Path, "cannot look at the file", err)
	case info.Mode()&fs.ModeSymlink != 0:
		return refuse("is a symbolic link")
	case info.IsDir():
		return refuse("is a folder")
	case !info.Mode().IsRegular():
		return refuse("is a device, pipe or socket")
	}
	marked, err := hasMark(name)
	switch {
	case err != nil:
		return systemFault(o.Path, "cannot read the file that would be replaced", err)
	case !marked:
		return fault.Fault{File: filepath.ToSlash(o.Path), Code: "pocket",
			Text: "exists and is not an earlier one-file edition",
			Hint: "name another file, or remove this one yourself"}
	}
	return nil
}

// hasMark reports whether a file begins with oneFileMark; a shorter file does not.
// It returns an error if the file cannot be read.
func hasMark(name string) (bool, error) {
	f, err := os.Open(name)
	if err != nil {
		return false, err
	}
	defer f.Close()
	head := make([]byte, len(oneFileMark))
	n, err := io.ReadFull(f, head)
	if errors.Is(err, io.EOF) || errors.Is(err, io.ErrUnexpectedEOF) {
		err = nil
	}
	return string(head[:n]) == oneFileMark, err
}

// Write writes the edition atomically: to a file beside Path, which is then
// renamed. It calls Check first, and returns its error or that of the system as a
// fault.Fault; Path is unchanged then. It removes a file that a killed Write left.
func (o OneFile) Write(html []byte) error {
	if err := o.Check(); err != nil {
		return err
	}
	name := filepath.Clean(o.Path)
	folder, base := filepath.Dir(name), filepath.Base(name)
	if err := os.MkdirAll(folder, 0o755); err != nil {
		return systemFault(o.Path, "cannot make the file's folder", err)
	}
	beside := filepath.Join(folder, "."+base+".coursebook-")
	unlock, err := lock(beside + "lock")
	if err != nil {
		return systemFault(o.Path, "cannot lock the file", err)
	}
	defer unlock()
	stage := beside + "stage"
	defer os.Remove(stage)
	if err := writeNew(stage, html); err != nil {
		return systemFault(o.Path, "cannot write the file", err)
	}
	if err := os.Rename(stage, name); err != nil {
		return systemFault(o.Path, "cannot replace the file", err)
	}
	if err := syncOne(folder, true); err != nil {
		return systemFault(o.Path, "cannot write the file", err)
	}
	return nil
}

// writeNew writes the mark and the HTML to a new file and syncs it. A file of that
// name is removed first. It returns the system's errors.
func writeNew(name string, html []byte) error {
	if err := os.Remove(name); err != nil && !errors.Is(err, fs.ErrNotExist) {
		return err
	}
	f, err := os.OpenFile(name, os.O_WRONLY|os.O_CREATE|os.O_EXCL, 0o644)
	if err != nil {
		return err
	}
	_, err1 := io.WriteString(f, oneFileMark)
	_, err2 := f.Write(html)
	return errors.Join(err1, err2, f.Sync(), f.Close())
}

// resolve returns the absolute path without symbolic links. The last elements of
// the path need not exist. It returns an error if the system cannot resolve the
// rest.
func resolve(name string) (string, error) {
	full, err := filepath.Abs(name)
	if err != nil {
		return "", err
	}
	rest := ""
	for {
		real, err := filepath.EvalSymlinks(full)
		if err == nil {
			return filepath.Join(real, rest), nil
		}
		parent := filepath.Dir(full)
		if !errors.Is(err, fs.ErrNotExist) || parent == full {
			return "", err
		}
		rest = filepath.Join(filepath.Base(full), rest)
		full = parent
	}
}

// within reports whether name is folder or below it. Both paths are resolved.
// Existing folders are compared with os.SameFile, because two spellings of a name
// may be the same folder on a file system that ignores case.
func within(name, folder string) bool {
	top, err := os.Stat(folder)
	for {
		if name == folder {
			return true
		}
		if info, err2 := os.Stat(name); err == nil && err2 == nil && os.SameFile(info, top) {
			return true
		}
		parent := filepath.Dir(name)
		if parent == name {
			return false
		}
		name = parent
	}
}
