package setlog

import (
	"bytes"
	"fmt"
	"iter"
	"slices"

	"example.org/posology/units"
	"example.org/posology/units/evidence"
)

// What makes a row doubtful.
const (
	factThousands evidence.FactID = "setlog.thousands"
	factHeavy     evidence.FactID = "setlog.heavy"
	factMany      evidence.FactID = "setlog.many"
	factDays      evidence.FactID = "setlog.days"
)

// Above these a slip of the keyboard is likelier than such a set. They are no doses.
const (
	doubtLoad = 300 * units.Kilogram
	doubtReps = 200
)

var facts = []evidence.Fact{
	{ID: factThousands, Basis: evidence.Design,
		Value: "a comma before three digits at the end of a number is read as a decimal sign, and asked about, since it may part thousands"},
	{ID: factHeavy, Basis: evidence.Design,
		Value: fmt.Sprintf("a load above %s is asked about, and one above %s refused", doubtLoad, maxLoad)},
	{ID: factMany, Basis: evidence.Design,
		Value: fmt.Sprintf("more than %d repetitions, seconds or metres in a set are asked about, and more than %d refused", doubtReps, maxReps)},
	{ID: factDays, Basis: evidence.Design,
		Value: "a day outside the range that the reader of a log gives is asked about"},
}

// Facts yields what a [Reader] asks about.
func Facts() iter.Seq[evidence.Fact] { return slices.Values(facts) }

// doubts returns what makes a slip likely in a set that was read.
func (p *parser) doubts(s *Set) (list []evidence.Reason) {
	text := p.texts[ofLoad]
	if i := bytes.IndexByte(text[:max(len(text)-3, 0)], ','); i >= 0 {
		if _, number := digitsOf(text[i+1 : i+4]); number && (len(text) == i+4 || text[i+4]-'0' > 9) {
			list = append(list, evidence.Because("setlog.thousands", factThousands).With(evidence.Text("text", shortText(text)), evidence.Masses("load", units.Exactly(s.Load))))
		}
	}
	if s.Load > doubtLoad {
		list = append(list, evidence.Because("setlog.heavy", factHeavy).With(evidence.Masses("load", units.Exactly(s.Load))))
	}
	if s.Reps > doubtReps {
		list = append(list, evidence.Because("setlog.many", factMany).With(evidence.Count("reps", s.Reps)))
	}
	if d := s.Day; d != 0 && (d < p.rd.From || p.rd.Until != 0 && d > p.rd.Until) {
		list = append(list, evidence.Because("setlog.days", factDays).With(evidence.Day("day", d)))
	}
	return list
}
