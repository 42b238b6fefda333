// Package simulate lets virtual trainees follow [progression.Next] for weeks.
//
// It shows what a policy does with a kit before anybody follows it: how soon the
// load is found, where a step to the next dumbbell stalls, what misjudged
// effort, missed visits, pain or a load logged in the wrong unit make of it. A
// run is reproducible: the caller gives the source of random numbers, and
// nothing else is drawn from.
//
// # Scope
//
// A trainee is arithmetic, not a person. True strength grows with the logarithm
// of the weeks of training, as it did on average in many people; from day to day
// it varies; reserve is told with an error; load and repetitions follow a curve
// of the trainee's own, which need not be the one that doses rest on. Nobody
// tires from set to set, learns, sickens or loses strength while away: nothing
// was found that gives a number for it. No run predicts anybody's progress.
//
// A run ends where the exercise is changed, stopped or handed on, since the
// strength at another exercise is not known.
//
// # Representation and units
//
// Strength is the mass of all that is lifted at once: what is held in total,
// and the part of the body that moves with it. Chances are per visit or per set,
// from 0 to 1; errors of reserve are in repetitions, told less true.
//
// # Errors
//
// Bad input is a [field.Error], all bad fields at once. Nothing panics.
package simulate
