// Package progression decides what changes from one visit to the next.
//
// [Next] decides for one exercise, from the log of its visits ([Course]): make one
// thing harder, hold, ease, change the variant, stop, or send the person on, with
// the next dose and its reasons ([Decision]). [Session] decides for all exercises
// of a visit, of which at most two take more load and one is new.
//
// It looks at the step to the next weight: how large it is, on the mass held
// and on the mass moved, whether it lies within the published 2 to 10 per cent,
// and how many repetitions bridge it ([NextJump], [RepsBeforeJump]).
//
// It looks at a visit ([Visit]): whether events, pain, range, technique, effort
// or repetitions stand against more load ([Gates]), what was not recorded too.
//
// It holds the published rules of progression by name, each a function of its
// own with its source, never blended: [OverTarget], [TwoForTwo], [StepFor],
// [RepsThenLoad], [TrialStep], [OMNIBelow8], [TopOfRange], [Simplify], the gates
// on pain [PainGate] and [PainComposite], and the adjustment from one set to the
// next [SetToSetKg] and [SetToSetPercent]. Schemes that lay out whole sessions
// are in package protocol.
//
// Round it are phases with their exits ([PhaseExits]), attendance ([Attendance]),
// what happened since the assessment ([Happenings]), and what a person takes along
// at the end ([TakeAlong]).
//
// Beside them are the return after missed time ([ReturnAfter], which has no
// published source), the one published return after illness ([AfterCovid]), and
// data: maps between effort and load, planned lighter weeks, expected gains.
//
// # Scope
//
// A rule answers from what it is given and looks at no symptoms, technique or
// limits; the gates look at no limits. A rise that either permits is not a
// prescription: only [Next] prescribes, within the limits of the day's screening.
// The order in which it makes things harder is a design that no trial has tested.
// Local rules and a licensed clinician decide.
//
// # Monotone safety
//
// Anything worse, or no longer known, in the screening, the day's check, the log
// or the days missed never raises the load, the sets or the steps of the next dose,
// never lowers its reserve, and never gives a dose where there was none.
//
// # Representation and units
//
// Loads are exact masses per implement. Where a source prints kilograms beside
// pounds the unit is an input. Effort is a rating on a named scale.
//
// # Errors
//
// Bad input is a [field.Error], all bad fields at once. Nothing panics.
package progression
