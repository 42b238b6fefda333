// Package programme is what lies round the visits: the phases of a programme with
// their exits ([PhaseExits]), attendance ([Attendance]), the dates of a plan
// ([Due]), what happened since the assessment ([Happenings]), and what a
// person takes along at the end ([TakeAlong]).
//
// Exits, criteria and the window of attendance are this module's design. What is
// not known lets no phase be left. Local rules and a licensed clinician decide.
//
// Bad input is a [field.Error], all bad fields at once. Nothing panics.
package programme
