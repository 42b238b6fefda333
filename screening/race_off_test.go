//go:build !race

package screening_test

// usualCases is how many random cases take a second or two.
const usualCases = 20_000
