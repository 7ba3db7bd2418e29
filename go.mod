module coursebook

go 1.26.0

require (
	github.com/alecthomas/chroma/v2 v2.27.0
	github.com/blevesearch/snowballstem v0.9.0
	github.com/evanw/esbuild v0.28.2
	github.com/fsnotify/fsnotify v1.10.1
	github.com/makiuchi-d/gozxing v0.1.1
	github.com/rogpeppe/go-internal v1.16.0
	github.com/skip2/go-qrcode v0.0.0-20200617195104-da1b6568686e
	github.com/tdewolff/minify/v2 v2.24.25
	github.com/tetratelabs/wazero v1.12.0
	github.com/yuin/goldmark v1.8.5
	go.yaml.in/yaml/v3 v3.0.6
	golang.org/x/net v0.61.0
	golang.org/x/sys v0.50.0
	golang.org/x/tools v0.52.0
)

require (
	github.com/dlclark/regexp2/v2 v2.2.1 // indirect
	github.com/tdewolff/parse/v2 v2.8.20 // indirect
	golang.org/x/text v0.43.0 // indirect
	golang.org/x/xerrors v0.0.0-20200804184101-5ec99f83aff1 // indirect
)
