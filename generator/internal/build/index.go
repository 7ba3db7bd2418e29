package build

import (
	"coursebook/generator/internal/entries"
	"coursebook/generator/internal/output"
	"coursebook/generator/search"
	"coursebook/generator/search/stem"
)

// smallText is the size below which an index is not held to its share of the
// text: its fixed parts weigh more than the few words of a new manual.
const smallText = 25_000

// makeIndexes makes the search index of every language.
func (b *builder) makeIndexes() {
	for _, l := range b.Site.Languages {
		list := entries.Of(b.Site, l, b.Forms.In(l.Code))
		stemmer, ok := stem.For(l.Code)
		if !ok {
			stemmer = func(word string) string { return word }
		}
		data := []byte(search.Build(l.Code, list, b.synonyms[l.Code], stemmer))
		b.Assets.IndexData[l.Code] = data
		b.release.Index[l.Code] = b.asset("index-"+l.Code, "txt", data)
		if covered := search.Covered(list); covered >= smallText {
			b.weights.Indexes = append(b.weights.Indexes,
				output.Index{File: output.File{Path: b.release.Index[l.Code], Data: data}, Text: covered})
		}
	}
}
