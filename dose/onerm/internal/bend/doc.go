// Package bend evaluates the forms of load–repetition curves. Package onerm
// promises the forms and the curve; package fit needs the slopes too.
package bend
