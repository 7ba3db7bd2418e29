//go:build unix

package output

import (
	"errors"
	"os"

	"golang.org/x/sys/unix"
)

// lock locks the file at path, which it creates if needed. It returns errBusy if
// another process has the lock, and the system's error if the file cannot be
// opened. unlock removes the file. The system releases the lock when the process
// ends, also when it is killed.
func lock(path string) (unlock func(), err error) {
	for {
		f, err := os.OpenFile(path, os.O_RDWR|os.O_CREATE, 0o644)
		if err != nil {
			return nil, err
		}
		if err := unix.Flock(int(f.Fd()), unix.LOCK_EX|unix.LOCK_NB); err != nil {
			f.Close()
			if errors.Is(err, unix.EWOULDBLOCK) {
				return nil, errBusy(path)
			}
			return nil, err
		}
		// The last holder may have removed the file between the two calls. Then
		// the locked file is not the one that other processes find at path.
		locked, err1 := f.Stat()
		named, err2 := os.Stat(path)
		if err1 == nil && err2 == nil && os.SameFile(locked, named) {
			return func() { os.Remove(path); f.Close() }, nil
		}
		f.Close()
	}
}

// syncOne syncs a file or a folder, and returns the system's error.
func syncOne(path string, _ bool) error {
	f, err := os.Open(path)
	if err != nil {
		return err
	}
	return errors.Join(f.Sync(), f.Close())
}
