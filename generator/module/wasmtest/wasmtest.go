// Package wasmtest runs the module of the pages outside a browser, for tests of the
// shipped bytes. Like the page, it provides only the host functions that the runtime
// of the module needs.
package wasmtest

import (
	"bytes"
	"compress/gzip"
	"context"
	"errors"
	"fmt"
	"io"

	"github.com/tetratelabs/wazero"
	"github.com/tetratelabs/wazero/api"
	"github.com/tetratelabs/wazero/imports/wasi_snapshot_preview1"
)

// ErrTrapped is the error of every call to an instance that has trapped.
var ErrTrapped = errors.New("wasmtest: the module has trapped; start it again")

// Instance is a running module. It is not safe for concurrent use. After a trap its
// memory is undefined, so that every further call returns ErrTrapped.
type Instance struct {
	runtime wazero.Runtime
	module  api.Module
	printed *bytes.Buffer
	trapped bool
}

// compiled caches what wazero has compiled, so that all instances of a test
// share one compilation.
var compiled = wazero.NewCompilationCache()

// Start decompresses and starts a gzip-compressed module. Data that is not gzip,
// and a module that cannot be instantiated, are errors.
func Start(ctx context.Context, packed []byte) (*Instance, error) {
	z, err := gzip.NewReader(bytes.NewReader(packed))
	if err != nil {
		return nil, err
	}
	raw, err := io.ReadAll(z)
	if err != nil {
		return nil, err
	}
	r := wazero.NewRuntimeWithConfig(ctx, wazero.NewRuntimeConfig().WithCompilationCache(compiled))
	if _, err := wasi_snapshot_preview1.Instantiate(ctx, r); err != nil {
		return nil, errors.Join(err, r.Close(ctx))
	}
	printed := &bytes.Buffer{}
	config := wazero.NewModuleConfig().WithStderr(printed).WithStartFunctions("_initialize")
	m, err := r.InstantiateWithConfig(ctx, raw, config)
	if err != nil {
		return nil, errors.Join(err, r.Close(ctx))
	}
	return &Instance{runtime: r, module: m, printed: printed}, nil
}

// Ask sends one request in the text protocol and returns the response. It
// returns ErrTrapped after an earlier trap, and an error if the module traps or
// gives an address outside its memory.
func (m *Instance) Ask(ctx context.Context, request string) (string, error) {
	at, err := m.Call(ctx, "buffer", uint64(len(request)))
	if err != nil {
		return "", err
	}
	if !m.module.Memory().WriteString(uint32(at), request) {
		return "", fmt.Errorf("wasmtest: the module gave a buffer outside its memory: %d", at)
	}
	n, err := m.Call(ctx, "answer", uint64(len(request)))
	if err != nil {
		return "", err
	}
	if at, err = m.Call(ctx, "buffer", 0); err != nil {
		return "", err
	}
	text, ok := m.module.Memory().Read(uint32(at), uint32(n))
	if !ok {
		return "", fmt.Errorf("wasmtest: the answer lies outside the module's memory: %d bytes at %d", n, at)
	}
	return string(text), nil
}

// Memory returns the size of the module's memory in bytes. It never decreases.
func (m *Instance) Memory() int { return int(m.module.Memory().Size()) }

// Printed returns the standard error output of the module.
func (m *Instance) Printed() string { return m.printed.String() }

// Call calls an exported function of the module with one argument and returns its
// result. It returns ErrTrapped after an earlier trap. A function that does not
// exist is an error; an error of the call itself is a trap.
func (m *Instance) Call(ctx context.Context, name string, arg uint64) (uint64, error) {
	if m.trapped {
		return 0, ErrTrapped
	}
	f := m.module.ExportedFunction(name)
	if f == nil {
		return 0, fmt.Errorf("wasmtest: the module does not export %s", name)
	}
	res, err := f.Call(ctx, arg)
	if err != nil {
		m.trapped = true
		return 0, err
	}
	return res[0], nil
}

// Imports returns the host functions that a gzip-compressed module imports, as
// module.name. Data that is no such module is an error.
func Imports(ctx context.Context, packed []byte) ([]string, error) {
	z, err := gzip.NewReader(bytes.NewReader(packed))
	if err != nil {
		return nil, err
	}
	raw, err := io.ReadAll(z)
	if err != nil {
		return nil, err
	}
	r := wazero.NewRuntime(ctx)
	defer r.Close(ctx)
	c, err := r.CompileModule(ctx, raw)
	if err != nil {
		return nil, err
	}
	var names []string
	for _, f := range c.ImportedFunctions() {
		module, name, _ := f.Import()
		names = append(names, module+"."+name)
	}
	return names, nil
}

// Close frees the module and returns the runtime's error, if any.
func (m *Instance) Close(ctx context.Context) error { return m.runtime.Close(ctx) }

// RulesRequest returns the request that gives the module the amounts of house rules by ID.
func RulesRequest(amounts map[string]string) string {
	request := "coursebook\t1\trules\n"
	for id, amount := range amounts {
		request += "rule\t" + id + "\t" + amount + "\n"
	}
	return request
}
