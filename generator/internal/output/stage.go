package output

import (
	"errors"
	"io/fs"
	"os"
	"path"
	"path/filepath"
	"runtime"
	"sync"
	"time"
)

// build writes the new release into the stage and brings it safely to disk.
//
// Files with the bytes of the old release keep their modification time. All
// others get the release's own, which is at least a whole second later than any
// time the target ever had: a web server that tells versions apart by time in
// seconds and size then never takes a changed page for the old one.
func (s *site) build(files []File, old, next marker) error {
	if err := os.Mkdir(s.stage, 0o755); err != nil {
		return err
	}
	root, err := os.OpenRoot(s.stage)
	if err != nil {
		return err
	}
	defer root.Close()
	w := writer{root: root}
	if err := makeFolders(root, files); err != nil {
		return err
	}
	stamp := time.Unix(next.Time, 0)
	err = each(files, func(f File) error {
		when := stamp
		before := filepath.Join(s.target, filepath.FromSlash(f.Path))
		if info, err := os.Lstat(before); err == nil && same(before, f.Data) {
			when = info.ModTime()
		}
		return w.put(f, when)
	})
	if err != nil {
		return err
	}
	if err := w.put(File{markerName, []byte(next.String())}, stamp); err != nil {
		return err
	}
	if old.there {
		if err := os.Chmod(s.stage, old.mode); err != nil {
			return err
		}
	}
	return syncTree(s.stage)
}

// makeFolders makes every folder the files need, once.
func makeFolders(root *os.Root, files []File) error {
	made := map[string]bool{".": true}
	for _, f := range files {
		dir := path.Dir(f.Path)
		if made[dir] {
			continue
		}
		if err := root.MkdirAll(dir, 0o755); err != nil {
			return err
		}
		made[dir] = true
	}
	return nil
}

// writer writes files below a root from several goroutines.
type writer struct {
	root *os.Root
	// enter lets one file be made at a time. Most pages share a folder, and the
	// kernel admits one writer to a folder; the others would spin, not sleep.
	enter sync.Mutex
}

// put writes one new file and sets its modification time.
func (w *writer) put(f File, when time.Time) error {
	w.enter.Lock()
	file, err := w.root.OpenFile(f.Path, os.O_WRONLY|os.O_CREATE|os.O_EXCL, 0o644)
	w.enter.Unlock()
	if err != nil {
		return err
	}
	_, err = file.Write(f.Data)
	if err := errors.Join(err, file.Close()); err != nil {
		return err
	}
	return w.root.Chtimes(f.Path, when, when)
}

// each calls do for every file from as many goroutines as there are processors,
// and returns the first error met.
func each(files []File, do func(File) error) error {
	var group sync.WaitGroup
	var once sync.Once
	var first error
	next := make(chan File)
	stop := make(chan struct{})
	for range runtime.GOMAXPROCS(0) {
		group.Go(func() {
			for f := range next {
				if err := do(f); err != nil {
					once.Do(func() { first = err; close(stop) })
				}
			}
		})
	}
feed:
	for _, f := range files {
		select {
		case next <- f:
		case <-stop:
			break feed
		}
	}
	close(next)
	group.Wait()
	return first
}

// syncEach brings every file and folder below dir to disk, one by one.
func syncEach(dir string) error {
	return filepath.WalkDir(dir, func(path string, d fs.DirEntry, err error) error {
		if err != nil {
			return err
		}
		return syncOne(path, d.IsDir())
	})
}
