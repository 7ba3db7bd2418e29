package main

import (
	"fmt"
	"io"
	"os"
	"time"

	"coursebook/generator/internal/build"
	"coursebook/generator/internal/fault"
	"coursebook/generator/internal/output"
)

// runBuild runs the command build and returns its exit status. With faults in the
// content it writes nothing to the target.
func runBuild(s std, args []string) int {
	flags := newManualFlags("build",
		"Writes the whole site. The last good site stays in place until the new one is whole.")
	out := flags.String("out", "site", "folder to publish into")
	pocket := flags.String("pocket", "",
		"also write the whole manual as this one HTML file, outside of -content and -out")
	o, status, done := flags.open(s, args)
	if done {
		return status
	}
	var edition *output.OneFile
	if *pocket != "" {
		edition = &output.OneFile{Path: *pocket, Content: *flags.content, Site: *out}
		if err := edition.Check(); err != nil {
			return s.fail("build", err)
		}
	}
	if err := output.Recover(*out); err != nil { // also when this build stops at a fault
		return s.fail("build", err)
	}
	o.Pocket = edition != nil
	draft := output.NewDraft(*out)
	defer draft.Discard()
	o.OnFile = draft.Put
	progress := newProgress(s.err)
	o.Step = progress.step
	start := time.Now()
	var faults fault.List
	site := build.Make(o, &faults)
	progress.clear()
	if err := draft.Err(); err != nil {
		return s.fail("build", err)
	}
	if site == nil {
		fault.Print(s.err, faults.All())
		fmt.Fprintln(s.err, "Nothing was written. The last good site, if there is one, is as it was.")
		return faulty
	}
	if err := publish(site, draft, edition); err != nil {
		return s.fail("build", err)
	}
	fmt.Fprintf(s.out, "%d pages, %d files in %s (%d ms)\n",
		site.Pages, len(site.Entries), *out, time.Since(start).Milliseconds())
	s.warn(&faults)
	return fine
}

// warn prints the warnings that only a build finds, and counts the others.
func (s std) warn(faults *fault.List) {
	listed := build.BuildOnly(faults.All())
	if len(listed) > 0 {
		fault.Print(s.err, listed)
	}
	if n := faults.Warnings() - len(listed); n > 0 {
		fmt.Fprintf(s.err, "%d warnings; coursebook inspect lists them and checks the prose\n", n)
	} else {
		fmt.Fprintln(s.err, "No warnings; coursebook inspect checks the prose too")
	}
}

// publish moves the staged site into the target folder, then writes the one-file
// edition, unless pocket is nil. It returns the first error.
func publish(site *build.Site, draft *output.Draft, pocket *output.OneFile) error {
	if err := draft.Publish(site.Release); err != nil || pocket == nil {
		return err
	}
	return pocket.Write(site.Pocket)
}

// fail prints the error of a command and returns the status faulty. A fault.Fault
// is printed with its location and hint.
func (s std) fail(command string, err error) int {
	if f, ok := err.(fault.Fault); ok {
		fault.Print(s.err, []fault.Fault{f})
		return faulty
	}
	fmt.Fprintf(s.err, "coursebook %s: %v\n", command, err)
	return faulty
}

// progress shows the current step on a terminal once a build takes longer than a
// second. Output that is not a terminal gets nothing.
type progress struct {
	w     io.Writer // nil where w is no terminal
	start time.Time
	shown bool
}

// newProgress returns a progress that writes to w if that is a terminal, and
// nothing otherwise.
func newProgress(w io.Writer) *progress {
	f, ok := w.(*os.File)
	if !ok {
		return &progress{}
	}
	if info, err := f.Stat(); err != nil || info.Mode()&os.ModeCharDevice == 0 {
		return &progress{}
	}
	return &progress{w: w, start: time.Now()}
}

// begin restarts the second before the first line is shown.
func (p *progress) begin() { p.start = time.Now() }

// step shows what as the current step, unless less than a second has passed.
func (p *progress) step(what string) {
	if p.w == nil || time.Since(p.start) < time.Second {
		return
	}
	p.shown = true
	fmt.Fprintf(p.w, "\r\x1b[K%s …", what)
}

// clear removes the line that step has written, if any.
func (p *progress) clear() {
	if p.shown {
		fmt.Fprint(p.w, "\r\x1b[K")
		p.shown = false
	}
}
