package build

import (
	"coursebook/generator/internal/offline"
	"coursebook/generator/internal/output"
	"coursebook/generator/internal/preview"
)

// appManifest is the path of the web app manifest.
const appManifest = offline.AppName

// The colours of the browser's interface and of the page before its styles are loaded.
const (
	themeColour      = "#fdfdfb"
	backgroundColour = "#fdfdfb"
)

// worker returns the service worker with the list of all files but the preview
// script. It returns an error if a path cannot be listed.
func (b *builder) worker(files []output.Entry) (output.File, error) {
	list := make([]output.Entry, 0, len(files))
	for _, f := range files {
		if f.Path != preview.ScriptPath {
			list = append(list, f)
		}
	}
	release, err := offline.Manifest(list)
	if err != nil {
		return output.File{}, err
	}
	worker := offline.Worker(string(b.Assets.WorkerData), release)
	return output.File{Path: offline.WorkerName, Data: []byte(worker)}, nil
}

// addAppManifest adds the web app manifest in the first language. If the manual's
// values are refused, it adds a fault instead.
func (b *builder) addAppManifest() {
	l := b.Site.Languages[0]
	data, err := offline.Webmanifest(offline.App{
		Name: l.Title, ShortName: l.Title, Description: l.Subtitle, Language: l.Code,
		Theme: themeColour, Background: backgroundColour,
		Icons: []offline.Icon{{Src: b.Assets.Icon, Sizes: "any", Type: "image/svg+xml", Purpose: "any"}},
	})
	if err != nil {
		b.fail(err)
		return
	}
	b.Assets.AppManifest = appManifest
	b.add(appManifest, data)
}
