package output

import (
	"bytes"
	"compress/gzip"
	"fmt"
	"slices"
	"sync"

	"coursebook/generator/internal/fault"
)

// The size budgets, all after gzip. The build fails beyond them.
const (
	// PageLimit bounds the first view of a page: its HTML and the style sheets
	// it waits for, in bytes.
	PageLimit = 12_000
	// HomeLimit bounds the first view of the home page, in bytes: about ten
	// packets, which a server sends before the first acknowledgement.
	HomeLimit = 14_600
	// CalculatorLimit bounds the first view of a calculator's pages, in bytes:
	// 300 less than HomeLimit.
	CalculatorLimit = HomeLimit - 300
	// ScriptLimit bounds all scripts of a page together, in bytes.
	ScriptLimit = 30_000
	// ModuleLimit bounds the WebAssembly module, in bytes. Runtime and search take
	// some 600,000, a calculator with its texts 9,000 to 12,000. The module is
	// fetched once and stored on the device.
	ModuleLimit = 1_050_000
	// IndexPercent bounds the search index of a language, in percent of the
	// text it covers.
	IndexPercent = 25
)

// CodeBudget is the code of a fault about a file beyond its limit.
const CodeBudget = "budget"

// The kinds of page whose limit is not PageLimit, or that have none.
const (
	KindHome       = "home"
	KindCalculator = "calculator" // and its second page
	KindGlossary   = "glossary"
	KindAll        = "all"    // the list from A to Z
	KindTables     = "tables" // a reference page of printed tables
	KindPaper      = "paper"  // pocket cards, posters
)

// exempt lists the kinds of page that may be long: they are made for paper or
// for looking things up, not for the first view at the wall.
var exempt = []string{KindGlossary, KindAll, KindTables, KindPaper}

// firstViewLimit returns the limit of the first view of a kind of page, in bytes.
// weighed is false for an exempt kind.
func firstViewLimit(kind string) (limit int, weighed bool) {
	switch {
	case slices.Contains(exempt, kind):
		return 0, false
	case kind == KindHome:
		return HomeLimit, true
	case kind == KindCalculator:
		return CalculatorLimit, true
	}
	return PageLimit, true
}

// Weights holds the files whose size CheckBudgets checks for the whole site.
type Weights struct {
	// Scripts are the scripts of a page.
	Scripts []File
	// Module is the WebAssembly module, compressed with gzip or not.
	Module File
	// ModuleUnreduced is true where a step that makes the module smaller was
	// skipped. A module over its limit is then a warning instead of an error.
	ModuleUnreduced bool
	// Indexes are the search indexes, one for each language.
	Indexes []Index
}

// Index is the search index of one language.
type Index struct {
	File
	// Text is the size of the text it covers, in bytes.
	Text int
}

// FirstView checks the size of pages together with the style sheets that block
// the first rendering of every page.
type FirstView struct {
	styles int // bytes after gzip
}

// NewFirstView returns the check for pages that load these style sheets.
func NewFirstView(styles []File) FirstView {
	var v FirstView
	for _, f := range styles {
		v.styles += packed(f.Data, 0)
	}
	return v
}

// Check returns the fault of a page over the limit of its kind, and true. heavier
// is false, and the fault empty, for a page within its limit (inclusive) and for
// an exempt kind.
func (v FirstView) Check(page File, kind string) (f fault.Fault, heavier bool) {
	limit, weighed := firstViewLimit(kind)
	if !weighed {
		return fault.Fault{}, false
	}
	html := packed(page.Data, limit-v.styles)
	if html+v.styles <= limit {
		return fault.Fault{}, false
	}
	return heavy(page.Path, fmt.Sprintf("first view (%d B of HTML, %d B of CSS)", html, v.styles), html+v.styles, limit,
		"split the page, or move details to a linked page"), true
}

// CheckBudgets returns a fault for each file, or set of files, over its limit; nil
// if there is none. FirstView checks the pages.
func CheckBudgets(w Weights) []fault.Fault {
	var l fault.List
	scripts := 0
	for _, f := range w.Scripts {
		scripts += packed(f.Data, 0)
	}
	if scripts > ScriptLimit {
		l.Add(heavy(w.Scripts[0].Path, "script", scripts, ScriptLimit, "remove code from the theme's scripts"))
	}
	if n := packed(w.Module.Data, ModuleLimit); n > ModuleLimit {
		f := heavy(w.Module.Path, "module", n, ModuleLimit, "look for a package that pulls in fmt, reflect or tables")
		if w.ModuleUnreduced {
			f.Severity = fault.Warning
			f.Hint = "another warning names the step that was left out"
		}
		l.Add(f)
	}
	for _, x := range w.Indexes {
		limit := x.Text * IndexPercent / 100
		if n := packed(x.Data, limit); n > limit {
			l.Add(heavy(x.Path, fmt.Sprintf("search index of %d B of text", x.Text), n, limit, "index fewer words"))
		}
	}
	return l.All()
}

// heavy returns the fault of the file or files what, of size bytes after gzip, of
// which limit are allowed.
func heavy(path, what string, size, limit int, hint string) fault.Fault {
	text := fmt.Sprintf("%s is %d B after gzip, limit %d B", what, size, limit)
	return fault.Fault{File: path, Code: CodeBudget, Text: text, Hint: hint}
}

// packed returns the size of data after gzip at the default level, which servers
// use. To save time it returns an upper bound where that is within the limit: the
// raw size, or the size at the fastest level. Limit 0 gives the exact size. Data
// that is gzip already counts unchanged.
func packed(data []byte, limit int) int {
	const frame = 64 // more than gzip adds to data it stores unpacked, per 64 kB
	if bytes.HasPrefix(data, []byte{0x1f, 0x8b}) {
		return len(data)
	}
	if n := len(data) + frame*(1+len(data)>>16); n <= limit {
		return n
	}
	if limit > 0 {
		if n := compressed(&fastest, data); n <= limit {
			return n
		}
	}
	return compressed(&usual, data)
}

// Pools of compressors, because allocating one costs more than compressing a
// page. The fastest level takes a third of the time.
var (
	fastest = sync.Pool{New: func() any { return newWriter(gzip.BestSpeed) }}
	usual   = sync.Pool{New: func() any { return newWriter(gzip.DefaultCompression) }}
)

// newWriter returns a gzip writer of a level that exists; it panics on any other.
func newWriter(level int) *gzip.Writer {
	w, err := gzip.NewWriterLevel(nil, level)
	if err != nil {
		panic(err) // the level is a constant of the package
	}
	return w
}

// compressed returns the size of data after gzip with a writer of the pool.
func compressed(pool *sync.Pool, data []byte) int {
	w := pool.Get().(*gzip.Writer)
	defer pool.Put(w)
	var n counter
	w.Reset(&n)
	w.Write(data) // writing to a counter cannot fail
	w.Close()
	return int(n)
}

// counter counts the bytes written to it.
type counter int

func (c *counter) Write(p []byte) (int, error) {
	*c += counter(len(p))
	return len(p), nil
}
