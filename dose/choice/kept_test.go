package choice_test

import (
	"slices"
	"testing"

	"example.org/posology/dose/choice"
	"example.org/posology/dose/exercise"
	"example.org/posology/dose/guideline"
	"example.org/posology/screening"
	"example.org/posology/units/body"
)

// Whatever the tasks, one or two of them: who is not frail has an exercise of the thighs with a
// weight, and a back extension where spine or bone is the concern or the goal; and no main muscle
// is left without work. Design.
func TestThighsWithAWeightAndTheBack(t *testing.T) {
	var tasks [][]choice.Task
	for a := range choice.Tasks() {
		for b := range choice.Tasks() {
			tasks = append(tasks, slices.Compact([]choice.Task{a, b}))
		}
	}
	for _, concern := range []string{"", "hip", "knee", "spine", "bone", "falls", "diabetes"} {
		for _, goal := range []guideline.Goal{guideline.Strength, guideline.Bone} {
			for training := body.Novice; training <= body.Advanced; training++ {
				for _, task := range tasks {
					o := found(screening.InGroup, concern)
					o.Who.Training = training
					r := choice.Wish{Tasks: task, Goal: goal, Screening: o}
					list := ids(choice.Choose(r))
					if !slices.ContainsFunc(list, ofThighsWithWeight) {
						t.Errorf("%s: no weight for the thighs in %v", name(r), list)
					}
					if want := concern == "spine" || concern == "bone" || goal == guideline.Bone; want && len(task) == 1 && !slices.Contains(list, "back-extension") {
						t.Errorf("%s: no back extension in %v", name(r), list)
					}
					for _, muscle := range idleOf(list) {
						t.Errorf("%s: nothing for %s in %v", name(r), muscle, list)
					}
				}
			}
		}
	}
}

func ofThighsWithWeight(id exercise.ID) bool {
	ex, _ := exercise.Standard().Get(id)
	return ex.Hold != body.Unloaded && (ex.Pattern == exercise.Squat || ex.Pattern == exercise.Lunge)
}

// idleOf are the main muscles, as other tests of plans list them, that no exercise of the list
// trains, be it as a helper.
func idleOf(list []exercise.ID) (idle []body.Muscle) {
	for _, m := range []body.Muscle{body.Quadriceps, body.GluteusMaximus, body.GluteusMedius, body.Hamstrings, body.Gastrocnemius, body.TibialisAnterior,
		body.LatissimusDorsi, body.ErectorSpinae, body.Obliques, body.PectoralisMajor, body.AnteriorDeltoid, body.RotatorCuff, body.BicepsBrachii, body.TricepsBrachii} {
		if !slices.ContainsFunc(list, func(id exercise.ID) bool {
			ex, _ := exercise.Standard().Get(id)
			return slices.ContainsFunc(ex.Muscles, func(w exercise.Work) bool {
				return w.Muscle == m && (w.Role == exercise.Prime || w.Role == exercise.Synergist)
			})
		}) {
			idle = append(idle, m)
		}
	}
	return idle
}
