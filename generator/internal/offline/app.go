package offline

import (
	"fmt"
	"regexp"
	"strings"
)

// appName is the file name of the web app manifest in the first language.
const appName = "app.webmanifest"

// AppName returns the file name of the web app manifest in a language. The first one of
// a manual has no code in its name.
func AppName(code string, first bool) string {
	if first {
		return appName
	}
	return "app-" + code + ".webmanifest"
}

// App holds the values of the web app manifest, with which a phone installs the
// manual on its home screen.
type App struct {
	// Name is the manual's title. ShortName is short enough to fit under an icon.
	Name, ShortName string
	// Description may be empty.
	Description string
	// Language is the code of the default language.
	Language string
	// Start is the folder of the home page, relative to the manifest: "." or "es/".
	Start string
	// Theme is the colour of the bar above the page, Background that of the
	// screen before the first page is shown. Both have the form #rrggbb.
	Theme, Background string
	// Icons has at least one entry.
	Icons []Icon
}

// Icon is one picture for the home screen.
type Icon struct {
	// Src is a URL relative to the manifest.
	Src string `json:"src"`
	// Sizes is a list such as "192x192", or "any" for a vector image.
	Sizes string `json:"sizes"`
	// Type is the media type.
	Type string `json:"type"`
	// Purpose is "any", "maskable" or both with a space; may be empty.
	Purpose string `json:"purpose,omitempty"`
}

// appFile gives the members of the Web Application Manifest (W3C) their order.
// Start and scope are relative to the manifest, so the site works below any path.
type appFile struct {
	Name        string `json:"name"`
	ShortName   string `json:"short_name"`
	Description string `json:"description,omitempty"`
	Language    string `json:"lang,omitempty"`
	StartURL    string `json:"start_url"`
	Scope       string `json:"scope"`
	Display     string `json:"display"`
	Theme       string `json:"theme_color"`
	Background  string `json:"background_color"`
	Icons       []Icon `json:"icons"`
}

var (
	hexColour = regexp.MustCompile(`^#[0-9a-fA-F]{6}$`)
	iconSizes = regexp.MustCompile(`^(any|[1-9][0-9]*x[1-9][0-9]*)( [1-9][0-9]*x[1-9][0-9]*)*$`)
	purposes  = regexp.MustCompile(`^((any|maskable|monochrome)( (any|maskable|monochrome))*)?$`)
)

// Webmanifest returns the web app manifest as JSON. A missing name, a colour that
// is not #rrggbb, no icon, and an icon whose URL is not relative are errors, of
// type fault.Fault.
func Webmanifest(a App) ([]byte, error) {
	var wrong, hint string
	switch {
	case strings.TrimSpace(a.Name) == "" || strings.TrimSpace(a.ShortName) == "":
		wrong, hint = "name or short name is missing", "give the manual a title"
	case !hexColour.MatchString(a.Theme) || !hexColour.MatchString(a.Background):
		wrong = fmt.Sprintf("colours %q and %q are not both of the form #rrggbb", a.Theme, a.Background)
		hint = "write six hexadecimal digits after #"
	case a.Start != "." && !(strings.HasSuffix(a.Start, "/") && plainURL.MatchString(strings.TrimSuffix(a.Start, "/"))):
		wrong, hint = fmt.Sprintf("start %q is not a folder of the site", a.Start), "write . or es/"
	case len(a.Icons) == 0:
		wrong, hint = "there is no icon", "add an icon to the theme"
	}
	for _, i := range a.Icons {
		if !plainURL.MatchString(i.Src) {
			wrong, hint = fmt.Sprintf("icon %q is not a plain relative URL", i.Src), "name a file of the site"
		} else if !iconSizes.MatchString(i.Sizes) || !purposes.MatchString(i.Purpose) ||
			!strings.HasPrefix(i.Type, "image/") {
			wrong, hint = fmt.Sprintf("icon %q has sizes %q, type %q and purpose %q", i.Src, i.Sizes, i.Type,
				i.Purpose),
				"write such as 192x192, image/png and maskable"
		}
	}
	if wrong != "" {
		return nil, refuse(appName, wrong, hint)
	}
	return encode(appFile{Name: a.Name, ShortName: a.ShortName, Description: a.Description, Language: a.Language,
		StartURL: a.Start, Scope: ".", Display: "standalone", Theme: a.Theme, Background: a.Background, Icons: a.Icons},
		"  "), nil
}
