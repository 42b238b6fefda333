// Command accuracy sets the published equations, and the library's own
// estimate, against measured one-repetition maxima.
//
//	go run ./examples/accuracy [-data FILE] [-level SHARE] [-json]
//
// It reads a table of people with their measured 1RM, loads and maximal
// repetitions, and prints for each equation and band of repetitions the number
// of sets, bias, root mean square error and mean absolute error of the estimate
// in percent of the measured 1RM. Then it ranks the classical equations by what they are
// for, the repetitions that a load allows, with people random. For the library's own estimate it also prints
// how many intervals hold the measured 1RM and how wide they are, person by
// person with equation and errors chosen again from everybody else, three people or more.
//
// What the table's first lines say behind a #, whose data they are and under
// which licence, is repeated.
//
// Without -data it runs on open data of ten trained lifters, which are not the
// library's users: no older adult, no dumbbell.
package main
