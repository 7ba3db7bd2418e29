package output

import (
	"fmt"
	"os"
	"slices"
	"strings"
	"sync"

	"coursebook/generator/internal/fault"
)

// Draft is a release that is written file by file, so that the whole site need
// not be in memory. The files go to a staging directory beside the target. The
// target is unchanged until Publish, also if the draft fails.
type Draft struct {
	target string

	mu        sync.Mutex
	begun     bool
	err       error // the first error
	site      *site
	unlock    func()
	stage     *stage
	paths     []string
	unchanged int // number of files that the old release has too

	swapped bool // swap was called, which removes the staging directory itself
}

// NewDraft returns a draft for a target. It reads and writes nothing before the
// first Put.
func NewDraft(target string) *Draft { return &Draft{target: target} }

// Put adds a file. It is safe for concurrent use. The first call locks the target
// and returns an error if the target contains anything but a release of this
// package. A path that checkPath refuses and a file that cannot be written are
// errors. After an error every further call returns the first one.
func (d *Draft) Put(f File) error {
	if err := checkPath(f.Path); err != nil {
		return d.failed(err)
	}
	if err := d.begin(); err != nil {
		return err
	}
	unchanged, err := d.stage.put(f)
	if err != nil {
		return d.failed(systemFault(d.site.target, "cannot write the new release", err))
	}
	d.mu.Lock()
	defer d.mu.Unlock()
	d.paths = append(d.paths, f.Path)
	if unchanged {
		d.unchanged++
	}
	return d.err
}

// Err returns the error of the first Put that failed, or nil.
func (d *Draft) Err() error {
	d.mu.Lock()
	defer d.mu.Unlock()
	return d.err
}

// failed stores err if it is the draft's first error, and returns the first.
func (d *Draft) failed(err error) error {
	d.mu.Lock()
	defer d.mu.Unlock()
	if d.err == nil {
		d.err = err
	}
	return d.err
}

// begin creates the staging directory at the first call. Every call returns the
// draft's first error, or nil.
func (d *Draft) begin() error {
	d.mu.Lock()
	defer d.mu.Unlock()
	if !d.begun && d.err == nil {
		d.begun = true
		d.err = d.start()
	}
	return d.err
}

// start locks the target, finishes an interrupted publication and creates the
// staging directory. It returns an error if one of these fails or the target
// contains foreign files.
func (d *Draft) start() error {
	var err error
	if d.site, d.unlock, err = open(d.target, true); err != nil {
		return err
	}
	if err := d.site.recover(); err != nil {
		return err
	}
	old, err := d.site.inspect()
	if err != nil {
		return err
	}
	if d.stage, err = newStage(d.site.stage, d.site.target, old); err != nil {
		return systemFault(d.site.target, "cannot write the new release", err)
	}
	return nil
}

// Publish replaces the target with the draft, under the name of a release: any
// text of one line, not empty. A target that already holds this release, with the
// same bytes, is not touched.
//
// Errors are fault.Fault values with a hint. The target is untouched after an
// error, except when removing the replaced release fails after the exchange.
func (d *Draft) Publish(release string) error {
	if release == "" || strings.ContainsAny(release, "\r\n") {
		return fault.Fault{File: d.target, Code: "release", Text: fmt.Sprintf("release %q is not one word", release),
			Hint: "use the hash of all files"}
	}
	if err := d.begin(); err != nil { // a draft without files has not begun
		return err
	}
	if err := checkPaths(d.paths); err != nil {
		return err
	}
	slices.Sort(d.paths)
	if old := d.stage.old; old.there && old.Release == release && d.unchanged == len(d.paths) &&
		slices.Equal(old.Paths, d.paths) {
		return nil
	}
	if err := d.stage.seal(d.site.stage, release, d.paths); err != nil {
		return systemFault(d.site.target, "cannot write the new release", err)
	}
	d.swapped = true
	return d.site.swap(d.stage.old.there)
}

// Discard ends the draft and unlocks the target. It removes the files of a draft
// that was not published.
func (d *Draft) Discard() {
	if d.stage != nil {
		d.stage.close()
		d.stage = nil
	}
	if d.unlock == nil {
		return
	}
	if !d.swapped {
		os.RemoveAll(d.site.stage) // after an error the next start removes the rest
	}
	d.unlock()
	d.unlock = nil
}
