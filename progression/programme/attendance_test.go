package programme_test

import (
	"encoding/json"
	"errors"
	"fmt"
	"testing"

	"github.com/google/go-cmp/cmp"
	"pgregory.net/rapid"

	"example.org/posology/progression/programme"
	"example.org/posology/progression/rule"
	"example.org/posology/screening"
	"example.org/posology/units"
	"example.org/posology/units/field"
)

// attended are so many sessions on the days up to today, the first of them done.
func attended(planned, done int, today units.Day) []programme.PlannedSession {
	var list []programme.PlannedSession
	for i := range planned {
		s := programme.PlannedSession{Day: today - units.Day(i), Missed: screening.Yes}
		if i < done {
			s.Missed = screening.No
		}
		list = append(list, s)
	}
	return list
}

func attendanceOf(t failer, list []programme.PlannedSession) programme.AttendanceAnswer {
	t.Helper()
	a, err := programme.Attendance(list, learningDay)
	if err != nil {
		t.Fatalf("Attendance: %v", err)
	}
	return a
}

// Half or fewer ease, three quarters or more and at least four raise, of fewer than four nothing
// is concluded: this module's design.
func TestAttendance(t *testing.T) {
	for _, tt := range []struct {
		planned, done int
		want          string
	}{
		{0, 0, "keep attendance-few"}, {3, 0, "keep attendance-few"}, {3, 3, "keep attendance-few"},
		{4, 0, "ease attendance-low"}, {4, 2, "ease attendance-low"}, {4, 3, "keep attendance-between"}, {4, 4, "raise attendance-full"},
		{8, 4, "ease attendance-low"}, {8, 5, "keep attendance-between"}, {8, 6, "raise attendance-full"},
		{12, 6, "ease attendance-low"}, {12, 7, "keep attendance-between"}, {12, 8, "keep attendance-between"}, {12, 9, "raise attendance-full"},
		{5, 2, "ease attendance-low"}, {5, 3, "keep attendance-between"}, {28, 28, "raise attendance-full"},
	} {
		a := attendanceOf(t, attended(tt.planned, tt.done, learningDay))
		got := fmt.Sprint(a.Advice, " ", a.Reasons[0].Code[len("progression."):])
		if got != tt.want || a.Planned != tt.planned || a.Done != tt.done || a.Days != 28 {
			t.Errorf("%d of %d: %s, %+v", tt.done, tt.planned, got, a)
		}
		speaks(t, a.Reasons...)
	}
}

// The window is today and the 27 days before it; not known counts as missed.
func TestAttendanceWindow(t *testing.T) {
	list := attended(4, 4, learningDay-24) // the oldest on the last day of the window
	if a := attendanceOf(t, list); a.Planned != 4 || a.Advice != rule.Raise {
		t.Errorf("%+v", a)
	}
	list[3].Day--
	if a := attendanceOf(t, list); a.Planned != 3 || a.Advice != rule.Keep {
		t.Errorf("28 days ago: %+v", a)
	}
	list = attended(4, 3, learningDay)
	list[0].Missed, list[3].Missed = screening.Unknown, screening.Unknown
	if a := attendanceOf(t, list); a.Done != 2 || a.Advice != rule.Ease {
		t.Errorf("not known: %+v", a)
	}
}

func TestAttendanceRefuses(t *testing.T) {
	list := []programme.PlannedSession{{Day: learningDay}, {Day: learningDay}, {Day: learningDay + 1}, {}, {Day: -1, Missed: 9}, {}}
	_, err := programme.Attendance(list, learningDay)
	if want := "/sessions/1/day /sessions/2/day /sessions/3/day /sessions/4/day /sessions/4/missed /sessions/5/day"; paths(err) != want {
		t.Errorf("%v", err)
	}
	for _, is := range []error{field.ErrDuplicate, field.ErrConflict, field.ErrMissing, field.ErrOutOfRange} {
		if !errors.Is(err, is) {
			t.Errorf("not %v: %v", is, err)
		}
	}
	if _, err := programme.Attendance(nil, 0); paths(err) != "/today" {
		t.Errorf("no today: %v", err)
	}
}

// The law: a session that was missed, or of which nothing is known any longer,
// and one more that was missed never make the answer less cautious, as long as
// there are enough to tell from.
func TestAttendanceMonotone(t *testing.T) {
	changed := 0
	law := func(t *rapid.T) {
		planned := rapid.IntRange(0, 20).Draw(t, "planned")
		list := attended(planned, rapid.IntRange(0, planned).Draw(t, "done"), learningDay)
		was := attendanceOf(t, list)
		if i := rapid.IntRange(0, planned).Draw(t, "which"); i < planned {
			list[i].Missed = rapid.SampledFrom([]screening.Answer{screening.Unknown, screening.Yes}).Draw(t, "missed")
		} else {
			list = append(list, programme.PlannedSession{Day: learningDay - 25, Missed: screening.Yes})
		}
		is := attendanceOf(t, list)
		if is.Advice < was.Advice {
			t.Fatalf("%v after %v: %+v", is.Advice, was.Advice, is)
		}
		if is.Advice > was.Advice {
			changed++
		}
	}
	for try := 0; changed == 0 && try < 10; try++ { // a hundred lists may happen to have no answer that changes
		rapid.Check(t, law)
	}
	if changed == 0 {
		t.Error("no answer was ever changed")
	}
}

func TestAttendanceJSON(t *testing.T) {
	list := attended(3, 2, learningDay)
	var sessions []programme.PlannedSession
	if err := field.Decode(units.Must(json.Marshal(list)), &sessions, field.Strict); err != nil || !cmp.Equal(sessions, list) {
		t.Errorf("%v: %s", err, cmp.Diff(list, sessions))
	}
	a := attendanceOf(t, list)
	var back programme.AttendanceAnswer
	if err := field.Decode(units.Must(json.Marshal(a)), &back, field.Strict); err != nil || !cmp.Equal(back, a) {
		t.Errorf("%v: %s", err, cmp.Diff(a, back))
	}
	if field.Decode([]byte(`{"missing":1}`), &back, field.Strict) == nil || field.Decode([]byte(`[{"missing":1}]`), &sessions, field.Strict) == nil {
		t.Error("an unknown field was read")
	}
}

// The time grows as the number of sessions does, not as its square.
func TestAttendanceOfManySessions(t *testing.T) {
	const many = 300_000
	list := make([]programme.PlannedSession, many)
	for i := range list {
		list[i] = programme.PlannedSession{Day: learningDay - units.Day(i), Missed: screening.No}
	}
	if a := attendanceOf(t, list); a.Planned != 28 || a.Done != 28 {
		t.Errorf("%+v", a)
	}
}

// However many sets there were, a break takes as many as low attendance does, so that who
// misses one session more never keeps more.
func TestBreakTakesWhatAttendanceDoes(t *testing.T) {
	for days := 8; days <= rule.LongestBreak(); days++ {
		for sets := 1; sets <= 3; sets++ {
			back, err := rule.ReturnAfter(days, screening.No)
			if err != nil {
				t.Fatal(err)
			}
			if left, err := back.Count(sets); err != nil || left > max(1, sets-1) {
				t.Errorf("%d days away, %d sets: %d, %v", days, sets, left, err)
			}
		}
	}
}
