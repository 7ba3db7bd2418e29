package build

import (
	"coursebook/generator/internal/offline"
	"coursebook/generator/internal/output"
	"coursebook/generator/internal/preview"
)

// appManifest is where the web app manifest lies.
const appManifest = offline.AppName

// The theme's colours around the page, before it has loaded its styles.
const (
	themeColour      = "#fdfdfb"
	backgroundColour = "#fdfdfb"
)

// worker adds the app manifest and makes the worker from all other files.
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
