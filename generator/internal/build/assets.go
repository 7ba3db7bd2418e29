package build

import (
	"io/fs"
	"path"
	"strings"

	"coursebook/calculators/calc"
	"coursebook/generator/internal/bundle"
	"coursebook/generator/internal/fault"
	"coursebook/generator/internal/offline"
	"coursebook/generator/internal/output"
	"coursebook/generator/internal/page"
	"coursebook/generator/internal/pictures"
	"coursebook/generator/internal/preview"
	"coursebook/generator/internal/render"
	"coursebook/generator/internal/source"
)

// loadModule sets the module's data, compressed, and the calculators' fingerprint.
// If the module cannot be compiled, it adds a fault and sets neither. It warns of
// omitted steps of the compilation; a module over its budget is then a warning
// too.
func (b *builder) loadModule() {
	m, err := b.o.Module()
	if err != nil {
		b.fail(err)
		return
	}
	b.Assets.ModuleData = m.Packed
	b.weights.ModuleUnreduced = len(m.Notes) > 0
	for _, note := range m.Notes {
		b.faults.Add(fault.Fault{Severity: fault.Warning, Code: codeModule, Text: note,
			Hint: "the site works; its module is larger than usual"})
	}
	b.release.Fingerprint = calc.Fingerprint(b.Site.Calculators)
}

// deferredStyle is an optional style sheet that pages load before their footer, so that
// it does not delay the first view.
const deferredStyle = "css/index-deferred.css"

// listsStyle is an optional style sheet of the home page, the stages and the lists.
const listsStyle = "css/index-lists.css"

// bundleTheme bundles the theme and adds its files, the pictures and the
// translations. It adds a fault for each file that is missing or cannot be
// bundled.
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
	if _, err := fs.Stat(b.o.Theme, listsStyle); err == nil {
		a.ListsData = bundle.Style(b.o.Theme, listsStyle, b.faults)
		a.Lists = b.asset("lists", "css", a.ListsData)
	}
	a.Script = b.asset("page", "js", a.ScriptData)
	b.release.Module = b.asset("module", "wasmz", a.ModuleData)
	a.Icon = b.asset("icon", "svg", a.IconData)
	b.addIcons()
	if b.o.Preview {
		b.add(preview.ScriptPath, []byte(preview.Script))
	}
	b.addPictures()
	b.addWords()
	style := output.File{Path: a.Style, Data: a.StyleData}
	b.firstView = output.NewFirstView([]output.File{style})
	b.listsView = output.NewFirstView([]output.File{style, {Path: a.Lists, Data: a.ListsData}})
	b.weights.Scripts = []output.File{{Path: a.Script, Data: a.ScriptData}}
	b.weights.Module = output.File{Path: b.release.Module, Data: a.ModuleData}
}

// touchIcon is the icon for phones whose home screen takes no other (from memory: Apple's,
// which look for 180 by 180 dots).
const touchIcon = "icon-180.png"

// icons are the optional icons of a theme for home screens that take no vector image. A
// phone cuts its own shape out of a maskable one.
var icons = []struct{ file, sizes, purpose string }{
	{"icon-192.png", "192x192", "any"},
	{"icon-512.png", "512x512", "any"},
	{"icon-maskable-512.png", "512x512", "maskable"},
}

// addIcons adds the theme's icons for home screens and lists them for the web app
// manifests.
func (b *builder) addIcons() {
	add := func(file string) string {
		data, err := fs.ReadFile(b.o.Theme, file)
		if err != nil {
			return "" // a theme may do without
		}
		return b.asset(strings.TrimSuffix(file, ".png"), "png", data)
	}
	b.Assets.TouchIcon = add(touchIcon)
	b.icons = []offline.Icon{{Src: b.Assets.Icon, Sizes: "any", Type: "image/svg+xml", Purpose: "any"}}
	for _, i := range icons {
		if path := add(i.file); path != "" {
			b.icons = append(b.icons, offline.Icon{Src: path, Sizes: i.sizes, Type: "image/png", Purpose: i.purpose})
		}
	}
}

// asset adds a file whose name contains a hash of its content, and returns its path.
func (b *builder) asset(name, ext string, data []byte) string {
	p := bundle.Named(name, ext, data)
	b.add(p, data)
	return p
}

// addPictures adds the pictures that pages use and reads their sizes. It adds a
// fault for one that is no picture.
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
		var err error
		if img.Width, img.Height, err = pictures.Size(f); err != nil {
			b.fail(err)
		}
		b.Pictures[name] = render.Picture{Image: img, Data: f.Data}
	}
}

// addWords adds a file of the calculators' translations for each language that has any.
// The texts of the interface are in the pages.
func (b *builder) addWords() {
	texts, err := CalculatorTexts()
	if err != nil {
		b.fail(err)
		return
	}
	for _, l := range b.Site.Languages {
		data := wordsFile(b.Words[l.Code], texts)
		if len(data) == 0 {
			continue
		}
		b.Assets.WordsData[l.Code] = data
		b.release.Words[l.Code] = b.asset("words-"+l.Code, "tsv", data)
	}
}
