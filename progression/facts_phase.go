package progression

import (
	"fmt"

	"example.org/posology/units/evidence"
)

// Facts on phases, attendance and what happens between sessions.
const (
	factAttendance evidence.FactID = "progression.attendance"
)

var phaseFacts = []evidence.Fact{
	{ID: factAttendance, Value: fmt.Sprintf("of the sessions planned in %d days, %d or more, %v or fewer done: simplify the plan; %v or more, and %d at least: nothing against more; what is not known counts as missed", attendanceDays, fewPlanned, lowShare, fullShare, fewPlanned), Basis: evidence.Design, From: []evidence.FactID{factSimplify}},
}
