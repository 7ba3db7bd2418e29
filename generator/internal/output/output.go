// Package output publishes a site to a folder atomically, and holds the size
// budgets.
//
// After a kill or a power cut at any moment, the next call of Publish or Recover
// restores the target to exactly the old or exactly the new release. On Linux the
// target is complete even before that call, because one system call exchanges the
// two folders. Where that call is missing or fails, a journal beside the target
// records how to finish.
package output

import (
	"bytes"
	"crypto/sha256"
	"encoding/hex"
	"fmt"
	"io/fs"
	"os"
	"path/filepath"
	"slices"
	"strings"

	"coursebook/generator/internal/fault"
)

// File is one file of a site.
type File struct {
	// Path is a slash path below the target.
	Path string
	// Data is the content.
	Data []byte
}

// Entry describes a file of a release without its content.
type Entry struct {
	// Path is a slash path below the target.
	Path string
	// Bytes is the size of the content.
	Bytes int64
	// Sum is the SHA-256 of the content.
	Sum [sha256.Size]byte
}

// Entry returns the description of the file.
func (f File) Entry() Entry { return Entry{f.Path, int64(len(f.Data)), sha256.Sum256(f.Data)} }

// Release names a set of files: the SHA-256 over their paths and contents in
// hexadecimal, regardless of their order.
func Release(files []File) string {
	entries := make([]Entry, len(files))
	for i, f := range files {
		entries[i] = f.Entry()
	}
	return ReleaseOf(entries)
}

// ReleaseOf is Release for entries instead of files.
func ReleaseOf(entries []Entry) string {
	sorted := slices.SortedFunc(slices.Values(entries), func(a, b Entry) int { return strings.Compare(a.Path, b.Path) })
	h := sha256.New()
	var line []byte
	for _, f := range sorted {
		line = hex.AppendEncode(line[:0], f.Sum[:])
		line = append(append(append(line, ' '), f.Path...), '\n')
		h.Write(line)
	}
	return hex.EncodeToString(h.Sum(nil))
}

// Publish makes target contain exactly the given files. The release is written to
// the marker. A target that already holds this release, with the same bytes, is
// not touched.
//
// Errors are fault.Fault values with a hint. The target is untouched after an
// error, except when removing the replaced release fails after the exchange.
func Publish(target string, files []File, release string) error {
	if err := checkPaths(paths(files)); err != nil {
		return err
	}
	d := NewDraft(target)
	defer d.Discard()
	if err := d.begin(); err != nil {
		return err
	}
	if err := each(files, d.Put); err != nil {
		return err
	}
	return d.Publish(release)
}

// Recover finishes or undoes a publication that was killed, and removes its files
// beside the target. It writes nothing when there is nothing to do. It returns an
// error while another process has locked the target.
func Recover(target string) error {
	s, unlock, err := open(target, false)
	if err != nil || s == nil {
		return err
	}
	defer unlock()
	return s.recover()
}

// site holds the paths of a target and of the files and folders used while a
// release is published. All are in one folder, thus on one file system.
type site struct {
	target, parent              string
	lock, stage, retired, notes string
}

// open resolves a target folder and locks it. It returns the paths used beside the
// target and the function that unlocks. If the parent folder is missing, it is
// created if create is set; otherwise all three results are nil. An unusable name,
// and a lock that another process has, are errors.
func open(target string, create bool) (*site, func(), error) {
	full, err := filepath.Abs(target)
	if err != nil {
		return nil, nil, systemFault(target, "cannot find the target folder", err)
	}
	parent, base := filepath.Split(full)
	if base == "" || target == "" {
		return nil, nil, fault.Fault{File: target, Code: "target",
			Text: fmt.Sprintf("%q cannot be a target folder", target), Hint: "name a folder of its own for the site"}
	}
	parent = filepath.Clean(parent)
	beside := func(what string) string { return filepath.Join(parent, "."+base+".coursebook-"+what) }
	s := &site{target: full, parent: parent,
		lock: beside("lock"), stage: beside("stage"), retired: beside("old"), notes: beside("journal")}
	if _, err := os.Stat(parent); os.IsNotExist(err) {
		if !create {
			return nil, nil, nil
		}
		if err := os.MkdirAll(parent, 0o755); err != nil {
			return nil, nil, systemFault(parent, "cannot make the folder for the target", err)
		}
	}
	unlock, err := lock(s.lock)
	if err != nil {
		return nil, nil, systemFault(s.target, "cannot lock the target", err)
	}
	return s, unlock, nil
}

// systemFault returns an error of the operating system as a fault with a hint. An
// error that is a fault already is returned unchanged.
func systemFault(file, text string, err error) error {
	if f, ok := err.(fault.Fault); ok {
		return f
	}
	return fault.Fault{File: filepath.ToSlash(file), Code: "output", Text: text + ": " + err.Error(),
		Hint: "check the folder's permissions and the free space, or choose another folder"}
}

// errBusy returns the fault of a target that another process has locked; lock is
// the path of the lock file.
func errBusy(lock string) error {
	return fault.Fault{File: filepath.ToSlash(lock), Code: "busy", Text: "another build is writing this target",
		Hint: "wait until it is done"}
}

// checkPaths returns the first error of checkPath, and an error for two paths that
// clash on a file system that ignores case, or of which one is a folder of the
// other. nil means that all paths are good.
func checkPaths(paths []string) error {
	seen := make(map[string]string, len(paths)) // lower-case path to the file that has it
	for _, p := range paths {
		if err := checkPath(p); err != nil {
			return err
		}
		lower := strings.ToLower(p)
		if first, taken := seen[lower]; taken {
			return refusePath(p, fmt.Sprintf("clashes with %q", first), "rename one of the two")
		}
		seen[lower] = p
	}
	for _, p := range paths {
		lower := strings.ToLower(p)
		for i := strings.LastIndexByte(lower, '/'); i > 0; i = strings.LastIndexByte(lower[:i], '/') {
			if first, taken := seen[lower[:i]]; taken {
				return refusePath(p, fmt.Sprintf("needs a folder where the file %q stands", first),
					"rename one of the two")
			}
		}
	}
	return nil
}

// checkPath returns an error for a path that leaves the target or is not written
// with plain slashes, and for the path of the marker; otherwise nil.
func checkPath(p string) error {
	switch {
	case !fs.ValidPath(p) || p == "." || !filepath.IsLocal(filepath.FromSlash(p)) ||
		strings.ContainsAny(p, "\\:\x00\r\n"):
		return refusePath(p, fmt.Sprintf("path %q leaves the target folder or is no plain path", p),
			"use names parted by /, without .. and without a leading /")
	case p == markerName || strings.HasPrefix(p, markerName+"/"):
		return refusePath(p, "name is kept for the marker of the target", "rename the file")
	}
	return nil
}

// refusePath returns the fault of a path that must not be written.
func refusePath(path, text, hint string) error {
	return fault.Fault{File: path, Code: "output-path", Text: text, Hint: hint}
}

// paths returns the paths of files in the same order.
func paths(files []File) []string {
	out := make([]string, len(files))
	for i, f := range files {
		out[i] = f.Path
	}
	return out
}

// same reports whether a regular file on disk has exactly these bytes. It is false
// if the file cannot be read.
func same(path string, data []byte) bool {
	info, err := os.Lstat(path)
	if err != nil || !info.Mode().IsRegular() || info.Size() != int64(len(data)) {
		return false
	}
	disk, err := os.ReadFile(path)
	return err == nil && bytes.Equal(disk, data)
}
