package build

import (
	"bytes"
	"image"
	_ "image/jpeg" // sizes of pictures
	_ "image/png"
	"io/fs"
	"path"
	"regexp"
	"strconv"
	"strings"
	"unicode"

	"coursebook/calculators/calc"
	"coursebook/generator/internal/bundle"
	"coursebook/generator/internal/fault"
	"coursebook/generator/internal/output"
	"coursebook/generator/internal/page"
	"coursebook/generator/internal/preview"
	"coursebook/generator/internal/render"
	"coursebook/generator/internal/source"
)

// loadModule compiles the module. A step of its compilation that was left out
// is a warning, and makes a module over its size budget a warning too.
func (b *builder) loadModule() {
	m, err := b.o.Module()
	if err != nil {
		b.fail(err)
		return
	}
	b.Assets.ModuleData = m.Packed
	b.weights.ModuleUnreduced = len(m.Notes) > 0
	for _, note := range m.Notes {
		b.faults.Add(fault.Fault{Severity: fault.Warning, Code: CodeModule, Text: note,
			Hint: "the site works; its module is larger than usual"})
	}
	b.release.Fingerprint = calc.Fingerprint(b.o.Calculators)
}

// deferredStyle is an optional style sheet that pages load before their foot: the
// first view does not wait for it.
const deferredStyle = "css/index-deferred.css"

// bundleTheme makes the theme's files and the pictures.
func (b *builder) bundleTheme() {
	a := &b.Assets
	b.release.Index, b.release.Words = map[string]string{}, map[string]string{}
	a.IndexData, a.WordsData = map[string][]byte{}, map[string][]byte{}
	a.StyleData = bundle.Style(b.o.Theme, "css/index.css", b.faults)
	a.ScriptData = bundle.Script(b.o.Theme, "ts/index.ts", b.faults)
	a.WorkerData = bundle.Script(b.o.Theme, "worker/worker.ts", b.faults)
	var err error
	if a.IconData, err = fs.ReadFile(b.o.Theme, "icon.svg"); err != nil {
		b.fail(err)
	}
	a.Style = b.asset("plumb", "css", a.StyleData)
	if _, err := fs.Stat(b.o.Theme, deferredStyle); err == nil {
		a.DeferredData = bundle.Style(b.o.Theme, deferredStyle, b.faults)
		a.Deferred = b.asset("deferred", "css", a.DeferredData)
	}
	a.Script = b.asset("page", "js", a.ScriptData)
	b.release.Module = b.asset("module", "wasmz", a.ModuleData)
	a.Icon = b.asset("icon", "svg", a.IconData)
	if b.o.Preview {
		b.add(preview.ScriptPath, []byte(preview.Script))
	}
	b.addPictures()
	b.addWords()
	b.firstView = output.NewFirstView([]output.File{{Path: a.Style, Data: a.StyleData}})
	b.weights.Scripts = []output.File{{Path: a.Script, Data: a.ScriptData}}
	b.weights.Module = output.File{Path: b.release.Module, Data: a.ModuleData}
}

// asset adds a file named by its content and returns its path.
func (b *builder) asset(name, ext string, data []byte) string {
	p := bundle.Named(name, ext, data)
	b.add(p, data)
	return p
}

// addPictures adds the pictures that pages show, with their sizes.
func (b *builder) addPictures() {
	b.Pictures = map[string]render.Picture{}
	used := map[string]bool{}
	for _, p := range b.Site.Pages {
		for _, pic := range p.Pictures {
			used[pic.File] = true
		}
	}
	for _, f := range b.Sources {
		name := path.Base(f.Path)
		if f.Kind != source.Picture || !used[name] {
			continue
		}
		ext := path.Ext(name)
		img := page.Image{Src: b.asset(strings.TrimSuffix(name, ext), ext[1:], f.Data)}
		img.Width, img.Height = b.size(f)
		b.Pictures[name] = render.Picture{Image: img, Data: f.Data}
	}
}

// size reads the size of a picture; 0 where the format does not tell simply.
func (b *builder) size(f source.File) (width, height int) {
	if path.Ext(f.Path) == ".svg" {
		return svgSize(f.Data)
	}
	if path.Ext(f.Path) == ".webp" {
		return 0, 0
	}
	c, _, err := image.DecodeConfig(bytes.NewReader(f.Data))
	if err != nil {
		b.faults.Add(fault.Fault{File: f.Path, Code: "picture", Text: "this is no picture that a browser shows", Hint: "save it again as SVG, PNG or JPEG"})
		return 0, 0
	}
	return c.Width, c.Height
}

// viewBox is that of an SVG picture: four numbers parted by spaces or commas
// (SVG 2, section 8.6).
var viewBox = regexp.MustCompile(`\sviewBox\s*=\s*["']([^"']*)["']`)

// svgSize reads the size off the viewBox; 0 where there is none.
func svgSize(data []byte) (width, height int) {
	m := viewBox.FindSubmatch(data)
	if m == nil {
		return 0, 0
	}
	parts := strings.FieldsFunc(string(m[1]), func(r rune) bool { return r == ',' || unicode.IsSpace(r) })
	if len(parts) != 4 {
		return 0, 0
	}
	w, err1 := strconv.ParseFloat(parts[2], 64)
	h, err2 := strconv.ParseFloat(parts[3], 64)
	if err1 != nil || err2 != nil || !(w > 0 && h > 0 && w < 1e6 && h < 1e6) {
		return 0, 0
	}
	return int(w + 0.5), int(h + 0.5)
}

// addWords adds what the module says in other languages: the calculators'
// texts; the interface's stand in the pages.
func (b *builder) addWords() {
	for _, l := range b.Site.Languages {
		data := wordsFile(b.Words[l.Code])
		if len(data) == 0 {
			continue
		}
		b.Assets.WordsData[l.Code] = data
		b.release.Words[l.Code] = b.asset("words-"+l.Code, "tsv", data)
	}
}
