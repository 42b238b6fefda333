// Package protocol holds published set-by-set schemes as they were printed.
//
// [Scheme.Plan] lays out the sets of a session from a repetition maximum or a
// working weight; [Scheme.FourthSet] and [Scheme.NextSession] read the printed
// tables that change the load by the repetitions done.
//
// # Scope
//
// These are historical and athletic schemes. Each takes sets to failure, so
// none is a default for people over 50: every session says so. They decide
// nothing about who may train or with what pain.
//
// # Representation and units
//
// The kilogram and pound columns of a table restate each other and are not
// conversions (5 lb is 2.27 kg, printed as 2.5 kg), so the unit is an input and
// a table without a column in it refuses. Ranges stay ranges; the cautious pick
// is their low end. Masses are per implement where a kit is given.
//
// # Rounding
//
// Masses are exact, shares rounded to the nearest nanogram. With a kit each set
// takes the greatest weight not above its mass.
//
// # Errors
//
// [field.ErrOutOfRange] for repetitions that no printed row covers, [field.ErrConflict] for
// schemes that do not change the load by repetitions, for a unit
// without a column; else the categories of package field and of equipment.
// Nothing panics.
//
// # Where printings differ
//
// [Scheme.Disagreements] lists it; nothing is averaged.
package protocol
