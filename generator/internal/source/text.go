package source

import (
	"bytes"
	"fmt"
	"unicode"
	"unicode/utf8"

	"coursebook/generator/internal/fault"
)

// maxTextFaults keeps a picture renamed to .md from filling the screen.
const maxTextFaults = 10

// plainLines returns data without a leading byte order mark and with line feeds in
// place of all line endings. It does not change data.
func plainLines(data []byte) []byte {
	data = bytes.TrimPrefix(data, []byte("\uFEFF"))
	if bytes.IndexByte(data, '\r') < 0 {
		return data
	}
	data = bytes.ReplaceAll(data, []byte("\r\n"), []byte("\n"))
	return bytes.ReplaceAll(data, []byte("\r"), []byte("\n"))
}

// checkText adds a fault for each byte that is not UTF-8, each control character
// but the line feed and the tab, and each character that turns the writing
// direction: with those a line can read otherwise than it is stored. It returns
// false if there is one. It stops at maxTextFaults, and at the first NUL or byte
// that is not UTF-8.
func checkText(name string, data []byte, faults *fault.List) bool {
	bad := 0
	for i := 0; i < len(data) && bad < maxTextFaults; {
		if c := data[i]; c >= ' ' && c < 0x7F || c == '\n' || c == '\t' {
			i++
			continue
		}
		r, size := utf8.DecodeRune(data[i:])
		if code, text, hint := badRune(r, size, data[i]); code != "" {
			line, col := fault.Position(data, i)
			faults.Add(fault.Fault{File: name, Line: line, Col: col, Code: code, Text: text, Hint: hint,
				Source: fault.Line(data, line)})
			bad++
			if code == "not-utf8" || code == "nul" {
				return false // a wrong encoding or no text at all: the rest only repeats it
			}
		}
		i += size
	}
	return bad == 0
}

// badRune returns the code, text and hint of the fault of a rune that no file may
// hold; all are "" for a good one. size is the rune's length in bytes, first its
// first byte.
func badRune(r rune, size int, first byte) (code, text, hint string) {
	switch {
	case r == utf8.RuneError && size == 1:
		return "not-utf8", fmt.Sprintf("byte 0x%02X, which is not UTF-8", first), "save the file as UTF-8"
	case r == 0:
		_, text = Unfit(r)
		return "nul", text, "save the file as UTF-8 text"
	}
	code, text = Unfit(r)
	return code, text, "delete the character"
}

// Unfit returns the code and the text of the fault if no text of a manual may hold
// the character r: with it a line can read otherwise than it is stored. Both are
// "" for a character that is allowed.
func Unfit(r rune) (code, text string) {
	switch {
	case r == 0:
		return "nul", "character NUL, which belongs in no text"
	case unicode.Is(unicode.Bidi_Control, r):
		return "direction-control", fmt.Sprintf("character U+%04X, which turns the writing direction", r)
	case unicode.IsControl(r) && r != '\n' && r != '\t':
		return "control-character", fmt.Sprintf("control character U+%04X", r)
	}
	return "", ""
}
