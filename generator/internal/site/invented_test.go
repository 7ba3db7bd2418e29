package site_test

import (
	"coursebook/calculators/calc"
	"coursebook/calculators/quantity"
)

// Invented calculators for the tests: a tank with a table, which refuses
// round tanks, and one with nothing but a result.
var (
	length = &quantity.Display{Dim: quantity.Length,
		US:     quantity.UnitDisplay{Form: quantity.FeetInches, Unit: "ft", Step: 1.0 / 16},
		Metric: quantity.UnitDisplay{Unit: "m", Step: 0.001}}
	volume = &quantity.Display{Dim: quantity.Volume,
		US:     quantity.UnitDisplay{Unit: "ft³", Step: 0.1},
		Metric: quantity.UnitDisplay{Unit: "m³", Step: 0.01}}

	why = calc.Text("tank.why: A tank is no lake.")

	tank = &calc.Calculator{
		ID: "tank", Title: calc.Text("tank.title: Tank"),
		In: []calc.Field{
			{ID: "side", Label: calc.Text("tank.side: Side"), Kind: calc.Number, Display: length, Usual: "3 ft",
				Min: &calc.Limit{At: 0, Unit: "ft", Open: true, Why: why}, Max: &calc.Limit{At: 30, Unit: "ft", Why: why}},
			{ID: "depth", Label: calc.Text("tank.depth: Depth"), Kind: calc.Number, Display: length, Usual: "3 ft",
				Min: &calc.Limit{At: 1, Unit: "ft", Why: why}, Max: &calc.Limit{At: 9, Unit: "ft", Why: why}},
			{ID: "shape", Label: calc.Text("tank.shape: Shape"), Kind: calc.Choice, Usual: "cube",
				Options: []calc.Option{{ID: "cube", Label: calc.Text("tank.cubic: cube")}, {ID: "round", Label: calc.Text("tank.round: round")}}},
		},
		Out:    []calc.Field{{ID: "holds", Label: calc.Text("tank.holds: Holds"), Kind: calc.Number, Display: volume}},
		Tables: []calc.Table{{ID: "sides", Title: calc.Text("tank.sides: Sides"), Out: "holds", Down: calc.Axis{Path: "side", US: []string{"1 ft", "2 ft"}}}},
		Compute: func(r *calc.Recorder, in calc.Case) {
			if in.Choice("shape") == "round" {
				r.Refuse(calc.At("shape"), calc.Text("tank.no-round: Round tanks are not in this book."))
				return
			}
			r.Put("holds", in.Num("side")*in.Num("side")*in.Num("depth"))
		},
	}

	whole = &calc.Formula{ID: "whole", Title: calc.Text("bare.whole: The whole"), Expr: "V",
		Result: calc.Var{Symbol: "V_t", Meaning: calc.Text("bare.total: total"), Unit: "m³"},
		Vars:   []calc.Var{{Symbol: "V", Meaning: calc.Text("bare.v: volume"), Unit: "m³"}}, Fn: calc.FuncN(func(v []float64) float64 { return v[0] })}

	bare = &calc.Calculator{
		ID: "bare", Title: calc.Text("bare.title: Bare"),
		Out:     []calc.Field{{ID: "holds", Label: calc.Text("tank.holds: Holds"), Kind: calc.Number, Display: volume}},
		Compute: func(r *calc.Recorder, _ calc.Case) { r.Put("holds", r.Use(whole, 1)) },
	}

	calculators = []*calc.Calculator{tank, bare}
)
