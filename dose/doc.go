// Package dose turns a screening outcome, an exercise, a goal, an estimate of
// strength and the weights that are really there into one prescription. Package week
// makes a week of them.
//
// # How a load is found
//
// One question governs a load and a count: with how high a chance can the count, done
// to its end by somebody who does not stop by feel, not be done with the reserve asked
// (less one), or not at all ([strength.Chance], stated in every such dose)? What is known
// of strength is an [strength.Ability]: from the request, a test, or a set that was done.
// No other caution is laid on it.
//
// The guideline's row gives a band of the one-repetition maximum, or a load in
// repetition maxima, with repetitions, sets, rest and days. The band is laid on the
// best of what is known, and the heaviest weight in it is taken with which the chance
// allows the row's lowest count; where none does, the lightest weight for what it
// allows, three at least where four can be done. The count is what the chance allows, up to the
// row's top ([Frame.Allows]), and the set ends by what is left.
//
// Where nothing is known, a light weight is begun with and the load is looked for; the
// repetitions come from the row, and the set ends while it is clearly easy.
//
// # What is spared
//
// Counts under 6 and more than 80 % of the 1RM are not for who learns the movement, was
// not seen doing it for four weeks, must not hold the breath or work hard, has a limit on
// the share, a lighter day, a vertebral fracture that is recent or undated, frailty, or a
// joint or tendon operated on, and alone never over head or face. The same bars a feel of the next
// weight ([Frame.Feelable]). Without breath-holding at least 3 stay in reserve, and
// beyond 12 repetitions 5. Support in standing is a free hand, a chair behind, or
// somebody beside.
//
// What of a kit keeps a dose from working, and the size that would change most, is said
// at once ([Frame.KitFalls]).
//
// # What bounds a load
//
// Restrictions, a limit on the share of a maximum, a beginner's first weight
// until the technique was seen, and what is known of an exercise that this one
// replaces are joined in [Prescription.Most], which every dose says in its
// cautions. Without an estimate a limit on the share is one on what the sets that
// were done show at least; where nothing shows it, the lightest weight is left
// if it is one to begin with unknown. Within a visit the weight goes up only
// where somebody saw the technique of the exercise and is there.
//
// # What is refused
//
// A person who was not screened gets no dose ([ErrNotScreened]), nor does one
// whom screening stops ([ErrNoDose]). Person, setting and days come from the
// outcome: one that lacks any, of another day's check or of a day to come is
// refused, and so are tests and sets of somebody else, where both have a key. What
// a caller takes out of the outcome's sum binds nevertheless
// ([screening.Outcome.Tightest]). An outcome of [screening.Waived] is repeated in
// every dose. What the person, the kit or the setting
// rules out is a [*ConstraintError] that names the constraint, what would free
// it, and an exercise to try instead.
//
// # From one dose to the next
//
// A [Frame] is a request that passed screening, kit and setting. [Frame.Continue]
// goes on from what was done with the load, count and sets that are asked for, as
// far as every limit allows; package progression does the asking.
//
// # Monotone safety
//
// For one exercise and hold, a graver screening outcome never raises the load,
// its fraction or the sets, and never lowers the reserve; fewer repetitions in
// the test set never raise the load or the sets, and never lower the reserve.
// Repetitions may rise as the load falls.
//
// # Scope
//
// For adults. Nothing here says that training is without risk: local rules and
// a licensed clinician decide.
package dose
