// Package translations keeps the translations of what the code says: it reads the
// list of texts off the calculators' sources and a theme's own list, and
// holds every language's file against it. A translation carries the hash of
// the English text it was made from; when the English changes it is stale.
package translations

import (
	"crypto/sha256"
	"encoding/hex"
	"fmt"
	"go/ast"
	"go/parser"
	"go/token"
	"io/fs"
	"slices"
	"sort"
	"strconv"
	"strings"

	"coursebook/calculators/calc"
	"coursebook/calculators/quantity"
	"coursebook/generator/internal/fault"
)

// Texts lists English texts by key.
type Texts map[string]string

// Hash is what a translation keeps of the English text it was made from.
func Hash(english string) string {
	sum := sha256.Sum256([]byte(english))
	return hex.EncodeToString(sum[:4])
}

// FromSources reads every Text("key: English") off the Go files of a tree, at
// any depth, and adds the refusals of quantities, which are made by rule. Tests
// and their support package calctest are left out. Two texts with one key are
// faults.
func FromSources(tree fs.FS, faults *fault.List) (Texts, error) {
	texts := Texts{}
	for _, t := range quantity.AllParseErrors() {
		texts[t.Key] = t.EN
	}
	err := fs.WalkDir(tree, ".", func(name string, d fs.DirEntry, err error) error {
		if err == nil && d.IsDir() && d.Name() == "calctest" {
			return fs.SkipDir
		}
		if err != nil || d.IsDir() || !strings.HasSuffix(name, ".go") || strings.HasSuffix(name, "_test.go") {
			return err
		}
		data, err := fs.ReadFile(tree, name)
		if err != nil {
			return err
		}
		return texts.addFile(name, data, faults)
	})
	if err != nil {
		return nil, err
	}
	return texts, nil
}

// addFile adds the texts of one Go file.
func (texts Texts) addFile(name string, data []byte, faults *fault.List) error {
	set := token.NewFileSet()
	file, err := parser.ParseFile(set, name, data, 0)
	if err != nil {
		return err
	}
	ast.Inspect(file, func(n ast.Node) bool {
		key, text, pos, ok := textOf(n)
		if !ok {
			return true
		}
		if old, twice := texts[key]; twice && old != text {
			at := set.Position(pos)
			faults.Add(fault.Fault{File: "calculators/" + name, Line: at.Line, Col: at.Column, Code: "text-twice",
				Text: fmt.Sprintf("the key %s has two English texts", key), Hint: "give one of them another key"})
		}
		texts[key] = text
		return true
	})
	return nil
}

// textOf recognises a conversion Text("key: English") of a literal.
func textOf(n ast.Node) (key, text string, pos token.Pos, ok bool) {
	call, isCall := n.(*ast.CallExpr)
	if !isCall || len(call.Args) != 1 {
		return
	}
	switch f := call.Fun.(type) {
	case *ast.Ident:
		ok = f.Name == "Text"
	case *ast.SelectorExpr:
		ok = f.Sel.Name == "Text"
	}
	whole, isLiteral := literal(call.Args[0])
	if !ok || !isLiteral {
		return "", "", 0, false
	}
	key, text, ok = strings.Cut(whole, ": ")
	return key, text, call.Pos(), ok
}

// literal is the value of a string literal, or of several joined with +.
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

// Parse reads a file of one language into w: key, hash, text, separated by
// tabs; lines that begin with # are comments. The file is held against the English texts:
// an unknown key, a stale hash and other slots are faults.
func Parse(path string, data []byte, english Texts, w calc.Translations, faults *fault.List) {
	for i, line := range strings.Split(strings.TrimSuffix(string(data), "\n"), "\n") {
		line = strings.TrimSuffix(line, "\r")
		if line == "" || strings.HasPrefix(line, "#") {
			continue
		}
		add := func(code, text, hint string) {
			faults.Add(fault.Fault{File: path, Line: i + 1, Col: 1, Source: line, Code: code, Text: text, Hint: hint})
		}
		parts := strings.Split(line, "\t")
		if len(parts) != 3 || parts[0] == "" || parts[2] == "" {
			add("word-line", "a line needs three parts: key, hash, text", "separate them with tabs")
			continue
		}
		key, hash, text := parts[0], parts[1], parts[2]
		en, known := english[key]
		_, twice := w[key]
		switch {
		case !known:
			add("word-key", "no text has the key "+key, "remove the line, or look for a renamed key")
			continue
		case twice:
			add("word-twice", "the key "+key+" stands twice", "keep one of the lines")
		case hash != Hash(en):
			add("word-stale", "the English text of "+key+" has changed", "look at “"+en+"”, correct the text and write the hash "+Hash(en))
		case !slices.Equal(slotsOf(en), slotsOf(text)):
			add("word-slots", "the slots of "+key+" differ from the English text", "use exactly these: "+strings.Join(slotsOf(en), " "))
		}
		w[key] = text
	}
}

// slotsOf lists the {slots} of a text, sorted, each once.
func slotsOf(text string) []string {
	var slots []string
	for {
		open := strings.IndexByte(text, '{')
		if open < 0 {
			break
		}
		end := strings.IndexByte(text[open:], '}')
		if end < 0 {
			break
		}
		slots = append(slots, text[open:open+end+1])
		text = text[open+end+1:]
	}
	slices.Sort(slots)
	return slices.Compact(slots)
}

// Missing lists the keys without a translation, sorted.
func Missing(english Texts, w calc.Translations) []string {
	var keys []string
	for key := range english {
		if _, ok := w[key]; !ok {
			keys = append(keys, key)
		}
	}
	sort.Strings(keys)
	return keys
}
