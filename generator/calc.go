package main

import (
	"cmp"
	"encoding/json"
	"fmt"
	"io"
	"os"
	"path/filepath"
	"strings"

	"coursebook/calculators/calc"
	"coursebook/calculators/catalog"
	"coursebook/calculators/figure"
	"coursebook/calculators/quantity"
	"coursebook/calculators/rules"
	"coursebook/generator/internal/fault"
	"coursebook/generator/internal/parts"
	"coursebook/generator/internal/site"
	"coursebook/generator/internal/source"
)

const calcUsage = `usage: coursebook calc                      list the calculators
       coursebook calc ID -h                its inputs, with units and ranges
       coursebook calc ID name=value …      run it; names left out keep their example values

options:
  -json        answer in JSON
  -units S     us or metric (default us): what bare numbers mean and results show
  -comma       the decimal mark is a comma
  -lang L      language of labels and notes (default en)
  -content DIR the manual whose house rules are the usual values
               (default ./content, else the project's own)
  -svg FILE    also write the figure
  -work        also show the arithmetic

Rows: readings="0 ft | 3/4 in; 8 ft | 7/8 in", or readings=@FILE with one row a
line and cells apart by tabs, or readings.2.gap=7/8 for one cell.
`

// calcOptions are the parsed arguments of the calc command.
type calcOptions struct {
	id         string
	entries    []calc.Entry
	json, help bool
	work       bool
	svg        string
	content    string
	locale     calc.Locale
}

// runCalc runs the command calc and returns its exit status: misuse for wrong
// arguments, faulty if the calculator refuses.
func runCalc(s std, args []string) int {
	o, why := parseCalc(args)
	if why != "" {
		fmt.Fprintf(s.err, "coursebook calc: %s\n\n%s", why, calcUsage)
		return misuse
	}
	if o.id == "" {
		if o.help {
			fmt.Fprint(s.out, calcUsage)
			return fine
		}
		return listCalculators(s, o)
	}
	amounts, err := houseRules(o.content)
	if err != nil {
		fmt.Fprintf(s.err, "coursebook calc: %v\n", err)
		return faulty
	}
	c := findCalculator(o.id, amounts)
	if c == nil {
		fmt.Fprintf(s.err, "coursebook calc: there is no calculator %q%s\n", o.id, suggestion(o.id))
		return misuse
	}
	if o.help {
		describe(s.out, c, o.locale)
		return fine
	}
	return calculate(s, c, o)
}

// parseCalc parses the arguments of calc. why is the first mistake in them, or "".
func parseCalc(args []string) (o calcOptions, why string) {
	lang := "en"
	take := func(i *int) string {
		*i++
		if *i < len(args) {
			return args[*i]
		}
		why = args[*i-1] + " needs a value"
		return ""
	}
	for i := 0; i < len(args) && why == ""; i++ {
		switch a := args[i]; {
		case a == "-h" || a == "-help" || a == "--help":
			o.help = true
		case a == "-json" || a == "--json":
			o.json = true
		case a == "-work":
			o.work = true
		case a == "-comma":
			o.locale.Style.Mark = quantity.Comma
		case a == "-svg":
			o.svg = take(&i)
		case a == "-content":
			o.content = take(&i)
		case a == "-lang":
			lang = take(&i)
		case a == "-units":
			switch take(&i) {
			case "us":
			case "metric":
				o.locale.Style.System = quantity.Metric
			default:
				if why == "" {
					why = "-units is us or metric"
				}
			}
		case strings.HasPrefix(a, "-") && !strings.Contains(a, "="):
			why = "there is no option " + a
		case strings.Contains(a, "="):
			e, err := entry(a)
			if err != nil {
				return o, err.Error()
			}
			o.entries = append(o.entries, e)
		case o.id == "":
			o.id = a
		default:
			why = fmt.Sprintf("%q is no name=value", a)
		}
	}
	if why == "" && lang != "en" {
		o.locale.Words, why = readTranslations(lang)
	}
	return o, why
}

// entry parses name=value. A value @FILE is replaced by the content of the file; a
// file that cannot be read is an error.
func entry(arg string) (calc.Entry, error) {
	name, value, _ := strings.Cut(arg, "=")
	if file, ok := strings.CutPrefix(value, "@"); ok {
		data, err := os.ReadFile(file)
		if err != nil {
			return calc.Entry{}, err
		}
		value = string(data)
	}
	return calc.Entry{Path: name, Text: value}, nil
}

// houseRules returns the amounts of the house rules: of the manual in dir; without
// dir of that in ./content, otherwise of the project's own. If there is none, it
// returns nil and the calculators ask. A manual in dir that cannot be read, and
// one with errors, are errors.
func houseRules(dir string) (map[string]string, error) {
	path := filepath.Join(cmp.Or(dir, "content"), "manual.yaml")
	data, err := os.ReadFile(path)
	if err != nil && dir == "" {
		from, none := parts.Open()
		if none != nil {
			return nil, nil
		}
		path, data, err = from.Manual()
	}
	if err != nil {
		return nil, err
	}
	return manualRules(path, data)
}

// manualRules returns the amounts of a manual.yaml, or its first fault.
func manualRules(path string, data []byte) (map[string]string, error) {
	var faults fault.List
	file := source.File{Path: path, Data: data}
	m := source.ParseManual(path, data, &faults)
	amounts := site.CheckRules(m, file, rules.All(), catalog.All(), &faults)
	for _, f := range faults.All() {
		if f.Severity == fault.Error {
			return nil, fmt.Errorf("%s:%d: %s: %s", path, f.Line, f.Text, f.Hint)
		}
	}
	return amounts, nil
}

// findCalculator returns the calculator with an ID, with the amounts of the house
// rules; nil if there is none.
func findCalculator(id string, amounts map[string]string) *calc.Calculator {
	for _, c := range calc.WithRules(catalog.All(), amounts, rules.All()...) {
		if c.ID == id {
			return c
		}
	}
	return nil
}

// suggestion returns the end of a message about an unknown ID: the nearest ID, or
// how to list them.
func suggestion(id string) string {
	var ids []string
	for _, c := range catalog.All() {
		ids = append(ids, c.ID)
	}
	if near, ok := fault.Nearest(id, ids); ok {
		return "; did you mean " + near + "?"
	}
	return "; coursebook calc lists them"
}

// listCalculators prints all calculators, as JSON if o asks for that, and returns
// the exit status.
func listCalculators(s std, o calcOptions) int {
	if o.json {
		return writeJSON(s, catalogJSON(o.locale))
	}
	for _, c := range catalog.All() {
		fmt.Fprintf(s.out, "%-16s %s\n", c.ID, o.locale.Say(c.Purpose))
	}
	return fine
}

// describe prints the inputs and outputs of a calculator.
func describe(w io.Writer, c *calc.Calculator, v calc.Locale) {
	fmt.Fprintf(w, "%s: %s\n%s\n\ninputs:\n", c.ID, v.Say(c.Title), v.Say(c.Purpose))
	for _, f := range c.In {
		describeField(w, "  ", f, v)
	}
	fmt.Fprintln(w, "\nresults:")
	for _, f := range c.Out {
		fmt.Fprintf(w, "  %-20s %s\n", f.ID, v.Say(f.Label))
	}
}

// describeField prints the line of one input after indent, and those of its
// columns.
func describeField(w io.Writer, indent string, f calc.Field, v calc.Locale) {
	line := fmt.Sprintf("%s%-20s %s", indent, f.ID, v.Say(f.Label))
	switch f.Kind {
	case calc.Number:
		line += fmt.Sprintf(" [%s]", strings.Join(units(f, v), "; "))
	case calc.Choice:
		var ids []string
		for _, o := range f.Options {
			ids = append(ids, o.ID)
		}
		line += " [" + strings.Join(ids, " | ") + "]"
	case calc.Flag:
		line += " [yes | no]"
	case calc.Day:
		line += " [year-month-day]"
	case calc.Clock:
		line += " [7:30, 13:05, 7:30 am]"
	case calc.Rows:
		line += fmt.Sprintf(" [rows, %d to %d]", f.MinRows, f.MaxRows)
	}
	if text := v.InputText(f, f.UsualValue()); text != "" && f.Kind != calc.Rows {
		line += ", example " + text
	}
	if f.Optional {
		line += ", may be left empty"
	}
	fmt.Fprintln(w, line)
	for _, col := range f.Cols {
		describeField(w, indent+"  "+f.ID+".N.", col, v)
	}
}

// units returns the unit of a bare number and the range of a field, as text; a
// field without one of them gives fewer.
func units(f calc.Field, v calc.Locale) []string {
	var parts []string
	if u := f.Display.In(v.Style.System).Unit; u != "" {
		parts = append(parts, u)
	}
	if least, most, ok := f.Limits(); ok {
		low, high := calc.Amount("low", least.SI, f.Display), calc.Amount("high", most.SI, f.Display)
		parts = append(parts, v.Say(calc.Between, low, high))
	}
	return parts
}

// calculate runs a calculator and prints its result. It returns faulty, after
// printing why, if an input or the case is refused.
func calculate(s std, c *calc.Calculator, o calcOptions) int {
	in, refusals := calc.Read(c, o.entries, o.locale.Style)
	if len(refusals) > 0 {
		for _, n := range refusals {
			fmt.Fprintf(s.err, "coursebook calc %s: %s: %s\n", c.ID, n.At, o.locale.Say(n.Text, n.Slots...))
		}
		return faulty
	}
	unused(s, in, o.entries)
	res := calc.Run(c, in)
	if o.svg != "" && res.State == calc.OK {
		if status := writeFigure(s, c, o, in, res); status != fine {
			return status
		}
	}
	if o.json && res.State == calc.OK {
		return writeJSON(s, resultJSON(c, o.locale, in, res))
	}
	if res.State == calc.OK {
		results(s.out, o.locale, res.Out)
	}
	if o.work {
		arithmetic(s.out, o.locale, res)
	}
	remarks(s, c, o.locale, res)
	if res.State != calc.OK {
		return faulty
	}
	return fine
}

// unused names the inputs that were typed and do not apply in this case, so that nobody takes
// them as counted.
func unused(s std, in calc.Case, entries []calc.Entry) {
	for _, e := range entries {
		id, _, _ := strings.Cut(e.Path, ".")
		if e.Text != "" && !in.Asked(id) {
			fmt.Fprintf(s.err, "NOTICE: %s: it does not apply with the other inputs, and was not used\n", id)
		}
	}
}

// writeFigure writes the drawing of a result to the file that o names. It prints
// an error and returns misuse for a calculator without a drawing, faulty if the
// file cannot be written.
func writeFigure(s std, c *calc.Calculator, o calcOptions, in calc.Case, res calc.Result) int {
	if c.Draw == nil {
		fmt.Fprintf(s.err, "coursebook calc: %s has no figure\n", c.ID)
		return misuse
	}
	svg := figure.File(c.Draw(o.locale, in, res))
	if err := os.WriteFile(filepath.Clean(o.svg), []byte(svg), 0o644); err != nil {
		fmt.Fprintf(s.err, "coursebook calc: %v\n", err)
		return faulty
	}
	return fine
}

// results prints the outputs that are set.
func results(w io.Writer, v calc.Locale, out calc.Case) {
	for i, f := range out.Fields() {
		x := out.At(i)
		if !x.Set {
			continue
		}
		if f.Kind != calc.Rows {
			fmt.Fprintf(w, "%-32s %s\n", v.Say(f.Label), v.Write(f, x))
			continue
		}
		fmt.Fprintf(w, "%s\n", v.Say(f.Label))
		rowTable(w, v, f, x)
	}
}

// rowTable prints an output of rows as a table with aligned columns.
func rowTable(w io.Writer, v calc.Locale, f calc.Field, x calc.Value) {
	lines := [][]string{{}}
	for _, col := range f.Cols {
		lines[0] = append(lines[0], v.Say(col.Label))
	}
	for _, row := range x.Rows {
		var cells []string
		for j, col := range f.Cols {
			cells = append(cells, v.Write(col, row.At(j)))
		}
		lines = append(lines, cells)
	}
	widths := make([]int, len(f.Cols))
	for _, l := range lines {
		for j, cell := range l {
			widths[j] = max(widths[j], len([]rune(cell)))
		}
	}
	for _, l := range lines {
		text := "  "
		for j, cell := range l {
			text += cell + strings.Repeat(" ", widths[j]-len([]rune(cell))+2)
		}
		fmt.Fprintln(w, strings.TrimRight(text, " "))
	}
}

// arithmetic prints the steps of a result with their formulas.
func arithmetic(w io.Writer, v calc.Locale, res calc.Result) {
	for _, step := range res.Steps {
		k := v.Work(step)
		fmt.Fprintf(w, "\n%s", k.Title)
		if k.Of != "" {
			fmt.Fprintf(w, " (%s)", k.Of)
		}
		fmt.Fprintf(w, "\n  %s\n  = %s = %s\n", k.Plain, k.Substituted, k.Result)
		for _, line := range k.Where {
			fmt.Fprintf(w, "    %s\n", line)
		}
	}
}

// remarks prints the notes of a result with their signal words, then the
// cautions of the calculator. They go to standard error, so that a pipe gets
// results only. Of a refused input it prints the reason alone.
func remarks(s std, c *calc.Calculator, v calc.Locale, res calc.Result) {
	for _, n := range res.Notes {
		if res.State != calc.OK && n.Level != calc.LevelRefusal {
			continue
		}
		at := ""
		if n.At.Field != "" {
			at = n.At.String() + ": "
		}
		fmt.Fprintf(s.err, "%s: %s%s\n", strings.ToUpper(n.Level.String()), at, v.Say(n.Text, n.Slots...))
	}
	if res.State != calc.OK {
		return
	}
	for _, n := range c.Cautions {
		fmt.Fprintf(s.err, "%s: %s\n", strings.ToUpper(n.Level.String()), v.Say(n.Text))
	}
}

// writeJSON prints a value as JSON and returns the exit status.
func writeJSON(s std, value any) int {
	enc := json.NewEncoder(s.out)
	enc.SetEscapeHTML(false)
	enc.SetIndent("", "  ")
	if err := enc.Encode(value); err != nil {
		fmt.Fprintf(s.err, "coursebook calc: %v\n", err)
		return faulty
	}
	return fine
}
