// Command population draws an invented population of older adults, screens
// everybody and prints what share the rules stop, send to ask and limit, in all
// and by finding, so that the joining of the rules can be judged.
//
//	go run ./examples/population [-n 10000] [-seed 1] [-unknown 1] [-compare] [-all]
//
// The shares that people are drawn with stand in rates.json and rates.go. They are invented:
// made up to be plausible, taken from nowhere, and no figures to quote. The
// same seed draws the same people. What is split there divides the people of one
// code; it was written down before the rules were joined by it.
//
// Three shares stay above what they were wanted to be, since a law stands above a
// share. Of those of whom every published rule is silent some 2 % are held by a pressure
// that was to be measured and was not: it lets no more go on than one above 160/100 mmHg.
// Some 1.4 % are held by angina on effort, which is the heart's own sign, though only
// from memory a disease of the rule. New everyday tiredness stops 1.1 to 1.3 % of all
// people by itself: ACSM 2015 tells the active to stop, and who is less active is
// never let do more.
package main
