package markdown

import (
	"bytes"
	"os"
	"testing"

	"coursebook/calculators/quantity"
	"coursebook/generator/internal/fault"
	"coursebook/generator/internal/source"

	"github.com/yuin/goldmark"
	"github.com/yuin/goldmark/extension"
)

// BenchmarkPage is one page of the usual length, read and rendered.
// BenchmarkPlain is goldmark alone on the same body, the measure of the
// budget: a page may cost three times as much here.
func BenchmarkPage(b *testing.B) {
	text := typical(b)
	f := source.File{Path: "en/test.md", Data: text, Kind: source.Page}
	b.SetBytes(int64(len(text)))
	b.ReportAllocs()
	for b.Loop() {
		var faults fault.List
		d := Parse(f, Language{Mark: quantity.Point}, &faults)
		d.Body(resolved(d))
	}
}

func BenchmarkPlain(b *testing.B) {
	var faults fault.List
	_, body, _ := source.ParseHeader("en/test.md", typical(b), &faults)
	md := goldmark.New(goldmark.WithExtensions(extension.GFM))
	b.SetBytes(int64(len(body)))
	b.ReportAllocs()
	for b.Loop() {
		var out bytes.Buffer
		if err := md.Convert(body, &out); err != nil {
			b.Fatal(err)
		}
	}
}

func typical(tb testing.TB) []byte {
	text, err := os.ReadFile("testdata/typical.md")
	if err != nil {
		tb.Fatal(err)
	}
	return text
}
