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

// stage is the staging directory of a new release.
//
// Files with the same bytes as in the old release keep their modification time.
// All others get the time of the release, which is at least a second later than
// any earlier time of the target. A web server that distinguishes versions by
// size and time in seconds then serves no changed page as unchanged.
type stage struct {
	root   *os.Root
	target string
	old    marker
	stamp  time.Time

	mu      sync.Mutex
	folders map[string]*os.Root // made so far; nil where the folder is not open
	// create is held while a file is created. The kernel locks a folder for one
	// writer, and waiting goroutines would spin instead of sleep.
	create sync.Mutex
}

// mostOpen bounds the number of open folders. Creating a file is faster in an
// open folder.
const mostOpen = 32

// newStage creates the staging directory dir for the target, whose state is old.
// It returns an error if dir exists or cannot be created.
func newStage(dir, target string, old marker) (*stage, error) {
	if err := os.Mkdir(dir, 0o755); err != nil {
		return nil, err
	}
	root, err := os.OpenRoot(dir)
	if err != nil {
		return nil, err
	}
	stamp := time.Unix(max(time.Now().Unix(), old.Time+1), 0)
	return &stage{root: root, target: target, old: old, stamp: stamp, folders: map[string]*os.Root{".": nil}}, nil
}

// close closes the folders and the root of the staging directory.
func (s *stage) close() {
	for _, f := range s.folders {
		if f != nil {
			f.Close()
		}
	}
	s.root.Close()
}

// put writes one file. It is safe for concurrent use. unchanged reports whether
// the target has the same file with the same bytes.
func (s *stage) put(f File) (unchanged bool, err error) {
	when := s.stamp
	if s.old.there {
		before := filepath.Join(s.target, filepath.FromSlash(f.Path))
		if info, err := os.Lstat(before); err == nil && same(before, f.Data) {
			when, unchanged = info.ModTime(), true
		}
	}
	folder, name, err := s.folder(f.Path)
	if err != nil {
		return false, err
	}
	return unchanged, s.write(folder, name, f.Data, when)
}

// folder returns the open folder for a file and the file's path below it. It
// creates a missing folder, and returns an error if it cannot.
func (s *stage) folder(name string) (*os.Root, string, error) {
	dir, base := path.Split(name)
	dir = path.Clean(dir)
	s.mu.Lock()
	defer s.mu.Unlock()
	open, made := s.folders[dir]
	if !made {
		if err := s.root.MkdirAll(dir, 0o755); err != nil {
			return nil, "", err
		}
		if len(s.folders) < mostOpen {
			var err error
			if open, err = s.root.OpenRoot(dir); err != nil {
				return nil, "", err
			}
		}
		s.folders[dir] = open
	}
	if open == nil {
		return s.root, name, nil
	}
	return open, base, nil
}

// write creates a file in a folder and sets its modification time. A file that
// exists is an error.
func (s *stage) write(folder *os.Root, name string, data []byte, when time.Time) error {
	s.create.Lock()
	file, err := folder.OpenFile(name, os.O_WRONLY|os.O_CREATE|os.O_EXCL, 0o644)
	s.create.Unlock()
	if err != nil {
		return err
	}
	_, err = file.Write(data)
	if err := errors.Join(err, file.Close()); err != nil {
		return err
	}
	return folder.Chtimes(name, when, when)
}

// seal writes the marker with the release and its sorted files, gives dir the
// permissions of the old target, and syncs it. It returns the first error of the
// system.
func (s *stage) seal(dir, release string, files []string) error {
	next := marker{Release: release, Time: s.stamp.Unix(), Paths: files}
	if err := s.write(s.root, markerName, []byte(next.String()), s.stamp); err != nil {
		return err
	}
	if s.old.there {
		if err := os.Chmod(dir, s.old.mode); err != nil {
			return err
		}
	}
	return syncTree(dir)
}

// each calls do for every file, concurrently, and returns the first error; after
// an error it starts no further calls.
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

// syncEach syncs every file and folder below dir, one by one, and returns the
// first error.
func syncEach(dir string) error {
	return filepath.WalkDir(dir, func(path string, d fs.DirEntry, err error) error {
		if err != nil {
			return err
		}
		return syncOne(path, d.IsDir())
	})
}
