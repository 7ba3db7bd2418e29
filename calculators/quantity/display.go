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

// Style is how one reader writes numbers.
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

// The ways. Up and Down go towards greater and smaller values, also below
// zero; Nearest takes a half away from zero.
const (
	Nearest Rounding = iota
	Up
	Down
)

// UnitDisplay says how a value is written in one system of units, and which unit a
// bare number means.
type UnitDisplay struct {
	Unit string // symbol; FeetInches and Inches may leave it empty
	Form Form
	// Step is what values are rounded to: in Unit for Decimal, in inches for
	// the other forms, where it is a whole number or a binary fraction down
	// to 1/64. 0 means unrounded for Decimal and 1/16 in. otherwise.
	Step     float64
	Rounding Rounding
}

// Display says how a value is written in each system of units. A Display whose
// Metric is left out is written as US in both.
type Display struct {
	Dim        Dimension
	US, Metric UnitDisplay
}

// In is the scale for a system of units.
func (s Display) In(sys System) UnitDisplay {
	if sys == Metric && s.Metric != (UnitDisplay{}) {
		return s.Metric
	}
	return s.US
}

// unit is the unit of a bare number and of Exact. It panics on a unit that
// does not exist or measures something else: a mistake in a declaration, which
// Check reports without panic.
func (s Display) unit(sys System) Unit {
	sc := s.In(sys)
	if slip := s.check(sc); slip != "" {
		panic("quantity: " + slip)
	}
	return s.unitOf(sc)
}

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

// Check tests a declaration: it returns what is wrong with it in plain words,
// or an empty string.
func (s Display) Check() string {
	if slip := s.check(s.In(US)); slip != "" {
		return slip
	}
	return s.check(s.In(Metric))
}

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
