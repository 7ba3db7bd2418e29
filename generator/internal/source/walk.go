package source

import (
	"errors"
	"fmt"
	"io/fs"
	"path"
	"regexp"
	"strings"
	"syscall"

	"coursebook/generator/internal/fault"
)

var (
	languageCode = regexp.MustCompile(`^[a-z]{2,3}(-[a-z0-9]{2,8})*$`)
	slugForm     = regexp.MustCompile(`^[a-z0-9]+(-[a-z0-9]+)*$`)
	urlName      = regexp.MustCompile(`^[A-Za-z0-9][A-Za-z0-9._-]*$`)
	// deviceName matches names that Windows keeps for devices, with any ending.
	deviceName = regexp.MustCompile(`(?i)^(con|prn|aux|nul|com[0-9]|lpt[0-9])(\.|$)`)
)

// reserved slugs would overwrite pages the site makes itself.
var reserved = map[string]string{
	"all": "the A–Z list",
}

// walker collects the names of the files worth reading.
type walker struct {
	fsys   fs.FS
	faults *fault.List
	seen   map[string]string // lower-case path to the path that took it
	found  []string
}

// folder lists the files of dir and its subfolders, except hidden ones. depth is
// the depth of dir. It adds a fault for each entry that is unreadable, too deep
// or in conflict with another name.
func (w *walker) folder(dir string, depth int) {
	entries, err := fs.ReadDir(w.fsys, dir)
	if err != nil {
		w.faults.Add(unreadable(dir, err))
		return
	}
	for _, e := range entries {
		if strings.HasPrefix(e.Name(), ".") {
			continue
		}
		name := path.Join(dir, e.Name())
		if !w.unique(name) {
			continue
		}
		switch {
		case e.IsDir() && depth == MaxDepth:
			w.add(name, "too-deep", fmt.Sprintf("folder lies more than %d folders deep", MaxDepth),
				"move it up; pages lie in <language>/, pictures in pictures/")
		case e.IsDir() && path.Ext(name) == ".md":
			w.add(name, "folder-page", "folder stands where a page would", "rename the folder, or remove it")
		case e.IsDir():
			w.folder(name, depth+1)
		default:
			w.file(name, e.Type())
		}
	}
}

// file adds the file name to those to be read, or a fault if it must not be: an
// unreadable, irregular, oversize or badly named file, or a link to a folder or
// out of the content folder. mode is its type. Devices are recognized here,
// because merely opening some of them would hang.
func (w *walker) file(name string, mode fs.FileMode) {
	info, err := fs.Stat(w.fsys, name)
	switch {
	case err != nil && mode&fs.ModeSymlink != 0:
		w.faults.Add(badLink(name, err))
	case err != nil:
		w.faults.Add(unreadable(name, err))
	case info.IsDir():
		w.add(name, "link-to-folder", "symbolic link to a folder is not followed", "put the files there themselves")
	case !info.Mode().IsRegular():
		w.add(name, "not-a-file", "neither a file nor a folder, but a device, pipe or socket",
			"remove it from the content folder")
	case info.Size() > int64(limitOf(name)):
		w.faults.Add(oversize(name, info.Size(), limitOf(name)))
	case w.wellNamed(name):
		w.found = append(w.found, name)
	}
}

// unique returns false and adds a fault if a path differs from an earlier one only
// by case: the two would be one file on many disks, and one URL on many servers.
func (w *walker) unique(name string) bool {
	lower := strings.ToLower(name)
	if first, taken := w.seen[lower]; taken {
		w.add(name, "same-name", fmt.Sprintf("name differs from %q only by upper and lower case", first),
			"rename one of the two")
		return false
	}
	w.seen[lower] = name
	return true
}

// wellNamed reports whether a file is read under its name. It adds a fault and
// returns false for a page or picture in the wrong place, of an unknown type or
// with a name that cannot be part of a URL. Other files have any name.
func (w *walker) wellNamed(name string) bool {
	base := path.Base(name)
	kind := kindOf(name)
	stem := strings.TrimSuffix(base, ".md")
	switch {
	case kind == Other && strings.EqualFold(path.Ext(base), ".md"):
		w.add(name, "page-place", "page does not lie directly in a language folder",
			"move it to a folder such as en/, and end its name in .md")
	case kind == Other && path.Dir(name) == "pictures":
		w.add(name, "picture-type", "kind of picture is not known", "use .svg, .png, .jpg or .webp")
	case kind == Other:
		return true
	case kind == Page && !slugForm.MatchString(stem):
		w.add(name, "page-name", fmt.Sprintf("file name %q does not fit a web address", base),
			"use a-z, 0-9 and single hyphens: "+suggest(stem)+".md")
	case kind == Page && reserved[stem] != "":
		w.add(name, "page-name", fmt.Sprintf("name %q is kept for %s", base, reserved[stem]), "rename the page")
	case !urlName.MatchString(base):
		w.add(name, "file-name", fmt.Sprintf("file name %q does not fit a web address", base),
			"use A-Z, a-z, 0-9, dot, hyphen and underscore, with a letter or digit first")
	case deviceName.MatchString(base):
		w.add(name, "file-name", fmt.Sprintf("file name %q means a device on Windows", base), "rename the file")
	default:
		return true
	}
	return false
}

// suggest returns a slug from any name: its letters a-z and digits in lower case,
// with single hyphens between; "page" if it has none.
func suggest(stem string) string {
	var b strings.Builder
	for _, r := range strings.ToLower(stem) {
		switch {
		case r >= 'a' && r <= 'z' || r >= '0' && r <= '9':
			b.WriteRune(r)
		case b.Len() > 0 && !strings.HasSuffix(b.String(), "-"):
			b.WriteByte('-')
		}
	}
	if slug := strings.Trim(b.String(), "-"); slug != "" {
		return slug
	}
	return "page"
}

// add adds an error at line 1 of a file.
func (w *walker) add(file, code, text, hint string) {
	w.faults.Add(fault.Fault{File: file, Line: 1, Code: code, Text: text, Hint: hint})
}

// unreadable returns the fault of a file or folder that cannot be read because of
// err.
func unreadable(name string, err error) fault.Fault {
	return fault.Fault{File: name, Line: 1, Code: "unreadable", Text: "cannot be read: " + reason(err),
		Hint: "check the file's permissions, or remove it"}
}

// oversize returns the fault of a file of size bytes, of which limit are allowed.
func oversize(name string, size int64, limit int) fault.Fault {
	return fault.Fault{File: name, Line: 1, Code: "oversize",
		Text: fmt.Sprintf("holds %d bytes, more than the limit of %d", size, limit),
		Hint: "split the text, or shrink the picture"}
}

// badLink returns the fault of a symbolic link that cannot be followed because of
// err: it leads to nothing, in a circle, or out of the content folder.
func badLink(name string, err error) fault.Fault {
	f := fault.Fault{File: name, Line: 1, Code: "link-leaves", Text: "symbolic link leads out of the content folder",
		Hint: "put the file itself into the folder"}
	switch {
	case errors.Is(err, fs.ErrNotExist):
		f.Code, f.Text = "link-dangles", "symbolic link leads to nothing"
	case errors.Is(err, syscall.ELOOP):
		f.Code, f.Text = "link-circle", "symbolic link leads in a circle"
	}
	return f
}
