package compiling

import (
	"bytes"
	"encoding/binary"
	"math/rand/v2"
	"strings"
	"sync"
	"testing"
)

// checkout is the root of this project.
const checkout = "../../.."

// plain is the module as the compiler makes it, before slim; compiled once.
var plain = sync.OnceValues(func() ([]byte, error) {
	return compile(checkout)
})

func compiled(t *testing.T) []byte {
	t.Helper()
	raw, err := plain()
	if err != nil {
		t.Fatal(err)
	}
	return raw
}

func slimmed(t *testing.T) []byte {
	t.Helper()
	lean, err := slim(compiled(t))
	if err != nil {
		t.Fatalf("the function table of this Go release is not understood: %v", err)
	}
	return lean
}

// The names of functions, files and folders stand in the compiled module and
// in the slim one no more. What the page says is untouched.
func TestNamesAreGone(t *testing.T) {
	raw, lean := compiled(t), slimmed(t)
	for _, name := range []string{"coursebook/generator/module/protocol.(*Server).Answer", "runtime.mallocgc", "generator/module/protocol/server.go", "runtime/proc.go"} {
		if !bytes.Contains(raw, []byte(name)) {
			t.Errorf("%s is not in the compiled module: the test looks for the wrong thing", name)
		}
		if bytes.Contains(lean, []byte(name)) {
			t.Errorf("%s is still in the slim module", name)
		}
	}
	for _, text := range []string{"this page and its module speak different versions", "there is no calculator "} {
		if !bytes.Contains(lean, []byte(text)) {
			t.Errorf("%q is gone", text)
		}
	}
}

// Blanking writes into the data section only, zeros but for the mark of a
// table that does not exist, and does not change the module in place.
func TestBlankWritesLittle(t *testing.T) {
	short, stubs, err := unused(compiled(t))
	if err != nil {
		t.Fatal(err)
	}
	before := bytes.Clone(short)
	lean, err := blank(short, stubs)
	if err != nil {
		t.Fatal(err)
	}
	if !bytes.Equal(short, before) {
		t.Error("blank changed the bytes it was given")
	}
	if len(lean) != len(short) {
		t.Fatalf("%d bytes became %d", len(short), len(lean))
	}
	m, err := readMemory(short)
	if err != nil {
		t.Fatal(err)
	}
	start := m.segments[0].file
	blanked := 0
	for i := range short {
		if short[i] == lean[i] {
			continue
		}
		blanked++
		if lean[i] != 0 && lean[i] != 0xff || i < start {
			t.Fatalf("byte %d became %d", i, lean[i])
		}
	}
	if blanked < 50_000 {
		t.Errorf("only %d bytes were blanked", blanked)
	}
	if again, err := blank(lean, stubs); err != nil || !bytes.Equal(again, lean) {
		t.Errorf("blank is not stable: %v", err)
	}
}

func TestSmaller(t *testing.T) {
	before, err := pack(compiled(t))
	if err != nil {
		t.Fatal(err)
	}
	after, err := pack(slimmed(t))
	if err != nil {
		t.Fatal(err)
	}
	if saved := len(before) - len(after); saved < 100_000 {
		t.Errorf("only %d bytes saved of %d", saved, len(before))
	}
}

// image is the memory of the compiled module and the place of its table.
func image(t *testing.T) (*memory, int) {
	t.Helper()
	m, err := readMemory(compiled(t))
	if err != nil {
		t.Fatal(err)
	}
	table, err := findTable(m)
	if err != nil {
		t.Fatal(err)
	}
	return m, table.at
}

// A table laid out in another way is an error; nothing is guessed.
func TestUnknownLayout(t *testing.T) {
	m, at := image(t)
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
		"names behind units":   word(3, 1<<30),
		"negative offset":      word(5, 1<<63),
		"offsets outside":      word(7, 1<<40),
		"offsets at the end":   word(7, 1<<63-1),
		"functions elsewhere":  word(7, uint64(len(m.image)-at-1<<20)),
	} {
		damaged := &memory{image: bytes.Clone(m.image)}
		change(damaged.image)
		if _, err := findTable(damaged); err == nil {
			t.Errorf("%s: taken", name)
		}
	}
	for name, module := range map[string][]byte{"empty": nil, "no sections": []byte("\x00asm\x01\x00\x00\x00"), "cut short": compiled(t)[:len(compiled(t))/2]} {
		if lean, err := slim(module); err == nil || lean != nil {
			t.Errorf("%s: taken", name)
		}
	}
}

// Modules by the letter of the WebAssembly Core Specification 2.0 (5.5.14,
// data section) that this reader does not know are refused.
func TestDataSection(t *testing.T) {
	const head = "\x00asm\x01\x00\x00\x00"
	for name, c := range map[string]struct {
		module   string
		segments int
		good     bool
	}{
		"no data":            {head, 0, true},
		"one segment":        {head + "\x0b\x09\x01\x00\x41\x08\x0b\x03abc", 1, true},
		"other section":      {head + "\x0a\x02\x01\x00" + "\x0b\x09\x01\x00\x41\x08\x0b\x03abc", 1, true},
		"passive segment":    {head + "\x0b\x06\x01\x01\x03abc\x00", 0, false},
		"offset by a global": {head + "\x0b\x09\x01\x00\x23\x00\x0b\x03abc", 0, false},
		"negative offset":    {head + "\x0b\x09\x01\x00\x41\x78\x0b\x03abc", 0, false},
		"size beyond file":   {head + "\x0b\x09\x01\x00\x41\x08\x0b\x7fabc", 0, false},
		"count beyond file":  {head + "\x0b\x05\xff\xff\xff\xff\x0f", 0, false},
		"cut in a number":    {head + "\x0b\x80", 0, false},
	} {
		m, err := readMemory([]byte(c.module))
		if (err == nil) != c.good {
			t.Errorf("%s: %v", name, err)
			continue
		}
		if err == nil && len(m.segments) != c.segments {
			t.Errorf("%s: %d segments", name, len(m.segments))
		}
		if c.segments == 1 && (string(m.image) != strings.Repeat("\x00", 8)+"abc") {
			t.Errorf("%s: image %q", name, m.image)
		}
	}
}

// The LEB128 examples of the DWARF 5 standard, tables 7.7 and 7.8.
func TestLEB(t *testing.T) {
	for want, data := range map[int]string{2: "\x02", 127: "\x7f", 128: "\x80\x01", 129: "\x81\x01", 12857: "\xb9\x64"} {
		if got := (&leb{data: []byte(data)}).unsigned(); got != want {
			t.Errorf("unsigned %x: %d, want %d", data, got, want)
		}
	}
	for want, data := range map[int]string{2: "\x02", -2: "\x7e", 127: "\xff\x00", -127: "\x81\x7f", 128: "\x80\x01", -128: "\x80\x7f", 129: "\x81\x01", -129: "\xff\x7e"} {
		if got := (&leb{data: []byte(data)}).signed(); got != want {
			t.Errorf("signed %x: %d, want %d", data, got, want)
		}
	}
}

// A damaged head of the table ends in an error or in offsets inside the
// memory, never in a panic or without end.
func TestDamage(t *testing.T) {
	m, at := image(t)
	r := rand.New(rand.NewPCG(5, 8))
	head := bytes.Clone(m.image[at : at+72])
	taken := 0
	for range 2000 {
		for range 1 + r.IntN(3) {
			m.image[at+8+r.IntN(64)] ^= 1 << r.IntN(8)
		}
		if table, err := findTable(m); err == nil {
			taken++
			if end := table.at + table.offsets + 8*table.count; end > len(m.image) {
				t.Errorf("offsets end at %d of %d", end, len(m.image))
			}
		}
		copy(m.image[at:], head)
	}
	if taken == 2000 {
		t.Error("no damage was noticed")
	}
}
