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

// The kernel checks permissions by the thread's file-system user, so a locked
// thread that gives up root's sees what an ordinary user would.
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
