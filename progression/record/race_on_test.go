//go:build race

package record_test

// usualRecords is small, since the race detector makes each record slow: what the records
// are to hold, the tests without it try on all of them.
const usualRecords = 25
