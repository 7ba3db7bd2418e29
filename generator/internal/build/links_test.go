package build

import (
	"bytes"
	"encoding/json"
	"net/url"
	"path"
	"slices"
	"strings"
	"testing"

	"golang.org/x/net/html"

	"coursebook/generator/internal/bundle"
	"coursebook/generator/internal/render"
)

func parse(t *testing.T, data []byte) *html.Node {
	t.Helper()
	doc, err := html.Parse(bytes.NewReader(data))
	if err != nil {
		t.Fatal(err)
	}
	return doc
}

// elements lists the elements with a name in order; all elements if it is empty.
func elements(doc *html.Node, name string) []*html.Node {
	var list []*html.Node
	for n := range doc.Descendants() {
		if n.Type == html.ElementNode && (name == "" || n.Data == name) {
			list = append(list, n)
		}
	}
	return list
}

func attr(n *html.Node, name string) string {
	for _, a := range n.Attr {
		if a.Key == name {
			return a.Val
		}
	}
	return ""
}

func text(n *html.Node) string {
	var b strings.Builder
	for d := range n.Descendants() {
		if d.Type == html.TextNode {
			b.WriteString(d.Data)
		}
	}
	return b.String()
}

// idsOf lists the ids of a page, and reports one that occurs twice in a tree.
// The content of a template element is a separate tree (WHATWG HTML, 4.12.3).
func idsOf(t *testing.T, name string, doc *html.Node) map[string]bool {
	t.Helper()
	trees := map[*html.Node]map[string]bool{nil: {}}
	for _, e := range elements(doc, "") {
		id, tree := attr(e, "id"), templateOf(e)
		if trees[tree] == nil {
			trees[tree] = map[string]bool{}
		}
		if id != "" && trees[tree][id] {
			t.Errorf("%s: the id %s occurs twice", name, id)
		}
		trees[tree][id] = true
	}
	return trees[nil]
}

func templateOf(e *html.Node) *html.Node {
	for a := range e.Ancestors() {
		if a.Data == "template" {
			return a
		}
	}
	return nil
}

// addresses are the attributes of HTML (WHATWG, index of attributes) and of this theme's
// script that contain addresses or ids.
var addresses = []string{
	"href",
	"src",
	"srcset",
	"poster",
	"action",
	"formaction",
	"data",
	"cite",
	"ping",
	"background",
	"manifest",
	"xlink:href",
}

// loads reports whether a browser loads the address of an attribute.
func loads(element, attribute string) bool { return element != "a" && element != "area" }

const outbound = "https://example.org/standard?a=1&b=2#part"

// Every address of every page is of a file of the site and, if it has a hash, of an id in
// it. Nothing is loaded from another host, no address begins at the server's root, and
// only links of the author lead out of the site.
func TestNoDeadLinks(t *testing.T) {
	site := buildGood(t)
	ids := map[string]map[string]bool{}
	for _, f := range site.Files {
		ids[f.Path] = map[string]bool{}
		if path.Ext(f.Path) == ".html" {
			ids[f.Path] = idsOf(t, f.Path, parse(t, f.Data))
		}
		ids[f.Path][""] = true
	}
	left, followed := 0, 0
	for _, f := range site.Files {
		if path.Ext(f.Path) != ".html" {
			continue
		}
		for _, e := range elements(parse(t, f.Data), "") {
			for _, name := range addresses {
				at := attr(e, name)
				if at == "" {
					continue
				}
				u, err := url.Parse(at)
				switch {
				case err != nil:
					t.Errorf("%s: %v", f.Path, err)
				case at == outbound && !loads(e.Data, name):
					left++
				case u.Scheme == "data" && e.Data == "img":
				case u.Scheme != "" || u.Host != "" || strings.HasPrefix(u.Path, "/") || u.RawQuery != "":
					t.Errorf("%s: <%s %s=%q> leaves the site", f.Path, e.Data, name, at)
				default:
					followed++
					to := f.Path
					if u.Path != "" {
						to = path.Join(path.Dir(f.Path), u.Path)
					}
					if f.Path == "404.html" { // sent for addresses in any folder
						to = strings.TrimLeft(to, "./")
					}
					if !ids[to][u.Fragment] {
						t.Errorf("%s: <%s %s=%q> is dead", f.Path, e.Data, name, at)
					}
				}
			}
		}
	}
	if left != 1 || followed < 200 {
		t.Errorf("%d links leave the site, %d were followed", left, followed)
	}
}

// Every page has one h1, a title, a language and the policy, and no script or
// style that the policy would block.
func TestEveryPage(t *testing.T) {
	site := buildGood(t)
	for _, f := range site.Files {
		if path.Ext(f.Path) != ".html" {
			continue
		}
		doc := parse(t, f.Data)
		if n := len(elements(doc, "h1")); n != 1 {
			t.Errorf("%s has %d h1", f.Path, n)
		}
		if titles := elements(doc, "title"); len(titles) == 0 || strings.TrimSpace(text(titles[0])) == "" {
			t.Errorf("%s has no title", f.Path)
		}
		lang := "en"
		if strings.HasPrefix(f.Path, "es/") {
			lang = "es"
		}
		if got := attr(elements(doc, "html")[0], "lang"); got != lang {
			t.Errorf("%s is in %s", f.Path, got)
		}
		if got := policyOf(doc); got != render.Policy {
			t.Errorf("%s: policy %s", f.Path, got)
		}
		if n := len(elements(doc, "style")); n > 0 {
			t.Errorf("%s: %d style elements", f.Path, n)
		}
		for _, e := range elements(doc, "") {
			if e.Data == "script" && attr(e, "src") == "" && attr(e, "type") != "text/plain" && text(e) != "" &&
				!strings.HasPrefix(attr(e, "type"), "application/") {
				t.Errorf("%s: an inline script", f.Path)
			}
			for _, a := range e.Attr {
				if a.Key == "style" || strings.HasPrefix(a.Key, "on") {
					t.Errorf("%s: <%s %s>", f.Path, e.Data, a.Key)
				}
			}
		}
	}
}

func policyOf(doc *html.Node) string {
	for _, m := range elements(doc, "meta") {
		if strings.EqualFold(attr(m, "http-equiv"), "Content-Security-Policy") {
			return attr(m, "content")
		}
	}
	return ""
}

// The addresses in the style sheets and the app manifest are of files of the site.
func TestOtherReferences(t *testing.T) {
	site := buildGood(t)
	for _, f := range site.Files {
		if path.Ext(f.Path) == ".css" &&
			(bytes.Contains(f.Data, []byte("http")) || bytes.Contains(f.Data, []byte("@import")) ||
				bytes.Contains(f.Data, []byte("url(/"))) {
			t.Errorf("%s loads something from another host", f.Path)
		}
	}
	var app struct {
		Icons []struct{ Src string }
	}
	if err := json.Unmarshal(file(site, "app.webmanifest"), &app); err != nil || len(app.Icons) == 0 {
		t.Fatal(err, app)
	}
	for _, icon := range app.Icons {
		if file(site, strings.TrimPrefix(icon.Src, "./")) == nil {
			t.Errorf("the icon %s is not in the site", icon.Src)
		}
	}
}

// The one-file edition loads nothing, its policy allows exactly its own blocks, and its
// links are to its ids.
func TestPocket(t *testing.T) {
	doc := parse(t, buildGood(t).Pocket)
	policy := policyOf(doc)
	for _, want := range []string{"default-src 'none'", "connect-src 'none'", "img-src data:", "base-uri 'none'",
		"form-action 'none'"} {
		if !strings.Contains(policy, want) {
			t.Errorf("the policy lacks %s: %s", want, policy)
		}
	}
	if strings.Contains(policy, "unsafe-inline") || strings.Contains(policy, "'self'") {
		t.Errorf("the policy allows too much: %s", policy)
	}
	hashes := 0
	for _, e := range elements(doc, "") {
		if e.Data == "style" || e.Data == "script" && attr(e, "type") == "" {
			hashes++
			if hash := bundle.Hash([]byte(text(e))); !strings.Contains(policy, e.Data+"-src "+hash) {
				t.Errorf("the policy does not allow the %s of %d bytes, %s", e.Data, len(text(e)), hash)
			}
		}
	}
	if hashes != 2 || strings.Count(policy, "'sha256-") != 2 {
		t.Errorf("%d blocks, policy %s", hashes, policy)
	}
	ids := idsOf(t, "pocket", doc)
	for _, want := range []string{"module", "index-en", "index-es", "words-es", "en.fill", "es.fill", "en.all"} {
		if !ids[want] {
			t.Errorf("nothing has the id %s", want)
		}
	}
	for _, e := range elements(doc, "") {
		for _, name := range slices.Concat(addresses, []string{"for", "aria-labelledby", "aria-describedby"}) {
			at := attr(e, name)
			switch {
			case at == "" || at == outbound && e.Data == "a" || strings.HasPrefix(at, "data:image/"):
			case name == "for" || strings.HasPrefix(name, "aria-"):
				for _, id := range strings.Fields(at) {
					if !ids[id] {
						t.Errorf("<%s %s=%q> has no target", e.Data, name, at)
					}
				}
			case !strings.HasPrefix(at, "#") || !ids[at[1:]]:
				t.Errorf("<%s %s=%q> is dead in this file", e.Data, name, at)
			}
		}
	}
}
