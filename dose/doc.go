// Package dose turns a screening outcome, an exercise, a goal, an estimate of
// strength and the weights that are really there into one prescription, and a
// list of exercises into a week.
//
// # How a load is found
//
// The guideline's row gives a band of the one-repetition maximum, or a load in
// repetition maxima, with repetitions, sets, rest and days. The band is laid on
// the cautious end of the estimate, never on the best guess. Of the weights
// that can be lifted, the lightest inside the band is taken, and the nearest
// below it if none is; limits from screening only ever lower the ceiling. Then
// the repetitions are worked out again for the weight that exists: those done
// and those kept in reserve together never exceed what the curve allows, and
// the weight goes down until the row's lowest count fits.
//
// # Beyond the curve
//
// Equations stop near 10 repetitions and reserve cannot be counted above 5. A
// light start lies outside both. There the load comes from the band or, for a
// novice, from finding the load, the repetitions come from the row, and the
// set ends while it is clearly easy. The curve's extension beyond its studied
// range is used to lighten a load, never to add to it.
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
// it, and an exercise to try instead. In a week, what does not fit is left out
// and listed with its reasons.
//
// # Beside the lifting
//
// A week has what lifting does not give: balance and aerobic work from 50 years on, impact
// where bone is the goal, power in its phase, each with its dose, from package beside. What
// [Week.Prescribed] hands to an audit counts only what is dosed.
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
