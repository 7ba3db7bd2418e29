package markdown

import "strings"

// words are what the constructs are called in a language.
type words struct {
	table string // the label of a table without a heading above it
}

// signals are the signal words of ANSI Z535.6 and their Spanish counterparts,
// with their level. All hold on every page, so that a page that
// is being translated does not lose a caution.
var signals = map[string]string{
	"DANGER": "danger", "WARNING": "warning", "CAUTION": "caution", "NOTICE": "notice",
	"PELIGRO": "danger", "ADVERTENCIA": "warning", "ATENCIÓN": "caution", "PRECAUCIÓN": "caution", "AVISO": "notice",
}

// signalWords lists the words for hints, in order of gravity.
var signalWords = []string{"DANGER", "WARNING", "CAUTION", "NOTICE", "PELIGRO", "ADVERTENCIA", "ATENCIÓN", "PRECAUCIÓN",
	"AVISO"}

// holdLeads are the leads of a hold point, in lower case.
var holdLeads = []string{"hold point", "punto de espera"}

// alsoLeads open the list of a term's other names.
var alsoLeads = []string{"also:", "also called:", "también:", "en inglés:"}

// taughtLead opens the other names of a term in the language that is taught.
const taughtLead = "en inglés: "

// wordsOf returns the words of a language by its code, such as es or es-mx; the
// English ones for a language that is not known.
func wordsOf(lang string) words {
	if base, _, _ := strings.Cut(lang, "-"); base == "es" {
		return words{table: "Tabla"}
	}
	return words{table: "Table"}
}
