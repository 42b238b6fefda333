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
// Equations with an offset, or with a measure of the body, and printed tables
// stand in package published. FromSet asks none of these.
//
// A [Curve] is one person's own, found by package fit from sets. Its [Form] ties
// load and repetitions; it can be stored, and asked without what fitted it.
//
// # Intervals
//
// [Options] choose the level of an interval, tell of a tired set, or bring in an
// [Accuracy]: an equation with the errors measured with it, such as [OpenBench].
// Without it the interval table holds, a proposal for about 95 %; with it, people
// and sets that it was not measured in keep the table's margins where these are
// wider. [Combine] joins several sets and knows that most of their error is the
// same. Biases are shown in the reasons and counted as error; since they have
// another sign in trained people than in untrained, none is corrected.
//
// In the open data, for people left out when equation and widths were chosen,
// the best estimate is out by 2.5 % (root mean square) up to 10 repetitions and
// 3.8 % up to 20, and 92 % of the intervals at 90 % hold the 1RM; their mean width
// is 12 % of it. The program examples/accuracy shows this and every equation's
// own errors, for these data or others.
//
// # What an estimate is worth
//
// The 1RM is that of one exercise, side, hold and day, for one person. It is
// per hand where each hand holds a dumbbell, otherwise of all that is held.
// None of the equations was made with dumbbells or in people with pain. Doses
// read the same set by what package strength makes of it, which moves neither with the best
// estimate of practised people nor with an option, so that better figures for the
// file never make a dose heavier. How wide an interval is moves no dose either: what is
// not known is in the chance that package strength keeps.
//
// Where the body or a long limb is most of what is lifted, a 1RM of the held
// weight misleads: FromSet refuses the exercise, and progress is counted in
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
// Bad input gives a [*field.Error], or all of them as [field.Errors].
// Nothing is clamped. Besides the categories of package field there is
// [ErrNotStudied].
//
// # Sources
//
// Coefficients of Kemmler 2006, of the form of [Lombardi] and of the regressions
// were read in the papers' abstracts; those of Kemmler 2024 were read, but that
// they make a cubic and which exercise is whose is inferred; [Lander] is
// secondary; the rest are from memory. [Facts] says so for each number. Equations
// remembered too loosely to be checked (Berger, Brown, Tucker, Cummings and Finn)
// are left out. The interval table is this module's own design,
// chosen after published errors that its facts name.
package onerm
