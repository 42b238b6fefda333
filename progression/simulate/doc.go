// Package simulate lets virtual trainees follow a policy for weeks: [progression.Next],
// a published rule done plainly, or one that knows the truth.
//
// It shows what a policy does with a kit before anybody follows it: how soon the
// load is found, where a step to the next dumbbell stalls, how near to failure sets
// end, what is gained, and what misjudged effort, missed visits, pain or a load logged
// in the wrong unit make of it. A run is reproducible: the caller gives the source of
// random numbers, and nothing else is drawn from. A draw is found by its planned day and
// set: the same source gives the same days, errors and misses under every policy.
// [Judge] says what became of one, [Sum] of many.
//
// # Scope
//
// A trainee is arithmetic, not a person. True strength is a power of the weeks of
// training, at the reference dose; each visit adds to it by the load, by what is truly
// left and by the sets, without any edge; what is learned between the first tries is in
// it. Without a visit for more than a week some of what was gained is lost. From day to
// day strength varies; from set to set it tires; reserve is told with an error that grows
// with the distance from failure; load and repetitions follow a curve of the trainee's
// own, which need not be the one that doses rest on. People end a set by feel, or do the
// count asked whatever they feel. [Facts] says where each number is from: none on
// telling and tiring was measured at this age, and a quarter that is lost faster after
// light training, illness, pace and pauses are left out. No run predicts anybody's
// progress.
//
// A run ends where the exercise is changed, stopped or handed on, since the
// strength at another exercise is not known.
//
// # Representation and units
//
// Strength is the mass of all that is lifted at once: what is held in total,
// and the part of the body that moves with it. Chances are per visit or per set,
// from 0 to 1; errors of reserve are in repetitions, true less told.
//
// # Errors
//
// Bad input is a [field.Error], all bad fields at once. Nothing panics.
package simulate
