//go:build unix

package main

import (
	"encoding/json"
	"fmt"
	"io"
	"os"
	"os/exec"
	"path/filepath"
	"runtime"
	"strings"
	"sync"
	"sync/atomic"
	"syscall"
	"time"

	"github.com/yuin/goldmark"
)

// cost is the time and memory of one measurement.
type cost struct {
	wall, cpu time.Duration
	peak      int64 // largest resident set of one process, in bytes
}

// String returns wall and CPU time in seconds.
func (c cost) String() string {
	return fmt.Sprintf("%6.2f s wall %6.2f s CPU", c.wall.Seconds(), c.cpu.Seconds())
}

func ms(d time.Duration) float64 { return float64(d) / float64(time.Millisecond) }

func ratio(a, b time.Duration) float64 { return float64(a) / float64(b) }

// best repeats a measurement rounds times and returns the one with the least CPU
// time, because disturbances only add to it. It returns the first error.
func best(rounds int, work func() (cost, error)) (cost, error) {
	var least cost
	for i := range rounds {
		c, err := work()
		if err != nil {
			return cost{}, err
		}
		if i == 0 || c.cpu < least.cpu {
			least = c
		}
	}
	return least, nil
}

// spend runs a program and returns its cost, with that of its child processes. If
// the program fails, the error has the end of its messages.
func spend(name string, args ...string) (cost, error) { return spendIn(nil, nil, name, args...) }

// spendIn is spend with additional variables of the environment, and with the
// standard output written to out, which may be nil.
func spendIn(env []string, out io.Writer, name string, args ...string) (cost, error) {
	cmd := exec.Command(name, args...)
	cmd.Env = append(os.Environ(), env...)
	cmd.Stdout = out
	var stderr strings.Builder
	cmd.Stderr = &stderr
	start := time.Now()
	err := cmd.Run()
	wall := time.Since(start)
	if err != nil {
		return cost{}, fmt.Errorf("%s %s: %w\n%s", filepath.Base(name), strings.Join(args, " "), err,
			tail(stderr.String(), 20))
	}
	c := cost{wall: wall, cpu: cmd.ProcessState.UserTime() + cmd.ProcessState.SystemTime()}
	if usage, ok := cmd.ProcessState.SysUsage().(*syscall.Rusage); ok {
		c.peak = int64(usage.Maxrss) << 10 // KiB on Linux
	}
	return c, nil
}

// tail returns the last most lines of a text, or all if it has fewer.
func tail(text string, most int) string {
	lines := strings.Split(strings.TrimRight(text, "\n"), "\n")
	if len(lines) > most {
		lines = lines[len(lines)-most:]
	}
	return strings.Join(lines, "\n")
}

// makeBinary builds the binary that users get, with the module inside, and returns
// its path and the cost of compiling, reducing and packing the module with a warm
// build cache. It returns an error if one of the two fails.
func makeBinary(dir string) (binary string, module cost, err error) {
	if _, err = spend("make", "-s", "dist"); err != nil {
		return "", cost{}, err
	}
	module, err = spend("go", "run", "./generator/pack", "-out", filepath.Join(dir, "pack"))
	return filepath.Join("dist", "coursebook"), module, err
}

// convertApart converts a folder in a separate process, so that its memory and
// garbage collection are measured alone. It returns an error if the process fails.
func convertApart(content string) (cost, error) {
	self, err := os.Executable()
	if err != nil {
		return cost{}, err
	}
	var out strings.Builder
	if _, err := spendIn(nil, &out, self, "-convert", content); err != nil {
		return cost{}, err
	}
	var c [2]time.Duration
	err = json.Unmarshal([]byte(out.String()), &c)
	return cost{wall: c[0], cpu: c[1]}, err
}

// convertFolder converts the pages of a folder with an unconfigured goldmark, on
// all cores, from memory to memory. It prints the wall and CPU time of the
// conversion as JSON. It returns an error if a page cannot be read or converted.
func convertFolder(w io.Writer, content string) error {
	paths, err := filepath.Glob(filepath.Join(content, "*", "*.md"))
	if err != nil {
		return err
	}
	var pages [][]byte
	for _, path := range paths {
		data, err := os.ReadFile(path)
		if err != nil {
			return err
		}
		pages = append(pages, body(data))
	}
	start, before := time.Now(), spent()
	if err := convertAll(pages); err != nil {
		return err
	}
	return json.NewEncoder(w).Encode([2]time.Duration{time.Since(start), spent() - before})
}

// body returns a page without its header, which is not Markdown.
func body(page []byte) []byte {
	const rule = "---\n"
	text, ok := strings.CutPrefix(string(page), rule)
	if !ok {
		return page
	}
	_, text, _ = strings.Cut(text, "\n"+rule)
	return []byte(text)
}

// convertAll converts pages on all cores. It returns an error with the number of
// pages that failed or gave no output.
func convertAll(pages [][]byte) error {
	var next, failed atomic.Int64
	var group sync.WaitGroup
	for range runtime.GOMAXPROCS(0) {
		group.Go(func() {
			md := goldmark.New()
			for i := int(next.Add(1)) - 1; i < len(pages); i = int(next.Add(1)) - 1 {
				var out strings.Builder
				if md.Convert(pages[i], &out) != nil || out.Len() == 0 {
					failed.Add(1)
				}
			}
		})
	}
	group.Wait()
	if n := failed.Load(); n > 0 {
		return fmt.Errorf("%d pages did not convert", n)
	}
	return nil
}

// spent returns the CPU time of this process so far; 0 if the system does not
// report it.
func spent() time.Duration {
	var u syscall.Rusage
	if err := syscall.Getrusage(syscall.RUSAGE_SELF, &u); err != nil {
		return 0
	}
	return time.Duration(u.Utime.Nano() + u.Stime.Nano())
}
