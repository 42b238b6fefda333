package record_test

import (
	"reflect"
	"slices"
	"strings"
	"testing"

	"example.org/posology/dose/beside"
	"example.org/posology/progression/programme"
	"example.org/posology/progression/record"
	"example.org/posology/screening"
	"example.org/posology/units"
	"example.org/posology/units/evidence"
	"example.org/posology/units/field"
)

// Walking begins from what was told of the activity, and unknown is nothing. Design.
func TestWalkingBeginsFromWhatIsDone(t *testing.T) {
	for _, tt := range []struct {
		now          *screening.Activity
		brisk, whole int
	}{
		{nil, 0, 50},
		{&screening.Activity{Intensity: screening.Idle}, 0, 50},
		{&screening.Activity{DaysPerWeek: 5, Minutes: 20, Intensity: screening.Light, Months: 6}, 0, 100},
		{&screening.Activity{DaysPerWeek: 4, Minutes: 30, Intensity: screening.Moderate, Months: 6}, 100, 150},
	} {
		r := read(t, "version0/bone.json")
		r.Profile.Activity = tt.now
		p, err := r.Start(r.Profile.Day)
		if err != nil || p.Week == nil {
			t.Fatalf("%v: %+v", err, p.Stop)
		}
		for _, i := range p.Week.Beside {
			if i.Kind == beside.Aerobic && (i.BriskMinutes() > tt.brisk || i.WeeklyMinutes() != tt.whole) {
				t.Errorf("%+v: %d brisk of %d minutes", tt.now, i.BriskMinutes(), i.WeeklyMinutes())
			}
		}
	}
}

// besideOf are the items of a first week by track.
func besideOf(t *testing.T, r record.Record) map[beside.TrackID]beside.Item {
	t.Helper()
	p, err := r.Start(r.LastDay())
	if err != nil || p.Week == nil {
		t.Fatalf("%v: %+v", err, p.Stop)
	}
	list := map[beside.TrackID]beside.Item{}
	for _, i := range p.Week.Beside {
		list[i.Track] = i
	}
	return list
}

// What is kept of balance and impact is where the next plan goes on, also once the record
// was stored and read; what was decided before rests on what was kept then.
func TestStepsReachedAreKept(t *testing.T) {
	r := read(t, "version0/bone.json")
	if _, lands := besideOf(t, r)["one-leg"]; lands {
		t.Error("one leg, though nobody looked at the stances")
	}
	r.Beside = beside.Known{Stands: new(4), SpineFracture: screening.No, Leaks: screening.No}
	entry, err := r.Decide(r.LastDay())
	if err != nil {
		t.Fatal(err)
	}
	r.Entries = append(r.Entries, entry)
	for range 3 {
		plan, err := r.Start(r.LastDay())
		if err != nil {
			t.Fatal(err)
		}
		r.Beside.InForce = nil
		for _, i := range plan.Week.Beside {
			days, _ := i.Days.Min()
			next, err := beside.Next(i, beside.Happened{Days: days, Least: 1000}, beside.Situation{Day: r.LastDay(), Screening: plan.Screening, Goal: r.Goal, Known: r.Beside})
			if err != nil {
				t.Fatal(err)
			}
			r.Beside.InForce = append(r.Beside.InForce, next.Place())
		}
	}
	back, err := record.Decode([]byte(encoded(t, r)), field.Strict)
	if err != nil {
		t.Fatal(err)
	}
	old := back
	old.Beside.InForce = nil
	first := besideOf(t, old)
	for id, i := range besideOf(t, back) {
		if i.Step != first[id].Step+3 && id != "walking" || len(i.Reasons) == 0 {
			t.Errorf("%s: step %d, begun at %d, after three good weeks", id, i.Step, first[id].Step)
		}
	}
	if _, lands := first["impact"]; !lands {
		t.Error("no impact for who may land")
	}
	for _, again := range back.Replay() {
		if again.Err != nil {
			t.Errorf("an entry from before: %v", again.Err)
		}
	}
	back.Beside.Leaks = screening.Yes
	if _, lands := besideOf(t, back)["impact"]; lands {
		t.Error("impact with a leak")
	}
	for text, at := range map[string]string{`"stands": 5`: "/beside/stands", `"in_force": [{"kind": "balance", "track": "impact", "step": 1}]`: "/beside/in_force/0/kind"} {
		bad := strings.Replace(encoded(t, read(t, "version0/bone.json")), `"task":`, `"beside": {`+text+`}, "task":`, 1)
		if _, err := record.Decode([]byte(bad), field.Strict); err == nil || !strings.Contains(err.Error(), at) {
			t.Errorf("%s: %v, want an error at %s", text, err, at)
		}
	}
}

// What was practised beside lifting moves the plan on by itself; the review says why and hands
// back what to keep, which comes to the same plan; a fall pauses it; and it is checked, kept
// and replayed as every list.
func TestPractisedMovesOn(t *testing.T) {
	r := read(t, review)
	r.Beside = beside.Known{Stands: new(4), InForce: []beside.Item{{Kind: beside.Balance, Track: "stance", Step: 10}, {Kind: beside.Balance, Track: "reach", Step: 9}}}
	day := r.Review
	r.Beside.Since = day - 13
	for i := range units.Day(4) {
		r.Practised = append(r.Practised, beside.Practised{Day: day - 12 + 3*i, Track: "stance", Least: 30})
	}
	week := func() (record.Review, map[beside.TrackID]beside.Item) {
		re, err := r.Assess(day)
		if err != nil || re.Coming == nil {
			t.Fatalf("%v: %+v", err, re.Coming)
		}
		by := map[beside.TrackID]beside.Item{}
		for _, i := range re.Coming.Beside {
			by[i.Track] = i
		}
		return re, by
	}
	_, by := week()
	if i := by["stance"]; i.Step != 12 || !slices.ContainsFunc(i.Reasons, func(why evidence.Reason) bool { return why.Code == "beside.harder" }) {
		t.Errorf("step %d after four good days: %v", i.Step, i.Reasons)
	}
	since := r // a plan that began since does not make what was practised before it undone
	since.Beside.Since, since.Began = 0, day-3
	if w, err := since.Week(day); err != nil || !slices.ContainsFunc(w.Beside, func(i beside.Item) bool { return i.Track == "stance" && i.Step == 12 }) {
		t.Errorf("where the plan began later: %v, %+v", err, w.Beside)
	}
	r.Practised = append(r.Practised, beside.Practised{Day: day - 2, Track: "reach", Least: 10, Troubles: []beside.Trouble{beside.Tumbled}})
	if re, err := r.Assess(day); err != nil || re.Coming != nil || re.Alarms[0].Told != programme.Fall {
		t.Fatalf("%v: a fall stops nothing: %+v", err, re.Coming)
	}
	r.Profile.Day, r.Profile.Events = day-2, []screening.Event{{Code: "fall", Day: day - 2}}
	re, by := week()
	if !by["reach"].Paused || re.Coming.Begun {
		t.Errorf("after a fall: %+v; begun %v", by["reach"], re.Coming.Begun)
	}
	kept := r
	kept.Beside = re.Beside
	if kept.Beside.Since != day || *kept.Beside.Stands != 4 {
		t.Errorf("kept %+v", kept.Beside)
	}
	once, err := r.Week(day)
	if err != nil {
		t.Fatal(err)
	}
	again, err := kept.Week(day)
	if err != nil {
		t.Fatal(err)
	}
	if !reflect.DeepEqual(once.Beside, again.Beside) {
		t.Errorf("kept, it comes to another plan: %+v, not %+v", again.Beside, once.Beside)
	}
	entry, err := r.Decide(day)
	if err != nil {
		t.Fatal(err)
	}
	r.Entries = append(r.Entries, entry)
	r.Practised = append(r.Practised, beside.Practised{Day: day, Track: "stance", Least: 1})
	back, err := record.Decode([]byte(encoded(t, r)), field.Strict)
	if err != nil || len(back.Practised) != 6 {
		t.Fatalf("%v: %v", err, back.Practised)
	}
	sameAnswers(t, back)
	bad := back
	bad.Practised = append(slices.Clone(back.Practised), beside.Practised{Day: day - 1, Track: "stance"}, beside.Practised{Day: day - 1, Track: "stance"}, beside.Practised{Day: day, Track: "stairs"})
	err = bad.Validate()
	for _, at := range []string{"/practised/6/day", "/practised/7/track", "/practised/8/track"} {
		if err == nil || !strings.Contains(err.Error(), at) {
			t.Errorf("no error at %s: %v", at, err)
		}
	}
	older := strings.Replace(string(file(t, before)), `"visits": [`, `"practised": [{"day": "2027-03-01", "track": "stance"}], "visits": [`, 1)
	if _, err := record.Decode([]byte(older), field.Strict); err == nil || !strings.Contains(err.Error(), "/practised") {
		t.Errorf("in version 1: %v", err)
	}
}

// What a day's check bars beside lifting is barred on that day; what is kept from then on is as after a day
// with an ordinary check.
func TestStepsOutlastABadDay(t *testing.T) {
	r := read(t, "version3/home-review.json")
	day := r.Review
	r.Absence = screening.No
	r.Beside = beside.Known{Stands: new(4), Since: day - 6, InForce: []beside.Item{{Kind: beside.Aerobic, Track: "walking", Step: 6}, {Kind: beside.Balance, Track: "stance", Step: 10}}}
	for _, least := range []int{10, 4} { // as asked, and less than half
		r.Practised = []beside.Practised{{Day: day - 3, Track: "walking", Least: least}, {Day: day - 2, Track: "stance", Least: 30}}
		lowered, kept := false, map[beside.TrackID]beside.Item{}
		for i, check := range []func(record.Record, units.Day) screening.Check{fine, high, unwell} {
			r.Checks = []screening.Check{check(r, day)}
			re, err := r.Assess(day)
			if err != nil || re.Coming == nil {
				t.Fatalf("%d: %v, %+v", i, err, re.Coming)
			}
			for _, item := range re.Beside.InForce {
				if i == 0 {
					kept[item.Track] = item
				} else if !reflect.DeepEqual(item, kept[item.Track]) {
					t.Errorf("check %d, %s: %+v, after an ordinary day %+v", i, item.Track, item, kept[item.Track])
				}
			}
			for _, item := range re.Coming.Beside {
				if item.Step > kept[item.Track].Step && kept[item.Track].Step > 0 {
					t.Errorf("check %d, %s: step %d on the day, %d is kept", i, item.Track, item.Step, kept[item.Track].Step)
				}
				lowered = lowered || item.Step < kept[item.Track].Step
			}
		}
		if !lowered || len(kept) < 2 {
			t.Errorf("no step is lower on a bad day than what is kept: %+v", kept)
		}
	}
}
