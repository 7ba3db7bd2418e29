package page

// Resolution is what rendering a page needs to know of the rest of the
// manual, once every link and picture has been found.
type Resolution struct {
	// Links answers Page.Links, place by place.
	Links []Target
	// Pictures holds the images of Page.Pictures by file name.
	Pictures map[string]Image
	// Terms finds the glossary's terms in running text; nil links none.
	Terms *Vocabulary
	// Glossary is what precedes a term's ID in a link to it:
	// "glossary.html#".
	Glossary string
	// Prefix precedes every id that the page's HTML declares, so that
	// many pages can share one file; empty on the site. Links are complete as
	// they are and take no prefix.
	Prefix string
}

// Target is where a link leads.
type Target struct {
	// Href is the complete address: relative, or https.
	Href string
	// Outbound leads out of the manual.
	Outbound bool
	// Lang is the language of the page that replaces a missing twin;
	// empty when it is the reader's own.
	Lang string
	// Missing leads nowhere; the text has no link.
	Missing bool
}

// Image is a picture as published, with its size in CSS pixels; 0 is unknown.
type Image struct {
	Src           string
	Width, Height int
}
