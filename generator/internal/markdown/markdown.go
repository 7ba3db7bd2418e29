// Package markdown turns a page's bytes into the page model and, once the rest
// of the manual is known, into HTML.
//
// The language is CommonMark with GitHub's tables, strikethrough and task
// lists. On top of it are the constructs of a crew's manual, each in a file
// of this package: steps and hold points, checks, cautions, places, amounts,
// terms. None needs another syntax, so a page stays legible in any viewer.
//
// Parsing writes the HTML at once, with gaps where it needs to know other
// pages; Body fills the gaps. So a page is walked once, and what is kept of it
// is little more than its text.
package markdown

import (
	"bytes"
	"sync"

	"coursebook/calculators/quantity"
	"coursebook/generator/internal/fault"
	"coursebook/generator/internal/markdown/amount"
	"coursebook/generator/internal/page"
	"coursebook/generator/internal/source"

	"github.com/yuin/goldmark/extension"
	"github.com/yuin/goldmark/parser"
	"github.com/yuin/goldmark/text"
	"github.com/yuin/goldmark/util"
)

// Document is a parsed page: its model and its HTML with gaps.
type Document struct {
	// Page is the model. Its links are not resolved.
	Page   page.Page
	html   string
	pieces []piece
}

// blocks reads CommonMark with the three extensions. Headings get no ids and
// links no checks here; both are this package's own. It is safe for
// concurrent use.
var blocks = newParser()

// newParser returns a parser of CommonMark with tables, strikethrough and task
// lists.
func newParser() parser.Parser {
	p := parser.NewParser(
		parser.WithBlockParsers(parser.DefaultBlockParsers()...),
		parser.WithInlineParsers(parser.DefaultInlineParsers()...),
		parser.WithParagraphTransformers(parser.DefaultParagraphTransformers()...),
	)
	p.AddOptions(
		parser.WithInlineParsers(
			util.Prioritized(extension.NewTaskCheckBoxParser(), 0),
			util.Prioritized(extension.NewStrikethroughParser(), 500),
		),
		parser.WithParagraphTransformers(util.Prioritized(extension.NewTableParagraphTransformer(), 200)),
		parser.WithASTTransformers(util.Prioritized(extension.NewTableASTTransformer(), 0)),
	)
	return p
}

// Language is what a page needs to know of its language.
type Language struct {
	Mark quantity.Mark
	// Taught is the code of the language whose words a page teaches in round brackets and
	// emphasis, (*pump*): the first language of the manual; "" for pages in it.
	Taught string
	Rules  map[string]Rule // the house rules by ID
}

// Parse parses a page. It adds errors and warnings to faults and never returns nil:
// after faults the document holds what could be read, without a body if the page
// exceeds a limit of its size.
func Parse(f source.File, l Language, faults *fault.List) *Document {
	return parseFor(f, l, true, faults)
}

// ParseToShow is Parse without Page.Prose and without the check of bare figures beside
// the words of a house rule, which are for the author only.
func ParseToShow(f source.File, l Language, faults *fault.List) *Document {
	return parseFor(f, l, false, faults)
}

// parseFor is Parse if prose is true, otherwise ParseToShow.
func parseFor(f source.File, l Language, prose bool, faults *fault.List) *Document {
	h, body, line := source.ParseHeader(f.Path, f.Data, faults)
	buffer := buffers.Get().(*[]byte)
	defer buffers.Put(buffer)
	w := &walker{
		out:    (*buffer)[:0],
		src:    body,
		file:   f,
		first:  line,
		faults: faults,
		finder: amount.New(f.Language(), l.Mark, h.Least...),
		mark:   l.Mark,
		rules:  l.Rules,
		taught: l.Taught,
		words:  wordsOf(f.Language()),
		ids:    ids{},

		wantProse: prose,
	}
	w.page = page.Page{Lang: f.Language(), Slug: f.Slug(), File: f.Path, Header: headerOf(h)}
	w.ruleHeader()
	w.least(h, body)
	if w.overLimit() {
		body = nil
		w.src = nil
	}
	w.whole = string(body)
	w.document(blocks.Parse(text.NewReader(body)))
	*buffer = w.out
	return &Document{Page: w.page, html: string(w.out), pieces: w.pieces}
}

// buffers hold the HTML of a page while it is written. One page leaves its
// buffer to the next, because growing a new one costs more than filling it.
var buffers = sync.Pool{New: func() any { return new([]byte) }}

// headerOf converts the header of a file to that of the model, without a change of
// its values.
func headerOf(h source.Header) page.Header {
	return page.Header{
		Title: h.Title, Summary: h.Summary, Stage: h.Stage, Kind: page.Kind(h.Kind), Order: h.Order,
		Roles: h.Roles, When: h.When, Time: h.Time, Gear: h.Gear, Sources: h.Sources,
		Next: h.Next, Lessons: h.Lessons, Reads: h.Reads, Words: h.Words, Least: h.Least,
		Call: h.Call, Revised: h.Revised, Lines: h.Lines,
	}
}

// ruleHeader writes the amounts of the house rules into the header's texts.
func (w *walker) ruleHeader() {
	h := &w.page.Header
	h.Summary = w.ruled(h.Summary, h.Lines["summary"])
	h.When, h.Time = w.ruled(h.When, h.Lines["when"]), w.ruled(h.Time, h.Lines["time"])
	h.Gear = w.ruledAll(h.Gear, h.Lines["gear"])
}

// least adds an error for each least distance of the header that is not an amount
// with a counterpart, or that the body does not contain as written: a number that
// is changed in the text alone would round down again.
func (w *walker) least(h source.Header, body []byte) {
	for _, text := range h.Least {
		f := fault.Fault{File: w.file.Path, Line: h.Lines["least"], Col: 1, Code: "bad-least",
			Hint: "write a number with its unit, as it stands on the page: 20 ft"}
		switch {
		case !w.finder.Whole(text):
			f.Text = "least: " + text + " is not an amount in feet, metres or the like"
		case !bytes.Contains(body, []byte(text)):
			f.Text = "least: " + text + " stands nowhere on the page"
		default:
			continue
		}
		w.faults.Add(f)
	}
}
