package theme

import "html/template"

// Paper shows what is made to be printed: pocket cards or posters.
type Paper struct {
	Frame
	Sheets  []Sheet
	Posters []Poster
}

// Sheet is one sheet of pocket cards: two rows, each of two cards or of one
// that is wide. The last sheet may hold fewer.
type Sheet struct{ Rows [][]Card }

// Card is a procedure's checks for the pocket.
type Card struct {
	Title    string
	Lang     string // set where the page is in another language
	Part, Of int    // where a page's checks are split over cards; else 0
	Wide     bool   // takes both places of its row
	When     template.HTML
	Caution  *Signal
	Checks   []template.HTML
	Revised  string
	Address  string // of the page; from the site's root where that is not known
}

// Signal is a caution under its signal word.
type Signal struct {
	Level string // danger, warning, caution, notice
	Word  string // in the page's language
	Text  template.HTML
}

// Poster is a page's first steps for the wall.
type Poster struct {
	Title   string
	Lang    string // set where the page is in another language
	Caution *Signal
	Steps   []PosterStep
	More    int // steps that the poster leaves out
	Revised string
	Address string // complete; empty where the manual's is not known
	Code    Code   // of the address
}

// PosterStep is a step in few words.
type PosterStep struct {
	Text template.HTML
	Hold bool
}

// Code is a QR code as a square drawing.
type Code struct {
	Side  int // in modules, with the quiet zone
	Width int // in mm
	Path  string
}
