package compiling

import "testing"

// The LEB128 examples of the DWARF 5 standard, tables 7.7 and 7.8.
var (
	unsignedExamples = map[int]string{2: "\x02", 127: "\x7f", 128: "\x80\x01", 129: "\x81\x01", 12857: "\xb9\x64"}
	signedExamples   = map[int]string{2: "\x02", -2: "\x7e", 127: "\xff\x00", -127: "\x81\x7f",
		128: "\x80\x01", -128: "\x80\x7f", 129: "\x81\x01", -129: "\xff\x7e"}
)

func TestLEB(t *testing.T) {
	for want, data := range unsignedExamples {
		if got := (&reader{data: []byte(data)}).unsigned(); got != want {
			t.Errorf("unsigned %x: %d, want %d", data, got, want)
		}
		if got := string(appendUnsigned(nil, want)); got != data {
			t.Errorf("unsigned %d is written %x, want %x", want, got, data)
		}
	}
	for want, data := range signedExamples {
		if got := (&reader{data: []byte(data)}).signed(); got != want {
			t.Errorf("signed %x: %d, want %d", data, got, want)
		}
		if want < 0 {
			continue
		}
		if got := string(appendSigned(nil, want)); got != data {
			t.Errorf("signed %d is written %x, want %x", want, got, data)
		}
	}
}

func TestLEBErrors(t *testing.T) {
	for _, data := range []string{"", "\x80", "\xff\xff", "\xff\xff\xff\xff\xff", "\xff\xff\xff\xff\x1f",
		"\x80\x80\x80\x80\x80\x00"} {
		if r := (&reader{data: []byte(data)}); r.unsigned() != 0 && r.err == nil || r.err == nil {
			t.Errorf("%x is accepted", data)
		}
	}
	r := &reader{data: []byte{1, 2}}
	if got := r.bytes(3); got != nil || r.err == nil {
		t.Errorf("three of two bytes: %x, %v", got, r.err)
	}
	if b := r.byte(); b != 0 {
		t.Errorf("after an error a byte is %d", b)
	}
}

func TestReadSections(t *testing.T) {
	list, err := readSections([]byte("\x00asm\x01\x00\x00\x00" + "\x01\x02ab" + "\x00\x00"))
	if err != nil || len(list) != 2 || list[0].id != 1 || string(list[0].body) != "ab" || list[1].id != 0 ||
		len(list[1].body) != 0 {
		t.Errorf("%v, %v", list, err)
	}
	for _, module := range []string{"", "\x00asm", "\x00asm\x02\x00\x00\x00", "\x00asm\x01\x00\x00\x00\x01",
		"\x00asm\x01\x00\x00\x00\x01\x02a"} {
		if _, err := readSections([]byte(module)); err == nil {
			t.Errorf("%q is accepted", module)
		}
	}
}
