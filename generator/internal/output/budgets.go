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
	// HomeLimit bounds the first view of the home page: what about ten packets
	// carry before the first acknowledgement.
	HomeLimit = 14_600
	// CalculatorLimit bounds the first view of a calculator's pages: HomeLimit
	// with 300 B to spare.
	CalculatorLimit = HomeLimit - 300
	// ScriptLimit bounds all scripts of a page together, in bytes.
	ScriptLimit = 30_000
	// ModuleLimit bounds the WebAssembly module, in bytes. Runtime and search take
	// some 600,000, a calculator with its texts 9,000 to 12,000. The module is
	// fetched once and kept on the device.
	ModuleLimit = 975_000
	// IndexPercent bounds the search index of a language, in percent of the
	// text it covers.
	IndexPercent = 25
)

// CodeBudget is the code of a fault about a file beyond its limit.
const CodeBudget = "budget"

// The kinds of page that have a limit of their own, or none. A page of any other
// kind is held to PageLimit.
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

// firstViewLimit is the limit of the first view of a kind of page; weighed is
// false for an exempt kind.
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

// Weights is what a site has but once, for CheckBudgets.
type Weights struct {
	// Scripts are the scripts of a page.
	Scripts []File
	// Module is the WebAssembly module, packed with gzip or not.
	Module File
	// ModuleUnreduced reports whether a step which makes the module smaller was left
	// out. A module over its limit is then a warning.
	ModuleUnreduced bool
	// Indexes are the search indexes, one for each language.
	Indexes []Index
}

// Index is the search index of one language.
type Index struct {
	File
	// Text is the number of bytes of text it covers.
	Text int
}

// FirstView weighs pages with the style sheets that every page waits for.
type FirstView struct {
	styles int // bytes
}

// NewFirstView weighs pages with these style sheets.
func NewFirstView(styles []File) FirstView {
	var v FirstView
	for _, f := range styles {
		v.styles += packed(f.Data, 0)
	}
	return v
}

// Check returns a fault for a page beyond the limit of its kind.
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

// CheckBudgets returns a fault for each file, or set of files, beyond its limit.
// Pages are weighed one by one, by FirstView.
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

func heavy(path, what string, size, limit int, hint string) fault.Fault {
	text := fmt.Sprintf("%s is %d B after gzip, limit %d B", what, size, limit)
	return fault.Fault{File: path, Code: CodeBudget, Text: text, Hint: hint}
}

// packed is the size of data after gzip, at the level that servers use. Where
// the raw data is within the limit, or data compressed at the fastest level, it
// returns that size instead, so limit 0 gives the true size. Data that is packed
// already counts as it is.
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

// The compressors of two levels; each is reused, with its tables. The fastest
// level takes a third of the time.
var (
	fastest = sync.Pool{New: func() any { return newWriter(gzip.BestSpeed) }}
	usual   = sync.Pool{New: func() any { return newWriter(gzip.DefaultCompression) }}
)

func newWriter(level int) *gzip.Writer {
	w, err := gzip.NewWriterLevel(nil, level)
	if err != nil {
		panic(err) // the level is a constant of the package
	}
	return w
}

// compressed is the size of data after gzip with a writer of the pool.
func compressed(pool *sync.Pool, data []byte) int {
	w := pool.Get().(*gzip.Writer)
	defer pool.Put(w)
	var n counter
	w.Reset(&n)
	w.Write(data) // a counter accepts everything
	w.Close()
	return int(n)
}

// counter counts the bytes written to it.
type counter int

func (c *counter) Write(p []byte) (int, error) {
	*c += counter(len(p))
	return len(p), nil
}
