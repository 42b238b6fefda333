package record_test

import (
	"encoding/json"
	"reflect"
	"slices"
	"testing"

	"example.org/posology/dose/exercise"
	"example.org/posology/dose/setlog"
	"example.org/posology/progression"
	"example.org/posology/progression/record"
	"example.org/posology/screening"
	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/evidence"
	"example.org/posology/units/field"
)

// fine is a day's check with a pressure that changes nothing.
func fine(r record.Record, day units.Day) screening.Check {
	return screening.Check{Day: day, New: screening.AskedFor(), Setting: r.Profile.Setting, Febrile: screening.No, Unwell: screening.No, BP: &screening.BloodPressure{Systolic: 132, Diastolic: 80}, RestingPulse: 70}
}

// high is one at which the pressure reads 172/98 twice.
func high(r record.Record, day units.Day) screening.Check {
	c := fine(r, day)
	c.BP, c.BPAgain = &screening.BloodPressure{Systolic: 172, Diastolic: 98}, &screening.BloodPressure{Systolic: 172, Diastolic: 98}
	return c
}

// unwell is one of somebody who is ill, without what keeps from training.
func unwell(r record.Record, day units.Day) screening.Check {
	c := fine(r, day)
	c.Unwell = screening.Yes
	return c
}

// decidedOn checks a day, decides for it, asks for what follows, and ends what another takes the place of
// for more than the day.
func decidedOn(t *testing.T, r *record.Record, c screening.Check) record.Entry {
	t.Helper()
	r.Checks = append(slices.Clone(r.Checks), c)
	e, err := r.Decide(c.Day)
	if err != nil {
		t.Fatal(err)
	}
	r.Entries, r.Asked = append(slices.Clone(r.Entries), e), slices.Clone(r.Asked)
	for _, item := range e.Items {
		if item.Decision.Instead != "" && item.Decision.After == nil {
			drop(r, item.Exercise, c.Day-1)
		}
		if item.Decision.Next != nil {
			ask(r, c.Day, *item.Decision.Next)
		}
	}
	return e
}

// didAsked does what is asked for on a day, with as many left as were to be, and two.
func didAsked(r *record.Record, day units.Day) {
	asked, paused := r.AskedOn(day)
	r.Visits = append(slices.Clone(r.Visits), record.TrainingDay{Day: day, Noted: record.Noted{PainFree: true, Moment: &screening.Moment{}, RangeLost: screening.No, FormLost: screening.No, Observer: "Physiotherapist E"}})
	r.Done = slices.Clone(r.Done)
	for _, a := range asked {
		if paused[a.Exercise] {
			continue
		}
		ex, _ := exercise.Standard().Get(a.Exercise)
		sides := []body.Side{body.Both}
		if ex.OneSided {
			sides = []body.Side{body.Left, body.Right}
		}
		for range a.Sets {
			for _, side := range sides {
				s := setlog.Set{Day: day, Exercise: a.Exercise, Side: side, Hold: ex.Hold, Load: a.Load, Stated: a.Stated, Reps: a.Count}
				if a.Reserve != nil {
					s.Effort = units.Must(units.InReserve(min(10, float64(*a.Reserve)+2)))
				}
				r.Done = append(r.Done, s)
			}
		}
	}
}

// inShort is what is asked for on a day, without since when.
func inShort(r record.Record, day units.Day) map[exercise.ID]record.Asked {
	list, paused := r.AskedOn(day)
	m := map[exercise.ID]record.Asked{}
	for _, a := range list {
		if a.From, a.Until = 0, 0; !paused[a.Exercise] {
			m[a.Exercise] = a
		}
	}
	return m
}

// A pressure of 172/98 on one day is that day's: practice without weights then, and at the next visit all
// that was asked for before is back, with no more of anything.
func TestPressureOfOneDay(t *testing.T) {
	for name, check := range map[string]func(record.Record, units.Day) screening.Check{"172/98": high, "unwell": unwell} {
		t.Run(name, func(t *testing.T) {
			r := read(t, "version3/home-review.json")
			r.Absence, r.Checks = screening.No, nil
			tuesday := r.Review
			decidedOn(t, &r, fine(r, tuesday))
			before := inShort(r, tuesday)
			didAsked(&r, tuesday)
			e := decidedOn(t, &r, check(r, tuesday+3))
			ofDay := map[exercise.ID]bool{}
			for _, item := range e.Items {
				if d := item.Decision; d.After != nil {
					ofDay[item.Exercise] = true
					if d.Action == progression.StopExercise || !slices.ContainsFunc(d.Reasons, func(w evidence.Reason) bool { return w.Code == "progression.of-the-day" }) {
						t.Errorf("%s: %+v", item.Exercise, d)
					}
				}
			}
			if len(ofDay) == 0 {
				t.Fatalf("nothing is of the day: %+v", e.Items)
			}
			onDay := inShort(r, tuesday+3)
			for id, a := range onDay {
				if name == "172/98" && a.Load > 0 {
					t.Errorf("%s with %v on the day", id, a.Load)
				}
			}
			didAsked(&r, tuesday+3)
			for id, a := range inShort(r, tuesday+4) { // before anything is decided
				if b, ok := before[id]; !ok || a.Load > b.Load || a.Sets > b.Sets {
					t.Errorf("%s: %+v, before the day %+v", id, a, b)
				}
			}
			e = decidedOn(t, &r, fine(r, tuesday+7))
			after := inShort(r, tuesday+7)
			if len(after) != len(before) {
				t.Errorf("after the day %d exercises, before it %d", len(after), len(before))
			}
			for id, b := range before {
				if a := after[id]; ofDay[id] && (a.Load != b.Load || a.Sets != b.Sets) {
					t.Errorf("%s: %v × %d, before the day %v × %d", id, a.Load, a.Sets, b.Load, b.Sets)
				}
			}
			for _, item := range e.Items {
				if ofDay[item.Exercise] && !slices.ContainsFunc(item.Decision.Reasons, func(w evidence.Reason) bool { return w.Code == "progression.goes-on" }) {
					t.Errorf("%s does not say that it goes on: %+v", item.Exercise, item.Decision.Reasons)
				}
			}
			for i, one := range r.Replay() {
				if one.Err != nil {
					t.Errorf("entry %d: %v", i, one.Err)
				}
			}
			for _, s := range units.Must(r.Assess(tuesday + 7)).Attended.Short {
				if s.Day == tuesday+3 {
					t.Errorf("short on the day: %+v", s)
				}
			}
			stored := encoded(t, r)
			if again, err := record.Decode([]byte(stored), field.Strict); err != nil || encoded(t, again) != stored {
				t.Errorf("stored: %v", err)
			}
			var as3 map[string]any
			if err := json.Unmarshal([]byte(stored), &as3); err != nil {
				t.Fatal(err)
			}
			as3["version"] = 3
			data, _ := json.Marshal(as3)
			if _, err := record.Decode(data, field.Strict); err == nil {
				t.Error("version 3 knows of it")
			}
		})
	}
}

// afterOne is somebody after an ordinary visit, with its day.
func afterOne(t *testing.T) (r record.Record, tuesday units.Day) {
	t.Helper()
	r = read(t, "version3/home-review.json")
	r.Absence, r.Checks = screening.No, nil
	tuesday = r.Review
	decidedOn(t, &r, fine(r, tuesday))
	didAsked(&r, tuesday)
	return r, tuesday
}

// Of two decisions for a day the last says what is of the day: where it is decided again without the cause, nothing is.
func TestLastDecisionOfADay(t *testing.T) {
	r, tuesday := afterOne(t)
	twice := r
	twice.Checks = append(slices.Clone(r.Checks), unwell(r, tuesday+3))
	first, err := twice.Decide(tuesday + 3)
	if err != nil || !slices.ContainsFunc(first.Items, func(i record.Decided) bool { return i.Decision.After != nil }) {
		t.Fatalf("nothing is of the day: %v", err)
	}
	twice.Checks, twice.Entries = r.Checks, append(slices.Clone(r.Entries), first)
	decidedOn(t, &twice, fine(r, tuesday+3))
	decidedOn(t, &r, fine(r, tuesday+3))
	for _, day := range []units.Day{tuesday + 3, tuesday + 4} {
		if got, want := inShort(twice, day), inShort(r, day); len(want) == 0 || !reflect.DeepEqual(got, want) {
			t.Errorf("%v: %+v\nwithout the first %+v", day, got, want)
		}
	}
}

// What a day's check made lighter, and was not done, was left out by the person and not by the check.
func TestLighterAndNotDone(t *testing.T) {
	r, tuesday := afterOne(t)
	e := decidedOn(t, &r, unwell(r, tuesday+3))
	didAsked(&r, tuesday+3)
	at := slices.IndexFunc(e.Items, func(i record.Decided) bool {
		d := i.Decision
		return d.After != nil && d.Next != nil && d.Instead == ""
	})
	if at < 0 {
		t.Fatal("nothing is lighter on the day")
	}
	id := e.Items[at].Exercise
	r.Done = slices.DeleteFunc(r.Done, func(s setlog.Set) bool { return s.Day == tuesday+3 && s.Exercise == id })
	if short := units.Must(r.Assess(tuesday + 4)).Attended.Short; !slices.ContainsFunc(short, func(s record.Shortfall) bool { return s.Day == tuesday+3 && s.Exercise == id }) {
		t.Errorf("%s was not done, and is none of %+v", id, short)
	}
}

// At the third visit running the change stays.
func TestPressureOfThreeDays(t *testing.T) {
	r := read(t, "version3/home-review.json")
	r.Absence, r.Checks = screening.No, nil
	day := r.Review
	for i := range 3 {
		e := decidedOn(t, &r, high(r, day))
		for _, item := range e.Items {
			if d := item.Decision; i < 2 && d.Instead != "" && d.After == nil || i == 2 && d.After != nil {
				t.Errorf("visit %d, %s: %+v", i, item.Exercise, d)
			}
		}
		didAsked(&r, day)
		day += []units.Day{3, 4, 3}[i]
	}
	decidedOn(t, &r, fine(r, day))
	for id, a := range inShort(r, day) {
		if a.Load > 0 {
			t.Errorf("%s is back with %v, and nobody looked", id, a.Load)
		}
	}
}

// No session of the week to come lies after the end of the plan in force.
func TestNoSessionAfterTheEnd(t *testing.T) {
	r := read(t, "version3/home-review.json")
	r.Absence, r.Checks = screening.No, nil
	day := units.Must(units.NewDay(2027, 3, 29))
	r.Checks = append(r.Checks, fine(r, day))
	re, err := r.Assess(day)
	if err != nil || re.Coming == nil || re.Expired || len(re.Coming.Days) == 0 {
		t.Fatalf("%+v, %v", re.Coming, err)
	}
	for _, d := range re.Coming.Days {
		if d > re.InForce.Expires {
			t.Errorf("a session on %v, and the plan ends on %v", d, re.InForce.Expires)
		}
	}
}
