// Command population draws an invented population of older adults, screens
// everybody and prints what share the rules stop, send to ask and limit, in all
// and by finding, so that the joining of the rules can be judged.
//
//	go run ./examples/population [-n 10000] [-seed 1] [-unknown 1] [-compare] [-all]
//
// The shares that people are drawn with stand in rates.go. They are invented:
// made up to be plausible, taken from nowhere, and no figures to quote. The
// same seed draws the same people. What stands in finer.go splits the people of one
// code; it was written down before the rules were joined by it.
//
// It also checks that nobody is stopped by a question that nothing triggered:
// everybody is screened a second time with such questions answered with no.
package main
