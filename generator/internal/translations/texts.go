package translations

import (
	"cmp"
	"fmt"
	"go/ast"
	"go/parser"
	"go/token"
	"io/fs"
	"path"
	"slices"
	"strconv"
	"strings"

	"coursebook/calculators/calc"
	"coursebook/calculators/quantity"
	"coursebook/generator/internal/fault"
)

// Texts lists the calculators' texts by calc.Text.Key.
type Texts map[uint64]Text

// Text is a text with the topic in whose sources it is, and its place there. Texts
// outside the topics and texts of several topics have the topic "common"; a text that is
// computed has no line.
type Text struct {
	calc.Text
	Topic string
	File  string
	Line  int
}

const common = "common"

// Cited is the topic of what a source says, which only pages show: the module needs no
// translation of it.
const Cited = "sources"

// citing is the field of a source that has such a text, and limits the folder in which all
// texts are such.
const (
	citing = "Where"
	limits = "rules"
)

// testSupport is the folder of the test support package, whose texts are not
// shown.
const testSupport = "calctest"

// shared lists the folders whose texts have the topic "common".
var shared = []string{"calc", "quantity", "displays"}

// FromSources returns the texts of a tree of Go files by key: every literal
// Text("…") outside of tests and their support package, and the parse errors of
// quantities, which are computed. Two texts with the same key are added to faults.
// It returns an error if a file cannot be read or parsed.
func FromSources(tree fs.FS, faults *fault.List) (Texts, error) {
	texts := Texts{}
	for _, e := range quantity.AllParseErrors() {
		texts.add(Text{Text: calc.Text(e.EN), Topic: common, File: "calculators/quantity"})
	}
	err := fs.WalkDir(tree, ".", func(name string, d fs.DirEntry, err error) error {
		if err == nil && d.IsDir() && d.Name() == testSupport {
			return fs.SkipDir
		}
		if err != nil || d.IsDir() || !strings.HasSuffix(name, ".go") || strings.HasSuffix(name, "_test.go") {
			return err
		}
		data, err := fs.ReadFile(tree, name)
		if err != nil {
			return err
		}
		set := token.NewFileSet()
		file, err := parser.ParseFile(set, name, data, 0)
		if err != nil {
			return err
		}
		topic, _, _ := strings.Cut(name, "/")
		if path.Dir(name) == "." || slices.Contains(shared, topic) {
			topic = common
		}
		if topic == limits {
			topic = Cited
		}
		ast.Inspect(file, func(n ast.Node) bool {
			if text, at, ok := citedOf(n); ok {
				texts.add(Text{text, Cited, "calculators/" + name, set.Position(at).Line})
				return false
			}
			text, at, ok := textOf(n)
			p := set.Position(at)
			if ok && !texts.add(Text{text, topic, "calculators/" + name, p.Line}) {
				other := texts[text.Key()].Text
				faults.Add(fault.Fault{File: "calculators/" + name, Line: p.Line, Col: p.Column, Code: "text-twice",
					Text: fmt.Sprintf("this text has the key of “%s”", other), Hint: "change a word of one of them"})
			}
			return true
		})
		return nil
	})
	return texts, err
}

// add adds a text. It returns false, and adds nothing, if another text has the
// same key. A text of two topics gets the topic common.
func (t Texts) add(text Text) bool {
	old, known := t[text.Key()]
	if known && old.Topic != text.Topic {
		text.Topic = common
	}
	if known && old.Text != text.Text {
		return false
	}
	t[text.Key()] = text
	return true
}

// citedOf returns what a source says, and its position; false for any other node.
func citedOf(n ast.Node) (text calc.Text, pos token.Pos, ok bool) {
	field, isField := n.(*ast.KeyValueExpr)
	if !isField {
		return
	}
	if key, isName := field.Key.(*ast.Ident); !isName || key.Name != citing {
		return
	}
	return textOf(field.Value)
}

// textOf returns the text of a conversion Text("…") or calc.Text("…") of a
// literal, and its position. ok is false for any other node and for an empty text.
func textOf(n ast.Node) (text calc.Text, pos token.Pos, ok bool) {
	call, isCall := n.(*ast.CallExpr)
	if !isCall || len(call.Args) != 1 {
		return
	}
	switch f := call.Fun.(type) {
	case *ast.Ident:
		ok = f.Name == "Text"
	case *ast.SelectorExpr: // not a method Text
		of, isIdent := f.X.(*ast.Ident)
		ok = isIdent && of.Name == "calc" && f.Sel.Name == "Text"
	}
	whole, isLiteral := literal(call.Args[0])
	return calc.Text(whole), call.Pos(), ok && isLiteral && whole != ""
}

// literal returns the value of a string literal, or of several joined with +;
// false for any other expression.
func literal(e ast.Expr) (string, bool) {
	switch x := e.(type) {
	case *ast.BasicLit:
		s, err := strconv.Unquote(x.Value)
		return s, err == nil && x.Kind == token.STRING
	case *ast.BinaryExpr:
		a, ok1 := literal(x.X)
		b, ok2 := literal(x.Y)
		return a + b, ok1 && ok2 && x.Op == token.ADD
	}
	return "", false
}

// Orphan is a translation whose English text no longer exists.
type Orphan struct {
	English, Text string
	line          line
}

// Parse reads the translations of one language into w, by key. A line holds the
// English text, with its mark, and the translation, separated by a tab. A line
// with more or fewer parts (left out of w), a text translated twice and slots that
// differ from the English (both in w all the same) are added to faults. Parse
// returns the orphans, for Report.
func (t Texts) Parse(path string, data []byte, w calc.Translations, faults *fault.List) []Orphan {
	var orphans []Orphan
	for _, l := range lines(path, data, faults) {
		if len(l.parts) != 2 || l.parts[0] == "" || l.parts[1] == "" {
			l.add("word-line", "a line needs two parts: English text, translation", "separate them with one tab")
			continue
		}
		english, text := calc.Text(l.parts[0]), l.parts[1]
		if t[english.Key()].Text != english {
			orphans = append(orphans, Orphan{string(english), text, l})
			continue
		}
		if _, twice := w[english.Key()]; twice {
			l.add("word-twice", "this text is translated twice", "keep one of the lines")
		} else {
			l.checkSlots(english.EN(), text)
		}
		w[english.Key()] = text
	}
	return orphans
}

// Report adds a fault for each orphan to the list that Parse was given. The hint names
// the text nearest in spelling that has no translation in w; if all have one, it is to
// remove the line.
func (t Texts) Report(orphans []Orphan, w calc.Translations) {
	missing := t.Missing(w)
	for _, o := range orphans {
		hint := "remove the line"
		if near, ok := o.Nearest(missing); ok {
			hint = "write “" + string(near.Text) + "” in its place if that is the text now, or remove the line"
		}
		o.line.add("word-gone", "no text of the calculators reads “"+o.English+"”", hint)
	}
}

// Nearest returns the missing text with the least edit distance to the English
// text of the orphan; false if missing is empty.
func (o Orphan) Nearest(missing []Text) (Text, bool) {
	known := make([]string, len(missing))
	for i, m := range missing {
		known[i] = string(m.Text)
	}
	i := fault.Closest(o.English, known)
	if i < 0 {
		return Text{}, false
	}
	return missing[i], true
}

// Missing returns the texts without a translation in w, sorted by topic and text;
// nil if there are none.
func (t Texts) Missing(w calc.Translations) []Text {
	var list []Text
	for key, text := range t {
		if _, ok := w[key]; !ok {
			list = append(list, text)
		}
	}
	slices.SortFunc(list, func(a, b Text) int {
		return cmp.Or(cmp.Compare(a.Topic, b.Topic), cmp.Compare(a.Text, b.Text))
	})
	return list
}
