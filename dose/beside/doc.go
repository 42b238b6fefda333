// Package beside doses what belongs beside lifting: balance, impact for bone, power
// and aerobic work.
//
// [Start] gives what a person begins with, each an [Item] with its dose, or says why
// there is none ([Barred]). [Next] says what an item is after a week or a visit.
//
// # Scope
//
// An item stands on a step of a track. A track is a table: what is done, with which
// support, how long or how often, each step a little harder than the one before. Rows of
// guidelines and trials give the frame, that is days, amounts and aims; where they
// leave a gap our own choice fills it, and its reason says so. No step goes above what was
// published. Soft ground and eyes closed are on no track: no dose of them was found.
//
// # Monotone safety
//
// Anything worse in the screening, in what is known or in what happened never brings a
// later step of the same track, and so never more force, height, speed, effort or load, nor
// less support. Within one movement it never brings more seconds, impacts or
// minutes. An easier movement may be held longer.
//
// # Errors
//
// Bad input is a [field.Error], all bad fields at once. Nothing panics. Local rules and
// a licensed clinician decide.
package beside
