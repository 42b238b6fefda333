// Package volume adds up what a week of resistance training gives each muscle,
// and how much was lifted.
//
// # Sets per muscle
//
// The literature counts a set for the muscles that it trains directly and, by
// one of three conventions, for those that it trains indirectly: not at all
// ([DirectSets]), by half ([FractionalSets]) or in full ([TotalSets]). Numbers of different
// conventions differ twofold and more for the arms, so a [Sets] carries its
// convention and refuses to be compared with another's. Here a prime muscle of
// the exercise is trained directly, a synergist indirectly, and a stabiliser
// not; that reading is this module's own.
//
// Sides are kept apart. For the muscle group of both sides, what the lesser
// side did counts: a set of each side in turn is one set.
//
// Every set in the log counts; warm-up sets do not belong in it. A [Rule] that
// a source defines may ask for a reserve; no source that was read gives one
// number, so none is built in.
//
// # Volume load
//
// A repetition lifts all that is held at once: twice the weight of one
// dumbbell where each hand holds one. A set of a one-sided exercise that names
// both sides was done by each, one after the other, and counts twice in
// repetitions and load. Where the body is lifted too, its share counts apart,
// as the range that the exercise states. A band has no mass. Sums are exact, see [VolumeLoad]. Seconds held
// and metres walked are no repetitions and lift nothing here. Volume load
// follows one exercise in one person; it says little across exercises or
// people, and nothing of effort.
//
// # Tallies
//
// A [Counter] holds the catalogue and the options, a [Tally] the sums of one
// person. All sums are whole numbers, so the totals are the same in whatever
// order sets come and however tallies are merged. Weeks are those of ISO 8601.
package volume
