// Package tested sorts tests of strength before anything rests on them: what is too old,
// or is likely a slip, is listed as [strength.Unused], to be asked about, and of the
// others one counts for each exercise and side.
package tested
