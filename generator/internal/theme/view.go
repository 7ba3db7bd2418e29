package theme

import (
	"html/template"

	"coursebook/generator/internal/form"
)

// Frame is what every page needs around its content.
type Frame struct {
	Title     string // title of the page
	Summary   string // for the description of the page
	Slug      string
	Self      string // own path from the root
	Languages []Language
	Stages    []StageLink

	Lang     string // language of the interface
	Name     string // title of the manual
	Subtitle string
	Revised  string
	Kind     string // home, procedure, reference, glossary, cautions, calculator, listing, all, missing, book
	Root     string // relative way to the site's root: "", "../" or "../../"

	Home, All, Blowout string // relative addresses
	Training           string // address of the page of the courses; empty without any
	Cautions           string // address of the page of cautions; empty without one
	Crew               []Role // roles a reader may choose, for the settings of every page
	Policy             string // content security policy
	Assets             Assets
	PageID             string // placeholder for the id of the page
	Pocket             bool   // inside the one-file edition
}

// Assets are relative addresses of what a page loads.
type Assets struct {
	Style, Script, Icon, AppManifest string
	Deferred                         string // styles that the first view does not need
}

// Language is one choice of the language switch.
type Language struct {
	Code, Name, Href string
	Decimal          string // point or comma
	Current          bool
	Own              bool // this page exists in that language; else Href leads to its home
}

// StageLink is one knot of the line that runs through every page.
type StageLink struct {
	ID, Title, Href string
	Current         bool
}

// Link is a link to a page of the manual.
type Link struct {
	Title, Summary, Href string
	Lang                 string // set where the page is in another language
	Time                 string
	Roles                []string // role IDs
	Slug                 string
}

// Part is one piece of a page's body, in order: exactly one field is set.
type Part struct {
	HTML      template.HTML
	Closed    *Closed
	Table     *form.Table
	FormHref  string // the calculator's own page; with Table
	Figure    *Figure
	Questions []Question
	Example   *Example
	Key       string // unique on the page, for ids
}

// Closed is a calculator that a page places, closed. A script opens its form in
// place; without script it is a link to the calculator's own page.
type Closed struct {
	ID, Title, Purpose string
	Href               string       // of the calculator's own page
	Address            string       // the same on paper: complete, or from the site's root
	Answer             *form.Output // of the example; nil where none may be shown
	// the inputs that the author presets: a JSON list of pairs, path and text; may be empty
	Set string
}

// Figure is a picture or a calculator's drawing.
type Figure struct {
	SVG           template.HTML // a drawing; or
	Src           string        // a picture
	Width, Height int
	Alt, Caption  string
}

// Procedure shows a page of the manual.
type Procedure struct {
	Frame
	Stage      string
	Urgent     bool     // what to do when a form opens: steps first
	Roles      []string // titles
	When, Time string
	Gear       []string
	Sources    []string
	Parts      []Part
	Next       []Link // the author's choice of what to read next
	Before     *Link  // the pour day's order
	After      *Link
}

// Home shows the pour day, in order.
type Home struct {
	Frame
	Parts       []Part
	Stages      []Stage
	Roles       []Role
	Calculators []Link
}

// Stage is one stage of the pour day with its pages.
type Stage struct {
	ID, Title, Hint string
	Pages           []Link
	More            int // pages that did not fit; the list from A to Z has them
}

// Role is one role a reader may choose.
type Role struct{ ID, Title string }

// Calculator shows one calculator: inputs, result, sources.
type Calculator struct {
	Frame
	Form    *form.Form
	Listing string // address of its second page
	UsedIn  []Link
}

// Listing is a calculator's second page: formulas, tables, and the Go functions
// that compute the formulas.
type Listing struct {
	Frame
	Form  *form.Form
	Back  Link // to the calculator
	Items []ListingItem
}

// ListingItem is one function.
type ListingItem struct {
	Title, File string
	Line        int
	Code        template.HTML
}

// All lists every page and calculator from A to Z.
type All struct {
	Frame
	Groups      []Group
	Calculators []Link
	Paper       []Link // pages made to be printed
}

// Group is one letter.
type Group struct {
	Letter string
	Pages  []Link
}

// Missing is the page a server shows for an address that does not exist.
type Missing struct{ Frame }

// Pocket is the one-file edition: every page in one document.
type Pocket struct {
	Frame
	Articles []Article
	Style    template.CSS
	Script   template.JS
	Data     []Data
}

// Article is one page inside the one-file edition.
type Article struct {
	ID, Lang, Title string
	Body            template.HTML
}

// Data is a block of text that the script of the one-file edition reads. Its
// ID is release, module, index-LANGUAGE or words-LANGUAGE; its text is the
// published file of that kind in base64.
type Data struct{ ID, Text string }
