// Package week plans a week of training: which exercises, on which days, in which order
// and how many sets, each with the dose of package dose, and what belongs beside the
// lifting.
//
// # What does not fit
//
// An exercise that cannot be dosed is replaced by a gentler one or left out, and listed
// with its reasons; so is one for which the minutes do not suffice. Where none is asked
// for, package choice chooses.
//
// # Beside the lifting
//
// A week has what lifting does not give: balance and aerobic work from 50 years on, impact
// where bone is the goal, power in its phase, each with its dose, from package beside. What
// [Week.Prescribed] hands to an audit counts only what is dosed.
//
// # How long it holds
//
// [Dates] are the days by which a plan is looked at, strength is tested again, and the
// plan ends. All of them are this module's design.
package week
