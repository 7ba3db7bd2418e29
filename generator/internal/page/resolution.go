package page

// Resolution holds the data that rendering a page needs from the rest of the
// manual: the targets of its links, its pictures and the terms of the glossary.
type Resolution struct {
	// Links holds the target of each link, with the index of Page.Links.
	Links []Target
	// Pictures holds the images of Page.Pictures by file name.
	Pictures map[string]Image
	// Terms finds the glossary's terms in running text. nil: no term is linked.
	Terms *Vocabulary
	// Glossary is the address of a term without its ID, such as "glossary.html#".
	Glossary string
	// Prefix is put before every id that the page's HTML declares, so that many
	// pages can share one file. It is empty on the site. Links need no prefix.
	Prefix string
}

// Target is the resolved target of a link.
type Target struct {
	// Href is the complete address: relative, or https.
	Href string
	// Outbound is true for an address outside the manual.
	Outbound bool
	// Lang is the language of the target where it is not that of the linking page,
	// because a translation is missing; empty otherwise.
	Lang string
	// Missing is true where there is no target: the text is not linked.
	Missing bool
}

// Image is a published picture, with its size in CSS pixels; 0 is unknown.
type Image struct {
	Src           string
	Width, Height int
}
