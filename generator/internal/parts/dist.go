//go:build dist

package parts

import (
	"embed"
	"io/fs"
)

// pack is filled by `make dist` and ignored by git.
//
//go:embed all:pack
var pack embed.FS

// packed holds the parts inside the binary.
var packed = func() fs.FS {
	sub, err := fs.Sub(pack, "pack")
	if err != nil {
		panic(err)
	}
	return sub
}()
