// Package page is the data model of one page: its header, headings, steps, checks,
// cautions, links and blocks, each with its source line, so that later checks can
// locate a fault. It depends on neither Markdown nor HTML.
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

// Kind is the role of a page in the manual.
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

// Header is the YAML header of a page.
type Header struct {
	Title, Summary, Stage string
	Kind                  Kind
	Order                 int
	Roles                 []string
	When, Time            string
	Gear, Sources         []string
	Next                  []string       // slugs
	Lessons               []string       // course: slugs of its lessons, in order
	Reads                 []string       // lesson: slugs of the pages to read first
	Words                 []string       // search synonyms
	Least                 []string       // amounts whose conversions are rounded up
	Call                  bool           // has the button that calls the emergency number
	Revised               string         // year-month-day
	Lines                 map[string]int // source line of each key
}

// Heading is a heading below the page's title.
type Heading struct {
	ID    string // unique on the page; may contain letters of every script
	Level int
	Text  string
	Line  int
}

// Link is a link as the author wrote it. The renderer refers to it by its index in
// Page.Links.
type Link struct {
	Target string // slug.md, slug.md#id, #id, calc:id, rule:id, https://…; empty after a fault
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

// Check is one item of a task list. ID changes only with its text.
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

// Section is a heading with the text below it. The first section has no heading.
// Blocks of the text are separated by line feeds. Numbers are as the author wrote
// them, without a conversion to the other system of units.
type Section struct {
	ID    string
	Title string
	Text  string
	Line  int
}

// Prose is one block of running text for package readability: without code, and
// with each number and its unit replaced by the word "0".
type Prose struct {
	Text string
	Line int
}

// Amount is a number with its unit, as the author wrote it.
type Amount struct {
	Text string
	Line int
}

// PlaceKind is the kind of a fenced block.
type PlaceKind string

// The kinds of fenced block.
const (
	Calculator PlaceKind = "calculator"
	Table      PlaceKind = "table"
	Figure     PlaceKind = "figure"
	Questions  PlaceKind = "questions"
	Example    PlaceKind = "example"
	Rules      PlaceKind = "rules"
)

// Place is a fenced block that inserts a calculator, table, figure, questions, an
// example or the house rules.
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
	Hide       int      // example: number of last steps that are hidden at first
}

// Input is one input of a calculator, as written in a block.
type Input struct {
	Path, Text string
	Line, Col  int
}
