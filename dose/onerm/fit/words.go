package fit

import (
	"math"
	"sync"

	"gonum.org/v1/gonum/mat"

	"example.org/posology/dose/onerm"
	"example.org/posology/dose/onerm/internal/bend"
	"example.org/posology/units"
	"example.org/posology/units/evidence"
)

// codeExpected is of a 1RM that is known otherwise.
const codeExpected evidence.ReasonCode = "fit.expected"

// Words returns what this package's reasons say. It is made once.
func Words() evidence.Lexicon { return lexicon() }

var lexicon = sync.OnceValue(func() evidence.Lexicon { return units.Must(evidence.NewLexicon(words())) })

func words() evidence.Words {
	return evidence.Words{
		"fit.curve": {
			Client:    "This is your own line: how weight and repetitions go together for you.",
			Clinician: "{form} fitted to {sets} of {reps} repetitions to failure; the 1RM is its load at one repetition. Intervals are for a further set on another day, by Student's t with {freedom} degrees of freedom and an error of {noise} a set.",
		},
		"fit.prior": {
			Clinician: "The shape began at the population's, {population} of the 1RM at ten repetitions, and came to {own}; {told} of what is known of it was told by these sets.",
		},
		"fit.alone": {
			Clinician: "The shape is from these sets alone, without the population's.",
		},
		"fit.one-count": {
			Client:    "A set with another weight would tell us more about you.",
			Clinician: "All sets are of {reps} repetitions: they say nothing about the shape, which is the population's.",
		},
		"fit.same-day": {
			Clinician: "{shared} of {sets} sets share a day with another, and so {share} of their error variance.",
		},
		"fit.beyond": {
			Clinician: "The sets begin at {reps} repetitions; the 1RM, at one, is extrapolated, and its interval is for the form being right.",
		},
		codeExpected: {
			Clinician: "A 1RM of {expected} ± {sd}, known otherwise, was counted too.",
		},
		"fit.practised": {
			Clinician: "The 1RM of {expected} ± {sd} that O'Conner gives for the same sets was counted too: for practised people with a bar. Nothing of the kind was measured with dumbbells, in novices or over 50.",
		},
	}
}

// reasons says how the curve came about.
func (m *model) reasons(d onerm.CurveData, shape bend.Bend, covariance mat.Symmetric) []evidence.Reason {
	list := []evidence.Reason{
		evidence.Because("fit.curve", formFact(m.Form), factOneRM, factSet, factFreedom, factLimit, factFall).With(
			evidence.Term("form", m.Form.String()), evidence.Text("sets", sets(d.Sets)), evidence.Number("reps", d.Studied), evidence.Count("freedom", d.Freedom), evidence.Share("noise", units.Fraction(d.Noise))),
	}
	if m.Alone {
		list = append(list, evidence.Because("fit.alone"))
	} else {
		list = append(list, m.reasonPrior(shape, covariance))
	}
	fewest, _ := d.Studied.Min()
	if most, _ := d.Studied.Max(); fewest == most {
		list = append(list, evidence.Because("fit.one-count", factPrior).With(evidence.Number("reps", fewest)))
	}
	if n := shared(m.ends); n > 0 {
		list = append(list, evidence.Because("fit.same-day", factSameDay).With(evidence.Count("shared", n), evidence.Count("sets", d.Sets), evidence.Share("share", units.Fraction(sameDay))))
	}
	if fewest > 1 {
		list = append(list, evidence.Because("fit.beyond", factOneRM).With(evidence.Number("reps", fewest)))
	}
	if m.Expected > 0 {
		list = append(list, evidence.Because(codeExpected).With(evidence.Mass("expected", m.Expected), evidence.Share("sd", m.ExpectedSD)))
	}
	return list
}

func (m *model) reasonPrior(shape bend.Bend, covariance mat.Symmetric) evidence.Reason {
	facts := []evidence.FactID{factPrior}
	if m.form().HasFloor() {
		facts = append(facts, factFloor)
	}
	return evidence.Because("fit.prior", facts...).With(
		evidence.Share("population", percentOf(math.Exp(population.mean))), evidence.Share("own", percentOf(shape.Fall())), evidence.Share("told", told(shape, covariance)))
}

// told is the share of the information on the fall that does not come from the
// prior: one less what is left of its variance. Both are for errors of one.
func told(s bend.Bend, covariance mat.Symmetric) units.Fraction {
	t := s.At(bend.Pivot)
	slopes := []float64{0, t.ByShape / t.Share, t.ByFloor / t.Share}[:covariance.SymmetricDim()]
	left := mat.Inner(mat.NewVecDense(len(slopes), slopes), covariance, mat.NewVecDense(len(slopes), slopes))
	return units.Fraction(min(1, max(0, 1-left/(population.sd*population.sd)))) // rounding may leave the unit interval
}

// shared returns how many sets share a day with another.
func shared(ends []int) int {
	n, from := 0, 0
	for _, to := range ends {
		if to-from > 1 {
			n += to - from
		}
		from = to
	}
	return n
}
