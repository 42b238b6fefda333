package papers

import (
	"slices"
	"testing"

	"example.org/posology/dose"
	"example.org/posology/dose/equipment"
	"example.org/posology/dose/exercise"
	"example.org/posology/dose/setlog"
	"example.org/posology/examples/internal/demo"
	"example.org/posology/progression"
	"example.org/posology/progression/record"
	"example.org/posology/screening"
	"example.org/posology/units"
	"example.org/posology/units/body"
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
		v := item.Log[len(item.Log)-1]
		last := v.Plan
		if k, ok := all[item.Exercise]; ok && (k.Load.Each() > last.Load.Each() && len(v.SetsWith(func(m units.Mass) bool { return m == k.Load.Each() })) == 0 || k.Sets > last.Sets || k.Sets > 3) {
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

// After a search the weight goes home that was lifted as often, and with as much left, as the
// dose that it led to asks for, and no more often than it was; what was harder does not.
func TestKeepsWhatASearchFound(t *testing.T) {
	one, err := equipment.NewLoad(units.Kilogram, body.OneHand)
	if err != nil {
		t.Fatal(err)
	}
	three, err := equipment.NewLoad(3*units.Kilogram, body.OneHand)
	if err != nil {
		t.Fatal(err)
	}
	set := func(load equipment.Load, reps int, left float64) setlog.Set {
		return setlog.Set{Exercise: "row", Side: body.Both, Hold: body.OneHand, Load: load.Each(), Reps: reps, Effort: units.Must(units.InReserve(left))}
	}
	plan := dose.Prescription{Exercise: "row", Hold: body.OneHand, Side: body.Both, Load: one, Sets: 2, Measure: exercise.Repetitions, Count: 8, Span: units.Must(units.Between(8, 12)),
		Reserve: dose.Reserve{Least: 5}, Finding: &dose.Search{MaxSteps: 2}}
	next := plan
	next.Load, next.Count, next.Reserve = three, 10, dose.Reserve{Least: 3, Countable: true}
	for _, tt := range []struct {
		what   string
		action progression.Action
		last   setlog.Set
		load   equipment.Load
		count  int
	}{
		{"reached", progression.Progress, set(three, 9, 3), three, 9},
		{"reached, and more", progression.Progress, set(three, 12, 6), three, 10},
		{"too little left", progression.Progress, set(three, 9, 2), one, 8},
		{"too seldom", progression.Progress, set(three, 7, 6), one, 8},
		{"never lifted", progression.Progress, set(one, 9, 6), one, 8},
		{"held", progression.HoldDose, set(one, 9, 6), three, 10}, // as the decision has it
	} {
		r := record.Review{Coming: &record.Coming{}, Items: []record.Decided{{
			Log:      []progression.Visit{{Plan: plan, Sets: []setlog.Set{set(one, 8, 6), tt.last}}},
			Decision: progression.Decision{Action: tt.action, Next: &next},
		}}}
		k := keeps(r)[0]
		if k.Load.Each() != tt.load.Each() || k.Count != tt.count || k.Finding != nil || k.Sets != 2 {
			t.Errorf("%s: %s, %d sets of %d, %v", tt.what, k.Load, k.Sets, k.Count, k.Finding)
		}
	}
}
