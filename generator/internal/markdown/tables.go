package markdown

import (
	"strconv"

	"github.com/yuin/goldmark/ast"
	extast "github.com/yuin/goldmark/extension/ast"
)

// table writes a table in a box that scrolls sideways. A box that scrolls needs a
// name for readers with a screen reader; its role is group, since a page with many
// landmarks is of no use to them.
func (w *walker) table(n *extast.Table) {
	w.raw(`<div class="wide" tabindex="0" role="group"`)
	w.attribute("aria-label", w.boxName())
	w.raw("><table>")
	body := false
	for row := n.FirstChild(); row != nil; row = row.NextSibling() {
		if _, ok := row.(*extast.TableHeader); ok {
			w.raw("<thead>")
			w.tableRow(row, "th")
			w.raw("</thead>")
			continue
		}
		if !body {
			w.raw("<tbody>")
			body = true
		}
		w.tableRow(row, "td")
	}
	if body {
		w.raw("</tbody>")
	}
	w.raw("</table></div>")
}

// tableRow writes one row of a table; tag is th or td.
func (w *walker) tableRow(n ast.Node, tag string) {
	w.raw("<tr>")
	for c := n.FirstChild(); c != nil; c = c.NextSibling() {
		cell, ok := c.(*extast.TableCell)
		if !ok {
			continue
		}
		w.raw("<" + tag)
		if tag == "th" {
			w.raw(` scope="col"`)
		}
		switch cell.Alignment {
		case extast.AlignRight:
			w.raw(` class="right"`)
		case extast.AlignCenter:
			w.raw(` class="center"`)
		}
		w.raw(">")
		w.inlines(cell.FirstChild(), mode{terms: tag == "td", cell: true})
		w.raw("</" + tag + ">")
		w.plain.WriteByte(' ')
	}
	w.raw("</tr>")
	w.plain.WriteByte('\n')
}

// boxName returns the heading above the table, otherwise the page's title,
// otherwise the word for a table. A second table of that name gets a 2 behind it,
// so that the boxes of one page have different names.
func (w *walker) boxName() string {
	name := w.section.Title
	if name == "" {
		name = w.page.Header.Title
	}
	if name == "" {
		name = w.words.table
	}
	if w.regions == nil {
		w.regions = map[string]int{}
	}
	w.regions[name]++
	if n := w.regions[name]; n > 1 {
		return name + " " + strconv.Itoa(n)
	}
	return name
}
