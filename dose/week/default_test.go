package week_test

import (
	"errors"
	"fmt"
	"maps"
	"slices"
	"strings"
	"testing"

	"example.org/posology/dose"
	"example.org/posology/dose/beside"
	"example.org/posology/dose/choice"
	"example.org/posology/dose/exercise"
	"example.org/posology/dose/guideline"
	"example.org/posology/dose/volume"
	"example.org/posology/dose/week"
	"example.org/posology/screening"
	"example.org/posology/units/body"
	"example.org/posology/units/evidence"
	"example.org/posology/units/field"
)

// person answers every list; what is given is present.
func person(setting screening.Setting, age body.Age, conditions, diseases []screening.Code, events ...screening.Event) screening.Profile {
	return screening.Profile{
		Day: firstDay, Age: age, Sex: body.Female, Setting: setting, Training: body.Novice, Wanted: screening.Moderate,
		Activity: &screening.Activity{DaysPerWeek: 3, Minutes: 40, Intensity: screening.Moderate, Months: 6},
		Diseases: screening.AskedFor(diseases...), Symptoms: screening.AskedFor(), RedFlags: screening.AskedFor(), Conditions: screening.AskedFor(conditions...),
		BP: &screening.BloodPressure{Systolic: 130, Diastolic: 80}, RestingPulse: 66, Events: events,
		Falls: &screening.FallsScreen{Afraid: screening.No, Fell: screening.No, Unsteady: screening.No},
		Answers: map[screening.Code]screening.Answer{
			"vertebral_fracture": screening.No, "floor_and_up": screening.No, "retinopathy_moderate_or_worse": screening.No, "insulin_or_secretagogue": screening.No,
		},
	}
}

// conditions are invented people, one for each concern, with what happened long ago.
func conditions() map[string]screening.Profile {
	longAgo := func(code screening.Code) screening.Event { return screening.Event{Code: code, Day: firstDay - 600} }
	fell := person(screening.InGroup, 77, nil, nil)
	fell.Falls.Fell = screening.Yes
	return map[string]screening.Profile{
		"none":     person(screening.InGroup, 68, nil, nil),
		"hip":      person(screening.InGroup, 66, []screening.Code{"total_hip_replacement"}, nil, longAgo("total_hip_replacement")),
		"knee":     person(screening.InGroup, 71, []screening.Code{"total_knee_replacement"}, nil, longAgo("total_knee_replacement")),
		"spine":    person(screening.InGroup, 74, []screening.Code{"osteoporosis_with_vertebral_fracture"}, nil, longAgo("osteoporosis_with_vertebral_fracture")),
		"bone":     person(screening.InGroup, 64, []screening.Code{"osteoporosis"}, nil),
		"frailty":  person(screening.InGroup, 81, []screening.Code{"cfs_level_6"}, nil),
		"falls":    fell,
		"diabetes": person(screening.InGroup, 63, nil, []screening.Code{"diabetes_t2"}),
	}
}

// mainMuscles are what a week of strength leaves without work nowhere: the large
// groups of guidelines for older adults, and those that were missed by hand: the side of
// the hip, the cuff of the shoulder, the shin.
var mainMuscles = [][]body.Muscle{
	{body.Quadriceps}, {body.GluteusMaximus}, {body.GluteusMedius}, {body.Hamstrings}, {body.Gastrocnemius}, {body.TibialisAnterior},
	{body.LatissimusDorsi}, {body.ErectorSpinae}, {body.RectusAbdominis, body.Obliques}, {body.PectoralisMajor},
	{body.AnteriorDeltoid, body.LateralDeltoid}, {body.RotatorCuff}, {body.BicepsBrachii}, {body.TricepsBrachii},
}

// idle returns the main muscles without a set.
func idle(t volume.Totals) (list []string) {
	for _, group := range mainMuscles {
		if !slices.ContainsFunc(t.Muscles, func(m volume.MuscleWeek) bool {
			return slices.Contains(group, m.Muscle) && m.Sets(volume.TotalSets).Count() > 0
		}) {
			list = append(list, group[0].String())
		}
	}
	return list
}

func defaultWeek(t failer, p screening.Profile, goal guideline.Goal, tasks ...choice.Task) week.Request {
	t.Helper()
	outcome, err := screening.Assess(p)
	if err != nil {
		t.Fatalf("Assess: %v", err)
	}
	r := weekOf(0, 2, 4)
	r.Screening, r.Goal, r.Tasks = outcome, goal, tasks
	return r
}

// few are the conditions whose plans are short, with the main muscles that may go without
// a set of their own and why: stances and steps of the same days load shin and trunk, and
// the cuff steadies the arm in each pull (design). The trunk goes without only where the seventh
// exercise is a step or the back extension, since task or goal ask for it.
var few = map[string]struct {
	most int
	idle []string
}{
	"frailty": {7, []string{body.TibialisAnterior.String(), body.RectusAbdominis.String(), body.RotatorCuff.String()}},
}

// seventh reports whether a short plan has what leaves no place for the trunk.
func seventh(w week.Week) bool {
	return slices.ContainsFunc(w.Sessions[0].Items, func(p dose.Prescription) bool {
		return p.Exercise == "back-extension" || exercise.Standard().Pattern(p.Exercise) == exercise.Lunge
	})
}

// TestDefaultPlans goes through every task, condition and goal. Pulls get as many sets
// as pushes or more, and every main muscle has a set, but for the one condition of few.
func TestDefaultPlans(t *testing.T) {
	tasks := [][]choice.Task{nil}
	for task := range choice.Tasks() {
		tasks = append(tasks, []choice.Task{task})
	}
	people := conditions()
	for _, c := range slices.Sorted(maps.Keys(people)) {
		for _, task := range tasks {
			for goal := range guideline.Goals() {
				name := fmt.Sprintf("%s, %v, %s", c, task, goal)
				r := defaultWeek(t, people[c], goal, task...)
				w := firstWeek(t, r)
				checkPlan(t, r, w)
				total, err := w.Prescribed(exercise.Catalogue{}, volume.Options{})
				if err != nil {
					t.Fatal(err)
				}
				if c != "none" && !slices.ContainsFunc(w.Choice.Concerns, func(f choice.Concern) bool { return f.String() == c }) {
					t.Errorf("%s: with regard to %v", name, w.Choice.Concerns)
				}
				push, pull := total.Totals.PatternSets(exercise.Pattern.Pushes), total.Totals.PatternSets(exercise.Pattern.Pulls)
				if pull == 0 || push > pull {
					t.Errorf("%s: %d sets of pushes, %d of pulls", name, push, pull)
				}
				for _, muscle := range idle(total.Totals) {
					if !slices.Contains(few[c].idle, muscle) || muscle == body.RectusAbdominis.String() && !seventh(w) {
						t.Errorf("%s: no set for %s", name, muscle)
					}
				}
				if n := len(w.Sessions[0].Items); few[c].most > 0 && n > few[c].most {
					t.Errorf("%s: %d exercises", name, n)
				}
				checkFrail(t, name, c, task, w)
				checkBone(t, name, c, goal, w)
			}
		}
	}
}

// checkFrail holds that a frail plan has three items of balance or more and begins off the floor, and that getting up from it
// is an aim where that is the task.
func checkFrail(t *testing.T, name, condition string, tasks []choice.Task, w week.Week) {
	t.Helper()
	aim := has(w.Reasons, "choice.floor-aim") || has(w.Reasons, "choice.floor-later")
	if aim != slices.Contains(tasks, choice.FloorRise) {
		t.Errorf("%s: getting up from the floor is an aim: %v", name, aim)
	}
	if condition != "frailty" && condition != "falls" && condition != "spine" {
		return
	}
	if n := strings.Count(kindsOf(w), "balance"); condition == "frailty" && n < 3 {
		t.Errorf("%s: %d balance items, want three or more", name, n)
	}
	for _, item := range w.Sessions[0].Items {
		if ex, _ := exercise.Standard().Get(item.Exercise); ex.Demands.Has(body.FloorTransfer) || ex.Demands.Has(body.PickUpFromFloor) {
			t.Errorf("%s: %s is on the floor", name, item.Exercise)
		}
	}
}

// checkBone holds that a plan for bone has impact, or says what holds it: for who has no limit
// it begins at once, and with osteoporosis once the spine was looked at.
func checkBone(t *testing.T, name, condition string, goal guideline.Goal, w week.Week) {
	t.Helper()
	begun := strings.Contains(kindsOf(w), "impact")
	barred := slices.ContainsFunc(w.NotBeside, func(b beside.Barred) bool { return b.Kind == beside.Impact && len(b.Reasons) > 0 && len(b.Free) > 0 })
	free := condition == "none" || condition == "diabetes"
	if want := goal == guideline.Bone; begun != (want && free) || barred != (want && !free) {
		t.Errorf("%s: impact begins %v, is held %v", name, begun, barred)
	}
	if goal != guideline.Bone || condition != "bone" {
		return
	}
	r := defaultWeek(t, conditions()[condition], goal)
	r.Known.SpineFracture = screening.No
	if looked := firstWeek(t, r); !strings.Contains(kindsOf(looked), "impact") {
		t.Errorf("%s: the spine was looked at, and impact does not begin", name)
	}
}

// The tasks of a request are checked, each once.
func TestTasksOfARequest(t *testing.T) {
	r := weekOf(0, 2, 4)
	r.Tasks = []choice.Task{choice.Stairs, 0, choice.Stairs, 99}
	_, err := week.Plan(r)
	for path, want := range map[string]error{"/tasks/1": field.ErrMissing, "/tasks/2": field.ErrDuplicate, "/tasks/3": field.ErrOutOfRange} {
		var bad field.Errors
		if !errors.As(err, &bad) || !slices.ContainsFunc(bad, func(e *field.Error) bool { return e.Path == path && errors.Is(e, want) }) {
			t.Errorf("%s: %v, want %v", path, err, want)
		}
	}
}

// Exercises that were asked for stay as they are; the task is tested all the same.
func TestAskedForByName(t *testing.T) {
	r := weekOf(0, 2, 4)
	r.Exercises, r.Tasks = []exercise.ID{"biceps-curl"}, []choice.Task{choice.FloorRise}
	w := firstWeek(t, r)
	if len(w.Sessions[0].Items) != 1 || len(w.Choice.Wanted) != 0 || len(w.Choice.Tests) == 0 || !has(w.Reasons, "choice.floor-aim") || has(w.Reasons, "choice.made") {
		t.Errorf("%v: %v", w.Sessions[0].Items, w.Choice)
	}
}

// One session a week is little.
func TestFewForOneSession(t *testing.T) {
	for _, tt := range []struct {
		days []int
		n    int
	}{{[]int{0}, 5}, {[]int{0, 1}, 5}, {[]int{0, 2}, 10}} {
		r := weekOf(tt.days...)
		if got := len(firstWeek(t, r).Choice.Wanted); got != tt.n {
			t.Errorf("days %v: %d exercises, want %d", tt.days, got, tt.n)
		}
		r.ComesLittle = true
		if got := len(firstWeek(t, r).Choice.Wanted); got != 5 {
			t.Errorf("days %v, comes little: %d exercises, want 5", tt.days, got)
		}
	}
}

// Every exercise of a chosen plan, a stand-in too, says why it was chosen; and in any
// number of minutes pushes get no more sets than pulls.
func TestChosenInFewMinutes(t *testing.T) {
	for minutes := 12; minutes <= 80; minutes++ {
		r := weekOf(0, 2, 4)
		r.Minutes, r.Tasks, r.Screening.Who.Training = minutes, []choice.Task{choice.FloorRise}, body.Advanced
		push, pull := 0, 0
		for _, item := range firstWeek(t, r).Sessions[0].Items {
			if !slices.ContainsFunc(item.Reasons, func(why evidence.Reason) bool { return strings.HasPrefix(string(why.Code), "choice.") }) {
				t.Errorf("%s does not say why it was chosen", item.Exercise)
			}
			switch p := exercise.Standard().Pattern(item.Exercise); {
			case p.Pushes():
				push += item.Sets
			case p.Pulls():
				pull += item.Sets
			}
		}
		if push > pull {
			t.Errorf("%d minutes: %d sets of pushes, %d of pulls", minutes, push, pull)
		}
	}
}
