// Package qr draws QR codes (ISO/IEC 18004) as SVG paths, for printed pages.
package qr

import (
	"fmt"
	"strconv"

	qrcode "github.com/skip2/go-qrcode"
)

// Quiet is the width of the empty border on each side, in modules (ISO/IEC
// 18004, 9.1).
const Quiet = 4

// Code is a QR code at error correction level Q, which restores about a quarter of
// the code words. Modules are counted from the top left of the quiet zone.
type Code struct {
	// Side is the width and height in modules, with the quiet zone.
	Side int
	// Path draws the dark modules, one unit each, as the d of an SVG path.
	Path string
}

// New returns the code of a text. A text of more than 1,663 bytes, the capacity of
// level Q, is an error.
func New(text string) (Code, error) {
	made, err := qrcode.New(text, qrcode.High)
	if err != nil {
		return Code{}, fmt.Errorf("QR code of %d bytes: %w", len(text), err)
	}
	made.DisableBorder = true
	dark := made.Bitmap()
	return Code{Side: len(dark) + 2*Quiet, Path: path(dark)}, nil
}

// path returns the d of an SVG path with one rectangle for each run of dark
// modules in a row, moved by the quiet zone.
func path(dark [][]bool) string {
	var d []byte
	for y, row := range dark {
		for x := 0; x < len(row); x++ {
			if !row[x] {
				continue
			}
			from := x
			for x+1 < len(row) && row[x+1] {
				x++
			}
			d = bar(d, from+Quiet, y+Quiet, x+1-from)
		}
	}
	return string(d)
}

// bar appends a rectangle, one unit high, with its top left corner at x, y, to the
// path d and returns it.
func bar(d []byte, x, y, length int) []byte {
	d = strconv.AppendInt(append(d, 'M'), int64(x), 10)
	d = strconv.AppendInt(append(d, ' '), int64(y), 10)
	d = strconv.AppendInt(append(d, 'h'), int64(length), 10)
	d = append(d, "v1h-"...)
	d = strconv.AppendInt(d, int64(length), 10)
	return append(d, 'z')
}
