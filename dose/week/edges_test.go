package week_test

import (
	"errors"
	"slices"
	"strings"
	"testing"

	"example.org/posology/dose"
	"example.org/posology/dose/exercise"
	"example.org/posology/dose/guideline"
	"example.org/posology/dose/onerm"
	"example.org/posology/dose/setlog"
	"example.org/posology/dose/strength"
	"example.org/posology/dose/week"
	"example.org/posology/screening"
	"example.org/posology/units"
	"example.org/posology/units/body"
)

// A week keeps to the chance that it is asked for, and refuses a bad one.
func TestWeekKeepsToItsChance(t *testing.T) {
	r := weekOf(0)
	r.Exercises = []exercise.ID{"one-arm-dumbbell-row"}
	r.Estimates = []onerm.Estimate{estimateOf(t, row(t), 10, 8, 2), estimateOf(t, left(t), 10, 8, 2)}
	r.Chance = strength.Chance{Reserve: 0.05, Finish: 0.02}
	if item := firstWeek(t, r).Sessions[0].Items[0]; item.Chance != r.Chance {
		t.Errorf("%v", item.Chance)
	}
	r.Chance.Finish = 0.2
	if _, err := week.Plan(r); strings.Join(paths(err), " ") != "/chance/finish" {
		t.Errorf("%v", err)
	}
}

// A row that is too heavy for the left and for the right is left out, and no dose
// of nothing stands in for it.
func TestBothSidesTooHeavy(t *testing.T) {
	r := weekOf(0)
	r.Kit, r.Exercises = pairs(3), []exercise.ID{"one-arm-dumbbell-row"}
	r.Screening.Limits.Masses = []screening.MassLimit{
		{Region: body.Shoulder, Side: body.Left, Max: units.Kilogram, Author: "a clinician"},
		{Region: body.Elbow, Side: body.Right, Max: 2 * units.Kilogram, Author: "a clinician"},
	}
	w := firstWeek(t, r)
	if len(w.LeftOut) == 0 || w.LeftOut[0].Exercise != "one-arm-dumbbell-row" || !has(w.LeftOut[0].Reasons, "dose.too-heavy") {
		t.Errorf("left out: %+v", w.LeftOut)
	}
	for _, item := range w.Sessions[0].Items {
		if item.Exercise == "" || item.Exercise == "one-arm-dumbbell-row" {
			t.Errorf("%q, %v", item.Exercise, item.Load.Each())
		}
	}
	for ex := range exercise.Standard().All() {
		if ex.ID != "one-arm-dumbbell-row" {
			r.Without = append(r.Without, ex.ID)
		}
	}
	if _, err := week.Plan(r); !errors.Is(err, dose.ErrTooHeavy) {
		t.Errorf("with nothing in its place: %v", err)
	}
}

// Where both sides work with the weaker side's estimate, the other side's limit
// binds too.
func TestTheOtherSidesLimit(t *testing.T) {
	r := weekOf(0)
	r.Exercises = []exercise.ID{"one-arm-dumbbell-row"}
	weak, strong := row(t), row(t)
	weak.Side = body.Left
	r.Estimates = []onerm.Estimate{estimateOf(t, weak, 8, 8, 2), estimateOf(t, strong, 10, 8, 2)}
	free := firstWeek(t, r).Sessions[0].Items[0]
	r.Screening.Limits.Masses = []screening.MassLimit{{Region: body.Shoulder, Side: body.Right, Max: units.Kilogram, Author: "a clinician"}}
	item := firstWeek(t, r).Sessions[0].Items[0]
	if free.Load.Each() <= units.Kilogram || free.Side != body.Both || item.Side != body.Both || item.Load.Each() > units.Kilogram || item.Most != units.Kilogram {
		t.Errorf("%v of %v without the limit; with it %v of %v", free.Side, free.Load.Each(), item.Side, item.Load.Each())
	}
}

// The heaviest exercise begins heavier only where somebody saw it and is there,
// and never above a limit.
func TestHeaviestIsRaisedWhereSomebodyLooks(t *testing.T) {
	for name, tt := range map[string]struct {
		spoil func(r *week.Request)
		load  units.Mass
		steps int
	}{
		"seen":             {func(*week.Request) {}, 4 * units.Kilogram, 2},
		"not seen":         {func(r *week.Request) { r.Seen = nil }, units.Kilogram / 2, 0},
		"alone":            {func(r *week.Request) { r.Screening.Setting = screening.Alone }, units.Kilogram / 2, 0},
		"another was seen": {func(r *week.Request) { r.Seen[0].Exercise = "one-arm-dumbbell-row" }, units.Kilogram / 2, 0},
		"a lighter day":    {func(r *week.Request) { r.Screening.Limits = screening.LighterSession() }, units.Kilogram / 2, 0},
		"to the kit's end": {func(r *week.Request) { r.Kit = pairs(0.5, 4) }, 4 * units.Kilogram, 0},
		"under a limit": {func(r *week.Request) {
			r.Screening.Limits.Masses = []screening.MassLimit{{Region: body.Knee, Side: body.Both, Max: 3 * units.Kilogram, Author: "a clinician"}}
		}, 3 * units.Kilogram, 0},
	} {
		r := weekOf(0)
		r.Screening.Who.Training, r.Exercises = body.Intermediate, []exercise.ID{"goblet-squat", "one-arm-dumbbell-row"}
		r.Seen = []week.Seen{{Exercise: "goblet-squat", Observation: dose.Observation{Who: "a colleague", Day: firstDay}}}
		s := doneSet(4, 20, units.Must(units.InReserve(5)))
		other := s
		other.Side = body.Left
		r.Performed = append(r.Performed, s, other)
		tt.spoil(&r)
		item := firstWeek(t, r).Sessions[0].Items[0]
		if item.Exercise != "goblet-squat" || item.Load.Each() != tt.load || item.Finding == nil || item.Finding.MaxSteps != tt.steps {
			t.Errorf("%s: %s, %v, %+v", name, item.Exercise, item.Load.Each(), item.Finding)
		}
		if has(item.Reasons, "dose.heaviest") != (tt.load > units.Kilogram/2) {
			t.Errorf("%s: %v", name, item.Reasons)
		}
		if gap, more := units.Must(r.Kit.Compile(item.Hold)).Next(item.Load.Each()); more != (item.Next != nil) || more && item.Next.To.Each() != gap.To.Each() {
			t.Errorf("%s: next %+v", name, item.Next)
		}
		n := 0
		for _, why := range item.Reasons {
			if strings.HasPrefix(string(why.Code), "dose.load-finding") || strings.HasPrefix(string(why.Code), "dose.no-step") {
				n++
			}
		}
		if n != 1 {
			t.Errorf("%s: steps are spoken of %d times", name, n)
		}
	}
}

func TestBadPerformed(t *testing.T) {
	tests := []struct {
		name  string
		spoil func(s *setlog.Set)
		path  string
	}{
		{"no repetitions", func(s *setlog.Set) { s.Reps = 0 }, "/performed/reps"},
		{"another exercise", func(s *setlog.Set) { s.Exercise = "dumbbell-squat" }, "/performed/exercise"},
		{"another hold", func(s *setlog.Set) { s.Hold = body.OneHand }, "/performed/hold"},
		{"one side", func(s *setlog.Set) { s.Side = body.Left }, "/performed/side"},
	}
	for _, tt := range tests {
		r := squatAfter(t, 8, 8, 2)
		tt.spoil(r.Performed)
		if _, err := dose.Prescribe(r); !slices.Contains(paths(err), tt.path) {
			t.Errorf("%s: %v, want %s", tt.name, err, tt.path)
		}
	}
	w := weekOf(0)
	w.Performed = make([]setlog.Set, 1)
	if _, err := week.Plan(w); !slices.Contains(paths(err), "/performed/0/reps") {
		t.Errorf("an empty set in a week: %v", err)
	}
}

// The week takes the latest set of an exercise, and for one-sided work the
// lighter side's; the squat does not go above what was done.
func TestWeekBeginsFromTheLatestSet(t *testing.T) {
	r := weekOf(0)
	r.Screening.Who.Training = body.Intermediate
	r.Exercises = []exercise.ID{"goblet-squat", "one-arm-dumbbell-row"}
	early, late := *squatAfter(t, 10, 12, 5).Performed, *squatAfter(t, 4, 12, 5).Performed
	early.Day--
	side := func(s body.Side, kg units.Mass) setlog.Set {
		return setlog.Set{Day: firstDay, Exercise: "one-arm-dumbbell-row", Side: s, Hold: body.OneHand, Load: kg * units.Kilogram, Reps: 15, Effort: units.Must(units.InReserve(5))}
	}
	r.Performed = []setlog.Set{late, early, side(body.Left, 8), side(body.Right, 6)}
	items := firstWeek(t, r).Sessions[0].Items
	if items[0].Load.Each() != 4*units.Kilogram || items[1].Load.Each() != 6*units.Kilogram {
		t.Errorf("squat with %v, row with %v; want 4 and 6 kg", items[0].Load, items[1].Load)
	}
	r.Performed = r.Performed[:3]
	if row := firstWeek(t, r).Sessions[0].Items[1]; row.Load.Each() != units.Kilogram/2 {
		t.Errorf("one side done: the row begins with %v, want the lightest", row.Load)
	}
}

// A restriction on one side leaves the other side its work.
func TestOneSideOnly(t *testing.T) {
	r := weekOf(0)
	r.Kit = pairs(3)
	r.Exercises = []exercise.ID{"one-arm-dumbbell-row"}
	r.Screening.Limits.Masses = []screening.MassLimit{{Region: body.Shoulder, Side: body.Right, Max: units.Kilogram, Author: "a clinician"}}
	w := firstWeek(t, r)
	item := w.Sessions[0].Items[0]
	if item.Exercise != "one-arm-dumbbell-row" || item.Side != body.Left || !has(item.Reasons, "dose.one-side-only") {
		t.Errorf("%s, %v: %v", item.Exercise, item.Side, item.Reasons)
	}
	r.Screening.Limits.Masses[0].Side = body.Both
	if item := firstWeek(t, r).Sessions[0].Items[0]; item.Exercise == "one-arm-dumbbell-row" {
		t.Errorf("both sides limited, yet %v", item.Load)
	}
}

func TestWhatWouldFreeItIsKept(t *testing.T) {
	r := weekOf(0)
	r.Kit = pairs(20)
	r.Exercises = []exercise.ID{"lateral-raise"}
	w := firstWeek(t, r)
	if len(w.LeftOut[0].Free) == 0 || w.LeftOut[0].Free[0].Code != "dose.free-by-lighter" {
		t.Errorf("%+v", w.LeftOut[0])
	}
	if !has(w.Reasons, "dose.week-below-goal-learning") {
		t.Errorf("a week without a weight for strength goes unsaid: %v", w.Reasons)
	}
	r.Exercises = []exercise.ID{"sit-to-stand", "lateral-raise", "wall-push-up", "dead-bug"}
	r.Minutes = 7
	for _, out := range firstWeek(t, r).LeftOut {
		if out.Instead != "" && out.Exercise == "lateral-raise" {
			t.Errorf("the stand-in was dropped for minutes, yet %+v", out)
		}
	}
	seen := map[exercise.ID]int{}
	for _, out := range firstWeek(t, r).LeftOut {
		seen[out.Exercise]++
	}
	for id, n := range seen {
		if n > 1 || id == "arm-raise" {
			t.Errorf("%s is left out %d times", id, n)
		}
	}
	if r.Goal = guideline.Health; has(firstWeek(t, r).Reasons, "dose.week-below-goal-learning") {
		t.Error("health takes no load, yet the week is called too light")
	}
}
