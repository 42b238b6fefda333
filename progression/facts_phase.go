package progression

import (
	"fmt"

	"example.org/posology/units/evidence"
)

// Facts on phases, attendance and what happens between sessions.
const (
	factAttendance    evidence.FactID = "progression.attendance"
	factHappenings    evidence.FactID = "progression.happenings"
	factMaintainYoung evidence.FactID = "progression.maintain-young"
	factDischarge     evidence.FactID = "progression.discharge"
)

// Facts of other packages that stand behind dates and events.
const (
	factEventsEnd evidence.FactID = "screening.events-end"
)

var phaseFacts = []evidence.Fact{
	{ID: factAttendance, Value: fmt.Sprintf("of the sessions planned in %d days, %d or more, %v or fewer done: simplify the plan; %v or more, and %d at least: nothing against more; what is not known counts as missed", attendanceDays, fewPlanned, lowShare, fullShare, fewPlanned), Basis: evidence.Design, From: []evidence.FactID{factSimplify}},
	{ID: factHappenings, Value: "what happened or changed since the last assessment is reviewed before the next session; on its day, or without a day, it counts as after it unless it was told there; who was not asked today is asked first", Basis: evidence.Design, From: []evidence.FactID{factEventsEnd}},
	{ID: factMaintainYoung, Value: youngText(), Source: "spiering2021", Basis: evidence.FromMemory},
	{ID: factDischarge, Value: fmt.Sprintf("at the end of a programme the person takes along the maintenance dose, the signs to stop at, and what to come back for: more than %d weeks off, and whatever would have asked for a review", ladder[len(ladder)-2].days/week), Basis: evidence.Design, From: []evidence.FactID{"dose.maintain", factNoLadder, factHappenings}},
}
