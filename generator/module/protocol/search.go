package protocol

// hits is the number of results that a page shows.
const hits = 10

// search writes the first results of a query in the index of a language. It
// returns the text of an error, or "".
func (s *Server) search(q request, w *writer) string {
	index := s.indexes[q.first("lang").at(1)]
	if index == nil {
		return "the index of this language is not loaded"
	}
	for _, h := range index.Find(q.first("q").at(1), hits) {
		w.put("hit", h.URL, h.Title, h.Section, h.Excerpt)
	}
	return ""
}

// mark writes the excerpt of a section's text with the words of a query marked.
// The page reads the text from the stored page of the section. It returns the text
// of an error, or "".
func (s *Server) mark(q request, w *writer) string {
	index := s.indexes[q.first("lang").at(1)]
	if index == nil {
		return "the index of this language is not loaded"
	}
	w.put("excerpt", index.Excerpt(q.first("text").at(1), q.first("q").at(1)))
	return ""
}
