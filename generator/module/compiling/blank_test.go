package compiling

import (
	"bytes"
	"encoding/binary"
	"math/rand/v2"
	"strings"
	"testing"
)

// The names of functions, files and folders are in the linker's output and not
// in the reduced module. The texts of the pages are in both.
func TestNamesAreGone(t *testing.T) {
	raw, small := compiled(t), reduced(t)
	for _, name := range []string{
		"coursebook/generator/module/protocol.(*Server).Answer", "runtime.mallocgc",
		"generator/module/protocol/server.go", "runtime/proc.go",
	} {
		if !bytes.Contains(raw, []byte(name)) {
			t.Errorf("%s is not in the linker's output: the test looks for the wrong name", name)
		}
		if bytes.Contains(small, []byte(name)) {
			t.Errorf("%s is still in the reduced module", name)
		}
	}
	for _, text := range []string{"this page and its module speak different versions", "there is no calculator "} {
		if !bytes.Contains(small, []byte(text)) {
			t.Errorf("%q is gone", text)
		}
	}
}

// image returns the initial memory of the compiled module and the address of its
// function table.
func image(t *testing.T) (image []byte, at int) {
	t.Helper()
	m, err := readLinked(compiled(t))
	if err != nil {
		t.Fatal(err)
	}
	table, err := findTable(m.image)
	if err != nil {
		t.Fatal(err)
	}
	return m.image, table.at
}

// Blanking writes only zeros, and the value for a missing table, and only in the
// function table. It does not change its argument.
func TestBlankWritesLittle(t *testing.T) {
	raw, at := image(t)
	before := bytes.Clone(raw)
	small, err := blanked(raw)
	if err != nil {
		t.Fatal(err)
	}
	if !bytes.Equal(raw, before) {
		t.Error("the image it was given has changed")
	}
	if len(small) != len(raw) {
		t.Fatalf("%d bytes became %d", len(raw), len(small))
	}
	changed := 0
	for i := range raw {
		if raw[i] == small[i] {
			continue
		}
		changed++
		if small[i] != 0 && small[i] != 0xff || i < at {
			t.Fatalf("byte %d became %d", i, small[i])
		}
	}
	if changed < 50_000 {
		t.Errorf("only %d bytes were blanked", changed)
	}
	if again, err := blanked(small); err != nil || !bytes.Equal(again, small) {
		t.Errorf("blanking twice gives another image: %v", err)
	}
}

// With a Go version that is not tested, and with an unknown layout, the module is
// written with its names, and a note gives the reason.
func TestNotBlanked(t *testing.T) {
	raw := compiled(t)
	whole, err := readLinked(raw)
	if err != nil {
		t.Fatal(err)
	}
	small, notes := reduce(raw, "go1.99.1")
	if !bytes.Equal(small, whole.write()) {
		t.Error("an untested Go version does not give the unblanked module in few segments")
	}
	if len(notes) != 1 || !strings.Contains(notes[0], "this Go is go1.99.1") {
		t.Errorf("notes %q", notes)
	}
	_, at := image(t)
	damaged := linked{whole.sections, bytes.Clone(whole.image)}
	damaged.image[at] = 0xfa // the magic number of Go 1.16
	small, notes = reduce(damaged.write(), testedVersions[0])
	if len(small) == 0 || len(notes) != 1 || !strings.Contains(notes[0], "no function table of the known layout") {
		t.Errorf("notes %q", notes)
	}
}

func TestReducedIsSmaller(t *testing.T) {
	before, err := pack(compiled(t))
	if err != nil {
		t.Fatal(err)
	}
	after := packedModule(t)
	t.Logf("after gzip %d B as linked, %d B reduced", len(before), len(after))
	if saved := len(before) - len(after); saved < 150_000 {
		t.Errorf("only %d bytes saved of %d", saved, len(before))
	}
}

// A function table with another layout is an error.
func TestUnknownLayout(t *testing.T) {
	raw, at := image(t)
	word := func(i int, value uint64) func([]byte) {
		return func(b []byte) { binary.LittleEndian.PutUint64(b[at+8+8*i:], value) }
	}
	for name, change := range map[string]func([]byte){
		"another magic number": func(b []byte) { b[at] = 0xfa }, // that of Go 1.16
		"another pointer size": func(b []byte) { b[at+7] = 4 },
		"two tables":           func(b []byte) { copy(b[at+4096:], header) },
		"no functions":         word(0, 0),
		"huge count":           word(0, 1<<61),
		"negative count":       word(0, 1<<63),
		"names after units":    word(3, 1<<30),
		"negative offset":      word(5, 1<<63),
		"offsets outside":      word(7, 1<<40),
		"offsets at the end":   word(7, 1<<63-1),
		"functions elsewhere":  word(7, uint64(len(raw)-at-1<<20)),
	} {
		damaged := bytes.Clone(raw)
		change(damaged)
		if small, err := blanked(damaged); err == nil || small != nil {
			t.Errorf("%s: accepted", name)
		}
	}
	for name, module := range map[string][]byte{
		"empty": nil, "no sections": []byte("\x00asm\x01\x00\x00\x00"), "cut short": compiled(t)[:len(compiled(t))/2],
	} {
		if small, notes := reduce(module, testedVersions[0]); len(notes) != 1 || len(small) > len(module) {
			t.Errorf("%s: notes %q", name, notes)
		}
	}
}

// A damaged header of the function table gives an error or offsets within the image,
// never a panic or an endless loop.
func TestDamage(t *testing.T) {
	raw, at := image(t)
	damaged := bytes.Clone(raw)
	r := rand.New(rand.NewPCG(5, 8))
	accepted := 0
	for range 2000 {
		for range 1 + r.IntN(3) {
			damaged[at+8+r.IntN(64)] ^= 1 << r.IntN(8)
		}
		if table, err := findTable(damaged); err == nil {
			accepted++
			if end := table.at + table.offsets + 8*table.count; end > len(damaged) {
				t.Errorf("offsets end at %d of %d", end, len(damaged))
			}
		}
		copy(damaged[at:], raw[at:at+72])
	}
	if accepted == 2000 {
		t.Error("no damage was noticed")
	}
}
