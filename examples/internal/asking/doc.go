// Package asking asks by hand what the library needs to know: the interview of a
// first visit, from lines that somebody types or from a file of answers, and what
// comes of it in words; and at a desk what else a record needs.
package asking
