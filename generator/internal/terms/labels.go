package terms

import (
	"encoding/xml"
	"strings"
)

// Labels returns the texts of an SVG picture that a reader sees or hears: labels, title
// and description, each with its place. Nothing is returned after a fault of the markup,
// which is reported where pictures are read.
func Labels(file string, svg []byte) []Text {
	d := xml.NewDecoder(strings.NewReader(string(svg)))
	var texts []Text
	depth := 0 // of elements that hold text
	for {
		line, col := d.InputPos()
		token, err := d.Token()
		if err != nil {
			return texts
		}
		switch t := token.(type) {
		case xml.StartElement:
			if depth > 0 || holdsText(t.Name.Local) {
				depth++
			}
		case xml.EndElement:
			depth = max(depth-1, 0)
		case xml.CharData:
			if s := string(t); depth > 0 && strings.TrimSpace(s) != "" {
				texts = append(texts, Text{File: file, Line: line, Col: col, Text: s})
			}
		}
	}
}

func holdsText(element string) bool {
	return element == "text" || element == "title" || element == "desc"
}
