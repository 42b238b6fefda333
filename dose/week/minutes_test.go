package week_test

import (
	"math"
	"slices"
	"strconv"
	"testing"

	"pgregory.net/rapid"

	"example.org/posology/dose"
	"example.org/posology/dose/exercise"
	"example.org/posology/dose/week"
	"example.org/posology/units/body"
	"example.org/posology/units/evidence"
)

// large are the groups that guidelines call the large ones (from memory), written out here
// once more: one muscle of each is enough.
var large = [][]body.Muscle{
	{body.Quadriceps, body.Hamstrings}, {body.GluteusMaximus, body.GluteusMedius},
	{body.LatissimusDorsi, body.Rhomboids, body.ErectorSpinae}, {body.RectusAbdominis, body.Obliques},
	{body.PectoralisMajor}, {body.AnteriorDeltoid, body.LateralDeltoid},
	{body.BicepsBrachii, body.BrachialisBrachioradialis, body.TricepsBrachii},
}

// trains reports which of the large groups an exercise trains.
func trains(id exercise.ID) (groups []int) {
	ex, _ := exercise.Standard().Get(id)
	for g, muscles := range large {
		if slices.ContainsFunc(ex.Muscles, func(w exercise.Work) bool {
			return slices.Contains(muscles, w.Muscle) && w.Role != exercise.Stabiliser
		}) {
			groups = append(groups, g)
		}
	}
	return groups
}

// short draws a request by name, with a row that asks for one set or with one that asks for two,
// of who learns all, some or none of the movements.
func short(t *rapid.T) (r week.Request, two bool) {
	names := []exercise.ID{"sit-to-stand", "wall-push-up", "dead-bug", "standing-calf-raise", "one-arm-dumbbell-row", "biceps-curl", "suitcase-carry", "goblet-squat", "standing-leg-out", "toe-raise"}
	r = weekOf(0, 3)
	r.Exercises = rapid.SliceOfNDistinct(rapid.SampledFrom(names), 1, 9, rapid.ID[exercise.ID]).Draw(t, "exercises")
	r.Screening.Who.Training = body.Training(rapid.IntRange(1, 2).Draw(t, "training"))
	for _, id := range r.Exercises[:rapid.IntRange(0, len(r.Exercises)).Draw(t, "seen")] {
		r.Seen, r.Phase = append(r.Seen, week.Seen{Exercise: id, Observation: dose.Observation{Who: "a colleague", Day: r.Day}}), dose.Build
	}
	if two = rapid.Bool().Draw(t, "two"); two {
		r.Guideline = "nsca2019-older-healthy" // 2 to 3 sets
	}
	return r, two
}

// leastOf is how many sets come first: one while any of the movements is learnt.
func leastOf(all []dose.Prescription, two bool) int {
	if two && !slices.ContainsFunc(all, func(i dose.Prescription) bool { return i.Phase == dose.Familiarise }) {
		return 2
	}
	return 1
}

// setsOf are the sets of each exercise of a list in a week.
func setsOf(w week.Week, list []exercise.ID) []int {
	sets := make([]int, len(list))
	for _, item := range w.Sessions[0].Items {
		sets[slices.Index(list, item.Exercise)] = item.Sets
	}
	return sets
}

func sum(list []int) (n int) {
	for _, v := range list {
		n += v
	}
	return n
}

// The order in which sets are given out, by itself: of every exercise and set a rank, the
// lowest first.
func ranked(whole []dose.Prescription, least int) (order []int) {
	covered := map[int]bool{}
	rank := map[[2]int]int{}
	for i, item := range whole {
		pull := exercise.Standard().Pattern(item.Exercise).Pulls()
		first := least < 2 || pull
		for _, g := range trains(item.Exercise) {
			first = first || !covered[g]
			covered[g] = true
		}
		for set := 1; set <= item.Sets; set++ {
			switch {
			case set > least:
				rank[[2]int{i, set}] = 10000 + 100*set + i
			case first:
				rank[[2]int{i, set}] = 100*set + i
			default:
				rank[[2]int{i, set}] = 1000 + 10*i + set
			}
		}
	}
	var list [][2]int
	for at := range rank {
		list = append(list, at)
	}
	slices.SortFunc(list, func(a, b [2]int) int { return rank[a] - rank[b] })
	for _, at := range list {
		order = append(order, at[0])
	}
	return order
}

// Sets are given out in order as far as the minutes reach: the next one of the order does not
// fit any more. What is left out is in from the minutes on that are said, and not before.
func TestPlanInFewMinutes(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		r, two := short(t)
		whole := slices.Clone(firstWeek(t, r).Sessions[0].Items)
		slices.SortFunc(whole, func(a, b dose.Prescription) int {
			return slices.Index(r.Exercises, a.Exercise) - slices.Index(r.Exercises, b.Exercise)
		})
		r.Minutes = rapid.IntRange(8, 80).Draw(t, "minutes")
		w := firstWeek(t, r)
		got, want := setsOf(w, r.Exercises), make([]int, len(whole))
		for _, i := range ranked(whole, leastOf(whole, two)) {
			if want[i]++; minutesOf(whole, want) > r.Minutes {
				want[i]--
				break
			}
		}
		if sum(want) == 0 { // the first is too long
			if sum(got) != 1 || w.Sessions[0].Minutes > r.Minutes && !has(w.Reasons, "dose.minutes-too-few") {
				t.Fatalf("%d minutes for %v: %v", r.Minutes, r.Exercises, got)
			}
			return
		}
		if !slices.Equal(got, want) {
			t.Fatalf("%d minutes for %v: sets %v, want %v", r.Minutes, r.Exercises, got, want)
		}
		for _, out := range w.LeftOut {
			from, _ := strconv.Atoi(arg(out.Reasons[len(out.Reasons)-1], "from"))
			for minutes, in := range map[int]bool{from: true, from - 1: false} {
				r.Minutes = minutes
				if sets := setsOf(firstWeek(t, r), r.Exercises); (sets[slices.Index(r.Exercises, out.Exercise)] > 0) != in {
					t.Fatalf("%s, said to be in from %d minutes on: with %d %v", out.Exercise, from, minutes, sets)
				}
			}
		}
	})
}

// minutesOf is the length with so many sets of each, with five minutes of warm-up.
func minutesOf(items []dose.Prescription, sets []int) int {
	var kept []dose.Prescription
	for i, item := range items {
		if item.Sets = sets[i]; item.Sets > 0 {
			kept = append(kept, item)
		}
	}
	return int(math.Ceil(5 + week.MinutesOf(kept)))
}

func arg(r evidence.Reason, name string) string {
	for _, a := range r.Args {
		if a.Name == name {
			return a.Value()
		}
	}
	return ""
}

// Fewer minutes never bring more sets, of a list that was chosen neither; and no large group that
// the whole week trains goes without work for a second set or an exercise that trains none anew.
func TestFewerMinutesNeverMoreSets(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		r, two := short(t)
		if rapid.Bool().Draw(t, "chosen") {
			r.Exercises = nil
		}
		all := firstWeek(t, r).Sessions[0].Items
		r.Minutes = rapid.IntRange(6, 90).Draw(t, "minutes")
		few := firstWeek(t, r)
		r.Minutes += rapid.IntRange(1, 20).Draw(t, "more")
		many := firstWeek(t, r).Sessions[0].Items
		total := func(items []dose.Prescription) (n int) {
			for _, item := range items {
				n += item.Sets
			}
			return n
		}
		items := few.Sessions[0].Items
		if total(items) > total(many) {
			t.Fatalf("%d sets, with %d minutes %d", total(items), r.Minutes, total(many))
		}
		if leastOf(all, two) < 2 || total(items) == len(items) && len(few.LeftOut) > 0 {
			return
		}
		covered := func(items []dose.Prescription) map[int]bool {
			groups := map[int]bool{}
			for _, item := range items {
				for _, g := range trains(item.Exercise) {
					groups[g] = true
				}
			}
			return groups
		}
		if got, want := covered(items), covered(all); len(got) < len(want) {
			t.Fatalf("groups %v, the whole week has %v", got, want)
		}
	})
}

// A review of programmes for people short of time (Iversen 2021, the abstract) names as the
// least one movement of the legs, one pull and one push; NSCA 2019 asks older people past the start for 2 to 3
// sets of an exercise, and holds one to be enough at the start.
func TestFewWithTheirSetsPublished(t *testing.T) {
	for minutes := 15; minutes <= 60; minutes++ {
		r := weekOf(0, 3)
		r.Minutes, r.Guideline, r.Screening.Who.Training = minutes, "nsca2019-older-healthy", body.Intermediate
		legs, pull, push, single := false, false, false, 0
		w := firstWeek(t, r)
		for _, item := range w.Sessions[0].Items {
			p := exercise.Standard().Pattern(item.Exercise)
			legs, pull, push = legs || p == exercise.Squat || p == exercise.Lunge, pull || p.Pulls(), push || p.Pushes()
			if item.Sets < 2 {
				single++
			}
		}
		if !legs || !pull || !push || single > 1 && minutes >= 25 {
			t.Errorf("%d minutes: legs %v, pull %v, push %v, %d exercises with one set", minutes, legs, pull, push, single)
		}
		if short := len(w.LeftOut) > 0; has(w.Reasons, "dose.sets-first") != short || has(w.Reasons, "dose.minutes-whole") != (w.Sessions[0].Minutes <= minutes && minutes < 64) {
			t.Errorf("%d minutes, left out %d: %v", minutes, len(w.LeftOut), w.Reasons)
		}
		r.Screening.Who.Training = body.Novice
		start := firstWeek(t, r)
		for _, item := range start.Sessions[0].Items {
			if item.Sets > 1 && len(start.LeftOut) > 0 {
				t.Errorf("%d minutes, at the start: %d sets of %s, and %d exercises are left out", minutes, item.Sets, item.Exercise, len(start.LeftOut))
			}
		}
	}
}

// A pull gets its sets as those of the large groups do, though one before it trains the back:
// of pulls and pushes named by turns no number of minutes leaves more pushes.
func TestPullsKeepTheirPlace(t *testing.T) {
	seen := map[int]bool{}
	for minutes := 12; minutes <= 50; minutes++ {
		r := weekOf(0, 3)
		r.Minutes, r.Guideline, r.Screening.Who.Training = minutes, "nsca2019-older-healthy", body.Intermediate
		r.Exercises = []exercise.ID{"one-arm-dumbbell-row", "one-arm-shoulder-press", "seated-one-arm-row", "dumbbell-floor-press"}
		push, pull := 0, 0
		for _, item := range firstWeek(t, r).Sessions[0].Items {
			if exercise.Standard().Pattern(item.Exercise).Pushes() {
				push += item.Sets
			} else {
				pull += item.Sets
			}
		}
		if seen[push+pull] = true; push > pull {
			t.Errorf("%d minutes: %d sets of pushes, %d of pulls", minutes, push, pull)
		}
	}
	if len(seen) < 4 {
		t.Errorf("sets in all: %v", seen)
	}
}
