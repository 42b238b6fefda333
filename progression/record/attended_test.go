package record_test

import (
	"slices"
	"testing"

	"example.org/posology/progression/programme"
	"example.org/posology/progression/record"
	"example.org/posology/screening"
	"example.org/posology/units"
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
	r := read(t, "version2/home-review.json") // Tuesdays and Fridays; decided on for 9 March
	had := attendedTo(t, r, r.Entries[0].Day)
	if len(had) != 10 {
		t.Fatalf("%v", had)
	}
	first := r.Days[0]
	moved := r
	moved.Days = []units.Day{first + 41, first + 44} // Mondays and Thursdays from 15 March on
	want := append(slices.Clone(had), programme.PlannedSession{Day: first + 41, Missed: screening.Yes})
	for _, days := range [][]units.Day{nil, {first - 7}, {first, first + 1}} {
		if days != nil {
			thought := r.Entries[0]
			thought.Given.Days, thought.Plan, thought.Items, thought.Rests = days, &record.Plan{}, nil, record.Lengths{}
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
