package choice_test

import (
	"slices"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"example.org/posology/dose/choice"
	"example.org/posology/dose/exercise"
	"example.org/posology/dose/guideline"
	"example.org/posology/screening"
	"example.org/posology/units/body"
)

func contains(text, part string) bool { return strings.Contains(text, part) }

// noHarder reports whether the exercise is one of the list, a step below one, or one
// without weight that everybody may be given: the easiest of its ladder.
func noHarder(list []exercise.ID, id exercise.ID) bool {
	for _, have := range list {
		for _, step := range exercise.Standard().Ladder(have) {
			if step.ID == id {
				return true
			}
			if step.ID == have {
				break
			}
		}
	}
	ex, _ := exercise.Standard().Get(id)
	return ex.Easier == "" && ex.Hold == body.Unloaded
}

// everything is all that could be chosen before a list is cut, in a group.
func everything(r choice.Wish) []exercise.ID {
	r.Little = false
	list := ids(choice.Choose(r))
	for _, why := range choice.Choose(r).Reasons {
		if why.Code == "choice.left" {
			for _, id := range strings.Split(why.Args[0].Value(), ", ") {
				list = append(list, exercise.ID(id))
			}
		}
	}
	return list
}

// Less company, one more concern and less attendance never bring a harder exercise.
func TestNothingHarder(t *testing.T) {
	tasks := slices.Collect(choice.Tasks())
	var concerns []string
	for c := range choice.Concerns() {
		concerns = append(concerns, c.String())
	}
	rapid.Check(t, func(t *rapid.T) {
		had := rapid.SliceOfNDistinct(rapid.SampledFrom(concerns), 0, 3, rapid.ID[string]).Draw(t, "concerns")
		company := screening.Setting(rapid.IntRange(1, 4).Draw(t, "company"))
		training := body.Training(rapid.IntRange(1, 3).Draw(t, "training"))
		r := choice.Wish{
			Tasks:     rapid.SliceOfNDistinct(rapid.SampledFrom(tasks), 0, 3, rapid.ID[choice.Task]).Draw(t, "tasks"),
			Goal:      guideline.Goal(rapid.IntRange(1, 7).Draw(t, "goal")),
			Screening: found(company, had...),
		}
		worse := r
		worse.Screening = found(screening.Setting(rapid.IntRange(1, int(company)).Draw(t, "less company")),
			append(had, rapid.SampledFrom(concerns).Draw(t, "one more"))...)
		worse.Little = rapid.Bool().Draw(t, "little")
		r.Screening.Who.Training, worse.Screening.Who.Training = training, training
		before := everything(r)
		for _, id := range ids(choice.Choose(worse)) {
			if !noHarder(before, id) {
				t.Fatalf("%s was not in %v", id, before)
			}
		}
	})
}

// Variants of a slot are steps of one ladder: what a concern caps is easier.
func TestGentlerIsEasier(t *testing.T) {
	for _, r := range everyRequest() {
		for _, w := range choice.Choose(r).Wanted {
			for _, why := range w.Reasons {
				if why.Code != "choice.gentler" {
					continue
				}
				usual := exercise.ID(why.Args[0].Value())
				if w.Exercise == usual || !noHarder([]exercise.ID{usual}, w.Exercise) {
					t.Errorf("%s: %s is not below %s", name(r), w.Exercise, usual)
				}
			}
		}
	}
}

// Whatever is chosen is in the catalogue, once.
func TestChosenFromTheCatalogue(t *testing.T) {
	for _, r := range everyRequest() {
		list := ids(choice.Choose(r))
		for i, id := range list {
			if _, ok := exercise.Standard().Get(id); !ok || slices.Contains(list[:i], id) {
				t.Errorf("%s: %s is not in the catalogue, or stands twice", name(r), id)
			}
		}
	}
}
