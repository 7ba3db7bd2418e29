package output

import (
	"errors"
	"os"
	"slices"

	"coursebook/generator/internal/fault"
)

// errNoExchange says that two folders cannot be exchanged in one step here.
var errNoExchange = errors.New("the file system cannot exchange two folders in one step")

// exchangeFolders is exchange, except in tests of the journal.
var exchangeFolders = exchange

// swap puts the finished stage in the target's place.
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
	// The stage now holds the old release, if there was one.
	if err := syncOne(s.parent, true); err != nil {
		return systemFault(s.parent, "the new release is in place, but not surely on disk", err)
	}
	if err := os.RemoveAll(s.stage); err != nil {
		return systemFault(s.stage, "the new release is in place, but the old one cannot be removed", err)
	}
	return nil
}

// swapByJournal puts the stage in the target's place by two renames. Between
// them the target is missing until the next start.
func (s *site) swapByJournal() error {
	for _, step := range s.journalSteps() {
		if err := step(); err != nil {
			// Finishing or undoing is the same work as after a kill.
			return errors.Join(systemFault(s.target, "cannot put the new release in place", err), s.recover())
		}
	}
	return nil
}

// journalSteps are the steps of swapByJournal. After a kill before, between or
// after any of them recover brings the target to one whole release.
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

// recover finishes a swap that was cut short and removes what was left over.
//
// With a journal the stage is whole. If the target is missing the kill fell
// between the two renames, and the stage (or, failing that, the old release)
// takes its place. In every other state the target is whole already. Without a
// journal the stage may be anything and is thrown away.
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
	// The journal goes first: from then on the rest is mere litter.
	for _, path := range leftovers {
		if err := os.RemoveAll(path); err != nil {
			return fault.Fault{
				File: path,
				Code: "output",
				Text: "cannot remove what the last publication left: " + err.Error(),
				Hint: "remove it yourself",
			}
		}
	}
	return nil
}

func exists(path string) bool {
	_, err := os.Lstat(path)
	return err == nil
}

// unfinished ends the name of a file until it is on disk.
const unfinished = "-new"

// writeDurably writes a small file so that it is on disk, whole, under its name.
func writeDurably(path, text string) error {
	fresh := path + unfinished
	if err := os.WriteFile(fresh, []byte(text), 0o644); err != nil {
		return err
	}
	return errors.Join(syncOne(fresh, false), os.Rename(fresh, path))
}
