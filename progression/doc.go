// Package progression decides what changes from one visit to the next.
//
// [Next] decides for one exercise, from the log of its visits ([Course]): make one
// thing harder, hold, ease, change the variant, stop, or send the person on, with
// the next dose and its reasons ([Decision]). [NextAll] decides for all exercises
// of a visit, of which at most two take more load and one is new.
//
// What is known of strength is folded over tests and visits ([strength.Ability]), and one
// stated chance ([strength.Chance]) says which weight and count come next: the heaviest
// weight within a step that allows the lowest count, and as many repetitions as it
// allows. A set ends by its reserve. The dose is the smallest of bounds that
// each keep the order of better and worse: the chance, limits, the band, gates, the
// return after missed days, and the set that came nearest to failure.
//
// A far weight is felt, a few lifts in one set, while somebody is there.
//
// What a visit showed, and whether events, pain, range, technique, effort or
// repetitions stand against more load, is in package visit.
//
// The published rules of progression and the return after missed time are in
// package rule; phases, attendance, what happened since the assessment and the end
// of a programme in package programme; schemes that lay out whole sessions in
// package protocol.
//
// # Scope
//
// A rule answers from what it is given and looks at no symptoms, technique or
// limits. A rise that it permits is not a prescription: only [Next] prescribes,
// within the limits of the day's screening.
// Local rules and a licensed clinician decide.
//
// # What lessens
//
// All rows that hold are joined, in any order; then nothing is made harder. A row
// has a name, a condition, what it changes, and the facts behind it.
//
//	missed         more than a week since the last set → load and sets by the ladder, or anew (return, return-no-source, return-anew, medical, coarse-steps, least-stays)
//	above-limit    the last weight lies above a limit → the heaviest below it (limit)
//	few-for-limit  the last count lies below the least of screening → a lighter weight, or an easier variant (limit)
//	lighter-day    the day's check asks for a lighter session → as the check says (gates)
//	too-heavy      the weight could not be lifted, or in some set too seldom even to failure → a lighter weight, or an easier variant (too-much, variant)
//	too-few        the lightest weight allows too few repetitions in reserve → an easier variant (fit, variant)
//	below-three    three visits in a row below the dose → fewer repetitions, a lighter weight, a set fewer, or an easier variant; none but the first where only a reserve beyond counting fell short (simplify, fit, variant)
//	attendance     half of the planned sessions or fewer were done → a set fewer than the plan builds up to, one at least (attendance-low)
//	recurring      a visit that eases, within three after another → an easier variant (variant)
//	eased          a gate on the last visit eases → a lighter session (gates)
//
// # What makes harder
//
// Where nothing lessens, the first row that holds decides. The order is a design
// that no trial has tested. A [Policy] may take away rows that make something
// harder, no others and not found, which takes what was lifted already; then the
// next row that holds decides.
//
//	nothing-done   no set was done, or every one is doubtful → the dose stays (gates)
//	ask-first      somebody is to be asked before more than light and supervised work → the dose stays (ask-first)
//	plan-expired   the plan has expired → the dose stays (plan-expired)
//	day-over       the last plan was its day's alone → the dose stays (of-day)
//	sets-first     a set is to come that the plan builds up to → sets (sets-first)
//	maintain       maintenance, and the next weight was not done before → the dose stays (keep-up)
//	found-easy     a heavier weight was found, and is still clearly easy → finding the load (find-on, try)
//	found          a heavier weight was found → finding the load (find-on)
//	two-rises      the next weight is shown, and two other loads rise → the dose stays (two-rises)
//	next-weight    the chance allows the next weight, or its own sets or two visits without a count of repetitions show it → load (shown, reserve-error, done-before, rated-twice, step-2-to-10, step-small-muscles)
//	find-on        the load is looked for, and every set was clearly easy → finding the load (find-on, try)
//	tried          a heavier weight was tried and was too much → the dose stays (find-on)
//	resumed        a trial is over: back to the dose before it → the dose stays (find-on)
//	limit-reps     a limit forbids the next weight, and repetitions may rise within the range → repetitions (limit, easy-step, bridge-top)
//	limit          a limit forbids the next weight → the dose stays (limit, gates, shown, fit)
//	feel           the next weight is far, and it may be felt → finding the load (step-2-to-10, step-small-muscles, feel)
//	try            the next weight may be tried → finding the load (step-2-to-10, step-small-muscles, find-on, try)
//	more-reps      the chance allows more repetitions, and they may rise → repetitions (easy-step, bridge-top)
//	hold           a gate keeps the dose, or the chance allows no more yet → the dose stays (gates, shown, fit)
//	familiarising  movements are still learnt → the dose stays (familiarising)
//	more-reserve   the present weight could show the next one → the dose stays (shown, rated-twice)
//	slower         lowering is quicker than four seconds → slower lowering (slower)
//	pause          the pause is shorter than two seconds → longer pause (pause)
//	beside         a heavier weight waits for somebody at hand → the dose stays (beside)
//	extra-set      the next weight can be neither shown nor felt, and the guideline has room → an extra set (extra-set)
//	variant-waits  there is a harder variant, and enough exercises are new → the dose stays (one-new)
//	harder-variant there is a harder variant that can be dosed → harder variant (variant)
//	kit-ends       the kit has nothing heavier → the dose stays (variant, kit-ends)
//	too-far        none of these → the dose stays (variant, kit-ends, try)
//
// # Limits of a day
//
// What the day's check alone makes of an exercise is that day's ([Course.Usual], [Decision.After]): the next
// decision goes on from before it, in nothing harder, unless the day went badly or is the third running.
//
// # Monotone safety
//
// Anything worse, or no longer known, in the screening, the day's check, the log
// or the days missed never raises the load, the sets or the steps of the next dose,
// never lowers its reserve, and never gives a dose where there was none: at the last
// visit or any before it. Counts are not ordered: fewer repetitions belong to a heavier
// weight. A lower test gives no more; whether there was a test, or a set done before, is
// ordered only where it showed no less than all that came after, each no more than the last.
//
// # Representation, units and errors
//
// Loads are exact masses per implement. Where a source prints kilograms beside
// pounds the unit is an input. Effort is a rating on a named scale.
// Bad input is a [field.Error], all bad fields at once. Nothing panics.
package progression
