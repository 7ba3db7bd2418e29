package protocol

// hits is how many results a page shows.
const hits = 10

// search answers a query from the index of a language.
func (s *Server) search(q request, w *writer) string {
	index := s.indexes[q.one("lang").at(1)]
	if index == nil {
		return "the index of this language is not loaded"
	}
	for _, h := range index.Find(q.one("q").at(1), hits) {
		w.put("hit", h.URL, h.Title, h.Section, h.Excerpt)
	}
	return ""
}

// mark cuts the excerpt that answers a query out of a section's text, which
// the page takes from the page it keeps, and marks the words that match.
func (s *Server) mark(q request, w *writer) string {
	index := s.indexes[q.one("lang").at(1)]
	if index == nil {
		return "the index of this language is not loaded"
	}
	w.put("excerpt", index.Excerpt(q.one("text").at(1), q.one("q").at(1)))
	return ""
}
