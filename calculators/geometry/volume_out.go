package geometry

import (
	"coursebook/calculators/calc"
	"coursebook/calculators/quantity"
)

// volumePair is one volume in both units. The IDs end in -yd and -m.
func volumePair(id string, yards, metres calc.Text) []calc.Field {
	return []calc.Field{
		{ID: id + "-yd", Label: yards, Show: inYards},
		{ID: id + "-m", Label: metres, Show: inMetres},
	}
}

// roundedUp writes an order so that it is never short in the other unit.
func roundedUp(s *quantity.Show) *quantity.Show {
	up := *s
	up.US.Way, up.Metric.Way = quantity.Up, quantity.Up
	return &up
}

var shortPercent = &quantity.Show{Dim: quantity.Ratio, US: quantity.Scale{Unit: "%", Step: 0.1}, Metric: quantity.Scale{Unit: "%", Step: 0.1}}

func volumeOut() []calc.Field {
	var out []calc.Field
	add := func(fields ...calc.Field) { out = append(out, fields...) }
	add(calc.Field{ID: "order-yd", Label: calc.Text("wall-volume.out.order-yd: Order in cubic yards"), Show: roundedUp(inYards), Lead: true},
		calc.Field{ID: "order-m", Label: calc.Text("wall-volume.out.order-m: Order in cubic metres"), Show: roundedUp(inMetres), Lead: true})
	add(calc.Field{ID: "loads", Label: calc.Text("wall-volume.out.loads: Truck loads"), Show: number, Exact: true, Lead: true})
	add(volumePair("last-load", calc.Text("wall-volume.out.last-load-yd: Last load, yd³"), calc.Text("wall-volume.out.last-load-m: Last load, m³"))...)
	add(volumePair("walls", calc.Text("wall-volume.out.walls-yd: Walls without holes, yd³"), calc.Text("wall-volume.out.walls-m: Walls without holes, m³"))...)
	add(volumePair("holes", calc.Text("wall-volume.out.holes-yd: Openings deducted, yd³"), calc.Text("wall-volume.out.holes-m: Openings deducted, m³"))...)
	add(volumePair("net", calc.Text("wall-volume.out.net-yd: Net volume, yd³"), calc.Text("wall-volume.out.net-m: Net volume, m³"))...)
	add(volumePair("with-waste", calc.Text("wall-volume.out.with-waste-yd: With waste, yd³"), calc.Text("wall-volume.out.with-waste-m: With waste, m³"))...)
	add(calc.Field{ID: "extra", Label: calc.Text("wall-volume.out.extra: Order over net volume"), Show: shortPercent})
	add(calc.Field{ID: "length", Label: calc.Text("wall-volume.out.length: Length along the middle"), Show: wallLength})
	add(volumePair("difference", calc.Text("wall-volume.out.difference-yd: Your order less this, yd³"), calc.Text("wall-volume.out.difference-m: Your order less this, m³"))...)
	return out
}

// putVolume fills both units of a pair.
func putVolume(r *calc.Run, id string, si float64) {
	r.Put(id+"-yd", si)
	r.Put(id+"-m", si)
}
