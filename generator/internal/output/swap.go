package output

import (
	"errors"
	"os"
	"slices"

	"coursebook/generator/internal/fault"
)

// errNoExchange is returned by exchange where the system or the file system
// cannot exchange two folders in one step.
var errNoExchange = errors.New("the file system cannot exchange two folders in one step")

// exchangeFolders is exchange, except in tests of the journal.
var exchangeFolders = exchange

// swap replaces the target with the staging directory. there is true if the target
// exists. swap removes the staging directory, which then holds the old release. It
// returns an error if the exchange fails (the target is unchanged) or if what
// follows it does (the new release is in place).
func (s *site) swap(there bool) error {
	var err error
	if there {
		err = exchangeFolders(s.stage, s.target)
		if errors.Is(err, errNoExchange) {
			return s.swapByJournal()
		}
	} else {
		err = os.Rename(s.stage, s.target)
	}
	if err != nil {
		os.RemoveAll(s.stage)
		return systemFault(s.target, "cannot put the new release in place", err)
	}
	// The staging directory now holds the old release, if there was one.
	if err := syncOne(s.parent, true); err != nil {
		return systemFault(s.parent, "the new release is in place, but not surely on disk", err)
	}
	if err := os.RemoveAll(s.stage); err != nil {
		return systemFault(s.stage, "the new release is in place, but the old one cannot be removed", err)
	}
	return nil
}

// swapByJournal replaces the target by two renames. After a kill between them the
// target is missing until the next start. After an error it restores a complete
// release and returns both errors.
func (s *site) swapByJournal() error {
	for _, step := range s.journalSteps() {
		if err := step(); err != nil {
			// Recovery after an error is the same as after a kill.
			return errors.Join(systemFault(s.target, "cannot put the new release in place", err), s.recover())
		}
	}
	return nil
}

// journalSteps returns the steps of swapByJournal, each with the system's error.
// After a kill before, between or after any of them recover restores the target to
// one complete release.
func (s *site) journalSteps() []func() error {
	return []func() error{
		func() error { return writeDurably(s.notes, "the stage is whole; finish moving it to the target\n") },
		func() error { return syncOne(s.parent, true) },
		func() error { return os.Rename(s.target, s.retired) },
		func() error { return os.Rename(s.stage, s.target) },
		func() error { return syncOne(s.parent, true) },
		func() error { return os.Remove(s.notes) },
		func() error { return os.RemoveAll(s.retired) },
	}
}

// recover finishes an interrupted swap and removes its leftovers. It returns an
// error if it cannot; without leftovers it does nothing.
//
// Where the journal exists the staging directory is complete. If the target is
// missing, the kill was between the two renames: the staging directory becomes the
// target or, if it is missing too, the old release does. In every other state the
// target is complete. Without a journal the staging directory may be incomplete
// and is removed.
func (s *site) recover() error {
	leftovers := []string{s.notes, s.notes + unfinished, s.stage, s.retired}
	if !slices.ContainsFunc(leftovers, exists) {
		return nil
	}
	if exists(s.notes) && !exists(s.target) {
		from := s.stage
		if !exists(from) {
			from = s.retired
		}
		if err := os.Rename(from, s.target); err != nil && !os.IsNotExist(err) {
			return systemFault(s.target, "cannot finish the last publication", err)
		}
	}
	if err := syncOne(s.parent, true); err != nil {
		return systemFault(s.parent, "cannot finish the last publication", err)
	}
	// The journal is removed first: without it the rest can be removed too.
	for _, path := range leftovers {
		if err := os.RemoveAll(path); err != nil {
			return fault.Fault{File: path, Code: "output",
				Text: "cannot remove what the last publication left: " + err.Error(), Hint: "remove it yourself"}
		}
	}
	return nil
}

// exists reports whether path exists, also as a symbolic link that leads to
// nothing.
func exists(path string) bool {
	_, err := os.Lstat(path)
	return err == nil
}

// unfinished is the suffix of a file's name until it is complete and synced.
const unfinished = "-new"

// writeDurably writes a file that appears under its name complete and synced. It
// replaces a file of that name. It returns the system's errors.
func writeDurably(path, text string) error {
	fresh := path + unfinished
	if err := os.WriteFile(fresh, []byte(text), 0o644); err != nil {
		return err
	}
	return errors.Join(syncOne(fresh, false), os.Rename(fresh, path))
}
