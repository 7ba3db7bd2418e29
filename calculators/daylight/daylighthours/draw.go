package daylighthours

import (
	"math"
	"strconv"

	"coursebook/calculators/calc"
	"coursebook/calculators/figure"
	"coursebook/calculators/quantity"
)

const (
	title      = calc.Text("The day on a 24-hour strip")
	desc       = calc.Text("Sunrise {rise}, sunset {set}, {length} of day.")
	labelHours = calc.Text("Hours of the clock")
	labelDay   = calc.Text("Day {from} to {to}")
	labelHalf  = calc.Text("Twilight {from} to {to}")
	labelNight = calc.Text("Dark")
	labelPour  = calc.Text("Pour {from} to {to}")
	labelAfter = calc.Text("Work after it, to {to}")
	labelNever = calc.Text("none|absent")
	labelUp    = calc.Text("Day, all around")
	labelLit   = calc.Text("Twilight until sunrise")
)

// Layout of the strip.
const (
	stripLeft, stripWide = 10.0, figure.ChartWidth - 20
	skyTop, skyTall      = 28.0, 40.0
	workTop              = skyTop + skyTall
	workTall             = 18.0
	keyLine              = 22.0
)

type strip struct {
	nodes []figure.Node
	y     float64
}

// band fills part of the strip, from and to in minutes after midnight. A part past
// midnight continues at the other end.
func (s *strip) band(role figure.Role, top, high, from, to float64) {
	for _, shift := range []float64{-1440, 0, 1440} {
		a, b := math.Max(0, from+shift), math.Min(1440, to+shift)
		if b > a {
			s.nodes = append(
				s.nodes,
				figure.Rect(role, figure.Point{X: stripLeft + a*stripWide/1440, Y: top}, (b-a)*stripWide/1440, high),
			)
		}
	}
}

// key adds a line of text with a sample of its role to the key.
func (s *strip) key(role figure.Role, text string) {
	s.y += keyLine
	s.nodes = append(s.nodes, figure.Rect(role, figure.Point{X: stripLeft, Y: s.y - 12}, 14, 14),
		figure.Text(figure.Label, figure.Point{X: stripLeft + 22, Y: s.y}, figure.Start, text))
}

// draw returns the drawing of a result. A refused case gives an empty drawing.
func draw(v calc.Locale, in calc.Case, res calc.Result) figure.Drawing {
	if res.State != calc.OK {
		return figure.Drawing{}
	}
	out := res.Out
	heading := figure.Text(figure.Label, figure.Point{X: stripLeft, Y: 18}, figure.Start, v.Say(labelHours))
	s := &strip{y: workTop + workTall + 24, nodes: []figure.Node{heading}}
	s.sky(v, out)
	if in.Has("start") {
		start := in.Num("start") / minuteInSI
		end := start + in.Num("pour")/minuteInSI
		s.band(figure.Ground, workTop, workTall, start, end)
		s.band(figure.Foam, workTop, workTall, end, end+in.Num("after")/minuteInSI)
		s.key(figure.Ground, v.Say(labelPour, between(clockText(start), clockText(end))...))
		s.key(figure.Foam, v.Say(labelAfter, calc.WordSlot("to", clockOf(out, "finish"))))
	}
	hours(s)
	rise, set := clockOf(out, "sunrise"), clockOf(out, "sunset")
	if rise == "" {
		rise, set = v.Say(labelNever), v.Say(labelNever)
	}
	return figure.Drawing{Width: figure.ChartWidth, Height: s.y + 12, Title: v.Say(title), Nodes: s.nodes,
		Desc: v.Say(desc, calc.WordSlot("rise", rise), calc.WordSlot("set", set),
			calc.WordSlot("length", quantity.Format(out.Num("day-length"), showSpan, v.Style)))}
}

// between returns the slots from and to.
func between(from, to string) []calc.Slot {
	return []calc.Slot{calc.WordSlot("from", from), calc.WordSlot("to", to)}
}

// sky draws night, twilight and day over each other, and the key of those drawn.
func (s *strip) sky(v calc.Locale, out calc.Case) {
	since := func(event string) float64 {
		for _, row := range out.Rows("events") {
			if row.Choice("event") == event {
				return row.Num("since") / minuteInSI
			}
		}
		return 0
	}
	s.band(figure.Steel, skyTop, skyTall, 0, 1440)
	twilight, sky := out.Has("dawn"), out.Choice("sky")
	switch {
	case twilight:
		s.band(figure.Concrete, skyTop, skyTall, since("dawn"), since("dusk"))
	case sky == "usual":
		s.band(figure.Concrete, skyTop, skyTall, 0, 1440)
	}
	switch sky {
	case "usual":
		s.band(figure.Opening, skyTop, skyTall, since("sunrise"), since("sunset"))
		s.key(figure.Opening, v.Say(labelDay, between(clockOf(out, "sunrise"), clockOf(out, "sunset"))...))
	case "up":
		s.band(figure.Opening, skyTop, skyTall, 0, 1440)
		s.key(figure.Opening, v.Say(labelUp))
	}
	switch {
	case twilight:
		s.key(figure.Concrete, v.Say(labelHalf, between(clockOf(out, "dawn"), clockOf(out, "dusk"))...))
	case sky == "usual":
		s.key(figure.Concrete, v.Say(labelLit))
	}
	if twilight || sky == "down" {
		s.key(figure.Steel, v.Say(labelNight))
	}
}

// hours draws a mark at every third hour.
func hours(s *strip) {
	for h := 0; h <= 24; h += 3 {
		x := stripLeft + float64(h)*stripWide/24
		anchor := figure.Middle
		switch h {
		case 0:
			anchor = figure.Start
		case 24:
			anchor = figure.End
		}
		s.nodes = append(
			s.nodes,
			figure.Segment(figure.Thin, figure.Point{X: x, Y: skyTop}, figure.Point{X: x, Y: workTop + workTall}),
			figure.Text(figure.Label, figure.Point{X: x, Y: workTop + workTall + 18}, anchor, strconv.Itoa(h)),
		)
	}
}

// clockOf returns an output that is a time of day as text; "" if it is not set.
func clockOf(out calc.Case, id string) string {
	if !out.Has(id) {
		return ""
	}
	return calc.FormatClock(out.Num(id))
}
