package output

import (
	"errors"
	"os"
	"path/filepath"
	"runtime"
	"strings"
	"syscall"
	"testing"

	"coursebook/generator/internal/fault"
)

// A parent folder without write permission gives a fault, and the old release
// stays. The kernel checks permissions by the file-system user of the thread, so
// the test locks a thread and changes that user.
func TestReadOnlyParent(t *testing.T) {
	dir := filepath.Join(t.TempDir(), "parent")
	if err := os.Mkdir(dir, 0o755); err != nil {
		t.Fatal(err)
	}
	target := filepath.Join(dir, "site")
	publish(t, target, "one")
	if err := os.Chmod(dir, 0o555); err != nil {
		t.Fatal(err)
	}
	err := asOrdinaryUser(func() error {
		files := madeUp("two")
		return Publish(target, files, Release(files))
	})
	if err := os.Chmod(dir, 0o755); err != nil {
		t.Fatal(err)
	}
	var f fault.Fault
	if !errors.As(err, &f) || !strings.Contains(f.Text, "permission denied") {
		t.Errorf("got %v, want permission denied", err)
	}
	holds(t, target, "one")
	alone(t, target)
}

func asOrdinaryUser(do func() error) error {
	result := make(chan error)
	go func() {
		runtime.LockOSThread() // and never unlock: the thread ends with the goroutine
		if os.Geteuid() == 0 {
			syscall.Setfsuid(65534)
		}
		result <- do()
	}()
	return <-result
}
