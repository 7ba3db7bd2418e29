package compiling

import (
	"bytes"
	"encoding/binary"
	"errors"
)

// slim makes a module lighter without changing what it answers: it takes out
// what a page never needs (unused.go) and blanks what the runtime keeps only
// for printing tracebacks, the names, files and line numbers of functions. A
// page never shows a traceback, and blank bytes weigh nothing after gzip. What
// the garbage collector and the growth of stacks need is kept.
//
// The layout is that of the runtime's pclntab since Go 1.20 (runtime/symtab.go,
// runtime/runtime2.go type _func). An unknown layout is an error; the module
// is then left as it is.
func slim(module []byte) ([]byte, error) {
	short, stubs, err := unused(module)
	if err != nil {
		return nil, err
	}
	return blank(short, stubs)
}

// blank zeroes the tables. Of a stub nothing is kept; stubs are told by their
// place in the code section.
func blank(module []byte, stubs []bool) ([]byte, error) {
	m, err := readMemory(bytes.Clone(module))
	if err != nil {
		return nil, err
	}
	t, err := findTable(m)
	if err != nil {
		return nil, err
	}
	stub := func(i int) bool { return t.isStub(m, i, stubs) }
	m.blank(t.at+t.names, t.at+t.units)
	m.blank(t.at+t.files, t.at+t.values)
	for _, from := range t.unneeded(m, stub) {
		m.blank(t.at+t.values+from, t.at+t.values+from+t.length(m, from))
	}
	for i := range t.count {
		t.shorten(m, t.function(m, i), stub(i))
	}
	return m.written(), nil
}

// Of the tables that each function names, the runtime needs these (internal/
// abi/symtab.go): where pointers lie on the stack, and its open-coded defers.
// The others tell where a function may be interrupted, what was inlined and
// what the arguments were: for tracebacks, debuggers and other threads.
const (
	stackMapIndex   = 1 // PCDATA_StackMapIndex
	firstUnneeded   = 3 // FUNCDATA_InlTree
	openCodedDefers = 4 // FUNCDATA_OpenCodedDeferInfo
	noTable         = 0xffffffff
)

// shorten blanks the words of one function's record at f.
func (t table) shorten(m *memory, f int, stub bool) {
	m.blank(f+4, f+8)   // nameOff
	m.blank(f+20, f+28) // pcfile, pcln
	m.blank(f+32, f+40) // cuOffset, startLine
	if stub {
		m.blank(f+16, f+20) // pcsp
	}
	values, data := m.u32(f+28), int(m.image[f+43])
	for k := range values {
		if stub || k != stackMapIndex {
			m.blank(f+44+4*k, f+48+4*k)
		}
	}
	for k := range data {
		if stub || k >= firstUnneeded && k != openCodedDefers {
			binary.LittleEndian.PutUint32(m.image[f+44+4*(values+k):], noTable)
		}
	}
}

var errLayout = errors.New("the function table of this Go version is laid out in another way")

// memory is the module's memory as it is at start, with the place of each
// segment in the file.
type memory struct {
	file     []byte
	image    []byte
	segments []segment
}

type segment struct{ at, file, size int }

// blank zeroes a stretch of memory.
func (m *memory) blank(from, to int) { clear(m.image[from:min(to, len(m.image))]) }

// written is the file with the memory as it is now. Memory that no segment
// fills is zero, and stays so.
func (m *memory) written() []byte {
	for _, s := range m.segments {
		copy(m.file[s.file:s.file+s.size], m.image[s.at:])
	}
	return m.file
}

func (m *memory) u32(at int) int {
	if at < 0 || at+4 > len(m.image) {
		return 0
	}
	return int(binary.LittleEndian.Uint32(m.image[at:]))
}

// readMemory reads the data section (WebAssembly Core Specification, binary
// format, section 11): active segments at constant offsets.
func readMemory(file []byte) (*memory, error) {
	r := &leb{data: file, pos: 8}
	m := &memory{file: file}
	for r.pos < len(file) && r.err == nil {
		id, size := r.byte(), r.unsigned()
		end := r.pos + size
		if id == dataSection {
			for range r.unsigned() {
				flags, op := r.unsigned(), r.byte()
				s := segment{at: r.signed()}
				if flags != 0 || op != 0x41 || r.byte() != 0x0b { // i32.const … end
					return nil, errLayout
				}
				s.size = r.unsigned()
				s.file = r.pos
				r.pos += s.size
				m.segments = append(m.segments, s)
			}
		}
		r.pos = end
	}
	if r.err != nil {
		return nil, r.err
	}
	for _, s := range m.segments {
		if s.at < 0 || s.at > 1<<30 || s.file+s.size > len(file) {
			return nil, errLayout
		}
		if need := s.at + s.size; need > len(m.image) {
			m.image = append(m.image, make([]byte, need-len(m.image))...)
		}
		copy(m.image[s.at:], file[s.file:s.file+s.size])
	}
	return m, nil
}

// leb reads the numbers of the binary format (LEB128).
type leb struct {
	data []byte
	pos  int
	err  error
}

func (r *leb) byte() byte {
	if r.pos < 0 || r.pos >= len(r.data) {
		r.err = errLayout
		return 0
	}
	r.pos++
	return r.data[r.pos-1]
}

func (r *leb) unsigned() int {
	n := 0
	for shift := 0; shift < 35 && r.err == nil; shift += 7 {
		b := r.byte()
		n |= int(b&0x7f) << shift
		if b < 0x80 {
			break
		}
	}
	return n
}

func (r *leb) signed() int {
	n := int64(0)
	for shift := 0; shift < 35 && r.err == nil; shift += 7 {
		b := r.byte()
		n |= int64(b&0x7f) << shift
		if b < 0x80 {
			if b&0x40 != 0 {
				n |= -1 << (shift + 7)
			}
			break
		}
	}
	return int(n)
}

// table is the runtime's pclntab; offsets count from at.
type table struct {
	at, count                            int
	names, units, files, values, offsets int
}

// header is the start of the table: magic number, two zero bytes, smallest
// instruction 1, pointer size 8.
var header = []byte{0xf1, 0xff, 0xff, 0xff, 0, 0, 1, 8}

func findTable(m *memory) (table, error) {
	at := bytes.Index(m.image, header)
	if at < 0 || bytes.Contains(m.image[at+1:], header) || at+72 > len(m.image) {
		return table{}, errLayout
	}
	word := func(i int) int { return int(binary.LittleEndian.Uint64(m.image[at+8+8*i:])) }
	t := table{at: at, count: word(0), names: word(3), units: word(4), files: word(5), values: word(6), offsets: word(7)}
	ordered := 0 < t.names && t.names <= t.units && t.units <= t.files && t.files <= t.values && t.values <= t.offsets
	room := len(m.image) - at
	if !ordered || t.count <= 0 || t.count > room/8 || t.offsets > room-8*t.count {
		return table{}, errLayout
	}
	for i := range t.count {
		f := t.function(m, i)
		if f+44 > len(m.image) {
			return table{}, errLayout
		}
		values, data := m.u32(f+28), int(m.image[f+43]) // npcdata, nfuncdata
		if values > 16 || data > 16 || f+44+4*(values+data) > len(m.image) {
			return table{}, errLayout
		}
	}
	return t, nil
}

// function is the address of the i-th function's entry.
func (t table) function(m *memory, i int) int {
	return t.at + t.offsets + m.u32(t.at+t.offsets+8*i+4)
}

// firstFunction is the place of the first function of the code section, from
// which the table counts (cmd/link/internal/wasm, funcValueOffset).
const firstFunction = 0x1000

// isStub tells whether the i-th function of the table was made a stub.
func (t table) isStub(m *memory, i int, stubs []bool) bool {
	at := m.u32(t.at+t.offsets+8*i) - firstFunction
	return at >= 0 && at < len(stubs) && stubs[at]
}

// unneeded lists the value tables that hold files and lines, or belong to a
// stub, and that no function uses for anything else.
func (t table) unneeded(m *memory, stub func(int) bool) []int {
	needed, spare := map[int]bool{}, map[int]bool{}
	for i := range t.count {
		f := t.function(m, i)
		list := needed
		if stub(i) {
			list = spare
		}
		list[m.u32(f+16)] = true // pcsp
		for k := range m.u32(f + 28) {
			if k == stackMapIndex {
				list[m.u32(f+44+4*k)] = true
			} else {
				spare[m.u32(f+44+4*k)] = true
			}
		}
		spare[m.u32(f+20)], spare[m.u32(f+24)] = true, true
	}
	var only []int
	for at := range spare {
		if at > 0 && !needed[at] && t.values+at < t.offsets {
			only = append(only, at)
		}
	}
	return only
}

// length is the size of a value table: pairs of numbers until a zero that is
// not the first.
func (t table) length(m *memory, from int) int {
	r := &leb{data: m.image, pos: t.at + t.values + from}
	start := r.pos
	for r.err == nil && r.pos < t.at+t.offsets {
		first := r.pos == start
		if r.unsigned() == 0 && !first {
			break
		}
		r.unsigned()
	}
	return r.pos - start
}
