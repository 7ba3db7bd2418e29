package source

import (
	"cmp"
	"fmt"
	"io/fs"
	"net/url"
	"path"
	"regexp"
	"slices"
	"strings"

	"coursebook/generator/internal/fault"

	"go.yaml.in/yaml/v3"
)

// Manual is manual.yaml: what holds for the whole book.
type Manual struct {
	// Title and Subtitle hold the text of each language by its code.
	Title, Subtitle map[string]string
	// Revised is a date YYYY-MM-DD, or empty.
	Revised string
	// Address is the web address of the site, for QR codes on paper; it ends
	// with a slash. Empty when not given.
	Address string
	// Languages has at least one entry; the first is the default.
	Languages []Language
	// Stages are the parts of the pour day in order; at least one.
	Stages []Stage
	// Roles are the people who read; may be empty.
	Roles []Role
	// Thesaurus is the path of the thesaurus, SmallWords that of the list of words
	// that weigh little in a search; each may be empty.
	Thesaurus, SmallWords string
	// Terms is the path of the list of terms, or empty.
	Terms string
	// Emergency is the telephone number of the emergency services, such as 911; may be
	// empty.
	Emergency string
	// Groups are the calculators by what they are for, in order; may be empty.
	Groups []Group
	// Rules are the house rules: the crew's own numbers; may be empty.
	Rules []Rule
	// Posters are the pages that become posters, in order; may be empty.
	Posters []Poster
	// Lines holds the file's line of each key given.
	Lines map[string]int
}

// Poster names a page that is hung on the wall.
type Poster struct {
	// Slug is the page's file name without .md.
	Slug string
	// Line and Col are where the file names it.
	Line, Col int
}

// Language is one language of the manual.
type Language struct {
	// Code is its folder's name: en, es, pt-br.
	Code string
	// Name is what its readers call it.
	Name string
	// Decimal is the usual decimal mark: "point" or "comma".
	Decimal string
	// Line is the file's line.
	Line int
}

// Stage is one part of the pour day.
type Stage struct {
	// ID is what page headers name.
	ID string
	// Title and Hint hold the text of each language by its code.
	Title, Hint map[string]string
	// Line is the file's line.
	Line int
}

// Role is one kind of reader.
type Role struct {
	// ID is what page headers name.
	ID string
	// Title holds the text of each language by its code.
	Title map[string]string
	// Line is the file's line.
	Line int
}

// Group is the calculators that are for one thing.
type Group struct {
	// Title holds the text of each language by its code.
	Title map[string]string
	// List are the calculators in order; at least one.
	List []Listed
}

// Listed names one calculator.
type Listed struct {
	// ID is that of the calculator.
	ID string
	// Line and Col are where the file names it.
	Line, Col int
}

// ParseManual parses manual.yaml. It adds errors to faults; the manual then holds
// what could be read. A text that lacks one of the languages is a warning, one
// that lacks the first language an error.
func ParseManual(path string, data []byte, faults *fault.List) Manual {
	m := Manual{Lines: map[string]int{}}
	p := manualParser{reader: &reader{path: path, src: data, line: 1, faults: faults}}
	n := p.document()
	if n == nil && p.bad {
		return m
	}
	m.Lines = p.mapping(n, "manual.yaml", []key{
		{"title", true, p.texts("title", &m.Title)},
		{"subtitle", false, p.texts("subtitle", &m.Subtitle)},
		{"revised", false, p.date("revised", &m.Revised)},
		{"address", false, p.address(&m.Address)},
		{"languages", true, p.languages(&m.Languages)},
		{"stages", true, p.stages(&m.Stages)},
		{"roles", false, p.roles(&m.Roles)},
		{"emergency", false, p.telephone(&m.Emergency)},
		{"calculators", false, p.groups(&m.Groups)},
		{"rules", false, p.rules(&m.Rules)},
		{"posters", false, p.posters(&m.Posters)},
		{"thesaurus", false, p.file("thesaurus", "the content folder", ".tsv", &m.Thesaurus)},
		{"small-words", false, p.file("small-words", "the content folder", ".tsv", &m.SmallWords)},
		{"terms", false, p.file("terms", "the content folder", ".tsv", &m.Terms)},
	})
	p.checkTexts(m.Languages)
	return m
}

// manualParser remembers the texts in several languages, because the languages
// may be declared below them.
type manualParser struct {
	*reader
	localized []localized
}

// localized is one text in several languages.
type localized struct {
	what string
	node *yaml.Node
}

// texts returns a function that reads a mapping of language codes to texts into
// *into. It reports a value that is no mapping or no text, and leaves it out.
// checkTexts checks the codes later. what names the key in the faults.
func (p *manualParser) texts(what string, into *map[string]string) func(*yaml.Node) {
	return func(n *yaml.Node) {
		if n.Kind != yaml.MappingNode {
			p.wrongType(n, what, "a text for each language", "write "+what+": {en: …}")
			return
		}
		*into = map[string]string{}
		p.pairs(n, func(k, v *yaml.Node) {
			if s, ok := p.textValue(v, what+" in "+clip(k.Value)); ok {
				(*into)[k.Value] = s
			}
		})
		p.localized = append(p.localized, localized{what, n})
	}
}

// checkTexts checks each text that texts has read against the languages. It adds
// an error for an unknown language and for a missing first one, a warning for
// another missing one. It does nothing if languages is empty, which is reported
// elsewhere.
func (p *manualParser) checkTexts(languages []Language) {
	if len(languages) == 0 {
		return // said already
	}
	for _, t := range p.localized {
		missing := map[string]bool{}
		codes := make([]string, len(languages))
		for i, l := range languages {
			missing[l.Code], codes[i] = true, l.Code
		}
		for i := 0; i+1 < len(t.node.Content); i += 2 {
			k := t.node.Content[i]
			if !missing[k.Value] && !slices.Contains(codes, k.Value) {
				p.errorAt(k, "unknown-language",
					fmt.Sprintf("%s is told in %q, which is not among the languages", t.what, clip(k.Value)),
					"use one of: "+strings.Join(codes, ", "))
			}
			delete(missing, k.Value)
		}
		for i, code := range codes {
			switch {
			case missing[code] && i == 0:
				p.errorAt(t.node, "missing-language", fmt.Sprintf("%s lacks the first language, %s", t.what, code),
					"add "+code+": …")
			case missing[code]:
				p.warnAt(t.node, "missing-language", fmt.Sprintf("%s lacks the language %s", t.what, code),
					"add "+code+": …")
			}
		}
	}
}

// languages returns a function that appends the languages of a list to *into. It
// reports a bad code, a repeated one and an empty list. An entry without a good
// code is not appended.
func (p *manualParser) languages(into *[]Language) func(*yaml.Node) {
	seen := map[string]int{}
	return func(n *yaml.Node) {
		p.some(n, "languages", func(item *yaml.Node) {
			l := Language{Line: item.Line}
			p.mapping(item, "language", []key{
				{"code", true, func(n *yaml.Node) {
					if s, ok := p.textValue(n, "code"); ok && languageCode.MatchString(s) {
						l.Code = s
					} else if ok {
						p.errorAt(n, "bad-language", fmt.Sprintf("%q is not a language code", clip(s)),
							"write two or three lower-case letters: en, es, pt-br")
					}
					p.once(n, "language", l.Code, seen)
				}},
				{"name", true, p.text("name", &l.Name)},
				{"decimal", true, p.oneOf("decimal", []string{"point", "comma"}, &l.Decimal)},
			})
			if l.Code != "" {
				*into = append(*into, l)
			}
		})
	}
}

// stages returns a function that appends the stages of a list to *into. It reports
// a bad or repeated id and an empty list. An entry without a good id is not
// appended.
func (p *manualParser) stages(into *[]Stage) func(*yaml.Node) {
	seen := map[string]int{}
	return func(n *yaml.Node) {
		p.some(n, "stages", func(item *yaml.Node) {
			s := Stage{Line: item.Line}
			p.mapping(item, "stage", []key{
				{"id", true, p.newID("stage", &s.ID, seen)},
				{"title", true, p.texts("title", &s.Title)},
				{"hint", false, p.texts("hint", &s.Hint)},
			})
			if s.ID != "" {
				*into = append(*into, s)
			}
		})
	}
}

// roles returns a function that appends the roles of a list, which may be empty,
// to *into. It reports a bad or repeated id. An entry without a good id is not
// appended.
func (p *manualParser) roles(into *[]Role) func(*yaml.Node) {
	seen := map[string]int{}
	return func(n *yaml.Node) {
		p.items(n, "roles", func(item *yaml.Node) {
			r := Role{Line: item.Line}
			p.mapping(item, "role", []key{
				{"id", true, p.newID("role", &r.ID, seen)},
				{"title", true, p.texts("title", &r.Title)},
			})
			if r.ID != "" {
				*into = append(*into, r)
			}
		})
	}
}

// groups returns a function that appends the groups of a list, which may be empty, to
// *into. It reports a calculator that two groups name, and a group without any. Package
// site checks that the calculators exist.
func (p *manualParser) groups(into *[]Group) func(*yaml.Node) {
	seen := map[string]int{}
	return func(n *yaml.Node) {
		p.items(n, "calculators", func(item *yaml.Node) {
			var g Group
			p.mapping(item, "group of calculators", []key{
				{"title", true, p.texts("title", &g.Title)},
				{"list", true, func(n *yaml.Node) {
					p.some(n, "list", func(item *yaml.Node) {
						one := Listed{Line: item.Line, Col: item.Column}
						if p.newID("calculator", &one.ID, seen)(item); one.ID != "" {
							g.List = append(g.List, one)
						}
					})
				}},
			})
			if len(g.List) > 0 {
				*into = append(*into, g)
			}
		})
	}
}

// telephone is the form of a telephone number: digits, with a plus in front and single
// spaces or hyphens between them.
var telephone = regexp.MustCompile(`^\+?[0-9]+([ -][0-9]+)*$`)

// telephone returns a function that sets *into to a telephone number of at most 20
// characters. A bad one is reported and *into is unchanged.
func (p *manualParser) telephone(into *string) func(*yaml.Node) {
	return func(n *yaml.Node) {
		var s string
		if p.written("emergency", &s)(n); s == "" {
			return
		}
		if len(s) > 20 || !telephone.MatchString(s) {
			p.errorAt(n, "bad-telephone", fmt.Sprintf("emergency %q is no telephone number", clip(s)),
				"write at most 20 digits, with spaces or hyphens between them: 911")
			return
		}
		*into = s
	}
}

// posters returns a function that appends the slugs of a list, which may be empty,
// to *into. It reports a bad or repeated slug. A bad one is not appended.
func (p *manualParser) posters(into *[]Poster) func(*yaml.Node) {
	seen := map[string]int{}
	return func(n *yaml.Node) {
		p.items(n, "posters", func(item *yaml.Node) {
			one := Poster{Line: item.Line, Col: item.Column}
			if p.newID("poster", &one.Slug, seen)(item); one.Slug != "" {
				*into = append(*into, one)
			}
		})
	}
}

// some is items for a list that must not be empty: it reports an empty one.
func (p *manualParser) some(n *yaml.Node, what string, each func(*yaml.Node)) {
	if n.Kind == yaml.SequenceNode && len(n.Content) == 0 {
		p.errorAt(n, "empty", what+" is empty", "list at least one")
	}
	p.items(n, what, each)
}

// newID returns a function that sets *into to an ID as id does, and reports one
// that is a key of seen. It adds a new ID to seen with its line. what names the
// kind of entry in the faults.
func (p *manualParser) newID(what string, into *string, seen map[string]int) func(*yaml.Node) {
	read := p.id(what+" id", into)
	return func(n *yaml.Node) {
		read(n)
		p.once(n, what, *into, seen)
	}
}

// once adds id to seen with its line, or reports it at n if seen has it. An empty
// id is ignored.
func (p *manualParser) once(n *yaml.Node, what, id string, seen map[string]int) {
	if id == "" {
		return
	}
	if first := seen[id]; first > 0 {
		p.errorAt(n, "duplicate-id", fmt.Sprintf("%s %q stands twice, first on line %d", what, clip(id), first),
			"rename or remove one of the two")
		return
	}
	seen[id] = n.Line
}

// address returns a function that sets *into to a web address of a folder (http or
// https, a host, no user, query or fragment); it adds a slash at the end where there
// is none. A bad one is reported and *into is unchanged.
func (p *manualParser) address(into *string) func(*yaml.Node) {
	return func(n *yaml.Node) {
		s, ok := p.textValue(n, "address")
		if !ok {
			return
		}
		u, err := url.Parse(s)
		if err != nil || u.Scheme != "https" && u.Scheme != "http" || u.Host == "" ||
			u.User != nil || u.RawQuery != "" || u.Fragment != "" {
			p.errorAt(n, "bad-address", fmt.Sprintf("address %q is not the web address of a folder", clip(s)),
				"write https://, the host and the folder")
			return
		}
		*into = strings.TrimSuffix(s, "/") + "/"
	}
}

// file returns a function that sets *into to the slash path of a file, with the
// extension ext if that is not empty. A bad path is reported and *into is
// unchanged. what names the key, folder the folder, in the faults; the file is not
// looked for. A value that is no text is reported and empties *into.
func (r *reader) file(what, folder, ext string, into *string) func(*yaml.Node) {
	return func(n *yaml.Node) {
		s, ok := r.textValue(n, what)
		if ok && (!fs.ValidPath(s) || path.Ext(s) == "" || ext != "" && path.Ext(s) != ext) {
			r.errorAt(n, "bad-path", fmt.Sprintf("%s %q is not the path of a file in %s", what, clip(s), folder),
				"write its name, such as "+what+cmp.Or(ext, ".svg")+", with / between folders")
			return
		}
		*into = s
	}
}
