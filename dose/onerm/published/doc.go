// Package published holds what was printed about load and repetitions and is
// asked by no estimate: equations with an offset ([Regression]) or with a measure
// of the body ([Macht2016]), which are no fixed multiple of the load, and printed
// tables ([Chart]), with no values between their rows unless asked for. They are
// here to compare with; each holds for the people and the exercise that it was
// made in.
package published
