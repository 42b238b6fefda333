// Package demo holds the invented cases that the example programs run on.
//
// The people, the village hall and the numbers are made up. Any likeness to a
// person is chance.
package demo
