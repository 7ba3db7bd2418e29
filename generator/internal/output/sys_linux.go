package output

import (
	"errors"
	"os"

	"golang.org/x/sys/unix"
)

// exchange exchanges two folders in one step. It returns errNoExchange if the file
// system cannot, and otherwise the system's error.
func exchange(a, b string) error {
	err := unix.Renameat2(unix.AT_FDCWD, a, unix.AT_FDCWD, b, unix.RENAME_EXCHANGE)
	for _, refusal := range []error{unix.EINVAL, unix.ENOSYS, unix.ENOTSUP} {
		if errors.Is(err, refusal) {
			return errNoExchange
		}
	}
	return err
}

// syncTree syncs everything below dir, and returns the system's error. One syncfs
// writes all pending data of the file system and waits for it. For ten thousand
// files that is far cheaper than as many calls of fsync, with the same guarantee.
// Where syncfs fails, it syncs each file.
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
