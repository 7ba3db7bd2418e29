package output

import (
	"fmt"
	"os"
	"slices"
	"strings"
	"sync"

	"coursebook/generator/internal/fault"
)

// Draft is a release that is written while it is made, so that no more of it
// need be held in memory than what is being made. It lies beside the target,
// which stays as it is until Publish, also if the draft fails.
type Draft struct {
	target string

	mu     sync.Mutex
	begun  bool
	err    error // the first
	site   *site
	unlock func()
	stage  *stage
	paths  []string
	kept   int // files that the old release has too

	swapped bool // the exchange was tried, and has cleared up behind itself
}

// NewDraft is a draft for a target. Nothing is looked at or written before the
// first Put.
func NewDraft(target string) *Draft { return &Draft{target: target} }

// Put adds a file; it may be called from several goroutines. The first call
// locks the target and refuses one that is not ours to replace. After an error
// the draft is of no use, and every call returns that error.
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
		d.kept++
	}
	return d.err
}

// Err is the error of the first Put that failed.
func (d *Draft) Err() error {
	d.mu.Lock()
	defer d.mu.Unlock()
	return d.err
}

func (d *Draft) failed(err error) error {
	d.mu.Lock()
	defer d.mu.Unlock()
	if d.err == nil {
		d.err = err
	}
	return d.err
}

// begin makes the stage at the first call.
func (d *Draft) begin() error {
	d.mu.Lock()
	defer d.mu.Unlock()
	if !d.begun && d.err == nil {
		d.begun = true
		d.err = d.start()
	}
	return d.err
}

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

// Publish puts the draft in the target's place, under the name of a release; a
// target that holds this release unharmed is left alone.
//
// Errors are fault.Fault values with a hint. The target is untouched after an
// error, except when removing the replaced release fails after the exchange.
func (d *Draft) Publish(release string) error {
	if release == "" || strings.ContainsAny(release, "\r\n") {
		return fault.Fault{
			File: d.target,
			Code: "release",
			Text: fmt.Sprintf("release %q is not one word", release),
			Hint: "use the hash of all files",
		}
	}
	if err := d.begin(); err != nil { // also where no file was put
		return err
	}
	if err := checkPaths(d.paths); err != nil {
		return err
	}
	slices.Sort(d.paths)
	if old := d.stage.old; old.there && old.Release == release && d.kept == len(d.paths) &&
		slices.Equal(old.Paths, d.paths) {
		return nil
	}
	if err := d.stage.seal(d.site.stage, release, d.paths); err != nil {
		return systemFault(d.site.target, "cannot write the new release", err)
	}
	d.swapped = true
	return d.site.swap(d.stage.old.there)
}

// Discard ends the draft. What was not published goes.
func (d *Draft) Discard() {
	if d.stage != nil {
		d.stage.close()
		d.stage = nil
	}
	if d.unlock == nil {
		return
	}
	if !d.swapped {
		os.RemoveAll(d.site.stage) // a rest that stays is removed by the next start
	}
	d.unlock()
	d.unlock = nil
}
