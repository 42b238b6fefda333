// Package interview asks what screening needs to know: which question comes next,
// of whom, in which words, and why; as data, without a terminal, a clock or a
// file, so that a clinic's form can ask it. What follows from the answers is for
// package screening alone.
//
// An [Interview] is a value. [On] begins one; [Interview.Next] gives the question
// to ask, with its form, its choices and both readers' words; [Interview.Answer]
// returns the interview after a reply, and [Interview.Back] the one before it.
// [Interview.Profile] and [Interview.Check] can be taken at any time: what has
// not been asked is not known, which is not "no".
//
// The order is this module's own design: age and setting; signs of a serious
// cause and symptoms; diseases; conditions, area by area, those that the person
// names; then what [screening.Assess] misses, so that a question is asked only
// where an answer made it necessary; last the day's check, of who trains today.
// An emergency ends it at once. Every question can be left unknown, except the age,
// without which there is no outcome.
//
// The lists are asked in our own words and are nobody's questionnaire.
package interview
