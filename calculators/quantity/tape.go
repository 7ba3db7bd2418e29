package quantity

import (
	"math"
	"strconv"
)

// tape returns inches as read from a tape: 10' 6-1/2", or 126-1/2" for the form
// Inches. The inches are a multiple of 1/64 and may be negative.
func tape(inches float64, form Form) string {
	sign := ""
	if inches < 0 {
		sign, inches = "-", -inches
	}
	if form == Inches {
		return sign + inchesText(inches, false) + `"`
	}
	feet := math.Floor(inches / 12)
	return sign + written(feet, 0, Point) + "' " + inchesText(inches-float64(12*feet), true) + `"`
}

// inchesText returns inches, at least 0, as a whole number and a fraction in
// lowest terms, without a mark. After feet the whole inches are written even if
// they are 0: 9' 0-3/4".
func inchesText(inches float64, afterFeet bool) string {
	whole := math.Floor(inches)
	upper, lower := int((inches-whole)*64), 64
	if upper == 0 {
		return written(whole, 0, Point)
	}
	for upper%2 == 0 {
		upper, lower = upper/2, lower/2
	}
	text := strconv.Itoa(upper) + "/" + strconv.Itoa(lower)
	if whole == 0 && !afterFeet {
		return text
	}
	return written(whole, 0, Point) + "-" + text
}
