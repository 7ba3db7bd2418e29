package qr

import (
	"fmt"
	"image"
	"image/color"
	"image/draw"
	"strings"
	"testing"

	"github.com/makiuchi-d/gozxing"
	"github.com/makiuchi-d/gozxing/qrcode"
)

// dots is the width of a module in the test image, in pixels.
const dots = 6

// drawn returns an image of the code, drawn from its SVG path.
func drawn(t *testing.T, c Code) *image.Gray {
	t.Helper()
	img := image.NewGray(image.Rect(0, 0, c.Side*dots, c.Side*dots))
	draw.Draw(img, img.Bounds(), image.White, image.Point{}, draw.Src)
	for _, bar := range strings.SplitAfter(c.Path, "z") {
		if bar == "" {
			continue
		}
		var x, y, length, back int
		if _, err := fmt.Sscanf(bar, "M%d %dh%dv1h-%dz", &x, &y, &length, &back); err != nil || back != length {
			t.Fatalf("the path holds %q: %v", bar, err)
		}
		draw.Draw(img, image.Rect(x*dots, y*dots, (x+length)*dots, (y+1)*dots), image.Black, image.Point{}, draw.Src)
	}
	return img
}

// read decodes an image with an independent library.
func read(img image.Image) (text, level string, err error) {
	bits, err := gozxing.NewBinaryBitmapFromImage(img)
	if err != nil {
		return "", "", err
	}
	r, err := qrcode.NewQRCodeReader().Decode(bits, nil)
	if err != nil {
		return "", "", err
	}
	return r.GetText(), fmt.Sprint(r.GetResultMetadata()[gozxing.ResultMetadataType_ERROR_CORRECTION_LEVEL]), nil
}

var addresses = []string{
	"https://a.example/",
	"https://example.org/walls/en/blow-out.html",
	"https://example.org/walls/en/slump-water-and-ticket.html",
	"https://manuals.example.org/crews/north/2026/walls/es/slump-water-and-ticket.html",
	"https://example.org/" + strings.Repeat("long/", 60),
}

// An independent library reads the same text, at level Q.
func TestReadBack(t *testing.T) {
	for _, address := range addresses {
		c, err := New(address)
		if err != nil {
			t.Fatal(err)
		}
		if got, level, err := read(drawn(t, c)); err != nil || got != address || level != "Q" {
			t.Errorf("%s is read as %q, level %s: %v", address, got, level, err)
		}
	}
}

// The capacity of versions 4, 5 and 6 at level Q is 46, 60 and 74 bytes
// (ISO/IEC 18004:2015, table 7); a version has 17 + 4 × its number of modules.
func TestSide(t *testing.T) {
	for bytes, modules := range map[int]int{46: 33, 47: 37, 60: 37, 61: 41, 74: 41, 75: 45} {
		c, err := New(strings.Repeat("a", bytes))
		if err != nil || c.Side != modules+2*Quiet {
			t.Errorf("%d bytes: %d modules with the quiet zone, not %d: %v", bytes, c.Side, modules+2*Quiet, err)
		}
	}
}

// The quiet zone is empty and the code begins right after it.
func TestQuietZone(t *testing.T) {
	c, err := New(addresses[1])
	if err != nil {
		t.Fatal(err)
	}
	img := drawn(t, c)
	inside := image.Rect(Quiet*dots, Quiet*dots, (c.Side-Quiet)*dots, (c.Side-Quiet)*dots)
	for y := range c.Side * dots {
		for x := range c.Side * dots {
			if !image.Pt(x, y).In(inside) && img.GrayAt(x, y).Y != 255 {
				t.Fatalf("the quiet zone is dark at %d, %d", x, y)
			}
		}
	}
	if img.GrayAt(Quiet*dots, Quiet*dots).Y != 0 {
		t.Error("no finder pattern behind the quiet zone")
	}
}

// A blot that covers a tenth of the square is harmless where it covers data: level
// Q restores 25 % of the code words. A blot on a finder pattern would hide the
// code, so that the test places none there.
func TestBlot(t *testing.T) {
	for _, address := range addresses[1:4] {
		c, err := New(address)
		if err != nil {
			t.Fatal(err)
		}
		modules := c.Side - 2*Quiet
		side := 1
		for side*side*10 < modules*modules {
			side++
		}
		for _, at := range [][2]int{{9, 9}, {modules - side - 9, 9}, {9, modules - side - 9},
			{(modules - side) / 2, (modules - side) / 2}} {
			for _, blot := range []color.Gray{{0}, {255}, {90}} {
				img := drawn(t, c)
				from := image.Pt((Quiet+at[0])*dots, (Quiet+at[1])*dots)
				draw.Draw(img, image.Rectangle{from, from.Add(image.Pt(side*dots, side*dots))}, image.NewUniform(blot),
					image.Point{}, draw.Src)
				if got, _, err := read(img); err != nil || got != address {
					t.Errorf("%s, a blot of %d modules a side at %v, grey %d: read as %q: %v", address, side, at,
						blot.Y, got, err)
				}
			}
		}
	}
}

func TestTooLong(t *testing.T) {
	if _, err := New(strings.Repeat("a", 1664)); err == nil {
		t.Error("1,664 bytes fit, beyond the 1,663 of version 40 at level Q")
	}
	if _, err := New(strings.Repeat("a", 1663)); err != nil {
		t.Error(err)
	}
}
