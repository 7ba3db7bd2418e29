package calc

import (
	"strconv"
	"strings"
)

// ParseDay reads an ISO 8601 calendar date, year-month-day with four, two and two
// digits, into days since 1970-01-01. ok is false for any other text, for the year
// 0 and for days that the month does not have.
func ParseDay(text string) (days int, ok bool) {
	parts := strings.Split(text, "-")
	if len(parts) != 3 || len(parts[0]) != 4 || len(parts[1]) != 2 || len(parts[2]) != 2 {
		return 0, false
	}
	var n [3]int
	for i, p := range parts {
		x, err := strconv.ParseUint(p, 10, 32)
		if err != nil {
			return 0, false
		}
		n[i] = int(x)
	}
	y, m, d := n[0], n[1], n[2]
	if y < 1 || m < 1 || m > 12 || d < 1 || d > monthDays(y, m) {
		return 0, false
	}
	return daysFromCivil(y, m, d), true
}

// FormatDay returns days since 1970-01-01 as year-month-day.
func FormatDay(days int) string {
	y, m, d := civilFromDays(days)
	return pad(y, 4) + "-" + pad(m, 2) + "-" + pad(d, 2)
}

// pad returns n in decimal with zeros in front up to width digits.
func pad(n, width int) string {
	s := strconv.Itoa(n)
	for len(s) < width {
		s = "0" + s
	}
	return s
}

// monthDays returns the number of days of month m, 1 to 12, of year y.
func monthDays(y, m int) int {
	switch m {
	case 2:
		if y%4 == 0 && (y%100 != 0 || y%400 == 0) {
			return 29
		}
		return 28
	case 4, 6, 9, 11:
		return 30
	}
	return 31
}

// daysFromCivil counts days of the proleptic Gregorian calendar with years
// that begin in March, so that the leap day comes last (years from 1 on).
func daysFromCivil(y, m, d int) int {
	if m <= 2 {
		y--
		m += 12
	}
	era := y / 400
	yoe := y - era*400
	doy := (153*(m-3)+2)/5 + d - 1
	return era*146097 + yoe*365 + yoe/4 - yoe/100 + doy - 719468
}

// civilFromDays is the inverse of daysFromCivil.
func civilFromDays(days int) (y, m, d int) {
	z := days + 719468
	era := z / 146097
	doe := z - era*146097
	yoe := (doe - doe/1460 + doe/36524 - doe/146096) / 365
	doy := doe - (365*yoe + yoe/4 - yoe/100)
	mp := (5*doy + 2) / 153
	d = doy - (153*mp+2)/5 + 1
	m = mp + 3
	y = yoe + era*400
	if m > 12 {
		m -= 12
		y++
	}
	return y, m, d
}
