package week_test

import (
	"fmt"
	"maps"
	"slices"
	"testing"

	"example.org/posology/dose/choice"
	"example.org/posology/dose/equipment"
	"example.org/posology/dose/exercise"
	"example.org/posology/dose/guideline"
	"example.org/posology/dose/volume"
	"example.org/posology/dose/week"
	"example.org/posology/units"
	"example.org/posology/units/body"
)

// rooms are what somebody may have and no more, with the main muscles that may then go
// without a set. With bands, a counter and a step ten standing exercises crowd the brace out,
// and for the trunk's other exercises there is neither bed nor mat. Four exercises of a few
// minutes a day (the trial's number) reach neither shin, trunk nor calf by themselves, nor what
// little the fourth leaves: the side of the hip, the back of the thigh, the cuff.
var rooms = []struct {
	name string
	room func(*week.Request)
	idle []body.Muscle
	most int // for anybody, beside what few names
}{
	{"bands", func(r *week.Request) {
		r.Kit = equipment.Kit{Bands: []string{"soft", "firm"}, Things: []exercise.Thing{exercise.Chair, exercise.Worktop, exercise.Anchor, exercise.LowStep}}
	}, []body.Muscle{body.RectusAbdominis}, 1},
	{"a chair", func(r *week.Request) { r.Kit = chairOnly }, nil, 0},
	{"a chair and one dumbbell", func(r *week.Request) {
		r.Kit = chairOnly
		r.Kit.Dumbbells = []equipment.Dumbbell{{Mass: units.Must(units.ParseMarked("3 kg")), Count: 1}}
	}, nil, 0},
	{"brief", func(r *week.Request) { r.Brief = true }, briefIdle, 7},
	{"brief with bands", func(r *week.Request) { r.Brief, r.Kit = true, equipment.Kit{Bands: []string{"soft"}} }, briefIdle, 7},
	{"brief with a chair", func(r *week.Request) { r.Brief, r.Kit = true, chairOnly }, briefIdle, 6},
}

var (
	chairOnly = equipment.Kit{Things: []exercise.Thing{exercise.Chair}}
	briefIdle = []body.Muscle{body.Gastrocnemius, body.TibialisAnterior, body.RectusAbdominis, body.RotatorCuff, body.GluteusMedius, body.Hamstrings, body.ErectorSpinae}
)

// The same in rooms with little in them and in a few minutes a day: what is not there takes no
// place from what is.
func TestDefaultPlansByRoom(t *testing.T) {
	tasks := [][]choice.Task{nil}
	for task := range choice.Tasks() {
		tasks = append(tasks, []choice.Task{task})
	}
	people := conditions()
	for _, room := range rooms {
		for _, c := range slices.Sorted(maps.Keys(people)) {
			for _, task := range tasks {
				for _, goal := range []guideline.Goal{guideline.Strength, guideline.Bone} {
					name := fmt.Sprintf("%s: %s, %v, %s", room.name, c, task, goal)
					r := defaultWeek(t, people[c], goal, task...)
					room.room(&r)
					total, err := firstWeek(t, r).Prescribed(units.Must(r.Kit.Fit(exercise.Standard())), volume.Options{})
					if err != nil {
						t.Fatal(err)
					}
					push, pull := total.Totals.PatternSets(exercise.Pattern.Pushes), total.Totals.PatternSets(exercise.Pattern.Pulls)
					if pull == 0 || push > pull {
						t.Errorf("%s: %d sets of pushes, %d of pulls", name, push, pull)
					}
					none := slices.DeleteFunc(idle(total.Totals), func(m string) bool { return slices.Contains(few[c].idle, m) })
					if len(none) > room.most {
						t.Errorf("%s: no set for %v", name, none)
					}
					for _, muscle := range none {
						if !slices.ContainsFunc(room.idle, func(m body.Muscle) bool { return m.String() == muscle }) {
							t.Errorf("%s: no set for %s", name, muscle)
						}
					}
				}
			}
		}
	}
}
