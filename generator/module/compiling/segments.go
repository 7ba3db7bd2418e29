package compiling

import (
	"bytes"
	"fmt"
)

// linked is a module with its initial memory: the content of memory after
// instantiation, before any code runs.
type linked struct {
	sections []section
	image    []byte
}

// mostMemory bounds the image, in bytes.
const mostMemory = 1 << 28

// readLinked reads the output of Go's linker: its sections, and the memory that
// its data segments fill. Any other kind of data segment than an active one at a
// constant address (WebAssembly 2.0, section 5.5.14) is an error, as is a file
// that is cut short. Code cannot see how memory was divided into segments, so
// they may be written in another division.
func readLinked(module []byte) (linked, error) {
	sections, err := readSections(module)
	if err != nil {
		return linked{}, err
	}
	m := linked{sections: sections}
	for _, s := range sections {
		if s.id == dataSection {
			err = m.load(s.body)
		}
		if err != nil {
			return linked{}, err
		}
	}
	return m, nil
}

// load copies the segments of a data section into the image. A later segment
// overwrites an earlier one, as at instantiation. It returns an error for the
// segments that readLinked refuses.
func (m *linked) load(body []byte) error {
	r := &reader{data: body}
	count := r.unsigned()
	for i := 0; i < count && r.err == nil; i++ {
		flags, op := r.unsigned(), r.byte()
		at, end := r.signed(), r.byte()
		data := r.bytes(r.unsigned())
		switch {
		case r.err != nil:
			return r.err
		case flags != 0 || op != opConst || end != opEnd:
			return fmt.Errorf("data segment %d is not an active one at a constant address", i)
		case at < 0 || at > mostMemory-len(data):
			return fmt.Errorf("data segment %d has the address %d and %d bytes", i, at, len(data))
		}
		if need := at + len(data) - len(m.image); need > 0 {
			m.image = append(m.image, make([]byte, need)...)
		}
		copy(m.image[at:], data)
	}
	if r.err == nil && r.pos != len(body) {
		return fmt.Errorf("%d bytes follow the data segments", len(body)-r.pos)
	}
	return r.err
}

// Instructions of a segment's address (5.4).
const (
	opConst = 0x41 // i32.const
	opEnd   = 0x0b
)

// write returns the module with the image in few segments, and without custom
// sections, which have no effect on execution.
func (m linked) write() []byte {
	segments := split(m.image)
	out := bytes.Clone(preamble)
	for _, s := range m.sections {
		switch s.id {
		case customSection:
			continue
		case dataCountSection:
			s.body = appendUnsigned(nil, len(segments))
		case dataSection:
			s.body = appendUnsigned(nil, len(segments))
			for _, g := range segments {
				s.body = append(appendSigned(append(s.body, 0, opConst), g.at), opEnd)
				s.body = append(appendUnsigned(s.body, len(g.data)), g.data...)
			}
		}
		out = appendSection(out, s)
	}
	return out
}

// segment is a part of the image that is not all zeros.
type segment struct {
	at   int
	data []byte
}

// longZeros is the number of zeros at which a segment ends. The linker splits at
// eight, which gives some 52,000 segments. Their headers compress badly, while zeros
// take almost no space after gzip.
const longZeros = 1024

// split returns the parts of the image between runs of at least longZeros zeros,
// not copied; nil for zeros alone.
func split(image []byte) []segment {
	var list []segment
	run := make([]byte, longZeros)
	for at := 0; ; {
		for at < len(image) && image[at] == 0 {
			at++
		}
		if at == len(image) {
			return list
		}
		size := bytes.Index(image[at:], run)
		if size < 0 {
			size = len(bytes.TrimRight(image[at:], "\x00"))
		}
		list = append(list, segment{at, image[at : at+size]})
		at += size
	}
}
