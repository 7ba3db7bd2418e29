// Package pictures reads the size of a picture from its bytes.
package pictures

import (
	"bytes"
	"image"
	_ "image/jpeg" // registers the format
	_ "image/png"
	"path"
	"regexp"
	"strconv"
	"strings"
	"unicode"

	"coursebook/generator/internal/fault"
	"coursebook/generator/internal/source"
)

// Size returns the width and height of a picture in pixels; 0 for WebP, and for an
// SVG picture without a viewBox. Bytes that are no picture of the file's type are
// an error, of type fault.Fault.
func Size(f source.File) (width, height int, err error) {
	switch path.Ext(f.Path) {
	case ".svg":
		width, height = svgSize(f.Data)
		return width, height, nil
	case ".webp":
		return 0, 0, nil
	}
	c, _, err := image.DecodeConfig(bytes.NewReader(f.Data))
	if err != nil {
		return 0, 0, fault.Fault{File: f.Path, Code: "picture", Text: "this is no picture that a browser shows",
			Hint: "save it again as SVG, PNG or JPEG"}
	}
	return c.Width, c.Height, nil
}

// viewBox is that of an SVG picture: four numbers separated by spaces or commas
// (SVG 2, section 8.6).
var viewBox = regexp.MustCompile(`\sviewBox\s*=\s*["']([^"']*)["']`)

// mostPixels bounds what is taken for a size.
const mostPixels = 1e6

// svgSize returns the size in the viewBox, rounded; 0 if there is none, or one
// that is negative or not below mostPixels.
func svgSize(data []byte) (width, height int) {
	m := viewBox.FindSubmatch(data)
	if m == nil {
		return 0, 0
	}
	parts := strings.FieldsFunc(string(m[1]), func(r rune) bool { return r == ',' || unicode.IsSpace(r) })
	if len(parts) != 4 {
		return 0, 0
	}
	w, err1 := strconv.ParseFloat(parts[2], 64)
	h, err2 := strconv.ParseFloat(parts[3], 64)
	if err1 != nil || err2 != nil || !(w > 0 && h > 0 && w < mostPixels && h < mostPixels) {
		return 0, 0
	}
	return int(w + 0.5), int(h + 0.5)
}
