// Package offline makes what a phone needs to use a release without a network: the
// list of all files with their hashes, the service worker script that contains the
// list, and the web app manifest. All output is deterministic, and all URLs are
// relative.
package offline

import (
	"bytes"
	"crypto/sha256"
	"encoding/base64"
	"encoding/hex"
	"encoding/json"
	"fmt"
	"path"
	"regexp"
	"slices"
	"strconv"
	"strings"

	"coursebook/generator/internal/fault"
	"coursebook/generator/internal/output"
)

// WorkerName is the path of the worker script. It is constant, because a browser
// updates a worker only under its old name.
const WorkerName = "sw.js"

// Release is the list of the files of a site.
type Release struct {
	// ID is the SHA-256 over all entries, in hexadecimal. Two sites have the same
	// ID only if all their files are equal.
	ID string
	// Bytes is the size of all files together.
	Bytes int64
	// Entries are sorted by URL.
	Entries []Entry
}

// Entry is one file of a release.
type Entry struct {
	// URL is relative to the worker script.
	URL string
	// Integrity is the SHA-256 in the form of Subresource Integrity.
	Integrity string
	// Bytes is the size.
	Bytes int64
}

// plainURL matches paths that need no escaping as URLs, without any escaping and
// without a first part that could be read as a scheme.
var plainURL = regexp.MustCompile(`^[A-Za-z0-9_-][A-Za-z0-9._-]*(/[A-Za-z0-9_-][A-Za-z0-9._-]*)*$`)

// Manifest returns the release of the files, which are all published files but the
// worker script. A path listed twice, the worker script, and a path that is not a
// relative URL without escapes are errors, of type fault.Fault.
func Manifest(files []output.Entry) (Release, error) {
	r := Release{Entries: make([]Entry, 0, len(files))}
	for _, f := range files {
		switch {
		case f.Path == WorkerName:
			return Release{}, refuse(f.Path, "the worker script cannot list itself",
				"make it from the list of all other files")
		case !plainURL.MatchString(f.Path):
			return Release{}, refuse(f.Path, fmt.Sprintf("path %q is not a plain relative URL", f.Path),
				"use letters, digits, dot, hyphen and underscore, parted by /")
		}
		r.Entries = append(r.Entries, Entry{f.Path, "sha256-" + base64.StdEncoding.EncodeToString(f.Sum[:]), f.Bytes})
		r.Bytes += f.Bytes
	}
	slices.SortFunc(r.Entries, func(a, b Entry) int { return strings.Compare(a.URL, b.URL) })
	h := sha256.New()
	for i, e := range r.Entries {
		if i > 0 && e.URL == r.Entries[i-1].URL {
			return Release{}, refuse(e.URL, "the file is listed twice", "publish it once")
		}
		fmt.Fprintf(h, "%s %d %s\n", e.Integrity, e.Bytes, e.URL)
	}
	r.ID = hex.EncodeToString(h.Sum(nil))
	return r, nil
}

// refuse returns the fault of a file that cannot be listed or a value that is
// refused.
func refuse(file, text, hint string) error {
	return fault.Fault{File: path.Clean(file), Code: "offline", Text: text, Hint: hint}
}

// Worker returns the worker script: the release, as a constant, and the code. The
// constant is
//
//	RELEASE = {id: string, bytes: number, files: [url, integrity, bytes][]}
//
// The script begins with "use strict", because a directive inside code, after the
// constant, has no effect.
func Worker(code string, r Release) string {
	var b strings.Builder
	fmt.Fprintf(&b, "\"use strict\";\nconst RELEASE={\"id\":%s,\"bytes\":%d,\"files\":[", quote(r.ID), r.Bytes)
	for i, e := range r.Entries {
		if i > 0 {
			b.WriteByte(',')
		}
		// neither these URLs nor base64 need escaping
		b.WriteString("\n[\"" + e.URL + "\",\"" + e.Integrity + "\"," + strconv.FormatInt(e.Bytes, 10) + "]")
	}
	b.WriteString("\n]};\n" + code)
	return b.String()
}

// quote returns s as a string literal of both JSON and JavaScript.
func quote(s string) string { return strings.TrimSuffix(string(encode(s, "")), "\n") }

// encode returns v as JSON, without escapes of < > and &, with a final line feed.
// indent is the text of one level, "" for one line. It panics on a value that JSON
// cannot hold.
func encode(v any, indent string) []byte {
	var b bytes.Buffer
	e := json.NewEncoder(&b)
	e.SetEscapeHTML(false)
	e.SetIndent("", indent)
	if err := e.Encode(v); err != nil {
		panic(err) // strings, and structs of strings, always encode
	}
	return b.Bytes()
}
