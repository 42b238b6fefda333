// Package guideline holds published recommendations of resistance exercise as
// data: who speaks, about whom, with which aim, and the numbers.
//
// # Scope
//
// One [Recommendation] is one row of a publication. A field that the source
// does not state, or that could not be read, is left zero: nothing is filled
// in. Whether a row fits a person, and which of its numbers bind, is for the
// packages above to decide; nothing here prescribes.
//
// # Finding rows
//
// [For] finds the rows that fit a person and a goal, the closest first. A
// [Condition] is how rows for an illness are found; what superseded rows say
// stands last. [Recommendation.Stated] says what a row states, field by field.
//
// # How a number is known
//
// Each stated field has its own [evidence.Basis], see [Recommendation.BasisOf],
// and its own fact, see [Recommendation.Fact]. What is known from memory must
// not open a door: use it to limit or lighten.
//
// # Disagreement
//
// Sources disagree, and one body disagrees with its own earlier self. Both
// sides stand; SupersededBy names what came later. Loads in percent of a
// one-repetition maximum and loads as a repetition maximum are not
// interchangeable, so a row that gives both keeps both. Weekly sets are stated
// without a word on how sets for several muscles were counted.
//
// # Sources
//
// All 77 rows are those of rows.json, beside this text: the collection's
// columns as they stand there, and under "here" what this module adds. A test
// holds 49 of them, field by field, against the collection itself.
package guideline
