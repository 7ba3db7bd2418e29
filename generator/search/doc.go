// Package search finds sections of the manual: analyser, index and query. The
// same code writes the index at build time and reads it in the pages, so both
// sides split words alike. It imports little, because it travels in the
// module: Open, Find and Excerpt together add 61 kB to the gzipped module.
//
// # What the index holds, and why not the text
//
// The index may take a quarter of the text it covers, gzipped. The text alone
// takes more (31 % of 227 kB of trade notes, 30 % of 491 kB of Go's own
// documentation), so it cannot hold the text. It holds the titles, headings
// and the first 80 characters of each section, which serve as excerpt at once.
// The pages themselves are on the device: for an excerpt around the match, cut
// the section's text from its page and hand it to Excerpt.
//
// Measured at sections of 400 to 800 characters, gzip -9, leads included:
//
//	text               sections  text kB  index kB  share   without leads
//	trade notes             284      227      46.0  20.2 %  16.8 %
//	Go documentation        911      491      73.5  15.0 %  10.9 %
//	trade notes, part       116      102      19.8  19.3 %  16.3 %
//	trade notes, part        56       51      10.8  21.1 %  17.5 %
//	trade notes, part        12       10       2.5  24.1 %  20.3 %
//	Go docs, part            15       10       3.1  29.2 %  24.8 %
//
// The table was measured with leads of 80 characters. The manual itself has
// many short sections and synonyms, and came to 27 % with those; since the
// page gives the excerpt anyway, leads are 32 characters long: 23 %. Below
// about 25 kB of text the vocabulary outweighs everything and the quarter
// cannot be promised.
//
// # Layout
//
// The file is UTF-8 text in lines. The first names format, version, language
// and checksum of the rest. Then, the first character of a line telling its
// kind, fields parted by tabs:
//
//	P  a page: address, title, synonyms of its header, kind, and a 2 where
//	   it says again what another page says; holds for the sections that
//	   follow
//	S  a section: anchor ("=" where it is the slug of the heading, "#" and
//	   the anchor otherwise), heading, lead
//	G  synonyms of one meaning
//	V  all words, sorted and front-coded
//	F  for each word: how many words back its last relative by stem is
//	N  for each word: in how many sections it is after the lead
//	D  those sections, as gaps
//	T  how often it is there, in four levels: 1, 2, 3 to 4, 5 and more
//
// Words of titles, headings, synonyms and leads are counted from their text
// when the index is opened, and so cost nothing twice. Numbers are variable in
// length, in printable characters (see pack). Values of one kind are in one block,
// so that gzip adapts to each.
//
// # Ranking
//
// BM25F over title, heading, header words and text; constants and sources
// are in find.go. A word of the query is answered, in falling weight, by
// the word itself, other forms of its stem, learnt endings, words it begins,
// synonyms, and words one or two edits away; weights are in query.go.
// Sections that answer every word precede those that answer some. A word
// that nothing answers is ignored. Where no stemmer is at hand, an unknown
// form (pumped) is brought to known ones (pump, pumping) by the endings that
// the families of this very index differ in.
package search
