package pictures

import (
	"testing"

	"coursebook/generator/internal/source"
)

func TestSize(t *testing.T) {
	for svg, size := range map[string][2]int{
		`<svg viewBox="0 0 10 20.5">`: {10, 21}, `<svg viewBox='0 0 30 40'>`: {30, 40},
		`<svg viewBox="0,0,5,6">`:     {5, 6},
		`<svg viewBox="-5 -5 10 20">`: {10, 20}, `<svg>`: {}, `<svg viewBox="0 0 1e99 NaN">`: {},
		`<svg viewBox="0 0 x">`: {},
		`<svg viewBox="`:        {}, `<svg viewBox="0 0 -1 5">`: {},
	} {
		if w, h, err := Size(source.File{Path: "a.svg", Data: []byte(svg)}); err != nil || w != size[0] ||
			h != size[1] {
			t.Errorf("%s: %d × %d, %v", svg, w, h, err)
		}
	}
	if _, _, err := Size(source.File{Path: "a.png", Data: []byte("no picture")}); err == nil {
		t.Error("what is no picture has a size")
	}
}
