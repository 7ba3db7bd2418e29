package output

import (
	"errors"
	"os"

	"golang.org/x/sys/windows"
)

// lock takes the lock file at path, or refuses when another process has it. The
// system drops the lock when the process ends, however it ends.
func lock(path string) (unlock func(), err error) {
	f, err := os.OpenFile(path, os.O_RDWR|os.O_CREATE, 0o644)
	if err != nil {
		return nil, err
	}
	const now = windows.LOCKFILE_EXCLUSIVE_LOCK | windows.LOCKFILE_FAIL_IMMEDIATELY
	if err := windows.LockFileEx(windows.Handle(f.Fd()), now, 0, 1, 0, new(windows.Overlapped)); err != nil {
		f.Close()
		if errors.Is(err, windows.ERROR_LOCK_VIOLATION) {
			return nil, errBusy(path)
		}
		return nil, err
	}
	// An open file cannot be removed here; one that another process opens in
	// between stays, and does no harm.
	return func() { f.Close(); os.Remove(path) }, nil
}

// syncOne brings a file to disk. Windows writes folders by itself.
func syncOne(path string, folder bool) error {
	if folder {
		return nil
	}
	f, err := os.OpenFile(path, os.O_RDWR, 0)
	if err != nil {
		return err
	}
	return errors.Join(f.Sync(), f.Close())
}
