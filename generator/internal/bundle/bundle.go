// Package bundle prepares the files that a browser loads: it bundles style sheets
// and scripts with esbuild, minifies HTML, and names assets by their content.
// Every file but the pages and the worker has a hash in its name, so that a cache
// never mixes two releases.
package bundle

import (
	"bytes"
	"crypto/sha256"
	"encoding/base64"
	"encoding/hex"
	"fmt"
	"io/fs"
	"path"
	"strings"
	"sync"
	"unicode/utf8"

	"github.com/evanw/esbuild/pkg/api"
	"github.com/tdewolff/minify/v2"
	"github.com/tdewolff/minify/v2/html"

	"coursebook/generator/internal/fault"
)

// target lists the oldest supported browsers: the first versions with
// DecompressionStream, the newest interface that the scripts need.
var target = []api.Engine{
	{Name: api.EngineChrome, Version: "105"},
	{Name: api.EngineFirefox, Version: "113"},
	{Name: api.EngineSafari, Version: "16.4"},
}

// Style bundles and minifies the style sheet entry of a theme and the files it
// imports. It adds errors and warnings to faults, and returns nil if there is an
// error.
func Style(dir fs.FS, entry string, faults *fault.List) []byte { return build(dir, entry, faults) }

// Script bundles and minifies the script entry of a theme and the files it imports
// to one classic script, which also runs from a file. It adds errors and warnings
// to faults, and returns nil if there is an error.
func Script(dir fs.FS, entry string, faults *fault.List) []byte { return build(dir, entry, faults) }

// build bundles and minifies the file entry of a theme by its type. It adds errors
// and warnings to faults, and returns nil if there is an error.
func build(dir fs.FS, entry string, faults *fault.List) []byte {
	res := api.Build(api.BuildOptions{
		EntryPoints: []string{entry}, Bundle: true, Write: false, Outdir: "out",
		MinifyWhitespace: true, MinifyIdentifiers: true, MinifySyntax: true,
		Format: api.FormatIIFE, Engines: target, Charset: api.CharsetUTF8,
		LegalComments: api.LegalCommentsNone, LogLevel: api.LogLevelSilent,
		Plugins: []api.Plugin{fromFS(dir)},
	})
	report(entry, fault.Error, res.Errors, faults)
	report(entry, fault.Warning, res.Warnings, faults) // a syntax error in a style sheet is a warning
	if len(res.Errors) > 0 || len(res.OutputFiles) == 0 {
		return nil
	}
	return res.OutputFiles[0].Contents
}

// report adds messages of esbuild to faults with a severity, each located in its
// file of the theme, or in entry without a line if it has no location.
func report(entry string, severity fault.Severity, messages []api.Message, faults *fault.List) {
	for _, m := range messages {
		text := strings.ToLower(m.Text[:1]) + m.Text[1:]
		f := fault.Fault{Severity: severity, Text: text, Code: "bundle", File: entry}
		if at := m.Location; at != nil { // Column counts bytes from 0
			before := at.LineText[:min(at.Column, len(at.LineText))]
			f.File, f.Source = strings.TrimPrefix(at.File, "theme:"), at.LineText
			f.Line, f.Col = at.Line, utf8.RuneCountInString(before)+1
		}
		faults.Add(f)
	}
}

// fromFS returns a plugin with which esbuild reads a theme from a file system,
// such as the one embedded in the binary. A file that the theme does not have is
// an error of the bundle; the url() of a style sheet is not resolved.
func fromFS(dir fs.FS) api.Plugin {
	return api.Plugin{Name: "theme", Setup: func(b api.PluginBuild) {
		b.OnResolve(api.OnResolveOptions{Filter: ".*"}, func(a api.OnResolveArgs) (api.OnResolveResult, error) {
			if a.Kind == api.ResolveCSSURLToken {
				return api.OnResolveResult{Path: a.Path, External: true}, nil
			}
			name := a.Path
			if a.Importer != "" {
				name = path.Join(path.Dir(a.Importer), a.Path)
			}
			for _, ext := range []string{"", ".ts", ".css"} {
				if info, err := fs.Stat(dir, name+ext); err == nil && !info.IsDir() {
					return api.OnResolveResult{Path: name + ext, Namespace: "theme"}, nil
				}
			}
			return api.OnResolveResult{}, fmt.Errorf("the theme has no file %s", name)
		})
		b.OnLoad(api.OnLoadOptions{Filter: ".*", Namespace: "theme"}, func(a api.OnLoadArgs) (api.OnLoadResult, error) {
			data, err := fs.ReadFile(dir, a.Path)
			if err != nil {
				return api.OnLoadResult{}, err
			}
			text, loader := string(data), api.LoaderTS
			if strings.HasSuffix(a.Path, ".css") {
				loader = api.LoaderCSS
			}
			return api.OnLoadResult{Contents: &text, Loader: loader}, nil
		})
	}}
}

// Named returns the path of an asset: assets/NAME-HASH.EXT. The hash is the start
// of the SHA-256 of data.
func Named(name, ext string, data []byte) string {
	sum := sha256.Sum256(data)
	return "assets/" + name + "-" + hex.EncodeToString(sum[:5]) + "." + ext
}

// Hash returns the source expression ('sha256-…', with its quotes) with which a
// content security policy allows an inline block of exactly these bytes.
func Hash(block []byte) string {
	sum := sha256.Sum256(block)
	return "'sha256-" + base64.StdEncoding.EncodeToString(sum[:]) + "'"
}

// Minifier minifies pages. It is safe for concurrent use.
type Minifier struct{ m *minify.M }

// NewMinifier returns a minifier whose pages stay valid HTML: it keeps end tags,
// html, head and body tags, default attributes, and quotes where they are
// needed.
func NewMinifier() *Minifier {
	m := minify.New()
	m.Add("text/html",
		&html.Minifier{KeepDocumentTags: true, KeepEndTags: true, KeepQuotes: true, KeepDefaultAttrVals: true})
	return &Minifier{m}
}

// HTML returns a page minified, in a slice of its own. It overwrites the bytes of
// page. It returns an error if the page is not HTML that can be parsed.
func (x *Minifier) HTML(page []byte) ([]byte, error) {
	b := scratch.Get().(*bytes.Buffer)
	defer scratch.Put(b)
	b.Reset()
	// Minify uses the bytes of a Buffer without a copy.
	if err := x.m.Minify("text/html", b, bytes.NewBuffer(page)); err != nil {
		return nil, fmt.Errorf("bundle: %w", err)
	}
	return bytes.Clone(b.Bytes()), nil
}

// scratch holds buffers for reuse.
var scratch = sync.Pool{New: func() any { return new(bytes.Buffer) }}
