package geometry

import (
	"coursebook/calculators/calc"
	"coursebook/calculators/displays"
)

// The IDs of a volume in both units end in -yd and -m.
var volumeOut = []calc.Field{
	{ID: "order-yd", Label: calc.Text("wall-volume.out.order-yd: Order in cubic yards"), Display: &displays.CubicYardsUp, Lead: true},
	{ID: "order-m", Label: calc.Text("wall-volume.out.order-m: Order in cubic metres"), Display: &displays.CubicMetresUp, Lead: true},
	{ID: "loads", Label: calc.Text("wall-volume.out.loads: Truck loads"), Display: &displays.Count, Exact: true, Lead: true},
	{ID: "last-load-yd", Label: calc.Text("wall-volume.out.last-load-yd: Last load, yd³"), Display: inYards},
	{ID: "last-load-m", Label: calc.Text("wall-volume.out.last-load-m: Last load, m³"), Display: inMetres},
	{ID: "walls-yd", Label: calc.Text("wall-volume.out.walls-yd: Walls without holes, yd³"), Display: inYards},
	{ID: "walls-m", Label: calc.Text("wall-volume.out.walls-m: Walls without holes, m³"), Display: inMetres},
	{ID: "holes-yd", Label: calc.Text("wall-volume.out.holes-yd: Openings deducted, yd³"), Display: inYards},
	{ID: "holes-m", Label: calc.Text("wall-volume.out.holes-m: Openings deducted, m³"), Display: inMetres},
	{ID: "net-yd", Label: calc.Text("wall-volume.out.net-yd: Net volume, yd³"), Display: inYards},
	{ID: "net-m", Label: calc.Text("wall-volume.out.net-m: Net volume, m³"), Display: inMetres},
	{ID: "with-waste-yd", Label: calc.Text("wall-volume.out.with-waste-yd: With waste, yd³"), Display: inYards},
	{ID: "with-waste-m", Label: calc.Text("wall-volume.out.with-waste-m: With waste, m³"), Display: inMetres},
	{ID: "extra", Label: calc.Text("wall-volume.out.extra: Order over net volume"), Display: &extraShow},
	{ID: "length", Label: calc.Text("wall-volume.out.length: Length along the middle"), Display: &displays.Wall},
	{ID: "difference-yd", Label: calc.Text("wall-volume.out.difference-yd: Your order less this, yd³"), Display: inYards},
	{ID: "difference-m", Label: calc.Text("wall-volume.out.difference-m: Your order less this, m³"), Display: inMetres},
}

// putVolume fills both units of a pair.
func putVolume(r *calc.Recorder, id string, si float64) {
	r.Put(id+"-yd", si)
	r.Put(id+"-m", si)
}
