// Package onerm ties the load of a set to the repetitions that can be done with
// it, and estimates a one-repetition maximum (1RM) from a set.
//
// # Equation and policy
//
// A [Formula] is a published equation. It evaluates over its mathematical
// domain ([Formula.Domain]) and refuses what lies outside; [Formula.Studied]
// says over which repetitions to failure it may be relied on at all. [FromSet]
// is the policy: it enforces the studied range, takes a single repetition to
// failure for the 1RM itself, adds the repetitions in reserve to those done and
// never corrects them upward, refuses a reserve above 5, picks the equation and
// reports an interval. Every clause is a reason with its facts.
//
// # What an estimate is worth
//
// The 1RM is that of one exercise, side, hold and day, for one person. It is
// per hand where each hand holds a dumbbell, otherwise of all that is held.
// None of the equations was made with dumbbells or in people with pain. Doses
// start from [Estimate.Cautious], the lower end of the interval.
//
// Where the body or a long limb is most of what is lifted, a 1RM of the held
// weight misleads: FromSet returns [ErrMovesBody], and progress is counted in
// repetitions at that load.
//
// # Representation and rounding
//
// Repetitions are float64, since the relation is a curve; masses are
// [units.Mass]. An equation's factor is worked out in float64, without fused
// multiply-add, and its product with the mass is rounded once, to the nearest
// nanogram. The lower end of an interval is rounded down, the upper end up.
//
// # Errors
//
// Bad input gives a [*units.FieldError], or all of them as [units.FieldErrors].
// Nothing is clamped. Besides the categories of package units there are
// [ErrNotStudied] and [ErrMovesBody].
//
// # Sources
//
// Coefficients of Kemmler 2006 and of the form of [Lombardi] were read in the
// papers' abstracts; [Lander] is secondary; the rest are from memory. [Facts]
// says so for each number. The interval table is this module's own design,
// chosen after published errors that its facts name.
package onerm
