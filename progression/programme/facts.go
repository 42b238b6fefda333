package programme

import (
	"fmt"
	"iter"
	"slices"

	"example.org/posology/progression/internal/given"
	"example.org/posology/progression/rule"
	"example.org/posology/units/evidence"
)

// Facts on phases, attendance and what happens between sessions.
const (
	factExits         evidence.FactID = "progression.phase-exits"
	factExitTime      evidence.FactID = "progression.exit-time"
	factExitSessions  evidence.FactID = "progression.exit-sessions"
	factExitTechnique evidence.FactID = "progression.exit-technique"
	factExitVisits    evidence.FactID = "progression.exit-visits"
	factAttendance    evidence.FactID = "progression.attendance"
	factHappenings    evidence.FactID = "progression.happenings"
	factHead          evidence.FactID = "progression.knock-on-the-head"
	factSigns         evidence.FactID = "progression.signs-end-clearances"
	factMaintainYoung evidence.FactID = "progression.maintain-young"
	factDischarge     evidence.FactID = "progression.discharge"
)

// Facts of other packages that stand behind dates and events.
const (
	factGates     evidence.FactID = "progression.gates"
	factSimplify  evidence.FactID = "progression.simplify"
	factNoLadder  evidence.FactID = "progression.return-no-source"
	factTwoWeeks  evidence.FactID = "dose.familiarise-two-weeks"
	factRetest    evidence.FactID = "dose.retest"
	factExpiry    evidence.FactID = "dose.expiry"
	factEventsEnd evidence.FactID = "screening.events-end"
)

var phaseFacts = []evidence.Fact{
	{ID: factExits, Value: "familiarise leads to build, build to power where power is the goal, build and power to maintenance once the client's own goal is reached, maintenance to the end of the programme; for each exit every criterion is met, and what is not known permits none", Basis: evidence.Design},
	{ID: factExitTime, Value: "a phase of learning, of building before power, and of maintenance before the end lasts until its first review", Basis: evidence.Design, From: []evidence.FactID{factTwoWeeks}},
	{ID: factExitSessions, Value: fmt.Sprintf("at least %d sessions and %v of those planned were done", fewPlanned, fullShare), Basis: evidence.Design, From: []evidence.FactID{factAttendance}},
	{ID: factExitTechnique, Value: "somebody saw the technique, on a day of the phase itself", Basis: evidence.Design},
	{ID: factExitVisits, Value: fmt.Sprintf("neither of the latest %d visits eased or referred", latestVisits), Basis: evidence.Design, From: []evidence.FactID{factGates}},
	{ID: factAttendance, Value: fmt.Sprintf("of the sessions planned in %d days, %d or more, %v or fewer done: simplify the plan, with nothing made harder and a set fewer than the plan builds up to, one at least; %v or more, and %d at least: nothing against more; what is not known counts as missed", attendanceDays, fewPlanned, lowShare, fullShare, fewPlanned), Basis: evidence.Design, From: []evidence.FactID{factSimplify}},
	{ID: factHappenings, Value: "what happened or changed since the last assessment is reviewed before the next session; on its day, or without a day, it counts as after it unless it was told there; who was not asked today is asked first", Basis: evidence.Design, From: []evidence.FactID{factEventsEnd}},
	{ID: factHead, Value: "a knock on the head is seen the same day: the head is looked at early in people on an anticoagulant and in older people, as guidance on head injury has it; for all alike is this module's own choice", Basis: evidence.FromMemory},
	{ID: factSigns, Value: "a sign or pain that sends to help now or to be seen today (at a visit, in a check, in an assessment, at the work beside lifting), and a faint, end clearances as events do, those of the same day too: one of a later day counts, or of that day once it is told anew, on a later day and when somebody has looked", Basis: evidence.Design, From: []evidence.FactID{factEventsEnd}},
	{ID: factMaintainYoung, Value: youngText(), Source: "spiering2021", Basis: evidence.FromMemory},
	{ID: factDischarge, Value: fmt.Sprintf("at the end of a programme the person takes along the maintenance dose, the signs to stop at, and what to come back for: more than %d weeks off, and whatever would have asked for a review", rule.LongestBreak()/given.Week), Basis: evidence.Design, From: []evidence.FactID{"dose.maintain", factNoLadder, factHappenings}},
}

// Facts yields the facts behind this package.
func Facts() iter.Seq[evidence.Fact] { return slices.Values(phaseFacts) }
