package quantity

// System is the reader's system of units.
type System uint8

// The systems.
const (
	US System = iota
	Metric
)

// Mark is the reader's decimal mark.
type Mark uint8

// The marks.
const (
	Point Mark = iota
	Comma
)

// Style is a reader's system of units and decimal mark.
type Style struct {
	System System
	Mark   Mark
}

// Form is how a number is laid out.
type Form uint8

// The forms.
const (
	Decimal    Form = iota // 2.75 m
	FeetInches             // 10' 6-1/2"
	Inches                 // 6-1/2"
)

// Rounding is the direction of rounding.
type Rounding uint8

// The directions. Up and Down round towards greater and smaller values, also
// below zero; Nearest rounds a half away from zero.
const (
	Nearest Rounding = iota
	Up
	Down
)

// UnitDisplay is the unit, layout and rounding of a value in one system of
// units. A number typed without a unit is in Unit.
type UnitDisplay struct {
	Unit string // symbol; FeetInches and Inches may leave it empty
	Form Form
	// Digits is the number of significant digits of a Decimal value without a step;
	// 0 means 7, as many as Exact writes. An input needs those: fewer digits would
	// not read back as the value.
	Digits uint8
	// Step is the multiple that values are rounded to: in Unit for Decimal, in inches for
	// the other forms, for which it is a whole number or a binary fraction down
	// to 1/64. 0 means unrounded for Decimal and 1/16 in. otherwise.
	Step     float64
	Rounding Rounding
}

// Display is the dimension of a value and its UnitDisplay in each system of
// units. If Metric is zero, US applies to both.
type Display struct {
	Dim        Dimension
	US, Metric UnitDisplay
}

// In returns the UnitDisplay for a system of units.
func (s Display) In(sys System) UnitDisplay {
	if sys == Metric && s.Metric != (UnitDisplay{}) {
		return s.Metric
	}
	return s.US
}

// unit returns the unit of a bare number and of Exact. It panics on a unit that
// does not exist or has another dimension; Check reports that without a panic.
func (s Display) unit(sys System) Unit {
	sc := s.In(sys)
	if problem := s.check(sc); problem != "" {
		panic("quantity: " + problem)
	}
	return s.unitOf(sc)
}

// unitOf returns the unit of sc. An empty Unit is ft for FeetInches, in for Inches
// and otherwise the unit of a number, which has the display's dimension. A unit
// that does not exist gives the zero Unit.
func (s Display) unitOf(sc UnitDisplay) Unit {
	symbol := sc.Unit
	switch {
	case sc.Form == FeetInches && symbol == "":
		symbol = "ft"
	case sc.Form == Inches && symbol == "":
		symbol = "in"
	}
	u, _ := Find(symbol)
	if symbol == "" {
		u.Dim = s.Dim
	}
	return u
}

// Check returns what is wrong with the first faulty UnitDisplay of a declaration,
// US before metric, or "".
func (s Display) Check() string {
	if problem := s.check(s.In(US)); problem != "" {
		return problem
	}
	return s.check(s.In(Metric))
}

// check returns what is wrong with sc for the display's dimension, or "": an
// unknown unit or one of another dimension, no unit, a step that is negative, too
// large or cannot be written in the form.
func (s Display) check(sc UnitDisplay) string {
	if _, ok := Find(sc.Unit); !ok {
		return "there is no unit " + sc.Unit
	}
	switch u := s.unitOf(sc); {
	case u.Dim != s.Dim:
		return sc.Unit + " is no unit of " + s.Dim.String()
	case sc.Unit == "" && sc.Form == Decimal && s.Dim != Number && s.Dim != Ratio:
		return "a value of " + s.Dim.String() + " needs a unit"
	case !(sc.Step >= 0 && sc.Step < limit):
		return "a step must be 0 or more"
	case sc.Form == Decimal && !isDecimal(sc.Step):
		return "a step must have at most 9 decimals"
	case sc.Form == FeetInches && u.Symbol != "ft":
		return "feet and inches need the unit ft"
	case sc.Form == Inches && u.Symbol != "in":
		return "inches need the unit in"
	case sc.Form != Decimal && sc.Step*64 != float64(int(sc.Step*64)):
		return "a step of inches must be a whole number or a fraction like 1/16"
	}
	return ""
}
