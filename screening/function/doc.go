// Package function scores functional tests of older adults, sets a result
// beside published norms and cut-offs, and says whether a change is real.
//
// # Scope
//
// Thirty-second chair stand and arm curl, five sit-to-stands, timed up and go,
// four-stage balance, walks over 4 m, 3 m and 8 ft, the short physical
// performance battery, grip, and the bare numbers of two self-reports and of
// the frailty scale, whose wording belongs to others. A result describes one
// test on one day. It is no diagnosis and permits no load.
//
// # Results
//
// [Result] holds what happened: done, unable, arms used, refused and stopped
// are all results. Only what was done by the protocol is scored, except where a
// source gives the others a score, as in the [Battery]; elsewhere they are "not
// scored", and no norm reads them as passed. A value that was not given is not
// zero: zero stands is "0 reps".
//
// # Norms
//
// [Norms] yields every published figure, by sex, age and the body that set it.
// [AgainstNorms] lets each answer by itself, with its own strictness (< or <=); they
// are never merged. Outside the sexes, ages and courses that a body printed, the
// answer is [NoNorm] and says why: most norms begin at 60 or 65. A norm set over
// another course is not converted.
//
// # Change
//
// [ChangeBetween] answers real, not shown or within learning. Real needs a difference
// above a detectable change that is held here for the person's sex and age; if
// none was, the verdict is not shown, whatever the difference. Where a practice
// effect was published, a gain that it covers is within learning, and a gain
// must stay above the detectable change once the effect is taken off. Without two
// scores nothing is real, and [HowDone.Order] says which of the two went further:
// unable is never better than a number. Results of
// different tests, courses, sides or protocols are refused with
// [field.ErrConflict].
//
// # Representation and rounding
//
// [Amount] counts whole millionths of its unit, so that thresholds and
// differences are exact. Walks may be recorded in seconds or metres a second;
// a speed worked out from a time is rounded down to a millionth.
//
// # Errors
//
// Bad input gives [field.Errors], every bad field at once. Plausible ranges
// catch slips of the keyboard; they are no judgement on anybody.
//
// # Sources
//
// [Facts] lists them, from the tables that the code uses. Many norms were seen
// only in reprints or are known from memory: the basis stands beside each.
package function
