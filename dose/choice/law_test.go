package choice_test

import (
	"slices"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"example.org/posology/dose/choice"
	"example.org/posology/dose/equipment"
	"example.org/posology/dose/exercise"
	"example.org/posology/dose/guideline"
	"example.org/posology/screening"
	"example.org/posology/screening/function"
	"example.org/posology/units"
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

// stood is a test of standing up from a chair, as it went.
func stood(how function.HowDone, on units.Day) choice.Tried {
	r := function.Result{Test: function.ChairStand30, Day: on, How: how}
	if how == function.Done {
		r.Value = units.Must(function.ParseAmount("9 reps"))
	}
	return choice.Tried{Result: r}
}

// Whoever needs the arms in the latest test of standing up, or cannot, stands up with hands
// and takes no step yet; nothing else of the list gets harder.
func TestStandsUpWithTheArms(t *testing.T) {
	for i, r := range everyRequest() {
		if i%11 != 0 { // one in so many stands for all
			continue
		}
		before := everything(r)
		for _, how := range []function.HowDone{function.UsedArms, function.Unable} {
			r.Tried = []choice.Tried{stood(function.Done, firstDay-30), stood(how, firstDay)}
			list := ids(choice.Choose(r))
			for _, id := range list {
				if !noHarder(before, id) || strings.HasSuffix(string(id), "step-up") || id == "sit-to-stand" || id == "dumbbell-sit-to-stand" || id == "goblet-squat" {
					t.Errorf("%s, %v: %s of %v", name(r), how, id, before)
				}
			}
			if !slices.Contains(list, "supported-sit-to-stand") {
				t.Errorf("%s, %v: no stand with hands in %v", name(r), how, list)
			}
		}
		for _, tried := range [][]choice.Tried{
			{stood(function.UsedArms, firstDay-30), stood(function.Refused, firstDay)}, // which shows nothing
			{stood(function.UsedArms, firstDay), stood(function.Done, firstDay)},
			{stood(function.Done, firstDay), stood(function.UsedArms, firstDay)},
		} {
			if r.Tried = tried; !slices.Contains(ids(choice.Choose(r)), "supported-sit-to-stand") {
				t.Errorf("%s, %v: no stand with hands", name(r), tried)
			}
		}
		r.Tried = []choice.Tried{stood(function.UsedArms, firstDay-30), stood(function.Done, firstDay), stood(function.Refused, firstDay)}
		if list := ids(choice.Choose(r)); !slices.Equal(list, ids(choice.Choose(choice.Wish{Tasks: r.Tasks, Goal: r.Goal, Screening: r.Screening}))) {
			t.Errorf("%s: an older test counts: %v", name(r), list)
		}
	}
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

// The kit alone decides on a band: where it makes no weight for a row and has bands and
// what the row with one needs, the weakest is taken, whoever the person; else none is.
func TestBandWhereThereIsNoWeight(t *testing.T) {
	var concerns []string
	for c := range choice.Concerns() {
		concerns = append(concerns, c.String())
	}
	weight := equipment.Dumbbell{Mass: units.Marked{Mass: units.Kilogram}, Count: 1}
	rapid.Check(t, func(t *rapid.T) {
		r := choice.Wish{
			Goal:      guideline.Goal(rapid.IntRange(1, 7).Draw(t, "goal")),
			Screening: found(screening.Setting(rapid.IntRange(1, 4).Draw(t, "company")), rapid.SliceOfNDistinct(rapid.SampledFrom(concerns), 0, 3, rapid.ID[string]).Draw(t, "concerns")...),
			Little:    rapid.Bool().Draw(t, "little"),
		}
		r.Kit.Bands = []string{"soft", "wide"}[:rapid.IntRange(0, 2).Draw(t, "bands")]
		switch rapid.IntRange(0, 2).Draw(t, "weights") {
		case 0:
			r.Kit.Dumbbells = []equipment.Dumbbell{weight}
		case 1:
			r.Kit.Kettlebells = []equipment.Dumbbell{weight}
		}
		if rapid.Bool().Draw(t, "asked") {
			r.Kit.Things = append([]exercise.Thing{exercise.Chair, exercise.Worktop}, []exercise.Thing{exercise.Anchor}[:rapid.IntRange(0, 1).Draw(t, "anchor")]...)
		}
		want := len(r.Kit.Bands) > 0 && len(r.Kit.Dumbbells)+len(r.Kit.Kettlebells) == 0 && (r.Kit.Things == nil || slices.Contains(r.Kit.Things, exercise.Anchor))
		list := ids(choice.Choose(r))
		if got := slices.Contains(list, "band-row-soft"); got != want || slices.Contains(list, "band-row-wide") || got == slices.ContainsFunc(list, func(id exercise.ID) bool {
			return strings.HasSuffix(string(id), "one-arm-dumbbell-row") || id == "seated-one-arm-row"
		}) {
			t.Fatalf("%v with %+v", list, r.Kit)
		}
	})
}

// A few minutes a day are four exercises without a weight for everybody, one of the thighs,
// a pull and a push among them, and none that is harder than in a session.
func TestBriefChoice(t *testing.T) {
	for _, r := range everyRequest() {
		usual := everything(r)
		r.Brief = true
		list := ids(choice.Choose(r))
		if len(list) != 4 {
			t.Errorf("%s: %v", name(r), list)
		}
		pushes, pulls, thighs := false, false, false
		for _, id := range list {
			ex, _ := exercise.Standard().Get(id)
			pushes, pulls = pushes || ex.Pattern.Pushes(), pulls || ex.Pattern.Pulls()
			thighs = thighs || id == "sit-to-stand" || strings.HasSuffix(string(id), "step-up")
			if ex.Hold != body.Unloaded || !noHarder(usual, id) {
				t.Errorf("%s: %s", name(r), id)
			}
		}
		if !pushes || !pulls || !thighs {
			t.Errorf("%s: no push, pull or thigh in %v", name(r), list)
		}
	}
}
