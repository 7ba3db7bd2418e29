package main

import (
	"fmt"
	"math"
	"strings"
	"testing"

	"coursebook/calculators/calctest"
	"coursebook/calculators/quantity"
	"coursebook/calculators/rules"
)

// TestWorkedPour checks what the text around the tables says of the two days.
func TestWorkedPour(t *testing.T) {
	good, bad := workPour(t, goodDay), workPour(t, badDay)
	if verdictWord(t, good.verdict) != "in-time" || verdictWord(t, bad.verdict) != "too-late" {
		t.Errorf("next lift: %s and %s, not in time and too late", good.verdict, bad.verdict)
	}
	if good.joint != 0 || bad.joint == 0 || bad.placed != 2 {
		t.Errorf("the plan ends at %s, the bad day at %s after %d lifts, not at the top of the second",
			clockTime(good.joint), clockTime(bad.joint), bad.placed)
	}
	for name, w := range map[string]workedPour{"plan": good, "bad day": bad} {
		if w.backBy <= w.round()+footRead || w.returnAge-w.day.late > w.window {
			t.Errorf("%s: a round of %v min is not back by %v min", name, w.round()/minute, w.backBy/minute)
		}
		if w.window > houseAmount(t, "joint-window") {
			t.Errorf("%s: a joint window of %v min counts", name, w.window/minute)
		}
	}
	if spare := good.window - good.returnAge; spare < leastSpare {
		t.Errorf("plan: %v min to spare when the hose is back, want %v", spare/minute, leastSpare/minute)
	}
	if ready := good.start + talkBegins + talkTime; good.firstBatched() < ready {
		t.Errorf("the first load is batched at %s, before the crew is ready at %s",
			clockTime(good.firstBatched()), clockTime(ready))
	}
	if goodDay.window == badDay.window {
		t.Error("no day shows that the earlier of two joint windows counts")
	}
	if bad.joint <= bad.thirdTruck || bad.joint >= bad.thirdTruck+bad.day.late {
		t.Errorf("bad day: the joint at %s is not while the truck is late", clockTime(bad.joint))
	}
	if batched, _, _ := bad.truck(3); batched+bad.day.late <= early(bad.joint) {
		t.Error("the late truck is batched before it is called off")
	}
	if good.heads != headsHired {
		t.Errorf("in rounds %v heads keep up, and the crew has %d", good.heads, headsHired)
	}
	fewer := rateOfHeads(t, headsHired-1, "middle", "air", roundDepth)
	if slow := good.net / (float64(fewer) * movingShare) * 3600; slow <= good.last-good.first+60*minute {
		t.Errorf("with a head less the pour takes %v min, not over an hour longer", slow/minute)
	}
	pour := math.Round((good.last-good.first)/(5*minute)) * 5 / 60
	for page, texts := range map[string]map[string]string{
		"pour-clock": {
			"en": fmt.Sprintf("If one quits and no spare runs, the pump finishes the lift at %d yd³/h and", fewer),
			"es": fmt.Sprintf("Si una se para sin repuesto que ande, se acaba la capa a %d yd³/h y", fewer),
		},
		"start-time": {
			"en": fmt.Sprintf("The pour takes %v h with its waits", pour),
			"es": fmt.Sprintf("El colado tarda %v h con sus esperas", pour),
		},
	} {
		for lang, text := range texts {
			if !strings.Contains(manualPage(t, lang, page), text) {
				t.Errorf("%s: %s does not say %q", lang, page, text)
			}
		}
	}
	if good.ageLast+primeTime > 90*minute {
		t.Errorf("the last concrete of a truck is %v min old, over 90", (good.ageLast+primeTime)/minute)
	}
	onTime := badDay
	onTime.late = 0
	hot := workPour(t, onTime)
	if hot.joint != 0 || verdictWord(t, hot.verdict) != "in-time" {
		t.Error("the hot day with all trucks on time does not fill the wall")
	}
	for i := range good.sides {
		if p := good.sides[i].Choice("plan"); p != "after" {
			t.Errorf("plan, side %d: straighten it %s, not after it is full", i+1, p)
		}
		if p := hot.sides[i].Choice("plan"); p != "between" {
			t.Errorf("hot day on time, side %d: straighten it %s, not between rounds only", i+1, p)
		}
		left := bad.sides[i].Num("off") - bad.sideFull(i)
		if p := bad.sides[i].Choice("plan"); p != "after" || left > bad.allowed+minute {
			t.Errorf("bad day, side %d: straighten it %s, with more than %v min", i+1, p, bad.allowed/minute)
		}
	}
	checkDecision(t, bad)
	_, comes, _ := bad.truck(3)
	asked := map[string]string{"en": "ends at %s, and the next truck comes at %s.",
		"es": "se acaba a las %s y el camión llega a las %s."}
	for lang, text := range asked {
		text = fmt.Sprintf(text, clockTime(early(bad.joint)), fiveMinutes(comes+bad.day.late))
		if !strings.Contains(manualPage(t, lang, "pour-clock"), text) {
			t.Errorf("%s: no question says %q", lang, text)
		}
	}
	batched, _, _ := good.truck(int(good.loads))
	if good.last+topsTime >= batched+good.set || good.last+topsTime >= good.done {
		t.Errorf("the strike-off ends at %s, when the last load sets or the day is over",
			clockTime(good.last+topsTime))
	}
	for lang, text := range map[string]string{
		"en": fmt.Sprintf("A loop of %d ft takes %v min", jobFeet, topsTime/minute),
		"es": fmt.Sprintf("Una vuelta de %d ft lleva %v min", jobFeet, topsTime/minute),
	} {
		if !strings.Contains(manualPage(t, lang, "top-of-the-wall"), text) {
			t.Errorf("%s: top-of-the-wall does not say %q", lang, text)
		}
	}
	if good.callBy <= good.liftStart(3) {
		t.Errorf("the last truck must be called by %s, before the third lift begins", clockTime(good.callBy))
	}
}

// checkDecision checks the two clocks of the oldest face on the bad day as the page has them: its last
// pass and the batch time of its load, which is the second. The late truck comes after the decision
// time, and its load is called off before it is batched.
func checkDecision(t *testing.T, bad workedPour) {
	t.Helper()
	pass, window := bad.lastRound(bad.placed), houseAmount(t, "joint-window")
	batched, _, _ := bad.truck(2)
	if end := math.Min(pass+bad.backBy, batched+window); math.Abs(end-bad.joint) > minute {
		t.Errorf("the oldest face ends at %s, and the page has %s", clockTime(end), clockTime(bad.joint))
	}
	third, comes, _ := bad.truck(3)
	if comes+bad.day.late-gateToHose <= bad.decision() || third+bad.day.late <= bad.decision() {
		t.Errorf("the truck that comes at %s is not after the decision time %s", clockTime(comes+bad.day.late),
			clockTime(bad.decision()))
	}
	for lang, text := range map[string]string{
		"en": "its last pass is at %s. Plus %v min is %s. Its load was batched at %s, and %v min later it is %s. " +
			"The earlier one counts, less %v min",
		"es": "su última pasada es a las %s. Más %v min son las %s. Su carga salió a las %s, " +
			"y %v min después son las %s. Cuenta lo que llega antes, menos %v min",
	} {
		text = fmt.Sprintf(text, clockTime(pass), bad.backBy/minute, clockTime(bad.joint), fiveMinutes(batched),
			window/minute, fiveMinutes(batched+window), gateToHose/minute)
		page := manualPage(t, lang, "pour-clock")
		if !strings.Contains(page, text) || !strings.Contains(page, " "+clockTime(bad.decision())+".") {
			t.Errorf("%s: pour-clock does not say %q and %s", lang, text, clockTime(bad.decision()))
		}
	}
}

// houseAmount returns the amount of a house rule of the manual, in SI.
func houseAmount(t *testing.T, id string) float64 {
	t.Helper()
	si, err := rules.Find(rules.All(), id).Parse(calctest.Amounts()[id], quantity.Point)
	if err != nil {
		t.Fatal(err)
	}
	return si
}
