package function

import (
	"fmt"
	"iter"
	"slices"
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
	switch n.Statistic.Bound() {
	case LessThan:
		return a.millionths < limit
	case AtMost:
		return a.millionths <= limit
	case MoreThan:
		return a.millionths > limit
	case AtLeast:
		return a.millionths >= limit
	}
	return false
}

// in returns the figure in millionths of u: gait norms may be printed in
// centimetres a second.
func (n Norm) in(u Unit) int64 {
	if n.Value.unit == CentimetresPerSecond && u == MetresPerSecond {
		return n.Value.millionths / 100 // exact: norms have one decimal
	}
	return n.Value.millionths
}

// forPerson reports whether the figure was printed for that sex and age. One
// for both sexes fits a sex not given.
func (n Norm) forPerson(sex body.Sex, age body.Age) bool {
	return (n.Sex == body.SexUnknown || n.Sex == sex) && n.Ages.Contains(age)
}

// text states the figure in words.
func (n Norm) text() string {
	var b strings.Builder
	fmt.Fprintf(&b, "%s: %s %s", n.Measure, n.Statistic.Words(), n.Value)
	if n.Sex != body.SexUnknown {
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

// Norms yields every published figure, in the order of the measures' tables.
func Norms() iter.Seq[Norm] {
	return func(yield func(Norm) bool) {
		for _, t := range tables {
			for _, n := range t.norms {
				if !yield(n) {
					return
				}
			}
		}
	}
}

// A table holds what one source printed about one measure.
type table struct {
	measure Measure
	unit    Unit
	body    string
	source  evidence.SourceID
	basis   evidence.Basis
	via     string // where the entries were read, if not in the source
	people  string
	course  string
	entries []entry
	norms   []Norm // from the entries
}

// An entry is one figure; what it leaves out its table says.
type entry struct {
	sex       body.Sex
	from, to  body.Age // 0: no end
	statistic Statistic
	value     float64
	basis     evidence.Basis
	via, note string
}

func (e entry) ages() units.Range[body.Age] {
	switch {
	case e.from == 0:
		return units.Range[body.Age]{}
	case e.to == 0:
		return units.AtLeast(e.from)
	}
	return units.Must(units.Between(e.from, e.to))
}

// tables are the tables of the data files, with their norms.
var tables = built(slices.Concat(standTables, curlTables, walkTables, batteryTables, gripTables, totalTables, otherTables))

func built(all []table) []table {
	for i := range all {
		t := &all[i]
		for _, e := range t.entries {
			t.norms = append(t.norms, t.norm(e))
		}
	}
	return all
}

func (t table) norm(e entry) Norm {
	n := Norm{
		Measure: t.measure, Sex: e.sex, Ages: e.ages(), Statistic: e.statistic,
		Value: units.Must(NewAmount(e.value, t.unit)), Body: t.body, Source: t.source,
		Basis: t.basis, Via: t.via, People: t.people, Course: t.course, Note: e.note,
	}
	if e.basis != evidence.BasisUnknown {
		n.Basis, n.Via = e.basis, e.via
	}
	n.Fact = n.factID()
	return n
}

// factID is "function.", measure, source, people and statistic, in letters,
// digits, dots and hyphens.
func (n Norm) factID() evidence.FactID {
	people := "any"
	if n.Sex != body.SexUnknown {
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

// pairs turns rows of 25th and 75th centiles into entries.
func pairs(rows []pair) []entry {
	var all []entry
	for _, r := range rows {
		all = append(all,
			entry{r.sex, r.from, r.to, "p25", r.p25, evidence.BasisUnknown, "", ""},
			entry{r.sex, r.from, r.to, "p75", r.p75, evidence.BasisUnknown, "", ""})
	}
	return all
}

// A pair is a row of a table that gives the middle half of people.
type pair struct {
	sex      body.Sex
	from, to body.Age
	p25, p75 float64
}
