package calc

import (
	"math"
	"strconv"
	"strings"
)

const minutesOfDay = 24 * 60

// ParseClock reads a time of day into seconds after midnight: 7:30, 07:30, 7h30,
// 0730, 7 am, 7:30 p.m., 13:05, and 7 for 7:00. Spaces and case are ignored. ok is
// false for any other text, such as an empty one, 24:00 or 13 pm.
func ParseClock(text string) (seconds float64, ok bool) {
	s := strings.ToLower(strings.ReplaceAll(text, " ", ""))
	s, half, afternoon := cutHalf(s)
	hours, minutes, split := strings.Cut(s, ":")
	if !split {
		hours, minutes, split = strings.Cut(s, "h")
		split = split && minutes != "" // 7h is 7:00
	}
	if !split && len(hours) > 2 {
		hours, minutes, split = hours[:len(hours)-2], hours[len(hours)-2:], true
	}
	h, okHours := clockDigits(hours)
	m := 0
	if split {
		var okMinutes bool
		if m, okMinutes = clockDigits(minutes); !okMinutes || len(minutes) != 2 || m > 59 {
			return 0, false
		}
	}
	if !okHours || half && (h < 1 || h > 12) || h > 23 {
		return 0, false
	}
	if half {
		h %= 12
	}
	if afternoon {
		h += 12
	}
	return float64(60 * (60*h + m)), true
}

// cutHalf returns a time of day, in lower case, without a.m. or p.m. at its end.
// half reports whether one was there, afternoon whether it was p.m.
func cutHalf(s string) (rest string, half, afternoon bool) {
	for _, suffix := range []string{"a.m.", "p.m.", "a.m", "p.m", "am", "pm"} {
		if rest, ok := strings.CutSuffix(s, suffix); ok {
			return rest, true, suffix[0] == 'p'
		}
	}
	return s, false, false
}

// clockDigits reads one or two ASCII digits. ok is false for any other text.
func clockDigits(s string) (n int, ok bool) {
	if len(s) < 1 || len(s) > 2 {
		return 0, false
	}
	for i := 0; i < len(s); i++ {
		if s[i] < '0' || s[i] > '9' {
			return 0, false
		}
		n = 10*n + int(s[i]-'0')
	}
	return n, true
}

// FormatClock returns a time in seconds after midnight on the clock of 24 hours,
// to the nearest minute: 7:30. Another day is added in a form that readers of any
// language understand: 1:30 (+1 d), 22:00 (-1 d).
func FormatClock(seconds float64) string {
	total := int(math.Round(seconds / 60))
	day := int(math.Floor(float64(total) / minutesOfDay))
	m := total - day*minutesOfDay
	text := strconv.Itoa(m/60) + ":" + pad(m%60, 2)
	switch {
	case day > 0:
		text += " (+" + strconv.Itoa(day) + " d)"
	case day < 0:
		text += " (" + strconv.Itoa(day) + " d)"
	}
	return text
}
