package compiling

import (
	"bytes"
	"encoding/binary"
	"errors"
	"fmt"
	"go/version"
	"slices"
	"strings"
)

// testedVersions lists the Go versions whose modules are blanked. Add a version once
// the tests of generator/module pass with it.
var testedVersions = []string{"go1.26"}

// blankedBy returns the blanked image of a module compiled by a Go version, such
// as go1.26.8. A version that is not in testedVersions, and a layout that blanked
// refuses, are errors.
func blankedBy(goVersion string, image []byte) ([]byte, error) {
	if !slices.Contains(testedVersions, version.Lang(goVersion)) {
		return nil, fmt.Errorf("their removal is tested with %s only, and this Go is %s",
			strings.Join(testedVersions, ", "), goVersion)
	}
	return blanked(image)
}

// blanked returns a copy of the image without the data that the runtime uses only for
// tracebacks: the names, files and line numbers of functions become zeros, which take
// almost no space after gzip. The pages show no traceback. The data for garbage
// collection and for the growth of stacks is unchanged.
//
// The layout is that of the runtime's pclntab (runtime/symtab.go,
// runtime/runtime2.go type _func) in the versions of testedVersions. Another
// layout is an error, and nothing is blanked.
func blanked(image []byte) ([]byte, error) {
	t, err := findTable(bytes.Clone(image))
	if err != nil {
		return nil, err
	}
	t.zero(t.names, t.units)
	t.zero(t.files, t.values)
	for _, from := range t.unneeded() {
		size, err := t.length(from)
		if err != nil {
			return nil, err
		}
		t.zero(t.values+from, t.values+from+size)
	}
	for i := range t.count {
		t.shorten(t.function(i))
	}
	return t.image, nil
}

// Indexes of the tables of each function (internal/abi/symtab.go). The runtime needs
// the tables of pointers on the stack and of open-coded defers. The others hold
// preemption points, inlining and arguments, which only tracebacks, debuggers and
// other threads use.
const (
	stackMapIndex   = 1 // PCDATA_StackMapIndex
	firstUnneeded   = 3 // FUNCDATA_InlTree
	openCodedDefers = 4 // FUNCDATA_OpenCodedDeferInfo
	noTable         = 0xffffffff
)

// table is the runtime's pclntab in an image. at is its address, count the number of
// functions; the other fields are offsets from at.
type table struct {
	image                                []byte
	at, count                            int
	names, units, files, values, offsets int
}

// header begins the table: magic number, two zero bytes, instruction size quantum 1,
// pointer size 8.
var header = []byte{0xf1, 0xff, 0xff, 0xff, 0, 0, 1, 8}

// findTable returns the table of an image. It returns an error unless there is exactly
// one, of the known layout and within the image.
func findTable(image []byte) (table, error) {
	at := bytes.Index(image, header)
	if at < 0 || at+72 > len(image) {
		return table{}, errors.New("the module holds no function table of the known layout")
	}
	if bytes.Contains(image[at+1:], header) {
		return table{}, errors.New("the module holds more than one function table")
	}
	word := func(i int) int { return int(binary.LittleEndian.Uint64(image[at+8+8*i:])) }
	t := table{image: image, at: at, count: word(0),
		names: word(3), units: word(4), files: word(5), values: word(6), offsets: word(7)}
	ordered := 0 < t.names && t.names <= t.units && t.units <= t.files && t.files <= t.values && t.values <= t.offsets
	rest := len(image) - at
	if !ordered || t.count <= 0 || t.count > rest/8 || t.offsets > rest-8*t.count {
		return table{}, errors.New("the parts of the function table are laid out in another way")
	}
	for i := range t.count {
		if err := t.check(i); err != nil {
			return table{}, err
		}
	}
	return t, nil
}

// check returns an error if the record of the i-th function, from 0, is not within
// the image; otherwise nil.
func (t table) check(i int) error {
	const most = 16 // tables of each kind; Go 1.26 has fewer
	f := t.function(i)
	if f+44 <= len(t.image) {
		values, data := t.tables(f)
		if values <= most && data <= most && f+44+4*(values+data) <= len(t.image) {
			return nil
		}
	}
	return fmt.Errorf("the record of function %d is laid out in another way", i)
}

// function returns the address of the record of the i-th function.
func (t table) function(i int) int {
	return t.at + t.offsets + t.u32(t.at+t.offsets+8*i+4)
}

// tables returns the number of value tables (npcdata) and of data tables (nfuncdata)
// of the record at f.
func (t table) tables(f int) (values, data int) { return t.u32(f + 28), int(t.image[f+43]) }

// u32 returns the number of four bytes at byte at of the image; 0 outside the
// image.
func (t table) u32(at int) int {
	if at < 0 || at+4 > len(t.image) {
		return 0
	}
	return int(binary.LittleEndian.Uint32(t.image[at:]))
}

// zero clears the part of the table between two offsets.
func (t table) zero(from, to int) { clear(t.image[t.at+from : min(t.at+to, len(t.image))]) }

// shorten clears the unneeded words of the record at f.
func (t table) shorten(f int) {
	clear(t.image[f+4 : f+8])   // nameOff
	clear(t.image[f+20 : f+28]) // pcfile, pcln
	clear(t.image[f+32 : f+40]) // cuOffset, startLine
	values, data := t.tables(f)
	for k := range values {
		if k != stackMapIndex {
			clear(t.image[f+44+4*k : f+48+4*k])
		}
	}
	for k := range data {
		if k >= firstUnneeded && k != openCodedDefers {
			binary.LittleEndian.PutUint32(t.image[f+44+4*(values+k):], noTable)
		}
	}
}

// unneeded returns the offsets of the value tables that only fields cleared by
// shorten refer to, in no fixed order.
func (t table) unneeded() []int {
	needed, spare := map[int]bool{}, map[int]bool{}
	for i := range t.count {
		f := t.function(i)
		needed[t.u32(f+16)] = true                          // pcsp
		spare[t.u32(f+20)], spare[t.u32(f+24)] = true, true // pcfile, pcln
		values, _ := t.tables(f)
		for k := range values {
			if at := t.u32(f + 44 + 4*k); k == stackMapIndex {
				needed[at] = true
			} else {
				spare[at] = true
			}
		}
	}
	var only []int
	for at := range spare {
		if at > 0 && !needed[at] && t.values+at < t.offsets {
			only = append(only, at)
		}
	}
	return only
}

// length returns the size in bytes of the value table at the offset from: pairs of
// numbers, ended by a zero that is not the first number. A table without an end is
// an error.
func (t table) length(from int) (int, error) {
	start := t.at + t.values + from
	r := &reader{data: t.image[:t.at+t.offsets], pos: start}
	for r.err == nil {
		first := r.pos == start
		if r.unsigned() == 0 && !first {
			break
		}
		r.unsigned()
	}
	if r.err != nil {
		return 0, fmt.Errorf("the value table at %d has no end", from)
	}
	return r.pos - start, nil
}
