// Package say keeps all of one reason in one row: its code, what it rests on, and
// what it says to whom.
package say
