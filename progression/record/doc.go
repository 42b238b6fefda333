// Package record is one person's file, from the first visit on: what was
// answered, tested, asked for, done and felt. What is to be done follows from it.
//
//	r, err := record.Decode(data, field.Strict)
//	plan, err := r.Start(day)     // screening, estimates, a first week
//	items, err := r.Next(day)     // what becomes of each exercise
//	review, err := r.Assess(day)  // the same, with attendance, dates and the week to come
//
// What is then asked for goes back into the record, and so do the sets that were done:
//
//	for _, d := range review.Items {
//		if d.Decision.Next != nil {
//			r.Asked = append(r.Asked, record.AskedFrom(*d.Decision.Next, review.Next))
//		}
//	}
//
// Where another exercise takes a place for more than the day ([progression.Decision.After] is nil), the one
// before it gets an end. What is so for the day's check alone is known from the entries.
//
// Tests of function go into Function as they went, unable, arms used and stopped too; the
// plan and the review say what came of them. Work beside lifting goes on from the steps in
// Beside; what came of each track on each day goes into Practised, and moves them on:
//
//	r.Beside = review.Beside // at each review, so that they are not worked out from the first day again
//
// What somebody has to look at stands in the way of everything until Looked says who has:
// see [Record.Alarms]. What is told between assessments goes into Happened. A clearance from
// before what sends to be seen does not speak for what comes after it: see [Record.Screening].
//
// # What ends a stop
//
// What a kept decision ([Entry]) stopped ends by the first line here that its reasons meet. Sets that
// are logged in the meantime are kept, told, and count where they went badly; they end none.
//
//	it went badly, and nothing easier was there (recurring, eased, too-much, below-three) → a look at it: [Asked.Looked]
//	it gave way to an easier one since it went badly more than once (recurring)           → likewise
//	days missed had a medical cause (medical-absence)                                     → an assessment of another day
//	something showed, hurt or was told that is for somebody else                          → a look, and mostly an assessment: [Record.Alarms]
//	anything else: the day's check, a limit, the kit, the place, what waits for its turn  → by itself, once it is gone
//
// A look counts from the day of the last visit that the decision knew on. What waits for one comes in
// no week, in no other's place and as nobody's harder variant.
//
// It holds no rules of its own: screening, dose and progression decide. What
// it adds is the way from one to the next, with errors at the record's own
// places, such as "/asked/3/load".
//
// # Versions
//
// A record says its version. Decode reads version 0, which had none and is the
// case files of a first visit, a plan and a review, and lifts it to [Version].
// Version 3 knew of no days away and no second reading of saturation. Version 1 knew neither
// kettlebells, ankle weights and bands nor what stands in the room: read from it, nobody asked
// what stands there, and all is decided as it was. encoding/json writes the present one. A
// newer one is refused, or read without what it added, as the caller chooses.
//
// # Lists only grow
//
// What is decided rests on the lists (checks, tests, what was asked and done) as
// long as they were on that day, and on [Given] as it was. So an [Entry] keeps
// Given and how long the lists were, and [Record.Replay] works it out again.
// The end of what is asked for may be set later, and what is asked for a day that is decided on again is taken back. Correcting an old line changes what a replay answers, and the replay says so.
//
// # How rules are joined
//
// [Given.Join] is the policy that [screening.Assess] gets. An entry keeps it as it
// was, and replay follows that one; a record without it has the choice of package
// screening.
//
// # Editions
//
// [Edition] names what the packages answer. It is raised by hand when answers
// change, and a corpus of decisions fails where it was not. An entry of another
// edition is worked out again, and both answers come back.
package record
