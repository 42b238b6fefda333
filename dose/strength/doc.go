// Package strength keeps what is known of somebody's strength in one exercise, and says
// how many repetitions of a weight that allows.
//
// An [Ability] is what all visits and tests of an exercise have shown together, read
// on one equation, and [Ability.Most] finds from it how many repetitions a weight
// allows, at one stated [Chance]. Its form keeps the order of better and worse; its
// widths are this module's own design. Every dose of the module for which strength is
// known goes by it.
package strength
