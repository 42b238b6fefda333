package programme_test

import (
	"fmt"

	"example.org/posology/dose/week"
	"example.org/posology/progression/programme"
	"example.org/posology/screening"
	"example.org/posology/units"
)

// Two weeks of an invented plan, of which half came about.
func ExampleAttendance() {
	today := units.Must(units.NewDay(2026, 11, 30))
	sessions := []programme.PlannedSession{
		{Day: today - 10, Missed: screening.No}, {Day: today - 7, Missed: screening.Yes},
		{Day: today - 3, Missed: screening.No}, {Day: today, Missed: screening.Yes},
	}
	a, err := programme.Attendance(sessions, today)
	fmt.Println(a.Done, "of", a.Planned, "–", a.Advice, err)
	fmt.Println(programme.CheckSessions(append(sessions, programme.PlannedSession{Day: today + 1}), today))
	for _, why := range programme.Due(week.Dates{Review: today, Retest: today + 7, Expires: today + 14}, today) {
		fmt.Println(why.Code, why.Args)
	}
	// Output:
	// 2 of 4 – ease <nil>
	// contradiction: /sessions/4/day = 2026-12-01, allowed: today or before
	// progression.review-due [review 2026-11-30]
}

// What a person takes along at the end, and what is remembered of keeping strength.
func ExampleTakeAlong() {
	d := programme.TakeAlong()
	fmt.Println(d.Maintain.Who, "–", d.Maintain.Days, "days,", d.Maintain.Sets, "sets –", d.Maintain.Basis)
	fmt.Println("comes back first after", d.Weeks, "weeks without, or:", d.ComeBack[:2])
	// Output:
	// older people – 2 days, 2 to 3 sets – from memory
	// comes back first after 8 weeks without, or: [operation fracture]
}
