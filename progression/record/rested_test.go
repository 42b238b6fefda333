package record_test

import (
	"slices"
	"testing"

	"pgregory.net/rapid"

	"example.org/posology/dose/week"
	"example.org/posology/progression/record"
	"example.org/posology/screening"
	"example.org/posology/units"
)

// came adds a visit of a day.
func came(r record.Record, day units.Day) record.Record {
	v := r.Visits[len(r.Visits)-1]
	v.Day, v.But = day, nil
	r.Visits = append(slices.Clone(r.Visits), v)
	r.Absence = screening.No
	return r
}

// Of Tuesdays and Fridays the day after an unplanned Monday is no training day: 48 hours lie
// between two sessions (ACSM 2011, of older adults who begin: dose.days-between). It was none of
// the plan's either, so it is not missed; who comes all the same is decided for.
func TestNoNextDayAfterAVisit(t *testing.T) {
	r := read(t, stored) // the last visit on Friday 5 March
	r.Checks, r.Entries = nil, nil
	monday := r.Visits[len(r.Visits)-1].Day + 3
	tuesday, friday := monday+1, monday+4
	if re, err := r.Assess(tuesday); err != nil || re.Next != tuesday {
		t.Fatalf("without: %v, %v", re.Next, err)
	}
	r = came(r, monday)
	for _, day := range []units.Day{monday, tuesday, friday} {
		re, err := r.Assess(day)
		if err != nil {
			t.Fatal(err)
		}
		if re.Next != friday || !slices.Equal(re.Coming.Days, []units.Day{friday, friday + 4}) || slices.Contains(re.Attended.Missed, tuesday) {
			t.Errorf("%v: next %v, then %v, missed %v", day, re.Next, re.Coming.Days, re.Attended.Missed)
		}
	}
	r.Brief = true // a few minutes on each of the days
	if re, err := r.Assess(tuesday); err != nil || re.Next != tuesday {
		t.Errorf("in a few minutes a day: %v, %v", re.Next, err)
	}
	r.Brief, r.Checks = false, []screening.Check{{Day: tuesday, New: screening.AskedFor(), Setting: r.Profile.Setting, Febrile: screening.No, Unwell: screening.No}}
	if re, err := r.Assess(tuesday); err != nil || re.Next != tuesday {
		t.Errorf("who came: %v, %v", re.Next, err)
	}
}

// Whichever day somebody trained: the next is one of the plan's, two days on or more, and the
// first of these; a visit more never makes another planned day missed.
func TestNextDayIsRested(t *testing.T) {
	from := read(t, stored)
	from.Checks, from.Entries, from.Absence = nil, nil, screening.No
	last := from.Visits[len(from.Visits)-1].Day
	rapid.Check(t, func(t *rapid.T) {
		first := from
		first.Days = []units.Day{from.Days[0], from.Days[0] + units.Day(rapid.IntRange(2, 5).Draw(t, "second"))}
		one := last + units.Day(rapid.IntRange(1, 9).Draw(t, "came"))
		second := came(first, one)
		day := one + units.Day(rapid.IntRange(0, 8).Draw(t, "asked"))
		before, errBefore := first.Assess(day)
		re, err := second.Assess(day)
		if err != nil || errBefore != nil {
			t.Fatalf("%v, %v", err, errBefore)
		}
		planned := func(d units.Day) bool {
			return slices.ContainsFunc(first.Days, func(p units.Day) bool { return (d-p)%7 == 0 })
		}
		want := max(day, one+week.DaysBetween)
		for !planned(want) {
			want++
		}
		if re.Next != want || slices.Min(re.Coming.Days) < want {
			t.Fatalf("came on %v, asked on %v: %v, %v, want %v", one, day, re.Next, re.Coming.Days, want)
		}
		for _, d := range re.Attended.Missed {
			if !slices.Contains(before.Attended.Missed, d) {
				t.Fatalf("came on %v: %v is missed, which was not", one, d)
			}
		}
	})
}
