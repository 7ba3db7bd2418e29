package theme

import "html/template"

// Paper is the view of a page for printing: pocket cards or posters.
type Paper struct {
	Frame
	Titles  []Link // to the pages of the cards or posters, for a phone
	Sheets  []Sheet
	Posters []Poster
}

// Sheet is one sheet of pocket cards: two rows, each of two cards or of one wide card.
// The last sheet may have fewer.
type Sheet struct{ Rows [][]Card }

// Card is a pocket card with the checks of a procedure.
type Card struct {
	Title    string
	Lang     string // set if the page is in another language
	Part, Of int    // if the checks of the page are split over cards; else 0
	Wide     bool   // as wide as a row
	When     template.HTML
	Caution  *Signal
	Checks   []template.HTML
	Revised  string
	Address  string // of the page; relative to the site's root if the manual has no address
}

// Signal is a caution under its signal word.
type Signal struct {
	Level string // danger, warning, caution, notice
	Word  string // in the page's language
	Text  template.HTML
}

// Poster is a poster with the first steps of a page.
type Poster struct {
	Title   string
	Lang    string // set if the page is in another language
	Caution *Signal
	Steps   []PosterStep
	Many    bool // the steps are in two columns
	Crowded bool // they are in smaller type too
	More    int  // steps that the poster leaves out
	Revised string
	Address string // complete; empty if the manual has no address
	Code    Code   // of the address
}

// PosterStep is a shortened step.
type PosterStep struct {
	Text template.HTML
	Hold bool
}

// Code is a QR code.
type Code struct {
	Side  int    // in modules, with the quiet zone
	Width int    // in mm
	Path  string // of the dark modules, in SVG
}
