package markdown

import "strings"

// In text only the signs that open something need escaping; in an attribute
// in double quotes the quotes do too. Fewer escapes make smaller pages.
var (
	textEscaper      = strings.NewReplacer("&", "&amp;", "<", "&lt;")
	attributeEscaper = strings.NewReplacer("&", "&amp;", "<", "&lt;", ">", "&gt;", `"`, "&#34;")
)

// escapeText returns s with & and < replaced by character references, for text
// between tags. Other text is returned unchanged.
func escapeText(s string) string {
	if strings.IndexByte(s, '&') < 0 && strings.IndexByte(s, '<') < 0 {
		return s
	}
	return textEscaper.Replace(s)
}

// escapeAttribute returns s with &, <, > and " replaced by character references,
// for an attribute in double quotes.
func escapeAttribute(s string) string {
	if !strings.ContainsAny(s, `&<>"`) {
		return s
	}
	return attributeEscaper.Replace(s)
}
