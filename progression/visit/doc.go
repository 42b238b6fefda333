// Package visit looks at one exercise at one visit ([Visit]): what was asked for,
// what was done, how it was borne, and whether anything stands against more load
// ([Gates]): events, pain, range, technique, effort or repetitions, and what was not
// recorded too. A set whose load is doubtful is asked about and not used ([Doubt]).
//
// Order and joining of the gates are this module's design; each gate has its own
// source. The gates look at no limits: that all of them raise is no prescription.
//
// Bad input is a [field.Error], all bad fields at once. Nothing panics.
package visit
