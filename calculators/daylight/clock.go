package daylight

import (
	"math"
	"strconv"
	"strings"
)

// clockText writes minutes after midnight as a clock shows them, to the
// nearest minute: 06:05.
func clockText(minutes float64) string {
	m := int(math.Round(minutes)) % 1440
	if m < 0 {
		m += 1440
	}
	return two(m/60) + ":" + two(m%60)
}

func two(n int) string {
	s := strconv.Itoa(n)
	if len(s) < 2 {
		return "0" + s
	}
	return s
}

// readClock reads a time of day into minutes after midnight: 6:30, 06:30,
// 0630, 7, 2:15 pm.
func readClock(text string) (minutes float64, ok bool) {
	s := strings.ToLower(strings.ReplaceAll(strings.ReplaceAll(text, " ", ""), ".", ""))
	s, half := strings.CutSuffix(s, "m")
	after := 0
	if half {
		if s == "" {
			return 0, false
		}
		if last := s[len(s)-1]; last == 'p' {
			after = 12
		} else if last != 'a' {
			return 0, false
		}
		s = s[:len(s)-1]
	}
	hours, mins, split := strings.Cut(s, ":")
	if !split && len(s) > 2 {
		hours, mins, split = s[:len(s)-2], s[len(s)-2:], true
	}
	h, okH := digits(hours)
	m, okM := digits(mins)
	if !okH || split && (!okM || len(mins) != 2) || m > 59 {
		return 0, false
	}
	if half {
		if h < 1 || h > 12 {
			return 0, false
		}
		h = h%12 + after
	}
	return float64(60*h + m), h < 24
}

// digits reads one or two digits.
func digits(s string) (int, bool) {
	if len(s) < 1 || len(s) > 2 || s[0] < '0' || s[0] > '9' {
		return 0, false
	}
	n, err := strconv.Atoi(s)
	return n, err == nil
}
