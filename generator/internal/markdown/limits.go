package markdown

import "bytes"

// Limits of a page. The cost of reading a page grows with the square of some
// of these numbers, or with their product, so a page beyond one is refused
// before it is parsed. Pages of a manual stay far below.
const (
	// mostNested bounds the lists and quotations within each other.
	mostNested = 20
	// mostMarks bounds the marks of emphasis and links in lines without a
	// blank line between them, mostPageMarks those of a page.
	mostMarks, mostPageMarks = 2_000, 20_000
	// mostColumns bounds the columns of a table, mostCells the cells of all
	// tables of a page. A table has every column in every row, also where the
	// row's text ends early.
	mostColumns, mostCells = 40, 20_000
	// mostExpanded bounds the addresses and titles that a page's links take
	// from definitions elsewhere on it, in bytes.
	mostExpanded = 100_000
)

// isMark holds the bytes that are marks of emphasis and links.
var isMark = [256]bool{'*': true, '_': true, '~': true, '[': true, ']': true}

// overLimit reports whether a line takes the page beyond one of the limits most…
// of this file, and reports the first such line as an error. It looks at the text
// alone, and counts marks in code and behind backslashes too.
func (w *walker) overLimit() bool {
	var run lineRun
	page, cells := 0, 0
	for offset := 0; offset < len(w.src); {
		end := len(w.src)
		if i := bytes.IndexByte(w.src[offset:], '\n'); i >= 0 {
			end = offset + i + 1
		}
		line := w.src[offset:end]
		if len(bytes.TrimLeft(line, " \t\n")) == 0 {
			run, offset = lineRun{}, end
			continue
		}
		marks := countMarks(line)
		page += marks
		cells += run.add(line, marks)
		switch {
		case markers(line) > mostNested:
			w.errorAt(offset, "nested", "take the text out of the inner lists and quotations",
				"more than %d lists and quotations within each other", mostNested)
		case run.marks > mostMarks:
			w.errorAt(offset, "marks", "split the text by blank lines",
				"more than %d of the signs * _ ~ [ ] without a blank line between", mostMarks)
		case page > mostPageMarks:
			w.errorAt(offset, "marks", "split the page", "page has more than %d of the signs * _ ~ [ ]", mostPageMarks)
		case run.columns > mostColumns:
			w.errorAt(offset, "table-columns", "split the table, or exchange its rows and columns",
				"table has %d columns, more than %d", run.columns, mostColumns)
		case cells > mostCells:
			w.errorAt(offset, "table-cells", "split the table over several pages",
				"tables of the page have more than %d cells", mostCells)
		default:
			offset = end
			continue
		}
		return true
	}
	return false
}

// lineRun is a number of lines without a blank line between them.
type lineRun struct {
	count   int
	marks   int
	columns int // of the widest table that the lines can be
}

// add counts a line with its number of marks, and returns by how many cells the
// table that the lines may be has grown.
func (l *lineRun) add(line []byte, marks int) int {
	before := l.count * l.columns
	l.count++
	l.marks += marks
	l.columns = max(l.columns, columns(line))
	return l.count*l.columns - before
}

// countMarks returns the number of bytes * _ ~ [ ] in a line. It returns 0 for a
// thematic break: three or more * or _ alone, indented by less than four spaces.
func countMarks(line []byte) (n int) {
	for _, c := range line {
		if isMark[c] {
			n++
		}
	}
	if n >= 3 && !bytes.HasPrefix(line, []byte("    ")) && line[0] != '\t' && isRule(line) {
		return 0
	}
	return n
}

// isRule reports whether a line holds only hyphens, only asterisks or only
// underscores, apart from spaces and tabs. One character suffices, and it is true
// for a blank line.
func isRule(line []byte) bool {
	rest := bytes.Trim(line, " \t\n")
	for _, sign := range []string{"-", "*", "_"} {
		if len(bytes.Trim(rest, sign+" \t")) == 0 {
			return true
		}
	}
	return false
}

// columns returns the number of columns of the table whose delimiter row this line
// may be: hyphens, colons, bars and spaces only, also behind the marks of
// quotations and lists. Any other line gives 0.
func columns(line []byte) int {
	rest := bytes.Trim(line, " \t\n>*+.)0123456789")
	if len(rest) == 0 || len(bytes.Trim(rest, "-:| \t")) > 0 {
		return 0
	}
	return len(bytes.FieldsFunc(rest, func(r rune) bool { return r == '|' }))
}

// expands adds the bytes of a link's or picture's address and title to the count
// of the page, and reports whether the count is within the length of the body plus
// mostExpanded. The first link beyond it is reported as an error at offset; the
// caller must not write a link for which the result is false.
func (w *walker) expands(offset int, address, title []byte) bool {
	most := len(w.src) + mostExpanded // what the links themselves contain is part of the page
	before := w.expanded
	w.expanded += len(address) + len(title)
	if before <= most && w.expanded > most {
		w.errorAt(offset, "link-definitions", "shorten the definitions, or use them less often",
			"links take more than %d bytes from their definitions", mostExpanded)
	}
	return w.expanded <= most
}

// markers returns the number of quotation marks (>) and list marks (- * + . )
// before a space) that a line starts with. For a thematic break and a blank line
// it returns 0.
func markers(line []byte) (n int) {
	if isRule(line) {
		return 0
	}
	for i := 0; i < len(line); i++ {
		c := line[i]
		space := i+1 < len(line) && (line[i+1] == ' ' || line[i+1] == '\t')
		switch {
		case c == '>', space && (c == '-' || c == '*' || c == '+' || c == '.' || c == ')'):
			n++
		case c == ' ' || c == '\t' || '0' <= c && c <= '9':
		default:
			return n
		}
	}
	return n
}
