// Package build runs the steps of a build in their order: it reads and resolves
// the content, makes forms, indexes and pages, and passes on each file as it is
// made, or returns the whole site. It writes nothing; package output publishes.
package build

import (
	"cmp"
	"fmt"
	"io/fs"
	"slices"

	"coursebook/calculators/calc"
	"coursebook/generator/internal/bundle"
	"coursebook/generator/internal/fault"
	"coursebook/generator/internal/markdown"
	"coursebook/generator/internal/output"
	"coursebook/generator/internal/release"
	"coursebook/generator/internal/render"
	"coursebook/generator/module/compiling"
)

// codeModule is the code of a warning about how the module was compiled.
const codeModule = "module"

// BuildOnly returns the warnings of Make that Inspect does not find: they are
// about the module and the size of what was built, not about the content.
func BuildOnly(faults []fault.Fault) []fault.Fault {
	var list []fault.Fault
	for _, f := range faults {
		if f.Severity == fault.Warning && (f.Code == codeModule || f.Code == output.CodeBudget) {
			list = append(list, f)
		}
	}
	return list
}

// Options is what a site is made from.
type Options struct {
	Content     string // folder
	Theme       fs.FS
	Calculators []*calc.Calculator
	// Module gives the compiled module. It is called only when the content
	// has no errors.
	Module func() (compiling.Module, error)
	// Preview adds the script that reloads pages when the site is rebuilt.
	Preview bool
	// Pocket asks for the one-file edition too.
	Pocket bool
	// Keep takes each file as soon as it is made, from several goroutines; the
	// site then does not hold it. It may be called for a site that has errors
	// in the end. Without it the site holds all files.
	Keep func(output.File) error
	// Step is called with the name of each step, for a progress line; may be nil.
	Step func(what string)
}

// Site is a finished site.
type Site struct {
	Entries []output.Entry // of all files, sorted by path
	Files   []output.File  // the same files; nil where Keep took them
	Release string         // names exactly these files
	Pocket  []byte         // the one-file edition, if asked for
	Pages   int            // pages of the manual, in all languages
}

// Make builds the site. It returns nil when there are errors; all of them are
// in faults.
func Make(o Options, faults *fault.List) *Site {
	if o.Step == nil {
		o.Step = func(string) {}
	}
	o.Step("reading the content")
	b := read(o, markdown.ParseToShow, faults)
	if faults.Errors() > 0 {
		return nil
	}
	o.Step("compiling the module")
	b.loadModule()
	o.Step("bundling the theme")
	b.bundleTheme()
	b.makeForms()
	o.Step("indexing")
	b.makeIndexes()
	if faults.Errors() > 0 {
		return nil
	}
	b.addAppManifest()
	o.Step("rendering the pages")
	b.renderPages()
	if faults.Errors() > 0 {
		return nil
	}
	return b.finish()
}

// Inspect reads and resolves the content, checks its prose and makes the
// forms, so that every fault and warning of the content is found, without
// building pages. Make does not check the prose.
func Inspect(o Options, faults *fault.List) {
	b := read(o, markdown.Parse, faults)
	if b.Site == nil {
		return
	}
	var prose fault.List
	b.Site.CheckProse(b.Sources, &prose)
	render.CheckPaper(&b.Manual, &prose)
	faults.Add(fault.Under(o.Content, prose.All())...)
	b.makeForms()
}

// finish sorts the files, adds what is made from all others, and weighs them.
func (b *builder) finish() *Site {
	b.addRelease()
	b.sortEntries()
	worker, err := b.worker(b.entries)
	if err != nil {
		b.fail(err)
		return nil
	}
	b.add(worker.Path, worker.Data)
	b.sortEntries()
	slices.SortFunc(b.files, func(x, y output.File) int { return cmp.Compare(x.Path, y.Path) })
	for _, f := range output.CheckBudgets(b.weights) {
		b.overBudget(f)
	}
	site := &Site{Entries: b.entries, Files: b.files, Release: output.ReleaseOf(b.entries), Pages: len(b.Site.Pages)}
	if b.o.Pocket {
		b.o.Step("writing the one-file edition")
		html, err := render.Pocket(&b.Manual, b.release, bundle.NewMinifier())
		if err != nil {
			b.fail(err)
		}
		site.Pocket, _ = release.Stamp(html)
	}
	if b.faults.Errors() > 0 {
		return nil
	}
	return site
}

// addRelease adds the list of the release. It follows all files but the worker,
// which lists it.
func (b *builder) addRelease() {
	b.sortEntries()
	b.release.Edition = release.Edition(b.entries)
	b.add(release.Name, b.release.JSON())
}

func (b *builder) sortEntries() {
	slices.SortFunc(b.entries, func(x, y output.Entry) int { return cmp.Compare(x.Path, y.Path) })
}

// overBudget reports a file beyond its size limit. A preview only warns: its
// author has to see the page in order to shorten it.
func (b *builder) overBudget(f fault.Fault) {
	if b.o.Preview {
		f.Severity = fault.Warning
	}
	b.faults.Add(f)
}

// fail turns an error that is no fault of the content into one.
func (b *builder) fail(err error) {
	if f, ok := err.(fault.Fault); ok {
		b.faults.Add(f)
		return
	}
	b.faults.Add(fault.Fault{Text: fmt.Sprint(err), Code: "build"})
}

// add passes a file to Options.Keep, or stores it. It may be called from several
// goroutines. A second file with the same path is a fault and does not replace the
// first. The caller must not change the data afterwards.
func (b *builder) add(path string, data []byte) {
	f := output.File{Path: path, Data: data}
	if !b.enter(f) {
		b.fail(fault.Fault{File: path, Code: "path-twice", Text: "two files of the site have this path",
			Hint: "rename one of the pages or pictures"})
		return
	}
	if b.o.Keep == nil {
		return
	}
	if err := b.o.Keep(f); err != nil {
		b.fail(err)
	}
}

// enter lists a file, and holds its data where Options.Keep is nil.
func (b *builder) enter(f output.File) bool {
	entry := f.Entry()
	b.adding.Lock()
	defer b.adding.Unlock()
	if b.paths[f.Path] {
		return false
	}
	b.paths[f.Path] = true
	b.entries = append(b.entries, entry)
	if b.o.Keep == nil {
		b.files = append(b.files, f)
	}
	return true
}
