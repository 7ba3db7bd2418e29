package main

import (
	"os"
	"path/filepath"
	"testing"

	"github.com/rogpeppe/go-internal/testscript"

	"coursebook/generator/internal/parts"
)

// The test binary is the command itself, so that whole-program cases run the
// real main in a folder of their own.
func TestMain(m *testing.M) {
	testscript.Main(m, map[string]func(){"coursebook": main})
}

// Each file of testdata/sites is a terminal session with its files attached.
func TestWholeProgram(t *testing.T) {
	root, err := filepath.Abs("..")
	if err != nil {
		t.Fatal(err)
	}
	testscript.Run(t, testscript.Params{
		Dir:                 "../testdata/sites",
		RequireUniqueNames:  true,
		RequireExplicitExec: true,
		UpdateScripts:       os.Getenv("UPDATE_SCRIPTS") != "",
		Setup: func(e *testscript.Env) error {
			e.Setenv(parts.CheckoutVariable, root)
			for _, name := range []string{"HOME", "GOCACHE", "GOPATH", "GOMODCACHE", "PATH"} {
				if v := os.Getenv(name); v != "" {
					e.Setenv(name, v)
				}
			}
			return nil
		},
	})
}
