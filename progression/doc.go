// Package progression decides what changes from one visit to the next.
//
// [Next] decides for one exercise, from the log of its visits ([Course]): make one
// thing harder, hold, ease, change the variant, stop, or send the person on, with
// the next dose and its reasons ([Decision]). [Session] decides for all exercises
// of a visit, of which at most two take more load and one is new.
//
// It looks at the step to the next weight: how large it is, on the mass held
// and on the mass moved, whether it lies within the published 2 to 10 per cent,
// and how many repetitions bridge it ([NextJump], [rule.RepsBeforeJump]).
//
// It looks at a visit ([Visit]): whether events, pain, range, technique, effort
// or repetitions stand against more load ([Gates]), what was not recorded too.
//
// The published rules of progression and the return after missed time are in
// package rule; phases, attendance, what happened since the assessment and the end
// of a programme in package programme; schemes that lay out whole sessions in
// package protocol.
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
