package protocol

import (
	"strconv"

	"coursebook/generator/search"
)

// hits is the number of results that a page shows.
const hits = 10

// search writes the first results of a query in the index of a language, and the
// number of all pages found. It returns the text of an error, or "".
func (s *Server) search(q request, w *writer) string {
	index := s.indexes[q.first("lang").at(1)]
	if index == nil {
		return noIndex
	}
	found, all := index.Find(q.first("q").at(1), hits)
	w.putHits(found, all)
	return ""
}

const noIndex = "the index of this language is not loaded"

// urgent is the mark of a page that helps when something has gone wrong, in the place
// of its kind.
const urgent = "urgent"

// pages writes all pages of a kind, or the urgent ones, in the order of the manual.
// It returns the text of an error, or "".
func (s *Server) pages(q request, w *writer) string {
	index := s.indexes[q.first("lang").at(1)]
	if index == nil {
		return noIndex
	}
	kind := q.first("kind").at(1)
	list := index.Pages(func(k string, isUrgent bool) bool { return k == kind || isUrgent && kind == urgent })
	w.putHits(list, len(list))
	return ""
}

// putHits writes hits and the number of all that were found.
func (w *writer) putHits(list []search.Hit, all int) {
	for _, h := range list {
		mark := h.Kind
		if h.Urgent {
			mark = urgent
		}
		w.put("hit", h.URL, h.Title, h.Section, h.Excerpt, mark)
	}
	w.put("found", strconv.Itoa(all))
}

// mark writes the excerpt of a section's text with the words of a query marked.
// The page reads the text from the stored page of the section. It returns the text
// of an error, or "".
func (s *Server) mark(q request, w *writer) string {
	index := s.indexes[q.first("lang").at(1)]
	if index == nil {
		return noIndex
	}
	w.put("excerpt", index.Excerpt(q.first("text").at(1), q.first("q").at(1)))
	return ""
}
