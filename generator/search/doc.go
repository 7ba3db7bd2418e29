// Package search is the full-text search of the manual: tokenizer, index and
// query. The generator builds the index, and the module reads it in the pages, with
// the same tokenizer. The package imports few others, because it is part of the
// module: Open, Find and Excerpt together add 61 kB to the gzipped module.
//
// # Content of the index
//
// The limit of the index is a quarter of the text it covers, after gzip. The text
// alone takes more (31 % of 227 kB of trade notes, 30 % of 491 kB of the Go
// documentation), so the index does not contain it. It contains titles, headings,
// header words, and the lead of each page: its first characters, which are shown as
// an excerpt at once. The pages are stored on the device. For an excerpt around the
// match, pass the text of the section from its page to Excerpt.
//
// # Layout
//
// The index is UTF-8 text in lines. The first line holds format, version, language
// and checksum of the rest. In all others the first character is the kind of line;
// the fields are separated by tabs:
//
//	P  a page: address, title, words of its header, kind, and a u where it is
//	   urgent; the sections that follow belong to it
//	S  a section: anchor ("=" where it is the slug of the heading, "#" and
//	   the anchor otherwise), heading, lead
//	W  a small word, and its weight in tenths
//	A  a kind of page, and a phrase that asks for it
//	G  a group of the thesaurus; ">" parts its sides
//	V  all words, sorted and front-coded
//	F  for each word: the distance to the previous word with the same stem, in
//	   words of V; 0 for the first
//	N  for each word: the number of sections that contain it after the lead
//	D  those sections, as gaps
//	T  the number of occurrences there, in four levels: 1, 2, 3 to 4, 5 and more
//
// Words of titles, headings, header words and leads are counted when the index is
// opened, from the text that the index contains. Numbers have variable length, in
// printable characters (see encode.go). Values of one kind are adjacent, so that
// gzip adapts to each.
//
// # Ranking
//
// A page is the document: the evidence of its sections is added up. Its score is BM25F
// over title, headings, header words and text, and parts for the words that it has at
// all, for those that one section has together, and for a title, heading or header word
// that is the query as a whole, in any order; constants and sources are in find.go. The
// score is multiplied by shares of the kind of page. Then the best place in the page
// is chosen.
//
// A word of the query matches, in order of weight, the same word, words with the same
// stem, words with another known ending, what the thesaurus gives for it, words that
// begin with it, and words at an edit distance of none (they sound alike), one or two;
// the weights are in query.go. A small word weighs as its list says, an amount beside words little. A word
// without a match is ignored. A reader of the index has no stemmer: an unknown form
// (pumped) matches known ones (pump, pumping) by the endings in which the words of a
// stem differ in this index.
package search
