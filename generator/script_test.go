package main

import (
	"os"
	"path/filepath"
	"testing"

	"github.com/rogpeppe/go-internal/testscript"

	"coursebook/generator/internal/parts"
)

// The test binary also serves as the command, so that the scripts run the real
// main, each in a separate folder.
func TestMain(m *testing.M) {
	testscript.Main(m, map[string]func(){"coursebook": main})
}

// Each file of testdata/sites is a script of commands with the files it needs.
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
