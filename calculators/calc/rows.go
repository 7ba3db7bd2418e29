package calc

import (
	"slices"
	"strings"
)

// split reads the row syntax into texts by row, from 1, and column: rows end at a
// line break or a semicolon, cells at a bar or a tab. A first row that holds only
// column names is a header and sets the order; without one the columns are in
// declared order. Blank rows are not counted. A row with too many cells is refused
// and left out; a header with a column twice is refused and gives nil.
func (rd *reader) split(f Field, text string) map[int]map[string]string {
	order := columnIDs(f)
	rows := map[int]map[string]string{}
	nr := 0
	for i, line := range nonEmptyLines(text) {
		cells := splitCells(line)
		if i == 0 && isHeader(f, cells) {
			order = cells
			if dup := firstTwice(cells); dup != "" {
				rd.refuse(At(f.ID), headerTwice, TextSlot("label", f.Label), WordSlot("text", dup))
				return nil
			}
			continue
		}
		nr++
		if len(cells) > len(order) {
			rd.refuse(Cell(f.ID, nr, ""), manyCells, Count("row", nr), TextSlot("label", f.Label),
				Count("cells", len(cells)), WordSlot("cols", strings.Join(order, " | ")))
			continue
		}
		rows[nr] = map[string]string{}
		for j, text := range cells {
			rows[nr][order[j]] = text
		}
	}
	return rows
}

// nonEmptyLines returns the lines of text that are not blank. A line ends at a
// line feed, a carriage return or a semicolon.
func nonEmptyLines(text string) []string {
	var lines []string
	for _, line := range strings.FieldsFunc(text, func(r rune) bool { return r == '\n' || r == '\r' || r == ';' }) {
		if strings.TrimSpace(line) != "" {
			lines = append(lines, line)
		}
	}
	return lines
}

// splitCells returns the cells of a line, separated by bars and tabs, without space
// at their ends. Empty cells are kept.
func splitCells(line string) []string {
	cells := strings.Split(strings.ReplaceAll(line, "\t", "|"), "|")
	for i, c := range cells {
		cells[i] = strings.TrimSpace(c)
	}
	return cells
}

// columnIDs returns the IDs of a Rows field's columns in declared order.
func columnIDs(f Field) []string {
	ids := make([]string, len(f.Cols))
	for i, c := range f.Cols {
		ids[i] = c.ID
	}
	return ids
}

// isHeader reports whether each of cells is the ID of a column of f.
func isHeader(f Field, cells []string) bool {
	ids := columnIDs(f)
	for _, c := range cells {
		if !slices.Contains(ids, c) {
			return false
		}
	}
	return true
}

// firstTwice returns the first cell that an earlier one equals, or "".
func firstTwice(cells []string) string {
	for i, c := range cells {
		if slices.Contains(cells[:i], c) {
			return c
		}
	}
	return ""
}

// cells reads typed cells, by row from 1 and column, into rows in rising order.
// Empty rows are skipped and keep their numbers. A cell that is not typed has the
// column's default; one that cannot be read is refused and unset.
func (rd *reader) cells(f Field, typed map[int]map[string]string) Value {
	numbers := make([]int, 0, len(typed))
	for nr := range typed {
		numbers = append(numbers, nr)
	}
	slices.Sort(numbers)
	v := Value{Set: true}
	for _, nr := range numbers {
		if blank(typed[nr]) {
			continue
		}
		row := NewCase(f.Cols)
		row.row = nr
		for j, col := range f.Cols {
			text, given := typed[nr][col.ID]
			if given {
				row.values[j] = rd.value(col, Cell(f.ID, nr, col.ID), text)
			}
		}
		v.Rows = append(v.Rows, row)
	}
	return v
}

// blank reports whether all cells of a row are empty or white space.
func blank(row map[string]string) bool {
	for _, text := range row {
		if strings.TrimSpace(text) != "" {
			return false
		}
	}
	return true
}
