package dose_test

import (
	"testing"

	"example.org/posology/dose"
	"example.org/posology/dose/exercise"
	"example.org/posology/dose/guideline"
	"example.org/posology/dose/onerm"
	"example.org/posology/dose/setlog"
	"example.org/posology/screening"
	"example.org/posology/testdata/dosetest"
	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/evidence"
)

// known reports whether the row's field may permit a load.
func known(r guideline.Recommendation, f guideline.Field) bool {
	b := r.BasisOf(f)
	return b != 0 && b != evidence.FromMemory && b != evidence.Design
}

// mostShare returns the largest share of 1RM that the row permits on a basis
// that may permit anything, false if the row has none.
func mostShare(r guideline.Recommendation) (units.Fraction, bool) {
	var most units.Fraction
	for f, band := range map[guideline.Field]units.Range[units.Fraction]{
		guideline.FieldLoad: r.Load, guideline.FieldLoadStart: r.LoadStart,
		guideline.FieldLoadUpper: r.LoadUpper, guideline.FieldLoadLower: r.LoadLower,
	} {
		if !known(r, f) {
			continue
		}
		top, ok := band.Max()
		if !ok {
			top, _ = band.Min()
		}
		most = max(most, top)
	}
	return most, most > 0
}

// Every row of the guidelines, for every training status and two ages: the
// load stays within the row, repetitions and reserve within the curve, and
// sets within the row.
func TestEveryRow(t *testing.T) {
	for rec := range guideline.All() {
		for _, training := range []body.Training{body.Novice, body.Intermediate, body.Advanced} {
			for _, age := range []body.Age{40, 66} {
				r := row(t)
				r.Guideline, r.Screening.Who.Training, r.Screening.Who.Age = rec.ID, training, age
				r.Kit = pairs(0.5, 1, 1.5, 2, 2.5, 3, 3.5, 4, 4.5, 5, 5.5, 6, 7, 8, 9, 10)
				r = tested(t, r, 9, 8, 1)
				p, err := dose.Prescribe(r)
				if err != nil {
					t.Errorf("%s, %v, %d: %v", rec.ID, training, age, err)
					continue
				}
				checkRow(t, rec, r, p)
			}
		}
	}
}

func checkRow(t *testing.T, rec guideline.Recommendation, r dose.Request, p dose.Prescription) {
	t.Helper()
	if most, ok := mostShare(rec); ok && p.Share > most {
		t.Errorf("%s, %v: %v of what is known, the row permits %v", rec.ID, r.Screening.Who.Training, p.Share, most)
	}
	if toFailure, err := onerm.Epley.Reps(p.Share); err == nil && float64(p.Count)+float64(p.Reserve.Least) > toFailure {
		t.Errorf("%s, %v: %d repetitions and reserve %v exceed %.1f to failure", rec.ID, r.Screening.Who.Training, p.Count, p.Reserve, toFailure)
	}
	if !rec.Sets.IsZero() && !rec.Sets.Contains(p.Sets) {
		t.Errorf("%s, %v: %d sets, the row has %v", rec.ID, r.Screening.Who.Training, p.Sets, rec.Sets)
	}
	if !rec.Reps.IsZero() && !rec.Reps.Contains(p.Count) {
		t.Errorf("%s, %v: %d repetitions, the row has %v", rec.ID, r.Screening.Who.Training, p.Count, rec.Reps)
	}
	if p.Guideline != rec.ID || p.Assumed {
		t.Errorf("%s: the dose follows %s, assumed %v", rec.ID, p.Guideline, p.Assumed)
	}
}

// Legs and arms take their own band where the row tells them apart. The row of
// AHA 2007 is known from memory: it may lighten.
func TestUpperAndLowerBands(t *testing.T) {
	ex := exerciseOf(t, "one-arm-dumbbell-row")
	leg := ex
	leg.ID, leg.Pattern = "invented-leg-curl", exercise.Hinge
	loads := map[exercise.ID]units.Mass{}
	for _, e := range []exercise.Exercise{ex, leg} {
		r := row(t)
		r.Exercise, r.Screening.Who.Training, r.Guideline = e, body.Intermediate, "aha2007-initial-older-or-cardiac"
		r.Kit = pairs(1, 1.5, 2, 2.5, 3, 3.5, 4, 4.5, 5, 6)
		loads[e.ID] = prescribe(t, tested(t, r, 9, 8, 1)).Load.Each()
	}
	if loads[ex.ID] >= loads[leg.ID] {
		t.Errorf("arms %v, legs %v: want less for the arms (30-40 against 50-60 %%)", loads[ex.ID], loads[leg.ID])
	}
}

func TestMeasuredMaximum(t *testing.T) {
	r := row(t)
	r.Screening.Who.Training = body.Intermediate
	set := setlog.Set{Day: firstDay, Exercise: r.Exercise.ID, Side: r.Side, Hold: r.Exercise.Hold,
		Load: 10 * units.Kilogram, Reps: 1, Effort: units.Must(units.InReserve(0))}
	e, err := onerm.FromSet(set, r.Exercise, body.Person{Age: 66, Sex: body.Female, Training: body.Intermediate})
	if err != nil {
		t.Fatal(err)
	}
	r.Estimates = []onerm.Estimate{e}
	p := prescribe(t, r)
	if share := float64(p.Load.Each()) / float64(dosetest.LowEnd(e)); share > 0.8 || p.Load.Each() == 0 {
		t.Errorf("%v of a measured %v", p.Load, e.OneRM)
	}
}

func TestOwnExercise(t *testing.T) {
	r := row(t)
	r.Exercise.ID, r.Exercise.Count, r.Exercise.CountFact = "invented-row", units.Range[int]{}, ""
	r.Guideline = "ukcmo2019-older" // states neither repetitions, rest nor load
	p := prescribe(t, r)
	if p.Count != 10 || p.Span.String() != "5 to 20" || p.Rest.String() != "60 to 120" {
		t.Errorf("%d of %v, rest %v; want about ten of 5 to 20 and one to two minutes (common practice)", p.Count, p.Span, p.Rest)
	}
	r.Exercise.Measure = exercise.Seconds
	if p := prescribe(t, r); p.Span.String() != "10 to 30" {
		t.Errorf("held for %v seconds", p.Span)
	}
}

func TestFacts(t *testing.T) {
	ids := map[evidence.FactID]bool{}
	for f := range dose.Facts() {
		if ids[f.ID] || f.Value == "" {
			t.Errorf("fact %q", f.ID)
		}
		ids[f.ID] = true
	}
	for range dose.Facts() {
		break // stopping early must not panic
	}
	if !ids["dose.start-reserve"] {
		t.Error("the reserve to start with is no fact")
	}
}

func TestLowImpact(t *testing.T) {
	r := row(t)
	r.Exercise.Demands = r.Exercise.Demands.Union(body.DemandSet(body.Impact))
	r.Screening.Limits.LowImpact = true
	barred(t, r, dose.ErrDemand)
}

func TestNothingLeftUnderARestriction(t *testing.T) {
	r := tested(t, row(t), 6, 8, 2)
	r.Screening.Limits.Masses = []screening.MassLimit{{Region: body.WholeBody, Side: body.Both, Max: 0, Author: "a surgeon"}}
	c := barred(t, r, dose.ErrTooHeavy)
	if c.Exercise != r.Exercise.ID {
		t.Errorf("%+v", c)
	}
	r.Estimates = nil
	barred(t, r, dose.ErrTooHeavy)
}
