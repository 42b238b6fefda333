//go:build !race

package record_test

// usualRecords is how many random records take some seconds.
const usualRecords = 100
