package record_test

import (
	"encoding/json"
	"math/rand/v2"
	"slices"
	"testing"

	"example.org/posology/dose"
	"example.org/posology/dose/exercise"
	"example.org/posology/dose/guideline"
	"example.org/posology/dose/setlog"
	"example.org/posology/progression"
	"example.org/posology/progression/record"
	"example.org/posology/screening"
	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/evidence"
)

// has reports whether a decision says something.
func has(d progression.Decision, code evidence.ReasonCode) bool {
	return slices.ContainsFunc(d.Reasons, func(r evidence.Reason) bool { return r.Code == code })
}

// hurtTwice is the invented review whose floor press hurt at its last two visits, with the day of
// the next one.
func hurtTwice(t *testing.T) (record.Record, units.Day) {
	t.Helper()
	r := read(t, review)
	r.Exercises, r.Entries, r.Absence = nil, nil, screening.No
	for i := range r.Visits {
		r.Visits[i].But = nil
		if i >= len(r.Visits)-2 {
			r.Visits[i].But = []record.Exception{{Exercise: floorPress, Noted: record.Noted{Pain: painOf(6)}}}
		}
	}
	day := r.Visits[len(r.Visits)-1].Day + 3
	r.Checks = slices.DeleteFunc(slices.Clone(r.Checks), func(c screening.Check) bool { return c.Day > day-3 })
	return r, day
}

func painOf(during float64) *screening.Pain {
	none := 0.0
	return &screening.Pain{Kind: screening.OrdinaryPain, Usual: &none, During: &during, After: &none, NextMorning: &none, WeeklyTrend: screening.StablePain}
}

// decidedOn keeps what is decided for a day, and returns what became of an exercise.
func decisionOn(t *testing.T, r *record.Record, day units.Day, id exercise.ID) progression.Decision {
	t.Helper()
	e, err := r.Decide(day)
	if err != nil {
		t.Fatal(err)
	}
	r.Entries = append(r.Entries, e)
	i := slices.IndexFunc(e.Items, func(i record.Decided) bool { return i.Exercise == id })
	if i < 0 {
		t.Fatalf("nothing is decided on %s", id)
	}
	return e.Items[i].Decision
}

// doneAgain is a visit without pain, at which all is done as at the last one.
func doneAgain(r *record.Record, day units.Day) {
	was := r.Visits[len(r.Visits)-1].Day
	for _, s := range slices.Clone(r.Done) {
		if s.Day == was {
			s.Day = day
			r.Done = append(r.Done, s)
		}
	}
	r.Visits = append(slices.Clip(r.Visits), record.TrainingDay{Day: day, Noted: record.Noted{PainFree: true, Moment: &screening.Moment{}, RangeLost: screening.No, FormLost: screening.No, Observer: "Physiotherapist E"}})
}

// What was stopped since it hurt again stays so, however often and however well it is done, until
// somebody has looked at it; and what was done is told.
func TestTrainingLiftsNoStop(t *testing.T) {
	r, day := hurtTwice(t)
	if d := decisionOn(t, &r, day, floorPress); !opens(d) || d.Next != nil && d.Next.Exercise == floorPress {
		t.Fatalf("%+v", d)
	}
	for range 5 {
		doneAgain(&r, day)
		day += 3
		d := decisionOn(t, &r, day, floorPress)
		if d.Action != progression.StopExercise || d.Next != nil || !has(d, "progression.stays-stopped") || !has(d, "progression.done-stopped") {
			t.Fatalf("%s: %v, %+v", day, d.Action, d.Reasons)
		}
		if _, paused := r.AskedOn(day); !paused[floorPress] {
			t.Error("it is asked for")
		}
	}
	last, _ := r.AskedOn(day)
	a := last[slices.IndexFunc(last, func(a record.Asked) bool { return a.Exercise == floorPress })]
	a.From, a.Looked = day, &dose.Observation{Who: "Physiotherapist E", Day: r.Visits[0].Day}
	early := r
	early.Asked = append(slices.Clip(r.Asked), a)
	if d := decisionOn(t, &early, day, floorPress); d.Next != nil {
		t.Error("a look from before it hurt lifts the stop")
	}
	a.Looked.Day = day
	r.Asked = append(slices.Clip(r.Asked), a)
	if d := decisionOn(t, &r, day, floorPress); d.Next == nil {
		t.Errorf("it was looked at: %v, %+v", d.Action, d.Reasons)
	}
	sameAnswers(t, r)
}

// To train all the same takes the place of no assessment after an illness.
func TestTrainingIsNoAssessment(t *testing.T) {
	r := read(t, review)
	r.Entries = nil
	day := r.Visits[len(r.Visits)-1].Day + 15
	r.Absence = screening.Yes
	if d := decisionOn(t, &r, day, floorPress); d.Action != progression.StopAndRefer {
		t.Fatalf("%+v", d)
	}
	r.Absence = screening.No
	for range 3 {
		doneAgain(&r, day)
		day += 3
		if d := decisionOn(t, &r, day, floorPress); d.Action != progression.StopAndRefer || !has(d, "progression.medical-absence") {
			t.Fatalf("%s: %v, %+v", day, d.Action, d.Reasons)
		}
	}
	sameAnswers(t, r)
	r.Profile.Day = day
	if d := decisionOn(t, &r, day, floorPress); d.Next == nil {
		t.Errorf("assessed since: %v, %+v", d.Action, d.Reasons)
	}
}

// opens is the rule by reason, as the comment of the package has it: what waits for a look.
func opens(d progression.Decision) bool {
	switch {
	case d.Action == progression.StopExercise:
		return has(d, "progression.recurring") || has(d, "progression.eased") || has(d, "progression.too-much") || has(d, "progression.below-three")
	case d.Instead != "":
		return has(d, "progression.recurring")
	}
	return false
}

// No exercise with an open stop is ever dosed, whatever is logged, in any order of looks and visits:
// as itself, in the place of another, as its harder variant, or in a week.
func TestNothingStoppedIsDosed(t *testing.T) {
	stops, looks, done := 0, 0, 0
	for seed := range max(40, *records/2) {
		r := rand.New(rand.NewPCG(uint64(seed), 77))
		rec := drawn(t, r)
		rec.Absence = screening.No
		if entry, err := rec.Decide(rec.LastDay()); err != nil || entry.Plan.Week == nil {
			continue
		} else {
			rec.Entries = append(rec.Entries, entry)
		}
		doses, open := map[exercise.ID]dose.Prescription{}, map[exercise.ID]bool{}
		day := slices.Min(rec.Days)
		for _, p := range rec.Entries[0].Plan.Week.Sessions[0].Items {
			doses[p.Exercise] = p
			ask(&rec, day, p)
		}
		for range 14 {
			train(&rec, r, day, doses)
			v := &rec.Visits[len(rec.Visits)-1]
			v.Moment, v.FormLost, v.RangeLost, v.PainFree = &screening.Moment{}, screening.No, screening.No, true
			for _, id := range order(rec.Asked) {
				if _, asked := doses[id]; asked && r.IntN(3) == 0 {
					v.But = append(v.But, record.Exception{Exercise: id, Noted: record.Noted{Pain: painOf(float64(r.IntN(8)))}})
				}
				if open[id] && slices.ContainsFunc(rec.Done, func(s setlog.Set) bool { return s.Exercise == id && s.Day == day }) {
					done++
				}
			}
			last := day
			day += units.Day(3 + r.IntN(3))
			e, err := rec.Decide(day)
			if err != nil {
				t.Fatalf("record %d: %v", seed, err)
			}
			rec.Entries = append(rec.Entries, e)
			for _, item := range e.Items {
				d := item.Decision
				if d.Next != nil && (open[d.Next.Exercise] || open[item.Exercise] && (d.Instead == "" || d.Change != progression.NoChange)) {
					t.Fatalf("record %d, %s: %s is dosed though stopped: %v, %v", seed, day, d.Next.Exercise, d.Action, d.Reasons)
				}
			}
			for _, item := range e.Items {
				d := item.Decision
				if opens(d) && !open[item.Exercise] {
					open[item.Exercise] = true
					stops++
				}
				if d.Instead != "" && r.IntN(4) > 0 { // else it goes on all the same
					drop(&rec, item.Exercise, last)
					delete(doses, item.Exercise)
				}
				if d.Next != nil {
					doses[d.Next.Exercise] = *d.Next
					ask(&rec, day, *d.Next)
				}
			}
			asked, paused := rec.AskedOn(day)
			w, err := rec.Week(day)
			for id := range open {
				if slices.ContainsFunc(asked, func(a record.Asked) bool { return a.Exercise == id }) && !paused[id] {
					t.Fatalf("record %d, %s: %s is asked for though stopped", seed, day, id)
				}
				if err == nil && slices.ContainsFunc(w.Sessions[0].Items, func(p dose.Prescription) bool { return p.Exercise == id }) {
					t.Fatalf("record %d, %s: %s is in the week though stopped", seed, day, id)
				}
			}
			for i := range slices.Backward(rec.Asked) {
				if a := rec.Asked[i]; open[a.Exercise] && a.From < day && r.IntN(8) == 0 && !slices.ContainsFunc(rec.Asked[i+1:], func(b record.Asked) bool { return b.Exercise == a.Exercise }) {
					a.From, a.Until, a.Looked = day, 0, &dose.Observation{Who: "Physiotherapist E", Day: last + units.Day(r.IntN(int(day-last)+1))}
					rec.Asked = append(slices.Clip(rec.Asked), a)
					looks++
					delete(open, a.Exercise)
				}
			}
		}
		for _, one := range rec.Replay() {
			if one.Err != nil {
				t.Fatalf("record %d: %v", seed, one.Err)
			}
		}
		if _, err := json.Marshal(rec); err != nil {
			t.Fatal(err)
		}
	}
	t.Logf("%d stops, %d looks, %d times done though stopped", stops, looks, done)
	if stops < 20 || looks < 5 || done < 20 {
		t.Error("too little was tried")
	}
}

// What begins anew is no more than what was asked for before, and nothing without a look: a count that
// had fallen, sets that were taken and the reserve stay; after it what hurt before stops it no second time.
func TestBeginsAnewWithin(t *testing.T) {
	for sets := range 3 {
		for count := range 12 {
			r, day := hurtTwice(t)
			a := r.Asked[slices.IndexFunc(r.Asked, func(a record.Asked) bool { return a.Exercise == floorPress })]
			left := units.RIR(3 + count%4)
			a.From, a.Sets, a.Count, a.Reserve = r.Visits[len(r.Visits)-2].Day, sets+1, count+1, &left
			r.Asked = append(r.Asked, a)
			decisionOn(t, &r, day, floorPress)
			if p, err := r.Anew(floorPress, false, day); err != nil || p != nil && p.Exercise == floorPress {
				t.Fatalf("nobody looked: %+v, %v", p, err)
			}
			p, err := r.Anew(floorPress, true, day)
			if err != nil || p == nil || p.Exercise != floorPress || p.Sets > a.Sets || p.Count > a.Count || p.Reserve.Least < left || p.Load.Each() > a.Load {
				t.Fatalf("of %d × %d, %v left: %+v, %v", a.Sets, a.Count, left, p, err)
			}
			again := record.AskedFrom(*p, day)
			again.Looked = &dose.Observation{Who: "Physiotherapist E", Day: day}
			r.Asked = append(r.Asked, again)
			r.Visits = append(r.Visits, record.TrainingDay{Day: day, Noted: record.Noted{PainFree: true}}) // at which it was not done
			if d := decisionOn(t, &r, day+3, floorPress); d.Next == nil || d.Next.Exercise != floorPress || d.Next.Load.Each() > p.Load.Each() || d.Next.Sets > p.Sets || d.Next.Count > p.Count {
				t.Fatalf("looked at, and not done yet: %v, %+v, %+v", d.Action, d.Next, d.Reasons)
			}
		}
	}
	r := read(t, "six/spine.json") // a set has a least count: one set of it
	o, err := r.Screening(r.LastDay())
	plan, bad := r.Start(r.LastDay())
	if err != nil || bad != nil || plan.Week == nil || o.Limits.LeastCount == 0 {
		t.Fatalf("%v, %v, %+v", err, bad, plan.Stop)
	}
	begun, from := 0, plan.Week.Sessions[0].Day
	for _, p := range plan.Week.Sessions[0].Items {
		p.Sets, p.Count = 3, min(p.Count, o.Limits.LeastCount-2)
		ask(&r, from, p)
	}
	for _, a := range r.Asked {
		p, err := r.Anew(a.Exercise, true, from+1)
		if err != nil || p != nil && p.Exercise == a.Exercise && p.Measure == exercise.Repetitions && (p.Sets > 1 || p.Count != o.Limits.LeastCount) {
			t.Errorf("%s, at least %d: %+v, %v", a.Exercise, o.Limits.LeastCount, p, err)
		}
		if p != nil && p.Exercise == a.Exercise {
			begun++
		}
	}
	if begun == 0 {
		t.Error("nothing begins")
	}
}

// Anew has one set, whatever the goal and whoever it is.
func TestAnewHasOneSet(t *testing.T) {
	begun := 0
	for _, age := range []body.Age{40, 70} {
		for _, training := range []body.Training{body.Novice, body.Advanced} {
			for goal := range guideline.Goals() {
				r := read(t, "version3/home-review.json")
				r.Profile.Age, r.Profile.Training, r.Goal = age, training, goal
				p, err := r.Anew("one-arm-dumbbell-row", true, r.LastDay()+1)
				if err != nil || p != nil && p.Sets != 1 {
					t.Errorf("%v, %v, %v: %+v, %v", age, training, goal, p, err)
				}
				if p != nil {
					begun++
				}
			}
		}
	}
	if begun == 0 {
		t.Error("nothing begins")
	}
}

// What was decided twice for a day comes out again by what each was told, also where only that differs: the
// second by the first, whose stop it keeps.
func TestDecidedTwiceForADay(t *testing.T) {
	r := read(t, stored)
	day := r.Entries[0].Day + 10
	for _, absence := range []screening.Answer{screening.Yes, screening.No} {
		r.Absence = absence
		entry, err := r.Decide(day)
		if err != nil {
			t.Fatal(err)
		}
		r.Entries = append(r.Entries, entry)
	}
	for i, one := range r.Replay() {
		if one.Err != nil {
			t.Errorf("%d: %v", i, one.Err)
		}
	}
	last := r.Entries[len(r.Entries)-1]
	again, err := r.AsOf(last).Assess(day)
	if err != nil {
		t.Fatal(err)
	}
	for i, item := range again.Items {
		if next := item.Decision.Next; next != nil || last.Items[i].Decision.Next != nil {
			t.Errorf("%s: %v, decided %v", item.Name, next, last.Items[i].Decision.Next)
		}
	}
	r.Entries = r.Entries[:len(r.Entries)-1]
	first := r.Entries[len(r.Entries)-1]
	first.Edition = "" // which says nothing of what came before it
	if got := r.AsOf(first).Entries; len(got) != len(r.Entries)-1 {
		t.Errorf("%d entries before a changed one, not %d", len(got), len(r.Entries)-1)
	}
}
