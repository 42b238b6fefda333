// Package cohort adds up the logs of many people at once: weekly sets by muscle, volume
// load, and the best and the latest estimate of each one-repetition maximum.
//
// It is [example.org/posology/dose/volume] for ten million sets: the same rules of counting, in
// 32 bytes for each person, week and exercise. What a muscle gets is worked out when it is
// asked for, and so is the body's part of the load, from the body mass that each person
// has. [Cohort.Read] takes a log in parts, by several workers; what comes out does
// not depend on their number, nor on the order of sets. What only one person's
// [volume.Tally] keeps is not kept here: the days of an exercise, time under tension,
// the mean reserve and the share of a maximum.
//
// # Estimates
//
// An estimate here is the bare equation on a set's load and repetitions, as they are
// compared in studies: no reserve is added, so that a set that was ended early gives less than
// the person can do. It is none to dose by: for that see package onerm. Exercises that move the body,
// or that are measured in seconds or metres, have none.
//
// # More than one machine
//
// Cohorts of one [Study] can be merged, in any order and grouping. One that was
// written on another machine is read by [Study.Decode] of a study with the same
// options and exercises, and refused by any other.
package cohort
