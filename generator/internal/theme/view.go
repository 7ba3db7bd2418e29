package theme

import (
	"html/template"

	"coursebook/generator/internal/form"
)

// Frame is the part of a view that is common to all pages.
type Frame struct {
	Title     string // title of the page
	Summary   string // for the description of the page
	Slug      string
	Self      string // path of the page from the root
	Languages []Language
	Stages    []StageLink

	Lang      string // language of the interface
	Name      string // title of the manual
	Subtitle  string
	Revised   string
	Emergency string // telephone number of the emergency services; may be empty
	// Kind is home, stage, calculators, procedure, reference, glossary, cautions, calculator,
	// listing, all, settings, missing or book.
	Kind string
	Root string // relative address of the site's root: "", "../" or "../../"

	Home, All, Blowout string // relative addresses
	Settings           string // address of the settings
	Training           string // address of the page of the courses; empty without any
	Cautions           string // address of the page of cautions; empty without one
	Crew               []Role // roles a reader may choose, for the settings of every page
	Policy             string // content security policy
	Assets             Assets
	Above              []Above // of the page for missing addresses; else none
	PageID             string  // placeholder for the id of the page
	Pocket             bool    // inside the one-file edition
}

// Assets are the relative addresses of the files that a page loads.
type Assets struct {
	Style, Script, Icon, AppManifest string
	TouchIcon                        string // for a home screen; on home pages only
	Lists                            string // styles of home page, stages and lists; on those pages only
	Deferred                         string // styles that the first view does not need
}

// Above is a folder above the address of a page that is sent for addresses in any folder,
// with the files of the site as they are named from there.
type Above struct{ Root, Style, Script string }

// Language is one language of the language switch.
type Language struct {
	Code, Name, Href string
	Decimal          string // point or comma
	Current          bool
	Translated       bool // the page exists in the language; else Href is its home page
}

// StageLink is one stage in the list of stages on every page.
type StageLink struct {
	ID, Title, Hint, Href string
	Current               bool
}

// Link is a link to a page of the manual.
type Link struct {
	Title, Summary, Href string
	Lang                 string // set if the page is in another language
	Time                 string
	Roles                []string // role IDs
	Slug                 string
}

// Part is one piece of a page's body, in order: exactly one field is set.
type Part struct {
	HTML      template.HTML
	Closed    *Closed
	Table     *form.Table
	FormHref  string // the calculator's page; with Table
	Figure    *Figure
	Questions []Question
	Example   *Example
	Rules     []Rule
	Why       bool   // the heading above the text that explains a procedure
	Key       string // unique on the page, for ids
}

// Rule is one house rule with its amount.
type Rule struct {
	Anchor, Title string
	Amount        template.HTML
	AtLeast       bool          // the amount is a least one, else a greatest one
	Limit         template.HTML // the published limit; empty without one
	Source        string        // the work that gives the limit, in its language
	Where         string        // the place in it
	Status        string        // of the source
	Basis         template.HTML // where the amount is from
}

// Closed is the closed card of a calculator. A script opens the form below it; without
// a script it is a link to the calculator's page.
type Closed struct {
	ID, Title, Purpose string
	Href               string       // of the calculator's page
	Address            string       // the same for paper: complete, or relative to the site's root
	Answer             *form.Output // of the example; nil if none may be shown
	// Set is the inputs that the author presets: a JSON list of pairs, path and text; may be empty
	Set string
}

// Figure is a picture or a calculator's drawing.
type Figure struct {
	SVG           template.HTML // a drawing; or
	Src           string        // a picture
	Width, Height int
	Alt, Caption  string
}

// Procedure is the view of a page of the content.
type Procedure struct {
	Frame
	Urgent     bool     // the steps are before roles and gear
	Marks      []Mark   // to the sections of the page
	Call       string   // the emergency number of the button that calls it; empty without a button
	Roles      []string // titles
	When, Time string
	Gear       []string
	Sources    []string
	Parts      []Part
	Next       []Link // the author's choice of what to read next
	Before     *Link  // in the order of the pour day; nil for the first
	After      *Link
}

// Mark is a link to a section of the same page.
type Mark struct{ Href, Title string }

// Home is the view of a home page, which is one screen: today, the calculators, what goes
// wrong, the training, and the stages of the pour day.
type Home struct {
	Frame
	Heading     string
	Parts       []Part
	Courses     []Link      // with the role of each
	Calculators string      // address of the list; empty without calculators
	Trouble     *StageLink  // the stage of the urgent page; nil without one
	Days        []StageLink // the other stages
}

// Stage is the view of one stage of the pour day with all its pages.
type Stage struct {
	Frame
	Hint  string
	Pages []StageItem
}

// StageItem is one page of a stage.
type StageItem struct {
	Link
	Urgent bool
	Checks int    // number of checks; 0 without any
	Place  string // the name under which the script keeps the ticks
}

// Calculators is the view of the list of the calculators by what they are for. The letter
// of a group is its title; empty for those without a group.
type Calculators struct {
	Frame
	Groups []Group
}

// Role is one role that a reader may choose.
type Role struct{ ID, Title string }

// Calculator is the view of a calculator: inputs, result, sources.
type Calculator struct {
	Frame
	Form    *form.Form
	Listing string // address of its second page
	UsedIn  []Link
}

// Listing is the view of a calculator's second page: formulas, tables, and the Go
// functions that compute the formulas.
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

// All is the view of the list of all pages and calculators from A to Z.
type All struct {
	Frame
	Groups      []Group
	Calculators []Link
	Paper       []Link // pages for printing
}

// Group is the pages of one letter.
type Group struct {
	Letter string
	Pages  []Link
}

// Settings is the view of the settings.
type Settings struct{ Frame }

// Missing is the view of the page for missing addresses.
type Missing struct {
	Frame
	Others []MissingIn // the same in the other languages
}

// MissingIn is what the page for missing addresses says in another language.
type MissingIn struct {
	Lang, Title, Text        string
	Name, Home, AllName, All string // links: title and relative address
}

// Pocket is the view of the one-file edition: every page in one document.
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

// Data is a block of text for the script of the one-file edition. Its ID is release,
// module, index-LANGUAGE or words-LANGUAGE; its text is the published file of that
// kind in base64.
type Data struct{ ID, Text string }
