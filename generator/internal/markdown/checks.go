package markdown

import (
	"hash/fnv"
	"strconv"

	"coursebook/generator/internal/page"

	"github.com/yuin/goldmark/ast"
	extast "github.com/yuin/goldmark/extension/ast"
)

// mostChecks is the most that a pause holds: a checklist of fewer than ten
// lines is read (Gawande, The Checklist Manifesto, 2009; from memory).
const mostChecks = 9

// hasChecks reports whether any item of a list opens with a check box.
func hasChecks(n ast.Node) bool {
	for item := n.FirstChild(); item != nil; item = item.NextSibling() {
		if isChecked(item.FirstChild()) {
			return true
		}
	}
	return false
}

// isChecked reports whether the block n begins with a check box, ticked or not. n
// may be nil.
func isChecked(n ast.Node) bool { return checkBox(n) != nil }

// checkBox returns the check box that the block n begins with; nil if there is
// none or n is nil.
func checkBox(n ast.Node) *extast.TaskCheckBox {
	if n == nil {
		return nil
	}
	box, _ := n.FirstChild().(*extast.TaskCheckBox)
	return box
}

// checks writes a task list. A numbered list is reported as an error, one of more
// than mostChecks lines outside a course as a warning; both are written.
func (w *walker) checks(n *ast.List) {
	if n.IsOrdered() {
		w.errorAt(n.FirstChild().Pos(), "check-numbered", "start the line with - [ ] instead of a number",
			"check stands in a numbered list")
	}
	if n.ChildCount() > mostChecks && w.page.Header.Kind != page.Course { // what a course signs off is counted by site
		w.warnAt(n.FirstChild().Pos(), "check-many", "split the list where the work pauses",
			"%d checks in one list; more than %d are skimmed", n.ChildCount(), mostChecks)
	}
	w.raw("<ul class=\"checks\">")
	for item := n.FirstChild(); item != nil; item = item.NextSibling() {
		w.noHold(item)
		w.check(item)
	}
	w.raw("</ul>")
}

// check writes one line of a task list and adds it to the page's checks. A line
// without a check box is reported as an error and written without one; a line
// without text is reported as an error, a ticked one as a warning.
func (w *walker) check(item ast.Node) {
	first := item.FirstChild()
	box := checkBox(first)
	w.raw("<li>")
	if box == nil {
		w.errorAt(item.Pos(), "check-mixed",
			"start each line of the list with - [ ], or put the others in a list of their own",
			"line without a check among checks")
		w.children(item)
		w.raw("</li>")
		return
	}
	if box.IsChecked {
		w.warnAt(item.Pos(), "check-ticked", "write [ ]; the reader ticks it", "check is ticked in the manual")
	}
	c := page.Check{Line: w.line(item.Pos())}
	c.ID = w.checkID(w.plainOf(first))
	w.raw(`<label><input type="checkbox"`)
	w.attribute("data-check", c.ID)
	w.raw("> <span>")
	mark := w.plain.Len()
	w.prose.Reset()
	w.inlines(box.NextSibling(), mode{cell: true})
	c.Text = string(w.plain.Bytes()[mark:])
	w.plain.WriteByte('\n')
	if e, ok := box.NextSibling().(*ast.Emphasis); ok && e.Level == 2 {
		c.Lead = w.leadLength(e, c.Text)
	}
	w.raw("</span></label>")
	if w.prose.Len() == 0 {
		w.errorAt(item.Pos(), "check-empty", "say what is checked, or remove the line", "check has no text")
	} else if w.wantProse {
		w.page.Prose = append(w.page.Prose, page.Prose{Text: w.prose.String(), Line: c.Line})
	}
	w.page.Checks = append(w.page.Checks, c)
	for n := first.NextSibling(); n != nil; n = n.NextSibling() {
		w.block(n)
	}
	w.raw("</li>")
}

// checkID returns a new id from the page's slug and a hash of the check's text: a
// tick survives a new order of the list, and is lost when the text changes.
func (w *walker) checkID(text string) string {
	h := fnv.New32a()
	h.Write([]byte(text))
	return w.ids.take(w.page.Slug+"-"+strconv.FormatUint(uint64(h.Sum32()), 36), "check")
}
