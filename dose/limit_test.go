package dose_test

import (
	"slices"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"example.org/posology/dose"
	"example.org/posology/dose/equipment"
	"example.org/posology/dose/exercise"
	"example.org/posology/dose/internal/demand"
	"example.org/posology/dose/onerm"
	"example.org/posology/dose/setlog"
	"example.org/posology/dose/strength"
	"example.org/posology/screening"
	"example.org/posology/units"
	"example.org/posology/units/body"
)

// told is all that a client is told with a dose.
func told(p dose.Prescription) string {
	var lines []string
	for _, r := range append(slices.Clone(p.Cautions), p.Reasons...) {
		lines = append(lines, dose.Words().Client(r))
	}
	return strings.Join(lines, "\n")
}

func TestLimitsAreSaid(t *testing.T) {
	limit := func(region body.Region, side body.Side, kg units.Mass, author string) screening.MassLimit {
		return screening.MassLimit{Region: region, Side: side, Max: kg * units.Kilogram, Author: author}
	}
	press := seen(t)
	press.Exercise, press.Side = exerciseOf(t, "dumbbell-shoulder-press"), body.Both
	press.Screening.Limits.Masses = []screening.MassLimit{
		limit(body.Shoulder, body.Right, 1, "Surgeon A"), limit(body.LowerBack, body.Both, 6, "Doctor B"), limit(body.AnkleFoot, body.Both, 1, "Doctor C"),
	}
	trained := seen(t)
	trained.Screening.Who.Training = body.Intermediate
	trained = tested(t, trained, 10, 8, 1)
	trained.Screening.Limits.Masses = []screening.MassLimit{limit(body.WholeBody, body.Both, 5, "")}
	free := seen(t)
	atTheTop := seen(t)
	restrict(&atTheTop, 10*units.Kilogram)
	beginner := row(t)
	beginner.Exercise, beginner.Side = exerciseOf(t, "lateral-raise"), body.Both
	share := tested(t, seen(t), 10, 8, 1)
	share.Screening.Limits.MaxFraction = 0.4
	for name, tt := range map[string]struct {
		r    dose.Request
		most units.Mass
		says []string
		not  string
	}{
		"every limit that binds the work": {press, units.Kilogram, []string{
			"No more than 1 kg in each hand for the right shoulder, as Surgeon A asked.",
			"No more than 6 kg in both hands together for the lower back, as Doctor B asked.",
			"Take no more than 1 kg in each hand.",
		}, "Doctor C"},
		"in every mode, and nobody named": {trained, 5 * units.Kilogram, []string{"No more than 5 kg for the whole body, as somebody unnamed asked.", "Take no more than 5 kg."}, "each hand"},
		"a beginner's first weight":       {beginner, units.Kilogram, []string{"Take no more than 1 kg in each hand."}, " asked."},
		"the heaviest there is":           {atTheTop, 10 * units.Kilogram, []string{"Take no more than 10 kg."}, "each hand"},
		"none":                            {free, 0, nil, "no more than"},
		"a share of the maximum":          {share, units.Must(knownFrom(share).Scale(0.4, units.Down)), []string{"Take no more than 5 kg."}, " asked."},
	} {
		begun := prescribe(t, tt.r)
		low, _ := begun.Span.Min()
		for _, p := range []dose.Prescription{begun, continued(t, tt.r, dose.Step{Load: 99 * units.Kilogram, Count: low, Sets: 1})} {
			if p.Most != tt.most {
				t.Errorf("%s, %v: most %v, want %v", name, p.Mode, p.Most, tt.most)
			}
			for _, line := range tt.says {
				if !strings.Contains(told(p), line) {
					t.Errorf("%s, %v: %q is not told:\n%s", name, p.Mode, line, told(p))
				}
			}
			if tt.not != "" && strings.Contains(told(p), tt.not) {
				t.Errorf("%s, %v: %q is told:\n%s", name, p.Mode, tt.not, told(p))
			}
		}
	}
	// In pounds, as it stands on the weight.
	pounds := free
	pounds.Kit = equipment.Kit{Dumbbells: []equipment.Dumbbell{{Mass: units.Marked{Mass: 5 * units.Pound, Unit: units.LB}, Count: 1}, {Mass: units.Marked{Mass: 8 * units.Pound, Unit: units.LB}, Count: 1}}}
	restrict(&pounds, 3*units.Kilogram)
	if p := prescribe(t, pounds); !strings.Contains(told(p), "Take no more than 5 lb.") {
		t.Error(told(p))
	}
}

// What says that a share limit binds is said where it does, below the top of the
// band: 50 % for the novice's row.
func TestShareLimitIsSaidWhereItBinds(t *testing.T) {
	for most, want := range map[units.Fraction]bool{0.49: true, 0.5: false, 0.51: false, 0: false} {
		r := tested(t, row(t), 10, 8, 1)
		r.Screening.Limits.MaxFraction = most
		if p := prescribe(t, r); has(p.Reasons, "dose.fraction-limit") != want {
			t.Errorf("a limit of %v: %v", most, p.Reasons)
		}
	}
}

// A limit on the share holds without an estimate: sets of 12 with 5 kg and 3 left
// show 6.7 kg at least (Brzycki and Epley: 4/3 of the weight at 10
// repetitions), of which 40 % are 2.7 kg.
func TestShareLimitWithoutEstimate(t *testing.T) {
	left := func(n float64) units.Effort { return units.Must(units.InReserve(n)) }
	squat := exerciseOf(t, "goblet-squat")
	for name, tt := range map[string]struct {
		kit   equipment.Kit
		share units.Fraction
		spoil func(r *dose.Request)
		want  units.Mass // the most allowed; 0: no dose
	}{
		"by what was done": {pairs(1, 2, 3), 0.4, func(r *dose.Request) { r.Done = []setlog.Set{doneSet(5, 12, left(3))} }, 2666 * units.Gram},
		"nothing so light": {pairs(4, 5), 0.4, func(r *dose.Request) { r.Done = []setlog.Set{doneSet(5, 12, left(3))} }, 0},
		"the best set": {pairs(1, 2, 3), 0.4, func(r *dose.Request) {
			r.Done = []setlog.Set{doneSet(5, 12, left(3)), doneSet(6, 12, left(3)), doneSet(5, 8, left(1))}
		}, 3200 * units.Gram},
		"fewer repetitions":     {pairs(1, 2, 3), 0.4, func(r *dose.Request) { r.Done = []setlog.Set{doneSet(5, 1, left(1))} }, 2 * units.Kilogram},
		"more left than counts": {pairs(1, 2, 3), 0.4, func(r *dose.Request) { r.Done = []setlog.Set{doneSet(5, 1, left(9))} }, 2250 * units.Gram},
		"the set to begin from": {pairs(1, 2, 3), 0.4, func(r *dose.Request) { s := doneSet(5, 12, left(3)); r.Performed = &s }, 2666 * units.Gram},
		"no reserve noted":      {pairs(2, 3), 0.4, func(r *dose.Request) { r.Done = []setlog.Set{doneSet(5, 12, units.Effort{})} }, 0},
		"too long ago":          {pairs(2, 3), 0.4, func(r *dose.Request) { s := doneSet(5, 12, left(3)); s.Day -= 85; r.Done = []setlog.Set{s} }, 0},
		"just not too long ago": {pairs(2, 3), 0.4, func(r *dose.Request) { s := doneSet(5, 12, left(3)); s.Day -= 84; r.Done = []setlog.Set{s} }, 2666 * units.Gram},
		"before an operation": {pairs(2, 3), 0.4, func(r *dose.Request) {
			r.Done, r.Screening.TestsFrom = []setlog.Set{doneSet(5, 12, left(3))}, firstDay+1
		}, 0},
		"the other side":           {pairs(2, 3), 0.4, func(r *dose.Request) { s := doneSet(5, 12, left(3)); s.Side = body.Left; r.Done = []setlog.Set{s} }, 0},
		"nothing known":            {pairs(1, 2), 0.4, func(*dose.Request) {}, units.Kilogram},
		"nothing known, at 80 %":   {pairs(1, 2), 0.8, func(*dose.Request) {}, units.Kilogram},
		"nothing known, too heavy": {pairs(1.5, 2), 0.8, func(*dose.Request) {}, 0},
		"what it replaces":         {pairs(2, 3), 0.4, func(r *dose.Request) { r.Bound = 2500 * units.Gram }, 2 * units.Kilogram},
		"what it replaces is less": {pairs(1, 2), 0.4, func(r *dose.Request) { r.Bound = units.Kilogram / 2 }, 0},
		"a bound without a limit":  {pairs(1, 2, 3), 0, func(r *dose.Request) { r.Bound = 2 * units.Kilogram }, 2 * units.Kilogram},
		"done less than unknown":   {pairs(1, 2), 0.4, func(r *dose.Request) { r.Done = []setlog.Set{doneSet(1, 12, left(9))} }, units.Kilogram},
		"the body moves": {pairs(1, 2), 0.8, func(r *dose.Request) {
			r.Exercise, r.Side = squat, body.Both
			s := doneSet(8, 12, left(9))
			s.Exercise, s.Hold, s.Side = squat.ID, squat.Hold, body.Both
			r.Done = []setlog.Set{s}
		}, units.Kilogram},
		"the body moves, too heavy": {pairs(2, 4), 0.8, func(r *dose.Request) { r.Exercise, r.Side = squat, body.Both }, 0},
		"its own first weight":      {pairs(2, 4), 0.8, func(r *dose.Request) { r.Exercise, r.Side = exerciseOf(t, "one-dumbbell-hinge"), body.Both }, 2 * units.Kilogram},
		"both at once, for the one": {pairs(1, 2, 3), 0.4, func(r *dose.Request) { s := doneSet(5, 12, left(3)); s.Side = body.Both; r.Done = []setlog.Set{s} }, 2666 * units.Gram},
		"both sides": {pairs(1, 2, 3), 0.4, func(r *dose.Request) {
			weak := doneSet(3, 12, left(3))
			weak.Side, r.Side = body.Left, body.Both
			r.Done = []setlog.Set{weak, doneSet(5, 12, left(3))}
		}, 1600 * units.Gram},
	} {
		r := seen(t)
		r.Kit, r.Screening.Limits.MaxFraction = tt.kit, tt.share
		tt.spoil(&r)
		f := frameOf(t, r)
		low, _ := f.Outline().Span.Min()
		begun, errBegun := f.Prescribe()
		on, errOn := f.Continue(dose.Step{Load: 99 * units.Kilogram, Count: low, Sets: 1})
		if tt.want == 0 {
			c := barred(t, r, dose.ErrTooHeavy)
			if errOn == nil {
				t.Errorf("%s: goes on with %v", name, on.Load.Each())
			}
			if wants := !r.Exercise.MovesBody; has(c.Free, "dose.free-by-set") != wants {
				t.Errorf("%s: freed by %v", name, c.Free)
			}
			continue
		}
		if errBegun != nil || errOn != nil {
			t.Errorf("%s: %v, %v", name, errBegun, errOn)
			continue
		}
		if gram := f.Ceiling() / units.Gram * units.Gram; gram != tt.want || begun.Load.Each() > tt.want || on.Load.Each() > tt.want {
			t.Errorf("%s: ceiling %v, want %v; begins with %v, goes on with %v", name, f.Ceiling(), tt.want, begun.Load.Each(), on.Load.Each())
		}
	}
}

func TestBadDone(t *testing.T) {
	for want, spoil := range map[string]func(r *dose.Request){
		"/done/0/exercise": func(r *dose.Request) { r.Done[0].Exercise = "goblet-squat" },
		"/done/1/reps":     func(r *dose.Request) { r.Done = append(r.Done, setlog.Set{}) },
		"/done/0/day":      func(r *dose.Request) { r.Done[0].Day++ },
		"/bound":           func(r *dose.Request) { r.Bound = -1 },
	} {
		r := row(t)
		r.Done = []setlog.Set{doneSet(5, 12, units.Effort{})}
		spoil(&r)
		if _, err := dose.Prescribe(r); !slices.Contains(paths(err), want) {
			t.Errorf("%v, want %s", err, want)
		}
	}
}

// Knowing less never gives more: whatever is left out of what is known under a
// limit on the share, the load stays under that share of the true maximum, except
// a weight within the first weight of the exercise. The sets are drawn from a true
// maximum by the more generous of the two equations, told with an error of one
// repetition where they can be counted.
func TestShareLimitHoldsWhateverIsKnown(t *testing.T) {
	barbells := slices.DeleteFunc(slices.Clone(exercises), func(e exercise.Exercise) bool {
		return e.MovesBody || e.Hold == body.Unloaded || e.Measure != exercise.Repetitions
	})
	rapid.Check(t, func(t *rapid.T) {
		ex := rapid.SampledFrom(barbells).Draw(t, "exercise")
		truth := units.Mass(rapid.IntRange(2, 60).Draw(t, "half kilograms of the maximum")) * units.Kilogram / 2
		share := units.Fraction(rapid.IntRange(5, 100).Draw(t, "share")) / 100
		r := dose.Request{
			Day: firstDay, Screening: waived(body.Training(rapid.IntRange(1, 3).Draw(t, "training"))),
			Exercise: ex, Side: body.Both, Goal: 1, Kit: drawKit(t),
		}
		r.Screening.Limits.MaxFraction = share
		if rapid.Bool().Draw(t, "seen") {
			r.Technique = dose.Observation{Who: "a colleague", Day: firstDay}
		}
		for range rapid.IntRange(0, 4).Draw(t, "sets") {
			each := units.Mass(rapid.IntRange(1, 60).Draw(t, "load")) * units.Kilogram / 2
			able := repsWith(each, truth)
			if able < 1 {
				continue
			}
			reps := rapid.IntRange(1, able).Draw(t, "repetitions")
			told := float64(max(0, able-reps+rapid.IntRange(-1, 1).Draw(t, "error")))
			s := setlog.Set{Day: firstDay, Exercise: ex.ID, Side: body.Both, Hold: ex.Hold, Load: each, Reps: reps, Effort: units.Must(units.InReserve(min(10, told)))}
			if ex.Hold == body.OneEachHand {
				s.Stated = body.PerHand
			}
			r.Done = append(r.Done, s)
		}
		first, ok := ex.FirstMass.Max()
		if !ok {
			first = units.Kilogram
		}
		most := max(first, units.Must(truth.Scale(share, units.Up)))
		f, err := dose.NewFrame(r)
		if err != nil {
			return
		}
		low, _ := f.Outline().Span.Min()
		if p, err := f.Prescribe(); err == nil && p.Load.Each() > most {
			t.Fatalf("begins with %v, above %v of %v", p.Load.Each(), share, truth)
		}
		if p, err := f.Continue(dose.Step{Load: 99 * units.Kilogram, Count: low, Sets: 1, Steps: 2}); err == nil && heaviest(f.Table(), p) > most {
			t.Fatalf("goes on to %v, above %v of %v", heaviest(f.Table(), p), share, truth)
		}
	})
}

// repsWith returns how often a weight can be lifted, by the lower of the house
// equations' answers, up to the 10 that they were made for.
func repsWith(each, oneRM units.Mass) int {
	for reps := 10; reps > 0; reps-- {
		epley, errE := onerm.Epley.OneRM(each, float64(reps))
		brzycki, errB := onerm.Brzycki.OneRM(each, float64(reps))
		if errE == nil && errB == nil && min(epley, brzycki) <= oneRM {
			return reps
		}
	}
	return 0
}

// heaviest is the weight that the steps of a dose lead to at most.
func heaviest(table *equipment.Table, p dose.Prescription) units.Mass {
	each := p.Load.Each()
	if p.Finding == nil {
		return each
	}
	for range p.Finding.MaxSteps {
		gap, ok := table.Next(each)
		if !ok {
			return units.MaxMass
		}
		each = gap.To.Each()
	}
	return each
}

// A set that was done frees what a share limits, and nothing that a surgeon does.
func TestARestrictionIsNotFreedByASet(t *testing.T) {
	r := seen(t)
	restrict(&r, units.Kilogram/4)
	if c := barred(t, r, dose.ErrTooHeavy); has(c.Free, "dose.free-by-set") {
		t.Errorf("%v", c.Free)
	}
}

// Both a test and what was done since bound a maximum from below, so the higher
// bound holds: whoever does not know of the test is allowed no more.
func TestShareLimitByTheHigherBound(t *testing.T) {
	for name, tt := range map[string]struct {
		done units.Mass // in sets of 10 to failure, which show 4/3 of it
		most units.Mass
	}{"nothing done": {0, 0}, "less than tested": {3, 0}, "more than tested": {9, 12 * units.Kilogram * 8 / 10}} {
		r := tested(t, row(t), 6, 8, 1)
		r.Screening.Limits.MaxFraction = 0.8
		want := units.Must(knownFrom(r).Scale(0.8, units.Down))
		if tt.most > 0 {
			want = tt.most
		}
		if tt.done > 0 {
			r.Done = []setlog.Set{doneSet(float64(tt.done), 10, units.Must(units.InReserve(0)))}
		}
		f, err := dose.NewFrame(r)
		if err != nil || f.Ceiling() != want {
			t.Errorf("%s: %v, want %v, %v", name, f.Ceiling(), want, err)
		}
		r.Estimates = nil
		if unknown, err := dose.NewFrame(r); err == nil && unknown.Ceiling() > max(f.Ceiling(), units.Kilogram) {
			t.Errorf("%s: %v without the test", name, unknown.Ceiling())
		}
	}
}

// knownFrom is what the test of a request shows of strength.
func knownFrom(r dose.Request) units.Mass {
	oneRM, _ := strength.Ability{}.Tested(r.Estimates[0]).OneRM()
	return oneRM
}

// A limit on no side is on either, as one on both is, in every exercise and region.
func TestMassLimitOfNoSide(t *testing.T) {
	for ex := range exercise.Standard().All() {
		for side := range body.Sides() {
			for region := range body.Regions() {
				none, both := screening.MassLimit{Region: region}, screening.MassLimit{Region: region, Side: body.Both}
				if is, want := demand.Binds(none, &ex, side), demand.Binds(both, &ex, side); is != want {
					t.Errorf("%s, %s, %s: binds %v, on both sides %v", ex.ID, side, region, is, want)
				}
			}
		}
	}
}
