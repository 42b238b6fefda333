// Package choice chooses exercises for a person: what trains for the tasks that
// they want to be able to do, with regard to what screening found and to the
// company they train in, and then the rest of the body. It says with which tests
// the tasks are looked at, now and at each review.
//
// # How exercises are chosen
//
// A slot is a movement that has a place in a plan, as a row of variants of one
// ladder, such as standing up from a chair. Tasks, concerns and the goal of bone
// name slots, the most useful first; they take turns, then come the slots that
// train what is left of the body. Of each slot the hardest variant is wanted, and
// what screening found, frailty or being alone for instance, only ever caps it. The plan that
// is made of the list goes further down where kit or limits ask for it.
//
// A pull stands before every push, and no list has more than one push: sets are
// given out in the order of the list, so pulls get at least as many. An overhead
// press is for who asks for it.
//
// Ten exercises at most; seven in frailty, where balance work of the same days comes
// on top; five where somebody comes little. What is cut first is what the others
// train too, but for the one of the thighs that has a weight, and for the back extension
// where bone or spine asks for it.
//
// A few minutes a day are four exercises without a weight. Where the kit has no weight for
// a row, and bands are there, the row is done with the weakest. What else the kit has or
// lacks is for the plan that is made of the list.
//
// # Tests
//
// Tests come from tasks, concerns and what single findings of screening speak for. Each
// says which norms and detectable changes are held for the person, or that none is.
// [Chosen.Results] puts beside it what has come of it: the start, the present, the
// difference and whether it is real. Tests permit no load.
//
// # What is known
//
// Which movement serves which task, what a concern moves forward or caps, and the
// order are this module's design: no source that was read states them. The
// muscles of each exercise are those of package exercise, with their sources. What
// publications say of a concern stands beside as facts.
//
// # Monotone safety
//
// Less company, one more concern or less attendance never brings a harder exercise
// of a slot. A slot that a concern adds has nothing but the body to lift, or is one that is
// chosen for everybody.
package choice
