package output

import (
	"errors"
	"os"

	"golang.org/x/sys/windows"
)

// lock locks the file at path, which it creates if needed. It returns errBusy if
// another process has the lock, and the system's error if the file cannot be
// opened. unlock removes the file. The system releases the lock when the process
// ends, also when it is killed.
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
	// Windows cannot remove an open file. A lock file that another process opens
	// between the two calls remains, which is harmless.
	return func() { f.Close(); os.Remove(path) }, nil
}

// syncOne syncs a file, and returns the system's error. Windows syncs folders
// without a call.
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
