// Package listing renders the Go functions of formulas as highlighted HTML, so that
// a reader can check the arithmetic.
package listing

import (
	"errors"
	"go/ast"
	"go/parser"
	"go/token"
	"html"
	"io/fs"
	"path"
	"strings"

	"github.com/alecthomas/chroma/v2"
	"github.com/alecthomas/chroma/v2/lexers"
)

// Book finds functions in a tree of Go files, one package per folder. It caches
// parsed files and is not safe for concurrent use.
type Book struct {
	fs     fs.FS
	parsed map[string][]file // by package
}

type file struct {
	name string
	data []byte
	ast  *ast.File
	set  *token.FileSet
}

// NewBook returns a book that reads from a tree such as calculators.Sources.
func NewBook(tree fs.FS) *Book { return &Book{fs: tree, parsed: map[string][]file{}} }

// Listing is one function with its comment.
type Listing struct {
	File string // folder/file.go
	Line int
	HTML string // highlighted, classes only
}

// Find returns the listing of a function named package.Function or
// package.Type.Method. It returns an error if the name has no point, or the
// package or function does not exist.
func (b *Book) Find(name string) (Listing, error) {
	pkg, fn, ok := strings.Cut(name, ".")
	if !ok {
		return Listing{}, errors.New("listing: " + name + " is no package.Function")
	}
	files, err := b.read(pkg)
	if err != nil {
		return Listing{}, err
	}
	for _, f := range files {
		for _, d := range f.ast.Decls {
			if decl, ok := d.(*ast.FuncDecl); ok && funcName(decl) == fn {
				return set(f, decl)
			}
		}
	}
	return Listing{}, errors.New("listing: package " + pkg + " has no function " + fn)
}

// funcName returns Function, or Type.Method.
func funcName(d *ast.FuncDecl) string {
	if d.Recv == nil {
		return d.Name.Name
	}
	t := d.Recv.List[0].Type
	if star, ok := t.(*ast.StarExpr); ok {
		t = star.X
	}
	if id, ok := t.(*ast.Ident); ok {
		return id.Name + "." + d.Name.Name
	}
	return d.Name.Name
}

// read returns the parsed files of a package without its tests; none for a folder
// that does not exist. A file that cannot be read or parsed is an error.
func (b *Book) read(pkg string) ([]file, error) {
	if files, ok := b.parsed[pkg]; ok {
		return files, nil
	}
	names, err := fs.Glob(b.fs, pkg+"/*.go")
	if err != nil {
		return nil, err
	}
	var files []file
	for _, name := range names {
		if strings.HasSuffix(name, "_test.go") {
			continue
		}
		data, err := fs.ReadFile(b.fs, name)
		if err != nil {
			return nil, err
		}
		set := token.NewFileSet()
		tree, err := parser.ParseFile(set, path.Base(name), data, parser.ParseComments)
		if err != nil {
			return nil, err
		}
		files = append(files, file{name, data, tree, set})
	}
	b.parsed[pkg] = files
	return files, nil
}

// set returns the listing of a declaration with its comment. It returns the error
// of Highlight.
func set(f file, d *ast.FuncDecl) (Listing, error) {
	start := d.Pos()
	if d.Doc != nil {
		start = d.Doc.Pos()
	}
	from, to := f.set.Position(start), f.set.Position(d.End())
	text := string(f.data[from.Offset:to.Offset])
	out, err := Highlight("go", text)
	return Listing{File: f.name, Line: from.Line, HTML: out}, err
}

// The classes of a listing, which a theme styles: the whole, and in it a keyword, a
// comment and the name of a function.
const (
	classCode = "code"
	classWord = "code-word"
	classNote = "code-note"
	className = "code-name"
)

// Highlight returns code as HTML with classes. Code in an unknown language is
// escaped and not highlighted. It returns an error if the lexer fails.
func Highlight(language, code string) (string, error) {
	lexer := lexers.Get(language)
	if lexer == nil {
		lexer = lexers.Fallback
	}
	tokens, err := chroma.Coalesce(lexer).Tokenise(nil, code)
	if err != nil {
		return "", err
	}
	var b strings.Builder
	b.WriteString(`<pre tabindex="0" class="` + classCode + `"><code>`)
	for _, t := range tokens.Tokens() {
		text := html.EscapeString(t.Value)
		if class := classOf(t.Type); class != "" {
			text = `<span class="` + class + `">` + text + "</span>"
		}
		b.WriteString(text)
	}
	b.WriteString("</code></pre>")
	return b.String(), nil
}

// classOf returns the class of a kind of token; "" for all that no theme styles, because
// the one-file edition would otherwise contain tens of thousands of elements without a
// style.
func classOf(kind chroma.TokenType) string {
	switch {
	case kind.InCategory(chroma.Comment):
		return classNote
	case kind.InCategory(chroma.Keyword):
		return classWord
	case kind == chroma.NameFunction:
		return className
	}
	return ""
}
