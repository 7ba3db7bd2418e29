package theme

import (
	"bytes"
	"html/template"
	"regexp"
	"slices"
	"strings"
	"text/template/parse"
)

// settle does once what each page would otherwise do again: it takes the
// white space that only serves the reader of a template out of its text, and
// sets the theme's own texts where a template says one by its plain key.
func settle(set *template.Template, say func(key string) (string, bool)) {
	for _, t := range set.Templates() {
		if t.Tree != nil {
			settleList(t.Tree.Root, say)
		}
	}
}

func settleList(list *parse.ListNode, say func(key string) (string, bool)) {
	if list == nil {
		return
	}
	for i, n := range list.Nodes {
		switch n := n.(type) {
		case *parse.TextNode:
			n.Text = compact(n.Text)
		case *parse.ActionNode:
			if text, ok := said(n, say); ok {
				list.Nodes[i] = &parse.TextNode{NodeType: parse.NodeText, Pos: n.Pos, Text: text}
			}
		case *parse.IfNode:
			settleBranch(&n.BranchNode, say)
		case *parse.RangeNode:
			settleBranch(&n.BranchNode, say)
		case *parse.WithNode:
			settleBranch(&n.BranchNode, say)
		}
	}
	list.Nodes = joinTexts(list.Nodes)
}

func settleBranch(n *parse.BranchNode, say func(key string) (string, bool)) {
	settleList(n.List, say)
	settleList(n.ElseList, say)
}

// said is the text of an action that is just say with a key. An unknown key
// stays for the template to complain of.
func said(n *parse.ActionNode, say func(key string) (string, bool)) ([]byte, bool) {
	if len(n.Pipe.Decl) > 0 || len(n.Pipe.Cmds) != 1 || len(n.Pipe.Cmds[0].Args) != 2 {
		return nil, false
	}
	args := n.Pipe.Cmds[0].Args
	name, isName := args[0].(*parse.IdentifierNode)
	key, isText := args[1].(*parse.StringNode)
	if !isName || name.Ident != "say" || !isText {
		return nil, false
	}
	text, ok := say(key.Text)
	return Plain([]byte(template.HTMLEscapeString(text))), ok
}

// joinTexts makes one of neighbouring texts, which are written in one go.
func joinTexts(nodes []parse.Node) []parse.Node {
	kept := nodes[:0]
	for _, n := range nodes {
		t, ok := n.(*parse.TextNode)
		if ok && len(t.Text) == 0 {
			continue
		}
		if before, isText := last(kept).(*parse.TextNode); ok && isText {
			before.Text = slices.Concat(before.Text, t.Text)
			continue
		}
		kept = append(kept, n)
	}
	return kept
}

func last(nodes []parse.Node) parse.Node {
	if len(nodes) == 0 {
		return nil
	}
	return nodes[len(nodes)-1]
}

var (
	breaks = regexp.MustCompile(`[ \t]*\n\s*`)
	tagEnd = regexp.MustCompile(`</?([a-z][a-z0-9]*)[^<>]*>$`)
	tag    = regexp.MustCompile(`^</?([a-z][a-z0-9]*)`)
)

// compact takes line breaks out of a template's text: wholly beside the tag of
// a block, where no browser shows them; elsewhere a space is left. A stretch
// between two actions says nothing of what stands around it, so a template
// that wants no space there trims it ({{- and -}}).
func compact(text []byte) []byte {
	var out []byte
	done := 0
	for _, at := range breaks.FindAllIndex(text, -1) {
		out = append(out, text[done:at[0]]...)
		if !isBlock(tagEnd.FindSubmatch(text[:at[0]])) && !isBlock(tag.FindSubmatch(text[at[1]:])) && !bytes.HasSuffix(text[:at[0]], []byte("<!doctype html>")) {
			out = append(out, ' ')
		}
		done = at[1]
	}
	return append(out, text[done:]...)
}

func isBlock(match [][]byte) bool { return match != nil && blocks[string(match[1])] }

// blocks are the elements beside which white space does not show: all that
// templates use but those that stand within a line.
var blocks = func() map[string]bool {
	set := map[string]bool{}
	for _, name := range strings.Fields("html head meta link title script style template body main header footer nav search article section " +
		"aside div h1 h2 h3 h4 h5 h6 p ul ol li dl dt dd form fieldset legend details summary figure figcaption select option " +
		"table caption thead tbody tr th td path circle") {
		set[name] = true
	}
	return set
}()

// Plain writes the signs out that package html/template escapes with need only
// in markup of other habits: attributes here stand in double quotes. It works
// in place, on a page whose scripts are in files of their own.
func Plain(page []byte) []byte {
	to := page[:0]
	for {
		i := bytes.Index(page, []byte("&#"))
		if i < 0 {
			return append(to, page...)
		}
		to = append(to, page[:i]...)
		page = page[i:]
		switch {
		case bytes.HasPrefix(page, []byte("&#39;")):
			to, page = append(to, '\''), page[len("&#39;"):]
		case bytes.HasPrefix(page, []byte("&#43;")):
			to, page = append(to, '+'), page[len("&#43;"):]
		default:
			to, page = append(to, "&#"...), page[len("&#"):]
		}
	}
}
