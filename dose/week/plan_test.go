package week_test

import (
	"errors"
	"flag"
	"math"
	"math/rand/v2"
	"slices"
	"strconv"
	"strings"
	"testing"

	"example.org/posology/dose"
	"example.org/posology/dose/exercise"
	"example.org/posology/dose/guideline"
	"example.org/posology/dose/onerm"
	"example.org/posology/dose/week"
	"example.org/posology/screening"
	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/evidence"
	"example.org/posology/units/field"
)

var long = flag.Bool("long", false, "run the long versions of the random tests")

// times returns n, and ten times as many with -long.
func times(n int) int {
	if *long {
		return 10 * n
	}
	return n
}

// randomWeek draws a request: kit, limits, days, minutes, wishes, estimates.
func randomWeek(t *testing.T, rng *rand.Rand) week.Request {
	t.Helper()
	r := weekOf(rng.Perm(7)[:1+rng.IntN(7)]...)
	r.Minutes = []int{0, 10, 20, 30, 45, 60}[rng.IntN(6)]
	r.Screening.Who.Training = body.Training(1 + rng.IntN(3))
	r.Goal = guideline.Goal(1 + rng.IntN(7))
	r.Phase = dose.Phase(rng.IntN(5))
	r.Screening.Setting = screening.Setting(1 + rng.IntN(4))
	for _, ex := range exercises {
		if rng.IntN(2) == 0 {
			r.Seen = append(r.Seen, week.Seen{Exercise: ex.ID, Observation: dose.Observation{Who: "a colleague", Day: firstDay}})
		}
	}
	var kg []float64
	for range rng.IntN(6) {
		kg = append(kg, float64(1+rng.IntN(40))/2)
	}
	r.Kit = pairs(kg...)
	for range rng.IntN(9) {
		r.Exercises = append(r.Exercises, exercises[rng.IntN(len(exercises))].ID)
	}
	for range rng.IntN(3) {
		r.Screening.Limits.Avoid |= body.DemandSet(body.Demand(1 + rng.IntN(22)))
	}
	r.Screening.Limits.Support = rng.IntN(3) == 0
	r.Screening.Limits.MinReserve = units.RIR(rng.IntN(7))
	r.Screening.Limits.MaxFraction = []units.Fraction{0, 0, 0.4, 0.79}[rng.IntN(4)]
	if rng.IntN(4) == 0 {
		r.Screening.Meanwhile = screening.UnloadedPractice
	}
	if rng.IntN(2) == 0 {
		q := row(t)
		q.Screening.Who.Training = r.Screening.Who.Training
		r.Estimates = []onerm.Estimate{estimateOf(t, q, float64(2+rng.IntN(10)), 2+rng.IntN(7), 2)}
	}
	return r
}

// No constraint is broken on ten thousand random requests (a hundred thousand
// with -long).
func TestPlanKeepsItsConstraints(t *testing.T) {
	rng := rand.New(rand.NewPCG(20261130, 1))
	planned := 0
	for range times(10_000) {
		r := randomWeek(t, rng)
		w, err := week.Plan(r)
		if err != nil {
			continue // what can't be planned says why; other tests look at that
		}
		planned++
		checkPlan(t, r, w)
	}
	if planned < 1000 {
		t.Errorf("only %d requests could be planned", planned)
	}
}

func checkPlan(t *testing.T, r week.Request, w week.Week) {
	t.Helper()
	limits := r.Screening.Limits
	for i, s := range w.Sessions {
		if i > 0 && s.Day-w.Sessions[i-1].Day < 2 || len(w.Sessions) > 1 && w.Sessions[0].Day+7-s.Day < 2 {
			t.Errorf("sessions on %v and %v", w.Sessions[max(i, 1)-1].Day, s.Day)
		}
		if !slices.Contains(r.Days, s.Day) {
			t.Errorf("a session on %v, which was not offered", s.Day)
		}
		if r.Minutes > 0 && s.Minutes > r.Minutes && (len(s.Items) > 1 || s.Items[0].Sets > 1 || !has(w.Reasons, "dose.minutes-too-few")) {
			t.Errorf("%d minutes, %d were given, and nothing is said of it", s.Minutes, r.Minutes)
		}
		if got := int(math.Ceil(float64(s.WarmUp) + week.MinutesOf(s.Items))); got != s.Minutes {
			t.Errorf("%d minutes are said, the items take %d", s.Minutes, got)
		}
	}
	if w.Review > w.Expires || w.Review <= w.Sessions[0].Day || w.Retest <= w.Sessions[0].Day {
		t.Errorf("review %v, re-test %v, expiry %v", w.Review, w.Retest, w.Expires)
	}
	seen := map[exercise.ID]bool{}
	for _, item := range w.Sessions[0].Items {
		ex, _ := exercise.Standard().Get(item.Exercise)
		switch {
		case seen[item.Exercise]:
			t.Errorf("%s stands twice", item.Exercise)
		case item.Sets < 1 || item.Count < 1:
			t.Errorf("%s: %d sets of %d", item.Exercise, item.Sets, item.Count)
		case ex.Demands.Both(limits.Avoid) != 0:
			t.Errorf("%s demands %v", item.Exercise, ex.Demands.Both(limits.Avoid))
		case r.Screening.Meanwhile == screening.UnloadedPractice && item.Mode != dose.WithoutLoad:
			t.Errorf("%s with %v in unloaded practice", item.Exercise, item.Load)
		case item.Measure == exercise.Repetitions && item.Reserve.Least < limits.MinReserve:
			t.Errorf("%s: reserve %v, at least %v", item.Exercise, item.Reserve, limits.MinReserve)
		case limits.MaxFraction > 0 && item.Share > limits.MaxFraction:
			t.Errorf("%s: %v of 1RM, at most %v", item.Exercise, item.Share, limits.MaxFraction)
		}
		if item.Mode != dose.WithoutLoad {
			table, err := r.Kit.Compile(item.Hold)
			if err != nil {
				t.Fatal(err)
			}
			if _, ok := table.Find(item.Load.Each()); !ok {
				t.Errorf("%s: %v is not in the kit", item.Exercise, item.Load)
			}
		}
		seen[item.Exercise] = true
	}
}

func TestPhases(t *testing.T) {
	seen := dose.Observation{Who: "a physiotherapist", Day: firstDay}
	tests := []struct {
		name     string
		training body.Training
		phase    dose.Phase
		who      dose.Observation
		want     dose.Phase
		row      guideline.ID
	}{
		{"novice", body.Novice, 0, dose.Observation{}, dose.Familiarise, "acsm2011-older-start"},
		{"novice, seen", body.Novice, 0, seen, dose.Familiarise, "acsm2011-older-start"},
		{"novice to build, not seen", body.Novice, dose.Build, dose.Observation{}, dose.Familiarise, "acsm2011-older-start"},
		{"novice to build, seen on no day", body.Novice, dose.Build, dose.Observation{Who: "somebody"}, dose.Familiarise, "acsm2011-older-start"},
		{"novice to build, seen", body.Novice, dose.Build, seen, dose.Build, "acsm2009-older-strength"},
		{"intermediate", body.Intermediate, 0, dose.Observation{}, dose.Build, "acsm2009-older-strength"},
		{"power", body.Intermediate, dose.Power, dose.Observation{}, dose.Power, "acsm2009-older-power"},
		{"maintain", body.Advanced, dose.Maintain, dose.Observation{}, dose.Maintain, "acsm2009-older-strength"},
		{"back after years", body.Intermediate, dose.Familiarise, dose.Observation{}, dose.Familiarise, "acsm2011-older-start"},
	}
	for _, tt := range tests {
		r := row(t)
		r.Screening.Who.Training, r.Phase, r.Technique = tt.training, tt.phase, tt.who
		p := prescribe(t, r)
		if p.Phase != tt.want || p.Guideline != tt.row {
			t.Errorf("%s: %v by %s, want %v by %s", tt.name, p.Phase, p.Guideline, tt.want, tt.row)
		}
		if notSeen := tt.phase != 0 && tt.phase != tt.want; has(p.Reasons, "dose.technique-not-seen") != notSeen {
			t.Errorf("%s: reasons %v", tt.name, p.Reasons)
		}
	}
	r := weekOf(0, 2, 4)
	r.Screening.Who.Training, r.Phase = body.Intermediate, dose.Maintain
	if w := firstWeek(t, r); len(w.Sessions) != 2 || w.Sessions[0].Items[0].Sets != 2 {
		t.Errorf("maintenance: %d sessions, %d sets; want two and two", len(w.Sessions), w.Sessions[0].Items[0].Sets)
	}
	r.Phase = 9
	if _, err := week.Plan(r); err == nil {
		t.Error("a phase that is none is accepted")
	}
}

func TestBesideAndDates(t *testing.T) {
	r := weekOf(0)
	r.Goal = guideline.Bone
	w := firstWeek(t, r)
	if got := kindsOf(w); got != "balance balance balance aerobic impact" || len(w.NotBeside) != 1 { // one leg waits for a test
		t.Errorf("beside: %s, %+v", got, w.NotBeside)
	}
	if w.Review != plus(14) || w.Retest != plus(21) || w.Expires != plus(56) {
		t.Errorf("review %v, re-test %v, expiry %v", w.Review, w.Retest, w.Expires)
	}
	r.Screening.Limits.LowImpact = true
	r.Screening.ReviewBy = plus(10)
	w = firstWeek(t, r)
	if got := kindsOf(w); got != "balance balance balance aerobic" || len(w.NotBeside) != 2 || w.Review != plus(10) || w.Expires != plus(10) {
		t.Errorf("low impact, clearance until %v: beside %s, review %v, expiry %v", plus(10), got, w.Review, w.Expires)
	}
	r.Screening.Who.Age, r.Goal, r.Screening.Who.Training = 40, guideline.Strength, body.Intermediate
	r.Screening.ReviewBy = plus(100)
	if w = firstWeek(t, r); len(w.Beside) != 0 || w.Review != plus(42) {
		t.Errorf("at 40: beside %+v, review %v", w.Beside, w.Review)
	}
	r.Phase = dose.Power
	if w = firstWeek(t, r); kindsOf(w) != "power power" {
		t.Errorf("the power phase at 40: %s", kindsOf(w))
	}
	r.Known.Stands = new(9)
	if _, err := week.Plan(r); !errors.Is(err, field.ErrOutOfRange) {
		t.Errorf("nine stances: %v", err)
	}
}

func kindsOf(w week.Week) string {
	var kinds []string
	for _, i := range w.Beside {
		kinds = append(kinds, i.Kind.String())
	}
	return strings.Join(kinds, " ")
}

// Where the whole ladder is ruled out, another movement of the pattern stands
// in, never a harder one.
func TestOtherMovementOfThePattern(t *testing.T) {
	own := func(id exercise.ID, d body.Demand) exercise.Exercise {
		return exercise.Exercise{ID: id, Name: string(id), Pattern: exercise.Row, Hold: body.Unloaded, MovesBody: true, Measure: exercise.Repetitions,
			Muscles: []exercise.Work{{Muscle: body.LatissimusDorsi, Role: exercise.Prime}}, Demands: body.DemandSet(d)}
	}
	gentle, wanted, hard := own("gentle", body.Overhead), own("wanted", body.Overhead), own("hard", body.Impact)
	gentle.Harder, wanted.Easier, wanted.Harder, hard.Easier = "wanted", "gentle", "hard", "wanted"
	catalogue, err := exercise.Catalogue{}.With(gentle, wanted, hard, own("other", body.Impact))
	if err != nil {
		t.Fatal(err)
	}
	r := weekOf(0)
	r.Catalogue, r.Exercises = catalogue, []exercise.ID{"wanted"}
	r.Screening.Limits.Avoid = body.DemandSet(body.Overhead)
	w := firstWeek(t, r)
	if got := w.Sessions[0].Items[0].Exercise; got != "other" || w.LeftOut[0].Instead != "other" || len(w.LeftOut[0].Reasons) != 2 {
		t.Errorf("%s stands in, %+v; want the other movement", got, w.LeftOut)
	}
	r.Screening.Limits.Avoid = body.DemandSet(body.Overhead, body.Impact)
	var barred *dose.ConstraintError
	if _, err := week.Plan(r); !errors.As(err, &barred) || barred.Constraint.Code != "dose.demand" {
		t.Errorf("all ruled out: %v", err)
	}
}

func TestWhatTheClientWantsAndDoesNot(t *testing.T) {
	r := weekOf(0)
	r.Task = "lift a grandchild"
	r.Exercises, r.Without = []exercise.ID{"goblet-squat", "dead-bug"}, []exercise.ID{"goblet-squat", "dumbbell-sit-to-stand"}
	w := firstWeek(t, r)
	if w.Task != r.Task || w.Sessions[0].Items[0].Exercise != "sit-to-stand" || !has(w.LeftOut[0].Reasons, "dose.not-wanted") {
		t.Errorf("task %q, first %s, left out %+v", w.Task, w.Sessions[0].Items[0].Exercise, w.LeftOut)
	}
	r.Exercises = []exercise.ID{"dead-bug"}
	for ex := range exercise.Standard().All() {
		r.Without = append(r.Without, ex.ID)
	}
	if _, err := week.Plan(r); !errors.Is(err, field.ErrConflict) {
		t.Errorf("nothing is wanted: %v", err)
	}
	r.Without = []exercise.ID{"goblet-squad"}
	if _, err := week.Plan(r); !errors.Is(err, field.ErrUnknown) || !slices.Contains(paths(err), "/without/0") {
		t.Errorf("an unknown exercise: %v", err)
	}
}

// A session keeps its minutes, or the week says how many it takes, to both
// readers and in good grammar.
func TestMinutesTooFewAreSaid(t *testing.T) {
	words := week.Words()
	for minutes := range 12 {
		r := weekOf(0)
		r.Minutes, r.Screening.Who.Training = minutes, body.Intermediate
		w := firstWeek(t, r)
		s := w.Sessions[0]
		var said *evidence.Reason
		for i, why := range w.Reasons {
			if why.Code == "dose.minutes-too-few" {
				said = &w.Reasons[i]
			}
		}
		if over := minutes > 0 && s.Minutes > minutes; over != (said != nil) || over && (len(s.Items) != 1 || s.Items[0].Sets != 1) {
			t.Errorf("%d minutes: a session of %d with %d exercises, said %v", minutes, s.Minutes, len(s.Items), said)
		}
		if said == nil {
			continue
		}
		needed := strconv.Itoa(s.Minutes)
		if !strings.Contains(words.Client(*said), needed) || !strings.Contains(words.Clinician(*said), needed) {
			t.Errorf("%q, %q do not say %s", words.Client(*said), words.Clinician(*said), needed)
		}
		for _, out := range w.LeftOut {
			for _, why := range out.Reasons {
				if text := words.Clinician(why); strings.Contains(text, "1 minutes") {
					t.Error(text)
				}
			}
		}
	}
}

// Where the most wanted exercise does not fit and another does, that one is done.
func TestTheExerciseThatFits(t *testing.T) {
	r := weekOf(0)
	r.Exercises = []exercise.ID{"one-arm-dumbbell-row", "seated-hammer-curl"} // both sides, and one
	r.Minutes = firstWeek(t, r).Sessions[0].Minutes
	for ; r.Minutes > 0; r.Minutes-- {
		s := firstWeek(t, r).Sessions[0]
		if s.Items[0].Exercise == "seated-hammer-curl" {
			if len(s.Items) != 1 || s.Minutes > r.Minutes {
				t.Errorf("%d minutes: %d", r.Minutes, s.Minutes)
			}
			return
		}
	}
	t.Error("the shorter exercise never stands in for the longer one")
}
