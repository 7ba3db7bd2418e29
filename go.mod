module coursebook

go 1.26.0

require (
	github.com/alecthomas/chroma/v2 v2.27.0
	github.com/blevesearch/snowballstem v0.9.0
	github.com/evanw/esbuild v0.28.2
	github.com/fsnotify/fsnotify v1.10.1
	github.com/klauspost/compress v1.20.4
	github.com/rogpeppe/go-internal v1.16.0
	github.com/tdewolff/minify/v2 v2.24.25
	github.com/tetratelabs/wazero v1.12.0
	github.com/yuin/goldmark v1.8.5
	golang.org/x/net v0.61.0
	golang.org/x/sys v0.50.0
	golang.org/x/tools v0.52.0
	gopkg.in/yaml.v3 v3.0.1
)

require (
	github.com/dlclark/regexp2/v2 v2.2.1 // indirect
	github.com/tdewolff/parse/v2 v2.8.20 // indirect
)
