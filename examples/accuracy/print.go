package main

import (
	"fmt"
	"io"
	"strings"

	"example.org/posology/dose/onerm"
	"example.org/posology/examples/internal/page"
	"example.org/posology/units"
)

// print writes the report as tables.
func (r report) print(w io.Writer) error {
	var b strings.Builder
	if r.Note != "" {
		page.Note(&b, r.Note)
		b.WriteString("\n")
	}
	fmt.Fprintf(&b, "%d sets to failure by %d people. Estimate less measured, in percent of the measured 1RM:\n", r.Sets, r.People)
	fmt.Fprintf(&b, "n sets, bias / root mean square error / mean absolute error. (x) reaches beyond the\nrepetitions that the equation may be relied on at; all takes in sets of more than 20.\n\n")
	fmt.Fprintf(&b, "%-28s", "")
	for _, band := range bands {
		fmt.Fprintf(&b, "  %-20s", band.Name)
	}
	b.WriteString("\n")
	for _, l := range r.Equations {
		fmt.Fprintf(&b, "%-28s", l.Equation)
		for _, s := range l.Scores {
			fmt.Fprintf(&b, "  %-20s", s.cell(l.Equation))
		}
		b.WriteString("\n")
	}
	r.printForward(&b)
	if len(r.LeftOut) > 0 {
		fmt.Fprintf(&b, "\nThe library's estimate for people whom the choice of equation and the widths know nothing\nof, at %v (chosen: %s; sets without an estimate: %d):\n\n", r.Level, r.chosen(), r.LeftOutNone)
		printOwn(&b, r.LeftOut)
	}
	fmt.Fprintf(&b, "\nThe library's estimate without any option, at about 95 %% (sets without an estimate: %d):\n\n", r.DefaultNone)
	printOwn(&b, r.Default)
	_, err := io.WriteString(w, trimmed(b.String()))
	return err
}

// trimmed takes the blanks from the ends of lines.
func trimmed(text string) string {
	lines := strings.Split(text, "\n")
	for i := range lines {
		lines[i] = strings.TrimRight(lines[i], " ")
	}
	return strings.Join(lines, "\n")
}

func (s score) cell(f onerm.Formula) string {
	if s.Sets == 0 {
		return "-"
	}
	text := fmt.Sprintf("%d, %+.1f/%.1f/%.1f", s.Sets, s.Bias, s.RMSE, s.MAE)
	if top, _ := f.Studied().Max(); float64(s.Band.To) > top {
		text += " x"
	}
	return text
}

func (r report) printForward(b *strings.Builder) {
	if len(r.Forward) == 0 {
		return
	}
	fmt.Fprintf(b, "\nRepetitions told for a load of %v of the 1RM or more, over those done: standard deviations of\nthe logarithm in percent. The estimate's equation is chosen by the last column.\n\n", units.Fraction(leastShare))
	fmt.Fprintf(b, "%-16s %5s %7s %7s %7s %13s\n", "", "sets", "bias", "people", "sets'", "somebody new")
	for _, f := range r.Forward {
		fmt.Fprintf(b, "%-16s %5d %+7.1f %7.1f %7.1f %13.1f\n", f.Equation, f.Sets, f.Bias, f.People, f.Within, f.Total)
	}
}

func printOwn(b *strings.Builder, list []own) {
	fmt.Fprintf(b, "%-10s %5s %7s %7s %7s %10s %11s\n", "", "sets", "bias", "rmse", "mae", "coverage", "mean width")
	for _, o := range list {
		if o.Sets > 0 {
			fmt.Fprintf(b, "%-10s %5d %+7.2f %7.2f %7.2f %8.1f %% %9.1f %%\n", o.Band.Name, o.Sets, o.Bias, o.RMSE, o.MAE, o.Coverage, o.Width)
		}
	}
}

// chosen lists the equations chosen, in their own order.
func (r report) chosen() string {
	var list []string
	for f := range onerm.Formulas() {
		if n := r.Choices[f]; n > 0 {
			list = append(list, fmt.Sprintf("%v for %d of %d people", f, n, r.People))
		}
	}
	return strings.Join(list, ", ")
}
