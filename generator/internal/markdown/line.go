package markdown

import (
	"coursebook/generator/internal/markdown/amount"
)

// Line returns the HTML of a text of the model, such as a step's or a check's,
// with its amounts in both systems of units. Its first lead bytes are in bold;
// none are if lead is 0 or less, or beyond the text. The text holds no links and
// no other markup.
func Line(text string, lead int, finder *amount.Finder) string {
	if lead <= 0 || lead > len(text) {
		return string(appendLine(nil, text, finder))
	}
	out := appendLine([]byte("<strong>"), text[:lead], finder)
	return string(appendLine(append(out, "</strong>"...), text[lead:], finder))
}

// appendLine appends the HTML of text to out and returns it, with the amounts that
// finder finds in both systems of units.
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

// appendPair appends an amount in both systems of units to out and returns it. The
// writings that the author gave have the class own.
func appendPair(out []byte, a amount.Found) []byte {
	out = append(out, `<span class="q"><span class="us`...)
	out = appendOwn(out, a.Own == amount.US || a.Own == amount.Both)
	out = append(out, escapeText(a.US)...)
	out = append(out, `</span><span class="si`...)
	out = appendOwn(out, a.Own == amount.Metric || a.Own == amount.Both)
	out = append(out, escapeText(a.Metric)...)
	return append(out, `</span></span>`...)
}

// appendOwn appends the end of a class attribute and of its tag, with the class
// own if the author gave this writing.
func appendOwn(out []byte, own bool) []byte {
	if own {
		out = append(out, " own"...)
	}
	return append(out, `">`...)
}
