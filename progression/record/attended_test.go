package record_test

import (
	"errors"
	"slices"
	"testing"

	"pgregory.net/rapid"

	"example.org/posology/dose"
	"example.org/posology/dose/setlog"
	"example.org/posology/progression/programme"
	"example.org/posology/progression/record"
	"example.org/posology/screening"
	"example.org/posology/units"
	"example.org/posology/units/field"
)

// attendedTo are the sessions before the review of a day.
func attendedTo(t *testing.T, r record.Record, day units.Day) []programme.PlannedSession {
	t.Helper()
	r.Absence = screening.No
	re, err := r.Assess(day)
	if err != nil {
		t.Fatal(err)
	}
	return re.Attended.Sessions
}

// Weekdays that change take no session with them: each is counted by the days that were the
// plan's then. Days that were only thought of before the first visit were nobody's.
func TestAttendedByThePlanOfItsTime(t *testing.T) {
	r := read(t, stored) // Tuesdays and Fridays; decided on for 9 March
	had := attendedTo(t, r, r.Entries[0].Day)
	if len(had) != 10 {
		t.Fatalf("%v", had)
	}
	first := r.Days[0]
	plan := read(t, older).Entries[0].Plan // any that is one
	moved := r
	moved.Days = []units.Day{first + 41, first + 44} // Mondays and Thursdays from 15 March on
	want := append(slices.Clone(had), programme.PlannedSession{Day: first + 41, Missed: screening.Yes})
	for _, days := range [][]units.Day{nil, {first - 7}, {first, first + 1}} {
		if days != nil {
			thought := r.Entries[0]
			thought.Given.Days, thought.Plan, thought.Items, thought.Rests = days, plan, nil, record.Lengths{}
			begun := thought
			begun.Given.Days = r.Days
			moved.Entries = append([]record.Entry{thought, begun}, r.Entries...)
		}
		if got := attendedTo(t, moved, first+43); !slices.Equal(got[:len(had)], had) || len(got) != 13 || got[10].Day != first+35 || got[12] != want[10] {
			t.Errorf("thought of %v: %v", days, got)
		}
	}
	moved.Absence = screening.No
	decided, err := moved.Decide(first + 41)
	if err != nil {
		t.Fatal(err)
	}
	moved.Entries = append(r.Entries[:1:1], decided)
	if got := attendedTo(t, moved, first+43); len(got) != 13 {
		t.Errorf("decided on: %v", got)
	}
	if again := moved.Replay(); again[1].Err != nil {
		t.Errorf("%v", again[1].Err)
	}
}

// A day far behind the record, and days of a plan that are years apart, are slips of the
// keyboard: they are refused by name, at once, by all that asks for a week.
func TestDaysFarApart(t *testing.T) {
	r := read(t, stored)
	last := max(r.Visits[len(r.Visits)-1].Day, slices.Max(r.Days))
	ask := func(r record.Record, day units.Day) map[string]error {
		_, week := r.Week(day)
		_, review := r.Assess(day)
		_, next := r.Next(day)
		return map[string]error{"Week": week, "Assess": review, "Next": next}
	}
	refused := func(err error, path string) bool {
		var bad field.Errors
		return errors.As(err, &bad) && bad[0].Path == path && errors.Is(bad[0], field.ErrOutOfRange)
	}
	for _, day := range []units.Day{last + 3651, units.Must(units.NewDay(9999, 12, 20))} {
		for name, err := range ask(r, day) {
			if !refused(err, "/day") {
				t.Errorf("%s of %v: %v", name, day, err)
			}
		}
	}
	for name, err := range ask(r, last+3650) {
		if refused(err, "/day") {
			t.Errorf("%s after ten years: %v", name, err)
		}
	}
	apart := r
	apart.Days = slices.Clone(r.Days)
	apart.Days[0] = 1
	for name, err := range ask(apart, last) {
		if !refused(err, "/days") {
			t.Errorf("%s of days apart: %v", name, err)
		}
	}
	if _, err := apart.Start(last); !refused(err, "/days") {
		t.Errorf("Start of days apart: %v", err)
	}
	if err := apart.Validate(); !refused(err, "/days") {
		t.Errorf("Validate: %v", err)
	}
	old := r
	old.Began, old.Days = 1, []units.Day{1, 4} // a plan of the year 1, with visits of today
	for name, err := range ask(old, last) {    // within the time of a test
		if err != nil {
			t.Errorf("%s of a plan of the year 1: %v", name, err)
		}
	}
}

// A plan ends with the decision for another one, though that begins later: what lay between would
// count as missed, and a set be taken for it.
func TestPlanEndsWhenAnotherIsDecidedOn(t *testing.T) {
	r := read(t, stored)
	first := r.Days[0] // a Tuesday
	next := r.Entries[0]
	r.Days = []units.Day{first + 49, first + 52}
	next.Day, next.Given.Days = first+36, r.Days
	r.Entries = []record.Entry{r.Entries[0], next}
	if got := attendedTo(t, r, first+40); got[len(got)-1].Day != first+35 {
		t.Errorf("%v", got)
	}
}

// What was less than asked for at a visit is told of what was asked for then, and not of a weight
// that was looked for.
func TestShort(t *testing.T) {
	const day, press = units.Day(740045), "dumbbell-floor-press" // 5 March 2027
	undone := func(r *record.Record, last units.Day) {
		drop(r, press, last)
		r.Done = slices.DeleteFunc(slices.Clone(r.Done), func(s setlog.Set) bool { return s.Exercise == press && s.Day == day })
		r.Visits[len(r.Visits)-1].But = nil
	}
	for _, tt := range []struct {
		want   string
		change func(*record.Record)
	}{
		{press + " below", func(*record.Record) {}},
		{press + " not", func(r *record.Record) { undone(r, day) }},
		{"", func(r *record.Record) { undone(r, day-1) }},
		{"", func(r *record.Record) {
			i := slices.IndexFunc(r.Asked, func(a record.Asked) bool { return a.Exercise == press && a.Count == 10 })
			r.Asked[i].Finding = &dose.Search{MaxSteps: 1}
		}},
	} {
		r := read(t, review)
		tt.change(&r)
		re, err := r.Assess(day + 3)
		if err != nil {
			t.Fatal(err)
		}
		got := ""
		for _, s := range re.Attended.Short {
			if got += string(s.Exercise) + " not"; s.Why != nil && s.Why.Code == "progression.below-dose" {
				got = string(s.Exercise) + " below"
			}
		}
		if got != tt.want {
			t.Errorf("%q, want %q", got, tt.want)
		}
		for _, item := range re.Items { // as which the visit was planned
			if plan := item.Log[len(item.Log)-1].Plan; (plan.Mode == dose.LoadFinding) != (plan.Finding != nil) {
				t.Errorf("%s: %v, %+v", item.Name, plan.Mode, plan.Finding)
			}
		}
	}
}

// Other weekdays from some day on: each session of the old ones up to then is counted once, and each of the
// new ones from then on.
func TestMovedDaysLoseNoSession(t *testing.T) {
	r := read(t, stored)
	first, last := slices.Min(r.Days), r.Entries[0].Day
	rapid.Check(t, func(t *rapid.T) {
		moved := r
		moved.Absence = screening.No
		start := last + units.Day(rapid.IntRange(0, 20).Draw(t, "from"))
		moved.Days = []units.Day{start}
		if more := rapid.IntRange(0, 5).Draw(t, "second"); more > 1 {
			moved.Days = append(moved.Days, start+units.Day(more))
		}
		end := start + units.Day(rapid.IntRange(0, 25).Draw(t, "until"))
		review, err := moved.Assess(end)
		if err != nil {
			t.Fatal(err)
		}
		var got, want []units.Day
		for _, s := range review.Attended.Sessions {
			got = append(got, s.Day)
		}
		on := func(days []units.Day, d units.Day) bool {
			return slices.ContainsFunc(days, func(one units.Day) bool { return (d-one)%7 == 0 })
		}
		for d := first; d < end; d++ {
			if d < start && on(r.Days, d) || d >= start && on(moved.Days, d) {
				want = append(want, d)
			}
		}
		if !slices.Equal(got, want) {
			t.Fatalf("%v, want %v", got, want)
		}
	})
}

// Where the days move, a session of the old ones for which somebody came on one of the next two days was not missed, though
// that is a day of the new ones; what nobody came for was.
func TestMovedSessionIsNotMissed(t *testing.T) {
	r := read(t, stored) // Tuesdays and Fridays; the last visit on Friday 5 March, decided on for the 9th
	tuesday := r.Entries[0].Day
	for to := range units.Day(6) {
		for came := range units.Day(7) {
			for _, decided := range []bool{true, false} {
				moved := r
				moved.Absence, moved.Days = screening.No, []units.Day{tuesday + to, tuesday + to + 3}
				moved.Visits = append(slices.Clone(r.Visits), record.TrainingDay{Day: tuesday + came})
				if decided {
					next := r.Entries[0]
					next.Day, next.Given.Days = tuesday+to, moved.Days
					moved.Entries = []record.Entry{r.Entries[0], next}
				}
				re, err := moved.Assess(tuesday + 7)
				if err != nil {
					t.Fatal(err)
				}
				for _, day := range []units.Day{tuesday, tuesday + 3} {
					missed, later := slices.Contains(re.Attended.Missed, day), tuesday+came-day
					if day >= tuesday+to {
						continue
					}
					if came >= to && missed != (later > 2) { // what was before stands for one of its week, as ever
						t.Errorf("moved to %v, came on %v: %v missed: %v", tuesday+to, tuesday+came, day, missed)
					}
				}
				if old := slices.DeleteFunc(re.Attended.Missed, func(d units.Day) bool { return d < tuesday }); to == 5 && came == 4 && len(old) != 1 {
					t.Errorf("came once in a week of two days: missed %v", old)
				}
				if n := len(re.Attended.Sessions) - len(re.Attended.Missed) - len(re.Attended.Away); n > len(moved.Visits) {
					t.Errorf("moved to %v, came on %v: %d sessions done in %d visits", tuesday+to, tuesday+came, n, len(moved.Visits))
				}
			}
		}
	}
}

// Days on which nobody came, and of which it is known why, are not judged: an illness that a
// decision was told of, up to its day, and days on which all was stopped. Doses go by them all the same.
func TestExcusedDaysAreNotJudged(t *testing.T) {
	told := read(t, stored) // Tuesdays and Fridays; the last visit on Friday 5 March
	day := told.Entries[0].Day + 10
	told.Entries, told.Away = nil, nil
	plain := told
	told.Absence, plain.Absence = screening.Yes, screening.No
	missed := func(r record.Record, day units.Day) (missed, excused []units.Day) {
		t.Helper()
		re, err := r.Assess(day)
		if err != nil {
			t.Fatal(err)
		}
		if len(re.Attended.Sessions) != len(re.Attended.Done)+len(re.Attended.Missed)+len(re.Attended.Away) {
			t.Errorf("%+v", re.Attended)
		}
		return re.Attended.Missed, re.Attended.Away
	}
	all, none := missed(plain, day)
	if n := len(all); n < 3 || len(none) > 0 {
		t.Fatalf("%v, %v", all, none)
	}
	if left, ill := missed(told, day); !slices.Equal(append(left, ill...), all) || len(ill) < 3 || ill[0] < told.Visits[len(told.Visits)-1].Day {
		t.Errorf("before it is decided: missed %v, ill %v", left, ill)
	}
	entry, err := told.Decide(day) // which stops all
	if err != nil {
		t.Fatal(err)
	}
	told.Entries = []record.Entry{entry}
	told.Profile.Day, told.Absence, plain.Profile.Day = day, screening.No, day // assessed anew, and away for no such cause
	later := day + 14
	left, known := missed(told, later)
	if all, _ = missed(plain, later); !slices.Equal(append(left, known...), all) || len(left) > 1 {
		t.Errorf("ill, then stopped: missed %v, known %v, of %v", left, known, all)
	}
	entry.Items = slices.Clone(entry.Items)
	for i := range entry.Items { // told of an illness and not stopped
		entry.Items[i].Decision.Next = &dose.Prescription{}
	}
	told.Entries = []record.Entry{entry}
	if left, known = missed(told, later); len(left) < 4 || slices.ContainsFunc(known, func(d units.Day) bool { return d > day }) {
		t.Errorf("after the illness: missed %v, known %v", left, known)
	}
	was, err := plain.Assess(later)
	is, err2 := told.Assess(later)
	if err = errors.Join(err, err2); err != nil || is.Attended.Answer.Advice > was.Attended.Answer.Advice {
		t.Errorf("%v: %+v, untold %+v", err, is.Attended.Answer, was.Attended.Answer)
	}
	for i := range is.Items {
		if a, b := is.Items[i].Decision.Next, was.Items[i].Decision.Next; (a == nil) != (b == nil) || a != nil && (a.Sets != b.Sets || a.Count != b.Count || a.Load.Each() != b.Load.Each()) {
			t.Errorf("%s: %+v, untold %+v", is.Items[i].Exercise, a, b)
		}
	}
}
