package output

import (
	"errors"
	"os"

	"golang.org/x/sys/unix"
)

// exchange swaps two folders in one step.
func exchange(a, b string) error {
	err := unix.Renameat2(unix.AT_FDCWD, a, unix.AT_FDCWD, b, unix.RENAME_EXCHANGE)
	for _, refusal := range []error{unix.EINVAL, unix.ENOSYS, unix.ENOTSUP} {
		if errors.Is(err, refusal) {
			return errNoExchange
		}
	}
	return err
}

// syncTree brings everything below dir to disk. One syncfs writes what the whole
// file system has pending and waits for it; for ten thousand files that is far
// cheaper than as many calls of fsync, and no weaker.
func syncTree(dir string) error {
	d, err := os.Open(dir)
	if err != nil {
		return err
	}
	defer d.Close()
	if err := unix.Syncfs(int(d.Fd())); err != nil {
		return syncEach(dir)
	}
	return nil
}
