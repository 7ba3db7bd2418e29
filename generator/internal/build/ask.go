package build

import (
	"coursebook/generator/internal/fault"
	"coursebook/generator/internal/markdown"
	"coursebook/generator/search"
)

// Indexes makes the search index of every language, for judged searches. It
// returns nil when the content has errors.
func Indexes(o Options, faults *fault.List) map[string]*search.Index {
	if o.Step == nil {
		o.Step = func(string) {}
	}
	b := read(o, markdown.ParseToShow, faults)
	if faults.Errors() > 0 {
		return nil
	}
	b.makeForms()
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
