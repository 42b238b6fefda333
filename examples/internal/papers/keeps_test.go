package papers

import (
	"slices"
	"testing"

	"example.org/posology/dose"
	"example.org/posology/dose/exercise"
	"example.org/posology/dose/setlog"
	"example.org/posology/examples/internal/demo"
	"example.org/posology/progression/record"
	"example.org/posology/screening"
	"example.org/posology/units/field"
)

// kept is what goes home after so many visits, by exercise; what is not asked for yet or
// has no log then is left out of the record.
func kept(t *testing.T, r record.Record) map[exercise.ID]dose.Prescription {
	t.Helper()
	review, err := r.Assess(r.Review)
	if err != nil {
		t.Fatal(err)
	}
	all := map[exercise.ID]dose.Prescription{}
	for _, item := range keeps(review) {
		all[item.Exercise] = item
	}
	for _, item := range review.Items {
		last := item.Log[len(item.Log)-1].Plan
		if k, ok := all[item.Exercise]; ok && (k.Load.Each() > last.Load.Each() || k.Sets > last.Sets || k.Sets > 3) {
			t.Errorf("%s goes home with %s and %d sets, last done with %s and %d", k.Name, k.Load.Each(), k.Sets, last.Load.Each(), last.Sets)
		}
	}
	return all
}

// Nobody takes home more than was done last, and whoever told of more pain, or did
// fewer repetitions, no more than without.
func TestKeeps(t *testing.T) {
	base, err := record.Decode(demo.HomeReview(), field.Strict)
	if err != nil {
		t.Fatal(err)
	}
	for n := 3; n <= len(base.Visits); n++ {
		r := base
		r.Visits = slices.Clone(base.Visits[:n])
		last := r.Visits[n-1].Day
		r.Done = slices.DeleteFunc(slices.Clone(base.Done), func(s setlog.Set) bool { return s.Day > last })
		r.Absence = screening.No
		before := kept(t, r)
		six := 6.0
		worse := map[string]func(*record.Record){
			"pain": func(r *record.Record) {
				r.Visits[n-1].PainFree = false
				r.Visits[n-1].Pain = &screening.Pain{Kind: screening.OrdinaryPain, During: &six, After: &six, NextMorning: &six}
			},
			"fewer repetitions": func(r *record.Record) {
				r.Done = slices.Clone(r.Done)
				for i := range r.Done {
					if s := &r.Done[i]; s.Day == last {
						s.Reps = max(1, s.Reps-3)
					}
				}
			},
		}
		for what, change := range worse {
			w := r
			w.Visits = slices.Clone(r.Visits)
			change(&w)
			for id, k := range kept(t, w) {
				if b, ok := before[id]; !ok || k.Load.Each() > b.Load.Each() || k.Sets > b.Sets {
					t.Errorf("%d visits, %s: %s goes home with %s and %d sets, without it %s and %d", n, what, k.Name, k.Load.Each(), k.Sets, b.Load.Each(), b.Sets)
				}
			}
		}
	}
}
