package markdown

import (
	"maps"
	"regexp"
	"slices"
	"strings"

	"coursebook/calculators/quantity"
	"coursebook/calculators/rules"
	"coursebook/generator/internal/fault"
	"coursebook/generator/internal/page"

	"github.com/yuin/goldmark/ast"
)

// Rule is a house rule as pages of one language use it: [2 ft](rule:lift).
type Rule struct {
	*rules.Rule
	// Amount is the amount of the manual, SI its value.
	Amount string
	SI     float64
	// Words are the phrases beside which a bare figure is taken for this rule.
	Words []string
}

// ruleScheme begins the target of a link to a house rule.
const ruleScheme = "rule:"

// otherMatter is the name that marks a figure as another matter than a house rule.
const otherMatter = "none"

// ruleLink writes the amount of a house rule: the author's figure where it equals the
// manual's, else the manual's. It returns false for a link of another scheme.
func (w *walker) ruleLink(n *ast.Link, m mode) bool {
	id, ok := strings.CutPrefix(string(n.Destination), ruleScheme)
	if !ok {
		return false
	}
	line, col := w.position(n.Pos())
	if id == otherMatter {
		w.inRule = true
		w.inlines(n.FirstChild(), m)
		w.inRule = false
		return true
	}
	text := w.authorText(n)
	amount := w.ruleAmount(id, text, line, col)
	if amount == "" {
		w.inlines(n.FirstChild(), m)
		return true
	}
	w.openLink(page.Link{Target: ruleScheme + id, Text: text, Line: line, Col: col}, "")
	w.inRule, m.inLink = true, true
	w.run(amount, n.Pos(), false, m)
	w.inRule = false
	w.raw("</a>")
	return true
}

// authorText returns the text between the brackets of a link as the author wrote
// it, line breaks as spaces.
func (w *walker) authorText(n *ast.Link) string {
	var b []byte
	for c := n.FirstChild(); c != nil; c = c.NextSibling() {
		if t, ok := c.(*ast.Text); ok {
			b = appendDecoded(b, t.Value(w.src), t.IsRaw())
			if t.SoftLineBreak() {
				b = append(b, ' ')
			}
			continue
		}
		b = w.collect(b, c)
	}
	return string(b)
}

// ruleAmount returns what a page shows for a house rule: the author's figure where it
// equals the amount of the manual, else that amount, with a warning. An unknown rule, or
// a text that is not an amount of the rule's dimension, is an error and gives "".
func (w *walker) ruleAmount(id, text string, line, col int) string {
	report := func(s fault.Severity, code, text, hint string) {
		w.faults.Add(fault.Fault{Severity: s, File: w.file.Path, Line: line, Col: col, Code: code, Text: text,
			Hint: hint, Source: w.sourceLine(line)})
	}
	r, ok := w.rules[id]
	if !ok {
		hint := "add it to rules in manual.yaml, or write the figure without a link"
		if near, ok := fault.Nearest(id, w.ruleIDs()); ok {
			hint = "did you mean " + near + "?"
		}
		report(fault.Error, "rule-unknown", "no house rule \""+clip(id)+"\" in manual.yaml", hint)
		return ""
	}
	si, err := r.Parse(text, w.mark)
	if err != nil {
		report(fault.Error, "rule-text", "\""+clip(text)+"\" is not an amount of the house rule "+id,
			"write the amount with its unit: ["+r.Amount+"](rule:"+id+")")
		return ""
	}
	if sameAmount(si, r.SI) {
		return text
	}
	report(fault.Warning, "rule-differs", "the page says "+clip(text)+", the house rule "+id+" is "+r.Amount,
		"write ["+r.Amount+"](rule:"+id+")")
	return r.Amount
}

// collectLink appends the text of a link; for a house rule, the amount that the page
// shows.
func (w *walker) collectLink(b []byte, n *ast.Link) []byte {
	id, ok := strings.CutPrefix(string(n.Destination), ruleScheme)
	if r, known := w.rules[id]; ok && known {
		text := w.authorText(n)
		if si, err := r.Parse(text, w.mark); err == nil && !sameAmount(si, r.SI) {
			text = r.Amount
		}
		return append(b, text...)
	}
	return w.collect(b, n)
}

// decimalPoint matches a point between digits, not that of an abbreviation.
var decimalPoint = regexp.MustCompile(`([0-9])\.([0-9])`)

// WithMark returns an amount that is written with a decimal point, with the decimal mark
// of a language.
func WithMark(amount string, mark quantity.Mark) string {
	if mark == quantity.Comma {
		return decimalPoint.ReplaceAllString(amount, "$1,$2")
	}
	return amount
}

// sameAmount reports whether two amounts are equal but for the rounding of a conversion.
func sameAmount(a, b float64) bool {
	d := a - b
	return d <= 1e-9*max(a, b) && -d <= 1e-9*max(a, b)
}

// ruleIDs returns the IDs of the rules, sorted.
func (w *walker) ruleIDs() []string { return slices.Sorted(maps.Keys(w.rules)) }

// ruleText matches a house rule in a text of a header or block, which is not Markdown.
var ruleText = regexp.MustCompile(`\[([^\[\]]*)\]\(rule:([a-z0-9-]*)\)`)

// ruled returns a text of a header or block with the amounts of its house rules in place
// of their links. It checks the bare figures of the text.
func (w *walker) ruled(text string, line int) string {
	if len(w.rules) == 0 || text == "" {
		return text
	}
	bare := text
	if strings.Contains(text, "]("+ruleScheme) {
		bare = ruleText.ReplaceAllString(text, "")
		text = ruleText.ReplaceAllStringFunc(text, func(link string) string {
			part := ruleText.FindStringSubmatch(link)
			if part[2] == otherMatter {
				return part[1]
			}
			if amount := w.ruleAmount(part[2], part[1], line, 1); amount != "" {
				return amount
			}
			return part[1]
		})
	}
	if w.wantProse {
		at := 0
		for a, ok := w.finder.Next(bare, 0, true); ok; a, ok = w.finder.Next(bare, at, true) {
			w.checkBare(bare, a.Start, a.End, line)
			at = a.End
		}
	}
	return text
}

// ruledAll is ruled for each text of a list, which it changes and returns. line is
// that of the list.
func (w *walker) ruledAll(texts []string, line int) []string {
	for i := range texts {
		texts[i] = w.ruled(texts[i], line)
	}
	return texts
}

// bareAmount is an amount of the running text that is not linked to a rule.
type bareAmount struct{ start, end, line int } // bytes of the plain text

// checkAllBare checks the bare amounts of the page's running text.
func (w *walker) checkAllBare() {
	text := w.plain.String()
	for _, a := range w.bareAmounts {
		w.checkBare(text, a.start, a.end, a.line)
	}
}

// checkBare warns of the amount text[start:end] if it is beside the words of a house rule
// of the same dimension.
func (w *walker) checkBare(text string, start, end, line int) {
	before, after := beside(text, start, end)
	for _, id := range w.ruleIDs() {
		r := w.rules[id]
		for _, phrase := range r.Words {
			if !hasPhrase(last(before, len(phrase)+betweenBytes), phrase) &&
				!hasPhrase(first(after, len(phrase)+betweenBytes), phrase) {
				continue
			}
			if _, err := r.Parse(text[start:end], w.mark); err != nil {
				break
			}
			w.faults.Add(fault.Fault{Severity: fault.Warning, File: w.file.Path, Line: line, Code: "rule-bare",
				Text: "\"" + text[start:end] + "\" is beside the words of the house rule " + id + " (" + phrase + ")",
				Hint: "write [" + r.Amount + "](rule:" + id + "), or [" + text[start:end] +
					"](rule:none) for another matter",
				Source: w.sourceLine(line)})
			return
		}
	}
}

// besideBytes bounds the text around an amount in which the words of a rule are looked
// for; at most betweenBytes are between the words and the amount.
const (
	besideBytes  = 60
	betweenBytes = 16
)

// last returns the last n bytes of a text, first the first n; a shorter text is returned
// whole.
func last(text string, n int) string { return text[max(0, len(text)-n):] }

func first(text string, n int) string { return text[:min(n, len(text))] }

// beside returns the text before and after an amount, in lower case: at most besideBytes
// each, of the same sentence and block.
func beside(text string, start, end int) (before, after string) {
	before, after = text[max(0, start-besideBytes):start], text[end:min(len(text), end+besideBytes)]
	if i := strings.LastIndexAny(before, "\n;:?!|"); i >= 0 {
		before = before[i+1:]
	}
	if i := strings.LastIndex(before, ". "); i >= 0 && !strings.HasSuffix(before[:i], " in") {
		before = before[i+2:]
	}
	if i := strings.IndexAny(after, "\n;:?!|"); i >= 0 {
		after = after[:i]
	}
	if i := strings.Index(after, ". "); i >= 0 {
		after = after[:i]
	}
	return strings.ToLower(before), strings.ToLower(after)
}

// hasPhrase reports whether a text contains a phrase as whole words.
func hasPhrase(text, phrase string) bool {
	phrase = strings.ToLower(phrase)
	for at := 0; ; {
		i := strings.Index(text[at:], phrase)
		if i < 0 {
			return false
		}
		i += at
		j := i + len(phrase)
		if (i == 0 || !isWordByte(text[i-1])) && (j == len(text) || !isWordByte(text[j])) {
			return true
		}
		at = i + 1
	}
}

func isWordByte(b byte) bool { return b >= 0x80 || isDigitByte(b) || 'a' <= b && b <= 'z' || b == '-' }

func isDigitByte(b byte) bool { return '0' <= b && b <= '9' }
