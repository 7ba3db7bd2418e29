package protocol

import "strings"

// Version is the version of the protocol. Page and module reject any other version.
const Version = "1"

// magic begins every request and every response.
const magic = "coursebook"

var escaper = strings.NewReplacer("\\", "\\\\", "\t", "\\t", "\n", "\\n", "\r", "")

// writer builds a response of tab-separated records.
type writer struct{ b strings.Builder }

// put adds one record of fields, with their tabs, line feeds and backslashes
// escaped.
func (w *writer) put(fields ...string) {
	for i, f := range fields {
		if i > 0 {
			w.b.WriteByte('\t')
		}
		escaper.WriteString(&w.b, f)
	}
	w.b.WriteByte('\n')
}

// record is one line of a request, unescaped.
type record []string

// at returns the i-th field, from 0, or "" if the record is shorter.
func (r record) at(i int) string {
	if i < len(r) {
		return r[i]
	}
	return ""
}

// parseRecord returns the fields of a line without its line feed, unescaped.
func parseRecord(line string) record {
	fields := strings.Split(line, "\t")
	for i, f := range fields {
		fields[i] = unescape(f)
	}
	return fields
}

// unescape returns s with \t and \n as a tab and a line feed, and each other
// character behind a backslash as itself.
func unescape(s string) string {
	if strings.IndexByte(s, '\\') < 0 {
		return s
	}
	var b strings.Builder
	for i := 0; i < len(s); i++ {
		if s[i] != '\\' || i+1 == len(s) {
			b.WriteByte(s[i])
			continue
		}
		i++
		switch s[i] {
		case 't':
			b.WriteByte('\t')
		case 'n':
			b.WriteByte('\n')
		default:
			b.WriteByte(s[i])
		}
	}
	return b.String()
}
