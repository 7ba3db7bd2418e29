// Package page is the pure model of one Markdown page: what the reader sees
// of its structure, with the line of everything, so that later checks can
// point at the source. It knows neither Markdown nor HTML.
package page

// Page is one page of the manual in one language.
type Page struct {
	Lang     string // language code, from the folder
	Slug     string // file name without .md
	File     string // path inside the content folder, for faults
	Header   Header
	Headings []Heading
	Links    []Link
	Pictures []Picture
	Steps    []Step
	Checks   []Check
	Cautions []Caution
	Places   []Place
	Terms    []Term    // glossary pages only
	Sections []Section // the text, for search
	Prose    []Prose   // the running text, for reading grades
	Amounts  []Amount  // the numbers with a unit in the running text
}

// Kind says what part a page plays.
type Kind string

// The kinds of page.
const (
	Procedure Kind = "procedure"
	Reference Kind = "reference"
	Home      Kind = "home"
	Glossary  Kind = "glossary"
	Cautions  Kind = "cautions"
	Course    Kind = "course"
	Lesson    Kind = "lesson"
)

// Header is what the author says of the page.
type Header struct {
	Title, Summary, Stage string
	Kind                  Kind
	Order                 int
	Roles                 []string
	When, Time            string
	Gear, Sources         []string
	Next                  []string // slugs
	Lessons               []string // course: slugs of its lessons, in order
	Reads                 []string // lesson: slugs of the pages to read first
	Words                 []string // search synonyms
	Least                 []string // amounts that other units round up
	Revised               string   // year-month-day
	Lines                 map[string]int
}

// Heading is a heading below the page's title.
type Heading struct {
	ID    string // unique on the page; letters of every script kept
	Level int
	Text  string
	Line  int
}

// Link is a link as the author wrote it. Its place in Page.Links is its
// number for the renderer.
type Link struct {
	Target string // slug.md, slug.md#id, #id, calc:id, https://…; empty after a fault
	Text   string
	Line   int
	Col    int
}

// Picture is an image or the file of a figure block.
type Picture struct {
	File string // name inside content/pictures
	Alt  string
	Line int
	Col  int
}

// Step is one item of an ordered list.
type Step struct {
	ID   string // unique on the page
	Text string
	Lead int  // bytes at the beginning of Text that are bold
	Hold bool // a hold point
	Line int
}

// Check is one item of a task list. ID is stable as long as its text is.
type Check struct {
	ID   string
	Text string
	Lead int // bytes at the beginning of Text that are bold
	Line int
}

// Caution is a block quote that opens with a signal word.
type Caution struct {
	Level string // danger, warning, caution, notice
	Text  string
	Line  int
}

// Term is one entry of the glossary.
type Term struct {
	ID   string
	Name string
	Also []string
	Text string
	Line int
}

// Section is a heading with the text below it; the first has no heading.
// Blocks of the text are separated by line feeds. Numbers are as the author
// wrote them, without their counterpart in the other system of units.
type Section struct {
	ID    string
	Title string
	Text  string
	Line  int
}

// Prose is one block of running text as a reading grade wants it: without
// code, and with each number and its unit put as the one word "0".
type Prose struct {
	Text string
	Line int
}

// Amount is a number with a unit, as the author wrote it.
type Amount struct {
	Text string
	Line int
}

// PlaceKind names what a fenced block places.
type PlaceKind string

// The kinds of place.
const (
	Calculator PlaceKind = "calculator"
	Table      PlaceKind = "table"
	Figure     PlaceKind = "figure"
	Questions  PlaceKind = "questions"
	Example    PlaceKind = "example"
)

// Place is a fenced block that places something.
type Place struct {
	Kind       PlaceKind
	Line       int            // of the fence
	Lines      map[string]int // of each key
	Calculator string         // calculator, table; figure of a calculator
	Set        []Input
	Table      string
	File       string // figure from content/pictures
	Alt        string
	Caption    string
	Questions  []Question
	Title      string   // example; may be empty
	Steps      []string // example without a calculator
	Hide       int      // example: how many last steps are covered until asked for
}

// Input is one input of a calculator as typed in a block.
type Input struct {
	Path, Text string
	Line, Col  int
}
