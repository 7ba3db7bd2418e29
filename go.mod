module coursebook

go 1.26.0

require (
	github.com/alecthomas/chroma/v2 v2.27.0 // indirect
	github.com/blevesearch/snowballstem v0.9.0 // indirect
	github.com/dlclark/regexp2/v2 v2.2.1 // indirect
	github.com/evanw/esbuild v0.28.2 // indirect
	github.com/fsnotify/fsnotify v1.10.1 // indirect
	github.com/klauspost/compress v1.20.4 // indirect
	github.com/rogpeppe/go-internal v1.16.0 // indirect
	github.com/skip2/go-qrcode v0.0.0-20200617195104-da1b6568686e // indirect
	github.com/tdewolff/minify/v2 v2.24.25 // indirect
	github.com/tdewolff/parse/v2 v2.8.20 // indirect
	github.com/tetratelabs/wazero v1.12.0 // indirect
	github.com/yuin/goldmark v1.8.5 // indirect
	golang.org/x/net v0.61.0 // indirect
	golang.org/x/sys v0.50.0 // indirect
	golang.org/x/tools v0.52.0 // indirect
	gonum.org/v1/gonum v0.17.0 // indirect
	gopkg.in/yaml.v3 v3.0.1 // indirect
)
