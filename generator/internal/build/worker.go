package build

import (
	"coursebook/generator/internal/offline"
	"coursebook/generator/internal/output"
	"coursebook/generator/internal/preview"
)

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

// addAppManifests adds the web app manifest of each language, so that a reader installs
// the manual under its name and with its home page in his language. If the manual's
// values are refused, it adds a fault instead.
func (b *builder) addAppManifests() {
	b.Assets.AppManifest = map[string]string{}
	for i, l := range b.Site.Languages {
		start := "."
		if i > 0 {
			start = l.Code + "/"
		}
		data, err := offline.Webmanifest(offline.App{
			Name: l.Title, ShortName: l.Title, Description: l.Subtitle, Language: l.Code, Start: start,
			Theme: themeColour, Background: backgroundColour,
			Icons: b.icons,
		})
		if err != nil {
			b.fail(err)
			return
		}
		name := offline.AppName(l.Code, i == 0)
		b.Assets.AppManifest[l.Code] = name
		b.add(name, data)
	}
}
