// Package release makes release.json, the only file with the values of a release.
// Pages contain none of them, so that an edit changes only the pages that show it.
// release.json lists the edition, the files that the script of a page loads, and
// the id of every page.
package release

import (
	"bytes"
	"crypto/sha256"
	"encoding/hex"
	"encoding/json"
	"fmt"

	"coursebook/generator/internal/output"
)

// Name is the constant path of the list, from the site's root.
const Name = "release.json"

// IDPlaceholder is written by templates where a page shows its id.
const IDPlaceholder = "coursebook-page-id"

// idLength is the length of a page's id: 64 bits in hexadecimal.
const idLength = 16

// List is the content of release.json. Paths are relative to the site's root.
type List struct {
	Edition     string            `json:"edition"`
	Fingerprint string            `json:"fingerprint"` // of the calculators with the amounts of the rules
	Rules       map[string]string `json:"rules"`       // amounts of the house rules by ID
	Module      string            `json:"module"`
	Index       map[string]string `json:"index"` // by language
	Words       map[string]string `json:"words"` // by language
	Pages       map[string]string `json:"pages"` // id by path
}

// JSON returns the list with one line for each file and page. Equal lists give
// equal bytes.
func (l List) JSON() []byte {
	for _, m := range []*map[string]string{&l.Rules, &l.Index, &l.Words, &l.Pages} {
		if *m == nil {
			*m = map[string]string{} // {} instead of null
		}
	}
	data, err := json.MarshalIndent(l, "", "")
	if err != nil {
		panic(err) // strings and maps of strings always marshal
	}
	return append(data, '\n')
}

// Stamp returns the page with its id in place of each placeholder, and the id. The
// id is the start of the SHA-256 of the page without the placeholder. It does not
// change page.
func Stamp(page []byte) (stamped []byte, id string) {
	sum := sha256.Sum256(bytes.ReplaceAll(page, []byte(IDPlaceholder), nil))
	id = hex.EncodeToString(sum[:])[:idLength]
	return bytes.ReplaceAll(page, []byte(IDPlaceholder), []byte(id)), id
}

// Edition returns a short name of a site: a hash of all its files but the list and
// the worker, which contain the edition. The entries must be sorted by path.
func Edition(entries []output.Entry) string {
	h := sha256.New()
	for _, e := range entries {
		fmt.Fprintf(h, "%x %s\n", e.Sum, e.Path)
	}
	return hex.EncodeToString(h.Sum(nil)[:5])
}
