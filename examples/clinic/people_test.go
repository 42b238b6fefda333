package main

import (
	"fmt"
	"math"
	"math/rand/v2"
	"strings"

	"example.org/posology/dose/equipment"
	"example.org/posology/dose/exercise"
	"example.org/posology/progression/record"
	"example.org/posology/units"
	"example.org/posology/units/body"
)

// A walker is an invented person on the way through the clinic: what was answered, and
// what is true of her or him, which nobody there knows. Nobody of this kind exists.
type walker struct {
	name       string
	new, visit string          // answers
	days       [2]int          // of each week, after Monday
	strong     float64         // kg that one arm can row once
	away       map[int]bool    // weeks in which nobody came
	hurts      map[int]float64 // weeks with pain at its worst
	hurtsIn    string          // a part of the name of the exercise
	looked     int             // week from which on somebody has looked at what was stopped
	diagnosed  int             // week in which something new is told
	again      string          // answers of the assessment after it: what is other than before

	before, after string // tests of function at the start and at the end
	beside        string // what came of the work beside lifting, each time
}

const invented = "note: an invented person: nobody of this kind exists\n"

// well are the answers of somebody with nothing to tell.
const well = "signs: none\nsymptoms: none\nmore_signs: none\nlasting_signs: none\nlasting_symptoms: none\nback_at_all: no\ndiseases: none\n"

var walkers = []walker{
	{
		before: "carrying_the_shopping_over_10_m: 14 s, two bags of 4 kg\ngrip: right dominant 24 kg, handle 2\ntime_up_and_down_the_same_stairs: 21 s, 12 steps with the rail\n30-s_chair_stand: 11 reps, seat 45 cm\n",
		after:  "carrying_the_shopping_over_10_m: 11.5 s\ngrip: right dominant 25 kg\ntime_up_and_down_the_same_stairs: 18 s\n30-s_chair_stand: 15 reps\n",
		beside: "4 days, least 30",
		name:   "hall", days: [2]int{1, 4}, strong: 12,
		new: invented + `client: Client P, 68, a woman who joins a class
task: carry the shopping up the stairs
tasks: carrying shopping, climbing stairs
goal: strength
sex: female
training: novice
age: 68
setting: 3
` + well + `areas: pressure
pressure: hypertension_treated
wanted: moderate
activity: 2
activity_minutes: 30
activity_months: 12
activity_effort: moderate
blood_pressure: 138/82
pulse: 68
falls: no
falls_unsteady: no
falls_afraid: no
today: no
`,
		visit: "kit: 2 x 1 kg, 2 x 2 kg, 2 x 3 kg, 2 x 4 kg, 2 x 6 kg, 2 x 8 kg\nminutes: 50\nbody_mass: 66 kg\ntests: one-arm-dumbbell-row left 6 kg 8@3 right 6 kg 8@4\nseen_by: Physiotherapist E\n",
	},
	{
		before: "lifting_the_load_from_knee_height_and_walking_with_it: 10 kg, a sack over 10 m\n30-s_chair_stand: 14 reps, seat 45 cm\n",
		after:  "lifting_the_load_from_knee_height_and_walking_with_it: 15 kg\n30-s_chair_stand: 15 reps\n",
		beside: "2 days, least 10, sore next day",
		name:   "missed", days: [2]int{0, 3}, strong: 17, away: map[int]bool{5: true, 6: true, 7: true},
		new: invented + `client: Client Q, 61, a man who trains at home
task: dig the garden over
tasks: working in the garden
goal: strength
sex: male
training: novice
age: 61
setting: 2
` + well + `areas: none
wanted: moderate
activity: 0
blood_pressure: 128/80
pulse: 70
today: no
`,
		visit: "exercises: goblet-squat, dumbbell-floor-press, one-arm-dumbbell-row, dead-bug\nkit: 2 x 2 kg, 2 x 4 kg, 2 x 6 kg, 2 x 10 kg\nminutes: 45\nbody_mass: 82 kg\n",
	},
	{
		before: "time_up_and_down_the_same_stairs: 26 s, 14 steps with the rail\n30-s_chair_stand: 9 reps, seat 45 cm\ntimed_up_and_go: 9.8 s, usual shoes\n",
		after:  "time_up_and_down_the_same_stairs: 23 s\n30-s_chair_stand: 10 reps\ntimed_up_and_go: 9.1 s\n",
		beside: "3 days, least 30",
		name:   "pain", days: [2]int{1, 3}, strong: 11, hurts: map[int]float64{4: 6, 5: 3}, hurtsIn: "step-up", looked: 6,
		new: invented + `client: Client R, 63, a woman with a knee that hurts
task: take the stairs at the station with a bag
tasks: climbing stairs
goal: function
sex: female
training: novice
age: 63
setting: 4
` + well + `areas: joints
joints: osteoarthritis_knee
wanted: moderate
activity: 3
activity_minutes: 20
activity_months: 6
activity_effort: light
blood_pressure: 132/84
pulse: 72
today: no
`,
		visit: "kit: 2 x 1 kg, 2 x 2 kg, 2 x 3 kg, 2 x 4 kg, 2 x 6 kg, 2 x 8 kg\nminutes: 45\nbody_mass: 71 kg\n",
	},
	{
		before: "standing_up_from_a_chair_with_the_load: used arms, a bag on the lap, seat 45 cm\n30-s_chair_stand: 12 reps, seat 45 cm\n",
		after:  "standing_up_from_a_chair_with_the_load: 8 kg\n30-s_chair_stand: 15 reps\n",
		beside: "3 days, least 30",
		name:   "diagnosis", days: [2]int{2, 5}, strong: 15, diagnosed: 6,
		new: invented + `client: Client S, 70, a man who wants to lift his grandchild
task: lift a small grandchild from the sofa
tasks: lifting a grandchild
goal: strength
sex: male
training: novice
age: 70
setting: 3
` + well + `areas: none
wanted: moderate
activity: 2
activity_minutes: 40
activity_months: 8
activity_effort: moderate
blood_pressure: 134/78
pulse: 66
falls: no
falls_unsteady: no
falls_afraid: no
today: no
`,
		visit: "exercises: goblet-squat, dumbbell-romanian-deadlift, dumbbell-floor-press, one-arm-dumbbell-row\nkit: 2 x 1 kg, 2 x 2 kg, 2 x 3 kg, 2 x 4 kg, 2 x 6 kg, 2 x 8 kg\nminutes: 50\nbody_mass: 77 kg\n",
		again: well + "areas: bones\nbones: osteoporosis\nvertebral_fracture: no\nblood_pressure: 136/80\npulse: 68\ntoday: no\n",
	},
	{
		before: "30-s_chair_stand: used arms, seat 45 cm\nfive_sit-to-stands: unable, seat 45 cm\nfour-stage_balance: 6 s, no aid\ntimed_up_and_go: 16.4 s, no aid\n",
		after:  "30-s_chair_stand: 6 reps\nfive_sit-to-stands: 21.4 s\nfour-stage_balance: 9 s\ntimed_up_and_go: 14.2 s\n",
		beside: "3 days, least 12",
		name:   "clinic", days: [2]int{0, 2}, strong: 7,
		new: invented + `client: Client T, 81, a man who fell last winter
task: get out of the chair without hands
tasks: getting up from a chair
goal: function
sex: male
training: novice
age: 81
setting: 4
` + well + `areas: nerves
nerves: falls_risk frailty
wanted: light
activity: 0
blood_pressure: 126/72
pulse: 76
today: no
`,
		visit: "exercises: sit-to-stand, seated-one-arm-row, standing-calf-raise, toe-raise\nkit: 2 x 1 kg, 2 x 2 kg, 2 x 3 kg\nminutes: 40\nbody_mass: 69 kg\n",
	},
	{
		before: "lifting_the_load_from_knee_height_and_walking_with_it: 16 kg, a pack over 10 m\ngrip: right dominant 31 kg, handle 2\n",
		after:  "lifting_the_load_from_knee_height_and_walking_with_it: 20 kg\ngrip: right dominant 32 kg\n",
		beside: "5 days, least 30",
		name:   "fit", days: [2]int{1, 4}, strong: 20,
		new: invented + `client: Client U, 56, a woman who has lifted for a year
task: carry a pack in the hills
tasks: carrying a pack
goal: bone
sex: female
training: intermediate
age: 56
setting: 3
` + well + `areas: none
wanted: vigorous
activity: 4
activity_minutes: 45
activity_months: 14
activity_effort: vigorous
blood_pressure: 118/74
pulse: 58
today: no
`,
		visit: "exercises: goblet-squat, dumbbell-romanian-deadlift, dumbbell-floor-press, one-arm-dumbbell-row\nkit: 2 x 4 kg, 2 x 6 kg, 2 x 8 kg, 2 x 10 kg, 2 x 12 kg, 2 x 16 kg, 2 x 20 kg\nminutes: 60\nbody_mass: 62 kg\ntests: goblet-squat 12 kg 8@4; one-arm-dumbbell-row left 12 kg 8@3 right 12 kg 8@3\nseen_by: Physiotherapist E\n",
	},
}

// able is how often a person could do an exercise with a weight in a week: by Epley's
// equation, with a strength that grows by one per cent a week. How strong a hold is
// beside one arm is made up.
func (w walker) able(ex exercise.Exercise, each units.Mass, week int) int {
	grown := 1 + 0.01*float64(week)
	factor := map[body.Hold]float64{body.OneHand: 1, body.OneEachHand: 0.8}[ex.Hold]
	if factor == 0 {
		factor = 2
	}
	if strings.Contains(string(ex.ID), "raise") && ex.Hold == body.OneEachHand {
		factor = 0.3 // a long lever
	}
	if each == 0 {
		return int(10 + w.strong*grown)
	}
	reps := 30 * (w.strong*factor*grown/each.Kilograms() - 1)
	return int(math.Max(0, math.Min(reps, 40)))
}

// typed is what a person does of what was asked for, as it is typed in; what is left
// is told with an error of one. Where the load is looked for, the next weight is tried
// while a set was clearly easy, as the page says.
func (w walker) typed(a record.Asked, ex exercise.Exercise, kit equipment.Kit, week int, chance *rand.Rand) string {
	if ex.Measure != exercise.Repetitions {
		return w.sets(a, ex, func(int) string { return fmt.Sprint(a.Count) })
	}
	set := func(load units.Mass, i int) (string, int) {
		able := max(w.able(ex, load, week)-i, 0)
		done := min(a.Count, able)
		left := max(0, min(10, able-done+chance.IntN(3)-1))
		return fmt.Sprintf("%d@%d", done, left), left
	}
	return w.sets(a, ex, func(i int) string {
		text, left := set(a.Load, i)
		if a.Finding == nil || i > 0 {
			return text
		}
		load := a.Load
		for range a.Finding.MaxSteps {
			next := heavier(kit, ex.Hold, load)
			if left <= 5 || next == 0 || a.Finding.Ceiling > 0 && next > a.Finding.Ceiling {
				break
			}
			load = next
			more, left2 := set(load, i)
			text, left = text+" "+load.String()+" "+more, left2
		}
		return text
	})
}

// heavier returns the next weight of a kit, 0 if there is none.
func heavier(kit equipment.Kit, hold body.Hold, than units.Mass) units.Mass {
	table, err := kit.Compile(hold)
	if err != nil {
		return 0
	}
	for l := range table.Loads() {
		if l.Each() > than {
			return l.Each()
		}
	}
	return 0
}

func (w walker) sets(a record.Asked, ex exercise.Exercise, one func(i int) string) string {
	var words []string
	for _, side := range []string{"left", "right"} {
		if ex.OneSided {
			if a.Side == body.Left && side == "right" || a.Side == body.Right && side == "left" {
				continue
			}
			words = append(words, side)
		}
		for i := range a.Sets {
			words = append(words, one(i))
		}
		if !ex.OneSided {
			break
		}
	}
	return strings.Join(words, " ")
}
