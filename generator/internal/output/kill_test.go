package output

import (
	"bufio"
	"fmt"
	"math/rand/v2"
	"os"
	"os/exec"
	"path/filepath"
	"slices"
	"testing"
	"time"
)

// The environment of the child process: it publishes versions "one" and "two" in
// turn to the folder childTarget, by the journal where childJournal is set.
const (
	childTarget  = "COURSEBOOK_TEST_TARGET"
	childJournal = "COURSEBOOK_TEST_JOURNAL"
)

func TestMain(m *testing.M) {
	target := os.Getenv(childTarget)
	if target == "" {
		os.Exit(m.Run())
	}
	if os.Getenv(childJournal) != "" {
		exchangeFolders = func(a, b string) error { return errNoExchange }
	}
	for i := 0; ; i++ {
		files := madeUp([]string{"one", "two"}[i%2])
		if err := Publish(target, files, Release(files)); err != nil {
			fmt.Fprintln(os.Stderr, err)
			os.Exit(1)
		}
		fmt.Println("published")
	}
}

// After a kill at any moment the next start finds one complete release.
func TestKill(t *testing.T) {
	const kills = 15 // of each method
	for _, method := range []string{"exchange", "journal"} {
		t.Run(method, func(t *testing.T) {
			random := rand.New(rand.NewPCG(7, uint64(len(method))))
			target := filepath.Join(t.TempDir(), "site")
			publish(t, target, "one")
			started := time.Now()
			publish(t, target, "two")
			usual := time.Since(started)
			found := map[string]int{}
			for range kills {
				// The kill comes at a random moment after some publications.
				killChild(t, target, method == "journal", 2+random.IntN(2), time.Duration(random.Int64N(int64(usual))))
				if method == "exchange" {
					whole(t, target) // the target is complete before the next start
				}
				if err := Recover(target); err != nil {
					t.Fatal(err)
				}
				found[whole(t, target)]++
				alone(t, target)
			}
			if len(found) != 2 {
				t.Errorf("all kills found the same version: %v", found)
			}
		})
	}
}

// killChild starts a child, waits for some publications and some more time, and
// kills it at a random moment.
func killChild(t *testing.T, target string, journal bool, publications int, wait time.Duration) {
	t.Helper()
	self, err := os.Executable()
	if err != nil {
		t.Fatal(err)
	}
	child := exec.Command(self)
	child.Env = append(os.Environ(), childTarget+"="+target)
	if journal {
		child.Env = append(child.Env, childJournal+"=1")
	}
	child.Stderr = os.Stderr
	out, err := child.StdoutPipe()
	if err != nil {
		t.Fatal(err)
	}
	if err := child.Start(); err != nil {
		t.Fatal(err)
	}
	lines := bufio.NewReader(out)
	for range publications {
		if _, err := lines.ReadString('\n'); err != nil {
			t.Errorf("the child stopped publishing: %v", err)
		}
	}
	time.Sleep(wait)
	if err := child.Process.Kill(); err != nil {
		t.Error(err)
	}
	child.Wait() // reports the kill as an error
	if child.ProcessState.Exited() {
		t.Errorf("the child ended by itself: %v", child.ProcessState)
	}
}

// whole checks that the target is exactly one of the versions, and returns it.
func whole(t *testing.T, target string) string {
	t.Helper()
	found := Release(disk(t, target))
	for _, version := range []string{"one", "two"} {
		if found == Release(madeUp(version)) {
			return version
		}
	}
	t.Fatal("the target holds neither version whole")
	return ""
}

// A kill between any two steps of the journal leaves a target that recovers.
// Random kills rarely come at these moments.
func TestKillBetweenJournalSteps(t *testing.T) {
	byJournal(t)
	want := []string{"one", "one", "one", "two", "two", "two", "two", "two"}
	for done := range want {
		target := filepath.Join(t.TempDir(), "site")
		publish(t, target, "one")
		s := staged(t, target, "two")
		steps := s.journalSteps()
		if len(steps)+1 != len(want) {
			t.Fatalf("%d steps, and %d expectations", len(steps), len(want))
		}
		for _, step := range steps[:done] {
			if err := step(); err != nil {
				t.Fatal(err)
			}
		}
		if err := Recover(target); err != nil {
			t.Fatal(err)
		}
		if got := whole(t, target); got != want[done] {
			t.Errorf("after %d steps the next start gives %s, want %s", done, got, want[done])
		}
		alone(t, target)
		publish(t, target, "three")
	}
}

// A recovery that is killed is continued by the next one.
func TestKillDuringRecovery(t *testing.T) {
	for _, lost := range []func(s *site) error{
		func(s *site) error { return os.Rename(s.stage, s.target) }, // moved, nothing removed
		func(s *site) error { return os.RemoveAll(s.stage) },        // the stage is gone: undo
		func(s *site) error { return os.WriteFile(s.notes+unfinished, nil, 0o644) },
	} {
		target := filepath.Join(t.TempDir(), "site")
		publish(t, target, "one")
		s := staged(t, target, "two")
		for _, step := range s.journalSteps()[:3] {
			if err := step(); err != nil {
				t.Fatal(err)
			}
		}
		if err := lost(s); err != nil {
			t.Fatal(err)
		}
		if err := Recover(target); err != nil {
			t.Fatal(err)
		}
		whole(t, target)
		alone(t, target)
	}
}

// After a step that fails the publication is finished or undone at once.
func TestJournalStepFails(t *testing.T) {
	target := filepath.Join(t.TempDir(), "site")
	publish(t, target, "one")
	s := staged(t, target, "two")
	if err := os.MkdirAll(filepath.Join(s.retired, "in the way"), 0o755); err != nil {
		t.Fatal(err)
	}
	if err := s.swapByJournal(); err == nil {
		t.Error("no error, though the old release could not be moved away")
	}
	holds(t, target, "one")
}

// staged writes a version to the staging directory, as Publish does before the
// swap.
func staged(t *testing.T, target, version string) *site {
	t.Helper()
	files := madeUp(version)
	d := NewDraft(target)
	if err := each(files, d.Put); err != nil {
		t.Fatal(err)
	}
	slices.Sort(d.paths)
	if err := d.stage.seal(d.site.stage, Release(files), d.paths); err != nil {
		t.Fatal(err)
	}
	d.stage.close()
	d.unlock()
	return d.site
}

// A journal without a staging directory must not block the target.
func TestJournalAlone(t *testing.T) {
	target := filepath.Join(t.TempDir(), "site")
	publish(t, target, "one")
	s, unlock, err := open(target, true)
	if err != nil {
		t.Fatal(err)
	}
	unlock()
	if err := os.WriteFile(s.notes, nil, 0o644); err != nil {
		t.Fatal(err)
	}
	if err := os.RemoveAll(target); err != nil {
		t.Fatal(err)
	}
	publish(t, target, "two")
	alone(t, target)
}
