//go:build unix

package output

import (
	"errors"
	"os"

	"golang.org/x/sys/unix"
)

// lock takes the lock file at path, or refuses when another process has it. The
// system drops the lock when the process ends, however it ends.
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
		// The last holder may have removed the file between our two calls; then
		// what we locked is not what others will find under the name.
		ours, err1 := f.Stat()
		named, err2 := os.Stat(path)
		if err1 == nil && err2 == nil && os.SameFile(ours, named) {
			return func() { os.Remove(path); f.Close() }, nil
		}
		f.Close()
	}
}

// syncOne brings a file or a folder to disk.
func syncOne(path string, _ bool) error {
	f, err := os.Open(path)
	if err != nil {
		return err
	}
	return errors.Join(f.Sync(), f.Close())
}
