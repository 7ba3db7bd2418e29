package markdown

import (
	"coursebook/generator/internal/markdown/amount"
)

// Line is the HTML of a text of the model, such as a step's or a check's, on
// a page of its own kind: its amounts in both systems of units and its lead,
// the first bytes, in bold. Links and other markup are gone from such a text.
func Line(text string, lead int, finder *amount.Finder) string {
	if lead <= 0 || lead > len(text) {
		return string(appendLine(nil, text, finder))
	}
	out := appendLine([]byte("<strong>"), text[:lead], finder)
	return string(appendLine(append(out, "</strong>"...), text[lead:], finder))
}

func appendLine(out []byte, text string, finder *amount.Finder) []byte {
	at := 0
	for {
		a, ok := finder.Next(text, at, true)
		if !ok {
			return append(out, escapeText(text[at:])...)
		}
		out = append(out, escapeText(text[at:a.Start])...)
		if a.Own == amount.Neither {
			out = append(out, escapeText(text[a.Start:a.End])...)
		} else {
			out = appendPair(out, a)
		}
		at = a.End
	}
}

// appendPair writes an amount in both systems of units, the author's own
// marked.
func appendPair(out []byte, a amount.Found) []byte {
	out = append(out, `<span class="q"><span class="us`...)
	out = appendOwn(out, a.Own == amount.US || a.Own == amount.Both)
	out = append(out, escapeText(a.US)...)
	out = append(out, `</span><span class="si`...)
	out = appendOwn(out, a.Own == amount.Metric || a.Own == amount.Both)
	out = append(out, escapeText(a.Metric)...)
	return append(out, `</span></span>`...)
}

// appendOwn closes the class of a writing.
func appendOwn(out []byte, own bool) []byte {
	if own {
		out = append(out, " own"...)
	}
	return append(out, `">`...)
}
