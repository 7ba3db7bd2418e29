package render

import (
	"fmt"
	"html/template"

	"coursebook/generator/internal/fault"
	"coursebook/generator/internal/page"
	"coursebook/generator/internal/site"
	"coursebook/generator/internal/theme"
)

// talkSlug is the page whose card is the first: the talk to the whole crew
// before a pour. In a manual without such a page the cards are in the order of
// the day.
const talkSlug = "crew-talk"

// mostOnCard is the most checks a card holds: a list of fewer than ten is
// read to its end (Gawande, The Checklist Manifesto, 2009; from memory).
const mostOnCard = 9

// cardPages are the pages that become cards, the crew talk first and then in
// the order of the day.
func cardPages(l *site.Language) []site.Entry {
	var first, rest []site.Entry
	add := func(list []site.Entry) {
		for _, e := range list {
			switch {
			case !isCardPage(e.Page):
			case e.Page.Slug == talkSlug:
				first = append(first, e)
			default:
				rest = append(rest, e)
			}
		}
	}
	for _, st := range l.Stages {
		add(st.Pages)
	}
	add(l.Loose)
	return append(first, rest...)
}

// rowsOnSheet is how many rows a sheet has when it is cut once each way.
const rowsOnSheet = 2

// sheets lays the cards out on sheets.
func sheets(m *Manual, l *site.Language) []theme.Sheet {
	var cards []theme.Card
	for _, e := range cardPages(l) {
		cards = append(cards, cardsOf(m, e)...)
	}
	var sheets []theme.Sheet
	for i, row := range inRows(cards) {
		if i%rowsOnSheet == 0 {
			sheets = append(sheets, theme.Sheet{})
		}
		s := &sheets[len(sheets)-1]
		s.Rows = append(s.Rows, row)
	}
	return sheets
}

// inRows puts two cards in a row, or a wide one alone. Where a wide card would
// leave half a row empty, the next narrow card goes before it.
func inRows(cards []theme.Card) [][]theme.Card {
	var rows [][]theme.Card
	half := -1 // the row that has a place left
	for _, c := range cards {
		switch {
		case c.Wide:
			rows = append(rows, []theme.Card{c})
		case half >= 0:
			rows[half] = append(rows[half], c)
			half = -1
		default:
			half = len(rows)
			rows = append(rows, []theme.Card{c})
		}
	}
	return rows
}

// cardsOf are a page's cards: one, or two halves where it has more checks
// than a card holds.
func cardsOf(m *Manual, e site.Entry) []theme.Card {
	p := e.Page
	parts := (len(p.Checks) + mostOnCard - 1) / mostOnCard
	cards := make([]theme.Card, 0, parts)
	for i := range parts {
		c := theme.Card{Title: p.Header.Title, Lang: langOf(e), When: line(p, p.Header.When, 0),
			Caution: firstCaution(m, p), Revised: revisedOf(m, p), Address: addressOf(m, p)}
		if parts > 1 {
			c.Part, c.Of = i+1, parts
		}
		for _, check := range share(p.Checks, i, parts) {
			c.Checks = append(c.Checks, line(p, check.Text, check.Lead))
		}
		c.Wide = p.Slug == talkSlug || narrow.needs(c) > narrow.height
		cards = append(cards, c)
	}
	return cards
}

// share is part i of the checks, parted as evenly as whole checks allow.
func share(checks []page.Check, i, parts int) []page.Check {
	return checks[len(checks)*i/parts : len(checks)*(i+1)/parts]
}

// measure is how text runs on a card: letters in a line of each kind, and
// heights in points. The figures follow the theme's style sheet and a wide
// typeface; a test in a browser holds that no card of the manual runs over.
type measure struct {
	title, text, bold, check, foot int // letters in a line
	big, line                      int // height of a line of the title, of any other
	height                         int // of the card
}

var (
	narrow = measure{title: 27, text: 48, bold: 41, check: 46, foot: 42, big: 17, line: 12, height: 345}
	broad  = measure{title: 44, text: 90, bold: 78, check: 88, foot: 95, big: 22, line: 14, height: 345}
)

// Heights in points that do not depend on the text.
const (
	cardFrame   = 34 // gaps and rules
	signalFrame = 30 // signal word and frame of a caution
	checkFrame  = 5  // rule and space of a check
	footLine    = 10 // a line of the imprint
)

// dateOnFoot is as long as the text before a card's address, with the edition
// that the script writes in the place of the longer page id.
const dateOnFoot = "Revisado 2026-11-25. Edición 0123456789. "

// needs is the height in points of a card's text.
func (m measure) needs(c theme.Card) int {
	n := cardFrame + m.big*rows(template.HTML(c.Title), m.title) + m.line*rows(c.When, m.text)
	if c.Caution != nil {
		n += signalFrame + m.line*rows(c.Caution.Text, m.bold)
	}
	n += footLine * rows(template.HTML(c.Address), m.foot)
	if len(dateOnFoot)+len(c.Address) > m.foot {
		n += footLine // the address begins on a line of its own
	}
	for _, check := range c.Checks {
		n += checkFrame + m.line*rows(check, m.check)
	}
	return n
}

// rows is how many lines of so many letters a text takes.
func rows(text template.HTML, letters int) int {
	n, inTag := 0, false
	for _, r := range string(text) {
		switch {
		case r == '<':
			inTag = true
		case r == '>' && inTag:
			inTag = false
		case !inTag:
			n++
		}
	}
	return (n + letters - 1) / letters
}

func checkCards(m *Manual, p *site.Page, faults *fault.List) {
	if n := len(p.Checks); n > mostOnCard {
		warn(m, faults, p.File, p.Checks[mostOnCard].Line, "card-many",
			fmt.Sprintf("%d checks on a page; its pocket card holds %d and is split over two cards", n, mostOnCard),
			"keep the checks that nobody may miss, or make two pages of it")
	}
	for _, c := range cardsOf(m, site.Entry{Page: p}) {
		if n := broad.needs(c); c.Wide && n > broad.height {
			warn(m, faults, p.File, p.Checks[0].Line, "card-full",
				fmt.Sprintf("the text of the pocket card is %d %% of what a wide card holds", 100*n/broad.height),
				"shorten the checks and the first caution")
			return
		}
	}
}
