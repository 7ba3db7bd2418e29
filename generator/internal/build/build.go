// Package build runs the steps of a build: it reads and resolves the content, makes
// forms, indexes and pages, and passes each file to a function or returns the site. It
// writes no file; package output does.
package build

import (
	"cmp"
	"fmt"
	"io/fs"
	"slices"

	"coursebook/calculators/calc"
	"coursebook/calculators/rules"
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

// BuildOnly returns the warnings that Make finds and Inspect does not: those about the
// module and the sizes of built files.
func BuildOnly(faults []fault.Fault) []fault.Fault {
	var list []fault.Fault
	for _, f := range faults {
		if f.Severity == fault.Warning && (f.Code == codeModule || f.Code == output.CodeBudget) {
			list = append(list, f)
		}
	}
	return list
}

// Options are the inputs of a build.
type Options struct {
	Content     string // path of the content folder
	Theme       fs.FS
	Calculators []*calc.Calculator
	Rules       []*rules.Rule // the declared house rules
	// Module returns the compiled module. It is called only if the content has no
	// errors.
	Module func() (compiling.Module, error)
	// Preview adds the script that reloads pages when the site is rebuilt.
	Preview bool
	// Pocket adds the one-file edition.
	Pocket bool
	// OnFile, if not nil, is called with each file from several goroutines, and the site
	// then has no Files. It may be called although the build fails later.
	OnFile func(output.File) error
	// Step, if not nil, is called with the name of each step, for a progress line.
	Step func(name string)
}

// Site is a built site.
type Site struct {
	Entries []output.Entry // of all files, sorted by path
	Files   []output.File  // the same files; nil with Options.OnFile
	Release string         // a hash of the entries
	Pocket  []byte         // the one-file edition; nil without Options.Pocket
	Pages   int            // pages of the manual, in all languages
}

// Make builds the site. It adds errors and warnings to faults, and returns nil if
// there are errors.
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
	b.addAppManifests()
	o.Step("rendering the pages")
	b.renderPages()
	if faults.Errors() > 0 {
		return nil
	}
	return b.finish()
}

// Inspect adds all faults and warnings of the content to faults without building
// pages: it reads and resolves the content, checks its prose and its terms and creates
// the forms. Make checks neither prose nor terms.
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
	b.checkTerms()
}

// finish adds the files that depend on all others, sorts all files and checks
// their budgets. It returns nil if there are errors, which it has added to the
// faults.
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

// addRelease adds release.json. All files but the worker must have been added; the
// worker lists release.json.
func (b *builder) addRelease() {
	b.sortEntries()
	b.release.Edition = release.Edition(b.entries)
	b.add(release.Name, b.release.JSON())
}

// sortEntries sorts the entries by path.
func (b *builder) sortEntries() {
	slices.SortFunc(b.entries, func(x, y output.Entry) int { return cmp.Compare(x.Path, y.Path) })
}

// overBudget adds the fault of a file over its budget: an error, or a warning in a
// preview, whose author must see the page to shorten it.
func (b *builder) overBudget(f fault.Fault) {
	if b.o.Preview {
		f.Severity = fault.Warning
	}
	b.faults.Add(f)
}

// fail adds err to the faults: unchanged if it is a fault, otherwise as an error
// without a place.
func (b *builder) fail(err error) {
	if f, ok := err.(fault.Fault); ok {
		b.faults.Add(f)
		return
	}
	b.faults.Add(fault.Fault{Text: fmt.Sprint(err), Code: "build"})
}

// add passes a file to Options.OnFile, or stores it. It is safe for concurrent
// use. A second file with the same path is a fault and does not replace the first;
// an error of OnFile is a fault too. The caller must not change the data
// afterwards.
func (b *builder) add(path string, data []byte) {
	f := output.File{Path: path, Data: data}
	if !b.enter(f) {
		b.fail(fault.Fault{File: path, Code: "path-twice", Text: "two files of the site have this path",
			Hint: "rename one of the pages or pictures"})
		return
	}
	if b.o.OnFile == nil {
		return
	}
	if err := b.o.OnFile(f); err != nil {
		b.fail(err)
	}
}

// enter adds the entry of a file, and the file if Options.OnFile is nil. It returns false
// if the path exists.
func (b *builder) enter(f output.File) bool {
	entry := f.Entry()
	b.mu.Lock()
	defer b.mu.Unlock()
	if b.paths[f.Path] {
		return false
	}
	b.paths[f.Path] = true
	b.entries = append(b.entries, entry)
	if b.o.OnFile == nil {
		b.files = append(b.files, f)
	}
	return true
}
