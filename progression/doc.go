// Package progression decides what changes from one session to the next.
//
// It looks at the step to the next weight: how large it is, on the mass held
// and on the mass moved, whether it lies within the published 2 to 10 per cent,
// and how many repetitions bridge it ([NextJump], [RepsBeforeJump]).
//
// It holds the published rules of progression by name, each a function of its
// own with its source, never blended: [OverTarget], [TwoForTwo], [StepFor],
// [RepsThenLoad], [TrialStep], [OMNIBelow8], [TopOfRange], [Simplify], the gates
// on pain [PainGate] and [PainComposite], and the adjustment from one set to the
// next [SetToSetKg] and [SetToSetPercent]. Schemes that lay out whole sessions
// are in package protocol.
//
// Beside them are the return after missed time ([ReturnAfter], which has no
// published source), the one published return after illness ([AfterCovid]), and
// data: maps between effort and load, planned lighter weeks, expected gains.
//
// # Scope
//
// A rule answers from what it is given. None looks at symptoms, technique or
// limits; a rise that a rule permits is not a prescription.
//
// # Representation and units
//
// Loads are exact masses per implement. Where a source prints kilograms beside
// pounds the unit is an input. Effort is a rating on a named scale.
//
// # Errors
//
// Bad input is a [units.FieldError], all bad fields at once. Nothing panics.
package progression
