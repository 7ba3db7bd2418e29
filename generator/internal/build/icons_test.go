package build

import (
	"bytes"
	"encoding/json"
	"image/png"
	"strconv"
	"strings"
	"testing"
)

// The web app manifest names icons of the sizes it says, one of them maskable: opaque up to
// its corners, with one colour outside the circle that every phone leaves (80 percent of
// its width: W3C, Web Application Manifest, safe zone of maskable icons).
func TestIcons(t *testing.T) {
	s := buildGood(t)
	var app struct {
		Icons []struct{ Src, Sizes, Purpose string }
	}
	if err := json.Unmarshal(file(s, "app.webmanifest"), &app); err != nil {
		t.Fatal(err)
	}
	kinds := map[string]bool{}
	for _, icon := range app.Icons {
		kinds[icon.Sizes+" "+icon.Purpose] = true
		if !strings.HasSuffix(icon.Src, ".png") {
			continue
		}
		img, err := png.Decode(bytes.NewReader(file(s, icon.Src)))
		if err != nil {
			t.Fatal(icon.Src, err)
		}
		b := img.Bounds()
		if got := strings.Split(icon.Sizes, "x"); len(got) != 2 || b.Dx() != b.Dy() || strconv.Itoa(b.Dx()) != got[0] {
			t.Errorf("%s is %v, not %s", icon.Src, b, icon.Sizes)
		}
		if icon.Purpose != "maskable" {
			continue
		}
		corner := img.At(0, 0)
		if _, _, _, a := corner.RGBA(); a != 0xffff {
			t.Errorf("%s is not opaque at its corner", icon.Src)
		}
		safe := 0.4 * float64(b.Dx())
		for x := range b.Dx() {
			for y := range b.Dy() {
				dx, dy := float64(x)+0.5-float64(b.Dx())/2, float64(y)+0.5-float64(b.Dy())/2
				if dx*dx+dy*dy > safe*safe && img.At(x, y) != corner {
					t.Fatalf("%s: the drawing leaves the safe zone at %d, %d", icon.Src, x, y)
				}
			}
		}
	}
	for _, want := range []string{"any any", "192x192 any", "512x512 any", "512x512 maskable"} {
		if !kinds[want] {
			t.Errorf("no icon is %q", want)
		}
	}
}
