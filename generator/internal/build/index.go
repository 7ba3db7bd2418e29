package build

import (
	"coursebook/generator/internal/entries"
	"coursebook/generator/internal/fault"
	"coursebook/generator/internal/markdown"
	"coursebook/generator/internal/output"
	"coursebook/generator/search"
	"coursebook/generator/search/stem"
)

// leastIndexText is the size of the indexed text, in bytes, from which the budget of an
// index applies. Below it titles and leads, which the index holds whole, are most of
// the text: the calculators alone have some 20,000 bytes of it.
const leastIndexText = 40_000

// makeIndexes adds the search index of every language. A language without a
// stemmer is indexed by whole words.
func (b *builder) makeIndexes() {
	for _, l := range b.Site.Languages {
		asked, lists := b.searchLists(l.Code)
		list := entries.Of(b.Site, l, b.Forms.In(l.Code), asked)
		stemmer, ok := stem.For(l.Code)
		if !ok {
			stemmer = func(word string) string { return word }
		}
		data := []byte(search.Build(l.Code, list, lists, stemmer))
		b.Assets.IndexData[l.Code] = data
		b.release.Index[l.Code] = b.asset("index-"+l.Code, "txt", data)
		if covered := search.Covered(list); covered >= leastIndexText {
			b.weights.Indexes = append(b.weights.Indexes,
				output.Index{File: output.File{Path: b.release.Index[l.Code], Data: data}, Text: covered})
		}
	}
}

// searchLists returns what the thesaurus and the list of small words hold of a
// language: the words by which calculators are asked for, and the lists of the index.
func (b *builder) searchLists(lang string) (asked map[string][]string, lists search.Lists) {
	asked = map[string][]string{}
	for _, w := range b.smallWords[lang] {
		lists.Small = append(lists.Small, search.Small{Word: w.Word, Tenth: w.Tenth})
	}
	t := b.thesaurus[lang]
	if t == nil {
		return asked, lists
	}
	for _, g := range t.Groups {
		lists.Groups = append(lists.Groups, search.Group{From: g.From, To: g.To})
	}
	lists.Families = t.Families
	for _, a := range t.Asked {
		if a.Calculator != "" {
			asked[a.Calculator] = append(asked[a.Calculator], a.Words...)
		} else {
			lists.Asks = append(lists.Asks, search.Ask{Kind: a.Kind, Phrases: a.Words})
		}
	}
	return asked, lists
}

// Indexes returns the search index of every language by its code. If the content
// has errors, it adds them to faults and returns nil.
func Indexes(o Options, faults *fault.List) map[string]*search.Index {
	b := readForSearch(o, faults)
	if b == nil {
		return nil
	}
	b.release.Index, b.Assets.IndexData = map[string]string{}, map[string][]byte{}
	b.makeIndexes()
	indexes := map[string]*search.Index{}
	for lang, data := range b.Assets.IndexData {
		x, err := search.Open(string(data))
		if err != nil {
			b.fail(err)
			return nil
		}
		indexes[lang] = x
	}
	return indexes
}

// SearchEntries returns what the search of each language finds, by the code of the
// language. If the content has errors, it adds them to faults and returns nil.
func SearchEntries(o Options, faults *fault.List) map[string][]search.Entry {
	b := readForSearch(o, faults)
	if b == nil {
		return nil
	}
	list := map[string][]search.Entry{}
	for _, l := range b.Site.Languages {
		asked, _ := b.searchLists(l.Code)
		list[l.Code] = entries.Of(b.Site, l, b.Forms.In(l.Code), asked)
	}
	return list
}

// readForSearch reads the content as the indexes need it. If it has errors, it adds
// them to faults and returns nil.
func readForSearch(o Options, faults *fault.List) *builder {
	if o.Step == nil {
		o.Step = func(string) {}
	}
	b := read(o, markdown.ParseToShow, faults)
	if faults.Errors() > 0 {
		return nil
	}
	b.makeForms()
	return b
}
