package weather

// TimeLeft is what is left of a limit: L - a, both in minutes. Below 0 the
// limit has passed. Source: ASTM C94, which counts from the first meeting of
// water and cement.
func TimeLeft(limit, age float64) float64 { return limit - age }

// Speed is how many times as fast as at 70 °F concrete sets at t in °F:
// 2^((T - 70)/20). Source: the rule of thumb that 20 °F doubles or halves it.
func Speed(t float64) float64 { return pow2((t - 70) / 20) }

// clock reads a time of day like 7:40 or 19:05: minutes since midnight.
func clock(text string) (minutes int, ok bool) {
	digits, mark := 0, false
	hours := 0
	for i := 0; i < len(text); i++ {
		c := text[i]
		switch {
		case '0' <= c && c <= '9' && digits < 2:
			minutes, digits = minutes*10+int(c-'0'), digits+1
		case c == ':' && !mark && digits > 0:
			hours, minutes, digits, mark = minutes, 0, 0, true
		default:
			return 0, false
		}
	}
	return hours*60 + minutes, mark && digits == 2 && hours < 24 && minutes < 60
}

// clockText writes minutes since midnight as a time of day of 24 hours.
func clockText(minutes int) string {
	minutes %= 24 * 60
	h, m := minutes/60, minutes%60
	return string([]byte{byte('0' + h/10), byte('0' + h%10), ':', byte('0' + m/10), byte('0' + m%10)})
}
