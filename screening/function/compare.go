package function

import (
	"iter"
	"slices"
	"strings"

	"example.org/posology/units/body"
	"example.org/posology/units/evidence"
	"example.org/posology/units/field"
)

// Position is where a result stands to one norm.
type Position uint8

// Positions.
const (
	_          Position = iota // not given
	NoNorm                     // "no norm": the body has none for this person or course
	NotScored                  // "not scored": the result has no score to compare
	Flagged                    // "flagged": on the side that the cut-off flags
	NotFlagged                 // "not flagged": on the other side
	Worse                      // "worse": than the figure
	Equal                      // "equal": to the figure
	Better                     // "better": than the figure
)

var positions = field.NewVocabulary[Position]("position", "", "no norm", "not scored", "flagged", "not flagged", "worse", "equal", "better")

// Positions yields every position.
func Positions() iter.Seq[Position] { return positions.All() }

// String returns the position's name, such as "not flagged".
func (p Position) String() string { return positions.Text(p) }

// MarshalText writes what String returns.
func (p Position) MarshalText() ([]byte, error) { return positions.Marshal(p) }

// UnmarshalText reads what MarshalText writes.
func (p *Position) UnmarshalText(text []byte) error { return positions.Unmarshal(text, p) }

// A NormAnswer is one norm's own answer to a result. Not flagged means no more
// than that.
type NormAnswer struct {
	Position Position          `json:"position"`
	Body     string            `json:"body,omitzero"` // who answers
	Norm     Norm              `json:"norm,omitzero"` // which figure; none where there is no norm
	Reasons  []evidence.Reason `json:"reasons"`       // the answer, then cautions about it
}

// AgainstNorms lets every figure and cut-off that is held here for the measure of r
// answer, in the order of [Norms]; they are never merged. A body without a norm
// for that sex, age or course answers [NoNorm] with the reason, and so does the
// whole comparison where no body has any. Age is needed; where the sex is not
// given, norms by sex answer NoNorm. The errors of [Result.Validate] come back
// with those of sex and age.
func AgainstNorms(r Result, sex body.Sex, age body.Age) ([]NormAnswer, error) {
	var bad field.Errors
	bad.Add("", r.Validate())
	checkPerson(&bad, sex, age)
	if err := bad.Err(); err != nil {
		return nil, err
	}
	all := []NormAnswer{}
	for _, m := range r.measures() {
		for _, t := range tables() {
			if t.measure == m {
				all = append(all, t.standings(r, sex, age)...)
			}
		}
	}
	if len(all) == 0 {
		all = append(all, noNorm("", evidence.Because("function.no-norm", factNoNorm).With(evidence.Term("test", r.Test.String()))))
	}
	return all, nil
}

func checkPerson(bad *field.Errors, sex body.Sex, age body.Age) {
	if _, err := sex.MarshalText(); err != nil {
		bad.Add("/sex", err)
	}
	bad.Add("/age", age.Check())
}

func noNorm(body string, reason evidence.Reason) NormAnswer {
	return NormAnswer{Position: NoNorm, Body: body, Reasons: []evidence.Reason{reason}}
}

// standings are the answers of one table: of each figure printed for the
// person, or one that says why there is none.
func (t table) standings(r Result, sex body.Sex, age body.Age) []NormAnswer {
	var printed []Norm
	for _, n := range t.norms {
		if n.Statistic.ForResults() {
			printed = append(printed, n)
		}
	}
	if len(printed) == 0 {
		return nil
	}
	if t.course != "" && t.course != r.Test.String() {
		return []NormAnswer{noNorm(t.body, evidence.Because("function.no-norm.course", printed[0].Fact, factNoNorm).With(
			evidence.Text("body", t.body), evidence.Text("course", t.course), evidence.Term("test", r.Test.String())))}
	}
	var own []NormAnswer
	for _, n := range printed {
		if n.AppliesTo(sex, age) {
			own = append(own, n.standing(r))
		}
	}
	if len(own) == 0 {
		own = append(own, t.outside(printed, r, sex, age))
	}
	return own
}

// outside says why none of the norms printed is for the person.
func (t table) outside(printed []Norm, r Result, sex body.Sex, age body.Age) NormAnswer {
	bySex := slices.ContainsFunc(printed, func(n Norm) bool { return n.Ages.Contains(age) })
	if bySex {
		reason := evidence.Because("function.no-norm.sex", printed[0].Fact, factNoNorm).With(evidence.Text("body", t.body), evidence.Term("test", r.Test.String()), evidence.Count("age", int(age)))
		return noNorm(t.body, reason.With(evidence.Term("sex", sexText(sex))))
	}
	reason := evidence.Because("function.no-norm.age", printed[0].Fact, factNoNorm).With(evidence.Text("body", t.body), evidence.Term("test", r.Test.String()), evidence.Count("age", int(age)))
	return noNorm(t.body, reason.With(evidence.Text("ages", agesText(printed, sex))))
}

func sexText(sex body.Sex) string {
	if sex == 0 {
		return "sex not given"
	}
	return sex.String()
}

// agesText lists the ages that norms were printed for, each once: those for the
// sex, if there are any.
func agesText(printed []Norm, sex body.Sex) string {
	var own, all []string
	for _, n := range printed {
		text := n.Ages.String()
		if !slices.Contains(all, text) {
			all = append(all, text)
		}
		if (n.Sex == 0 || n.Sex == sex) && !slices.Contains(own, text) {
			own = append(own, text)
		}
	}
	if len(own) > 0 {
		all = own
	}
	return strings.Join(all, ", ")
}

func (n Norm) standing(r Result) NormAnswer {
	s := NormAnswer{Body: n.Body, Norm: n}
	if r.How != Done {
		s.Position = NotScored
		reason := r.unscored()
		reason.Facts = append(reason.Facts, n.Fact)
		s.Reasons = []evidence.Reason{reason}
		return s
	}
	p := r.Test.protocol()
	score := p.score(r.Value)
	s.Position = n.position(score, p.less)
	reason := evidence.Because(positionCodes[s.Position], n.Fact).With(
		evidence.Term("test", r.Test.String()), score.arg("value"), evidence.Term("figure", n.Statistic.Words()), n.Value.arg("norm"), evidence.Text("body", n.Body), evidence.Term("basis", n.Basis.String()))
	s.Reasons = append([]evidence.Reason{reason}, n.cautions()...)
	return s
}

func (n Norm) position(score Amount, less bool) Position {
	figure := n.in(score.unit)
	switch {
	case n.Statistic.kind() == cutOff && n.holds(score):
		return Flagged
	case n.Statistic.kind() == cutOff:
		return NotFlagged
	case score.millionths == figure:
		return Equal
	case (score.millionths < figure) == less:
		return Better
	}
	return Worse
}

// cautions tell what to bear in mind about the figure itself.
func (n Norm) cautions() []evidence.Reason {
	var all []evidence.Reason
	if n.Basis == evidence.FromMemory {
		all = append(all, evidence.Because("function.caution.from-memory", n.Fact).With(evidence.Text("body", n.Body)))
	}
	if n.People != "" {
		all = append(all, evidence.Because("function.caution.people", n.Fact).With(evidence.Text("people", n.People), evidence.Text("body", n.Body)))
	}
	if n.Note != "" {
		all = append(all, evidence.Because("function.caution.note", n.Fact).With(evidence.Text("note", n.Note), evidence.Text("body", n.Body)))
	}
	return all
}
