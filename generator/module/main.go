//go:build wasip1

// Command module is the WebAssembly module of the pages: the calculators, their
// figures and search, built as a WASI preview 1 reactor. It only passes requests
// from the page to package protocol.
package main

import (
	"runtime"
	"unsafe"

	"coursebook/calculators/catalog"
	"coursebook/calculators/rules"
	"coursebook/generator/module/protocol"
)

var (
	server = protocol.New(catalog.All(), rules.All()...)
	shared []byte
)

// buffer returns the address of a buffer of at least n bytes, to which the
// page writes a request. With n = 0 it returns the address of the last
// response.
//
//go:wasmexport buffer
func buffer(n int32) int32 {
	if n > int32(len(shared)) || shared == nil {
		shared = make([]byte, max(n, 64))
	}
	return int32(uintptr(unsafe.Pointer(unsafe.SliceData(shared))))
}

// answer handles the request in the first n bytes of the buffer. It writes the
// response to the buffer and returns its length.
//
//go:wasmexport answer
func answer(n int32) int32 {
	// A garbage collection that began during an earlier answer is finished by the
	// runtime's own goroutines. They run only when this one yields.
	runtime.Gosched()
	text := server.Answer(string(shared[:n]))
	if len(text) > len(shared) {
		shared = make([]byte, len(text))
	}
	return int32(copy(shared, text))
}

func main() {}
