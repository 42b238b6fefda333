// Package rule holds the published rules of progression, the adjustment from one
// set to the next, and the return after missed time.
//
// Each rule is a function of its own with its source, never blended: [OverTarget],
// [TwoForTwo], [StepFor], [RepsThenLoad], [TrialStep], [OMNIBelow8], [TopOfRange],
// [Simplify], the gate on pain [PainGate], [SetToSetKg] and
// [SetToSetPercent]. [RepsBeforeJump] is arithmetic beside them, and [ReturnAfter]
// a ladder that has no published source.
//
// What is known beside the rules and acts on nothing, such as maps between effort
// and load, planned lighter weeks and expected gains, is in [Facts] alone.
//
// A rule answers from what it is given and looks at no symptoms, technique or
// limits: a rise that it permits is no prescription.
//
// Loads are exact masses per implement. Where a source prints kilograms beside
// pounds the unit is an input. Effort is a rating on a named scale.
//
// Bad input is a [field.Error], all bad fields at once. Nothing panics.
package rule
