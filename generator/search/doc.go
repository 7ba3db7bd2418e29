// Package search is the full-text search of the manual: tokenizer, index and
// query. The generator builds the index, and the module reads it in the pages, with
// the same tokenizer. The package imports few others, because it is part of the
// module: Open, Find and Excerpt together add 61 kB to the gzipped module.
//
// # Content of the index
//
// The limit of the index is a quarter of the text it covers, after gzip. The text
// alone takes more (31 % of 227 kB of trade notes, 30 % of 491 kB of the Go
// documentation), so the index does not contain it. It contains titles, headings
// and leads: the first characters of each section, which are shown as an excerpt at
// once. The pages are stored on the device. For an excerpt around the match, pass
// the text of the section from its page to Excerpt.
//
// Sizes after gzip -9 with leads of 80 characters, for sections of 400 to 800
// characters:
//
//	text               sections  text kB  index kB  share   without leads
//	trade notes             284      227      46.0  20.2 %  16.8 %
//	Go documentation        911      491      73.5  15.0 %  10.9 %
//	trade notes, part       116      102      19.8  19.3 %  16.3 %
//	trade notes, part        56       51      10.8  21.1 %  17.5 %
//	trade notes, part        12       10       2.5  24.1 %  20.3 %
//	Go docs, part            15       10       3.1  29.2 %  24.8 %
//
// The manual has many short sections and synonyms: 27 % with leads of 80
// characters. Its leads have 32 characters, because the page gives the excerpt: 23
// %. Below about 25 kB of text the vocabulary dominates, and the index may exceed a
// quarter.
//
// # Layout
//
// The index is UTF-8 text in lines. The first line holds format, version, language
// and checksum of the rest. In all others the first character is the kind of line;
// the fields are separated by tabs:
//
//	P  a page: address, title, synonyms of its header, kind, and a 2 where it is
//	   secondary; the sections that follow belong to it
//	S  a section: anchor ("=" where it is the slug of the heading, "#" and
//	   the anchor otherwise), heading, lead
//	G  a group of synonyms
//	V  all words, sorted and front-coded
//	F  for each word: the distance to the previous word with the same stem, in
//	   words of V; 0 for the first
//	N  for each word: the number of sections that contain it after the lead
//	D  those sections, as gaps
//	T  the number of occurrences there, in four levels: 1, 2, 3 to 4, 5 and more
//
// Words of titles, headings, synonyms and leads are counted when the index is
// opened, from the text that the index contains. Numbers have variable length, in
// printable characters (see encode.go). Values of one kind are adjacent, so that
// gzip adapts to each.
//
// # Ranking
//
// BM25F over title, heading, header words and text; constants and sources are in
// find.go. A word of the query matches, in order of weight, the same word, words
// with the same stem, words with another known ending, words that begin with it,
// synonyms, and words at an edit distance of one or two; the weights are in
// query.go. Sections that match every word rank before those that match some. A
// word without a match is ignored. A reader of the index has no stemmer: an unknown
// form (pumped) matches known ones (pump, pumping) by the endings in which the
// words of a stem differ in this index.
package search
