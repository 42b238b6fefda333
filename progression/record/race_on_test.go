//go:build race

package record_test

// usualRecords is small, since the race detector makes each record slow: what the records
// are to hold, the tests without it try on all of them.
const usualRecords = 25

// slower is how many times as long the same takes with the race detector, at most.
const slower = 20
