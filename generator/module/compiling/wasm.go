package compiling

import (
	"bytes"
	"errors"
	"fmt"
)

// IDs of sections (WebAssembly Core Specification 2.0, 5.5.2).
const (
	customSection    = 0
	dataSection      = 11
	dataCountSection = 12
)

// section is one section of a module.
type section struct {
	id   byte
	body []byte
}

// preamble begins every module: magic number and version (5.5.16).
var preamble = []byte("\x00asm\x01\x00\x00\x00")

var errCut = errors.New("the module is cut short")

// readSections splits a module into its sections. A file that is no WebAssembly
// module, or that is cut short, is an error.
func readSections(module []byte) ([]section, error) {
	if !bytes.HasPrefix(module, preamble) {
		return nil, errors.New("the file is no WebAssembly module")
	}
	r := &reader{data: module, pos: len(preamble)}
	var list []section
	for r.pos < len(module) && r.err == nil {
		id := r.byte()
		list = append(list, section{id, r.bytes(r.unsigned())})
	}
	return list, r.err
}

// appendSection appends a section to out.
func appendSection(out []byte, s section) []byte {
	return append(appendUnsigned(append(out, s.id), len(s.body)), s.body...)
}

// reader reads the binary format. After an error its methods return zero values.
type reader struct {
	data []byte
	pos  int
	err  error
}

// byte returns the next byte; 0 after an error.
func (r *reader) byte() byte {
	if b := r.bytes(1); len(b) == 1 {
		return b[0]
	}
	return 0
}

// bytes returns the next n bytes, not copied. If there are fewer, it stores an
// error and returns nil.
func (r *reader) bytes(n int) []byte {
	if r.err == nil && (n < 0 || n > len(r.data)-r.pos) {
		r.err = errCut
	}
	if r.err != nil {
		return nil
	}
	r.pos += n
	return r.data[r.pos-n : r.pos]
}

// unsigned reads a u32 in LEB128 (5.2.2). A larger number is stored as an error.
func (r *reader) unsigned() int {
	n, _ := r.leb()
	if n >= 1<<32 && r.err == nil {
		r.err = fmt.Errorf("the number %d in the module exceeds 32 bits", n)
	}
	return n
}

// signed reads an s32 in LEB128; 0 after an error.
func (r *reader) signed() int {
	n, bits := r.leb()
	if bits > 0 && n>>(bits-1)&1 == 1 {
		n -= 1 << bits
	}
	return n
}

// leb reads at most five groups of seven bits, the lowest first, and returns the
// number and how many bits it has. A longer number is stored as an error and gives
// zeros.
func (r *reader) leb() (n int, bits uint) {
	for bits < 35 {
		b := r.byte()
		if r.err != nil {
			return 0, 0
		}
		n |= int(b&0x7f) << bits
		bits += 7
		if b < 0x80 {
			return n, bits
		}
	}
	r.err = errors.New("a number in the module has more than five bytes")
	return 0, 0
}

// appendUnsigned appends n, at least 0, as an unsigned number in LEB128 and
// returns out.
func appendUnsigned(out []byte, n int) []byte {
	for n >= 0x80 {
		out = append(out, byte(n)|0x80)
		n >>= 7
	}
	return append(out, byte(n))
}

// appendSigned appends n, at least 0, as a signed number in LEB128 and returns
// out.
func appendSigned(out []byte, n int) []byte {
	for n >= 0x40 {
		out = append(out, byte(n&0x7f)|0x80)
		n >>= 7
	}
	return append(out, byte(n))
}
