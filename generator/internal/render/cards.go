package render

import (
	"fmt"
	"html/template"

	"coursebook/generator/internal/fault"
	"coursebook/generator/internal/page"
	"coursebook/generator/internal/site"
	"coursebook/generator/internal/theme"
)

// talkSlug is the slug of the page whose card is the first: the talk to the whole crew
// before a pour.
const talkSlug = "crew-talk"

// mostOnCard is the maximum number of checks on a card: a list of fewer than ten is read
// to its end (Gawande, The Checklist Manifesto, 2009; from memory).
const mostOnCard = 9

// cardPages returns the pages of a language with cards: the crew talk, then the
// others in the order of the day.
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

// rowsOnSheet is the number of rows of a sheet, which is cut once each way.
const rowsOnSheet = 2

// sheets returns the sheets of cards of a language.
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

// inRows returns rows of two narrow cards or of one wide card. A narrow card joins the row
// that has one narrow card, even if wide cards follow that row.
func inRows(cards []theme.Card) [][]theme.Card {
	var rows [][]theme.Card
	half := -1 // the row with one narrow card; -1 if there is none
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

// cardsOf returns the cards of a page: one for each mostOnCard checks.
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
		c.Wide = p.Slug == talkSlug || narrow.textHeight(c) > narrow.height
		cards = append(cards, c)
	}
	return cards
}

// share returns part i, from 0, of the checks, which are divided into parts as
// evenly as possible.
func share(checks []page.Check, i, parts int) []page.Check {
	return checks[len(checks)*i/parts : len(checks)*(i+1)/parts]
}

// cardSize is the letters in a line of each kind of text on a card, and heights in
// points. They are estimates for the theme's style sheet and a wide typeface. A browser
// test checks that no card of the manual overflows.
type cardSize struct {
	title, text, bold, check, foot int // letters in a line
	big, line                      int // height of a line of the title and of other text
	height                         int // of the card
}

var (
	narrow = cardSize{title: 27, text: 48, bold: 41, check: 46, foot: 42, big: 17, line: 12, height: 345}
	broad  = cardSize{title: 44, text: 90, bold: 78, check: 88, foot: 95, big: 22, line: 14, height: 345}
)

// Heights in points that do not depend on the text.
const (
	cardFrame   = 34 // margins and rules
	signalFrame = 30 // signal word and frame of a caution
	checkFrame  = 5  // rule and space of a check
	footLine    = 10 // a line of the imprint
)

// imprint is a longest text before the address at the foot of a card. It has the edition,
// by which the script replaces the longer page id.
const imprint = "Revisado 2026-11-25. Edición 0123456789. "

// textHeight returns an estimate of the height of a card's text, in points.
func (s cardSize) textHeight(c theme.Card) int {
	n := cardFrame + s.big*rows(template.HTML(c.Title), s.title) + s.line*rows(c.When, s.text)
	if c.Caution != nil {
		n += signalFrame + s.line*rows(c.Caution.Text, s.bold)
	}
	n += footLine * rows(template.HTML(c.Address), s.foot)
	if len(imprint)+len(c.Address) > s.foot {
		n += footLine // the address begins on the next line
	}
	for _, check := range c.Checks {
		n += checkFrame + s.line*rows(check, s.check)
	}
	return n
}

// rows returns the number of lines of a text without its tags, for so many letters
// in a line.
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

// checkCards adds a warning to faults for a page with more checks than one card
// has, and for a card that overflows.
func checkCards(m *Manual, p *site.Page, faults *fault.List) {
	if n := len(p.Checks); n > mostOnCard {
		warn(m, faults, p.File, p.Checks[mostOnCard].Line, "card-many",
			fmt.Sprintf("%d checks on a page; its pocket card holds %d and is split over two cards", n, mostOnCard),
			"keep the checks that nobody may miss, or make two pages of it")
	}
	for _, c := range cardsOf(m, site.Entry{Page: p}) {
		if n := broad.textHeight(c); c.Wide && n > broad.height {
			warn(m, faults, p.File, p.Checks[0].Line, "card-full",
				fmt.Sprintf("the text of the pocket card is %d %% of what a wide card holds", 100*n/broad.height),
				"shorten the checks and the first caution")
			return
		}
	}
}
