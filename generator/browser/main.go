//go:build wasip1

// Command browser is the module behind the pages: the calculators, their
// figures and search, built as a WASI preview 1 reactor. It moves bytes
// between the page and package answer and does nothing else.
package main

import (
	"unsafe"

	"coursebook/calculators/shelf"
	"coursebook/generator/browser/answer"
)

var (
	desk   = answer.New(shelf.All())
	shared []byte
)

// buffer gives the page a place of at least n bytes to write a request to.
// With n = 0 it tells where the last answer stands.
//
//go:wasmexport buffer
func buffer(n int32) int32 {
	if n > int32(len(shared)) || shared == nil {
		shared = make([]byte, max(n, 64))
	}
	return int32(uintptr(unsafe.Pointer(unsafe.SliceData(shared))))
}

// reply answers the request in the first n bytes of the buffer. The answer
// replaces it; its length is returned.
//
//go:wasmexport answer
func reply(n int32) int32 {
	text := desk.Answer(string(shared[:n]))
	if len(text) > len(shared) {
		shared = make([]byte, len(text))
	}
	return int32(copy(shared, text))
}

func main() {}
