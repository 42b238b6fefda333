// Package units holds the quantities that a dose of exercise is made of:
// exact mass, effort on named scales, shares of a one-repetition maximum,
// ranges with one or two ends, and civil days.
//
// # Representation
//
// [Mass] counts whole nanograms in an int64, as [time.Duration] counts
// nanoseconds. The kilogram, the gram, the avoirdupois pound and ounce are
// whole numbers of nanograms, so that kilograms and pounds convert, add and
// compare without error. The largest mass is about 9.22 million kilograms.
//
// # Zero values
//
// Where zero is a quantity the zero value means zero ([Mass], [RIR],
// [Fraction]). Where zero would be a dangerous default it means "not given"
// and is refused by whoever needs the value ([Day], [Effort]). The zero
// [Range] has no ends and means "not stated".
//
// # Rounding
//
// Nothing is rounded silently: a function that rounds says so in its name, its
// [Rounding] argument or its comment.
//
// # Errors
//
// Bad input gives a [*example.org/posology/units/field.Error] that names the
// field, the value and what is allowed. No function panics on any input, except
// [Must], which is for tables of constants and tests.
//
// # Sources
//
// The pound is that of the international yard and pound agreement of 1959,
// 0.453 592 37 kg exactly; the ounce is a sixteenth of it. Unit codes are those
// of the Unified Code for Units of Measure (UCUM). Weeks are those of ISO 8601.
// Where the numbers of the effort scales come from is told by package
// [example.org/posology/units/evidence].
package units
