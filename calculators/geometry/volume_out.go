package geometry

import (
	"coursebook/calculators/calc"
	"coursebook/calculators/displays"
)

// The IDs of a volume in both units end in -yd and -m.
var volumeOut = []calc.Field{
	{ID: "order-yd", Label: calc.Text("Order in cubic yards"), Display: &displays.CubicYardsUp, Lead: true},
	{ID: "order-m", Label: calc.Text("Order in cubic metres"), Display: &displays.CubicMetresUp, Lead: true},
	{ID: "loads", Label: calc.Text("Truck loads"), Display: &displays.Count, Exact: true, Lead: true},
	{ID: "last-load-yd", Label: calc.Text("Last load, yd³"), Display: inYards},
	{ID: "last-load-m", Label: calc.Text("Last load, m³"), Display: inMetres},
	{ID: "walls-yd", Label: calc.Text("Walls without holes, yd³"), Display: inYards},
	{ID: "walls-m", Label: calc.Text("Walls without holes, m³"), Display: inMetres},
	{ID: "holes-yd", Label: calc.Text("Openings deducted, yd³"), Display: inYards},
	{ID: "holes-m", Label: calc.Text("Openings deducted, m³"), Display: inMetres},
	{ID: "net-yd", Label: calc.Text("Net volume, yd³"), Display: inYards},
	{ID: "net-m", Label: calc.Text("Net volume, m³"), Display: inMetres},
	{ID: "with-waste-yd", Label: calc.Text("With waste, yd³"), Display: inYards},
	{ID: "with-waste-m", Label: calc.Text("With waste, m³"), Display: inMetres},
	{ID: "extra", Label: calc.Text("Order over net volume"), Display: &extraShow},
	{ID: "length", Label: calc.Text("Length along the middle"), Display: &displays.Wall},
	{ID: "difference-yd", Label: calc.Text("Your order less this, yd³"), Display: inYards},
	{ID: "difference-m", Label: calc.Text("Your order less this, m³"), Display: inMetres},
}

// putVolume fills both units of a pair.
func putVolume(r *calc.Recorder, id string, si float64) {
	r.Put(id+"-yd", si)
	r.Put(id+"-m", si)
}
