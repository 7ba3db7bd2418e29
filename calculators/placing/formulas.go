package placing

import (
	"math"

	"coursebook/calculators/calc"
)

// Rise is how fast concrete rises where a flow fills a plan area,
// R = Q/(L·b). Any coherent units, length and core above 0.
// Source: US Army EN5151, part C: volume per hour over plan area.
func Rise(flow, length, core float64) float64 { return flow / (length * core) }

// Flow is the pump rate that makes a length of wall rise at r, Q = R·L·b.
// Any coherent units. Source: algebra on Rise.
func Flow(rise, length, core float64) float64 { return rise * length * core }

// LiftTime is how long a depth of concrete takes over a length of wall,
// T = L·b·d/(Q·m), with m the share of the time that the pump runs, 0 to 1.
// Any coherent units. Source: US Army EN5466, step 17: height over rise.
func LiftTime(length, core, depth, flow, share float64) float64 {
	return length * core * depth / (flow * share)
}

// LongestLoop is the length of wall whose lift takes the time that is left,
// L = (W − a)·Q·m/(b·d): LiftTime turned round. Any coherent units; W is
// above a. Source: algebra on LiftTime.
func LongestLoop(window, age, flow, share, core, depth float64) float64 {
	return (window - age) * flow * share / (core * depth)
}

// AgeOnReturn is how old the lift below is when the hose is back, A = a + T,
// counted from the batch time on the ticket. Any unit of time.
// Source: common practice.
func AgeOnReturn(age, loop float64) float64 { return age + loop }

// Lifts is the number of lifts for a height, N = ⌈H/d⌉. Any unit of length;
// the depth is above 0. Source: arithmetic.
func Lifts(height, depth float64) float64 { return math.Ceil(height/depth - calc.Slack) }

// Spacing is the time from one truck to the next that keeps the pump fed,
// s = V/Q: the time the pump takes to empty one. Any coherent units.
// Source: ready-mix producer's guide "Calculating truck requirements".
func Spacing(truck, flow float64) float64 { return truck / flow }

// Cycle is a truck's round trip: load + check + haul + wait + discharge +
// wash + return, all in one unit of time. Source: as Spacing.
func Cycle(load, check, haul, wait, discharge, wash, back float64) float64 {
	return load + check + haul + wait + discharge + wash + back
}

// Trucks is how many keep the pump fed, n = min(⌈C/s⌉, loads). Cycle and
// spacing in one unit of time, spacing above 0. Source: as Spacing.
func Trucks(cycle, spacing, loads float64) float64 {
	return math.Min(math.Ceil(cycle/spacing-calc.Slack), loads)
}

// Loads is the number of truck loads of an order, N = ⌈V_o/V⌉. Any unit of
// volume. Source: as Spacing.
func Loads(order, truck float64) float64 { return math.Ceil(order/truck - calc.Slack) }

// AgeAtEnd is the age of the last concrete out of a truck: load + check +
// haul + wait + discharge, all in one unit of time. The clock of ASTM C94
// starts when water meets cement, so at loading.
func AgeAtEnd(load, check, haul, wait, discharge float64) float64 {
	return load + check + haul + wait + discharge
}

// PumpWait is how long the pump stands for each truck when n trucks go round,
// max(0, C/n − s). Any unit of time, n above 0. Source: arithmetic.
func PumpWait(cycle, trucks, spacing float64) float64 {
	return math.Max(0, cycle/trucks-spacing)
}

// TruckWait is how long each truck stands in a round trip when n trucks go
// round, max(0, n·s − C). Any unit of time. Source: arithmetic.
func TruckWait(trucks, spacing, cycle float64) float64 {
	return math.Max(0, float64(trucks*spacing)-cycle)
}

// Pumping is the time from first to last concrete, T = V/(Q·m), with m the
// share of that time in which the pump runs. Any coherent units.
// Source: US Army EN5466, step 17.
func Pumping(volume, flow, share float64) float64 { return volume / (flow * share) }

// Shift is set-up, pumping and clean-up together, in one unit of time.
// Source: arithmetic.
func Shift(setUp, pumping, cleanUp float64) float64 { return setUp + pumping + cleanUp }

// WholeHours is a time rounded up to whole hours, for booking, in h.
// Source: US Army EN5151, steps 14 to 17.
func WholeHours(hours float64) float64 { return math.Ceil(hours - calc.Slack) }

// CrewHours is paid time, n people for T hours. Source: arithmetic.
func CrewHours(people, hours float64) float64 { return people * hours }

// PerYard is the water added to each cubic yard, gal/yd³, from US gal and yd³.
func PerYard(gallons, yards float64) float64 { return gallons / yards }

// ByRule applies a rule of thumb: so much of something for each gal/yd³.
// Limits: plain mixes at 3 to 6 in. of slump. Source: Concrete Construction,
// "Adjusting slump in the field" and "Adding water".
func ByRule(each, perYard float64) float64 { return each * perYard }

// WaterCement is the water-cement ratio after water went in at the truck,
// r + 8.34·(W − W_h)/(V·c), with r the ratio of the mix design, which counts
// the water withheld. A US gallon of water weighs 8.34 lb. W and W_h in US
// gal, V in yd³, c in lb/yd³. Source: definition of the ratio.
func WaterCement(design, added, withheld, yards, cement float64) float64 {
	return design + float64(8.34*(added-withheld))/(yards*cement)
}

// CementLost is the cement in lb whose strength the water takes: a quarter of
// a 94 lb bag for each gal/yd³, so 23.5 lb for each US gal.
// Source: Concrete Construction, "Adjusting slump in the field".
func CementLost(gallons float64) float64 { return 23.5 * gallons }

// LineVolume is what a line of inside diameter d and length L holds,
// π/4·d²·L. Any unit of length. Source: geometry.
func LineVolume(bore, length float64) float64 {
	return math.Pi / 4 * math.Pow(bore, 2) * length
}

// HoseWeight is concrete and hose together for each length of hose,
// π/4·d²·w + e, with e the weight of the empty hose. Any coherent units.
// Source: Concrete Construction, "Concrete pumping".
func HoseWeight(bore, weight, empty float64) float64 {
	return float64(math.Pi/4*math.Pow(bore, 2)*weight) + empty
}

// Hanging is the mass of a hanging length of hose, m·l. Any coherent units.
func Hanging(perLength, length float64) float64 { return perLength * length }

// PrimeVolume coats the inside of a line with a film of grout, π·d·L·f. Any
// unit of length. Limits: a film of 1/4 in. gives the 1 yd³ for 1000 ft of
// 5 in. line of the handbooks. Source: common practice.
func PrimeVolume(bore, length, film float64) float64 {
	return math.Pi * bore * length * film
}

// Finish is the end of a shift in hours of the day, S + T; over 24 it is past
// midnight. Source: arithmetic.
func Finish(start, total float64) float64 { return start + total }

// LatestStart is when a shift must start to be done by an hour of the day,
// D − T; below 0 it is the day before. Source: arithmetic.
func LatestStart(done, total float64) float64 { return done - total }
