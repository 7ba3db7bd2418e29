package ties

import (
	"coursebook/calculators/calc"
	"coursebook/calculators/displays"
)

const (
	tieOver    = calc.Text("The ties may tear. One carries {load} and may carry {working}. Do not place this way.")
	tieFactor  = calc.Text("The factor is below 2. ACI 347 asks for at least 2 on form ties.")
	tieAsk     = calc.Text("What load breaks the tie? Without the form maker's figure there is no verdict.")
	tieMany    = calc.Text("So many missing in one place leave more than the ties in doubt. Ask the engineer.")
	tieShare   = calc.Text("More than two ties share the load. That holds only where the face spreads it both ways.")
	tieBack    = calc.Text("The face is weakened and no capacity is known. Back it with boards and a brace before placing.")
	tieBeyond  = calc.Text("The pressure of {pressure} is above the capacity entered. Back the face, or keep the fluid concrete to {height} above it.")
	tieNoNeed  = calc.Text("A capacity was entered, but the face is whole. It is not used.")
	meansArea  = calc.Text("face that one tie holds")
	meansMiss  = calc.Text("ties missing")
	meansShare = calc.Text("whole ties that take over")
	meansUp    = calc.Text("ties apart up the wall")
	meansWork  = calc.Text("working load of a tie")
)

var eqArea = &calc.Formula{
	ID: "area", Title: calc.Text("Face that one tie holds"),
	Expr: "s_h*s_v*(1 + n/m)", Result: calc.Var{Symbol: "A", Meaning: meansArea, Unit: "m²", US: "ft²"},
	Vars: []calc.Var{
		{Symbol: "s_h", Meaning: calc.Text("ties apart along the wall"), Unit: "m", US: "ft"},
		{Symbol: "s_v", Meaning: meansUp, Unit: "m", US: "ft"},
		{Symbol: "n", Meaning: meansMiss}, {Symbol: "m", Meaning: meansShare},
	},
	Fn: calc.Func4(TieArea), Go: "ties.TieArea", Source: "sharing",
	Limits: calc.Text("For ties only. It says nothing about the foam between them."),
}

var eqLoad = &calc.Formula{
	ID: "load", Title: calc.Text("Load on a tie"),
	Expr: "p*A", Result: calc.Var{Symbol: "F", Meaning: meansF, Unit: "kN", US: "lbf"},
	Vars: []calc.Var{{Symbol: "p", Meaning: meansP, Unit: "kPa", US: "psf"}, {Symbol: "A", Meaning: meansArea, Unit: "m²", US: "ft²"}},
	Fn:   calc.Func2(TieForce), Go: "ties.TieForce", Source: "florida",
}

var eqWorking = &calc.Formula{
	ID: "working", Title: calc.Text("Working load"),
	Expr: "F_b/k", Result: calc.Var{Symbol: "F_w", Meaning: meansWork, Unit: "kN", US: "lbf"},
	Vars: []calc.Var{{Symbol: "F_b", Meaning: calc.Text("breaking strength of a tie"), Unit: "kN", US: "lbf"},
		{Symbol: "k", Meaning: calc.Text("factor on breaking")}},
	Fn: calc.Func2(WorkingLoad), Go: "ties.WorkingLoad", Source: "factor",
}

var eqWidest = &calc.Formula{
	ID: "widest", Title: calc.Text("Widest spacing"),
	Expr: "F_w/(p*s_v*(1 + n/m))", Result: calc.Var{Symbol: "s", Meaning: calc.Text("widest spacing along the wall"), Unit: "m", US: "ft"},
	Vars: []calc.Var{
		{Symbol: "F_w", Meaning: meansWork, Unit: "kN", US: "lbf"}, {Symbol: "p", Meaning: meansP, Unit: "kPa", US: "psf"},
		{Symbol: "s_v", Meaning: meansUp, Unit: "m", US: "ft"}, {Symbol: "n", Meaning: meansMiss}, {Symbol: "m", Meaning: meansShare},
	},
	Fn: calc.Func5(TieSpacing), Go: "ties.TieSpacing", Source: "army",
	Limits: calc.Text("Rounded down. The working load has its factor in it already."),
}

var eqFace = &calc.Formula{
	ID: "face", Title: calc.Text("Fluid height for a face"),
	Expr: "q/w", Result: calc.Var{Symbol: "h", Meaning: calc.Text("depth of fluid concrete"), Unit: "m", US: "ft"},
	Vars: []calc.Var{{Symbol: "q", Meaning: calc.Text("capacity of the face"), Unit: "kPa", US: "psf"}, {Symbol: "w", Meaning: meansW, Unit: "kN/m³", US: "lb/ft³"}},
	Fn:   calc.Func2(FaceHeight), Go: "ties.FaceHeight", Source: "statics",
}

func computeTie(r *calc.Recorder, in calc.Case) {
	n, m, p := in.Num("missing"), in.Num("sharing"), in.Num("pressure")
	area := r.Use(eqArea, in.Num("across"), in.Num("up"), n, m)
	load := r.Use(eqLoad, p, area)
	r.Put("area", area)
	r.Put("load", load)
	r.PutChoice("verdict", tieUnrated)
	if in.Has("strength") {
		rateTie(r, in, load)
	} else {
		r.Note(calc.LevelAsk, calc.At("strength"), tieAsk)
	}
	if n >= 3 {
		r.Note(calc.LevelWarning, calc.At("missing"), tieMany)
	}
	if n > 0 && m > 2 {
		r.Note(calc.LevelCaution, calc.At("sharing"), tieShare)
	}
	rateFace(r, in)
}

func rateTie(r *calc.Recorder, in calc.Case, load float64) {
	working := r.Use(eqWorking, in.Num("strength"), in.Num("factor"))
	r.Put("working", working)
	r.Put("used", load/working)
	r.Put("widest", r.Use(eqWidest, working, in.Num("pressure"), in.Num("up"), in.Num("missing"), in.Num("sharing")))
	r.PutChoice("verdict", tieHolds)
	if calc.Over(load, working) {
		r.PutChoice("verdict", tieFails)
		r.Note(calc.LevelWarning, calc.At("strength"), tieOver, calc.Amount("load", load, &displays.Force), calc.Amount("working", working, &displays.ForceAtMost))
	}
	if in.Num("factor") < 2 {
		r.Note(calc.LevelCaution, calc.At("factor"), tieFactor)
	}
}

// rateFace answers 'back it' for a weakened face, unless its capacity is
// known from those who may give one and covers the pressure.
func rateFace(r *calc.Recorder, in calc.Case) {
	known := in.Has("capacity")
	if in.Num("missing") == 0 && in.Choice("face") == faceWhole {
		r.PutChoice("backing", faceSound)
		if known {
			r.Note(calc.LevelNotice, calc.At("capacity"), tieNoNeed)
		}
		return
	}
	if !known {
		r.PutChoice("backing", faceBack)
		r.Note(calc.LevelWarning, calc.At("face"), tieBack)
		return
	}
	height := r.Use(eqFace, in.Num("capacity"), in.Num("weight"))
	r.Put("face-height", height)
	r.PutChoice("backing", faceWithin)
	if calc.Over(in.Num("pressure"), in.Num("capacity")) {
		r.PutChoice("backing", faceBack)
		r.Note(calc.LevelWarning, calc.At("capacity"), tieBeyond, calc.Amount("pressure", in.Num("pressure"), &displays.Rating), calc.Amount("height", height, &displays.HeightAtMost))
	}
}
