package record_test

import (
	"errors"
	"reflect"
	"slices"
	"testing"

	"pgregory.net/rapid"

	"example.org/posology/progression/programme"
	"example.org/posology/progression/record"
	"example.org/posology/screening"
	"example.org/posology/units"
	"example.org/posology/units/field"
)

// isAway reports whether one of the times holds a day.
func isAway(list []record.Away, d units.Day) bool {
	return slices.ContainsFunc(list, func(a record.Away) bool { return a.From <= d && d <= a.Until })
}

// A fortnight away, told beforehand: the week before it has the sessions that it had up to then, the
// visit after it is the first of the plan's days, and nothing of it is missed.
func TestAwayForAFortnight(t *testing.T) {
	r := read(t, "version3/home-review.json") // Tuesdays and Fridays; the last visit on Friday 5 March
	tuesday := r.Review                       // 9 March
	r.Away = []record.Away{{From: tuesday + 2, Until: tuesday + 15}}
	re, err := r.Assess(tuesday)
	if err != nil {
		t.Fatal(err)
	}
	if re.Next != tuesday || !slices.Equal(re.Coming.Days, []units.Day{tuesday}) {
		t.Errorf("before: %v, %v", re.Next, re.Coming.Days)
	}
	r.Absence = screening.No
	for day := tuesday + 1; day <= tuesday+17; day++ {
		re, err := r.Assess(day)
		if err != nil {
			t.Fatal(err)
		}
		if re.Next != tuesday+17 || !slices.Equal(re.Coming.Days, []units.Day{tuesday + 17, tuesday + 21}) {
			t.Errorf("%v: %v, %v", day, re.Next, re.Coming.Days)
		}
	}
	re, err = r.Assess(tuesday + 17)
	if err != nil {
		t.Fatal(err)
	}
	if missed := re.Attended.Missed; slices.ContainsFunc(missed, func(d units.Day) bool { return d > tuesday }) {
		t.Errorf("missed: %v", missed)
	}
}

// Days away that were told never bring another dose at the return than the same days untold,
// nor another phase; none of them is missed, and what is said of attendance is no worse. No session lies on
// one of them, and each that was planned besides stays.
func TestAwayToldAsUntold(t *testing.T) {
	from := read(t, "version3/home-review.json")
	last := from.Visits[len(from.Visits)-1].Day
	rapid.Check(t, func(t *rapid.T) {
		untold := from
		untold.Absence = screening.No
		told, at := untold, last-20
		for range rapid.IntRange(1, 3).Draw(t, "times") {
			a := record.Away{From: at + units.Day(rapid.IntRange(1, 25).Draw(t, "from"))}
			a.Until = a.From + units.Day(rapid.IntRange(0, 40).Draw(t, "for"))
			told.Away, at = append(told.Away, a), a.Until
		}
		day := last + units.Day(rapid.IntRange(1, 120).Draw(t, "day"))
		want, err := untold.Next(day)
		if err != nil {
			t.Fatal(err)
		}
		got, err := told.Next(day)
		if err != nil {
			t.Fatal(err)
		}
		if !reflect.DeepEqual(want, got) {
			t.Fatalf("%+v, untold %+v", got, want)
		}
		was, err := untold.Assess(day)
		if err != nil {
			t.Fatal(err)
		}
		re, err := told.Assess(day)
		if err != nil {
			t.Fatal(err)
		}
		if rest := len(re.Attended.Missed) + len(re.Attended.Away); rest != len(was.Attended.Missed) {
			t.Fatalf("%d missed or away, untold %d", rest, len(was.Attended.Missed))
		}
		if slices.ContainsFunc(re.Attended.Missed, func(d units.Day) bool { return isAway(told.Away, d) }) || re.Attended.Answer.Advice > was.Attended.Answer.Advice {
			t.Fatalf("missed %v, %v; untold %v", re.Attended.Missed, re.Attended.Answer.Advice, was.Attended.Answer.Advice)
		}
		if !slices.Equal(was.Attended.Sessions, re.Attended.Sessions) {
			t.Fatalf("sessions %v, untold %v", re.Attended.Sessions, was.Attended.Sessions)
		}
		if isAway(told.Away, re.Next) && re.Next != day || re.Next < was.Next { // who came has a check
			t.Fatalf("the next visit on %v, untold on %v", re.Next, was.Next)
		}
		week, err := told.Week(day)
		if err != nil {
			t.Fatal(err)
		}
		for _, s := range week.Sessions {
			if isAway(told.Away, s.Day) {
				t.Fatalf("a session on %v, away %v", s.Day, told.Away)
			}
		}
		if !isAway(told.Away, was.Next) && re.Next != was.Next {
			t.Fatalf("the next visit on %v, untold on %v, which stands", re.Next, was.Next)
		}
		phases := func(r record.Record, re record.Review) []programme.Exit {
			report, err := r.Phases(re, day, programme.PlanStands)
			if err != nil {
				t.Fatal(err)
			}
			return report.Open
		}
		if re.Next == was.Next && !slices.Equal(phases(told, re), phases(untold, was)) {
			t.Fatalf("%v, untold %v", phases(told, re), phases(untold, was))
		}
	})
}

// Times away end, and come one after the other.
func TestAwayRefused(t *testing.T) {
	r := read(t, stored)
	day := r.Review
	for _, tt := range []struct {
		away []record.Away
		path string
		kind error
	}{
		{[]record.Away{{Until: day}}, "/away/0/from", field.ErrMissing},
		{[]record.Away{{From: day}}, "/away/0/until", field.ErrMissing},
		{[]record.Away{{From: day, Until: day - 1}}, "/away/0/until", field.ErrOutOfRange},
		{[]record.Away{{From: day, Until: day + 3651}}, "/away/0/until", field.ErrOutOfRange},
		{[]record.Away{{From: day, Until: day + 3}, {From: day + 3, Until: day + 9}}, "/away/1/from", field.ErrConflict},
	} {
		r.Away = tt.away
		var bad field.Errors
		if err := r.Validate(); !errors.As(err, &bad) || bad[0].Path != tt.path || !errors.Is(bad[0], tt.kind) {
			t.Errorf("%+v: %v", tt.away, err)
		}
	}
}
