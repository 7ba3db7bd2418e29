package main

import (
	"cmp"
	"fmt"
	"math"
	"slices"
	"strconv"
	"strings"
	"testing"

	"coursebook/calculators/bracing/handsoff"
	"coursebook/calculators/calc"
	"coursebook/calculators/calctest"
	"coursebook/calculators/consolidation/vibrator"
	"coursebook/calculators/geometry/wallvolume"
	"coursebook/calculators/placing/lasttruck"
	"coursebook/calculators/placing/pourtime"
	"coursebook/calculators/placing/rateofrise"
	"coursebook/calculators/placing/truckspacing"
	"coursebook/calculators/pressure/formpressure"
	"coursebook/calculators/weather"
)

// pourInputs are the invented figures of a worked pour.
type pourInputs struct {
	concrete, air string
	window        string  // joint window of the mix, as the plant gives it
	late          float64 // delay of the third truck, s
}

// The two days of the page pour-clock. Both have the job, the crew and the pump of jobInputs.
var (
	goodDay = pourInputs{concrete: "70 °F", air: "72 °F", window: "150 min"}
	badDay  = pourInputs{concrete: "85 °F", air: "88 °F", window: "120 min", late: 45 * minute}
)

const minute = 60.0

// The job: a loop of eight corners and one curve, nine hands with three heads.
const (
	jobRun      = "140 ft"
	jobHeight   = "9 ft"
	jobLoad     = "7 yd3"
	pumpRate    = "15 yd3/h"
	pumpMoving  = "75 %"
	crewStart   = "6:00"
	crewSetUp   = "120 min"
	crewCleanUp = "120 min"
	plantDrive  = "10 min"
	plantLead   = "50 min" // from a call to the hopper
	jobSet      = "5 h"    // final set at 70 °F, as the plant gives it
	liftDepth   = 2        // ft
	roundDepth  = 1        // ft; each lift goes in as rounds of this depth
	wallHeight  = 9        // ft
	loadVolume  = 7        // yd³
	rateWithAll = 15 * 0.75
)

// Minutes of the morning from the crew's start, as the pages of the stage plan them.
const (
	pumpComes  = 15 * minute
	wallWalked = 50 * minute
	talkBegins = 60 * minute
	talkTime   = 10 * minute
	firstTest  = -20 * minute // from the first concrete
)

// Minutes beside the passes of the pump.
const (
	primeTime  = 15 * minute                   // the first truck is at the hopper while the line is primed
	footRead   = 5 * minute                    // from the end of lift 1 to "second lift"
	topUpTime  = 15 * minute                   // from the last concrete to "wash out": settled and topped up
	bayTime    = 2 * minute                    // two people strike off a bay
	bayLength  = 4                             // ft
	jobFeet    = 140                           // jobRun as a number
	topsTime   = jobFeet / bayLength * bayTime // from the last concrete to the last "wall full"
	leastSpare = 15 * minute                   // to the joint window, in the rounds of the plan
)

// workedPour is a pour worked out by the calculators. Times are in s after midnight, unless
// named otherwise.
type workedPour struct {
	day pourInputs

	net, order float64 // yd³
	loads      float64

	start, first, last, done   float64
	joint                      float64 // when the pour ends at a planned joint; 0: the wall is full
	spacing, ageFirst, ageLast float64 // of the trucks, s
	thirdTruck                 float64 // when it is due

	heads, withSpare float64

	lift             float64 // time of one pass of full depth, s
	lifts            int     // for the height
	placed           int     // lifts that the day places
	returnAge        float64 // of the concrete when the hose is back, s
	roundAge         float64 // the same in rounds of roundDepth, s
	window           float64 // joint window that counts, s
	verdict          string
	pressure, backBy float64 // Pa; s from pass to pass, the earlier of both calculators
	unknownMix       float64 // Pa, the pressure where the ticket does not name the mix
	set, allowed     float64 // s
	sides            []calc.Case
	callBy           float64
	callOrder        float64 // yd³
}

// workPour works out a day of the invented job.
func workPour(t *testing.T, day pourInputs) workedPour {
	t.Helper()
	w := workedPour{day: day}
	volume := []string{"runs=" + jobRun + " | " + jobHeight, "openings=36 in | 48 in | 3", "block-outs=",
		"measured=centre", "waste=10 %", "core=8 in"}
	w.net = numberOf(t, wallvolume.Calculator, "net-yd", "yd³", volume...)
	w.order = numberOf(t, wallvolume.Calculator, "order-yd", "yd³", volume...)

	clock := calctest.Run(t, pourtime.Calculator, "volume="+yards(w.net), "rate="+pumpRate, "moving="+pumpMoving,
		"start="+crewStart, "set-up="+crewSetUp, "clean-up="+crewCleanUp, "crew=9", "before=")
	at := func(event string) float64 {
		for _, row := range clock.Out.Rows("clock") {
			if row.Choice("event") == event {
				return row.Num("time")
			}
		}
		t.Fatalf("pour-time has no event %s", event)
		return 0
	}
	w.start, w.first = at("start"), at("first")
	w.last, w.done = at("last")+footRead, at("finish")+footRead

	trucks := []string{"order=" + yards(w.order), "truck=" + jobLoad, "haul=" + plantDrive,
		fmt.Sprintf("rate=%v yd3/h", rateWithAll)}
	w.loads = numberOf(t, truckspacing.Calculator, "loads", "", trucks...)
	w.spacing = numberOf(t, truckspacing.Calculator, "spacing", "", trucks...)
	w.ageFirst = numberOf(t, truckspacing.Calculator, "age-first", "", trucks...)
	w.ageLast = numberOf(t, truckspacing.Calculator, "age-last", "", trucks...)
	_, w.thirdTruck, _ = w.truck(3)

	heads := []string{jobLength, "core=8 in", "pump=" + pumpRate}
	w.heads = numberOf(t, vibrator.Calculator, "vibrators", "", heads...)
	w.withSpare = numberOf(t, vibrator.Calculator, "with-spare", "", heads...)

	rise := calctest.Run(t, rateofrise.Calculator, jobLength, "core=8 in", "height="+jobHeight, "lift=2 ft",
		"rate="+pumpRate, "moving="+pumpMoving, "window="+day.window,
		fmt.Sprintf("age=%v min", (w.ageLast+primeTime+footRead+w.day.late)/minute))
	w.lift, w.returnAge = rise.Out.Num("loop-time"), rise.Out.Num("return-age")
	w.verdict, w.lifts = rise.Out.Choice("verdict"), int(rise.Out.Num("lifts"))
	w.window = w.returnAge + rise.Out.Num("spare")
	w.roundAge = w.returnAge - w.lift*(1-float64(roundDepth)/liftDepth)

	form := calctest.Run(t, formpressure.Calculator, jobLength, "thickness=8 in", "height="+jobHeight, "lift=2 ft",
		"pump-rate="+pumpRate, "temperature="+day.concrete, "cement=plain", "admixture=retards",
		"set="+jobSet, fmt.Sprintf("round=%v min", w.lift/minute),
		fmt.Sprintf("age=%v min", (w.ageLast+primeTime)/minute))
	w.pressure = form.Out.Num("pressure-local")
	w.backBy = math.Min(form.Out.Num("back-by"), w.window-w.ageLast-primeTime)

	w.unknownMix = numberOf(t, formpressure.Calculator, "pressure-local", "Pa", jobLength, "thickness=8 in",
		"height="+jobHeight, "lift=2 ft", "pump-rate="+pumpRate, "temperature="+day.concrete)

	w.placed = w.lifts
	w.endAtJoint()
	if w.joint == 0 {
		w.callOrder, w.callBy = lastTruck(t, w)
	}
	w.set, w.allowed, w.sides = handsOff(t, w)
	return w
}

// endAtJoint ends the day at a planned joint where the third truck comes later than the
// hose must be back at the lift that the first two trucks filled.
func (w *workedPour) endAtJoint() {
	filled := int(2 * loadVolume / (w.lift / 3600 * rateWithAll))
	back := w.liftStart(filled) + w.backBy
	if w.thirdTruck+w.day.late <= back {
		return
	}
	cleanUp := w.done - w.last
	w.placed, w.joint, w.last, w.done = filled, back, w.liftStart(filled+1), back+cleanUp
}

// lastTruck returns the order in yd³ and the time of the call, made when the third lift
// begins, with the third and the fourth load on the road.
func lastTruck(t *testing.T, w workedPour) (order, by float64) {
	t.Helper()
	open := wallHeight - 2*liftDepth
	r := calctest.Run(t, lasttruck.Calculator,
		fmt.Sprintf("walls=%s | 8 in | %d ft", jobRun, open), "waste=10 %",
		fmt.Sprintf("drums=%d yd3 | full; %d yd3 | full", loadVolume, loadVolume),
		"needed="+clockTime(w.first+4*w.spacing+footRead), "lead="+plantLead, "now="+clockTime(w.liftStart(3)))
	return r.Out.Num("order-yd") / calc.SI(1, "yd³"), r.Out.Num("call-by")
}

// handsOff returns initial set, the time allowed after the last concrete, and the rows of
// the four sides of the house. The last lift placed fills them one after the other. The
// first load of each side is the first truck.
func handsOff(t *testing.T, w workedPour) (set, allowed float64, sides []calc.Case) {
	t.Helper()
	walls := ""
	for i := range 4 {
		if i > 0 {
			walls += "; "
		}
		walls += fmt.Sprintf("%d | %s | %s", i+1, clockTime(w.firstBatched()), clockTime(w.sideFull(i)))
	}
	r := calctest.Run(t, handsoff.Calculator, "walls="+walls, "concrete="+w.day.concrete, "air="+w.day.air)
	return r.Out.Num("set"), r.Out.Num("allowed"), r.Out.Rows("lines")
}

// sideFull returns when a side, from 0, has its last concrete.
func (w workedPour) sideFull(i int) float64 {
	begin := w.liftStart(w.placed)
	return begin + (w.last-begin)*float64(i+1)/4
}

// liftStart returns when a lift begins. The base is read before the second.
func (w workedPour) liftStart(n int) float64 {
	begin := w.first + float64(n-1)*w.lift
	if n > 1 {
		begin += footRead
	}
	return begin
}

// firstBatched returns when the first load is batched. It is at the hopper for the priming.
func (w workedPour) firstBatched() float64 {
	batched, _, _ := w.truck(1)
	return batched
}

// isPlaced returns the time of an event of a lift, 0 if the day does not place it.
func (w workedPour) isPlaced(n int, at float64) float64 {
	if n > w.placed {
		return 0
	}
	return at
}

// truck returns when a load is batched and reaches the hopper, and when its drum is empty.
func (w workedPour) truck(n int) (batched, hopper, empty float64) {
	hopper = w.first + float64(n-1)*w.spacing
	batched, empty = hopper-w.ageFirst, hopper+w.spacing
	if n == 1 {
		batched, hopper = batched-primeTime, hopper-primeTime
	} else {
		batched, hopper, empty = batched+footRead, hopper+footRead, empty+footRead
	}
	if w.last > 0 {
		empty = math.Min(empty, w.last)
	}
	return batched, hopper, empty
}

// pourWords are the words of the tables of pour-clock.
var pourWords = map[string]map[string]string{
	"en": {
		"what":      "What",
		"plan":      "Plan",
		"bad":       "Bad day",
		"concrete":  "Concrete, air",
		"net":       "Concrete in the wall",
		"order":     "Ordered, with waste",
		"loads":     "Loads of 7 yd³",
		"spacing":   "One truck every",
		"heads":     "Heads that run, spare",
		"lift":      "One lift of 2 ft",
		"rise":      "Rise, by the lift",
		"window":    "Joint window, from the plant",
		"counts":    "Joint window that counts",
		"age":       "Age when the hose is back, whole lift",
		"age-round": "The same, in rounds of 1 ft as planned",
		"spare":     "Spare to the joint window, at least",
		"no-spare":  "none",
		"verdict":   "Next lift",
		"set":       "Initial set, earliest",
		"allowed":   "Time allowed in the wall",
		"form":      "The form",
		"back-by":   "Next pass back by",
		"pressure":  "Pressure in lifts, as planned",
		"mix":       "Mix for the pressure",
		"plain":     "Type I with a reducer, entered as a retarder, sets in %s at 70 °F",
		"unknown":   "The same, mix not known",
		"unchecked": "not checked: no rating entered",
		"in-time":   "back in time",
		"too-late":  "too late: planned joint",
		"too-fast":  "too fast",
		"start":     "Crew starts by daylight. Named hands walk the wall and prove the strings",
		"pump":      "Pump comes. Operator and signal hand set it, wires first, boom down",
		"batched1":  "First load is batched",
		"walked":    "Wall released. Then foreman and operator walk the pump and release it",
		"talk":      "Crew talk, with the pump operator",
		"ready":     "\"Crew ready\". Only then is the plant told to batch",
		"ticket":    "First ticket, slump test, prime. Each driver has his part of the talk before he backs in",
		"first":     "\"Pump\". Lift 1 begins",
		"second":    "Base read behind the first lift. \"Second lift\": lift 2 begins",
		"liftN":     "Lift %d begins",
		"waits":     "Third truck is due and is not here. Level off, call, test the oldest face",
		"joint":     "Planned joint: level and rough. Engineer called, last trucks called off",
		"off-truck": "called off",
		"last-lift": "Last lift begins",
		"call":      "Latest call for the last truck, %s",
		"full":      "Last concrete. Top up, then strike off from the oldest wall",
		"wash":      "\"Wash out\": last wall topped up, outside watch at the cones",
		"tops":      "Last \"wall full\": struck off, cleats on",
		"done":      "Washed out, clean, signed",
		"pull": "Straighten: corners locked, then curve and strings. " +
			"Truck at the gate: the turner steps out, or the pump stops",
		"sooner":       "First hands off",
		"final":        "Last hands off",
		"load":         "Load",
		"batched":      "batched",
		"hopper":       "at the hopper",
		"empty":        "empty",
		"side":         "Side",
		"off":          "hands off",
		"side1":        "Front, with the curve",
		"side2":        "Right",
		"side3":        "Back",
		"side4":        "Left",
		"lastconcrete": "Last concrete",
		"last":         "after the last concrete",
		"setrule":      "initial set of the first load",
		"after":        "behind the hose",
		"early":        "begin between rounds",
		"between":      "between rounds only",
		"straighten":   "straighten it",
		"by":           "decided by",
	},
	"es": {
		"what":      "Qué",
		"plan":      "Plan",
		"bad":       "Día malo",
		"concrete":  "Concreto, aire",
		"net":       "Concreto en el muro",
		"order":     "Pedido, con desperdicio",
		"loads":     "Cargas de 7 yd³",
		"spacing":   "Un camión cada",
		"heads":     "Cabezas que vibran, repuesto",
		"lift":      "2 ft en todo el muro",
		"rise":      "Subida, según la capa",
		"window":    "Plazo para la junta, según la planta",
		"counts":    "Plazo para la junta que cuenta",
		"age":       "Edad cuando vuelve la manguera, capa entera",
		"age-round": "Lo mismo, en vueltas de 1 ft según el plan",
		"spare":     "Sobra hasta el plazo de la junta, al menos",
		"no-spare":  "nada",
		"verdict":   "Capa que sigue",
		"set":       "Fraguado inicial, lo más pronto",
		"allowed":   "Tiempo permitido en el muro",
		"form":      "La forma",
		"back-by":   "Volver antes de",
		"pressure":  "Presión en capas, según el plan",
		"mix":       "Mezcla para la presión",
		"plain":     "Tipo I con reductor, puesto como retardante, fragua en %s a 70 °F",
		"unknown":   "Lo mismo, mezcla desconocida",
		"unchecked": "sin revisar: no se dio la capacidad",
		"in-time":   "vuelve a tiempo",
		"too-late":  "tarde: junta planeada",
		"too-fast":  "muy rápido",
		"start":     "Empieza la cuadrilla con luz. Los nombrados recorren el muro y prueban los hilos",
		"pump":      "Llega la bomba. La plantan el operador y el de las señas: cables primero, pluma abajo",
		"batched1":  "Se carga el primer camión",
		"walked":    "Muro liberado. Luego mayordomo y operador recorren la bomba y la liberan",
		"talk":      "Plática, con el operador de la bomba",
		"ready":     "\"Cuadrilla lista\". Solo entonces se le dice a la planta que cargue",
		"ticket":    "Primer boleto, revenimiento, cebado. Cada chofer oye su parte de la plática antes de entrar",
		"first":     "\"Bombee\". Empieza la capa 1",
		"second":    "Se leyó la base. \"Segunda capa\": empieza la capa 2",
		"liftN":     "Empieza la capa %d",
		"waits":     "Le toca al tercer camión y no está. Nivele, llame, pruebe la cara más vieja",
		"joint":     "Junta planeada: a nivel y rugosa. Se llama al ingeniero, se cancelan los camiones",
		"off-truck": "cancelado",
		"last-lift": "Empieza la última capa",
		"call":      "A más tardar: llame al último camión, %s",
		"full":      "Último concreto. Se completa y luego se enrasa desde el muro más viejo",
		"wash":      "\"Lave\": último muro completado, el vigía en los conos",
		"tops":      "Último \"muro lleno\": enrasado, tablas puestas",
		"done":      "Lavado, limpio, firmado",
		"pull": "Enderezar: esquinas trabadas, luego curva e hilos. " +
			"Camión en la entrada: el del tensor se sale, o se para la bomba",
		"sooner":       "Primer lado que nadie toca",
		"final":        "Último lado que nadie toca",
		"load":         "Carga",
		"batched":      "hora de carga",
		"hopper":       "en la tolva",
		"empty":        "vacío",
		"side":         "Lado",
		"off":          "nadie toca",
		"side1":        "Frente, con la curva",
		"side2":        "Derecho",
		"side3":        "Atrás",
		"side4":        "Izquierdo",
		"lastconcrete": "Último concreto",
		"last":         "después del último concreto",
		"setrule":      "fraguado de la primera carga",
		"after":        "detrás de la manguera",
		"early":        "empezar entre vueltas",
		"between":      "solo entre vueltas",
		"straighten":   "se endereza",
		"by":           "decide",
	},
}

func init() {
	heading := func(en, es string) map[string]string { return map[string]string{"en": en, "es": es} }
	workedTables = append(workedTables,
		workedTable{"pour-clock", heading("The numbers", "Los números"), pourNumbers},
		workedTable{"pour-clock", heading("The clock", "El reloj"), pourClock},
		workedTable{"pour-clock", heading("The trucks", "Los camiones"), pourTrucks},
		workedTable{"pour-clock", heading("Hands off, side by side", "Nadie toca, lado por lado"), pourSides},
	)
}

func pourNumbers(t *testing.T, lang string) [][]string {
	say := pourWords[lang]
	rows := [][]string{{say["what"], say["plan"], say["bad"]}}
	days := []workedPour{workPour(t, goodDay), workPour(t, badDay)}
	add := func(name string, cell func(w workedPour) string) {
		rows = append(rows, []string{say[name], cell(days[0]), cell(days[1])})
	}
	add("concrete", func(w workedPour) string { return w.day.concrete + ", " + w.day.air })
	add("net", func(w workedPour) string { return tenth(w.net) + " yd³" })
	add("order", func(w workedPour) string { return tenth(w.order) + " yd³" })
	add("loads", func(w workedPour) string { return strconv.Itoa(int(w.loads)) })
	add("spacing", func(w workedPour) string { return minutes(w.spacing) })
	add("heads", func(w workedPour) string { return fmt.Sprintf("%v + %v", w.heads, w.withSpare-w.heads) })
	add("lift", func(w workedPour) string { return minutes(w.lift) })
	add("rise", func(w workedPour) string { return tenth(liftDepth/(w.lift/3600)) + " ft/h" })
	add("window", func(w workedPour) string { return w.day.window })
	add("counts", func(w workedPour) string { return minutes(w.window) })
	add("age", func(w workedPour) string { return minutes(w.returnAge) })
	add("age-round", func(w workedPour) string { return minutes(w.roundAge) })
	add("spare", func(w workedPour) string {
		if w.roundAge >= w.window {
			return say["no-spare"]
		}
		return minutes(early(w.window - w.roundAge))
	})
	add("verdict", func(w workedPour) string { return say[verdictWord(t, w.verdict)] })
	add("set", func(w workedPour) string { return tenth(w.set/3600) + " h" })
	add("allowed", func(w workedPour) string { return minutes(w.allowed) })
	add("back-by", func(w workedPour) string { return minutes(early(w.backBy)) })
	psf := func(p float64) string {
		return strconv.Itoa(int(math.Ceil(p/calc.SI(1, "psf")/10-1e-9))*10) + " psf"
	}
	add("mix", func(workedPour) string { return fmt.Sprintf(say["plain"], jobSet) })
	add("pressure", func(w workedPour) string { return psf(w.pressure) })
	add("unknown", func(w workedPour) string { return psf(w.unknownMix) })
	add("form", func(workedPour) string { return say["unchecked"] })
	return rows
}

// verdictWord returns the key in pourWords of a verdict of rate-of-rise.
func verdictWord(t *testing.T, id string) string {
	t.Helper()
	keys := []string{"in-time", "too-late", "too-fast"}
	for i, o := range rateofrise.Calculator.Out[0].Options[:len(keys)] {
		if o.ID == id {
			return keys[i]
		}
	}
	t.Fatalf("rate-of-rise has the verdict %q, which the worked pour has no word for", id)
	return ""
}

func pourClock(t *testing.T, lang string) [][]string {
	say := pourWords[lang]
	good, bad := workPour(t, goodDay), workPour(t, badDay)
	type event struct {
		text      string
		good, bad float64 // 0 if the day has no such event
	}
	var events []event
	add := func(text string, at func(w workedPour) float64) {
		events = append(events, event{text, at(good), at(bad)})
	}
	add(say["start"], func(w workedPour) float64 { return w.start })
	add(say["pump"], func(w workedPour) float64 { return w.start + pumpComes })
	add(say["walked"], func(w workedPour) float64 { return w.start + wallWalked })
	add(say["talk"], func(w workedPour) float64 { return w.start + talkBegins })
	add(say["ready"], func(w workedPour) float64 { return w.start + talkBegins + talkTime })
	add(say["batched1"], func(w workedPour) float64 { return w.firstBatched() })
	add(say["ticket"], func(w workedPour) float64 { return w.first + firstTest })
	add(say["first"], func(w workedPour) float64 { return w.first })
	add(say["second"], func(w workedPour) float64 { return w.liftStart(2) })
	for n := 3; n < good.lifts; n++ {
		add(fmt.Sprintf(say["liftN"], n), func(w workedPour) float64 { return w.isPlaced(n, w.liftStart(n)) })
	}
	events = append(events,
		event{say["waits"], 0, bad.thirdTruck},
		event{say["joint"], 0, early(bad.joint)},
	)
	last := fmt.Sprintf(say["call"], tenth(good.callOrder)+" yd³")
	add(last, func(w workedPour) float64 { return early(w.callBy) })
	add(say["last-lift"], func(w workedPour) float64 { return w.isPlaced(w.lifts, w.liftStart(w.lifts)) })
	add(say["full"], func(w workedPour) float64 { return w.isPlaced(w.lifts, w.last) })
	add(say["wash"], func(w workedPour) float64 { return w.isPlaced(w.lifts, w.last+topUpTime) })
	add(say["tops"], func(w workedPour) float64 { return w.isPlaced(w.lifts, w.last+topsTime) })
	add(say["pull"], func(w workedPour) float64 { return w.sideFull(0) })
	add(say["sooner"], func(w workedPour) float64 { return early(sideTimes(w)[0]) })
	add(say["final"], func(w workedPour) float64 { return early(sideTimes(w)[3]) })
	add(say["done"], func(w workedPour) float64 { return w.done })
	when := func(e event) float64 {
		if e.good == 0 {
			return e.bad
		}
		return e.good
	}
	slices.SortStableFunc(events, func(a, b event) int { return cmp.Compare(when(a), when(b)) })
	rows := [][]string{{say["plan"], say["bad"], say["what"]}}
	for _, e := range events {
		rows = append(rows, []string{fiveMinutes(e.good), fiveMinutes(e.bad), e.text})
	}
	return rows
}

// sideTimes returns the times of hands off of the sides, in order.
func sideTimes(w workedPour) []float64 {
	var times []float64
	for _, s := range w.sides {
		times = append(times, s.Num("off"))
	}
	slices.Sort(times)
	return times
}

func pourTrucks(t *testing.T, lang string) [][]string {
	say := pourWords[lang]
	good, bad := workPour(t, goodDay), workPour(t, badDay)
	rows := [][]string{{say["load"]}}
	for _, day := range []string{"plan", "bad"} {
		for _, what := range []string{"batched", "hopper", "empty"} {
			rows[0] = append(rows[0], say[day]+": "+say[what])
		}
	}
	for n := 1; n <= int(good.loads); n++ {
		row := []string{strconv.Itoa(n)}
		for _, w := range []workedPour{good, bad} {
			batched, hopper, empty := w.truck(n)
			if w.joint > 0 && n > 2 {
				row = append(row, say["off-truck"], say["off-truck"], say["off-truck"])
				continue
			}
			row = append(row, fiveMinutes(batched), fiveMinutes(hopper), fiveMinutes(empty))
		}
		rows = append(rows, row)
	}
	return rows
}

func pourSides(t *testing.T, lang string) [][]string {
	say := pourWords[lang]
	rules := map[string]string{"last": say["last"], "set": say["setrule"]}
	good, bad := workPour(t, goodDay), workPour(t, badDay)
	rows := [][]string{{say["side"]}}
	for _, day := range []string{"plan", "bad"} {
		rows[0] = append(rows[0], say[day]+": "+say["off"], say["by"], say["straighten"])
	}
	for i := range good.sides {
		row := []string{say["side"+strconv.Itoa(i+1)]}
		for _, w := range []workedPour{good, bad} {
			side := w.sides[i]
			rule, plan := rules[side.Choice("rule")], say[side.Choice("plan")]
			if rule == "" || plan == "" {
				t.Fatalf("hands-off answers %s, %s, which the worked pour has no words for", side.Choice("rule"),
					side.Choice("plan"))
			}
			row = append(row, fiveMinutes(early(side.Num("off"))), rule, plan)
		}
		rows = append(rows, row)
	}
	return rows
}

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
		if w.backBy <= w.lift+footRead || w.returnAge-w.day.late > w.window {
			t.Errorf("%s: a pass of %v min is not back by %v min", name, w.lift/minute, w.backBy/minute)
		}
		if w.window > weather.JointWindow {
			t.Errorf("%s: a joint window of %v min counts", name, w.window/minute)
		}
	}
	if spare := good.window - good.roundAge; spare < leastSpare {
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
	if good.heads > 3 {
		t.Errorf("%v heads, and nine hands have three", good.heads)
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

func yards(v float64) string { return strconv.FormatFloat(v, 'f', 4, 64) + " yd3" }

func tenth(v float64) string { return strconv.FormatFloat(v, 'f', 1, 64) }

// minutes writes a duration in s, to five minutes.
func minutes(s float64) string {
	return strconv.Itoa(int(math.Round(s/(5*minute)))*5) + " min"
}

// clockTime writes a time of day for an input.
func clockTime(s float64) string {
	m := int(math.Round(s / minute))
	return fmt.Sprintf("%d:%02d", m/60, m%60)
}

// fiveMinutes writes a time of day to the nearest five minutes; 0 is a dash.
func fiveMinutes(s float64) string {
	if s == 0 {
		return "–"
	}
	return clockTime(math.Round(s/(5*minute)) * 5 * minute)
}

// early returns a time of day down to five minutes, for a time that may not be passed.
func early(s float64) float64 { return math.Floor(s/(5*minute)) * 5 * minute }
