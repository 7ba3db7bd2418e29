package compiling

// The ids of sections (WebAssembly Core Specification 2.0, 5.5.2).
const (
	customSection = 0
	importSection = 2
	codeSection   = 10
	dataSection   = 11
)

// section is one section of a module; name is that of a custom one.
type section struct {
	id   byte
	name string
	body []byte
}

func (s section) isNames() bool { return s.id == customSection && s.name == "name" }

func readSections(module []byte) ([]section, error) {
	if len(module) < 8 {
		return nil, errLayout
	}
	r := &leb{data: module, pos: 8}
	var list []section
	for r.pos < len(module) {
		s := section{id: r.byte()}
		size := r.unsigned()
		if r.err != nil || size < 0 || r.pos+size > len(module) {
			return nil, errLayout
		}
		s.body = module[r.pos : r.pos+size]
		r.pos += size
		if s.id == customSection {
			s.name = (&leb{data: s.body}).text()
		}
		list = append(list, s)
	}
	return list, nil
}

// readNames lists the names of the functions in the code section, in order
// (the name section's second part counts imported functions first).
func readNames(sections []section) ([]string, error) {
	imports, count := 0, 0
	var names section
	for _, s := range sections {
		switch {
		case s.id == importSection:
			imports = (&leb{data: s.body}).unsigned() // Go imports nothing but functions
		case s.id == codeSection:
			count = (&leb{data: s.body}).unsigned()
		case s.isNames():
			names = s
		}
	}
	if names.body == nil || count == 0 {
		return nil, errLayout
	}
	list := make([]string, count)
	r := &leb{data: names.body}
	r.text()
	for r.err == nil && r.pos < len(names.body) {
		part := r.byte()
		end := r.unsigned() + r.pos
		if part != 1 { // 1: function names
			r.pos = end
			continue
		}
		for range r.unsigned() {
			at, name := r.unsigned()-imports, r.text()
			if r.err != nil || at >= count {
				return nil, errLayout
			}
			if at >= 0 {
				list[at] = name
			}
		}
	}
	return list, r.err
}

func (r *leb) text() string {
	size := r.unsigned()
	if r.err != nil || size < 0 || r.pos+size > len(r.data) {
		r.err = errLayout
		return ""
	}
	r.pos += size
	return string(r.data[r.pos-size : r.pos])
}

func appendUnsigned(out []byte, n int) []byte {
	for n >= 0x80 {
		out = append(out, byte(n)|0x80)
		n >>= 7
	}
	return append(out, byte(n))
}

func appendSection(out []byte, id byte, body []byte) []byte {
	return append(appendUnsigned(append(out, id), len(body)), body...)
}
