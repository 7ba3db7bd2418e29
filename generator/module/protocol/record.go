package protocol

import "strings"

// Version is the version of the protocol. Page and module reject any other version.
const Version = "1"

// magic begins every request and every response.
const magic = "coursebook"

var escaper = strings.NewReplacer("\\", "\\\\", "\t", "\\t", "\n", "\\n", "\r", "")

// writer builds a response of tab-separated records.
type writer struct{ b strings.Builder }

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

// at returns the i-th field, or "" where the record is shorter.
func (r record) at(i int) string {
	if i < len(r) {
		return r[i]
	}
	return ""
}

func parseRecord(line string) record {
	fields := strings.Split(line, "\t")
	for i, f := range fields {
		fields[i] = unescape(f)
	}
	return fields
}

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
