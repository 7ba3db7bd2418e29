package main

import (
	"math"
	"os"
	"path/filepath"
	"regexp"
	"strings"
	"testing"

	"coursebook/calculators/calc"
	"coursebook/calculators/consolidation/vibrator"
	"coursebook/calculators/placing/lasttruck"
	"coursebook/calculators/placing/truckspacing"
	"coursebook/calculators/pressure/formpressure"
	"coursebook/calculators/ties/blockoutuplift"
)

// statedFigure is a figure in the prose of a page that a calculator works out.
type statedFigure struct {
	slug string
	// text is the passage of the page in each language; links to house rules are removed.
	text map[string]string
	// The calculator gives the figure as an output in a unit, within tol.
	calculator *calc.Calculator
	inputs     []string
	output     string
	unit       string
	figure     float64
	tol        float64
}

// sill is the frame of page under-windows: 36 in. long in an 8 in. wall, with 5 ft from the
// underside of its sill to the top of the wall.
var sill = []string{"length=36 in", "thickness=8 in", "height=60 in", "own=0 lb"}

// frame is the frame of page window-frames, under all the concrete above its sill.
var frame = []string{"length=48 in", "thickness=8 in", "height=60 in", "own=0 lb", "side-a=5 ft", "side-b=5 ft",
	"factor=2"}

// inLifts is the wall of the lesson on pressure.
var inLifts = []string{"height=8 ft", "length=140 ft", "thickness=8 in", "pump-rate=12 yd³/h", "cement=plain",
	"admixture=retards", "lift=2 ft", "age=90 min", "set=5 h", "temperature=70 °F"}

// unknownMix is the same wall with a ticket that names neither cement nor admixtures.
var unknownMix = []string{"height=8 ft", "length=140 ft", "thickness=8 in", "pump-rate=12 yd³/h", "lift=2 ft",
	"age=90 min", "temperature=70 °F"}

// loop is the wall of the pages on vibrators.
var loop = []string{"length=160 ft", "core=8 in", "lift=2 ft"}

var statedFigures = []statedFigure{
	{
		slug: "under-windows",
		text: map[string]string{
			"en": "lifted by 600 lb with 2 ft of concrete above its underside",
			"es": "se levanta con 600 lb si hay 2 ft de concreto arriba de su parte de abajo",
		},
		calculator: blockoutuplift.Calculator, inputs: append(sill[:4:4], "side-a=2 ft", "side-b=2 ft"),
		output: "uplift", unit: "lbf", figure: 600, tol: 1,
	},
	{
		slug:       "under-windows",
		text:       map[string]string{"en": "and by 1500 lb with 5 ft", "es": "Con 5 ft son 1500 lb"},
		calculator: blockoutuplift.Calculator, inputs: append(sill[:4:4], "side-a=5 ft", "side-b=5 ft"),
		output: "uplift", unit: "lbf", figure: 1500, tol: 1,
	},
	{
		slug:       "window-frames",
		text:       map[string]string{"en": "5 ft are above it: 2000 lb", "es": "quedan 5 ft arriba: 2000 lb"},
		calculator: blockoutuplift.Calculator, inputs: frame,
		output: "uplift", unit: "lbf", figure: 2000, tol: 1,
	},
	{
		slug:       "window-frames",
		text:       map[string]string{"en": "times that, 4000 lb", "es": "veces eso, 4000 lb"},
		calculator: blockoutuplift.Calculator, inputs: frame,
		output: "hold", unit: "lbf", figure: 4000, tol: 1,
	},
	{
		slug:       "lesson-pressure",
		text:       map[string]string{"en": "as fluid. That is 910 psf", "es": "como líquido. Son 910 psf"},
		calculator: formpressure.Calculator, inputs: inLifts,
		output: "pressure-local", unit: "psf", figure: 910, tol: 10,
	},
	{
		slug:       "lesson-pressure",
		text:       map[string]string{"en": "Here that is 1200 psf again", "es": "Aquí son otra vez 1200 psf"},
		calculator: formpressure.Calculator, inputs: unknownMix,
		output: "pressure-local", unit: "psf", figure: 1200, tol: 1,
	},
	{
		slug:       "lesson-pressure",
		text:       map[string]string{"en": "is 3.5 ft/h", "es": "son 3.5 ft/h"},
		calculator: formpressure.Calculator, inputs: inLifts,
		output: "rise-local", unit: "ft/h", figure: 3.5, tol: 0.05,
	},
	{
		slug:       "lesson-pressure",
		text:       map[string]string{"en": "is 1200 psf at the base", "es": "son 1200 psf en el pie"},
		calculator: formpressure.Calculator,
		inputs:     append(inLifts[:6:6], "how=once", "stop=6 ft"),
		output:     "pressure-local", unit: "psf", figure: 1200, tol: 1,
	},
	{
		slug: "around-block-outs",
		text: map[string]string{
			"en": "12 in. by 12 in. by 8 in. is lifted by 100 lb",
			"es": "12 in. por 12 in. por 8 in. se levanta con 100 lb",
		},
		calculator: blockoutuplift.Calculator,
		inputs: []string{"length=12 in", "thickness=8 in", "height=12 in", "own=0 lb",
			"side-a=1 ft", "side-b=1 ft"},
		output: "uplift", unit: "lbf", figure: 100, tol: 1,
	},
	{
		slug: "first-course-lifts",
		text: map[string]string{
			"en": "Foam 2-1/2 in. thick with paste under it and 2 ft of concrete inside " +
				"is pushed up with more than 60 lb",
			"es": "El foam de 2-1/2 in. con pasta debajo y 2 ft de concreto adentro sube con más de 60 lb",
		},
		calculator: blockoutuplift.Calculator,
		inputs: []string{"length=12 in", "thickness=2-1/2 in", "height=24 in", "own=0 lb",
			"side-a=2 ft", "side-b=2 ft"},
		output: "uplift", unit: "lbf", figure: 62.5, tol: 0.5,
	},
	{
		slug:       "last-truck-call",
		text:       map[string]string{"en": "takes 5.4 yd³", "es": "lleva 5.4 yd³"},
		calculator: lasttruck.Calculator, inputs: openWall,
		output: "open-yd", unit: "yd3", figure: 5.4, tol: 0.05,
	},
	{
		slug:       "last-truck-call",
		text:       map[string]string{"en": "With 10 % it is 6 yd³", "es": "Con 10 % son 6 yd³"},
		calculator: lasttruck.Calculator, inputs: openWall,
		output: "with-waste-yd", unit: "yd3", figure: 6, tol: 0.05,
	},
	{
		slug: "last-truck-call",
		text: map[string]string{
			"en": "so half a yard comes off: call 5.5 yd³", "es": "así que se quita media yarda: pida 5.5 yd³",
		},
		calculator: lasttruck.Calculator,
		inputs:     append(openWall[:4:4], "drums.1.volume=1 yd3", "drums.1.how=guess"),
		output:     "order-yd", unit: "yd3", figure: 5.5, tol: 0.01,
	},
	{
		slug: "order-concrete",
		text: map[string]string{
			"en": "A truck with 5 yd³ then lasts about 25 min.", "es": "Un camión con 5 yd³ dura como 25 min.",
		},
		calculator: truckspacing.Calculator, inputs: fiveYards, output: "spacing", unit: "min", figure: 25,
		tol: 0.01,
	},
	{
		slug:       "order-concrete",
		text:       map[string]string{"en": "make 85 min.", "es": "son 85 min."},
		calculator: truckspacing.Calculator, inputs: fiveYards, output: "cycle", unit: "min", figure: 85,
		tol: 0.01,
	},
	{
		slug: "order-concrete",
		text: map[string]string{
			"en": "Divided by 25, that is four trucks.", "es": "Entre 25, son cuatro camiones.",
		},
		calculator: truckspacing.Calculator, inputs: fiveYards, output: "trucks", figure: 4,
	},
	{
		slug: "book-pump-and-trucks",
		text: map[string]string{
			"en": "At 12 yd³/h, a truck with 5 yd³ lasts 25 min.", "es": "A 12 yd³/h, un camión de 5 yd³ dura 25 min.",
		},
		calculator: truckspacing.Calculator, inputs: fiveYards, output: "spacing", unit: "min", figure: 25,
		tol: 0.01,
	},
	{
		slug:       "vibrator-quits",
		text:       map[string]string{"en": "about 1 head at 5 yd³/h", "es": "como 1 cabeza con 5 yd³/h"},
		calculator: vibrator.Calculator, inputs: append(loop[:3:3], "pump=5 yd³/h"),
		output: "vibrators", figure: 1,
	},
	{
		slug:       "vibrator-quits",
		text:       map[string]string{"en": "2 at 10", "es": "2 con 10"},
		calculator: vibrator.Calculator, inputs: append(loop[:3:3], "pump=10 yd³/h"),
		output: "vibrators", figure: 2,
	},
	{
		slug:       "vibrator-quits",
		text:       map[string]string{"en": "3 at 15", "es": "3 con 15"},
		calculator: vibrator.Calculator, inputs: append(loop[:3:3], "pump=15 yd³/h"),
		output: "vibrators", figure: 3,
	},
	{
		slug: "vibrator-quits",
		text: map[string]string{
			"en": "In rounds of 1 ft it takes 2 heads at 5 yd³/h", "es": "son 2 cabezas con 5 yd³/h",
		},
		calculator: vibrator.Calculator, inputs: []string{loop[0], loop[1], "lift=1 ft", "pump=5 yd³/h"},
		output: "vibrators", figure: 2,
	},
	{
		slug:       "vibrator-quits",
		text:       map[string]string{"en": "and 3 at 8.", "es": "y 3 con 8."},
		calculator: vibrator.Calculator, inputs: []string{loop[0], loop[1], "lift=1 ft", "pump=8 yd³/h"},
		output: "vibrators", figure: 3,
	},
	{
		slug: "internal-vibration",
		text: map[string]string{
			"en": "If you have not seen the reach, step 7-1/2 in.", "es": "Si no lo ha visto, avance de 7-1/2 in.",
		},
		calculator: vibrator.Calculator, inputs: []string{"plan=low"},
		output: "spacing", unit: "in", figure: 7.5, tol: 0.25,
	},
	{
		slug: "internal-vibration",
		text: map[string]string{
			"en": "With a head under 1-1/4 in., step 4-1/2 in. until you have seen it.",
			"es": "Con una cabeza de menos de 1-1/4 in., de 4-1/2 in. en 4-1/2 in. hasta que lo vea.",
		},
		calculator: vibrator.Calculator, inputs: []string{"head=pencil", "plan=low"},
		output: "spacing", unit: "in", figure: 4.5, tol: 0.25,
	},
	{
		slug: "internal-vibration",
		text: map[string]string{
			"en": "as the calculator plans | 11 in.", "es": "como cuenta la calculadora | 11 in.",
		},
		calculator: vibrator.Calculator, output: "spacing", unit: "in", figure: 11, tol: 0.5,
	},
}

// fiveYards are the trucks of the pages order-concrete and book-pump-and-trucks.
var fiveYards = []string{"truck=5 yd³", "rate=12 yd³/h", "haul=20 min"}

// openWall is the example of page last-truck-call.
var openWall = []string{"walls.1.length=110 ft", "walls.1.core=8 in", "walls.1.height=2 ft", "waste=10 %"}

// TestStatedFigures compares figures in the prose of the manual with the calculators.
func TestStatedFigures(t *testing.T) {
	for _, s := range statedFigures {
		for lang, text := range s.text {
			if !strings.Contains(pageText(t, lang, s.slug), text) {
				t.Errorf("%s/%s.md does not say %q: change the page and this test together", lang, s.slug, text)
			}
		}
		got := numberOf(t, s.calculator, s.output, s.unit, s.inputs...)
		if math.Abs(got-s.figure) > s.tol {
			t.Errorf("page %s says %v; %s gives %s = %v %s for %v",
				s.slug, s.figure, s.calculator.ID, s.output, got, s.unit, s.inputs)
		}
	}
}

// sameWords are sentences that every page on a matter has word for word.
var sameWords = []struct {
	slugs []string
	text  map[string]string
}{
	{
		slugs: []string{"external-vibration", "lesson-foot-of-the-wall"},
		text: map[string]string{
			"en": "The outside tool goes on a fastening strip, in the first lift only and after the whip. " +
				"No more than that lift may be in the wall. " +
				"It is unproven and never takes the place of the vibrator inside.",
			"es": "El aparato de afuera va sobre una tira, solo en la primera capa y después del chicote. " +
				"En el muro no puede haber más que esa capa. " +
				"No está probado y nunca reemplaza el vibrado por dentro.",
		},
	},
	{
		slugs: []string{"pump-breakdown", "late-truck", "pour-day-card", "crew-sheet"},
		text: map[string]string{
			"en": "A planned pause is 15 min at most: hopper covered, hose off the wall, operator keeping " +
				"it moving. Once \"pair out\" is called back, the hose hand calls \"first flow\" to the signal hand. " +
				"It goes in the tub, and nobody is at the hose end until it is steady. " +
				"Then the foreman or his deputy says \"pump\". Anything else is a stop and " +
				"needs the release: a plug, a breakdown, a late truck, a blow-out, weather, a longer pause.",
			"es": "Una pausa planeada dura 15 min cuando mucho: tolva tapada, manguera fuera del muro y el " +
				"operador moviendo el concreto. Ya contestado \"pareja fuera\", el de la manguera le dice " +
				"\"primer chorro\" al de las señas. Va a la tina, y nadie está en la punta hasta que salga parejo. " +
				"Luego el mayordomo o su suplente dice \"bombee\". Todo lo demás " +
				"es paro y pide liberación: tapón, descompostura, camión tarde, reventada, clima, una pausa más larga.",
		},
	},
	{
		slugs: []string{"crew-sheet", "crew-talk"},
		text: map[string]string{
			"en": "there is none, and the hose hand calls \"crew ready\"",
			"es": "no hay, y el de la manguera canta \"cuadrilla lista\"",
		},
	},
	{
		slugs: []string{"order-concrete", "book-pump-and-trucks", "placing-by-lifts"},
		text: map[string]string{
			"en": "With no pressure rating of the form from its maker or the engineer there is no pour.",
			"es": "Sin la presión que aguanta la forma, del fabricante o del ingeniero, no se cuela.",
		},
	},
	{
		slugs: []string{"top-of-the-wall", "anchor-bolts-and-embeds", "lesson-top-and-last-truck"},
		text: map[string]string{
			"en": "leat comes off only for the bay you are striking off, and goes back on at once.",
			"es": "únicamente en el tramo que está enrasando, y póngala otra vez enseguida.",
		},
	},
}

// TestSameWords checks that pages on one matter agree word for word.
func TestSameWords(t *testing.T) {
	for _, s := range sameWords {
		for _, slug := range s.slugs {
			for lang, text := range s.text {
				if !strings.Contains(pageText(t, lang, slug), text) {
					t.Errorf("%s/%s.md does not have the sentence %q", lang, slug, text)
				}
			}
		}
	}
}

// contradictions are phrases that no page may have, with what the manual says instead.
var contradictions = []struct{ lang, phrase, instead string }{
	{"en", "one of them the spare", "the count of the calculator, and one spare"},
	{"es", "uno de ellos de repuesto", "los que da la calculadora, y uno de repuesto"},
	{"en", "at least 6 in. into the old lift", "about 6 in., no deeper"},
	{"es", "6 in. o más en la capa vieja", "como 6 in., no más"},
	{"en", "up to just below the sill", "1 to 2 ft above the underside of the sill"},
	{"es", "hasta poco abajo del antepecho", "de 1 a 2 ft arriba de la parte de abajo"},
	{"en", "a hand below", "the distance in inches"},
	{"es", "una mano abajo", "la distancia en pulgadas"},
	{"en", "let the first concrete cover it", "the running head goes in after the concrete has landed"},
	{"es", "deje que el primer concreto la tape", "la cabeza prendida entra cuando ya cayó el concreto"},
	{"en", "two named hands come from", "the two kit hands"},
	{"es", "dos personas nombradas llegan", "los dos del kit"},
	{"en", "the competent person says \"in\" as well", "nobody goes into the slot while the concrete is fresh"},
	{"es", "también dice \"adentro\" la persona", "nadie se mete entre el muro y el corte con concreto fresco"},
	{"en", "the foreman signs the plank", "the competent person signs the tag of the planks"},
	{"es", "el mayordomo firma otra vez la etiqueta", "la persona competente firma la etiqueta de los tablones"},
	{"en", "the boom comes down", "the operator folds the boom only if there is time"},
	{"es", "baja la pluma y todos", "el operador dobla la pluma solo si hay tiempo"},
	{"en", "calls \"pump\" to the signal hand", "the hose hand calls \"first flow\", the foreman says \"pump\""},
	{"es", "dice \"bombee\" al de las señas", "el de la manguera dice \"primer chorro\", el mayordomo \"bombee\""},
	{"en", "the line hand calls \"wall full\"", "the hose hand calls it"},
	{"es", "el del hilo canta \"muro lleno\"", "lo canta el de la manguera"},
	{"en", "the outside watch is the spotter", "the spotter watches the wire, the outside watch the wash-out"},
	{"en", "watch calls \"crew ready\"", "the hose hand calls it where there is no deputy"},
	{"es", "vigía de afuera canta \"cuadrilla lista\"", "la canta el de la manguera donde no hay suplente"},
	{"en", "or slow the pump to the heads that run", "no pour begins without every head and a spare"},
	{"es", "según las cabezas que sirven", "no se empieza sin todas las cabezas y una de repuesto"},
	{"en", "trade places with somebody", "the foreman names a hand who was shown the place, pump stopped"},
	{"es", "cambie con un compañero", "el mayordomo nombra a quien ya aprendió el lugar, bomba parada"},
	{"en", "draws out and calls \"swap\"", "the hose stops at \"swap\", then the head comes out"},
	{"es", "saca la cabeza y grita \"cambio\"", "la manguera se para con \"cambio\", luego sale la cabeza"},
	{"en", "if it is over 90 °f, go by", "over 80 °F, or in air over 85 °F, hot load decides"},
	{"es", "si pasa de 90 °f, siga", "a más de 80 °F, o con aire de más de 85 °F, decide carga caliente"},
	{"en", "| concrete at 90 °f |", "a load over 80 °F or air over 85 °F: by hot load"},
	{"es", "| concreto a 90 °f |", "carga de más de 80 °F o aire de más de 85 °F: según carga caliente"},
	{"en", "count two lifts", "all the concrete above the underside of the sill counts"},
	{"es", "cuente dos capas", "cuenta todo el concreto sobre la cara de abajo del antepecho"},
	{"en", "steps out after each turn", "the turner keeps the bar on until GOOD or \"pair out\""},
	{"es", "se sale después de cada giro", "la barra se queda puesta hasta BUENO o \"pareja fuera\""},
	{"en", "if nothing moves, he says \"go in\"", "two quiet looks, five minutes apart"},
	{"es", "si nada se mueve, dice \"entren\"", "quieto en dos miradas, con cinco minutos entre una y otra"},
	{"en", "vibrator and hose hands trade", "the hose hand and the second hose hand trade places"},
	{"es", "los de los vibradores y los de la manguera se cambian", "el de la manguera y su segundo se cambian"},
	{"en", "clear that side and let nobody go up", "both sides are cleared, by the height plus 4 ft"},
	{"es", "despeje ese lado y que nadie suba", "se despejan los dos lados, la altura más 4 ft"},
	{"en", "hose hand and watch", "the outside watch stays at his place until the last hands off"},
	{"en", "hose hand and the watch", "the outside watch stays at his place until the last hands off"},
	{"en", "outside watch at the cones", "a new hand or the hose hand is at the cones"},
	{"es", "el de la manguera y el vigía", "el vigía sigue en su lugar hasta el último \"nadie toca\""},
	{"es", "el vigía de afuera en los conos", "cuida los conos un nuevo o el de la manguera"},
	{"en", "limit comes first. if he gives none", "without a pressure rating there is no pour"},
	{"es", "fabricante de la forma. si no da ninguno", "sin la presión que aguanta la forma no se cuela"},
}

// TestNoContradiction checks every page for phrases that contradict another page.
func TestNoContradiction(t *testing.T) {
	for _, c := range contradictions {
		names, err := filepath.Glob(filepath.Join(contentDir, c.lang, "*.md"))
		if err != nil || len(names) == 0 {
			t.Fatal(len(names), err)
		}
		for _, name := range names {
			slug := strings.TrimSuffix(filepath.Base(name), ".md")
			if strings.Contains(strings.ToLower(pageText(t, c.lang, slug)), c.phrase) {
				t.Errorf("%s says %q; the manual says %s", name, c.phrase, c.instead)
			}
		}
	}
}

// rulePattern matches the link of a house rule.
var rulePattern = regexp.MustCompile(`\[([^\[\]]*)\]\(rule:[a-z0-9-]*\)`)

// glossPattern matches the English term in parentheses that a Spanish page may give.
var glossPattern = regexp.MustCompile(` \(\*?[a-z -]+\*?\)`)

// pageText returns a page with its house rules as plain text and without glosses.
func pageText(t *testing.T, lang, slug string) string {
	t.Helper()
	data, err := os.ReadFile(filepath.Join(contentDir, lang, slug+".md"))
	if err != nil {
		t.Fatal(err)
	}
	text := rulePattern.ReplaceAllString(string(data), "$1")
	if lang != "en" {
		text = glossPattern.ReplaceAllString(text, "")
	}
	return text
}
