package function

import (
	"fmt"
	"iter"
	"strings"

	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/evidence"
)

// A Norm is one published figure about a measure, as its body printed it.
type Norm struct {
	Fact      evidence.FactID       `json:"fact"` // the fact that this figure is
	Measure   Measure               `json:"measure"`
	Sex       body.Sex              `json:"sex,omitzero"`  // not given: for both
	Ages      units.Range[body.Age] `json:"ages,omitzero"` // without an end: no end was printed
	Statistic Statistic             `json:"statistic"`
	Value     Amount                `json:"value"`
	Body      string                `json:"body"` // who set it, in short: "EWGSOP2"
	Source    evidence.SourceID     `json:"source,omitzero"`
	Basis     evidence.Basis        `json:"basis"`           // how this very figure is known here
	Via       string                `json:"via,omitzero"`    // where it was read, if not in the source
	People    string                `json:"people,omitzero"` // whom it was made on, where a caution
	Course    string                `json:"course,omitzero"` // of a walk, where the figure names one
	Note      string                `json:"note,omitzero"`   // a doubt or a peculiarity
}

// holds reports whether the bound of a cut-off or limit holds for a.
func (n Norm) holds(a Amount) bool {
	limit := n.in(a.unit)
	switch statistics[n.Statistic].bound {
	case lessThan:
		return a.millionths < limit
	case atMost:
		return a.millionths <= limit
	case moreThan:
		return a.millionths > limit
	case atLeast:
		return a.millionths >= limit
	}
	return false
}

// in returns the figure in millionths of u: gait norms may be printed in
// centimetres a second.
func (n Norm) in(u Unit) int64 {
	if n.Value.unit == centimetresPerSecond && u == MetresPerSecond {
		return n.Value.millionths / 100 // exact: norms have one decimal
	}
	return n.Value.millionths
}

// AppliesTo reports whether the figure was printed for that sex and age. One
// for both sexes fits a sex not given.
func (n Norm) AppliesTo(sex body.Sex, age body.Age) bool {
	return (n.Sex == 0 || n.Sex == sex) && n.Ages.Contains(age)
}

// text states the figure in words.
func (n Norm) text() string {
	var b strings.Builder
	fmt.Fprintf(&b, "%s: %s %s", n.Measure, n.Statistic.Words(), n.Value)
	if n.Sex != 0 {
		b.WriteString(", " + n.Sex.String())
	}
	if !n.Ages.IsZero() {
		fmt.Fprintf(&b, ", %v years", n.Ages)
	}
	for _, more := range []string{n.Course, n.People, n.Note} {
		if more != "" {
			b.WriteString("; " + more)
		}
	}
	return b.String()
}

// Norms yields every published figure, in the order of the file.
func Norms() iter.Seq[Norm] {
	return func(yield func(Norm) bool) {
		for _, t := range tables() {
			for _, n := range t.norms {
				if !yield(n) {
					return
				}
			}
		}
	}
}

// factID is "function.", measure, source, people and statistic, in letters,
// digits, dots and hyphens.
func (n Norm) factID() evidence.FactID {
	people := "any"
	if n.Sex != 0 {
		people = n.Sex.String()
	}
	if from, ok := n.Ages.Min(); ok {
		people += fmt.Sprintf("-%d", from)
	}
	if to, ok := n.Ages.Max(); ok {
		people += fmt.Sprintf("-%d", to)
	}
	source := string(n.Source)
	if source == "" {
		source = "unnamed"
	}
	id := strings.Join([]string{n.Measure.String(), source, people, string(n.Statistic)}, ".")
	return evidence.FactID("function." + strings.ReplaceAll(id, "_", "-"))
}
