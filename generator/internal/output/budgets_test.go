package output

import (
	"bytes"
	"compress/gzip"
	"fmt"
	"math/rand/v2"
	"slices"
	"strings"
	"testing"

	"coursebook/generator/internal/fault"
)

// noise returns data that gzip cannot compress.
func noise(n int) []byte {
	random := rand.New(rand.NewPCG(1, 2))
	data := make([]byte, n)
	for i := range data {
		data[i] = byte(random.Uint32())
	}
	return data
}

// prose returns data that compresses about as well as a page.
func prose(n int) []byte {
	random := rand.New(rand.NewPCG(3, 4))
	words := strings.Fields(
		"form block course corner brace level plumb pour lift hose vibrator rebar window buck strap deck")
	var b bytes.Buffer
	for b.Len() < n {
		b.WriteString(words[random.IntN(len(words))] + " ")
	}
	return b.Bytes()[:n]
}

// gzipped returns the whole compressed stream, as an independent measurement.
func gzipped(data []byte, level int) []byte {
	var b bytes.Buffer
	w, _ := gzip.NewWriterLevel(&b, level)
	w.Write(data)
	w.Close()
	return b.Bytes()
}

func TestBudgetsKept(t *testing.T) {
	w := Weights{
		Scripts: []File{{"assets/a.js", noise(29_000)}},
		Module:  File{"assets/m.wasmz", gzipped(noise(790_000), 6)},
		Indexes: []Index{{File{"assets/en.txt", noise(24_000)}, 100_000}},
	}
	if faults := CheckBudgets(w); faults != nil {
		t.Errorf("got %v", faults)
	}
	view := NewFirstView([]File{{"assets/a.css", noise(5_000)}})
	for _, page := range []File{{"en/a.html", noise(6_900)}, {"en/b.html", bytes.Repeat([]byte("wall "), 50_000)}} {
		if f, heavier := view.Check(page, "procedure"); heavier {
			t.Errorf("got %v", f)
		}
	}
	if faults := CheckBudgets(Weights{}); faults != nil {
		t.Errorf("an empty site is over a limit: %v", faults)
	}
}

// A module of which a step was left out may be over its limit, with a warning.
func TestModuleUnreduced(t *testing.T) {
	w := Weights{Module: File{"assets/m.wasmz", gzipped(noise(ModuleLimit+1_000), 6)}}
	for _, c := range []struct {
		unreduced bool
		want      fault.Severity
		hint      string
	}{{false, fault.Error, "look for a package"}, {true, fault.Warning, "another warning names the step"}} {
		w.ModuleUnreduced = c.unreduced
		got := CheckBudgets(w)
		if len(got) != 1 || got[0].Severity != c.want || !strings.Contains(got[0].Hint, c.hint) {
			t.Errorf("unreduced %v: %+v", c.unreduced, got)
		}
	}
}

func TestBudgetsExceeded(t *testing.T) {
	size := func(data []byte) int { return len(gzipped(data, gzip.DefaultCompression)) }
	page, style, script := noise(10_000), noise(5_000), noise(15_500)
	module, index := noise(ModuleLimit+1_000), noise(26_000)
	got := CheckBudgets(Weights{
		Scripts: []File{{"assets/a.js", script}, {"assets/b.js", script}},
		Module:  File{"assets/m.wasm", module},
		Indexes: []Index{{File{"assets/en.txt", index}, 100_000}, {File{"assets/es.txt", noise(10)}, 10_000}},
	})
	view := NewFirstView([]File{{"assets/a.css", style}})
	for _, p := range []File{{"en/a.html", page}, {"en/small.html", []byte("small")}} {
		if f, heavier := view.Check(p, KindHome); heavier {
			got = append(got, f)
		}
	}
	var lines []string
	for _, f := range got {
		lines = append(lines, f.Error())
		if f.Hint == "" || f.Code != "budget" {
			t.Errorf("incomplete fault %+v", f)
		}
	}
	want := []string{
		fmt.Sprintf("assets/a.js: error: script is %d B after gzip, limit 30000 B", 2*size(script)),
		fmt.Sprintf("assets/en.txt: error: search index of 100000 B of text is %d B after gzip, limit 25000 B",
			size(index)),
		fmt.Sprintf("assets/m.wasm: error: module is %d B after gzip, limit %d B", size(module), ModuleLimit),
		fmt.Sprintf("en/a.html: error: first view (%d B of HTML, %d B of CSS) is %d B after gzip, limit 14600 B",
			size(page), size(style), size(page)+size(style)),
	}
	if !slices.Equal(lines, want) {
		t.Errorf("got\n%s\nwant\n%s", strings.Join(lines, "\n"), strings.Join(want, "\n"))
	}
}

// Each kind of page has its limit, exact to the byte. An exempt kind has none.
func TestFirstViewLimits(t *testing.T) {
	style := noise(5_000)
	view := NewFirstView([]File{{"assets/a.css", style}})
	page := noise(9_000)
	size := func(n int) int {
		return len(gzipped(page[:n], gzip.DefaultCompression)) + len(gzipped(style, gzip.DefaultCompression))
	}
	for kind, limit := range map[string]int{
		"procedure": 12_000, "lesson": 12_000, "course": 12_000, "cautions": 12_000, "reference": 12_000,
		"training": 12_000, "missing": 12_000,
		"home": 14_600, "calculator": 14_300,
		"glossary": 0, "all": 0, "tables": 0, "paper": 0,
	} {
		if limit == 0 {
			if f, heavier := view.Check(File{"en/a.html", noise(100_000)}, kind); heavier {
				t.Errorf("%s is exempt: %v", kind, f)
			}
			continue
		}
		n := limit - size(0)
		page = noise(n + 1_000)
		for size(n) > limit {
			n--
		}
		for size(n) < limit {
			n++
		}
		if f, heavier := view.Check(File{"en/a.html", page[:n]}, kind); heavier {
			t.Errorf("%s of %d B: %v", kind, size(n), f)
		}
		want := fmt.Sprintf("limit %d B", limit)
		if f, heavier := view.Check(File{"en/a.html", page[:n+1]}, kind); !heavier || !strings.HasSuffix(f.Text, want) {
			t.Errorf("%s of %d B: a fault %v, %q", kind, size(n+1), heavier, f.Text)
		}
	}
}

// Data is compressed only where its raw size exceeds the limit, and at the
// usual level only where the fastest one exceeds it too.
func TestPacked(t *testing.T) {
	data := prose(60_000)
	size, fast := len(gzipped(data, gzip.DefaultCompression)), len(gzipped(data, gzip.BestSpeed))
	if size >= fast {
		t.Fatalf("the usual level gives %d B, the fastest %d B", size, fast)
	}
	const frame = 64
	raw := len(data) + frame
	for limit, want := range map[int]int{0: size, size: size, size - 1: size, fast - 1: size,
		fast: fast, raw - 1: fast, raw: raw} {
		if got := packed(data, limit); got != want {
			t.Errorf("limit %d: packed gives %d, want %d", limit, got, want)
		}
	}
	if got := packed(gzipped(data, 6), 0); got != size {
		t.Errorf("packed data counts %d, want %d", got, size)
	}
	// The upper bound is never less than the size of data that gzip stores
	// uncompressed.
	for _, n := range []int{0, 1, 65_535, 65_536, 300_000} {
		if raw, stored := packed(noise(n), 1<<30), len(gzipped(noise(n), gzip.NoCompression)); raw < stored {
			t.Errorf("%d B of noise count %d, gzip stores %d", n, raw, stored)
		}
	}
}

func BenchmarkBudgetsOfThousandPages(b *testing.B) {
	page := File{"a", prose(40_000)}
	view := NewFirstView(nil)
	for b.Loop() {
		for range 1000 {
			view.Check(page, "procedure")
		}
	}
}
