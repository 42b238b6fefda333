// Package review looks back on several weeks of training for the example
// programs: it reads a case with its log, and lets package progression decide on
// every exercise at once. It shows how the library's packages fit together and
// holds no rules of its own.
package review
