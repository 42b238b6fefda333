// Package cases reads a table of screening cases, each with the answer that it
// expects of every published rule, and compares these with the library's own.
//
// A table is a CSV file with the columns id, inputs, expected and source, where
// inputs and expected are JSON; lines that begin with # are comments. A field
// that is left out of inputs was not measured; a list that is left out holds
// nothing, as in the published table, whose rows leave lists out and expect
// "none" of them. That is a convention for judging rules by themselves: to
// [screening.Assess] a list that was not asked is not a list of noes. A field
// that is left out of expected is not compared.
package cases
