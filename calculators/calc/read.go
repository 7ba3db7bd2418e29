package calc

import (
	"strconv"
	"strings"

	"coursebook/calculators/quantity"
)

// The refusals of Read, each shown at its field.
var (
	needsValue  = Text("{label} needs a value.")
	below       = Text("{label} must be at least {limit}. {why}")
	notAbove    = Text("{label} must be more than {limit}. {why}")
	above       = Text("{label} must be at most {limit}. {why}")
	notBelow    = Text("{label} must be less than {limit}. {why}")
	notWhole    = Text("{label} must be a whole number.")
	noOption    = Text("{label} has no answer “{text}”. Choose one of: {options}.")
	noFlag      = Text("{label} is yes or no, not “{text}”.")
	noClock     = Text("{label}: “{text}” is not a time of day. Write it like 7:30, 13:05 or 7:30 am.")
	noDay       = Text("{label} needs a date written year-month-day, like 2026-05-14.")
	tooLong     = Text("{label} is too long. Use at most {max} letters.")
	noInput     = Text("There is no input “{text}”. The inputs are: {inputs}.")
	fewRows     = Text("{label} needs at least {min} rows.")
	manyRows    = Text("{label} takes at most {max} rows.")
	manyCells   = Text("Row {row} of {label} has {cells} cells. The columns are: {cols}.")
	twice       = Text("{label} is given twice.")
	notRows     = Text("{label} is a single value and takes no rows.")
	headerTwice = Text("{label} names the column “{text}” twice.")
)

// Read fills a case from typed inputs and checks it. Inputs that are not typed
// keep their defaults. A Rows field may be given cell by cell (readings.3.gap) or
// whole, in the row syntax of split; an empty text means no rows. The notes are
// refusals, each at its field; the case may be run only if there are none.
func Read(c *Calculator, entries []Entry, style quantity.Style) (Case, []Note) {
	rd := &reader{style: style, fields: c.In, out: Empty(c.In)}
	rd.entries(entries)
	rd.limits()
	return rd.out, rd.notes
}

type reader struct {
	style  quantity.Style
	styles map[string]quantity.Style // of paths that were typed in another style
	fields []Field
	out    Case
	notes  []Note
	bad    map[string]bool // paths already refused
}

// refuse records a refusal at a path, and nothing if one is recorded there
// already.
func (rd *reader) refuse(at Path, t Text, slots ...Slot) {
	if rd.bad == nil {
		rd.bad = map[string]bool{}
	}
	if rd.bad[at.String()] {
		return
	}
	rd.bad[at.String()] = true
	rd.notes = append(rd.notes, Note{Level: LevelRefusal, At: at, Text: t, Slots: slots})
}

// entries groups the typed inputs by field and reads each field into the case. It
// refuses an unknown path and a field or cell that is given twice; a field given
// twice remains unset.
func (rd *reader) entries(entries []Entry) {
	whole := make([][]string, len(rd.fields))
	cells := make([]map[int]map[string]string, len(rd.fields))
	for _, e := range entries {
		i, row, col, ok := rd.locate(e.Path)
		if e.Style != nil {
			if rd.styles == nil {
				rd.styles = map[string]quantity.Style{}
			}
			rd.styles[e.Path] = *e.Style
		}
		switch {
		case !ok:
			rd.refuse(Path{Field: e.Path}, noInput, WordSlot("text", e.Path),
				WordSlot("inputs", strings.Join(rd.names(), ", ")))
		case row == 0:
			whole[i] = append(whole[i], e.Text)
		default:
			if cells[i] == nil {
				cells[i] = map[int]map[string]string{}
			}
			if cells[i][row] == nil {
				cells[i][row] = map[string]string{}
			}
			if _, dup := cells[i][row][col]; dup {
				rd.refuse(Cell(rd.fields[i].ID, row, col), twice, TextSlot("label", rd.fields[i].Label))
			}
			cells[i][row][col] = e.Text
		}
	}
	for i, f := range rd.fields {
		if len(whole[i]) > 1 || (len(whole[i]) == 1 && cells[i] != nil) {
			rd.refuse(At(f.ID), twice, TextSlot("label", f.Label))
			continue
		}
		switch {
		case f.Kind == Rows && cells[i] != nil:
			rd.out.values[i] = rd.cells(f, cells[i])
		case f.Kind == Rows && len(whole[i]) == 1:
			rd.out.values[i] = rd.cells(f, rd.split(f, whole[i][0]))
		case len(whole[i]) == 1:
			rd.out.values[i] = rd.value(f, At(f.ID), whole[i][0])
		default:
			rd.out.values[i] = f.UsualValue()
		}
	}
}

// names returns the IDs of the fields in order.
func (rd *reader) names() []string {
	names := make([]string, len(rd.fields))
	for i, f := range rd.fields {
		names[i] = f.ID
	}
	return names
}

// locate resolves a typed path into the index of its field, the row from 1 and the
// column; row is 0 and col "" for a whole field. ok is false if the path does not
// exist or the row is above 10 000.
func (rd *reader) locate(path string) (i, row int, col string, ok bool) {
	parts := strings.Split(path, ".")
	for i = range rd.fields {
		if rd.fields[i].ID == parts[0] {
			break
		}
	}
	if i == len(rd.fields) || rd.fields[i].ID != parts[0] {
		return 0, 0, "", false
	}
	if len(parts) == 1 {
		return i, 0, "", true
	}
	if len(parts) != 3 || rd.fields[i].Kind != Rows {
		return 0, 0, "", false
	}
	row, err := strconv.Atoi(parts[1])
	if err != nil || row < 1 || row > 10000 {
		return 0, 0, "", false
	}
	for _, c := range rd.fields[i].Cols {
		if c.ID == parts[2] {
			return i, row, parts[2], true
		}
	}
	return 0, 0, "", false
}
