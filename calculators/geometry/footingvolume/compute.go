package footingvolume

import (
	"coursebook/calculators/calc"
	"coursebook/calculators/displays"
	"coursebook/calculators/geometry"
)

const (
	cornersEat = calc.Text("The corners take off more than this length holds. Check length, width and corners.")
	thin       = calc.Text("This is under {limit} deep. Few codes allow so thin a footing. Is the depth right?")
	swapped    = calc.Text("This is deeper than it is wide. Are width and depth swapped?")
	thick      = calc.Text("This stem wall is thicker than it is high. Are width and height swapped?")
)

// steps is the number of rows in the worked example.
const steps = 3

// least is the least thickness of a footing in metres, 6 in.
// (International Residential Code, R403.1.1).
const least = 6 * 0.0254

// computeFootings sets the volumes and the order. It refuses a part whose corners
// take up its whole length.
func computeFootings(r *calc.Recorder, in calc.Case) {
	var net float64
	byKind := make([]float64, len(kinds))
	for i, p := range in.Rows("parts") {
		volume := geometry.RunVolumeFormula.Value
		if i < steps {
			volume = func(si ...float64) float64 { return r.Use(geometry.RunVolumeFormula, si...) }
		}
		length, width, corners := p.Num("length"), p.Num("width"), p.Num("corners")
		if geometry.CentreLine(length, corners, width) <= 0 {
			r.Refuse(calc.Cell("parts", p.RowNumber(), "corners"), cornersEat)
			return
		}
		v := volume(p.Num("count"), length, corners, width, p.Num("depth"))
		net += v
		byKind[kindAt(p.Choice("kind"))] += v
		askFooting(r, p)
	}
	putFootings(r, in, net, byKind)
}

// kindAt returns the index of a kind by its ID; 0 for an unknown one.
func kindAt(id string) int {
	for i := range kinds {
		if kinds[i].ID == id {
			return i
		}
	}
	return 0
}

// askFooting adds a question for a size that may be mistyped.
func askFooting(r *calc.Recorder, p calc.Case) {
	width, depth := p.Num("width"), p.Num("depth")
	at := calc.Cell("parts", p.RowNumber(), "depth")
	switch kind := p.Choice("kind"); {
	case kind == stemWallKind:
		if calc.Over(width, depth) {
			r.Note(calc.LevelAsk, at, thick)
		}
	case kind == gradeBeamKind:
	case calc.Over(depth, width):
		r.Note(calc.LevelAsk, at, swapped)
	case calc.Over(least, depth):
		r.Note(calc.LevelAsk, at, thin, calc.Amount("limit", least, &displays.Part))
	}
}

// putFootings sets the order for a net volume, in m³, and the volumes by kind.
func putFootings(r *calc.Recorder, in calc.Case, net float64, byKind []float64) {
	need := r.Use(geometry.WithWasteFormula, net, in.Num("waste"))
	var order float64
	if in.Choice("sold-in") == "m3" {
		order = r.Use(geometry.OrderMetresFormula, need, in.Num("step-m"))
	} else {
		r.Use(geometry.InCubicYardsFormula, need)
		order = r.Use(geometry.OrderYardsFormula, need, in.Num("step-yd"))
	}
	geometry.PutVolume(r, "net", net)
	geometry.PutVolume(r, "with-waste", need)
	geometry.PutVolume(r, "order", order)
	r.Put("extra", r.Use(geometry.ExtraFormula, order, net))
	var rows []calc.Case
	for i, v := range byKind {
		if v > 0 {
			rows = append(
				rows,
				r.NewRow("by-kind").
					With("kind", calc.ChoiceOf(kinds[i].ID)).
					With("yd", calc.Num(v)).
					With("m", calc.Num(v)),
			)
		}
	}
	r.PutRows("by-kind", rows)
}
