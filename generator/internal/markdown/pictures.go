package markdown

import (
	"strings"

	"coursebook/generator/internal/page"

	"github.com/yuin/goldmark/ast"
)

// onlyPicture returns the picture of a paragraph and true if the paragraph holds
// nothing else. Otherwise the result is false and the picture is of no use.
func onlyPicture(n ast.Node) (*ast.Image, bool) {
	img, ok := n.FirstChild().(*ast.Image)
	return img, ok && img.NextSibling() == nil
}

// hasPicture reports whether a picture is among the direct children of n.
func hasPicture(n ast.Node) bool {
	for c := n.FirstChild(); c != nil; c = c.NextSibling() {
		if c.Kind() == ast.KindImage {
			return true
		}
	}
	return false
}

// figure writes a picture that is a paragraph of its own, with its title as the
// caption; an empty title writes no caption. It writes nothing for a picture
// beyond the limit of expands.
func (w *walker) figure(n *ast.Image) {
	if !w.expands(n.Pos(), nil, n.Title) {
		return
	}
	w.raw(`<figure class="picture">`)
	w.image(n)
	if caption := decode(n.Title, false); caption != "" {
		w.raw("<figcaption>")
		w.run(caption, n.Pos(), true, mode{terms: true})
		w.raw("</figcaption>")
		w.plain.WriteByte('\n')
	}
	w.raw("</figure>")
}

// image writes a picture with a gap for its address and size, and adds it to the
// page's pictures. A picture without a text is reported as an error. A picture
// whose path is refused is written as its text; one beyond the limit of expands is
// not written.
func (w *walker) image(n *ast.Image) {
	if !w.expands(n.Pos(), n.Destination, nil) {
		return
	}
	p := page.Picture{File: w.pictureFile(n), Alt: w.plainOf(n)}
	p.Line, p.Col = w.position(n.Pos())
	if p.Alt == "" {
		w.errorAt(n.Pos(), "picture-alt", "write between the brackets what a reader who cannot see it must know",
			"picture has no text for readers who cannot see it")
	}
	if p.File == "" {
		w.escaped(p.Alt)
		return
	}
	w.raw("<img")
	w.gap(picture, len(w.page.Pictures))
	w.attribute("alt", p.Alt)
	w.raw(` loading="lazy">`)
	w.page.Pictures = append(w.page.Pictures, p)
}

// pictureFile returns the name of a picture in content/pictures. The page may
// write the name alone or ../pictures/name, which other Markdown viewers resolve.
// Any other path is reported as an error and gives "".
func (w *walker) pictureFile(n *ast.Image) string {
	dest := decode(n.Destination, false)
	name := strings.TrimPrefix(dest, "../pictures/")
	if schemeOf(dest) != "" || name == "" || strings.ContainsAny(name, `/\`) || strings.HasPrefix(name, ".") {
		w.errorAt(n.Pos(), "picture-path", "put the picture in the folder pictures and write ../pictures/name.svg",
			"picture %q is not a file of the folder pictures", clip(dest))
		return ""
	}
	return name
}
