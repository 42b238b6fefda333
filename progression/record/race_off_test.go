//go:build !race

package record_test

// usualRecords is how many random records take some seconds.
const usualRecords = 100

// slower is how many times as long the same takes with the race detector, at most.
const slower = 1
